"""What speaks for and against a reading, each measured on its own; their product is the confidence."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
import shapely

from seamcheck.catalogue.kinds import LEDGE, STEPPED_LAP, TONGUE_GROOVE
from seamcheck.catalogue.say import say
from seamcheck.joint.candidates import enclosed
from seamcheck.joint.constants import (
    ALONG,
    AROUND,
    CARRIES,
    FREE_ENOUGH,
    HELD,
    INLAID,
    LAP_APART,
    LAP_SHOWN,
    NAMED_STRIP,
    OF_ITS_OWN,
    ON_EACH_OTHER,
    OPEN_RIB,
    OPPOSED,
    RING_HEIGHT,
    SMALL,
    TALL,
    THROUGH_HOLE,
    THROUGH_LAP,
    VOID,
    WAY_FREE,
)
from seamcheck.joint.frame import Frame
from seamcheck.joint.light import column, inside
from seamcheck.joint.meeting import Meeting
from seamcheck.joint.outline import footprint_size, lie_close, lies_within, outline, shadow_area
from seamcheck.joint.profile import FILLED, GROOVE, LEVEL, RISE, TRAP
from seamcheck.joint.reading import Evidence, Reading
from seamcheck.joint.sizes import Sizes
from seamcheck.kernel import Body

AGAINST, DOUBTFUL, WEAK = 0.2, 0.45, 0.8
"""Weights: alone enough against a reading; with anything else against it; a remark."""

_PLAY = 0.01  # mm between boxes
_HARDLY = 0.05  # of the smaller part's outline: a seam that encloses less encloses nothing
_FAR = 1e4  # mm below everything
_NEAR_LEVEL = 0.3  # band widths above and below the band
_PROBES = 48  # points inside the seam at which room is tested


def weigh(
    reading: Reading, bodies: Mapping[str, Body], meetings: Sequence[Meeting], named: bool
) -> tuple[Evidence, ...]:
    """All evidence on one reading.

    Parameters
    ----------
    bodies : all solids, by part id; meetings : where parts meet at all
    named : whether the user named cover or base: then an open stretch along one side may be meant
    """
    share, length = around(reading, bodies)
    found = [_shape(reading), _course(reading, share, length, named), _light(reading)]
    found.append(_contact(reading, share, named))
    if not named:
        found += [_thin_side(reading, bodies), _within(reading, bodies), _inlay(reading, meetings)]
    if not reading.candidate.stands_out:
        found.append(_size(reading, bodies, named))
        for asked in (_room, _ring):  # these take long: not of a reading that is ruled out already
            if np.prod([e.weight for e in found]) >= CARRIES:
                found.append(asked(reading, bodies))
    return tuple(found)


def graded(value: float, against: float, supports: float, least: float) -> float:
    """The weight of a measured value: ``least`` at ``against``, 1 at ``supports``, linear between them."""
    part = (value - against) / (supports - against)
    return float(least + (1.0 - least) * np.clip(part, 0.0, 1.0))


def around(reading: Reading, bodies: Mapping[str, Body]) -> tuple[float, float]:
    """Area that the seam encloses over that within the smaller part's outline, and its length over that part's.

    All is seen along the light; the smaller part is the one that fits into the smaller rectangle.
    """
    candidate = reading.candidate
    seen = {i: outline(bodies[i], candidate.frame) for i in (reading.cover, reading.base)}
    smaller = min(seen, key=lambda i: seen[i].area)
    length = candidate.length / max(seen[smaller].long, 1e-9)
    if candidate.encloses <= 0.0:
        return 0.0, length
    return candidate.encloses / max(shadow_area(bodies[smaller], candidate.frame), 1e-9), length


def _shape(reading: Reading) -> Evidence:
    """How much of the band's border shows the mark of its kind."""
    candidate, border = reading.candidate, reading.candidate.border
    share = border.share
    if candidate.stands_out:
        return Evidence(1.0, say("evidence.rib", height=border.height, share=100 * share[TRAP]))
    marks = {
        LEDGE: share[RISE],
        TONGUE_GROOVE: share[FILLED] + share[GROOVE],
        STEPPED_LAP: max(share[FILLED] + share[GROOVE], border.wrapped, border.backed),
    }
    if candidate.kind in marks:
        shown = marks[candidate.kind]
        return Evidence(graded(shown, *LAP_SHOWN), say("evidence.mark", share=100 * shown, kind=candidate.kind))
    clear = 1.0 - share[TRAP] - share[LEVEL]
    return Evidence(1.0, say("evidence.no-floor", share=100 * clear, kind=candidate.kind))


def _course(reading: Reading, enclosed: float, length: float, named: bool) -> Evidence:
    rib = reading.candidate.stands_out
    if enclosed > _HARDLY:
        return Evidence(1.0 if rib else graded(enclosed, *AROUND), say("evidence.encloses", share=100 * enclosed))
    if rib and length >= ALONG:
        both_sides = graded(reading.candidate.border.share[TRAP], *OPEN_RIB)
        return Evidence(WEAK if named else WEAK * both_sides, say("evidence.along"))
    if rib:
        return Evidence(WEAK if named else DOUBTFUL, say("evidence.short"))
    return Evidence(NAMED_STRIP if named else AGAINST, say("evidence.strip"))


def _light(reading: Reading) -> Evidence:
    free, thickness = reading.side.free, reading.thickness
    if free < FREE_ENOUGH:
        # a rib tells of itself what is meant; a land with another part over it is where a board lies
        shaded = WEAK if reading.candidate.stands_out else DOUBTFUL
        return Evidence(shaded if reading.side.alone >= FREE_ENOUGH else AGAINST, say("evidence.blocked"))
    way = graded(free, *WAY_FREE)
    through = 1.0 if reading.candidate.stands_out else float(np.interp(thickness, *THROUGH_LAP))
    return Evidence(way * through, say("evidence.light", thickness=thickness, free=100 * free))


def _contact(reading: Reading, enclosed: float, named: bool) -> Evidence:
    candidate = reading.candidate
    gap = abs(candidate.gap)
    # an open ridge that touches nothing is more likely a hook or a stop
    loose = candidate.stands_out and (named or enclosed > _HARDLY)
    near = 1.0 if loose else float(np.interp(gap, *LAP_APART))
    says = say("evidence.contact", share=100 * candidate.share, gap=gap)
    return Evidence(near * graded(candidate.share, *OPPOSED), says)


def _thin_side(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    """Whether the light passes the cover along a short side of it, as it does with a lid."""
    seen = outline(bodies[reading.cover], reading.candidate.frame)
    tall = seen.deep / max(seen.short, 1e-9)
    return Evidence(graded(-tall, *TALL), say("evidence.tall", times=tall))


def _within(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    """Whether the base lies inside the cover, as a board in its holder does."""
    if lies_within(bodies[reading.base], bodies[reading.cover], _PLAY):
        return Evidence(HELD, say("evidence.held"))
    return Evidence(1.0, say("evidence.reaches-out"))


def _inlay(reading: Reading, meetings: Sequence[Meeting]) -> Evidence:
    """Whether the base also lies over the cover: it holds it from both sides."""
    z = reading.candidate.frame.axes[2]
    carrier = reading.candidate.carrier
    back = [
        m for m in meetings if m.pair == reading.pair and m.frame.axes[2] @ z * (1 if m.one == carrier else -1) < -0.9
    ]
    share = max((m.area for m in back), default=0.0) / max(reading.candidate.region.area, 1e-9)
    return Evidence(graded(-share, *INLAID), say("evidence.inlaid", share=100 * share))


def _size(reading: Reading, bodies: Mapping[str, Body], named: bool) -> Evidence:
    if not named and any(map(Sizes(bodies).is_small, reading.pair)):
        return Evidence(AGAINST, say("evidence.small"))
    return Evidence(1.0, say("evidence.size"))


def _room(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    """Whether there is room inside the seam, just below and above its level: a screw's shank leaves none."""
    candidate = reading.candidate
    points = spread(enclosed(candidate.region, candidate.length).buffer(-0.2 * candidate.width), _PROBES)
    if not len(points):
        return Evidence(1.0, say("evidence.room-unknown"))
    from_below = np.column_stack([points, np.full(len(points), candidate.level - _FAR)])
    closing = (reading.cover, reading.base, *_closers(reading, bodies))
    stands = sum(column(from_below, 1.0, bodies[i], candidate.frame)[0] > 0 for i in closing)
    open_share = float(np.mean(np.asarray(stands) == 0))
    through = graded(-open_share, *THROUGH_HOLE)
    says = say("evidence.open-within", share=100 * open_share) if through < 1.0 else say("evidence.room")
    near = _NEAR_LEVEL * candidate.width
    step = near + np.nan_to_num(candidate.border.step)  # behind a tongue or a stepped edge
    parts = bodies[reading.cover], bodies[reading.base]

    def empty(away: float) -> np.ndarray:
        at = np.column_stack([points, np.full(len(points), candidate.level + away)])
        return np.asarray(~(inside(at, parts[0], candidate.frame) | inside(at, parts[1], candidate.frame)))

    if any(empty(away).mean() >= VOID for away in sorted({-near, near, -step, step})):
        return Evidence(through, says)
    for deep in (1.5 * candidate.width, 3.0 * candidate.width):  # a lid that reaches down into the base
        for away in (-deep, deep):
            at = np.column_stack([points, np.full(len(points), candidate.level + away)])
            shut = empty(away)
            for way in (-1.0, 1.0):
                shut &= np.any([column(at, way, part, candidate.frame)[0] > 0 for part in parts], axis=0)
            if float(shut.mean()) >= VOID:
                return Evidence(through, says)
    return Evidence(AGAINST, say("evidence.solid-within"))


def _closers(reading: Reading, bodies: Mapping[str, Body]) -> list[str]:
    """Ids of other parts of a housing's size that lie on one of the two away from the seam: a tube's other end."""
    candidate = reading.candidate
    pair = [bodies[i] for i in (reading.cover, reading.base)]
    sizes = Sizes(bodies)
    found = []
    for ident, body in bodies.items():
        if ident in reading.pair or sizes.is_small(ident):
            continue
        seen = outline(body, candidate.frame)
        beyond = max(seen.low - candidate.level, candidate.level - seen.high) > candidate.width
        if beyond and any(lie_close(body, other, ON_EACH_OTHER) for other in pair):
            found.append(ident)
    return found


def ring_between(reading: Reading, bodies: Mapping[str, Body]) -> tuple[str, str] | None:
    """A part that is nothing but a low ring, a rib or a gasket drawn by itself, and the third part that it touches."""
    for ring in (reading.cover, reading.base):
        third = _touching(ring, reading, bodies)
        if third and _is_low_ring(bodies[ring], reading.candidate.frame):
            return ring, third[0]
    return None


def _is_low_ring(body: Body, frame: Frame) -> bool:
    seen = outline(body, frame)
    if 2 * body.volume >= seen.area * seen.deep:
        return False  # fuller than any ring
    area, border = footprint_size(body, frame)
    width, height = 2 * area / max(border, 1e-9), body.volume / max(area, 1e-9)
    low = seen.deep <= RING_HEIGHT * width and height >= OF_ITS_OWN * seen.deep
    return bool(low and 2 * area < shadow_area(body, frame))


def _ring(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    """Whether one of the two lies between the other and a third part, as a gasket does."""
    if ring_between(reading, bodies) is None:
        return Evidence(1.0, say("evidence.parts"))
    return Evidence(AGAINST, say("evidence.ring"))


def _touching(ring: str, reading: Reading, bodies: Mapping[str, Body]) -> list[str]:
    """Ids of the parts on which one of the two could lie besides the other: none of them small."""
    other = next(i for i in (reading.cover, reading.base) if i != ring)
    return [
        i
        for i in bodies
        if i not in (ring, other)
        and bodies[i].own_box.diagonal > SMALL * bodies[other].own_box.diagonal
        and lie_close(bodies[i], bodies[ring], ON_EACH_OTHER)
    ]


def spread(region: shapely.Geometry, most: int) -> np.ndarray:
    """(n, 2) mm, points of a square grid inside a region."""
    if region.is_empty or region.area <= 0:
        return np.empty((0, 2))
    x0, y0, x1, y1 = region.bounds
    step = np.sqrt(region.area / most)
    grid = np.stack(np.meshgrid(np.arange(x0 + step / 3, x1, step), np.arange(y0 + step / 3, y1, step)), axis=-1)
    grid = grid.reshape(-1, 2)
    found = grid[shapely.contains_xy(region, grid[:, 0], grid[:, 1])]
    return np.asarray(found[:: max(1, len(found) // most)])
