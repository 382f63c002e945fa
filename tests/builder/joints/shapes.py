"""Open boxes and lids swept along an outline; o counts outward from the outline, z against the beam (OCP)."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ..hard.strangers import plate, wall
from ..section import chain
from ..solid import swept_solid
from ..track import AnyTrack, circle, rounded_rectangle

SMALL, MEDIUM, LARGE = rounded_rectangle(28, 20, 4), rounded_rectangle(60, 40, 6), rounded_rectangle(180, 120, 14)
ROUND = circle(24)

Corner = tuple[float, float] | tuple[float, float, float]

__all__ = ["LARGE", "MEDIUM", "ROUND", "SMALL", "Corner", "lid", "open_box", "plate", "wall"]


def open_box(track: AnyTrack, top: Sequence[Corner], depth: float = 20.0, floor: float = 2.0) -> Any:
    """A box open above: the section of its wall's top from the inner face to the outer, corners (o, z[, fillet])."""
    inner, outer = top[0][0], top[-1][0]
    return swept_solid(track, chain([(inner, floor - depth, 0), *map(_corner, top), (outer, -depth, 0)]))


def lid(track: AnyTrack, under: Sequence[Corner], top: float) -> Any:
    """A lid flat above: the section of its underside from the middle outward, the last corner on its edge."""
    return swept_solid(track, chain([*map(_corner, under), (under[-1][0], top, 0)]))


def _corner(corner: Corner) -> tuple[float, float, float]:
    o, z, *radius = corner
    return o, z, radius[0] if radius else 0.0
