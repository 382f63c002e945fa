"""Parts that are not in their assembled position (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import motion, moved_by
from ..ops import box, cut, cylinder, fuse
from ..solid import moved
from .laps import LEDGE
from .shapes import LARGE, MEDIUM, lid, open_box, plate
from .truth import JointCase, case, named
from .walls import PLAIN

APART = ("no-seam", "no-contact")
TURNED = motion((25, 10, -40), (10, 0, 5))
OVERLAP = (r"interpenetrat|run through|runs through|overlap|not assembled|printing",)


def _tray() -> Any:
    """A sharp box of 60 x 40 x 20, wall and floor 2 mm, its floor's underside at z = 0."""
    return cut(box((-30, -20, 0), (30, 20, 20)), box((-28, -18, 2), (28, 18, 21)))


def _printed(lid_low: tuple, lid_high: tuple, volume: float, **more: Any) -> JointCase:
    note = f"A lid in printing position runs through the base by {volume:g} mm3."
    parts = [_tray(), box(lid_low, lid_high)]
    return case(parts, note=note, reasons=("no-seam",), says=OVERLAP, volume=volume, **more)


def lid_with_skirt_through_the_base() -> JointCase:
    """A lid with a skirt of 1 x 3 mm lies upside down on the same plane, moved aside by 30 mm: skirt and plate
    run through floor and wall.

    Floor of the base (z 0..2) and plate of the lid (z 0..2) share 30 x 40 x 2 = 2 400 mm3. The lid's skirt is a frame
    of 50 x 30 outside and 48 x 28 inside, z 2..5; the base's wall x 28..30 crosses its two long sides (y 14..15):
    2 x 2 x 1 x 3 = 12 mm3.
    """
    skirt = cut(box((5, -15, 1.9), (55, 15, 5)), box((6, -14, 1), (54, 14, 9)))
    parts = [_tray(), fuse(box((0, -20, 0), (60, 20, 2)), skirt)]
    note = "A lid with a skirt, in printing position through the base."
    return case(parts, note=note, reasons=("no-seam",), says=OVERLAP, volume=2412.0, order=(1, 0))


def plate_across_the_walls() -> JointCase:
    """A plate of 1 x 200 mm stands upright across a box of 60 x 40 x 20 with walls of 2 mm and crosses the two short
    ones, 10 mm of their height, and nothing else: 2 x 2 x 1 x 10 = 40 mm3, 1 % of the plate's 4 000 mm3."""
    parts = [_tray(), box((-100, -0.5, 10), (100, 0.5, 30))]
    note = "A plate upright across the walls of a box."
    return case(parts, note=note, reasons=("no-seam",), says=OVERLAP, volume=40.0)


def rim_in_the_lid() -> JointCase:
    """The rim of a hood, 3 mm wide and 2.5 mm high inside, runs 0.4 mm into a flat bottom all round: as deep as a weld
    that is drawn finished, but it is no rib."""
    hood = cut(box((-30, -20, -0.4), (30, 20, 10)), box((-27, -17, -1), (27, 17, 2.1)))
    note = "A broad rim in a flat bottom."
    return case([hood, box((-30, -20, -3), (30, 20, 0))], note=note, reasons=("no-seam",), says=OVERLAP, volume=225.6)


def floating_over_a_wall() -> JointCase:
    """A flat lid 0.5 mm above a wall of 2 mm."""
    joint = replace(PLAIN, must=("contact-gap",))
    parts = [open_box(MEDIUM, [(-2, 0), (0, 0)]), plate(MEDIUM, 0, 0.5, 2.5)]
    return case(parts, joint, note="A lid 0.5 mm above its wall.", reasons=APART, says=(r"\b0\.50?\b",))


def floating_over_a_ledge() -> JointCase:
    """A lid 0.5 mm above its ledge of 1.2 mm, 0.2 mm inside the wall."""
    joint = replace(LEDGE, may=("contact-gap",))
    base = open_box(LARGE, [(-3.2, 0), (-2, 0), (-2, 2), (0, 2)])
    parts = [base, plate(LARGE, -2.2, 0.5, 2.5)]
    return case(parts, joint, note="A lid 0.5 mm above its ledge.", turn=TURNED, reasons=APART, says=(r"\b0\.50?\b",))


def hood_over_a_round_base() -> JointCase:
    """A round hood 20 mm high, 0.5 mm above the shoulder of its base, whose neck stands 1 mm inside of it."""
    neck = cut(cylinder((0, 0, 0), 20, 10), cylinder((0, 0, -1), 18, 12))
    base = fuse(cut(cylinder((0, 0, -10), 24, 10), cylinder((0, 0, -8), 18, 9)), neck)
    hood = cut(cylinder((0, 0, 0.5), 23.5, 20), cylinder((0, 0, 0), 21, 18.5))
    return case([base, hood], note="A round hood 0.5 mm above its seat.", reasons=APART, says=(r"\b0\.50?\b",))


def side_by_side() -> JointCase:
    """Base and lid on one plane, 0.6 mm apart."""
    base, cover = _tray(), box((30.6, -20, 0), (90.6, 20, 2))
    says = (r"side by side|beside|apart|not assembled|not seated|assembled position|welded position",)
    return case([base, cover], note="Printed side by side.", reasons=APART, says=says)


def side_by_side_touching() -> JointCase:
    """Two shells drawn side by side, wall against wall over 40 x 12 mm."""
    shell = open_box(MEDIUM, [(-2, 0), (0, 0)], depth=12)
    other = moved(lid(MEDIUM, [(-3, 0), (-3, -2), (-2.1, -2), (-2.1, 0), (0, 0)], 12), moved_by(x=60, z=-12))
    says = (r"side by side|beside|not assembled|not seated|assembled position|welded position|\bsides?\b",)
    return case([shell, other], note="Side by side, walls touching.", reasons=("no-seam",), says=says, turn=TURNED)


def lid_upside_down_inside() -> JointCase:
    """The lid lies loose on the base's floor, a plate of 50 x 30 x 2 with 3 mm room all round: a broad contact."""
    parts = [_tray(), box((-25, -15, 2), (25, 15, 4))]
    says = (r"broad|wide|floor|lies|rests|contact",)
    return case(parts, note="A lid that lies on the floor inside.", reasons=("no-seam",), says=says)


UNSEATED: dict[str, Callable[[], JointCase]] = named(
    lid_with_skirt_through_the_base,
    rim_in_the_lid,
    plate_across_the_walls,
    floating_over_a_wall,
    floating_over_a_ledge,
    hood_over_a_round_base,
    side_by_side,
    side_by_side_touching,
    lid_upside_down_inside,
    # plates of 60 x 40 x 2 whose floors share 30 x 40, the base's wall at x = 30 included
    printed_beside_and_through=lambda: _printed((0, -20, 0), (60, 20, 2), 2400.0),
    # a plate across all four walls, 5 mm above the floor: 60 x 40 x 2 less the cavity 56 x 36 x 2
    printed_across_the_walls=lambda: _printed((-30, -20, 5), (30, 20, 7), 768.0, turn=TURNED, order=(1, 0)),
)
