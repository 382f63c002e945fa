"""Cutting and adding bodies along a stretch of the seam, in the drawing's frame (OCP)."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np
from OCP.BRep import BRep_Builder
from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCone, BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakePrism, BRepPrimAPI_MakeRevol
from OCP.gp import gp_Ax1, gp_Ax2, gp_Dir, gp_Pnt, gp_Vec
from OCP.ShapeUpgrade import ShapeUpgrade_UnifySameDomain
from OCP.TopAbs import TopAbs_FACE, TopAbs_SOLID
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS, TopoDS_Compound
from OCP.TopTools import TopTools_ListOfShape

from .track import AnyTrack, Arc, Line, Track


def stretch(track: AnyTrack, s: float, length: float, outline: Sequence[tuple[float, float]]) -> Any:
    """The polygon ``outline`` (o, z) swept ``length`` mm of mid-line, centred at arc length s.

    Along a straight run a prism, along an arc a revolution; the stretch must stay within one piece. On a
    smooth track a prism along the tangent: true in the middle only.
    """
    if isinstance(track, Track):
        run, begin = _run_at(track, s, length)
        if isinstance(run, Arc):
            xy, normal = run.at(np.array([begin]))
            axis = gp_Ax1(gp_Pnt(*run.centre, 0), gp_Dir(0, 0, math.copysign(1, run.sweep)))
            face = _face(outline, xy[0], normal[0])
            return _solid(BRepPrimAPI_MakeRevol(face, axis, length / run.radius).Shape())
    xy, normal = track.at(np.array([s]))
    n = normal[0]
    t = np.array([-n[1], n[0]])
    face = _face(outline, xy[0] - t * length / 2, n)
    return _solid(BRepPrimAPI_MakePrism(face, gp_Vec(*(t * length), 0)).Shape())


def box(low: Sequence[float], high: Sequence[float]) -> Any:
    """An upright box between two corners."""
    x0, y0, z0 = low
    x1, y1, z1 = high
    face = _polygon([(x0, y0, z0), (x1, y0, z0), (x1, y1, z0), (x0, y1, z0)])
    return BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, z1 - z0)).Shape()


def cylinder(at: Sequence[float], radius: float, height: float) -> Any:
    """An upright cylinder standing on ``at``."""
    return BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(*map(float, at)), gp_Dir(0, 0, 1)), radius, height).Shape()


def cone(at: Sequence[float], low: float, high: float, radius_low: float, radius_high: float) -> Any:
    """An upright cone round (x, y) between two heights, as wide as stated at its ends."""
    if abs(radius_low - radius_high) < 1e-9:
        return cylinder((at[0], at[1], low), radius_low, high - low)
    axis = gp_Ax2(gp_Pnt(at[0], at[1], low), gp_Dir(0.0, 0.0, 1.0))
    return BRepPrimAPI_MakeCone(axis, radius_low, radius_high, high - low).Shape()


def cut(shape: Any, *tools: Any) -> Any:
    for tool in tools:
        shape = one_solid(BRepAlgoAPI_Cut(shape, tool).Shape())
    return shape


def fuse(shape: Any, *tools: Any) -> Any:
    """Fused into one solid, faces of the same surface joined."""
    for tool in tools:
        joined = ShapeUpgrade_UnifySameDomain(BRepAlgoAPI_Fuse(shape, tool).Shape(), True, True, False)
        joined.Build()
        shape = one_solid(joined.Shape())
    return shape


def fuse_all(shapes: Sequence[Any]) -> Any:
    """All shapes fused into one solid in one operation."""
    first, others = TopTools_ListOfShape(), TopTools_ListOfShape()
    first.Append(shapes[0])
    for shape in shapes[1:]:
        others.Append(shape)
    maker = BRepAlgoAPI_Fuse()
    maker.SetArguments(first)
    maker.SetTools(others)
    maker.Build()
    maker.SimplifyResult()
    return one_solid(maker.Shape())


def one_solid(shape: Any) -> Any:
    found = solids(shape)
    if len(found) != 1 or not BRepCheck_Analyzer(found[0]).IsValid():
        raise RuntimeError(f"expected one sound solid, got {len(found)}")
    return found[0]


def solids(shape: Any) -> list[Any]:
    return [TopoDS.Solid_s(s) for s in _each(shape, TopAbs_SOLID)]


def faces(shape: Any) -> list[Any]:
    return [TopoDS.Face_s(f) for f in _each(shape, TopAbs_FACE)]


def compound(shapes: Sequence[Any]) -> Any:
    builder, whole = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(whole)
    for shape in shapes:
        builder.Add(whole, shape)
    return whole


def _each(shape: Any, kind: Any) -> list[Any]:
    explorer, found = TopExp_Explorer(shape, kind), []
    while explorer.More():
        found.append(explorer.Current())
        explorer.Next()
    return found


def _solid(shape: Any) -> Any:
    return solids(shape)[0]


def _run_at(track: Track, s: float, length: float) -> tuple[Line | Arc, float]:
    """The piece around s and where in it the stretch begins."""
    if length > track.length:
        raise ValueError("the stretch is longer than the seam")
    start = 0.0
    for run in track.pieces:
        if start <= s < start + run.length:
            begin = s - start - length / 2
            if begin < -1e-9 or begin + length > run.length + 1e-9:
                raise ValueError(f"{track.name}: a stretch of {length} mm at {s} leaves its piece")
            return run, begin
        start += run.length
    raise ValueError(f"{track.name} has no arc length {s}")


def _face(outline: Sequence[tuple[float, float]], at: np.ndarray, normal: np.ndarray) -> Any:
    return _polygon([(*(at + o * normal), z) for o, z in outline])


def _polygon(points: Sequence[Sequence[float]]) -> Any:
    maker = BRepBuilderAPI_MakePolygon()
    for p in points:
        maker.Add(gp_Pnt(*map(float, p)))
    maker.Close()
    return BRepBuilderAPI_MakeFace(maker.Wire(), True).Face()
