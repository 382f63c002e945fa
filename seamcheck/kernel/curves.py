"""Edges of exact shapes as polylines that stay within a chord tolerance."""

from __future__ import annotations

import math
from itertools import accumulate
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.GCPnts import GCPnts_QuasiUniformDeflection
from OCP.GeomAbs import GeomAbs_CurveType
from OCP.gp import gp_Circ, gp_Pnt, gp_Vec
from OCP.TopExp import TopExp

from seamcheck.kernel.evaluate import Function, curve_function

_LINE, _CIRCLE = GeomAbs_CurveType.GeomAbs_Line, GeomAbs_CurveType.GeomAbs_Circle
_SPLINES = (GeomAbs_CurveType.GeomAbs_BSplineCurve, GeomAbs_CurveType.GeomAbs_BezierCurve)
_MOST_ROUNDS = 12
_STRAIGHT = 1e-9  # mm
_LEAST_SIDE = 0.1  # of the chord error: the mesher makes none shorter
_WITHIN = np.array([1 / 6, 1 / 3, 1 / 2, 2 / 3, 5 / 6])  # places between two nodes where the distance is looked at


class EdgeLine(Struct, frozen=True, eq=False):
    """An edge as a polyline: at (k,) parameters ascending, points (k, 3) mm; k >= 2."""

    at: np.ndarray
    points: np.ndarray


def bending(edge: Any) -> int:
    """0 for an edge that is a straight line, 1 for an arc of a circle, 2 for every other one."""
    kind = BRepAdaptor_Curve(edge).GetType()
    return 0 if kind == _LINE else 1 if kind == _CIRCLE else 2


def edge_line(edge: Any, tolerance: float) -> EdgeLine:
    """An edge, end points included.

    Parameters
    ----------
    edge : TopoDS_Edge
    tolerance : mm, largest distance between the curve and its chords
    """
    curve = BRepAdaptor_Curve(edge)
    first, last = curve.FirstParameter(), curve.LastParameter()
    kind = curve.GetType()
    if kind == _LINE:
        return _at(curve, [first, last])
    if kind == _CIRCLE:
        return _arc(curve.Circle(), first, last, tolerance)
    if kind in _SPLINES:
        spline = curve.BSpline() if kind == _SPLINES[0] else None
        function = curve_function(spline if spline is not None else curve)
        return _spline(function, _knots(spline, first, last), tolerance)
    sampler = GCPnts_QuasiUniformDeflection(curve, tolerance, first, last)
    if not sampler.IsDone() or sampler.NbPoints() < 2:
        return _at(curve, np.linspace(first, last, 33).tolist())
    return _at(curve, [sampler.Parameter(i) for i in range(1, sampler.NbPoints() + 1)])


def mesher_line(edge: Any, deflection: float, angle: float) -> EdgeLine | None:
    """A straight edge or an arc with the nodes that the kernel's mesher gives it; None of any other edge.

    Parameters
    ----------
    edge : TopoDS_Edge; deflection : mm; angle : radians, both as the mesher is asked for

    Notes
    -----
    The mesher takes half of both for an edge, and at least three steps for an arc (``BRepMesh_CurveTessellator`` and
    ``GCPnts_TangentialDeflection`` of Open CASCADE), more where the ends lie off the curve.
    """
    curve = BRepAdaptor_Curve(edge)
    first, last, kind = curve.FirstParameter(), curve.LastParameter(), curve.GetType()
    if kind == _LINE:
        return _at(curve, [first, last])
    if kind != _CIRCLE or any(_off(curve, *end) > deflection for end in _ends(edge, first, last)):
        return None
    circle = curve.Circle()
    radius = circle.Radius()
    step = min(2.0 * math.acos(max(0.0, 1.0 - deflection / 2.0 / radius)), angle / 2.0)
    step = max(step, _LEAST_SIDE * deflection / radius)
    count = max(3, math.ceil((last - first) / step))
    steps = accumulate([(last - first) / count] * (count - 1), initial=first)
    return _on_circle(circle, np.array([*steps, last]))


def _ends(edge: Any, first: float, last: float) -> list[tuple[float, Any]]:
    """Parameters and vertices of both ends of an edge, as far as it has them."""
    found = (first, TopExp.FirstVertex_s(edge)), (last, TopExp.LastVertex_s(edge))
    return [(at, vertex) for at, vertex in found if not vertex.IsNull()]


def _off(curve: BRepAdaptor_Curve, at: float, vertex: Any) -> float:
    return float(curve.Value(at).Distance(BRep_Tool.Pnt_s(vertex)))


class EdgePieces(Struct, frozen=True, eq=False):
    """An edge cut into pieces, and its first two derivatives in the middle of each.

    start, end, first, second : (k, 3); ends : (2, 3) unit tangents at both ends of the edge
    """

    start: np.ndarray
    end: np.ndarray
    first: np.ndarray
    second: np.ndarray
    ends: np.ndarray


def edge_pieces(edge: Any, line: EdgeLine) -> EdgePieces:
    """The pieces between an edge's nodes."""
    curve, point, one, two = BRepAdaptor_Curve(edge), gp_Pnt(), gp_Vec(), gp_Vec()
    derivatives = []
    for at in [*((line.at[:-1] + line.at[1:]) / 2), line.at[0], line.at[-1]]:
        curve.D2(float(at), point, one, two)
        derivatives.append((one.X(), one.Y(), one.Z(), two.X(), two.Y(), two.Z()))
    first, second = np.split(np.array(derivatives), 2, axis=1)
    ends = first[-2:] / np.maximum(np.linalg.norm(first[-2:], axis=1, keepdims=True), 1e-30)
    return EdgePieces(line.points[:-1], line.points[1:], first[:-2], second[:-2], ends)


def _at(curve: Any, parameters: list[float]) -> EdgeLine:
    points = [curve.Value(t) for t in parameters]
    return EdgeLine(np.array(parameters), np.array([(p.X(), p.Y(), p.Z()) for p in points]))


def _arc(circle: gp_Circ, first: float, last: float, tolerance: float) -> EdgeLine:
    """Evenly spaced points on a circular arc: sagitta r (1 - cos(step / 2)) within the tolerance."""
    radius = circle.Radius()
    largest = 2.0 * np.arccos(max(0.0, 1.0 - tolerance / radius)) if radius > tolerance else np.pi / 2
    count = max(2, int(np.ceil(abs(last - first) / min(largest, np.pi / 4))))
    return _on_circle(circle, np.linspace(first, last, count + 1))


def _on_circle(circle: gp_Circ, angle: np.ndarray) -> EdgeLine:
    """Points of a circle to the last digit as the kernel has them, which looks up sine and cosine in the same place."""
    frame, radius, every = circle.Position(), circle.Radius(), angle.tolist()
    along = [(radius * math.cos(at), radius * math.sin(at)) for at in every]
    axes = zip(circle.Location().Coord(), frame.XDirection().Coord(), frame.YDirection().Coord(), strict=True)
    (ax, bx, cx), (ay, by, cy), (az, bz, cz) = axes
    points = [(p * bx + q * cx + ax, p * by + q * cy + ay, p * bz + q * cz + az) for p, q in along]
    return EdgeLine(angle, np.array(points))


def _knots(spline: Any, first: float, last: float) -> np.ndarray:
    """Parameters to begin with: the ends and the knots between them; where these are few, a place between each two."""
    inner = np.empty(0)
    if spline is not None:
        inner = np.array([spline.Knot(i) for i in range(1, spline.NbKnots() + 1)])
        if spline.IsPeriodic():  # the edge may run across the place where the curve begins
            inner = np.unique(inner + np.array([[-1.0], [0.0], [1.0]]) * (inner[-1] - inner[0]))
        inner = inner[(inner > first) & (inner < last)]
    ends = np.concatenate([[first], inner, [last]])
    if len(ends) > 10:
        return ends
    return np.unique(np.concatenate([ends, (ends[:-1] + ends[1:]) / 2]))


def _spline(function: Function, at: np.ndarray, tolerance: float) -> EdgeLine:
    """Steps split until the curve between two nodes is near enough to the chord; a straight line is one step."""
    for _ in range(_MOST_ROUNDS):
        step = np.diff(at)
        found = function(np.concatenate([at, (at[:-1, None] + step[:, None] * _WITHIN).ravel()]))
        points, between = found[: len(at)], found[len(at) :].reshape(-1, len(_WITHIN), 3)
        first, chord = points[:-1, None], np.diff(points, axis=0)[:, None]
        length = np.maximum((chord * chord).sum(axis=-1, keepdims=True), 1e-30)
        share = np.clip(((between - first) * chord).sum(axis=-1, keepdims=True) / length, 0.0, 1.0)
        away = np.linalg.norm(between - first - share * chord, axis=-1).max(axis=1)
        pieces = np.ceil(np.sqrt(away / tolerance)).astype(int)
        if (pieces <= 1).all():
            ends = [0, -1] if _is_straight(found) else slice(None)
            return EdgeLine(at[ends], points[ends].copy())
        pieces = np.clip(pieces, 1, 64)
        start, nth = np.repeat(at[:-1], pieces), np.arange(pieces.sum()) - np.repeat(np.cumsum(pieces) - pieces, pieces)
        at = np.append(start + nth * np.repeat(step / pieces, pieces), at[-1])
    return EdgeLine(at, function(at))


def _is_straight(points: np.ndarray) -> bool:
    """Whether points (n, 3), some of which are the ends, lie on one line between two of them."""
    away = points - points[0]
    chord = away[int(np.argmax((away * away).sum(axis=1)))]
    across = (away[:, i] * chord[j] - away[:, j] * chord[i] for i, j in ((1, 2), (2, 0), (0, 1)))
    squared: np.ndarray = sum(part * part for part in across)
    return bool(squared.max() <= _STRAIGHT * _STRAIGHT * (chord @ chord))
