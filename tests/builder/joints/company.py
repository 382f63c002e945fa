"""Other parts beside, on and in the joint that must not be taken for its cover or its stop (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import motion
from ..ops import box, cut, cylinder, fuse
from ..pair import draw
from ..track import rounded_rectangle
from .ribs import RIB, SPEC, ribbed
from .shapes import MEDIUM, ROUND, open_box, plate, wall
from .truth import JointCase, case, named
from .walls import FLAT

FLOOR = -SPEC.wall_height + SPEC.floor_thickness
"""Height of the cavity's floor of a ribbed pair: -12 mm."""

NONE: dict[str, Any] = {"reasons": ("no-seam", "no-contact")}


def battery_and_rib() -> JointCase:
    """A battery of 44 x 26 mm lies on the floor: 1 144 mm2 of contact, the seam has about 230."""
    return ribbed(SPEC, box((-22, -13, FLOOR), (22, 13, FLOOR + 6)), note="A battery on the floor.", order=(2, 0, 1))


def battery_and_plug() -> JointCase:
    """A plug lid with 0.1 mm play above a battery on the floor: the largest contact is the battery's."""
    base, cover = open_box(MEDIUM, [(-2, 0), (0, 0)]), plate(MEDIUM, -2.1, -3, 0)
    battery = box((-20, -12, -18), (20, 12, -10))
    says = (r"\bplay\b|\bplug|\bsides?\b|\bsnap",)
    return case([base, battery, cover], note="A battery under a plug lid.", reasons=("no-seam",), says=says)


def gasket_and_rib() -> JointCase:
    """A gasket of 1.5 mm stands on a ledge inside and ends 0.8 mm below the cover: further than the collapse."""
    cover, base = draw(SPEC)
    inner = -SPEC.wall_face("inner")
    base = fuse(base, wall(MEDIUM, inner - 2.5, inner + 0.5, FLOOR - 0.5, -4))
    gasket = wall(MEDIUM, inner - 2.2, inner - 0.7, -4, -0.8)
    return case([gasket, base, cover], replace(RIB, cover=2, base=1), note="A gasket inside.")


def gasket_between() -> JointCase:
    """A gasket of 2 mm width and 1.5 height lies between a wall of 4 mm and a lid: nothing of the two meets."""
    parts = [open_box(MEDIUM, [(-4, 0), (0, 0)]), wall(MEDIUM, -3, -1, 0, 1.5), plate(MEDIUM, 0, 1.5, 3.5)]
    return case(parts, note="A gasket between base and lid.", reasons=("unsupported",), says=(r"part of its own|ring",))


def _hanging(part: Any, cover: Any, note: str, **more: Any) -> JointCase:
    _, base = draw(SPEC)
    return case([base, cover, part], RIB, note=note, **more)


def bushing_in_the_cover() -> JointCase:
    """A bush of 5 mm radius moulded into the cover reaches 4 mm below it, its flange over the cover's underside."""
    cover, _ = draw(SPEC)
    bush = cut(fuse(cylinder((0, 0, -4), 5, 6), cylinder((0, 0, -1), 7, 1)), cylinder((0, 0, -5), 3, 9))
    cover = cut(cover, cylinder((0, 0, -1), 5, 4))
    return _hanging(bush, cover, "A bush moulded into the cover.")


def membrane_on_the_cover() -> JointCase:
    """A membrane of 0.3 mm on the underside of the cover over a hole of 3 mm radius."""
    cover, _ = draw(SPEC)
    cover = cut(cover, cylinder((0, 0, -1), 3, 4))
    return _hanging(cylinder((0, 0, -0.3), 6, 0.3), cover, "A membrane under the cover.", order=(2, 1, 0))


def board_staked_to_the_cover() -> JointCase:
    """A board hangs on four pins of the cover, 4 mm below it and 6.4 mm above the floor."""
    cover, _ = draw(SPEC)
    board = box((-20, -11, FLOOR + 6.4), (20, 11, FLOOR + 8))
    for x in (-16, 16):
        for y in (-8, 8):
            cover = fuse(cover, cylinder((x, y, -4), 2.5, 4.5), cylinder((x, y, -6.2), 1, 2.7))
            board = cut(board, cylinder((x, y, -7), 1, 4))
    turn = motion((40, 30, -20), (7, 8, 9))
    return _hanging(board, cover, "A board staked to the cover.", turn=turn)


def screws_on_a_flat_lid() -> JointCase:
    """A flat lid on a wall top of 6 mm, four screws with heads of 5.6 mm through it: the heads are no covers."""
    track = rounded_rectangle(60, 40, 9)
    base, cover = open_box(track, [(-6, 0), (0, 0)]), plate(track, 0, 0, 2)
    screws = []
    for x in (-26.5, 26.5):
        for y in (-16.5, 16.5):
            base, cover = cut(base, cylinder((x, y, -9), 1, 12)), cut(cover, cylinder((x, y, -1), 1.3, 5))
            screws.append(fuse(cylinder((x, y, -8), 1, 10.5), cylinder((x, y, 2), 2.8, 1.8)))
    return case([*screws, base, cover], replace(FLAT, cover=5, base=4), note="Screw heads on a flat lid.")


def nuts_in_pockets() -> JointCase:
    """An open box; four nuts lie in pockets of its floor, with 0.05 mm play: no cover at all."""
    base = open_box(MEDIUM, [(-2, 0), (0, 0)], floor=5)
    nuts = []
    for x in (-20, 20):
        for y in (-10, 10):
            base = cut(base, box((x - 2.8, y - 2.8, -17.5), (x + 2.8, y + 2.8, -14)), cylinder((x, y, -21), 1.6, 5))
            nuts.append(cut(box((x - 2.75, y - 2.75, -17.5), (x + 2.75, y + 2.75, -15)), cylinder((x, y, -18), 1.6, 9)))
    return case([base, *nuts], note="Nuts in pockets, no lid.", **NONE)


def knurled_screw() -> JointCase:
    """A thumb screw in a plate: its head stands on the plate with a ring of contact round the bore."""
    base = cut(box((-20, -15, -6), (20, 15, 0)), cylinder((0, 0, -7), 2, 8))
    screw = fuse(cylinder((0, 0, -12), 1.95, 12.5), cylinder((0, 0, 0), 5, 6))
    return case([base, screw], note="A thumb screw on a plate.", **NONE)


def axle_in_a_housing() -> JointCase:
    """A wheel's axle lies in two bearings of an open box with 0.1 mm play."""
    base = open_box(ROUND, [(-3, 0), (0, 0)])
    hub = cut(cylinder((0, 0, -18), 5, 6), cylinder((0, 0, -17), 2.1, 9))
    wheel = fuse(cylinder((0, 0, -16.5), 2.0, 14), cylinder((0, 0, -11.9), 12, 3))
    return case([fuse(base, hub), wheel], note="A wheel on its axle, no lid.", **NONE)


def screws_beside_a_rib() -> JointCase:
    """A welded lid that carries four screws with heads on its outside, within the seam."""
    cover, base = draw(SPEC)
    screws = []
    for x in (-18, 18):
        for y in (-9, 9):
            cover = cut(cover, cylinder((x, y, -1), 1.25, 5))
            screws.append(fuse(cylinder((x, y, -2), 1.25, 5), cylinder((x, y, 2), 2.4, 1.4)))
    return case([*screws, cover, base], replace(RIB, cover=4, base=5), note="Screw heads on a welded lid.")


COMPANY: dict[str, Callable[[], JointCase]] = named(
    battery_and_rib,
    battery_and_plug,
    gasket_and_rib,
    gasket_between,
    bushing_in_the_cover,
    membrane_on_the_cover,
    board_staked_to_the_cover,
    screws_on_a_flat_lid,
    nuts_in_pockets,
    knurled_screw,
    axle_in_a_housing,
    screws_beside_a_rib,
)
