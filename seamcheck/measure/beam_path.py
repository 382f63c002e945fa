"""The path of a scanner's beam into the cover: source, the cover's top over the seam, refraction there (Snell)."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.facets import cross, spans
from seamcheck.joint.frame import Frame
from seamcheck.kernel.distance import line_hits
from seamcheck.measure.material.optics import entry_points, refract
from seamcheck.measure.path import Course, field_circle
from seamcheck.measure.table import PathSurvey, Survey, rib_width
from seamcheck.sections.face_gaps import FaceList, Sheet
from seamcheck.settings.tables import Light, Scanner

SIDES = {"inner": -1.0, "outer": 1.0}
"""Side of the mid-line -> its direction along u."""

_TOP = 0.02  # mm: how far the entry may lie off the cover's top face


class Top(Struct, frozen=True, eq=False):
    """The cover's top over stations: place (n, 3) and normal (n, 3) in the model's coordinates, NaN for none."""

    place: np.ndarray
    normal: np.ndarray


class Source(Struct, frozen=True, eq=False):
    """Pivot (3,) mm, or None and a direction (3,) for a parallel beam."""

    pivot: np.ndarray | None
    direction: np.ndarray


class Entries(Struct, frozen=True, eq=False):
    """Where both edges of the beam enter the cover on their way to the level of the rib top.

    inner, outer : (n, 3) mm, NaN where it is not known; way : (n,) mm in the plastic, the longer one; width : (n,) mm
    of the light at the level of the rib's top, in the section; spread : mm by which the beam's cone widens to each
    side for each mm of its way in the plastic
    """

    inner: np.ndarray
    outer: np.ndarray
    way: np.ndarray
    width: np.ndarray
    spread: float = 0.0

    def columns(self, path: PathSurvey) -> dict[str, np.ndarray]:
        """Columns (n,), mm from P along u: where both edges of the beam, cone included, enter the cover; its width."""
        inner, outer = (((x - path.points) * path.u).sum(axis=1) for x in (self.inner, self.outer))
        wider = self.way * self.spread
        return {"light_enters_inner": inner - wider, "light_enters_outer": outer + wider, "light_width": self.width}


def entries(joint: Joint, contour: Contour, survey: Survey, given: Light) -> dict[str, Entries]:
    """Entries of every path: each station by its own thickness, its own top and the tilt of that top."""
    view, scanner = joint.view, given.scanner
    if scanner is None:
        return {path.id: _straight(path, joint, view, given.spot) for path in survey.paths}
    _, tops, source = lighting(joint, contour, survey, scanner, view)
    return {path.id: _entries(path, tops[path.id], source, joint, given, scanner) for path in survey.paths}


def _straight(path: PathSurvey, joint: Joint, view: Frame, spot: float | None) -> Entries:
    """Entries of a parallel beam."""
    width = rib_width(path) if spot is None else np.full(len(path.s), spot)
    depth = through(path, joint.rib_on)
    up = path.points + depth[:, None] * view.up
    return Entries(up - width[:, None] / 2 * path.u, up + width[:, None] / 2 * path.u, depth, width)


def _entries(path: PathSurvey, top: Top, source: Source, joint: Joint, given: Light, scanner: Scanner) -> Entries:
    """Entries of a scanner's light."""
    width = light_width(path, top, source, joint, given)
    (inner, way), (outer, other) = (
        _entry(path.points + side * width[:, None] / 2 * path.u, top, source, given.index) for side in SIDES.values()
    )
    return Entries(inner, outer, np.fmax(way, other), width, spread(scanner, given.index))


def light_width(path: PathSurvey, top: Top, source: Source, joint: Joint, given: Light) -> np.ndarray:
    """(n,) mm, width of the beam at the rib top in the section; NaN where no ray meets P; the rib's without a spot.

    A spot of width d that arrives at an angle is an ellipse there, its width in the section d / cos of the light's
    lean in the section.
    """
    if given.spot is None:
        return rib_width(path)
    with np.errstate(invalid="ignore"):
        ray, _, _ = aim(path.points, top, source, given.index)
        lean = (ray * path.u).sum(axis=1) / (ray @ joint.beam)
    return np.asarray(given.spot * np.sqrt(1.0 + lean**2))


def through(path: PathSurvey, rib_on: str) -> np.ndarray:
    """(n,) mm from P up to the cover's top: its plastic, and the gap below it."""
    depth = np.asarray(path.columns["cover_thickness"], dtype=float)
    return depth if rib_on == "cover" else depth + np.maximum(np.nan_to_num(path.columns["gap"]), 0.0)


def lighting(
    joint: Joint, contour: Contour, survey: Survey, scanner: Scanner, view: Frame
) -> tuple[Sheet, dict[str, Top], Source]:
    """Facets of the cover that face the light, its top over every path, and where the beam comes from."""
    cover = {i: joint.bodies[i] for i in joint.cover}
    faces = FaceList.of(cover, view, 1.0, _zone_of_seam(joint, contour, view))
    lit = faces.facets(view, 1.0)
    tops = {path.id: _tops(path, joint, view, faces, lit) for path in survey.paths}
    return lit, tops, _source(joint, contour, scanner, view, tops)


def _entry(targets: np.ndarray, top: Top, source: Source, index: float) -> tuple[np.ndarray, np.ndarray]:
    with np.errstate(invalid="ignore"):
        direction, _, _ = aim(targets, top, source, index)
        return enter(targets, top, direction, index)


def spread(scanner: Scanner, index: float) -> float:
    """mm by which the beam's cone widens to each side for each mm of its way in the plastic."""
    return float(np.tan(np.arcsin(np.sin(np.radians(scanner.half_angle)) / index)))


def _source(joint: Joint, contour: Contour, scanner: Scanner, view: Frame, tops: dict[str, Top]) -> Source:
    """Where the scanner's beam comes from: its pivot at the working distance above the cover's top, or parallel."""
    if scanner.distance is None:
        return Source(None, joint.beam)
    centre = axis_of(joint, contour, scanner, view)
    heights = np.concatenate([view.local(top.place)[:, 2] for top in tops.values()])
    level = float(np.nanmedian(heights)) if np.isfinite(heights).any() else float("nan")
    return Source(view.world(np.array([*centre, level + scanner.distance])), joint.beam)


def axis_of(joint: Joint, contour: Contour, scanner: Scanner, view: Frame) -> np.ndarray:
    """(2,) mm, the optical axis in the view: as given, else over the middle of the seam."""
    if scanner.axis is not None:
        return view.local(np.array(scanner.axis))[:2]
    return field_circle(Course.of(joint, contour, view).points[:, :2])[0]


def _zone_of_seam(joint: Joint, contour: Contour, view: Frame) -> np.ndarray:
    """(6,) mm in the view: box of the seam, with 20 mm round it and everything above."""
    return zone_of(Course.of(joint, contour, view).points, contour.rib_width + 20.0)


def zone_of(points: np.ndarray, room: float) -> np.ndarray:
    """(6,) mm in the view: box of points (n, 3) in it, with room (mm) beside, 2 mm more below, and all above."""
    low, high = points.min(axis=0), points.max(axis=0)
    return np.concatenate([low - np.array([room, room, 2.0]), high + np.array([room, room, 1e6])])


def _tops(path: PathSurvey, joint: Joint, view: Frame, faces: FaceList, lit: Sheet) -> Top:
    """Where the beam enters over the mid-line: the first top face over the rib's plastic."""
    thickness = np.asarray(path.columns["cover_thickness"], dtype=float)
    gap = np.nan_to_num(np.asarray(path.columns["gap"], dtype=float)) if joint.rib_on != "cover" else 0.0
    place = path.points + (thickness + gap)[:, None] * view.up
    return top_near(place, view, faces, lit)


def top_near(place: np.ndarray, view: Frame, faces: FaceList, lit: Sheet) -> Top:
    """The cover's top at places (n, 3) mm within 0.02 mm of it, with its exact normals; NaN where it is further."""
    normal = np.full((len(place), 3), np.nan)
    known = np.flatnonzero(np.isfinite(place[:, 2]))
    local = view.local(place[known])
    low, high = lit.boxes()
    tree = shapely.STRtree(spans(low - 1e-6, high + 1e-6))
    index, facet = tree.query(shapely.points(local[:, :2]))
    off = np.abs(lit.height(facet, local[index, :2]) - local[index, 2])
    order = np.lexsort((facet, np.round(off, 6), index))
    for i in order:
        station = known[index[i]]
        if off[i] < _TOP and np.isnan(normal[station, 0]):
            normal[station] = _normal(faces, lit, int(facet[i]), view, place[station])
    return Top(np.where(np.isnan(normal), np.nan, place), normal)


def _normal(faces: FaceList, lit: Sheet, facet: int, view: Frame, place: np.ndarray) -> np.ndarray:
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


def aim(targets: np.ndarray, top: Top, source: Source, index: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Direction in air (n, 3), angle of incidence (n,) rad and way in the plastic (n,) mm to targets (n, 3)."""
    if source.pivot is not None:
        _, incidence, way, direction = entry_points(source.pivot, targets, top.place, top.normal, index)
        return direction, incidence, way
    direction = np.broadcast_to(source.direction, targets.shape)
    incidence = np.arccos(np.clip(-(direction * top.normal).sum(axis=1), -1.0, 1.0))
    _, way = enter(targets, top, direction, index)
    return direction, incidence, way


def enter(targets: np.ndarray, top: Top, direction: np.ndarray, index: float) -> tuple[np.ndarray, np.ndarray]:
    """Where rays enter the top, (n, 3) mm, and their length in the plastic, (n,) mm.

    Parameters
    ----------
    targets : (n, 3) mm, what the refracted rays meet
    direction : (n, 3) unit vectors in air
    index : refractive index of the cover

    NaN or infinite where a refracted ray runs along the top.
    """
    inside = refract(direction, top.normal, index)
    depth = ((targets - top.place) * top.normal).sum(axis=1)
    with np.errstate(invalid="ignore", divide="ignore"):
        way = depth / (inside * top.normal).sum(axis=1)
    return targets - way[:, None] * inside, way


def is_on_top(entry: np.ndarray, lit: Sheet) -> np.ndarray:
    """(n,) bool: whether entries (n, 3) in the view lie on a top face of the cover."""
    low, high = lit.boxes()
    tree = shapely.STRtree(spans(low, high))
    index, facet = tree.query(shapely.points(entry[:, :2]))
    a, b, c = (lit.corners[facet, k, :2] for k in range(3))
    p = entry[index, :2]
    sides = [cross(b - a, p - a), cross(c - b, p - b), cross(a - c, p - c)]
    inside = np.all([side > -1e-4 for side in sides], axis=0)
    near = np.abs(lit.height(facet, p) - entry[index, 2]) < _TOP
    found = np.zeros(len(entry), dtype=bool)
    found[index[inside & near]] = True
    return found
