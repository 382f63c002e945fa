"""Light from a scanner: angle, offset, way through the cover, and what shades the rib.

Stations are independent of each other. At a station the cover's top is taken as the plane that touches it
over the mid-line; rays are refracted there (Snell). Between the source and that plane every facet of every
part can stand in the way.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely

from seamcheck.catalogue.say import say
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.kernel.distance import line_hits
from seamcheck.measure.material.optics import cover_shift, entry_points, refract, spot_stretch
from seamcheck.measure.path import Course, field_circle
from seamcheck.measure.table import PathSurvey, Shade, Survey
from seamcheck.sections.facing import FaceList, Sheet, View, cross
from seamcheck.settings.tables import Scanner

COLUMNS = (
    "beam_angle", "spot_offset", "spot_stretch", "path_in_cover", "light_lean", "light_enters_inner",
    "light_enters_outer", "light_clear",
)  # fmt: skip
_ACROSS = (-0.998, 0.0, 0.998)  # of half the rib's width: where the light must arrive
_RIM = 8  # rays round the cone
_TOP = 0.02  # mm: how far the entry may lie off the cover's top face
_OFF = 0.01  # mm from the top at which a ray begins


@dataclass(frozen=True, slots=True, eq=False)
class Top:
    """The cover's top over stations: place (n, 3) and normal (n, 3) in the model's coordinates, NaN for none."""

    place: np.ndarray
    normal: np.ndarray


def light(
    joint: Joint, contour: Contour, survey: Survey, scanner: Scanner | None
) -> tuple[
    dict[str, dict[str, Any]], dict[str, dict[str, np.ndarray]], dict[str, dict[str, np.ndarray]], dict[str, Shade]
]:
    """Values of the interface, columns, reasons and shade of every path.

    Without a scanner there are no columns: the angle is not evaluated, and nothing is guessed.
    """
    if scanner is None:
        return {"beam_angle": {"value": None, "at": None, "why": "no-scanner"}}, {}, {}, {}
    view = View.of(joint)
    zone = _zone_of_seam(joint, contour, view)
    cover = {i: joint.bodies[i] for i in joint.cover}
    faces = FaceList.of(cover, view, 1.0, zone)
    lit = faces.facets(view, 1.0)
    tops = {path.id: _tops(path, joint, view, faces, lit) for path in survey.paths}
    source = _source(joint, contour, scanner, view, tops)
    columns, reasons, dark = {}, {}, {}
    worst: dict[str, Any] = {"value": None, "at": None, "why": "no-cover"}
    largest: dict[str, Any] = {"value": None, "at": None, "why": "no-cover"}
    places: list[dict[str, Any]] = []
    obstacles = _Obstacles(joint, view)
    for path in survey.paths:
        found = _chief(path, tops[path.id], source, joint, scanner.index)
        found |= _taken(path, _entries(path, tops[path.id], source, scanner.index), scanner)
        share, blockers, dark[path.id] = _clear(path, tops[path.id], source, joint, scanner, lit, view, obstacles)
        found["light_clear"] = share
        columns[path.id] = found
        reasons[path.id] = {key: np.where(np.isnan(v), "no-cover", "") for key, v in found.items()}
        if np.isfinite(share).any():
            i = int(np.nanargmin(share))
            if worst["value"] is None or share[i] < worst["value"]:
                worst = _shadow(path, share, blockers, i, joint)
            places += _shadows(path, share, blockers, joint)
            k = int(np.nanargmax(found["beam_angle"]))
            if largest["value"] is None or found["beam_angle"][k] > largest["value"]:
                largest = {
                    "value": float(found["beam_angle"][k]),
                    "at": [float(c) for c in path.points[k]],
                    "why": "",
                }
    return (
        {"beam_angle": largest, "light_clear": worst | ({"places": places} if places else {})},
        columns,
        reasons,
        dark,
    )


@dataclass(frozen=True, slots=True, eq=False)
class Entries:
    """Where light enters the cover on its way to both edges of the rib's top, station by station.

    inner, outer : (n, 3) mm, NaN where it is not known; way : (n,) mm in the plastic, the longer one
    """

    inner: np.ndarray
    outer: np.ndarray
    way: np.ndarray


def entries(joint: Joint, contour: Contour, survey: Survey, scanner: Scanner) -> dict[str, Entries]:
    """Entries of every path: each station by its own thickness, its own top and the tilt of that top."""
    view = View.of(joint)
    faces = FaceList.of({i: joint.bodies[i] for i in joint.cover}, view, 1.0, _zone_of_seam(joint, contour, view))
    lit = faces.facets(view, 1.0)
    tops = {path.id: _tops(path, joint, view, faces, lit) for path in survey.paths}
    source = _source(joint, contour, scanner, view, tops)
    return {path.id: _entries(path, tops[path.id], source, scanner.index) for path in survey.paths}


def _entries(path: PathSurvey, top: Top, source: Source, index: float) -> Entries:
    half = rib_width(path)[:, None] / 2
    (inner, way), (outer, other) = (
        _entry(path.points + side * half * path.u, top, source, index) for side in (-1.0, 1.0)
    )
    return Entries(inner, outer, np.fmax(way, other))


def spread(scanner: Scanner) -> float:
    """mm by which the beam's cone widens to each side for each mm of its way in the plastic."""
    return float(np.tan(np.arcsin(np.sin(np.radians(scanner.half_angle)) / scanner.index)))


def _taken(path: PathSurvey, found: Entries, scanner: Scanner) -> dict[str, np.ndarray]:
    """What the light takes of the cover's top in the section, mm from P, with its cone."""
    inner, outer = (((x - path.points) * path.u).sum(axis=1) for x in (found.inner, found.outer))
    wider = found.way * spread(scanner)
    return {"light_enters_inner": inner - wider, "light_enters_outer": outer + wider}


def _entry(targets: np.ndarray, top: Top, source: Source, index: float) -> tuple[np.ndarray, np.ndarray]:
    with np.errstate(invalid="ignore"):
        direction, _, _ = _aim(targets, top, source, index)
        return _enter(targets, top, direction, index)


def rib_width(path: PathSurvey) -> np.ndarray:
    """(n,) mm at the top; where the top has no flat, at half height."""
    width = np.asarray(path.columns["rib_width_top"], dtype=float)
    if "rib_width_mid" in path.columns:
        width = np.where(np.isfinite(width), width, np.asarray(path.columns["rib_width_mid"], dtype=float))
    return width


def _shadow(
    path: PathSurvey, share: np.ndarray, blockers: Sequence[tuple[str, int] | None], i: int, joint: Joint
) -> dict[str, Any]:
    """What stands in the light at one station."""
    blocker = blockers[i]
    return {
        "value": float(share[i]),
        "at": [float(c) for c in path.points[i]],
        "why": _who(blocker, joint),
        "faces": [] if blocker is None else [{"part": blocker[0], "face": blocker[1]}],
    }


def _shadows(
    path: PathSurvey, share: np.ndarray, blockers: Sequence[tuple[str, int] | None], joint: Joint
) -> list[dict[str, Any]]:
    """The darkest station of every stretch that one part shades, in order along the path."""
    owner = np.array([b[0] if b is not None and v < 1.0 else "" for b, v in zip(blockers, share, strict=True)])
    starts = np.flatnonzero(np.append(True, owner[1:] != owner[:-1]))
    runs = zip(starts, np.append(starts[1:], len(owner)), strict=True)
    darkest = [int(a + np.nanargmin(share[a:b])) for a, b in runs if owner[a]]
    return [_shadow(path, share, blockers, i, joint) for i in darkest]


@dataclass(frozen=True, slots=True, eq=False)
class Source:
    """Pivot (3,) mm, or None and a direction (3,) for parallel light."""

    pivot: np.ndarray | None
    direction: np.ndarray


def _source(joint: Joint, contour: Contour, scanner: Scanner, view: View, tops: dict[str, Top]) -> Source:
    if scanner.distance is None:
        return Source(None, joint.beam)
    centre = axis_of(joint, contour, scanner, view)
    heights = np.concatenate([view.local(top.place)[:, 2] for top in tops.values()])
    level = float(np.nanmedian(heights)) if np.isfinite(heights).any() else float("nan")
    return Source(view.world(np.array([*centre, level + scanner.distance])), joint.beam)


def axis_of(joint: Joint, contour: Contour, scanner: Scanner, view: View) -> np.ndarray:
    """(2,) the optical axis in the view: as given, else over the middle of the seam."""
    if scanner.axis is not None:
        return view.local(np.array(scanner.axis))[:2]
    return field_circle(Course.of(joint, contour, view).points[:, :2])[0]


def _zone_of_seam(joint: Joint, contour: Contour, view: View) -> np.ndarray:
    points = Course.of(joint, contour, view).points
    room = contour.rib_width + 20.0
    low, high = points.min(axis=0), points.max(axis=0)
    return np.concatenate([low - np.array([room, room, 2.0]), high + np.array([room, room, 1e6])])


def _tops(path: PathSurvey, joint: Joint, view: View, faces: FaceList, lit: Sheet) -> Top:
    """Where the light enters over the mid-line: the first light-side face over the rib's plastic."""
    n = len(path.s)
    thickness = np.asarray(path.columns["cover_thickness"], dtype=float)
    gap = np.nan_to_num(np.asarray(path.columns["gap"], dtype=float)) if joint.rib_on != "cover" else 0.0
    place = path.points + (thickness + gap)[:, None] * view.up
    normal = np.full((n, 3), np.nan)
    known = np.flatnonzero(np.isfinite(thickness))
    local = view.local(place[known])
    low, high = lit.boxes()
    tree = shapely.STRtree(shapely.box(low[:, 0] - 1e-6, low[:, 1] - 1e-6, high[:, 0] + 1e-6, high[:, 1] + 1e-6))
    index, facet = tree.query(shapely.points(local[:, :2]))
    off = np.abs(lit.height(facet, local[index, :2]) - local[index, 2])
    order = np.lexsort((facet, np.round(off, 6), index))
    for i in order:
        station = known[index[i]]
        if off[i] < _TOP and np.isnan(normal[station, 0]):
            normal[station] = _normal(faces, lit, int(facet[i]), view, place[station])
    return Top(np.where(np.isnan(normal), np.nan, place), normal)


def _normal(faces: FaceList, lit: Sheet, facet: int, view: View, place: np.ndarray) -> np.ndarray:
    """Exact unit normal of the top at a place: of its plane, else from three lines onto the exact face."""
    body, face = faces.bodies[lit.part[facet]], int(lit.face[facet])
    plane = body.planes[face, :3]
    if np.isfinite(plane).all():
        return np.asarray(plane)
    aside = 0.02
    points = []
    for x, y in ((-aside, -aside), (aside, -aside), (0.0, aside)):
        start = place + x * view.axes[0] + y * view.axes[1]
        hits = line_hits(body, face, start, view.up)
        if not len(hits):
            return np.asarray(lit.normal[facet] @ view.axes)
        points.append(start + hits[np.argmin(np.abs(hits))] * view.up)
    normal = np.cross(points[1] - points[0], points[2] - points[0])
    return np.asarray(normal / np.linalg.norm(normal))


def _aim(targets: np.ndarray, top: Top, source: Source, index: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Direction in air (n, 3), angle of incidence (n,) rad and way in the plastic (n,) mm to targets (n, 3)."""
    if source.pivot is not None:
        _, incidence, way, direction = entry_points(source.pivot, targets, top.place, top.normal, index)
        return direction, incidence, way
    direction = np.broadcast_to(source.direction, targets.shape)
    incidence = np.arccos(np.clip(-(direction * top.normal).sum(axis=1), -1.0, 1.0))
    _, way = _enter(targets, top, direction, index)
    return direction, incidence, way


def _enter(targets: np.ndarray, top: Top, direction: np.ndarray, index: float) -> tuple[np.ndarray, np.ndarray]:
    """Where rays of a direction in air (n, 3) enter the top so that they meet targets (n, 3), and the way on."""
    inside = refract(direction, top.normal, index)
    depth = ((targets - top.place) * top.normal).sum(axis=1)
    with np.errstate(invalid="ignore", divide="ignore"):
        way = depth / (inside * top.normal).sum(axis=1)
    return targets - way[:, None] * inside, way


def _chief(path: PathSurvey, top: Top, source: Source, joint: Joint, index: float) -> dict[str, np.ndarray]:
    with np.errstate(invalid="ignore"):
        ray, incidence, way = _aim(path.points, top, source, index)
        depth = ((top.place - path.points) * top.normal).sum(axis=1)
        return {
            "beam_angle": np.degrees(incidence),
            "spot_offset": cover_shift(incidence, depth, index),
            "spot_stretch": spot_stretch(incidence),
            "path_in_cover": way,
            "light_lean": np.degrees(np.arctan2(-(ray * path.u).sum(axis=1), ray @ joint.beam)),
        }


def _clear(
    path: PathSurvey, top: Top, source: Source, joint: Joint, scanner: Scanner, lit: Sheet, view: View,
    obstacles: _Obstacles,
) -> tuple[np.ndarray, list[tuple[str, int] | None], Shade]:  # fmt: skip
    """Share of the rays that arrive at every station, one face that stands in the way of others, and the shade."""
    n = len(path.s)
    width = rib_width(path)
    total, arrived = np.zeros(n), np.zeros(n)
    blocker: list[tuple[str, int] | None] = [None] * n
    known = np.flatnonzero(np.isfinite(top.normal[:, 0]) & np.isfinite(width))
    here = Top(top.place[known], top.normal[known])
    strips = []
    for third, across in enumerate(_ACROSS):
        rays, clear = 0, np.zeros(len(known))
        hit, stopper = np.full((len(known), 3), np.nan), np.full(len(known), "", dtype=object)
        targets = path.points[known] + (across * width[known] / 2)[:, None] * path.u[known]
        chief, _, _ = _aim(targets, here, source, scanner.index)
        for ray in _cone(chief, np.radians(scanner.half_angle)):
            entry, _ = _enter(targets, here, ray, scanner.index)
            sound = np.isfinite(entry).all(axis=1)
            blocked = np.ones(len(known), dtype=bool)
            reach = np.full(len(known), np.inf)
            if source.pivot is not None:
                reach = np.linalg.norm(source.pivot - entry, axis=1)
            on_top = _on_top(view.local(entry[sound]), lit)
            part, face, far = obstacles.first(view.local(entry[sound]), -ray[sound] @ view.axes.T, reach[sound])
            blocked[sound] = ~on_top | (part >= 0)
            for i, p, f in zip(known[sound][part >= 0], part[part >= 0], face[part >= 0], strict=True):
                blocker[i] = blocker[i] or (obstacles.ids[p], int(f))
            new = (part >= 0) & (stopper[sound] == "")
            rows = np.flatnonzero(sound)[new]
            hit[rows] = entry[rows] - far[new, None] * ray[rows]
            stopper[rows] = [obstacles.ids[p] for p in part[new]]
            total[known] += 1
            arrived[known] += ~blocked
            rays, clear = rays + 1, clear + ~blocked
        ends = width[known] * ((third - 1.5) / 3), width[known] * ((third - 0.5) / 3)
        strips.append(_dark(path, known, ends, clear / rays, hit, stopper, joint.beam))
    with np.errstate(invalid="ignore", divide="ignore"):
        return arrived / total, blocker, strips[0].joined(strips[1]).joined(strips[2])


def _dark(
    path: PathSurvey, stations: np.ndarray, ends: tuple[np.ndarray, np.ndarray], share: np.ndarray, hit: np.ndarray,
    part: np.ndarray, beam: np.ndarray,
) -> Shade:  # fmt: skip
    """Strips at stations (k,) with rays missing; hit (k, 3) in the model's coordinates, turned into the section's."""
    away = hit - path.points[stations]
    u = path.u[stations]
    place = np.column_stack([(away * u).sum(axis=1), -away @ beam, (away * np.cross(beam, u)).sum(axis=1)])
    dim = np.flatnonzero(share < 1.0 - 1e-9)
    low, high = ends
    return Shade(stations[dim], low[dim], high[dim], share[dim], place[dim], part[dim], np.ones(len(dim), dtype=bool))


def _cone(chief: np.ndarray, half_angle: float) -> list[np.ndarray]:
    """The middle ray and, for a cone, rays round its rim; each (n, 3) unit."""
    if half_angle <= 0:
        return [chief]
    seed = np.where(np.abs(chief[:, :1]) < 0.9, [[1.0, 0.0, 0.0]], [[0.0, 1.0, 0.0]])
    x = np.cross(chief, seed)
    x /= np.linalg.norm(x, axis=1, keepdims=True)
    y = np.cross(chief, x)
    angles = 2 * np.pi * np.arange(_RIM) / _RIM
    rim = [np.cos(half_angle) * chief + np.sin(half_angle) * (np.cos(a) * x + np.sin(a) * y) for a in angles]
    return [chief, *rim]


def _on_top(entry: np.ndarray, lit: Sheet) -> np.ndarray:
    """(n,) bool: whether entries (n, 3) in the view lie on a light-side face of the cover."""
    low, high = lit.boxes()
    tree = shapely.STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    index, facet = tree.query(shapely.points(entry[:, :2]))
    a, b, c = (lit.corners[facet, k, :2] for k in range(3))
    p = entry[index, :2]
    sides = [cross(b - a, p - a), cross(c - b, p - b), cross(a - c, p - c)]
    inside = np.all([side > -1e-4 for side in sides], axis=0)
    near = np.abs(lit.height(facet, p) - entry[index, 2]) < _TOP
    found = np.zeros(len(entry), dtype=bool)
    found[index[inside & near]] = True
    return found


class _Obstacles:
    """Facets of every part above the seam, meshed once where rays come near."""

    def __init__(self, joint: Joint, view: View) -> None:
        self.joint, self.view = joint, view
        self.ids = tuple(joint.bodies)
        boxes = np.array([body.box for body in joint.bodies.values()])
        local = view.boxes(boxes[np.isfinite(boxes).all(axis=1)])
        self.highest = float(local[:, 5].max())
        self.sheet: Sheet | None = None
        self.zone = np.array([np.inf, np.inf, np.inf, -np.inf, -np.inf, -np.inf])

    def first(self, start: np.ndarray, out: np.ndarray, reach: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Part (index, -1 for none) and face that each ray meets, and how far away (n,) mm, NaN for none.

        start, out : (n, 3) in the view; reach : (n,) mm
        """
        part, face, far = np.full(len(start), -1), np.full(len(start), -1), np.full(len(start), np.nan)
        with np.errstate(invalid="ignore", divide="ignore"):
            last = np.where(out[:, 2] > 1e-6, (self.highest - start[:, 2]) / out[:, 2], np.inf)
        last = np.minimum(np.minimum(last, reach), 1e4)
        going = np.flatnonzero(last > _OFF)
        if not len(going):
            return part, face, far
        begin, way = start[going] + _OFF * out[going], out[going] * (last[going] - _OFF)[:, None]
        sheet = self._near(begin, begin + way)
        if not len(sheet.face):
            return part, face, far
        low, high = sheet.boxes()
        tree = shapely.STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
        end = begin[:, :2] + way[:, :2]
        still = np.linalg.norm(way[:, :2], axis=1) < 1e-6
        end[still, 0] += 1e-6
        ray, facet = tree.query(shapely.linestrings(np.stack([begin[:, :2], end], axis=1)), predicate="intersects")
        t = _meet(begin[ray], way[ray], sheet.corners[facet])
        hit = np.isfinite(t)
        order = np.argsort(-t[hit], kind="stable")
        part[going[ray[hit][order]]] = sheet.part[facet[hit][order]]  # the nearest is written last
        face[going[ray[hit][order]]] = sheet.face[facet[hit][order]]
        far[going[ray[hit][order]]] = _OFF + t[hit][order] * (last[going[ray[hit][order]]] - _OFF)
        return part, face, far

    def _near(self, begin: np.ndarray, end: np.ndarray) -> Sheet:
        both = np.concatenate([begin, end])
        zone = np.concatenate([both.min(axis=0) - 0.5, both.max(axis=0) + 0.5])
        if self.sheet is None or (zone[:3] < self.zone[:3]).any() or (zone[3:] > self.zone[3:]).any():
            self.zone = np.concatenate([np.minimum(zone, self.zone)[:3], np.maximum(zone, self.zone)[3:]])
            self.zone += [-2.0, -2.0, 0.0, 2.0, 2.0, 2.0]
            self.sheet = FaceList.of(self.joint.bodies, self.view, None, self.zone).facets(self.view, None)
        return self.sheet


def _meet(start: np.ndarray, way: np.ndarray, corners: np.ndarray) -> np.ndarray:
    """(k,) share of the way at which each ray meets its facet, NaN where it does not (Möller and Trumbore)."""
    a, e1, e2 = corners[:, 0], corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    p = np.cross(way, e2)
    det = (e1 * p).sum(axis=1)
    with np.errstate(invalid="ignore", divide="ignore"):
        to = start - a
        u = (to * p).sum(axis=1) / det
        q = np.cross(to, e1)
        v = (way * q).sum(axis=1) / det
        t = (e2 * q).sum(axis=1) / det
        hit = (np.abs(det) > 1e-14) & (u >= -1e-9) & (v >= -1e-9) & (u + v <= 1 + 1e-9) & (t >= 0) & (t <= 1)
    return np.where(hit, t, np.nan)


def _who(blocker: tuple[str, int] | None, joint: Joint) -> str:
    if blocker is None:
        return ""
    return say("place.light", part=f"'{joint.parts[blocker[0]].name or blocker[0]}'")
