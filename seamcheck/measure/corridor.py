"""The beam corridor where the beam enters the cover, and the setback of a tall tool from it."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import Contour
from seamcheck.contour.holes import without_holes
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.beam_path import SIDES, Entries, axis_of, entries, spread, through
from seamcheck.measure.material.optics import scanner_entry
from seamcheck.measure.table import PathSurvey, Survey
from seamcheck.settings.tables import Light

_SEAM = 0.05  # mm beyond the strips between stations that count as between them
_APART = 3.0  # mm: stations further apart than this have something between them that was not measured


def rib_region(joint: Joint, view: Frame) -> BaseGeometry:
    """The rib's top seen along the beam, in the view."""
    return _in_view(joint.region, joint, view)


def holes_region(joint: Joint, view: Frame) -> BaseGeometry:
    """The holes that open in the rib's top, in the view."""
    return _in_view(shapely.MultiPolygon(without_holes(joint.region)[1]), joint, view)


def _in_view(region: BaseGeometry, joint: Joint, view: Frame) -> BaseGeometry:
    frame = joint.frame

    def to_view(xy: np.ndarray) -> np.ndarray:
        return view.local(frame.world(np.column_stack([xy, np.zeros(len(xy))])))[:, :2]

    return shapely.transform(region, to_view)


def light_corridor(joint: Joint, contour: Contour, survey: Survey, view: Frame, given: Light) -> BaseGeometry:
    """What the beam covers of the cover's top face, in the view, with its margin round it.

    Notes
    -----
    The beam is as wide as the spot, or as the rib's top where none is given. Without a scanner: straight over the
    seam. Seen from a scanner: between the places where the rays to both edges of the beam enter the cover's top,
    station by station with the thickness, height and tilt that the top has there, and as wide as the beam's cone:
    margin + w tan b more to each side, with sin b = sin a / n, half-angle a and way w through the cover. What lies
    between no two stations (in sharp corners, over holes) is drawn by a level top at the median thickness.
    """
    margin, scanner = given.margin, given.scanner
    region = rib_region(joint, view) if given.spot is None else _spot_region(joint, contour, view, given.spot)
    if scanner is None:
        return shapely.buffer(region, margin) if margin > 0 else region
    found = entries(joint, contour, survey, given)
    below, above = [], []
    for path in survey.paths:
        rib, light = _strips(path, found[path.id], view, margin)
        below += rib
        above += light
    rest = shapely.difference(region, shapely.union_all(below).buffer(_SEAM)) if below else region
    thick = np.concatenate([through(path, joint.rib_on) for path in survey.paths])
    depth = float(np.nanmedian(thick)) if np.isfinite(thick).any() else 0.0
    if scanner.distance is not None and depth > 0 and not rest.is_empty:
        rest = _drawn_in(rest, axis_of(joint, contour, scanner, view), scanner.distance, depth, given.index)
    return shapely.union_all([*above, shapely.buffer(rest, margin + depth * spread(scanner, given.index))])


def light_at_rib(joint: Joint, contour: Contour, view: Frame, given: Light) -> BaseGeometry:
    """Where the beam meets the rib, in the view: the spot or the rib's top, with the margin."""
    region = rib_region(joint, view) if given.spot is None else _spot_region(joint, contour, view, given.spot)
    return shapely.buffer(region, given.margin) if given.margin > 0 else region


def _spot_region(joint: Joint, contour: Contour, view: Frame, spot: float) -> BaseGeometry:
    """Where a round spot passes that runs along the mid-line, in the view."""
    lines = []
    for path in contour.paths:
        flat = view.local(joint.frame.world(path.points))[:, :2]
        lines.append(shapely.LineString(np.vstack([flat, flat[:1]]) if path.closed else flat))
    return shapely.union_all(shapely.buffer(lines, spot / 2))


def _strips(
    path: PathSurvey, found: Entries, view: Frame, margin: float
) -> tuple[list[BaseGeometry], list[BaseGeometry]]:
    """Strips between neighbouring stations, in the view: of the light at the rib, and on the cover's top."""
    half, across = found.width[:, None] / 2, path.u @ view.axes[:2].T
    flat = view.local(path.points)[:, :2]
    inner, outer = view.local(found.inner)[:, :2], view.local(found.outer)[:, :2]
    with np.errstate(invalid="ignore", divide="ignore"):
        side = (outer - inner) / np.linalg.norm(outer - inner, axis=1, keepdims=True)
    wider = (margin + found.way * found.spread)[:, None]
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


def tool_setbacks(survey: Survey, half_angle: float, height: float) -> Additions:
    """Setback of an upright clamp wall from the beam corridor so as not to shade it, per side.

    Parameters
    ----------
    survey : with the column light_lean where a scanner is given
    half_angle : degrees, of the beam's cone; height : mm, of the tool

    Notes
    -----
    Light that comes from the inner side passes over a tool on the inner side and leaves one on the outer side alone:
    height times the tangent of the lean towards the tool's side and the half-angle together, 0 where that is negative.
    """
    return Additions(
        {f"tool_setback_{side}": _setback(survey.paths, sign, half_angle, height) for side, sign in SIDES.items()}
    )


def _setback(paths: Sequence[PathSurvey], sign: float, half_angle: float, height: float) -> Value:
    found = value_of(None, why="no-scanner")
    for path in paths:
        lean = sign * np.asarray(path.columns.get("light_lean", np.empty(0)), dtype=float)
        if not np.isfinite(lean).any():
            continue
        k = int(np.nanargmax(lean))
        back = max(0.0, float(height * np.tan(np.radians(min(float(lean[k]) + half_angle, 89.0)))))
        if found["value"] is None or back > found["value"]:
            found = value_of(back, path.points[k])
    return found
