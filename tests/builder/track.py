"""Seam lines in the plane: closed, counter-clockwise, with exact offsets; imports no kernel."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from scipy.integrate import quad
from scipy.interpolate import make_interp_spline
from scipy.spatial import cKDTree


@dataclass(frozen=True)
class Line:
    """A straight run from ``start`` to ``end`` (x, y) mm."""

    start: tuple[float, float]
    end: tuple[float, float]

    @property
    def length(self) -> float:
        return math.dist(self.start, self.end)

    @property
    def curvature(self) -> float:
        return 0.0

    def at(self, s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Points (n, 2) and outward normals (n, 2) at arc lengths s; outward is right of the travel."""
        a, b = np.array(self.start), np.array(self.end)
        t = (b - a) / self.length
        s = np.asarray(s, dtype=float)
        return a + s[:, None] * t, np.repeat([[t[1], -t[0]]], len(s), axis=0)

    def distance(self, xy: np.ndarray) -> np.ndarray:
        a, b = np.array(self.start), np.array(self.end)
        share = np.clip((xy - a) @ (b - a) / self.length**2, 0.0, 1.0)
        return np.linalg.norm(xy - a - share[:, None] * (b - a), axis=1)


@dataclass(frozen=True)
class Arc:
    """An arc; ``sweep`` in radians, positive counter-clockwise, ``first`` the polar angle of its start."""

    centre: tuple[float, float]
    radius: float
    first: float
    sweep: float

    @property
    def length(self) -> float:
        return self.radius * abs(self.sweep)

    @property
    def curvature(self) -> float:
        return math.copysign(1.0 / self.radius, self.sweep)

    def at(self, s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        turn = math.copysign(1.0, self.sweep)
        angle = self.first + turn * np.asarray(s, dtype=float) / self.radius
        ray = np.column_stack([np.cos(angle), np.sin(angle)])
        return np.array(self.centre) + self.radius * ray, turn * ray

    def distance(self, xy: np.ndarray) -> np.ndarray:
        to = xy - np.array(self.centre)
        turn = math.copysign(1.0, self.sweep)
        past = np.mod(turn * (np.arctan2(to[:, 1], to[:, 0]) - self.first), 2 * math.pi)
        on_arc = np.abs(np.linalg.norm(to, axis=1) - self.radius)
        ends = self.at(np.array([0.0, self.length]))[0]
        to_end = np.linalg.norm(xy[:, None, :] - ends[None], axis=2).min(axis=1)
        return np.where(past <= abs(self.sweep), on_arc, to_end)


@dataclass(frozen=True)
class Track:
    """A closed counter-clockwise line of straight runs and arcs that join without a kink."""

    name: str
    pieces: tuple[Line | Arc, ...]

    @property
    def length(self) -> float:
        """Exact."""
        return sum(piece.length for piece in self.pieces)

    @property
    def least_radius(self) -> float:
        return min((p.radius for p in self.pieces if isinstance(p, Arc)), default=math.inf)

    @property
    def is_circle(self) -> bool:
        return len(self.pieces) == 1

    def at(self, s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Points (n, 2) and outward normals (n, 2) at arc lengths s (taken modulo the length)."""
        s = np.mod(np.asarray(s, dtype=float), self.length)
        ends = np.cumsum([piece.length for piece in self.pieces])
        which = np.minimum(np.searchsorted(ends, s, side="right"), len(self.pieces) - 1)
        xy, normal = np.empty((len(s), 2)), np.empty((len(s), 2))
        for i, piece in enumerate(self.pieces):
            mine = which == i
            xy[mine], normal[mine] = piece.at(s[mine] - (ends[i] - piece.length))
        return xy, normal

    def curvature(self, s: np.ndarray) -> np.ndarray:
        """Signed, positive where the line turns left."""
        s = np.mod(np.asarray(s, dtype=float), self.length)
        ends = np.cumsum([piece.length for piece in self.pieces])
        which = np.minimum(np.searchsorted(ends, s, side="right"), len(self.pieces) - 1)
        return np.array([piece.curvature for piece in self.pieces])[which]

    def distance(self, xy: np.ndarray) -> np.ndarray:
        """Exact distance of points (n, 2) from the line."""
        return np.min([piece.distance(np.asarray(xy, dtype=float)) for piece in self.pieces], axis=0)

    def middle_of_run(self, index: int = 0) -> float:
        """Arc length of the middle of the index-th straight run, or of the index-th piece without any."""
        runs = [i for i, piece in enumerate(self.pieces) if isinstance(piece, Line)] or list(range(len(self.pieces)))
        i = runs[index % len(runs)]
        return sum(piece.length for piece in self.pieces[:i]) + self.pieces[i].length / 2

    def cut_up(self, times: int) -> Track:
        """The same line with every piece cut into ``times`` equal ones."""
        pieces: list[Line | Arc] = []
        for piece in self.pieces:
            for i in range(times):
                (p, q), _ = piece.at(np.array([i, i + 1]) * piece.length / times)
                if isinstance(piece, Line):
                    pieces.append(Line((p[0], p[1]), (q[0], q[1])))
                else:
                    share = piece.sweep / times
                    pieces.append(Arc(piece.centre, piece.radius, piece.first + i * share, share))
        return Track(self.name, tuple(pieces))

    def area(self, offset: float = 0.0) -> float:
        """Enclosed area of the line, or of its parallel (Steiner: A + L d + pi d^2)."""
        a = 0.0
        for piece in self.pieces:  # Green's theorem, exact for lines and arcs
            (p, q), _ = piece.at(np.array([0.0, piece.length]))
            a += (p[0] * q[1] - q[0] * p[1]) / 2
            if isinstance(piece, Arc):
                a += piece.radius**2 * (piece.sweep - math.sin(piece.sweep)) / 2
        return a + self.length * offset + math.pi * offset**2


@dataclass(frozen=True, eq=False)
class SmoothTrack:
    """A closed counter-clockwise smooth curve x(t), t in 0..1, given with its first two derivatives."""

    name: str
    curve: Callable[[np.ndarray], np.ndarray]
    first: Callable[[np.ndarray], np.ndarray]
    second: Callable[[np.ndarray], np.ndarray]
    knots: tuple[float, ...] = (0.0, 0.5, 1.0)

    is_circle = False

    def _speed(self, t: float) -> float:
        return float(np.linalg.norm(self.first(np.array([t]))[0]))

    @property
    def length(self) -> float:
        """By adaptive quadrature (relative error < 1e-10)."""
        return sum(
            quad(self._speed, a, b, epsabs=1e-11, epsrel=1e-12, limit=400)[0]
            for a, b in zip(self.knots, self.knots[1:], strict=False)
        )

    @property
    def least_radius(self) -> float:
        return float(1.0 / np.abs(self.curvature_t(np.linspace(0, 1, 20001))).max())

    def points_t(self, t: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        d = self.first(t)
        d = d / np.linalg.norm(d, axis=1)[:, None]
        return self.curve(t), np.column_stack([d[:, 1], -d[:, 0]])

    def curvature_t(self, t: np.ndarray) -> np.ndarray:
        d, dd = self.first(t), self.second(t)
        return (d[:, 0] * dd[:, 1] - d[:, 1] * dd[:, 0]) / np.linalg.norm(d, axis=1) ** 3

    def _t_of(self, s: np.ndarray) -> np.ndarray:
        fine = np.linspace(0, 1, 20001)
        speed = np.linalg.norm(self.first(fine), axis=1)
        run = np.concatenate([[0], np.cumsum((speed[1:] + speed[:-1]) / 2 * np.diff(fine))])
        return np.interp(np.mod(s, self.length) * run[-1] / self.length, run, fine)

    def at(self, s: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Points and outward normals near arc lengths s (on the curve exactly, s within 1e-4 mm)."""
        return self.points_t(self._t_of(np.asarray(s, dtype=float)))

    def curvature(self, s: np.ndarray) -> np.ndarray:
        return self.curvature_t(self._t_of(np.asarray(s, dtype=float)))

    def distance(self, xy: np.ndarray) -> np.ndarray:
        """Distance of points (n, 2): nearest of 4000 samples, then Newton on the foot point."""
        xy = np.asarray(xy, dtype=float)
        t0 = np.linspace(0, 1, 4000, endpoint=False)
        t = t0[cKDTree(self.curve(t0)).query(xy)[1]]
        for _ in range(6):
            away, d, dd = self.curve(np.mod(t, 1)) - xy, self.first(np.mod(t, 1)), self.second(np.mod(t, 1))
            slope = (d * d).sum(axis=1) + (away * dd).sum(axis=1)
            t = t - (away * d).sum(axis=1) / np.where(np.abs(slope) < 1e-9, 1e-9, slope)
        return np.linalg.norm(self.curve(np.mod(t, 1)) - xy, axis=1)

    def middle_of_run(self, index: int = 0) -> float:
        return self.length * (0.07 + 0.31 * index)


AnyTrack = Track | SmoothTrack


def rounded_polygon(name: str, corners: Sequence[tuple[float, float]], radius: float) -> Track:
    """A polygon (counter-clockwise) with the same radius of the mid-line in every corner."""
    n = len(corners)
    pts = [np.array(c, dtype=float) for c in corners]
    feet: list[tuple[np.ndarray, np.ndarray, Arc]] = []
    for i in range(n):
        before, here, after = pts[i - 1], pts[i], pts[(i + 1) % n]
        a = (here - before) / np.linalg.norm(here - before)
        b = (after - here) / np.linalg.norm(after - here)
        turn = math.atan2(a[0] * b[1] - a[1] * b[0], float(a @ b))
        back = radius * math.tan(abs(turn) / 2)
        start, end = here - a * back, here + b * back
        left = np.array([-a[1], a[0]]) * math.copysign(1.0, turn)
        centre = start + left * radius
        ray = start - centre
        arc = Arc((centre[0], centre[1]), radius, math.atan2(ray[1], ray[0]), turn)
        feet.append((start, end, arc))
    pieces: list[Line | Arc] = []
    for i in range(n):
        end, start = feet[i][1], feet[(i + 1) % n][0]
        pieces.append(feet[i][2])
        if math.dist(end, start) > 1e-9:
            pieces.append(Line((end[0], end[1]), (start[0], start[1])))
    return Track(name, tuple(pieces[1:] + pieces[:1]))  # begin on a straight run


def rounded_rectangle(width: float, depth: float, radius: float, name: str = "rounded-rectangle") -> Track:
    a, b = width / 2, depth / 2
    return rounded_polygon(name, [(-a, -b), (a, -b), (a, b), (-a, b)], radius)


def circle(radius: float) -> Track:
    return Track("circle", (Arc((0.0, 0.0), radius, 0.0, 2 * math.pi),))


def l_shape(width: float = 90, depth: float = 70, arm: float = 32, radius: float = 7) -> Track:
    return rounded_polygon("l-shape", [(0, 0), (width, 0), (width, arm), (arm, arm), (arm, depth), (0, depth)], radius)


def c_shape(width: float = 90, depth: float = 80, arm: float = 26, radius: float = 7) -> Track:
    return rounded_polygon(
        "c-shape",
        [
            (0, 0),
            (width, 0),
            (width, arm),
            (arm, arm),
            (arm, depth - arm),
            (width, depth - arm),
            (width, depth),
            (0, depth),
        ],
        radius,
    )


def ellipse(a: float, b: float) -> SmoothTrack:
    w = 2 * math.pi

    def curve(t: np.ndarray) -> np.ndarray:
        return np.column_stack([a * np.cos(w * t), b * np.sin(w * t)])

    def first(t: np.ndarray) -> np.ndarray:
        return w * np.column_stack([-a * np.sin(w * t), b * np.cos(w * t)])

    def second(t: np.ndarray) -> np.ndarray:
        return -(w**2) * curve(t)

    return SmoothTrack("ellipse", curve, first, second)


def closed_spline(points: Sequence[tuple[float, float]] | None = None) -> SmoothTrack:
    """A periodic quintic spline through the points (counter-clockwise); smooth enough for its parallels."""
    if points is None:
        points = [(45, 0), (38, 24), (10, 33), (-18, 25), (-42, 20), (-46, -8), (-22, -30), (8, -24), (34, -26)]
    p = np.array([*points, points[0]], dtype=float)
    chord = np.concatenate([[0], np.cumsum(np.linalg.norm(np.diff(p, axis=0), axis=1))])
    spline = make_interp_spline(chord / chord[-1], p, k=5, bc_type="periodic")
    one, two = spline.derivative(1), spline.derivative(2)
    return SmoothTrack("spline", spline, one, two, tuple(float(x) for x in chord / chord[-1]))
