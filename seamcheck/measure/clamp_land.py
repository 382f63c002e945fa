"""The flat of the cover's top beside the beam corridor: the clamp land."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from msgspec import Struct

from seamcheck.measure.additions import Column, Columns
from seamcheck.sections.levels import crossings, nearest_end
from seamcheck.sections.section import Sections
from seamcheck.sections.slices import COVER, Segments

STEEPEST_LAND = (
    60.0  # degrees from square to the beam: up to here an inclined seam keeps its direction of pull; steeper is a wall
)
LAND_REACH = 30.0  # mm beside the mid-line within which the cover's free edge is searched
_BEND = 5.0  # degrees
_STEP = 0.01  # mm
_LEAST_RUN = 0.1  # mm over which a slope is taken: shorter lines are cut from facets' tips
_JOINED = 1e-5  # mm between the ends of two lines that continue each other
_FAR = 1e5  # mm: distance between stations on the common axis of ends


class Land(Struct, frozen=True, eq=False):
    """width (n,) mm; tilt (n,) degrees; why (n,) reason, '' where measured"""

    width: np.ndarray
    tilt: np.ndarray
    why: np.ndarray


class _Lines(Struct, frozen=True, eq=False):
    """Cut lines of all stations as seen from P outward with the light above.

    station (k,) ascending; a, b (k,) mm from P, a < b; wa, wb (k,) mm, heights against the beam; face (k,)
    """

    station: np.ndarray
    a: np.ndarray
    wa: np.ndarray
    b: np.ndarray
    wb: np.ndarray
    face: np.ndarray

    @staticmethod
    def of(segments: Segments, which: np.ndarray, outer: bool, up: float) -> _Lines:
        u0, w0, u1, w1 = (x[which] for x in (segments.u0, segments.w0, segments.u1, segments.w1))
        a, wa, b, wb = (u0, w0, u1, w1) if outer else (-u1, w1, -u0, w0)
        return _Lines(segments.station[which], a, up * wa, b, up * wb, segments.face[which])

    def height(self, at: np.ndarray) -> np.ndarray:
        """(k,) mm: of every line at a distance of its own, beyond its ends that of its direction."""
        return np.asarray(self.wa + (at - self.a) / np.maximum(self.b - self.a, 1e-12) * (self.wb - self.wa))


class _Walk(Struct, frozen=True, eq=False):
    """The topmost lines of every station from the corridor's edge outward, as far as they continue.

    station (m,) where there is a line at the edge; count (m,) lines; first (m,) place of the first one; along, height
    (sum of count + 1,) mm: the points between them, of all stations one behind the other; face (sum of count + 1,):
    of the line that begins at a point, -1 at the last one
    """

    station: np.ndarray
    count: np.ndarray
    first: np.ndarray
    along: np.ndarray
    height: np.ndarray
    face: np.ndarray

    def owner(self) -> np.ndarray:
        """(points,) index of the run of lines that a point belongs to."""
        return np.repeat(np.arange(len(self.count)), self.count + 1)

    def height_at(self, walk: np.ndarray, at: np.ndarray) -> np.ndarray:
        """Heights, mm, of runs of lines (k,) at distances (k,); beyond the ends that of the end."""
        ends = np.searchsorted(self.owner() * _FAR + self.along, walk * _FAR + at, side="right")
        line = np.clip(ends - 1, self.first[walk], self.first[walk] + self.count[walk] - 1)
        run = self.along[line + 1] - self.along[line]
        part = np.clip((at - self.along[line]) / np.maximum(run, 1e-12), 0.0, 1.0)
        return np.asarray(self.height[line] + part * (self.height[line + 1] - self.height[line]))


class AtSeam(Struct, frozen=True, eq=False):
    """What the clamp land begins from, at each section.

    level (n,) mm, height of the rib top in the press frame; plastic (n,) mm of cover over P; light_side (n,) mm from
    the rib top to the cover's light side; edges : 'inner', 'outer' -> (n,) mm from P to the beam's edge on its top
    up : +1 where the beam comes from +w, else -1; times (n,) stations that have the section
    """

    level: np.ndarray
    plastic: np.ndarray
    light_side: np.ndarray
    edges: Mapping[str, np.ndarray]
    up: float
    times: np.ndarray

    @staticmethod
    def of(sections: Sections, stations: np.ndarray, taken: Mapping[str, np.ndarray], times: np.ndarray) -> AtSeam:
        """At some stations (n,) of a path.

        Parameters
        ----------
        taken : mm, as edges, but of all stations; where it is NaN or left out, the beam is as wide as the rib top
        times : (n,) count of stations that each one stands for
        """
        section, row = sections.each, sections.of[stations]
        plastic = section.outer.plastic_a[row, 0]
        light_side = section.outer.roof_a[row, 0] + plastic if section.up > 0 else -plastic
        edges = {name: edge[row] for name, edge in section.edges.items()}
        for name, found in taken.items():
            edges[name] = np.where(np.isfinite(found[stations]), found[stations], edges[name])
        return AtSeam(sections.points[stations, 2], plastic, light_side, edges, section.up, times)


def land_columns(seam: AtSeam, wide: Segments, margin: float) -> tuple[Columns, str]:
    """Clamp land toward the side on which the cover's free edge is nearer; that side, '' without a free edge.

    Parameters
    ----------
    wide : the sections cut LAND_REACH to both sides, heights in the press frame
    margin : mm beside the beam that are left free
    """
    up, n, plastic = seam.up, len(seam.level), seam.plastic
    level = seam.level + seam.light_side - up * np.minimum(0.25 * plastic, 0.3)
    found = crossings(wide, COVER, np.where(plastic > 0, level, np.nan))
    edge = {name: nearest_end(found, n, name == "outer") for name in ("inner", "outer")}
    # a shell without its edge face ends with its last line
    edge = {name: np.fmin(value, _extent(wide, COVER, n, name == "outer")) for name, value in edge.items()}
    edge = {name: np.where(value < LAND_REACH - 1e-3, value, np.inf) for name, value in edge.items()}
    nearer = {"inner": edge["inner"] < edge["outer"], "outer": edge["outer"] < edge["inner"]}
    side = "inner" if seam.times @ nearer["inner"] > seam.times @ nearer["outer"] else "outer"
    land = measure_land(wide, n, seam.edges[side] + margin, side == "outer", up, seam.level)
    no_edge = ~np.isfinite(edge[side])
    reason = np.where(no_edge, "no-edge", land.why)
    columns = {
        "clamp_land": Column.of(np.where(no_edge, np.nan, land.width), reason),
        "clamp_tilt": Column.of(np.where(no_edge, np.nan, land.tilt), reason),
    }
    return columns, "" if no_edge.all() else side


def _extent(segments: Segments, owner: int, n: int, outer: bool) -> np.ndarray:
    """(n,) mm from P to the last line of a part on one side."""
    mine = segments.owner == owner
    last = np.zeros(n)
    np.maximum.at(last, segments.station[mine], segments.u1[mine] if outer else -segments.u0[mine])
    return np.where((last > 0) & (last < 0.9 * LAND_REACH), last, np.inf)


def measure_land(
    segments: Segments, stations: int, start: np.ndarray, outer: bool, up: float, level: np.ndarray
) -> Land:
    """Width of the land on one side.

    Parameters
    ----------
    segments : wide cut of cover, base and others; w measured along the frame's z
    start : (n,) mm from P to the edge of the beam corridor
    up : +1 where the beam comes from +w
    level : (n,) height of the rib top, only what lies above it counts

    Returns
    -------
    Width (n,) mm and tilt (n,) degrees; NaN with a reason where there is no land or ``start`` is NaN.

    Notes
    -----
    From the corridor's edge outward over the topmost lines that face the light, to the first bend, step or end;
    what stands on or over the land ends it: the cover's own features, other parts.
    """
    width, tilt = np.full(stations, np.nan), np.full(stations, np.nan)
    why = np.where(np.isfinite(start), "no-land", "depends").astype(object)
    lit = (segments.nw * up > 1e-6) & (segments.u1 - segments.u0 > 1e-9)
    above = up * (np.maximum(up * segments.w0, up * segments.w1) * up - level[segments.station]) > 0
    own = _Lines.of(segments, np.flatnonzero(lit & above & (segments.owner == COVER)), outer, up)
    others = _Lines.of(segments, np.flatnonzero(above & (segments.owner != COVER)), outer, up)
    walk = _walk(own, start)
    if not len(walk.station):
        return Land(width, tilt, why)
    slope = _slopes(walk)
    begin = start[walk.station]
    lines = _lines_of_land(walk, slope)
    end = walk.along[walk.first + lines]
    for obstacles in (own, others):
        end = _stopped(walk, obstacles, begin, end, stations)
    place = np.arange(len(walk.along)) - walk.first[walk.owner()]
    walked = (place < lines[walk.owner()]) & (walk.along < end[walk.owner()] - 1e-6)
    steepest = np.maximum.reduceat(np.where(walked | (place == 0), np.abs(slope), 0.0), walk.first)
    held = np.abs(slope[walk.first]) < STEEPEST_LAND
    some = walk.station[held]
    width[some], tilt[some], why[some] = np.maximum(end - begin, 0.0)[held], steepest[held], ""
    return Land(width, tilt, why)


def _walk(lines: _Lines, start: np.ndarray) -> _Walk:
    following = _following(lines)
    begin = start[lines.station]
    here = np.flatnonzero((lines.a <= begin + 1e-9) & (lines.b > begin + 1e-9))  # NaN finds none
    at_start = lines.height(begin)
    now = _highest(lines.station[here], here, at_start[here], len(start))
    station = np.flatnonzero(now >= 0)
    now = now[station]
    steps = [now]
    while (now >= 0).any():
        now = np.where(now >= 0, following[now], -1)
        steps.append(now)
    chain = np.column_stack(steps)  # the last column is -1
    count = (chain >= 0).sum(axis=1)
    first = np.concatenate([[0], np.cumsum(count + 1)[:-1]])
    inside = np.arange(chain.shape[1])[None, :] <= count[:, None]
    after = inside & (np.arange(chain.shape[1])[None, :] > 0)
    along, height = np.empty(chain.shape), np.empty(chain.shape)
    along[:, 0], height[:, 0] = start[station], at_start[chain[:, 0]]
    before = np.roll(chain, 1, axis=1)
    along[after], height[after] = lines.b[before[after]], lines.wb[before[after]]
    face = np.where(chain >= 0, lines.face[chain], -1)
    return _Walk(station, count, first, along[inside], height[inside], face[inside])


def _following(lines: _Lines) -> np.ndarray:
    """(k,) the line that continues each one at its end, of several the one that rises most; -1 for none."""
    keys = lines.station * _FAR + lines.a
    order = np.argsort(keys, kind="stable")
    ends = lines.station * _FAR + lines.b
    low = np.searchsorted(keys[order], ends - 2 * _JOINED)
    count = np.searchsorted(keys[order], ends + 2 * _JOINED) - low
    line = np.repeat(np.arange(len(keys)), count)
    other = order[np.repeat(low, count) + np.arange(count.sum()) - np.repeat(np.cumsum(count) - count, count)]
    goes_on = (
        (lines.station[other] == lines.station[line])
        & (np.abs(lines.a[other] - lines.b[line]) < _JOINED)
        & (np.abs(lines.wa[other] - lines.wb[line]) < _STEP)
        & (lines.b[other] > lines.b[line] + 1e-9)
    )
    line, other = line[goes_on], other[goes_on]
    return _highest(line, other, lines.wb[other], len(keys))


def _highest(group: np.ndarray, which: np.ndarray, height: np.ndarray, groups: int) -> np.ndarray:
    """(groups,) of the candidates of each group the highest, the first of equal ones; -1 where there is none."""
    order = np.lexsort((-which, height))
    found = np.full(groups, -1)
    found[group[order]] = which[order]
    return found


def _lines_of_land(walk: _Walk, slope: np.ndarray) -> np.ndarray:
    """(m,) number of lines before the first bend; a bend counts from where its face begins."""
    place = np.arange(len(slope)) - walk.first[walk.owner()]
    is_line = walk.face >= 0
    bent = is_line & (np.abs(slope - slope[walk.first][walk.owner()]) > _BEND)
    some = len(slope) + 1
    bend = np.minimum.reduceat(np.where(bent, place, some), walk.first)
    bends = bend < some
    at = walk.first + np.where(bends, bend, 0)
    begins = _runs(walk)[0][at] - walk.first
    earlier = np.where(walk.face[walk.first] == walk.face[at], bend, np.maximum(begins, 1))
    return np.where(bends, earlier, walk.count)


def _stopped(walk: _Walk, lines: _Lines, begin: np.ndarray, end: np.ndarray, stations: int) -> np.ndarray:
    """(m,) mm from P to where something stands on or over the land, else to its end."""
    of = np.full(stations, -1)
    of[walk.station] = np.arange(len(walk.station))
    mine = of[lines.station]
    beside = np.flatnonzero((mine >= 0) & (lines.b > begin[mine] + 1e-9) & (lines.a < end[mine] - 1e-6))
    mine = mine[beside]
    lines = _Lines(*(getattr(lines, name)[beside] for name in _Lines.__struct_fields__))
    over = np.zeros(len(mine), dtype=bool)
    for edge in (lines.a, lines.b):
        at = np.clip(edge, begin[mine], end[mine])
        over |= lines.height(at) - walk.height_at(mine, at) > _STEP
    stop = end.copy()
    np.minimum.at(stop, mine[over], np.maximum(lines.a, begin[mine])[over])
    return stop


def _slopes(walk: _Walk) -> np.ndarray:
    """(points,) degrees: of the line that begins at a point; that of a short one together with its neighbours on the
    same face; 0 at last points."""
    first, last = _runs(walk)
    line = np.flatnonzero(walk.face >= 0)
    along = walk.along
    far = np.maximum(along[line + 1], np.minimum(along[line] + _LEAST_RUN, along[last[line]]))
    near = np.minimum(along[line], np.maximum(far - _LEAST_RUN, along[first[line]]))
    mine = walk.owner()[line]
    rise = walk.height_at(mine, far) - walk.height_at(mine, near)
    slope = np.zeros(len(along))
    slope[line] = np.degrees(np.arctan2(rise, np.maximum(far - near, 1e-12)))
    return slope


def _runs(walk: _Walk) -> tuple[np.ndarray, np.ndarray]:
    """(points,) twice: the points where the run of lines of one face begins and ends that a point's line belongs to."""
    points = np.arange(len(walk.face))
    begins = np.append(True, np.diff(walk.face) != 0)
    begins[walk.first] = True
    first = np.maximum.accumulate(np.where(begins, points, 0))
    starts = np.append(points[begins], len(points))
    last = starts[np.searchsorted(starts, points, side="right")]
    return first, np.minimum(last, len(points) - 1)
