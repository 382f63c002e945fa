"""Choosing the dimensions of a joint: widest margin to the nearest limit first, then least change to the part."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Any

import numpy as np
from msgspec import Struct, field
from msgspec.structs import replace
from scipy.optimize import minimize, minimize_scalar

from seamcheck.catalogue.formula import evaluate, names
from seamcheck.catalogue.rule import NOTE, OFF
from seamcheck.catalogue.rules import RULES
from seamcheck.proposal.section import Section
from seamcheck.settings.settings import Settings

COMFORT = 0.5
"""Margin, as a share of the limit, beyond which more of it is no aim. Assumption."""

LEAST_LIP = 0.5
"""mm, least width of the lip between trap and border of the wall: thinner does not fill in the mould. Assumption."""

LEAST_FLOOR = 0.8
"""mm, least material below a trap floor. Assumption."""

LEAST_TRAP = 0.3
"""mm, least width of a trap: a thinner groove needs a blade in the mould that bends. Assumption."""

LEAST_RISE = 0.3
"""mm that a lip rises above the trap floor. From 0.2 mm on a step counts as a lip (docs/quantities.md); assumption."""

VARIABLES = ("rib_width", "rib_height", "trap_inner", "trap_outer", "lowering")
_BY_LOWERING = ("free_travel", "lip_gap_inner", "lip_gap_outer")
_STARTS = (0.8, 1.0, 1.3, 1.7)


class Space(Struct, frozen=True):
    """What a section may take at its scarcest place along the seam, mm.

    Attributes
    ----------
    inner, outer : from the mid-line to the border of the contact
    depth : of the wall below the contact; inf where it is not bounded
    radius_inner, radius_outer : smallest radius of turns with that side on their inside; inf without
    """

    inner: float
    outer: float
    depth: float = math.inf
    radius_inner: float = math.inf
    radius_outer: float = math.inf


class Choices(Struct, frozen=True):
    """What is fixed beforehand.

    Attributes
    ----------
    fixed : name in VARIABLES -> mm
    rib_on : part that is to carry the rib, 'base' or 'cover'
    draft : degrees
    open_inner, open_outer : sides without a lip
    lip : mm, least width of a lip
    outer_at_least : mm, from the mid-line to the outer border: room for the clamp
    """

    fixed: Mapping[str, float] = field(default_factory=dict)
    draft: float = 0.5
    open_inner: bool = False
    open_outer: bool = False
    lip: float = LEAST_LIP
    outer_at_least: float = 0.0
    rib_on: str = "base"


class Margin(Struct, frozen=True):
    """How far a value lies inside one bound: ``share`` of the bound's size, negative outside."""

    rule: str
    quantity: str
    value: float
    bound: float
    share: float


class Design(Struct, frozen=True):
    """A section with its margins; ``fits`` where no bound and no room is missed."""

    section: Section
    margins: tuple[Margin, ...]

    @property
    def least(self) -> Margin:
        return min(self.margins, key=lambda m: m.share)

    @property
    def aimed(self) -> float:
        """The least share of those margins that the main dimensions decide."""
        return float(min(_others(self.margins)))

    @property
    def fits(self) -> bool:
        return self.least.share >= -1e-6


def design(space: Space, settings: Settings, choices: Choices | None = None) -> Design:
    """The section with the widest margin to its nearest limit, and of those the one that takes least material.

    Parameters
    ----------
    space : at the scarcest place of the seam
    settings : limits and severities (a rule that is off or a note is no bound), planned collapse
    choices : dimensions fixed beforehand

    Returns
    -------
    Design
        Where nothing fits: the one that misses its nearest limit by the smallest share.

    Notes
    -----
    The lowering is settled first, midway between the travel that it must leave and the lip gap that it may leave:
    nothing else depends on it. Then max m, subject to margin_i >= m for every other bound on a quantity of the
    section, m <= COMFORT; then min removed area with m held. Both by sequential quadratic programming (scipy, SLSQP)
    from several starts.
    """
    choices = choices or Choices()
    best = _widest(space, settings, choices)
    held = min(best.aimed, COMFORT) - 1e-6
    return _least_removed(best, held, space, settings, choices)


def narrowest(settings: Settings, choices: Choices | None = None, depth: float = math.inf) -> tuple[float, float]:
    """Least room (inner, outer), mm from the mid-line, in which a section holds all limits on a straight run."""
    choices = choices or Choices()
    wide = Space(20.0, 20.0, depth)
    start = _widest(wide, settings, choices)

    def taken(section: Section) -> float:
        return section.half_width("inner") + section.half_width("outer") + 0.01 * section.rib_height

    found = _solved(start.section, taken, wide, settings, choices, held=0.0)
    lips = [0.0 if is_open else choices.lip for is_open in (choices.open_inner, choices.open_outer)]
    return found.section.half_width("inner") + lips[0], found.section.half_width("outer") + lips[1]


def margins_of(section: Section, space: Space, settings: Settings, choices: Choices) -> tuple[Margin, ...]:
    """Every bound that applies: of the rules, of the room and of what can be moulded."""
    columns = section.columns(space.radius_inner, space.radius_outer)
    found: list[Margin] = []
    for rule in RULES.values():
        if settings.severity(rule.key) in (OFF, NOTE):
            continue
        values = {limit.name: settings.limit(rule.key, limit.name) for limit in rule.limits}
        values |= {**columns, "collapse": section.collapse}
        for check in rule.checks:
            value = columns.get(check.column)
            if value is None or check.column.startswith("draft"):
                continue
            for bound, sign in ((check.lower, 1.0), (check.upper, -1.0)):
                for formula in () if bound is None else (bound.formula, bound.attention):
                    if not formula or not set(names(formula)) <= set(values):
                        continue  # no bounds on the median: a section cut along offset lines is the same everywhere
                    at = float(evaluate(formula, values))
                    if math.isfinite(at) and math.isfinite(value):
                        share = sign * (value - at) / max(abs(at), 0.1)
                        found.append(Margin(rule.key, check.judged, value, at, share))
    for side, is_open in (("inner", section.open_inner), ("outer", section.open_outer)):
        room = getattr(space, side)
        need = section.half_width(side) + (0.0 if is_open else choices.lip)
        need = max(need, choices.outer_at_least) if side == "outer" else need
        found.append(Margin("room", side, room, need, (room - need) / max(need, 0.1)))
        if not is_open:
            rise = section.rib_height - section.lowering
            found.append(Margin("mouldable", f"lip_{side}", rise, LEAST_RISE, (rise - LEAST_RISE) / LEAST_RISE))
        trap = getattr(section, f"trap_{side}")
        found.append(Margin("mouldable", f"trap_{side}", trap, LEAST_TRAP, (trap - LEAST_TRAP) / LEAST_TRAP))
    if math.isfinite(space.depth):
        need = section.rib_height + LEAST_FLOOR
        found.append(Margin("room", "depth", space.depth, need, (space.depth - need) / need))
    return tuple(found)


def _widest(space: Space, settings: Settings, choices: Choices) -> Design:
    return max(
        (_most_margin(start, space, settings, choices) for start in _starts(space, settings, choices)),
        key=lambda found: min(found.aimed, COMFORT),
    )


def _least_removed(best: Design, held: float, space: Space, settings: Settings, choices: Choices) -> Design:
    if held < -1e-5:
        return best
    return _solved(best.section, lambda section: section.removed_area, space, settings, choices, held)


def _starts(space: Space, settings: Settings, choices: Choices) -> list[Section]:
    c = settings.collapse
    starts = []
    lowering = _lowering(settings, choices)
    for width in _STARTS:
        sides = [
            max(LEAST_TRAP, min(room - width / 2.0 - (0.0 if is_open else choices.lip), 1.0))
            for room, is_open in ((space.inner, choices.open_inner), (space.outer, choices.open_outer))
        ]
        first = Section(
            width, c + 0.5, sides[0], sides[1], lowering, choices.draft, c, choices.open_inner, choices.open_outer
        )
        starts.append(_changed(first, choices.fixed))
    return starts


def _changed(section: Section, values: Mapping[str, float]) -> Section:
    changes: dict[str, Any] = dict(values)
    return replace(section, **changes)


def _lowering(settings: Settings, choices: Choices) -> float:
    """mm, with the widest margin to travel and lip gap; what the user fixed where he did."""
    if "lowering" in choices.fixed:
        return choices.fixed["lowering"]
    c = settings.collapse
    nearly = Section(1.0, c + 1.0, 1.0, 1.0, c, choices.draft, c, choices.open_inner, choices.open_outer)

    def least(lowering: float) -> float:
        tried = margins_of(replace(nearly, lowering=lowering), Space(20.0, 20.0), settings, choices)
        return min((m.share for m in tried if m.quantity in _BY_LOWERING), default=0.0)

    grid = np.linspace(c, c + 1.0, 101)
    best = float(grid[int(np.argmax([least(float(x)) for x in grid]))])
    found = minimize_scalar(lambda x: -least(x), bounds=(best - 0.01, best + 0.01), method="bounded")
    return float(found.x) if -found.fun >= least(best) else best


def _others(margins: tuple[Margin, ...]) -> np.ndarray:
    return np.array([m.share for m in margins if m.quantity not in _BY_LOWERING])


def _most_margin(start: Section, space: Space, settings: Settings, choices: Choices) -> Design:
    """Max m over the dimensions and m itself."""
    free = [name for name in VARIABLES if name not in choices.fixed and name != "lowering"]

    def section(x: np.ndarray) -> Section:
        return _changed(start, dict(zip(free, map(float, x), strict=False)))

    def spare(x: np.ndarray) -> np.ndarray:
        return np.asarray(_others(margins_of(section(x), space, settings, choices)) - x[-1])

    x0 = np.array([*(getattr(start, name) for name in free), -1.0])
    bounds = [*((0.05, 20.0) for _ in free), (-5.0, COMFORT)]
    found = minimize(
        lambda x: -x[-1], x0, method="SLSQP", bounds=bounds, constraints={"type": "ineq", "fun": spare},
        options={"maxiter": 200, "ftol": 1e-9},
    )  # fmt: skip
    best = section(found.x if np.all(np.isfinite(found.x)) else x0)
    return Design(best, margins_of(best, space, settings, choices))


def _solved(
    start: Section, aim: Callable[[Section], float], space: Space, settings: Settings, choices: Choices, held: float
) -> Design:
    """Min of an aim with all margins held; the start where that does not succeed."""
    free = [name for name in VARIABLES if name not in choices.fixed and name != "lowering"]

    def section(x: np.ndarray) -> Section:
        return _changed(start, dict(zip(free, map(float, x), strict=True)))

    def spare(x: np.ndarray) -> np.ndarray:
        return _others(margins_of(section(x), space, settings, choices)) - held

    x0 = np.array([getattr(start, name) for name in free])
    if len(x0) == 0:
        return Design(start, margins_of(start, space, settings, choices))
    found = minimize(
        lambda x: aim(section(x)), x0, method="SLSQP", bounds=[(0.05, 20.0)] * len(free),
        constraints={"type": "ineq", "fun": spare}, options={"maxiter": 200, "ftol": 1e-9},
    )  # fmt: skip
    best = section(found.x)
    if not np.all(np.isfinite(found.x)) or float(np.min(spare(found.x))) < -1e-4 or aim(best) > aim(start) + 1e-9:
        best = start
    return Design(best, margins_of(best, space, settings, choices))


def on_grid(chosen: Design, space: Space, settings: Settings, choices: Choices, grid: float = 0.01) -> Design:
    """The design with dimensions that a drawing can carry: rounded to a grid, up or down as the limits ask."""
    rounded = {name: round(getattr(chosen.section, name) / grid) * grid for name in VARIABLES}
    options = [rounded] + [
        {**rounded, name: rounded[name] + step}
        for name in VARIABLES
        if name not in choices.fixed
        for step in (grid, -grid)
    ]
    tried = []
    for values in options:
        clean = {name: round(value, 6) for name, value in values.items()} | dict(choices.fixed)
        section = _changed(chosen.section, clean)
        tried.append(Design(section, margins_of(section, space, settings, choices)))
    return max(tried, key=lambda found: (found.fits, min(found.aimed, COMFORT - 0.05)))
