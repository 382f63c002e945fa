"""Clamp and transparent plate as bodies: clear of the light, pressing on the cover's top, level or not."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import Axes, Column, column, common, slab, united, without
from seamcheck.preparation.corridor import FIT, LEAST, Foot, Lamp, feet_of, polygons, rings_of
from seamcheck.proposal.level import as_line
from seamcheck.sections.pieces import Piece, Ring, ring_through
from seamcheck.settings.tables import Trial

RISES = 0.02
"""mm: what rises more than this over the cover's top is an obstacle to the clamp."""

LEVEL = 0.05
"""mm: a cover's top that differs less than this in height along the seam is level."""


class Tool(Struct, frozen=True, eq=False):
    """One body: name, solid, rings of its foot (n, 2) mm in the frame, and mm² of land below it."""

    name: str
    solid: Any
    rings: tuple[np.ndarray, ...]
    area: float


class Site(Struct, frozen=True, eq=False):
    """What a clamp is drawn by.

    Attributes
    ----------
    frame, axes : of the seam
    cover, others : bodies by their ids
    light : what it takes at the lamp's level, with margin and clearance
    land : where the review found that a clamp can press; both in the frame
    low, high : mm in the frame, the lowest and the highest top over the seam
    height : mm, of the clamp over that
    """

    frame: Frame
    axes: Axes
    cover: Mapping[str, Body]
    others: Mapping[str, Body]
    lamp: Lamp
    light: BaseGeometry
    land: BaseGeometry
    low: float
    high: float
    height: float

    @property
    def is_level(self) -> bool:
        return self.high - self.low < LEVEL


def clamp_tools(site: Site, trial: Trial) -> list[Tool]:
    """Frames and cores of a clamp; a core where a chamber inside the beam is wide enough for one."""
    feet = feet_of(site.light, trial.frame_width)
    zone = shapely.union_all([foot.outline for foot in feet]).buffer(2.0)
    away = over(site, zone).buffer(trial.clearance)
    found = []
    for foot in feet:
        region = foot.region.difference(away)
        pressing = region if site.is_level else region.intersection(site.land)
        parts = polygons(pressing, LEAST)
        if parts:
            solid = _level_body(site, foot, away) if site.is_level else _fitted_body(site, foot, away, pressing)
            rings = tuple(ring for part in parts for ring in rings_of(part))
            found.append(Tool(foot.name, solid, rings, float(pressing.intersection(site.land).area)))
    return [replace(tool, name=_numbered(tool, found)) for tool in found]


def _numbered(tool: Tool, tools: Sequence[Tool]) -> str:
    """'clamp frame', with a number where there are several."""
    alike = [other for other in tools if other.name == tool.name]
    return f"clamp {tool.name}" + (f" {alike.index(tool) + 1}" if len(alike) > 1 else "")


def plate_tools(site: Site, trial: Trial) -> list[Tool]:
    """A transparent plate over the light, with openings round what rises over the cover."""
    thick = trial.plate_thickness or 0.0
    edges = shapely.union_all([Polygon(part.exterior) for part in polygons(site.light)])
    whole = edges.buffer(trial.frame_width, join_style="mitre", mitre_limit=2.0)
    region = whole.difference(over(site, whole.buffer(2.0)).buffer(trial.clearance))
    parts = polygons(region, LEAST)
    return [
        Tool(
            "plate" if len(parts) == 1 else f"plate {k}",
            column(site.axes, upright(part, site.high, site.high + thick)), tuple(rings_of(part)), 0.0,
        )
        for k, part in enumerate(parts, 1)
    ]  # fmt: skip


def over(site: Site, zone: BaseGeometry) -> BaseGeometry:
    """Where anything rises over the cover's top, seen along the beam; of an uneven cover only what no land is."""
    found = []
    bodies = [
        *((body, site.is_level) for body in site.cover.values()),
        *((body, True) for body in site.others.values()),
    ]
    for body, counts in bodies:
        if not counts:
            continue
        for i, box in enumerate(site.frame.boxes(body.boxes)):
            if not box[5] > site.low + RISES or not shapely.box(box[0], box[1], box[3], box[4]).intersects(zone):
                continue
            local = site.frame.local(body.facets([i], 0.02).corners)
            rising = local[local[:, :, 2].max(axis=1) > site.low + RISES][:, :, :2]
            found += [shapely.convex_hull(shapely.multipoints(triangle)) for triangle in rising]
    region: BaseGeometry = shapely.union_all([part.buffer(0.01) for part in found]) if found else Polygon()
    return region


def _level_body(site: Site, foot: Foot, away: BaseGeometry) -> Any:
    return _body(site, foot, away, site.high, site.high + site.height)


def _fitted_body(site: Site, foot: Foot, away: BaseGeometry, pressing: BaseGeometry) -> Any:
    """A body whose foot follows the cover's top: a level one over the highest place, let down onto the land."""
    faces = _upward(site, foot.outline)
    highest = max((high for _, _, high in faces), default=site.high)
    rim = highest + site.height
    whole = _body(site, foot, away, site.low - 1.0, rim)
    box = shapely.box(*foot.outline.buffer(5.0).bounds)
    parts = [common(whole, column(site.axes, upright(box, highest, rim)))]
    below = [slab(body, [face], site.frame.up, highest - site.low + 5.0, 0.0) for body, face, _ in faces]
    for part in polygons(pressing, LEAST):
        post = column(site.axes, upright(part, site.low - 1.0, highest + 0.5 * site.height))
        parts.append(without(common(whole, post), *below))
    return united(parts)


def _upward(site: Site, region: BaseGeometry) -> list[tuple[Body, int, float]]:
    """The cover's faces over a region that look against the beam: body, face, mm of its highest place."""
    found = []
    for body in site.cover.values():
        for i, box in enumerate(site.frame.boxes(body.boxes)):
            if not box[5] > site.low - 1.0 or not shapely.box(box[0], box[1], box[3], box[4]).intersects(region):
                continue
            corners = site.frame.local(body.facets([i], 0.02).corners)
            normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
            upward = corners[normal[:, 2] > 0.1 * np.linalg.norm(normal, axis=1)]
            if len(upward):
                found.append((body, i, float(upward[:, :, 2].max())))
    return found


def _body(site: Site, foot: Foot, away: BaseGeometry, low: float, high: float) -> Any:
    """The space above a foot between two heights, its walls beside the beam leaning like the beam."""
    outlines = [_line(foot.outline)] * 2
    if foot.leans:
        outlines = [as_line(leaning(foot.outline, site.lamp, z, -1.0)) for z in (low, high)]
    holes = [tuple(as_line(leaning(hole, site.lamp, z, 1.0)) for hole in foot.holes) for z in (low, high)]
    solid = column(site.axes, Column(low, high, outlines[0], outlines[1], holes[0], holes[1]))
    open_ = [column(site.axes, upright(part, low - 1.0, high + 1.0)) for region in (foot.hollow, away)
             for part in polygons(region)]  # fmt: skip
    return without(solid, *open_)


def leaning(edge: Polygon, lamp: Lamp, height: float, side: float) -> Ring:
    """An edge of the beam as it is at a height (mm in the frame).

    Parameters
    ----------
    edge : at the lamp's level
    side : +1 for an outer edge of the beam, which the beam's cone widens upward; -1 for the edge of a chamber

    Notes
    -----
    All rays run to the scanner's pivot, so that an edge carried up is the edge drawn smaller towards the axis: a
    homothety, which keeps lines and arcs.
    """
    ring = ring_through(np.asarray(edge.exterior.coords)[:-1], FIT)
    if lamp.pivot is not None:
        share = float(lamp.share(height))
        ring = Ring(
            tuple(Piece(_drawn_in(p.start, lamp, share), _drawn_in(p.end, lamp, share), p.bulge) for p in ring.pieces)
        )
    by = side * (height - lamp.level) * float(np.tan(np.radians(lamp.half_angle)))
    return ring.offset(by) if by else ring


def _drawn_in(point: tuple[float, float], lamp: Lamp, share: float) -> tuple[float, float]:
    x, y = lamp.axis + (np.asarray(point) - lamp.axis) * share
    return float(x), float(y)


def upright(part: Polygon, low: float, high: float) -> Column:
    """A polygon carried from one height to another."""
    holes = tuple(as_line(ring_through(np.asarray(ring.coords)[:-1], FIT)) for ring in part.interiors)
    return Column(low, high, _line(part), _line(part), holes, holes)


def _line(part: Polygon) -> Any:
    return as_line(ring_through(np.asarray(part.exterior.coords)[:-1], FIT))
