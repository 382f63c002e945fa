"""Where a joint does not fit: the stretches that miss room, the reason, and what would make it fit."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.say import say
from seamcheck.proposal.contact import DEPTH_SPACING, Contact, depths_below
from seamcheck.proposal.design import LEAST_FLOOR, Choices, Design, Space, design, narrowest
from seamcheck.proposal.records import Short
from seamcheck.proposal.room import Room, outside_stretches, stretches
from seamcheck.settings.settings import Settings

MOST_DEEPER = 5.0
"""mm by which the wall is thought deeper, to tell whether its depth is what is missing."""


def short_stretches(
    contact: Contact, rooms: Sequence[Room], settings: Settings, choices: Choices, space: Space
) -> tuple[Short, ...]:
    """The stretches of the mid-lines where the contact is narrower than the narrowest section."""
    deep = space.depth if design(Space(20.0, 20.0, space.depth), settings, choices).fits else np.inf
    need = dict(zip(("inner", "outer"), narrowest(settings, choices, deep), strict=True))
    found = []
    for room in rooms:
        for side in ("inner", "outer"):
            has = getattr(room, side)
            needed = need[side] if room.line.closed else need["inner"]  # both sides of a dividing wall lie inside
            for start, end, missing, worst in outside_stretches(room, needed - has):
                at = contact.frame.world(np.array([*room.at[worst], 0.0]))
                found.append(
                    Short(
                        contour=room.line.id, side=side, from_s=start, to_s=end,
                        at=(float(at[0]), float(at[1]), float(at[2])),
                        room=float(has[worst]), need=needed, missing=missing,
                    )
                )  # fmt: skip
    return tuple(found)


def shallow_stretches(contact: Contact, settings: Settings, choices: Choices, space: Space) -> tuple[Short, ...]:
    """The stretches where the wall is not deep enough, where that alone keeps the joint from fitting."""
    need = _least_depth(settings, choices, space)
    if need is None:
        return ()
    found = []
    for below in depths_below(contact):
        for start, end, missing, worst in stretches(
            below.s, below.line.closed, need - below.depth, 2.0 * DEPTH_SPACING
        ):
            at = contact.frame.world(np.array([*below.xy[worst], 0.0]))
            found.append(
                Short(
                    contour=below.line.id, side="below", from_s=start, to_s=end,
                    at=(float(at[0]), float(at[1]), float(at[2])),
                    room=float(below.depth[worst]), need=need, missing=missing,
                )
            )  # fmt: skip
    return tuple(found)


def _least_depth(settings: Settings, choices: Choices, space: Space) -> float | None:
    """mm of wall below the contact with which the joint would fit; None where it is not the depth that is missing."""
    low, high = space.depth, space.depth + MOST_DEEPER
    if not np.isfinite(low) or not design(replace(space, depth=high), settings, choices).fits:
        return None
    while high - low > 0.01:
        middle = (low + high) / 2.0
        low, high = (low, middle) if design(replace(space, depth=middle), settings, choices).fits else (middle, high)
    return float(high)


def why_not(
    chosen: Design, short: Sequence[Short], contact: Contact, settings: Settings, choices: Choices, space: Space
) -> tuple[str, tuple[str, ...]]:
    """The reason, and what would make it fit."""
    instead: list[str] = []
    if short:
        worst = max(short, key=lambda s: s.missing)
        lack = {
            "start": worst.from_s,
            "end": worst.to_s,
            "missing": worst.missing,
            "room": worst.room,
            "need": worst.need,
        }
    if short and short[0].side == "below":
        message = say("propose.shallow", **lack, floor=LEAST_FLOOR)
        instead.append(say("propose.down", missing=worst.missing))
    elif short:
        opposite = max((s.missing for s in short if s.side != worst.side), default=None)
        if opposite is None:
            message = say("propose.narrow", **lack, side=worst.side)
            instead.append(say("propose.widen", missing=worst.missing, side=worst.side))
        else:
            both = {"side": worst.side, "other": "outer" if worst.side == "inner" else "inner", "opposite": opposite}
            message = say("propose.narrow-both", **lack, **both)
            instead.append(say("propose.widen-both", missing=worst.missing, **both))
    else:
        least = chosen.least
        value, bound = f"{least.value:.2f}", f"{least.bound:.2f}"
        message = say("propose.limit", rule=least.rule, quantity=least.quantity, value=value, bound=bound)
    if short and short[0].side != "below" and not design(Space(20.0, 20.0, space.depth), settings, choices).fits:
        message = say("propose.nor-deep", what=message, depth=space.depth)
    for side in ("outer", "inner"):
        other = replace(choices, open_outer=True) if side == "outer" else replace(choices, open_inner=True)
        if not getattr(choices, f"open_{side}") and design(space, settings, other).fits:
            instead.append(say("propose.leave-lip", side=side, option=f"--open {side}"))
    if choices.fixed and design(space, settings, replace(choices, fixed={})).fits:
        instead.append(say("propose.free"))
    return message, tuple(instead)
