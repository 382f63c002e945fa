"""Why there is no joint to review: the kind of contact that there is, with its numbers and the best candidates."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np

from seamcheck.catalogue.say import Value, refused, say
from seamcheck.errors import NotReviewed
from seamcheck.joint.candidates import Candidate
from seamcheck.joint.constants import CARRIES, LARGEST_GAP, ON_EACH_OTHER, THIN, THROUGH, THROUGH_A_LITTLE, TOUCHING
from seamcheck.joint.contact import face_all_round, near_surface
from seamcheck.joint.evidence import ring_between
from seamcheck.joint.meeting import Meeting
from seamcheck.joint.names import Names
from seamcheck.joint.outline import outline
from seamcheck.joint.reading import Reading
from seamcheck.joint.sizes import Sizes
from seamcheck.joint.unseamed import amid, lies_flat, no_lid, pads, plug, side_by_side, side_play, strips
from seamcheck.kernel import Body
from seamcheck.kernel.common import common_volume
from seamcheck.kernel.distance import shape_distance

_MOST_PAIRS = 6  # whose exact distance and common volume are worth their time
_LOOKED_INTO = 3  # pairs of the largest parts whose contact is told
_NAMED = 2  # candidates that are named
_ONLY_LIGHT = 0.3  # confidence of a reading against which one doubt speaks, and nothing that rules it out
_TUBE = 0.3  # of the width of what two parts share: contact longer along the axis is a tube's, shorter a plug's
_SIDEWAYS = 0.9  # of a normal, that lies square to an axis for its face to stand along it
_FOUR_SIDED = 0.4  # of the area of side faces lies in four directions more than elsewhere: no tube


def no_joint(
    pairs: Sequence[tuple[str, str]],
    readings: Sequence[Reading],
    meetings: Sequence[Meeting],
    bodies: Mapping[str, Body],
    names: Names,
) -> NotReviewed:
    """The refusal of a model without a reading that the evidence carries.

    Parameters
    ----------
    pairs : ids of parts near each other; readings : with their evidence; meetings : where parts meet at all
    """
    by_size = sorted(pairs, key=lambda pair: -min(bodies[i].volume for i in pair))[:_MOST_PAIRS]
    best = sorted(readings, key=lambda r: (-r.confidence, -r.candidate.score))
    first = by_size[0] if by_size else None
    meet = any(abs(patch.gap) <= LARGEST_GAP for meeting in meetings for patch in meeting.patches)
    return (
        (None if meet or len(pairs) > _MOST_PAIRS else _apart(pairs, bodies, names))
        or _ring_between(best, bodies, names)
        or _run_through_each_other(best, by_size, bodies, names, THROUGH)
        or _tube(by_size, bodies, names)
        or _out_of_light(best, bodies, names)
        or _open_gap(best, bodies, names)
        or _pair_by_pair(best, by_size[:_LOOKED_INTO], meetings, bodies, names)
        or plug(best, first, meetings, bodies, names)
        or _amid(pairs, best, by_size, bodies, names)
        or _run_through_each_other(best, by_size, bodies, names, THROUGH_A_LITTLE)
        or side_by_side(best, first, meetings, bodies, names)
        or no_lid(pairs, best, bodies, names)
        or _nothing(
            best, next((p for p in by_size if any(m.pair == set(p) and m.seated for m in meetings)), first), names
        )
    )


def _pair_by_pair(
    readings: Sequence[Reading],
    pairs: Sequence[tuple[str, str]],
    meetings: Sequence[Meeting],
    bodies: Mapping[str, Body],
    names: Names,
) -> NotReviewed | None:
    """What the largest parts have in common that is no seam."""
    for pair in pairs:
        own = [r for r in readings if r.pair == set(pair)]
        answer = strips(pair, meetings, bodies, names) or plug(own, pair, meetings, bodies, names)
        if answer is not None:
            return answer
    return next(filter(None, (pads(pair, meetings, bodies, names) for pair in pairs)), None)


def _amid(
    pairs: Sequence[tuple[str, str]],
    readings: Sequence[Reading],
    by_size: Sequence[tuple[str, str]],
    bodies: Mapping[str, Body],
    names: Names,
) -> NotReviewed | None:
    """Two parts alone that lie on each other, though nothing there reads as a band that encloses something."""
    if len(pairs) > 1 or any(r.candidate.encloses > 0 or r.candidate.stands_out for r in readings):
        return None
    return amid(by_size[0], bodies, names)


def too_far(nearest: float, one: str, other: str) -> NotReviewed:
    """The refusal of parts that lie apart, with how far apart (mm) the nearest are."""
    return refused("no-contact", "no-contact.apart", one=one, other=other, distance=nearest, most=LARGEST_GAP)


def _apart(pairs: Sequence[tuple[str, str]], bodies: Mapping[str, Body], names: Names) -> NotReviewed | None:
    """Boxes of turned parts overlap though the parts are far from each other. Slow where faces are many."""
    away = [(shape_distance(bodies[one].shape, bodies[other].shape)[0], one, other) for one, other in pairs]
    nearest, one, other = min(away, key=lambda found: np.nan_to_num(found[0]))
    if nearest > LARGEST_GAP:
        return too_far(nearest, names(one), names(other))
    return None


def _ring_between(readings: Sequence[Reading], bodies: Mapping[str, Body], names: Names) -> NotReviewed | None:
    """A rib or a gasket that is a part of its own, between two others."""
    for reading in readings:
        found = None if len(bodies) < 3 or reading.candidate.encloses <= 0 else ring_between(reading, bodies)
        if found is not None:
            ring, third = found
            other = next(i for i in (reading.cover, reading.base) if i != ring)
            return refused("unsupported", "unsupported.ring", ring=names(ring), one=names(other), other=names(third))
    return None


def _run_through_each_other(
    readings: Sequence[Reading],
    pairs: Sequence[tuple[str, str]],
    bodies: Mapping[str, Body],
    names: Names,
    least: float,
) -> NotReviewed | None:
    sizes = Sizes(bodies)
    for one, other in pairs[:_LOOKED_INTO]:
        a, b = bodies[one], bodies[other]
        if sizes.is_small(one) or sizes.is_small(other):
            continue  # a screw or a small part pressed into a large one
        volume, box = common_volume(a, b)
        if not volume > least * min(a.volume, b.volume):
            continue
        way, far = _way_out(a, b)
        place = ", ".join(f"{c:.1f}" for c in (box[:3] + box[3:]) / 2)
        play = side_play(readings, frozenset((one, other)))
        plugged = {} if play is None or play <= TOUCHING else {"play": play}
        return refused(
            "no-seam", "no-seam.through-plug" if plugged else "no-seam.through", one=names(one), other=names(other),
            volume=volume, place=place, distance=far, axis=way, **plugged,
        )  # fmt: skip
    return None


def _way_out(a: Body, b: Body) -> tuple[str, float]:
    """Axis and distance of the shortest move that parts the boxes of two bodies."""
    up, down = a.box[3:] - b.box[:3], b.box[3:] - a.box[:3]
    axis = int(np.argmin(np.minimum(up, down)))
    sign = "+" if up[axis] <= down[axis] else "-"
    return f"{sign}{'xyz'[axis]}", float(min(up[axis], down[axis]))


def _tube(pairs: Sequence[tuple[str, str]], bodies: Mapping[str, Body], names: Names) -> NotReviewed | None:
    largest = set(sorted(bodies, key=lambda i: -bodies[i].volume)[:2])  # not a screw in its hole
    for one, other in pairs:
        a, b = bodies[one], bodies[other]
        if {one, other} == largest and face_all_round(near_surface(a, b.box), near_surface(b, a.box)):
            is_round, is_long = _turn(a, b)
            if not is_round:
                continue
            if not is_long:
                return refused("no-seam", "no-seam.plug-round", one=names(one), other=names(other))
            return refused("unsupported", "unsupported.tube", one=names(one), other=names(other))
    return None


def _turn(a: Body, b: Body) -> tuple[bool, bool]:
    """Whether the sides with which two bodies face each other turn round an axis, not along four directions; and
    whether they are as long along it as a tube in its socket."""
    surface = near_surface(a, b.box, LARGEST_GAP)
    spread = np.einsum("k,ki,kj->ij", surface.area, surface.normal, surface.normal)
    axis, *across = np.linalg.eigh(spread)[1].T  # the first is that in which the fewest look
    x, y = (surface.normal @ way for way in across)
    sides = np.hypot(x, y) > _SIDEWAYS
    turn = np.exp(4j * np.arctan2(y[sides], x[sides]))
    is_round = abs((turn * surface.area[sides]).sum()) < _FOUR_SIDED * surface.area[sides].sum()
    ways = np.array([axis, *across]).T
    low, high = (np.array([of(body.corners @ ways, axis=0) for body in (a, b)]) for of in (np.min, np.max))
    along, *wide = high.min(axis=0) - low.max(axis=0)  # of what both share
    return bool(is_round), bool(along > _TUBE * max(wide))


def _out_of_light(readings: Sequence[Reading], bodies: Mapping[str, Body], names: Names) -> NotReviewed | None:
    """Seated faces that run round, where only the light speaks against a joint."""
    for reading in readings:
        candidate = reading.candidate
        if reading.confidence < _ONLY_LIGHT or candidate.encloses <= 0 or abs(candidate.gap) > ON_EACH_OTHER:
            continue
        if reading.thickness <= THIN or not lies_flat(candidate.frame, reading.pair, bodies):
            continue
        return refused(
            "no-seam", "no-seam.dark", cover=names(reading.cover), base=names(reading.base),
            band=candidate.describes, thickness=reading.thickness, most=THIN,
        )  # fmt: skip
    return None


def _open_gap(readings: Sequence[Reading], bodies: Mapping[str, Body], names: Names) -> NotReviewed | None:
    """Flat faces that stay apart with no rib between them, or that something fills."""
    for reading in readings:
        candidate = reading.candidate
        if candidate.stands_out or abs(candidate.gap) <= ON_EACH_OTHER or candidate.encloses <= 0:
            continue
        if not lies_flat(candidate.frame, reading.pair, bodies):
            continue  # play at the sides
        filling = [i for i in bodies if i not in reading.pair and _fills_gap(bodies[i], candidate)]
        if filling:
            return refused(
                "unsupported", "unsupported.ring", ring=names(filling[0]), one=names(reading.cover),
                other=names(reading.base),
            )  # fmt: skip
        both = {"cover": names(reading.cover), "base": names(reading.base)}
        if candidate.gap < 0:
            return refused("no-seam", "no-seam.overlap", **both, depth=-candidate.gap)
        told: dict[str, Value] = {**both, "band": candidate.describes, "gap": candidate.gap}
        play = side_play(readings, reading.pair)
        if play is None:
            return refused("no-seam", "no-seam.not-seated", **told)
        return refused("no-seam", "no-seam.plug-not-seated", **told, play=play)
    return None


def _fills_gap(body: Body, candidate: Candidate) -> bool:
    """Whether a body lies between the two faces of a band that is open."""
    if not outline(body, candidate.frame).around.intersects(candidate.region):
        return False
    height = candidate.frame.local(body.facets(np.arange(len(body.faces)), 0.1, 0.5).corners)[..., 2]
    within = ON_EACH_OTHER
    return bool(
        len(height)
        and candidate.level - within < height.min()
        and height.max() < candidate.level + candidate.gap + within
    )


def _nothing(readings: Sequence[Reading], pair: tuple[str, str] | None, names: Names) -> NotReviewed:
    readings = [r for r in readings if r.candidate.stands_out or r.candidate.encloses > 0.0]  # no strips at a side
    if not readings:
        who = {"one": names(pair[0]), "other": names(pair[1])} if pair else {}
        return refused("no-seam", "no-seam.nothing", **who)
    best = list({(r.cover, r.base): r for r in reversed(readings)}.values())[::-1][:_NAMED]
    told = {place: _candidate(r, names) for place, r in zip(("first", "second"), best, strict=False)}
    return refused("no-seam", "no-seam.none-carries", **told)


def _candidate(reading: Reading, names: Names) -> str:
    against = [e.says for e in sorted(reading.evidence, key=lambda e: e.weight) if e.weight < 1.0]
    return say(
        "any.candidate", cover=names(reading.cover), base=names(reading.base), band=reading.candidate.describes,
        confidence=reading.confidence, needed=CARRIES, **({"against": against} if against else {}),
    )  # fmt: skip
