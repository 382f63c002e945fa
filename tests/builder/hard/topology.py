"""One sound pair whose faces are drawn in unusual ways: no measured number may move by more than the bars.

Each function takes cover and base of the clean pair and gives them back with other topology, same shape.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

import numpy as np
from OCP.Bnd import Bnd_Box
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common, BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse, BRepAlgoAPI_Splitter
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakeSolid
from OCP.gp import gp_Dir, gp_Pln, gp_Pnt
from OCP.ShapeUpgrade import ShapeUpgrade_ShapeDivideClosed
from OCP.TopAbs import TopAbs_SHELL
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS
from OCP.TopTools import TopTools_ListOfShape

from ..ops import box, faces, one_solid
from ..pair import CLEAR, DARK, draw
from ..solid import sound, swept_solid
from ..spec import Spec
from ..topology import as_nurbs, faceted, loose, lowest_face, with_reversed, without_faces
from ..track import circle, closed_spline, rounded_rectangle
from .clutter import assembly
from .truth import HardModel, Node, SeamTruth, along, values_of

SPEC = Spec(
    track=rounded_rectangle(70, 50, 9),
    draft_inner=1.0,
    draft_outer=1.5,
    top_fillet=0.12,
    root_fillet=0.1,
    edge_chamfer=0.3,
)
PRISMATIC = Spec(track=rounded_rectangle(70, 50, 9), draft_inner=0, draft_outer=0)


def _model(spec: Spec, change: Callable[[Any], Any], note: str, of: str = "both", **more: Any) -> HardModel:
    cover, base = draw(spec)
    if of in ("both", "cover"):
        cover = change(cover)
    if of in ("both", "base"):
        base = change(base)
    return _placed(spec, cover, base, note, **more)


def _placed(spec: Spec, cover: Any, base: Any, note: str, leave_out: tuple[str, ...] = (), **more: Any) -> HardModel:
    """``leave_out``: quantities that can't be measured all along the seam."""
    nodes = (Node("sensor housing", base, colour=DARK), Node("window lid", cover, colour=CLEAR))
    true = SeamTruth(1, 0, (along(spec.track, values_of(spec, leave_out)),))
    return HardModel(assembly(*nodes), (true,), note=note, **more)


def clean() -> HardModel:
    return _model(SPEC, lambda s: s, "The pair that the others of this family are made from.")


# -- other surfaces ----------------------------------------------------------------------------------


def all_nurbs() -> HardModel:
    return _model(SPEC, as_nurbs, "Every surface and curve is a NURBS.")


def all_nurbs_circle() -> HardModel:
    return _model(_with(circle(30)), as_nurbs, "Every surface of a turned pair is a NURBS.")


def all_nurbs_spline() -> HardModel:
    return _model(_with(closed_spline()), as_nurbs, "A free-form seam, every surface a NURBS.")


def turned_faces_cut_open() -> HardModel:
    def divide(shape: Any) -> Any:
        tool = ShapeUpgrade_ShapeDivideClosed(shape)
        tool.SetNbSplitPoints(3)
        tool.Perform()
        return one_solid(tool.Result())

    return _model(_with(circle(30)), divide, "Full cylinders and cones are cut in four.")


def _with(track: Any) -> Spec:
    return Spec(track=track, draft_inner=1.0, draft_outer=1.5, top_fillet=0.12, root_fillet=0.1)


# -- other faces on the same surfaces ----------------------------------------------------------------


def split_into_dozens() -> HardModel:
    """Every face along the seam, and every level face, lies in 48 pieces."""
    cut_up = replace(SPEC, track=SPEC.track.cut_up(6))
    cover = swept_solid(cut_up.track, cut_up.cover_chain(), split_levels=True)
    base = swept_solid(cut_up.track, cut_up.base_chain(), split_levels=True)
    return _placed(SPEC, cover, base, "Rib top, flanks, floors and underside lie in 48 pieces and more each.")


def split_along_the_rib() -> HardModel:
    """The rib top is cut lengthwise by planes that run near its middle, and by a slanting one."""
    cuts = [_plane((0, y, 0), (0, 1, 0)) for y in (-25.1, 24.9)]
    cuts += [_plane((x, 0, 0), (1, 0, 0)) for x in (-35.0, 35.2)]
    cuts += [_plane((0, 25, 0), (0.004, 1, 0))]
    return _model(PRISMATIC, lambda s: split(s, cuts), "The rib top lies in strips side by side.")


def slivers() -> HardModel:
    """Pairs of planes 0.003 mm apart leave faces of 0.003 mm width all over."""
    cuts = []
    for a in np.radians([11, 47, 83, 131, 160]):
        n = np.array([math.cos(a), math.sin(a), 0])
        cuts += [_plane(n * d, n) for d in (4.0, 4.003)]
    return _model(SPEC, lambda s: split(s, cuts), "Faces 0.003 mm wide cross the seam ten times and more.")


def rib_fused_without_tidying() -> HardModel:
    """The base is split at the trap floor's level and fused again: coplanar faces, edges without meaning."""

    def halves(shape: Any) -> Any:
        half = box((-200, -200, -200), (3, 200, 200))
        low = box((-200, -200, -200), (200, 200, -4.0))
        for tool in (half, low):
            a, b = BRepAlgoAPI_Common(shape, tool).Shape(), BRepAlgoAPI_Cut(shape, tool).Shape()
            shape = one_solid(BRepAlgoAPI_Fuse(a, b).Shape())
        return shape

    return _model(SPEC, halves, "Fused from pieces; the edges between coplanar faces were left in.")


def split(shape: Any, planes: Sequence[Any]) -> Any:
    arguments, tools = TopTools_ListOfShape(), TopTools_ListOfShape()
    arguments.Append(_shell_of(shape))
    for plane in planes:
        tools.Append(plane)
    splitter = BRepAlgoAPI_Splitter()
    splitter.SetArguments(arguments)
    splitter.SetTools(tools)
    splitter.Build()
    explorer = TopExp_Explorer(splitter.Shape(), TopAbs_SHELL)
    return sound(BRepBuilderAPI_MakeSolid(TopoDS.Shell_s(explorer.Current())).Solid())


def _shell_of(solid: Any) -> Any:
    return TopExp_Explorer(solid, TopAbs_SHELL).Current()


def _plane(at: Sequence[float], normal: Sequence[float]) -> Any:
    plane = gp_Pln(gp_Pnt(*map(float, at)), gp_Dir(*map(float, normal)))
    return BRepBuilderAPI_MakeFace(plane, -200, 200, -200, 200).Face()


# -- facets ------------------------------------------------------------------------------------------


FACETED = Spec(track=rounded_rectangle(40, 30, 4), draft_inner=0, draft_outer=0)


def every_face_a_triangle() -> HardModel:
    """Both parts as triangles, chords within 0.005 mm: widths in the corners may err by so much a flank."""
    return _model(FACETED, lambda s: faceted(s, 0.005), "Converted from a mesh: every face a triangle.")


def cover_of_triangles() -> HardModel:
    return _model(FACETED, lambda s: faceted(s, 0.005), "The cover alone is a converted mesh.", "cover")


# -- faults of the file ------------------------------------------------------------------------------


def tolerant_edges() -> HardModel:
    """Every edge and vertex claims a tolerance of 0.004 mm; the geometry itself is exact."""
    return _model(SPEC, loose, "Edges with a wide tolerance, as after an import.")


def reversed_faces() -> HardModel:
    """Every third face of both parts is turned inside out in the file."""
    return _model(SPEC, with_reversed, "Faces whose normal in the file points inward.")


def inside_out() -> HardModel:
    """The base as a whole is turned inside out: its volume is negative."""
    return _model(SPEC, lambda s: s.Reversed(), "A solid with negative volume.", "base")


def base_not_closed() -> HardModel:
    """The base lacks the face of its underside, far from the seam."""
    return _model(
        SPEC,
        lambda s: without_faces(s, lowest_face(s)),
        "A shell that isn't closed, away from the seam.",
        "base",
        reasons=("no-solid", "single-part", "unsupported"),
        says=("sensor housing",),
    )


def cover_not_closed() -> HardModel:
    """The cover lacks one side of its edge, beside the seam."""
    return _model(
        PRISMATIC,
        lambda s: without_faces(s, _an_upright_face(s)),
        "A shell that isn't closed: the cover's edge is missing on one side.",
        "cover",
        leave_out=("clamp_land", "clamp_tilt"),  # the land has no edge where the face is missing
        reasons=("no-solid", "single-part", "unsupported", "unreadable"),
        says=("window lid",),
    )


def _an_upright_face(shape: Any) -> int:
    """Index of the face that spans the most height: some face of the edge."""
    spans = []
    for face in faces(shape):
        extent = Bnd_Box()
        BRepBndLib.AddOptimal_s(face, extent, False, False)
        low, high = extent.CornerMin().Z(), extent.CornerMax().Z()
        spans.append(high - low)
    return int(np.argmax(spans))


TOPOLOGY: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        clean,
        all_nurbs,
        all_nurbs_circle,
        all_nurbs_spline,
        turned_faces_cut_open,
        split_into_dozens,
        split_along_the_rib,
        slivers,
        rib_fused_without_tidying,
        every_face_a_triangle,
        cover_of_triangles,
        tolerant_edges,
        reversed_faces,
        inside_out,
        base_not_closed,
        cover_not_closed,
    )
}
