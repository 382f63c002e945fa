"""Tables with one row a station, picked from row by row."""

from __future__ import annotations

import numpy as np


def value_before(values: np.ndarray, index: np.ndarray) -> np.ndarray:
    """(n,) value, of any unit, of the interval before the given one, from values (n, k); NaN where there is none."""
    known = index > 0
    return np.where(known, take(values, np.maximum(index - 1, 0)), np.nan)


def shifted(values: np.ndarray, first: float) -> np.ndarray:
    """Values (n, k) of any unit with every column one place further out; the first column gets the given value."""
    out = np.full_like(values, first)
    out[:, 1:] = values[:, :-1]
    return out


def first_true(mask: np.ndarray) -> np.ndarray:
    """(n,) index of the first true column in each row, -1 where none is."""
    index = np.argmax(mask, axis=1)
    return np.where(take(mask, index), index, -1)


def take(values: np.ndarray, index: np.ndarray) -> np.ndarray:
    """(n,) one column per row; index -1 takes the first (mask it yourself)."""
    return np.take_along_axis(values, np.maximum(index, 0)[:, None], axis=1)[:, 0]
