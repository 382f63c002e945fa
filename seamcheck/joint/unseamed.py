"""Contact of two parts that is no seam: pads, strips that enclose nothing, side faces with play."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from itertools import combinations

import numpy as np
import shapely

from seamcheck.catalogue.say import refused
from seamcheck.errors import NotReviewed
from seamcheck.joint.constants import LARGEST_GAP, ON_EACH_OTHER, SMALL
from seamcheck.joint.contact import coverage, directions, near_surface
from seamcheck.joint.frame import Frame
from seamcheck.joint.meeting import Meeting, is_broad, opposed_area
from seamcheck.joint.names import Names
from seamcheck.joint.outline import lies_mostly_within, outline
from seamcheck.joint.reading import Reading
from seamcheck.joint.regions import rooms
from seamcheck.kernel import Body

_ALONG_THIN = 0.8  # cosine between a direction and the thinnest side of a part on which the part may lie
_WORTH_TELLING = 0.02  # of the smaller part's outline, over which the two must touch to be reported so
_RUNS_ALONG = 0.5  # of the smaller part's length, that strips must have in total
_STEP = 0.05  # mm: less between two levels is the same level
_UPRIGHT, _FACING = 0.1, 0.999  # cosines: of a face along the direction of insertion, of two that face each other
_CORNER, _NAMED = 0.25, 4  # of an outline: a part that lies over less of it closes no opening; parts that are named
_CHORD = 0.1  # mm, of the outlines of faces whose size is compared


def seats(pair: tuple[str, str], meetings: Sequence[Meeting], bodies: Mapping[str, Body]) -> Meeting | None:
    """The meeting over which two parts lie on each other along the thin side of one of them; the largest one."""
    own = [m for m in meetings if m.pair == set(pair) and m.seated and lies_flat(m.frame, pair, bodies)]
    best = max(own, key=lambda m: m.area, default=None)
    if best is None or best.area < _WORTH_TELLING * min(outline(bodies[i], best.frame).area for i in pair):
        return None
    return best


def lies_flat(frame: Frame, pair: Iterable[str], bodies: Mapping[str, Body]) -> bool:
    """Whether a frame's z runs through the flatter one of two parts along its thin side, as light does."""
    boxes = [bodies[i].own_box for i in pair]
    flattest = min(boxes, key=lambda box: float(box.sides[0] / max(box.sides[1], 1e-9)))
    return bool(abs(frame.axes[2] @ flattest.axes[0]) >= _ALONG_THIN)


def strips(
    pair: tuple[str, str], meetings: Sequence[Meeting], bodies: Mapping[str, Body], names: Names
) -> NotReviewed | None:
    """Parts that lie on each other along strips none of which runs all round."""
    seat = seats(pair, meetings, bodies)
    if seat is None:
        return None
    bands = [p for p in seat.seated if not is_broad(p)]
    if any(rooms(p.region) for p in bands):
        return None
    length = sum(p.length * p.share for p in bands)
    if not bands or length < _RUNS_ALONG * min(outline(bodies[i], seat.frame).long for i in pair):
        return None
    width = sum(opposed_area(p) for p in bands) / length
    return refused(
        "no-seam", "no-seam.strips", one=names(seat.one), other=names(seat.other), count=len(bands), length=length,
        width=width,
    )  # fmt: skip


def pads(
    pair: tuple[str, str], meetings: Sequence[Meeting], bodies: Mapping[str, Body], names: Names
) -> NotReviewed | None:
    """Parts that lie on each other with broad faces."""
    seat = seats(pair, meetings, bodies)
    broad = [] if seat is None else [p for p in seat.seated if is_broad(p)]
    if seat is None or not broad:
        return None
    around = shapely.get_coordinates(shapely.oriented_envelope(broad[0].region))  # not as the frame happens to lie
    sides = np.linalg.norm(np.diff(around[:3], axis=0), axis=1)
    size = " x ".join(f"{side:.1f}" for side in sorted(sides.tolist(), reverse=True))
    return refused(
        "no-seam", "no-seam.pads", one=names(seat.one), other=names(seat.other), count=len(broad), size=size,
        area=seat.area,
    )  # fmt: skip


def plug(
    readings: Sequence[Reading],
    pair: tuple[str, str] | None,
    meetings: Sequence[Meeting],
    bodies: Mapping[str, Body],
    names: Names,
) -> NotReviewed | None:
    """Side faces with play on opposite sides, and nothing that light from above could weld."""
    found = _play(readings, pair)
    if found is None:
        return None
    one, play = found
    longest = max((r.candidate for r in readings if r.pair == one.pair), key=lambda c: c.length)
    seat = seats((one.cover, one.base), meetings, bodies)
    step = _step_above(one, bodies)
    more = {} if seat is None else {"places": len(seat.seated), "area": seat.area}
    more |= {} if step is None else {"gap": step}
    return refused(
        "no-seam", "no-seam.plug" if seat is None else "no-seam.plug-resting", one=names(one.cover),
        other=names(one.base), play=play, width=longest.width, length=longest.length, **more,
    )  # fmt: skip


def side_play(readings: Sequence[Reading], pair: frozenset[str]) -> float | None:
    """mm of play at the sides of two parts; None where they don't face each other on opposite sides."""
    found = _play([r for r in readings if r.pair == pair], None)
    return None if found is None else found[1]


def _play(readings: Sequence[Reading], pair: tuple[str, str] | None) -> tuple[Reading, float] | None:
    loose = [r for r in readings if r.candidate.encloses <= 0]
    own = [r for r in loose if pair is not None and r.pair == set(pair)] or loose
    for one, other in combinations(own, 2):
        a, b = one.candidate, other.candidate
        if a.carrier == b.carrier and a.counter == b.counter and a.frame.axes[2] @ b.frame.axes[2] < -0.99:
            return one, max((a.gap + b.gap) / 2, 0.0)
    return None


def _step_above(reading: Reading, bodies: Mapping[str, Body]) -> float | None:
    """Distance (mm) of the nearest opposing faces across the play, in the direction of insertion.

    They don't lie over each other, though the designer may have intended it.
    """
    a, b = (bodies[i] for i in (reading.candidate.carrier, reading.candidate.counter))
    side = reading.candidate.frame.axes[2]
    flat_a, flat_b = (np.flatnonzero(np.isfinite(body.planes[:, 0])) for body in (a, b))
    apart = []
    for i in flat_a:
        z = a.planes[i, :3]
        if abs(z @ side) > _UPRIGHT:
            continue
        across = np.array([np.cross(z, side), side])
        for j in flat_b[b.planes[flat_b, :3] @ z < -_FACING]:
            gap = -b.planes[j, 3] - a.planes[i, 3]
            if not _STEP < gap <= LARGEST_GAP:
                continue
            one, other = (np.concatenate(body.outline(int(f), _CHORD)) @ across.T for body, f in ((a, i), (b, j)))
            low = np.maximum(one.min(axis=0), other.min(axis=0))
            high = np.minimum(one.max(axis=0), other.max(axis=0))
            size = min(np.ptp(face, axis=0).max() for face in (one, other))
            if (low <= high + LARGEST_GAP).all() and size > SMALL * a.own_box.diagonal:
                apart.append((float(np.prod(high - low)), float(gap)))
    return max(apart)[1] if apart else None


def amid(pair: tuple[str, str] | None, bodies: Mapping[str, Body], names: Names) -> NotReviewed | None:
    """Parts that lie on each other amid faces much larger than what they share: no band of its own."""
    if pair is None:
        return None
    a, b = (bodies[i] for i in pair)
    mine, theirs = near_surface(a, b.box), near_surface(b, a.box)
    if not len(mine.area) or not len(theirs.area):
        return None
    for direction in directions(mine, theirs):
        frame = Frame.along(direction, a.box[:3])
        met = coverage(mine, theirs, frame)
        area = float((met.area * met.share)[np.abs(met.gap) <= ON_EACH_OTHER].sum())
        least = _WORTH_TELLING * min(outline(bodies[i], frame).area for i in pair)
        if lies_flat(frame, pair, bodies) and area > least:
            return refused("no-seam", "no-seam.amid", one=names(pair[0]), other=names(pair[1]))
    return None


def no_lid(
    pairs: Sequence[tuple[str, str]], readings: Sequence[Reading], bodies: Mapping[str, Body], names: Names
) -> NotReviewed | None:
    """Parts none of which lies over more than a corner of the largest one, and no band between them."""
    largest = max(bodies, key=lambda i: bodies[i].own_box.diagonal)
    beside = sorted({i for pair in pairs if largest in pair for i in pair if i != largest}, key=lambda i: int(i[1:]))
    if readings or not beside:
        return None
    frame = Frame.along(bodies[largest].own_box.axes[0], bodies[largest].box[:3])
    seen = outline(bodies[largest], frame).around
    share = max(outline(bodies[i], frame).around.intersection(seen).area for i in beside) / seen.area
    if share > _CORNER:
        return None
    told = ", ".join([*(names(i) for i in beside[:_NAMED]), *(["..."] if len(beside) > _NAMED else [])])
    return refused("no-seam", "no-seam.no-lid", others=told, largest=names(largest), share=100 * share)


def side_by_side(
    readings: Sequence[Reading],
    pair: tuple[str, str] | None,
    meetings: Sequence[Meeting],
    bodies: Mapping[str, Body],
    names: Names,
) -> NotReviewed | None:
    """Only open strips: walls side by side."""
    if (
        pair is None
        or lies_mostly_within(*(bodies[i] for i in pair))
        or seats(pair, meetings, bodies) is not None
        or any(r.candidate.encloses > 0 or r.candidate.stands_out for r in readings)
    ):
        return None
    nearest = min((abs(r.candidate.gap) for r in readings if r.pair == set(pair)), default=None)
    far = {} if nearest is None else {"distance": nearest}
    return refused("no-seam", "no-seam.side-by-side", one=names(pair[0]), other=names(pair[1]), **far)
