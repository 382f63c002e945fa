"""Bodies bounded by level faces and by walls over lines and arcs: planes, cylinders and cones, no other surfaces."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.BRep import BRep_Builder
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon, BRepBuilderAPI_Sewing
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepLib import BRepLib
from OCP.Geom import Geom_ConicalSurface, Geom_CylindricalSurface
from OCP.gp import gp_Ax3, gp_Dir, gp_Pln
from OCP.TopAbs import TopAbs_FACE, TopAbs_SHELL
from OCP.TopoDS import TopoDS, TopoDS_Solid

from seamcheck.catalogue.say import say
from seamcheck.kernel.body import Body
from seamcheck.kernel.grooves import Axes, Column, Line, NotCut, column, each_of, wire, without

SEWN = 1e-5
"""mm within which edges of neighbouring faces are one."""


class Wall(Struct, frozen=True):
    """A wall between the same line at two heights (mm): upright, or leaning with arcs that stay concentric."""

    low: float
    high: float
    line_low: Line
    line_high: Line


class Flat(Struct, frozen=True):
    """A level face at a height (mm), with holes."""

    height: float
    outline: Line
    holes: tuple[Line, ...] = ()


def stepped(frame: Axes, walls: Sequence[Wall], flats: Sequence[Flat]) -> Any:
    """The solid that walls and level faces enclose.

    Raises
    ------
    NotCut : they do not close
    """
    return _sewn([*(face for wall in walls for face in _faces(frame, wall)), *(_level(frame, flat) for flat in flats)])


def below(body: Body, frame: Axes, height: float) -> Any:
    """What of a body lies below a height of the frame (mm)."""
    corners = body.box.reshape(2, 3)
    reach = float(np.linalg.norm(corners - frame.origin, axis=1).max() + np.linalg.norm(corners[1] - corners[0]))
    places = [(-reach, -reach), (reach, -reach), (reach, reach), (-reach, reach)]
    square = [(a, b, 0.0) for a, b in zip(places, [*places[1:], places[0]], strict=True)]
    return without(body.shape, column(frame, Column(height, max(reach, height + 1.0), square, square)))


def inlaid(
    body: Body, tops: Sequence[int], frame: Axes, mouths: Sequence[Flat], walls: Sequence[Wall], flats: Sequence[Flat]
) -> Any:
    """The solid whose level faces ``tops`` have openings, the ``mouths``, that walls and other level faces close.

    Raises
    ------
    NotCut : they do not close
    """
    land = [body.faces[i] for i in tops]
    for mouth in mouths:
        land = [face for one in land for face in each_of(without(one, _level(frame, mouth)), TopAbs_FACE)]
    rest = [face for i, face in enumerate(body.faces) if i not in set(tops)]
    new = [*(face for wall in walls for face in _faces(frame, wall)), *(_level(frame, flat) for flat in flats)]
    return _sewn([*rest, *land, *new])


def _sewn(faces: Sequence[Any]) -> Any:
    sewing = BRepBuilderAPI_Sewing(SEWN)
    for face in faces:
        sewing.Add(face)
    sewing.Perform()
    shells = list(each_of(sewing.SewedShape(), TopAbs_SHELL))
    if len(shells) != 1 or sewing.NbFreeEdges():
        raise NotCut(say("propose.cut.walls"))
    solid = TopoDS_Solid()
    builder = BRep_Builder()
    builder.MakeSolid(solid)
    builder.Add(solid, TopoDS.Shell_s(shells[0]))
    BRepLib.OrientClosedSolid_s(solid)
    if not BRepCheck_Analyzer(solid).IsValid():
        raise NotCut(say("propose.cut.body"))
    return solid


def _level(frame: Axes, flat: Flat) -> Any:
    plane = gp_Pln(frame.point((0.0, 0.0), flat.height), gp_Dir(*map(float, frame.axes[2])))
    maker = BRepBuilderAPI_MakeFace(plane, wire(frame, flat.outline, flat.height), True)
    for hole in flat.holes:
        turned = [(end, start, -bulge) for start, end, bulge in reversed(hole)]
        maker.Add(wire(frame, turned, flat.height))
    return maker.Face()


def _faces(frame: Axes, wall: Wall) -> Iterator[Any]:
    for low, high in zip(wall.line_low, wall.line_high, strict=True):
        if low[2] == 0.0:
            corners = [
                frame.point(low[0], wall.low), frame.point(low[1], wall.low),
                frame.point(high[1], wall.high), frame.point(high[0], wall.high),
            ]  # fmt: skip
            yield BRepBuilderAPI_MakeFace(BRepBuilderAPI_MakePolygon(*corners, True).Wire(), True).Face()
            continue
        centre, radius, start, sweep = arc(low)
        _, radius_high, _, _ = arc(high)
        place = gp_Ax3(
            frame.point(centre, wall.low), gp_Dir(*map(float, frame.axes[2])), gp_Dir(*map(float, frame.axes[0]))
        )
        tall, grows = wall.high - wall.low, radius_high - radius
        if abs(grows) < SEWN / 10.0:
            surface: Any = Geom_CylindricalSurface(place, radius)
            length = tall
        else:
            surface = Geom_ConicalSurface(place, math.atan2(grows, tall), radius)
            length = math.hypot(grows, tall)
        a, b = sorted((start, start + sweep))
        yield BRepBuilderAPI_MakeFace(surface, a, b, 0.0, length, 1e-7).Face()


def arc(piece: tuple[tuple[float, float], tuple[float, float], float]) -> tuple[np.ndarray, float, float, float]:
    """Centre (2,), radius, angle of the start and sweep (radians, + counter-clockwise) of a piece with a bulge.

    Notes
    -----
    Bulge b = tan(sweep / 4); half the chord is r sin(sweep / 2).
    """
    start, end, sweep = np.asarray(piece[0]), np.asarray(piece[1]), 4.0 * math.atan(piece[2])
    chord = end - start
    left = np.array([-chord[1], chord[0]])
    centre = (start + end) / 2.0 + left / (2.0 * math.tan(sweep / 2.0))
    away = start - centre
    return centre, float(np.hypot(*away)), math.atan2(away[1], away[0]), sweep
