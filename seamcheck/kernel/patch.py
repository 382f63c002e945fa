"""Regular triangles for faces that fill a rectangle of their surface's parameters, such as flanks and fillets.

A fillet along a spline bends a hundred times faster across than along. Triangles that know no direction need
tens of thousands where rows and columns need some thousand.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from seamcheck.kernel.evaluate import SurfaceFunction
from seamcheck.kernel.refine import SurfaceMesh

_ON_SIDE = 1e-5  # share of the parameters' range
_SAME = 6  # decimals of the parameters' range to which ends of edges agree
_COUNTS = (1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96)
_FEW = 16  # from here on what does not lead from node to node of the border would be split again
_FINE = 192  # divisible by all of them: steps of the curves on which they are tried
_TRIED = 5  # such curves in each direction
_OFTEN, _TRIES = 0.1, 3  # share of triangles to be split from which more rows are tried, so many times
_SAFE = 0.7  # share of the deflection that rows may use up; what is left is for the columns between them


Counts = Callable[[np.ndarray, np.ndarray], tuple[int, int]]
"""Of the lowest and the highest parameters (2,) the columns and rows between them."""


class Border(Struct, frozen=True, eq=False):
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
    place = np.rint(_unit(uv) * 10**_SAME).astype(np.int64) @ [10**_SAME + 1, 1]  # of every place one number
    last = np.cumsum([len(line) for line, _ in lines]) - 1
    ends = np.concatenate([place[last], place[np.append(0, last[:-1] + 1)]])
    if (np.unique(ends, return_counts=True)[1] != 2).any():
        return None
    _, first = np.unique(place, return_index=True)
    first.sort()
    return Border(nodes[first], uv[first])


def patch(
    border: Border, surface: SurfaceFunction, deflection: float, counts: Counts | None = None
) -> SurfaceMesh | None:
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
    ring = _Ring(left, right, bottom, top, unit)
    if counts is not None:
        u, v = (np.linspace(0.0, 1.0, count + 1) for count in counts(low, high))
        return _laid_out(border, ring, surface, u, v, deflection)[0]
    u = _steps(surface, low, high, 0, unit[max(bottom, top, key=len), 0], deflection)
    v = _steps(surface, low, high, 1, unit[max(left, right, key=len), 1], deflection)
    found, split = _laid_out(border, ring, surface, u, v, deflection)
    for _ in range(_TRIES):
        if found is None or split < _OFTEN:
            break
        finer = np.linspace(0.0, 1.0, 1 + -(-4 * (min(len(u), len(v)) - 1) // 3))
        u, v = (finer, v) if len(u) < len(v) else (u, finer)
        other, split_other = _laid_out(border, ring, surface, u, v, deflection)
        if other is None or len(other.index) * (1.0 + split_other) >= len(found.index) * (1.0 + split):
            break
        found, split = other, split_other
    return found


def _laid_out(
    border: Border, ring: _Ring, surface: SurfaceFunction, u: np.ndarray, v: np.ndarray, deflection: float
) -> tuple[SurfaceMesh | None, float]:
    """Triangles with columns at u and rows at v, places in 0..1, and the share of those inside that are to be split.

    None where they do not fill the rectangle.
    """
    low, high = border.uv.min(axis=0), border.uv.max(axis=0)
    between_two = len(ring.left) == len(ring.right) == 2 or len(ring.bottom) == len(ring.top) == 2
    if min(len(u), len(v)) == 2 and not between_two:  # a row or a column inside that meets the nodes of all sides
        u, v = (steps if len(steps) > 2 else np.array([0.0, 0.5, 1.0]) for steps in (u, v))
    grid = np.stack(np.meshgrid(u[1:-1], v[1:-1], indexing="ij"), axis=-1)
    index = len(ring.unit) + np.arange(grid.shape[0] * grid.shape[1]).reshape(grid.shape[:2])
    flat = np.concatenate([ring.unit, grid.reshape(-1, 2)])
    triangles = _triangles(ring, index, u, v)
    area = _doubled(flat[triangles])
    if (area <= 0).any() or abs(area.sum() - 2.0) > 1e-6:
        return None, 0.0
    inner_u, inner_v = (low[k] + steps[1:-1] * (high[k] - low[k]) for k, steps in ((0, u), (1, v)))
    nodes = surface.on_grid(inner_u, inner_v)
    near = np.zeros(len(triangles), dtype=bool)
    cells = _cells_near(surface, nodes, inner_u, inner_v, deflection)
    near[: len(cells)] = cells
    nodes = np.concatenate([border.nodes, nodes.reshape(-1, 3)])
    mesh = SurfaceMesh(nodes, low + flat * (high - low), triangles, near)
    return mesh, float(1.0 - cells.mean()) if len(cells) else 0.0


def _cells_near(
    surface: SurfaceFunction, nodes: np.ndarray, u: np.ndarray, v: np.ndarray, deflection: float
) -> np.ndarray:
    """(2 (n - 1) (m - 1),) bool: of the triangles between columns and rows, which lie near enough to the surface.

    Parameters
    ----------
    nodes : (n, m, 3) mm at columns u (n,) and rows v (m,)

    Notes
    -----
    Looked at are the places that ``refined`` looks at, and these lie on rows and columns themselves.
    """
    if min(nodes.shape[:2]) < 2:
        return np.empty(0, dtype=bool)
    a, b, c, d = nodes[:-1, :-1], nodes[1:, :-1], nodes[1:, 1:], nodes[:-1, 1:]
    half_u, half_v = (u[1:] + u[:-1]) / 2, (v[1:] + v[:-1]) / 2
    along, across = surface.on_grid(half_u, v), surface.on_grid(u, half_v)
    diagonal = surface.on_grid(half_u, half_v)
    first = surface.on_grid((u[:-1] + 2 * u[1:]) / 3, (2 * v[:-1] + v[1:]) / 3)
    second = surface.on_grid((2 * u[:-1] + u[1:]) / 3, (v[:-1] + 2 * v[1:]) / 3)
    found = []
    for one, other, places in (
        (b, c, (along[:, :-1], across[1:], diagonal, first)),
        (c, d, (along[:, 1:], across[:-1], diagonal, second)),
    ):
        normal = np.cross(one - a, other - a)
        size = np.maximum(np.sqrt((normal * normal).sum(axis=-1)), 1e-30)
        away = [np.abs(((place - a) * normal).sum(axis=-1)) for place in places]
        found.append((np.maximum.reduce(away) <= deflection * size).ravel())
    return np.concatenate(found)


def _unit(uv: np.ndarray) -> np.ndarray:
    """Parameters (k, 2) as shares of their range; 0 and 1 right beside its ends, too."""
    low = uv.min(axis=0)
    unit = (uv - low) / np.maximum(np.ptp(uv, axis=0), 1e-300)
    return np.where(unit < _ON_SIDE, 0.0, np.where(unit > 1 - _ON_SIDE, 1.0, unit))


class _Ring(Struct, frozen=True, eq=False):
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
    surface: SurfaceFunction, low: np.ndarray, high: np.ndarray, axis: int, border: np.ndarray, deflection: float
) -> np.ndarray:
    """Places in 0..1 of columns (axis 0) or rows (1): a few even ones, or those of the border."""
    curves = _curves(surface, low, high, axis, np.linspace(0.0, 1.0, _FINE + 1))

    def fits(count: int) -> bool:
        return _sagitta(curves, _FINE // count) <= _SAFE * deflection

    is_dense = len(border) > _FINE // 2 and not fits(_FEW)
    even = _FINE if is_dense else next(filter(fits, _COUNTS), _FINE)
    if even > _FEW or len(border) <= even + 1:
        middles = (border[:-1] + border[1:]) / 2
        both = np.sort(np.concatenate([border, middles]))
        if _sagitta(_curves(surface, low, high, axis, both), 2) <= deflection:
            return border
    if is_dense:
        even = next(filter(fits, _COUNTS), _FINE)
    return np.linspace(0.0, 1.0, even + 1)


def _curves(surface: SurfaceFunction, low: np.ndarray, high: np.ndarray, axis: int, along: np.ndarray) -> np.ndarray:
    """(_TRIED, n, 3) points of some curves on the surface, at places (n,) in 0..1 along one parameter."""
    along = low[axis] + along * (high - low)[axis]
    beside = low[1 - axis] + (np.arange(_TRIED) + 0.5) / _TRIED * (high - low)[1 - axis]
    if axis == 0:
        return surface.on_grid(along, beside).transpose(1, 0, 2)
    return surface.on_grid(beside, along)


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
