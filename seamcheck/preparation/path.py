"""The weld path: the mid-line in the order of welding, with speed, power and the energy that it brings."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.preparation.strokes import Stroke

TURNS = 50.0
"""mm: where the seam turns in a smaller radius than this it is a corner, away from which a path starts. Assumption."""

UNKNOWN = 0.2
"""Share of a stroke whose need may be put in between what is known; beyond it the need is taken from what is drawn."""

APART = 0.05
"""mm: a station nearer to where a start, overlap or lap ends gives way to that."""

HEAT, MELT, AREA = "heat model", "energy to melt", "melted area"
"""Where a need comes from, the best first."""


class Drive(Struct, frozen=True):
    """How the path is welded.

    Attributes
    ----------
    speed : mm/s, the most
    acceleration : mm/s², the most of the scanner's spot or the robot, along and across the path; None: not limited
    overlap : mm beyond the start over which the power falls while it rises over the first stretch
    clockwise : seen against the beam
    """

    speed: float
    acceleration: float | None = None
    overlap: float = 5.0
    clockwise: bool = False


class Need(Struct, frozen=True, eq=False):
    """Energy (n,) that each millimetre of a stroke asks for, and where that comes from.

    energy : J/mm on the cover's top, or as a share of the mean where ``of`` is AREA
    of : HEAT, MELT or AREA
    between : mm of the stroke for which it was put in between what is known
    """

    energy: np.ndarray
    of: str
    between: float = 0.0


class WeldPath(Struct, frozen=True, eq=False):
    """One stroke in the order of welding; a closed one runs on over the overlap.

    Attributes
    ----------
    id, closed : of the stroke
    s : (n,) mm from the start of welding; length : mm of one lap, without the overlap
    path, station : (n,) number of the contour and its station next to each row
    points : (n, 3) mm, on the mid-line of the rib's top
    tangent, normal : (n, 3) unit; the normal is square to the tangent, against the beam
    curvature : (n,) 1/mm
    thickness : (n,) mm of the cover over it, with the gap below it
    need : of each row
    speed : (n,) mm/s
    power : (n,) W where the need is in J/mm, for one lap that brings all of it; see ``in_shares``
    ramp : (n,) share of the power that start and overlap leave in the first and last lap
    to_corner : mm from start and overlap to the nearest corner, junction or end; inf without any
    """

    id: str
    closed: bool
    s: np.ndarray
    length: float
    path: np.ndarray
    station: np.ndarray
    points: np.ndarray
    tangent: np.ndarray
    normal: np.ndarray
    curvature: np.ndarray
    thickness: np.ndarray
    need: Need
    speed: np.ndarray
    power: np.ndarray
    ramp: np.ndarray
    to_corner: float

    @property
    def greatest_power(self) -> float:
        """W where the need is in J/mm: the greatest of one lap that brings the whole need."""
        return float(np.max(self.need.energy * self.speed))

    @property
    def seconds(self) -> float:
        """s for one way along all rows, the overlap with them."""
        return float(np.sum(steps_in_time(self.s, self.speed)))

    @property
    def lap_seconds(self) -> float:
        """s for one lap."""
        lap = self.s <= self.length + 1e-9
        return float(np.sum(steps_in_time(self.s[lap], self.speed[lap])))


def weld_path(
    stroke: Stroke, need: Need, contours: Sequence[Mapping[str, Any]], beam: np.ndarray, drive: Drive
) -> WeldPath:
    """The path of one stroke; its power is need times speed.

    Parameters
    ----------
    need : along the stroke
    contours : of the document's joint
    beam : (3,) unit, beam direction

    Notes
    -----
    A closed path starts so that start and overlap lie furthest from corners and junctions. Over the overlap the power
    falls from 1 to 0 as it rose over the first stretch, so that both together bring each millimetre its need once. An
    open one runs from end to end; where another stroke has melted its end already it begins behind that one's edge.
    """
    radius = stroke.column(contours, "corner_radius")
    bend = 1.0 / np.maximum(np.where(np.isnan(radius), np.inf, radius), 1e-3)
    gap = np.maximum(np.nan_to_num(stroke.column(contours, "gap")), 0.0)
    cover = stroke.filled(stroke.column(contours, "cover_thickness")) + gap
    over = min(drive.overlap, 0.25 * stroke.length) if stroke.closed else 0.0
    sense = -1.0 if stroke.closed and (turning(stroke.points, beam) > 0.0) == drive.clockwise else 1.0
    if stroke.closed:
        middle, to_corner = start_of(stroke, bend)
        start, to_corner = middle - sense * over / 2.0, max(to_corner - over / 2.0, 0.0)
        end = stroke.length + over
    else:
        start, to_corner = stroke.short[0], np.inf
        end = stroke.length - sum(stroke.short)
    s, at, row = _rows(stroke, start, sense, stroke.length if stroke.closed else end, end)

    def take(values: np.ndarray) -> np.ndarray:
        return np.asarray(np.interp(at, stroke.s, values, period=stroke.length if stroke.closed else None))

    points = np.column_stack([take(stroke.points[:, k]) for k in range(3)])
    tangent = _tangent(stroke, sense, row)
    speed = speeds(stroke, s, bend[row], drive)
    energy = take(need.energy)
    return WeldPath(
        stroke.id, stroke.closed, s, stroke.length if stroke.closed else end, stroke.path[row], stroke.station[row],
        points, tangent, _normal(tangent, beam), bend[row], take(cover), Need(energy, need.of, need.between), speed,
        energy * speed, ramps(s, stroke.length, float(s[-1])) if over > 0.0 else np.ones(len(s)), to_corner,
    )  # fmt: skip


def _rows(
    stroke: Stroke, start: float, sense: float, lap: float, end: float
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Rows of a path: s (n,) from its start, place (n,) along the stroke, and the stroke's row (n,) next to each.

    Its own stations, and where start, overlap and lap end.
    """
    if stroke.closed:
        own = np.mod(sense * (stroke.s - start), stroke.length)
        own = np.concatenate([own, own + stroke.length])
    else:
        own = stroke.s - start
    marks = np.unique([0.0, end - lap, lap, end])
    own = own[(own > 0.0) & (own < end) & (np.abs(own[:, None] - marks).min(axis=1) > APART)]
    s = np.unique(np.concatenate([marks, own]))
    at = start + sense * s
    if stroke.closed:
        at = np.mod(at, stroke.length)
        away = np.abs(at[:, None] - stroke.s[None, :])
        return s, at, np.argmin(np.minimum(away, stroke.length - away), axis=1)
    return s, at, np.argmin(np.abs(at[:, None] - stroke.s[None, :]), axis=1)


def _tangent(stroke: Stroke, sense: float, row: np.ndarray) -> np.ndarray:
    """(n, 3) unit, by second-order differences along the stroke."""
    if stroke.closed:
        s = np.concatenate([stroke.s[-2:] - stroke.length, stroke.s, stroke.s[:2] + stroke.length])
        points = np.concatenate([stroke.points[-2:], stroke.points, stroke.points[:2]])
        along = np.gradient(points, s, axis=0)[2:-2]
    else:
        along = np.gradient(stroke.points, stroke.s, axis=0)
    along = sense * along[row]
    return np.asarray(along / np.linalg.norm(along, axis=1, keepdims=True))


def _normal(tangent: np.ndarray, beam: np.ndarray) -> np.ndarray:
    """(n, 3) unit, square to the tangent in the plane of tangent and light, against the beam."""
    up = -np.asarray(beam, dtype=float)
    normal = up - (tangent @ up)[:, None] * tangent
    return np.asarray(normal / np.linalg.norm(normal, axis=1, keepdims=True))


def needs_of(strokes: Sequence[Stroke], contours: Sequence[Mapping[str, Any]]) -> list[Need]:
    """Energy that a millimetre asks for along each stroke, from one source for all of them.

    Notes
    -----
    The heat model's where the review has run it: with it the whole seam melts in step. Else, with materials, the
    energy to melt over the share of the light that the cover passes, without losses. Else the melted area as a share
    of its mean; the light that the cover takes is then taken as even.
    """
    for of in (HEAT, MELT):
        found = [_needed(stroke, contours, of) for stroke in strokes]
        if all(float(np.mean(np.isnan(values))) <= UNKNOWN for values in found):
            return [_between(stroke, values, of) for stroke, values in zip(strokes, found, strict=True)]
    areas = [stroke.column(contours, "melt_area") for stroke in strokes]
    every = np.concatenate(areas)
    mean = float(np.nanmean(every)) if np.isfinite(every).any() else 1.0
    return [_between(stroke, area / mean, AREA) for stroke, area in zip(strokes, areas, strict=True)]


def _needed(stroke: Stroke, contours: Sequence[Mapping[str, Any]], of: str) -> np.ndarray:
    """(n,) J/mm of light on the cover's top; NaN where it is not known."""
    if of == HEAT:
        found = stroke.column(contours, "energy_in_step")
    else:
        with np.errstate(invalid="ignore", divide="ignore"):
            found = stroke.column(contours, "energy_need") / (stroke.column(contours, "transmission") / 100.0)
    return np.where(np.isfinite(found) & (found > 0.0), found, np.nan)


def _between(stroke: Stroke, values: np.ndarray, of: str) -> Need:
    missing = float(np.mean(np.isnan(values))) * stroke.length
    return Need(stroke.filled(values, 1.0), of, missing)


def in_shares(paths: Sequence[WeldPath]) -> list[WeldPath]:
    """Paths that are welded together, their power as a share of the greatest of all of them."""
    greatest = max(float(path.power.max()) for path in paths)
    return [replace(path, power=path.power / greatest) for path in paths]


def turning(points: np.ndarray, beam: np.ndarray) -> float:
    """mm², twice the area that a closed path (n, 3) goes round; positive counter-clockwise seen against the beam."""
    return float(np.sum(np.cross(points, np.roll(points, -1, axis=0)), axis=0) @ -np.asarray(beam))


def start_of(stroke: Stroke, bend: np.ndarray) -> tuple[float, float]:
    """Where along a closed stroke it is furthest from corners and junctions, and how far (mm); the straightest row of
    one that turns everywhere and meets no other."""
    corners = stroke.s[bend > 1.0 / TURNS]
    stops = stroke.meets if len(corners) == len(stroke.s) else np.concatenate([corners, stroke.meets])
    if not len(stops):
        return float(stroke.s[int(np.argmin(bend))]), np.inf
    away = np.abs(stroke.s[:, None] - stops[None, :])
    nearest = np.minimum(away, stroke.length - away).min(axis=1)
    row = int(np.argmax(nearest))
    return float(stroke.s[row]), float(nearest[row])


def ramps(s: np.ndarray, length: float, end: float) -> np.ndarray:
    """(n,) share of the power: rising over the first ``end - length`` mm, falling over the last."""
    over = max(end - length, 1e-9)
    return np.asarray(np.clip(np.minimum(s / over, (end - s) / over), 0.0, 1.0))


def speeds(stroke: Stroke, s: np.ndarray, bend: np.ndarray, drive: Drive) -> np.ndarray:
    """(n,) mm/s along the rows of a path; a closed one is driven through again and again, so that its ends agree."""
    if drive.acceleration is None or not stroke.closed:
        return fastest(s, bend, drive.speed, drive.acceleration)
    lap = s < stroke.length - 1e-9
    three = np.concatenate([s[lap] + k * stroke.length for k in range(3)])
    found = fastest(three, np.tile(bend[lap], 3), drive.speed, drive.acceleration)
    return np.asarray(np.interp(s + stroke.length, three, found))


def fastest(s: np.ndarray, bend: np.ndarray, most: float, acceleration: float | None) -> np.ndarray:
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
