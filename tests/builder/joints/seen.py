"""Housings as strangers draw them, each with what once misled recognition (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from ..hard.truth import motion
from ..ops import box, cut, cylinder, fuse
from ..track import rounded_rectangle
from .company import NONE
from .shapes import MEDIUM, lid, open_box, plate
from .truth import JointCase, JointTruth, case, named
from .walls import FLAT, PLAIN

TURNED = motion((10, 25, -35), (8, -3, 6))
BLOCK = rounded_rectangle(80, 66, 14)


def frame_as_a_lid() -> JointCase:
    """A frame of 3 mm, 8 mm wide, lies as the lid on a wall top of 7 mm; a board lies loose on the floor."""
    base, board = open_box(BLOCK, [(-7, 0), (0, 0)], depth=15), plate(BLOCK, -8, -13, -11.4)
    frame = cut(plate(BLOCK, 0, 0, 3), plate(BLOCK, -8, -1, 4))
    joint = replace(FLAT, cover=2, base=0)
    return case([base, board, frame], joint, note="A frame as a lid, with a board below.", order=(1, 0, 2))


def block_under_a_plate() -> JointCase:
    """A block of 19 mm with walls of 11 mm and a floor of 1 mm under a plate of 1 mm, a board between the walls."""
    base = open_box(BLOCK, [(-11, 0), (0, 0)], depth=19, floor=1)
    parts = [base, plate(BLOCK, 0, 0, 1), plate(BLOCK, -11.2, -10, -8.4)]
    return case(parts, FLAT, note="A thick block with a thin floor under a plate.", turn=motion((0, 30, 60), (3, 2, 1)))


def inlaid_ring() -> JointCase:
    """A clear ring, 20 to 23.5 mm in radius and 1.5 high, moulded into a dome: the dome lies below it and over its
    inner 2 mm."""
    dome = fuse(cylinder((0, 0, -12), 24, 12), cylinder((0, 0, -1), 20, 2.5), cylinder((0, 0, 1.5), 22, 1.5))
    dome = cut(dome, cylinder((0, 0, -13), 18, 14))
    ring = cut(cylinder((0, 0, 0), 23.5, 1.5), cylinder((0, 0, -1), 20, 4))
    return case([dome, ring], note="A ring inlaid in a dome.", reasons=("no-seam", "ambiguous"))


def board_in_a_holder() -> JointCase:
    """A board of 30 x 20 x 1.5 in a holder: it lies on a ridge 1.5 wide and 1.2 high along three of its sides, between
    hooks that rise beside it."""
    holder = cut(
        box((-18, -13, -4), (18, 13, 0)), box((-13, -8, -1.2), (13, 8, 1)), box((-20, -14, -1.2), (-14.5, 14, 1))
    )
    for y in (-11.4, 10.2):
        holder = fuse(holder, box((-4, y, -0.5), (4, y + 1.2, 3)))
    board = box((-15, -10, 0), (15, 10, 1.5))
    return case([holder, board], note="A board on a ridge of its holder.", **NONE)


def nose_of_a_snap() -> JointCase:
    """A cap held by a nose of 2.4 x 18 mm, 1 mm high, 0.3 mm from its counterpart; wall on wall 8 mm deep besides."""
    shell = cut(box((0, -11, 0), (40, 11, 12)), box((-1, -9.5, 1.5), (38, 9.5, 10.5)))
    cap = fuse(box((-8, -11, 0), (0, 11, 12)), box((-1, -9.2, 8.7), (6, 9.2, 9.2)), box((2, -9, 9.0), (4.4, 9, 10.2)))
    return case([shell, cap], note="A cap with a snap nose.", reasons=("no-seam", "ambiguous"))


def base_half_as_long() -> JointCase:
    """A lid of 100 mm on a tray of 70 mm that is open at its end: two long walls and one short one of 2 mm."""
    tray = cut(box((0, -28, -12), (70, 28, 0)), box((2, -26, -10), (71, 26, 1)))
    cover = fuse(
        box((0, -28, 0), (100, 28, 2)), cut(box((2.5, -25.5, -1), (99, 25.5, 0)), box((3.5, -24.5, -2), (98, 24.5, 1)))
    )
    joint = replace(PLAIN, closed=False, may=("seam-open", "clamp-land", "trap-room"))
    return case([tray, cover], joint, note="A tray that ends under its lid.", reasons=("no-seam",))


def stepped_apart() -> JointCase:
    """A stepped lap drawn 0.2 mm apart: a wall 1 mm wide and 1.8 high behind the lid's skirt, 0.25 mm play."""
    base = open_box(MEDIUM, [(-2.25, 0), (-1.25, 0), (-1.25, -1.8), (0, -1.8)], depth=6)
    cover = lid(MEDIUM, [(-1.0, 0.2), (-1.0, -1.4), (0, -1.4)], 3)
    says = (r"not seated|\bplay\b|0\.[24]0|equally",)
    return case([base, cover], note="A stepped lap, drawn apart.", reasons=("no-seam", "ambiguous"), says=says)


def plate_over_an_opening() -> JointCase:
    """A plate of 1.5 mm on a wall top of 9 mm that is lowered over 24 mm for a plug: a lap, open there."""
    base = cut(open_box(BLOCK, [(-9, 0), (0, 0)], depth=13), box((28, -12, -7), (45, 12, 1)))
    joint = replace(FLAT, closed=False, may=("seam-open",))
    return case([base, plate(BLOCK, 0, 0, 1.5)], joint, note="A wall top lowered for a plug.", order=(1, 0))


def post_in_the_corner() -> JointCase:
    """A plate held by a screw post only: it lies on a post of 4 mm radius in a tray, 1 mm inside its walls."""
    tray = fuse(open_box(MEDIUM, [(-2, 0), (0, 0)], depth=10), cylinder((0, 0, -9), 4, 7))
    return case([tray, plate(MEDIUM, -3, -2, -0.5)], note="A plate on one post.", **NONE)


def land_with_tabs() -> JointCase:
    """A lid on a wall top of 4 mm, open for a cable over 6 mm; four tabs of the case, 8 mm wide, stick out from under
    the lid in the plane of the wall top."""
    base = open_box(MEDIUM, [(-4, 0), (0, 0)], depth=10)
    for x in (-14, 6):
        base = fuse(base, box((x, 19, -3), (x + 8, 28, 0)), box((x, -28, -3), (x + 8, -19, 0)))
    base = cut(base, box((24, -3, -6), (31, 3, 1)))
    joint = replace(FLAT, closed=False, may=("seam-open",))
    return case([base, plate(MEDIUM, 0, 0, 2)], joint, note="Tabs beside a lid, level with the land.", turn=TURNED)


def ring_broken_by_screws() -> JointCase:
    """Twelve screw holes of 3 mm break a wall top of 2.4 mm into twelve pieces; the lid has them too."""
    base, cover = open_box(BLOCK, [(-2.4, 0), (0, 0)], depth=12), plate(BLOCK, 0, 0, 2)
    places = [(x, y) for x in (-24, 0, 24) for y in (-31.8, 31.8)]
    places += [(x, y) for x in (-38.8, 38.8) for y in (-18, 0, 18)]
    for x, y in places:
        hole = cylinder((x, y, -9), 1.5, 12)
        base, cover = cut(base, hole), cut(cover, hole)
    joint = replace(PLAIN, closed=False, must=("seam-open",), may=("clamp-land", "trap-room", "cover-hole"))
    return case([base, cover], joint, note="Screw holes wider than the wall top break the ring.")


def ring_between_posts() -> JointCase:
    """Fourteen posts of 5 mm with holes of 2 mm stand in a wall top of 1.6 mm: the band is wide at every post."""
    base, cover = open_box(BLOCK, [(-1.6, 0), (0, 0)], depth=12), plate(BLOCK, 0, 0, 2)
    places = [(x, y) for x in (-24, -8, 8, 24) for y in (-30.5, 30.5)]
    places += [(x, y) for x in (-37.5, 37.5) for y in (-14, 0, 14)]
    for x, y in places:
        base = fuse(base, cylinder((x, y, -11), 2.5, 11))
    for x, y in places:
        base, cover = cut(base, cylinder((x, y, -9), 1, 10)), cut(cover, cylinder((x, y, -1), 1, 4))
    joint = JointTruth(("plain-wall", "flat-lap"), may=None)
    return case([base, cover], joint, note="Screw posts all along a thin wall.")


def lid_on_a_broad_plate() -> JointCase:
    """A lid of 48 x 38 x 2 mm lies on a block of 100 x 80 round a pocket of 40 x 30: a lap of 4 mm amid both faces."""
    block = cut(box((-50, -40, -14), (50, 40, 0)), box((-20, -15, -12), (20, 15, 1)))
    parts = [block, box((-24, -19, 0), (24, 19, 2))]
    says = (r"amid faces",)
    return case(parts, FLAT, note="A lid amid a broad face.", order=(1, 0), reasons=("no-seam",), says=says)


def lid_hooked_on_a_plate() -> JointCase:
    """The same lid 10 mm aside, so that it covers three sides of the pocket only: no closed line."""
    block = cut(box((-50, -40, -14), (50, 40, 0)), box((-20, -15, -12), (20, 15, 1)))
    return case([block, box((-14, -19, 0), (34, 19, 2))], note="A lid aside of its pocket.", reasons=("no-seam",))


SEEN: dict[str, Callable[[], JointCase]] = named(
    frame_as_a_lid,
    block_under_a_plate,
    inlaid_ring,
    board_in_a_holder,
    nose_of_a_snap,
    base_half_as_long,
    stepped_apart,
    plate_over_an_opening,
    land_with_tabs,
    ring_broken_by_screws,
    ring_between_posts,
    lid_on_a_broad_plate,
    lid_hooked_on_a_plate,
    post_in_the_corner,
)
