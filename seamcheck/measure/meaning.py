"""Where a section across the rib has no meaning: junctions, sharp corners, open ends, holes in the rib top."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from scipy.spatial import cKDTree
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import Path
from seamcheck.measure.additions import Columns
from seamcheck.measure.turning import corner_radius

NO_MEANING = ("junction", "end", "corner", "rib-hole")
"""Reasons for which a section across the rib has no meaning."""

JUNCTION = 1.5  # rib widths round a junction in which a section cuts several ribs
_BLEND = 6.0  # rib widths round a junction in which the rib may be wider for the roundings that lead into it
_WIDER = 0.02  # share of the seam's median width by which the rib is wider in a blend
_SQUARE = 0.02  # share by which a section may be longer than twice the distance to the nearest border
_TRAP, _NEARER = 4.0, 0.1  # rib widths that a trap reaches at most; share by which another stretch is nearer
_AT_THE_END = 0.05  # mm: a station so near to an open end lies in the face that ends the rib, as far as can be told
_SHARP = 0.98  # of half the rib's width: a smaller radius is a corner on its inner side
_HOLD_EVERYWHERE = frozenset((
    "cover_thickness", "cover_thickness_min", "cover_thickness_max", "gap", "gap_min", "gap_max", "corner_radius",
    "beam_clear",
))  # fmt: skip
"""Quantities that need no section across the rib."""


class RibTop(Struct, frozen=True, eq=False):
    """The rib's top seen along the press direction.

    region : polygons, holes filled; holes : polygons; junctions (k, 2) mm; width : mm, typical; median : mm, of the
    width that was measured along the seam
    """

    region: BaseGeometry
    holes: BaseGeometry
    junctions: np.ndarray
    width: float
    median: float


def without_meaning(
    path: Path, s: np.ndarray, points: np.ndarray, u: np.ndarray, edges: tuple[np.ndarray, np.ndarray], top: RibTop
) -> np.ndarray:
    """(n,) why a section has no meaning, one of NO_MEANING; '' where it has.

    Parameters
    ----------
    s : (n,) mm; points, u : (n, 2); edges : (n,) mm each, from P to the inner and the outer edge of the rib's top
    """
    mark = np.full(len(s), "", dtype=object)
    inner, outer = edges
    if not top.holes.is_empty:
        ends = [points - np.nan_to_num(inner)[:, None] * u, points + np.nan_to_num(outer)[:, None] * u]
        mark[shapely.intersects(shapely.linestrings(np.stack(ends, axis=1)), top.holes)] = "rib-hole"
    mark[_in_junctions(path, s, points, inner + outer, top)] = "junction"
    for place, end in enumerate(path.ends):
        if end == "open":
            near = s if place == 0 else path.length - s
            mark[near < max(path.end_room[place], 0.0)] = "end"
    mark[_sharp_corners(path, s, points, inner + outer, top) & (mark == "")] = "corner"
    return mark


def at_open_end(path: Path, s: np.ndarray) -> np.ndarray:
    """(n,) bool: stations (n,) mm in the very face that ends the rib: a section there may show cover or air."""
    near = np.zeros(len(s), dtype=bool)
    for end, far in zip(path.ends, (s, path.length - s), strict=False):
        if end == "open":
            near |= far < _AT_THE_END
    return near


def blank_without_meaning(columns: Columns, mark: np.ndarray, nothing: np.ndarray) -> Columns:
    """Columns, not measured where a section has no meaning.

    Parameters
    ----------
    mark : (n,) str as of without_meaning
    nothing : (n,) bool, where not even what needs no section has a value: see at_open_end
    """
    out = {}
    is_marked = np.asarray(mark != "")
    for key, column in columns.items():
        hit = is_marked
        if key in _HOLD_EVERYWHERE:
            hit = hit & ((np.isnan(column.values) & (column.reasons != "hole")) | nothing)
        out[key] = column.without(hit, mark)
    return out


def runs_into_another(
    points: np.ndarray, across: np.ndarray, end: np.ndarray, width: float, nodes: cKDTree
) -> np.ndarray:
    """(n,) bool: whether a flash trap leads into that of another stretch of the seam, as it does inside of a corner.

    Parameters
    ----------
    points : (n, 2) mm; across : (n, 2) unit, from the mid-line toward the trap; end : (n,) mm to where the trap ends
    width : mm, of the rib; nodes : of all mid-lines

    Notes
    -----
    Beyond the line that halves the corner every place is nearer to another stretch of the mid-line than to P. A trap
    that reaches there is not that of this section alone. Further off than some rib widths there is no trap, but floor.
    """
    far = np.fmin(np.nan_to_num(end), _TRAP * width)
    away, _ = nodes.query(points + far[:, None] * across)
    return np.asarray(away < (1.0 - _NEARER) * far)


def _in_junctions(path: Path, s: np.ndarray, points: np.ndarray, width: np.ndarray, top: RibTop) -> np.ndarray:
    """(n,) bool: near a junction, and from there until the rib has narrowed to its usual width.

    Fillets between ribs that meet widen them: they belong to the junction.
    """
    if not len(top.junctions):
        return np.zeros(len(s), dtype=bool)
    within = shapely.distance(shapely.MultiPoint(top.junctions), shapely.points(points)) < JUNCTION * top.width
    wide = width > (1.0 + _WIDER) * top.median
    for end, far in zip(path.ends, (s, path.length - s), strict=False):
        if not end.startswith("junction:"):
            continue
        order = np.argsort(far, kind="stable")
        goes_on = (within | (wide & (far < _BLEND * top.width)))[order]
        within[order[: len(s) if goes_on.all() else int(np.argmin(goes_on))]] = True
    return np.asarray(within)


def _sharp_corners(path: Path, s: np.ndarray, points: np.ndarray, width: np.ndarray, top: RibTop) -> np.ndarray:
    """(n,) bool: stations at which the section would cut across a corner.

    Where the corner radius is smaller than the rib's width, the section still has a meaning as long as it meets both
    borders squarely, as it does between concentric arcs: then it is twice as long as the nearest border is away.
    """
    line = (path.s, path.points[:, :2], path.length, path.closed)
    with np.errstate(invalid="ignore"):
        sharp = corner_radius(*line, s) < 0.5 * top.width * _SHARP
        turning = np.zeros(len(s), dtype=bool)
        for step in np.linspace(-1.0, 1.0, 5) * top.width:
            at = (s + step) % path.length if path.closed else np.clip(s + step, 0.0, path.length)
            turning |= corner_radius(*line, at) < top.width
    oblique = np.zeros(len(s), dtype=bool)
    places = np.flatnonzero(turning)
    away = shapely.distance(shapely.points(points[places]), top.region.boundary)
    oblique[places] = width[places] > (2.0 + _SQUARE) * away
    return sharp | oblique
