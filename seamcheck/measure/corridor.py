"""The room that the light takes where it enters the cover, and how far a tall tool must stand back from it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import Contour
from seamcheck.contour.holes import without_holes
from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, value_of
from seamcheck.measure.beam_path import Entries, axis_of, entries, spread
from seamcheck.measure.material.optics import scanner_entry
from seamcheck.measure.table import PathSurvey, Survey, rib_width
from seamcheck.sections.facing import View
from seamcheck.settings.tables import Scanner

_SEAM = 0.05  # mm beyond the strips between stations that count as between them
_APART = 3.0  # mm: stations further apart than this have something between them that was not measured


def rib_region(joint: Joint, view: View) -> BaseGeometry:
    """The rib's top seen along the light, in the view."""
    return _in_view(joint.region, joint, view)


def holes_region(joint: Joint, view: View) -> BaseGeometry:
    """The holes that open in the rib's top, in the view."""
    return _in_view(shapely.MultiPolygon(without_holes(joint.region)[1]), joint, view)


def _in_view(region: BaseGeometry, joint: Joint, view: View) -> BaseGeometry:
    frame = joint.frame

    def to_view(xy: np.ndarray) -> np.ndarray:
        return view.local(frame.world(np.column_stack([xy, np.zeros(len(xy))])))[:, :2]

    return shapely.transform(region, to_view)


def light_corridor(
    joint: Joint, contour: Contour, survey: Survey, view: View, margin: float, scanner: Scanner | None
) -> BaseGeometry:
    """What the light to the rib's top takes of the cover's top face, in the view, with some margin (mm) round it.

    Notes
    -----
    Without a scanner: straight over the rib. Seen from a scanner: between the places where the rays to both edges of
    the rib's top enter the cover's top, station by station with the thickness, height and tilt that the top has there,
    and as wide as the beam's cone: margin + w tan b more to each side, with sin b = sin a / n, half-angle a and way w
    through the cover. What of the rib's top lies between no two stations (in sharp corners, over holes) is drawn by a
    level top at the median thickness.
    """
    region = rib_region(joint, view)
    if scanner is None:
        return shapely.buffer(region, margin) if margin > 0 else region
    widens = spread(scanner)
    found = entries(joint, contour, survey, scanner)
    below, above = [], []
    for path in survey.paths:
        rib, light = _strips(path, found[path.id], view, margin, widens)
        below += rib
        above += light
    rest = shapely.difference(region, shapely.union_all(below).buffer(_SEAM)) if below else region
    through = np.concatenate([path.columns["cover_thickness"] for path in survey.paths])
    if joint.rib_on != "cover":
        through = through + np.concatenate([np.maximum(path.columns["gap"], 0.0) for path in survey.paths])
    depth = float(np.nanmedian(through)) if np.isfinite(through).any() else 0.0
    if scanner.distance is not None and depth > 0 and not rest.is_empty:
        rest = _drawn_in(rest, axis_of(joint, contour, scanner, view), scanner.distance, depth, scanner.index)
    return shapely.union_all([*above, shapely.buffer(rest, margin + depth * widens)])


def _strips(
    path: PathSurvey, found: Entries, view: View, margin: float, widens: float
) -> tuple[list[BaseGeometry], list[BaseGeometry]]:
    """Strips between neighbouring stations, in the view: of the rib's top, and of the light on the cover's top."""
    half, across = rib_width(path)[:, None] / 2, path.u @ view.axes[:2].T
    flat = view.local(path.points)[:, :2]
    inner, outer = view.local(found.inner)[:, :2], view.local(found.outer)[:, :2]
    with np.errstate(invalid="ignore", divide="ignore"):
        side = (outer - inner) / np.linalg.norm(outer - inner, axis=1, keepdims=True)
    wider = (margin + found.way * widens)[:, None]
    lines = (flat - half * across, flat + half * across), (inner - wider * side, outer + wider * side)
    ahead = np.arange(1, len(flat) + path.closed) % len(flat)
    here = np.arange(len(ahead))
    known = np.isfinite(np.hstack([*lines[0], *lines[1]])).all(axis=1)
    near = np.linalg.norm(flat[ahead] - flat[here], axis=1) <= _APART
    use = np.flatnonzero(known[here] & known[ahead] & near)
    strips = []
    for low, high in lines:
        corners = [low[here[use]], high[here[use]], high[ahead[use]], low[ahead[use]]]
        strips.append(shapely.convex_hull(shapely.multipoints(np.stack(corners, axis=1))))
    ends = [] if path.closed else [k for k in (0, len(flat) - 1) if known[k]]
    caps = [shapely.LineString([inner[k], outer[k]]).buffer(float(wider[k, 0])) for k in ends]
    return list(strips[0]), [*strips[1], *caps]


def _drawn_in(region: BaseGeometry, axis: np.ndarray, distance: float, depth: float, index: float) -> BaseGeometry:
    """Where rays from a pivot over the axis (2,) enter a level top on their way to a region ``depth`` below it."""

    def entry(xy: np.ndarray) -> np.ndarray:
        away = xy - axis
        radius = np.linalg.norm(away, axis=1)
        enters = scanner_entry(distance, radius, depth, index)[0]
        with np.errstate(invalid="ignore", divide="ignore"):
            return np.asarray(axis + away * np.where(radius > 0.0, enters / radius, 1.0)[:, None])

    return shapely.transform(region, entry)


def tool_setback(angle: Mapping[str, Any], scanner: Scanner | None, height: float) -> Additions:
    """How far an upright side of the clamp must stand back from the light's corridor so as not to shade it.

    Parameters
    ----------
    angle : the entry 'beam_angle', degrees; height : of the tool, mm
    """
    if scanner is None or angle.get("value") is None:
        return Additions({"tool_setback": value_of(None, why=angle.get("why") or "no-scanner")})
    lean = np.radians(min(float(angle["value"]) + scanner.half_angle, 89.0))
    return Additions({"tool_setback": value_of(float(height * np.tan(lean)), angle.get("at"))})
