"""Exact answers about single places: where a line meets a face, whether a point is inside, how far parts are."""

from __future__ import annotations

from typing import Any

import numpy as np
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeVertex
from OCP.BRepExtrema import BRepExtrema_DistShapeShape
from OCP.gp import gp_Dir, gp_Lin, gp_Pnt
from OCP.IntCurvesFace import IntCurvesFace_Intersector, IntCurvesFace_ShapeIntersector
from OCP.TopAbs import TopAbs_IN

from seamcheck.kernel.body import Body

_TOLERANCE = 1e-7  # mm


def line_hits(body: Body, face: int, point: np.ndarray, direction: np.ndarray, reach: float = 1e4) -> np.ndarray:
    """Where a line meets one face.

    Parameters
    ----------
    point : (3,) mm; direction : (3,) unit; reach : mm to both sides of the point

    Returns
    -------
    (k,) float, mm along the direction, ascending
    """
    meet = IntCurvesFace_Intersector(body.faces[face], _TOLERANCE)
    meet.Perform(gp_Lin(gp_Pnt(*map(float, point)), gp_Dir(*map(float, direction))), -reach, reach)
    if not meet.IsDone():
        return np.empty(0)
    return np.sort([meet.WParameter(i) for i in range(1, meet.NbPnt() + 1)])


def depth_inside(body: Body, points: np.ndarray, direction: np.ndarray, reach: float = 1e3) -> np.ndarray:
    """How far lines run inside a body before they first leave it.

    Parameters
    ----------
    points : (n, 3) mm, just inside the body
    direction : (3,) unit

    Returns
    -------
    (n,) float, mm; NaN where the line meets no face
    """
    meet = IntCurvesFace_ShapeIntersector()
    meet.Load(body.shape, _TOLERANCE)
    found = np.full(len(points), np.nan)
    for i, point in enumerate(points):
        meet.Perform(gp_Lin(gp_Pnt(*map(float, point)), gp_Dir(*map(float, direction))), 1e-6, reach)
        if meet.IsDone() and meet.NbPnt():
            found[i] = min(meet.WParameter(k) for k in range(1, meet.NbPnt() + 1))
    return found


def contains(body: Body, points: np.ndarray) -> np.ndarray:
    """(n,) bool: which points (n, 3) mm lie inside a solid."""
    if not len(points):
        return np.zeros(0, dtype=bool)
    inside = body.classifier
    found = np.zeros(len(points), dtype=bool)
    for i, point in enumerate(points):
        inside.Perform(gp_Pnt(*map(float, point)), _TOLERANCE)
        found[i] = inside.State() == TopAbs_IN
    return found


def shape_distance(a: Any, b: Any) -> tuple[float, np.ndarray, np.ndarray]:
    """Shortest distance of two shapes: mm, and the (3,) points on both; NaN where the kernel finds none."""
    tool = BRepExtrema_DistShapeShape(a, b)
    if not tool.IsDone() or tool.NbSolution() < 1:
        return float("nan"), np.full(3, np.nan), np.full(3, np.nan)
    p, q = tool.PointOnShape1(1), tool.PointOnShape2(1)
    return tool.Value(), np.array([p.X(), p.Y(), p.Z()]), np.array([q.X(), q.Y(), q.Z()])


def point_distance(body: Body, face: int, point: np.ndarray) -> tuple[float, np.ndarray]:
    """Shortest distance of a point (3,) from one face: mm, and the place (3,) on it; NaN where none is found."""
    distance, _, at = shape_distance(BRepBuilderAPI_MakeVertex(gp_Pnt(*map(float, point))).Vertex(), body.faces[face])
    return distance, at
