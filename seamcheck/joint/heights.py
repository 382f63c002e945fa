"""Heights of facets over places: the one ray caster along z."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.joint.facets import bounds_of, spans

_LEAST = 1e-12  # mm²: facets that cover less than half of this, seen along z, stand upright


def heights_at(
    points: np.ndarray, corners: np.ndarray, tree: shapely.STRtree | None = None
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Heights of all facets over and under places.

    Parameters
    ----------
    points : (n, 2 or 3) mm, of which x and y count; corners : (m, 3, 3) mm
    tree : as of tree_of, where the same facets are asked several times

    Returns
    -------
    (k,) mm height, (k,) number of the place, (k,) number of the facet; upright facets have no height
    """
    if tree is None:
        low, high = bounds_of(corners[:, :, :2])
        first, last = points[:, :2].min(axis=0, initial=np.inf), points[:, :2].max(axis=0, initial=-np.inf)
        beside = np.flatnonzero(((low <= last) & (high >= first)).all(axis=1))
        index, facet = shapely.STRtree(spans(low[beside], high[beside])).query(shapely.points(points[:, :2]))
        facet = beside[facet]
    else:
        index, facet = tree.query(shapely.points(points[:, :2]))
    x, y = points[:, 0], points[:, 1]
    at_x, at_y = (np.ascontiguousarray(corners[:, :, axis].T) for axis in (0, 1))
    along_x, along_y = (np.roll(at, -1, axis=0) - at for at in (at_x, at_y))
    doubled = along_x[0] * (at_y[2] - at_y[0]) - along_y[0] * (at_x[2] - at_x[0])
    turn = np.sign(doubled)
    lies = np.abs(doubled) > _LEAST
    index, facet = index[lies[facet]], facet[lies[facet]]
    for ox, oy, ax, ay in zip(at_x, at_y, turn * along_x, turn * along_y, strict=True):
        inside = ax[facet] * (y[index] - oy[facet]) - ay[facet] * (x[index] - ox[facet]) >= -1e-9
        index, facet = index[inside], facet[inside]  # each edge leaves out half
    return plane_heights(corners[facet], points[index, :2]), index, facet


def plane_heights(corners: np.ndarray, xy: np.ndarray) -> np.ndarray:
    """(k,) mm, heights over places (k, 2) of the planes of facets (k, 3, 3)."""
    a = corners[:, 0]
    (px, py, pz), (qx, qy, qz) = (corners[:, 1] - a).T, (corners[:, 2] - a).T
    across = (xy[:, 0] - a[:, 0]) * (py * qz - pz * qy) + (xy[:, 1] - a[:, 1]) * (pz * qx - px * qz)
    return np.asarray(a[:, 2] - across / (px * qy - py * qx))


def highest_at(points: np.ndarray, corners: np.ndarray) -> np.ndarray:
    """(n,) mm, height of the highest facet over or under places (n, 2 or 3); -inf where there is none."""
    height, index, _ = heights_at(points, corners)
    found = np.full(len(points), -np.inf)
    np.maximum.at(found, index, height)
    return found


def tree_of(corners: np.ndarray) -> shapely.STRtree:
    """Tree of the boxes of facets (n, 3, 3) mm seen along z, for asking heights_at several times."""
    low, high = bounds_of(corners[:, :, :2])
    return shapely.STRtree(spans(low, high))
