"""Material cut away beside a seam: columns over regions of the press frame, slabs below faces, and the cut itself."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.BOPAlgo import BOPAlgo_PaveFiller
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common, BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge, BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakeWire
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp
from OCP.BRepOffsetAPI import BRepOffsetAPI_ThruSections
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.GC import GC_MakeArcOfCircle
from OCP.GeomAbs import GeomAbs_SurfaceType
from OCP.gp import gp_Pnt, gp_Trsf, gp_Vec
from OCP.GProp import GProp_GProps
from OCP.ShapeUpgrade import ShapeUpgrade_UnifySameDomain
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_SOLID
from OCP.TopExp import TopExp_Explorer
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS
from OCP.TopTools import TopTools_ListOfShape

from seamcheck.catalogue.say import say
from seamcheck.errors import SeamcheckError
from seamcheck.kernel.body import Body

ABOVE = 0.5
"""mm that a cutting body reaches beyond the face it cuts into, so that no two faces have to coincide there."""


AGREES = 2e-3
"""Share of the volume cut away by which that of the part before and after may miss it: 1e-3 for the kernel's own
integration, as much again for the meshes of free-form walls."""

MESHED = 0.002
"""mm, chord error of meshes whose volume is taken."""

_ELEMENTARY = frozenset(
    {
        GeomAbs_SurfaceType.GeomAbs_Plane, GeomAbs_SurfaceType.GeomAbs_Cylinder, GeomAbs_SurfaceType.GeomAbs_Cone,
        GeomAbs_SurfaceType.GeomAbs_Sphere, GeomAbs_SurfaceType.GeomAbs_Torus,
    }
)  # fmt: skip


class NotCut(SeamcheckError):
    """The kernel could not cut the joint out of a part."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why

    def __str__(self) -> str:
        return f"The joint could not be cut into the part: {self.why}."


class Axes(Struct, frozen=True, eq=False):
    """A right-handed frame: origin (3,) mm, axes (3, 3) rows x, y, z."""

    origin: np.ndarray
    axes: np.ndarray

    def point(self, xy: Sequence[float] | np.ndarray, z: float) -> gp_Pnt:
        """The point at xy (2,) and z, mm along these axes."""
        return gp_Pnt(*map(float, np.array([xy[0], xy[1], z]) @ self.axes + self.origin))

    def along(self, z: float) -> gp_Vec:
        return gp_Vec(*map(float, z * self.axes[2]))


Line = Sequence[tuple[tuple[float, float], tuple[float, float], float]]
"""A closed chain of (start, end, bulge): bulge 0 a straight line, else the tangent of a quarter of an arc's angle."""


class Column(Struct, frozen=True):
    """A region of the frame's plane, with holes, carried along z from ``low`` to ``high`` (mm).

    outline_low, outline_high : the outline at both heights, piece by piece the same; holes_low, holes_high alike
    """

    low: float
    high: float
    outline_low: Line
    outline_high: Line
    holes_low: tuple[Line, ...] = ()
    holes_high: tuple[Line, ...] = ()


def column(frame: Axes, what: Column) -> Any:
    """The solid of a column; its walls are planes and cylinders, or lean between both outlines."""
    solid = _between(frame, what.outline_low, what.low, what.outline_high, what.high)
    for low, high in zip(what.holes_low, what.holes_high, strict=True):
        solid = BRepAlgoAPI_Cut(solid, _between(frame, low, what.low, high, what.high)).Shape()
    return solid


def slab(body: Body, faces: Sequence[int], up: np.ndarray, depth: float, above: float = ABOVE) -> Any:
    """The room from ``above`` mm over some faces down to ``depth`` mm below them, along ``up``.

    Parameters
    ----------
    up : (3,) unit vector out of the material
    depth : mm, of exact depth along ``up`` also below faces that are inclined or curved
    """
    lifted = gp_Trsf()
    lifted.SetTranslation(gp_Vec(*map(float, above * up)))
    down = gp_Vec(*map(float, -(depth + above) * np.asarray(up)))
    parts = [BRepPrimAPI_MakePrism(body.faces[i].Moved(TopLoc_Location(lifted)), down, True).Shape() for i in faces]
    return united(parts)


def united(shapes: Sequence[Any]) -> Any:
    """Shapes fused into one, faces of the same surface joined."""
    whole = shapes[0]
    for shape in shapes[1:]:
        whole = BRepAlgoAPI_Fuse(whole, shape).Shape()
    return merged(whole) if len(shapes) > 1 else whole


def without(shape: Any, *tools: Any) -> Any:
    """A shape less others."""
    for tool in tools:
        shape = BRepAlgoAPI_Cut(shape, tool).Shape()
    return shape


def common(shape: Any, other: Any) -> Any:
    """What two shapes share."""
    return BRepAlgoAPI_Common(shape, other).Shape()


def cut_out(body: Body, tools: Sequence[Any]) -> Any:
    """One sound solid: the body less some cutting bodies.

    Raises
    ------
    NotCut : the result falls apart, is not sound, or its volume is not the body's less what the tools share with it
    """
    shape, shared = body.shape, 0.0
    for tool in tools:
        shape, inside = parted(shape, tool)
        shared += volume(inside)
    solids = solids_of(shape)
    if len(solids) != 1:
        raise NotCut(say("propose.cut.pieces", count=len(solids)))
    result = merged(solids[0])
    if not BRepCheck_Analyzer(result).IsValid():
        result = solids[0]
        if not BRepCheck_Analyzer(result).IsValid():
            raise NotCut(say("propose.cut.unsound"))
    missing = abs(volume(body.shape) - volume(result) - shared)
    if missing > AGREES * max(1.0, shared):
        raise NotCut(say("propose.cut.volumes-by", by=missing))
    return next(each_of(result, TopAbs_SOLID))


def parted(shape: Any, tool: Any) -> tuple[Any, Any]:
    """A shape less a tool, and what both share; the kernel intersects them once."""
    arguments = TopTools_ListOfShape()
    arguments.Append(shape)
    arguments.Append(tool)
    filler = BOPAlgo_PaveFiller()
    filler.SetArguments(arguments)
    filler.Perform()
    return BRepAlgoAPI_Cut(shape, tool, filler).Shape(), BRepAlgoAPI_Common(shape, tool, filler).Shape()


def volume(shape: Any) -> float:
    """mm³: exact where all faces are planes, cylinders, cones, spheres or tori, else of a mesh 0.002 mm off them.

    Notes
    -----
    The kernel's own integration is wrong by percents on offset surfaces, to any tolerance asked for (seen on a shelled
    ellipse, against the area of its parallel curve). The mesh: divergence theorem, a sixth of the sum of the triple
    products of its triangles' corners.
    """
    if all(BRepAdaptor_Surface(TopoDS.Face_s(face)).GetType() in _ELEMENTARY for face in each_of(shape, TopAbs_FACE)):
        properties = GProp_GProps()
        BRepGProp.VolumeProperties_s(shape, properties, 1e-6)
        return float(abs(properties.Mass()))
    body = Body(shape)
    corners = body.facets(range(len(body.faces)), MESHED).corners
    corners = corners - corners.reshape(-1, 3).mean(axis=0)
    return float(abs(np.sum(corners[:, 0] * np.cross(corners[:, 1], corners[:, 2])))) / 6.0


def shortest_edge(shape: Any) -> float:
    """mm, the length of the shortest edge that is not closed to a point."""
    lengths = []
    for edge in each_of(shape, TopAbs_EDGE):
        properties = GProp_GProps()
        BRepGProp.LinearProperties_s(edge, properties)
        if properties.Mass() > 1e-9:
            lengths.append(properties.Mass())
    return min(lengths, default=float("nan"))


def _between(frame: Axes, low: Line, z_low: float, high: Line, z_high: float) -> Any:
    if low == high:
        face = BRepBuilderAPI_MakeFace(wire(frame, low, z_low), True).Face()
        return BRepPrimAPI_MakePrism(face, frame.along(z_high - z_low)).Shape()
    through = BRepOffsetAPI_ThruSections(True, True, 1e-6)
    through.CheckCompatibility(False)
    through.AddWire(wire(frame, low, z_low))
    through.AddWire(wire(frame, high, z_high))
    through.Build()
    if not through.IsDone():
        raise NotCut(say("propose.cut.flank"))
    return through.Shape()


def wire(frame: Axes, line: Line, z: float) -> Any:
    """A closed line at a height of the frame."""
    maker = BRepBuilderAPI_MakeWire()
    for start, end, bulge in line:
        a, b = frame.point(start, z), frame.point(end, z)
        if bulge == 0.0:
            edge = BRepBuilderAPI_MakeEdge(a, b).Edge()
        else:
            chord = np.subtract(end, start)
            middle = (np.add(start, end) + bulge * np.array([chord[1], -chord[0]])) / 2.0
            edge = BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(a, frame.point(middle, z), b).Value()).Edge()
        maker.Add(edge)
    if not maker.IsDone():
        raise NotCut(say("propose.cut.outline"))
    return maker.Wire()


def merged(shape: Any) -> Any:
    """A shape with neighbouring faces of one surface joined."""
    joined = ShapeUpgrade_UnifySameDomain(shape, True, True, False)
    joined.Build()
    return joined.Shape()


def solids_of(shape: Any) -> list[Any]:
    """The solids of a shape."""
    return list(each_of(shape, TopAbs_SOLID))


def each_of(shape: Any, kind: Any) -> Any:
    """Every part of one kind (a TopAbs) in a shape."""
    explorer = TopExp_Explorer(shape, kind)
    while explorer.More():
        yield explorer.Current()
        explorer.Next()
