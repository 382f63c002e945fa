"""Bands of opposed faces that could be the top of a weld rib, for one pair of bodies and one direction."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache, partial

import numpy as np
import shapely
from msgspec import Struct
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.constants import LEAST_SHARE, ON_EACH_OTHER
from seamcheck.joint.contact import STEEPEST, Coverage, Surface
from seamcheck.joint.facets import bounds_of
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.joint.regions import points_along, union_region
from seamcheck.kernel import Body

SMOOTH = 0.9962  # cosine of 5 degrees: faces that meet more sharply are not one band
SQUARE = 0.9998  # cosine of 1 degree: a plane that is seen as it is
DEEPEST_FLOOR = 3.0  # mm: what lies further below the rib top is no trap floor
FALLEN, FALLEN_WIDTHS = 0.15, 0.25  # mm, or band widths if less, that the surface beside a rib lies lower than its top
_LOWER = 0.01  # mm that it is lower already where a rounding of the rib's edge only begins
_NEAREST, _WIDEST_ROUNDING = 0.2, 0.6  # mm beside the band from and to which it must have fallen
_AWAY = (_NEAREST, 0.4, _WIDEST_ROUNDING, 1.0)  # mm beside a band at which it is tested
_FULL = 0.6  # mm: beside narrower bands it is tested nearer


EMPTY = shapely.Polygon()


class Patch(Struct, frozen=True, eq=False):
    """A connected band of faces of one body that the other body opposes.

    faces : indices; region : its projection, mm; gap : mm, area-weighted mean; share : 0..1 opposed
    length, width : mm, half the perimeter and area over it (a band's length and mean width)
    beside : what ``falls`` and ``shoulder`` are read from; looked at for those that are asked for it
    rounded : its faces curve from top to flank (a rib top without a flat)
    rest : what of its faces is no part of it, mm
    """

    faces: tuple[int, ...]
    region: BaseGeometry
    gap: float
    share: float
    length: float
    width: float
    beside: Callable[[], tuple[float, float]]
    rounded: bool = False
    rest: BaseGeometry = EMPTY

    @property
    def falls(self) -> float:
        """0..1 of its border beside which the own body's surface lies lower or is absent."""
        return self.beside()[0]

    @property
    def shoulder(self) -> float:
        """0..1 of its border beside which that lower surface is near, as a trap floor is."""
        return self.beside()[1]


def find_patches(body: Body, side: Surface, cover: Coverage, frame: Frame, sign: float) -> list[Patch]:
    """Bands among the opposed faces of one side; the side's top faces along sign * z."""
    opposed = cover.face[cover.share >= LEAST_SHARE]
    if not len(opposed):
        return []
    z = sign * frame.axes[2]
    flat_share = _flat_share(side, z)
    patches = []
    for rounded in (False, True):
        members = [int(f) for f in opposed if (flat_share[int(f)] < 0.95) == rounded]
        for group in _groups(body, side, members, z, smooth=not rounded):
            patch = _patch(body, side, cover, group, frame, sign, rounded)
            if patch is not None:
                patches.append(patch)
    return patches


def rings_within(
    body: Body, side: Surface, cover: Coverage, covered: Callable[[BaseGeometry, float], BaseGeometry], frame: Frame
) -> list[Patch]:
    """Closed bands of contact within planes that are larger than they, as of a lid on a broad plate round a window.

    Parameters
    ----------
    cover : how the side's faces are opposed along the frame's z
    covered : (region, its height in mm) -> what of it has the other part right over it
    """
    z = frame.axes[2]
    found = []
    for face, share, gap in zip(cover.face.tolist(), cover.share, cover.gap, strict=True):
        plane = body.planes[face]
        if not 0.0 < share < LEAST_SHARE or not abs(gap) <= ON_EACH_OTHER or not plane[:3] @ z > SQUARE:
            continue
        whole = union_region(body, [face], frame, 0.02)
        level = float(frame.local(side.corners[side.face == face]).reshape(-1, 3)[:, 2].mean())
        for part in shapely.get_parts(covered(whole, level)):
            if part.geom_type != "Polygon" or not any(shapely.Polygon(i).area > part.area for i in part.interiors):
                continue
            length = part.length / 2
            beside = cache(partial(_beside, part, side, [face], frame, 1.0))
            rest = whole.difference(part)
            found.append(
                Patch((face,), part, float(gap), 1.0, length, part.area / length, beside, rounded=False, rest=rest)
            )
    return found


def _flat_share(side: Surface, z: np.ndarray) -> dict[int, float]:
    faces, place = np.unique(side.face, return_inverse=True)
    flat = side.normal @ z > STEEPEST
    share = np.bincount(place, weights=side.area * flat) / np.bincount(place, weights=side.area)
    return dict(zip(faces.tolist(), share.tolist(), strict=True))


def _groups(body: Body, side: Surface, members: list[int], z: np.ndarray, smooth: bool) -> list[list[int]]:
    """Faces joined over shared edges, where they meet smoothly."""
    if len(members) < 2:
        return [members] if members else []
    by_edge: dict[int, list[int]] = {}
    for place, face in enumerate(members):
        for edge in body.edge_indices(face):
            by_edge.setdefault(edge, []).append(place)
    pairs = [(places[0], other) for places in by_edge.values() for other in places[1:]]
    if smooth and pairs:
        mean = np.array([_mean_normal(side, face, z) for face in members])
        planar = np.isfinite(body.planes[members, 0])
        pairs = [(a, b) for a, b in pairs if not (planar[a] and planar[b]) or mean[a] @ mean[b] > SMOOTH]
    one, other = np.array(pairs, dtype=int).reshape(-1, 2).T
    graph = coo_array((np.ones(len(one)), (one, other)), shape=(len(members), len(members)))
    count, label = connected_components(graph, directed=False)
    return [[members[i] for i in np.flatnonzero(label == k)] for k in range(count)]


def _mean_normal(side: Surface, face: int, z: np.ndarray) -> np.ndarray:
    mine = (side.face == face) & (side.normal @ z > 0)
    total = (side.normal[mine] * side.area[mine, None]).sum(axis=0)
    return np.asarray(total / np.linalg.norm(total))


def _patch(
    body: Body, side: Surface, cover: Coverage, faces: list[int], frame: Frame, sign: float, rounded: bool
) -> Patch | None:
    region = union_region(body, faces, frame, 0.02)
    if region.is_empty or region.area <= 0:
        return None
    mine = np.isin(cover.face, faces)
    area = cover.area[mine]
    with np.errstate(invalid="ignore"):
        gap = np.nansum(cover.gap[mine] * area * cover.share[mine]) / np.sum(area * cover.share[mine])
    if rounded:
        gap = float(cover.gap_min[mine].min())
    length = region.length / 2
    return Patch(
        tuple(sorted(faces)),
        region,
        float(gap),
        float(np.sum(area * cover.share[mine]) / area.sum()),
        float(length),
        float(region.area / length),
        cache(partial(_beside, region, side, faces, frame, sign)),
        rounded,
    )


def _beside(region: BaseGeometry, side: Surface, faces: list[int], frame: Frame, sign: float) -> tuple[float, float]:
    """Shares of the band's border beside which the own surface lies lower or is absent, and near but lower."""
    z = sign * frame.axes[2]
    own = np.isin(side.face, faces) & (side.normal @ z > 0)
    facing = (side.normal @ z > 0.2) & ~np.isin(side.face, faces)
    surface = _around(frame.local(side.corners[facing]), region, _AWAY[-1])
    edge = region.buffer(_NEAREST, quad_segs=4).boundary
    count = int(np.clip(edge.length / 1.0, 16, 400))
    at = points_along(edge, np.linspace(0, edge.length, count, endpoint=False))
    foot = shapely.get_coordinates(shapely.shortest_line(shapely.points(at), region))[1::2]
    outward = (at - foot) / np.maximum(np.linalg.norm(at - foot, axis=1), 1e-9)[:, None]
    level = _level(foot - 0.02 * outward, frame.local(side.corners[own]), sign)
    width = 2 * region.area / region.length
    fallen_by, scale = min(FALLEN, FALLEN_WIDTHS * width), float(np.clip(width / _FULL, 0.25, 1.0))
    away = scale * np.array(_AWAY)  # a drafted or rounded flank hides the floor right beside it
    beside = foot + away[:, None, None] * outward
    height, index, _ = heights_at(beside.reshape(-1, 2), surface)
    height = sign * height
    near = height > level[index % count] - DEEPEST_FLOOR
    highest = np.full(beside.shape[:2], -np.inf)
    np.maximum.at(highest.reshape(-1), index[near], height[near])
    fallen = highest < level - fallen_by
    descends = np.logical_and.accumulate(highest < level - _LOWER)
    falls = (fallen & descends)[away <= scale * _WIDEST_ROUNDING + 1e-9].any(axis=0)
    shoulder = float((fallen & np.isfinite(highest)).mean(axis=1).max())
    return float(np.mean(falls)), shoulder


def _around(corners: np.ndarray, region: BaseGeometry, reach: float) -> np.ndarray:
    """Of facets (n, 3, 3) those whose bounds, seen along z, come within reach (mm) of a region's."""
    x0, y0, x1, y1 = region.bounds
    low, high = bounds_of(corners[:, :, :2])
    near = (high >= (x0 - reach, y0 - reach)).all(axis=1) & (low <= (x1 + reach, y1 + reach)).all(axis=1)
    return np.asarray(corners[near])


def _level(points: np.ndarray, top: np.ndarray, sign: float) -> np.ndarray:
    """Height (n,) of a band's facets (m, 3, 3) at points (n, 2) just within its border, times ``sign``."""
    height, index, _ = heights_at(points, top)
    level = np.full(len(points), -np.inf)
    np.maximum.at(level, index, sign * height)
    beside = np.flatnonzero(np.isinf(level))  # a coarse facet's chord leaves out the border of a round face
    if len(beside):
        corners = top.reshape(-1, 3)
        level[beside] = sign * corners[cKDTree(corners[:, :2]).query(points[beside])[1], 2]
    return level
