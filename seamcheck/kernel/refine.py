"""Splitting triangles of a curved face until they lie near enough to its surface."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from seamcheck.kernel.evaluate import Function

_MOST_ROUNDS = 12
_MOST_TRIANGLES = 300_000


@dataclass(frozen=True, slots=True, eq=False)
class SurfaceMesh:
    """nodes (n, 3) mm on the surface; uv (n, 2) their parameters; index (m, 3) of the triangles' corners."""

    nodes: np.ndarray
    uv: np.ndarray
    index: np.ndarray


def refined(mesh: SurfaceMesh, surface: Function, deflection: float) -> SurfaceMesh | None:
    """The mesh, split where the surface over the middle of a side or of a triangle lies too far from it.

    Parameters
    ----------
    surface : points at parameters, in the frame of the nodes
    deflection : mm, across the triangle

    Returns
    -------
    SurfaceMesh : without cracks; sides on the face's border are never split, so it fits its neighbours.
        None where many rounds don't suffice.
    """
    fresh = np.ones(len(mesh.index), dtype=bool)  # triangles not looked at yet; the others are near enough
    for _ in range(_MOST_ROUNDS):
        sides, side_of, inner = _sides(mesh.index)
        looked_at = np.zeros(len(sides), dtype=bool)
        looked_at[side_of[fresh]] = True
        looked_at &= inner
        uv = mesh.uv[sides].mean(axis=1)
        points = np.full((len(sides), 3), np.nan)
        points[looked_at] = surface(uv[looked_at])
        corners = mesh.nodes[mesh.index]
        normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        normal /= np.maximum(np.linalg.norm(normal, axis=1), 1e-30)[:, None]
        away = np.abs(np.einsum("msk,mk->ms", points[side_of] - corners[:, :1], normal))
        far = np.zeros(len(sides), dtype=bool)
        with np.errstate(invalid="ignore"):
            far[side_of[away > deflection]] = True  # NaN: not looked at, or on the border
        middles = surface(mesh.uv[mesh.index[fresh]].mean(axis=1))
        off = np.abs(np.einsum("mk,mk->m", middles - corners[fresh, 0], normal[fresh])) > deflection
        far[side_of[np.flatnonzero(fresh)[off]]] = True
        far &= inner
        if not far.any():
            return mesh
        if len(mesh.index) > _MOST_TRIANGLES:
            return None
        missing = far & ~looked_at
        points[missing] = surface(uv[missing])
        number = np.full(len(sides), -1)
        number[far] = len(mesh.nodes) + np.arange(np.count_nonzero(far))
        index, fresh = _split(mesh.index, number[side_of])
        mesh = SurfaceMesh(np.concatenate([mesh.nodes, points[far]]), np.concatenate([mesh.uv, uv[far]]), index)
    return None


def _sides(index: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Different sides (k, 2), of each triangle the numbers of its sides 01, 12, 20, and which have two triangles."""
    every = np.sort(np.stack([index, np.roll(index, -1, axis=1)], axis=2).reshape(-1, 2), axis=1)
    keys = every[:, 0] * (index.max() + 1) + every[:, 1]
    _, first, number, count = np.unique(keys, return_index=True, return_inverse=True, return_counts=True)
    return every[first], number.reshape(-1, 3), count == 2


def _split(index: np.ndarray, new: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Triangles (m, 3) split at the new nodes (m, 3) on their sides 01, 12, 20 (-1: none), and which are new."""
    has = new >= 0
    count = has.sum(axis=1)
    # turn each triangle so that its split sides come first: one split: 01; two: 01 and 12
    turn = np.where(count == 1, np.argmax(has, axis=1), np.where(count == 2, (np.argmin(has, axis=1) + 1) % 3, 0))
    order = (np.arange(3) + turn[:, None]) % 3
    index, new = np.take_along_axis(index, order, axis=1), np.take_along_axis(new, order, axis=1)
    a, b, c = index.T
    p, q, r = new.T
    pieces = [index[count == 0]]
    for splits, triangles in (
        (1, ((a, p, c), (p, b, c))),
        (2, ((p, b, q), (a, p, q), (a, q, c))),
        (3, ((a, p, r), (p, b, q), (r, q, c), (p, q, r))),
    ):
        mine = count == splits
        pieces += [np.column_stack(corners)[mine] for corners in triangles]
    found = np.concatenate(pieces)
    return found, np.arange(len(found)) >= len(pieces[0])
