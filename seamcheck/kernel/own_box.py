"""The box along a body itself: sizes that don't depend on how a model is placed."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve, BRepAdaptor_Surface
from OCP.BRepTools import BRepTools
from OCP.GeomAbs import GeomAbs_CurveType
from OCP.TopExp import TopExp
from scipy.spatial import ConvexHull, QhullError

_LINE, _CIRCLE = GeomAbs_CurveType.GeomAbs_Line, GeomAbs_CurveType.GeomAbs_Circle
_ON_EDGE, _IN_FACE = 33, 11  # points along a bent edge; rows and columns of points in a face

_SAME_PLANE, _INSIDE = 9, 1e-6  # decimals of planes that are one; mm that a box must lie within a hull


class OwnBox(Struct, frozen=True, eq=False):
    """The box round a body with its shortest side along the direction in which the body is thinnest.

    axes : (3, 3) rows are unit vectors in assembly coordinates, along the thinnest, the short and the long side
    low, high : (3,) mm along these
    """

    axes: np.ndarray
    low: np.ndarray
    high: np.ndarray

    @property
    def sides(self) -> np.ndarray:
        """(3,) mm: thinnest, short, long."""
        return np.asarray(self.high - self.low)

    @property
    def diagonal(self) -> float:
        """mm; 0 of an empty body."""
        return float(np.linalg.norm(self.sides))


def edges_spread(edges: Iterable[Any]) -> np.ndarray:
    """(n, 3) mm, points of edges, both ends of each included; none of a collapsed one."""
    found: list[tuple[float, float, float]] = []
    bent: list[tuple[float, ...]] = []
    for edge in edges:
        if BRep_Tool.Degenerated_s(edge):
            continue
        curve = BRepAdaptor_Curve(edge)
        first, last, kind = curve.FirstParameter(), curve.LastParameter(), curve.GetType()
        if kind == _CIRCLE:
            circle = curve.Circle()
            place = circle.Position()
            axes = place.XDirection().Coord(), place.YDirection().Coord()
            bent.append((first, last, circle.Radius(), *place.Location().Coord(), *axes[0], *axes[1]))
            continue
        at = [first, last] if kind == _LINE else np.linspace(first, last, _ON_EDGE).tolist()
        found += [curve.Value(t).Coord() for t in at]
    arcs = np.array(bent, dtype=float).reshape(-1, 12)
    first, last, radius = arcs[:, :3].T[..., None]
    centre, x, y = arcs[:, 3:].reshape(-1, 3, 1, 3).transpose(1, 0, 2, 3)
    turn = first + np.linspace(0.0, 1.0, _ON_EDGE) * (last - first)
    on_arcs = centre + (radius * np.cos(turn))[..., None] * x + (radius * np.sin(turn))[..., None] * y
    return np.concatenate([np.array(found, dtype=float).reshape(-1, 3), on_arcs.reshape(-1, 3)])


def ends_of(edges: Iterable[Any]) -> np.ndarray:
    """(n, 3) mm, both ends of edges."""
    ends = (end(edge) for edge in edges for end in (TopExp.FirstVertex_s, TopExp.LastVertex_s))
    found = [BRep_Tool.Pnt_s(vertex).Coord() for vertex in ends if not vertex.IsNull()]
    return np.array(found, dtype=float).reshape(-1, 3)


def face_spread(face: Any) -> np.ndarray:
    """(n, 3) mm, points spread inside a face, by its parameters."""
    u0, u1, v0, v1 = BRepTools.UVBounds_s(face)
    surface = BRepAdaptor_Surface(face, False)
    within = (np.arange(_IN_FACE) + 1) / (_IN_FACE + 1)
    return np.array(
        [surface.Value(float(u), float(v)).Coord() for u in u0 + within * (u1 - u0) for v in v0 + within * (v1 - v0)]
    )


class Hull(Struct, frozen=True, eq=False):
    """Convex hull of points.

    corners : (n, 3) mm, those of the points that are its corners; all of them where they lie in a plane
    planes : (k, 4) its sides: unit vector n outward and offset d, mm, with n · x + d <= 0 inside; none in a plane
    """

    corners: np.ndarray
    planes: np.ndarray

    def holds(self, boxes: np.ndarray) -> np.ndarray:
        """Which boxes (n, 6), mm, lie wholly inside: (n,) bool."""
        if not len(self.planes):
            return np.zeros(len(boxes), dtype=bool)
        normal, offset = self.planes[:, :3].T, self.planes[:, 3]
        furthest = (boxes[:, :3] + boxes[:, 3:]) / 2 @ normal + (boxes[:, 3:] - boxes[:, :3]) / 2 @ np.abs(normal)
        return np.asarray((furthest + offset < -_INSIDE).all(axis=1))


def hull_of(points: np.ndarray) -> Hull:
    """The convex hull of points (n, 3), mm."""
    try:
        found = ConvexHull(points)
    except (QhullError, ValueError):
        return Hull(points, np.empty((0, 4)))
    return Hull(points[found.vertices], np.unique(np.round(found.equations, _SAME_PLANE), axis=0))


def own_box(hull: Hull) -> OwnBox:
    """The box round a convex hull; without a size where it is empty."""
    corners = hull.corners
    if not len(corners):
        return OwnBox(np.eye(3), np.zeros(3), np.zeros(3))
    normals = np.unique(hull.planes[:, :3], axis=0)
    if not len(normals):
        spread = corners - corners.mean(axis=0)
        normals = np.linalg.svd(spread, full_matrices=False)[2][-1:]
    thickness = np.ptp(corners @ normals.T, axis=0)
    thin = normals[int(np.argmin(thickness))]
    thin = thin / np.linalg.norm(thin)
    axes = rectangle_axes(corners, thin)
    along = corners @ axes.T
    return OwnBox(axes, along.min(axis=0), along.max(axis=0))


def rectangle_axes(points: np.ndarray, z: np.ndarray) -> np.ndarray:
    """(3, 3) unit vectors: z, and the short and the long side of the smallest rectangle round points (n, 3), mm, seen
    along z (3,)."""
    x = np.eye(3)[int(np.argmin(np.abs(z)))]
    x = x - (x @ z) * z
    x = x / np.linalg.norm(x)
    y = np.cross(z, x)
    around = shapely.oriented_envelope(shapely.MultiPoint(np.column_stack([points @ x, points @ y])))
    corner = shapely.get_coordinates(around)
    if len(corner) < 4:  # no area
        return np.array([z, x, y])
    sides = np.diff(corner[:3], axis=0)
    long = sides[int(np.argmax(np.linalg.norm(sides, axis=1)))]
    long = long / np.linalg.norm(long)
    along = long[0] * x + long[1] * y
    return np.array([z, np.cross(along, z), along])
