"""Curves of a plane as straight lines and arcs: fitted to points, offset, closed into rings."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

DIVIDED = 0.25
"""mm, longest side of a closed curve's points before lines and arcs are fitted."""


class Piece(Struct, frozen=True):
    """A straight line, or an arc: its bulge is the tangent of a quarter of its angle, + counter-clockwise."""

    start: tuple[float, float]
    end: tuple[float, float]
    bulge: float = 0.0

    @property
    def length(self) -> float:
        """mm."""
        chord = math.dist(self.start, self.end)
        if self.bulge == 0.0:
            return chord
        angle = 4 * math.atan(abs(self.bulge))
        return chord / (2 * math.sin(angle / 2)) * angle

    @property
    def centre(self) -> np.ndarray:
        """(2,) mm, of an arc."""
        start, end = np.array(self.start), np.array(self.end)
        chord = end - start
        left = np.array([-chord[1], chord[0]])
        return np.asarray((start + end) / 2.0 + left / (2.0 * math.tan(2.0 * math.atan(self.bulge))))


def lines_and_arcs(points: np.ndarray, closed: bool, tolerance: float = 0.003) -> list[Piece]:
    """The path as the longest lines and arcs that stay within a tolerance of all its points.

    Parameters
    ----------
    points : (n, 2) mm, in order; the first is not repeated at the end of a closed path
    closed : whether the path returns to its start
    tolerance : mm, largest distance of a point from its piece

    Notes
    -----
    Greedy: from every start the longest line and the longest arc (through first, middle and last point) are
    tried, the longer wins. A closed path begins where its first piece ended, so that no piece is cut by the
    start of the path.
    """
    points = np.asarray(points, dtype=float)
    if len(points) < 2:
        return []
    if not closed:
        return _greedy(points, tolerance)
    first = _longest(points, 0, len(points) - 1, tolerance)[0]
    turned = np.roll(points, -first, axis=0)
    return _greedy(np.vstack([turned, turned[:1]]), tolerance)


def _greedy(points: np.ndarray, tolerance: float) -> list[Piece]:
    pieces, start = [], 0
    while start < len(points) - 1:
        end, bulge = _longest(points, start, len(points) - 1, tolerance)
        a, b = points[start], points[end]
        pieces.append(Piece((float(a[0]), float(a[1])), (float(b[0]), float(b[1])), bulge))
        start = end
    return pieces


def _longest(points: np.ndarray, start: int, last: int, tolerance: float) -> tuple[int, float]:
    """Index of the furthest point that one line or arc from ``start`` reaches, and its bulge."""

    def reach(fits: Callable[[int], bool]) -> int:
        low, step = start + 1, 1
        while low + step <= last and fits(low + step):
            low += step
            step *= 2
        while step >= 1:
            if low + step <= last and fits(low + step):
                low += step
            else:
                step //= 2
        return low

    line = reach(lambda end: _line_fits(points[start : end + 1], tolerance))
    arc = reach(lambda end: _bulge(points[start : end + 1], tolerance) is not None) if line < last else line
    if arc > line:
        bulge = _bulge(points[start : arc + 1], tolerance)
        if bulge is not None:
            return arc, bulge
    return line, 0.0


def _line_fits(run: np.ndarray, tolerance: float) -> bool:
    chord = run[-1] - run[0]
    length = float(np.hypot(*chord))
    if length == 0.0:
        return False
    away = run - run[0]
    across = away[:, 0] * chord[1] - away[:, 1] * chord[0]
    return bool(np.all(np.abs(across) <= tolerance * length))


def _bulge(run: np.ndarray, tolerance: float) -> float | None:
    """Bulge of the arc through first, middle and last point if all points lie on it; None if not."""
    if len(run) < 3:
        return 0.0  # two points: any arc would do; a line is the plainest
    a, b, c = run[0], run[len(run) // 2], run[-1]
    d = 2 * ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]))
    if abs(d) < 1e-12:
        return None
    b2, c2 = float((b - a) @ (b - a)), float((c - a) @ (c - a))
    centre = a + np.array([(c[1] - a[1]) * b2 - (b[1] - a[1]) * c2, (b[0] - a[0]) * c2 - (c[0] - a[0]) * b2]) / d
    radius = float(np.hypot(*(a - centre)))
    if radius > 1e5 or np.any(np.abs(np.hypot(*(run - centre).T) - radius) > tolerance):
        return None
    angles = np.unwrap(np.arctan2(*(run - centre).T[::-1]))
    steps = np.diff(angles)
    sweep = float(angles[-1] - angles[0])
    if not (np.all(steps > 0) or np.all(steps < 0)) or abs(sweep) > 1.9 * math.pi:
        return None
    return math.tan(sweep / 4)


class Ring(Struct, frozen=True):
    """A closed chain of pieces, counter-clockwise: the end of each is the start of the next."""

    pieces: tuple[Piece, ...]

    def offset(self, by: float) -> Ring:
        """The ring ``by`` mm further out (negative: in), piece by piece: lines stay lines, arcs concentric arcs.

        Notes
        -----
        Neighbours that meet at an angle are extended to a mitre. For offsets well below the smallest radius: a
        piece that would vanish turns round instead.
        """
        if by == 0.0:
            return self
        starts, ends = zip(*(_end_normals(piece) for piece in self.pieces), strict=True)
        corners = []
        for i, piece in enumerate(self.pieces):
            before, here = ends[i - 1], starts[i]
            middle = before + here
            corners.append(np.array(piece.start) + by * 2.0 * middle / float(middle @ middle))
        places = [(float(x), float(y)) for x, y in corners]
        return Ring(
            tuple(Piece(places[i], places[(i + 1) % len(places)], piece.bulge) for i, piece in enumerate(self.pieces))
        )


def _end_normals(piece: Piece) -> tuple[np.ndarray, np.ndarray]:
    """Unit normals to the right of the piece (outward on a counter-clockwise ring) at its start and end."""
    chord = np.array(piece.end) - np.array(piece.start)
    along = chord / np.hypot(*chord)
    half = 2.0 * math.atan(piece.bulge)  # the chord turns by this from the tangent at the start
    found = []
    for angle in (-half, half):
        c, s = math.cos(angle), math.sin(angle)
        tangent = np.array([c * along[0] - s * along[1], s * along[0] + c * along[1]])
        found.append(np.array([tangent[1], -tangent[0]]))
    return found[0], found[1]


def rings_of(region: BaseGeometry, tolerance: float = 0.001) -> list[tuple[Ring, tuple[Ring, ...]]]:
    """Every polygon of a region as rings of lines and arcs.

    Returns
    -------
    (outline, holes) of each polygon, all counter-clockwise
    """
    found = []
    for polygon in getattr(region, "geoms", [region]):
        rings = [
            ring_through(np.asarray(ring.coords)[:-1, :2], tolerance) for ring in (polygon.exterior, *polygon.interiors)
        ]
        found.append((rings[0], tuple(rings[1:])))
    return found


def ring_through(points: np.ndarray, tolerance: float = 0.001) -> Ring:
    """The ring of lines and arcs through the points (n, 2), mm, of a closed curve; the first is not repeated.

    Notes
    -----
    Long sides are divided first: three points, two of them far apart, lie always on an arc.
    """
    points = np.asarray(points, dtype=float)
    if not shapely.LinearRing(points).is_ccw:
        points = points[::-1]
    points = shapely.get_coordinates(shapely.segmentize(shapely.LinearRing(points), DIVIDED))[:-1]
    return Ring(tuple(lines_and_arcs(points, True, tolerance)))


SHORT = 1.0
"""mm: a fitted line that is shorter and ends smoothly stands for a piece of a curve."""

MOST_BACK = 1.0
"""mm that the end of a line is moved along it to where it is tangent to the arc beside it."""

CORNER = 0.1
"""Radians: pieces that meet at less are meant to be tangent."""


def tangent_ring(points: np.ndarray, tolerance: float = 0.001) -> Ring:
    """The ring of lines and arcs through points (n, 2), tangent wherever it has no corner: its offsets are exact.

    Notes
    -----
    Lines keep their direction and end where they are tangent to the arcs beside them. Between two lines an arc's end
    slides along the second until one arc is tangent to both; elsewhere an arc becomes a biarc (two arcs that meet
    halfway, tangents of equal length; K. M. Bolton, Computer-Aided Design 7, 1975) with the mean direction of both
    neighbours at its ends. A whole circle becomes two halves of one circle.
    """
    points = np.asarray(points, dtype=float)
    if not shapely.LinearRing(points).is_ccw:
        points = points[::-1]
    return _circle(points, tolerance) or _tangent(ring_through(points, tolerance))


def _circle(points: np.ndarray, tolerance: float) -> Ring | None:
    """Two halves of the circle (least squares) on which all points lie; None where they do not."""
    middle = points.mean(axis=0)
    away = points - middle
    system = np.column_stack([2.0 * away, np.ones(len(away))])
    x, y, rest = np.linalg.lstsq(system, np.sum(away**2, axis=1), rcond=None)[0]
    radius = math.sqrt(max(rest + x * x + y * y, 0.0))
    centre = middle + np.array([x, y])
    if len(points) < 12 or np.any(np.abs(np.hypot(*(points - centre).T) - radius) > tolerance):
        return None
    right, left = ((float(centre[0] + way * radius), float(centre[1])) for way in (1.0, -1.0))
    return Ring((Piece(right, left, 1.0), Piece(left, right, 1.0)))


def _tangent(ring: Ring) -> Ring:
    pieces = [half for piece in ring.pieces for half in _halved(piece)]
    count = len(pieces)
    ends = [_end_tangents(piece) for piece in pieces]
    places = [np.array(piece.start) for piece in pieces]
    lines = [piece.bulge == 0.0 and piece.length > SHORT for piece in pieces]  # shorter ones stand for a curve
    for i in range(count):
        before, here = ends[i - 1][1], ends[i][0]
        if abs(math.atan2(before[0] * here[1] - before[1] * here[0], float(before @ here))) > CORNER:
            continue
        if lines[i - 1] and lines[i]:
            continue
        mean = before if lines[i - 1] else here if lines[i] else (before + here) / np.hypot(*(before + here))
        ends[i - 1] = (ends[i - 1][0], mean)
        ends[i] = (mean, ends[i][1])
        line, curve = (pieces[i - 1], pieces[i]) if lines[i - 1] else (pieces[i], pieces[i - 1])
        if (lines[i - 1] or lines[i]) and curve.bulge:
            # a fitted line runs a little into the arc: back to where it is tangent
            by = float((curve.centre - places[i]) @ mean)
            places[i] = places[i] + (by if abs(by) < min(MOST_BACK, 0.4 * line.length) else 0.0) * mean
    for i, piece in enumerate(pieces):
        after = (i + 1) % count
        if piece.bulge and lines[i - 1] and lines[after]:
            t0, t1 = ends[i]
            slack = 1.0 - float(t0 @ t1)
            by = float((places[after] - places[i]) @ (t0 - t1)) / slack if slack > 1e-6 else math.inf
            if abs(by) < 0.02:
                places[after] = places[after] + by * t1
    found: list[Piece] = []
    for i in range(count):
        a, b = places[i], places[(i + 1) % count]
        found += [_arc_from(a, None, b)] if lines[i] else _biarc(a, ends[i][0], b, ends[i][1])
    return Ring(tuple(found))


def _halved(piece: Piece) -> tuple[Piece, ...]:
    """The piece, in two where it turns by more than three quarters."""
    if abs(piece.bulge) < math.tan(3.0 * math.pi / 8.0):
        return (piece,)
    chord = np.subtract(piece.end, piece.start)
    middle = (np.add(piece.start, piece.end) + piece.bulge * np.array([chord[1], -chord[0]])) / 2.0
    at, bulge = (float(middle[0]), float(middle[1])), math.tan(math.atan(piece.bulge) / 2.0)
    return Piece(piece.start, at, bulge), Piece(at, piece.end, bulge)


def _biarc(a: np.ndarray, t0: np.ndarray, b: np.ndarray, t1: np.ndarray) -> list[Piece]:
    chord = b - a
    if abs(float(chord @ (t0 - t1))) < 1e-9 * float(np.hypot(*chord)):
        return [_arc_from(a, t0, b)]
    both = float(chord @ (t0 + t1))
    reach = float(chord @ chord) / (both + math.sqrt(both**2 + 2.0 * (1.0 - float(t0 @ t1)) * float(chord @ chord)))
    first, last = a + reach * t0, b - reach * t1
    joint = (first + last) / 2.0
    return [_arc_from(a, t0, joint), _arc_from(joint, last - first, b)]


def _arc_from(a: np.ndarray, tangent: np.ndarray | None, b: np.ndarray) -> Piece:
    """The arc from a, along a tangent, to b; a line without a tangent, or where the arc bulges by less than 1e-6."""
    bulge, chord = 0.0, b - a
    if tangent is not None:
        turn = math.atan2(tangent[0] * chord[1] - tangent[1] * chord[0], float(tangent @ chord))
        bulge = math.tan(turn / 2.0)
        bulge = 0.0 if abs(bulge) < 1e-6 else bulge
    return Piece((float(a[0]), float(a[1])), (float(b[0]), float(b[1])), bulge)


def _end_tangents(piece: Piece) -> tuple[np.ndarray, np.ndarray]:
    """Unit directions of the piece at its start and its end."""
    first, last = (np.array([-normal[1], normal[0]]) for normal in _end_normals(piece))
    return first, last
