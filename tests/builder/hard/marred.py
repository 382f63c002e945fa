"""Rib tops that are no plain strip: bored, notched, chamfered, rounded at junctions or as a whole (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
from OCP.BRep import BRep_Tool
from OCP.BRepFilletAPI import BRepFilletAPI_MakeFillet
from OCP.TopAbs import TopAbs_EDGE
from OCP.TopExp import TopExp, TopExp_Explorer
from OCP.TopoDS import TopoDS

from ..defects import rectangle
from ..ops import box, cut, cylinder, fuse, stretch
from ..pair import draw
from ..spec import Spec
from ..track import rounded_rectangle
from .housings import _model, _plain, _values
from .strangers import _polygon, wall
from .truth import HardModel, SeamTruth, Value, along, straight, stretch_of, values_of

TRACK = rounded_rectangle(64, 44, 8)
FAR = 3.0
"""mm round a fault beyond which the seam is what it is elsewhere."""


def _seam(values: dict[str, Value], *places: tuple[float, float, float, float], **more: Any) -> SeamTruth:
    return SeamTruth(1, 0, (along(TRACK, values, not_within=places),), **more)


def pin_hole() -> HardModel:
    """A hole of 0.4 mm goes through the middle of the rib and the wall below: a leak."""
    base, cover = _plain(TRACK)
    base = cut(base, cylinder((0, -22, -16), 0.2, 20))
    return _model(
        base, cover, "A pin hole through rib and wall.", _seam(_values(), (0, -22, 0, FAR), rules=("rib-hole",))
    )


def blind_hole() -> HardModel:
    """A blind hole of 0.8 mm, 0.5 mm deep, in a rib of 1.2 mm."""
    base, cover = _plain(TRACK)
    base = cut(base, cylinder((10, -22, -0.5), 0.4, 2))
    seam = _seam(_values(), (10, -22, 0, FAR), rules=("rib-hole",))
    return _model(base, cover, "A blind hole in the rib's top.", seam)


def pocket_as_wide_as_the_rib() -> HardModel:
    """A round pocket that leaves 0.05 mm of the rib beside it."""
    base, cover = _plain(TRACK)
    base = cut(base, cylinder((10, -22, -0.5), 0.55, 2))
    seam = _seam(_values(), (10, -22, 0, FAR), rules=("rib-hole",), may=("seam-open",))
    return _model(base, cover, "A pocket that leaves nothing of the rib beside it.", seam)


def _t_junction(radius: float) -> Any:
    """Ring of ribs with a dividing one at x = 6, their corners rounded."""
    rib = fuse(wall(TRACK, -0.6, 0.6, -1.2, 0), box((5.4, -22, -1.2), (6.6, 22, 0)))
    if not radius:
        return rib
    maker = BRepFilletAPI_MakeFillet(rib)
    explorer = TopExp_Explorer(rib, TopAbs_EDGE)
    seen = []
    while explorer.More():
        edge = TopoDS.Edge_s(explorer.Current())
        a, b = (BRep_Tool.Pnt_s(v(edge)) for v in (TopExp.FirstVertex_s, TopExp.LastVertex_s))
        at = (round(a.X(), 3), round(a.Y(), 3))
        upright = abs(a.Z() - b.Z()) > 1 and abs(a.X() - b.X()) < 1e-6 and abs(a.Y() - b.Y()) < 1e-6
        if upright and at in {(x, y) for x in (5.4, 6.6) for y in (-21.4, 21.4)} and at not in seen:
            maker.Add(radius, edge)
            seen.append(at)
        explorer.Next()
    assert len(seen) == 4
    return maker.Shape()


def _divided(radius: float, near: float) -> tuple[Any, Any, SeamTruth]:
    case, cover = _plain(TRACK)
    case = fuse(case, box((3, -20, -13), (9, 20, -0.9)))
    base = fuse(case, _t_junction(radius))
    values = _values()
    within = {k: v for k, v in values.items() if not k.startswith("clamp") and not k.startswith("trap_area")}
    places = ((6, -22, 0, near), (6, 22, 0, near))
    length = TRACK.length
    # the track starts at the lower left: arc lengths of both feet
    s = np.linspace(0, length, 200001)[:-1]
    xy, _ = TRACK.at(s)
    feet = sorted(float(s[np.argmin(np.hypot(xy[:, 0] - 6, xy[:, 1] - y))]) for y in (-22, 22))
    ring = {k: v for k, v in values.items() if not k.startswith("trap_area_inner")}
    runs = [(feet[0], feet[1] - feet[0]), (feet[1], length - feet[1] + feet[0])]
    paths = [stretch_of(TRACK, a, size, ring, not_within=places) for a, size in runs]
    paths.append(straight((6, -22, 0), (6, 22, 0), within, not_within=places))
    return base, cover, SeamTruth(1, 0, tuple(paths), junctions=((6.0, -22.0, 0.0), (6.0, 22.0, 0.0)))


def rounded_t_junctions() -> HardModel:
    """A dividing wall runs into the ring with roundings of 2 mm: wider there by nature."""
    base, cover, seam = _divided(2.0, 5.0)
    return _model(base, cover, "Roundings where a dividing wall meets the ring.", seam)


def hole_at_a_t_junction() -> HardModel:
    """A pocket as wide as the rib where a dividing wall meets the ring."""
    base, cover, seam = _divided(0.0, 5.0)
    base = cut(base, cylinder((6, -22, -0.5), 0.55, 2))
    seam = replace(seam, rules=("rib-hole",), may=("seam-open",))
    return _model(base, cover, "A pocket at a T-junction.", seam)


def low_in_a_corner() -> HardModel:
    """The rib is 0.2 mm lower where a corner of the housing was milled off square: its ends are oblique."""
    base, cover = _plain(TRACK)
    base = cut(base, box((26.5, -30, -0.2), (40, -16.5, 1)))
    seam = _seam(_values(), (32 - 2.3, -22 + 2.3, 0, 9.0), rules=())
    return _model(base, cover, "A low spot with oblique ends in a corner.", seam)


def low_in_a_run() -> HardModel:
    """The same on a straight run, with square ends."""
    base, cover = _plain(TRACK)
    base = cut(base, box((-4, -30, -0.2), (4, -16, 1)))
    seam = _seam(_values(), (0, -22, 0, 6.0), rules=())
    return _model(base, cover, "A low spot on a straight run.", seam)


def chamfered_rib() -> HardModel:
    """A chamfer of 0.2 mm along 10 mm of the rib's outer edge."""
    base, cover = _plain(TRACK)
    outline = [(0.4, 0.0), (0.7, -0.3), (0.7, 0.1), (0.4, 0.1)]
    base = cut(base, stretch(TRACK, TRACK.middle_of_run(0), 10.0, outline))
    x, y = TRACK.at(np.array([TRACK.middle_of_run(0)]))[0][0]
    seam = _seam(_values(), (float(x), float(y), 0, 6.5), rules=())
    return _model(base, cover, "A chamfer along a stretch of the rib.", seam)


def lowered_rib() -> HardModel:
    """Half of the rib's width lies 0.25 mm lower along 8 mm."""
    base, cover = _plain(TRACK)
    base = cut(base, stretch(TRACK, TRACK.middle_of_run(0), 8.0, rectangle(0.0, 0.7, -0.25, 0.1)))
    x, y = TRACK.at(np.array([TRACK.middle_of_run(0)]))[0][0]
    seam = _seam(_values(), (float(x), float(y), 0, 6.0), rules=("rib-uniformity",))
    return _model(base, cover, "Half of the rib is lower along a stretch.", seam)


def round_rib_with_a_notch() -> HardModel:
    """A rib that is round over its whole width, with a notch of 3 mm down to the floor."""
    spec = Spec(
        track=TRACK, draft_inner=0, draft_outer=0, rib_width=0.0, top_fillet=0.39,
        rib_height_inner=1.0, rib_height_outer=1.0,
    )  # fmt: skip
    cover, base = draw(spec)
    s = TRACK.middle_of_run(0)
    base = cut(base, stretch(TRACK, s, 3.0, rectangle(-0.8, 0.8, -1.0, 1.0)))
    values = values_of(spec, ("rib_width", "rib_width_top", "clamp_land", "beam_clear"))
    ends = TRACK.at(np.array([s - 1.5, s + 1.5]))[0]
    near = tuple((float(x), float(y), 0.0, 0.7) for x, y in ends)
    path = stretch_of(TRACK, s + 1.5, TRACK.length - 3.0, values, not_within=near)
    (x, y), _ = (v[0] for v in TRACK.at(np.array([s])))
    gap = ((3.0, (float(x), float(y), 0.0)),)
    return _model(base, cover, "A round rib, notched.", SeamTruth(1, 0, (path,), ("seam-open",), interruptions=gap))


def mitred_with_lips() -> HardModel:
    """A square seam with mitred corners; a bead closes both traps all round."""
    low, lip = -0.9, -0.6
    case = cut(_polygon(4, 25.5, -15, lip), _polygon(4, 18.5, -13, 1))
    case = cut(case, cut(_polygon(4, 24.5, low, 1), _polygon(4, 19.5, low - 1, 2)))
    base = fuse(case, cut(_polygon(4, 22.6, low - 0.3, 0), _polygon(4, 21.4, -3, 1)))
    cover = _polygon(4, 25.5, 0, 2.0)
    outer = 22 / np.cos(np.pi / 4)
    corners = [(outer, 0), (0, outer), (-outer, 0), (0, -outer)]
    values = {
        "rib_width": 1.2, "rib_height": 0.9, "gap": 0.0, "cover_thickness": 2.0, "trap_open_inner": 0.0,
        "trap_open_outer": 0.0,
    }  # fmt: skip
    near = tuple((float(x), float(y), 0.0, 3.5) for x, y in corners)
    points = np.vstack(
        [
            np.linspace(a, b, 1600, endpoint=False)
            for a, b in zip(corners, corners[1:] + corners[:1], strict=True)
        ]
    )  # fmt: skip
    from .strangers import _shorter
    from .truth import PathTruth

    side = 44 + 2 * _shorter(np.pi / 2, 0.6)
    path = PathTruth(np.column_stack([points, np.zeros(len(points))]), True, 4 * side, values, near)
    return _model(base, cover, "Mitred corners with a bead all round.", SeamTruth(1, 0, (path,)))


MARRED: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        pin_hole, blind_hole, pocket_as_wide_as_the_rib, rounded_t_junctions, hole_at_a_t_junction, low_in_a_corner,
        low_in_a_run, chamfered_rib, lowered_rib, round_rib_with_a_notch, mitred_with_lips,
    )
}  # fmt: skip
