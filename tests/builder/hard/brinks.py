"""Where a seam ends, leans, drops obliquely or faces nothing (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf

from ..ops import box, cut, fuse, one_solid
from ..relief import Ground
from ..track import rounded_rectangle
from .housings import _model, _plain, _values
from .strangers import plate, wall
from .truth import HardModel, PathTruth, SeamTruth, along, straight, stretch_of

TRACK = rounded_rectangle(64, 44, 8)


def _turned(shape: Any, x: float, y: float, degrees: float) -> Any:
    """A shape turned about an upright line."""
    motion = gp_Trsf()
    motion.SetRotation(gp_Ax1(gp_Pnt(x, y, 0), gp_Dir(0, 0, 1)), np.radians(degrees))
    return BRepBuilderAPI_Transform(shape, motion, True).Shape()


def low_with_oblique_ends() -> HardModel:
    """A band 6 mm wide, turned by 30 degrees, takes 0.2 mm off the rib where it crosses it."""
    base, cover = _plain(TRACK)
    base = cut(base, _turned(box((-3, -40, -0.2), (3, 40, 1)), 0, -22, 30))
    far = -44 * np.tan(np.radians(30))
    seam = along(TRACK, _values(), not_within=((0, -22, 0, 6.0), (far, 22, 0, 6.0)))
    return _model(base, cover, "Low stretches with oblique ends.", SeamTruth(1, 0, (seam,)))


def low_corner_with_oblique_ends() -> HardModel:
    """All beyond a line that runs askew past a corner is 0.2 mm lower: ends 35 and 55 degrees off square."""
    base, cover = _plain(TRACK)
    base = cut(base, _turned(box((24, -40, -0.2), (60, 40, 1)), 0, 0, -35.5))
    seam = along(TRACK, _values(), not_within=((27, -18, 0, 24.0),))
    return _model(base, cover, "A low corner whose ends are very oblique.", SeamTruth(1, 0, (seam,)))


def _bar(short: float) -> tuple[Any, Any, PathTruth]:
    base = fuse(box((-32, -4, -8), (32, 4, -0.9)), box((-30, -0.6, -2), (30, 0.6, 0)))
    ends = ((-30.0, 0.0, 0.0, 2.0), (30.0, 0.0, 0.0, 2.0))
    values = {"rib_width": 1.2, "rib_height": 0.9, "gap": 0.0, "cover_thickness": 2.0, "beam_clear": 1.0}
    path = straight((-30, 0, 0), (30, 0, 0), values, not_within=ends)
    return base, box((-30 + short, -4, 0), (30 - short, 4, 2)), path


def bar_as_long_as_its_cover() -> HardModel:
    """Rib and cover end in one plane: what lies over the rib's last section is not told by it."""
    base, cover, path = _bar(0.0)
    return _model(base, cover, "Rib and cover end together.", SeamTruth(1, 0, (path,), ("seam-open",)))


def bar_that_looks_out() -> HardModel:
    """The rib ends 0.03 mm beyond the cover, the other end too: no hole in the cover."""
    base, cover, path = _bar(0.03)
    return _model(base, cover, "A rib that looks out by 0.03 mm.", SeamTruth(1, 0, (path,), ("seam-open",)))


def rib_over_a_gap() -> HardModel:
    """A rib on the cover runs on where 40 mm of the base's wall are cut away down to the floor: no gap, no seam."""
    case = cut(plate(TRACK, 3, -15, 0), plate(TRACK, -3, -13, 1))
    case = cut(case, box((-20, -40, -13), (20, -10, 1)))
    lid = fuse(plate(TRACK, 3, 0.9, 2.9), wall(TRACK, -0.6, 0.6, 0, 1))
    start = TRACK.middle_of_run(0) + 20.0
    near = ((-20.0, -22.0, 0.0, 1.2), (20.0, -22.0, 0.0, 1.2))
    path = stretch_of(TRACK, start, TRACK.length - 40.0, {"rib_width": 1.2, "rib_height": 0.9}, not_within=near)
    gap = ((40.0, (0.0, -22.0, 0.0)),)
    seam = SeamTruth(1, 0, (path,), ("seam-open",), rib_on="cover", interruptions=gap)
    return _model(case, lid, "A rib that faces nothing on one side.", seam)


def inclined_plane() -> HardModel:
    """Cover and base part in a plane inclined by 33 degrees; the trap floors are 1.4 mm wide."""
    ground = Ground("slope", float(np.tan(np.radians(33.0))))

    def below(shape: Any, level: float) -> Any:
        return one_solid(BRepAlgoAPI_Common(shape, ground.below(level)).Shape())

    case = cut(below(plate(TRACK, 2, -45, 60), -0.9), plate(TRACK, -2, -43, 60))
    rib = cut(below(wall(TRACK, -0.6, 0.6, -44, 60), 0), ground.below(-1.2))
    lid = cut(below(plate(TRACK, 3, -40, 60), 2), ground.below(0))
    xy, _ = TRACK.at(np.linspace(0, TRACK.length, round(TRACK.length / 0.02), endpoint=False))
    points = np.column_stack([xy, ground.height(xy[:, 0], xy[:, 1])])
    values = {k: v for k, v in _values(rim=2.0).items() if k != "clamp_tilt"} | {"free_travel": 0.9}
    path = PathTruth(points, True, ground.length(TRACK), values)
    return _model(fuse(case, rib), lid, "A seam plane inclined by 33 degrees.", SeamTruth(1, 0, (path,)))


def wall_between_channels() -> HardModel:
    """A lid with channels 1.5 mm deep on both sides of a ridge, as wide as the wall that it stands on."""
    case = cut(plate(TRACK, 0.75, -15, 0), plate(TRACK, -0.75, -13, 1))
    lid = cut(plate(TRACK, 3, 0, 3), wall(TRACK, -1.95, -0.75, -1, 1.5), wall(TRACK, 0.75, 1.95, -1, 1.5))
    values = {"rib_width": 1.5, "rib_height": 1.5, "gap": 0.0, "cover_thickness": 3.0, "trap_open_inner": 1.0}
    seam = SeamTruth(1, 0, (along(TRACK, values),), rib_on="cover")
    return _model(case, lid, "A ridge between channels on a wall of its width.", seam)


BRINKS: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        low_with_oblique_ends, low_corner_with_oblique_ends, bar_as_long_as_its_cover, bar_that_looks_out,
        rib_over_a_gap, inclined_plane, wall_between_channels,
    )
}  # fmt: skip
