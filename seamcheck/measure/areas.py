"""Melt and flash traps at any collapse, of the sections of one path: needed later for the materials."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from seamcheck.measure.floor import Floor
from seamcheck.sections.integrals import positive_area
from seamcheck.sections.intervals import Side


@dataclass(frozen=True, slots=True, eq=False)
class SideSections:
    """One side of all sections.

    Attributes
    ----------
    side : only what traps are measured by; the other tables are empty
    edge : (n,) mm from P to the edge of the rib top
    floor : of the trap
    other : (n, k) bool, intervals of another rib
    unknown : (stations,) bool, at which the trap has no area
    """

    side: Side
    edge: np.ndarray
    floor: Floor
    other: np.ndarray
    unknown: np.ndarray

    @staticmethod
    def of(side: Side, edge: np.ndarray, floor: Floor, other: np.ndarray, unknown: np.ndarray) -> SideSections:
        """One side of sections: edge (n,) mm; masks other (n, k) of another rib, unknown (stations,) of no value."""
        nothing = np.empty((len(edge), 0))
        used = replace(
            side, floor_face=nothing, roof_face=nothing, plastic_a=nothing, plastic_b=nothing, stretches=nothing,
            blocked=nothing,
        )  # fmt: skip
        return SideSections(used, edge, floor, other, unknown)


@dataclass(frozen=True, slots=True, eq=False)
class Areas:
    """Areas at a collapse; called with mm from initial contact: melt, inner and outer trap, mm² at each station.

    Attributes
    ----------
    inner, outer : both sides of n sections
    of : (stations,) number of each station's section
    late : (n,) mm, how much later than at initial contact the cover reaches the rib
    contact : mm, smallest gap of the seam
    width, deepest : (n,) mm, see measure_trap
    unknown : (stations,) bool, at which there is no melt area
    """

    inner: SideSections
    outer: SideSections
    of: np.ndarray
    late: np.ndarray
    contact: float
    width: np.ndarray
    deepest: np.ndarray
    unknown: np.ndarray

    def __call__(self, collapse: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        depth = np.maximum(collapse - self.late, 0.0)[:, None]
        melt = sum(melt_area(s.side, s.floor, depth) for s in (self.inner, self.outer))
        inner, outer = (self._trap(s, collapse) for s in (self.inner, self.outer))
        return np.where(self.unknown, np.nan, np.asarray(melt)[self.of]), inner, outer

    def _trap(self, one: SideSections, collapse: float) -> np.ndarray:
        from seamcheck.measure.flash_trap import measure_trap  # here: who reads kept areas needs nothing that measures

        drop = collapse + self.contact
        trap = measure_trap(one.side, one.edge, one.floor, drop, self.width, self.deepest, one.other)
        return np.where(one.unknown, np.nan, trap.area[self.of])


def melt_area(side: Side, floor: Floor, collapse: float | np.ndarray) -> np.ndarray:
    """Area of the rib above the collapse level on one side of P; collapse mm, one for all or (n, 1)."""
    columns = np.arange(side.a.shape[1])[None, :]
    exists = np.isfinite(side.b)
    top_a, top_b = side.floor_a + collapse, side.floor_b + collapse
    ended = exists & ~((top_a > 0) | (top_b > 0))
    first = np.where(ended.any(axis=1), np.argmax(ended, axis=1), side.a.shape[1])
    first = np.where(floor.index >= 0, np.minimum(first, floor.index), first)
    return positive_area(side, top_a, top_b, exists & (columns < first[:, None]))
