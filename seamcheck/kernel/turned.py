"""Cylinders, cones, spheres and tori: points at many parameters, and the rows and columns that they need."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
from OCP.Geom import Geom_ConicalSurface, Geom_CylindricalSurface, Geom_SphericalSurface, Geom_ToroidalSurface

Profile = Callable[[np.ndarray], tuple[Any, np.ndarray]]
"""Of parameters v (n,) the distances (n,) from the axis and along it, mm."""

_SHARE = 0.45  # of the chord error that rows may use up where columns need the same


def turned_function(surface: Any) -> Callable[[np.ndarray], np.ndarray] | None:
    """Points (n, 3) mm of a Geom_Surface at parameters (n, 2): angle and place on the profile; None if not turned."""
    profile = _profile(surface)
    if profile is None:
        return None
    frame = surface.Position()
    vectors = (frame.Location(), frame.XDirection(), frame.YDirection(), frame.Direction())
    centre, *axes = (np.array(v.Coord()) for v in vectors)

    def at(uv: np.ndarray) -> np.ndarray:
        away, along = profile(uv[:, 1])
        local = np.column_stack([away * np.cos(uv[:, 0]), away * np.sin(uv[:, 0]), along])
        return np.asarray(centre + local @ np.array(axes))

    return at


def _profile(surface: Any) -> Profile | None:
    """The profile as the kernel parametrises it, which is as ISO 10303-42 does."""
    if isinstance(surface, Geom_CylindricalSurface):
        radius = surface.Radius()
        return lambda v: (radius, v)
    if isinstance(surface, Geom_ConicalSurface):
        radius, lean = surface.RefRadius(), surface.SemiAngle()
        return lambda v: (radius + v * np.sin(lean), v * np.cos(lean))
    if isinstance(surface, Geom_SphericalSurface):
        radius = surface.Radius()
        return lambda v: (radius * np.cos(v), radius * np.sin(v))
    if isinstance(surface, Geom_ToroidalSurface):
        major, minor = surface.MajorRadius(), surface.MinorRadius()
        return lambda v: (major + minor * np.cos(v), minor * np.sin(v))
    return None


def ring_counts(
    major: float, minor: float, deflection: float, angle: float, low: np.ndarray, high: np.ndarray
) -> tuple[int, int]:
    """Columns and rows between parameters (2,), radians, of a torus that keep a chord error, mm, and a turn, radians.

    An arc of radius r and angle a is r (1 - cos(a / 2)) from its chord; between rows and columns both add up.
    """
    v = np.linspace(low[1], high[1], 9)
    widest = float(np.abs(major + minor * np.cos(v)).max())
    steps = [min(2.0 * np.arccos(max(0.0, 1.0 - _SHARE * deflection / r)), angle) for r in (widest, minor)]
    columns, rows = (max(1, int(np.ceil(span / step))) for span, step in zip(high - low, steps, strict=True))
    return columns, rows
