"""On which side of a seam the light can come in: through which part, how thick, and whether the beam path is free."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.facets import cross, spans
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.joint.regions import points_along
from seamcheck.kernel import Body


class LightSide(Struct, frozen=True, eq=False):
    """What lies over the seam on one side.

    thickness : mm, median of the part's plastic over the seam; NaN where nothing covers it
    free : 0..1 of the seam's samples with exactly one stretch of the part and nothing else above
    alone : the same without other parts
    """

    thickness: float
    free: float
    alone: float


def light_side(points: np.ndarray, sign: float, through: Body, others: list[Body], frame: Frame) -> LightSide:
    """Look from points of the seam along sign * z through one part; the thickness is NaN where none lies there.

    Parameters
    ----------
    points : (n, 3) mm, in the frame, on the seam
    sign : +1 or -1, the direction outward along the frame's z
    through : the part that would be the cover; others : every other body of the assembly
    """
    if not len(points):
        return LightSide(float("nan"), 0.0, 0.0)
    stretches, thickness = column(points, sign, through, frame)
    alone = stretches == 1
    free = alone.copy()
    for other in _standing_over(others, points, sign, frame):
        if not free.any():
            break
        free[free] = column(points[free], sign, other, frame)[0] == 0
    some = thickness > 0
    median = float(np.median(thickness[some])) if some.any() else float("nan")
    return LightSide(median, float(free.mean()), float(alone.mean()))


def inner_points(region: BaseGeometry, most: int = 150) -> np.ndarray:
    """(n, 2) mm, points well inside a region, spread along it."""
    width = 2 * region.area / max(region.length, 1e-9)
    inside = region
    for part in (0.4, 0.25, 0.1):
        shrunk = region.buffer(-part * width)
        if not shrunk.is_empty and shrunk.area > 0:
            inside = shrunk
            break
    border = inside.boundary
    count = int(np.clip(border.length / 0.5, 8, most))
    return points_along(border, (np.arange(count) + 0.37) / count * border.length)


def column(points: np.ndarray, sign: float, body: Body, frame: Frame) -> tuple[np.ndarray, np.ndarray]:
    """How often the body lies above each of the points (n, 2), a count (n,), and its summed thickness (n,) mm."""
    count = np.zeros(len(points), dtype=int)
    thickness = np.zeros(len(points))
    height, index, facing = _surfaces(points, body, frame)
    above = sign * (height - points[index, 2])
    for way in (1.0, -1.0):
        mine = facing == sign * way
        place, far = _once(index[mine], above[mine])
        place, far = place[far > -1.5], far[far > -1.5]
        np.add.at(thickness, place, way * far)
        if way > 0:
            np.add.at(count, place, 1)
    return count, thickness


def inside(points: np.ndarray, body: Body, frame: Frame) -> np.ndarray:
    """Whether points (n, 3) in the frame lie within a body: (n,) bool, by the surfaces that stand above them."""
    height, index, facing = _surfaces(points, body, frame)
    above = np.zeros(len(points), dtype=int)
    over = height - points[index, 2]
    for way in (1, -1):
        mine = (facing == way) & (over > 0)
        np.add.at(above, _once(index[mine], over[mine])[0], way)
    return above > 0


def _surfaces(points: np.ndarray, body: Body, frame: Frame) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The body's facets over and under points (n, 2): height (k,) mm, point (k,), and +1 where it looks up, else -1."""
    facets = body.facets(_boxes_over(body.boxes, points, frame), 0.05, 0.35, lambda b: _boxes_over(b, points, frame))
    corners = frame.local(facets.corners)
    height, index, facet = heights_at(points, corners)
    flat = corners[..., :2]
    return height, index, np.sign(cross(flat[:, 1] - flat[:, 0], flat[:, 2] - flat[:, 0]))[facet]


def _once(place: np.ndarray, height: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Each hit once, place (k,) and height (k,) mm: neighbouring triangles share their common edge."""
    hits = np.unique(place + 1j * np.round(height, 4))
    return hits.real.astype(int), hits.imag


def _boxes_over(boxes: np.ndarray, points: np.ndarray, frame: Frame) -> np.ndarray:
    """Which boxes (n, 6), seen along z, hold one of the points; their numbers, ascending."""
    low, high = flat_boxes(boxes, frame)
    sound = np.flatnonzero(np.isfinite(low).all(axis=1))
    if not len(sound):
        return sound
    tree = shapely.STRtree(spans(low[sound], high[sound]))
    return np.asarray(sound[np.unique(tree.query(shapely.points(points[:, :2]))[1])])


def flat_boxes(boxes: np.ndarray, frame: Frame) -> tuple[np.ndarray, np.ndarray]:
    """Boxes (n, 6), mm, in assembly coordinates to the bounds (n, 2), (n, 2) of their projection along z."""
    centre = frame.local((boxes[:, :3] + boxes[:, 3:]) / 2)[:, :2]
    half = ((boxes[:, 3:] - boxes[:, :3]) / 2) @ np.abs(frame.axes[:2]).T
    return centre - half, centre + half


def _standing_over(others: list[Body], points: np.ndarray, sign: float, frame: Frame) -> list[Body]:
    """The bodies whose boxes reach over the points on the light's side."""
    if not others:
        return []
    boxes = np.array([other.box for other in others])
    low, high = flat_boxes(boxes, frame)
    top = sign * frame.local((boxes[:, :3] + boxes[:, 3:]) / 2)[:, 2]
    top = top + ((boxes[:, 3:] - boxes[:, :3]) / 2) @ np.abs(frame.axes[2])
    first, last = points[:, :2].min(axis=0), points[:, :2].max(axis=0)
    with np.errstate(invalid="ignore"):
        near = np.all((low <= last) & (high >= first), axis=1) & (top > (sign * points[:, 2]).min())
    over = []
    for i in np.flatnonzero(near):
        inside = np.all((points[:, :2] >= low[i]) & (points[:, :2] <= high[i]), axis=1)
        if (inside & (sign * points[:, 2] < top[i])).any():
            over.append(others[i])
    return over
