"""The kernel's own mesher: triangles of faces, and how far they lie from the surface."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from OCP.BRep import BRep_Builder, BRep_Tool
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.BRepTools import BRepTools
from OCP.IMeshTools import IMeshTools_Parameters
from OCP.TopAbs import TopAbs_REVERSED
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Compound

from seamcheck.kernel.patch import patch
from seamcheck.kernel.refine import SurfaceMesh, refined


def mesh(faces: Sequence[Any], deflection: float, angle: float, free_form: Sequence[bool]) -> list[np.ndarray]:
    """(m, 3, 3) triangles of every face, mm, outward by the right hand.

    Parameters
    ----------
    faces : TopoDS_Face
    deflection : mm, largest distance between surface and triangles
    angle : radians, largest turn between neighbouring triangles' edges
    free_form : which faces lie on a general surface

    Notes
    -----
    On general surfaces the kernel adds points until its own measure of the distance is small enough; beside
    ruled strips, such as flanks along a spline, that measure is far too strict: fifty times the triangles.
    There it is switched off, and triangles too far from the surface are split here (refine.py).
    """
    plain = [face for face, is_free in zip(faces, free_form, strict=True) if not is_free]
    free = [face for face, is_free in zip(faces, free_form, strict=True) if is_free]
    _run(plain, deflection, angle, True)
    _run(free, deflection, angle, False)
    return [
        _free_triangles(face, deflection, angle) if is_free else _triangles(face)
        for face, is_free in zip(faces, free_form, strict=True)
    ]


def _run(faces: list[Any], deflection: float, angle: float, controlled: bool) -> None:
    if not faces:
        return
    builder, compound = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(compound)
    for face in faces:
        builder.Add(compound, face)
    parameters = IMeshTools_Parameters()
    parameters.Deflection, parameters.Angle = deflection, angle
    parameters.Relative, parameters.InParallel = False, False
    parameters.ControlSurfaceDeflection = controlled
    BRepMesh_IncrementalMesh(compound, parameters)


def _free_triangles(face: Any, deflection: float, angle: float) -> np.ndarray:
    place = TopLoc_Location()
    found = BRep_Tool.Triangulation_s(face, place)
    if found is not None and found.NbTriangles() and found.HasUVNodes():
        uv = np.array([(p.X(), p.Y()) for p in map(found.UVNode, range(1, found.NbNodes() + 1))])
        start = SurfaceMesh(_nodes(found), uv, _index(found))
        surface = BRep_Tool.Surface_s(face, place)
        fine = refined(patch(start, surface, deflection) or start, surface, deflection)
        if fine is not None:
            return _placed(fine.nodes, fine.index, place, face)
    BRepTools.Clean_s(face)
    _run([face], deflection, angle, True)
    return _triangles(face)


def _triangles(face: Any) -> np.ndarray:
    """(m, 3, 3) corners of a face's stored triangles, outward by the right hand; empty if it has none."""
    place = TopLoc_Location()
    found = BRep_Tool.Triangulation_s(face, place)
    if found is None or not found.NbTriangles():
        return np.empty((0, 3, 3))
    return _placed(_nodes(found), _index(found), place, face)


def _placed(nodes: np.ndarray, index: np.ndarray, place: TopLoc_Location, face: Any) -> np.ndarray:
    mirrored = False
    if not place.IsIdentity():
        m = place.Transformation()
        matrix = np.array([[m.Value(r, c) for c in range(1, 5)] for r in range(1, 4)])
        nodes = nodes @ matrix[:, :3].T + matrix[:, 3]
        mirrored = np.linalg.det(matrix[:, :3]) < 0
    if (face.Orientation() == TopAbs_REVERSED) != mirrored:
        index = index[:, ::-1]
    return nodes[index]


def _nodes(found: Any) -> np.ndarray:
    return np.array([(p.X(), p.Y(), p.Z()) for p in map(found.Node, range(1, found.NbNodes() + 1))])


def _index(found: Any) -> np.ndarray:
    return np.array([t.Get() for t in map(found.Triangle, range(1, found.NbTriangles() + 1))], dtype=int) - 1
