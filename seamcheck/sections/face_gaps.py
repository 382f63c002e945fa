"""Facets of two groups of bodies that face each other along the beam, and the gaps between them.

Everything is seen along the beam; heights count against it. Between two plane facets the gap is linear
over the polygon in which their outlines overlap, so its smallest value is attained at a corner of that
polygon: a vertex of one facet over the other, or a crossing of two edges. No raster can miss a bump.
"""

from __future__ import annotations

from functools import partial

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.facets import area_vectors, bounds_of, cross, lengths, spans
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import plane_heights
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet

DEEPEST = 1.5  # mm that parts may overlap as drawn; what lies deeper belongs to another level
_DEFLECTION, _ANGLE = 0.002, 0.2  # mm, radians
_FLATTEST = 1e-3  # facets steeper than this (component of the normal) have no usable height
_SLIVER = 1e-9  # mm²
_EVEN = 1e-3  # mm: room for rounding; deeper overlaps are measured exactly
_WIDE = 0.02  # mm of an overlap that is no sliver
_FEW, _FIRST = 64, 2000  # pairs asked for first: of every two faces; of all where only the nearest of all is wanted
_DECIMALS, _ROUNDING = 6, 1e-7  # of a mm to which gaps are equal; mm
_NEIGHBOURS = 8  # facets of a face that follow each other are mostly near each other
_ROUNDED_UP = 1.0 + 1e-9  # of an area that bounds others
_MOST_FACES = 10_000_000


class FaceList(Struct, frozen=True, eq=False):
    """Faces of several bodies: part (n,) index into ``ids``, face (n,), box (n, 6) in the view."""

    ids: tuple[str, ...]
    bodies: tuple[Body, ...]
    part: np.ndarray
    face: np.ndarray
    box: np.ndarray

    @staticmethod
    def of(bodies: dict[str, Body], view: Frame, sense: float | None, zone: np.ndarray) -> FaceList:
        """Faces that can look along ``sense`` times up (None: anywhere), with boxes in a zone (6,) of the view, mm."""
        parts, faces, boxes = [], [], []
        for i, body in enumerate(bodies.values()):
            if not np.isfinite(body.box).all() or not boxes_meet(view.boxes(body.box[None]), zone)[0]:
                continue
            box = view.boxes(body.boxes)
            with np.errstate(invalid="ignore"):
                keep = np.isfinite(box).all(axis=1) & boxes_meet(box, zone)
                if sense is not None:
                    tilt = sense * (body.planes[:, :3] @ view.up)
                    keep &= ~(tilt < _FLATTEST)  # NaN: not a plane, so it may look anywhere
            found = np.flatnonzero(keep)
            parts.append(np.full(len(found), i))
            faces.append(found)
            boxes.append(box[found])
        if not parts:
            return FaceList(tuple(bodies), tuple(bodies.values()), *_nothing())
        return FaceList(
            tuple(bodies), tuple(bodies.values()), np.concatenate(parts), np.concatenate(faces), np.concatenate(boxes)
        )

    def take(self, index: np.ndarray) -> FaceList:
        """The faces of an index or mask (k,)."""
        return FaceList(self.ids, self.bodies, self.part[index], self.face[index], self.box[index])

    def facets(self, view: Frame, sense: float | None, where: BaseGeometry | None = None) -> Sheet:
        """Facets that look along ``sense`` times up, or all of them.

        Parameters
        ----------
        where : polygons in the view; what lies beside them may be missing, or be filled where it is a hole
        """
        corners, parts, faces = [np.empty((0, 3, 3))], [np.empty(0, int)], [np.empty(0, int)]
        near = None if where is None else partial(_within, view=view, where=where)
        asked = np.arange(len(self.face)) if where is None else _meeting(self.box, where)
        for i, body in enumerate(self.bodies):
            mine = asked[self.part[asked] == i]
            if len(mine):
                found = body.facets(self.face[mine], _DEFLECTION, _ANGLE, near)
                corners.append(view.local(found.corners))
                parts.append(np.full(len(found.face), i))
                faces.append(found.face)
        all_corners = np.concatenate(corners)
        normal = area_vectors(all_corners)
        length = lengths(normal)
        with np.errstate(invalid="ignore", divide="ignore"):
            keep = length > 1e-12
            if sense is not None:
                keep &= sense * normal[:, 2] > _FLATTEST * length
        return Sheet(
            all_corners[keep],
            normal[keep] / length[keep, None],
            np.concatenate(parts)[keep],
            np.concatenate(faces)[keep],
        )


class Sheet(Struct, frozen=True, eq=False):
    """Facets in the view: corners (m, 3, 3), normal (m, 3), part (m,) index, face (m,)."""

    corners: np.ndarray
    normal: np.ndarray
    part: np.ndarray
    face: np.ndarray

    def height(self, facet: np.ndarray, xy: np.ndarray) -> np.ndarray:
        """(k,) mm, height of the planes of facets (k,) over places (k, 2)."""
        return plane_heights(self.corners[facet], xy)

    def triangles(self, shift: np.ndarray) -> np.ndarray:
        """(m,) outlines of all facets, moved sideways by (2,) mm."""
        flat = self.corners[:, :, :2] + shift
        return np.asarray(shapely.polygons(np.concatenate([flat, flat[:, :1]], axis=1)))

    def where(self, mask: np.ndarray) -> Sheet:
        """The facets of a mask (m,) or of numbers (k,)."""
        return Sheet(self.corners[mask], self.normal[mask], self.part[mask], self.face[mask])

    def boxes(self) -> tuple[np.ndarray, np.ndarray]:
        """Least and largest coordinates of the facets, (n, 3) mm each."""
        return bounds_of(self.corners)


class Gaps(Struct, frozen=True, eq=False):
    """Places where two facets come nearest: one entry per pair of facets.

    upper, lower (k,) facets; gap (k,) mm, the smallest over the overlap; at (k, 2) where; area (k,) mm² and
    inner (k, 2) a place inside the overlap; slim (k,) mm, width of the overlap
    """

    upper: np.ndarray
    lower: np.ndarray
    gap: np.ndarray
    at: np.ndarray
    area: np.ndarray
    inner: np.ndarray
    slim: np.ndarray


def face_pairs(upper: FaceList, lower: FaceList, most: float, play: float) -> tuple[np.ndarray, np.ndarray]:
    """Pairs of faces, indices (k,) into both lists, that can come nearer than ``most`` mm."""
    if not len(upper.face) or not len(lower.face):
        return np.empty(0, int), np.empty(0, int)
    a, b = upper.box, lower.box
    tree = shapely.STRtree(spans(b[:, :2], b[:, 3:5]))
    one, other = tree.query(spans(a[:, :2] - play, a[:, 3:5] + play))
    near = (a[one, 2] - b[other, 5] <= most) & (a[one, 5] - b[other, 2] >= -DEEPEST)
    return np.unique(one[near]), np.unique(other[near])


def gaps(
    upper: Sheet, lower: Sheet, most: float, shift: np.ndarray, zone: BaseGeometry,
    marked_upper: np.ndarray, marked_lower: np.ndarray, enough: float | None = None,
) -> Gaps:  # fmt: skip
    """Smallest gap of every pair of facets that overlap when the upper ones are shifted sideways.

    Parameters
    ----------
    most : mm, larger gaps are left out
    shift : (2,) mm
    zone : polygons in the view in which marked facets are left out
    marked_upper, marked_lower : (m,) bool
    enough : mm up to which the smallest gap of every two faces is asked for, and of equal ones that where most
        overlaps; where there is none so small, only the smallest of all. Others may be missing. None: all are asked for

    Notes
    -----
    Over the box in which those of two facets overlap their planes are nowhere nearer than at its nearest corner, which
    is no further away than the facets themselves come: pairs whose boxes' corners lie beyond ``most`` are left out
    before any outline is compared.
    """
    shapely.prepare(zone)
    left_a = np.flatnonzero(~_gone(upper, marked_upper, shift, zone))
    left_b = np.flatnonzero(~_gone(lower, marked_lower, np.zeros(2), zone))
    if not len(left_a) or not len(left_b):
        return _no_gaps()
    low_a, high_a = upper.where(left_a).boxes()
    low_b, high_b = lower.where(left_b).boxes()
    tree = shapely.STRtree(spans(low_b, high_b))
    one, other = tree.query(spans(low_a[:, :2] + shift, high_a[:, :2] + shift))
    near = (low_a[one, 2] - high_b[other, 2] <= most) & (high_a[one, 2] - low_b[other, 2] >= -DEEPEST)
    one, other = left_a[one[near]], left_b[other[near]]
    bound, room = _bound(upper, lower, one, other, shift)
    order = np.argsort(bound, kind="stable")
    order = order[bound[order] <= most]
    one, other, bound, room = one[order], other[order], bound[order], room[order]
    known = _Known(upper, lower, one, other)
    found, left, few, many = [_no_gaps()], np.lexsort((-room, np.round(bound, _DECIMALS))), _FEW, _FIRST
    while len(left):
        soon = left if enough is None else left[bound[left] <= enough]
        now = soon if enough is None else soon[known.first(soon, few)] if len(soon) else left[:many]
        some = _gaps_of(upper, lower, one[now], other[now], most, shift, zone, marked_upper, marked_lower)
        found.append(some)
        known.add(some)
        left = np.setdiff1d(left, now, assume_unique=True)
        if enough is not None:
            most = min(most, max(enough, known.least))
            left = left[(bound[left] <= most) & known.may_change(left, bound[left], room[left])]
        few, many = (4 * few, many) if len(soon) else (few, 2 * many)
    every = Gaps(*(np.concatenate([getattr(some, name) for some in found]) for name in Gaps.__struct_fields__))
    pair = one * len(lower.face) + other
    asked = np.argsort(pair)
    met = every.upper * len(lower.face) + every.lower
    order = np.argsort(asked[np.searchsorted(pair[asked], met)])  # least bound first
    return Gaps(*(getattr(every, name)[order] for name in Gaps.__struct_fields__))


class _Known:
    """The nearest place of every two faces, as far as it is known.

    Parameters
    ----------
    one, other : (k,) facets of both sheets, pairs that may be asked for
    """

    def __init__(self, upper: Sheet, lower: Sheet, one: np.ndarray, other: np.ndarray) -> None:
        sheets = (np.unique(s.part * _MOST_FACES + s.face, return_inverse=True) for s in (upper, lower))
        (_, self._upper), (below, self._lower) = sheets
        self._count = len(below)
        self._different, self._of = np.unique(self._number(one, other), return_inverse=True)
        self.gap, self.area = np.full(len(self._different), np.inf), np.zeros(len(self._different))

    def _number(self, one: np.ndarray, other: np.ndarray) -> np.ndarray:
        """(k,) which two faces pairs of facets belong to."""
        return np.asarray(self._upper[one] * self._count + self._lower[other])

    @property
    def least(self) -> float:
        """mm, the smallest of all."""
        return float(self.gap.min(initial=np.inf))

    def first(self, which: np.ndarray, few: int) -> np.ndarray:
        """(k,) bool: of some pairs the first few of every two faces."""
        order = np.argsort(self._of[which], kind="stable")
        of = self._of[which][order]
        found = np.zeros(len(which), dtype=bool)
        found[order] = np.arange(len(of)) - np.searchsorted(of, of) < few
        return found

    def add(self, found: Gaps) -> None:
        """Gaps of some pairs; those of slivers and of overlaps as drawn may not be real."""
        sure = np.flatnonzero((found.slim > _WIDE) & (found.gap > -_EVEN))
        place = np.searchsorted(self._different, self._number(found.upper[sure], found.lower[sure]))
        gap, area = found.gap[sure], found.area[sure]
        order = np.lexsort((-area, np.round(gap, _DECIMALS), place))
        order = order[np.append(True, np.diff(place[order]) > 0)[: len(order)]]
        place, gap, area = place[order], gap[order], area[order]
        change = np.round(gap - self.gap[place], _DECIMALS)
        better = (change < 0.0) | ((change == 0.0) & (area > self.area[place]))
        self.gap[place[better]], self.area[place[better]] = gap[better], area[better]

    def may_change(self, which: np.ndarray, bound: np.ndarray, room: np.ndarray) -> np.ndarray:
        """(k,) bool: pairs that can be nearer than what is known of their faces, or as near where more overlaps.

        Parameters
        ----------
        bound, room : (k,) mm that they keep at least, less _EVEN, and mm² that they overlap at most
        """
        gap, nearest = self.gap[self._of[which]], bound + _EVEN
        as_near = (nearest < gap + 10.0**-_DECIMALS) & (room >= self.area[self._of[which]])
        return np.asarray((nearest < gap - _ROUNDING) | as_near)


def _gone(sheet: Sheet, marked: np.ndarray, shift: np.ndarray, zone: BaseGeometry) -> np.ndarray:
    """(m,) bool: marked facets that lie wholly in the zone; neighbours whose common box does are not asked singly."""
    gone = np.zeros(len(marked), dtype=bool)
    which = np.flatnonzero(marked)
    if not len(which):
        return gone
    flat = sheet.corners[which, :, :2] + shift
    begins = np.arange(0, len(which), _NEIGHBOURS)
    low, high = np.minimum.reduceat(flat.min(axis=1), begins), np.maximum.reduceat(flat.max(axis=1), begins)
    within = np.repeat(shapely.covers(zone, shapely.box(*low.T, *high.T)), _NEIGHBOURS)[: len(which)]
    gone[which[within]] = True
    rest = which[~within]
    gone[rest] = shapely.covers(zone, sheet.where(rest).triangles(shift))
    return gone


def _bound(
    upper: Sheet, lower: Sheet, one: np.ndarray, other: np.ndarray, shift: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """(k,) mm that the planes of two facets keep at least, over the box in which those of the facets overlap, less
    _EVEN; (k,) mm² that the facets overlap at most: no more than that box, and than either facet."""
    a, b = upper.corners[:, :, :2] + shift, lower.corners[:, :, :2]
    room = np.minimum(_areas(a)[one], _areas(b)[other]) * _ROUNDED_UP
    slope = [-sheet.normal[:, :2] / sheet.normal[:, 2:] for sheet in (upper, lower)]
    begin = [
        sheet.corners[:, 0, 2] - (s * t[:, 0]).sum(axis=1)
        for sheet, s, t in zip((upper, lower), slope, (a, b), strict=True)
    ]
    gap, box = begin[0][one] - begin[1][other] - _EVEN, np.ones(len(one))
    for axis in (0, 1):
        low = np.maximum(a[:, :, axis].min(axis=1)[one], b[:, :, axis].min(axis=1)[other])
        high = np.minimum(a[:, :, axis].max(axis=1)[one], b[:, :, axis].max(axis=1)[other])
        turn, run = slope[0][one, axis] - slope[1][other, axis], high - low
        gap += turn * (low + run / 2) - np.abs(turn) * run / 2
        box *= np.maximum(run, 0.0)
    return gap, np.minimum(room, box)


def _areas(flat: np.ndarray) -> np.ndarray:
    """(k,) mm² of triangles (k, 3, 2)."""
    return np.asarray(np.abs(cross(flat[:, 1] - flat[:, 0], flat[:, 2] - flat[:, 0])) / 2)


def _gaps_of(
    upper: Sheet, lower: Sheet, one: np.ndarray, other: np.ndarray, most: float, shift: np.ndarray,
    zone: BaseGeometry, marked_upper: np.ndarray, marked_lower: np.ndarray,
) -> Gaps:  # fmt: skip
    """The gaps of given pairs of facets."""
    over = ~_apart(upper.corners[one, :, :2] + shift, lower.corners[other, :, :2])
    one, other = one[over], other[over]
    above, under = _outlines(upper, one, shift), _outlines(lower, other, np.zeros(2))
    common = shapely.intersection(above, under)
    real = shapely.area(common) > _SLIVER
    one, other, common = one[real], other[real], common[real]
    common = _without(zone, common, marked_upper[one] | marked_lower[other])
    area = shapely.area(common)
    real = area > _SLIVER
    one, other, common, area = one[real], other[real], common[real], area[real]
    if not len(one):
        return _no_gaps()
    corner, owner = shapely.get_coordinates(common, return_index=True)
    gap = upper.height(one[owner], corner - shift) - lower.height(other[owner], corner)
    order = np.lexsort((gap, owner))
    first = order[np.searchsorted(owner[order], np.arange(len(one)))]
    least, at = gap[first], corner[first]
    inner = shapely.get_coordinates(shapely.point_on_surface(common))
    flat = np.zeros(len(one))
    np.maximum.at(flat, owner, gap)
    level = flat - least < 1e-6
    at = np.where(level[:, None], inner, at)
    slim = 2.0 * area / shapely.length(common)
    hit = (least <= most) & (least >= -DEEPEST)
    return Gaps(one[hit], other[hit], least[hit], at[hit], area[hit], inner[hit], slim[hit])


def _outlines(sheet: Sheet, which: np.ndarray, shift: np.ndarray) -> np.ndarray:
    """(k,) outlines of facets (k,), each facet's made once."""
    facets, place = np.unique(which, return_inverse=True)
    flat = sheet.corners[facets, :, :2] + shift
    return np.asarray(shapely.polygons(np.concatenate([flat, flat[:, :1]], axis=1))[place])


def _apart(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """(k,) bool: triangles (k, 3, 2) that a line along a side of one of them separates.

    Two convex outlines are disjoint exactly where such a line exists (separating axis theorem).
    """
    apart = np.zeros(len(a), dtype=bool)
    left = np.arange(len(a))
    for one, two in ((a, b), (b, a)):
        for k in range(3):
            mine, other = one[left], two[left]
            x, y = mine[:, k, 0], mine[:, k, 1]
            along_x, along_y = mine[:, (k + 1) % 3, 0] - x, mine[:, (k + 1) % 3, 1] - y
            own = along_x * (mine[:, k - 1, 1] - y) - along_y * (mine[:, k - 1, 0] - x)  # both its ends lie at 0
            off = along_x[:, None] * (other[:, :, 1] - y[:, None]) - along_y[:, None] * (other[:, :, 0] - x[:, None])
            beyond = (off.min(axis=1) > np.maximum(own, 0.0)) | (off.max(axis=1) < np.minimum(own, 0.0))
            apart[left[beyond]] = True
            left = left[~beyond]
    return apart


def _without(zone: BaseGeometry, common: np.ndarray, marked: np.ndarray) -> np.ndarray:
    """The overlaps (k,), marked ones without what lies in the zone."""
    partly = np.flatnonzero(marked & shapely.intersects(zone, common))
    common = common.copy()
    for i in partly:
        x0, y0, x1, y1 = shapely.bounds(common[i])
        local = shapely.clip_by_rect(zone, x0 - 1e-3, y0 - 1e-3, x1 + 1e-3, y1 + 1e-3)
        common[i] = shapely.difference(common[i], local)
    return common


def _within(boxes: np.ndarray, view: Frame, where: BaseGeometry) -> np.ndarray:
    """Numbers of those boxes (n, 6), of the assembly's axes, that meet polygons of the view."""
    return _meeting(view.boxes(boxes), where)


def _meeting(boxes: np.ndarray, where: BaseGeometry) -> np.ndarray:
    shapely.prepare(where)
    return np.flatnonzero(shapely.intersects(where, shapely.box(*boxes.T[[0, 1, 3, 4]])))


def _nothing() -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    return np.empty(0, int), np.empty(0, int), np.empty((0, 6))


def _no_gaps() -> Gaps:
    i, f, p = np.empty(0, int), np.empty(0), np.empty((0, 2))
    return Gaps(i, i, f, p, f, p, f)
