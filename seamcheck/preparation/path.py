"""The weld path: the mid-line in the order of welding, with speed, power and the energy that it brings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

TURNS = 50.0
"""mm: where the seam turns in a smaller radius than this it is a corner, away from which a path starts. Assumption."""


@dataclass(frozen=True, slots=True)
class Drive:
    """How the path is welded.

    Attributes
    ----------
    speed : mm/s, the most
    acceleration : mm/s², the most of the scanner's spot or the robot, along and across the path; None: not limited
    overlap : mm beyond the start over which the power falls while it rises over the first stretch
    laps : how often the whole path is passed
    clockwise : seen against the light
    """

    speed: float
    acceleration: float | None = None
    overlap: float = 5.0
    laps: int = 1
    clockwise: bool = False


@dataclass(frozen=True, slots=True, eq=False)
class WeldPath:
    """One path in the order of welding; a closed one runs on over the overlap.

    Attributes
    ----------
    id : of the contour's path; closed
    s : (n,) mm from the start of welding
    station : (n,) int, station of the review
    points : (n, 3) mm, on the mid-line of the rib's top
    tangent, normal : (n, 3) unit; the normal points against the light
    curvature : (n,) 1/mm
    need : (n,) energy that a millimetre asks for, in J/mm where ``is_absolute``, else as a share of the mean
    speed : (n,) mm/s
    power : (n,) share of the greatest power
    ramp : (n,) share of the power that start and overlap leave in the first and last lap
    """

    id: str
    closed: bool
    s: np.ndarray
    station: np.ndarray
    points: np.ndarray
    tangent: np.ndarray
    normal: np.ndarray
    curvature: np.ndarray
    need: np.ndarray
    is_absolute: bool
    speed: np.ndarray
    power: np.ndarray
    ramp: np.ndarray

    @property
    def greatest_power(self) -> float:
        """W where the need is absolute: power share 1 for one lap that brings the whole need."""
        return float(np.max(self.need * self.speed))

    @property
    def seconds(self) -> float:
        """s for one way along all rows."""
        return float(np.sum(steps_in_time(self.s, self.speed)))


def weld_path(contour: Mapping[str, Any], beam: np.ndarray, drive: Drive) -> WeldPath:
    """The path of one contour of a review's joint.

    Parameters
    ----------
    contour : of the document: id, closed, stations
    beam : (3,) unit, in which the light travels

    Notes
    -----
    A closed path starts where it is furthest from corners, at the middle of its straightest run; an open one at its
    first end. Over the overlap the power falls from 1 to 0 as it rose over the first stretch, so that both together
    bring each millimetre its need once.
    """
    stations, closed = contour["stations"], bool(contour["closed"])
    points = np.column_stack([np.asarray(stations[axis], dtype=float) for axis in "xyz"])
    radius = numbers(stations.get("turn_radius"), len(points), np.inf)
    bend = 1.0 / np.maximum(radius, 1e-3)
    need, is_absolute = needs(stations, len(points))
    order = np.arange(len(points))
    if closed:
        if (turning(points, beam) > 0.0) == drive.clockwise:
            order = order[::-1]
        order = np.roll(order, -int(np.flatnonzero(order == start_of(points, bend))[0]))
    lengths = np.linalg.norm(np.diff(points[order], axis=0, append=points[order][:1]), axis=1)
    if closed:
        way = np.concatenate([[0.0], np.cumsum(lengths)])
        more = int(np.searchsorted(way, min(drive.overlap, 0.25 * way[-1]))) + 1
        rows = np.concatenate([order, order[:more]])
        s = np.concatenate([way[:-1], way[-1] + way[:more]])
        ramp = ramps(s, float(way[-1]), float(s[-1]))
    else:
        rows = order
        s = np.concatenate([[0.0], np.cumsum(lengths[:-1])])
        ramp = np.ones(len(rows))
    tangent = np.gradient(points[rows], s, axis=0)
    tangent /= np.linalg.norm(tangent, axis=1, keepdims=True)
    speed = speeds(s, bend[rows], drive.speed, drive.acceleration)
    power = need[rows] * speed
    return WeldPath(
        str(contour["id"]), closed, s, rows, points[rows], tangent, np.broadcast_to(-beam, (len(rows), 3)), bend[rows],
        need[rows], is_absolute, speed, power / power.max(), ramp,
    )  # fmt: skip


def numbers(column: Any, count: int, missing: float) -> np.ndarray:
    """(count,) a column of the document with a number in place of what was not measured or is not there."""
    found = np.full(count, np.nan) if column is None else np.array(column, dtype=float)
    return np.where(np.isnan(found), missing, found)


def needs(stations: Mapping[str, Any], count: int) -> tuple[np.ndarray, bool]:
    """Energy that a millimetre asks for at every station, and whether that is in J/mm.

    Notes
    -----
    With materials: the review's energy to melt, divided by the share of the light that the cover passes; what goes
    beside the rib is not in it. Without: the melt area as a share of its mean; the light that the cover takes is then
    taken as even.
    """
    known = numbers(stations.get("energy_need"), count, np.nan) / (
        numbers(stations.get("transmission"), count, np.nan) / 100.0
    )
    if np.isfinite(known).all() and (known > 0.0).all():
        return known, True
    melt = numbers(stations.get("melt_area"), count, np.nan)
    mean = float(np.nanmean(melt)) if np.isfinite(melt).any() else 1.0
    return np.where(np.isfinite(melt), melt, mean) / mean, False


def turning(points: np.ndarray, beam: np.ndarray) -> float:
    """mm², twice the area that a closed path (n, 3) goes round; positive counter-clockwise seen against the light."""
    return float(np.sum(np.cross(points, np.roll(points, -1, axis=0)), axis=0) @ -np.asarray(beam))


def start_of(points: np.ndarray, bend: np.ndarray) -> int:
    """The station of a closed path that is furthest from corners; of a path that turns everywhere the straightest."""
    lengths = np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1)
    s, whole = np.concatenate([[0.0], np.cumsum(lengths[:-1])]), float(lengths.sum())
    corners = s[bend > 1.0 / TURNS]
    if not len(corners) or len(corners) == len(s):
        return int(np.argmin(bend))
    away = np.abs(s[:, None] - corners[None, :])
    return int(np.argmax(np.minimum(away, whole - away).min(axis=1)))


def ramps(s: np.ndarray, length: float, end: float) -> np.ndarray:
    """(n,) share of the power: rising over the first ``end - length`` mm, falling over the last."""
    over = max(end - length, 1e-9)
    return np.asarray(np.clip(np.minimum(s / over, (end - s) / over), 0.0, 1.0))


def speeds(s: np.ndarray, bend: np.ndarray, most: float, acceleration: float | None) -> np.ndarray:
    """(n,) mm/s, the fastest that holds the speed and the acceleration along and across the path.

    Notes
    -----
    Across: v² κ <= a. Along: v² changes by at most 2 a ds from row to row, forward and backward.
    """
    if acceleration is None:
        return np.full(len(s), float(most))
    v2 = np.minimum(most**2, acceleration / np.maximum(bend, 1e-9))
    ds = np.diff(s)
    for i in range(1, len(v2)):
        v2[i] = min(v2[i], v2[i - 1] + 2.0 * acceleration * ds[i - 1])
    for i in range(len(v2) - 2, -1, -1):
        v2[i] = min(v2[i], v2[i + 1] + 2.0 * acceleration * ds[i])
    return np.asarray(np.sqrt(v2))


def steps_in_time(s: np.ndarray, speed: np.ndarray) -> np.ndarray:
    """(n - 1,) s from row to row, at the mean of both speeds."""
    return np.asarray(np.diff(s) / ((speed[1:] + speed[:-1]) / 2.0))


def energy(s: np.ndarray, speed: np.ndarray, power: np.ndarray) -> float:
    """Energy of a power along a path, by the trapezoid rule over time: in J for W, mm/s and mm."""
    return float(np.sum((power[1:] + power[:-1]) / 2.0 * steps_in_time(s, speed)))
