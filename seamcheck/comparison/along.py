"""How every quantity changed along the seam: at each place of the new seam against the same place of the old."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import ACCEPTED_EVERYWHERE
from seamcheck.comparison.align import JointPair, other_side
from seamcheck.comparison.paths import SeamPath
from seamcheck.comparison.tolerances import PAD, comparable, comparable_tolerance, pad
from seamcheck.sections.stretches import Stretch, stretches

LEAST = 2 * PAD
"""mm: shorter stretches are steps that seem to lie elsewhere."""

UP, DOWN, MEASURED, LOST = "more", "less", "measured now", "no longer measured"


class Change(Struct, frozen=True, eq=False, dict=True):
    """One contiguous stretch of a path of the new seam on which a quantity changed in one way.

    Attributes
    ----------
    quantity : key
    kind : UP, DOWN, MEASURED or LOST
    path : of the new seam
    stretch : on it
    at : (3,) mm, the place of the largest change, of equally large ones the middle one
    s : mm, its arc length
    old, new : values there; None where not measured
    old_why, new_why : why not
    """

    quantity: str
    kind: str
    path: SeamPath
    stretch: Stretch
    at: np.ndarray
    s: float
    old: float | None
    new: float | None
    old_why: str = ""
    new_why: str = ""

    @property
    def by(self) -> float | None:
        return None if self.old is None or self.new is None else self.new - self.old


class Places(Struct, frozen=True, eq=False, dict=True):
    """Where a path of the new seam is compared: at its own stations, and at those of the old seam that lie on it.

    All arrays have one entry for each place, in the order of ``s``.

    s : (m,) mm along the new path; points : (m, 3) mm
    paired : (m,) bool, whether the old seam has the place
    old_path, old_s : (m,) where on the old seam
    swapped : (m,) bool, whether inner and outer are exchanged there
    own : (m,) bool, whether it is a station of the new seam
    """

    s: np.ndarray
    points: np.ndarray
    paired: np.ndarray
    old_path: np.ndarray
    old_s: np.ndarray
    swapped: np.ndarray
    own: np.ndarray


def changes_of(pair: JointPair) -> Iterator[Change]:
    """All changes of all quantities of a joint, quantity after quantity as they are declared."""
    places = [_places(pair, k) for k in range(len(pair.after))]
    for key in columns_of(pair):
        for k, path in enumerate(pair.after):
            yield from _changes(pair, path, places[k], key)


def columns_of(pair: JointPair) -> list[str]:
    """Keys of the columns that both reviews have, as declared, then others."""
    old, new = columns_of_either(pair)
    present = old & new
    return [key for key in QUANTITIES if key in present] + sorted(present - set(QUANTITIES))


def columns_of_either(pair: JointPair) -> tuple[set[str], set[str]]:
    """Keys of the columns of the old review and of the new one."""
    old, new = ({key for path in paths for key in path.columns} for paths in (pair.before, pair.after))
    return old, new


def old_values(pair: JointPair, k: int, key: str) -> np.ndarray:
    """(n,) values of the old seam at the stations of ``pair.after[k]``; NaN where there is none."""
    feet, swapped = pair.onto_old[k], pair.swapped(k)
    return _at(pair.before, feet.path, feet.s, key, swapped)


def value_at(path: SeamPath, key: str, s: float) -> float | None:
    """A quantity's value at an arc length of a path; None where it is not measured."""
    value = float(_between(path, path.column(key), np.array([s]))[0])
    return value if np.isfinite(value) else None


def _places(pair: JointPair, k: int) -> Places:
    path, feet = pair.after[k], pair.onto_old[k]
    parts = [(path.s, path.points, feet.found, feet.path, feet.s, pair.swapped(k), np.ones(len(path.s), dtype=bool))]
    for i, (old, back) in enumerate(zip(pair.before, pair.onto_new, strict=True)):
        here = back.path == k
        count = int(here.sum())
        swapped = np.einsum("ij,ij->i", old.u[here], path.u[back.station[here]]) < 0
        yes = np.ones(count, dtype=bool)
        parts.append((back.s[here], back.points[here], yes, np.full(count, i), old.s[here], swapped, ~yes))
    columns = [np.concatenate(column) for column in zip(*parts, strict=True)]
    order = np.argsort(columns[0], kind="stable")
    return Places(*(column[order] for column in columns))


def _changes(pair: JointPair, path: SeamPath, places: Places, key: str) -> Iterator[Change]:
    new_low, new_high, new_none, new_all = _span([path], np.zeros(len(places.s), int), places.s, key, places.own)
    old_low, old_high, old_none, old_all = _old_span(pair, places, key)
    paired = places.paired
    with np.errstate(invalid="ignore"):
        least = comparable_tolerance(key, np.fmax(np.abs(new_low), np.abs(old_low)))
        whole = paired & ~new_none & ~old_none  # beside a place without a value the span may be wider than it shows
        marks = {
            UP: (new_low - old_high, whole & (new_low - old_high > least)),
            DOWN: (old_low - new_high, whole & (old_low - new_high > least)),
        }
    if key == "corner_radius":  # compared by its inverse
        marks = {UP: marks[DOWN], DOWN: marks[UP]}
    marks[MEASURED] = (np.ones(len(places.s)), paired & old_all & ~new_none)
    marks[LOST] = (np.ones(len(places.s)), paired & new_all & ~old_none)
    for kind, (size, mark) in marks.items():
        for stretch in stretches(mark, places.s, path.length, path.closed):
            if stretch.length < max(LEAST, pad(key)):
                continue
            change = _change(pair, path, places, key, kind, stretch, size)
            if not {change.old_why, change.new_why} & set(ACCEPTED_EVERYWHERE):  # ends and junctions tell of themselves
                yield change


def _change(
    pair: JointPair, path: SeamPath, places: Places, key: str, kind: str, stretch: Stretch, size: np.ndarray
) -> Change:
    inside = stretch.stations
    most = float(size[inside].max())
    worst = inside[size[inside] >= most - 1e-3 * max(1.0, abs(most))]
    i = int(worst[len(worst) // 2])
    new = _at([path], np.zeros(1, int), places.s[[i]], key, np.zeros(1, bool))[0]
    old = _at(pair.before, places.old_path[[i]], places.old_s[[i]], key, places.swapped[[i]])[0]
    old_key = other_side(key) if places.swapped[i] else key
    return Change(
        quantity=key,
        kind=kind,
        path=path,
        stretch=stretch,
        at=places.points[i],
        s=float(places.s[i]),
        old=None if kind == MEASURED or not np.isfinite(old) else float(old),
        new=None if kind == LOST or not np.isfinite(new) else float(new),
        old_why=pair.before[places.old_path[i]].reason(old_key, places.old_s[i]) if not np.isfinite(old) else "",
        new_why=path.reason(key, places.s[i]) if not np.isfinite(new) else "",
    )


def _old_span(pair: JointPair, places: Places, key: str) -> tuple[np.ndarray, ...]:
    own = ~places.own & places.paired
    straight = _span(pair.before, places.old_path, places.old_s, key, own)
    if not places.swapped.any() or other_side(key) == key:
        return straight
    other = _span(pair.before, places.old_path, places.old_s, other_side(key), own)
    return tuple(np.where(places.swapped, b, a) for a, b in zip(straight, other, strict=True))


def _span(
    paths: Sequence[SeamPath], index: np.ndarray, s: np.ndarray, key: str, own: np.ndarray
) -> tuple[np.ndarray, ...]:
    """Least and largest value of a column about each place, and whether any or every station there has none.

    At a station of the seam itself that is the station's value; elsewhere it spans the stations on both sides,
    and those less than the quantity's pad away.

    Returns
    -------
    (m,), (m,) float; NaN where nothing is measured
    (m,), (m,) bool
    """
    low, high = np.full(len(s), np.nan), np.full(len(s), np.nan)
    some, every = np.zeros(len(s), dtype=bool), np.zeros(len(s), dtype=bool)
    for k, path in enumerate(paths):
        here = np.flatnonzero(index == k)
        if not len(here):
            continue
        straight = path.is_reason(key, "straight")
        values = comparable(key, path.column(key), straight)
        n = len(path.s)
        pads = np.where(own[here], 1e-7, pad(key))
        first = np.searchsorted(path.s, s[here] - pads, "right") - 1
        last = np.searchsorted(path.s, s[here] + pads, "left")
        first, last = np.where(own[here], first + 1, first), np.where(own[here], last - 1, last)
        width = int((last - first).max()) + 1
        steps = first[:, None] + np.arange(width)[None, :]
        valid = steps <= last[:, None]
        if path.closed:
            steps = np.mod(steps, n)
        else:
            valid &= (steps >= 0) & (steps < n)
            steps = np.clip(steps, 0, n - 1)
        around = np.where(valid, values[steps], np.nan)
        known = np.isfinite(around)
        least = np.where(known, around, np.inf).min(axis=1)
        most = np.where(known, around, -np.inf).max(axis=1)
        low[here] = np.where(np.isfinite(least), least, np.nan)
        high[here] = np.where(np.isfinite(most), most, np.nan)
        some[here] = (valid & ~known).any(axis=1)
        every[here] = ~(valid & known).any(axis=1)
    return low, high, some, every


def _at(paths: Sequence[SeamPath], index: np.ndarray, s: np.ndarray, key: str, swapped: np.ndarray) -> np.ndarray:
    """(m,) values at arc lengths, between two stations by a straight line; NaN where either has none."""
    result = np.full(len(s), np.nan)
    for k, path in enumerate(paths):
        for is_swapped in (False, True):
            here = (index == k) & (swapped == is_swapped)
            if here.any():
                result[here] = _between(path, path.column(other_side(key) if is_swapped else key), s[here])
    return result


def _between(path: SeamPath, values: np.ndarray, s: np.ndarray) -> np.ndarray:
    at, known = path.corner_s, np.append(values, values[:1]) if path.closed else values
    s = np.where(s < at[0], s + path.length, s) if path.closed else np.clip(s, at[0], at[-1])
    right = np.clip(np.searchsorted(at, s), 1, len(at) - 1)
    share = (s - at[right - 1]) / np.maximum(at[right] - at[right - 1], 1e-12)
    left_value, right_value = known[right - 1], known[right]
    mixed = left_value + share * (right_value - left_value)
    return np.where(share < 1e-6, left_value, np.where(share > 1 - 1e-6, right_value, mixed))
