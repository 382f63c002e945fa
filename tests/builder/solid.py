"""Solids swept exactly: a section chain along a track, closed by two level caps (OCP)."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakeSolid,
    BRepBuilderAPI_MakeVertex,
    BRepBuilderAPI_MakeWire,
    BRepBuilderAPI_Sewing,
    BRepBuilderAPI_Transform,
)
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp
from OCP.BRepLib import BRepLib
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism, BRepPrimAPI_MakeRevol
from OCP.GC import GC_MakeArcOfCircle
from OCP.Geom import Geom_BSplineCurve, Geom_BSplineSurface
from OCP.gp import gp_Ax1, gp_Ax2, gp_Circ, gp_Dir, gp_Pln, gp_Pnt, gp_Trsf, gp_Vec
from OCP.GProp import GProp_GProps
from OCP.ShapeFix import ShapeFix_Face
from OCP.TColgp import TColgp_Array1OfPnt, TColgp_Array2OfPnt
from OCP.TColStd import TColStd_Array1OfInteger, TColStd_Array1OfReal, TColStd_Array2OfReal
from OCP.TopAbs import TopAbs_SHELL
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS
from scipy.interpolate import CubicSpline, make_interp_spline

from .section import Piece
from .track import AnyTrack, Arc, Line, SmoothTrack, Track

PER_PIECE = 160  # interpolation points per half of a smooth track: positions within 1e-5 mm


def swept_solid(track: AnyTrack, chain: Sequence[Piece], split_levels: bool = False) -> Any:
    """A solid whose boundary is ``chain`` swept along ``track`` plus level caps at both ends of the chain.

    With ``split_levels`` every level ring (the rib top, say) is one face a piece of the track instead of
    one face in all. The chain starts on the lower or inner cap and ends on the other; both caps are the
    regions that the track's parallels at the ends' offsets enclose.
    """
    if isinstance(track, Track) and track.is_circle:
        return _revolved(track, chain)
    sewing = BRepBuilderAPI_Sewing(1e-6)
    for piece in chain:
        if piece.is_level and not split_levels:
            low, high = sorted((piece.start[0], piece.end[0]))
            sewing.Add(level_face(track, piece.start[1], high, low))
        elif isinstance(track, Track):
            for run in track.pieces:
                sewing.Add(_swept_piece(run, piece))
        else:
            for a, b in ((0.0, 0.5), (0.5, 1.0)):
                sewing.Add(_smooth_piece(track, piece, a, b))
    for o, z in (chain[0].start, chain[-1].end):
        sewing.Add(level_face(track, z, o))
    sewing.Perform()
    explorer = TopExp_Explorer(sewing.SewedShape(), TopAbs_SHELL)
    if sewing.NbFreeEdges() or not explorer.More():
        raise RuntimeError(f"{track.name}: the faces do not close ({sewing.NbFreeEdges()} free edges)")
    return sound(BRepBuilderAPI_MakeSolid(TopoDS.Shell_s(explorer.Current())).Solid())


def sound(solid: Any) -> Any:
    """The solid turned outward; raises where the kernel finds fault with it."""
    BRepLib.OrientClosedSolid_s(solid)
    if not BRepCheck_Analyzer(solid).IsValid():
        raise RuntimeError("the kernel finds fault with the solid")
    return solid


def volume(shape: Any) -> float:
    properties = GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, properties, 1e-6)  # adaptive: the plain one errs by 3e-3 on splines
    return float(properties.Mass())


def surface(shape: Any) -> float:
    properties = GProp_GProps()
    BRepGProp.SurfaceProperties_s(shape, properties)
    return float(properties.Mass())


def level_face(track: AnyTrack, z: float, outer: float, inner: float | None = None) -> Any:
    """The level face at height z within the parallel at ``outer``, less that within ``inner``."""
    plane = gp_Pln(gp_Pnt(0, 0, z), gp_Dir(0, 0, 1))
    maker = BRepBuilderAPI_MakeFace(plane, loop(track, outer, z), True)
    if inner is not None:
        maker.Add(TopoDS.Wire_s(loop(track, inner, z).Reversed()))
    fix = ShapeFix_Face(maker.Face())
    fix.FixOrientation()
    return fix.Face()


def loop(track: AnyTrack, offset: float, z: float) -> Any:
    """Wire of the parallel of the track at a height."""
    wire = BRepBuilderAPI_MakeWire()
    if isinstance(track, SmoothTrack):
        for a, b in ((0.0, 0.5), (0.5, 1.0)):
            knots, poles = _interpolated(track, (offset, z), a, b)
            wire.Add(BRepBuilderAPI_MakeEdge(_curve(knots, poles)).Edge())
        return wire.Wire()
    for run in track.pieces:
        xy, normal = run.at(np.array([0.0, run.length / 2, run.length]))
        p, m, q = (gp_Pnt(*(xy[i] + offset * normal[i]), z) for i in range(3))
        if isinstance(run, Line):
            wire.Add(BRepBuilderAPI_MakeEdge(p, q).Edge())
        elif track.is_circle:
            ring = gp_Circ(gp_Ax2(gp_Pnt(*run.centre, z), gp_Dir(0, 0, 1)), run.radius + offset)
            wire.Add(BRepBuilderAPI_MakeEdge(ring).Edge())
        else:
            if run.radius + math.copysign(offset, run.sweep * offset) <= 0:
                raise ValueError(f"{track.name}: the parallel at {offset} mm has no radius left")
            wire.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(p, m, q).Value()).Edge())
    return wire.Wire()


def _edge(piece: Piece, at: np.ndarray, normal: np.ndarray) -> Any:
    def place(point: tuple[float, float]) -> gp_Pnt:
        x, y = at + point[0] * normal
        return gp_Pnt(float(x), float(y), point[1])

    if piece.centre is None or piece.through is None:
        return BRepBuilderAPI_MakeEdge(place(piece.start), place(piece.end)).Edge()
    arc = GC_MakeArcOfCircle(place(piece.start), place(piece.through), place(piece.end))
    return BRepBuilderAPI_MakeEdge(arc.Value()).Edge()


def _swept_piece(run: Line | Arc, piece: Piece) -> Any:
    xy, normal = run.at(np.array([0.0, run.length]))
    edge = _edge(piece, xy[0], normal[0])
    if isinstance(run, Line):
        return BRepPrimAPI_MakePrism(edge, gp_Vec(*(xy[1] - xy[0]), 0.0)).Shape()
    axis = gp_Ax1(gp_Pnt(*run.centre, 0.0), gp_Dir(0, 0, math.copysign(1.0, run.sweep)))
    return BRepPrimAPI_MakeRevol(edge, axis, abs(run.sweep)).Shape()


def _revolved(track: Track, chain: Sequence[Piece]) -> Any:
    """A full revolution about the circle's axis: faces with a seam edge, as CAD makes them."""
    radius = track.pieces[0].length / (2 * math.pi)
    at, normal = np.array([radius, 0.0]), np.array([1.0, 0.0])
    first, last = chain[0].start, chain[-1].end
    closing = [
        Piece((-radius, first[1]), first),
        *chain,
        Piece(last, (-radius, last[1])),
        Piece((-radius, last[1]), (-radius, first[1])),
    ]
    wire = BRepBuilderAPI_MakeWire()
    for piece in closing:
        wire.Add(_edge(piece, at, normal))
    face = BRepBuilderAPI_MakeFace(wire.Wire(), True).Face()
    body = BRepPrimAPI_MakeRevol(face, gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1))).Shape()
    return sound(TopoDS.Solid_s(body))


def _interpolated(track: SmoothTrack, point: tuple[float, float], a: float, b: float) -> tuple[np.ndarray, np.ndarray]:
    """Knots and poles (n, 3) of the cubic through exact points of the parallel between t = a and b."""
    whole = np.linspace(0, 1, 2 * PER_PIECE + 1)
    xy, normal = track.points_t(np.mod(whole, 1.0))
    xyz = np.column_stack([xy + point[0] * normal, np.full(len(xy), point[1])])
    xyz[-1] = xyz[0]
    slope = CubicSpline(whole, xyz, bc_type="periodic").derivative(1)
    mine = (whole >= a - 1e-12) & (whole <= b + 1e-12)
    ends = ([(1, slope(a))], [(1, slope(b))])
    spline = make_interp_spline(whole[mine], xyz[mine], k=3, bc_type=ends)
    return spline.t, spline.c


def _knots(knots: np.ndarray) -> tuple[Any, Any]:
    values, counts = np.unique(knots, return_counts=True)
    real, whole = TColStd_Array1OfReal(1, len(values)), TColStd_Array1OfInteger(1, len(values))
    for i, (value, count) in enumerate(zip(values, counts, strict=True), start=1):
        real.SetValue(i, float(value))
        whole.SetValue(i, int(count))
    return real, whole


def _curve(knots: np.ndarray, poles: np.ndarray) -> Any:
    points = TColgp_Array1OfPnt(1, len(poles))
    for i, pole in enumerate(poles, start=1):
        points.SetValue(i, gp_Pnt(*map(float, pole)))
    return Geom_BSplineCurve(points, *_knots(knots), 3)


def _smooth_piece(track: SmoothTrack, piece: Piece, a: float, b: float) -> Any:
    """A face: cubic along the track, straight or an exact (rational) arc across it."""
    across = [piece.start, piece.end]
    weights = [1.0, 1.0]
    if piece.centre is not None:
        p, q, c = (np.array(x) for x in (piece.start, piece.end, piece.centre))
        half = math.acos(float((p - c) @ (q - c) / (np.linalg.norm(p - c) * np.linalg.norm(q - c)))) / 2
        apex = c + ((p + q) / 2 - c) / math.cos(half) ** 2
        across = [piece.start, (float(apex[0]), float(apex[1])), piece.end]
        weights = [1.0, math.cos(half), 1.0]
    columns = [_interpolated(track, point, a, b) for point in across]
    knots, n, m = columns[0][0], len(columns[0][1]), len(across)
    poles, shares = TColgp_Array2OfPnt(1, n, 1, m), TColStd_Array2OfReal(1, n, 1, m)
    for j, (_, column) in enumerate(columns, start=1):
        for i, pole in enumerate(column, start=1):
            poles.SetValue(i, j, gp_Pnt(*map(float, pole)))
            shares.SetValue(i, j, weights[j - 1])
    degree = m - 1
    ends = np.array([0.0] * (degree + 1) + [1.0] * (degree + 1))
    u_knots, u_counts = _knots(knots)
    v_knots, v_counts = _knots(ends)
    sheet = Geom_BSplineSurface(poles, shares, u_knots, v_knots, u_counts, v_counts, 3, degree)
    return BRepBuilderAPI_MakeFace(sheet, 1e-7).Face()


def moved(shape: Any, matrix: np.ndarray) -> Any:
    """The shape under a rigid motion (4, 4), as new geometry."""
    motion = gp_Trsf()
    motion.SetValues(*(float(x) for x in matrix[:3].ravel()))
    return BRepBuilderAPI_Transform(shape, motion, True).Shape()


def vertex(point: Sequence[float]) -> Any:
    return BRepBuilderAPI_MakeVertex(gp_Pnt(*map(float, point))).Vertex()
