"""Shells whose walls overlap, ridges that are none, and parts that close nothing (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from ..hard.truth import motion
from ..ops import box, cut, fuse
from ..section import chain
from ..solid import swept_solid
from .laps import STEPPED
from .ribs import RIB
from .seen import BLOCK
from .shapes import LARGE, MEDIUM, lid, open_box, plate
from .truth import JointCase, case, named
from .walls import PLAIN

TURNED = motion((40, -15, 25), (6, 2, -7))


def overlapping_shells() -> JointCase:
    """A wall of 2.1 mm stands on the rim of a lid, in front of the lid's own wall: 2.1 mm thick, 7.5 mm high, no play.

    Outside the lid falls off at 57 degrees from the rim's edge: nowhere is it a flat cover beside the wall.
    """
    base = open_box(BLOCK, [(-2.1, 0), (0, 0)], depth=18)
    under = [(-7, 3.6), (-4.2, 0.5), (-4.2, -6), (-3.5, -7.5), (-2.1, -7.5), (-2.1, 0), (0, 0), (-3.5, 5.4), (-9, 5.4)]
    cover = swept_solid(BLOCK, chain([(*at, 0) for at in under]))
    return case([base, cover], STEPPED, note="A wall in front of the lid's own wall.", turn=TURNED)


def tight_skirt() -> JointCase:
    """A flat lid on a wall of 2 mm, with a skirt inside, 1.3 mm thick and 3 mm high, without play: it only centres."""
    base = open_box(MEDIUM, [(-2, 0), (0, 0)])
    cover = lid(MEDIUM, [(-3.3, 0), (-3.3, -3), (-2, -3), (-2, 0), (0, 0)], 2)
    return case([base, cover], PLAIN, note="A plain wall under a lid with a tight skirt.")


def half_shells_open() -> JointCase:
    """Two shells, 22 and 11 mm high, wall of 2 mm, stepped half in half and drawn 0.015 mm apart; an opening of 19 mm
    cuts both walls. Light would pass 11 mm and more."""
    base = open_box(MEDIUM, [(-2, 1.5), (-1, 1.5), (-1, 0), (0, 0)], depth=22)
    cover = lid(MEDIUM, [(-2, 9), (-2, 1.515), (-0.985, 1.515), (-0.985, 0.015), (0, 0.015)], 11)
    opening = box((24, -9.5, -6), (32, 9.5, 6))
    joint = replace(STEPPED, closed=False, either=True, may=None)
    more = {"reasons": ("ambiguous", "no-seam"), "says": (r"stepped|\blap\b", r"of plastic")}
    return case([cut(base, opening), cut(cover, opening)], joint, note="Half shells with an opening.", **more)


def shells_with_a_tongue() -> JointCase:
    """Two flat shells of one thickness: outside they lie on each other, 1.0 mm wide; behind it a tongue of the lower
    one, 1.3 high, stands in a step of the upper one, 1.4 deep, 0.1 mm play. An opening of 9 mm cuts both."""
    low = [(-1.75, -2), (-1.75, 1.3), (-1.1, 1.3), (-1.1, 0), (0, 0), (-1.2, -3.2), (-4, -3.2)]
    high = [(-1.85, 2.2), (-1.85, 1.4), (-1.0, 1.4), (-1.0, 0), (0, 0), (-1.2, 3.2), (-4, 3.2)]
    opening = box((26, -4.5, -1.5), (32, 4.5, 1.8))
    shells = [cut(swept_solid(MEDIUM, chain([(*at, 0) for at in under])), opening) for under in (low, high)]
    joint = replace(STEPPED, closed=False, either=True, may=None)
    says = (r"stepped lap", r"tongue", r"seated", r"interrupted over 9\.\d", r"which of them is the cover")
    return case(shells, joint, note="Two like shells with a tongue.", reasons=("ambiguous",), says=says, turn=TURNED)


def leaning_wall() -> JointCase:
    """A wall of 1.8 mm, upright inside, that leans by 21 degrees outside, under a flat lid; an opening of 16 mm cuts
    one side: what the flanks have in common is no direction of pull, the seam is level."""
    section = [(-6, -8), (-1.8, -8), (-1.8, 0), (0, 0), (3.8, -9.9), (-6, -9.9)]
    base = cut(swept_solid(BLOCK, chain([(*at, 0) for at in section])), box((32, -20, -6), (50, -4, 1)))
    joint = replace(PLAIN, closed=False, may=None)
    return case([base, plate(BLOCK, 0, 0, 2)], joint, note="A wall that leans outside.", turn=TURNED)


def broad_rib() -> JointCase:
    """A rib 3 mm wide and 1 mm high on a rim of 9 mm: too wide, but a rib."""
    base = open_box(LARGE, [(-9, -1), (-6, -1), (-6, 0), (-3, 0), (-3, -1), (0, -1)])
    joint = replace(RIB, must=("rib-width",), may=None)
    return case([base, plate(LARGE, 0, 0, 2)], joint, note="A rib of 3 mm.", order=(1, 0))


def shaded_by_a_bezel() -> JointCase:
    """A rib 1.2 x 0.9 mm on the wall of a box 10 mm deep; a bezel 15 mm above the cover of 2 mm covers the whole seam.
    From below light is free, but would have to pass 10 mm: the cover is still the thin part."""
    base = open_box(MEDIUM, [(-4, -0.9), (-2.6, -0.9), (-2.6, 0), (-1.4, 0), (-1.4, -0.9), (0, -0.9)], depth=10)
    bezel = cut(plate(MEDIUM, 3, 17, 19), plate(MEDIUM, -5, 16, 20))
    joint = replace(RIB, must=("beam-path",), may=("clamp-land", "cover-thickness"))
    return case(
        [base, plate(MEDIUM, 2, 0, 2), bezel], joint, note="A bezel far above in the beam path.", order=(2, 0, 1)
    )


def board_below_a_plate() -> JointCase:
    """A board lies on a ledge of 0.9 mm in a case that is open at a plug; a plate of 4 mm, 0.2 mm inside the wall, lies
    over it in the case's open end: the ledge holds the board, and the plate has no land."""
    base = cut(open_box(MEDIUM, [(-2.9, 0), (-2, 0), (-2, 5.5), (0, 5.5)], depth=14), box((24, -6, -6), (31, 6, 6)))
    parts = [base, plate(MEDIUM, -2, 0, 1.5), plate(MEDIUM, -2.2, 1.5, 5.5)]
    says = (r"\bplay\b|\bplug|\bsides?\b|blocked",)
    return case(parts, note="A board on a ledge, below a plate.", reasons=("no-seam",), says=says, turn=TURNED)


def drawer_in_a_sleeve() -> JointCase:
    """A drawer, open behind, slides 74 mm deep into a sleeve of 30 x 44 x 78 mm, 0.1 mm play: its rim, 1.8 mm wide,
    touches the sleeve's end of 3.6 mm. It is held at its sides; what closes the rim is 2.6 times as deep as wide."""
    sleeve = cut(box((-15, -22, 0), (15, 22, 78)), box((-13, -20, -1), (13, 20, 74.4)))
    drawer = cut(box((-12.9, -19.9, -6), (12.9, 19.9, 74.4)), box((-11.1, -18.1, -4.2), (11.1, 18.1, 78)))
    return case([sleeve, drawer], note="A drawer in a sleeve.", reasons=("no-seam", "ambiguous"), turn=TURNED)


def strips_below_a_display() -> JointCase:
    """A frame of 54 x 26 mm with strips of 8, 3 and 2 mm width, 2.1 mm high, along three sides, 0.35 mm below a board:
    nothing touches, and no strip is a rib."""
    frame = fuse(
        box((-27, -13, -5.3), (27, 13, -2.1)), box((-25, -13, -2.2), (25, -5, 0)), box((-25, 10, -2.2), (3, 13, 0)),
        box((25, -13, -2.2), (27, 13, 0)),
    )  # fmt: skip
    board = box((-28, -13, 0.35), (34, 13, 1.55))
    says = (r"not seated|\bplay\b|apart",)
    return case([board, frame], note="A board above the strips of a frame.", reasons=("no-seam",), says=says)


def corners_on_a_tray() -> JointCase:
    """A tray of 80 x 60 with a cap on each of its four corners: no lid."""
    tray = cut(box((-40, -30, 0), (40, 30, 13)), box((-38, -28, 2), (38, 28, 14)))
    caps = []
    for x in (-1, 1):
        for y in (-1, 1):
            outer = sorted((x * 32.0, x * 42.0)), sorted((y * 22.0, y * 32.0))
            cap = box((outer[0][0], outer[1][0], 3), (outer[0][1], outer[1][1], 10))
            caps.append(cut(cap, box((-40, -30, 0), (40, 30, 14))))
    says = (r"no lid", r"part 2", r"outline")
    return case([tray, *caps], note="A tray with capped corners.", reasons=("no-seam",), says=says)


SHELLS: dict[str, Callable[[], JointCase]] = named(
    overlapping_shells,
    tight_skirt,
    half_shells_open,
    shells_with_a_tongue,
    leaning_wall,
    broad_rib,
    shaded_by_a_bezel,
    board_below_a_plate,
    drawer_in_a_sleeve,
    strips_below_a_display,
    corners_on_a_tray,
)
