"""The same body in another dress: NURBS, facets, reversed faces, open shells, sheets, tolerances (OCP)."""

from __future__ import annotations

from typing import Any

import numpy as np
from OCP.BRep import BRep_Builder, BRep_Tool
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakePolygon,
    BRepBuilderAPI_MakeSolid,
    BRepBuilderAPI_NurbsConvert,
    BRepBuilderAPI_Sewing,
    BRepBuilderAPI_Transform,
)
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Trsf
from OCP.ShapeFix import ShapeFix_ShapeTolerance
from OCP.TopAbs import TopAbs_REVERSED, TopAbs_SHELL
from OCP.TopExp import TopExp_Explorer
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS, TopoDS_Shell, TopoDS_Solid

from .ops import faces
from .solid import sound


def as_nurbs(shape: Any) -> Any:
    """Every curve and surface as a spline."""
    return BRepBuilderAPI_NurbsConvert(shape, True).Shape()


def faceted(shape: Any, deflection: float = 0.01) -> Any:
    """A solid whose every face is a plane triangle; its vertices lie on the original."""
    BRepMesh_IncrementalMesh(shape, deflection, False, 0.3, False)
    sewing = BRepBuilderAPI_Sewing(1e-6)
    for face in faces(shape):
        place = TopLoc_Location()
        mesh = BRep_Tool.Triangulation_s(face, place)
        nodes = [mesh.Node(i + 1).Transformed(place.Transformation()) for i in range(mesh.NbNodes())]
        for i in range(1, mesh.NbTriangles() + 1):
            a, b, c = mesh.Triangle(i).Get()
            if face.Orientation() == TopAbs_REVERSED:
                b, c = c, b
            corners = [nodes[k - 1] for k in (a, b, c)]
            if _area(corners) < 1e-9:
                continue
            maker = BRepBuilderAPI_MakePolygon()
            for corner in corners:
                maker.Add(corner)
            maker.Close()
            sewing.Add(BRepBuilderAPI_MakeFace(maker.Wire(), True).Face())
    sewing.Perform()
    explorer = TopExp_Explorer(sewing.SewedShape(), TopAbs_SHELL)
    return sound(BRepBuilderAPI_MakeSolid(TopoDS.Shell_s(explorer.Current())).Solid())


def with_reversed(shape: Any, every: int = 3) -> Any:
    """The solid with every n-th face turned over, as careless translators write it."""
    return _rebuilt([f.Reversed() if i % every == 0 else f for i, f in enumerate(faces(shape))])


def without_faces(shape: Any, *missing: int) -> Any:
    """The solid whose shell lacks some faces (indices in kernel order): not closed."""
    return _rebuilt([f for i, f in enumerate(faces(shape)) if i not in missing])


def lowest_face(shape: Any) -> int:
    """Index of the face whose middle lies lowest along z."""
    from OCP.BRepGProp import BRepGProp
    from OCP.GProp import GProp_GProps

    heights = []
    for face in faces(shape):
        properties = GProp_GProps()
        BRepGProp.SurfaceProperties_s(face, properties)
        heights.append(properties.CentreOfMass().Z())
    return int(np.argmin(heights))


def loose(shape: Any, tolerance: float = 0.004) -> Any:
    """The shape with edges and vertices declared no better than ``tolerance``."""
    copy = BRepBuilderAPI_Transform(shape, gp_Trsf(), True).Shape()
    ShapeFix_ShapeTolerance().SetTolerance(copy, tolerance)
    return copy


def mirrored(shape: Any) -> Any:
    """Mirrored at the plane x = 0, as geometry (a STEP placement can't mirror)."""
    mirror = gp_Trsf()
    mirror.SetMirror(gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(1, 0, 0)))
    return BRepBuilderAPI_Transform(shape, mirror, True).Shape()


def scaled(shape: Any, factor: float) -> Any:
    """Scaled about the origin, as geometry."""
    change = gp_Trsf()
    change.SetScale(gp_Pnt(0, 0, 0), factor)
    return BRepBuilderAPI_Transform(shape, change, True).Shape()


def sheet(low: tuple[float, float], high: tuple[float, float], z: float) -> Any:
    """A level rectangular face: a body without thickness."""
    (x0, y0), (x1, y1) = low, high
    maker = BRepBuilderAPI_MakePolygon()
    for x, y in ((x0, y0), (x1, y0), (x1, y1), (x0, y1)):
        maker.Add(gp_Pnt(x, y, z))
    maker.Close()
    return BRepBuilderAPI_MakeFace(maker.Wire(), True).Face()


def _rebuilt(sides: list[Any]) -> Any:
    builder, shell, solid = BRep_Builder(), TopoDS_Shell(), TopoDS_Solid()
    builder.MakeShell(shell)
    for side in sides:
        builder.Add(shell, side)
    builder.MakeSolid(solid)
    builder.Add(solid, shell)
    return solid


def _area(corners: list[Any]) -> float:
    a, b, c = (np.array([p.X(), p.Y(), p.Z()]) for p in corners)
    return float(np.linalg.norm(np.cross(b - a, c - a))) / 2
