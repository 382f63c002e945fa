"""Faces of cylinders between two equal arcs: one rectangle between every two nodes, without the kernel's mesher."""

from __future__ import annotations

import numpy as np

_SAME = 1e-6  # mm


def tube_triangles(lines: list[np.ndarray], centre: np.ndarray, axis: np.ndarray) -> np.ndarray | None:
    """Triangulate a face of a cylinder.

    Parameters
    ----------
    lines : edges of the face as polylines (k, 3), mm, each edge once: two arcs, and one or two straight lines
    centre, axis : (3,) a point on the axis, mm, and its unit direction

    Returns
    -------
    (m, 3, 3) corners, mm, outward from the axis by the right hand; None of any other face, and where the arcs' nodes
    do not lie opposite to each other
    """
    arcs = [line for line in lines if len(line) > 2]
    if len(arcs) != 2 or not 3 <= len(lines) <= 4 or len(arcs[0]) != len(arcs[1]):
        return None
    one, other = arcs
    if not _lie_opposite(one, other, axis):
        other = other[::-1]
        if not _lie_opposite(one, other, axis):
            return None
    a, b, c, d = one[:-1], one[1:], other[1:], other[:-1]
    away = a[0] + b[0] - 2.0 * centre
    outward = away - (away @ axis) * axis
    if np.linalg.det(np.array([b[0] - a[0], d[0] - a[0], outward])) < 0.0:
        b, d = d, b
    return np.concatenate([np.stack([a, b, c], axis=1), np.stack([a, c, d], axis=1)])


def _lie_opposite(one: np.ndarray, other: np.ndarray, axis: np.ndarray) -> bool:
    """Whether nodes (k, 3) lie all as far along the axis from others (k, 3), and nowhere else."""
    apart = other - one
    along = float(apart[0] @ axis)
    return bool(abs(along) > _SAME and np.abs(apart - along * axis).max() < _SAME)
