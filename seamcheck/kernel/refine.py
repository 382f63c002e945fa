"""Splitting triangles of a curved face until they lie near enough to its surface."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.kernel.evaluate import Function

_MOST_ROUNDS = 12
_MOST_TRIANGLES = 300_000
_MOST_NODES = 1 << 31


class SurfaceMesh(Struct, frozen=True, eq=False):
    """nodes (n, 3) mm on the surface; uv (n, 2) their parameters; index (m, 3) of the triangles' corners.

    near (m,) bool : triangles that are known to lie near enough to the surface; None: of none it is known
    """

    nodes: np.ndarray
    uv: np.ndarray
    index: np.ndarray
    near: np.ndarray | None = None


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
    nodes, uv, near = mesh.nodes, mesh.uv, mesh.near
    sides = _sides(mesh.index)
    border = _alone(sides)
    fresh, rest = (sides, sides[:0]) if near is None else (sides[~near], sides[near])  # not looked at yet; near enough
    new, done = (mesh.index, mesh.index[:0]) if near is None else (mesh.index[~near], mesh.index[near])
    for _ in range(_MOST_ROUNDS):
        keys, side_of = np.unique(fresh, return_inverse=True)
        side_of = side_of.reshape(-1, 3)
        inner = np.flatnonzero(~np.isin(keys, border, assume_unique=True))
        between = uv[np.stack(np.divmod(keys[inner], _MOST_NODES), axis=1)].mean(axis=1)
        found = surface(np.concatenate([between, uv[new].mean(axis=1)]))
        points = np.full((len(keys), 3), np.nan)
        points[inner] = found[: len(inner)]
        corners = nodes[new]
        normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        most = deflection * np.maximum(np.linalg.norm(normal, axis=1), 1e-30)
        far = np.zeros(len(keys), dtype=bool)
        with np.errstate(invalid="ignore"):  # NaN: on the border
            away = np.einsum("msk,mk->ms", points[side_of] - corners[:, :1], normal)
            far[side_of[np.abs(away) > most[:, None]]] = True
        off = np.abs(np.einsum("mk,mk->m", found[len(inner) :] - corners[:, 0], normal)) > most
        far[side_of[off]] = True
        far &= np.isfinite(points[:, 0])
        if not far.any():
            return SurfaceMesh(nodes, uv, np.concatenate([done, new]))
        if len(done) + len(new) > _MOST_TRIANGLES:
            return None
        number = np.full(len(keys), -1)
        number[far] = len(nodes) + np.arange(np.count_nonzero(far))
        place = np.minimum(np.searchsorted(keys[far], rest), np.count_nonzero(far) - 1)
        beside = np.where(keys[far][place] == rest, number[far][place], -1)
        nodes = np.concatenate([nodes, points[far]])
        uv = np.concatenate([uv, between[far[inner]]])
        whole, pieces = _split(np.concatenate([done, new]), np.concatenate([beside, number[side_of]]))
        rest, done = np.concatenate([rest, fresh])[whole], np.concatenate([done, new])[whole]
        fresh, new = _sides(pieces), pieces
    return None


def _sides(index: np.ndarray) -> np.ndarray:
    """(m, 3) numbers of the sides 01, 12, 20 of triangles (m, 3): the same from both sides."""
    after = np.roll(index, -1, axis=1)
    return np.asarray(np.minimum(index, after) * _MOST_NODES + np.maximum(index, after))


def _alone(sides: np.ndarray) -> np.ndarray:
    """Numbers, ascending, of the sides that one triangle only has."""
    every = np.sort(sides, axis=None)
    differs = every[1:] != every[:-1]
    return np.asarray(every[np.append(True, differs) & np.append(differs, True)])


def _split(index: np.ndarray, new: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Triangles (m, 3) split at the new nodes (m, 3) on their sides 01, 12, 20 (-1: none).

    Returns
    -------
    (m,) bool, which stay whole; (k, 3) what the others are split into
    """
    has = new >= 0
    whole = np.asarray(~has.any(axis=1))
    index, new, has = index[~whole], new[~whole], has[~whole]
    count = has.sum(axis=1)
    # turn each triangle so that its split sides come first: one split: 01; two: 01 and 12
    turn = np.where(count == 1, np.argmax(has, axis=1), np.where(count == 2, (np.argmin(has, axis=1) + 1) % 3, 0))
    order = (np.arange(3) + turn[:, None]) % 3
    index, new = np.take_along_axis(index, order, axis=1), np.take_along_axis(new, order, axis=1)
    a, b, c = index.T
    p, q, r = new.T
    pieces = []
    for splits, triangles in (
        (1, ((a, p, c), (p, b, c))),
        (2, ((p, b, q), (a, p, q), (a, q, c))),
        (3, ((a, p, r), (p, b, q), (r, q, c), (p, q, r))),
    ):
        mine = count == splits
        pieces += [np.column_stack(corners)[mine] for corners in triangles]
    return whole, np.concatenate(pieces)
