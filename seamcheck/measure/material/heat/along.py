"""Heat along the seam: a few sections are computed, what lies between them is interpolated."""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.measure.material.heat.grid import Body, Section, Surroundings
from seamcheck.measure.material.heat.weld import Model, Process, Weld, plane_time, response, weld

FINE, COARSE = 0.05, 0.1
"""Rows beside the interface, mm. Two grids tell how much the coarseness matters; see :class:`Course`."""

REACH = 15.0
"""How far the cover extends beside the rib where its edge is not known, mm; heat gets no farther in a weld."""

DEEP = 10.0
"""How far the wall extends below the rib, mm; heat gets no farther in a weld."""


class Heating(Struct, frozen=True, eq=False):
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
    collapse, layer : mm, planned, and of melt that stays below the interface
    longest : s
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
    layer: float
    longest: float


class Course(Struct, frozen=True, eq=False):
    """The weld along the seam at constant power and speed: the cover sinks as a whole.

    Attributes
    ----------
    start : (n,) s until each place melts; inf where it never does, NaN where unknown
    least : (n,) share of the power at which each place just reaches melting in the end
    slowest, fastest : station that melts last, and the one that melts first
    weld : of the slowest place, extrapolated from two grids; ``finish`` is the time with the laser on
    error : share of that time by which the two grids differ; what is left after the extrapolation is less
    hottest : of the fastest place, with the collapse that the slowest allows
    plane : s, what the closed form without losses to the sides gives for the slowest place
    responses : from which starts at other powers follow
    """

    start: np.ndarray
    least: np.ndarray
    slowest: int
    fastest: int
    weld: Weld
    error: float
    hottest: Weld | None
    plane: float
    responses: Responses


class Responses(Struct, frozen=True, eq=False):
    """How the interface's mean warms up at 1 W/mm, for a few rib widths with the other lengths at their medians.

    Attributes
    ----------
    widths : (w,) mm, ascending
    times : (m,) s
    rises : (w, m) K; ends : (w,) K, what it comes to in the end
    """

    widths: np.ndarray
    times: np.ndarray
    rises: np.ndarray
    ends: np.ndarray

    def start(self, power: np.ndarray, width: np.ndarray, melts: float) -> tuple[np.ndarray, np.ndarray]:
        """Time (s) until a rise ``melts`` (K) is reached, and the share of the power that just suffices for it.

        power, width : (n,) W/mm and mm; inf where it is not reached in time, NaN where one is not known
        """
        start, least = np.full(len(power), np.nan), np.full(len(power), np.nan)
        known = np.isfinite(power) & np.isfinite(width) & (power > 0.0)
        roots = np.sqrt(self.times)  # a plane source warms with √t: linear between the steps in that
        for i in np.flatnonzero(known):
            rises, end = self._between(float(width[i]))
            wanted = melts / power[i]
            least[i] = wanted / end
            start[i] = np.interp(wanted, rises, roots, right=np.inf) ** 2
        return start, least

    def rise(self, width: np.ndarray, time: float) -> np.ndarray:
        """(n,) K, how much 1 W/mm warms ribs of these widths (n,) mm up in a time (s); NaN where one is not known."""
        found, root = np.full(len(width), np.nan), np.sqrt(time)
        for i in np.flatnonzero(np.isfinite(width)):
            found[i] = np.interp(root, np.sqrt(self.times), self._between(float(width[i]))[0])
        return found

    def _between(self, width: float) -> tuple[np.ndarray, float]:
        k = int(np.clip(np.searchsorted(self.widths, width), 1, len(self.widths)))
        if k == len(self.widths):
            return self.rises[-1], float(self.ends[-1])
        share = float(np.clip((width - self.widths[k - 1]) / (self.widths[k] - self.widths[k - 1]), 0.0, 1.0))
        return (
            (1.0 - share) * self.rises[k - 1] + share * self.rises[k],
            float((1.0 - share) * self.ends[k - 1] + share * self.ends[k]),
        )


def course(heating: Heating) -> Course | None:
    """Return the weld along the seam, or None where nothing of it is known.

    Notes
    -----
    Until a place melts, its rise is in proportion to the power. One response for each of up to three rib widths,
    with the other lengths at their medians, gives the start everywhere; between widths it is interpolated.
    """
    known = np.flatnonzero(np.isfinite(heating.power) & np.isfinite(heating.width) & (heating.power > 0.0))
    if not len(known):
        return None
    melts = max(heating.melting)
    responses = _responses(heating, known, melts)
    start, least = responses.start(heating.power, heating.width, melts)
    slowest = int(known[np.lexsort((least[known], start[known]))[-1]])
    fastest = int(known[np.argmin(start[known])])
    process = Process(
        float(heating.power[slowest]),
        heating.depth,
        heating.melting,
        heating.leaving,
        heating.collapse,
        heating.layer,
        heating.longest,
    )
    model = model_at(heating, slowest)
    result, error = _extrapolated(weld(model, process), weld(replace(model, fine=COARSE), process))
    hottest = None
    if result.finish == result.finish and fastest != slowest:
        hot = replace(process, power=float(heating.power[fastest]))
        hottest = weld(model_at(heating, fastest), hot, (result.times, result.sunk))
    flux = float(heating.power[slowest] / heating.width[slowest])
    plane = plane_time(flux, melts, heating.base, heating.cover_body)
    return Course(start, least, slowest, fastest, result, error, hottest, plane, responses)


def _responses(heating: Heating, known: np.ndarray, melts: float) -> Responses:
    width = heating.width[known]
    chosen = np.unique(np.round([width.min(), np.median(width), width.max()], 2))
    if chosen[-1] < 1.02 * chosen[0]:
        chosen = np.array([np.median(width)])
    strongest = float(np.max(heating.power[known] / width))
    first = plane_time(strongest, melts, heating.base, heating.cover_body) / 20.0
    first = min(first, heating.longest / 40.0)
    rows = [response(model_at(heating, None, w), heating.depth, first, heating.longest) for w in chosen]
    return Responses(chosen, rows[0][0], np.array([row[1] for row in rows]), np.array([row[2] for row in rows]))


def _extrapolated(fine: Weld, coarse: Weld) -> tuple[Weld, float]:
    """The weld for ever finer rows (Richardson, first order), and the share by which the grids differ."""
    if not (fine.finish == fine.finish and coarse.finish == coarse.finish):
        return fine, abs(coarse.start / fine.start - 1.0) if fine.start == fine.start else 0.0
    stretch = 2.0 * (fine.finish - fine.start) - (coarse.finish - coarse.start)
    stretch = max(stretch, 0.5 * (fine.finish - fine.start))
    factor = stretch / max(fine.finish - fine.start, 1e-12)
    times = np.where(fine.times > fine.start, fine.start + (fine.times - fine.start) * factor, fine.times)
    finish = fine.start + stretch
    return replace(fine, finish=finish, times=times), abs(coarse.finish - fine.finish) / finish


def model_at(heating: Heating, station: int | None, width: float | None = None, fine: float = FINE) -> Model:
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
