"""Points of the kernel's curves and surfaces at many parameters at once.

The kernel answers one parameter at a time, and most of that time goes into calling it. Splines are taken over as
knots and poles and evaluated here by their basis functions, all parameters at once (a library that does so takes
longer to load than a review takes to evaluate); whatever else there is, the kernel evaluates.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.Geom import Geom_BezierSurface, Geom_BSplineCurve, Geom_BSplineSurface, Geom_TrimmedCurve
from OCP.Geom2d import Geom2d_BSplineCurve, Geom2d_Line, Geom2d_TrimmedCurve
from OCP.GeomConvert import GeomConvert

from seamcheck.kernel.turned import turned_function

Function = Callable[[np.ndarray], np.ndarray]
"""Of parameters (n,) or (n, 2) the points (n, dimension)."""


class SurfaceFunction(Struct, frozen=True, eq=False):
    """Points (n, 3) mm of a surface at parameters (n, 2).

    at : these; grid : at all pairs of parameters (n,) and (m,) the points (n, m, 3), where there is a quicker way
    """

    at: Function
    grid: Callable[[np.ndarray, np.ndarray], np.ndarray] | None = None

    def __call__(self, uv: np.ndarray) -> np.ndarray:
        return self.at(uv)

    def on_grid(self, u: np.ndarray, v: np.ndarray) -> np.ndarray:
        """(n, m, 3) mm at all pairs of parameters (n,) and (m,)."""
        if self.grid is not None:
            return self.grid(u, v)
        pairs = np.stack(np.meshgrid(u, v, indexing="ij"), axis=-1)
        return self.at(pairs.reshape(-1, 2)).reshape(len(u), len(v), 3)

    def moved(self, move: Function) -> SurfaceFunction:
        """The surface with its points (n, 3) moved."""
        grid = self.grid

        def moved_grid(u: np.ndarray, v: np.ndarray) -> np.ndarray:
            assert grid is not None
            return move(grid(u, v).reshape(-1, 3)).reshape(len(u), len(v), 3)

        return SurfaceFunction(lambda uv: move(self.at(uv)), None if grid is None else moved_grid)


def surface_function(surface: Any) -> SurfaceFunction:
    """Points (n, 3) mm of a Geom_Surface at parameters (n, 2)."""
    if isinstance(surface, Geom_BezierSurface):
        surface = GeomConvert.SurfaceToBSplineSurface_s(surface)
    if isinstance(surface, Geom_BSplineSurface):
        return _spline_surface(surface)
    turned = turned_function(surface)
    if turned is not None:
        return SurfaceFunction(turned)

    def one_by_one(uv: np.ndarray) -> np.ndarray:
        return np.array([surface.Value(u, v).Coord() for u, v in uv.tolist()]).reshape(-1, 3)

    return SurfaceFunction(one_by_one)


def curve_function(curve: Any) -> Function:
    """Points (n, 3) mm of a Geom_Curve, or (n, 2) of a Geom2d_Curve, at parameters (n,)."""
    while isinstance(curve, Geom_TrimmedCurve | Geom2d_TrimmedCurve):
        curve = curve.BasisCurve()
    if isinstance(curve, Geom_BSplineCurve | Geom2d_BSplineCurve):
        return _spline_curve(curve)
    if isinstance(curve, Geom2d_Line):
        origin, direction = curve.Location(), curve.Direction()
        first, along = np.array([origin.X(), origin.Y()]), np.array([direction.X(), direction.Y()])
        return lambda t: first + t[:, None] * along

    def one_by_one(t: np.ndarray) -> np.ndarray:
        return np.array([curve.Value(x).Coord() for x in t.tolist()])

    return one_by_one


def _spline_surface(surface: Any) -> SurfaceFunction:
    wraps = [_wrap(surface.IsUPeriodic(), *surface.Bounds()[:2]), _wrap(surface.IsVPeriodic(), *surface.Bounds()[2:])]
    if surface.IsUPeriodic() or surface.IsVPeriodic():
        surface = surface.Copy()
        if surface.IsUPeriodic():
            surface.SetUNotPeriodic()
        if surface.IsVPeriodic():
            surface.SetVNotPeriodic()
    rows, columns = range(1, surface.NbUPoles() + 1), range(1, surface.NbVPoles() + 1)
    poles = np.array([[surface.Pole(i, j).Coord() for j in columns] for i in rows])
    weights = np.ones(poles.shape[:2])
    if surface.IsURational() or surface.IsVRational():
        weights = np.array([[surface.Weight(i, j) for j in columns] for i in rows])
    knots = _array(surface.UKnotSequence()), _array(surface.VKnotSequence())
    degrees, poles = (surface.UDegree(), surface.VDegree()), _weighted(poles, weights)
    is_one_piece = poles.shape[1] == degrees[1] + 1  # across, as on ruled faces and fillets: all columns count
    lines = poles.reshape(len(poles), -1)

    def at(uv: np.ndarray) -> np.ndarray:
        (rows, along), (columns, across) = (basis(knots[k], degrees[k], wrap(uv[:, k])) for k, wrap in enumerate(wraps))
        if is_one_piece:
            first = sum(along[:, i, None] * lines[rows[:, i]] for i in range(rows.shape[1])).reshape(len(uv), -1, 4)
            return _unweighted(sum(across[:, j, None] * first[:, j] for j in range(columns.shape[1])))
        near = poles[rows[:, :, None], columns[:, None, :]]  # (n, along, across, 4)
        first = along[:, None, :] @ near.reshape(*rows.shape, 4 * columns.shape[1])
        return _unweighted((across[:, None, :] @ first.reshape(*columns.shape, 4))[:, 0])

    def grid(u: np.ndarray, v: np.ndarray) -> np.ndarray:
        (rows, along), (columns, across) = (
            basis(knots[k], degrees[k], wraps[k](values)) for k, values in enumerate((u, v))
        )
        first = sum(along[:, i, None, None] * poles[rows[:, i]] for i in range(rows.shape[1]))
        return _unweighted(sum(across[:, i, None] * first[:, columns[:, i]] for i in range(columns.shape[1])))

    return SurfaceFunction(at, grid)


def _spline_curve(curve: Any) -> Function:
    wrap = _wrap(curve.IsPeriodic(), curve.FirstParameter(), curve.LastParameter())
    if curve.IsPeriodic():
        curve = curve.Copy()
        curve.SetNotPeriodic()
    places = range(1, curve.NbPoles() + 1)
    poles = np.array([curve.Pole(i).Coord() for i in places])
    weights = np.array([curve.Weight(i) for i in places]) if curve.IsRational() else np.ones(len(poles))
    knots, degree, poles = _array(curve.KnotSequence()), curve.Degree(), _weighted(poles, weights)

    def at(t: np.ndarray) -> np.ndarray:
        places, shares = basis(knots, degree, wrap(t))
        return _unweighted((shares[:, None, :] @ poles[places])[:, 0])

    return at


def basis(knots: np.ndarray, degree: int, t: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Basis functions of a spline that are not 0 at parameters, and the poles that they belong to.

    Parameters
    ----------
    knots : (k,) ascending, each as often as it counts; t : (n,); outside of the knots the end pieces go on

    Returns
    -------
    (n, degree + 1) indices of poles, (n, degree + 1) shares, of sum 1

    Notes
    -----
    Recurrence of Cox and de Boor (Piegl and Tiller, The NURBS Book, algorithm A2.2).
    """
    if len(knots) == 2 * degree + 2:  # one piece
        span, near = np.full(len(t), degree), knots[1:-1, None]
    else:
        span = np.minimum(np.maximum(np.searchsorted(knots, t, "right") - 1, degree), len(knots) - degree - 2)
        near = knots[span + np.arange(1 - degree, degree + 1)[:, None]]  # the knots on both sides of each parameter
    ahead, behind = near - t, t - near
    shares = np.ones((1, len(t)))
    for d in range(1, degree + 1):
        low, high = slice(degree - d, degree), slice(degree, degree + d)
        part = shares / (near[high] - near[low])
        shares = np.zeros((d + 1, len(t)))
        shares[:-1] = ahead[high] * part
        shares[1:] += behind[low] * part
    return span[:, None] + np.arange(-degree, 1), shares.T


def _wrap(is_periodic: bool, first: float, last: float) -> Function:
    """Parameters brought into the first period: an edge may run across the place where a closed curve begins."""
    if not is_periodic:
        return lambda t: t
    return lambda t: np.where((t < first) | (t > last), first + np.mod(t - first, last - first), t)


def _array(values: Any) -> np.ndarray:
    return np.array([values.Value(i) for i in range(values.Lower(), values.Upper() + 1)])


def _weighted(poles: np.ndarray, weights: np.ndarray) -> np.ndarray:
    """Homogeneous coordinates."""
    return np.concatenate([poles * weights[..., None], weights[..., None]], axis=-1)


def _unweighted(points: np.ndarray) -> np.ndarray:
    return np.asarray(points[..., :-1] / points[..., -1:])
