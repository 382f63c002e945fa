"""What the beam covers of the cover's top, and where clamp and plate stand beside it; plain geometry, no kernel."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.frame import Frame
from seamcheck.preparation.strokes import points_of

FIT = 0.02
"""mm within which an edge of the corridor is taken as lines and arcs; it stands back by as much."""

LEAST = 2.0
"""mm²: a smaller piece of a clamp's foot is left away."""


def press_frame(joint: Mapping[str, Any]) -> Frame:
    """z against the beam, the origin in the middle of the seam at the median height of its rib's top."""
    points = np.vstack([points_of(contour) for contour in joint["contours"]])
    frame = Frame.along(-np.asarray(joint["beam"], dtype=float), points.mean(axis=0))
    local = frame.local(points)
    at = frame.local((points.max(axis=0) + points.min(axis=0)) / 2.0)
    return Frame(frame.world(np.array([at[0], at[1], float(np.median(local[:, 2]))])), frame.axes)


class Lamp(Struct, frozen=True, eq=False):
    """Where the beam comes from, in the frame.

    Attributes
    ----------
    pivot : mm, height of the mirrors' pivot; None: the beam is parallel
    axis : (2,) mm, foot of the optical axis
    half_angle : degrees, of the beam's cone
    level : mm, the median height of the cover's top over the seam
    """

    pivot: float | None
    axis: np.ndarray
    half_angle: float
    level: float

    def share(self, height: np.ndarray | float) -> np.ndarray:
        """By how much a place on the level (mm from the axis) is drawn in where its ray is at a height (mm)."""
        if self.pivot is None:
            return np.ones_like(np.asarray(height, dtype=float))
        return np.asarray((self.pivot - np.asarray(height)) / (self.pivot - self.level))


def tops_of(joint: Mapping[str, Any], frame: Frame) -> list[np.ndarray]:
    """(n,) mm in the frame for each contour, height of the cover's top over its stations; NaN where not measured."""
    found = []
    for contour in joint["contours"]:
        stations = contour["stations"]
        gap = np.nan_to_num(column(stations, "gap")) if joint["rib_on"] != "cover" else 0.0
        found.append(frame.local(points_of(contour))[:, 2] + column(stations, "cover_thickness") + np.maximum(gap, 0.0))
    return found


def column(stations: Mapping[str, Any], name: str) -> np.ndarray:
    """(n,) a column of the document; NaN where it was not measured or is not there."""
    found = stations.get(name)
    return np.full(len(stations["s"]), np.nan) if found is None else np.array(found, dtype=float)


def light_region(joint: Mapping[str, Any], frame: Frame, lamp: Lamp, room: float) -> BaseGeometry:
    """What the beam covers of the plane at the lamp's level, with room beside it.

    Parameters
    ----------
    room : mm beside the beam: margin and clearance together

    Notes
    -----
    The beam's edges are those of the review: the rib's where no scanner is given, else where the spot's edges enter
    the cover's top; from its own height each is drawn along its ray to the level.
    """
    strips = []
    for contour, top in zip(joint["contours"], tops_of(joint, frame), strict=True):
        outer, inner = edges_of(contour, "outer"), edges_of(contour, "inner")
        edges = [_drawn(contour, edge, top, frame, lamp) for edge in (outer, inner)]
        strips += _strip(edges[0], edges[1], bool(contour["closed"]))
        if not contour["closed"]:
            strips += [
                shapely.Point((edges[0][k] + edges[1][k]) / 2.0).buffer(float(outer[k] - inner[k]) / 2.0)
                for k in (0, -1)
            ]
    region: BaseGeometry = shapely.union_all(strips).buffer(room + FIT, quad_segs=64)
    return region


def edges_of(contour: Mapping[str, Any], side: str) -> np.ndarray:
    """(n,) mm along u from the mid-line to where the beam enters the cover; the rib's edge without a scanner.

    Where it was not measured, as beside a junction, it goes on from the stations around.
    """
    sign, stations = 1.0 if side == "outer" else -1.0, contour["stations"]
    found = column(stations, f"light_enters_{side}")
    if not np.isfinite(found).any():
        found = sign * column(stations, "rib_width") / 2.0
    known, s = np.isfinite(found), np.asarray(stations["s"], dtype=float)
    period = float(contour["length_mm"]) if contour["closed"] else None
    return np.asarray(np.interp(s, s[known], found[known], period=period)) if known.any() else found


def _drawn(contour: Mapping[str, Any], edge: np.ndarray, top: np.ndarray, frame: Frame, lamp: Lamp) -> np.ndarray:
    """(n, 2) mm in the frame, an edge (n,) mm along u at the cover's top, drawn along the beam to the lamp's level."""
    points = frame.local(points_of(contour))[:, :2]
    u = frame.local_vectors(np.asarray(contour["stations"]["u"], dtype=float))[:, :2]
    share = lamp.share(np.where(np.isnan(top), lamp.level, top))[:, None]
    return np.asarray(lamp.axis + (points + edge[:, None] * u - lamp.axis) / share)


def _strip(one: np.ndarray, other: np.ndarray, closed: bool) -> list[BaseGeometry]:
    """The area between two lines (n, 2), cell by cell; NaN leaves a cell away."""
    if closed:
        one, other = (np.vstack([line, line[:1]]) for line in (one, other))
    quads = np.stack([one[:-1], one[1:], other[1:], other[:-1]], axis=1)
    quads = quads[np.isfinite(quads).all(axis=(1, 2))]
    hulls = shapely.convex_hull(shapely.multipoints(quads)) if len(quads) else []
    return [hull for hull in hulls if isinstance(hull, Polygon)]


class Foot(Struct, frozen=True, eq=False):
    """Where one body of a clamp stands at the level, in the frame.

    Attributes
    ----------
    name : 'frame' round the beam, 'core' inside it
    outline : its outer edge; holes : edges of the beam within it
    leans : whether the outline is an edge of the beam, so that it leans as the light does
    hollow : what is left open within it
    """

    name: str
    outline: Polygon
    holes: tuple[Polygon, ...]
    leans: bool
    hollow: BaseGeometry

    @property
    def region(self) -> BaseGeometry:
        return self.outline.difference(shapely.union_all([*self.holes, self.hollow]))


def feet_of(light: BaseGeometry, wide: float) -> list[Foot]:
    """A frame around each outermost edge of the beam, and a core in each chamber that the light goes round.

    Parameters
    ----------
    light : the light's region; wide : mm of wall beside it
    """
    lights = polygons(light)
    edges = [Polygon(part.exterior) for part in lights]
    outermost = [e for i, e in enumerate(edges) if not any(o.contains(e) for k, o in enumerate(edges) if k != i)]
    feet = [
        Foot("frame", part, tuple(e for e in outermost if part.contains(e)), False, Polygon())
        for part in polygons(shapely.union_all([_wider(edge, wide) for edge in outermost]))
    ]
    feet = [_filled(foot) for foot in feet]
    for part in lights:
        for ring in part.interiors:
            chamber = Polygon(ring)
            within = tuple(e for e in edges if chamber.contains(e))
            hollow = _wider(chamber, -wide).difference(shapely.union_all([_wider(e, wide) for e in within]))
            feet.append(Foot("core", chamber, within, True, hollow))
    return [foot for foot in feet if foot.region.area >= LEAST]


def _wider(part: Polygon, by: float) -> BaseGeometry:
    wider: BaseGeometry = part.buffer(by, join_style="mitre", mitre_limit=2.0)
    return wider


def _filled(foot: Foot) -> Foot:
    """A frame whose open middle, where it has one, is kept open."""
    hollow = shapely.union_all([Polygon(ring) for ring in foot.outline.interiors])
    return Foot(foot.name, Polygon(foot.outline.exterior), foot.holes, foot.leans, hollow)


def land_of(joint: Mapping[str, Any], frame: Frame, lamp: Lamp, margin: float) -> BaseGeometry:
    """Where the review found land for the clamp on the cover's top, in the frame.

    Parameters
    ----------
    margin : mm beside the beam, beyond which the land at a station begins

    Notes
    -----
    The level land of the whole interface, and the land beside every station, which may follow an uneven cover.
    """
    rings = [
        Polygon(frame.local(np.asarray(line, dtype=float))[:, :2]).buffer(0.0)
        for line in joint["interface"]["clamp_area"].get("outlines") or []
        if len(line) > 3
    ]
    level: BaseGeometry = Polygon()
    for ring in sorted(rings, key=lambda x: -x.area):  # a ring inside another one is a hole of it
        level = level.symmetric_difference(ring)
    beside = []
    for contour, top in zip(joint["contours"], tops_of(joint, frame), strict=True):
        side, sign = ("inner", -1.0) if contour.get("clamp_side") == "inner" else ("outer", 1.0)
        near = edges_of(contour, side) + sign * margin
        far = near + sign * column(contour["stations"], "clamp_land")
        lines = [_drawn(contour, edge, top, frame, lamp) for edge in (near, far)]
        beside += _strip(lines[0], lines[1], bool(contour["closed"]))
    land: BaseGeometry = shapely.union_all([level, *beside])
    return land


def polygons(region: BaseGeometry, least: float = 0.0) -> list[Polygon]:
    """The polygons of a region of at least so many mm², the largest first."""
    parts = [part for part in getattr(region, "geoms", [region]) if isinstance(part, Polygon) and not part.is_empty]
    return sorted((part for part in parts if part.area >= least), key=lambda x: -x.area)


def rings_of(part: Polygon) -> list[np.ndarray]:
    """(n, 2) mm, outline and holes of a polygon."""
    return [np.asarray(ring.coords)[:, :2] for ring in (part.exterior, *part.interiors)]


def unsupported(
    points: np.ndarray, s: np.ndarray, support: BaseGeometry, length: float, hangs: np.ndarray
) -> list[tuple[float, float]]:
    """Stretches (from s, to s) of the mid-line below which no material goes down to a supporting face.

    Parameters
    ----------
    points : (n, 2) mm; s : (n,) mm; support : region in the same plane; length : mm of the whole path
    hangs : (n,) bool, where the material below ends before the support, as over an opening in the wall
    """
    if support.is_empty:
        return [(0.0, length)]
    bare = hangs | ~np.asarray(shapely.intersects_xy(support, points[:, 0], points[:, 1]))
    starts = np.flatnonzero(bare & ~np.append(False, bare[:-1]))
    ends = np.flatnonzero(bare & ~np.append(bare[1:], False))
    return [(float(s[a]), float(s[b])) for a, b in zip(starts, ends, strict=True)]
