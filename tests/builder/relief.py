"""Seams on uneven ground: everything between vertical walls, levels following z = f(x, y) (OCP).

Every level of the section is the same surface shifted along z, so all measures along v (heights, gap,
thickness, travel) and all widths across the vertical walls are those of the Spec exactly.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import numpy as np
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge, BRepBuilderAPI_MakeFace, BRepBuilderAPI_Transform
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.GC import GC_MakeArcOfCircle
from OCP.Geom import Geom_BezierSurface
from OCP.gp import gp_Dir, gp_Pln, gp_Pnt, gp_Trsf, gp_Vec
from OCP.TColgp import TColgp_Array2OfPnt
from scipy.integrate import quad

from .ops import cut, fuse_all, one_solid
from .solid import level_face
from .spec import Spec
from .track import AnyTrack, Line, SmoothTrack

Region = Callable[[float, float], Any]
"""(offset, z) -> level face within the parallel at the offset."""


class Ground:
    """A height field z = f(x, y) over the square |x|, |y| <= half, with f(0, 0) = 0."""

    def __init__(self, kind: str, amount: float, half: float = 60.0) -> None:
        """``amount``: slope dz/dx for 'slope'; radius for 'cylinder'; a of z = a (x^2 - y^2) for 'saddle'."""
        self.kind, self.amount, self.half = kind, amount, half

    def height(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        if self.kind == "level":
            return np.zeros_like(x)
        if self.kind == "slope":
            return self.amount * x
        if self.kind == "cylinder":
            return np.sqrt(self.amount**2 - x**2) - self.amount
        return self.amount * (x**2 - y**2)

    def gradient(self, x: float, y: float) -> tuple[float, float]:
        if self.kind == "level":
            return 0.0, 0.0
        if self.kind == "slope":
            return self.amount, 0.0
        if self.kind == "cylinder":
            return -x / math.sqrt(self.amount**2 - x**2), 0.0
        return 2 * self.amount * x, -2 * self.amount * y

    def below(self, shift: float) -> Any:
        """The solid below z = f(x, y) + shift."""
        b = self.half
        if self.kind == "cylinder":
            b = min(b, 0.8 * self.amount)
            p, m, q = (gp_Pnt(x, -b, float(self.height(np.array(x), np.array(0.0)))) for x in (-b, 0.0, b))
            edge = BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(p, m, q).Value()).Edge()
            sheet = BRepPrimAPI_MakePrism(edge, gp_Vec(0, 2 * b, 0)).Shape()
        elif self.kind in ("level", "slope"):
            slope = self.amount if self.kind == "slope" else 0.0
            plane = gp_Pln(gp_Pnt(0, 0, 0), gp_Dir(-slope, 0, 1))
            c = b * math.hypot(1.0, slope)
            sheet = BRepBuilderAPI_MakeFace(plane, -c, c, -c, c).Face()
        else:
            # the biquadratic Bezier patch through f, exact: its ordinates are the polar form of x^2 and y^2
            poles = TColgp_Array2OfPnt(1, 3, 1, 3)
            for i, x in enumerate((-b, 0.0, b), start=1):
                for j, y in enumerate((-b, 0.0, b), start=1):
                    square = {-b: b * b, 0.0: -b * b, b: b * b}
                    z = self.amount * (square[x] - square[y])
                    poles.SetValue(i, j, gp_Pnt(x, y, z))
            sheet = BRepBuilderAPI_MakeFace(Geom_BezierSurface(poles), 1e-7).Face()
        lift = gp_Trsf()
        lift.SetTranslation(gp_Vec(0, 0, shift))
        sheet = BRepBuilderAPI_Transform(sheet, lift, True).Shape()
        return BRepPrimAPI_MakePrism(sheet, gp_Vec(0, 0, -80)).Shape()

    def length(self, track: AnyTrack) -> float:
        """Length of the mid-line on the ground: integral of sqrt(1 + (df/ds)^2) ds."""
        if isinstance(track, SmoothTrack):
            raise ValueError("only for lines and arcs")
        total = 0.0
        for piece in track.pieces:

            def speed(s: float, piece: Any = piece) -> float:
                (p,), (n,) = piece.at(np.array([s]))
                gx, gy = self.gradient(p[0], p[1])
                return math.hypot(1.0, gx * -n[1] + gy * n[0])

            total += quad(speed, 0, piece.length, epsabs=1e-11, epsrel=1e-11, limit=200)[0]
        return total


def parallels(track: AnyTrack) -> Region:
    return lambda offset, z: level_face(track, z, offset)


def sharp_parallels(width: float, depth: float, radius: float) -> Region:
    """Parallels of a rounded rectangle whose inner corners turn sharp where the radius is used up."""
    from .track import Track, rounded_rectangle

    def region(offset: float, z: float) -> Any:
        w, d, r = width + 2 * offset, depth + 2 * offset, radius + offset
        if r > 1e-6:
            return level_face(rounded_rectangle(w, d, r), z, 0.0)
        c = [(-w / 2, -d / 2), (w / 2, -d / 2), (w / 2, d / 2), (-w / 2, d / 2)]
        lines = tuple(Line(a, b) for a, b in zip(c, c[1:] + c[:1], strict=True))
        return level_face(Track("sharp", lines), z, 0.0)

    return region


def draw_on(spec: Spec, ground: Ground, region: Region | None = None) -> tuple[Any, Any]:
    """Cover and base of a Spec (lips on both sides, no drafts, no fillets) on the ground."""
    if (spec.draft_inner, spec.draft_outer, spec.top_fillet, spec.root_fillet) != (0, 0, 0, 0):
        raise ValueError("only for vertical flanks without fillets")
    if (spec.inner, spec.outer) != ("lip", "lip"):
        raise ValueError("only for lips on both sides")
    region = region or parallels(spec.track)

    def column(outer: float, inner: float | None, low: float, level: float) -> Any:
        """The ring between two parallels, from z = low up to the ground shifted by ``level``."""
        body = BRepPrimAPI_MakePrism(region(outer, low), gp_Vec(0, 0, 70)).Shape()
        if inner is not None:
            hole = BRepPrimAPI_MakePrism(region(inner, low - 1), gp_Vec(0, 0, 72)).Shape()
            body = cut(body, hole)
        return one_solid(BRepAlgoAPI_Common(body, ground.below(level)).Shape())

    low = -spec.wall_height - 25.0
    half = spec.rib_width / 2
    face_in, face_out = -spec.wall_face("inner"), spec.wall_face("outer")
    end_in, end_out = -spec.trap_end("inner"), spec.trap_end("outer")
    base = fuse_all(
        [
            column(face_in, None, low, -spec.wall_height + spec.floor_thickness),
            column(end_in, face_in, low, -spec.lip_depth("inner")),
            column(-half, end_in, low, -spec.rib_height_inner),
            column(half, -half, low, 0.0),
            column(end_out, half, low, -spec.rib_height_outer),
            column(face_out, end_out, low, -spec.lip_depth("outer")),
        ]
    )
    plate = column(spec.cover_edge, None, low, spec.gap + spec.cover_thickness)
    cover = cut(plate, ground.below(spec.gap))
    return cover, base
