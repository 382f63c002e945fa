"""Contiguous stretches of a path on which a column breaks a bound."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.measure.material.track import Track


class Stretch(Struct, frozen=True):
    """One stretch: arc lengths (mm) of its ends, its length, and the index of its worst station.

    On a closed path a stretch over the start has ``start`` greater than ``end``.
    """

    start: float
    end: float
    length: float
    worst: int


def stretches_below(track: Track, values: np.ndarray, bound: float) -> list[Stretch]:
    """Stretches on which ``values`` (n,) lie below ``bound``, in its unit, in order along the path; NaN is in none."""
    low = np.nan_to_num(values, nan=np.inf) < bound
    if not low.any():
        return []
    n = len(low)
    if low.all():
        return [Stretch(float(track.s[0]), float(track.s[-1]), float(track.length.sum()), int(np.nanargmin(values)))]
    order = np.arange(n)
    if track.survey.closed:  # start at a station that is not in a stretch
        order = np.roll(order, -int(np.argmin(low)))
    runs: list[list[int]] = []
    previous = False
    for i in order:
        if low[i]:
            if not previous:
                runs.append([])
            runs[-1].append(int(i))
        previous = bool(low[i])
    runs.sort(key=lambda run: run[0])
    return [
        Stretch(
            float(track.s[run[0]]),
            float(track.s[run[-1]]),
            float(track.length[run].sum()),
            run[int(np.argmin(values[run]))],
        )
        for run in runs
    ]
