"""Triangles of faces: the kernel's own mesher, and rows and columns where a face is a rectangle of parameters."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import Any

import numpy as np
from OCP.BRep import BRep_Builder, BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve2d
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.BRepTools import BRepTools
from OCP.Geom import Geom_ToroidalSurface
from OCP.IMeshTools import IMeshTools_MeshAlgoType, IMeshTools_Parameters
from OCP.TopAbs import TopAbs_REVERSED
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Compound

from seamcheck.kernel.curves import EdgeLine
from seamcheck.kernel.evaluate import SurfaceFunction, curve_function, surface_function
from seamcheck.kernel.patch import Counts, border_of, joined_border, patch
from seamcheck.kernel.refine import SurfaceMesh, refined
from seamcheck.kernel.triangulations import Triangulation, triangulations
from seamcheck.kernel.turned import ring_counts

_SAME_CORNER = 1e-4  # share of the parameters' range within which edges meet
_COARSE = 1e3  # mm
_AT_ONCE = 16  # faces, of all of which the mesher keeps what it made on the way


RULED, RING, FREE_FORM = "ruled", "ring", "free-form"
"""Kinds of surfaces that are meshed in ways of their own: planes, cylinders and cones; tori; general ones."""


def mesh(faces: Sequence[Any], deflection: float, angle: float, kinds: Sequence[str]) -> list[np.ndarray]:
    """(m, 3, 3) triangles of every face, mm, outward by the right hand.

    Parameters
    ----------
    faces : TopoDS_Face
    deflection : mm, largest distance between surface and triangles
    angle : radians, largest turn between neighbouring triangles' edges
    kinds : of every face RULED, RING, FREE_FORM, or another word

    Notes
    -----
    Between the same nodes the kernel knows two ways to find the triangles; the quick one, a third to a tenth of the
    time, does not mind how long they become across a doubly curved surface.

    On general surfaces the kernel adds points until its own measure of the distance is small enough; beside
    ruled strips, such as flanks along a spline, that measure is far too strict: fifty times the triangles.
    There it is switched off, and triangles too far from the surface are split here (refine.py). On tori it is wanted
    for the nodes of the border only, which the faces beside have, too.
    """
    groups = {kind: [face for face, own in zip(faces, kinds, strict=True) if own == kind] for kind in set(kinds)}
    _run(groups.pop(RULED, []), deflection, angle, quick=True)
    _run(groups.pop(RING, []), deflection, angle, bordered=True)
    _run(groups.pop(FREE_FORM, []), deflection, angle, controlled=False)
    for rest in groups.values():
        _run(rest, deflection, angle)
    stored, places = triangulations(faces), _Places()
    return [
        _free_triangles(face, found, deflection, angle)
        if kind in (RING, FREE_FORM)
        else _triangles(face, found, places)
        for face, found, kind in zip(faces, stored, kinds, strict=True)
    ]


def mesh_between(
    face: Any, edges: Sequence[tuple[Any, EdgeLine]], deflection: float, angle: float
) -> np.ndarray | None:
    """(m, 3, 3) triangles of a face between the given nodes of its edges, outward by the right hand.

    Parameters
    ----------
    edges : TopoDS_Edge of the face in their own sense, a seam from both its sides, and their polylines
    deflection : mm, largest distance between surface and triangles
    angle : radians, largest turn between neighbouring triangles' edges, on tori

    Returns
    -------
    None where the face is no rectangle in its parameters, or its edges lie off its surface by the deflection
    """
    place = TopLoc_Location()
    geometry = BRep_Tool.Surface_s(face, place)
    surface = _placed(surface_function(geometry), place)
    lines = []
    for edge, line in edges:
        uv = curve_function(BRepAdaptor_Curve2d(edge, face).Curve())(line.at)
        if not np.abs(surface(uv) - line.points).max() <= deflection:
            return None
        lines.append((line.points, uv))
    lines = _meeting(lines)
    border = joined_border(lines)
    start = None if border is None else patch(border, surface, deflection, _counts(geometry, deflection, angle))
    fine = None if start is None else refined(start, surface, deflection)
    return None if fine is None else _outward(fine.nodes, fine.index, place, face)


def _meeting(lines: list[tuple[np.ndarray, np.ndarray]]) -> list[tuple[np.ndarray, np.ndarray]]:
    """Edges as nodes and parameters, with the same parameters at the corners that they share."""
    uv = [parameters.copy() for _, parameters in lines]
    near = _SAME_CORNER * np.ptp(np.concatenate(uv), axis=0).max()
    ends = [(i, k) for i in range(len(lines)) for k in (0, -1)]
    points = np.array([lines[i][0][k] for i, k in ends])
    places = np.array([uv[i][k] for i, k in ends])
    for n, (i, k) in enumerate(ends):
        same = (points[:n] == points[n]).all(axis=1) & (np.abs(places[:n] - places[n]).max(axis=1) < near)
        if same.any():  # a corner on a seam has two places
            places[n] = uv[i][k] = places[np.argmax(same)]
    return [(points, own) for (points, _), own in zip(lines, uv, strict=True)]


def _run(
    faces: list[Any], deflection: float, angle: float, *, controlled: bool = True, quick: bool = False,
    bordered: bool = False,
) -> None:  # fmt: skip
    parameters = IMeshTools_Parameters()
    parameters.Deflection, parameters.Angle = deflection, angle
    parameters.Relative, parameters.InParallel = False, False
    parameters.ControlSurfaceDeflection = controlled
    if bordered:  # nodes between the edges are not wanted
        parameters.DeflectionInterior, parameters.AngleInterior = _COARSE, np.pi
        parameters.ControlSurfaceDeflection = False
    if quick or bordered:
        parameters.MeshAlgo = IMeshTools_MeshAlgoType.IMeshTools_MeshAlgoType_Delabella
    builder = BRep_Builder()
    for some in (faces[k : k + _AT_ONCE] for k in range(0, len(faces), _AT_ONCE)):
        compound = TopoDS_Compound()
        builder.MakeCompound(compound)
        for face in some:
            builder.Add(compound, face)
        BRepMesh_IncrementalMesh(compound, parameters)


def _free_triangles(face: Any, found: Triangulation | None, deflection: float, angle: float) -> np.ndarray:
    if found is not None and found.uv is not None:
        start = SurfaceMesh(found.nodes, found.uv, found.index)
        place = TopLoc_Location()
        geometry = BRep_Tool.Surface_s(face, place)
        surface, counts = surface_function(geometry), _counts(geometry, deflection, angle)
        fine = refined(patch(border_of(start), surface, deflection, counts) or start, surface, deflection)
        if fine is not None:
            return _outward(_moved(fine.nodes, place), fine.index, place, face)
    BRepTools.Clean_s(face)
    _run([face], deflection, angle)
    return _triangles(face, triangulations([face])[0], _Places())


def _counts(geometry: Any, deflection: float, angle: float) -> Counts | None:
    """Columns and rows that a torus needs; None of any other surface."""
    if not isinstance(geometry, Geom_ToroidalSurface):
        return None
    return partial(ring_counts, geometry.MajorRadius(), geometry.MinorRadius(), deflection, angle)


class _Places:
    """Matrices of locations, made once for faces side by side that share theirs."""

    def __init__(self) -> None:
        self._place, self._known = TopLoc_Location(), (np.eye(3, 4), False)

    def matrix(self, place: TopLoc_Location) -> tuple[np.ndarray, bool]:
        """(3, 4) of a location, and whether it mirrors."""
        if not place.IsEqual(self._place):
            matrix = _matrix(place)
            self._place, self._known = place, (matrix, bool(np.linalg.det(matrix[:, :3]) < 0))
        return self._known


def _triangles(face: Any, found: Triangulation | None, places: _Places) -> np.ndarray:
    """(m, 3, 3) corners of a face's stored triangles, outward by the right hand; empty if it has none."""
    if found is None:
        return np.empty((0, 3, 3))
    place, nodes, index = face.Location(), found.nodes, found.index
    matrix, mirrored = places.matrix(place)
    if not place.IsIdentity():
        nodes = nodes @ matrix[:, :3].T + matrix[:, 3]
    return np.asarray(nodes[index[:, ::-1] if (face.Orientation() == TopAbs_REVERSED) != mirrored else index])


def _placed(function: SurfaceFunction, place: TopLoc_Location) -> SurfaceFunction:
    return function if place.IsIdentity() else function.moved(lambda points: _moved(points, place))


def _moved(nodes: np.ndarray, place: TopLoc_Location) -> np.ndarray:
    if place.IsIdentity():
        return nodes
    matrix = _matrix(place)
    return np.asarray(nodes @ matrix[:, :3].T + matrix[:, 3])


def _matrix(place: TopLoc_Location) -> np.ndarray:
    m = place.Transformation()
    return np.array([[m.Value(r, c) for c in range(1, 5)] for r in range(1, 4)])


def _outward(nodes: np.ndarray, index: np.ndarray, place: TopLoc_Location, face: Any) -> np.ndarray:
    """Corners (m, 3, 3) of triangles that are counter-clockwise in the parameters of a placed face."""
    mirrored = not place.IsIdentity() and np.linalg.det(_matrix(place)[:, :3]) < 0
    if (face.Orientation() == TopAbs_REVERSED) != mirrored:
        index = index[:, ::-1]
    return np.asarray(nodes[index])
