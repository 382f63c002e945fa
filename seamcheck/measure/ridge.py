"""What belongs to a weld rib: its top, its flanks and fillets, and what of its top was taken down."""

from __future__ import annotations

from collections import deque

import numpy as np
import shapely
from msgspec import Struct
from scipy.spatial import cKDTree
from shapely.geometry.base import BaseGeometry

from seamcheck.joint import Joint
from seamcheck.joint.facets import area_vectors, lengths
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at, tree_of
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet
from seamcheck.measure.table import Survey
from seamcheck.sections.face_gaps import Sheet
from seamcheck.sections.stretches import cell_lengths, weighted_median

_ASIDE = 2.0  # mm beside the rib top in which its flanks and fillets are looked for
_CLOSE, _EDGE = 0.05, 0.001  # mm: flanks that reach no further than this have nothing on them; room for rounding
_RINGS, _ALONG = 12, 120  # distances and places at which it is looked how far the flanks reach
_FAIR = 0.25  # share of one side of the rib from which on what stands there is flank, less is a feature on it
_STEEP = np.cos(np.radians(30.0))
_STEPS = 4  # faces one behind the other between the rib's top and the foot of its flank
_TAKEN = 0.02  # mm that the rib's top is narrower than the seam's median from which on something was taken off it
LOWERED = 0.6
"""Share of the rib's height: a face that lies higher than this, within the width that the rib has elsewhere, is the
rib's own, chamfered or lowered, and no floor beside it."""


def rib_faces(joint: Joint) -> np.ndarray:
    """Indices (k,) of the rib's faces: its top, then flanks and fillets down to the first face that is flat."""
    return ridge(joint.rib, joint.rib_faces, joint.frame.axes[2])


def ridge(body: Body, tops: tuple[int, ...], z: np.ndarray) -> np.ndarray:
    """Indices (k,) of a rib's top faces and of those below them, down to the first faces that lie as flat as the top.

    Notes
    -----
    Flat is what leans by less than 30 degrees against the mean normal of the top, so that the trap floor beside a rib
    on an inclined plane is a floor and no flank.
    """
    edges = {}
    by_edge: dict[int, list[int]] = {}
    near = _near_rib(body, tops)
    for face in near:
        edges[face] = body.edge_indices(face)
        for edge in edges[face]:
            by_edge.setdefault(edge, []).append(face)
    facets = body.facets(near, 0.05, 0.35)
    across = area_vectors(facets.corners) / 2
    area = np.bincount(facets.face, lengths(across), len(body.faces))
    normal = across[np.isin(facets.face, tops)].sum(axis=0)
    size = np.linalg.norm(normal)
    projected = np.bincount(facets.face, across @ (normal / size if size > 0.0 else z), len(body.faces))
    with np.errstate(invalid="ignore", divide="ignore"):
        flat = np.abs(projected / area) > _STEEP
    found = set(tops)
    todo = deque((face, 0) for face in tops)
    while todo:
        face, steps = todo.popleft()
        if steps == _STEPS:
            continue
        for edge in edges.get(face, ()):
            for neighbour in by_edge[edge]:
                if neighbour not in found and not flat[neighbour]:
                    found.add(neighbour)
                    todo.append((neighbour, steps + 1))
    return np.array(sorted(found))


def _near_rib(body: Body, tops: tuple[int, ...]) -> np.ndarray:
    own = body.boxes[list(tops)]
    around = np.concatenate([np.nanmin(own[:, :3], axis=0), np.nanmax(own[:, 3:], axis=0)])
    return np.flatnonzero(boxes_meet(body.boxes, around, _ASIDE))


def rib_reach(top: BaseGeometry, sheet: Sheet) -> float:
    """mm beside the rib's top that its flanks and fillets reach along most of it.

    Parameters
    ----------
    top : the rib's top in the view; sheet : facets of top, flanks and fillets

    Notes
    -----
    A gusset or a ramp on a flank reaches further than the flank does along the rest of the seam: what of it lies
    beyond is no rib, and stops the cover.
    """
    if not len(sheet.face):
        return 0.0
    corners = np.unique(sheet.corners[:, :, :2].reshape(-1, 2) @ [1.0, 1.0j])
    corners = np.column_stack([corners.real, corners.imag])
    close = top.buffer(_CLOSE, quad_segs=8)
    shapely.prepare(close)
    beyond = corners[~shapely.contains_xy(close, corners)]
    if not len(beyond):
        return _CLOSE
    ends = [shapely.get_coordinates(ring) for ring in shapely.get_parts(top.boundary)]
    border = shapely.STRtree(np.concatenate([shapely.linestrings(np.stack([e[:-1], e[1:]], axis=1)) for e in ends]))
    _, away = border.query_nearest(shapely.points(beyond), return_distance=True)
    furthest = min(float(away.max()), _ASIDE)
    low, high, tree = 0.0, furthest, tree_of(sheet.corners)
    for far in np.linspace(0.0, furthest, _RINGS + 1)[1:]:
        if not _is_covered(top, far, sheet, tree):
            high = far
            break
        low = far
    while high - low > _CLOSE / 4:
        middle = (low + high) / 2
        low, high = (middle, high) if _is_covered(top, middle, sheet, tree) else (low, middle)
    return high + _EDGE


def _is_covered(top: BaseGeometry, far: float, sheet: Sheet, tree: shapely.STRtree) -> bool:
    """Whether facets lie along a fair share of one of the lines that run round the top at a distance."""
    for line in shapely.get_parts(top.buffer(far, quad_segs=8).boundary):
        nodes = shapely.get_coordinates(line)
        s = np.append(0.0, np.cumsum(np.hypot(*np.diff(nodes, axis=0).T)))
        at = s[-1] * np.arange(_ALONG) / _ALONG
        xy = np.column_stack([np.interp(at, s, nodes[:, k]) for k in (0, 1)])
        _, on, _ = heights_at(xy, sheet.corners, tree)
        if len(np.unique(on)) >= _FAIR * _ALONG:
            return True
    return False


def missing_width(width: np.ndarray, median: float) -> np.ndarray:
    """(n,) mm by which the rib's top is narrower than the median of the seam: how much was chamfered or lowered."""
    off = median - np.asarray(width, dtype=float)
    return np.where(off > _TAKEN, off, 0.0)


class LoweredTop(Struct, frozen=True, eq=False):
    """Where the rib's top is narrower than elsewhere: what lies there, not far below it, is the rib's own.

    zone, holes : in the view; places : (n, 3) mm, stations in the view; depth : mm below the top that is the rib's own
    """

    zone: BaseGeometry
    holes: BaseGeometry
    places: np.ndarray
    depth: float

    @staticmethod
    def of(survey: Survey, view: Frame, holes: BaseGeometry) -> LoweredTop:
        """Between all stations at which the top is narrower than the seam's median, as wide as the rib is elsewhere."""
        weights = [cell_lengths(p.s, p.length, p.closed) for p in survey.paths]
        median, height = (
            weighted_median(np.concatenate([p.columns[key] for p in survey.paths]), np.concatenate(weights))
            for key in ("rib_width_top", "rib_height")
        )
        strips = []
        for path in survey.paths:
            off = missing_width(path.columns["rib_width_top"], median)
            off = _spread(off, path.closed)
            half = (np.nan_to_num(path.columns["rib_width_top"]) / 2 + off + _EDGE)[:, None]
            across, flat = path.u @ view.axes[:2].T, view.local(path.points)[:, :2]
            low, high = flat - half * across, flat + half * across
            ahead = np.arange(1, len(flat) + path.closed) % len(flat)
            here = np.arange(len(ahead))
            use = np.flatnonzero((off[here] > 0) | (off[ahead] > 0))
            corners = [low[here[use]], high[here[use]], high[ahead[use]], low[ahead[use]]]
            strips.append(shapely.convex_hull(shapely.multipoints(np.stack(corners, axis=1))))
        places = np.concatenate([view.local(path.points) for path in survey.paths])
        return LoweredTop(shapely.union_all([*np.concatenate(strips), holes]), holes, places, LOWERED * height)

    def holds(self, sheet: Sheet) -> np.ndarray:
        """(m,) bool: facets that meet the zone and lie wholly between the top and the depth; in holes at any depth."""
        found = np.zeros(len(sheet.face), dtype=bool)
        if self.zone.is_empty or not np.isfinite(self.depth):
            return found
        shapely.prepare(self.zone)
        near = np.flatnonzero(shapely.intersects(self.zone, sheet.triangles(np.zeros(2))))
        corners = sheet.corners[near].reshape(-1, 3)
        _, station = cKDTree(self.places[:, :2]).query(corners[:, :2])
        off = np.abs(corners[:, 2] - self.places[station, 2]).reshape(-1, 3).max(axis=1)
        found[near] = off < self.depth
        inner = shapely.buffer(self.holes, _EDGE)
        found[near] |= shapely.covers(inner, sheet.triangles(np.zeros(2))[near])
        return found


def _spread(off: np.ndarray, closed: bool) -> np.ndarray:
    """(n,) the largest of each value and its neighbours: between two stations the larger one holds."""
    ends = (off[-1:], off[:1]) if closed else (off[:1], off[-1:])
    wide = np.concatenate([ends[0], off, ends[1]])
    return np.asarray(np.maximum(np.maximum(wide[:-2], wide[1:-1]), wide[2:]))
