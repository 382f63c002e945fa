"""Edges of exact shapes as polylines that stay within a chord tolerance."""

from __future__ import annotations

from typing import Any

import numpy as np
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.GCPnts import GCPnts_QuasiUniformDeflection
from OCP.GeomAbs import GeomAbs_CurveType
from OCP.gp import gp_Circ

_LINE, _CIRCLE = GeomAbs_CurveType.GeomAbs_Line, GeomAbs_CurveType.GeomAbs_Circle


def edge_points(edge: Any, tolerance: float) -> np.ndarray:
    """Points along an edge, end points included, in the direction of its parameter.

    Parameters
    ----------
    edge : TopoDS_Edge
    tolerance : mm, largest distance between the curve and its chords

    Returns
    -------
    (k, 3) float, mm; k >= 2
    """
    curve = BRepAdaptor_Curve(edge)
    first, last = curve.FirstParameter(), curve.LastParameter()
    kind = curve.GetType()
    if kind == _LINE:
        ends = (curve.Value(first), curve.Value(last))
        return np.array([(p.X(), p.Y(), p.Z()) for p in ends])
    if kind == _CIRCLE:
        return _arc(curve.Circle(), first, last, tolerance)
    sampler = GCPnts_QuasiUniformDeflection(curve, tolerance, first, last)
    if not sampler.IsDone() or sampler.NbPoints() < 2:
        values = [curve.Value(t) for t in np.linspace(first, last, 33)]
    else:
        values = [sampler.Value(i) for i in range(1, sampler.NbPoints() + 1)]
    return np.array([(p.X(), p.Y(), p.Z()) for p in values])


def _arc(circle: gp_Circ, first: float, last: float, tolerance: float) -> np.ndarray:
    """Evenly spaced points on a circular arc: sagitta r (1 - cos(step / 2)) within the tolerance."""
    radius = circle.Radius()
    largest = 2.0 * np.arccos(max(0.0, 1.0 - tolerance / radius)) if radius > tolerance else np.pi / 2
    count = max(2, int(np.ceil(abs(last - first) / min(largest, np.pi / 4))))
    angle = np.linspace(first, last, count + 1)[:, None]
    frame = circle.Position()
    centre, x, y = (
        np.array((v.X(), v.Y(), v.Z())) for v in (circle.Location(), frame.XDirection(), frame.YDirection())
    )
    return centre + radius * (np.cos(angle) * x + np.sin(angle) * y)
