"""Where a clamp can press: flat land beside the beam corridor with free space above it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.joint.regions import face_region
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.area_rays import AreaBorders
from seamcheck.measure.clamp_land import STEEPEST_LAND
from seamcheck.measure.path import Course
from seamcheck.measure.table import Survey
from seamcheck.sections.face_gaps import FaceList, Sheet
from seamcheck.sections.stretches import cell_lengths, stretches
from seamcheck.settings.tables import Clamp

_MOST_TILT = 5.0  # degrees from square to the beam up to which a flat counts as land over the whole interface
_LEVEL = np.cos(np.radians(_MOST_TILT))
_STEEP = np.cos(np.radians(STEEPEST_LAND))
_STEP = 0.02  # mm that something must rise above a land to obstruct the clamp
_SIMPLE = 0.02  # mm by which outlines in the document are simplified


def clamp_values(
    joint: Joint, contour: Contour, survey: Survey, clamp: Clamp, corridor: BaseGeometry, margin: float
) -> Additions:
    """Areas of clamp land on both sides, the share of the seam that has land near, and forces.

    Parameters
    ----------
    corridor : what the beam covers of the cover's top, in the view; margin : mm, room beside the beam
    """
    view = joint.view
    near = corridor.buffer(clamp.reach)
    land, level, tilted = _land(joint, contour, view, clamp, corridor, near)
    inside = inside_of(joint, contour, view)
    why, forces = "no-land" if land.is_empty else "", _forces(joint, contour, clamp, land.area)
    found = {"clamp_area": value_of(land.area, why=why, outlines=_outlines(land, view, level), **forces)}
    for side, part in (("inner", land.intersection(inside)), ("outer", land.difference(inside))):
        is_side = not inside.is_empty
        found[f"clamp_area_{side}"] = value_of(part.area) if is_side else value_of(None, why="no-inside")
    return Additions({**found, "clamp_share": _share(survey, view, land, tilted, clamp, margin)})


class _Tilted(Struct, frozen=True, eq=False):
    """Faces of the cover that would be land if they were square to the beam: where, and their tilt in degrees."""

    area: BaseGeometry
    degrees: float


class _Above(Struct, frozen=True, eq=False):
    """Facets that may rise above a land: triangles (m,) as seen along the beam, begins (m,) mm, their body's lowest."""

    sheet: Sheet
    triangles: np.ndarray
    begins: np.ndarray

    @staticmethod
    def of(joint: Joint, view: Frame, zone: np.ndarray, lowest: float, near: BaseGeometry) -> _Above:
        high = zone.copy()
        high[2] = lowest
        sheet = FaceList.of(joint.bodies, view, 1.0, high).facets(view, 1.0, near)
        begins = view.boxes(np.array([body.box for body in joint.bodies.values()]))[:, 2]
        return _Above(sheet, sheet.triangles(np.zeros(2)), np.where(np.isfinite(begins), begins, -np.inf)[sheet.part])

    def in_the_way(self, piece: BaseGeometry, rises: np.ndarray, top: float) -> BaseGeometry:
        """Where rising facets obstruct the tool on a piece of land; bodies that begin above its top are left out."""
        risen = self.triangles[rises & (self.begins <= top)]
        shapely.prepare(piece)
        return shapely.union_all(risen[shapely.intersects(piece, risen)])


def _land(
    joint: Joint, contour: Contour, view: Frame, clamp: Clamp, corridor: BaseGeometry, near: BaseGeometry
) -> tuple[BaseGeometry, float, list[_Tilted]]:
    """Land in the view, the height of its largest face, and what is too much tilted to be land."""
    x0, y0, x1, y1 = near.bounds
    zone = np.array([x0, y0, -1e6, x1, y1, 1e6])
    cover = {i: joint.bodies[i] for i in joint.cover}
    faces = FaceList.of(cover, view, 1.0, zone)
    frame = Frame(view.origin, view.axes)
    lowest = float(Course.of(joint, contour, view).points[:, 2].min())
    pieces: list[BaseGeometry] = []
    heights: list[float] = []
    tilted: list[_Tilted] = []
    above: _Above | None = None
    for k in range(len(faces.face)):
        body, face = faces.bodies[faces.part[k]], int(faces.face[k])
        normal = body.planes[face, :3]
        is_plane = bool(np.isfinite(normal).all())
        if (is_plane and normal @ view.up < _STEEP) or faces.box[k, 5] < lowest:
            continue
        if is_plane and normal @ view.up < _LEVEL:
            slope = face_region(body, face, frame).intersection(near).difference(corridor)
            if not slope.is_empty:
                tilted.append(_Tilted(slope, float(np.degrees(np.arccos(normal @ view.up)))))
            continue
        own = None if is_plane else faces.take(np.array([k])).facets(view, 1.0, near)
        if own is not None and not (len(own.face) and (own.normal[:, 2] >= _LEVEL).all()):
            continue
        seen = face_region(body, face, frame) if own is None else shapely.union_all(own.triangles(np.zeros(2)))
        piece = seen.intersection(near).difference(corridor)
        if piece.is_empty:
            continue
        if above is None:
            above = _Above.of(joint, view, zone, lowest, near)
        sheet = above.sheet
        if own is None:
            plane = np.append(view.axes @ normal, body.planes[face, 3] - normal @ view.origin)
            rises = _above_plane(sheet, plane)
        else:
            itself = (sheet.part == list(joint.bodies).index(faces.ids[faces.part[k]])) & (sheet.face == face)
            rises = np.zeros(len(sheet.face), dtype=bool)
            rises[~itself] = _above_face(sheet.where(~itself), own)
        piece = piece.difference(above.in_the_way(piece, rises, faces.box[k, 5] + clamp.height))
        if piece.area > 1e-6:
            pieces.append(piece)
            heights.append(float(faces.box[k, 5]))
    if not pieces:
        return shapely.Polygon(), float("nan"), tilted
    largest = int(np.argmax([piece.area for piece in pieces]))
    return shapely.union_all(pieces), heights[largest], tilted


def _above_plane(sheet: Sheet, plane: np.ndarray) -> np.ndarray:
    """(m,) bool: facets that rise above a plane (normal and offset in the view)."""
    ground = (plane[3] - sheet.corners[:, :, :2] @ plane[:2]) / plane[2]
    return np.asarray(((sheet.corners[:, :, 2] - ground) > _STEP).any(axis=1))


def _above_face(sheet: Sheet, own: Sheet) -> np.ndarray:
    """(m,) bool: facets of which a corner or the middle rises above a curved face under it."""
    places = np.concatenate([sheet.corners, sheet.corners.mean(axis=1, keepdims=True)], axis=1)
    ground, at, _ = heights_at(places.reshape(-1, 3), own.corners)
    rises = np.zeros(len(places) * 4, dtype=bool)
    rises[at[places.reshape(-1, 3)[at, 2] - ground > _STEP]] = True
    return np.asarray(rises.reshape(-1, 4).any(axis=1))


def inside_of(joint: Joint, contour: Contour, view: Frame) -> BaseGeometry:
    """What the seam encloses, seen along the beam; empty for a seam that encloses nothing."""
    lines = []
    for path in contour.paths:
        flat = view.local(joint.frame.world(path.points))[:, :2]
        ends = [contour.junctions[e.partition(":")[2]] for e in path.ends if e.startswith("junction:")]
        if path.closed:
            flat = np.vstack([flat, flat[:1]])
        elif len(ends) == len(path.ends) == 2:
            first, last = (view.local(joint.frame.world(np.asarray(e)))[:2] for e in ends)
            flat = np.vstack([first, flat, last])
        lines.append(shapely.LineString(flat))
    polygons = shapely.get_parts(shapely.polygonize([shapely.union_all(lines)]))
    return shapely.union_all(polygons)


def _share(
    survey: Survey, view: Frame, land: BaseGeometry, tilted: Sequence[_Tilted], clamp: Clamp, margin: float
) -> Value:
    """Share of the seam's length with land that is wide enough within reach, on at least one side."""
    total = held = 0.0
    missing: list[tuple[float, np.ndarray, float | None]] = []  # length and middle of what has none, and its tilt
    borders = AreaBorders.of(land)
    for path in survey.paths:
        cells = cell_lengths(path.s, path.length, path.closed)
        flat, across = view.local(path.points)[:, :2], path.u @ view.axes[:2].T
        half = np.nan_to_num(np.asarray(path.columns["rib_width_top"], dtype=float), nan=0.0) / 2
        edges = {
            -1.0: np.asarray(path.columns.get("light_enters_inner", -half), dtype=float) - margin,
            1.0: np.asarray(path.columns.get("light_enters_outer", half), dtype=float) + margin,
        }
        # at a junction, what lies square to one path is the other
        ok = np.isin(np.asarray(path.reasons["rib_width_top"]).astype(str), ("junction", "end", "corner"))
        starts = {
            sign: flat + np.where(np.isfinite(edge), edge, sign * (half + margin))[:, None] * across
            for sign, edge in edges.items()
        }
        # usually the land begins at once on one side: no cut is needed
        for far in (min(2 * clamp.width, clamp.reach), clamp.reach):
            for sign, start in starts.items():
                left = np.flatnonzero(~ok)
                ok[left] |= _crosses(borders, start[left], sign * across[left], far, clamp.width)
        total += float(cells.sum())
        held += float(cells[ok].sum())
        for run in stretches(~ok, path.s, path.length, path.closed):
            middle = run.stations[len(run.stations) // 2]
            ends = flat[middle] + np.array([[-clamp.reach], [clamp.reach]]) * across[middle]
            tilt = next((t.degrees for t in tilted if t.area.intersects(shapely.LineString(ends))), None)
            missing.append((run.length, path.points[middle], tilt))
    missing.sort(key=lambda run: -run[0])
    value = held / total if total else None
    places = [value_of(value, at, _why_none(length, tilt), length=length) for length, at, tilt in missing]
    return {**places[0], "places": places} if places else value_of(value)


def _why_none(length: float, tilt: float | None) -> str:
    if tilt is None:
        return say("place.no-land", length=length)
    return say("place.tilted-land", length=length, tilt=tilt, most=_MOST_TILT)


def _crosses(land: AreaBorders, start: np.ndarray, ahead: np.ndarray, length: float, width: float) -> np.ndarray:
    """(n,) bool: which rays from start (n, 2) ahead (n, 2) unit of one length run over a width of land at least."""
    if length <= 2 * width:
        shapely.prepare(land.area)
        rays = shapely.linestrings(np.stack([start, start + length * ahead], axis=1))
        return np.asarray((length >= width) & shapely.covers(land.area, rays))
    return np.asarray(land.along(start, ahead, length) >= width - 1e-6)


def _forces(joint: Joint, contour: Contour, clamp: Clamp, area: float) -> dict[str, Any]:
    """Force over the rib for the given pressure; {} without one. MPa x mm² = N."""
    if clamp.pressure is None:
        return {}
    force = clamp.pressure * joint.region.area
    return {
        "force_newton": force,
        "force_newton_per_mm": force / contour.length,
        "pressure_on_land_mpa": force / area if area > 0 else None,
    }


def _outlines(land: BaseGeometry, view: Frame, level: float) -> list[list[list[float]]]:
    """Rings of the land in the model's coordinates, at the height of its largest face; holes follow outlines."""
    rings = []
    for polygon in shapely.get_parts(land.simplify(_SIMPLE)):
        if polygon.geom_type != "Polygon":
            continue
        for ring in (polygon.exterior, *polygon.interiors):
            flat = shapely.get_coordinates(ring)
            world = view.world(np.column_stack([flat, np.full(len(flat), level)]))
            rings.append([[float(c) for c in point] for point in world])
    return rings
