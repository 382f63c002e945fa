"""Nearest places on a seam: where a point of one seam has its counterpart on another."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from msgspec import Struct
from scipy.spatial import cKDTree

from seamcheck.comparison.paths import SeamPath

REACH = 5.0
"""mm: two places of seams farther apart than this are no longer the same place."""

LEAN = 0.7
"""Cosine of the largest angle (45°) between two seams at places that are the same."""

BESIDE, AHEAD = 0.05, 0.85
"""mm within which a foot always counts; share of a longer way to it that may run along the seam. Between places
beside each other the way is square to one of the seams, which lean by 45° at most: 0.71."""

SMOOTH = 0.966
"""Cosine of the angle (15°) between a chord and the tangents at its ends from which on they make a corner."""

_NEIGHBOURS = 12


class NearestPoints(Struct, frozen=True, eq=False, dict=True):
    """For each of m points its nearest place on some paths.

    Attributes
    ----------
    path : (m,) int, index of the path; -1 where there is none within reach
    s : (m,) mm, arc length there; NaN without
    points : (m, 3) mm; NaN without
    distance : (m,) mm; inf without
    station : (m,) int, nearest station of that path; -1 without
    """

    path: np.ndarray
    s: np.ndarray
    points: np.ndarray
    distance: np.ndarray
    station: np.ndarray

    @property
    def found(self) -> np.ndarray:
        """(m,) bool."""
        return self.path >= 0


def find_nearest(
    points: np.ndarray, paths: Sequence[SeamPath], reach: float = REACH, tangents: np.ndarray | None = None
) -> NearestPoints:
    """The place nearest to each point on the chains through the stations of some paths.

    Parameters
    ----------
    points : (m, 3) mm
    paths : where to look
    reach : mm, how far
    tangents : (m, 3) unit vectors along the seam that the points are of; only places where the path runs within
        45° of them count, either way, and not those that lie ahead of the point instead of beside it

    Notes
    -----
    The nearest stations are looked at with both chords that meet in each; the foot is the nearest point of those
    chords, moved out onto the curve: a chord of length d leaves an arc of radius R by up to d²/8R, 0.014 mm at
    R = 2.2 and d = 0.5 mm. The curve is the cubic through both stations along their tangents (Hermite), which
    leaves an arc by less than a thousandth of that; at sharp corners it is left out.
    """
    count = len(points)
    best = NearestPoints(
        np.full(count, -1),
        np.full(count, np.nan),
        np.full((count, 3), np.nan),
        np.full(count, np.inf),
        np.full(count, -1),
    )
    if not count or not paths:
        return best
    starts, ends, start_s, end_s, owner, first, last = _chords(paths)
    tree = cKDTree(np.vstack([path.points for path in paths]))
    bases = np.cumsum([0, *(len(path.points) for path in paths)])
    _, near = tree.query(points, k=min(_NEIGHBOURS, tree.n))
    near = np.asarray(near).reshape(count, -1)
    along = None if tangents is None else np.vstack([path.tangents for path in paths])
    on_chord, along_chord = np.zeros(count, dtype=int), np.zeros(count)
    for chord_of in (first, last):  # the chord that begins at a station, and the one that ends there
        for rank in range(near.shape[1]):
            station = near[:, rank]
            chord = chord_of[station]
            a, b = starts[chord], ends[chord]
            way = b - a
            size = np.maximum(np.einsum("ij,ij->i", way, way), 1e-24)
            share = np.clip(np.einsum("ij,ij->i", points - a, way) / size, 0.0, 1.0)
            foot = a + share[:, None] * way
            distance = np.linalg.norm(points - foot, axis=1)
            better = (distance < best.distance - 1e-12) & (distance <= reach) & (chord >= 0)
            if along is not None and tangents is not None:
                better &= np.abs(np.einsum("ij,ij->i", tangents, along[station])) >= LEAN
            if not better.any():
                continue
            path = owner[station]
            s = start_s[chord] + share * (end_s[chord] - start_s[chord])
            best.path[better] = path[better]
            best.s[better] = s[better]
            best.points[better] = foot[better]
            best.distance[better] = distance[better]
            best.station[better] = (station - bases[path])[better]
            on_chord[better], along_chord[better] = chord[better], share[better]
    _move_onto_curve(best, points, paths, on_chord, along_chord)
    if tangents is not None:
        _drop_beyond_ends(best, points, tangents)
    for k, path in enumerate(paths):
        if path.closed:
            here = best.path == k
            best.s[here] = np.mod(best.s[here], path.length)
    return best


def _move_onto_curve(
    feet: NearestPoints, points: np.ndarray, paths: Sequence[SeamPath], chord: np.ndarray, share: np.ndarray
) -> None:
    """Put feet from their chords onto the curve through the stations."""
    here = np.flatnonzero(feet.found)
    first, last = slice(None, -1), slice(1, None)  # of each chord
    starts, ends = (np.vstack([path.corners[end] for path in paths]) for end in (first, last))
    directions = [np.vstack([p.tangents, p.tangents[:1]]) if p.closed else p.tangents for p in paths]
    leave, arrive = (np.vstack([tangents[end] for tangents in directions]) for end in (first, last))
    a, b, k, t = starts[chord[here]], ends[chord[here]], chord[here], share[here][:, None]
    length = np.linalg.norm(b - a, axis=1, keepdims=True)
    way = (b - a) / np.where(length > 0, length, 1.0)
    smooth = (np.einsum("ij,ij->i", way, leave[k]) > SMOOTH) & (np.einsum("ij,ij->i", way, arrive[k]) > SMOOTH)
    along = way * length
    for _ in range(3):  # the last one only places the foot; those before bring it to where the way is square (Newton)
        left, right = leave[k] * length, arrive[k] * length
        curve = (
            (1 + 2 * t) * (1 - t) ** 2 * a + t * (1 - t) ** 2 * left + t**2 * (3 - 2 * t) * b + t**2 * (t - 1) * right
        )
        slope = 6 * t * (1 - t) * along + (1 - t) * (1 - 3 * t) * left + t * (3 * t - 2) * right
        bend = (6 - 12 * t) * along + (6 * t - 4) * left + (6 * t - 2) * right
        apart = points[here] - curve
        size = np.maximum(np.einsum("ij,ij->i", slope, slope), 1e-24)
        steep = np.maximum(size - np.einsum("ij,ij->i", apart, bend), 0.1 * size)
        t = np.clip(t + (np.einsum("ij,ij->i", apart, slope) / steep)[:, None], 0.0, 1.0)
    feet.points[here[smooth]] = curve[smooth]
    feet.distance[here[smooth]] = np.linalg.norm(points[here[smooth]] - curve[smooth], axis=1)


def _drop_beyond_ends(feet: NearestPoints, points: np.ndarray, tangents: np.ndarray) -> None:
    """Take away feet that lie ahead or behind instead of beside: the other seam has ended there."""
    far = feet.found & (feet.distance > BESIDE)
    along = np.abs(np.einsum("ij,ij->i", feet.points - points, tangents))
    gone = far & (along > AHEAD * feet.distance)
    feet.path[gone], feet.station[gone] = -1, -1
    feet.s[gone], feet.points[gone], feet.distance[gone] = np.nan, np.nan, np.inf


def _chords(paths: Sequence[SeamPath]) -> tuple[np.ndarray, ...]:
    """All chords, and for each station its path, the chord that begins there and the one that ends there."""
    starts, ends, start_s, end_s, owner, first, last = [], [], [], [], [], [], []
    count = 0
    for k, path in enumerate(paths):
        n, chords = len(path.points), len(path.corners) - 1
        starts.append(path.corners[:-1])
        ends.append(path.corners[1:])
        start_s.append(path.corner_s[:-1])
        end_s.append(path.corner_s[1:])
        owner.append(np.full(n, k))
        begins, finishes = np.arange(n), np.arange(n) - 1
        if path.closed:
            finishes[0] = chords - 1
        else:
            begins[-1], finishes[0] = chords - 1, 0
        first.append(count + begins)
        last.append(count + finishes)
        count += chords
    return tuple(np.concatenate(part) for part in (starts, ends, start_s, end_s, owner, first, last))
