"""Where the surfaces of two bodies intersect, and the lines along which they do."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.joint.facets import spans
from seamcheck.kernel import Body
from seamcheck.kernel.body import Facets
from seamcheck.kernel.boxes import boxes_meet

SHALLOW = 0.01  # mm: parts that overlap by less only touch
DEFLECTION, ANGLE = 0.002, 0.2  # mm, radians


def face_pairs(one: Body, other: Body) -> tuple[np.ndarray, np.ndarray]:
    """Indices (k,), (k,) of faces of both whose boxes overlap, where neither lies on one side of the other's plane."""
    mine, theirs = (np.flatnonzero(boxes_meet(x.boxes, y.box)) for x, y in ((one, other), (other, one)))
    if not len(mine) or not len(theirs):
        return np.empty(0, int), np.empty(0, int)
    tree = shapely.STRtree(spans(other.boxes[theirs][:, :2], other.boxes[theirs][:, 3:5]))
    i, j = tree.query(spans(one.boxes[mine][:, :2], one.boxes[mine][:, 3:5]))
    a, b = mine[i], theirs[j]
    real = pierce(one.boxes[a], other.boxes[b])
    a, b = a[real], b[real]
    real = _through_plane(one.planes[a], other.boxes[b]) & _through_plane(other.planes[b], one.boxes[a])
    return a[real], b[real]


def pierce(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """(n,) bool: whether boxes (n, 6) overlap by more than a touch, in every direction.

    A box without thickness in one direction must lie inside the other there.
    """
    with np.errstate(invalid="ignore"):
        common = np.minimum(a[:, 3:], b[:, 3:]) - np.maximum(a[:, :3], b[:, :3])
        reach = common > SHALLOW
        for x, y in ((a, b), (b, a)):
            thin = x[:, 3:] - x[:, :3] <= 2 * SHALLOW
            inside = (x[:, :3] > y[:, :3] + SHALLOW) & (x[:, 3:] < y[:, 3:] - SHALLOW)
            reach |= thin & inside
        return np.asarray(reach.all(axis=1))


def _through_plane(planes: np.ndarray, boxes: np.ndarray) -> np.ndarray:
    """(n,) bool: whether a box (6,) reaches through a plane (4,); true for what is no plane."""
    middle, half = (boxes[:, :3] + boxes[:, 3:]) / 2, (boxes[:, 3:] - boxes[:, :3]) / 2
    away = (planes[:, :3] * middle).sum(axis=1) - planes[:, 3]
    reach = (np.abs(planes[:, :3]) * half).sum(axis=1)
    with np.errstate(invalid="ignore"):
        return np.asarray(~(np.abs(away) > reach - SHALLOW))  # NaN: not a plane


def crossings(
    one: Body, other: Body, a: np.ndarray, b: np.ndarray
) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Where edges of facets pass through facets of the other body: place (k, 3) mm, pair of facets (k,), faces (k,)."""
    first, second = _facets(one, a, other.box), _facets(other, b, one.box)
    wanted = np.unique(a.astype(np.int64) * len(other.faces) + b)
    low, high = (x.corners.min(axis=1) for x in (first, second)), (x.corners.max(axis=1) for x in (first, second))
    (low_a, low_b), (high_a, high_b) = tuple(low), tuple(high)
    tree = shapely.STRtree(spans(low_b, high_b))
    i, j = tree.query(spans(low_a, high_a))
    near = (low_a[i, 2] <= high_b[j, 2]) & (high_a[i, 2] >= low_b[j, 2])
    i, j = i[near], j[near]
    near = np.isin(first.face[i].astype(np.int64) * len(other.faces) + second.face[j], wanted)
    i, j = i[near], j[near]
    near = _reach_through(one.planes, first.face, second, i, j) & _reach_through(other.planes, second.face, first, j, i)
    i, j = i[near], j[near]
    places, pairs = [np.empty((0, 3))], [np.empty(0, int)]
    for edged, whole in ((first.corners[i], second.corners[j]), (second.corners[j], first.corners[i])):
        for k in range(3):
            place, hit = _edge_through(edged[:, k], edged[:, (k + 1) % 3], whole)
            places.append(place[hit])
            pairs.append(np.flatnonzero(hit))
    pair = np.concatenate(pairs)
    return np.concatenate(places), pair, first.face[i[pair]], second.face[j[pair]]


def _reach_through(planes: np.ndarray, owner: np.ndarray, facets: Facets, i: np.ndarray, j: np.ndarray) -> np.ndarray:
    """(k,) bool: whether facet j has corners on both sides of the plane of facet i's face; true for what is none."""
    faces, place = np.unique(owner, return_inverse=True)
    through = np.ones((len(faces), len(facets.corners)), dtype=bool)
    for row in np.flatnonzero(np.isfinite(planes[faces, 0])):
        away = facets.corners @ planes[faces[row], :3] - planes[faces[row], 3]
        below, above = away < 0.0, away > 0.0
        through[row] = (below[:, 0] | below[:, 1] | below[:, 2]) & (above[:, 0] | above[:, 1] | above[:, 2])
    return np.asarray(through[place[i], j])


def _facets(body: Body, faces: np.ndarray, box: np.ndarray) -> Facets:
    """Facets of some faces; holes of theirs that lie beyond a box (6,) may be filled."""
    return body.facets(np.unique(faces), DEFLECTION, ANGLE, lambda boxes: np.flatnonzero(boxes_meet(boxes, box)))


def _edge_through(start: np.ndarray, end: np.ndarray, corners: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Where edges (n, 3) meet triangles (n, 3, 3), and whether both ends lie off its plane by more than a touch."""
    one, two = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    normal = np.cross(one, two)
    with np.errstate(invalid="ignore", divide="ignore"):
        normal = normal / np.linalg.norm(normal, axis=1, keepdims=True)
        before, behind = (((x - corners[:, 0]) * normal).sum(axis=1) for x in (start, end))
        place = start + (before / (before - behind))[:, None] * (end - start)
        hit = (before * behind < 0.0) & (np.minimum(np.abs(before), np.abs(behind)) > SHALLOW)
        for k in range(3):
            side = corners[:, (k + 1) % 3] - corners[:, k]
            hit &= (np.cross(side, place - corners[:, k]) * normal).sum(axis=1) >= -1e-9
    return place, hit


def lines_of(place: np.ndarray, pair: np.ndarray) -> list[np.ndarray]:
    """Connected crossings, as indices (k,) each: those of one pair of facets, and those at one place (n, 3) mm."""
    if not len(place):
        return []
    from scipy.sparse import coo_matrix
    from scipy.sparse.csgraph import connected_components

    _, spot = np.unique(np.round(place, 4), axis=0, return_inverse=True)
    _, facets = np.unique(pair, return_inverse=True)
    spot, count = spot.ravel(), int(spot.max()) + 1
    size = count + int(facets.max()) + 1
    graph = coo_matrix((np.ones(len(spot)), (spot, count + facets)), shape=(size, size))
    _, label = connected_components(graph, directed=False)
    mine = label[spot]
    return [np.flatnonzero(mine == k) for k in np.unique(mine)]
