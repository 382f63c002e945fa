"""Cutting facets by the section planes of all stations at once."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    import shapely

BASE, COVER, OTHER = 0, 1, 2  # owners of a facet
_NARROW = 1.5  # mm
_STATIONS = 256  # that are cut together: their pairs with facets take some tens of MB at most
_AT_ONCE = 50_000  # pairs of station and facet that are looked at together: what fits into a processor's cache
_EVEN = 1e-10  # by which the mean of unit normals of a plane is shorter than 1, at most
_JOINED = 1e-6  # mm between the ends of lines on one plane that are one line
_FAR = 1e4  # mm between the lines of two planes on one axis, so that they are sorted at once
_ANY_WAY = np.array([0.537, 0.296, 0.790])  # direction along which two normals are hardly ever equally long
_SAME_NORMAL, _SAME_HEIGHT = 1e-9, 1e-7  # of unit normals; mm: facets of one face that lie on one plane
_MOST_FACES = 10_000_000
_PLUMB = 5e-4  # mean of the facets' normals along z below which (0.03 degrees) a face is upright


@dataclass(frozen=True, slots=True, eq=False)
class Soup:
    """Facets near the seam, in the press frame.

    corners (m, 3, 3) mm; normal (m, 3) unit, outward; owner (m,) BASE, COVER or OTHER; face (m,) index; plane (m,)
    number, the same for facets of one face that lie on one plane, which stand together
    """

    corners: np.ndarray
    normal: np.ndarray
    owner: np.ndarray
    face: np.ndarray
    plane: np.ndarray

    @staticmethod
    def of(corners: np.ndarray, owner: np.ndarray, face: np.ndarray) -> Soup:
        """The facets with corners (n, 3, 3) mm, owner (n,) and face index (n,); those without area are left out."""
        across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        length = np.linalg.norm(across, axis=1)
        keep = length > 1e-12
        corners, owner, face, area = corners[keep], owner[keep], face[keep], length[keep]
        normal = across[keep] / area[:, None]
        upright, on_plane = _leaning(normal, area, owner, face)
        order, plane = _planes(normal, corners, owner.astype(np.int64) * _MOST_FACES + face, on_plane)
        normal[upright, 2] = 0.0
        return Soup(corners[order], normal[order], owner[order], face[order], plane)


def _leaning(
    normal: np.ndarray, area: np.ndarray, owner: np.ndarray, face: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """(m,) bool twice: facets of faces that are upright as a whole, and of faces that are planes.

    The facets of an upright free-form face tilt by their chord error to both sides; a draft tilts all to one.
    """
    _, place = np.unique(owner.astype(np.int64) * _MOST_FACES + face, return_inverse=True)
    total = np.bincount(place, weights=area)
    mean = np.column_stack([np.bincount(place, weights=area * normal[:, axis]) / total for axis in range(3)])
    size = np.bincount(place, weights=area * np.abs(normal[:, 2])) / total
    upright = (np.abs(mean[:, 2]) < _PLUMB) & (size < 10 * _PLUMB)
    on_plane = np.linalg.norm(mean, axis=1) > 1.0 - _EVEN
    return upright[place], on_plane[place]


def _planes(
    normal: np.ndarray, corners: np.ndarray, of: np.ndarray, on_plane: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """Order (m,) in which the facets of one face on one plane stand together, and (m,) the number of each one's plane.

    Parameters
    ----------
    of : (m,) number of each one's face; on_plane : (m,) bool, of a face that is a plane as a whole
    """
    run = np.cumsum(np.append(0, of[1:] != of[:-1])[: len(of)])  # as faces stand now, so they stay
    height = (normal * corners[:, 0]).sum(axis=1)
    order = np.argsort(4.0 * run + np.where(on_plane, 0.0, normal @ _ANY_WAY), kind="stable")
    here, after = order[:-1], order[1:]
    turned = (np.abs(normal[after] - normal[here]) > _SAME_NORMAL).any(axis=1)
    apart = (turned | (np.abs(height[after] - height[here]) > _SAME_HEIGHT)) & ~on_plane[after]
    return order, np.cumsum(np.append(0, (run[after] != run[here]) | apart)[: len(of)])


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

    def only(self, which: np.ndarray | slice) -> Segments:
        """The lines of an index or mask (k,), or of a slice."""
        return Segments(*(getattr(self, name)[which] for name in self.__slots__))

    def joined(self, other: Segments, stations: int, order: np.ndarray) -> Segments:
        """The lines of further stations among these.

        Parameters
        ----------
        stations : count of these; order : (n,) indices of these and then the further ones, as they stand afterwards
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
    import shapely  # here: who reads kept sections cuts none

    from seamcheck.joint.heights import spans

    return shapely.STRtree(spans(low, high))


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
    tree = tree or box_tree(soup)
    corners = np.ascontiguousarray(soup.corners.transpose(2, 1, 0))  # (3 axes, 3 corners, m)
    begins = range(0, max(len(points), 1), _STATIONS)
    some = [slice(begin, begin + _STATIONS) for begin in begins]
    parts = [_cut_some(soup, corners, tree, points[part], u[part], reach) for part in some]
    station = np.concatenate([part.station + begin for part, begin in zip(parts, begins, strict=True)])
    rest = (np.concatenate([getattr(part, name) for part in parts]) for name in Segments.__slots__[1:])
    return Segments(station, *rest)


def _cut_some(
    soup: Soup, corners: np.ndarray, tree: shapely.STRtree, points: np.ndarray, u: np.ndarray, reach: float
) -> Segments:
    """Lines at stations (n, 2) few enough to be looked at together; corners (3, 3, m) mm of all facets."""
    station, facet = _near(tree, len(soup.corners), points, u, reach)
    planes = np.column_stack([u, points[:, 1] * u[:, 0] - points[:, 0] * u[:, 1], (points * u).sum(axis=1)]).T
    pieces = [
        _cut_pairs(corners, planes, station[at : at + _AT_ONCE], facet[at : at + _AT_ONCE], reach)
        for at in range(0, len(station), _AT_ONCE)
    ]
    if not pieces:
        pieces = [_cut_pairs(corners, planes, station, facet, reach)]
    station, facet, u0, w0, u1, w1 = (np.concatenate(parts) for parts in zip(*pieces, strict=True))
    normal = soup.normal[facet]
    nu = normal[:, 0] * u[station, 0] + normal[:, 1] * u[station, 1]
    found = Segments(station, u0, w0, u1, w1, nu, normal[:, 2], soup.owner[facet], soup.face[facet])
    return _within(_whole_lines(found, soup.plane[facet]), reach)


def _whole_lines(found: Segments, plane: np.ndarray) -> Segments:
    """The lines of each plane (k,) in one piece, as far as they are joined: its facets are none of the part's edges.

    u0, w0, u1, w1 are changed in place.
    """
    if not len(plane):
        return found
    starts = np.append(True, (plane[1:] != plane[:-1]) | (found.station[1:] != found.station[:-1]))
    group = np.cumsum(starts) - 1
    some = np.flatnonzero(np.bincount(group)[group] > 1)
    size = np.maximum(np.hypot(found.nu[some], found.nw[some]), 1e-12)
    along_u, along_w = found.nw[some] / size, found.nu[some] / size
    turn = np.where(along_u < 0.0, -1.0, 1.0)  # u ascends; on upright planes w
    along_u, along_w = turn * along_u, -turn * along_w
    one, other = (along_u * u[some] + along_w * w[some] for u, w in ((found.u0, found.w0), (found.u1, found.w1)))
    low, high = np.minimum(one, other), np.maximum(one, other)
    order = np.argsort(group[some] * _FAR + low, kind="stable")
    some, one, other, low, high = some[order], one[order], other[order], low[order], high[order]
    goes_on = (group[some[1:]] == group[some[:-1]]) & (np.abs(low[1:] - high[:-1]) < _JOINED)
    first = np.append(True, ~goes_on)[: len(some)]
    last = np.append(~goes_on, True)[: len(some)]
    first, last = np.flatnonzero(first & ~last), np.flatnonzero(last & ~first)
    near, far = (one <= other)[first], (one <= other)[last]
    first, last = some[first], some[last]
    u0, u1 = np.where(near, found.u0[first], found.u1[first]), np.where(far, found.u1[last], found.u0[last])
    w0, w1 = np.where(near, found.w0[first], found.w1[first]), np.where(far, found.w1[last], found.w0[last])
    swap = u0 > u1
    for values, straight, turned in (
        (found.u0, u0, u1), (found.w0, w0, w1), (found.u1, u1, u0), (found.w1, w1, w0)
    ):  # fmt: skip
        values[first] = np.where(swap, turned, straight)
    kept = np.ones(len(group), dtype=bool)
    kept[some[1:][goes_on]] = False
    return found.only(kept)


def _within(found: Segments, reach: float) -> Segments:
    """The lines as far as they lie within reach of P; u0, w0, u1, w1 are changed in place."""
    run = np.maximum(found.u1 - found.u0, 1e-12)
    slope = (found.w1 - found.w0) / run
    for u, w, sign in ((found.u0, found.w0, -1.0), (found.u1, found.w1, 1.0)):
        beyond = np.flatnonzero(sign * u > reach)
        w[beyond] += (sign * reach - u[beyond]) * slope[beyond]
        u[beyond] = sign * reach
    return found


def _cut_pairs(
    corners: np.ndarray, planes: np.ndarray, station: np.ndarray, facet: np.ndarray, reach: float
) -> tuple[np.ndarray, ...]:
    """Of pairs of a station and a facet those that meet within reach: station, facet, u0, w0, u1, w1.

    Parameters
    ----------
    corners : (3, 3, m) mm, axis and corner of every facet
    planes : (4, n) components of u, and the place of P along the normal (-u_y, u_x) of the plane and along u
    """
    ux, uy, ahead_of_p, along_p = planes
    x, y = corners[0][:, facet], corners[1][:, facet]
    d = y * ux[station] - x * uy[station] - ahead_of_p[station]
    ahead = d > 0
    crosses = np.flatnonzero((ahead[0] != ahead[1]) | (ahead[1] != ahead[2]))
    station, facet, x, y, d, ahead = (v[..., crosses] for v in (station, facet, x, y, d, ahead))
    # the corner that lies alone on its side of the plane, and the way from it to the two others
    every = np.arange(len(station))
    lone = np.where(ahead[1] == ahead[2], 0, np.where(ahead[0] == ahead[2], 1, 2))
    across = x * ux[station] + y * uy[station] - along_p[station]
    height = corners[2][:, facet]
    ends = []
    for other in ((lone + 1) % 3, (lone + 2) % 3):
        here, there = d[lone, every], d[other, every]
        part = here / (here - there)
        ends += [v[lone, every] + part * (v[other, every] - v[lone, every]) for v in (across, height)]
    swap = ends[0] > ends[2]
    u0, u1 = np.where(swap, ends[2], ends[0]), np.where(swap, ends[0], ends[2])
    w0, w1 = np.where(swap, ends[3], ends[1]), np.where(swap, ends[1], ends[3])
    near = np.flatnonzero((u1 >= -reach) & (u0 <= reach))
    return station[near], facet[near], u0[near], w0[near], u1[near], w1[near]


def _near(
    tree: shapely.STRtree, facets: int, points: np.ndarray, u: np.ndarray, reach: float
) -> tuple[np.ndarray, np.ndarray]:
    """Pairs of station and facet whose boxes meet, ascending.

    The line of a station that runs askew to the frame is taken in pieces, so that its boxes stay narrow: a share
    of _NARROW mm; one along an axis, as most are, is one piece.
    """
    from seamcheck.joint.heights import spans

    count = np.maximum(1, np.ceil(2.0 * reach * np.abs(u).min(axis=1) / _NARROW)).astype(int)
    station = np.repeat(np.arange(len(points)), count)
    piece = np.arange(len(station)) - np.repeat(np.cumsum(count) - count, count)
    length = (2.0 * reach / count)[station]
    first = points[station] + (length * piece - reach)[:, None] * u[station]
    last = first + length[:, None] * u[station]
    near, far = np.minimum(first, last), np.maximum(first, last)
    found, facet = tree.query(spans(near, far))
    pairs = np.sort(station[found] * facets + facet)
    pairs = pairs[np.append(True, pairs[1:] != pairs[:-1])[: len(pairs)]]
    return pairs // facets, pairs % facets
