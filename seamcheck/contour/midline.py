"""From the rough middle to the exact one: points at equal distance from both borders of the rib top."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

_ASIDE = 0.35  # a border point counts for the side on which it lies at least this much square to the path


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
        index, segment = self.tree.query(shapely.points(points), predicate="dwithin", distance=within)
        a, b, p = self.start[segment], self.end[segment], points[index]
        along = np.einsum("ij,ij->i", p - a, b - a) / np.maximum(np.einsum("ij,ij->i", b - a, b - a), 1e-18)
        foot = a + np.clip(along, 0.0, 1.0)[:, None] * (b - a)
        away = foot - p
        distance = np.linalg.norm(away, axis=1)
        side = np.einsum("ij,ij->i", away, u[index])
        sides = []
        for sign in (-1.0, 1.0):
            mine = np.flatnonzero(sign * side > _ASIDE * distance)
            order = mine[np.argsort(-distance[mine], kind="stable")]
            best = np.full((len(points), 2), np.nan)
            best[index[order]] = foot[order]  # the nearest is written last
            sides.append(best)
        return sides[0], sides[1]

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


def settle(points: np.ndarray, u: np.ndarray, border: Border, within: float) -> tuple[np.ndarray, np.ndarray]:
    """Move points across the path until both borders are equally near.

    Parameters
    ----------
    points : (n, 2) near the middle; u : (n, 2) unit, roughly across; within : mm

    Returns
    -------
    points (n, 2), u (n, 2): u then points from the nearest border point on one side to that on the other
    """
    points, u = points.copy(), u.copy()
    for _ in range(5):
        low, high = border.nearest(points, u, within)
        ok = np.isfinite(low[:, 0]) & np.isfinite(high[:, 0])
        to_low = np.linalg.norm(low - points, axis=1)
        to_high = np.linalg.norm(high - points, axis=1)
        across = high - low
        length = np.linalg.norm(across, axis=1)
        ok &= length > 1e-9
        u[ok] = across[ok] / length[ok, None]
        points[ok] += (0.5 * (to_high - to_low))[ok, None] * u[ok]
    return points, u


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
