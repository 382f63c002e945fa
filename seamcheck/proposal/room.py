"""What a joint can use: how far the contact reaches to both sides of the mid-line, and how deep the wall is."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

import numpy as np
import shapely
from msgspec import Struct
from shapely import LinearRing, LineString, Polygon
from shapely.geometry.base import BaseGeometry

END_REACH = 4.0
"""mm that a dividing wall's mid-line may end before or beyond the loop it is to meet."""

WITHIN = 0.001
"""mm within which the contact's border is taken by straight sides where room is measured."""

MOST_AT_ONCE = 400_000
"""Pairs of a place and a side of the border that are compared at once."""

SPACING = 0.5
"""mm between the places along the mid-line where room is taken."""


class Line(Struct, frozen=True, eq=False):
    """One mid-line in the plane of the press frame.

    Attributes
    ----------
    id : of the contour's path
    closed : whether it returns to its start (the first point is not repeated)
    points : (n, 2) mm
    """

    id: str
    closed: bool
    points: np.ndarray

    @property
    def curve(self) -> LineString:
        return LinearRing(self.points) if self.closed else LineString(self.points)


class Room(Struct, frozen=True, eq=False):
    """Room along one mid-line, station by station.

    Attributes
    ----------
    line : of this mid-line
    s : (n,) mm, arc length
    at : (n, 2) mm in the plane of the press frame
    u : (n, 2) unit, across the line; +u is outer
    inner, outer : (n,) mm, from the line to the border of the contact on each side
    curvature : (n,) 1/mm, of the line; positive where the inside of the turn is the inner side
    """

    line: Line
    s: np.ndarray
    at: np.ndarray
    u: np.ndarray
    inner: np.ndarray
    outer: np.ndarray
    curvature: np.ndarray

    def radius(self, side: str) -> float:
        """mm, smallest radius of turns with that side ('inner' or 'outer') on the inside; inf without."""
        most = float(np.max(self.curvature if side == "inner" else -self.curvature, initial=0.0))
        return 1.0 / most if most > 1e-5 else np.inf


class Net(Struct, frozen=True, eq=False):
    """One loop and the dividing walls inside it, whose mid-lines end on the loop or on each other."""

    outline: Line
    walls: tuple[Line, ...] = ()

    @property
    def length(self) -> float:
        """mm, of all mid-lines."""
        return float(sum(line.curve.length for line in (self.outline, *self.walls)))

    @property
    def chambers(self) -> list[Polygon]:
        """What the mid-lines enclose."""
        lines = shapely.union_all([LinearRing(self.outline.points), *(wall.curve for wall in self.walls)])
        return list(shapely.polygonize([lines]).geoms)

    def region(self, inner: float, outer: float, web: float) -> BaseGeometry:
        """What lies within ``outer`` mm outside the loop and within ``inner`` mm of every line inside it.

        Parameters
        ----------
        web : mm, radius of the corners of the chambers where lines meet
        """
        whole = Polygon(self.outline.points).buffer(outer, quad_segs=64)
        holes = [chamber.buffer(-inner - web, quad_segs=64).buffer(web, quad_segs=64) for chamber in self.chambers]
        return whole.difference(shapely.union_all(holes))

    def rounded(self, radius: float) -> Net:
        """The net with a rounded outline; its walls end on it."""
        return with_walls(rounded(self.outline, radius), self.walls)


def with_walls(outline: Line, walls: Sequence[Line]) -> Net:
    """A loop with dividing walls that are lengthened or cut to end on it."""
    inside = Polygon(outline.points)
    fitted = []
    for wall in walls:
        ends = []
        for end, before in ((wall.points[0], wall.points[1]), (wall.points[-1], wall.points[-2])):
            beyond = end + (end - before) / np.linalg.norm(end - before) * END_REACH
            ends.append(beyond if not inside.buffer(-END_REACH).contains(shapely.Point(end)) else end)
        longer = LineString(np.vstack([ends[0], wall.points[1:-1], ends[1]]))
        cut = longer.intersection(inside)
        pieces = [piece for piece in getattr(cut, "geoms", [cut]) if isinstance(piece, LineString)]
        if pieces:
            longest = max(pieces, key=lambda piece: piece.length)
            fitted.append(Line(wall.id, False, np.asarray(longest.coords)))
    return Net(outline, tuple(fitted))


def nets_of(lines: Sequence[Line]) -> tuple[Net, ...] | None:
    """Loops with their dividing walls; None where an end stays open."""
    loops = [Net(line) for line in lines if line.closed]
    rest = [line for line in lines if not line.closed]
    if not rest:
        return tuple(loops)
    noded = shapely.union_all([LineString(np.round(line.points, 6)) for line in rest])
    faces, dangles, cuts, invalid = shapely.polygonize_full([noded])
    if any(len(part.geoms) for part in (dangles, cuts, invalid)) or not len(faces.geoms):
        return None
    whole = shapely.union_all(faces)
    for part in getattr(whole, "geoms", [whole]):
        inside = shapely.line_merge(noded.intersection(part).difference(part.boundary.buffer(1e-6)))
        walls = [
            Line(f"w{k + 1}", False, np.asarray(wall.coords))
            for k, wall in enumerate(getattr(inside, "geoms", [inside]))
            if wall.length > END_REACH
        ]
        outline = Line("c1", True, np.asarray(part.exterior.coords)[:-1])
        loops.append(Net(outline, tuple(walls)))
    return tuple(loops)


def rounded(line: Line, radius: float) -> Line:
    """The closed line with no corner, convex or concave, of less than a radius; an open line as it is.

    Parameters
    ----------
    radius : mm

    Returns
    -------
    Line : the input where rounding would leave nothing of it
    """
    if not line.closed or radius <= 0.0:
        return line
    area = Polygon(line.points)
    segments = max(16, int(np.ceil(0.5 * np.pi / np.sqrt(8 * 0.0004 / radius))))  # sagitta 0.0004 mm
    convex = area.buffer(-radius, quad_segs=segments).buffer(radius, quad_segs=segments)
    smooth = convex.buffer(radius, quad_segs=segments).buffer(-radius, quad_segs=segments)
    if smooth.is_empty or not isinstance(smooth, Polygon):
        return line
    points = np.asarray(smooth.exterior.coords)[:-1]
    was_ccw, is_ccw = LinearRing(line.points).is_ccw, LinearRing(points).is_ccw
    return Line(line.id, True, points if was_ccw == is_ccw else points[::-1])


def measure_room(line: Line, contact: BaseGeometry, spacing: float = SPACING, reach: float = 50.0) -> Room:
    """How far the contact reaches to both sides of a mid-line.

    Parameters
    ----------
    line : inside the contact
    contact : region in which the parts lie on each other, mm
    reach : mm, further is not looked

    Returns
    -------
    Room
        ``inner`` and ``outer`` are the shortest distance, within half a spacing along the line, from the line across
        it to the border: 0 where the line leaves the contact.
    """
    curve = line.curve
    count = max(8, int(np.ceil(curve.length / spacing)))
    s = np.linspace(0.0, curve.length, count, endpoint=not line.closed)
    at = shapely.get_coordinates(shapely.line_interpolate_point(curve, s))
    tangent = _tangents(curve, s, line.closed)
    ccw = line.closed and LinearRing(line.points).is_ccw
    u = np.column_stack([tangent[:, 1], -tangent[:, 0]]) * (1.0 if ccw or not line.closed else -1.0)
    outer = _reach(at, u, contact, reach)
    inner = _reach(at, -u, contact, reach)
    if line.closed:
        outer, inner = _least_near(outer), _least_near(inner)
    return Room(line, s, at, u, inner, outer, _curvature(curve, s, u, line.closed))


def outside_stretches(room: Room, missing: np.ndarray, join: float = 1.0) -> list[tuple[float, float, float, int]]:
    """Contiguous stretches where room is missing.

    Parameters
    ----------
    missing : (n,) mm, at most 0 where there is enough
    join : mm, stretches closer than this are one

    Returns
    -------
    (from s, to s, most missing in mm, station where it is most); from > to passes the start of a closed line
    """
    return stretches(room.s, room.line.closed, missing, join)


def stretches(s: np.ndarray, closed: bool, missing: np.ndarray, join: float) -> list[tuple[float, float, float, int]]:
    """As ``outside_stretches``, of places s (n,) mm, evenly spaced, along a line."""
    bad = missing > 0.0
    if not bad.any():
        return []
    n, step = len(bad), float(s[1] - s[0])
    start = int(np.flatnonzero(~bad)[0]) if closed and not bad.all() else 0
    order = np.roll(np.arange(n), -start)
    runs: list[list[int]] = []
    for place in order:
        if not bad[place]:
            continue
        if runs and ((place - runs[-1][-1]) % n) * step <= join:
            runs[-1].append(int(place))
        else:
            runs.append([int(place)])
    found = []
    for stretch in runs:
        worst = max(stretch, key=lambda place: missing[place])
        found.append((float(s[stretch[0]]), float(s[stretch[-1]]), float(missing[worst]), worst))
    return found


def _reach(at: np.ndarray, direction: np.ndarray, contact: BaseGeometry, reach: float) -> np.ndarray:
    """(n,) mm along a direction until the contact ends; 0 where it does not hold the point."""
    inside = shapely.dwithin(contact, shapely.points(at), 1e-6)
    sides = _sides(contact)
    start, along = sides[:, 0], sides[:, 1] - sides[:, 0]
    found = np.full(len(at), reach)
    for rows in np.array_split(np.arange(len(at)), max(1, len(at) * len(sides) // MOST_AT_ONCE)):
        d, away = direction[rows, None], start[None] - at[rows, None]
        turn = d[..., 0] * along[:, 1] - d[..., 1] * along[:, 0]
        with np.errstate(divide="ignore", invalid="ignore"):
            far = (away[..., 0] * along[:, 1] - away[..., 1] * along[:, 0]) / turn
            share = (away[..., 0] * d[..., 1] - away[..., 1] * d[..., 0]) / turn
            hits = (far >= 0.0) & (share >= -1e-9) & (share <= 1.0 + 1e-9)
        found[rows] = np.minimum(reach, np.where(hits, far, np.inf).min(axis=1, initial=np.inf))
    return np.where(inside, found, 0.0)


@lru_cache(maxsize=4)
def _sides(contact: BaseGeometry) -> np.ndarray:
    """(m, 2, 2) mm, the straight sides of a region's border."""
    lines = shapely.get_parts(contact.boundary.simplify(WITHIN))
    sides = [np.stack([xy[:-1], xy[1:]], axis=1) for xy in (shapely.get_coordinates(line) for line in lines)]
    return np.concatenate(sides) if sides else np.empty((0, 2, 2))


def _least_near(values: np.ndarray) -> np.ndarray:
    return np.asarray(np.minimum(values, np.minimum(np.roll(values, 1), np.roll(values, -1))))


def _tangents(curve: LineString, s: np.ndarray, closed: bool, half: float = 0.02) -> np.ndarray:
    before, after = s - half, s + half
    if closed:
        before, after = before % curve.length, after % curve.length
    else:
        before, after = np.clip(before, 0.0, curve.length), np.clip(after, 0.0, curve.length)
    a = shapely.get_coordinates(shapely.line_interpolate_point(curve, before))
    b = shapely.get_coordinates(shapely.line_interpolate_point(curve, after))
    return np.asarray((b - a) / np.linalg.norm(b - a, axis=1)[:, None])


def _curvature(curve: LineString, s: np.ndarray, u: np.ndarray, closed: bool, half: float = 1.5) -> np.ndarray:
    """(n,) 1/mm, of the circle through the point and those ``half`` mm before and after it; positive against u."""
    at = shapely.get_coordinates(shapely.line_interpolate_point(curve, s))
    places = [(s + by) % curve.length if closed else np.clip(s + by, 0.0, curve.length) for by in (-half, half)]
    back, ahead = (shapely.get_coordinates(shapely.line_interpolate_point(curve, place)) - at for place in places)
    a, b, c = (np.linalg.norm(x, axis=1) for x in (back, ahead, ahead - back))
    twice = np.abs(back[:, 0] * ahead[:, 1] - back[:, 1] * ahead[:, 0])
    with np.errstate(divide="ignore", invalid="ignore"):
        size = np.where(a * b * c > 0.0, 2.0 * twice / (a * b * c), 0.0)
    return size * np.where(np.sum((back + ahead) * u, axis=1) <= 0.0, 1.0, -1.0)
