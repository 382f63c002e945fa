"""Coarse meshes for pictures; nothing is measured on them."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from seamcheck.kernel.body import Body, Facets

FINE, COARSE = 0.3, 0.7
"""Radians, largest turn between neighbouring facets near the seam and away from it."""


def display_facets(
    body: Body, deflection: float, is_near: Callable[[np.ndarray], np.ndarray], most: tuple[int, int]
) -> Facets:
    """Facets of a body, coarser away from the seam.

    Parameters
    ----------
    deflection : mm, largest distance between surface and facets
    is_near : of boxes (n, 6) mm, which lie near the seam, (n,) bool
    most : so many faces are drawn at most, about, near the seam and away from it; where there are more, the smaller
        ones are left out, and holes smaller than they are filled

    Notes
    -----
    Throws away the finer meshes that measuring left on the body: call it when all is measured.
    """
    size = _size(body.boxes)
    near = is_near(body.boxes)
    least = np.array([_threshold(size[~near], most[1]), _threshold(size[near], most[0])])

    def shown(boxes: np.ndarray) -> np.ndarray:
        return np.flatnonzero(_size(boxes) > least[is_near(boxes).astype(int)])

    kept = np.flatnonzero(size > least[near.astype(int)])
    body.forget_facets(kept)
    parts = [
        body.facets(kept[near[kept]], deflection, FINE, shown, core=False),
        body.facets(kept[~near[kept]], 2 * deflection, COARSE, shown, core=False),
    ]
    corners, face = (np.concatenate([getattr(part, name) for part in parts]) for name in ("corners", "face"))
    sound = np.isfinite(corners).all(axis=(1, 2))
    return Facets(corners[sound], face[sound])


def _size(boxes: np.ndarray) -> np.ndarray:
    """(n,) mm, diagonals of boxes; 0 of an empty one."""
    return np.asarray(np.nan_to_num(np.linalg.norm(boxes[:, 3:] - boxes[:, :3], axis=1)))


def _threshold(size: np.ndarray, most: int) -> float:
    """The size above which at most ``most`` remain; just below 0, and so all, where there are no more."""
    if len(size) <= most:
        return -1.0
    return float(np.partition(size, len(size) - most - 1)[len(size) - most - 1]) + 1e-6
