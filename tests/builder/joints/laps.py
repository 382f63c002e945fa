"""Stepped laps, ledges, tongues in grooves: seated joints without a rib (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..hard.truth import motion
from ..ops import box, cut
from ..track import AnyTrack, rounded_rectangle
from .shapes import LARGE, MEDIUM, ROUND, SMALL, lid, open_box, plate
from .truth import JointCase, JointTruth, case, named

STEPPED = JointTruth(("stepped-lap",), must=("rib-missing",))
LEDGE = JointTruth(("ledge", "flat-lap"), must=("rib-missing",))
TONGUE = JointTruth(("tongue-groove",), must=("rib-missing",), may=("cover-thickness",))


def _stepped(track: AnyTrack, play: float, apart: float, **more: Any) -> JointCase:
    """A wall of 3 mm: its inner half rises 1 mm behind a skirt of the lid that stands on its outer half.

    ``play`` sideways; ``apart`` is the gap above the inner half.
    """
    base = open_box(track, [(-3, 1 - apart), (-1.5, 1 - apart), (-1.5, 0), (0, 0)])
    cover = lid(track, [(-1.5 + play, 1), (-1.5 + play, 0), (0, 0)], 3)
    note = f"A stepped lap, {play:g} mm play, {apart:g} mm above the inner half."
    return case([base, cover], STEPPED, note=note, **more)


def half_shells() -> JointCase:
    """Two shells of equal height with a wall of 3 mm meet in a stepped lap: light would pass 12 mm of wall."""
    base = open_box(MEDIUM, [(-3, 1), (-1.5, 1), (-1.5, 0), (0, 0)], depth=12)
    cover = lid(MEDIUM, [(-3, 10), (-3, 1), (-1.45, 1), (-1.45, 0), (0, 0)], 12)
    joint = replace(STEPPED, either=True, may=("cover-thickness", "clamp-land"))
    more = {"reasons": ("ambiguous", "no-seam"), "says": (r"stepped|\blap\b|of plastic",)}
    return case([base, cover], joint, note="Two half shells, stepped.", **more)


def butting_shells() -> JointCase:
    """Two shells of equal height and wall (2 mm) meet face to face, with a decorative step of 0.25 mm outside."""
    base = open_box(LARGE, [(-2, 0), (-0.25, 0), (-0.25, -0.5), (0, -0.5)], depth=15)
    cover = lid(LARGE, [(-2, 13), (-2, 0), (0, 0)], 15)
    joint = JointTruth(("plain-wall", "flat-lap"), either=True, may=("rib-missing", "cover-thickness", "clamp-land"))
    return case([base, cover], joint, note="Wall on wall with a decorative step.", reasons=("ambiguous", "no-seam"))


def _ledged(track: AnyTrack, ledge: float, rim: float, play: float, **more: Any) -> JointCase:
    """A lid on a ledge inside the wall (2 mm), which rises ``rim`` above the ledge; the lid is flush with it."""
    inner, outer = -2 - ledge, -2
    base = open_box(track, [(inner, 0), (outer, 0), (outer, rim), (0, rim)])
    note = f"A lid on a ledge of {ledge:g} mm, {play:g} mm play."
    return case([base, plate(track, outer - play, 0, rim)], LEDGE, note=note, **more)


def bezel_on_a_ledge() -> JointCase:
    """A frame of 6 mm with a window lies on a ledge of 1 mm, 0.1 mm inside the wall."""
    base = open_box(MEDIUM, [(-3, 0), (-2, 0), (-2, 1.5), (0, 1.5)])
    bezel = cut(plate(MEDIUM, -2.1, 0, 1.5), plate(rounded_rectangle(44, 24, 3), 0, -1, 3))
    return case([base, bezel], LEDGE, note="A bezel on a ledge.", turn=motion((-90, 0, 0), (0, 0, 0)))


def _tongued(track: AnyTrack, base_top: list, under: list, note: str, **more: Any) -> JointCase:
    return case([open_box(track, base_top), lid(track, under, 2)], TONGUE, note=note, **more)


GROOVE = [(-3.6, 0), (-2.4, 0), (-2.4, -1.5), (-1.2, -1.5), (-1.2, 0), (0, 0)]
"""A wall of 3.6 mm with a groove 1.2 wide and 1.5 deep in its middle."""


def tongue_in_a_groove() -> JointCase:
    """A tongue of the lid, 1.0 x 1.3 mm, with 0.1 mm play at both sides and 0.2 mm above the groove's floor."""
    under = [(-3.6, 0), (-2.3, 0), (-2.3, -1.3), (-1.3, -1.3), (-1.3, 0), (0, 0)]
    return _tongued(MEDIUM, GROOVE, under, "A tongue in a groove, seated on both lands.")


def tongue_with_snap() -> JointCase:
    """As before with 0.05 mm play; beads of 0.15 mm at the tongue's sides snap into notches of the groove."""
    top = [
        *[(-3.6, 0), (-2.4, 0), (-2.4, -0.5), (-2.6, -0.7), (-2.4, -0.9), (-2.4, -1.5)],
        *[(-1.2, -1.5), (-1.2, 0), (0, 0)],
    ]
    under = [
        *[(-3.6, 0), (-2.35, 0), (-2.35, -0.55), (-2.5, -0.7), (-2.35, -0.85), (-2.35, -1.3)],
        *[(-1.25, -1.3), (-1.25, 0), (0, 0)],
    ]
    return _tongued(MEDIUM, top, under, "A tongue that snaps in.", turn=motion((15, 30, 45), (1, 2, 3)), order=(1, 0))


def tongue_on_the_base() -> JointCase:
    """The tongue stands on the base (1.0 x 1.3), the groove is in a lid of 3.5 mm; both lands are seated."""
    base = open_box(LARGE, [(-4, 0), (-2.5, 0), (-2.5, 1.3), (-1.5, 1.3), (-1.5, 0), (0, 0)])
    cover = lid(LARGE, [(-4, 0), (-2.6, 0), (-2.6, 1.5), (-1.4, 1.5), (-1.4, 0), (0, 0)], 3.5)
    return case([base, cover], TONGUE, note="The tongue is on the base.")


def land_interrupted_by_a_plug() -> JointCase:
    """Butt land outside, tongue in a groove inside it; a plug's opening of 9 mm cuts the wall of both parts."""
    under = [(-3.6, 0), (-2.3, 0), (-2.3, -1.3), (-1.3, -1.3), (-1.3, 0), (0, 0)]
    opening = box((24, -4.5, -4), (32, 4.5, 1))
    base, cover = cut(open_box(MEDIUM, GROOVE), opening), cut(lid(MEDIUM, under, 2), opening)
    joint = replace(TONGUE, closed=False, may=("seam-open", "cover-thickness"))
    return case([base, cover], joint, note="A tongue and its lands, interrupted at a plug.")


LAPS: dict[str, Callable[[], JointCase]] = named(
    half_shells,
    butting_shells,
    bezel_on_a_ledge,
    tongue_in_a_groove,
    tongue_with_snap,
    tongue_on_the_base,
    land_interrupted_by_a_plug,
    stepped_tight=lambda: _stepped(MEDIUM, 0.0, 0.0),
    stepped_005=lambda: _stepped(MEDIUM, 0.05, 0.0, turn=motion((70, -33, 10), (4, 5, -6))),
    stepped_outer_only=lambda: _stepped(LARGE, 0.1, 0.2, order=(1, 0)),
    ledge_10=lambda: _ledged(MEDIUM, 1.0, 2.0, 0.1),
    ledge_20=lambda: _ledged(LARGE, 2.0, 2.0, 0.2, order=(1, 0)),
    ledge_30=lambda: _ledged(LARGE, 3.0, 2.5, 0.3, turn=motion((180, 0, 0), (0, 0, 0))),
    ledge_round=lambda: _ledged(ROUND, 1.2, 1.5, 0.05),
    ledge_small=lambda: _ledged(SMALL, 0.8, 1.0, 0.05),
)
