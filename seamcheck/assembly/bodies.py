"""The bodies of one product: solids, sheets and the rest, checked and turned the right way out."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from msgspec import Struct
from msgspec.structs import replace
from OCP.Bnd import Bnd_Box
from OCP.BRep import BRep_Tool
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeSolid, BRepBuilderAPI_Sewing
from OCP.BRepGProp import BRepGProp
from OCP.BRepTools import BRepTools_ReShape
from OCP.GProp import GProp_GProps
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_SHELL, TopAbs_SOLID, TopAbs_VERTEX
from OCP.TopExp import TopExp
from OCP.TopoDS import TopoDS
from OCP.TopTools import TopTools_IndexedDataMapOfShapeListOfShape, TopTools_IndexedMapOfShape

from seamcheck.assembly.kernel_reader import is_kernel_failure
from seamcheck.assembly.mending import mended
from seamcheck.assembly.shapes import explore
from seamcheck.assembly.soundness import Faces, Flaws, corner_of
from seamcheck.assembly.trial import faces_without_end
from seamcheck.catalogue.say import say

LARGEST_COORDINATE = 1e7  # mm; ten kilometres away nothing can be measured to a micrometre any more
SEW_WITHIN = 0.02  # mm, the widest crack that is sewn: a fifth of the smallest gap that matters in a seam

_OPEN_SHARE = 0.1  # a shell with fewer free edges than this share is a solid with a hole, no sheet
_OPEN_SHARE_OF_SOLIDS = 0.5  # the same for what the file lists as a solid: a box without its lid has a third


class Body(Struct, frozen=True, eq=False):
    """One body as it stands in its product, unplaced, mm.

    Attributes
    ----------
    kind : 'solid', 'sheet' or 'other', as in Part
    shape : TopoDS_Shape
    original : as the kernel gave it, under which colours are kept
    listed : the shells (or the face) as the file lists them, for finding their records
    sound : closed, and its faces agree on what is inside
    box : (xmin, ymin, zmin, xmax, ymax, zmax) mm, or None where there is none that makes sense
    notes : sentences
    opening : a point (x, y, z) mm at a place where the shell is not closed, or None
    left_out : indices of faces that the file lists and the shape has no longer
    """

    kind: str
    shape: Any
    original: Any
    listed: tuple[Any, ...]
    sound: bool
    box: tuple[float, ...] | None
    notes: tuple[str, ...] = ()
    opening: tuple[float, float, float] | None = None
    left_out: tuple[int, ...] = ()

    @property
    def faces(self) -> int:
        return sum(1 for _ in explore(self.shape, TopAbs_FACE))

    @property
    def size(self) -> float:
        """Longest side of the box, mm; 0 without one."""
        return 0.0 if self.box is None else max(self.box[axis + 3] - self.box[axis] for axis in range(3))


IsListed = Callable[[Any], bool]
"""Whether the file lists a shell (TopoDS_Shell) as that of a solid."""


class NeedsRepairs(Exception):
    """A body that is not sound as its file has it, its faces mended one by one."""


def sound_solids(shape: Any, precision: float) -> list[Body]:
    """The solids of a product's shape as its file has them, only faces mended that need it.

    Parameters
    ----------
    shape : TopoDS_Shape of one product, of which the reader has mended no solid
    precision : mm, the uncertainty of lengths that the file states

    Raises
    ------
    NeedsRepairs : for anything but solids of one closed shell, sound from the first
    """
    shells = sum(1 for _ in explore(shape, TopAbs_SHELL))
    solids = list(explore(shape, TopAbs_SOLID))
    if shells != len(solids) or any(True for _ in explore(shape, TopAbs_FACE, TopAbs_SHELL)):
        raise NeedsRepairs
    try:
        return [_mended(solid, precision) for solid in solids]
    except Exception as error:
        if not is_kernel_failure(error):
            raise
        raise NeedsRepairs from error


def _mended(solid: Any, precision: float) -> Body:
    """A solid of one shell."""
    (shell,) = explore(solid, TopAbs_SHELL)
    faces = Faces.of(solid)
    has_surfaces = all(BRep_Tool.Surface_s(face) is not None for face in faces.every)
    if not (has_surfaces and faces.face_one_way and _is_closed((shell,))):
        raise NeedsRepairs
    shape = mended(solid, faces.to_mend(precision), precision)
    after, box = faces.of_mended(shape), box_of(shape)
    if after is None or not _can_be_measured(box):
        raise NeedsRepairs
    body = _outward(Body("solid", shape, solid, (shell,), False, box), after)
    if body.notes:
        raise NeedsRepairs
    return body


def product_bodies(shape: Any, is_listed: IsListed) -> list[Body]:
    """The solids of a product's shape, then its shells outside solids, then its loose faces."""
    found = [_body("solid", solid, is_listed) for solid in explore(shape, TopAbs_SOLID)]
    found += [_body("sheet", shell, is_listed) for shell in explore(shape, TopAbs_SHELL, TopAbs_SOLID)]
    found += [_body("sheet", face, is_listed) for face in explore(shape, TopAbs_FACE, TopAbs_SHELL)]
    return found


def same_solid(first: Body, second: Body) -> bool:
    """Whether two bodies with boxes in the same place have the same volume, too (to a millionth)."""
    if first.shape.IsSame(second.shape):
        return True
    one, other = (abs(_mass(body.shape)) for body in (first, second))
    return abs(one - other) <= 1e-6 * max(one, other)


def _body(kind: str, shape: Any, is_listed: IsListed) -> Body:
    try:
        return _checked(kind, shape, is_listed)
    except Exception as error:
        if not is_kernel_failure(error):
            raise
        body = Body(kind, shape, shape, (shape,), False, None)
        return _other(body, "Its geometry is damaged: the CAD kernel can't evaluate it; it is left out.")


def _checked(kind: str, shape: Any, is_listed: IsListed) -> Body:
    shells = tuple(explore(shape, TopAbs_SHELL)) or (shape,)
    body = Body(kind, shape, shape, shells, False, None)
    if any(BRep_Tool.Surface_s(TopoDS.Face_s(face)) is None for face in explore(shape, TopAbs_FACE)):
        return _other(body, say("part.triangles"))
    box = box_of(shape)
    if box is None:
        return _other(body, say("part.no-faces"))
    if not _can_be_measured(box):
        return _other(body, say("part.endless"))
    body = replace(body, box=box)
    if kind == "solid" or _is_closed(shells):
        return _solid(body)
    if shape.ShapeType() == TopAbs_SHELL:
        return _open(body, is_listed(shape))
    return replace(body, sound=True)


def _other(body: Body, note: str) -> Body:
    return replace(body, kind="other", notes=(*body.notes, note))


def box_of(shape: Any) -> tuple[float, ...] | None:
    """(6,) mm: least and largest x, y, z of a shape; None where it is void."""
    box = Bnd_Box()
    box.SetGap(0.0)
    BRepBndLib.Add_s(shape, box, False)
    return None if box.IsVoid() else tuple(box.Get())


def _can_be_measured(box: tuple[float, ...] | None) -> bool:
    return box is not None and all(math.isfinite(value) and abs(value) < LARGEST_COORDINATE for value in box)


def _is_closed(shells: tuple[Any, ...]) -> bool:
    return all(shell.ShapeType() == TopAbs_SHELL and BRep_Tool.IsClosed_s(shell) for shell in shells)


def _solid(body: Body) -> Body:
    """A solid, or a closed shell made one; with its faces outward."""
    if not _is_closed(body.listed):
        return _open(body, True)
    shape = body.shape
    if shape.ShapeType() != TopAbs_SOLID:
        shape = BRepBuilderAPI_MakeSolid(TopoDS.Shell_s(shape)).Solid()
        body = replace(body, shape=shape, kind="solid")
    return _outward(body, Faces.of(shape))


def _outward(body: Body, faces: Faces) -> Body:
    """A closed solid with its faces outward, and what is wrong with it."""
    shape = body.shape
    volume, doubt = _volume(shape, body.box, faces)
    if volume < 0.0:
        body = replace(body, shape=shape.Reversed(), notes=(*body.notes, say("part.inside-out")))
    flaws, body = _without_hanging_faces(body, faces)
    if doubt > 1e-3:
        flaws += (say("part.no-inside"),)
    return replace(body, sound=not flaws, notes=(*body.notes, *flaws))


def _without_hanging_faces(body: Body, faces: Faces) -> tuple[tuple[str, ...], Body]:
    """What is wrong with a body's faces, as sentences, and the body without those that the mesher can't take."""
    flaws = faces.flaws(body.shape)
    beside = _neighbours(body.shape, flaws.broken)
    bad = [flaws.broken[index] for index in faces_without_end(flaws.broken, beside)]
    if not bad:
        return flaws.notes, body
    places = [index for index, face in enumerate(explore(body.shape, TopAbs_FACE)) if any(face.IsSame(b) for b in bad)]
    tool = BRepTools_ReShape()
    for face in bad:
        tool.Remove(face)
    left = Flaws(flaws.loose, tuple(f for f in flaws.broken if not any(f.IsSame(b) for b in bad)), flaws.faces)
    note = _left_out(bad)
    return (*left.notes, note), replace(body, shape=tool.Apply(body.shape), left_out=tuple(places))


def _neighbours(shape: Any, faces: tuple[Any, ...]) -> list[Any]:
    """The faces that share an edge with some faces, without these."""
    if not faces:
        return []
    owners = TopTools_IndexedDataMapOfShapeListOfShape()
    TopExp.MapShapesAndAncestors_s(shape, TopAbs_EDGE, TopAbs_FACE, owners)
    known, found = TopTools_IndexedMapOfShape(), []
    for face in faces:
        known.Add(face)
    for face in faces:
        for edge in explore(face, TopAbs_EDGE):
            for other in owners.FindFromKey(edge):
                if not known.Contains(other):
                    known.Add(other)
                    found.append(other)
    return found


def _left_out(faces: list[Any]) -> str:
    corner = corner_of(faces[0])
    where = {"place": ", ".join(f"{value:.1f}" for value in corner)} if corner else {}
    return say("part.faces-left-out", count=len(faces), **where)


def _volume(shape: Any, box: tuple[float, ...] | None, faces: Faces) -> tuple[float, float]:
    """Volume in mm³, and how far it depends on the point it is taken from, as a share of the box.

    Both come from the divergence theorem over the faces; for a closed surface with all normals outward the
    volume is the same from everywhere, because its normals, weighted with area, add up to nothing. Where a face is
    bent in a general way nothing is known of the second.
    """
    assert box is not None
    sides = [max(box[axis + 3] - box[axis], 1e-6) for axis in range(3)]
    middle = [(box[axis + 3] + box[axis]) / 2 for axis in range(3)]
    aside = [value + side * share for value, side, share in zip(middle, sides, (0.83, 0.61, 0.47), strict=True)]
    twice = len(faces.every) < sum(1 for _ in explore(shape, TopAbs_FACE))  # a face that counts from both its sides
    from_middle = None if twice else faces.volume((middle[0], middle[1], middle[2]))
    from_aside = None if twice else faces.volume((aside[0], aside[1], aside[2]))
    if from_middle is None or from_aside is None:
        return _mass(shape), 0.0
    return from_middle, abs(from_aside - from_middle) / math.prod(sides)


def _mass(shape: Any) -> float:
    properties = GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, properties)
    return float(properties.Mass())


def _open(body: Body, meant_solid: bool) -> Body:
    """A shell with free edges: sewn where the cracks are narrow, else a solid with a hole, or a sheet."""
    sewn = _sewn(body)
    if sewn is not None:
        return sewn
    free, edges, place = _free_edges(body.shape)
    most = (_OPEN_SHARE_OF_SOLIDS if meant_solid else _OPEN_SHARE) * edges
    if not meant_solid and (not edges or free >= most):
        return replace(body, kind="sheet", sound=True)  # meant as a sheet
    where = ", ".join(f"{value:.1f}" for value in place)
    kind = "solid" if free < most else "sheet"
    note = say("part.open" if kind == "solid" else "part.open.sheet", free=free, edges=edges, place=where)
    shape = body.shape
    if kind == "solid":
        if shape.ShapeType() != TopAbs_SOLID:
            shape = BRepBuilderAPI_MakeSolid(TopoDS.Shell_s(shape)).Solid()
        faces = Faces.of(shape)
        if _volume(shape, body.box, faces)[0] < 0.0:
            shape = shape.Reversed()
        flaws, body = _without_hanging_faces(replace(body, shape=shape), faces)
        return replace(body, kind=kind, notes=(*body.notes, note, *flaws), opening=place)
    return replace(body, kind=kind, shape=shape, notes=(*body.notes, note), opening=place)


def _sewn(body: Body) -> Body | None:
    """The body as one closed solid, if sewing narrow cracks closes it."""
    sewing = BRepBuilderAPI_Sewing(SEW_WITHIN)
    sewing.Add(body.shape)
    sewing.Perform()
    shells = tuple(explore(sewing.SewedShape(), TopAbs_SHELL))
    if len(shells) != 1 or not _is_closed(shells):
        return None
    solid = BRepBuilderAPI_MakeSolid(TopoDS.Shell_s(shells[0])).Solid()
    note = say("part.sewn", width=SEW_WITHIN)
    return _solid(replace(body, kind="solid", shape=solid, listed=shells, notes=(*body.notes, note)))


def _free_edges(shape: Any) -> tuple[int, int, tuple[float, float, float]]:
    """How many edges have one face only, how many edges there are, and a corner of a free one."""
    owners = TopTools_IndexedDataMapOfShapeListOfShape()
    TopExp.MapShapesAndAncestors_s(shape, TopAbs_EDGE, TopAbs_FACE, owners)
    free = []
    for number in range(1, owners.Extent() + 1):
        edge = TopoDS.Edge_s(owners.FindKey(number))
        if owners.FindFromIndex(number).Size() == 1 and not BRep_Tool.Degenerated_s(edge):
            free.append(edge)
    place = (math.nan, math.nan, math.nan)
    for vertex in explore(free[0], TopAbs_VERTEX) if free else ():
        point = BRep_Tool.Pnt_s(TopoDS.Vertex_s(vertex))
        place = (point.X(), point.Y(), point.Z())
    return len(free), owners.Extent(), place
