"""Which faces of two bodies oppose each other within a small distance, along which direction.

Everything here works on coarse facets: it finds, it does not measure.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from scipy.spatial import cKDTree

from seamcheck.joint.constants import LARGEST_GAP, LARGEST_OVERLAP, NEAR
from seamcheck.joint.facets import area_vectors, bounds_of, lengths
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet

STEEPEST = 0.75  # cosine between a face's normal and the direction in which it can oppose
_DEFLECTION, _ANGLE = 0.05, 0.35  # mm, radians: facets fine enough for finding
_PER_SAMPLE, _MOST_SAMPLES = 0.5, 64  # mm² of a facet for one sample, and how many it has at most
_EVEN = np.array([0.7548776662466927, 0.5698402909980532])  # 1 / p, 1 / p² with p³ = p + 1: fills a square evenly
_ON_AXIS = 0.95  # cosine
_MOST_DIRECTIONS = 60  # directions tried; a cluster spans 25 degrees


class Surface(Struct, frozen=True, eq=False):
    """Coarse facets of the faces of one body that lie near the other body.

    corners (m, 3, 3) mm; normal (m, 3) unit, outward; area (m,) mm²; face (m,) index
    """

    corners: np.ndarray
    normal: np.ndarray
    area: np.ndarray
    face: np.ndarray


class Coverage(Struct, frozen=True, eq=False):
    """How much of each face of one side is opposed by the other side.

    face (k,) index; share (k,) 0..1 of the face's area; gap (k,) mm mean; gap_min (k,) mm; area (k,) mm²
    """

    face: np.ndarray
    share: np.ndarray
    gap: np.ndarray
    gap_min: np.ndarray
    area: np.ndarray


def near_surface(body: Body, other_box: np.ndarray, reach: float | None = None) -> Surface:
    """Facets of the faces whose boxes come within ``reach`` (mm; else ``NEAR``) of the other body's box (6,)."""
    near = np.flatnonzero(boxes_meet(body.boxes, other_box, NEAR if reach is None else reach))
    facets = body.facets(near, _DEFLECTION, _ANGLE)
    across = area_vectors(facets.corners)
    length = lengths(across)
    keep = length > 1e-9
    return Surface(facets.corners[keep], across[keep] / length[keep, None], length[keep] / 2, facets.face[keep])


def directions(a: Surface, b: Surface, most: int = 6) -> list[np.ndarray]:
    """Unit vectors (3,) from a to b along which faces of the two oppose each other, the largest common area first.

    A round wall looks in many directions: those along the main axes of all faces are kept besides the ``most`` largest.
    """
    normals, weights = a.normal, a.area.copy()
    found: list[tuple[float, np.ndarray]] = []
    total = weights.sum()
    while len(found) < _MOST_DIRECTIONS and weights.sum() > 0.002 * total:
        seed = normals[int(np.argmax(_cluster_weight(normals, weights)))]
        member = (normals @ seed > 0.9) & (weights > 0)
        mean = (normals[member] * weights[member, None]).sum(axis=0)
        mean /= np.linalg.norm(mean)
        common = min(weights[member].sum(), b.area[b.normal @ mean < -STEEPEST].sum())
        weights[(normals @ mean > 0.9) | member] = 0.0
        found.append((common, mean))
    ranked = sorted((pair for pair in found if pair[0] > 0), key=lambda pair: -pair[0])
    axes = np.linalg.eigh(np.einsum("k,ki,kj->ij", a.area, a.normal, a.normal))[1]
    kept = ranked[:most] + [pair for pair in ranked[most:] if (np.abs(pair[1] @ axes) > _ON_AXIS).any()]
    return [mean for _, mean in kept]


def face_all_round(a: Surface, b: Surface, near: float = 0.3) -> bool:
    """Whether what the two have in common runs round an axis: a shaft in a bore, faced from all sides.

    Facets count that oppose one of the other side within ``near`` mm; round is where their normals, weighted by
    area, cancel out and leave one direction free.
    """
    if not len(a.area) or not len(b.area):
        return False
    points, owner = _samples(a.corners, a.area)
    theirs, other = _samples(b.corners, b.area)
    tree = cKDTree(theirs)
    weight = (a.area / np.bincount(owner, minlength=len(a.area)))[owner]
    reach = near + np.sqrt(b.area.max() / _MOST_SAMPLES + 0.5)
    away, hit = tree.query(points, distance_upper_bound=reach)
    met = np.isfinite(away)
    points, owner, weight, hit = points[met], owner[met], weight[met], hit[met]
    normal = a.normal[owner]
    opposed = (normal * b.normal[other[hit]]).sum(axis=1) < -0.9
    apart = np.abs(((theirs[hit] - points) * normal).sum(axis=1))
    keep = opposed & (apart <= near)
    if not keep.any():
        return False
    normal, weight = normal[keep], weight[keep] / weight[keep].sum()
    mean = np.linalg.norm((normal * weight[:, None]).sum(axis=0))
    spread = np.linalg.eigvalsh(np.einsum("k,ki,kj->ij", weight, normal, normal))
    return bool(mean < 0.25 and spread[0] < 0.2 and spread[1] > 0.35)


def _cluster_weight(normals: np.ndarray, weights: np.ndarray) -> np.ndarray:
    """Area that shares a facet's direction, by rounding the directions to a coarse grid."""
    keys = np.round(normals * 8).astype(int) @ np.array([1, 64, 4096])
    _, inverse = np.unique(keys, return_inverse=True)
    sums = np.bincount(inverse, weights=weights)
    return sums[inverse] * (weights > 0)


def coverage(side: Surface, other: Surface, frame: Frame, sign: float = 1.0) -> Coverage:
    """How each face of one side is opposed by the other along the frame's z (sign +1) or against it (-1).

    Samples on the side's facets are projected onto the other's facets; a sample is opposed where the
    distance along the direction lies between -LARGEST_OVERLAP and LARGEST_GAP.
    """
    z = sign * frame.axes[2]
    mine = np.flatnonzero(side.normal @ z > STEEPEST)
    theirs = np.flatnonzero(other.normal @ z < -STEEPEST)
    if not len(mine) or not len(theirs):
        nothing = np.empty(0)
        return Coverage(nothing.astype(int), nothing, nothing, nothing, nothing)
    area = side.area[mine]
    faces, of = np.unique(side.face[mine], return_inverse=True)
    above = frame.local(other.corners[theirs])
    meets, met = _may_meet(frame.local(side.corners[mine]), above, sign)
    of_face = np.bincount(of, weights=area)
    if not meets.any():
        zero, nothing = np.zeros(len(faces)), np.full(len(faces), np.nan)
        return Coverage(faces, zero, nothing, np.full(len(faces), np.inf), of_face)
    points, owner = _samples(side.corners[mine], area, meets)
    weight = (area / np.maximum(np.bincount(owner, minlength=len(mine)), 1))[owner]
    gap = surface_distance(frame.local(points), above[met], sign)
    hit = np.isfinite(gap)
    place = of[owner]
    opposed = np.bincount(place, weights=weight * hit, minlength=len(faces))
    with np.errstate(invalid="ignore", divide="ignore"):
        mean = np.bincount(place[hit], weights=weight[hit] * gap[hit], minlength=len(faces)) / opposed
    least = np.full(len(faces), np.inf)
    np.minimum.at(least, place[hit], gap[hit])
    return Coverage(faces, opposed / of_face, mean, least, of_face)


def _may_meet(mine: np.ndarray, theirs: np.ndarray, sign: float) -> tuple[np.ndarray, np.ndarray]:
    """Which facets (n, 3, 3) of one side, in a frame, can be opposed at all by which of the other's (m, 3, 3).

    Returns
    -------
    (n,) and (m,) bool: those within the bounds of what is left of the other side, which is looked at twice
    """
    low, high = bounds_of(mine)
    above, below = (LARGEST_GAP, LARGEST_OVERLAP) if sign > 0 else (LARGEST_OVERLAP, LARGEST_GAP)
    reach = np.array([[0.0, 0.0, above], [0.0, 0.0, below]])
    first, last = bounds_of(theirs)
    first, last = first - reach[0], last + reach[1]
    some, met = np.ones(len(mine), dtype=bool), np.ones(len(theirs), dtype=bool)
    for _ in range(2):
        if not some.any() or not met.any():
            return np.zeros_like(some), np.zeros_like(met)
        some &= ((low <= last[met].max(axis=0)) & (high >= first[met].min(axis=0))).all(axis=1)
        if some.any():
            met &= ((first <= high[some].max(axis=0)) & (last >= low[some].min(axis=0))).all(axis=1)
    return some, met


def surface_distance(points: np.ndarray, triangles: np.ndarray, sign: float) -> np.ndarray:
    """Signed distance along z from each point to the nearest triangle above (sign +1) or below (-1) it.

    Parameters
    ----------
    points : (n, 3); triangles : (m, 3, 3), both in one frame, mm

    Returns
    -------
    (n,) float, mm, within [-LARGEST_OVERLAP, LARGEST_GAP]; NaN where there is none
    """
    heights, index, _ = heights_at(points, triangles)
    distance = sign * (heights - points[index, 2])
    ok = (distance >= -LARGEST_OVERLAP) & (distance <= LARGEST_GAP)
    out = np.full(len(points), np.nan)
    order = np.argsort(-np.abs(distance[ok]), kind="stable")
    out[index[ok][order]] = distance[ok][order]  # the smallest is written last
    return out


def _samples(corners: np.ndarray, area: np.ndarray, some: np.ndarray | None = None) -> tuple[np.ndarray, np.ndarray]:
    """Points spread evenly in facets, or in some of them (m,) bool, in no rows: points (n, 3), the facet of each (n,).

    In rows they would lie alike in all facets of a ring, and a border between two rows would count a tenth wrong. Here
    each facet takes the next points of one sequence that fills a square evenly (two of them fold into a triangle).
    """
    count = np.clip(np.ceil(area / _PER_SAMPLE), 1, _MOST_SAMPLES).astype(int)
    owner = np.repeat(np.arange(len(count)), count)
    number = np.arange(len(owner))
    if some is not None:
        number = np.flatnonzero(some[owner])
        owner = owner[number]
    u, v = (number[:, None] * _EVEN + 0.5).T % 1.0
    over = u + v > 1.0
    u, v = np.where(over, 1.0 - u, u), np.where(over, 1.0 - v, v)
    a, b, c = corners[owner].transpose(1, 0, 2)
    return a + u[:, None] * (b - a) + v[:, None] * (c - a), owner
