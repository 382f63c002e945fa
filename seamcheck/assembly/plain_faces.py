"""The plain faces of a body as tables: planes between straight edges and arcs of circles, checked all at once."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.Geom import Geom_Plane
from OCP.GeomAbs import GeomAbs_Circle, GeomAbs_Line
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FORWARD, TopAbs_REVERSED, TopAbs_VERTEX
from OCP.TopExp import TopExp, TopExp_Explorer
from OCP.TopoDS import TopoDS

from seamcheck.assembly.shapes import different

LOOSE_MM = 0.02  # a fifth of the smallest gap that matters in a seam
CONFUSION_MM = 1e-7  # the kernel's own: points so near are one

_Row = tuple[float, ...]
_NOWHERE = (math.nan, math.nan, math.nan)
_STRAIGHT = (*_NOWHERE, 0.0, 0.0, 0.0, 0.0, 0.0)
_COLUMNS = 14
_ENDLESS = 1e10  # mm; a line without ends has parameters beyond


class Edges(Struct, frozen=True, eq=False):
    """Straight edges and arcs of circles, as tables: one row for each edge of each face, along its outline.

    Attributes
    ----------
    number : (e,) int, which edge of the body
    ends : (e, 2, 3) float mm, where it begins and ends; NaN where it misses its corners by more than LOOSE_MM
    middle, axis : (e, 3) float mm, of an arc: middle of its circle, normal it turns about; NaN and 0 if straight
    radius : (e,) float mm, 0 if straight
    sweep : (e,) float rad, how far an arc turns about its axis; 0 if straight
    tight : (e,) bool, its ends lie within the tolerance of its corners
    """

    number: np.ndarray
    ends: np.ndarray
    middle: np.ndarray
    axis: np.ndarray
    radius: np.ndarray
    sweep: np.ndarray
    tight: np.ndarray

    @staticmethod
    def of(table: np.ndarray, number: np.ndarray, backward: np.ndarray) -> Edges:
        """Edges (e,) of a table of all, some turned about.

        table : (E, 15) both ends, middle, axis, radius, sweep, and whether the ends are tight
        """
        table = table[number]
        ends = table[:, :6].reshape(-1, 2, 3)
        ends = np.where(backward[:, None, None], ends[:, ::-1], ends)
        sweep = np.where(backward, -table[:, 13], table[:, 13])
        return Edges(number, ends, table[:, 6:9], table[:, 9:12], table[:, 12], sweep, table[:, 14] == 1.0)

    def lengths(self) -> np.ndarray:
        """(e,) mm."""
        straight = np.linalg.norm(self.ends[:, 1] - self.ends[:, 0], axis=1)
        along: np.ndarray = np.where(self.radius > 0.0, self.radius * np.abs(self.sweep), straight)
        return along

    def bows(self) -> np.ndarray:
        """(e, 3) mm²: what lies between an arc and its chord, as a vector; a segment of a circle (0 if straight)."""
        bows: np.ndarray = (self.radius**2 * (self.sweep - np.sin(self.sweep)) / 2.0)[:, None] * self.axis
        return bows

    def out_of(self, origins: np.ndarray, normals: np.ndarray) -> np.ndarray:
        """(e,) mm by which each leaves a plane of its own (e, 3), (e, 3); NaN where it misses its corners."""
        away: np.ndarray = np.abs(np.einsum("ekx,ex->ek", self.ends - origins[:, None, :], normals)).max(axis=1)
        round_ = self.radius > 0.0
        tilt = np.linalg.norm(np.cross(self.axis[round_], normals[round_]), axis=1)
        off = np.abs(((self.middle - origins) * normals).sum(axis=1)[round_])
        away[round_] = np.maximum(away[round_], off + self.radius[round_] * tilt)
        return away


class PlainFaces(Struct, frozen=True, eq=False):
    """Planes between straight edges and arcs of circles: most faces, checked together in a fraction of the time.

    Attributes
    ----------
    faces : (f,) int, index of each
    origins, normals : (f, 3) float mm, of their planes
    owners : (e,) int, for each edge of each face the place of the face in ``faces``
    edges : the edges (e,)
    """

    faces: np.ndarray
    origins: np.ndarray
    normals: np.ndarray
    owners: np.ndarray
    edges: Edges

    def volume(self, origin: np.ndarray) -> float:
        """mm³ between a point (3,) and the faces, outward positive; NaN where an edge misses its corners.

        A pyramid holds a third of height times base; the base, as a vector, is half the sum over its outline of the
        cross products of where an edge begins and ends, and what lies between its arcs and their chords.
        """
        begin, end = (self.edges.ends - origin).transpose(1, 0, 2)
        bases = np.cross(begin, end) / 2.0 + self.edges.bows()
        return float(((self.origins[self.owners] - origin) * bases).sum()) / 3.0

    def are_sound(self) -> np.ndarray:
        """(f,) bool: all edges lie in the plane and lead, one after the other, back to where they began."""
        sound = np.ones(len(self.faces), dtype=bool)
        with np.errstate(invalid="ignore"):  # NaN compares false: not sound
            away = self.edges.out_of(self.origins[self.owners], self.normals[self.owners])
            around = np.zeros((len(self.faces), 3))
            np.add.at(around, self.owners, self.edges.ends[:, 1] - self.edges.ends[:, 0])
            sound &= np.linalg.norm(around, axis=1) <= LOOSE_MM
            sound[self.owners[~(away <= LOOSE_MM)]] = False
        return sound

    def have_arcs(self) -> np.ndarray:
        """(f,) bool: an arc among several edges."""
        found = np.zeros(len(self.faces), dtype=bool)
        found[self.owners[self.edges.radius > 0.0]] = True
        return found & (np.bincount(self.owners, minlength=len(self.faces)) > 1)

    def are_tight(self, precision: float) -> np.ndarray:
        """(f,) bool: no edge misses a corner or leaves the plane by more than a tolerance, is shorter than a precision
        (mm), or is there twice: the kernel has nothing to mend.
        """
        with np.errstate(invalid="ignore"):
            away = self.edges.out_of(self.origins[self.owners], self.normals[self.owners])
            tight = self.edges.tight & (away <= CONFUSION_MM) & (self.edges.lengths() > precision)
        _, first, times = np.unique(
            np.column_stack([self.owners, self.edges.number]), axis=0, return_index=True, return_counts=True
        )
        tight[first[times > 1]] = False
        found = np.ones(len(self.faces), dtype=bool)
        found[self.owners[~tight]] = False
        return found


def plain_faces(shape: Any, faces: list[Any]) -> tuple[PlainFaces, list[int], bool]:
    """The plain faces of a body, the indices of the others, and whether all faces face one way (see Faces)."""
    numbers, edges = different(shape, TopAbs_EDGE)
    edges = [TopoDS.Edge_s(edge) for edge in edges]
    which, rows = _rows(edges, shape)
    table = np.full((len(edges), _COLUMNS + 1), np.nan)
    table[which] = rows
    simple = np.zeros(len(edges), dtype=bool)
    simple[which] = True
    count, outlines, flat, planes = np.zeros(len(faces), dtype=int), [], [], []
    for index, face in enumerate(faces):
        outline = _outline(face, numbers)
        count[index] = len(outline)
        outlines += outline
        surface = BRep_Tool.Surface_s(face)
        if type(surface) is Geom_Plane:
            flat.append(index)
            axis = surface.Pln().Axis()
            planes.append(axis.Location().Coord() + axis.Direction().Coord())
    along = np.array(outlines, dtype=int)
    number, backward, owner = np.abs(along) - 1, along < 0, np.repeat(np.arange(len(faces)), count)
    is_plain = np.zeros(len(faces), dtype=bool)
    is_plain[flat] = True
    is_plain[owner[~simple[number]]] = False
    is_plain &= count > 0
    plain, mine = np.flatnonzero(is_plain), is_plain[owner]
    frames = np.array(planes, dtype=float).reshape(-1, 6)[is_plain[flat]]
    owners = np.searchsorted(plain, owner[mine])
    found = PlainFaces(plain, frames[:, :3], frames[:, 3:], owners, Edges.of(table, number[mine], backward[mine]))
    ways = [np.bincount(number[backward == way], minlength=len(edges)) for way in (False, True)]
    odd = np.flatnonzero((np.array(ways) != 1).any(axis=0))
    one_way = all(BRep_Tool.Degenerated_s(edges[number]) for number in odd)
    return found, np.flatnonzero(~is_plain).tolist(), one_way


def _outline(face: Any, numbers: Any) -> list[int]:
    """The edges of a face along its outlines, by number from 1, negative where it runs them backward."""
    outline = []
    explorer = TopExp_Explorer(face, TopAbs_EDGE)
    while explorer.More():
        edge = explorer.Current()
        orientation = edge.Orientation()
        if orientation == TopAbs_FORWARD:
            outline.append(numbers.FindIndex(edge))
        elif orientation == TopAbs_REVERSED:
            outline.append(-numbers.FindIndex(edge))
        explorer.Next()
    return outline


def _rows(edges: list[Any], shape: Any) -> tuple[list[int], np.ndarray]:
    """The straight edges and arcs of a body: which edges they are, and their rows (see ``Edges.of``)."""
    corners, known = different(shape, TopAbs_VERTEX)
    points = np.array([_NOWHERE, *(BRep_Tool.Pnt_s(TopoDS.Vertex_s(corner)).Coord() for corner in known)])
    which: list[int] = []
    at: list[int] = []
    rows: list[_Row] = []
    for number, edge in enumerate(edges):
        row = _row(edge)
        if row is not None:
            which.append(number)
            at.append(corners.FindIndex(TopExp.FirstVertex_s(edge)))  # 0 where there is none
            at.append(corners.FindIndex(TopExp.LastVertex_s(edge)))
            rows.append(row)
    table = np.array(rows, dtype=float).reshape(-1, _COLUMNS)
    both = table[:, :6].reshape(-1, 2, 3)
    places = np.array(at, dtype=int).reshape(-1, 2)
    away = np.linalg.norm(both - points[places], axis=2)
    both = np.where((away <= LOOSE_MM)[:, :, None], both, np.nan)
    tight = np.all(away <= CONFUSION_MM, axis=1)
    for place in np.flatnonzero(~tight & np.isfinite(both).all(axis=(1, 2))):
        bounds = [BRep_Tool.Tolerance_s(TopoDS.Vertex_s(known[corner - 1])) for corner in places[place]]
        tight[place] = bool((away[place] <= bounds).all())
    return which, np.column_stack([both.reshape(-1, 6), table[:, 6:], tight])


def _row(edge: Any) -> _Row | None:
    """Both ends, middle, axis, radius and sweep of a straight edge or an arc; None for any other."""
    if not BRep_Tool.IsGeometric_s(edge):
        return None
    curve = BRepAdaptor_Curve(edge)
    kind = curve.GetType()
    if kind not in (GeomAbs_Line, GeomAbs_Circle):
        return None
    first, last = curve.FirstParameter(), curve.LastParameter()
    if not max(abs(first), abs(last)) < _ENDLESS:
        return (*_NOWHERE, *_NOWHERE, *_STRAIGHT)
    ends = (*curve.Value(first).Coord(), *curve.Value(last).Coord())
    if kind == GeomAbs_Line:
        return (*ends, *_STRAIGHT)
    circle = curve.Circle()
    axis = circle.Axis()
    return (*ends, *axis.Location().Coord(), *axis.Direction().Coord(), circle.Radius(), last - first)
