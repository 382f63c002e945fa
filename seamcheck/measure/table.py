"""The Survey: what was measured, station by station. Plain arrays; no kernel, no limits."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any

import numpy as np
from msgspec import Struct, field

AreasAt = Callable[[float], tuple[np.ndarray, np.ndarray, np.ndarray]]
"""collapse from initial contact, mm -> melt, inner and outer trap area, each (n,) mm², NaN where not measured."""


class Shade(Struct, frozen=True, eq=False):
    """Strips of the rib top that some or all of the light does not reach, for pictures.

    Attributes
    ----------
    station : (m,) int
    low, high : (m,) mm from P, outward positive: the strip's ends in the section
    share : (m,) of its rays that arrive, 0 to 1
    hit : (m, 3) mm where the first of the others is stopped: u, v (against the beam), along the seam; NaN unknown
    part : (m,) str, id of the part that stops it, '' unknown
    leans : (m,) bool, whether these are rays of the scanner (else a parallel beam)
    """

    station: np.ndarray
    low: np.ndarray
    high: np.ndarray
    share: np.ndarray
    hit: np.ndarray
    part: np.ndarray
    leans: np.ndarray

    def joined(self, other: Shade) -> Shade:
        """Both, one after the other."""
        return Shade(*(np.concatenate([getattr(self, f), getattr(other, f)]) for f in Shade.__struct_fields__))

    def at(self, sections: np.ndarray) -> Shade:
        """The strips of all stations, from those of their sections: (n,) the number of each station's section."""
        order = np.argsort(sections, kind="stable")
        count = np.bincount(sections, minlength=int(self.station.max(initial=-1)) + 1)
        begin, times = (np.cumsum(count) - count)[self.station], count[self.station]
        strip = np.repeat(np.arange(len(times)), times)
        nth = np.arange(len(strip)) - np.repeat(np.cumsum(times) - times, times)
        rest = (getattr(self, name)[strip] for name in Shade.__struct_fields__[1:])
        return Shade(order[begin[strip] + nth], *rest)


class PathSurvey(Struct, frozen=True, eq=False):
    """One path of the contour with its stations.

    Attributes
    ----------
    id : "c1", "c2", ... unique in the joint
    closed : whether the path returns to its start (the first station is not repeated at the end)
    length : mm
    ends : for an open path what is at (start, end): 'open', 'junction:J1'; () when closed
    s : (n,) mm, arc length, ascending
    points : (n, 3) mm, mid-line of the rib top
    u : (n, 3) unit vectors across the seam; +u is outer
    columns : key of a quantity -> (n,) float, NaN where not measured
    reasons : key of a quantity -> (n,) str, '' where measured, else a key of REASONS in catalogue/quantities.py
    rib_face : (n,) int, face index (order of Part.entities) of the rib top at the station, -1 unknown
    cover_face : (n,) int, face index of the opposite part's seam face, -1 unknown
    clamp_side : 'inner' or 'outer', the side of the clamp land; '' where the cover has no free edge near the path
    areas_at : melt and trap areas at any other collapse, of the same sections; None where they are not at hand
    slope : (n,) rise of the rib top against the beam for each mm outward: 0 where it lies square to the beam;
        heights in the section are measured from this slope; None where it is not at hand
    shade : strips of the rib top that the light reaches only in part; None where that is not at hand
    """

    id: str
    closed: bool
    length: float
    ends: tuple[str, ...]
    s: np.ndarray
    points: np.ndarray
    u: np.ndarray
    columns: Mapping[str, np.ndarray]
    reasons: Mapping[str, np.ndarray]
    rib_face: np.ndarray
    cover_face: np.ndarray
    clamp_side: str = ""
    areas_at: AreasAt | None = None
    slope: np.ndarray | None = None
    shade: Shade | None = None


class Interruption(Struct, frozen=True, eq=False):
    """A stretch where the rib is missing between two open ends that face each other.

    length : mm along the missing stretch; at : (3,) its middle; ends : ((path id, 0 or -1), ...)
    """

    length: float
    at: np.ndarray
    ends: tuple[tuple[str, int], ...]


class Survey(Struct, frozen=True, eq=False):
    """All that was measured on one joint.

    paths : one table each
    junctions : "J1" -> (3,) mm
    interruptions : stretches of missing rib
    interface : key -> {"value": float or None, "at": [x, y, z] or None, "why": str, ...} (whole-interface values)
    rib_part, counter_part : ids of the part that carries the rib and of the other one
    """

    paths: tuple[PathSurvey, ...]
    junctions: Mapping[str, np.ndarray]
    interruptions: tuple[Interruption, ...]
    interface: Mapping[str, dict[str, Any]] = field(default_factory=dict[str, Any])
    rib_part: str = ""
    counter_part: str = ""

    @property
    def initial_contact(self) -> float:
        """mm, see initial_contact."""
        return initial_contact(path.columns.get("gap_min", path.columns["gap"]) for path in self.paths)


def initial_contact(gaps: Iterable[np.ndarray]) -> float:
    """mm that the cover sinks from where it is drawn until it first touches the rib: the smallest gap of the seam.

    Parameters
    ----------
    gaps : (n,) mm along each path; NaN where nothing is opposite

    Returns
    -------
    float, mm; NaN where no gap was measured
    """
    return float(min((np.nanmin(gap) for gap in gaps if np.isfinite(gap).any()), default=np.nan))


def rib_width(path: PathSurvey) -> np.ndarray:
    """(n,) mm at the top; where the top has no flat, at half height."""
    width = np.asarray(path.columns["rib_width_top"], dtype=float)
    if "rib_width_mid" in path.columns:
        width = np.where(np.isfinite(width), width, np.asarray(path.columns["rib_width_mid"], dtype=float))
    return width
