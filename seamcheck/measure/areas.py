"""Melt and flash traps at any collapse, of the sections of one path: needed later for the materials."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.sections.integrals import Strips, centre_of_area, positive_area

_REACHED = 1e-6  # mm between the lowered opposite part and a wall that it has reached


class RibSide(Struct, frozen=True, eq=False):
    """One side of the rib in n sections.

    above : heights of the rib over its top, from P to the floor; sections : n
    """

    above: Strips
    sections: int

    def melted(self, collapse: float | np.ndarray) -> np.ndarray:
        """(n,) mm² of the rib above the collapse level; collapse mm, one for all or (n,)."""
        depth = collapse[self.above.row] if isinstance(collapse, np.ndarray) else collapse
        ended = ~((self.above.value_a + depth > 0) | (self.above.value_b + depth > 0))
        first = self.above.first(ended, self.sections)
        first = np.where(first >= 0, first, len(ended))
        return positive_area(self.above, depth, np.arange(len(ended)) < first[self.above.row], self.sections)


class TrapRoom(Struct, frozen=True, eq=False):
    """The room of the flash trap on one side of n sections, whatever the opposite part is lowered by.

    Attributes
    ----------
    gaps : between opposite part and floor as drawn, from the edge of the rib top to where the trap ends
    on_wall : (k,) bool, those over the wall that ends the trap where the opposite part meets it
    end : (n,) mm from P to the trap's end; with a wall, to where that begins
    by_wall : (n,) bool
    share : (n,) of the room that belongs to this trap; NaN where there is none
    """

    gaps: Strips
    on_wall: np.ndarray
    end: np.ndarray
    by_wall: np.ndarray
    share: np.ndarray

    def end_at(self, drop: float) -> np.ndarray:
        """(n,) mm from P to the trap's end, the opposite part lowered by drop mm."""
        gaps, n = self.gaps, len(self.end)
        if not self.by_wall.any() or not len(gaps.a):
            return self.end
        gap_a, gap_b = gaps.value_a - drop, gaps.value_b - drop
        reached, at_once = (gaps.first(self.on_wall & (gap <= _REACHED), n) for gap in (gap_b, gap_a))
        with np.errstate(invalid="ignore", divide="ignore"):
            part = np.clip(gap_a[reached] / (gap_a[reached] - gap_b[reached]), 0, 1)
        met = gaps.a[reached] + (gaps.b[reached] - gaps.a[reached]) * part
        begins = (at_once >= 0) & ((reached < 0) | (at_once <= reached))
        wall = np.where(begins, gaps.a[at_once], np.where(reached >= 0, met, self.end))
        return np.where(self.by_wall, wall, self.end)

    def area(self, drop: float, end: np.ndarray | None = None) -> np.ndarray:
        """(n,) mm², NaN where there is no trap; end : as of end_at."""
        inside = self._inside(self.end_at(drop) if end is None else end)
        return np.asarray(positive_area(self.gaps, -drop, inside, len(self.end)) * self.share)

    def centre(self, drop: float, end: np.ndarray) -> np.ndarray:
        """(n,) mm from P to the middle of the area; NaN where there is none."""
        found = centre_of_area(self.gaps, -drop, self._inside(end), len(self.end))
        return np.where(np.isnan(self.share), np.nan, found)

    def _inside(self, end: np.ndarray) -> np.ndarray:
        return np.asarray(self.gaps.a < end[self.gaps.row] - 1e-6)


class SideAreas(Struct, frozen=True, eq=False):
    """One side of all sections: rib and trap; unknown : (stations,) bool, at which the trap has no area."""

    rib: RibSide
    trap: TrapRoom
    unknown: np.ndarray


class Areas(Struct, frozen=True, eq=False):
    """Areas at a collapse; called with mm from initial contact: melt, inner and outer trap, mm² at each station.

    Attributes
    ----------
    inner, outer : both sides of n sections
    of : (stations,) number of each station's section
    late : (n,) mm, how much later than at initial contact the cover reaches the rib
    contact : mm, smallest gap of the seam
    unknown : (stations,) bool, at which there is no melt area
    """

    inner: SideAreas
    outer: SideAreas
    of: np.ndarray
    late: np.ndarray
    contact: float
    unknown: np.ndarray

    def __call__(self, collapse: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        depth = np.maximum(collapse - self.late, 0.0)
        melt = self.inner.rib.melted(depth) + self.outer.rib.melted(depth)
        inner, outer = (
            np.where(side.unknown, np.nan, side.trap.area(collapse + self.contact)[self.of])
            for side in (self.inner, self.outer)
        )
        return np.where(self.unknown, np.nan, melt[self.of]), inner, outer
