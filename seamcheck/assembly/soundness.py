"""Whether the faces of a body are what its file meant: edges that don't meet, outlines that cross.

The kernel reads damaged text without complaint: where an edge misses its corner it widens the tolerance
until they meet, by millimetres if need be, and a face with a broken outline stays as it is. Both show here,
at a small part of the cost of reading; the kernel's check of a whole body costs twice the read, nearly all of
it in faces with many holes.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.Geom import Geom_Plane
from OCP.GeomAbs import GeomAbs_Line
from OCP.gp import gp_Pln
from OCP.ShapeAnalysis import ShapeAnalysis_ShapeTolerance
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_FORWARD, TopAbs_REVERSED, TopAbs_VERTEX
from OCP.TopExp import TopExp, TopExp_Explorer
from OCP.TopoDS import TopoDS
from OCP.TopTools import TopTools_IndexedMapOfShape

LOOSE_MM = 0.02  # a fifth of the smallest gap that matters in a seam
_MOST_OUTLINES = 8  # the check of one face is quadratic in its outlines; others rely on the tolerance
_ENDLESS = 1e10  # mm; a line without ends has parameters beyond

_WORST = 1  # ShapeAnalysis_ShapeTolerance: mode > 0 asks for the largest


@dataclass(frozen=True, slots=True)
class Flaws:
    """What is wrong with a body's faces.

    Attributes
    ----------
    loose : largest distance (mm) by which faces, edges and corners miss each other, as the kernel bridged it
    broken : number of faces whose outline is no sound outline
    faces : number of faces
    place : a corner (mm, in the product) of the first broken face, or None
    """

    loose: float
    broken: int
    faces: int
    place: tuple[float, float, float] | None = None

    @property
    def notes(self) -> tuple[str, ...]:
        """Sentences; none for a sound body."""
        found = []
        if not self.loose <= LOOSE_MM:  # NaN counts too
            found.append(
                f"Its faces, edges and corners miss each other by up to {self.loose:.3g} mm; what is "
                "measured there can be that far off."
            )
        if self.broken:
            where = f", the first near ({', '.join(f'{x:.1f}' for x in self.place)})" if self.place else ""
            found.append(
                f"{self.broken} of its {self.faces} faces have a damaged outline{where}; what is measured "
                "there can be wrong."
            )
        return tuple(found)


def find_flaws(shape: Any) -> Flaws:
    """Check the tolerances of a body (TopoDS_Shape, mm) and the outlines of its faces."""
    found = TopTools_IndexedMapOfShape()
    TopExp.MapShapes_s(shape, TopAbs_FACE, found)
    faces = [TopoDS.Face_s(found.FindKey(number)) for number in range(1, found.Extent() + 1)]
    loose = ShapeAnalysis_ShapeTolerance().Tolerance(shape, _WORST)
    broken = [face for face in faces if not _is_sound(face)]
    return Flaws(loose, len(broken), len(faces), _corner(broken[0]) if broken else None)


def _is_sound(face: Any) -> bool:
    surface = BRep_Tool.Surface_s(face)
    if type(surface) is Geom_Plane:
        edges = _straight_edges(face)
        if edges:  # most faces; a fraction of the time
            return all(_lies_on(surface.Pln(), edge, line) for edge, line in edges) and _closes(edges)
    return face.NbChildren() > _MOST_OUTLINES or BRepCheck_Analyzer(face).IsValid()


def _straight_edges(face: Any) -> list[tuple[Any, BRepAdaptor_Curve]]:
    """The edges of a face with their curves if all of them are straight, else none."""
    edges = []
    explorer = TopExp_Explorer(face, TopAbs_EDGE)
    while explorer.More():
        edge = TopoDS.Edge_s(explorer.Current())
        if not BRep_Tool.IsGeometric_s(edge):
            return []
        curve = BRepAdaptor_Curve(edge)
        if curve.GetType() != GeomAbs_Line:
            return []
        edges.append((edge, curve))
        explorer.Next()
    return edges


def _lies_on(plane: gp_Pln, edge: Any, line: BRepAdaptor_Curve) -> bool:
    """Whether a straight edge runs in a plane, from corner to corner."""
    ends = (
        (TopExp.FirstVertex_s(edge), line.FirstParameter()),
        (TopExp.LastVertex_s(edge), line.LastParameter()),
    )
    for vertex, parameter in ends:
        if vertex.IsNull() or not abs(parameter) < _ENDLESS:
            return False
        corner = BRep_Tool.Pnt_s(vertex)
        away = (plane.Distance(corner), line.Value(parameter).Distance(corner))
        if not all(distance <= LOOSE_MM for distance in away):  # NaN is no answer either
            return False
    return True


def _closes(edges: list[tuple[Any, BRepAdaptor_Curve]]) -> bool:
    """Whether straight edges, one after the other, lead back to where they began."""
    x = y = z = 0.0
    for edge, line in edges:
        sign = {TopAbs_FORWARD: 1.0, TopAbs_REVERSED: -1.0}.get(edge.Orientation(), 0.0)
        begin, end = line.Value(line.FirstParameter()), line.Value(line.LastParameter())
        x += sign * (end.X() - begin.X())
        y += sign * (end.Y() - begin.Y())
        z += sign * (end.Z() - begin.Z())
    return math.hypot(x, y, z) <= LOOSE_MM


def _corner(face: Any) -> tuple[float, float, float] | None:
    explorer = TopExp_Explorer(face, TopAbs_VERTEX)
    if not explorer.More():
        return None
    point = BRep_Tool.Pnt_s(TopoDS.Vertex_s(explorer.Current()))
    return point.X(), point.Y(), point.Z()
