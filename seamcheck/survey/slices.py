"""Cutting facets by the section planes of all stations at once."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

BASE, COVER, OTHER = 0, 1, 2  # owners of a facet
_NARROW = 0.5  # mm
_PLUMB = 5e-4  # mean of the facets' normals along z below which (0.03 degrees) a face is upright


@dataclass(frozen=True, slots=True, eq=False)
class Soup:
    """Facets near the seam, in the press frame.

    corners (m, 3, 3) mm; normal (m, 3) unit, outward; owner (m,) BASE, COVER or OTHER; face (m,) index
    """

    corners: np.ndarray
    normal: np.ndarray
    owner: np.ndarray
    face: np.ndarray

    @staticmethod
    def of(corners: np.ndarray, owner: np.ndarray, face: np.ndarray) -> Soup:
        across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        length = np.linalg.norm(across, axis=1)
        keep = length > 1e-12
        normal = across[keep] / length[keep, None]
        return Soup(corners[keep], _plumb(normal, length[keep], owner[keep], face[keep]), owner[keep], face[keep])


def _plumb(normal: np.ndarray, area: np.ndarray, owner: np.ndarray, face: np.ndarray) -> np.ndarray:
    """Normals whose component along z is 0 on every facet of a face that is upright as a whole.

    The facets of an upright free-form face tilt by their chord error to both sides; a draft tilts all to one.
    """
    _, place = np.unique(np.stack([owner, face]), axis=1, return_inverse=True)
    place = place.ravel()
    total = np.bincount(place, weights=area)
    mean = np.bincount(place, weights=area * normal[:, 2]) / total
    size = np.bincount(place, weights=area * np.abs(normal[:, 2])) / total
    upright = (np.abs(mean) < _PLUMB) & (size < 10 * _PLUMB)
    out = normal.copy()
    out[upright[place], 2] = 0.0
    return out


@dataclass(frozen=True, slots=True, eq=False)
class Segments:
    """Cut lines of all stations; u ascends along each.

    station (k,) index, ascending; u0, w0, u1, w1 (k,) mm in the station's plane, w along the frame's z;
    nu, nw (k,) components of the facet's outward normal; owner (k,); face (k,)
    """

    station: np.ndarray
    u0: np.ndarray
    w0: np.ndarray
    u1: np.ndarray
    w1: np.ndarray
    nu: np.ndarray
    nw: np.ndarray
    owner: np.ndarray
    face: np.ndarray

    def where(self, mask: np.ndarray) -> Segments:
        return Segments(*(getattr(self, name)[mask] for name in self.__slots__))

    def joined(self, other: Segments, stations: int, order: np.ndarray) -> Segments:
        """The lines of further stations among these.

        Parameters
        ----------
        stations : how many these are; order (n,) : of these and then the further ones, as they stand afterwards
        """
        place = np.empty(len(order), dtype=np.int64)
        place[order] = np.arange(len(order))
        station = place[np.concatenate([self.station, other.station + stations])]
        sorting = np.argsort(station, kind="stable")
        rest = (np.concatenate([getattr(self, n), getattr(other, n)])[sorting] for n in self.__slots__[1:])
        return Segments(station[sorting], *rest)


def box_tree(soup: Soup) -> shapely.STRtree:
    """Boxes of facets, seen along z, to be found by place."""
    low, high = soup.corners[:, :, :2].min(axis=1) - 1e-6, soup.corners[:, :, :2].max(axis=1) + 1e-6
    return shapely.STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))


def cut(soup: Soup, points: np.ndarray, u: np.ndarray, reach: float, tree: shapely.STRtree | None = None) -> Segments:
    """Cut all facets by the planes through points spanned by u and z.

    Parameters
    ----------
    points : (n, 2) mm; u : (n, 2) unit vectors; reach : mm, how far to both sides
    tree : of the soup, where it is cut more than once

    Notes
    -----
    A corner that lies in the plane counts as before it, so each facet is cut in two edges or in none.
    """
    flat = soup.corners[:, :, :2]
    station, facet = _near(tree or box_tree(soup), len(flat), points, u, reach)
    t = np.column_stack([-u[:, 1], u[:, 0]])[station]
    offset = flat[facet] - points[station][:, None, :]
    d = np.einsum("kij,kj->ki", offset, t)
    ahead = d > 0
    crosses = ahead.any(axis=1) & ~ahead.all(axis=1)
    station, facet, d, offset, ahead = (x[crosses] for x in (station, facet, d, offset, ahead))
    across = np.einsum("kij,kj->ki", offset, u[station])
    height = soup.corners[facet, :, 2]
    ends_u, ends_w = np.empty((len(d), 2)), np.empty((len(d), 2))
    filled = np.zeros(len(d), dtype=int)
    for a, b in ((0, 1), (1, 2), (2, 0)):
        here = np.flatnonzero(ahead[:, a] != ahead[:, b])
        part = d[here, a] / (d[here, a] - d[here, b])
        ends_u[here, filled[here]] = across[here, a] + part * (across[here, b] - across[here, a])
        ends_w[here, filled[here]] = height[here, a] + part * (height[here, b] - height[here, a])
        filled[here] += 1
    swap = ends_u[:, 0] > ends_u[:, 1]
    ends_u[swap], ends_w[swap] = ends_u[swap][:, ::-1], ends_w[swap][:, ::-1]
    near = (ends_u[:, 1] >= -reach) & (ends_u[:, 0] <= reach)
    order = np.flatnonzero(near)[np.argsort(station[near], kind="stable")]
    normal = soup.normal[facet[order]]
    return Segments(
        station[order],
        ends_u[order, 0],
        ends_w[order, 0],
        ends_u[order, 1],
        ends_w[order, 1],
        np.einsum("ki,ki->k", normal[:, :2], u[station[order]]),
        normal[:, 2],
        soup.owner[facet[order]],
        soup.face[facet[order]],
    )


def _near(
    tree: shapely.STRtree, facets: int, points: np.ndarray, u: np.ndarray, reach: float
) -> tuple[np.ndarray, np.ndarray]:
    """Pairs of station and facet whose boxes meet, ascending.

    The line of a station that runs askew to the frame is taken in pieces, so that its boxes stay narrow: a share
    of _NARROW mm; one along an axis, as most are, is one piece.
    """
    count = np.maximum(1, np.ceil(2.0 * reach * np.abs(u).min(axis=1) / _NARROW)).astype(int)
    station = np.repeat(np.arange(len(points)), count)
    piece = np.arange(len(station)) - np.repeat(np.cumsum(count) - count, count)
    length = (2.0 * reach / count)[station]
    first = points[station] + (length * piece - reach)[:, None] * u[station]
    last = first + length[:, None] * u[station]
    near, far = np.minimum(first, last), np.maximum(first, last)
    found, facet = tree.query(shapely.box(near[:, 0], near[:, 1], far[:, 0], far[:, 1]))
    pairs = np.sort(station[found] * facets + facet)
    pairs = pairs[np.append(True, pairs[1:] != pairs[:-1])[: len(pairs)]]
    return pairs // facets, pairs % facets
