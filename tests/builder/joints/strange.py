"""Joints in less common shapes: hoods, frames in between, lenses from inside, rings and feet (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import motion, moved_by
from ..ops import box, cut, cylinder, fuse
from ..pair import draw
from ..solid import moved
from ..track import rounded_rectangle
from .company import NONE
from .laps import LEDGE
from .ribs import RIB, SPEC
from .shapes import LARGE, MEDIUM, lid, open_box, plate, wall
from .truth import JointCase, case, named
from .walls import PLAIN

TURNED = motion((0, 65, 20), (4, 5, 6))
TRACK = rounded_rectangle(60, 40, 10)
WIDE = replace(SPEC, track=TRACK)


def hood_on_a_rib() -> JointCase:
    """The cover is a hood 27 mm high with a flange of 2 mm over the rib: thick as a whole, thin over the seam."""
    _, base = draw(WIDE)
    return case([base, _flanged_hood()], RIB, note="A deep hood with a thin flange.", order=(1, 0))


def _flanged_hood(rise: float = 25.0, thick: float = 2.0) -> Any:
    """Hollow, open below: wall 2 mm from the offset -6 inward, roof 2 mm, a flange outward to the cover's edge."""
    roof = plate(TRACK, -6, 0, rise + 2)
    flange = plate(TRACK, WIDE.cover_edge, 0, thick)
    return cut(fuse(roof, flange), plate(TRACK, -8, -1, rise + 1))


def rib_on_a_plate_under_a_hood() -> JointCase:
    """A flat base plate carries the rib, the hood's flange lies on it: light could come from either side."""
    floor = plate(TRACK, 4, -3, -0.9)
    base = fuse(floor, wall(TRACK, -0.6, 0.6, -1.2, 0))
    joint = replace(RIB, either=True, may=("clamp-land",))
    return case(
        [base, _flanged_hood()], joint, note="A plate with a rib under a hood.", reasons=("ambiguous",), turn=TURNED
    )


def rib_of_a_recessed_cover() -> JointCase:
    """The rib hangs from the cover, 1.2 x 0.9, onto a ledge of 4 mm inside a wall that rises beside it."""
    base = open_box(LARGE, [(-6, 0), (-2, 0), (-2, 3), (0, 3)])
    cover = lid(LARGE, [(-5, 0.9), (-4.6, 0.9), (-4.6, 0), (-3.4, 0), (-3.4, 0.9), (-2.2, 0.9)], 2.9)
    joint = replace(RIB, may=("clamp-land",))
    return case([base, cover], joint, note="A rib on a recessed cover.", order=(1, 0))


def low_rib() -> JointCase:
    """A rib 1.0 mm wide and 0.3 mm high on a rim of 5 mm: lower than the planned collapse, but a rib."""
    base = open_box(MEDIUM, [(-5, -0.3), (-3, -0.3), (-3, 0), (-2, 0), (-2, -0.3), (0, -0.3)])
    return case([base, plate(MEDIUM, 0, 0, 2)], replace(RIB, may=None), note="A rib of 0.3 mm.")


def frame_between() -> JointCase:
    """Base, frame, lid: the lid is welded onto the frame's rib; the frame stands flat on the base's wall of 3 mm.

    Light to the lower joint would have to pass 12 mm of the frame's wall: only the upper one can be welded.
    """
    cover, whole = draw(WIDE)
    frame = cut(whole, plate(TRACK, -WIDE.wall_face("inner"), -15, -8))
    frame = cut(frame, box((-99, -99, -99), (99, 99, -12)))
    edge = WIDE.wall_face("outer")
    base = open_box(TRACK, [(edge - 3, 0), (edge, 0)], depth=15)
    base = moved(base, moved_by(z=-12))
    joint = replace(RIB, cover=1, base=0)
    return case([frame, cover, base], joint, note="A frame between lid and base.")


def channel_over_a_wall() -> JointCase:
    """A lid whose channel, 2.3 mm wide and 1.5 deep, takes in the top of a plain wall of 2 mm and sits on it."""
    base = open_box(MEDIUM, [(-3, 0), (-1, 0)])
    cover = lid(MEDIUM, [(-4.5, -1.5), (-3.15, -1.5), (-3.15, 0), (-0.85, 0), (-0.85, -1.5), (0, -1.5)], 2)
    joint = replace(PLAIN, kinds=("plain-wall", "tongue-groove"), may=(*PLAIN.may, "rib-missing", "sink-travel"))
    return case([base, cover], joint, note="A wall's top in a channel of the lid.", turn=TURNED)


def lens_from_inside() -> JointCase:
    """A glass of 1.5 mm lies from inside on a bezel's rim of 1.5 mm, 1.2 mm wide: light could come from either side."""
    shell = cut(plate(MEDIUM, 0, 0, 12), plate(MEDIUM, -2, 1.5, 13), plate(MEDIUM, -3.3, -1, 3))
    joint = replace(LEDGE, either=True)
    parts = [shell, plate(MEDIUM, -2.1, 1.5, 3)]
    return case(parts, joint, note="A glass on a bezel's rim, from inside.", order=(1, 0), reasons=("ambiguous",))


def bearing_in_a_bore() -> JointCase:
    """A ring of 22 x 8 x 7 mm lies on a ledge of 1 mm in the bore of a plate: it closes nothing."""
    block = cut(box((-20, -20, 0), (20, 20, 10)), cylinder((0, 0, 3), 11.02, 9), cylinder((0, 0, -1), 10, 9))
    ring = cut(cylinder((0, 0, 3), 11, 7), cylinder((0, 0, 0), 4, 12))
    return case([block, ring], note="A bearing on its ledge.", **NONE)


def bearing_on_a_shaft() -> JointCase:
    """The same with a shaft of 8 mm through the ring, and a motor's flange on the block below: it closes nothing."""
    block = cut(box((-20, -20, 0), (20, 20, 10)), cylinder((0, 0, 3), 11.02, 9), cylinder((0, 0, -1), 10, 9))
    ring = cut(cylinder((0, 0, 3), 11, 7), cylinder((0, 0, 0), 4, 12))
    motor = fuse(box((-18, -18, -20), (18, 18, 0)), cylinder((0, 0, -1), 3.98, 26))
    return case([block, ring, motor], note="A bearing with its shaft.", **NONE)


def ring_on_a_tube() -> JointCase:
    """A ring of 2 mm, 44 / 40 mm across, lies on the end of a tube as wide and 30 mm long: it closes nothing."""
    tube = cut(cylinder((0, 0, -30), 22, 30), cylinder((0, 0, -31), 20, 32))
    ring = cut(cylinder((0, 0, 0), 22, 2), cylinder((0, 0, -1), 20, 4))
    return case([tube, ring], note="A ring on the end of a tube.", **NONE)


def rubber_feet() -> JointCase:
    """Four feet of 8 mm under a closed box: discs that cover nothing."""
    body = cut(box((-40, -30, 0), (40, 30, 20)), box((-38, -28, 2), (38, 28, 18)))
    feet = [cylinder((x, y, -3), 4, 3) for x in (-32, 32) for y in (-22, 22)]
    return case([body, *feet], note="NearestPoints under a box.", says=(r"broad|wide|lies|rests|contact",), **NONE)


def lid_open_on_its_hinge() -> JointCase:
    """A lid of 2 mm stands upright on its hinge beside the box's knuckle, 0.2 mm from it."""
    body = fuse(open_box(MEDIUM, [(-2, 0), (0, 0)]), box((30, -8, -6), (36, 8, 0)))
    leaf = fuse(box((33, -18, 1), (35, 18, 55)), box((33, 8.2, -6), (35, 16, 1.1)))
    return case([body, leaf], note="A lid that stands open.", reasons=("no-seam", "no-contact"))


def half_covered() -> JointCase:
    """A cap on half of a tray, seated on three walls of 2 mm: an open seam of three sides."""
    base = open_box(MEDIUM, [(-2, 0), (0, 0)])
    cap = cut(plate(MEDIUM, 0, 0, 2), box((0, -30, -1), (40, 30, 4)))
    joint = replace(PLAIN, closed=False, may=("seam-open", "clamp-land", "trap-room"))
    return case([base, cap], joint, note="A cap on half of a tray.", reasons=("no-seam",))


def plate_on_two_rails() -> JointCase:
    """A plate of 1.6 mm on two rails, 4 x 80 mm, with screw holes of 3 mm; front and back stand open. A board hangs
    between the rails, 0.5 mm beside them and 3 mm below the plate."""
    base = fuse(
        box((-30, -40, -14), (30, 40, -12)), box((-30, -40, -12), (-26, 40, 0)), box((26, -40, -12), (30, 40, 0))
    )
    cover = box((-30, -40, 0), (30, 40, 1.6))
    for x in (-28, 28):
        for y in (-36, 36):
            base, cover = (cut(one, cylinder((x, y, -8), 1.5, 12)) for one in (base, cover))
    board = box((-25.5, -39, -4.6), (25.5, 39, -3))
    note = "A plate on two rails, open at front and back."
    return case([base, cover, board], note=note, reasons=("no-seam",), says=("strips", "p1", "p2"))


STRANGE: dict[str, Callable[[], JointCase]] = named(
    hood_on_a_rib,
    rib_on_a_plate_under_a_hood,
    rib_of_a_recessed_cover,
    low_rib,
    frame_between,
    channel_over_a_wall,
    lens_from_inside,
    bearing_in_a_bore,
    bearing_on_a_shaft,
    ring_on_a_tube,
    rubber_feet,
    lid_open_on_its_hinge,
    half_covered,
    plate_on_two_rails,
)
