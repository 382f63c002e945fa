"""How large a body is seen along a direction, and how two lie to each other, whichever way the model is placed."""

from __future__ import annotations

from collections.abc import Callable
from weakref import WeakKeyDictionary

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.facets import cross
from seamcheck.joint.frame import Frame
from seamcheck.joint.light import flat_boxes
from seamcheck.joint.regions import seen_facets
from seamcheck.kernel import Body

_CHORD, _TURN, _SLIVER = 0.05, 0.35, 1e-3  # mm, radians, mm: facets of an outline, and what they leave open
_LARGEST = 40  # faces that hide most others
_SAME_PLACE, _ON_BORDER = 9, 1e-7  # decimals of places that are one, and mm within which a line lies on a border
_UPRIGHT = 1e-9  # mm²: twice what a facet covers that stands upright
_SAME_AXIS = 9  # decimals of directions that are one

_known: WeakKeyDictionary[Body, dict[tuple[str | float, ...], tuple[float, float]]] = WeakKeyDictionary()


class Outline(Struct, frozen=True, eq=False):
    """A body seen along z of a frame.

    around : smallest rectangle round it, in the frame; area : of that, mm²; short, long : its sides, mm
    low, high : lowest and highest z, mm
    """

    around: BaseGeometry
    area: float
    short: float
    long: float
    low: float
    high: float

    @property
    def deep(self) -> float:
        """mm, along z."""
        return self.high - self.low


def outline(body: Body, frame: Frame) -> Outline:
    """A body's outline; without a size where the body is empty."""
    if not len(body.outermost):
        return Outline(shapely.Polygon(), 0.0, 0.0, 0.0, 0.0, 0.0)
    corners = frame.local(body.outermost)
    around = shapely.oriented_envelope(shapely.multipoints(corners[:, :2]))
    sides = np.linalg.norm(np.diff(shapely.get_coordinates(around)[:3], axis=0), axis=1)
    short, long = (float(sides.min()), float(sides.max())) if len(sides) > 1 else (0.0, around.length)
    return Outline(around, short * long, short, long, float(corners[:, 2].min()), float(corners[:, 2].max()))


def shadow_area(body: Body, frame: Frame) -> float:
    """mm² within a body's outline seen along the frame's z, holes filled: of every direction looked at once."""
    return _size(body, frame, shadow)[0]


def footprint_size(body: Body, frame: Frame) -> tuple[float, float]:
    """mm² and mm, area and border of what a body covers seen along the frame's z, holes left open; looked at once."""
    return _size(body, frame, footprint)


def _size(body: Body, frame: Frame, seen: Callable[[Body, Frame], BaseGeometry]) -> tuple[float, float]:
    known = _known.setdefault(body, {})
    axis = np.round(frame.axes[2], _SAME_AXIS)
    axis *= np.sign(axis[np.flatnonzero(axis)[0]])  # from both ends it is one
    key = (seen.__name__, *axis.tolist())
    if key not in known:
        region = seen(body, frame)
        known[key] = float(region.area), float(region.length)
    return known[key]


def shadow(body: Body, frame: Frame) -> BaseGeometry:
    """What lies within a body's outline seen along the frame's z, holes filled, in the frame (mm).

    Faces that lie wholly behind or before the largest ones add nothing to it: of thousands, few are looked at.
    """
    every = np.arange(len(body.faces))
    if len(every) <= 2 * _LARGEST:
        return _filled(body, every, frame)
    low, high = flat_boxes(body.boxes, frame)
    first = np.argsort(-np.nan_to_num((high - low).prod(axis=1)), kind="stable")[:_LARGEST]
    seen = _filled(body, first, frame)
    shapely.prepare(seen)
    beside = ~shapely.covers(seen, shapely.box(*low.T, *high.T))
    beside[first] = False
    return _joined([seen, _filled(body, np.flatnonzero(beside), frame)]) if beside.any() else seen


def footprint(body: Body, frame: Frame) -> BaseGeometry:
    """What a body covers seen along the frame's z, holes left open, in the frame (mm)."""
    facets = body.facets(np.arange(len(body.faces)), _CHORD, _TURN)
    return seen_facets(frame.local(facets.corners)[..., :2]).buffer(_SLIVER)


def _filled(body: Body, faces: np.ndarray, frame: Frame) -> BaseGeometry:
    """Faces seen along z, joined, holes filled."""
    facets = body.facets(faces, _CHORD, _TURN, near=lambda boxes: np.empty(0, dtype=int))  # holes need no triangles
    return _joined([within_outline(frame.local(facets.corners)[..., :2]).buffer(_SLIVER)])


def within_outline(corners: np.ndarray) -> BaseGeometry:
    """Facets (n, 3, 2) mm seen along an axis, joined, holes filled; those that stand upright vanish.

    Only the borders of what looks up and of what looks down can be outline: few of all edges. Most of these lie within
    the largest rings that they make; only what is left is cut with each other.
    """
    corners = np.round(corners, _SAME_PLACE) + 0.0
    area = cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    seen: BaseGeometry = shapely.Polygon()
    borders = [shapely.linestrings(_border(corners[way * area > _UPRIGHT])) for way in (1.0, -1.0)]
    for lines in borders:
        if not len(_outside(lines, seen)):
            continue
        rings = shapely.polygons(shapely.get_exterior_ring(shapely.get_parts(shapely.polygonize(lines))))
        rings = rings[shapely.is_valid(rings)]
        if len(rings):
            largest = rings[np.argmax(shapely.area(rings))]
            shapely.prepare(largest)
            seen = _joined([seen, largest, *rings[~shapely.covers(largest, rings)]])
    left = _outside(np.concatenate(borders), seen)
    if len(left):
        cells = shapely.get_parts(shapely.polygonize([shapely.union_all([seen.boundary, *left])]))
        seen = _joined([seen, *cells])
    return seen


def _border(corners: np.ndarray) -> np.ndarray:
    """(k, 2, 2) mm, the edges of facets (n, 3, 2) that turn the same way round, but for those between two of them."""
    places, at = np.unique(np.ascontiguousarray(corners).view(complex), return_inverse=True)
    start = at.reshape(-1, 3)
    end = np.roll(start, -1, axis=1)
    pair = np.minimum(start, end) * len(places) + np.maximum(start, end)
    pairs, which = np.unique(pair, return_inverse=True)
    once = pairs[np.bincount(which.ravel(), weights=np.where(start < end, 1.0, -1.0).ravel()) != 0.0]
    ends = places[np.stack(np.divmod(once, max(len(places), 1)), axis=1)]
    return np.asarray(ends.view(float).reshape(-1, 2, 2))


def _outside(lines: np.ndarray, region: BaseGeometry) -> np.ndarray:
    """Of lines those that do not lie in a region or on its border."""
    within = region.buffer(_ON_BORDER, join_style="mitre")
    shapely.prepare(within)
    return np.asarray(lines[~shapely.covers(within, lines)])


def _joined(regions: list[BaseGeometry]) -> BaseGeometry:
    """Regions in one, holes filled."""
    parts = shapely.get_parts(shapely.union_all(regions))
    return shapely.union_all([shapely.Polygon(part.exterior) for part in parts])


def lie_close(one: Body, other: Body, reach: float) -> bool:
    """Whether two bodies' hulls come within reach (mm) of each other along the axes of both their own boxes."""
    if not len(one.corners) or not len(other.corners):
        return False
    axes = np.vstack([one.own_box.axes, other.own_box.axes]).T
    a, b = one.corners @ axes, other.corners @ axes
    return bool((a.min(axis=0) <= b.max(axis=0) + reach).all() and (b.min(axis=0) <= a.max(axis=0) + reach).all())


def lies_within(inner: Body, outer: Body, play: float) -> bool:
    """Whether a body lies in the own box of another one, or sticks out of it by no more than some play (mm)."""
    box = outer.own_box
    along = inner.outermost @ box.axes.T
    return bool(len(along) and (along >= box.low - play).all() and (along <= box.high + play).all())


def lies_mostly_within(one: Body, other: Body) -> bool:
    """Whether more than half of the smaller one of two bodies lies in the own box of the larger one, by their boxes."""
    inner, outer = sorted((one, other), key=lambda body: float(np.prod(body.own_box.sides)))
    along = inner.corners @ outer.own_box.axes.T
    low, high = along.min(axis=0), along.max(axis=0)
    shared = np.minimum(high, outer.own_box.high) - np.maximum(low, outer.own_box.low)
    return bool(np.prod(np.maximum(shared, 0.0)) > 0.5 * np.prod(high - low))
