"""The facets that the sections need: finely meshed near the seam, nothing far from it."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import Contour, Path
from seamcheck.joint import Joint
from seamcheck.joint.facets import bounds_of
from seamcheck.joint.light import flat_boxes
from seamcheck.kernel import Body
from seamcheck.sections.slices import BASE, COVER, OTHER, Soup

DEFLECTION = 0.001  # mm, chord error of the facets in the sections
_ANGLE = 0.3  # radians
_TALL = 100.0  # mm
_MOST_TIMES = 10.0
_SIMPLER, _QUADS = 0.05, 4  # share of the reach by which lines are simplified; segments in a quarter of an arc
_MANY, _SMALL = 5000, 2.0  # facets; mm
_MANY_BOXES, _SQUARES = 2000, 32  # boxes; squares to a side of the grid that sorts out most of them
_EDGE = 1e-6  # of a square, by which a box counts as reaching further
_BELOW = 1.0  # mm below the lowest node of the centre line that no station's rib top reaches


def near_facets(joint: Joint, contour: Contour, reach: float, light: float) -> Soup:
    """Facets of cover and base within reach of the centre line, and of other parts right over or under the light.

    Parameters
    ----------
    reach : mm, to both sides of the centre line, seen along the press direction
    light : mm, how far the light reaches to both sides; other parts are considered that far, at least a rib width
    """
    return _facets(joint, contour, reach, -np.inf, light)


def light_facets(joint: Joint, contour: Contour, reach: float, level: float) -> Soup:
    """The same, without faces that lie wholly below the rib's top: what is measured beside the cover's top.

    Parameters
    ----------
    level : mm against the beam, below which the rib's top lies nowhere: of other parts than the cover what lies wholly
        below is left out, too
    """
    lowest = min(float((joint.up * path.points[:, 2]).min()) for path in contour.paths)
    return _facets(joint, contour, reach, lowest - _BELOW, 0.0, level)


def _facets(joint: Joint, contour: Contour, reach: float, lowest: float, light: float, level: float = -np.inf) -> Soup:
    lines = [path_line(path) for path in contour.paths]
    wide = zone_around(lines, reach)
    room = zone_around(lines, 1.05 * reach + 0.1)  # beyond every place that is measured: there holes may be filled
    narrow = zone_around(lines, max(contour.rib_width, light))
    corners, owners, faces = [np.empty((0, 3, 3))], [np.empty(0, dtype=int)], [np.empty(0, dtype=int)]
    roles = {joint.rib_part: BASE if joint.up > 0 else COVER, joint.counter_part: COVER if joint.up > 0 else BASE}
    for part, body in joint.bodies.items():
        owner = roles.get(part, OTHER)
        near = _faces_within(body, wide if owner != OTHER else narrow, joint)
        level_of_part = -np.inf if owner == COVER else level
        near = near[_rises_to(body.boxes[near], joint) > max(lowest, level_of_part - _BELOW)]
        if not len(near):
            continue
        for some, deflection in _by_fineness(body, near, owner, joint):
            facets = body.facets(some, deflection, _ANGLE, lambda boxes: boxes_within(boxes, room, joint))
            local = joint.frame.local(facets.corners)
            low, high = bounds_of(local[:, :, 2:])
            kept = (high if joint.up > 0 else -low)[:, 0] > level_of_part
            if len(local) > _MANY:
                kept &= _reach_into(room, local)
            corners.append(local[kept])
            owners.append(np.full(np.count_nonzero(kept), owner))
            faces.append(facets.face[kept])
    return Soup.of(np.concatenate(corners), np.concatenate(owners), np.concatenate(faces))


def _reach_into(zone: BaseGeometry, corners: np.ndarray) -> np.ndarray:
    """(m,) bool: False for small facets (m, 3, 3) outside of a zone, such as those of a dome far from its edge."""
    wider = zone.buffer(_SMALL, quad_segs=_QUADS)
    shapely.prepare(wider)
    low, high = bounds_of(corners[:, :, :2])
    middle, size = (corners[:, 0, :2] + corners[:, 1, :2] + corners[:, 2, :2]) / 3, (high - low).max(axis=1)
    return np.asarray((size > _SMALL) | shapely.contains_xy(wider, middle))


def _rises_to(boxes: np.ndarray, joint: Joint) -> np.ndarray:
    """(n,) mm: how far boxes (n, 6) reach against the beam, in the press frame."""
    middle = joint.frame.local((boxes[:, :3] + boxes[:, 3:]) / 2)[:, 2]
    return np.asarray(joint.up * middle + ((boxes[:, 3:] - boxes[:, :3]) / 2) @ np.abs(joint.frame.axes[2]))


def zone_around(lines: Sequence[np.ndarray], reach: float) -> BaseGeometry:
    """Polygons that hold every place within reach of some lines, and little more.

    Parameters
    ----------
    lines : (n, 2) mm each; reach : mm

    Notes
    -----
    The lines are simplified first: a buffer costs by the square of its nodes where these lie closer than its radius,
    and lines along the middle of a broad, ragged contact have thousands. What that may take away is added to the
    reach (the Hausdorff distance of a simplified line is its tolerance), and so is what the chords of the arcs cut off.
    """
    least = reach * _SIMPLER
    simple = shapely.simplify([shapely.LineString(line) for line in lines], least, preserve_topology=False)
    return shapely.union_all(shapely.buffer(simple, (reach + least) / np.cos(np.pi / (4 * _QUADS)), quad_segs=_QUADS))


def _by_fineness(body: Body, faces: np.ndarray, owner: int, joint: Joint) -> list[tuple[np.ndarray, float]]:
    """Faces with the chord error they need.

    Free-form ones, which mesh into far more facets, get twice as much, and so do planes beside them, so that both
    meet; walls that reach far beyond any rib along the light, as much more as they are higher than _TALL.
    """
    if owner == OTHER:
        return [(faces, 0.02)]
    boxes = body.boxes[faces]
    is_free = body.is_free_form[faces] | body.beside_free_form(faces)
    height = np.nan_to_num((boxes[:, 3:] - boxes[:, :3]) @ np.abs(joint.frame.axes[2]))
    times = np.clip(np.ceil(height / _TALL), 1.0, _MOST_TIMES) * np.where(is_free, 2.0, 1.0)
    return [(faces[times == some], DEFLECTION * some) for some in np.unique(times).tolist()]


def path_line(path: Path) -> np.ndarray:
    """(n, 2) mm, line of a path; a loop returns to its start."""
    flat = path.points[:, :2]
    return np.vstack([flat, flat[:1]]) if path.closed else flat


def _faces_within(body: Body, zone: BaseGeometry, joint: Joint) -> np.ndarray:
    if not np.isfinite(body.box).all():
        return np.empty(0, dtype=int)
    low, high = flat_boxes(body.box[None], joint.frame)
    if not shapely.box(*low[0], *high[0]).intersects(zone):
        return np.empty(0, dtype=int)
    return boxes_within(body.boxes, zone, joint)


def boxes_within(boxes: np.ndarray, zone: BaseGeometry, joint: Joint) -> np.ndarray:
    """Numbers of the boxes (n, 6) mm that meet a zone, seen along the press direction."""
    low, high = flat_boxes(boxes, joint.frame)
    sound = np.flatnonzero(np.isfinite(low).all(axis=1) & np.isfinite(high).all(axis=1))
    if len(sound) > _MANY_BOXES:
        sound = sound[_over_squares(zone, low[sound], high[sound])]
    shapely.prepare(zone)
    outlines = shapely.box(low[sound, 0], low[sound, 1], high[sound, 0], high[sound, 1])
    return np.asarray(sound[shapely.intersects(zone, outlines)])


def _over_squares(zone: BaseGeometry, low: np.ndarray, high: np.ndarray) -> np.ndarray:
    """(n,) bool: False for boxes, low to high (n, 2) mm, that lie beside all squares of a grid that a zone meets."""
    if zone.is_empty:
        return np.zeros(len(low), dtype=bool)
    bounds = np.array(zone.bounds).reshape(2, 2)
    size = (bounds[1] - bounds[0]) / _SQUARES
    x, y = (bounds[0, axis] + size[axis] * np.arange(_SQUARES + 1) for axis in (0, 1))
    taken = shapely.intersects(zone, shapely.box(x[:-1, None], y[:-1], x[1:, None], y[1:]))
    before = np.zeros((_SQUARES + 1, _SQUARES + 1), dtype=int)  # taken squares below and left of each corner
    before[1:, 1:] = taken.cumsum(axis=0).cumsum(axis=1)
    first = np.clip(np.floor((low - bounds[0]) / size - _EDGE), 0, _SQUARES).astype(int)
    last = np.clip(np.floor((high - bounds[0]) / size + _EDGE) + 1, 0, _SQUARES).astype(int)
    right, top = last.T
    left, bottom = np.minimum(first, last).T
    return np.asarray(before[right, top] - before[left, top] - before[right, bottom] + before[left, bottom] > 0)
