"""The sections' vertical decomposition: between neighbouring break points every surface is straight.

All sections at once, as flat arrays; from them dense tables (stations x intervals) for one side or both.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.sections.slices import BASE, COVER, OTHER, Segments

_APART = 1e-5  # mm: break points nearer than this are one
_STEP = 1e5  # mm: distance between stations on the common axis of break points
_AT_ONCE = 256  # sections
UPRIGHT = 5e-4  # of a facet's normal along v, below which (0.03 degrees) it is a wall, neither floor nor roof
_TOUCH = 0.002  # mm between two stretches of plastic that count as one: twice the chord error of the facets
SLIVER = 0.02  # mm: neighbouring faces may be this far apart and still count as joined
DEEPEST_OVERLAP = 1.5  # mm: how deep the parts may overlap as drawn before their surfaces would be confused


class Layers(Struct, frozen=True, eq=False):
    """What lies over and under elementary intervals across the rib.

    a, b : u at both ends, mm
    floor_a, floor_b : top of the part with the rib, floor_face : its face; NaN / -1 where there is none
    roof_a, roof_b : underside of the opposite part, roof_face : its face
    plastic_a, plastic_b : the cover's plastic along v next to the rib, mm; 0 where there is none, see plastic_over
    stretches : how many stretches of cover; blocked : something else is in the beam path
    """

    a: np.ndarray
    b: np.ndarray
    floor_a: np.ndarray
    floor_b: np.ndarray
    floor_face: np.ndarray
    roof_a: np.ndarray
    roof_b: np.ndarray
    roof_face: np.ndarray
    plastic_a: np.ndarray
    plastic_b: np.ndarray
    stretches: np.ndarray
    blocked: np.ndarray


class Intervals(Layers, frozen=True, eq=False):
    """Elementary intervals of all sections; every array has one entry per interval, in order; station : index."""

    station: np.ndarray


def decompose(
    segments: Segments, stations: int, extra: np.ndarray, rib_owner: int, up: float, reach: float
) -> Intervals:
    """Split every section at all ends of its cut lines, at u = 0 and at the extra break points.

    Parameters
    ----------
    segments : w measured from the rib top at the station
    extra : (n, k) mm, further break points of each station, NaN to leave one out
    rib_owner : BASE or COVER; up : +1 where the beam comes from +w, -1 where from -w

    Notes
    -----
    Some hundred sections at a time: of the tables in between there are as many as of the intervals, times ten.
    """
    first = np.arange(0, max(stations, 1), _AT_ONCE)
    ends = np.searchsorted(segments.station, np.append(first, stations))
    parts = []
    for start, low, high in zip(first.tolist(), ends[:-1].tolist(), ends[1:].tolist(), strict=True):
        some = segments.only(slice(low, high))
        some = replace(some, station=some.station - start)
        rows = extra[start : start + _AT_ONCE]
        found = _decompose(some, len(rows), rows, rib_owner, up, reach)
        parts.append(replace(found, station=found.station + start))
    if len(parts) == 1:
        return parts[0]
    names = Intervals.__struct_fields__
    return Intervals(*(np.concatenate([getattr(part, name) for part in parts]) for name in names))


def _decompose(
    segments: Segments, stations: int, extra: np.ndarray, rib_owner: int, up: float, reach: float
) -> Intervals:
    """The same, all sections at once."""
    owner_of_roof = COVER if rib_owner == BASE else BASE
    u0, u1 = np.clip(segments.u0, -reach, reach), np.clip(segments.u1, -reach, reach)
    rows = np.arange(stations)
    extra = np.column_stack([np.zeros(stations), extra])
    keys = np.concatenate(
        [
            segments.station * _STEP + u0,
            segments.station * _STEP + u1,
            (rows[:, None] * _STEP + extra)[np.isfinite(extra)],
        ]
    )
    keys = np.sort(keys)
    keys = keys[np.append(True, np.diff(keys) > _APART)]
    row = np.round(keys / _STEP).astype(int)
    within = np.flatnonzero(row[:-1] == row[1:])
    number = np.full(len(keys), -1)
    number[within] = np.arange(len(within))
    station, a, b = row[within], keys[within] - row[within] * _STEP, keys[within + 1] - row[within] * _STEP

    # an end belongs to the last break point that isn't beyond it
    lines = segments.only(_of_use(segments, rib_owner, up))
    begin, end = (lines.station * _STEP + np.clip(u, -reach, reach) + 1e-7 for u in (lines.u0, lines.u1))
    first = np.searchsorted(keys, begin, side="right") - 1
    count = np.searchsorted(keys, end, side="right") - 1 - first
    place = np.repeat(first - np.cumsum(count) + count, count) + np.arange(count.sum())
    place = number[place]
    run = np.maximum(lines.u1 - lines.u0, 1e-12)
    slope = (lines.w1 - lines.w0) / run
    upright, rises = np.abs(lines.nw) < UPRIGHT, lines.nw > 0
    u0, w0, run, slope, owner, upright, rises, face = (
        np.repeat(values, count) for values in (lines.u0, lines.w0, run, slope, lines.owner, upright, rises, lines.face)
    )
    if (place < 0).any():
        inside = place >= 0
        place, u0, w0, run, slope, owner, upright, rises, face = (
            values[inside] for values in (place, u0, w0, run, slope, owner, upright, rises, face)
        )
    left = w0 + slope * np.clip(a[place] - u0, 0.0, run)
    right = w0 + slope * np.clip(b[place] - u0, 0.0, run)
    middle = (left + right) / 2
    size = len(station)

    tops = (owner == rib_owner) & rises & ~upright
    highest = np.full(size, -np.inf)
    np.maximum.at(highest, place[tops], middle[tops])
    # a skirt may reach far below the rib's top; what lies under the other part's own top is no roof over it
    above = (middle > -DEEPEST_OVERLAP) | (middle > highest[place] - DEEPEST_OVERLAP)
    roofs = np.flatnonzero((owner == owner_of_roof) & ~rises & ~upright & above)
    roof, roof_mid = _outermost(roofs, place, middle, size, lowest=True)
    ceiling = np.where(np.isfinite(roof_mid), roof_mid, np.inf)
    floors = np.flatnonzero(tops & (middle <= ceiling[place] + DEEPEST_OVERLAP))
    floor, _ = _outermost(floors, place, middle, size, lowest=False)

    cover = np.flatnonzero((owner == COVER) & ~upright)
    lit = rises if up > 0 else ~rises
    plastic_a, plastic_b, stretches = plastic_over(place[cover], up * left[cover], up * right[cover], lit[cover], size)
    rib_level = up * middle > -0.5
    strange = (owner == OTHER) & rib_level
    beyond = (owner == BASE) & (up * middle > DEEPEST_OVERLAP)
    blocked = np.bincount(place[strange | beyond], minlength=size) > 0

    def pick(which: np.ndarray, values: np.ndarray, empty: float) -> np.ndarray:
        return np.where(which >= 0, values[which], empty) if len(values) else np.full(size, empty)

    floor_a, floor_b, floor_face = (pick(floor, left, np.nan), pick(floor, right, np.nan), pick(floor, face, -1))
    roof_a, roof_b, roof_face = pick(roof, left, np.nan), pick(roof, right, np.nan), pick(roof, face, -1)
    _close_slits(station, a, b, floor_a, floor_b)
    _close_slits(station, a, b, roof_a, roof_b)
    return Intervals(
        a, b, floor_a, floor_b, floor_face.astype(int), roof_a, roof_b, roof_face.astype(int), plastic_a, plastic_b,
        stretches, blocked, station,
    )  # fmt: skip


def _of_use(segments: Segments, rib_owner: int, up: float) -> np.ndarray:
    """Numbers of the lines that may be a floor, a roof, the cover's outline or something in the beam's way."""
    upright = np.abs(segments.nw) < UPRIGHT
    is_top = (segments.nw > 0) if rib_owner == BASE else (segments.nw <= 0)  # of the base: floors, or roofs
    high = np.maximum(up * segments.w0, up * segments.w1) > DEEPEST_OVERLAP
    base = (segments.owner == BASE) & ((is_top & ~upright) | high)
    return np.flatnonzero(base | ((segments.owner == COVER) & ~upright) | (segments.owner == OTHER))


def plastic_over(
    place: np.ndarray, left: np.ndarray, right: np.ndarray, lit: np.ndarray, size: int
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Plastic that light meets last before it reaches the rib, and how many stretches of plastic it meets in all.

    Parameters
    ----------
    place : (k,) interval that each line of the cover's outline crosses; left, right : (k,) mm, its heights toward the
        light at both ends of the interval, 0 at the rib's top; lit : (k,) bool, whether it looks against the beam
    size : number of intervals

    Returns
    -------
    (size,) mm at both ends: 0 without plastic, NaN where the outline isn't closed; (size,) number of stretches

    Notes
    -----
    From the rib against the beam, a stretch begins at a line that looks away from the beam and ends at the last one
    that looks toward it before the next begins. Where two faces meet at an upright wall that lies in the section, both
    may be cut, or neither: then two lines in a row look to the same side, and they bound one stretch.
    """
    middle = (left + right) / 2
    order = np.lexsort((lit, middle, place))
    place, left, right, middle, lit = (v[order] for v in (place, left, right, middle, lit))
    same = place[1:] == place[:-1] if len(place) else np.empty(0, dtype=bool)
    begins = ~lit & np.append(True, ~same | lit[:-1])[: len(lit)]  # the first of lines that look away from the beam
    joined = np.append(False, same & lit[:-1] & (np.diff(middle) < _TOUCH))[: len(lit)]
    begins &= ~joined
    number = np.cumsum(begins) - 1  # of the stretch that a line belongs to
    first = np.flatnonzero(begins)
    stretch = np.flatnonzero(lit & (number >= 0))
    stretch = stretch[place[stretch] == place[first[number[stretch]]]] if len(first) else stretch[:0]
    last = np.full(len(first), -1)
    last[number[stretch]] = stretch  # the highest is written last
    closed = last >= 0
    over = np.where(closed, middle[np.maximum(last, 0)], np.inf) > 0.0  # not wholly below the rib's top
    first, last, closed = first[over], last[over], closed[over]
    stretches = np.bincount(place[first], minlength=size)
    plastic = []
    for height in (left, right):
        thick = np.where(closed, height[last] - height[first], np.nan)
        found = np.zeros(size)
        found[place[first][::-1]] = thick[::-1]  # the one next to the rib is written last
        plastic.append(found)
    return plastic[0], plastic[1], stretches


def _close_slits(station: np.ndarray, a: np.ndarray, b: np.ndarray, left: np.ndarray, right: np.ndarray) -> None:
    """Bridge gaps of faces that meet only within a tolerance: empty intervals below SLIVER, in place."""
    empty = np.isnan(left)
    known = np.flatnonzero(~empty)
    if not len(known):
        return
    place = np.flatnonzero(empty)
    nth = np.searchsorted(known, place)
    before, after = known[np.maximum(nth - 1, 0)], known[np.minimum(nth, len(known) - 1)]
    slit = (before < place) & (after > place) & (station[before] == station[place]) & (station[after] == station[place])
    slit &= a[after] - b[before] < SLIVER
    place, before, after = place[slit], before[slit], after[slit]
    run = np.maximum(a[after] - b[before], 1e-12)
    rise = left[after] - right[before]
    left[place] = right[before] + rise * (a[place] - b[before]) / run
    right[place] = right[before] + rise * (b[place] - b[before]) / run


def _outermost(
    which: np.ndarray, place: np.ndarray, middle: np.ndarray, size: int, lowest: bool
) -> tuple[np.ndarray, np.ndarray]:
    """Of the given records the lowest or highest in each interval: its number (-1: none) and height."""
    mine, values = place[which], middle[which]
    height = np.full(size, np.inf if lowest else -np.inf)
    (np.minimum if lowest else np.maximum).at(height, mine, values)
    chosen = np.full(size, -1)
    hit = values == height[mine]
    chosen[mine[hit]] = which[hit]
    height[chosen < 0] = np.nan
    return chosen, height


class Side(Layers, frozen=True, eq=False):
    """Intervals on one side of P as dense tables (stations, most intervals), going outward from P.

    a, b : distance from P, a < b; NaN behind the last one. Of the other fields end a is the one nearer to P.
    """


def side_of(intervals: Intervals, stations: int, outer: bool) -> Side:
    """The outer (+u) or the inner (-u) side; on the inner one ends and order are reversed."""
    middle = intervals.a + intervals.b
    mine = np.flatnonzero(middle > 0 if outer else middle < 0)
    if not outer:
        mine = mine[::-1]
        mine = mine[np.argsort(intervals.station[mine], kind="stable")]
    row = intervals.station[mine]
    start = np.searchsorted(row, np.arange(stations))
    column = np.arange(len(mine)) - start[row]
    most = int(column.max()) + 1 if len(mine) else 1

    place = row * most + column

    def dense(values: np.ndarray, empty: float) -> np.ndarray:
        out = np.full(stations * most, empty, dtype=np.result_type(values, empty))
        out[place] = values[mine]
        return out.reshape(stations, most)

    near, far = ("a", "b") if outer else ("b", "a")
    sign = 1.0 if outer else -1.0
    return Side(
        dense(sign * getattr(intervals, near), np.nan),
        dense(sign * getattr(intervals, far), np.nan),
        dense(getattr(intervals, f"floor_{near}"), np.nan),
        dense(getattr(intervals, f"floor_{far}"), np.nan),
        dense(intervals.floor_face, -1),
        dense(getattr(intervals, f"roof_{near}"), np.nan),
        dense(getattr(intervals, f"roof_{far}"), np.nan),
        dense(intervals.roof_face, -1),
        dense(getattr(intervals, f"plastic_{near}"), 0.0),
        dense(getattr(intervals, f"plastic_{far}"), 0.0),
        dense(intervals.stretches, 0),
        dense(intervals.blocked, False),
    )
