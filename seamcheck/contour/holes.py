"""Holes that open in the rib's top: they belong to the rib, and the mid-line runs over them."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

_WIDEST, _LONGEST = 1.0, 5.0  # rib widths: a wider or longer opening is a chamber with the rib round it
_LEAST = 1e-6  # mm²


def without_holes(region: BaseGeometry) -> tuple[shapely.MultiPolygon, tuple[shapely.Polygon, ...]]:
    """The rib's top with its holes filled, and the holes.

    Parameters
    ----------
    region : the rib's top seen along the press direction, mm

    Notes
    -----
    An opening is a hole in the rib where the largest circle that fits into it is no wider than the rib, and it is no
    longer than a few rib widths; else it is a chamber with the rib round it. Twice the area over the length of the
    border is the rib's width.
    """
    polygons = [p for p in shapely.get_parts(region) if p.area > _LEAST]
    if not polygons:
        return shapely.MultiPolygon(), ()
    openings = [[shapely.Polygon(ring) for ring in p.interiors] for p in polygons]
    width = 2 * sum(p.area for p in polygons) / sum(p.length for p in polygons)
    filled, holes = [], []
    for polygon, rooms in zip(polygons, openings, strict=True):
        small = [room for room in rooms if _is_hole(room, width)]
        holes += small
        kept = [room.exterior for room in rooms if not any(room is hole for hole in small)]
        filled.append(shapely.Polygon(polygon.exterior, kept))
    return shapely.MultiPolygon(filled), tuple(holes)


def hole_width(hole: shapely.Polygon) -> float:
    """mm: diameter of the largest circle that fits into a hole."""
    return 2.0 * float(shapely.length(shapely.maximum_inscribed_circle(hole)))


def _is_hole(room: shapely.Polygon, width: float) -> bool:
    x0, y0, x1, y1 = room.bounds
    if np.hypot(x1 - x0, y1 - y0) > _LONGEST * width or room.area < _LEAST:
        return bool(room.area < _LEAST)
    return hole_width(room) <= _WIDEST * width
