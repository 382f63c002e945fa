"""Housings of a weather station as they are designed: shrouds, lugs, rings, bosses, odd outlines (OCP)."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from ..ops import box, cut, cylinder, fuse
from ..pair import CLEAR, DARK
from ..track import AnyTrack, Arc, Line, Track, circle, closed_spline, rounded_polygon, rounded_rectangle
from .strangers import HERE, plate, wall
from .truth import HardModel, Node, SeamTruth, Value, along, motion

GREY = (0.6, 0.6, 0.62)
RECT = rounded_rectangle(64, 44, 8)


def _plain(
    track: AnyTrack, width: float = 1.2, height: float = 0.9, rim: float = 3.0, thick: float = 2.0, edge: float = 3.0
) -> tuple[Any, Any]:
    """Base with a rib on a flat rim that reaches so far to both sides, and a plate as its cover."""
    case = cut(plate(track, rim, -15, -height), plate(track, -rim, -13, 1))
    return fuse(case, wall(track, -width / 2, width / 2, -height - 0.3, 0)), plate(track, edge, 0, thick)


def _values(
    width: float = 1.2, height: float = 0.9, rim: float = 3.0, thick: float = 2.0, edge: float = 3.0
) -> dict[str, Value]:
    """What ``_plain`` has everywhere; areas at the collapse of 0.4 mm, out to the rim's edge on both sides."""
    trap = (rim - width / 2) * (height - 0.4)
    return {
        "rib_width": width, "rib_width_root": width, "rib_height": height, "gap": 0.0, "melt_area": 0.4 * width,
        "cover_thickness": thick, "beam_clear": 1.0, "trap_area_inner": trap, "trap_area_outer": trap,
        "clamp_land": edge - width / 2, "clamp_tilt": 0.0,
    }  # fmt: skip


def _model(base: Any, cover: Any, note: str, *seams: SeamTruth, parts: tuple[Node, ...] = (), **more: Any) -> HardModel:
    nodes = (Node("sensor housing", base, colour=DARK), Node("window lid", cover, colour=CLEAR), *parts)
    root = Node("weather station", None, tuple((node, HERE) for node in nodes))
    return HardModel(root, seams, note=note, **more)


def _seam(track: AnyTrack, **values: float) -> SeamTruth:
    return SeamTruth(1, 0, (along(track, _values(**values)),))


def kidney() -> HardModel:
    """Facets of the low, bent flanks tilt; on this outline that does not average out."""
    points = [(42, 0), (36, 22), (12, 31), (-12, 31), (-36, 22), (-42, 0), (-34, -16), (-16, -16), (0, -11)]
    track = closed_spline([*points, (16, -16), (34, -16)])
    return _model(*_plain(track), "A free curve that is nowhere its own mirror image.", _seam(track))


def shroud_with_pins() -> HardModel:
    """A connector's shroud beside the wall, three pins moulded in."""
    base, cover = _plain(RECT)
    base = cut(fuse(base, box((30, -10, -13.5), (52, 10, -3))), box((36, -8.5, -12), (53, 8.5, -4.5)))
    pins = [box((20, y - 0.3, -8.6), (48, y + 0.3, -8)) for y in (-5, 0, 5)]
    parts = tuple(Node("pin", pin, colour=GREY) for pin in pins)
    model = _model(cut(base, *pins), cover, "A shroud, and pins through the wall.", _seam(RECT), parts=parts)
    return model.turned(motion((0, 90, 0), (10, 20, 30)))


def oval_with_lugs() -> HardModel:
    """Straight sides and half circles; screwing lugs with bushes outside."""
    half = Line((-20, -15), (20, -15)), Line((20, 15), (-20, 15))
    ends = Arc((20, 0), 15, -math.pi / 2, math.pi), Arc((-20, 0), 15, math.pi / 2, math.pi)
    track = Track("oval", (half[0], ends[0], half[1], ends[1]))
    base, cover = _plain(track)
    parts = []
    for x in (-41, 41):
        hole = math.copysign(43, x)
        base = cut(fuse(base, cylinder((x, 0, -15), 5, 10)), cylinder((hole, 0, -16), 2, 12))
        bush = cut(cylinder((hole, 0, -15), 2, 10), cylinder((hole, 0, -16), 1.4, 12))
        parts.append(Node("bush", bush, colour=GREY))
    model = _model(base, cover, "Lugs outside, with bushes.", _seam(track), parts=tuple(parts))
    return model.turned(motion((70, -33, 10), (40, 50, -60)))


def cross() -> HardModel:
    a, b = 14, 34
    corners = [(-a, -b), (a, -b), (a, -a), (b, -a), (b, a), (a, a), (a, b), (-a, b), (-a, a), (-b, a)]
    track = rounded_polygon("cross", [*corners, (-b, -a), (-a, -a)], 5)
    return _model(*_plain(track), "Four inner corners and eight outer ones.", _seam(track))


def ring_with_two_ribs() -> HardModel:
    """A ring-shaped housing: one rib round its outside, one round its hole."""
    outer, inner = circle(30), circle(14)
    base = cut(cylinder((0, 0, -15), 33, 14.1), cylinder((0, 0, -16), 11, 20))
    base = cut(base, cut(cylinder((0, 0, -13), 27, 20), cylinder((0, 0, -14), 17, 30)))
    base = fuse(base, wall(outer, -0.6, 0.6, -1.2, 0), wall(inner, -0.6, 0.6, -1.2, 0))
    cover = cut(cylinder((0, 0, 0), 33, 2), cylinder((0, 0, -1), 11, 5))
    paths = along(outer, _values()), along(inner, _values())
    return _model(base, cover, "Two closed ribs about one axis.", SeamTruth(1, 0, paths))


def pillar_in_the_middle() -> HardModel:
    """A pillar with a small round rib of its own welds the cover's middle."""
    base, cover = _plain(RECT)
    base = fuse(base, cylinder((0, 0, -14), 4, 13.1))
    base = fuse(base, cut(cylinder((0, 0, -1.2), 3.2, 1.2), cylinder((0, 0, -3), 2.0, 9)))
    small = along(circle(2.6), {"rib_width": 1.2, "gap": 0.0, "cover_thickness": 2.0})
    return _model(base, cover, "A second, small rib.", SeamTruth(1, 0, (along(RECT, _values()), small)))


def lens_in_the_floor() -> HardModel:
    """A small lens under the floor is welded from below: much shorter than the lid's seam, and a joint all the same."""
    base, cover = _plain(RECT)
    base = cut(base, cylinder((0, 0, -16), 7, 5))
    base = fuse(base, cut(cylinder((0, 0, -15.9), 9.6, 1.2), cylinder((0, 0, -17), 8.4, 4)))
    lens = Node("lens", cylinder((0, 0, -17.4), 11.5, 1.5), colour=CLEAR)
    small = along(circle(9), {"rib_width": 1.2, "gap": 0.0, "cover_thickness": 1.5}, z=-15.9)
    below = SeamTruth(2, 0, (small,), beam=(0.0, 0.0, 1.0))
    return _model(base, cover, "A second cover on the other side.", _seam(RECT), below, parts=(lens,))


HOUSINGS: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        kidney,
        shroud_with_pins,
        oval_with_lugs,
        cross,
        ring_with_two_ribs,
        pillar_in_the_middle,
        lens_in_the_floor,
    )
}
