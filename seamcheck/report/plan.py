"""The seam seen along the beam: the plane normal to the beam, and lines beside the mid-line."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.document.view import Mesh, SectionSet, different_rows


class PlanFrame(Struct, frozen=True, eq=False):
    """Axes of the plan; the origin is the model's.

    right, up : (3,) unit vectors in the plane; toward : (3,) against the beam, towards the reader
    """

    right: np.ndarray
    up: np.ndarray
    toward: np.ndarray

    def flat(self, points: np.ndarray) -> np.ndarray:
        """(n, 3) mm -> (n, 2) mm."""
        return np.column_stack([points @ self.right, points @ self.up])


def plan_frame(beam: Any) -> PlanFrame:
    """X of the model to the right where it can be, else the next axis that can."""
    toward = -np.asarray(beam, dtype=float)
    toward = toward / np.linalg.norm(toward)
    axis = next(a for a in np.eye(3) if abs(float(a @ toward)) < 0.8)
    right = axis - float(axis @ toward) * toward
    right = right / np.linalg.norm(right)
    return PlanFrame(right, np.cross(toward, right), toward)


def offset_runs(contour: Mapping[str, Any], frame: PlanFrame, by: np.ndarray) -> list[np.ndarray]:
    """Lines beside the mid-line, ``by`` (n,) mm along u; one (m, 2) array for each run without NaN.

    Around a whole closed path the one run repeats its first point at the end.
    """
    stations = contour["stations"]
    points = np.column_stack([stations[axis] for axis in "xyz"]).astype(float)
    u = np.asarray(stations["u"], dtype=float).reshape(-1, 3)
    moved = frame.flat(points + u * by[:, None])
    known = np.isfinite(by)
    if known.all() and contour["closed"] and len(moved):
        return [np.vstack([moved, moved[:1]])]
    edges = np.flatnonzero(np.diff(known.astype(int))) + 1
    return [run for run in np.split(moved, edges) if len(run) > 1 and np.isfinite(run).all()]


def start_mark(contour: Mapping[str, Any], frame: PlanFrame, size: float) -> tuple[np.ndarray, np.ndarray] | None:
    """Where s begins on a path and which way it runs: (3, 2) mm, a line across the seam and on to the arrow's tip.

    With it (2,) the place of its name, further inward. None for a path of less than three stations.
    """
    stations = contour["stations"]
    points = frame.flat(np.column_stack([stations[axis] for axis in "xyz"]).astype(float))
    if len(points) < 3:
        return None
    u = frame.flat(np.asarray(stations["u"][:1], dtype=float))[0]
    away = np.linalg.norm(points - points[0], axis=1)
    ahead = points[int(np.argmax(away > 0.5 * size))] - points[0]
    way = ahead / max(float(np.linalg.norm(ahead)), 1e-9)
    turn = points[0] - 1.2 * size * u
    return np.array([points[0] + 0.7 * size * u, turn, turn + 2.0 * size * way]), points[0] - 3.4 * size * u


_SLIT = 0.02  # mm: slits of half this width between facets are none of the part
_GRID = 0.005  # mm: corners of facets that lie nearer are one


def mesh_outline(mesh: Mesh, frame: PlanFrame) -> BaseGeometry:
    """What a part covers in the plan, mm: the union of its display mesh seen along the beam.

    Only edges that facets facing the beam do not share with each other can be in its outline. They cut the plane into
    areas, of which each is covered as a whole or not at all.
    """
    cells, same = different_rows(np.round(frame.flat(mesh.positions.astype(float)) / _GRID).astype(np.int64))
    corners, facets = cells * _GRID, same[mesh.triangles]
    one, other = corners[facets[:, 1]] - corners[facets[:, 0]], corners[facets[:, 2]] - corners[facets[:, 0]]
    facing = one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0] > 1e-6  # what faces the beam covers all the rest
    facets = facets[facing]
    edges = np.concatenate([facets[:, [0, 1]], facets[:, [1, 2]], facets[:, [2, 0]]])
    way = np.where(edges[:, 0] < edges[:, 1], 1, -1)
    edge, which = different_rows(np.sort(edges, axis=1))
    edge = edge[np.bincount(which, weights=way, minlength=len(edge)) != 0]
    lines = shapely.union_all(shapely.linestrings(corners[edge]))
    areas = shapely.get_parts(shapely.polygonize([lines]))
    covered = shapely.STRtree(shapely.polygons(corners[facets])).query(shapely.point_on_surface(areas), "intersects")[0]
    is_covered = np.isin(np.arange(len(areas)), covered)
    shape = shapely.coverage_union_all(areas[is_covered])
    return shape.buffer(_SLIT, join_style="mitre").buffer(-_SLIT, join_style="mitre").simplify(0.01)


def land_side(contour: Mapping[str, Any]) -> int:
    """+1 where the clamp land lies outward, -1 inward, 0 where the path has none."""
    return {"outer": 1, "inner": -1}.get(contour.get("clamp_side") or "", 0)


def sections_of(sections: tuple[SectionSet, ...], joint: str, contour: str) -> SectionSet | None:
    """The sections of one contour; None where none were drawn."""
    return next((s for s in sections if s.joint == joint and s.contour == contour), None)
