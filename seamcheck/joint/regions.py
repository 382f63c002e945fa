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
ROOM = 0.05  # of the hull of a band, that it has to run round; less are screws' holes
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
    return face_regions(body, [face], frame, tolerance)[0]


def face_regions(
    body: HasOutlines, faces: Iterable[int], frame: Frame, tolerance: float = OUTLINE_TOLERANCE
) -> list[BaseGeometry]:
    """``face_region`` of each of some faces."""
    outlines = [body.outline(face, tolerance) for face in faces]
    regions: list[BaseGeometry] = [Polygon() for _ in outlines]
    lines = [line for outline in outlines for line in outline]
    if not lines:
        return regions
    flat = np.round(frame.local(np.concatenate(lines))[:, :2], 7)
    line = np.repeat(np.arange(len(lines)), [len(nodes) for nodes in lines])
    kept = np.append(True, (np.diff(flat, axis=0) != 0).any(axis=1) | (np.diff(line) != 0))
    kept &= (np.bincount(line[kept]) > 1)[line]  # what stands along the axis is a point
    if not kept.any():
        return regions
    owner = np.repeat(np.arange(len(outlines)), [len(outline) for outline in outlines])
    left, number = np.unique(line[kept], return_inverse=True)
    some, group = np.unique(owner[left], return_inverse=True)
    drawn = shapely.linestrings(flat[kept], indices=number)
    merged = shapely.line_merge(shapely.multilinestrings(drawn, indices=group))
    parts, group = shapely.get_parts(merged, return_index=True)
    closed = shapely.is_closed(parts) & (shapely.get_num_points(parts) > 3)
    at, ring = shapely.get_coordinates(parts[closed], return_index=True)
    rings = shapely.polygons(shapely.linearrings(at, indices=ring))
    crossing = ~shapely.is_valid(rings)
    rings[crossing] = shapely.buffer(rings[crossing], 0)
    area, face = shapely.area(rings), some[group[closed]]
    order = np.lexsort((-area, face))
    first = np.flatnonzero(np.append(True, np.diff(face[order]) > 0)[: len(order)])
    for mine in np.split(order, first[1:]):
        if len(mine):
            outer, holes = rings[mine[0]], rings[mine[1:]]
            regions[face[mine[0]]] = shapely.difference(outer, shapely.union_all(holes)) if len(holes) else outer
    return regions


def union_region(
    body: HasOutlines, faces: Iterable[int], frame: Frame, tolerance: float = OUTLINE_TOLERANCE
) -> BaseGeometry:
    """Several faces projected along the frame's z and joined; slits below 2 micrometres are closed."""
    regions = [region for region in face_regions(body, faces, frame, tolerance) if not region.is_empty]
    if len(regions) == 1:
        return regions[0]
    joined = shapely.unary_union(regions)
    if joined.is_empty:
        return joined
    return joined.buffer(0.001, join_style="mitre").buffer(-0.001, join_style="mitre")


def points_along(lines: BaseGeometry, at: np.ndarray) -> np.ndarray:
    """Points (n, 2) mm of lines that are walked one after the other, after distances (n,) mm from their beginning."""
    corners, line = shapely.get_coordinates(shapely.get_parts(lines), return_index=True)
    step = np.where(np.diff(line) == 0, np.hypot(*np.diff(corners, axis=0).T), 0.0)
    walked = np.append(0.0, np.cumsum(step))
    return np.column_stack([np.interp(at, walked, along) for along in corners.T])


def seen_facets(corners: np.ndarray) -> BaseGeometry:
    """Facets (n, 3, 2) mm seen along an axis, joined; those that stand upright vanish."""
    triangles = shapely.polygons(corners)
    triangles = triangles[shapely.area(triangles) > 0]
    try:
        return shapely.union_all(triangles)
    except shapely.GEOSException:  # slivers of facets that stand nearly upright
        return shapely.union_all(triangles, grid_size=_GRID)


def rooms(region: BaseGeometry) -> list[Polygon]:
    """What a closed band runs round; none where the band only has holes."""
    holes = [Polygon(ring) for part in shapely.get_parts(region) for ring in getattr(part, "interiors", ())]
    return holes if sum(hole.area for hole in holes) > ROOM * region.convex_hull.area else []
