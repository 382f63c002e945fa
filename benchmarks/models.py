"""Models of any number of faces with one and the same seam: housings of a weather station's logger."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from OCP.BRep import BRep_Builder
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakeSolid
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox, BRepPrimAPI_MakeCylinder
from OCP.BRepTools import BRepTools
from OCP.GeomAbs import GeomAbs_Plane
from OCP.gp import gp_Ax2, gp_Dir, gp_Pln, gp_Pnt
from OCP.TopAbs import TopAbs_FACE, TopAbs_REVERSED
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS, TopoDS_Shell

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "tests"))

from builder import Spec, assemble, closed_spline, draw, rounded_rectangle

PITCH = 1.3  # mm between features
PANEL = 20.0  # mm, side of a raised panel that carries features of its own
_ROOM = (68.0, 48.0)  # mm, half sides of the floor that features may stand on
HOUSING = Spec(
    track=rounded_rectangle(160, 120, 12), top_fillet=0.1, root_fillet=0.15,
    cover_name="logger lid", base_name="logger housing",
)  # fmt: skip
FREE_FORM = replace(
    HOUSING,
    track=closed_spline(
        [(90, 0), (76, 48), (20, 66), (-36, 50), (-84, 40), (-92, -16), (-44, -60), (16, -48), (68, -52)]
    ),
)


@dataclass(frozen=True)
class Kind:
    """faces : about how many of the model; spread : features all stand in 'one' face, or on 'many' panels."""

    faces: int
    spread: str = "many"


def housing(path: Path, kind: Kind, spec: Spec = HOUSING) -> int:
    """Write a housing with lid and far features (blocks, pins, holes) on its floor; returns its number of faces."""
    cover, base = draw(spec)
    plain = len(_faces(cover)) + len(_faces(base))
    if kind.faces > plain:
        base = _with_features(base, spec, kind.faces - plain, kind.spread)
    assemble(spec, cover, base).write(path)
    return len(_faces(cover)) + len(_faces(base))


def _with_features(base: Any, spec: Spec, more: int, spread: str) -> Any:
    """The base with ``more`` faces on its inner floor, made face by face: nothing is fused."""
    floor_z, under_z = -spec.wall_height + spec.floor_thickness, -spec.wall_height
    faces = _faces(base)
    floor = next(f for f in faces if _level(f) == (round(floor_z, 6), True))
    under = next(f for f in faces if _level(f) == (round(under_z, 6), False))
    kept = [f for f in faces if f is not floor and f is not under]
    tops = BRepBuilderAPI_MakeFace(_plane(floor_z, 1.0), BRepTools.OuterWire_s(floor), True)
    bottoms = BRepBuilderAPI_MakeFace(_plane(under_z, -1.0), BRepTools.OuterWire_s(under), True)
    added = 0
    if spread == "one":
        for i, (x, y) in enumerate(_grid(*_ROOM, PITCH)):
            if added >= more:
                break
            if i % 3 == 2:
                new, wires = _hole(x, y, under_z, floor_z)
                bottoms.Add(wires[1])
            else:
                new, wires = _boss(x, y, floor_z, 2.0 + (i % 5) * 0.2, i % 3 == 1)
            tops.Add(wires[0])
            kept += new
            added += len(new)
    else:
        for x, y in _grid(_ROOM[0] - PANEL / 2, _ROOM[1] - PANEL / 2, PANEL + 2.0):
            if added >= more:
                break
            panel, (wire,) = _boss(x, y, floor_z, 1.0, False, PANEL)
            tops.Add(wire)
            top = next(f for f in panel if _level(f) == (round(floor_z + 1.0, 6), True))
            carrier = BRepBuilderAPI_MakeFace(_plane(floor_z + 1.0, 1.0), BRepTools.OuterWire_s(top), True)
            added += len(panel)
            half = PANEL / 2 - 1.5
            for i, (dx, dy) in enumerate(_grid(half, half, 0.94)):
                if added >= more:
                    break
                new, (wire,) = _boss(x + dx, y + dy, floor_z + 1.0, 2.0 + (i % 5) * 0.2, i % 3 == 1, 0.55)
                carrier.Add(wire)
                kept += new
                added += len(new)
            kept += [carrier.Face() if f is top else f for f in panel]
    if added < more:
        raise ValueError(f"there is room for {added} more faces only, not for {more}")
    builder, shell = BRep_Builder(), TopoDS_Shell()
    builder.MakeShell(shell)
    for face in (*kept, tops.Face(), bottoms.Face()):
        builder.Add(shell, face)
    shell.Closed(True)
    return BRepBuilderAPI_MakeSolid(shell).Solid()


def _grid(half_x: float, half_y: float, pitch: float) -> Iterator[tuple[float, float]]:
    nx, ny = int(half_x / pitch), int(half_y / pitch)
    for j in range(-ny, ny + 1):
        for i in range(-nx, nx + 1):
            yield i * pitch, j * pitch


def _boss(
    x: float, y: float, z: float, height: float, is_round: bool, size: float = 0.8
) -> tuple[list[Any], list[Any]]:
    """Faces of a pin or block without its foot, and the foot's outline as a hole of the face it stands on."""
    if is_round:
        solid = BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(x, y, z), gp_Dir(0, 0, 1)), size / 2, height).Solid()
    else:
        corner = gp_Pnt(x - size / 2, y - size / 2, z)
        solid = BRepPrimAPI_MakeBox(corner, size, size, height).Solid()
    faces = _faces(solid)
    foot = next(f for f in faces if _level(f) == (round(z, 6), False))
    return [f for f in faces if f is not foot], [BRepTools.OuterWire_s(foot)]


def _hole(x: float, y: float, low: float, high: float) -> tuple[list[Any], list[Any]]:
    """The wall of a round hole, and its outlines as holes of the faces above and below."""
    solid = BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(x, y, low), gp_Dir(0, 0, 1)), 0.4, high - low).Solid()
    wall, top, foot = None, None, None
    for face in _faces(solid):
        level = _level(face)
        if level is None:
            wall = face
        elif level[1]:
            top = face
        else:
            foot = face
    wires = [TopoDS.Wire_s(BRepTools.OuterWire_s(face).Reversed()) for face in (top, foot)]
    return [TopoDS.Face_s(wall.Reversed())], wires


def _plane(z: float, sense: float) -> gp_Pln:
    return gp_Pln(gp_Pnt(0, 0, z), gp_Dir(0, 0, sense))


def _level(face: Any) -> tuple[float, bool] | None:
    """Height of a level face and whether it looks up; None for every other face."""
    surface = BRepAdaptor_Surface(face, False)
    if surface.GetType() != GeomAbs_Plane:
        return None
    position = surface.Plane().Position()
    x, y = position.XDirection(), position.YDirection()
    up = x.X() * y.Y() - x.Y() * y.X()
    if abs(abs(up) - 1.0) > 1e-9:
        return None
    if face.Orientation() == TopAbs_REVERSED:
        up = -up
    return round(surface.Plane().Location().Z(), 6), up > 0


def _faces(shape: Any) -> list[Any]:
    explorer, found = TopExp_Explorer(shape, TopAbs_FACE), []
    while explorer.More():
        found.append(TopoDS.Face_s(explorer.Current()))
        explorer.Next()
    return found


__all__ = ["FREE_FORM", "HOUSING", "Kind", "housing"]
