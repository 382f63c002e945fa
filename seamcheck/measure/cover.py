"""The cover over the rib: thickness, beam path, and the gap below it."""

from __future__ import annotations

import numpy as np

from seamcheck.measure.additions import Column, Columns
from seamcheck.measure.table import Shade
from seamcheck.sections.band import DEFLECTION
from seamcheck.sections.intervals import Side
from seamcheck.sections.section import Section, extreme_of, within_strip

_PARTED = 2 * DEFLECTION  # mm, so far the facets of two faces may part or overlap along an arc that they share


def gap_columns(section: Section) -> Columns:
    """The gap at P, its smallest and its largest over the rib top."""
    gaps = {"gap": section.gap, "gap_min": section.gap_min, "gap_max": section.gap_max}
    return {key: Column.of(values, "no-opposite") for key, values in gaps.items()}


def cover_columns(section: Section, spot: float | None = None) -> tuple[Columns, Shade]:
    """Thickness of the cover over the rib top; light over the spot's width, and how much of that is shaded.

    Parameters
    ----------
    spot : mm, width of the beam; None: as wide as the rib top
    """
    outer, inner = section.outer, section.inner
    over_p = outer.stretches[:, 0] > 0
    seen = (outer.stretches > 0).any(axis=1) & (inner.stretches > 0).any(axis=1)
    missing = np.where(over_p, "broken-geometry", np.where(seen, "hole", "no-cover"))
    columns = {"cover_thickness": Column.of(np.where(over_p, outer.plastic_a[:, 0], np.nan), missing)}
    least = np.full(len(section.s), np.nan)
    most = least.copy()
    clear = np.zeros(len(section.s))
    total = np.zeros(len(section.s))
    hole = np.zeros(len(section.s), dtype=bool)
    dark = []
    for out, side, edge in ((-1.0, inner, section.inner_edge), (1.0, outer, section.outer_edge)):
        strip = within_strip(side, edge)
        run = np.where(strip, side.b - side.a, 0.0)
        covered = strip & (side.stretches > 0) & (run > _PARTED)
        hole |= (strip & (side.stretches == 0) & (run > _PARTED)).any(axis=1)
        plastic = np.where(covered[None], np.stack([side.plastic_a, side.plastic_b]), np.nan)
        least = np.fmin(least, extreme_of(np.fmin, plastic))
        most = np.fmax(most, extreme_of(np.fmax, plastic))
        taken = strip if spot is None else within_strip(side, np.full(len(edge), spot / 2))
        run = np.where(taken, side.b - side.a, 0.0)
        total += run.sum(axis=1)
        # beside the rib light must pass through cover; over the rib a hole in it is another finding
        lit = (side.stretches == 1) | (strip & (side.stretches == 0))
        lit &= ~side.blocked
        clear += (run * lit).sum(axis=1)
        dark.append(_shaded(taken & (run > _PARTED) & ~lit, side, out))
    strip_missing = np.where(hole | (~over_p & seen), "hole", np.where(over_p, "no-rib", "no-cover"))
    columns["cover_thickness_min"] = Column.of(np.where(hole, np.nan, least), strip_missing)
    columns["cover_thickness_max"] = Column.of(np.where(hole, np.nan, most), strip_missing)
    with np.errstate(invalid="ignore", divide="ignore"):
        share = clear / total
    columns["beam_clear"] = Column.of(np.where(over_p | seen, np.round(share, 9), np.nan), "no-cover")
    return columns, dark[0].joined(dark[1])


def _shaded(dark: np.ndarray, side: Side, out: float) -> Shade:
    """Intervals of one side that a parallel beam does not reach; out is +1 on the outer side."""
    station, k = np.nonzero(dark)
    ends = np.sort(out * np.column_stack([side.a[station, k], side.b[station, k]]), axis=1)
    count = len(station)
    return Shade(
        station, ends[:, 0], ends[:, 1], np.zeros(count), np.full((count, 3), np.nan), np.full(count, "", dtype=object),
        np.zeros(count, dtype=bool),
    )  # fmt: skip
