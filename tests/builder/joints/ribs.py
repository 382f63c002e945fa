"""Real weld ribs of all kinds, among which the rest must not be confused (OCP)."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import broken, motion, values_of
from ..ops import box, cut, cylinder, fuse, stretch
from ..pair import draw
from ..solid import moved
from ..spec import Spec
from ..track import circle, closed_spline, l_shape, rounded_rectangle
from ..variants import divided
from .shapes import MEDIUM, open_box, plate, wall
from .truth import JointCase, JointTruth, case, named

COLLAPSE = 0.4
"""mm, the default setting."""
RIB = JointTruth(("weld-rib",))
SPEC = Spec(track=MEDIUM, draft_inner=0.5, draft_outer=0.5)
UPRIGHT = replace(SPEC, draft_inner=0.0, draft_outer=0.0)


def ribbed(spec: Spec = SPEC, *others: Any, note: str, may: tuple[str, ...] = (), **more: Any) -> JointCase:
    """The pair of a Spec, with what else is drawn beside it; only rules that its dimensions break may be must-fix."""
    cover, base = draw(spec)
    welded = spec.gap == -COLLAPSE  # the welded state: a note, no broken rule
    must = tuple(rule for rule in broken(values_of(spec)) if not (welded and rule == "contact-gap"))
    return case([base, cover, *others], replace(RIB, must=must, may=may), note=note, **more)


def _rounded() -> Any:
    """A box with a rib of 1.2 mm whose top is a half circle but for a sliver of 0.0002 mm along its crest."""
    top = [(-2.6, -0.6), (-2.6, 0, 0.5999), (-1.4, 0, 0.5999), (-1.4, -0.6)]
    return open_box(MEDIUM, [(-4, -1), (-2.6, -1), *top, (-1.4, -1), (0, -1)])


def rounded_rib() -> JointCase:
    """A rib of 1.2 mm whose top is a half circle: no flat at all."""
    turn = motion((10, 20, 30), (3, 2, 1))
    return case([_rounded(), plate(MEDIUM, 0, 0, 2)], RIB, note="A fully rounded rib.", turn=turn)


def rounded_rib_notched() -> JointCase:
    """The same with a notch 3 mm long and 0.25 mm deep across its crest: the cover stays 0.25 mm off it there."""
    base = cut(_rounded(), box((-1.5, 16, -0.25), (1.5, 20, 1)))
    joint = replace(RIB, must=("contact-gap",))
    return case([base, plate(MEDIUM, 0, 0, 2)], joint, note="A rounded rib with a shallow notch.", order=(1, 0))


def two_chambers() -> JointCase:
    """A dividing wall of 1.2 mm with the rib's height across the middle: two chambers, two T-junctions."""
    cover, base = draw(UPRIGHT)
    return case([divided(UPRIGHT, base, 0.0, 20.0), cover], RIB, note="Two chambers, two T-junctions.")


def two_chambers_filleted() -> JointCase:
    """As before; seen along the beam, fillets of 1 mm round the four inner corners of the two junctions."""
    cover, base = draw(UPRIGHT)
    base = divided(UPRIGHT, base, 0.0, 20.0)
    for x in (-1, 1):
        for y in (-1, 1):
            (x0, x1), (y0, y1) = sorted((0.3 * x, 1.6 * x)), sorted((18.4 * y, 19.7 * y))
            corner = cut(box((x0, y0, -1), (x1, y1, 0)), cylinder((1.6 * x, 18.4 * y, -2), 1, 3))
            base = fuse(base, corner)
    return case([base, cover], RIB, note="Two chambers, the junctions filleted.", order=(1, 0))


def micro_rib() -> JointCase:
    """A rib 0.3 mm wide and 0.15 high on a housing of 9 x 7 mm."""
    spec = Spec(
        track=rounded_rectangle(9, 7, 2.5), rib_width=0.3, rib_height_inner=0.15, rib_height_outer=0.15,
        trap_width_inner=0.25, trap_width_outer=0.25, lip_height_inner=0.05, lip_height_outer=0.05, lip_width=0.3,
        draft_inner=0, draft_outer=0, wall_height=3, floor_thickness=0.6, flange=0.3, cover_thickness=0.6,
        clamp_land=0.6,
    )  # fmt: skip
    cover, base = draw(spec)
    return case([base, cover], replace(RIB, may=None), note="A micro part.", order=(1, 0), most=20)


def broad_low_rib() -> JointCase:
    """A rib of 1.8 mm that is 0.45 mm high: a quarter of its width, but more than the collapse."""
    base = open_box(MEDIUM, [(-5, -0.45), (-3.4, -0.45), (-3.4, 0), (-1.6, 0), (-1.6, -0.45), (0, -0.45)])
    return case([base, plate(MEDIUM, 0, 0, 2)], replace(RIB, may=None), note="A broad, low rib.")


def lowered_stretch() -> JointCase:
    """The rib lies 0.5 mm lower over 8 mm of its longest run: a gap there, and all the same part of the seam."""
    cover, base = draw(UPRIGHT)
    top = [(-0.8, -0.5), (0.8, -0.5), (0.8, 1.0), (-0.8, 1.0)]
    base = cut(base, stretch(UPRIGHT.track, UPRIGHT.track.middle_of_run(0), 8.0, top))
    joint = replace(RIB, must=("contact-gap",), may=None)
    return case([base, cover], joint, note="A stretch of rib that lies lower.", order=(1, 0))


def rib_along_a_bar() -> JointCase:
    """A bar of 80 x 12 mm with a rib of 1.2 x 0.9 along its whole length under a cover of 2 mm: an open seam."""
    base = fuse(box((-40, -6, -8), (40, 6, -0.9)), box((-40, -0.6, -1), (40, 0.6, 0)))
    joint = replace(RIB, closed=False, must=("seam-open",), may=None)
    return case([base, box((-40, -6, 0), (40, 6, 2))], joint, note="A rib along a bar.")


def board_on_a_ridge() -> JointCase:
    """A board that rests on a ridge of 1.15 mm along one side of a tray: a floor inside of it, and outside over
    18 of 60 mm (0.64 of its border). Nothing is welded here unless the user says so."""
    tray = fuse(
        box((-30, -20, -8), (30, 20, -3)), box((-30, 18.85, -4), (30, 20, 0)), box((-30, 19, -8), (-12, 24, -3))
    )
    board = box((-30, -18, 0), (30, 20, 1.5))
    return case([tray, board], note="A board on a ridge.", reasons=("no-seam", "ambiguous"))


def _steep(run: int, side: float, note: str, **more: Any) -> JointCase:
    """Flanks of 0.5 degrees, but 3 degrees on one side of one long run: a wedge is added there."""
    cover, base = draw(SPEC)
    track = SPEC.track
    length = [p.length for p in track.pieces][2 * run] - 0.2
    low, near, far = 0.9, math.tan(math.radians(0.5)) * 0.9, math.tan(math.radians(3)) * 0.9
    outline = [(side * (0.6 - 0.3), 0), (side * 0.6, 0), (side * (0.6 + far), -low), (side * (0.6 + near - 0.3), -low)]
    if side < 0:
        outline.reverse()
    base = fuse(base, stretch(track, track.middle_of_run(run), length, outline))
    return case([base, cover], RIB, note=note, **more)


def _slanted(angle: float, **more: Any) -> JointCase:
    """Rib top, floors and cover lie on planes inclined about y; walls and flanks stay upright.

    Rib 1.2 wide, 0.9 high along the walls, floors of 1.4 mm on both sides, the cover 2 mm thick along the walls.
    """
    track, far = MEDIUM, 60.0

    def below(height: float) -> Any:
        turned = motion((0, -angle, 0), (0, 0, height))
        return moved(box((-400, -far, -400), (400, far, 0)), turned)

    def under(shape: Any, height: float) -> Any:
        return cut(shape, cut(box((-140, -50, -120), (140, 50, 120)), below(height)))

    depth = 30 * math.tan(math.radians(angle)) + 8
    case_body = cut(plate(track, 0, -depth, 60), plate(track, -4, 2 - depth, 61))
    rib = wall(track, -2.6, -1.4, 1.9 - depth, 60)
    base = fuse(under(case_body, -0.9), under(rib, 0))
    cover = cut(under(plate(track, 0, -60, 60), 2), below(0))
    note = f"A seam plane inclined by {angle:g} degrees to the walls."
    joint = replace(RIB, may=("clamp-tilt", "beam-angle"))
    return case([base, cover], joint, note=note, **more)


TALL = replace(SPEC, rib_height_inner=1.4, rib_height_outer=1.4, lip_height_inner=0.5, lip_height_outer=0.5)
FREE = replace(SPEC, track=closed_spline(), top_fillet=0.15, root_fillet=0.1)
RECESSED = replace(SPEC, outer="wall", trap_width_outer=2.0)
FLUSH = replace(SPEC, inner="flush", draft_inner=0.0)
BIG = replace(SPEC, track=rounded_rectangle(240, 160, 20), rib_width=1.6)

RIBS: dict[str, Callable[[], JointCase]] = named(
    rounded_rib,
    rounded_rib_notched,
    two_chambers,
    two_chambers_filleted,
    micro_rib,
    broad_low_rib,
    lowered_stretch,
    rib_along_a_bar,
    board_on_a_ridge,
    rib_on_base=lambda: ribbed(note="A rib on the base."),
    rib_on_cover=lambda: ribbed(replace(SPEC, rib_on="cover"), note="A rib on the cover.", order=(1, 0)),
    rib_recessed=lambda: ribbed(RECESSED, note="A recessed cover.", turn=motion((0, 90, 0), (0, 0, 9))),
    rib_flush_inside=lambda: ribbed(FLUSH, note="A shoulder outside only.", order=(1, 0)),
    rib_free_form=lambda: ribbed(FREE, note="A free curve with fillets.", turn=motion((70, 5, 9), (1, 1, 1))),
    rib_large=lambda: ribbed(BIG, note="A housing of 240 x 160 mm.", order=(1, 0)),
    rib_round=lambda: ribbed(replace(SPEC, track=circle(20)), note="A round housing."),
    rib_l_shape=lambda: ribbed(replace(SPEC, track=l_shape()), note="An L-shaped housing."),
    rib_small_gap=lambda: ribbed(replace(SPEC, gap=0.05), note="Drawn 0.05 mm apart."),
    rib_welded=lambda: ribbed(replace(SPEC, gap=-COLLAPSE), note="Drawn welded, 0.4 mm overlap."),
    rib_tall=lambda: ribbed(TALL, note="A tall rib.", turn=motion((180, 0, 0), (0, 0, 0))),
    draft_outside=lambda: _steep(0, 1.0, "3 degrees of draft outside on one run, 0.5 elsewhere."),
    draft_inside=lambda: _steep(1, -1.0, "3 degrees of draft inside on one run, 0.5 elsewhere.", order=(1, 0)),
    slanted_10=lambda: _slanted(10),
    slanted_30=lambda: _slanted(30, order=(1, 0)),
    slanted_45=lambda: _slanted(45, turn=motion((0, 45, 0), (0, 0, 0))),
)
