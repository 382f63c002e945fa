"""Regular triangles for faces that fill a rectangle of their surface's parameters, such as flanks and fillets.

A fillet along a spline bends a hundred times faster across than along. Triangles that know no direction need
tens of thousands where rows and columns need some thousand.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from seamcheck.kernel.refine import SurfaceMesh, surface_points

_ON_SIDE = 1e-7  # share of the parameters' range
_COUNTS = (1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64)
_FINE = 192  # divisible by all of them: steps of the curves on which they are tried
_TRIED = 5  # such curves in each direction
_SAFE = 0.7  # share of the deflection that rows may use up; what is left is for the columns between them


def patch(start: SurfaceMesh, surface: Any, deflection: float) -> SurfaceMesh | None:
    """Rows and columns of triangles between the border's nodes of a mesh, all of which are kept.

    Parameters
    ----------
    start : a mesh of the face whose border is fine enough
    surface : Geom_Surface
    deflection : mm

    Returns
    -------
    SurfaceMesh, or None where the face is no rectangle in its parameters
    """
    border = _border(start)
    low, high = start.uv.min(axis=0), start.uv.max(axis=0)
    unit = (start.uv - low) / np.maximum(high - low, 1e-300)
    at_low, at_high = unit < _ON_SIDE, unit > 1 - _ON_SIDE
    if not (at_low[border] | at_high[border]).any(axis=1).all():
        return None
    sides = []  # nodes on u = low, u = high, v = low, v = high, along the other parameter
    for axis in (0, 1):
        for on in (at_low, at_high):
            side = border[on[border, axis]]
            side = side[np.argsort(unit[side, 1 - axis])]
            if len(side) < 2 or not (at_low[side[0], 1 - axis] and at_high[side[-1], 1 - axis]):
                return None
            sides.append(side)
    left, right, bottom, top = sides
    corners = {left[0], left[-1], right[0], right[-1]}
    if len(corners) != 4 or corners != {bottom[0], bottom[-1], top[0], top[-1]}:
        return None
    u = _steps(surface, low, high, 0, unit[max(bottom, top, key=len), 0], deflection)
    v = _steps(surface, low, high, 1, unit[max(left, right, key=len), 1], deflection)
    grid = np.stack(np.meshgrid(u[1:-1], v[1:-1], indexing="ij"), axis=-1)
    index = len(border) + np.arange(grid.shape[0] * grid.shape[1]).reshape(grid.shape[:2])
    place = np.full(len(unit), -1)
    place[border] = np.arange(len(border))
    ring = _Ring(place[left], place[right], place[bottom], place[top], unit[border])
    flat = np.concatenate([unit[border], grid.reshape(-1, 2)])
    triangles = _triangles(ring, index, u, v)
    area = _doubled(flat[triangles])
    if (area <= 0).any() or abs(area.sum() - 2.0) > 1e-6:
        return None
    if _doubled(start.uv[start.index]).sum() < 0:
        triangles = triangles[:, ::-1]
    uv = low + flat * (high - low)
    nodes = np.concatenate([start.nodes[border], surface_points(surface, uv[len(border) :])])
    return SurfaceMesh(nodes, uv, triangles)


@dataclass(frozen=True, slots=True, eq=False)
class _Ring:
    """The border: nodes along u = 0, u = 1, v = 0 and v = 1, corners included; unit (k, 2) of all nodes."""

    left: np.ndarray
    right: np.ndarray
    bottom: np.ndarray
    top: np.ndarray
    unit: np.ndarray


def _triangles(ring: _Ring, index: np.ndarray, u: np.ndarray, v: np.ndarray) -> np.ndarray:
    """(m, 3) nodes, counter-clockwise in the parameters; index (i, j) of the nodes inside, at u[1:-1], v[1:-1]."""
    if not index.size:
        if len(ring.left) == len(ring.right) == 2:
            return _zip(ring.bottom, ring.unit[ring.bottom, 0], ring.top, ring.unit[ring.top, 0])
        return _zip(ring.left, ring.unit[ring.left, 1], ring.right, ring.unit[ring.right, 1])[:, ::-1]
    a, b, c, d = index[:-1, :-1], index[1:, :-1], index[1:, 1:], index[:-1, 1:]
    inside = np.concatenate([np.stack(x, axis=-1).reshape(-1, 3) for x in ((a, b, c), (a, c, d))])
    inner_u, inner_v = u[1:-1], v[1:-1]
    return np.concatenate(
        [
            inside,
            _zip(ring.bottom, ring.unit[ring.bottom, 0], index[:, 0], inner_u),
            _zip(index[:, -1], inner_u, ring.top, ring.unit[ring.top, 0]),
            _zip(ring.left, ring.unit[ring.left, 1], index[0], inner_v)[:, ::-1],
            _zip(index[-1], inner_v, ring.right, ring.unit[ring.right, 1])[:, ::-1],
        ]
    )


def _zip(low: np.ndarray, at_low: np.ndarray, high: np.ndarray, at_high: np.ndarray) -> np.ndarray:
    """Triangles between two chains of nodes that run side by side, ``low`` on the right of the travel."""
    steps = np.concatenate([(at_low[:-1] + at_low[1:]) / 2, (at_high[:-1] + at_high[1:]) / 2])
    is_low = np.arange(len(steps)) < len(low) - 1
    order = np.argsort(steps, kind="stable")
    is_low = is_low[order]
    i: np.ndarray = np.cumsum(is_low) - is_low  # nodes passed on each chain before the step
    j = np.arange(len(steps)) - i
    ahead = np.where(is_low, low[np.minimum(i + 1, len(low) - 1)], high[np.minimum(j + 1, len(high) - 1)])
    return np.column_stack([low[i], ahead, high[j]])


def _steps(
    surface: Any, low: np.ndarray, high: np.ndarray, axis: int, border: np.ndarray, deflection: float
) -> np.ndarray:
    """Places in 0..1 of columns (axis 0) or rows (1): those of the border where they do, else even ones."""
    middles = (border[:-1] + border[1:]) / 2
    if _sagitta(_curves(surface, low, high, axis, np.sort(np.concatenate([border, middles]))), 2) <= deflection:
        return border
    curves = _curves(surface, low, high, axis, np.linspace(0.0, 1.0, _FINE + 1))
    for count in _COUNTS:
        if _sagitta(curves, _FINE // count) <= _SAFE * deflection:
            return np.linspace(0.0, 1.0, count + 1)
    return np.linspace(0.0, 1.0, _FINE + 1)


def _curves(surface: Any, low: np.ndarray, high: np.ndarray, axis: int, along: np.ndarray) -> np.ndarray:
    """(_TRIED, n, 3) points of some curves on the surface, at places (n,) in 0..1 along one parameter."""
    unit = np.empty((_TRIED, len(along), 2))
    unit[..., axis], unit[..., 1 - axis] = along, ((np.arange(_TRIED) + 0.5) / _TRIED)[:, None]
    return surface_points(surface, (low + unit * (high - low)).reshape(-1, 2)).reshape(_TRIED, -1, 3)


def _sagitta(curves: np.ndarray, step: int) -> float:
    """Largest distance of curves (c, k * step + 1, 3) from the chords over every ``step`` points."""
    knots = curves[:, ::step]
    pieces = curves[:, :-1].reshape(len(curves), -1, step, 3)
    first, chord = knots[:, :-1, None], (knots[:, 1:] - knots[:, :-1])[:, :, None]
    length = np.maximum((chord * chord).sum(axis=-1, keepdims=True), 1e-30)
    share = np.clip(((pieces - first) * chord).sum(axis=-1, keepdims=True) / length, 0.0, 1.0)
    return float(np.linalg.norm(pieces - first - share * chord, axis=-1).max())


def _border(mesh: SurfaceMesh) -> np.ndarray:
    """Nodes of the sides that one triangle only has."""
    every = np.sort(np.stack([mesh.index, np.roll(mesh.index, -1, axis=1)], axis=2).reshape(-1, 2), axis=1)
    sides, count = np.unique(every, axis=0, return_counts=True)
    return np.unique(sides[count == 1])


def _doubled(uv: np.ndarray) -> np.ndarray:
    """Twice the signed areas of triangles (m, 3, 2)."""
    ab, ac = uv[:, 1] - uv[:, 0], uv[:, 2] - uv[:, 0]
    return ab[:, 0] * ac[:, 1] - ab[:, 1] * ac[:, 0]
