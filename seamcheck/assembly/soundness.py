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

import numpy as np
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp_Domain, BRepGProp_Face, BRepGProp_Vinert
from OCP.Geom import Geom_ElementarySurface, Geom_Plane
from OCP.GeomAbs import GeomAbs_Line
from OCP.gp import gp_Pnt
from OCP.ShapeAnalysis import ShapeAnalysis_ShapeTolerance
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_FORWARD, TopAbs_REVERSED, TopAbs_VERTEX
from OCP.TopExp import TopExp
from OCP.TopoDS import TopoDS
from OCP.TopTools import TopTools_IndexedMapOfShape

from seamcheck.assembly.shapes import explore
from seamcheck.catalogue.say import say

LOOSE_MM = 0.02  # a fifth of the smallest gap that matters in a seam
_MOST_OUTLINES = 8  # the check of one face is quadratic in its outlines; others rely on the tolerance
_Point = tuple[float, float, float]
_Ends = tuple[_Point, _Point]

_NOWHERE = (math.nan, math.nan, math.nan)
_ENDLESS = 1e10  # mm; a line without ends has parameters beyond

_WORST = 1  # ShapeAnalysis_ShapeTolerance: mode > 0 asks for the largest


@dataclass(frozen=True, slots=True)
class Flaws:
    """What is wrong with a body's faces.

    Attributes
    ----------
    loose : largest distance (mm) by which faces, edges and corners miss each other, as the kernel bridged it
    broken : the faces (TopoDS_Face) whose outline is no sound outline
    faces : number of faces
    place : a corner (mm, in the product) of the first broken face, or None
    """

    loose: float
    broken: tuple[Any, ...]
    faces: int
    place: tuple[float, float, float] | None = None

    @property
    def notes(self) -> tuple[str, ...]:
        """Sentences; none for a sound body."""
        found = []
        if not self.loose <= LOOSE_MM:  # NaN counts too
            found.append(say("part.loose", gap=f"{self.loose:.3g} mm"))
        if self.broken:
            where = {"place": ", ".join(f"{x:.1f}" for x in self.place)} if self.place else {}
            found.append(say("part.outlines", broken=len(self.broken), faces=self.faces, **where))
        return tuple(found)


@dataclass(frozen=True, slots=True, eq=False)
class _Plain:
    """Planes with straight edges only: most faces, checked together in a fraction of the time.

    Attributes
    ----------
    faces : (f,) int, index of each
    origins, normals : (f, 3) float mm, of their planes
    owners : (e,) int, for each edge of each face the place of the face in ``faces``
    ends : (e, 2, 3) float mm, where it begins and ends on the outline; NaN where it misses its corners
    """

    faces: np.ndarray
    origins: np.ndarray
    normals: np.ndarray
    owners: np.ndarray
    ends: np.ndarray

    def volume(self, origin: np.ndarray) -> float:
        """mm³ between a point (3,) and the faces, outward positive; NaN where an edge misses its corners.

        A pyramid holds a third of height times base; the base, as a vector, is half the sum over its outline of the
        cross products of where an edge begins and ends.
        """
        begin, end = (self.ends - origin).transpose(1, 0, 2)
        return float(((self.origins[self.owners] - origin) * np.cross(begin, end)).sum()) / 6.0

    def are_sound(self) -> np.ndarray:
        """(f,) bool: all edges lie in the plane and lead, one after the other, back to where they began."""
        sound = np.ones(len(self.faces), dtype=bool)
        with np.errstate(invalid="ignore"):  # NaN compares false: not sound
            from_origin = self.ends - self.origins[self.owners][:, None, :]
            away = np.abs(np.einsum("ekx,ex->ek", from_origin, self.normals[self.owners])).max(axis=1)
            around = np.zeros((len(self.faces), 3))
            np.add.at(around, self.owners, self.ends[:, 1] - self.ends[:, 0])
            sound &= np.linalg.norm(around, axis=1) <= LOOSE_MM
            sound[self.owners[~(away <= LOOSE_MM)]] = False
        return sound


@dataclass(frozen=True, slots=True, eq=False)
class Faces:
    """The different faces of a body: every TopoDS_Face, in its order; which of them are plain; which are not."""

    every: list[Any]
    plain: _Plain
    others: list[int]

    @staticmethod
    def of(shape: Any) -> Faces:
        """The faces of a body (TopoDS_Shape, mm)."""
        faces = [TopoDS.Face_s(face) for face in _different(shape, TopAbs_FACE)[1]]
        return Faces(faces, *_plain_faces(shape, faces))

    def volume(self, origin: tuple[float, float, float]) -> float | None:
        """mm³ between a point and all faces, outward positive; None where a face is bent otherwise than in circles.

        The kernel integrates such faces well; on general ones it is off by as much as is looked for here. Asked for a
        whole body, it takes a point of its own, whichever one it is given.
        """
        others = [self.every[index] for index in self.others]
        if not all(isinstance(BRep_Tool.Surface_s(face), Geom_ElementarySurface) for face in others):
            return None
        if not self.plain.are_sound().all():
            return None
        found = self.plain.volume(np.array(origin))
        for face in others:
            bent, outline, pyramid = BRepGProp_Face(), BRepGProp_Domain(), BRepGProp_Vinert()
            bent.Load(face)
            outline.Init(face)
            pyramid.SetLocation(gp_Pnt(*origin))
            pyramid.Perform(bent, outline)
            found += pyramid.Mass()
        return found

    def flaws(self, shape: Any) -> Flaws:
        """Check the tolerances of the body and the outlines of its faces."""
        loose = ShapeAnalysis_ShapeTolerance().Tolerance(shape, _WORST)
        sound = np.ones(len(self.every), dtype=bool)
        sound[self.plain.faces] = self.plain.are_sound()
        for index in self.others:
            face = self.every[index]
            sound[index] = face.NbChildren() > _MOST_OUTLINES or BRepCheck_Analyzer(face).IsValid()
        broken = tuple(self.every[index] for index in np.flatnonzero(~sound))
        return Flaws(loose, broken, len(self.every), corner_of(broken[0]) if broken else None)


def _plain_faces(shape: Any, faces: list[Any]) -> tuple[_Plain, list[int]]:
    """The plain faces of a body, and the indices of the others."""
    numbers, edges = _different(shape, TopAbs_EDGE)
    straight = [_ends_of_line(TopoDS.Edge_s(edge)) for edge in edges]
    plain: list[int] = []
    others: list[int] = []
    owners: list[int] = []
    ends: list[_Ends] = []
    planes: list[tuple[float, ...]] = []
    for index, face in enumerate(faces):
        surface = BRep_Tool.Surface_s(face)
        outline = _outline(face, numbers, straight) if type(surface) is Geom_Plane else None
        if not outline:
            others.append(index)
            continue
        owners += [len(plain)] * len(outline)
        ends += outline
        plain.append(index)
        axis = surface.Pln().Axis()
        planes.append(axis.Location().Coord() + axis.Direction().Coord())
    table = np.array(planes, dtype=float).reshape(-1, 6)
    found = _Plain(
        np.array(plain, dtype=int), table[:, :3], table[:, 3:], np.array(owners, dtype=int),
        np.array(ends, dtype=float).reshape(-1, 2, 3),
    )  # fmt: skip
    return found, others


def _outline(face: Any, numbers: Any, straight: list[_Ends | None]) -> list[_Ends] | None:
    """Where the edges of a face begin and end, along its outlines; None unless all are straight."""
    outline = []
    for edge in explore(face, TopAbs_EDGE):
        ends = straight[numbers.FindIndex(edge) - 1]
        if ends is None:
            return None
        orientation = edge.Orientation()
        if orientation == TopAbs_FORWARD:
            outline.append(ends)
        elif orientation == TopAbs_REVERSED:
            outline.append((ends[1], ends[0]))
    return outline


def _ends_of_line(edge: Any) -> _Ends | None:
    """Where a straight edge begins and ends, NaN if not at its corners; None for one that isn't straight."""
    if not BRep_Tool.IsGeometric_s(edge):
        return None
    line = BRepAdaptor_Curve(edge)
    if line.GetType() != GeomAbs_Line:
        return None
    begin = _end(TopExp.FirstVertex_s(edge), line, line.FirstParameter())
    return begin, _end(TopExp.LastVertex_s(edge), line, line.LastParameter())


def _end(vertex: Any, line: BRepAdaptor_Curve, parameter: float) -> _Point:
    if vertex.IsNull() or not abs(parameter) < _ENDLESS:
        return _NOWHERE
    point: _Point = line.Value(parameter).Coord()
    if not math.dist(point, BRep_Tool.Pnt_s(vertex).Coord()) <= LOOSE_MM:  # NaN is no answer either
        return _NOWHERE
    return point


def _different(shape: Any, kind: Any) -> tuple[Any, list[Any]]:
    """A map of the different sub-shapes of one kind, and all of them in its order."""
    found = TopTools_IndexedMapOfShape()
    TopExp.MapShapes_s(shape, kind, found)
    return found, [found.FindKey(number) for number in range(1, found.Extent() + 1)]


def corner_of(face: Any) -> tuple[float, float, float] | None:
    """A corner (mm) of a face; None without any."""
    for vertex in explore(face, TopAbs_VERTEX):
        point = BRep_Tool.Pnt_s(TopoDS.Vertex_s(vertex))
        return point.X(), point.Y(), point.Z()
    return None
