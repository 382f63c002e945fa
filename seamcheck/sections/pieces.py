"""Curves of a plane as straight lines and arcs: fitted to points, offset, closed into rings."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

DIVIDED = 0.25
"""mm, longest side of a closed curve's points before lines and arcs are fitted."""


@dataclass(frozen=True, slots=True)
class Piece:
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


@dataclass(frozen=True, slots=True)
class Ring:
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
