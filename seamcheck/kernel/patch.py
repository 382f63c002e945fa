"""Regular triangles for faces that fill a rectangle of their surface's parameters, such as flanks and fillets.

A fillet along a spline bends a hundred times faster across than along. Triangles that know no direction need
tens of thousands where rows and columns need some thousand.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from seamcheck.kernel.evaluate import Function
from seamcheck.kernel.refine import SurfaceMesh

_ON_SIDE = 1e-5  # share of the parameters' range
_SAME = 6  # decimals of the parameters' range to which ends of edges agree
_COUNTS = (1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96)
_FEW = 16  # from here on what does not lead from node to node of the border would be split again
_FINE = 192  # divisible by all of them: steps of the curves on which they are tried
_TRIED = 5  # such curves in each direction
_SAFE = 0.7  # share of the deflection that rows may use up; what is left is for the columns between them


Counts = Callable[[np.ndarray, np.ndarray], tuple[int, int]]
"""Of the lowest and the highest parameters (2,) the columns and rows between them."""


@dataclass(frozen=True, slots=True, eq=False)
class Border:
    """Nodes on the border of a face, each once: nodes (k, 3) mm, uv (k, 2) their parameters."""

    nodes: np.ndarray
    uv: np.ndarray


def border_of(mesh: SurfaceMesh) -> Border:
    """The nodes of the sides that one triangle only has."""
    every = np.sort(np.stack([mesh.index, np.roll(mesh.index, -1, axis=1)], axis=2).reshape(-1, 2), axis=1)
    sides, count = np.unique(every[:, 0] * len(mesh.nodes) + every[:, 1], return_counts=True)
    nodes = np.unique(np.divmod(sides[count == 1], len(mesh.nodes)))
    return Border(mesh.nodes[nodes], mesh.uv[nodes])


def joined_border(lines: list[tuple[np.ndarray, np.ndarray]]) -> Border | None:
    """The border from nodes (k, 3), mm, and parameters (k, 2) of its edges; None where it is not closed."""
    nodes, uv = (np.concatenate(parts) for parts in zip(*lines, strict=True))
    place = np.round(_unit(uv), _SAME)
    last = np.cumsum([len(line) for line, _ in lines]) - 1
    ends = np.concatenate([place[last], place[np.append(0, last[:-1] + 1)]])
    if (np.unique(ends, axis=0, return_counts=True)[1] != 2).any():
        return None
    _, first = np.unique(place, axis=0, return_index=True)
    first.sort()
    return Border(nodes[first], uv[first])


def patch(border: Border, surface: Function, deflection: float, counts: Counts | None = None) -> SurfaceMesh | None:
    """Rows and columns of triangles between the nodes of a border, all of which are kept.

    Parameters
    ----------
    border : fine enough
    surface : points at parameters, in the frame of the nodes
    deflection : mm
    counts : of the range of parameters, how many columns and rows it needs; None: tried here

    Returns
    -------
    SurfaceMesh, counter-clockwise in the parameters; None where the face is no rectangle in its parameters
    """
    low, high = border.uv.min(axis=0), border.uv.max(axis=0)
    unit = _unit(border.uv)
    at_low, at_high = unit == 0.0, unit == 1.0
    if not (at_low | at_high).any(axis=1).all():
        return None
    sides = []  # nodes on u = low, u = high, v = low, v = high, along the other parameter
    for axis in (0, 1):
        for on in (at_low, at_high):
            side = np.flatnonzero(on[:, axis])
            side = side[np.argsort(unit[side, 1 - axis])]
            if len(side) < 2 or not (at_low[side[0], 1 - axis] and at_high[side[-1], 1 - axis]):
                return None
            sides.append(side)
    left, right, bottom, top = sides
    corners = {left[0], left[-1], right[0], right[-1]}
    if len(corners) != 4 or corners != {bottom[0], bottom[-1], top[0], top[-1]}:
        return None
    if counts is None:
        u = _steps(surface, low, high, 0, unit[max(bottom, top, key=len), 0], deflection)
        v = _steps(surface, low, high, 1, unit[max(left, right, key=len), 1], deflection)
    else:
        u, v = (np.linspace(0.0, 1.0, count + 1) for count in counts(low, high))
    between_two = len(left) == len(right) == 2 or len(bottom) == len(top) == 2
    if min(len(u), len(v)) == 2 and not between_two:  # a row or a column inside that meets the nodes of all sides
        u, v = (steps if len(steps) > 2 else np.array([0.0, 0.5, 1.0]) for steps in (u, v))
    grid = np.stack(np.meshgrid(u[1:-1], v[1:-1], indexing="ij"), axis=-1)
    index = len(unit) + np.arange(grid.shape[0] * grid.shape[1]).reshape(grid.shape[:2])
    flat = np.concatenate([unit, grid.reshape(-1, 2)])
    triangles = _triangles(_Ring(left, right, bottom, top, unit), index, u, v)
    area = _doubled(flat[triangles])
    if (area <= 0).any() or abs(area.sum() - 2.0) > 1e-6:
        return None
    uv = low + flat * (high - low)
    return SurfaceMesh(np.concatenate([border.nodes, surface(uv[len(unit) :])]), uv, triangles)


def _unit(uv: np.ndarray) -> np.ndarray:
    """Parameters (k, 2) as shares of their range; 0 and 1 right beside its ends, too."""
    low = uv.min(axis=0)
    unit = (uv - low) / np.maximum(np.ptp(uv, axis=0), 1e-300)
    return np.where(unit < _ON_SIDE, 0.0, np.where(unit > 1 - _ON_SIDE, 1.0, unit))


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
    surface: Function, low: np.ndarray, high: np.ndarray, axis: int, border: np.ndarray, deflection: float
) -> np.ndarray:
    """Places in 0..1 of columns (axis 0) or rows (1): a few even ones, or those of the border."""
    curves = _curves(surface, low, high, axis, np.linspace(0.0, 1.0, _FINE + 1))
    fits = (count for count in _COUNTS if _sagitta(curves, _FINE // count) <= _SAFE * deflection)
    even = next(fits, _FINE)
    if even > _FEW or len(border) <= even + 1:
        middles = (border[:-1] + border[1:]) / 2
        both = np.sort(np.concatenate([border, middles]))
        if _sagitta(_curves(surface, low, high, axis, both), 2) <= deflection:
            return border
    return np.linspace(0.0, 1.0, even + 1)


def _curves(surface: Function, low: np.ndarray, high: np.ndarray, axis: int, along: np.ndarray) -> np.ndarray:
    """(_TRIED, n, 3) points of some curves on the surface, at places (n,) in 0..1 along one parameter."""
    unit = np.empty((_TRIED, len(along), 2))
    unit[..., axis], unit[..., 1 - axis] = along, ((np.arange(_TRIED) + 0.5) / _TRIED)[:, None]
    return surface((low + unit * (high - low)).reshape(-1, 2)).reshape(_TRIED, -1, 3)


def _sagitta(curves: np.ndarray, step: int) -> float:
    """Largest distance of curves (c, k * step + 1, 3) from the chords over every ``step`` points."""
    knots = curves[:, ::step]
    pieces = curves[:, :-1].reshape(len(curves), -1, step, 3)
    first, chord = knots[:, :-1, None], (knots[:, 1:] - knots[:, :-1])[:, :, None]
    length = np.maximum((chord * chord).sum(axis=-1, keepdims=True), 1e-30)
    share = np.clip(((pieces - first) * chord).sum(axis=-1, keepdims=True) / length, 0.0, 1.0)
    return float(np.linalg.norm(pieces - first - share * chord, axis=-1).max())


def _doubled(uv: np.ndarray) -> np.ndarray:
    """Twice the signed areas of triangles (m, 3, 2)."""
    ab, ac = uv[:, 1] - uv[:, 0], uv[:, 2] - uv[:, 0]
    return np.asarray(ab[:, 0] * ac[:, 1] - ab[:, 1] * ac[:, 0])
