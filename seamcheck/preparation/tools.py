"""Outlines of clamp and nest in the plane across the light; plain geometry, no kernel."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.frame import Frame
from seamcheck.preparation.path import numbers

FIT = 0.02
"""mm within which an edge of the corridor is taken as lines and arcs; it stands back by as much."""


@dataclass(frozen=True, slots=True, eq=False)
class Corridor:
    """What the light takes of the cover's top, of one closed path, with the clearance beside it.

    Attributes
    ----------
    outer, inner : (n, 2) mm in the frame, its edges
    """

    outer: Polygon
    inner: Polygon

    @property
    def region(self) -> BaseGeometry:
        return self.outer.difference(self.inner)


def press_frame(joint: Mapping[str, Any]) -> Frame:
    """z against the light, the origin in the middle of the seam at the median height of its rib's top."""
    points = np.vstack([path_points(contour) for contour in joint["contours"]])
    frame = Frame.along(-np.asarray(joint["beam"], dtype=float), points.mean(axis=0))
    middle = (points.max(axis=0) + points.min(axis=0)) / 2.0
    local = frame.local(points)
    at = frame.local(middle)
    return Frame(frame.world(np.array([at[0], at[1], float(np.median(local[:, 2]))])), frame.axes)


def path_points(contour: Mapping[str, Any]) -> np.ndarray:
    """(n, 3) mm, the stations of a contour."""
    return np.column_stack([np.asarray(contour["stations"][axis], dtype=float) for axis in "xyz"])


def corridor_of(contour: Mapping[str, Any], frame: Frame, room: float) -> Corridor:
    """The corridor of a closed contour on the cover's top.

    Parameters
    ----------
    room : mm beside the light: margin and clearance together

    Notes
    -----
    The light's edges are those of the review: the rib's where no scanner is given, else where the spot's edges enter
    the cover's top.
    """
    stations = contour["stations"]
    points = frame.local(path_points(contour))[:, :2]
    u = frame.local_vectors(np.asarray(stations["u"], dtype=float))[:, :2]
    half = numbers(stations.get("rib_width"), len(points), np.nan)
    half = np.where(np.isnan(half), np.nanmedian(half), half) / 2.0
    outer = np.array([numbers(stations.get("light_enters_outer"), len(points), np.nan)]).ravel()
    inner = np.array([numbers(stations.get("light_enters_inner"), len(points), np.nan)]).ravel()
    outer, inner = np.where(np.isnan(outer), half, outer), np.where(np.isnan(inner), -half, inner)
    edges = [Polygon(points + (edge[:, None]) * u).buffer(0.0) for edge in (outer, inner)]
    wide = edges[0].buffer(room + FIT, quad_segs=64)
    core = edges[1].buffer(-(room + FIT), quad_segs=64)
    return Corridor(_largest(wide), _largest(core))


def land_of(joint: Mapping[str, Any], frame: Frame) -> BaseGeometry:
    """Where the review found land for the clamp on the cover's top, in the frame."""
    rings = [
        Polygon(frame.local(np.asarray(line, dtype=float))[:, :2]).buffer(0.0)
        for line in joint["interface"]["clamp_area"].get("outlines") or []
        if len(line) > 3
    ]
    land: BaseGeometry = Polygon()
    for ring in sorted(rings, key=lambda x: -x.area):  # a ring inside another one is a hole of it
        land = land.symmetric_difference(ring)
    return land


def frame_footprint(corridor: Corridor, wide: float, obstacles: BaseGeometry, clear: float) -> list[Polygon]:
    """Where the clamp's outer frame stands: ``wide`` mm around the corridor, clear of what rises beside it."""
    region = corridor.outer.buffer(wide, join_style="mitre", mitre_limit=2.0).difference(corridor.outer)
    return pieces(region.difference(obstacles.buffer(clear)))


def core_footprint(corridor: Corridor, wide: float, obstacles: BaseGeometry, clear: float) -> list[Polygon]:
    """Where the clamp's inner body stands: up to ``wide`` mm inside the corridor, clear of what rises there."""
    if corridor.inner.is_empty:
        return []
    hollow = corridor.inner.buffer(-wide, join_style="mitre", mitre_limit=2.0)
    return pieces(corridor.inner.difference(hollow).difference(obstacles.buffer(clear)))


def pieces(region: BaseGeometry, least: float = 2.0) -> list[Polygon]:
    """The polygons of a region of at least so many mm²."""
    parts = [part for part in getattr(region, "geoms", [region]) if isinstance(part, Polygon)]
    return sorted((part for part in parts if part.area >= least), key=lambda x: -x.area)


def _largest(region: BaseGeometry) -> Polygon:
    found = pieces(region, 0.0)
    return Polygon(found[0].exterior) if found else Polygon()


def unsupported(points: np.ndarray, s: np.ndarray, support: BaseGeometry, length: float) -> list[tuple[float, float]]:
    """Stretches (from s, to s) of the mid-line below which there is no supporting face.

    Parameters
    ----------
    points : (n, 2) mm; s : (n,) mm; support : region in the same plane; length : mm of the whole path
    """
    if support.is_empty:
        return [(0.0, length)]
    bare = ~np.asarray(shapely.intersects_xy(support, points[:, 0], points[:, 1]))
    starts = np.flatnonzero(bare & ~np.append(False, bare[:-1]))
    ends = np.flatnonzero(bare & ~np.append(bare[1:], False))
    return [(float(s[a]), float(s[b])) for a, b in zip(starts, ends, strict=True)]


def bending(force: float, arm: float, thickness: float, modulus: float, poisson: float = 0.38) -> float:
    """mm, how far a strip of the cover bends between rib and land.

    Parameters
    ----------
    force : N/mm along the seam; arm : mm from the rib's edge to the middle of the land
    thickness : mm of the cover; modulus : MPa

    Notes
    -----
    Cylindrical bending of a plate strip held at the land, loaded along its free edge: F a³ / (3 D),
    D = E t³ / (12 (1 - ν²)) (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, chapter 1; beam formula of
    any handbook). A bow of the cover up to this is flattened.
    """
    stiffness = modulus * thickness**3 / (12.0 * (1.0 - poisson**2))
    return force * arm**3 / (3.0 * stiffness)


def press(width: Sequence[float] | np.ndarray, pressure: float) -> np.ndarray:
    """(n,) N/mm, the clamp's force along the seam: pressure over the rib's width."""
    return pressure * np.asarray(width, dtype=float)
