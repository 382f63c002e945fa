"""Covers as they are designed: logos, engraved text, inserts, parts that hang on them, screw holes (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from ..ops import box, cut, cylinder, fuse
from ..track import rounded_rectangle
from .housings import GREY, _model, _plain, _seam, _values
from .truth import HardModel, Node, SeamTruth, along

TRACK = rounded_rectangle(64, 44, 8)


def _ring(x: float, y: float, radius: float, stroke: float, low: float, high: float) -> Any:
    return cut(cylinder((x, y, low), radius, high - low), cylinder((x, y, low - 1), radius - stroke, high - low + 2))


def _letters(low: float, high: float, y: float) -> list[Any]:
    """O, L and a full stop over the seam's lower run."""
    return [
        _ring(-8, y, 2.0, 0.5, low, high),
        fuse(box((-3, y - 2, low), (-2.5, y + 2, high)), box((-3, y - 2, low), (-0.5, y - 1.5, high))),
        cylinder((3, y, low), 0.6, high - low),
    ]


def embossed_logo() -> HardModel:
    """Letters 0.3 mm high stand on the cover over the seam: 2.5 mm of plastic there, 2.2 mm elsewhere."""
    base, cover = _plain(TRACK, thick=2.2)
    for letter in _letters(2.1, 2.5, -22.3):
        cover = fuse(cover, letter)
    values = {k: v for k, v in _values(thick=2.2).items() if k not in ("cover_thickness", "clamp_land", "clamp_tilt")}
    seam = SeamTruth(1, 0, (along(TRACK, values),), may=("clamp-land",))
    return _model(base, cover, "Embossed letters over the seam.", seam)


def engraved_text() -> HardModel:
    """Letters engraved 0.2 mm deep in the cover over the seam: 2.0 mm of plastic, the light goes straight on."""
    base, cover = _plain(TRACK, thick=2.2)
    for letter in _letters(2.0, 3.0, -22.3):
        cover = cut(cover, letter)
    values = {k: v for k, v in _values(thick=2.2).items() if k not in ("cover_thickness", "clamp_land", "clamp_tilt")}
    seam = SeamTruth(1, 0, (along(TRACK, values),), may=("clamp-land",))
    return _model(base, cover, "Engraved letters over the seam.", seam)


def gate_stub() -> HardModel:
    """The stub of a gate, 3 mm across and 0.4 mm high, over the rib."""
    base, cover = _plain(TRACK, thick=2.2)
    cover = fuse(cover, cylinder((7.3, -22.05, 2.0), 1.5, 0.6))
    values = {k: v for k, v in _values(thick=2.2).items() if k not in ("cover_thickness", "clamp_land", "clamp_tilt")}
    seam = SeamTruth(1, 0, (along(TRACK, values),), rules=("cover-uniformity",), may=("clamp-land",))
    return _model(base, cover, "The stub of a gate over the seam.", seam)


def insert_in_the_cover() -> HardModel:
    """A bushing moulded into the cover hangs down into the housing and touches nothing."""
    base, cover = _plain(TRACK)
    cover = fuse(cover, cylinder((0, 0, -4), 4, 4.5))
    bush = cut(cylinder((0, 0, -4.5), 2.5, 6.5), cylinder((0, 0, -9), 1.0, 20))
    cover = cut(cover, cylinder((0, 0, -4.5), 2.5, 6.5))
    part = Node("bushing", bush, colour=GREY)
    return _model(base, cover, "A bushing moulded into the cover.", _seam(TRACK), parts=(part,))


def membrane_under_the_cover() -> HardModel:
    """A membrane lies under a vent in the cover and hangs on the cover alone."""
    base, cover = _plain(TRACK)
    cover = cut(cover, cylinder((-10, 0, -1), 2.0, 5))
    membrane = Node("membrane", cylinder((-10, 0, -0.3), 4.0, 0.3), colour=GREY)
    return _model(base, cover, "A membrane glued under the cover.", _seam(TRACK), parts=(membrane,))


def board_on_the_cover() -> HardModel:
    """A board staked to four pins of the cover."""
    base, cover = _plain(TRACK)
    board = box((-18, -12, -4.6), (18, 12, -3))
    for x in (-14, 14):
        for y in (-9, 9):
            cover = fuse(cover, cylinder((x, y, -3), 1.5, 3.5), cylinder((x, y, -5), 0.75, 5))
            board = cut(board, cylinder((x, y, -6), 0.75, 5))
    return _model(base, cover, "A board staked to the cover.", _seam(TRACK), parts=(Node("board", board, colour=GREY),))


def board_between() -> HardModel:
    """A board touches posts of the base below and a pad of the cover above: asked, not assumed."""
    base, cover = _plain(TRACK)
    board = box((-18, -12, -4.6), (18, 12, -3))
    base = fuse(base, cylinder((-14, 0, -14), 2, 9.4), cylinder((14, 0, -14), 2, 9.4))
    cover = fuse(cover, cylinder((0, 0, -3), 3, 3.5))
    seam = SeamTruth(1, 0, (along(TRACK, _values()),), rules=("sink-travel",))
    return _model(base, cover, "A board held by both parts.", seam, parts=(Node("board", board, colour=GREY),))


def hole_over_the_seam() -> HardModel:
    """Four screw holes of the lid cut into the seam; far below them the base has its floor."""
    base, cover = _plain(TRACK)
    for x, y in ((20, -22), (-20, -22), (20, 22), (-20, 22)):
        cover = cut(cover, cylinder((x, y, -1), 1.6, 5))
    values = {k: v for k, v in _values().items() if not k.startswith("clamp")}
    near = tuple((x, y, 0, 4.0) for x, y in ((20, -22), (-20, -22), (20, 22), (-20, 22)))
    seam = SeamTruth(1, 0, (along(TRACK, values, not_within=near),), rules=("cover-hole",), may=("clamp-land",))
    return _model(base, cover, "Screw holes of the lid lie on the seam.", seam)


LIDS: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        embossed_logo, engraved_text, gate_stub, insert_in_the_cover, membrane_under_the_cover, board_on_the_cover,
        board_between, hole_over_the_seam,
    )
}  # fmt: skip
