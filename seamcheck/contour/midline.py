"""From the rough middle to the exact one: points at equal distance from both borders of the rib top."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.facets import spans

_ASIDE = 0.35  # a border point counts for the side on which it lies at least this much square to the path
_ROUNDS = 5  # of moving a point to the middle; the second already moves by less than is measured
SETTLED = 1e-10  # mm, and of a unit vector, that a round changes where it was the last
_NARROW = 0.25  # of the distance searched, in which the border is looked for first: half as far again as to a middle
_MOVED = 0.2  # of that: where a point has moved further, the border near it is looked up anew


class Border:
    """The border of the rib top as segments, for the nearest point on each side.

    Parameters
    ----------
    region : polygon(s), mm
    """

    def __init__(self, region: BaseGeometry) -> None:
        rings = [
            shapely.get_coordinates(ring)
            for polygon in shapely.get_parts(region)
            for ring in (polygon.exterior, *polygon.interiors)
        ]
        self.start = np.concatenate([ring[:-1] for ring in rings])
        self.end = np.concatenate([ring[1:] for ring in rings])
        self.along = self.end - self.start
        self.square = np.maximum((self.along**2).sum(axis=1), 1e-18)
        self.tree = shapely.STRtree(shapely.linestrings(np.stack([self.start, self.end], axis=1)))

    def nearest(self, points: np.ndarray, u: np.ndarray, within: float) -> tuple[np.ndarray, np.ndarray]:
        """Nearest border points on the -u and on the +u side.

        Parameters
        ----------
        points : (n, 2); u : (n, 2) unit; within : mm

        Returns
        -------
        (n, 2), (n, 2); NaN where that side has none within the distance
        """
        return _Around(self, points, within).nearest(points, u)

    def settle(self, points: np.ndarray, u: np.ndarray, within: float) -> tuple[np.ndarray, np.ndarray]:
        """Move points across the path until both sides of the border are equally near.

        Parameters
        ----------
        points : (n, 2) mm, near the middle; u : (n, 2) unit, roughly across; within : mm

        Returns
        -------
        points (n, 2), u (n, 2): u then points from the nearest border point on one side to that on the other
        """
        points, u = points.copy(), u.copy()
        around = _Around(self, points, within)
        for _ in range(_ROUNDS):
            low, high = around.nearest(points, u)
            ok = np.isfinite(low[:, 0]) & np.isfinite(high[:, 0])
            across = high - low
            length = np.hypot(across[:, 0], across[:, 1])
            ok &= length > 1e-9
            if not ok.any():
                break
            before, across = u[ok], across[ok] / length[ok, None]
            to_low, to_high = (np.hypot(*(end - points)[ok].T) for end in (low, high))
            step = 0.5 * (to_high - to_low)
            u[ok] = across
            points[ok] += step[:, None] * across
            if max(np.abs(step).max(), np.abs(across - before).max()) < SETTLED:
                break
        return points, u

    def chord(self, points: np.ndarray, u: np.ndarray, within: float) -> tuple[np.ndarray, np.ndarray]:
        """Distance along -u and +u from each point to the border.

        Returns
        -------
        (n,), (n,) mm; NaN where there is none within the distance
        """
        rays = shapely.linestrings(np.stack([points - within * u, points + within * u], axis=1))
        index, segment = self.tree.query(rays, predicate="intersects")
        a, d = self.start[segment], self.end[segment] - self.start[segment]
        p, r = points[index], u[index]
        cross = r[:, 0] * d[:, 1] - r[:, 1] * d[:, 0]
        with np.errstate(divide="ignore", invalid="ignore"):
            t = ((a - p)[:, 0] * d[:, 1] - (a - p)[:, 1] * d[:, 0]) / cross
        ok = np.isfinite(t)
        index, t = index[ok], t[ok]
        left, right = np.full(len(points), np.inf), np.full(len(points), np.inf)
        np.minimum.at(left, index[t < 0], -t[t < 0])
        np.minimum.at(right, index[t >= 0], t[t >= 0])
        left[~np.isfinite(left)] = np.nan
        right[~np.isfinite(right)] = np.nan
        return left, right


class _Around:
    """The border near some points, looked up once: a narrow strip, and for points that find too little there, all.

    What a point finds on both sides no further away than everything is known is nearest.
    """

    def __init__(self, border: Border, points: np.ndarray, within: float) -> None:
        """points : (n, 2) mm; within : mm."""
        self.border, self.within, self.radius = border, within, _NARROW * within
        self._look(points)

    def _look(self, points: np.ndarray) -> None:
        self.start, self.pairs = points.copy(), self._near(points, self.radius)

    def _near(self, points: np.ndarray, within: float) -> tuple[np.ndarray, np.ndarray]:
        """Points and segments (k,), (k,) within a distance of each other and a few more, in the points' order.

        Those whose boxes meet: to tell all distances exactly would take four times as long as to bear the others.
        """
        index, segment = self.border.tree.query(spans(points - within, points + within))
        return index, segment

    def nearest(self, points: np.ndarray, u: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """``Border.nearest`` of the points, which may have moved since."""
        moved = np.hypot(*(points - self.start).T)
        if moved.max(initial=0.0) > _MOVED * self.radius:
            self._look(points)
            moved = np.zeros(len(points))
        low, high, furthest = self._of(self.pairs, points, u)
        more = np.flatnonzero(~(furthest <= self.radius - moved))
        if len(more):
            all_near = self._near(points[more], self.within)
            low[more], high[more], _ = self._of(all_near, points[more], u[more])
        return low, high

    def _of(
        self, pairs: tuple[np.ndarray, np.ndarray], points: np.ndarray, u: np.ndarray
    ) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Nearest border points on the -u and on the +u side among the given pairs of points and segments, and mm to
        the further one of both; NaN where a side has none within the distance."""
        index, segment = pairs
        best = [np.full((len(points), 2), np.nan) for _ in range(2)]
        furthest = np.full(len(points), np.nan)
        if not len(index):
            return best[0], best[1], furthest
        border = self.border
        from_x = points[index, 0] - border.start[segment, 0]
        from_y = points[index, 1] - border.start[segment, 1]
        along_x, along_y = border.along[segment, 0], border.along[segment, 1]
        share = np.clip((from_x * along_x + from_y * along_y) / border.square[segment], 0.0, 1.0)
        away_x, away_y = share * along_x - from_x, share * along_y - from_y
        distance = np.hypot(away_x, away_y)
        side = away_x * u[index, 0] + away_y * u[index, 1]
        first = np.flatnonzero(np.append(True, index[1:] != index[:-1]))
        count = np.diff(np.append(first, len(index)))
        reach = np.zeros(len(first))
        for sign, found in zip((-1.0, 1.0), best, strict=True):
            mine = np.where((sign * side > _ASIDE * distance) & (distance <= self.within), distance, np.inf)
            least = np.minimum.reduceat(mine, first)
            nearest = np.flatnonzero((mine == np.repeat(least, count)) & np.isfinite(mine))
            found[index[nearest]] = points[index[nearest]] + np.column_stack([away_x[nearest], away_y[nearest]])
            reach = np.maximum(reach, least)
        furthest[index[first]] = reach
        return best[0], best[1], furthest


def steady(angle: np.ndarray, spacing: float, width: float, closed: bool) -> np.ndarray:
    """Direction of the path, without the swerves that a notch in one flank causes.

    A running median leaves every monotone stretch as it is (lines, arcs and their transitions); where the
    raw angle deviates from it by more than one degree, the median holds.

    Parameters
    ----------
    angle : (n,) radians, unwrapped; spacing : mm between nodes; width : mm, of the rib
    """
    half = max(2, round(max(1.0, 2.0 * width) / spacing))
    half = min(half, max((len(angle) - 1) // 2, 1))
    if closed:
        turn = 2 * np.pi * np.round((angle[-1] - angle[0]) / (2 * np.pi))
        padded = np.concatenate([angle[-half:] - turn, angle, angle[:half] + turn])
    else:
        padded = np.pad(angle, half, mode="edge")
    median = np.median(np.lib.stride_tricks.sliding_window_view(padded, 2 * half + 1), axis=1)
    return np.where(np.abs(angle - median) > np.radians(1.0), median, angle)
