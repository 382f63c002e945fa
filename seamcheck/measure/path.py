"""The path as a scanner and a handling robot see it: field, rise, nearest neighbouring stretch."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from scipy.spatial import cKDTree

from seamcheck.contour import Contour, Path
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.measure.additions import Additions, Value, value_of

_NEIGHBOUR = 3.0  # the way along the seam must be so many times the straight distance
_LOOK = 30.0  # mm within which neighbouring stretches are looked for
_RUN, _MOST_RUNS = 8, 512  # nodes whose common box is looked at first, and how many such runs at most
_EQUAL = 1e-6  # mm, and of a slope: of places that differ by less the first one is named, not one that noise picks


class Course(Struct, frozen=True, eq=False):
    """All paths of a contour in the view.

    points (n, 3) mm; path (n,) index; s (n,) mm along its path
    """

    points: np.ndarray
    path: np.ndarray
    s: np.ndarray

    @staticmethod
    def of(joint: Joint, contour: Contour, view: Frame) -> Course:
        points = np.concatenate([view.local(joint.frame.world(path.points)) for path in contour.paths])
        counts = [len(path.s) for path in contour.paths]
        return Course(
            points, np.repeat(np.arange(len(counts)), counts), np.concatenate([path.s for path in contour.paths])
        )


def path_values(joint: Joint, contour: Contour) -> Additions:
    """Field circle and rectangle, rise and slope of the mid-line, distance between neighbouring stretches."""
    view = joint.view
    course = Course.of(joint, contour, view)
    return Additions({**_field(course, view), **_rise(course, contour, view), **_neighbours(course, contour, view)})


def field_circle(flat: np.ndarray) -> tuple[np.ndarray, float]:
    """Centre (2,) and radius, mm, of the smallest circle round points (n, 2)."""
    points = shapely.MultiPoint(flat).convex_hull
    centre = shapely.get_coordinates(shapely.minimum_bounding_circle(points).centroid)[0]
    return centre, float(shapely.minimum_bounding_radius(points))


def _field(course: Course, view: Frame) -> dict[str, Value]:
    flat = course.points[:, :2]
    level = float(np.median(course.points[:, 2]))
    centre, radius = field_circle(flat)
    at = view.world(np.append(centre, level))
    rectangle = shapely.get_coordinates(shapely.minimum_rotated_rectangle(shapely.MultiPoint(flat)))
    sides = np.linalg.norm(np.diff(rectangle[:3], axis=0), axis=1) if len(rectangle) >= 3 else np.zeros(2)
    middle = rectangle[:-1].mean(axis=0) if len(rectangle) > 1 else rectangle[0]
    along = rectangle[1] - rectangle[0] if sides[0] >= sides[1] else rectangle[2] - rectangle[1]
    direction = view.axes[:2].T @ (along / max(np.linalg.norm(along), 1e-12))
    centre, turned = view.world(np.append(middle, level)), [float(x) for x in direction]
    return {
        "field_circle": value_of(2.0 * radius, at),
        "field_length": value_of(float(sides.max()), centre, direction=turned),
        "field_width": value_of(float(sides.min()), centre, direction=turned),
    }


def _rise(course: Course, contour: Contour, view: Frame) -> dict[str, Value]:
    height = course.points[:, 2]
    top = _first_largest(height)
    steepest, at = 0.0, top
    step_up, step_at = 0.0, top
    start = 0
    for path in contour.paths:
        n = len(path.s)
        points = course.points[start : start + n]
        ahead = np.roll(points, -1, axis=0) if path.closed else points[1:]
        step = ahead - points[: len(ahead)]
        run = np.hypot(step[:, 0], step[:, 1])
        with np.errstate(invalid="ignore", divide="ignore"):
            slope = np.where(run > 1e-6, np.abs(step[:, 2]) / run, 0.0)
        if len(slope) and slope.max() > steepest:
            steepest, at = float(slope.max()), start + _first_largest(slope)
        rise = _over_one_width(path, points[:, 2], contour.rib_width)
        if len(rise) and rise.max() > step_up:
            step_up, step_at = float(rise.max()), start + _first_largest(rise)
        start += n
    world = view.world(course.points)
    return {
        "seam_rise": value_of(float(height.max() - height.min()), world[top]),
        "seam_slope": value_of(float(np.degrees(np.arctan(steepest))), world[at]),
        "seam_step": value_of(step_up, world[step_at]),
    }


def _first_largest(values: np.ndarray) -> int:
    """The first of the places with the largest value; what differs by less than can be measured is equal."""
    return int(np.argmax(values >= values.max() - _EQUAL))


def _over_one_width(path: Path, height: np.ndarray, width: float) -> np.ndarray:
    """(n,) mm: how much the height changes from half a width before every node to half a width behind it."""
    s, h = path.s, height
    if path.closed:
        s, h = np.concatenate([s - path.length, s, s + path.length]), np.tile(h, 3)
    ends = [np.interp(np.clip(path.s + by, s[0], s[-1]), s, h) for by in (-width / 2, width / 2)]
    return np.asarray(np.abs(ends[1] - ends[0]))


def _neighbours(course: Course, contour: Contour, view: Frame) -> dict[str, Value]:
    """Nearest two stretches that are far from each other along the seam."""
    points = course.points
    pairs = cKDTree(points).query_pairs(_LOOK, output_type="ndarray")
    nothing = {"path_distance": value_of(None, why="no-neighbour")}
    pairs = pairs[_may_be_neighbours(course, contour.rib_width, pairs)]
    if not len(pairs):
        return nothing
    apart = np.linalg.norm(points[pairs[:, 0]] - points[pairs[:, 1]], axis=1)
    far = _way(course, contour, pairs) > _NEIGHBOUR * apart + contour.rib_width
    if not far.any():
        return nothing
    best = pairs[far][int(np.argmin(apart[far]))]
    one, other = (_around(course, contour, int(i)) for i in best)
    line = shapely.shortest_line(shapely.LineString(one[:, :2]), shapely.LineString(other[:, :2]))
    ends = shapely.get_coordinates(line)
    distance = min(float(shapely.length(line)), float(apart[far].min()))
    middle = ends.mean(axis=0)
    return {"path_distance": value_of(distance, view.world(np.append(middle, points[best, 2].mean())))}


def _may_be_neighbours(course: Course, width: float, pairs: np.ndarray) -> np.ndarray:
    """(k,) bool: pairs (k, 2) of nodes but those that the boxes of their runs of nodes show to be too near each other
    along the seam."""
    count = len(course.s)
    size = max(_RUN, -(-count // _MOST_RUNS))
    new = np.append(True, np.diff(course.path) != 0) | (np.arange(count) % size == 0)
    run, first = np.cumsum(new) - 1, np.flatnonzero(new)
    low, high = np.minimum.reduceat(course.points, first), np.maximum.reduceat(course.points, first)
    middle, half = (low + high) / 2, np.linalg.norm(high - low, axis=1) / 2
    apart = np.linalg.norm(middle[:, None] - middle, axis=2) - half[:, None] - half
    begin, end = np.minimum.reduceat(course.s, first), np.maximum.reduceat(course.s, first)
    way = np.maximum(end[:, None] - begin, end - begin[:, None])
    path = course.path[first]
    near = (path[:, None] == path) & (way <= _NEIGHBOUR * np.maximum(apart, 0.0) + width)
    return np.asarray(~near[run[pairs[:, 0]], run[pairs[:, 1]]])


def _way(course: Course, contour: Contour, pairs: np.ndarray) -> np.ndarray:
    """Shortest way along the seam between pairs of nodes; through one junction at most, else infinite."""
    a, b = pairs.T
    way = np.full(len(pairs), np.inf)
    same = course.path[a] == course.path[b]
    direct = np.abs(course.s[a] - course.s[b])
    lengths = np.array([path.length for path in contour.paths])
    closed = np.array([path.closed for path in contour.paths])
    round_it = np.where(closed[course.path[a]], lengths[course.path[a]] - direct, np.inf)
    way[same] = np.minimum(direct, round_it)[same]
    names = {end for path in contour.paths for end in path.ends if end.startswith("junction:")}
    for name in sorted(names):
        to = np.full(len(course.s), np.inf)
        for i, path in enumerate(contour.paths):
            mine = course.path == i
            for end, place in zip(path.ends, (0.0, path.length), strict=False):
                if end == name:
                    to[mine] = np.minimum(to[mine], np.abs(course.s[mine] - place))
        way = np.minimum(way, to[a] + to[b])
    return way


def _around(course: Course, contour: Contour, node: int) -> np.ndarray:
    """(k, 3) nodes next to one on its path."""
    path = contour.paths[course.path[node]]
    own = np.flatnonzero(course.path == course.path[node])
    place = node - own[0]
    near = np.arange(place - 2, place + 3)
    near = near % len(own) if path.closed else near[(near >= 0) & (near < len(own))]
    return course.points[own[near]]
