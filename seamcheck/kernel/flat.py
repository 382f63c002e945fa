"""Triangles of planar faces with many outlines, from the outlines alone.

The kernel's mesher takes time with the square of the outlines of a face: 28 s for a floor with 1 000 holes,
where the constrained Delaunay triangulation of GEOS takes 0.4 s.
"""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from shapely import Polygon

_SAME = 7  # decimals of a mm to which shared corners of edges agree
_DENSE = 300  # nodes of a border from which a core is left out of the triangles along it
_BAND = 6.0  # mm
_AREA = 1e-9  # share of a face's area by which its triangles may differ from it


def triangles_of(lines: list[np.ndarray], plane: np.ndarray, outlines: int, core: bool = True) -> np.ndarray | None:
    """Triangulate a planar face.

    Parameters
    ----------
    lines : edges of the face, (k, 3) mm each, in any order and direction
    plane : (4,) outward unit normal and offset, n . x = d
    outlines : how many closed lines the edges make
    core : whether a region with a dense border is divided, see ``_core``; a picture needs none

    Returns
    -------
    (m, 3, 3) corners, mm, outward by the right hand; None where the outlines are no sound polygon with holes
    """
    x, y = _axes(plane[:3])
    flat = [np.round(np.column_stack([line @ x, line @ y]), _SAME) for line in lines]
    nodes = _Nodes.of(np.concatenate(flat), np.concatenate(lines))
    flat = [line[np.append(True, (np.diff(line, axis=0) != 0).any(axis=1))] for line in flat]
    merged = shapely.line_merge(shapely.multilinestrings([shapely.linestrings(line) for line in flat if len(line) > 1]))
    rings = [shapely.get_coordinates(ring) for ring in shapely.get_parts(merged) if shapely.is_closed(ring)]
    if len(rings) != outlines or any(len(ring) < 4 for ring in rings):
        return None
    rings.sort(key=lambda ring: -float(np.prod(np.ptp(ring, axis=0))))
    region = Polygon(rings[0], rings[1:])
    if not shapely.is_valid(region):
        return None
    middle = _core(region) if core else shapely.MultiPolygon()
    inner = shapely.get_coordinates(middle)
    nodes = nodes.and_more(inner, inner[:, :1] * x + inner[:, 1:] * y + plane[3] * plane[:3])
    regions = [region] if middle.is_empty else [shapely.difference(region, middle), middle]
    corners = shapely.get_coordinates(shapely.get_parts(shapely.constrained_delaunay_triangles(regions)))
    corners = corners.reshape(-1, 4, 2)[:, :3]
    ab, ac = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    doubled = ab[:, 0] * ac[:, 1] - ab[:, 1] * ac[:, 0]
    if abs(np.abs(doubled).sum() / 2 - region.area) > _AREA * region.area:
        return None
    corners[doubled < 0] = corners[doubled < 0][:, ::-1]
    return nodes.at(corners)


def _core(region: Polygon) -> shapely.MultiPolygon:
    """What lies further than a band's width inside a region with a dense border; empty where there is no use for it.

    Without it the triangles between the nodes of a long curved border are splinters that reach across the whole face:
    each comes into question in a hundred sections.
    """
    if shapely.get_num_coordinates(region) < _DENSE:
        return shapely.MultiPolygon()
    core = region.buffer(-_BAND, quad_segs=2).simplify(_BAND / 6)
    parts = [part for part in shapely.get_parts(shapely.transform(core, lambda at: np.round(at, _SAME))) if part.area]
    found = shapely.MultiPolygon(parts)
    inside = found.is_valid and shapely.distance(found, region.boundary) > _BAND / 2
    return found if parts and inside else shapely.MultiPolygon()


Corner = tuple[float, ...]


def ring_of(lines: list[tuple[Corner, Corner]]) -> list[Corner] | None:
    """The corners that straight lines lead through, one after the other; None where they make no single ring."""
    (first, at), *rest = lines
    ring = [first]
    while rest:
        ring.append(at)
        ahead = next((line for line in rest if at in line), None)
        if ahead is None:
            return None
        rest.remove(ahead)
        at = ahead[1] if ahead[0] == at else ahead[0]
    return ring if at == first else None


def fan(ring: list[Corner], normal: list[float]) -> np.ndarray | None:
    """Triangles (m, 3, 3), mm, outward, of a convex face with m + 2 corners; None of one that is not convex.

    Parameters
    ----------
    ring : (k,) the corners, mm, in order, either way round; normal : (3,) its outward unit vector
    """
    turns = []
    for before, here, after in zip([ring[-1], *ring[:-1]], ring, [*ring[1:], ring[0]], strict=True):
        a, b, c = (x - y for x, y in zip(here, before, strict=True))
        d, e, f = (x - y for x, y in zip(after, here, strict=True))
        turns.append((b * f - c * e) * normal[0] + (c * d - a * f) * normal[1] + (a * e - b * d) * normal[2])
    if min(turns) <= 0.0 <= max(turns):
        return None
    corners = np.array(ring if turns[0] > 0.0 else ring[::-1])
    return corners[[(0, k, k + 1) for k in range(1, len(ring) - 1)]]


class _Nodes(Struct, frozen=True, eq=False):
    """Where the nodes of the plane lie in space, so that faces side by side share theirs to the last digit.

    flat (n,) complex, ascending; points (n, 3) mm
    """

    flat: np.ndarray
    points: np.ndarray

    def and_more(self, flat: np.ndarray, points: np.ndarray) -> _Nodes:
        known = np.column_stack([self.flat.real, self.flat.imag])
        return _Nodes.of(np.concatenate([known, flat]), np.concatenate([self.points, points]))

    @staticmethod
    def of(flat: np.ndarray, points: np.ndarray) -> _Nodes:
        known, first = np.unique(flat[:, 0] + 1j * flat[:, 1], return_index=True)
        return _Nodes(known, points[first])

    def at(self, flat: np.ndarray) -> np.ndarray:
        """(..., 3) of places (..., 2) that are nodes."""
        return self.points[np.searchsorted(self.flat, flat[..., 0] + 1j * flat[..., 1])]


def _axes(normal: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Two unit vectors that make a right-handed frame with the normal."""
    seed = np.eye(3)[int(np.argmin(np.abs(normal)))]
    x = np.cross(seed, normal)
    x /= np.linalg.norm(x)
    return x, np.cross(normal, x)
