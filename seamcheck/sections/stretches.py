"""Contiguous stretches of a path, from a mask over its stations."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from msgspec import Struct

MERGE = 1.0
"""mm: stretches of one path closer than this are one."""

BRIDGE = 10.0
"""mm: so much that could not be measured (a corner, a hole in the cover) parts no stretch that goes on behind it."""


class Stretch(Struct, frozen=True, eq=False):
    """One stretch.

    Attributes
    ----------
    from_s, to_s : mm along the path; half-way to the neighbouring stations outside. On a closed path
        ``from_s > to_s`` where it passes the start; the whole path is 0 to its length
    length : mm
    stations : indices of the marked stations in it, in the path's order
    is_whole : whether it is the whole path
    """

    from_s: float
    to_s: float
    length: float
    stations: np.ndarray
    is_whole: bool

    @property
    def middle(self) -> float:
        """Arc length of its middle; may lie beyond the path's length on a closed path."""
        return self.from_s + self.length / 2


def cell_lengths(s: np.ndarray, length: float, closed: bool) -> np.ndarray:
    """(n,) mm: the part of the path that each station stands for, half-way to its neighbours."""
    edges = _edges(s, length, closed)
    return np.diff(edges)


def stretches(mark: np.ndarray, s: np.ndarray, length: float, closed: bool, merge: float = MERGE) -> list[Stretch]:
    """Stretches of marked stations, in the order of their first station.

    Parameters
    ----------
    mark : (n,) bool
    s : (n,) mm, ascending, within 0..length
    length : mm, of the whole path
    closed : whether the path returns to its start
    merge : mm, stretches less than this apart become one
    """
    marked = np.flatnonzero(mark)
    if not len(marked):
        return []
    edges = _edges(s, length, closed)
    low, high = edges[marked], edges[marked + 1]
    apart = np.append(low[1:], low[0] + length if closed else np.inf) - high
    split = np.flatnonzero(~((apart < merge) | (apart < 1e-9)))  # the last station of each stretch
    if not len(split):
        return [Stretch(0.0, float(length), float(length), marked, True)]
    if closed:  # begin behind a gap, so that no stretch is cut by the start of the path
        marked = np.roll(marked, -int(split[0]) - 1)
        split = np.sort((split - split[0] - 1) % len(marked))
    found = []
    for run in np.split(marked, split[:-1] + 1):
        start, end = float(edges[run[0]]), float(edges[run[-1] + 1])
        size = end - start if run[-1] >= run[0] else end - start + length
        whole = not closed and len(run) == len(s)
        found.append(Stretch(_on_path(start, length, closed), _on_path(end, length, closed), size, run, whole))
    return sorted(found, key=lambda stretch: int(stretch.stations.min()))


def grown(seed: np.ndarray, room: np.ndarray, closed: bool) -> np.ndarray:
    """Runs of stations that hold a seed.

    Parameters
    ----------
    seed, room : (n,) bool, in the order of the path; a seed belongs to the room
    closed : whether the last station is next to the first

    Returns
    -------
    (n,) bool: all of each run of ``room`` that has a seed in it
    """
    room = room | seed
    if not len(room) or not room.any():
        return room
    label = np.cumsum(np.append(True, room[1:] != room[:-1]))
    if closed and room[0] and room[-1]:
        label[label == label[-1]] = label[0]
    return room & np.isin(label, label[seed])


def bridged(
    mark: np.ndarray, unknown: np.ndarray, s: np.ndarray, length: float, closed: bool, most: float = BRIDGE
) -> np.ndarray:
    """(n,) bool: the marked stations, and what is unknown between two of them.

    Parameters
    ----------
    mark, unknown : (n,) bool; s : (n,) mm, ascending; length : mm, of the whole path
    most : mm, a longer unknown stretch parts what is marked before and behind it
    """
    mark = np.array(mark)
    unknown = unknown & ~mark
    if not mark.any() or not unknown.any():
        return mark
    for stretch in stretches(unknown, s, length, closed, merge=0.0):
        first, last = int(stretch.stations[0]) - 1, int(stretch.stations[-1]) + 1
        if not closed and (first < 0 or last >= len(s)):
            continue
        if stretch.length <= most and mark[first % len(s)] and mark[last % len(s)]:
            mark[stretch.stations] = True
    return mark


def weighted_median(values: np.ndarray, weights: np.ndarray) -> float:
    """Median of values (n,), in their unit, each counting by its part of the path, weights (n,) mm; NaN without any.

    Equal weights give the usual median.
    """
    return weighted_quantile(values, weights, 0.5)


def weighted_quantile(values: np.ndarray, weights: np.ndarray, share: float) -> float:
    """The one of values (n,) that a share of the length, weights (n,) mm, lies at or below; NaN of unknown ones."""
    return weighted_quantiles(values, weights, (share,))[0]


def weighted_quantiles(values: np.ndarray, weights: np.ndarray, shares: Sequence[float]) -> list[float]:
    """``weighted_quantile`` of values (n,) and weights (n,) mm for each of some shares; NaN where none is known.

    Notes
    -----
    The inverse of the weighted empirical distribution, averaged at its steps (type 2 of Hyndman and Fan, The American
    Statistician 50, 1996, with lengths in place of counts).
    """
    known = np.isfinite(values) & (weights > 0)
    if not known.any():
        return [float("nan")] * len(shares)
    order = np.argsort(values[known], kind="stable")
    ranked, total = values[known][order], np.cumsum(weights[known][order])
    found = []
    for share in shares:
        half = total[-1] * share
        k = int(np.searchsorted(total, half - 1e-9 * total[-1]))
        at_step = abs(total[k] - half) <= 1e-9 * total[-1] and k + 1 < len(ranked)
        found.append(float((ranked[k] + ranked[k + 1]) / 2 if at_step else ranked[k]))
    return found


def _edges(s: np.ndarray, length: float, closed: bool) -> np.ndarray:
    """(n + 1,) mm: borders between the parts of the path that the stations stand for.

    On a closed path the first border may lie below 0; the last one lies one length beyond it.
    """
    s = np.asarray(s, dtype=float)
    inner = (s[1:] + s[:-1]) / 2
    if not closed:
        return np.concatenate([[min(0.0, s[0])], inner, [max(float(length), s[-1])]])
    first = (s[0] + s[-1] - length) / 2
    return np.concatenate([[first], inner, [first + length]])


def _on_path(at: float, length: float, closed: bool) -> float:
    return at % length if closed and not 0.0 <= at <= length else at
