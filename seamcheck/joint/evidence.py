"""What speaks for and against a reading, each measured on its own; their product is the confidence."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import shapely

from seamcheck.catalogue.kinds import KIND_NAMES
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
        return Evidence(1.0, f"A floor lies {beside.height:.2f} mm lower beside the band: a weld rib.")
    return Evidence(0.95, f"No trap floor lies beside the band: {KIND_NAMES[candidate.kind]}.")


def _course(reading: Reading, bodies: Mapping[str, Body], named: bool) -> Evidence:
    enclosed, length = around(reading, bodies)
    if enclosed >= AROUND:
        return Evidence(1.0, f"It encloses {enclosed:.0%} of the smaller part's outline.")
    if reading.candidate.stands_out:
        if enclosed > 0.05:
            return Evidence(1.0, f"It is closed, round {enclosed:.0%} of the smaller part's outline.")
        if length >= ALONG:
            return Evidence(WEAK, "It encloses nothing, but runs along the whole part.")
        return Evidence(WEAK if named else DOUBTFUL, "It encloses nothing and is shorter than the part.")
    if enclosed > 0.05:
        return Evidence(DOUBTFUL, f"It is closed, but only round {enclosed:.0%} of the smaller part's outline.")
    return Evidence(DOUBTFUL if named else AGAINST, "It is an open strip along a side: it encloses nothing.")


def _light(reading: Reading) -> Evidence:
    free, thickness = reading.side.free, reading.thickness
    if free < FREE_ENOUGH:
        return Evidence(WEAK if reading.side.alone >= FREE_ENOUGH else AGAINST, "The light's way is not free.")
    if thickness > OPAQUE:
        weight = DOUBTFUL if not reading.candidate.stands_out else WEAK
        return Evidence(weight, f"Light would have to pass {thickness:.1f} mm of plastic.")
    if thickness > THIN:
        weight = WEAK if reading.candidate.stands_out else DOUBTFUL
        return Evidence(weight, f"Light passes {thickness:.1f} mm of plastic, which is much.")
    return Evidence(1.0, f"Light passes {thickness:.2f} mm of plastic, with a free way over {free:.0%} of it.")


def _contact(reading: Reading) -> Evidence:
    candidate = reading.candidate
    if candidate.stands_out or abs(candidate.gap) <= ON_EACH_OTHER:
        return Evidence(1.0, f"The faces are {abs(candidate.gap):.2f} mm apart.")
    return Evidence(AGAINST, f"The faces are {abs(candidate.gap):.2f} mm apart with no rib between them.")


def _size(reading: Reading, bodies: Mapping[str, Body], named: bool) -> Evidence:
    largest = max(diagonal(body.box) for body in bodies.values())
    smaller = min(diagonal(bodies[reading.cover].box), diagonal(bodies[reading.base].box))
    if smaller < SMALL * largest and not named:
        return Evidence(AGAINST, "One of the parts is as small as a screw or a nut beside the others.")
    return Evidence(1.0, "Both parts are of a housing's size.")


def _room(reading: Reading, bodies: Mapping[str, Body]) -> Evidence:
    """Whether there is room inside the seam, just below and above its level: a screw's shank leaves none."""
    candidate = reading.candidate
    inside = shapely.union_all([shapely.Polygon(p.exterior) for p in shapely.get_parts(candidate.region)])
    inside = inside.difference(candidate.region.buffer(0.2 * candidate.width))
    points = spread(inside, _PROBES)
    if not len(points):
        return Evidence(1.0, "Whether it encloses room can't be told.")
    from_below = np.column_stack([points, np.full(len(points), candidate.level - _FAR)])
    stands = sum(column(from_below, 1.0, bodies[i], candidate.frame)[0] > 0 for i in (reading.cover, reading.base))
    if float(np.mean(np.asarray(stands) == 0)) > THROUGH_HOLE:
        return Evidence(DOUBTFUL, "Both parts are open within it, so that it closes nothing.")
    near = _NEAR_LEVEL * candidate.width
    step = near + np.nan_to_num(candidate.beside.step)  # behind a tongue or a stepped edge
    parts = bodies[reading.cover], bodies[reading.base]

    def empty(away: float) -> np.ndarray:
        level = np.full(len(points), candidate.level + away)
        world = candidate.frame.world(np.column_stack([points, level]))
        return np.asarray(~(contains(parts[0], world) | contains(parts[1], world)))

    if any(empty(away).mean() >= VOID for away in sorted({-near, near, -step, step})):
        return Evidence(1.0, "It closes a room.")
    for deep in (1.5 * candidate.width, 3.0 * candidate.width):  # a lid that reaches down into the base
        for away in (-deep, deep):
            at = np.column_stack([points, np.full(len(points), candidate.level + away)])
            shut = empty(away)
            for way in (-1.0, 1.0):
                shut &= np.any([column(at, way, part, candidate.frame)[0] > 0 for part in parts], axis=0)
            if float(shut.mean()) >= VOID:
                return Evidence(1.0, "It closes a room.")
    return Evidence(AGAINST, "What it encloses is solid: there is no room that it could close.")


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
        return Evidence(1.0, "Both parts are more than the band itself.")
    return Evidence(AGAINST, "One of the parts is nothing but the band: a rib or a gasket drawn by itself.")


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
