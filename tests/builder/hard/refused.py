"""Models that can't be reviewed, with the reason codes that are right answers (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakeSphere
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt

from ..ops import box, compound, cut, cylinder, faces
from ..pair import CLEAR, DARK, draw
from ..section import chain
from ..solid import swept_solid, vertex
from ..spec import Spec
from ..topology import scaled, sheet
from ..track import rounded_rectangle
from .clutter import assembly, pair
from .truth import HardModel, Node, motion, moved_by

SPEC = Spec(track=rounded_rectangle(70, 50, 8))


def _refused(*nodes: Node, reasons: tuple[str, ...], note: str, **more: Any) -> HardModel:
    return HardModel(assembly(*nodes), (), reasons, note, **more)


def one_part() -> HardModel:
    _, base = pair(SPEC)
    return _refused(base, reasons=("single-part",), note="A base without its cover.")


def one_part_and_a_sheet() -> HardModel:
    _, base = pair(SPEC)
    flat = Node("cover sketch", sheet((-30, -20), (30, 20), 0.0))
    return _refused(base, flat, reasons=("single-part", "no-solid"), note="The cover is only a surface.")


def cover_far_above() -> HardModel:
    cover, base = pair(SPEC)
    root = Node("weather station", None, ((base, np.eye(4)), (cover, moved_by(z=12))))
    return HardModel(root, (), ("no-contact",), "An exploded view: the cover is drawn 12 mm above.")


def cover_beside() -> HardModel:
    cover, base = pair(SPEC)
    root = Node("weather station", None, ((base, np.eye(4)), (cover, moved_by(x=150))))
    return HardModel(root, (), ("no-contact",), "The parts lie side by side.")


def only_sheets() -> HardModel:
    cover, base = draw(SPEC)
    nodes = [Node(name, compound(list(faces(shape)))) for name, shape in (("lid", cover), ("case", base))]
    return _refused(*nodes, reasons=("no-solid",), note="Cover and base are loose faces.")


def only_points() -> HardModel:
    points = Node("points", compound([vertex((i, i, 0)) for i in range(5)]))
    return _refused(points, reasons=("empty", "no-solid"), note="Points and nothing else.")


def blocks_face_to_face() -> HardModel:
    """Two blocks that share a broad face: nothing narrow, nothing that runs round anything."""
    a, b = Node("block", box((0, 0, 0), (60, 40, 20))), Node("block", box((0, 0, 20), (60, 40, 45)))
    return _refused(a, b, reasons=("no-seam",), note="Broad contact that is no seam.")


def ball_in_a_cup() -> HardModel:
    ball = BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, 12), 10.0).Shape()
    cup = cut(cylinder((0, 0, 0), 14, 12), BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, 12), 10.0).Shape())
    return _refused(
        Node("ball", ball), Node("cup", cup), reasons=("no-seam", "unsupported"), note="Contact in a hollow."
    )


def tube_in_a_socket() -> HardModel:
    """A seam round a cylinder: a tube pushed into a socket, the light would have to come from all sides."""
    tube = cut(cylinder((0, 0, 0), 10, 60), cylinder((0, 0, -1), 8, 62))
    socket = cut(cylinder((0, 0, -20), 12, 35), cylinder((0, 0, -21), 8, 40), cylinder((0, 0, 0), 10, 40))
    return _refused(
        Node("tube", tube),
        Node("socket", socket),
        reasons=("unsupported", "no-seam"),
        note="The contact lies on a cylinder; no single direction of light reaches it.",
    )


def screws_in_a_plate() -> HardModel:
    plate = box((-40, -30, 0), (40, 30, 4))
    screws = []
    for x, y in ((-30, -20), (30, -20), (30, 20), (-30, 20)):
        plate = cut(plate, cylinder((x, y, -1), 2.0, 6))
        screws.append(Node("screw", cylinder((x, y, -6), 2.0, 12)))
    return _refused(
        Node("plate", plate),
        *screws,
        reasons=("no-seam", "no-contact", "unsupported"),
        note="Contact only on the bores of screws.",
    )


def pipes_that_cross() -> HardModel:
    a = cylinder((0, 0, 0), 4, 60)
    b = BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(8, -30, 30), gp_Dir(0, 1, 0)), 4, 60).Shape()
    return _refused(
        Node("pipe", a), Node("pipe", b), reasons=("no-seam", "no-contact"), note="Two bodies that touch in a point."
    )


def housing_of_forty_metres() -> HardModel:
    cover, base = (scaled(s, 1000.0 / 3) for s in draw(SPEC))
    return _refused(
        Node("lid", cover),
        Node("housing", base),
        reasons=("scale-suspect",),
        note="Drawn in metres, said to be millimetres times 333: a housing of 25 m.",
    )


def housing_of_a_tenth_of_a_millimetre() -> HardModel:
    cover, base = (scaled(s, 0.001) for s in draw(SPEC))
    return _refused(
        Node("lid", cover),
        Node("housing", base),
        reasons=("scale-suspect",),
        note="Millimetres taken for metres the wrong way: a housing of 0.07 mm.",
    )


def light_from_either_side() -> HardModel:
    """Two equal dishes, rim on rim, one with a rib: by geometry either could be the cover."""
    spec = Spec(
        track=SPEC.track,
        wall_height=3.4,
        floor_thickness=2.0,
        inner="open",
        outer="open",
        trap_width_inner=1.0,
        trap_width_outer=1.0,
        draft_inner=0,
        draft_outer=0,
    )
    _, lower = draw(spec)
    outer = spec.wall_face("outer")
    inner = -spec.wall_face("inner")
    upper = swept_solid(spec.track, chain([(inner, 1.4, 0), (inner, 0, 0), (outer, 0, 0), (outer, 3.4, 0)]))
    return _refused(
        Node("shell A", upper),
        Node("shell B", lower),
        reasons=("ambiguous", "no-seam"),
        note="Two thin shells, alike on both sides; which one the light passes can't be known.",
    )


def upside_down_twins() -> HardModel:
    """Two plain equal plates on each other."""
    low, high = box((-40, -30, -2), (40, 30, 0)), box((-40, -30, 0), (40, 30, 2))
    model = _refused(
        Node("plate", low), Node("plate", high), reasons=("no-seam", "ambiguous"), note="Two equal plates face to face."
    )
    return model.turned(motion((90, 0, 0), (0, 0, 0)))


__all__ = ["CLEAR", "DARK", "REFUSED"]

REFUSED: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        one_part,
        one_part_and_a_sheet,
        cover_far_above,
        cover_beside,
        only_sheets,
        only_points,
        blocks_face_to_face,
        ball_in_a_cup,
        tube_in_a_socket,
        screws_in_a_plate,
        pipes_that_cross,
        housing_of_forty_metres,
        housing_of_a_tenth_of_a_millimetre,
        light_from_either_side,
        upside_down_twins,
    )
}
