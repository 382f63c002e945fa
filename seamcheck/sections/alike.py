"""Sections that are equal because the seam runs straight there: cut once.

Along a straight line the ends of every cut line move evenly from one corner of a facet to the next. So where, of some
stations between two corners, the first and the last have equal sections, all of them have.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import shapely
from msgspec.structs import replace

from seamcheck.joint.facets import spans
from seamcheck.sections.slices import Segments, Soup, cut

_STRAIGHT = 1e-10  # mm that a station lies off the line through another, and of u, so that they lie on one line
_SAME = 1e-9  # mm between ends of lines of sections that are equal
_AT = 1e-6  # mm from a corner within which a station is not between corners
_FEW = 4  # stations on one line that are worth it

Known = Callable[[Segments, int], np.ndarray]
"""Of the cut lines of some sections and their number which (n,) bool may stand for others."""


def cut_alike(
    soup: Soup,
    points: np.ndarray,
    u: np.ndarray,
    reach: float,
    tree: shapely.STRtree,
    marks: np.ndarray,
    may_stand: Known | None = None,
) -> tuple[Segments, np.ndarray]:
    """The sections at all stations, of equal neighbours only the first.

    Parameters
    ----------
    points, u, reach, tree : as of ``cut``
    marks : (n, k) what must be equal, too, of stations that share a section; NaN equals nothing
    may_stand : which sections may stand for their neighbours; None: all

    Returns
    -------
    Segments of the different sections; (n,) number of the one that each station has, ascending
    """
    group = _between_corners(soup, points, u, reach, tree, marks)
    first = np.flatnonzero(np.append(True, group[1:] != group[:-1])[: len(group)])
    last = np.append(first[1:], len(group))[: len(first)] - 1
    ends = np.unique(np.concatenate([first, last]))
    found = cut(soup, points[ends], u[ends], reach, tree)
    rows, shared = np.searchsorted(ends, first), last > first
    shared[shared] = _equal(found, rows[shared], np.searchsorted(ends, last[shared]), len(ends))
    if may_stand is not None:
        shared &= may_stand(found, len(ends))[rows]
    alone = np.repeat(~shared, last - first + 1)
    alone[first] = True
    rest = np.setdiff1d(np.flatnonzero(alone), ends)
    both = np.concatenate([ends, rest])
    if len(rest):
        found = found.joined(cut(soup, points[rest], u[rest], reach, tree), len(ends), np.argsort(both, kind="stable"))
    kept = alone[np.sort(both)]
    lines = found if kept.all() else found.only(kept[found.station])
    return replace(lines, station=(np.cumsum(kept) - 1)[lines.station]), np.cumsum(alone) - 1


def _between_corners(
    soup: Soup, points: np.ndarray, u: np.ndarray, reach: float, tree: shapely.STRtree, marks: np.ndarray
) -> np.ndarray:
    """(n,) ascending, equal for stations on one straight line between whose planes no corner of a facet lies."""
    along = np.column_stack([-u[:, 1], u[:, 0]])
    way = np.diff(points, axis=0)
    goes_on = np.abs((way * u[:-1]).sum(axis=1)) < _STRAIGHT
    goes_on &= (np.abs(np.diff(u, axis=0)) < _STRAIGHT).all(axis=1)
    goes_on &= (np.abs(np.diff(marks, axis=0)) < _SAME).all(axis=1)  # NaN is not
    new = np.append(True, ~goes_on)[: len(points)]
    starts = np.flatnonzero(new)
    ends = np.append(starts[1:], len(points))[: len(starts)]
    worth = ends - starts >= _FEW
    new[np.repeat(~worth, ends - starts)] = True
    if not worth.any():
        return np.cumsum(new)
    starts, ends = starts[worth], ends[worth]
    corner = np.stack([points[k] + sign * reach * u[k] for k in (starts, ends - 1) for sign in (-1.0, 1.0)])
    run, facet = tree.query(spans(corner.min(axis=0), corner.max(axis=0)))
    facets = np.split(facet, np.searchsorted(run, np.arange(1, len(starts))))
    for start, end, near in zip(starts, ends, facets, strict=True):
        some = slice(start, end)
        off = np.abs((points[some] - points[start]) @ u[start])
        drift = np.abs(u[some] - u[start]).max(axis=1)
        changed = np.abs(marks[some] - marks[start]).max(axis=1, initial=0.0)
        if max(off.max(), drift.max(), changed.max()) > _SAME:
            new[some] = True
            continue
        place = (points[some] - points[start]) @ along[start]
        marked = _corners(soup.corners[near, :, :2] - points[start], along[start], u[start], reach)
        if place[-1] < 0.0:
            place, marked = -place, -marked
        marked = np.sort(marked)
        before, after = np.searchsorted(marked, place - _AT), np.searchsorted(marked, place + _AT)
        new[some][1:] |= (before[1:] != before[:-1]) | (after[1:] != after[:-1])
    return np.cumsum(new)


def _corners(corners: np.ndarray, along: np.ndarray, u: np.ndarray, reach: float) -> np.ndarray:
    """(k,) mm along a line: corners of facets (m, 3, 2) within reach, and sides that cross the whole of it."""
    place, aside = corners @ along, corners @ u
    marked = [place[np.abs(aside) <= reach + _AT]]
    for here, there in ((0, 1), (1, 2), (2, 0)):
        a, b = aside[:, here], aside[:, there]
        across = np.flatnonzero((np.minimum(a, b) < -reach) & (np.maximum(a, b) > reach))
        a, b = a[across], b[across]
        marked.append(place[across, here] + a / (a - b) * (place[across, there] - place[across, here]))
    return np.concatenate(marked)


def _equal(found: Segments, rows: np.ndarray, others: np.ndarray, count: int) -> np.ndarray:
    """(k,) bool: whether pairs of sections, numbers (k,) and (k,) of ``count``, have the same lines."""
    asked = np.zeros(count, dtype=bool)
    asked[rows], asked[others] = True, True
    found = found.only(asked[found.station])
    lines = np.bincount(found.station, minlength=count)
    begin = np.cumsum(lines) - lines
    middle = found.u0 + found.u1 + 0.37 * (found.w0 + found.w1)
    order = np.lexsort((middle, found.face, found.owner, found.station))
    same = lines[rows] == lines[others]
    pair = np.flatnonzero(same)
    size = lines[rows[pair]]
    nth = np.arange(size.sum()) - np.repeat(np.cumsum(size) - size, size)
    one = order[np.repeat(begin[rows[pair]], size) + nth]
    other = order[np.repeat(begin[others[pair]], size) + nth]
    differs = (found.owner[one] != found.owner[other]) | (found.face[one] != found.face[other])
    for name in ("u0", "w0", "u1", "w1", "nu", "nw"):
        values = getattr(found, name)
        differs |= ~(np.abs(values[one] - values[other]) <= _SAME)
    same[pair[np.unique(np.repeat(np.arange(len(pair)), size)[differs])]] = False
    return np.asarray(same)
