"""What lies beside a band: a trap, the edge of a wall, a wall that rises, or the other part that fills the step."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.constants import FREE_ENOUGH, OVERLAPS
from seamcheck.joint.contact import Surface
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at, highest_at
from seamcheck.joint.light import inside
from seamcheck.joint.regions import points_along, rooms
from seamcheck.kernel import Body

EDGE, TRAP, FILLED, GROOVE, RISE, LEVEL = range(6)
"""Beside a place of a band's border: the wall ends or falls off deep; a floor lies lower, with room above it; a floor
lies lower and the other part fills the room; the same, and behind it the surface is back at the band's height; the
surface rises; it goes on at the band's height."""

_STEPS = 32  # heights read beside each place
_WIDTHS = (2.0, 1.0, 4.0)  # reach of the search: band widths, at least and at most mm
_FALLEN = (0.25, 0.03, 0.15)  # band widths, at least and at most mm: lower than this is a step, less a bend
_FLAT = 0.18  # rise per mm of a surface that still is a floor: 10 degrees
_DEEPEST = (3.0, 1.0, 4.0)  # band widths, at least and at most mm: a floor further down is no trap's
_HALF_FILLED = 0.5  # of the step's depth: with less space above the floor melt cannot use it
_TRAP_WIDTH = (0.25, 0.4)  # band widths, at most mm: a narrower space is play between two parts
_FACING = 0.2  # cosine: surfaces that face up and down
_ABOVE = 0.3  # mm by which two parts may overlap beside the band and still face each other
_INTO = 0.3  # band widths into the band, over which its slope is read
_ON_IT = 1e-6  # mm
_WALL_AWAY, _WALL_UP = (0.05, 0.3), 0.4  # mm beside a band and above it, where a wall would stand
_AGAINST, _HALF = 0.06, 0.5  # mm beside a band where a wall against it has begun; band widths that it has at least
_INSIDE = 0.02  # mm within the border, where the band's own height is read


class BorderProfile(Struct, frozen=True, eq=False):
    """Shares (0 to 1) of a band's border by what lies beside it, and the depth of the floors there.

    share : (6,) by EDGE, TRAP, FILLED, GROOVE, RISE, LEVEL
    wrapped, channel : of its outer and of its inner border, beside which the opposite part hangs lower than the band
    skirted : of its border, beside which the opposite part reaches down into a narrow trap
    walled : of its traps, behind whose floor the own part rises again by half of their depth at least
    backed : of its outer or its inner border, the larger, against which a wall of the opposite part stands
    height : mm, median depth of the floors of traps; NaN without one
    step : mm, median depth or height of the steps that are no traps (filled, groove, rise); NaN without one
    """

    share: np.ndarray
    wrapped: float
    height: float
    step: float
    channel: float = 0.0
    skirted: float = 0.0
    walled: float = 1.0
    backed: float = 0.0


def border_profile(
    region: BaseGeometry,
    faces: tuple[int, ...],
    own: Surface,
    opposite: Surface,
    frame: Frame,
    width: float,
    body: Body,
    counter: Body,
    slopes: bool = True,
) -> BorderProfile:
    """What both parts show along lines square to the border of a band.

    Parameters
    ----------
    region : the band seen along the frame's z, mm; its part lies below it, the opposite part above
    faces : of the band; own, opposite : surfaces of both parts
    width : mm, of the band
    body, counter : that carries the band, and the opposite one: walls beside it may end further away than ``own`` and
        ``opposite`` reach
    slopes : whether the band's faces may run aslant; false for a rounded top, which bends by itself
    """
    border = region.boundary
    count = int(np.clip(border.length, 24, 200))
    foot, outward = _border_points(region, count)
    reach = float(np.clip(_WIDTHS[0] * width, *_WIDTHS[1:]))
    away = reach * np.arange(1, _STEPS + 1) / _STEPS
    places = (foot[:, None] + away[None, :, None] * outward[:, None]).reshape(-1, 2)
    z = frame.axes[2]
    up = own.normal @ z > _FACING
    floor = highest_at(places, frame.local(own.corners[up])).reshape(len(foot), -1)
    mine = np.isin(own.face, faces) & up
    top = frame.local(own.corners[mine])
    level = highest_at(foot - _INSIDE * outward, top)
    known = np.isfinite(level)
    if slopes:  # the drop is measured from the band's own plane: a seam on a slope or a dome
        deeper = _INSIDE + _INTO * width
        with np.errstate(invalid="ignore"):
            slope = (level - highest_at(foot - deeper * outward, top)) / (deeper - _INSIDE)
        known &= np.isfinite(slope)
        level = level + np.where(known, slope, 0.0) * _INSIDE
        floor = floor - np.where(known, slope, 0.0)[:, None] * away
    down = opposite.normal @ z < -_FACING
    roof = _lowest_above(places, floor.ravel(), frame.local(opposite.corners[down])).reshape(floor.shape)
    room = roof - floor
    if not known.any():
        return BorderProfile(np.eye(6)[EDGE], 0.0, np.nan, np.nan)
    kind, depth = classify(level[known, None] - floor[known], room[known], away[0], width)
    edge = np.flatnonzero(kind == EDGE)
    if len(edge):
        at = np.flatnonzero(known)[edge]
        kind[edge[_walls(foot[at], outward[at], level[at], body, frame)]] = RISE
    share = np.bincount(kind, minlength=6) / len(kind)
    outer = _outer(region, foot[known], outward[known])
    lower = roof[known][:, : max(1, _STEPS // 4)].min(axis=1) < level[known] - _FALLEN[2]
    hangs = lower & (kind == EDGE)
    wrapped, channel = (float(np.mean(hangs[mine])) if mine.any() else 0.0 for mine in (outer, ~outer))
    backed = 0.0
    if max(wrapped, channel) >= FREE_ENOUGH:
        against = _backed(foot[known], outward[known], level[known], width, counter, frame)
        backed = max(float(np.mean(against[mine])) for mine in (outer, ~outer) if mine.any())
    trap, other = depth[kind == TRAP], depth[np.isin(kind, (FILLED, GROOVE, RISE))]
    return BorderProfile(
        share,
        wrapped,
        float(np.median(trap)) if len(trap) else np.nan,
        float(np.nanmedian(other)) if np.isfinite(other).any() else np.nan,
        channel,
        float(np.mean(lower & (kind == TRAP))),
        _walled(level[known, None] - floor[known], depth, np.asarray(kind == TRAP)),
        backed,
    )


def _walled(drop: np.ndarray, depth: np.ndarray, is_trap: np.ndarray) -> float:
    """Share of the traps that end at a lip or a wall: drop (n, k) mm beside the band, depth (n,) mm of the floors."""
    if not is_trap.any():
        return 1.0
    half = _HALF_FILLED * depth[:, None]
    behind = np.cumsum(drop > half, axis=1) > 0
    rises = np.asarray((behind & (drop < half)).any(axis=1))
    return float(np.mean(rises[is_trap]))


def _outer(region: BaseGeometry, foot: np.ndarray, outward: np.ndarray) -> np.ndarray:
    """Which places (n,) of a band's border look away from what it runs round; of open bands, from their middle."""
    if rooms(region):
        outside = shapely.union_all([polygon.exterior for polygon in shapely.get_parts(region)])
        return np.asarray(shapely.distance(outside, shapely.points(foot)) < _ON_IT)
    middle = shapely.get_coordinates(region.convex_hull.centroid)[0]
    return np.asarray(((foot - middle) * outward).sum(axis=1) > 0)


def _walls(foot: np.ndarray, outward: np.ndarray, level: np.ndarray, body: Body, frame: Frame) -> np.ndarray:
    """Whether the band's own part stands up right beside places (n,) of its border."""
    at = [(away, _WALL_UP) for away in _WALL_AWAY]
    return np.asarray(_stands(foot, outward, level, at, body, frame).any(axis=0))


def _backed(
    foot: np.ndarray, outward: np.ndarray, level: np.ndarray, width: float, counter: Body, frame: Frame
) -> np.ndarray:
    """Beside which places (n,) of a band's border the opposite part stands against the band's wall, as another wall."""
    at = ((_AGAINST, -_HALF * width), (_AGAINST, -OVERLAPS * width), (_HALF * width, -OVERLAPS * width))
    return np.asarray(_stands(foot, outward, level, at, counter, frame).all(axis=0))


def _stands(
    foot: np.ndarray,
    outward: np.ndarray,
    level: np.ndarray,
    at: Iterable[tuple[float, float]],
    body: Body,
    frame: Frame,
) -> np.ndarray:
    """Whether a body stands beside places (n,) of a border, so far (mm) beside and above each: (k, n) bool."""
    points = [np.column_stack([foot + away * outward, level + up]) for away, up in at]
    return inside(np.concatenate(points), body, frame).reshape(len(points), -1)


def classify(drop: np.ndarray, room: np.ndarray, step: float, width: float) -> tuple[np.ndarray, np.ndarray]:
    """What lies beside each place of a band's border.

    Parameters
    ----------
    drop : (n, k) mm, how much lower the own surface lies at ``step``, 2 ``step`` ... beside the border; inf where
        there is none
    room : (n, k) mm from that surface up to the opposite part; inf where it is open
    step : mm; width : mm, of the band

    Returns
    -------
    (n,) EDGE ... LEVEL; (n,) mm, depth of the floor, or height of the rise; NaN at EDGE and LEVEL
    """
    fallen = float(np.clip(_FALLEN[0] * width, *_FALLEN[1:]))
    deepest = float(np.clip(_DEEPEST[0] * width, *_DEEPEST[1:]))
    n, k = drop.shape
    column = np.arange(k)
    event = np.greater(np.abs(drop), fallen)
    first = np.where(event.any(axis=1), event.argmax(axis=1), k)
    at_event = drop[np.arange(n), np.minimum(first, k - 1)]
    kind = np.full(n, EDGE)
    depth = np.full(n, np.nan)
    kind[first == k] = LEVEL
    rises = (first < k) & (at_event < 0)
    kind[rises] = RISE
    depth[rises] = -np.min(np.where(np.isfinite(drop[rises]), drop[rises], 0.0), axis=1) if rises.any() else 0.0
    with np.errstate(invalid="ignore"):
        flat = np.abs(np.diff(drop, axis=1)) < _FLAT * step
    flat = np.column_stack([flat, np.zeros(n, dtype=bool)])
    plateau = flat & (drop > fallen) & (drop < deepest) & (column >= first[:, None])
    falls = (first < k) & (at_event > 0) & plateau.any(axis=1)
    begin = np.where(plateau.any(axis=1), plateau.argmax(axis=1), 0)
    floor = drop[np.arange(n), begin]
    with np.errstate(invalid="ignore"):
        past = column >= begin[:, None]
        same = np.less(np.abs(drop - floor[:, None]), 0.5 * floor[:, None])
        on_floor = past & (np.cumsum(past & ~same, axis=1) == 0)
        roomy = on_floor & (room > _HALF_FILLED * floor[:, None])
        before_filled = np.cumsum(on_floor & ~roomy, axis=1) == 0
        back = ((drop < fallen) & (column > begin[:, None])).any(axis=1)
    enough = float(np.minimum(_TRAP_WIDTH[0] * width, _TRAP_WIDTH[1]))
    # the flank takes the first step: count from where the surface left the band
    traps = falls & (((roomy & before_filled).sum(axis=1) + 1) * step >= enough)
    fills = falls & ~traps & ((on_floor & ~roomy).sum(axis=1) * step >= enough)
    kind[traps] = TRAP
    kind[fills] = np.where(np.asarray(back)[fills], GROOVE, FILLED)
    falls = traps | fills
    depth[falls] = floor[falls]
    return kind, depth


def _border_points(region: BaseGeometry, count: int) -> tuple[np.ndarray, np.ndarray]:
    """Points (n, 2) spread over a region's border, and unit vectors (n, 2) out of it; corners left out."""
    border = region.boundary
    at = (np.arange(count) + 0.37) / count * border.length
    step = 0.01
    foot, before, after = (points_along(border, at + shift) for shift in (0.0, -step, step))
    along = after - before
    length = np.linalg.norm(along, axis=1)
    straight = np.abs(length - 2 * step) < 1e-4
    foot, along = foot[straight], along[straight] / length[straight, None]
    outward = np.column_stack([along[:, 1], -along[:, 0]])
    probe = foot + 1e-3 * outward
    inside = shapely.contains_xy(region, probe[:, 0], probe[:, 1])
    return foot, np.where(inside[:, None], -outward, outward)


def _lowest_above(points: np.ndarray, floor: np.ndarray, triangles: np.ndarray) -> np.ndarray:
    """Height (n,) of the lowest triangle over a floor (n,) at points (n, 2); inf where there is none."""
    height, index, _ = heights_at(points, triangles)
    over = height > floor[index] - _ABOVE
    found = np.full(len(points), np.inf)
    np.minimum.at(found, index[over], height[over])
    return found
