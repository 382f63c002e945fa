"""Clamp and nest as bodies: drawn beside the model, proved not to run into it. Runs in a child process."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import shapely
from shapely import Polygon
from shapely.geometry.base import BaseGeometry

from seamcheck.assembly import read_assembly
from seamcheck.joint import join_pieces
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import Axes, Column, column, common, volume, without
from seamcheck.kernel.write_step import write_bodies
from seamcheck.preparation.tools import FIT, Corridor, core_footprint, corridor_of, frame_footprint, press_frame
from seamcheck.proposal.shape import as_line
from seamcheck.sections.pieces import Piece, Ring, ring_through
from seamcheck.settings.settings import Settings

RISES = 0.02
"""mm: what rises more than this over the cover's top is an obstacle to the clamp."""

_CLAMP, _NEST = (0.55, 0.58, 0.62, 1.0), (0.45, 0.40, 0.33, 1.0)


@dataclass(frozen=True, slots=True)
class Blocks:
    """How clamp and nest are drawn, mm and degrees.

    Attributes
    ----------
    height : of the clamp; wide : of its frame beside the light; clear : beside the light and beside obstacles
    grip : height of the nest's wall around the base; play : between both; draft : of that wall, for insertion
    """

    height: float
    wide: float = 8.0
    clear: float = 0.2
    grip: float = 6.0
    play: float = 0.1
    draft: float = 3.0


@dataclass(frozen=True, slots=True, eq=False)
class Drawn:
    """What was drawn for one joint; outlines are rings of (x, y, z) mm in the model's coordinates.

    clamp, nest : outlines; pressed : mm² of land below the clamp; support : mm² on which the base lies
    bare : stretches of each path with no support below; overlap : mm³ that a tool shares with a part
    """

    clamp: tuple[tuple[tuple[float, float, float], ...], ...]
    nest: tuple[tuple[tuple[float, float, float], ...], ...]
    top: float
    low: float
    support_rings: tuple[tuple[tuple[float, float, float], ...], ...]
    overlap: float
    has_clamp: bool


def draw_blocks(
    paths: Sequence[Path], settings: Settings, joint: Mapping[str, Any], blocks: Blocks, with_clamp: bool, target: Path
) -> Drawn:
    """Draw clamp and nest of one joint, and write them and the model with the clamp on it.

    Parameters
    ----------
    joint : of the review's document
    target : folder for 'clamp.step', 'nest.step' and 'with-clamp.step'
    """
    assembly = join_pieces(read_assembly(paths), settings)
    frame = press_frame(joint)
    bodies = {part.id: Body(part.shape) for part in assembly.parts}
    axes = Axes(frame.origin, frame.axes)
    top = _top(joint, frame)
    solids: list[tuple[str, Any]] = []
    outlines: list[Any] = []
    if with_clamp:
        corridors = [corridor_of(c, frame, settings.beam_margin + blocks.clear) for c in joint["contours"]]
        obstacles = _over(bodies.values(), frame, top, corridors[0].outer.buffer(blocks.wide + 2.0))
        for k, corridor in enumerate(corridors):
            for name, body, rings in _clamp(axes, corridor, obstacles, settings, joint, frame, top, blocks):
                solids.append((f"clamp {name}" + (f" {k + 1}" if len(corridors) > 1 else ""), body))
                outlines += [_world(frame, ring, top) for ring in rings]
        write_bodies([(name, body, _CLAMP) for name, body in solids], target / "clamp.step", title="clamp")
        parts = [
            (part.name or part.id, part.shape, (*(part.colour or (0.7, 0.7, 0.7)), 1.0)) for part in assembly.parts
        ]
        write_bodies([*parts, *((name, body, _CLAMP) for name, body in solids)], target / "with-clamp.step")
    nest, low, rings, support = _nest(axes, joint, bodies, frame, blocks)
    write_bodies([("nest", nest, _NEST)], target / "nest.step", title="nest")
    tools = [body for _, body in solids] + [nest]
    overlap = max(volume(common(tool, body.shape)) for tool in tools for body in bodies.values())
    return Drawn(
        tuple(outlines), tuple(_world(frame, ring, low) for ring in rings), top, low,
        tuple(_world(frame, ring, low) for ring in support), float(overlap), with_clamp,
    )  # fmt: skip


def _top(joint: Mapping[str, Any], frame: Frame) -> float:
    """mm in the frame, median height of the cover's top over the seam."""
    found = []
    for contour in joint["contours"]:
        stations = contour["stations"]
        z = frame.local(np.column_stack([np.asarray(stations[a], dtype=float) for a in "xyz"]))[:, 2]
        found.append(z + np.asarray(stations["cover_thickness"], dtype=float) + np.nan_to_num(_gap(stations, len(z))))
    return float(np.nanmedian(np.concatenate(found)))


def _gap(stations: Mapping[str, Any], count: int) -> np.ndarray:
    return np.asarray(stations.get("gap") or [0.0] * count, dtype=float)


def _over(bodies: Any, frame: Frame, top: float, zone: BaseGeometry) -> BaseGeometry:
    """Where anything rises over the cover's top, seen along the light."""
    found = []
    for body in bodies:
        for i, box in enumerate(body.boxes):
            corners = frame.local(np.array([[box[a], box[b], box[c]] for a in (0, 3) for b in (1, 4) for c in (2, 5)]))
            if np.isnan(corners).any() or corners[:, 2].max() < top + RISES:
                continue
            if not shapely.box(*corners[:, :2].min(axis=0), *corners[:, :2].max(axis=0)).intersects(zone):
                continue
            facets = body.facets([i], 0.02).corners
            local = frame.local(facets)
            rising = local[local[:, :, 2].max(axis=1) > top + RISES][:, :, :2]
            found += [shapely.convex_hull(shapely.multipoints(triangle)) for triangle in rising]
    region: BaseGeometry = shapely.union_all([part.buffer(0.01) for part in found]) if found else Polygon()
    return region


def _clamp(
    axes: Axes, corridor: Corridor, obstacles: BaseGeometry, settings: Settings, joint: Mapping[str, Any],
    frame: Frame, top: float, blocks: Blocks,
) -> list[tuple[str, Any, list[np.ndarray]]]:  # fmt: skip
    """Outer frame and inner body: name, solid, rings of its foot in the frame."""
    low, high = top, top + blocks.height
    cut = obstacles.buffer(blocks.clear)
    away = [column(axes, _upright(part, low - 1.0, high + 1.0)) for part in _polygons(cut)]
    found = []
    wide = corridor.outer.buffer(blocks.wide, join_style="mitre", mitre_limit=2.0)
    hole = leaning(corridor.outer, settings, frame, joint, blocks.height, +1.0)
    outer = column(axes, Column(low, high, _ring(wide), _ring(wide), (as_line(hole[0]),), (as_line(hole[1]),)))
    found.append(("frame", without(outer, *away), frame_footprint(corridor, blocks.wide, obstacles, blocks.clear)))
    if not corridor.inner.is_empty and core_footprint(corridor, blocks.wide, obstacles, blocks.clear):
        edge = leaning(corridor.inner, settings, frame, joint, blocks.height, -1.0)
        hollow = corridor.inner.buffer(-blocks.wide, join_style="mitre", mitre_limit=2.0)
        inner = column(axes, Column(low, high, as_line(edge[0]), as_line(edge[1])))
        empty = [column(axes, _upright(part, low - 1.0, high + 1.0)) for part in _polygons(hollow)]
        foot = core_footprint(corridor, blocks.wide, obstacles, blocks.clear)
        found.append(("core", without(inner, *empty, *away), foot))
    return [(name, body, [r for part in foot for r in _rings(part)]) for name, body, foot in found if foot]


def leaning(
    edge: Polygon, settings: Settings, frame: Frame, joint: Mapping[str, Any], height: float, side: float
) -> tuple[Ring, Ring]:
    """An edge of the corridor on the cover's top, and ``height`` mm over it, leaning as the light does.

    Parameters
    ----------
    side : +1 for the corridor's outer edge, which the beam's cone widens upward; -1 for the inner one

    Notes
    -----
    All rays run to the scanner's pivot, so that an edge carried up is the edge drawn smaller towards the axis: a
    homothety, which keeps lines and arcs.
    """
    low = ring_through(np.asarray(edge.exterior.coords)[:-1], FIT)
    scanner = settings.scanner
    if scanner is None:
        return low, low
    high = low
    if scanner.distance is not None:
        axis = axis_of(settings, frame, joint)
        share = 1.0 - height / scanner.distance
        high = Ring(
            tuple(Piece(_drawn_in(p.start, axis, share), _drawn_in(p.end, axis, share), p.bulge) for p in low.pieces)
        )
    return low, high.offset(side * height * float(np.tan(np.radians(scanner.half_angle))))


def axis_of(settings: Settings, frame: Frame, joint: Mapping[str, Any]) -> np.ndarray:
    """(2,) mm in the frame, foot of the scanner's axis: as given, else over the seam's middle."""
    if settings.scanner is not None and settings.scanner.axis is not None:
        return np.asarray(frame.local(np.asarray(settings.scanner.axis, dtype=float))[:2])
    at = joint["interface"]["field_circle"]["at"]
    return np.asarray(frame.local(np.asarray(at, dtype=float))[:2])


def _drawn_in(point: tuple[float, float], axis: np.ndarray, share: float) -> tuple[float, float]:
    return float(axis[0] + (point[0] - axis[0]) * share), float(axis[1] + (point[1] - axis[1]) * share)


def _nest(
    axes: Axes, joint: Mapping[str, Any], bodies: Mapping[str, Body], frame: Frame, blocks: Blocks
) -> tuple[Any, float, list[np.ndarray], list[np.ndarray]]:
    """A block with a pocket for the base: solid, height of its floor, rings of the pocket, rings of what it carries."""
    value = joint["interface"]["nest_area"]
    by_part: dict[str, list[int]] = {}
    for face in value.get("faces") or ():
        by_part.setdefault(face["part"], []).append(int(face["face"]))
    base = [bodies[i] for i in joint["base"]]
    support = shapely.union_all([union_region(bodies[part], faces, frame) for part, faces in by_part.items()])
    low = float(frame.local(np.asarray(value["lowest"], dtype=float))[2])
    gripped, below = [], []
    for body in base:
        for i, box in enumerate(body.boxes):
            corners = frame.local(np.array([[box[a], box[b], box[c]] for a in (0, 3) for b in (1, 4) for c in (2, 5)]))
            if np.isnan(corners).any() or corners[:, 2].min() > low + blocks.grip:
                continue
            region = face_region(body, i, frame)
            gripped.append(region)
            if corners[:, 2].min() < low - RISES:
                below.append(region)
    shape = shapely.union_all([part.buffer(0.01) for part in gripped if not part.is_empty])
    outline = Polygon(max(_polygons(shape), key=lambda x: x.area).exterior).buffer(blocks.play, quad_segs=32)
    lean = float(np.tan(np.radians(blocks.draft)))
    floor, rim = low - 10.0, low + blocks.grip
    block = column(axes, _upright(outline.buffer(8.0, join_style="mitre", mitre_limit=2.0), floor, rim))
    foot = ring_through(np.asarray(outline.exterior.coords)[:-1], FIT)
    pocket = column(axes, Column(low, rim + 1.0, as_line(foot), as_line(foot.offset(lean * (blocks.grip + 1.0)))))
    deeper = (
        shapely.union_all([part.buffer(blocks.play) for part in below if not part.is_empty]) if below else Polygon()
    )
    holes = [column(axes, _upright(part, floor - 1.0, rim + 1.0)) for part in _polygons(deeper)]
    return (
        without(block, pocket, *holes), low, _rings(outline),
        [ring for part in _polygons(support) for ring in _rings(part)],
    )  # fmt: skip


def _polygons(region: BaseGeometry) -> list[Polygon]:
    return [part for part in getattr(region, "geoms", [region]) if isinstance(part, Polygon) and not part.is_empty]


def _rings(part: Polygon) -> list[np.ndarray]:
    return [np.asarray(ring.coords)[:, :2] for ring in (part.exterior, *part.interiors)]


def _ring(part: Polygon) -> Any:
    return as_line(ring_through(np.asarray(part.exterior.coords)[:-1], FIT))


def _upright(part: Polygon, low: float, high: float) -> Column:
    outline = _ring(part)
    holes = tuple(as_line(ring_through(np.asarray(ring.coords)[:-1], FIT)) for ring in part.interiors)
    return Column(low, high, outline, outline, holes, holes)


def _world(frame: Frame, ring: np.ndarray, z: float) -> tuple[tuple[float, float, float], ...]:
    points = frame.world(np.column_stack([ring, np.full(len(ring), z)]))
    return tuple((float(x), float(y), float(z)) for x, y, z in points)
