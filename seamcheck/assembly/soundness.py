"""Whether the faces of a body are what its file meant: edges that don't meet, outlines that cross.

The kernel reads damaged text without complaint: where an edge misses its corner it widens the tolerance
until they meet, by millimetres if need be, and a face with a broken outline stays as it is. Both show here,
at a small part of the cost of reading; the kernel's check of a whole body costs twice the read, nearly all of
it in faces with many holes.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace
from OCP.BRep import BRep_Tool
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp_Domain, BRepGProp_Face, BRepGProp_Vinert
from OCP.Geom import Geom_ElementarySurface
from OCP.gp import gp_Pnt
from OCP.ShapeAnalysis import ShapeAnalysis_ShapeTolerance
from OCP.TopAbs import TopAbs_FACE, TopAbs_VERTEX
from OCP.TopoDS import TopoDS

from seamcheck.assembly.plain_faces import LOOSE_MM, PlainFaces, plain_faces
from seamcheck.assembly.shapes import different, explore
from seamcheck.catalogue.say import say

_MOST_OUTLINES = 8  # the check of one face is quadratic in its outlines; others rely on the tolerance

_WORST = 1  # ShapeAnalysis_ShapeTolerance: mode > 0 asks for the largest


class Flaws(Struct, frozen=True):
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


class Faces(Struct, frozen=True, eq=False):
    """The different faces of a body.

    Attributes
    ----------
    every : TopoDS_Face, in the body's order
    plain : those that are plain
    others : indices of those that are not
    face_one_way : at every edge with a length two faces meet, and agree on which side of them is inside
    """

    every: list[Any]
    plain: PlainFaces
    others: list[int]
    face_one_way: bool

    @staticmethod
    def of(shape: Any) -> Faces:
        """The faces of a body (TopoDS_Shape, mm)."""
        faces = [TopoDS.Face_s(face) for face in different(shape, TopAbs_FACE)[1]]
        return Faces(faces, *plain_faces(shape, faces))

    def to_mend(self, precision: float) -> list[Any]:
        """TopoDS_Face: all but plain ones on which the kernel has nothing to mend; ``precision`` mm, as in its file."""
        tight = self.plain.faces[self.plain.are_tight(precision) & self.plain.are_sound()]
        return [self.every[index] for index in np.setdiff1d(np.arange(len(self.every)), tight)]

    def of_mended(self, shape: Any) -> Faces | None:
        """The faces of the body after mending (TopoDS_Shape, mm); None where they are no longer one for one.

        What was plain is so still, and is not looked at again: mending leaves where edges run.
        """
        faces = [TopoDS.Face_s(face) for face in different(shape, TopAbs_FACE)[1]]
        return replace(self, every=faces) if len(faces) == len(self.every) else None

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
        for index in (*self.others, *self.plain.faces[self.plain.have_arcs()]):  # arcs can cross each other
            face = self.every[index]
            sound[index] &= face.NbChildren() > _MOST_OUTLINES or BRepCheck_Analyzer(face).IsValid()
        broken = tuple(self.every[index] for index in np.flatnonzero(~sound))
        return Flaws(loose, broken, len(self.every), corner_of(broken[0]) if broken else None)


def corner_of(face: Any) -> tuple[float, float, float] | None:
    """A corner (mm) of a face; None without any."""
    for vertex in explore(face, TopAbs_VERTEX):
        point = BRep_Tool.Pnt_s(TopoDS.Vertex_s(vertex))
        return point.X(), point.Y(), point.Z()
    return None
