"""Triangles of faces on a ball, such as domes and lenses: even all over, between the given nodes of their edges.

The kernel's mesher adds points one by one to a triangulation of the whole face: its time grows by the square of them.
"""

from __future__ import annotations

import numpy as np
import shapely
from scipy.spatial import cKDTree

_FURTHEST = np.cos(
    np.radians(75.0)
)  # of the face's middle direction: what reaches further round the ball is left alone
_FIRST_ROW, _ON_ROW, _BEHIND = 0.6, 0.8, 0.6  # spacings: border to first row, along it, from it to the even rows
_SAFE, _FINER = 0.66, 0.9  # share of the spacing of even triangles that those at borders allow, and then of what fits
_TRIES = 6
_AREA = 0.01  # share by which the facets' area may differ from that of the face


def ball_triangles(
    lines: list[np.ndarray], centre: np.ndarray, radius: float, area: float, deflection: float
) -> np.ndarray | None:
    """Triangulate a face on a ball.

    Parameters
    ----------
    lines : (k, 3) mm each, edges of the face, seams and poles left out
    centre : (3,) mm; radius : mm
    area : mm², of the face
    deflection : mm, largest distance between ball and triangles

    Returns
    -------
    (m, 3, 3) corners, mm, counter-clockwise seen from outside of the ball. None where the face reaches far round the
    ball, or the triangles do not keep its border.

    Notes
    -----
    The face is laid flat by Lambert's azimuthal projection, which keeps areas, about its middle direction. An even
    triangle of side e with its corners on a ball of radius r lies e² / (6 r) below it in the middle.
    """
    if not lines:
        return None
    away = [(line - centre) / radius for line in lines]
    middle = np.concatenate(away).mean(axis=0)
    size = np.linalg.norm(middle)
    if size < 0.1:
        return None
    up = middle / size
    if min(float((line @ up).min()) for line in away) < _FURTHEST:
        return None
    axes = _axes(up)
    flat = [_laid_flat(line, axes) * radius for line in away]
    region = _region(flat)
    if region is None or abs(region.area - area) > _AREA * area:
        return None
    nodes, solid = np.concatenate(flat), np.concatenate(lines)
    _, first = np.unique(np.round(nodes, 7), axis=0, return_index=True)
    nodes, solid = nodes[first], solid[first]
    spacing = _SAFE * float(np.sqrt(6.0 * radius * deflection))
    for _ in range(_TRIES):
        inner = _inner(region, spacing)
        every = np.concatenate([nodes, inner])
        index = _joined(every, region)
        if index is None or not _keeps(flat, every, index):
            return None
        corners = np.concatenate([solid, centre + radius * _raised(inner / radius, axes)])[index]
        below = float((radius - np.linalg.norm(corners.mean(axis=1) - centre, axis=1)).max())
        if below <= deflection:
            return np.asarray(corners)
        spacing *= _FINER * max(0.5, float(np.sqrt(deflection / below)))  # the triangles at the border are the largest
    return None


def _axes(up: np.ndarray) -> np.ndarray:
    """(3, 3) right-handed rows, the last one up."""
    x = np.cross(np.eye(3)[int(np.argmin(np.abs(up)))], up)
    x /= np.linalg.norm(x)
    return np.array([x, np.cross(up, x), up])


def _laid_flat(away: np.ndarray, axes: np.ndarray) -> np.ndarray:
    """(n, 2) of directions (n, 3), in ball radii: Lambert's azimuthal equal-area projection."""
    local = away @ axes.T
    return np.asarray(local[:, :2] * np.sqrt(2.0 / (1.0 + local[:, 2:])))


def _raised(flat: np.ndarray, axes: np.ndarray) -> np.ndarray:
    """(n, 3) directions of places (n, 2): the same backwards."""
    square = (flat**2).sum(axis=1, keepdims=True)
    return np.asarray(np.hstack([flat * np.sqrt(1.0 - square / 4.0), 1.0 - square / 2.0]) @ axes)


def _region(flat: list[np.ndarray]) -> shapely.Polygon | None:
    """The polygon with its holes that lines (k, 2) enclose; None where they do not close to one."""
    merged = shapely.line_merge(shapely.multilinestrings([shapely.linestrings(np.round(line, 7)) for line in flat]))
    rings = [shapely.get_coordinates(ring) for ring in shapely.get_parts(merged)]
    if any(len(ring) < 4 or (ring[0] != ring[-1]).any() for ring in rings):
        return None
    rings.sort(key=lambda ring: -shapely.Polygon(ring).area)
    region = shapely.Polygon(rings[0], rings[1:])
    return region if region.is_valid else None


def _inner(region: shapely.Polygon, spacing: float) -> np.ndarray:
    """(n, 2) places a spacing apart at most: a row along the border, and even rows inside of that."""
    along = shapely.get_parts(region.buffer(-_FIRST_ROW * spacing, quad_segs=4).boundary)
    steps = [np.arange(max(3, round(line.length / (_ON_ROW * spacing)))) for line in along]
    row = [
        shapely.line_interpolate_point(line, k / len(k), normalized=True) for line, k in zip(along, steps, strict=True)
    ]
    x0, y0, x1, y1 = region.bounds
    rows = np.arange(y0, y1 + spacing, spacing * np.sqrt(0.75))
    columns = np.arange(x0 - spacing, x1 + spacing, spacing)
    x, y = np.meshgrid(columns, rows)
    x[1::2] += spacing / 2
    places = np.column_stack([x.ravel(), y.ravel()])
    room = region.buffer(-(_FIRST_ROW + _BEHIND) * spacing, quad_segs=4)
    shapely.prepare(room)
    first = shapely.get_coordinates(np.concatenate(row)) if row else np.empty((0, 2))
    return np.concatenate([first, places[shapely.contains_xy(room, places)]])


def _joined(nodes: np.ndarray, region: shapely.Polygon) -> np.ndarray | None:
    """(m, 3) nodes of Delaunay's triangles within the region, counter-clockwise."""
    from scipy.spatial import Delaunay, QhullError

    try:
        index = Delaunay(nodes).simplices
    except QhullError:
        return None
    corners = nodes[index]
    one, two = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    doubled = one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]
    index[doubled < 0] = index[doubled < 0][:, ::-1]
    shapely.prepare(region)
    inside = shapely.contains_xy(region, corners.mean(axis=1)) & (np.abs(doubled) > 1e-14)
    if abs(np.abs(doubled[inside]).sum() / 2 - region.area) > 1e-6 * region.area:
        return None
    return np.asarray(index[inside])


def _keeps(flat: list[np.ndarray], nodes: np.ndarray, index: np.ndarray) -> bool:
    """Whether every piece of the border is a side of a triangle."""
    near = cKDTree(nodes)
    count = len(nodes)
    sides = np.sort(np.stack([index, np.roll(index, -1, axis=1)], axis=2).reshape(-1, 2), axis=1)
    known = sides[:, 0] * count + sides[:, 1]
    ends = [near.query(line)[1] for line in flat]
    pieces = np.sort(np.concatenate([np.column_stack([line[:-1], line[1:]]) for line in ends]), axis=1)
    pieces = pieces[pieces[:, 0] != pieces[:, 1]]
    return bool(np.isin(pieces[:, 0] * count + pieces[:, 1], known).all())
