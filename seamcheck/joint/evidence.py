"""What speaks for and against a reading, each measured on its own; their product is the confidence."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import shapely

from seamcheck.catalogue.say import say
from seamcheck.joint.constants import (
    ALONG,
    AROUND,
    FREE_ENOUGH,
    OF_ITS_OWN,
    ON_EACH_OTHER,
    OPAQUE,
    RING_HEIGHT,
    SMALL,
    THIN,
    THROUGH_HOLE,
    VOID,
)
from seamcheck.joint.light import column, flat_boxes
from seamcheck.joint.reading import Evidence, Reading
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import diagonal
from seamcheck.kernel.distance import contains

AGAINST, DOUBTFUL, WEAK = 0.2, 0.45, 0.8
"""Weights: alone enough against a reading; with anything else against it; a remark."""

_FAR = 1e4  # mm below everything
_NEAR_LEVEL = 0.3  # band widths above and below the band
_PROBES = 48  # points inside the seam at which it is asked whether there is room


def weigh(reading: Reading, bodies: Mapping[str, Body], named: bool) -> tuple[Evidence, ...]:
    """All evidence on one reading.

    Parameters
    ----------
    bodies : all solids, by part id
    named : whether the user named cover or base: then an open stretch along one side may be meant
    """
    found = [_shape(reading), _course(reading, bodies, named), _light(reading), _contact(reading)]
    if not reading.candidate.stands_out:
        found += [_size(reading, bodies, named), _room(reading, bodies), _ring(reading, bodies)]
    return tuple(found)


def around(reading: Reading, bodies: Mapping[str, Body]) -> tuple[float, float]:
    """Area that the seam encloses over that of the smaller part's outline, and its length over that part's.

    Both are seen along the light; the outline is a box in the frame's axes.
    """
    candidate = reading.candidate
    low, high = flat_boxes(np.array([bodies[reading.cover].box, bodies[reading.base].box]), candidate.frame)
    sides = high - low
    smaller = sides[int(np.argmin(sides.prod(axis=1)))]
    return candidate.encloses / max(smaller.prod(), 1e-9), candidate.length / max(float(smaller.max()), 1e-9)


def _shape(reading: Reading) -> Evidence:
    candidate, beside = reading.candidate, reading.candidate.beside
    if candidate.stands_out:
        return Evidence(1.0, say("evidence.rib", height=beside.height))
    return Evidence(0.95, say("evidence.no-floor", kind=candidate.kind))


def _course(reading: Reading, bodies: Mapping[str, Body], named: bool) -> Evidence:
    enclosed, length = around(reading, bodies)
    if enclosed >= AROUND:
        return Evidence(1.0, say("evidence.encloses", share=100 * enclosed))
    if reading.candidate.stands_out:
        if enclosed > 0.05:
            return Evidence(1.0, say("evidence.closed", share=100 * enclosed))
        if length >= ALONG:
            return Evidence(WEAK, say("evidence.along"))
        return Evidence(WEAK if named else DOUBTFUL, say("evidence.short"))
    if enclosed > 0.05:
        return Evidence(DOUBTFUL, say("evidence.closed-little", share=100 * enclosed))
    return Evidence(DOUBTFUL if named else AGAINST, say("evidence.strip"))


def _light(reading: Reading) -> Evidence:
    free, thickness = reading.side.free, reading.thickness
    if free < FREE_ENOUGH:
        return Evidence(WEAK if reading.side.alone >= FREE_ENOUGH else AGAINST, say("evidence.blocked"))
    if thickness > OPAQUE:
        weight = DOUBTFUL if not reading.candidate.stands_out else WEAK
        return Evidence(weight, say("evidence.thick", thickness=thickness))
    if thickness > THIN:
        weight = WEAK if reading.candidate.stands_out else DOUBTFUL
        return Evidence(weight, say("evidence.rather-thick", thickness=thickness))
    return Evidence(1.0, say("evidence.light", thickness=thickness, free=100 * free))


def _contact(reading: Reading) -> Evidence:
    candidate = reading.candidate
    if candidate.stands_out or abs(candidate.gap) <= ON_EACH_OTHER:
        return Evidence(1.0, say("evidence.contact", gap=abs(candidate.gap)))
    return Evidence(AGAINST, say("evidence.apart", gap=abs(candidate.gap)))


def _size(reading: Reading, bodies: Mapping[str, Body], named: bool) -> Evidence:
    largest = max(diagonal(body.box) for body in bodies.values())
    smaller = min(diagonal(bodies[reading.cover].box), diagonal(bodies[reading.base].box))
    if smaller < SMALL * largest and not named:
        return Evidence(AGAINST, say("evidence.small"))
    return Evidence(1.0, say("evidence.size"))


def _room(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    """Whether there is room inside the seam, just below and above its level: a screw's shank leaves none."""
    candidate = reading.candidate
    inside = shapely.union_all([shapely.Polygon(p.exterior) for p in shapely.get_parts(candidate.region)])
    inside = inside.difference(candidate.region.buffer(0.2 * candidate.width))
    points = spread(inside, _PROBES)
    if not len(points):
        return Evidence(1.0, say("evidence.room-unknown"))
    from_below = np.column_stack([points, np.full(len(points), candidate.level - _FAR)])
    stands = sum(column(from_below, 1.0, bodies[i], candidate.frame)[0] > 0 for i in (reading.cover, reading.base))
    if float(np.mean(np.asarray(stands) == 0)) > THROUGH_HOLE:
        return Evidence(DOUBTFUL, say("evidence.open-within"))
    near = _NEAR_LEVEL * candidate.width
    step = near + np.nan_to_num(candidate.beside.step)  # behind a tongue or a stepped edge
    for away in sorted({-near, near, -step, step}):
        level = np.full(len(points), candidate.level + away)
        world = candidate.frame.world(np.column_stack([points, level]))
        solid = contains(bodies[reading.cover], world) | contains(bodies[reading.base], world)
        if 1.0 - solid.mean() >= VOID:
            return Evidence(1.0, say("evidence.room"))
    return Evidence(AGAINST, say("evidence.solid-within"))


def ring_of_its_own(reading: Reading, bodies: Mapping[str, Body]) -> str | None:
    """The part that is nothing but the band, a ring: a rib or a gasket drawn by itself."""
    candidate = reading.candidate
    for ident in (reading.cover, reading.base):
        body = bodies[ident]
        box = candidate.frame.local_vectors(body.box[3:] - body.box[:3])
        height = body.volume / max(candidate.region.area, 1e-9)
        if height <= RING_HEIGHT * candidate.width and OF_ITS_OWN < height / max(abs(box[2]), 1e-9) < 1 / OF_ITS_OWN:
            return ident
    return None


def _ring(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    if ring_of_its_own(reading, bodies) is None or len(bodies) < 3:
        return Evidence(1.0, say("evidence.parts"))
    return Evidence(AGAINST, say("evidence.ring"))


def spread(region: shapely.Geometry, most: int) -> np.ndarray:
    """(n, 2) points of a square grid inside a region."""
    if region.is_empty or region.area <= 0:
        return np.empty((0, 2))
    x0, y0, x1, y1 = region.bounds
    step = np.sqrt(region.area / most)
    grid = np.stack(np.meshgrid(np.arange(x0 + step / 3, x1, step), np.arange(y0 + step / 3, y1, step)), axis=-1)
    grid = grid.reshape(-1, 2)
    found = grid[shapely.contains_xy(region, grid[:, 0], grid[:, 1])]
    return np.asarray(found[:: max(1, len(found) // most)])
