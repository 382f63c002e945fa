"""The seam seen along the light: the plane normal to the beam, and the path as straight lines and arcs."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from seamcheck.document.view import SectionSet


@dataclass(frozen=True, slots=True, eq=False)
class PlanFrame:
    """Axes of the plan; the origin is the model's.

    right, up : (3,) unit vectors in the plane; toward : (3,) against the light, towards the reader
    """

    right: np.ndarray
    up: np.ndarray
    toward: np.ndarray

    def flat(self, points: np.ndarray) -> np.ndarray:
        """(n, 3) mm -> (n, 2) mm."""
        return np.column_stack([points @ self.right, points @ self.up])


def plan_frame(beam: Any) -> PlanFrame:
    """X of the model to the right where it can be, else the next axis that can."""
    toward = -np.asarray(beam, dtype=float)
    toward = toward / np.linalg.norm(toward)
    axis = next(a for a in np.eye(3) if abs(float(a @ toward)) < 0.8)
    right = axis - float(axis @ toward) * toward
    right = right / np.linalg.norm(right)
    return PlanFrame(right, np.cross(toward, right), toward)


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

    def reach(fits: Any) -> int:
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


def offset_runs(contour: Mapping[str, Any], frame: PlanFrame, by: np.ndarray) -> list[np.ndarray]:
    """Lines beside the mid-line, ``by`` (n,) mm along u; one (m, 2) array for each run without NaN.

    Around a whole closed path the one run repeats its first point at the end.
    """
    stations = contour["stations"]
    points = np.column_stack([stations[axis] for axis in "xyz"]).astype(float)
    u = np.asarray(stations["u"], dtype=float).reshape(-1, 3)
    moved = frame.flat(points + u * by[:, None])
    known = np.isfinite(by)
    if known.all() and contour["closed"] and len(moved):
        return [np.vstack([moved, moved[:1]])]
    edges = np.flatnonzero(np.diff(known.astype(int))) + 1
    return [run for run in np.split(moved, edges) if len(run) > 1 and np.isfinite(run).all()]


def land_side(contour: Mapping[str, Any]) -> int:
    """+1 where the clamp land lies outward, -1 inward, 0 where the path has none."""
    return {"outer": 1, "inner": -1}.get(contour.get("clamp_side") or "", 0)


def sections_of(sections: tuple[SectionSet, ...], joint: str, contour: str) -> SectionSet | None:
    return next((s for s in sections if s.joint == joint and s.contour == contour), None)
