"""Where two parts touch or nearly touch, whether or not it could be a seam."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.constants import LARGEST_GAP, LARGEST_OVERLAP, ON_EACH_OTHER, WIDEST
from seamcheck.joint.contact import STEEPEST, Surface
from seamcheck.joint.frame import Frame
from seamcheck.joint.patches import Patch
from seamcheck.joint.regions import seen_facets

_FULL_WIDTH = 0.6  # of the band's width: uncovered over less of it is an edge, over more a stretch
_BACK = 1.1  # band widths: from a stretch that lies one width from what is covered back to its end
_AT = 0.1  # band widths, within which a stretch meets what is covered
_LONG = 6.0  # band widths: a shorter uncovered stretch is a hole or a notch in the other part
_SLIVER = 0.02  # mm between the facets of one surface
ALL_OPPOSED = 0.97
"""Share of a band that is opposed, from which nothing counts as uncovered."""


class Meeting(Struct, frozen=True, eq=False):
    """The faces of one part that face another one along a direction.

    one, other : part ids; frame : z from one into the other
    patches : all bands and faces that are opposed, the largest opposed area first
    """

    one: str
    other: str
    frame: Frame
    patches: tuple[Patch, ...]

    @property
    def pair(self) -> frozenset[str]:
        return frozenset((self.one, self.other))

    @property
    def seated(self) -> tuple[Patch, ...]:
        """Those that lie on the other part."""
        return tuple(p for p in self.patches if abs(p.gap) <= ON_EACH_OTHER)

    @property
    def area(self) -> float:
        """mm², over which the two lie on each other."""
        return float(sum(opposed_area(p) for p in self.seated))


def opposed_area(patch: Patch) -> float:
    """mm² of a band that the other part opposes."""
    return float(patch.region.area * patch.share)


def is_broad(patch: Patch) -> bool:
    """Whether a face is a pad rather than a band: as wide as it is long, or wider than any lap."""
    return patch.length < 4 * patch.width or patch.width > WIDEST


def covered(region: BaseGeometry, level: float, opposite: Surface, frame: Frame) -> BaseGeometry:
    """What of a band has the other part right over it.

    Parameters
    ----------
    region : the band seen along the frame's z, mm; level : mm, its height; opposite : facets of the other part
    """
    corners = frame.local(opposite.corners[opposite.normal @ frame.axes[2] < -STEEPEST])
    height = corners[:, :, 2] - level
    near = (height.max(axis=1) >= -LARGEST_OVERLAP) & (height.min(axis=1) <= LARGEST_GAP)
    x0, y0, x1, y1 = region.bounds
    flat = corners[near][:, :, :2]
    over = (flat.max(axis=1) >= (x0, y0)).all(axis=1) & (flat.min(axis=1) <= (x1, y1)).all(axis=1)
    return region.intersection(seen_facets(flat[over]).buffer(_SLIVER))


def bare(region: BaseGeometry, over: BaseGeometry) -> BaseGeometry:
    """The long stretches of a band without the other part over them, and what sticks out from under the other part.

    A short stretch between two that are covered is a notch in the other part and stays; one that the rest of the band
    meets at one end only is a tab or a dead end.

    Parameters
    ----------
    region : the band; over : what of it has

    Returns
    -------
    polygons; empty where the other part lies over all of it but for holes and edges
    """
    width = 2 * region.area / region.length
    half = _FULL_WIDTH / 2 * width
    left = region.difference(over)
    broad = left.buffer(-half, join_style="mitre").buffer(half, join_style="mitre")  # without strips at an edge
    away = region.difference(over.buffer(width, quad_segs=4))  # a stretch that is narrower than the rest of the band
    rest = broad.union(left.intersection(away.buffer(_BACK * width, quad_segs=4)))

    def sticks_out(piece: BaseGeometry) -> bool:
        meets = [
            part for part in _parts(over.intersection(piece.buffer(_AT * width))) if part.area > (_AT * width) ** 2
        ]
        return bool(piece.intersects(away)) and len(meets) <= 1

    return shapely.union_all([p for p in _parts(rest) if p.length / 2 > _LONG * width or sticks_out(p)])


def along(region: BaseGeometry, over: BaseGeometry) -> float:
    """Share (0 to 1) of a band's length with the other part over it, be that as wide as the band or not."""
    reach = region.area / region.length  # half the band's width
    return float(region.intersection(over.buffer(reach, quad_segs=4)).area / region.area)


def _parts(shape: BaseGeometry) -> Iterable[shapely.Polygon]:
    return [part for part in shapely.get_parts(shape) if part.geom_type == "Polygon" and part.area > 0]


def without(region: BaseGeometry, taken: BaseGeometry, level: float, seen: Frame, frame: Frame) -> BaseGeometry:
    """A region in ``frame`` less another one that was seen in the frame ``seen`` at a height (mm)."""
    if taken.is_empty:
        return region

    def moved(flat: np.ndarray) -> np.ndarray:
        return frame.local(seen.world(np.column_stack([flat, np.full(len(flat), level)])))[:, :2]

    return region.difference(shapely.transform(taken, moved).buffer(_SLIVER))
