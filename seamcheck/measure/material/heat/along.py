"""Heat along the seam: a few sections are computed, what lies between them is interpolated."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from seamcheck.measure.material.heat.grid import Body, Section, Surroundings
from seamcheck.measure.material.heat.weld import Model, Process, Weld, plane_time, response, weld

FINE, COARSE = 0.05, 0.1
"""Rows beside the interface, mm. Two grids tell how much the coarseness matters; see :class:`Course`."""

REACH = 15.0
"""How far the cover goes on beside the rib where its edge is not known, mm; heat gets no farther in a weld."""

DEEP = 10.0
"""How far the wall goes on below the rib, mm; heat gets no farther in a weld."""


@dataclass(frozen=True, slots=True, eq=False)
class Heating:
    """What the seam is heated with; arrays (n,) over all stations.

    Attributes
    ----------
    power : W/mm, heat that arrives on the rib for each mm of seam; NaN where unknown
    width, height, wall, cover, cover_width : mm, of the section; NaN where not measured
    base, cover_body : materials of the part with the rib and of the other one
    around : losses
    depth : mm, absorption
    melting : (base, cover) K above the surroundings
    leaving : K above the surroundings at which the melt is pressed out
    collapse, longest : mm, s
    """

    power: np.ndarray
    width: np.ndarray
    height: np.ndarray
    wall: np.ndarray
    cover: np.ndarray
    cover_width: np.ndarray
    base: Body
    cover_body: Body
    around: Surroundings
    depth: float
    melting: tuple[float, float]
    leaving: float
    collapse: float
    longest: float


@dataclass(frozen=True, slots=True, eq=False)
class Course:
    """The weld along the seam at even power and speed: the cover sinks as a whole.

    Attributes
    ----------
    start : (n,) s until each place melts; inf where it never does, NaN where unknown
    least : (n,) share of the power at which each place just reaches melting in the end
    slowest, fastest : station that melts last, and the one that melts first
    weld : of the slowest place, extrapolated from two grids; ``finish`` is the time with the laser on
    error : share by which the two grids differ in that time: the discretisation error is below it
    hottest : of the fastest place, with the collapse that the slowest allows
    plane : s, what the closed form without losses to the sides gives for the slowest place
    """

    start: np.ndarray
    least: np.ndarray
    slowest: int
    fastest: int
    weld: Weld
    error: float
    hottest: Weld | None
    plane: float


def course(heating: Heating) -> Course | None:
    """Return the weld along the seam, or None where nothing of it is known.

    Notes
    -----
    Until a place melts, its rise is in proportion to the power. One response for each of up to three rib widths,
    with the other lengths at their medians, gives the start everywhere; between widths it is interpolated.
    """
    known = np.isfinite(heating.power) & np.isfinite(heating.width) & (heating.power > 0.0)
    if not known.any():
        return None
    melts = max(heating.melting)
    width = heating.width[known]
    chosen = np.unique(np.round([width.min(), np.median(width), width.max()], 2))
    if chosen[-1] < 1.02 * chosen[0]:
        chosen = np.array([np.median(width)])
    strongest = float(np.max(heating.power[known] / width))
    first = plane_time(strongest, melts, heating.base, heating.cover_body) / 20.0
    first = min(first, heating.longest / 40.0)
    rows = [response(_model(heating, None, w, FINE), heating.depth, first, heating.longest) for w in chosen]
    start, least = np.full(len(known), np.nan), np.full(len(known), np.nan)
    for i in np.flatnonzero(known):
        rises, end = _between(chosen, rows, float(heating.width[i]))
        wanted = melts / heating.power[i]
        least[i] = wanted / end
        # linear in √t, as a plane source is: straight pieces between the steps lose nothing at the beginning
        start[i] = np.interp(wanted, rises, np.sqrt(rows[0][0]), right=np.inf) ** 2
    slowest = int(np.flatnonzero(known)[np.argmax(np.where(np.isfinite(start[known]), start[known], 1e9 + least[known]))])
    fastest = int(np.flatnonzero(known)[np.argmin(start[known])])
    model = _model(heating, slowest, None, FINE)
    process = Process(
        float(heating.power[slowest]), heating.depth, heating.melting, heating.leaving, heating.collapse, heating.longest
    )
    fine = weld(model, process)
    coarse = weld(replace(model, fine=COARSE), process)
    result, error = _extrapolated(fine, coarse)
    hottest = None
    if result.finish == result.finish and fastest != slowest:
        hot = replace(process, power=float(heating.power[fastest]))
        hottest = weld(_model(heating, fastest, None, FINE), hot, (result.times, result.sunk))
    flux = float(heating.power[slowest] / heating.width[slowest])
    plane = plane_time(flux, melts, heating.base, heating.cover_body)
    return Course(start, least, slowest, fastest, result, error, hottest, plane)


def _between(widths: np.ndarray, rows: list, width: float) -> tuple[np.ndarray, float]:
    """Response at a width between those that were computed: (m,) K, and the last of it (K)."""
    k = int(np.clip(np.searchsorted(widths, width) - 1, 0, max(len(widths) - 2, 0)))
    if len(widths) == 1:
        return rows[0][1], rows[0][2]
    share = float(np.clip((width - widths[k]) / (widths[k + 1] - widths[k]), 0.0, 1.0))
    one, other = rows[k], rows[k + 1]
    return (1.0 - share) * one[1] + share * other[1], (1.0 - share) * one[2] + share * other[2]


def _extrapolated(fine: Weld, coarse: Weld) -> tuple[Weld, float]:
    """The weld for ever finer rows (Richardson, first order), and the share by which the grids differ."""
    if not (fine.finish == fine.finish and coarse.finish == coarse.finish):
        return fine, abs(coarse.start / fine.start - 1.0) if fine.start == fine.start else 0.0
    stretch = 2.0 * (fine.finish - fine.start) - (coarse.finish - coarse.start)
    stretch = max(stretch, fine.finish - fine.start)
    factor = stretch / max(fine.finish - fine.start, 1e-12)
    times = np.where(fine.times > fine.start, fine.start + (fine.times - fine.start) * factor, fine.times)
    finish = fine.start + stretch
    return replace(fine, finish=finish, times=times), abs(finish - fine.finish) / finish


def _model(heating: Heating, station: int | None, width: float | None, fine: float) -> Model:
    """The section at a station, or that of a width with the other lengths at their medians."""

    def length(values: np.ndarray, missing: float) -> float:
        value = float(values[station]) if station is not None else float("nan")
        if value != value:
            value = float(np.nanmedian(values)) if np.isfinite(values).any() else missing
        return value

    w = length(heating.width, 1.0) if width is None else width
    height = max(length(heating.height, 1.0), heating.collapse + 0.1)
    section = Section(
        width=w,
        height=height,
        wall=max(length(heating.wall, w), w),
        depth=DEEP,
        cover=max(length(heating.cover, 2.0), 0.2),
        cover_width=max(length(heating.cover_width, 2.0 * REACH), w),
    )
    return Model(section, heating.base, heating.cover_body, heating.around, heating.collapse, fine)
