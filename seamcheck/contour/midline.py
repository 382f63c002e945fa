"""From the rough middle to the exact one: points at equal distance from both borders of the rib top."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

_ASIDE = 0.35  # a border point counts for the side on which it lies at least this much square to the path
_ROUNDS = 5  # of moving a point to the middle; the second already moves by less than is measured
SETTLED = 1e-10  # mm, and of a unit vector, that a round changes where it was the last
_SLACK = 0.25  # of the distance searched: how much further border is looked at again after a move


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
        return self._nearest(points, u, within, self._near(points, within))

    def settle(self, points: np.ndarray, u: np.ndarray, within: float) -> tuple[np.ndarray, np.ndarray]:
        """Move points across the path until both sides of the border are equally near.

        Parameters
        ----------
        points : (n, 2) mm, near the middle; u : (n, 2) unit, roughly across; within : mm

        Returns
        -------
        points (n, 2), u (n, 2): u then points from the nearest border point on one side to that on the other
        """
        points, u, start = points.copy(), u.copy(), points
        pairs = self._near(start, (1.0 + _SLACK) * within)
        for _ in range(_ROUNDS):
            low, high = self._nearest(points, u, within, pairs)
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
            if np.abs(points - start).max() > 0.5 * _SLACK * within:
                start = points.copy()
                pairs = self._near(start, (1.0 + _SLACK) * within)
        return points, u

    def _near(self, points: np.ndarray, within: float) -> tuple[np.ndarray, np.ndarray]:
        """Points and segments (k,), (k,) within a distance of each other, in the points' order."""
        index, segment = self.tree.query(shapely.points(points), predicate="dwithin", distance=within)
        return index, segment

    def _nearest(
        self, points: np.ndarray, u: np.ndarray, within: float, pairs: tuple[np.ndarray, np.ndarray]
    ) -> tuple[np.ndarray, np.ndarray]:
        """``nearest`` of pairs of points and segments, which are all that lie within the distance, or more."""
        index, segment = pairs
        best = [np.full((len(points), 2), np.nan) for _ in range(2)]
        if not len(index):
            return best[0], best[1]
        from_x, from_y = (points[index] - self.start[segment]).T
        along_x, along_y = self.along[segment].T
        share = np.clip((from_x * along_x + from_y * along_y) / self.square[segment], 0.0, 1.0)
        away_x, away_y = share * along_x - from_x, share * along_y - from_y
        distance = np.hypot(away_x, away_y)
        side = away_x * u[index, 0] + away_y * u[index, 1]
        first = np.flatnonzero(np.append(True, index[1:] != index[:-1]))
        count = np.diff(np.append(first, len(index)))
        for sign, found in zip((-1.0, 1.0), best, strict=True):
            mine = np.where((sign * side > _ASIDE * distance) & (distance <= within), distance, np.inf)
            least = np.repeat(np.minimum.reduceat(mine, first), count)
            nearest = np.flatnonzero((mine == least) & np.isfinite(mine))
            found[index[nearest]] = points[index[nearest]] + np.column_stack([away_x[nearest], away_y[nearest]])
        return best[0], best[1]

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
