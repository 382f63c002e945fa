"""Melt balance: what the rib gives at a collapse, what the traps hold, and the collapse window.

Depths are counted downward from the rib's own top. ``collapse`` is counted from initial contact, the
same at every station; where the gap is larger by ``late``, the rib collapses only by ``collapse - late``.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct
from numpy.typing import ArrayLike

AreasAt = Callable[[float], tuple[np.ndarray, np.ndarray, np.ndarray]]
"""collapse (mm, from initial contact) -> (melt, inner trap, outer trap), each (n,) mm²."""

FULL = 99.0
"""Highest trap fill that is reported; stands for a trap that has no area left at all."""


class RibSection(Struct, frozen=True, eq=False):
    """The rib's section: straight flanks with draft and fillets at the top; arrays broadcast over stations.

    Attributes
    ----------
    width : mm, between the flank lines extended to the top (the virtual width)
    tan_inner, tan_outer : tangents of the flanks' drafts
    radius : mm, of the fillets at the top
    """

    width: np.ndarray
    tan_inner: np.ndarray
    tan_outer: np.ndarray
    radius: np.ndarray

    def displaced(self, depth: ArrayLike) -> np.ndarray:
        """Section area above ``depth`` (mm below the top), mm², of any shape; 0 for a depth of 0 or less."""
        deep = np.maximum(np.asarray(depth, dtype=float), 0.0)
        area = self.width * deep + deep**2 * (self.tan_inner + self.tan_outer) / 2.0
        for tan in (self.tan_inner, self.tan_outer):
            area = area - self._fillet_loss(deep, tan)
        return np.asarray(np.maximum(area, 0.0))

    def _fillet_loss(self, depth: np.ndarray, tan: np.ndarray) -> np.ndarray:
        """Area that one fillet takes above ``depth``: flank line less arc, integrated in closed form."""
        draft = np.arctan(tan)
        tangent = self.radius * np.tan(np.pi / 4.0 - draft / 2.0)
        reach = np.minimum(depth, self.radius * (1.0 - np.sin(draft)))
        rise = self.radius - reach
        with np.errstate(invalid="ignore", divide="ignore"):
            cosine = np.where(self.radius > 0.0, np.clip(rise / self.radius, -1.0, 1.0), 1.0)
        under_arc = (
            self.radius**2 * np.arccos(cosine) - rise * np.sqrt(np.maximum(self.radius**2 - rise**2, 0.0))
        ) / 2.0
        return np.asarray(reach**2 * tan / 2.0 + tangent * reach - under_arc)


def rib_section(
    top: np.ndarray, mid: np.ndarray, height: np.ndarray, draft_inner: np.ndarray, draft_outer: np.ndarray
) -> RibSection:
    """The section that fits surveyed widths at the top and at half height (n,) mm and drafts (n,) degrees.

    Fillets of both sides alike explain by how much the top is narrower than the extended flank lines.
    """
    tan_inner, tan_outer = np.tan(np.radians(draft_inner)), np.tan(np.radians(draft_outer))
    virtual = mid - height / 2.0 * (tan_inner + tan_outer)
    both = sum(np.tan(np.pi / 4.0 - np.arctan(tan) / 2.0) for tan in (tan_inner, tan_outer))
    radius = np.maximum(virtual - top, 0.0) / both
    radius = np.where(radius < 0.002, 0.0, radius)  # what the survey can't tell from a sharp edge
    return RibSection(np.where(radius > 0.0, virtual, top), tan_inner, tan_outer, radius)


class TrapSection(Struct, frozen=True, eq=False):
    """One flash trap: flat floor, upright wall, the rib's flank; closed by the cover's underside.

    ``wall`` (mm) is how far the wall stands from the flank line at the rib's top, ``height`` (mm) the floor
    below the rib's top, ``tan`` the tangent of the flank's draft.
    """

    wall: np.ndarray
    height: np.ndarray
    tan: np.ndarray

    def area(self, depth: ArrayLike) -> np.ndarray:
        """Trap area with the cover's underside ``depth`` mm below the rib top, mm², of any shape; 0 on the floor."""
        deep = np.minimum(np.asarray(depth, dtype=float), self.height)
        return np.asarray(
            np.maximum(self.wall * (self.height - deep) - self.tan * (self.height**2 - deep**2) / 2.0, 0.0)
        )


def trap_section(area: np.ndarray, depth: np.ndarray, height: np.ndarray, draft: np.ndarray) -> TrapSection:
    """The trap of ``area`` (n,) mm² with the cover ``depth`` (n,) mm below the rib top; NaN where there is none."""
    tan = np.tan(np.radians(draft))
    with np.errstate(divide="ignore", invalid="ignore"):
        left = height - depth
        wall = np.where(left > 1e-6, (area + tan * (height**2 - depth**2) / 2.0) / left, np.nan)
    return TrapSection(wall, height, tan)


def fill(melt: np.ndarray, trap: np.ndarray, expansion: float, share: float = 1.0) -> np.ndarray:
    """Share of a trap that the melt fills, any shape; NaN where there is no trap.

    expansion · share · melt / trap (mm²), at most FULL
    """
    with np.errstate(divide="ignore", invalid="ignore"):
        value = expansion * share * np.asarray(melt, dtype=float) / np.asarray(trap, dtype=float)
    value = np.where((np.asarray(trap) <= 0.0) & (np.asarray(melt) > 0.0), FULL, value)
    return np.where((np.asarray(trap) <= 0.0) & (np.asarray(melt) <= 0.0), 0.0, np.minimum(value, FULL))


def both_traps(inner: np.ndarray, outer: np.ndarray) -> np.ndarray:
    """(n,) mm², area of both traps; NaN only where neither side has one."""
    neither = np.isnan(inner) & np.isnan(outer)
    return np.where(neither, np.nan, np.nan_to_num(inner) + np.nan_to_num(outer))


def bend_factor(curvature: np.ndarray, offset: np.ndarray) -> np.ndarray:
    """Length along the path at ``offset`` (n,) mm beside it, per mm of path; never below 0.

    1 - κ u, with the curvature κ (n,) in 1/mm
    """
    return np.asarray(np.maximum(1.0 - curvature * offset, 0.0))


def largest_holding(collapses: np.ndarray, surplus: np.ndarray) -> np.ndarray:
    """Largest collapse (mm) at which the traps still hold the melt, for each station.

    Parameters
    ----------
    collapses : (m,) mm, ascending
    surplus : (m, n) mm², melt less the trap area that it may take, rising with the collapse; NaN where unknown

    Returns
    -------
    (n,) mm, straight between the rows; inf where the traps hold it up to the last collapse, NaN where
        unknown.
    """
    known = np.isfinite(surplus).all(axis=0)
    over = surplus > 0.0
    first = np.argmax(over, axis=0)
    held = np.full(surplus.shape[1], np.inf)
    for i in np.flatnonzero(known & over.any(axis=0)):
        k = int(first[i])
        if k == 0:
            held[i] = 0.0
            continue
        below, above = surplus[k - 1, i], surplus[k, i]
        held[i] = collapses[k - 1] + (collapses[k] - collapses[k - 1]) * (-below) / (above - below)
    held[~known] = np.nan
    return held


class AreaGrid(Struct, frozen=True, eq=False):
    """Melt and trap areas of all stations at a row of collapses; straight between the rows.

    collapses : (m,) mm from initial contact, ascending
    melt, inner, outer : (m, n) mm²
    """

    collapses: np.ndarray
    melt: np.ndarray
    inner: np.ndarray
    outer: np.ndarray

    @property
    def traps(self) -> np.ndarray:
        """(m, n) mm², both traps together; a side without a trap counts nothing beside one that has a trap."""
        return both_traps(self.inner, self.outer)

    def melt_at(self, collapse: float | np.ndarray) -> np.ndarray:
        """Return the displaced area (n,) mm² at a collapse, (k, n) at k of them; the last row beyond the grid."""
        c = self.collapses
        k = np.clip(np.searchsorted(c, collapse) - 1, 0, len(c) - 2)
        share = np.clip((np.asarray(collapse, dtype=float) - c[k]) / (c[k + 1] - c[k]), 0.0, 1.0)[..., None]
        return np.asarray(self.melt[k] + share * (self.melt[k + 1] - self.melt[k]))


def closed_form(
    rib: RibSection, inner: TrapSection, outer: TrapSection, late: np.ndarray, scale: np.ndarray
) -> AreasAt:
    """Return the areas at any collapse by the closed-form sections of every station.

    late : (n,) mm, how much later than initial contact the cover reaches the rib there
    scale : (n,) surveyed melt area over that of ``rib``; takes up what the plain section leaves out
    """

    def areas(collapse: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        depth = collapse - late
        return scale * rib.displaced(depth), inner.area(depth), outer.area(depth)

    return areas


def area_grid(areas_at: AreasAt, collapses: np.ndarray) -> AreaGrid:
    """Areas (mm²) at all ``collapses`` (m,), mm, ascending."""
    melt, inner, outer = (np.array(rows) for rows in zip(*(areas_at(float(c)) for c in collapses), strict=True))
    return AreaGrid(np.asarray(collapses, dtype=float), melt, inner, outer)


def joined(grids: list[AreaGrid]) -> AreaGrid:
    """Return the grids of several paths, which share their collapses, as one."""
    return AreaGrid(
        grids[0].collapses,
        *(np.concatenate([getattr(g, key) for g in grids], axis=1) for key in ("melt", "inner", "outer")),
    )
