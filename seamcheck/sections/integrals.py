"""Areas between two outlines of a section, and their middles, from dense tables of intervals."""

from __future__ import annotations

import numpy as np

from seamcheck.sections.intervals import Side


def positive_area(side: Side, value_a: np.ndarray, value_b: np.ndarray, inside: np.ndarray) -> np.ndarray:
    """(n,) mm²: integral over u of the positive part of a function given at both ends of every interval."""
    run = np.where(inside, side.b - side.a, 0.0)
    low, high = np.fmin(value_a, value_b), np.fmax(value_a, value_b)
    with np.errstate(invalid="ignore", divide="ignore"):
        part = np.where(low >= 0, (low + high) / 2, np.where(high > 0, high**2 / (2 * (high - low)), 0.0))
    return np.asarray(np.nansum(np.where(inside & np.isfinite(part), part, 0.0) * np.nan_to_num(run), axis=1))


def centre_of_area(side: Side, value_a: np.ndarray, value_b: np.ndarray, inside: np.ndarray) -> np.ndarray:
    """(n,) mm from P: middle along u of the area of positive_area; NaN where there is none."""
    with np.errstate(invalid="ignore", divide="ignore"):
        zero = value_a / (value_a - value_b)  # share of the interval at which the function crosses 0
        start = np.where((value_a < 0) & (value_b > 0), zero, 0.0)
        end = np.where((value_a > 0) & (value_b < 0), zero, 1.0)
        f, g = np.maximum(value_a, 0.0), np.maximum(value_b, 0.0)
        run = (end - start) * (side.b - side.a)
        part = run * (f + g) / 2
        place = side.a + start * (side.b - side.a) + run * np.where(f + g > 0, (f + 2 * g) / (3 * (f + g)), 0.0)
        keep = inside & np.isfinite(part)
        total = np.where(keep, part, 0.0).sum(axis=1)
        return np.asarray(np.where(keep, part * place, 0.0).sum(axis=1) / np.where(total > 0, total, np.nan))
