"""Exact normals of faces, at points spread over them."""

from __future__ import annotations

from typing import Any

import numpy as np
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.BRepTools import BRepTools
from OCP.gp import gp_Pnt, gp_Vec

_LONG, _SHORT = 41, 5  # points along the longer and the shorter side of a face


def spread_normals(face: Any) -> tuple[np.ndarray, np.ndarray]:
    """Unit normals (n, 3) of a face's surface over the range of its parameters, and the area (n,) mm² of each.

    The range is that of the whole face; places that its outline cuts off count as well. The sense is that of the
    parameters, not of the solid. Facets are no help here: those of a low, bent wall tilt.
    """
    surface = BRepAdaptor_Surface(face, False)
    u0, u1, v0, v1 = BRepTools.UVBounds_s(face)
    point, du, dv = gp_Pnt(), gp_Vec(), gp_Vec()

    def at(u: float, v: float) -> tuple[float, ...]:
        surface.D1(u, v, point, du, dv)
        return du.X(), du.Y(), du.Z(), dv.X(), dv.Y(), dv.Z()

    middle = np.array(at((u0 + u1) / 2, (v0 + v1) / 2))
    wide = np.linalg.norm(middle[:3]) * (u1 - u0) > np.linalg.norm(middle[3:]) * (v1 - v0)
    many, few = (_LONG, _SHORT) if wide else (_SHORT, _LONG)
    us, vs = (a + (b - a) * (np.arange(n) + 0.5) / n for a, b, n in ((u0, u1, many), (v0, v1, few)))
    along = np.array([at(float(u), float(v)) for u in us for v in vs])
    normals = np.cross(along[:, :3], along[:, 3:])
    length = np.linalg.norm(normals, axis=1)
    sound = np.isfinite(length) & (length > 1e-12)
    normals, length = normals[sound], length[sound]
    return normals / length[:, None], length * (u1 - u0) * (v1 - v0) / (_LONG * _SHORT)
