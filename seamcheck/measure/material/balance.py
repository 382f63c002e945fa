"""Melt along the seam: local collapse, fill of the flash traps, volumes; the section of the document."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from seamcheck.catalogue.known import Known, rounded
from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Column, Columns
from seamcheck.measure.material import melt as me
from seamcheck.measure.material.track import Track
from seamcheck.settings.material import MaterialSettings

ROWS = 31  # collapses at which melt and traps are computed; linear between them, within 0.00001 mm of 481


def lateness(track: Track, initial_contact: float, key: str = "gap") -> np.ndarray:
    """(n,) mm, how much later than initial contact the cover reaches the rib; NaN where the gap is."""
    gap = track.column(key if key in track.survey.columns else "gap")
    return np.maximum(gap - initial_contact, 0.0)


def trap_side(track: Track, side: str) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """(n,) mm² of trap, (n,) mm of rib height and (n,) degrees of draft on one side."""
    height = track.column(f"rib_height_{side}")
    height = np.where(np.isfinite(height), height, track.column("rib_height"))
    draft = np.nan_to_num(track.column(f"draft_{side}"))
    return track.column(f"trap_area_{side}"), height, draft


def sections(
    track: Track, first: float, collapse: float
) -> tuple[me.RibSection, me.TrapSection, me.TrapSection, np.ndarray, np.ndarray]:
    """Rib, inner and outer trap, lateness (n,) mm and scale (n,) of every station, fitted to the survey.

    Where the rib's top has no flat, its fillets meet in the middle. ``first`` is the gap at initial contact (mm),
    ``collapse`` the one of the survey.
    """
    late = lateness(track, first)
    top, mid, height = track.column("rib_width"), track.column("rib_width_mid"), track.column("rib_height")
    inner_area, inner_height, inner_draft = trap_side(track, "inner")
    outer_area, outer_height, outer_draft = trap_side(track, "outer")
    tan = np.tan(np.radians(inner_draft)) + np.tan(np.radians(outer_draft))
    height = np.nan_to_num(height)
    mid = np.where(np.isfinite(mid), mid, top + height / 2.0 * tan)
    top = np.where(np.isnan(top) & np.isfinite(mid), 0.0, top)
    rib = me.rib_section(top, mid, height, inner_draft, outer_draft)
    with np.errstate(invalid="ignore", divide="ignore"):
        scale = track.column("melt_area") / rib.displaced(np.full(len(top), collapse))
    inner = me.trap_section(inner_area, collapse - late, inner_height, inner_draft)
    outer = me.trap_section(outer_area, collapse - late, outer_height, outer_draft)
    return rib, inner, outer, late, scale


def add_melt_columns(
    tracks: Sequence[Track],
    first: float,
    collapse: float,
    expansion: Known,
    areas_at: Mapping[str, me.AreasAt],
    columns: dict[str, dict[str, Column]],
) -> list[me.AreaGrid]:
    """Add the melt columns; return the areas of every path at a row of collapses.

    ``first`` is the gap at initial contact (mm).
    """
    heights = np.concatenate([track.column("rib_height") for track in tracks]) if tracks else np.array([])
    top = float(np.nanmax(heights)) if np.isfinite(heights).any() else 2.0 * collapse
    rows = np.unique(np.append(np.linspace(0.0, max(top, 1.25 * collapse, 0.1), ROWS), collapse))
    grids = []
    for track in tracks:
        rib, inner, outer, late, scale = sections(track, first, collapse)
        areas = areas_at.get(track.id) or me.closed_form(rib, inner, outer, late, scale)
        bend = track.curvature()
        half = np.nan_to_num(track.width()) / 2.0
        inside = _turn_factor(track, "inner", me.bend_factor(bend, -half - np.nan_to_num(inner.wall) / 2.0))
        outside = _turn_factor(track, "outer", me.bend_factor(bend, half + np.nan_to_num(outer.wall) / 2.0))
        bent = _bent(areas, inside, outside)
        grid = me.area_grid(bent, rows)
        grids.append(grid)
        k = int(np.searchsorted(rows, collapse))
        melt, trap_in, trap_out = grid.melt[k], grid.inner[k], grid.outer[k]
        holds = np.minimum(me.largest_holding(rows, expansion.value * grid.melt - grid.traps), rows[-1])
        both = ("melt_area", "trap_area_inner", "trap_area_outer")
        own, e = columns[track.id], expansion.value
        own["local_collapse"] = track.because(collapse - late, "gap")
        own["trap_fill"] = track.because(me.fill(melt, grid.traps[k], e), *both)
        own["trap_fill_inner"] = track.because(me.fill(melt, trap_in, e, 0.5), "melt_area", "trap_area_inner")
        own["trap_fill_outer"] = track.because(me.fill(melt, trap_out, e, 0.5), "melt_area", "trap_area_outer")
        own["trap_holds_up_to"] = track.because(holds, *both)
    return grids


def _turn_factor(track: Track, side: str, fitted: np.ndarray) -> np.ndarray:
    """(n,) length of a trap for each mm of the path: as surveyed, by the middle of its area; else ``fitted``."""
    with np.errstate(invalid="ignore", divide="ignore"):
        surveyed = track.column(f"trap_corner_{side}") / track.column(f"trap_room_{side}")
    return np.where(np.isfinite(surveyed), surveyed, fitted)


def _bent(areas: me.AreasAt, inside: np.ndarray, outside: np.ndarray) -> me.AreasAt:
    """Return the areas with each trap taken by the length that it has beside the path."""

    def bent(collapse: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        melt, trap_in, trap_out = areas(collapse)
        return melt, trap_in * inside, trap_out * outside

    return bent


def melt_section(
    tracks: Sequence[Track],
    columns: Mapping[str, Columns],
    collapse: float,
    expansion: Known,
    settings: MaterialSettings,
) -> dict[str, Any]:
    """The document's section on melt and flash traps."""
    contours = []
    for track in tracks:
        own = columns[track.id]
        width = track.width()
        melt = track.column("melt_area")
        entry: dict[str, Any] = {"contour": track.id, "length_mm": rounded(float(track.length.sum()))}
        known = float(track.length[np.isfinite(melt)].sum())
        entry["measured_length_mm"] = rounded(known)
        for side, sign in (("inner", -1.0), ("outer", 1.0)):
            trap, height, _ = trap_side(track, side)
            reach = width / 2.0 + trap / np.maximum(height - collapse, 1e-6) / 2.0
            entry[f"melt_volume_{side}_mm3"] = rounded(track.volume(melt / 2.0, sign * width / 4.0))
            entry[f"trap_volume_{side}_mm3"] = rounded(track.volume(trap, sign * reach))
        for key in ("trap_fill", "trap_fill_inner", "trap_fill_outer"):
            values = own[key].values
            if np.isfinite(values).any():
                i = int(np.nanargmax(values))
                entry[key] = {
                    "most": rounded(values[i]),
                    "median": rounded(np.nanmedian(values)),
                    "at": track.point(i),
                    "s_mm": rounded(track.s[i]),
                }
        contours.append(entry)
    return {
        "expansion": expansion.as_dict(),
        "trap_fill_limit": settings.numbers["process.trap_fill"].as_dict(),
        "contours": contours,
        "notes": [say("material.divides"), say("material.expansion")],
    }
