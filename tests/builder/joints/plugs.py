"""Lids held at their sides only: nothing to weld from above (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from ..hard.truth import motion
from ..ops import box, cylinder, fuse
from ..track import AnyTrack, rounded_rectangle
from .shapes import LARGE, MEDIUM, ROUND, SMALL, lid, open_box, plate, wall
from .truth import JointCase, case, named

TURNED = motion((35, -20, 50), (20, -30, 10))
PLUG: dict[str, Any] = {"reasons": ("no-seam",), "says": (r"\bplay\b|\bplug|\bsides?\b|\bsnap",)}
"""The answer to a plug fit: refused, in words that name it."""


def _plug(track: AnyTrack, play: float, thick: float, **more: Any) -> JointCase:
    """A plate between the walls (2 mm) of a box, flush with their top, nothing below it."""
    base = open_box(track, [(-2, 0), (0, 0)])
    note = f"A plug lid with {play:g} mm play at its sides and no land."
    return case([base, plate(track, -2 - play, -thick, 0)], note=note, **PLUG, **more)


def snap_plug() -> JointCase:
    """A plug lid, 0.1 mm play; its bead reaches 0.3 mm into a groove of the wall and clears it by 0.1 mm."""
    base = open_box(MEDIUM, [(-2.5, -2.5), (-2.1, -2.1), (-2.1, -1.9), (-2.5, -1.5), (-2.5, 0), (0, 0)])
    cover = lid(MEDIUM, [(-2.6, -4), (-2.6, -2.4), (-2.2, -2.05), (-2.2, -1.95), (-2.6, -1.6)], 0)
    return case([base, cover], note="A plug lid that snaps in.", **PLUG)


def glass_in_a_shell() -> JointCase:
    """A glass of 1.5 mm stands 0.15 mm inside a shell of 1.6 mm wall; the bottom lies 0.5 mm below the shell."""
    shell = wall(MEDIUM, -1.6, 0, -9, 0)
    glass, bottom = plate(MEDIUM, -1.75, -1.5, 0), plate(MEDIUM, 0, -11.5, -9.5)
    says = (r"\bplay\b|\bplug|\bsides?\b|\b0\.50?\b",)
    note = "A glass in a shell, a bottom 0.5 mm below it."
    return case([bottom, glass, shell], note=note, turn=TURNED, reasons=("no-seam",), says=says)


def glass_beside_a_bezel() -> JointCase:
    """A thick glass of 4 mm beside the wall of a deep frame: the longest faces are upright."""
    shell = wall(ROUND, -3, 0, -30, 0)
    says = (r"\bplay\b|\bplug|\bsides?\b|tube in a socket",)
    reasons = ("no-seam", "unsupported")
    parts = [shell, plate(ROUND, -3.1, -5, -1)]
    return case(parts, note="A round glass 0.1 mm inside a tube.", reasons=reasons, says=says)


def plug_into_the_walls() -> JointCase:
    """A plug lid of 3 mm, 0.1 mm play; a bar on it runs 1.5 mm into the walls of 2 mm on the two short sides."""
    base = open_box(MEDIUM, [(-2, 0), (0, 0)])
    cover = fuse(plate(MEDIUM, -2.1, -3, 0), box((-29.5, -8, -3), (29.5, 8, 0)))
    says = (r"144 mm³.*0\.10 mm of play: a plug",)
    return case([base, cover], note="A plug lid in two walls.", reasons=("no-seam",), says=says, volume=144.0)


def key_plate() -> JointCase:
    """A plate of 1.5 mm, 0.3 mm inside a case, held by six posts of 3 mm radius that end 0.2 mm below it."""
    track = rounded_rectangle(140, 90, 6)
    base = open_box(track, [(-4, 0), (0, 0)], depth=14)
    for x in (-50, 0, 50):
        for y in (-32, 32):
            base = fuse(base, cylinder((x, y, -12.5), 3, 8.3))
    return case([base, plate(track, -4.3, -4, -2.5)], note="An inset plate above posts, 0.3 mm play.", **PLUG)


def lid_between_two_walls() -> JointCase:
    """A slide-in lid: 60 x 40 between two long walls, 0.1 mm play there, open at both ends."""
    base = fuse(box((-30, -22, -20), (30, 22, -18)), box((-30, -22, -19), (30, -20, 0)))
    base = fuse(base, box((-30, 20, -19), (30, 22, 0)))
    cover = box((-30, -19.9, -2), (30, 19.9, 0))
    return case([cover, base], note="A lid that slides in between two walls.", **PLUG)


PLUGS: dict[str, Callable[[], JointCase]] = named(
    snap_plug,
    glass_in_a_shell,
    glass_beside_a_bezel,
    plug_into_the_walls,
    key_plate,
    lid_between_two_walls,
    plug_005=lambda: _plug(SMALL, 0.05, 2),
    plug_010=lambda: _plug(MEDIUM, 0.10, 3),
    plug_020=lambda: _plug(LARGE, 0.20, 4, order=(1, 0), turn=TURNED),
    plug_040=lambda: _plug(MEDIUM, 0.40, 2, turn=motion((90, 0, 0), (0, 0, 0))),
)
