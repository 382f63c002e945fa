"""One solid body, its faces numbered in the order of the shape's own explorer."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import cached_property
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.Bnd import Bnd_Box
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepClass3d import BRepClass3d_SolidClassifier
from OCP.BRepGProp import BRepGProp
from OCP.BRepLProp import BRepLProp_SLProps
from OCP.BRepTools import BRepTools
from OCP.GeomAbs import GeomAbs_SurfaceType
from OCP.GeomLib import GeomLib_IsPlanarSurface
from OCP.gp import gp_Pnt, gp_Vec
from OCP.GProp import GProp_GProps
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_REVERSED
from OCP.TopExp import TopExp
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS, TopoDS_Iterator
from OCP.TopTools import TopTools_IndexedMapOfShape

from seamcheck.assembly.shapes import explore
from seamcheck.kernel.ball import ball_triangles
from seamcheck.kernel.curves import EdgeLine, EdgePieces, bending, edge_line, edge_pieces, mesher_line
from seamcheck.kernel.flat import fan, ring_of, triangles_of
from seamcheck.kernel.mesh import FREE_FORM, RING, RULED, mesh, mesh_between
from seamcheck.kernel.own_box import Hull, OwnBox, edges_spread, ends_of, face_spread, hull_of, own_box
from seamcheck.kernel.tube import tube_triangles

_PLANE, _TUBE, _BALL, _RING = (
    GeomAbs_SurfaceType.GeomAbs_Plane,
    GeomAbs_SurfaceType.GeomAbs_Cylinder,
    GeomAbs_SurfaceType.GeomAbs_Sphere,
    GeomAbs_SurfaceType.GeomAbs_Torus,
)
_FREE = (
    GeomAbs_SurfaceType.GeomAbs_BSplineSurface,
    GeomAbs_SurfaceType.GeomAbs_BezierSurface,
    GeomAbs_SurfaceType.GeomAbs_OtherSurface,
    GeomAbs_SurfaceType.GeomAbs_SurfaceOfExtrusion,
)
_SWEPT = (
    GeomAbs_SurfaceType.GeomAbs_OffsetSurface,
    GeomAbs_SurfaceType.GeomAbs_SurfaceOfExtrusion,
    GeomAbs_SurfaceType.GeomAbs_SurfaceOfRevolution,
    GeomAbs_SurfaceType.GeomAbs_OtherSurface,
)
_CHORD, _TURN = 0.05, 0.35  # mm and radians, of the facets of a volume: those with which a seam is looked for
_LEAST = 1e-9  # mm³
_RULED = (_PLANE, GeomAbs_SurfaceType.GeomAbs_Cylinder, GeomAbs_SurfaceType.GeomAbs_Cone)
_LARGE = 10.0  # mm: a dome reaches further than this in two directions, and is nowhere bent in a smaller radius
_FINEST, _COARSER = 15000.0, 4.0  # about 25 000 facets; at most so many times the chord error
_MANY_OUTLINES = 6  # from which a plane's own outlines are quicker than the kernel's mesher
_SOME_EDGES = 100  # whose ends tell how large a body is at least
_LARGEST = 40  # faces whose hull holds most others
_TOUCHING = 1e-3  # mm added to the boxes of faces, so that those of neighbours meet
_FLAT_WITHIN = 1e-5  # mm: a free-form surface that stays this close to a plane is a plane

Near = Callable[[np.ndarray], np.ndarray]
"""Of boxes (n, 6) mm, the numbers (k,) of those that reach into some room."""


class Facets(Struct, frozen=True, eq=False):
    """Triangles of some faces: corners (m, 3, 3) mm, outward by the right hand; face (m,) face index."""

    corners: np.ndarray
    face: np.ndarray


class Body:
    """A shape with its faces, their boxes, planes, outlines and facets as arrays.

    Parameters
    ----------
    shape : placed TopoDS_Shape in mm
    """

    def __init__(self, shape: Any) -> None:
        self.shape = shape
        self._edges = TopTools_IndexedMapOfShape()
        TopExp.MapShapes_s(shape, TopAbs_EDGE, self._edges)
        self._edge_lines: dict[tuple[int, float], EdgeLine] = {}
        self._mesher_lines: dict[tuple[int, float, float], EdgeLine | None] = {}
        self._bending: dict[int, int] = {}
        self._known_edges: dict[int, set[int]] = {}
        self._bulges: dict[int, float] = {}
        self._known_wires: dict[int, tuple[Any, list[Any], np.ndarray]] = {}
        self._facets: dict[int, tuple[float, np.ndarray]] = {}  # face -> (deflection, triangles)

    @cached_property
    def faces(self) -> list[Any]:
        """TopoDS_Face in explorer order."""
        return [TopoDS.Face_s(face) for face in explore(self.shape, TopAbs_FACE)]

    @cached_property
    def boxes(self) -> np.ndarray:
        """(n, 6) mm: lowest x, y, z and highest x, y, z of every face; NaN for an empty one."""
        out = np.full((len(self.faces), 6), np.nan)
        for i, face in enumerate(self.faces):
            box = Bnd_Box()
            BRepBndLib.Add_s(face, box, False)
            if not box.IsVoid():
                out[i] = box.Get()
        return out

    @cached_property
    def box(self) -> np.ndarray:
        """(6,) mm, box of the whole body, without meshing it; NaN where it is empty."""
        box = Bnd_Box()
        BRepBndLib.Add_s(self.shape, box, False)
        return np.full(6, np.nan) if box.IsVoid() else np.array(box.Get())

    @cached_property
    def corners(self) -> np.ndarray:
        """(n, 3) mm, corners of the body's convex hull: the same ones however it is placed.

        They are taken from the ends of its edges and points along them (33 on a bent one, within 0.5 % of a circle's
        radius), and from points inside faces that are bent in two directions.
        """
        return self._hull.corners

    @cached_property
    def _hull(self) -> Hull:
        return hull_of(self.outermost)

    @cached_property
    def outermost(self) -> np.ndarray:
        """(n, 3) mm, points of the body among which are the corners of its hull."""
        if len(self.faces) <= 2 * _LARGEST:
            return self._spread(range(len(self.faces)))
        size = np.nan_to_num(self.boxes[:, 3:] - self.boxes[:, :3])
        order = np.argsort(-np.linalg.norm(size, axis=1), kind="stable")
        first = self._spread(order[:_LARGEST].tolist())
        left = order[_LARGEST:]
        beyond = left[~hull_of(first).holds(self.boxes[left])]
        return np.concatenate([first, self._spread(beyond.tolist())])

    def _spread(self, face_indices: Iterable[int]) -> np.ndarray:
        """(n, 3) mm, points along the edges of faces, and inside of those that are bent in two directions."""
        faces = list(face_indices)
        edges = sorted(set().union(*(self.edge_indices(face) for face in faces)))
        found = [edges_spread(TopoDS.Edge_s(self._edges.FindKey(i)) for i in edges)]
        return np.concatenate([*found, *(face_spread(self.faces[i]) for i in faces if self._bent_twice[i])])

    @cached_property
    def classifier(self) -> BRepClass3d_SolidClassifier:
        """Tells of points whether they lie inside: loaded once, which costs as much as some answers."""
        return BRepClass3d_SolidClassifier(self.shape)

    @cached_property
    def own_box(self) -> OwnBox:
        """The box that lies along the body itself, whichever way it is placed."""
        return own_box(self._hull)

    @cached_property
    def diagonal_bounds(self) -> tuple[float, float]:
        """mm, between which the diagonal of the own box lies, without looking for its hull; 0 and 0 of an empty body.

        No body is longer than its own box, and no side of that is longer than the body.
        """
        if np.isnan(self.box).any():
            return 0.0, 0.0
        count = self._edges.Extent()
        some = (TopoDS.Edge_s(self._edges.FindKey(i)) for i in range(1, count + 1, 1 + count // _SOME_EDGES))
        places = ends_of(some)
        low = float(np.ptp(places, axis=0).max()) if len(places) else 0.0
        return low - _TOUCHING, float(np.sqrt(3.0) * np.linalg.norm(self.box[3:] - self.box[:3]))

    @cached_property
    def _bent_twice(self) -> np.ndarray:
        kinds = np.array([surface.GetType() in (_BALL, _RING) for surface in self._surfaces], dtype=bool)
        return np.asarray(kinds | self.is_free_form)

    @cached_property
    def volume(self) -> float:
        """mm³, within about 0.2 % on parts of housings; never below a cubic micrometre.

        On offset and swept surfaces the kernel's integration is off by up to a third, whatever error it states: there
        the volume is that within the facets, up to two thirds of their chord error times the bent area off.
        """
        if any(surface.GetType() in _SWEPT for surface in self._surfaces):
            a, b, c = self.facets(range(len(self.faces)), _CHORD, _TURN).corners.transpose(1, 0, 2) - self.corners[0]
            return float(max(abs(np.einsum("ij,ij->", a, np.cross(b, c))) / 6.0, _LEAST))
        properties = GProp_GProps()
        BRepGProp.VolumeProperties_s(self.shape, properties)
        return float(max(abs(properties.Mass()), _LEAST))

    @cached_property
    def is_free_form(self) -> np.ndarray:
        """(n,) bool: faces on a spline or another general surface that is no plane."""
        free = np.array([surface.GetType() in _FREE for surface in self._surfaces], dtype=bool)
        return np.asarray(free & np.isnan(self.planes[:, 0]))

    def beside_free_form(self, face_indices: np.ndarray) -> np.ndarray:
        """(n,) bool: which of some faces (n,) are planes that share an edge with a free-form face."""
        free = np.flatnonzero(self.is_free_form).tolist()
        edges: set[int] = set().union(*(self.edge_indices(face) for face in free))
        asked = face_indices.tolist() if edges else []
        found = [self._is_plane[face] and not edges.isdisjoint(self.edge_indices(face)) for face in asked]
        return np.array(found, dtype=bool) if edges else np.zeros(len(face_indices), dtype=bool)

    def _fineness(self, face_index: int, deflection: float) -> float:
        """mm of chord error that a face is meshed to where ``deflection`` is asked for: more on a large dome.

        A face takes about 1.6 facets for each unit of area x root of its Gaussian curvature / chord error. Beyond some
        25 000 it gets up to four times the chord error instead: the kernel's time grows by the square.
        """
        bulge = self._bulges.get(face_index)
        if bulge is None:
            bulge = self._bulges[face_index] = self._bulge(face_index)
        return deflection * min(max(bulge / deflection / _FINEST, 1.0), _COARSER)

    def _bulge(self, face_index: int) -> float:
        """mm: area of a face times the root of its Gaussian curvature in the middle; 0 where it is small or ruled."""
        if self._is_plane[face_index]:
            return 0.0
        surface, size = self._surfaces[face_index], np.sort(self.boxes[face_index, 3:] - self.boxes[face_index, :3])
        if not size[1] > _LARGE or surface.GetType() in _RULED:
            return 0.0
        if self.is_free_form[face_index]:  # not meshed by the kernel alone: see mesh.py
            return 0.0
        u = (surface.FirstUParameter() + surface.LastUParameter()) / 2
        v = (surface.FirstVParameter() + surface.LastVParameter()) / 2
        place, area = BRepLProp_SLProps(surface, u, v, 2, 1e-9), GProp_GProps()
        BRepGProp.SurfaceProperties_s(self.faces[face_index], area, 1e-2)
        if not place.IsCurvatureDefined() or max(abs(place.MaxCurvature()), abs(place.MinCurvature())) > 1.0 / _LARGE:
            return 0.0  # a fillet, however long it is
        return float(abs(area.Mass()) * np.sqrt(abs(place.GaussianCurvature())))

    @cached_property
    def planes(self) -> np.ndarray:
        """(n, 4) outward unit vector and offset d in mm (n · x = d) of every planar face; NaN for the others."""
        found, rows = [], []
        for i, (face, surface) in enumerate(zip(self.faces, self._surfaces, strict=True)):
            kind = surface.GetType()
            if kind == _PLANE:
                plane = surface.Plane()
            elif kind in _FREE:
                test = GeomLib_IsPlanarSurface(BRep_Tool.Surface_s(face), _FLAT_WITHIN)
                if not test.IsPlanar():
                    continue
                plane = test.Plan()
            else:
                continue
            position = plane.Position()
            normal = position.Direction().Coord()
            outward = position.Direct() == (face.Orientation() != TopAbs_REVERSED)
            if kind in _FREE and (np.array(normal) @ _surface_normal(surface) < 0) == position.Direct():
                outward = not outward  # the fitted plane knows nothing of the surface's own sense
            found.append((*normal, *position.Location().Coord(), 1.0 if outward else -1.0))
            rows.append(i)
        table = np.array(found, dtype=float).reshape(-1, 7)
        normals = table[:, :3] * table[:, 6:]
        out = np.full((len(self.faces), 4), np.nan)
        out[rows] = np.column_stack([normals, (normals * table[:, 3:6]).sum(axis=1)])
        return out

    @cached_property
    def _is_plane(self) -> list[bool]:
        return list(np.isfinite(self.planes[:, 0]).tolist())

    @cached_property
    def _surfaces(self) -> list[BRepAdaptor_Surface]:
        return [BRepAdaptor_Surface(face, False) for face in self.faces]

    def outline(self, face_index: int, tolerance: float) -> list[np.ndarray]:
        """Edges of one face as polylines, seams and collapsed edges left out.

        Returns
        -------
        list of (k, 3) float, mm; they join at shared end points but come in no order
        """
        return self._lines(self.faces[face_index], tolerance)

    def _lines(self, face_or_wire: Any, tolerance: float) -> list[np.ndarray]:
        seen: dict[int, int] = {}
        for edge in explore(face_or_wire, TopAbs_EDGE):
            index = self._edges.FindIndex(edge)
            seen[index] = seen.get(index, 0) + 1
        once = [index for index, times in seen.items() if times % 2]  # walked forth and back: a seam inside the face
        edges = [(index, TopoDS.Edge_s(self._edges.FindKey(index))) for index in once]
        return [self._edge_line(i, edge, tolerance).points for i, edge in edges if not BRep_Tool.Degenerated_s(edge)]

    def _edge_line(self, index: int, edge: Any, tolerance: float) -> EdgeLine:
        key = (index, tolerance if self._bent(index, edge) else np.inf)
        if key not in self._edge_lines:
            self._edge_lines[key] = self._ending_in_vertices(edge_line(edge, tolerance), edge)
        return self._edge_lines[key]

    def _mesher_line(self, index: int, edge: Any, deflection: float, angle: float) -> EdgeLine | None:
        key = (index, deflection, angle)
        if key not in self._mesher_lines:
            line = None if BRep_Tool.Degenerated_s(edge) else mesher_line(edge, deflection, angle)
            self._mesher_lines[key] = None if line is None else self._ending_in_vertices(line, edge)
        return self._mesher_lines[key]

    @staticmethod
    def _ending_in_vertices(line: EdgeLine, edge: Any) -> EdgeLine:
        """The line with its ends in the edge's vertices: neighbours share these, so their lines meet exactly."""
        for place, vertex in ((0, TopExp.FirstVertex_s(edge)), (-1, TopExp.LastVertex_s(edge))):
            if not vertex.IsNull():
                line.points[place] = BRep_Tool.Pnt_s(vertex).Coord()
        line.points.setflags(write=False)
        return line

    def border_pieces(self, face_indices: Iterable[int], tolerance: float) -> list[EdgePieces]:
        """The edges round some faces together, those between two of them left out."""
        owners: dict[int, int] = {}
        for face in face_indices:
            for index in self.edge_indices(face):
                owners[index] = owners.get(index, 0) + 1
        edges = [(index, TopoDS.Edge_s(self._edges.FindKey(index))) for index, count in owners.items() if count == 1]
        return [
            edge_pieces(edge, self._edge_line(index, edge, tolerance))
            for index, edge in edges
            if not BRep_Tool.Degenerated_s(edge)
        ]

    def edge_indices(self, face_index: int) -> set[int]:
        """Numbers of the edges round one face; faces that share a number are neighbours."""
        if face_index not in self._known_edges:
            found = {self._edges.FindIndex(edge) for edge in explore(self.faces[face_index], TopAbs_EDGE)}
            self._known_edges[face_index] = found
        return self._known_edges[face_index]

    def neighbours(self, face_indices: set[int]) -> list[int]:
        """Other faces that share an edge with one of these, ascending."""
        if not face_indices:
            return []
        own = self.boxes[sorted(face_indices)]
        low, high = self.boxes[:, :3] - _TOUCHING, self.boxes[:, 3:] + _TOUCHING
        near = np.zeros(len(low), dtype=bool)
        with np.errstate(invalid="ignore"):
            for box in own:
                near |= np.all((low <= box[3:]) & (high >= box[:3]), axis=1)
        edges = set().union(*(self.edge_indices(face) for face in face_indices))
        return [int(i) for i in np.flatnonzero(near) if i not in face_indices and edges & self.edge_indices(int(i))]

    def forget_facets(self, face_indices: Iterable[int]) -> None:
        """Throw away all facets, and the kernel's own meshes on some faces."""
        self._facets.clear()
        place = TopLoc_Location()
        for index in face_indices:
            if (
                BRep_Tool.Triangulation_s(self.faces[index], place) is not None
            ):  # to clean a face takes fifty times that
                BRepTools.Clean_s(self.faces[index])

    def facets(
        self, face_indices: Iterable[int], deflection: float, angle: float = 0.3, near: Near | None = None,
        core: bool = True,
    ) -> Facets:  # fmt: skip
        """Triangles of the given faces.

        Parameters
        ----------
        face_indices : which faces
        deflection : mm, largest distance between surface and triangles; up to four times as much on large domes
        angle : radians, largest turn between neighbouring triangles' edges
        near : of boxes (n, 6) mm, which of them reach into the room that is looked at; holes in planes that
            don't are filled, so nothing may be read off the facets outside that room
        core : whether large planes are divided so that sections meet few triangles; not for pictures
        """
        indices = [int(i) for i in face_indices]
        fine = {i: self._fineness(i, deflection) for i in indices}
        coarse = [i for i in indices if self._facets.get(i, (np.inf,))[0] > fine[i] * (1 + 1e-9)]
        partly = {} if near is None else self._partly_facetted(coarse, deflection, near, core)
        left = []
        for i in coarse:
            if i in partly:
                continue
            triangle = self._few_corners(i)
            own = self._from_edges(i, fine[i], angle, core) if triangle is None else triangle
            if own is None:
                left.append(i)
            else:
                self._facets[i] = (fine[i] if triangle is None else 0.0, own)
        for some in sorted({fine[i] for i in left}):
            mine = [i for i in left if fine[i] == some]
            found = mesh([self.faces[i] for i in mine], some, angle, [self._kind(i) for i in mine])
            for i, triangles in zip(mine, found, strict=True):
                flat = self._is_plane[i] and self._most_bent(i) == 0  # exact: no finer ones need be asked for
                self._facets[i] = (0.0 if flat else some, triangles)
        corners = [partly[i] if i in partly else self._facets[i][1] for i in indices]
        if not corners:
            return Facets(np.empty((0, 3, 3)), np.empty(0, dtype=int))
        owners = np.repeat(indices, [len(triangles) for triangles in corners])
        return Facets(np.concatenate(corners), owners)

    def _few_corners(self, face_index: int) -> np.ndarray | None:
        """(1 or 2, 3, 3) mm, triangles of a plane between three or four straight lines; None of any other face."""
        edges = self.edge_indices(face_index)
        if not 3 <= len(edges) <= 4 or not self._is_plane[face_index] or self._most_bent(face_index):
            return None
        lines = (self._edge_line(i, TopoDS.Edge_s(self._edges.FindKey(i)), np.inf) for i in edges)
        ring = ring_of([(tuple(one), tuple(other)) for one, other in (line.points.tolist() for line in lines)])
        return None if ring is None else fan(ring, self.planes[face_index, :3].tolist())

    def _from_edges(self, face_index: int, deflection: float, angle: float, core: bool) -> np.ndarray | None:
        """(m, 3, 3) triangles between the polylines of a face's edges.

        None where the kernel's mesher does better: on faces between lines and arcs, unless it is a plane with many
        outlines, or a cylinder or a torus in its simplest form; and where no triangles are found so.
        """
        if self._surfaces[face_index].GetType() in (_TUBE, _RING) and self._most_bent(face_index) == 1:
            return self._between_arcs(face_index, deflection, angle)
        if self._bulges.get(face_index, 0.0) > 0.0 and self._surfaces[face_index].GetType() == _BALL:
            return self._on_ball(face_index, deflection)
        many = self._has_many_outlines(face_index)
        plane = self._is_plane[face_index]
        if not many and (not (plane or self.is_free_form[face_index]) or self._most_bent(face_index) < 2):
            return None
        face = self.faces[face_index]
        if plane:
            lines = self.outline(face_index, deflection)
            return triangles_of(lines, self.planes[face_index], face.NbChildren(), core)
        edges = [TopoDS.Edge_s(edge) for edge in explore(face, TopAbs_EDGE)]  # a seam twice, from each of its sides
        if any(BRep_Tool.Degenerated_s(edge) for edge in edges):
            return None
        between = [(edge, self._edge_line(self._edges.FindIndex(edge), edge, deflection)) for edge in edges]
        return mesh_between(face, between, deflection, angle)

    def _between_arcs(self, face_index: int, deflection: float, angle: float) -> np.ndarray | None:
        """(m, 3, 3) triangles of a cylinder or torus between nodes as the kernel's mesher makes them.

        So they fit the faces beside that it meshes. None where the face has another form than the simplest.
        """
        face, surface = self.faces[face_index], self._surfaces[face_index]
        edges = [TopoDS.Edge_s(edge) for edge in explore(face, TopAbs_EDGE)]  # a seam twice, from each of its sides
        if len(edges) != 4:
            return None
        numbers = [self._edges.FindIndex(edge) for edge in edges]
        between = [
            (edge, line)
            for edge, number in zip(edges, numbers, strict=True)
            if (line := self._mesher_line(number, edge, deflection, angle)) is not None
        ]
        if len(between) != 4:
            return None
        if surface.GetType() == _RING:
            return mesh_between(face, between, deflection, angle)
        position = surface.Cylinder().Position()
        once = {number: line.points for number, (_, line) in zip(numbers, between, strict=True)}
        centre, axis = np.array(position.Location().Coord()), np.array(position.Direction().Coord())
        found = tube_triangles(list(once.values()), centre, axis)
        is_direct = position.Direct() != face.Location().Transformation().IsNegative()  # as it was before its placing
        is_outside = is_direct == (face.Orientation() != TopAbs_REVERSED)
        return found if found is None or is_outside else found[:, ::-1]

    def _on_ball(self, face_index: int, deflection: float) -> np.ndarray | None:
        """(m, 3, 3) triangles of a large face on a ball; None where ball.py makes none."""
        face, ball, area = self.faces[face_index], self._surfaces[face_index].Sphere(), GProp_GProps()
        BRepGProp.SurfaceProperties_s(face, area, 1e-3)
        centre = np.array(ball.Location().Coord())
        found = ball_triangles(
            self.outline(face_index, deflection), centre, ball.Radius(), abs(area.Mass()), deflection
        )
        if found is None:
            return None
        is_outside = ball.Position().Direct() == (face.Orientation() != TopAbs_REVERSED)
        return found if is_outside else found[:, ::-1]

    def _kind(self, face_index: int) -> str:
        """How the kernel's mesher is to take a face."""
        if self.is_free_form[face_index]:
            return FREE_FORM
        kind = self._surfaces[face_index].GetType()
        return RULED if kind in _RULED else RING if kind == _RING else ""

    def _most_bent(self, face_index: int) -> int:
        """0 for a face between straight lines, 1 where there are arcs of circles, 2 where there is any other edge."""
        edges = self.edge_indices(face_index)
        return max((self._bent(i, TopoDS.Edge_s(self._edges.FindKey(i))) for i in edges), default=0)

    def _bent(self, index: int, edge: Any) -> int:
        """The same of one edge, 0 for one that is collapsed to a point."""
        found = self._bending.get(index)
        if found is None:
            found = self._bending[index] = 0 if BRep_Tool.Degenerated_s(edge) else bending(edge)
        return found

    def _partly_facetted(
        self, face_indices: list[int], deflection: float, near: Near, core: bool
    ) -> dict[int, np.ndarray]:
        """Triangles of planes with many outlines, without those of their holes that lie far."""
        found = {}
        for i in face_indices:
            if not self._has_many_outlines(i):
                continue
            outer, holes, boxes = self._wires(i)
            kept = [outer, *(holes[k] for k in near(boxes))]
            if len(kept) > 0.8 * len(holes):
                continue
            lines = [line for wire in kept for line in self._lines(wire, deflection)]
            triangles = triangles_of(lines, self.planes[i], len(kept), core)
            if triangles is not None:
                found[i] = triangles
        return found

    def _has_many_outlines(self, face_index: int) -> bool:
        return self._is_plane[face_index] and bool(self.faces[face_index].NbChildren() >= _MANY_OUTLINES)

    def _wires(self, face_index: int) -> tuple[Any, list[Any], np.ndarray]:
        """Outer wire, holes and the boxes (n, 6) mm of the holes."""
        if face_index not in self._known_wires:
            face = self.faces[face_index]
            outer = BRepTools.OuterWire_s(face)
            holes, boxes = [], []
            children = TopoDS_Iterator(face)
            while children.More():
                wire = children.Value()
                if not wire.IsSame(outer):
                    box = Bnd_Box()
                    BRepBndLib.Add_s(wire, box, False)
                    holes.append(wire)
                    boxes.append(box.Get())
                children.Next()
            self._known_wires[face_index] = (outer, holes, np.array(boxes))
        return self._known_wires[face_index]


def _surface_normal(surface: BRepAdaptor_Surface) -> np.ndarray:
    """Unit normal dU x dV of a surface at the middle of its parameter range."""
    u = (surface.FirstUParameter() + surface.LastUParameter()) / 2
    v = (surface.FirstVParameter() + surface.LastVParameter()) / 2
    point, du, dv = gp_Pnt(), gp_Vec(), gp_Vec()
    surface.D1(u, v, point, du, dv)
    normal = np.cross((du.X(), du.Y(), du.Z()), (dv.X(), dv.Y(), dv.Z()))
    return np.asarray(normal / np.linalg.norm(normal))
