"""Several lids on one base: each is reviewed or named, none is dropped (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import motion, moved_by
from ..ops import box, cut, fuse, stretch
from ..pair import draw
from ..solid import moved
from ..spec import Spec
from ..track import rounded_rectangle
from .ribs import RIB
from .shapes import MEDIUM, open_box, plate
from .truth import JointCase, JointTruth, case, named
from .walls import FLAT, PLAIN

UP = (0.0, 0.0, 1.0)
SPEC = Spec(track=MEDIUM, draft_inner=0.0, draft_outer=0.0)
LITTLE = replace(SPEC, track=rounded_rectangle(19, 17, 4))
"""A seam of 65 mm beside one of 190 mm."""
OPEN = ("seam-open",)


def _interrupted(base: Any, spec: Spec, length: float = 4.0) -> Any:
    """The rib is gone down to its floor over some millimetres in the middle of its first run."""
    h = spec.rib_height
    outline = [(-0.8, -h), (0.8, -h), (0.8, 1.0), (-0.8, 1.0)]
    return cut(base, stretch(spec.track, spec.track.middle_of_run(0), length, outline))


def _opposite(broken_below: bool, **more: Any) -> JointCase:
    """One base with a floor in its middle, a lid welded on from above and one from below."""
    cover, base = draw(SPEC)
    below = motion((180, 0, 0), (0, 0, -2 * SPEC.wall_height))
    lower = _interrupted(base, SPEC) if broken_below else base
    whole = fuse(base, moved(lower, below))
    second = JointTruth(("weld-rib",), cover=2, beam=UP, closed=not broken_below, must=OPEN if broken_below else ())
    note = "Two lids on opposite sides" + (", the lower rib interrupted." if broken_below else ".")
    return case([whole, cover, moved(cover, below)], RIB, second, note=note, **more)


def _beside(broken: bool, **more: Any) -> JointCase:
    """A small chamber stands beside the large one on the same base; each has its lid."""
    (cover, base), (little_cover, little) = draw(SPEC), draw(LITTLE)
    aside = moved_by(x=55)
    little = moved(_interrupted(little, LITTLE) if broken else little, aside)
    whole = fuse(base, box((30, -6, -13), (46, 6, -6)), little)
    second = JointTruth(("weld-rib",), cover=2, closed=not broken, must=OPEN if broken else ())
    note = "A small second lid beside a large one" + (", its rib interrupted." if broken else ".")
    return case([whole, cover, moved(little_cover, aside)], RIB, second, note=note, **more)


def rib_above_flat_below() -> JointCase:
    """A welded lid above, a flat service lid on a wall of 4 mm below."""
    cover, base = draw(SPEC)
    lower = moved(open_box(MEDIUM, [(-4, 0), (0, 0)], depth=14.5), motion((180, 0, 0), (0, 0, -27)))
    flat = plate(MEDIUM, 0, -29, -27)
    whole = fuse(base, lower)
    below = replace(FLAT, cover=2, beam=UP)
    return case([whole, flat, cover], replace(RIB, cover=2), replace(below, cover=1), note="A rib above, a lap below.")


def tube_with_two_caps() -> JointCase:
    """A tube of 20 mm with a wall of 1.5 mm, a plain cap above and one below with a window over 45 % of its room."""
    window = cut(plate(MEDIUM, 0, -22, -20), box((-17, -14, -23), (17, 14, -19)))
    tube = cut(plate(MEDIUM, 0, -20, 0), plate(MEDIUM, -1.5, -21, 1))
    below = replace(PLAIN, cover=2, beam=UP)
    return case([tube, plate(MEDIUM, 0, 0, 2), window], PLAIN, below, note="A tube with two caps, one with a window.")


def two_housings() -> JointCase:
    """Two boxes with walls of 2 mm stand side by side, each under a flat lid of its own."""
    base, lid = open_box(MEDIUM, [(-2, 0), (0, 0)]), plate(MEDIUM, 0, 0, 2)
    aside = moved_by(x=90)
    second = replace(PLAIN, cover=3, base=2)
    return case([base, lid, moved(base, aside), moved(lid, aside)], PLAIN, second, note="Two housings in one file.")


SEVERAL: dict[str, Callable[[], JointCase]] = named(
    rib_above_flat_below,
    tube_with_two_caps,
    two_housings,
    opposite_lids=lambda: _opposite(False, order=(1, 0, 2)),
    opposite_lids_one_open=lambda: _opposite(True),
    opposite_lids_one_open_turned=lambda: _opposite(True, order=(2, 1, 0), turn=motion((35, -20, 50), (2, 3, 1))),
    small_lid_beside=lambda: _beside(False),
    small_lid_beside_open=lambda: _beside(True, order=(2, 0, 1)),
)
