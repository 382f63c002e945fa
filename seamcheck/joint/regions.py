"""Faces seen along the press direction, as polygons."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol

import numpy as np
import shapely
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.frame import Frame

OUTLINE_TOLERANCE = 0.0005  # mm, chord error of discretised edges
_GRID = 1e-6  # mm, on which corners are put where slivers hinder a union


class HasOutlines(Protocol):
    """What this module needs of a body."""

    def outline(self, face_index: int, tolerance: float) -> list[np.ndarray]:
        """Rings (n, 3) mm of a face's outline."""


def face_region(body: HasOutlines, face: int, frame: Frame, tolerance: float = OUTLINE_TOLERANCE) -> BaseGeometry:
    """One face projected along the frame's z.

    Returns
    -------
    Polygon or MultiPolygon in the frame's x, y (mm); empty where the outline does not close
    """
    lines = [np.round(frame.local(line)[:, :2], 7) for line in body.outline(face, tolerance)]
    lines = [line[np.r_[True, np.any(np.diff(line, axis=0) != 0, axis=1)]] for line in lines]
    lines = [line for line in lines if len(line) > 1]
    if not lines:
        return Polygon()
    merged = shapely.line_merge(shapely.MultiLineString(lines))
    rings = [Polygon(part) for part in getattr(merged, "geoms", [merged]) if part.is_closed and len(part.coords) > 3]
    if not rings:
        return Polygon()
    rings = [ring if ring.is_valid else ring.buffer(0) for ring in rings]
    rings.sort(key=lambda ring: ring.area, reverse=True)
    return rings[0].difference(shapely.unary_union(rings[1:])) if len(rings) > 1 else rings[0]


def union_region(
    body: HasOutlines, faces: Iterable[int], frame: Frame, tolerance: float = OUTLINE_TOLERANCE
) -> BaseGeometry:
    """Several faces projected along the frame's z and joined; slits below 2 micrometres are closed."""
    regions = [face_region(body, face, frame, tolerance) for face in faces]
    regions = [region for region in regions if not region.is_empty]
    if len(regions) == 1:
        return regions[0]
    joined = shapely.unary_union(regions)
    if joined.is_empty:
        return joined
    return joined.buffer(0.001, join_style="mitre").buffer(-0.001, join_style="mitre")


def seen_facets(corners: np.ndarray) -> BaseGeometry:
    """Facets (n, 3, 2) mm seen along an axis, joined; those that stand upright vanish."""
    triangles = shapely.polygons(corners)
    triangles = triangles[shapely.area(triangles) > 0]
    try:
        return shapely.union_all(triangles)
    except shapely.GEOSException:  # slivers of facets that stand nearly upright
        return shapely.union_all(triangles, grid_size=_GRID)
