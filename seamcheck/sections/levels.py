"""Across the section at one height: flanks, the wall below the rib, its support."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.sections.slices import Segments


class Crossings(Struct, frozen=True, eq=False):
    """Outlines of one part crossed at one height per station.

    station (k,) index; u (k,) mm; out (k,) +1 where the material ends toward +u, -1 where toward -u
    """

    station: np.ndarray
    u: np.ndarray
    out: np.ndarray


def crossings(segments: Segments, owner: int, level: np.ndarray) -> Crossings:
    """All outlines of a part at the given heights.

    Parameters
    ----------
    level : (n,) mm, w per station; NaN finds nothing
    """
    mine = np.flatnonzero(segments.owner == owner)
    w = level[segments.station[mine]]
    w0, w1 = segments.w0[mine], segments.w1[mine]
    with np.errstate(invalid="ignore"):
        hit = (w0 > w) != (w1 > w)
    hit &= np.isfinite(w)
    mine, w = mine[hit], w[hit]
    part = (w - segments.w0[mine]) / (segments.w1[mine] - segments.w0[mine])
    u = segments.u0[mine] + part * (segments.u1[mine] - segments.u0[mine])
    return Crossings(segments.station[mine], u, np.sign(segments.nu[mine]))


def nearest_end(found: Crossings, stations: int, outer: bool) -> np.ndarray:
    """(n,) mm, distance from P to the nearest outline on one side, if the material round P ends there.

    NaN where no outline is met, or where the nearest one is the start of other material (P is in the open).
    """
    sign = 1.0 if outer else -1.0
    distance = sign * found.u
    ahead = distance > 1e-9
    order = np.flatnonzero(ahead)[np.argsort(-distance[ahead], kind="stable")]
    out, ends = np.full(stations, np.nan), np.zeros(stations)
    out[found.station[order]] = distance[order]
    ends[found.station[order]] = (found.out * sign)[order]
    return np.where(ends > 0, out, np.nan)


def is_inside(segments: Segments, owner: int, level: np.ndarray) -> np.ndarray:
    """(n,) bool: whether the place straight below P at the given heights (n,) lies in the material of a part.

    Every face above it that looks up lets the material begin, every one that looks down lets it end.
    """
    mine = np.flatnonzero((segments.owner == owner) & (segments.u0 <= 0.0) & (segments.u1 > 0.0))
    run = np.maximum(segments.u1[mine] - segments.u0[mine], 1e-12)
    height = segments.w0[mine] - segments.u0[mine] / run * (segments.w1[mine] - segments.w0[mine])
    above = mine[height > level[segments.station[mine]]]
    return np.bincount(segments.station[above], np.sign(segments.nw[above]), len(level)) > 0.0


def support_offset(
    found: Crossings,
    stations: int,
    inner_edge: np.ndarray,
    outer_edge: np.ndarray,
    beyond: np.ndarray,
    inside: np.ndarray,
) -> np.ndarray:
    """(n,) mm along u from P to the middle of the nearest material at this height; NaN where there is none.

    0 where the material reaches further than ``beyond`` (n,) past both flanks, or further than the section.

    Parameters
    ----------
    inside : (n,) bool, whether P's place at this height lies in material: without an outline, that tells all from none
    """
    right, left = nearest_end(found, stations, True), nearest_end(found, stations, False)
    known = np.bincount(found.station, minlength=stations) > 0
    under = np.isfinite(right) | np.isfinite(left)
    right_known = np.where(np.isfinite(right), right, np.inf)
    left_known = np.where(np.isfinite(left), left, np.inf)
    broad = (right_known > outer_edge + beyond) & (left_known > inner_edge + beyond)
    # one end beyond the section: measure the middle of what lies within reach of the flanks
    right_cut = np.minimum(right_known, outer_edge + beyond)
    left_cut = np.minimum(left_known, inner_edge + beyond)
    out = np.where(broad & (inside | under), 0.0, np.where(under, (right_cut - left_cut) / 2, np.nan))
    for i in np.flatnonzero(known & ~under):
        out[i] = _nearest_piece(found.u[found.station == i], found.out[found.station == i])
    return out


def _nearest_piece(u: np.ndarray, out: np.ndarray) -> float:
    """Middle of the piece of material nearest to 0, from its outlines; NaN where none is complete."""
    order = np.argsort(u)
    u, out = u[order], out[order]
    pieces = [(a + b) / 2 for a, b, s, e in zip(u, u[1:], out, out[1:], strict=False) if s < 0 < e]
    return float(min(pieces, key=abs)) if pieces else float("nan")
