"""Flat covers on plain walls and on broad wall tops (OCP)."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import motion
from ..ops import box, cut, cylinder, fuse
from ..track import AnyTrack, rounded_rectangle
from .shapes import LARGE, MEDIUM, ROUND, SMALL, lid, open_box, plate
from .truth import JointCase, JointTruth, case, named

PLAIN = JointTruth(("plain-wall",), may=("clamp-land", "trap-room"))
"""A wall of 0.6 to 2.5 mm: nothing about height, slenderness or draft; its traps are open and its land is its own."""
FLAT = JointTruth(("flat-lap",), must=("rib-missing",))


def _walled(track: AnyTrack, width: float, joint: JointTruth, note: str, edge: float = 0.0, **more: Any) -> JointCase:
    """A flat cover of 2 mm on the upright wall of a box."""
    return case([open_box(track, [(-width, 0), (0, 0)]), plate(track, edge, 0, 2)], joint, note=note, **more)


def chamfered_wall() -> JointCase:
    """A wall of 2.2 mm with chamfers of 0.5 x 45 degrees on both edges: a flat of 1.2 mm, no shoulder."""
    base = open_box(MEDIUM, [(-2.2, -0.5), (-1.7, 0), (-0.5, 0), (0, -0.5)])
    return case([base, plate(MEDIUM, 1.5, 0, 2)], PLAIN, note="A chamfered wall, 1.2 mm flat.")


def filleted_wall() -> JointCase:
    """A wall of 2.4 mm with fillets of 0.6 mm on both edges: a flat of 1.2 mm."""
    base = open_box(MEDIUM, [(-2.4, 0, 0.6), (0, 0, 0.6)])
    turn = motion((0, 40, 0), (5, 5, 5))
    return case([base, plate(MEDIUM, 1.5, 0, 2)], PLAIN, note="A filleted wall, 1.2 mm flat.", turn=turn)


def drafted_wall() -> JointCase:
    """A wall of 1.8 mm at its top, 1 degree of draft on both faces over 20 mm."""
    lean = 20 * math.tan(math.radians(1))
    base = open_box(MEDIUM, [(-1.8 - lean, -18), (-1.8, 0), (0, 0), (lean, -20)])
    return case([base, plate(MEDIUM, 1.2, 0, 2)], PLAIN, note="A wall with 1 degree of draft.", order=(1, 0))


def chamfered_broad_top() -> JointCase:
    """A wall of 8 mm with chamfers of 0.8 mm: a flat of 6.4 mm."""
    base = open_box(LARGE, [(-8, -0.8), (-7.2, 0), (-0.8, 0), (0, -0.8)])
    return case([base, plate(LARGE, 0, 0, 2.5)], FLAT, note="A broad, chamfered wall top.")


def merging_posts() -> JointCase:
    """A box of 100 x 78 x 46: wall top 3 mm, 8 mm at four screw posts in its corners; a lid of 3 mm with four holes."""
    track = rounded_rectangle(100, 78, 4)
    base, cover = open_box(track, [(-3, 0), (0, 0)], depth=43), plate(track, 0, 0, 3)
    for x in (-46, 46):
        for y in (-35, 35):
            base = cut(fuse(base, cylinder((x, y, -42), 4, 42)), cylinder((x, y, -20), 1.25, 25))
            cover = cut(cover, cylinder((x, y, -1), 1.7, 5))
    return case([base, cover], FLAT, note="Four screw posts merge into the wall's top.")


def open_wall_with_posts() -> JointCase:
    """A wall of 2 mm with posts for screws in its corners, open over 14 mm for a socket; the lid's centring skirt, 1 mm
    deep, stays 0.8 mm inside the wall. Only the screws' holes make rings of the land, and it lies outside the skirt."""
    track = rounded_rectangle(100, 78, 4)
    base = open_box(track, [(-2, 0), (0, 0)], depth=20)
    cover = lid(track, [(-3.8, 0), (-3.8, -1), (-2.8, -1), (-2.8, 0), (0, 0)], 3)
    for x in (-46, 46):
        for y in (-35, 35):
            base = cut(fuse(base, cylinder((x, y, -19), 4, 19)), cylinder((x, y, -15), 1.7, 16))
            cover = cut(cover, cylinder((x, y, -2), 5, 2), cylinder((x, y, -1), 1.7, 5))
    base = cut(base, box((-7, -45, -6), (7, -30, 1)))
    joint = replace(PLAIN, closed=False, may=None)
    return case([base, cover], joint, note="A wall with posts, open at a socket, under a lid with a skirt.", most=8)


def capped_plug() -> JointCase:
    """A flat lid on a wall of 2 mm, with a skirt inside at 0.1 mm play that only centres it."""
    base = open_box(MEDIUM, [(-2, 0), (0, 0)])
    cover = lid(MEDIUM, [(-3.3, 0), (-3.3, -3), (-2.1, -3), (-2.1, 0), (0, 0)], 2)
    return case([base, cover], PLAIN, note="A plain wall under a lid with a centring skirt.", order=(1, 0))


def wall_with_a_shadow_step() -> JointCase:
    """A wall of 1 mm, whose outer edge is 0.2 mm lower over 0.4 mm, so that a line of shadow runs round the housing:
    0.6 mm touch. The step is on one side only and a third of the land's width deep: no rib."""
    base = open_box(MEDIUM, [(-1, 0), (-0.4, 0), (-0.4, -0.2), (0, -0.2)])
    joint = replace(PLAIN, must=("sink-travel",))  # the step meets the cover after 0.2 mm
    return case([base, plate(MEDIUM, 0, 0, 2.2)], joint, note="A wall with a step of 0.2 mm at its outer edge.")


def wall_above_a_shelf() -> JointCase:
    """A plain wall of 1.6 mm; 3 mm below its top a shelf of 4 mm for a board runs round inside: no trap's floor."""
    base = open_box(LARGE, [(-5.6, -3), (-1.6, -3), (-1.6, 0), (0, 0)])
    return case([base, plate(LARGE, 1, 0, 2)], PLAIN, note="A wall above a shelf for a board.")


def tray_with_tabs() -> JointCase:
    """A tray under a hood: its rim of 2 mm and its floor 1.9 mm lower; tabs of 1 mm rise inside over half of the rim
    and centre the hood. Light comes in through the tray, 3.4 mm, which is more than a cover's 3.0 mm."""
    hood = open_box(MEDIUM, [(-2, 0), (0, 0)], depth=13)
    tray = lid(MEDIUM, [(-2, 1.9), (-2, 0), (0, 0)], 3.4)
    for x, y in ((0, 1), (0, -1), (1, 0), (-1, 0)):
        low = (-16 if not x else 27.0 if x > 0 else -28, -9 if not y else 17.0 if y > 0 else -18, -1.5)
        high = (16 if not x else 28.0 if x > 0 else -27, 9 if not y else 18.0 if y > 0 else -17, 2)
        tray = fuse(tray, box(low, high))
    joint = replace(PLAIN, must=("cover-thickness",))
    return case([hood, tray], joint, note="A tray with centring tabs under a hood.", order=(1, 0))


def flat_ring() -> JointCase:
    """A flat lid of 1.5 mm on a round wall of 4 mm."""
    return case([open_box(ROUND, [(-4, 0), (0, 0)]), plate(ROUND, 0, 0, 1.5)], FLAT, note="A flat ring, 4 mm wide.")


WALLS: dict[str, Callable[[], JointCase]] = named(
    chamfered_wall,
    filleted_wall,
    drafted_wall,
    chamfered_broad_top,
    merging_posts,
    open_wall_with_posts,
    capped_plug,
    wall_with_a_shadow_step,
    wall_above_a_shelf,
    tray_with_tabs,
    flat_ring,
    wall_10=lambda: _walled(SMALL, 1.0, PLAIN, "A plain wall of 1.0 mm.", 1.5),
    wall_15=lambda: _walled(MEDIUM, 1.5, PLAIN, "A plain wall of 1.5 mm.", 1.5, turn=motion((20, 70, 0), (9, 9, 9))),
    wall_20=lambda: _walled(MEDIUM, 2.0, PLAIN, "A plain wall of 2.0 mm, the cover flush with it."),
    wall_25=lambda: _walled(LARGE, 2.4, PLAIN, "A plain wall of 2.4 mm.", 2.0, order=(1, 0)),
    wall_60=lambda: _walled(LARGE, 6.0, FLAT, "A wall top of 6 mm.", order=(1, 0)),
    wall_80=lambda: _walled(LARGE, 8.0, FLAT, "A wall top of 8 mm.", turn=motion((0, 90, 0), (0, 0, 0))),
)
