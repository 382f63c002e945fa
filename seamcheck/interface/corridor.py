"""The room that the light takes where it enters the cover, and how far a tall tool must stand back from it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import Contour
from seamcheck.interface.facing import View
from seamcheck.interface.light import axis_of
from seamcheck.interface.settings import Scanner
from seamcheck.joint import Joint
from seamcheck.material.optics import scanner_entry
from seamcheck.survey.table import Survey


def rib_region(joint: Joint, view: View) -> BaseGeometry:
    """The rib's top seen along the light, in the view."""
    frame = joint.frame

    def to_view(xy: np.ndarray) -> np.ndarray:
        return view.local(frame.world(np.column_stack([xy, np.zeros(len(xy))])))[:, :2]

    return shapely.transform(joint.region, to_view)


def light_corridor(
    joint: Joint, contour: Contour, survey: Survey, view: View, margin: float, scanner: Scanner | None
) -> BaseGeometry:
    """What the light to the rib's top takes of the cover's top face, in the view, with some margin (mm) round it.

    Notes
    -----
    Seen from a scanner it is drawn toward the optical axis, by the refraction at a level top, and as wide as the
    beam's cone there: margin + t tan b with sin b = sin a / n, half-angle a and way t through the cover. One median
    t holds for the whole seam. Without a scanner: straight over the rib.
    """
    region = rib_region(joint, view)
    if scanner is None:
        return shapely.buffer(region, margin) if margin > 0 else region
    through = np.concatenate([path.columns["cover_thickness"] for path in survey.paths])
    if joint.rib_on != "cover":
        through = through + np.concatenate([np.maximum(path.columns["gap"], 0.0) for path in survey.paths])
    if not np.isfinite(through).any():
        return shapely.buffer(region, margin) if margin > 0 else region
    depth = float(np.nanmedian(through))
    if scanner.distance is not None:
        region = _drawn_in(region, axis_of(joint, contour, scanner, view), scanner.distance, depth, scanner.index)
    wider = margin + depth * np.tan(np.arcsin(np.sin(np.radians(scanner.half_angle)) / scanner.index))
    return shapely.buffer(region, wider) if wider > 0 else region


def _drawn_in(region: BaseGeometry, axis: np.ndarray, distance: float, depth: float, index: float) -> BaseGeometry:
    """Where rays from a pivot over the axis (2,) enter a level top on their way to a region ``depth`` below it."""

    def entry(xy: np.ndarray) -> np.ndarray:
        away = xy - axis
        radius = np.linalg.norm(away, axis=1)
        enters = scanner_entry(distance, radius, depth, index)[0]
        with np.errstate(invalid="ignore", divide="ignore"):
            return axis + away * np.where(radius > 0.0, enters / radius, 1.0)[:, None]

    return shapely.transform(region, entry)


def tool_setback(angle: Mapping[str, Any], scanner: Scanner | None, height: float) -> dict[str, dict[str, Any]]:
    """How far an upright side of the clamp must stand back from the light's corridor so as not to shade it.

    Parameters
    ----------
    angle : the entry 'beam_angle', degrees; height : of the tool, mm
    """
    if scanner is None or angle.get("value") is None:
        return {"tool_setback": {"value": None, "at": None, "why": angle.get("why") or "no-scanner"}}
    lean = np.radians(min(float(angle["value"]) + scanner.half_angle, 89.0))
    return {"tool_setback": {"value": float(height * np.tan(lean)), "at": angle.get("at"), "why": ""}}
