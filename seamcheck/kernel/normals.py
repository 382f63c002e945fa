"""Exact normals of faces, at points spread over them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.BRepTools import BRepTools
from OCP.GeomAbs import GeomAbs_SurfaceType
from OCP.gp import gp_Pnt, gp_Vec

_CYLINDER, _CONE = GeomAbs_SurfaceType.GeomAbs_Cylinder, GeomAbs_SurfaceType.GeomAbs_Cone
_LONG, _SHORT = 41, 5  # points along the longer and the shorter side of a face


def spread_normals(face: Any) -> tuple[np.ndarray, np.ndarray]:
    """Unit normals (n, 3) of a face's surface over the range of its parameters, and the area (n,) mm² of each.

    The range is that of the whole face; places that its outline cuts off count as well. The sense is that of the
    parameters, not of the solid. Facets are no help here: those of a low, bent wall tilt.
    """
    surface = BRepAdaptor_Surface(face, False)
    u0, u1, v0, v1 = BRepTools.UVBounds_s(face)
    slopes = _slopes_of_round(surface) if surface.GetType() in (_CYLINDER, _CONE) else _slopes_of_any(surface)
    middle = slopes(np.array([(u0 + u1) / 2]), np.array([(v0 + v1) / 2]))[0]
    wide = np.linalg.norm(middle[:3]) * (u1 - u0) > np.linalg.norm(middle[3:]) * (v1 - v0)
    many, few = (_LONG, _SHORT) if wide else (_SHORT, _LONG)
    us, vs = (a + (b - a) * (np.arange(n) + 0.5) / n for a, b, n in ((u0, u1, many), (v0, v1, few)))
    along = slopes(np.repeat(us, few), np.tile(vs, many))
    normals = np.cross(along[:, :3], along[:, 3:])
    length = np.linalg.norm(normals, axis=1)
    sound = np.isfinite(length) & (length > 1e-12)
    normals, length = normals[sound], length[sound]
    return normals / length[:, None], length * (u1 - u0) * (v1 - v0) / (_LONG * _SHORT)


Slopes = Callable[[np.ndarray, np.ndarray], np.ndarray]
"""Of parameters u, v (n,) a surface's derivatives after both: (n, 6)."""


def _slopes_of_any(surface: BRepAdaptor_Surface) -> Slopes:
    point, du, dv = gp_Pnt(), gp_Vec(), gp_Vec()

    def at(u: float, v: float) -> tuple[float, ...]:
        surface.D1(u, v, point, du, dv)
        return du.X(), du.Y(), du.Z(), dv.X(), dv.Y(), dv.Z()

    return lambda us, vs: np.array([at(u, v) for u, v in zip(us.tolist(), vs.tolist(), strict=True)])


def _slopes_of_round(surface: BRepAdaptor_Surface) -> Slopes:
    """Those of a cylinder or a cone: u turns about the axis, v runs along the flank."""
    cone = surface.GetType() == _CONE
    shape = surface.Cone() if cone else surface.Cylinder()
    place = shape.Position()
    x, y, z = (np.array(way.Coord()) for way in (place.XDirection(), place.YDirection(), place.Direction()))
    radius, lean = (shape.RefRadius(), shape.SemiAngle()) if cone else (shape.Radius(), 0.0)

    def slopes(us: np.ndarray, vs: np.ndarray) -> np.ndarray:
        cos, sin = np.cos(us)[:, None], np.sin(us)[:, None]
        round_, out = cos * y - sin * x, cos * x + sin * y
        return np.hstack([(radius + vs * np.sin(lean))[:, None] * round_, np.sin(lean) * out + np.cos(lean) * z])

    return slopes
