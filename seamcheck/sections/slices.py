"""Cutting facets by the section planes of all stations at once."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from msgspec import Struct

if TYPE_CHECKING:
    import shapely

BASE, COVER, OTHER = 0, 1, 2  # owners of a facet
_NARROW = 1.5  # mm
_RUN = 4.0  # mm of a path whose stations are looked at together
_AT_ONCE = 50_000  # pairs of station and facet that are looked at together: what fits into a processor's cache
_EVEN = 1e-10  # by which the mean of unit normals of a plane is shorter than 1, at most
_JOINED = 1e-6  # mm between the ends of lines on one plane that are one line
_FAR = 1e4  # mm between the lines of two planes on one axis, so that they are sorted at once
_ANY_WAY = np.array([0.537, 0.296, 0.790])  # direction along which two normals are hardly ever equally long
_SAME_NORMAL, _SAME_HEIGHT = 1e-9, 1e-7  # of unit normals; mm: facets of one face that lie on one plane
_MOST_FACES = 10_000_000
_PLUMB = 5e-4  # mean of the facets' normals along z below which (0.03 degrees) a face is upright


class Soup(Struct, frozen=True, eq=False):
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
        from seamcheck.joint.facets import area_vectors, lengths

        across = area_vectors(corners)
        length = lengths(across)
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


class Segments(Struct, frozen=True, eq=False):
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
        if isinstance(which, np.ndarray) and which.dtype == bool:
            which = np.flatnonzero(which)
        return Segments(*(getattr(self, name)[which] for name in self.__struct_fields__))

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
        rest = (np.concatenate([getattr(self, n), getattr(other, n)])[sorting] for n in self.__struct_fields__[1:])
        return Segments(station[sorting], *rest)


def box_tree(soup: Soup) -> shapely.STRtree:
    """Boxes of facets, seen along z, to be found by place."""
    import shapely  # here: who reads kept sections cuts none

    from seamcheck.joint.facets import bounds_of, spans

    low, high = bounds_of(soup.corners[:, :, :2])
    return shapely.STRtree(spans(low - 1e-6, high + 1e-6))


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
    corners = np.ascontiguousarray(soup.corners.transpose(2, 1, 0)).reshape(3, -1)  # (axes, first, second, third ones)
    runs = _runs(points)
    run, facet = _near(tree, len(soup.corners), points, u, runs, reach)
    begins = np.searchsorted(run, np.arange(len(runs)))
    ends = np.append(begins[1:], len(run))[: len(runs)]
    lasts = np.append(runs[1:], len(points))[: len(runs)]
    lines, parts, size = [], [], 0
    for first, last, begin, end in zip(runs.tolist(), lasts.tolist(), begins.tolist(), ends.tolist(), strict=True):
        lines.append(_crossing(corners, facet[begin:end], points, u, first, last))
        size += len(lines[-1][0])
        if size > _AT_ONCE:
            parts.append(_cut_some(soup, corners, lines, points, u, reach))
            lines, size = [], 0
    if lines or not parts:
        parts.append(_cut_some(soup, corners, lines or [_NONE], points, u, reach))
    return Segments(*(np.concatenate([getattr(part, name) for part in parts]) for name in Segments.__struct_fields__))


def _runs(points: np.ndarray) -> np.ndarray:
    """(r,) numbers of the stations (n, 2) at which runs of near ones begin, which are looked at together."""
    way = np.append(0.0, np.cumsum(np.hypot(*np.diff(points, axis=0).T)))[: len(points)]
    return np.flatnonzero(np.append(True, np.diff(np.floor(way / _RUN)) != 0.0)[: len(points)])


def _crossing(
    corners: np.ndarray, facet: np.ndarray, points: np.ndarray, u: np.ndarray, first: int, last: int
) -> tuple[np.ndarray, ...]:
    """Pairs of a station, of first to last, and one of some facets that its plane crosses: station (k,), numbers (k,)
    into ``corners`` of the corner that lies alone on its side of the plane and of the two others, and mm of these
    ahead of the plane.

    Parameters
    ----------
    corners : (3, 3 m) mm, of all facets the first ones, then the second and the third ones
    """
    every = corners.shape[1] // 3
    of = np.concatenate([facet, facet + every, facet + 2 * every])
    p, along = points[first:last], u[first:last]
    planes = np.column_stack([-along[:, 1], along[:, 0], p[:, 0] * along[:, 1] - p[:, 1] * along[:, 0]])
    d = planes @ np.stack([corners[0, of], corners[1, of], np.ones(len(of))])
    one, two, three = np.split(d > 0.0, 3, axis=1)
    pair = np.flatnonzero((one != two) | (two != three))
    station, place = np.divmod(pair, len(facet)) if len(facet) else (pair, pair)
    one, two, three = (ahead.ravel()[pair] for ahead in (one, two, three))
    lone = np.where(two == three, 0, np.where(one == three, 1, 2))
    found = [station + first]
    ahead = []
    for corner in (lone, (lone + 1) % 3, (lone + 2) % 3):
        at = corner * len(facet) + place
        found.append(of[at])
        ahead.append(d.ravel()[station * len(of) + at])
    return *found, *ahead


_NONE = tuple(np.empty(0, dtype=kind) for kind in (int, int, int, int, float, float, float))


def _cut_some(
    soup: Soup,
    corners: np.ndarray,
    pairs: list[tuple[np.ndarray, ...]],
    points: np.ndarray,
    u: np.ndarray,
    reach: float,
) -> Segments:
    """Lines of pairs as of ``_crossing``, which are few enough to be looked at together."""
    station, lone, one, other, d, d_one, d_other = (np.concatenate(parts) for parts in zip(*pairs, strict=True))
    ux, uy = u[station].T
    along_p = points[station, 0] * ux + points[station, 1] * uy

    def across(corner: np.ndarray) -> np.ndarray:
        return np.asarray(corners[0, corner] * ux + corners[1, corner] * uy - along_p)

    begin, height = across(lone), corners[2, lone]
    part_one, part_other = d / (d - d_one), d / (d - d_other)
    u0, w0 = begin + part_one * (across(one) - begin), height + part_one * (corners[2, one] - height)
    u1, w1 = begin + part_other * (across(other) - begin), height + part_other * (corners[2, other] - height)
    swap = u0 > u1
    u0, u1 = np.where(swap, u1, u0), np.where(swap, u0, u1)
    w0, w1 = np.where(swap, w1, w0), np.where(swap, w0, w1)
    near = np.flatnonzero((u1 >= -reach) & (u0 <= reach))
    station, facet, u0, w0, u1, w1, ux, uy = (
        values[near] for values in (station, lone % (corners.shape[1] // 3), u0, w0, u1, w1, ux, uy)
    )
    normal = soup.normal[facet]
    nu = normal[:, 0] * ux + normal[:, 1] * uy
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


def _near(
    tree: shapely.STRtree, facets: int, points: np.ndarray, u: np.ndarray, runs: np.ndarray, reach: float
) -> tuple[np.ndarray, np.ndarray]:
    """Pairs of a run of stations and a facet whose boxes meet, ascending.

    The lines of stations that run askew to the frame are taken in pieces, so that their boxes stay narrow: a share
    of _NARROW mm; of runs along an axis, as most are, in one piece.
    """
    from seamcheck.joint.facets import spans

    askew = 2.0 * reach * np.maximum.reduceat(np.abs(u).min(axis=1), runs) > _NARROW if len(runs) else runs > 0
    size = np.diff(np.append(runs, len(points)))
    found = []
    for some, pieces in ((~askew, 1), (askew, int(np.ceil(2.0 * reach / _NARROW)))):
        which = np.flatnonzero(some)
        if not len(which):
            continue
        mine = np.repeat(some, size)
        begins = np.append(0, np.cumsum(size[which]))[: len(which)]
        ends = points[mine, None] + np.linspace(-reach, reach, pieces + 1)[:, None] * u[mine, None]
        low, high = np.minimum.reduceat(ends, begins), np.maximum.reduceat(ends, begins)
        low, high = np.minimum(low[:, 1:], low[:, :-1]), np.maximum(high[:, 1:], high[:, :-1])
        piece, facet = tree.query(spans(low.reshape(-1, 2), high.reshape(-1, 2)))
        found.append(which[piece // pieces] * facets + facet)
    pairs = np.sort(np.concatenate(found)) if found else np.empty(0, dtype=int)
    pairs = pairs[np.append(True, pairs[1:] != pairs[:-1])[: len(pairs)]]
    return pairs // facets, pairs % facets
