"""Areas between two outlines of a section, and their middles, from intervals in which both are straight."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.sections.intervals import Side


class Strips(Struct, frozen=True, eq=False):
    """Intervals of some sections, and a height at both ends of each: only those that something is measured of.

    row (k,) number of the section, ascending; a, b (k,) mm from P, a < b; value_a, value_b (k,) mm
    """

    row: np.ndarray
    a: np.ndarray
    b: np.ndarray
    value_a: np.ndarray
    value_b: np.ndarray

    @staticmethod
    def of(side: Side, value_a: np.ndarray, value_b: np.ndarray, inside: np.ndarray) -> Strips:
        """Those of tables (n, k), mm, that a mask (n, k) holds."""
        row, column = np.nonzero(inside)
        return Strips(row, *(values[row, column] for values in (side.a, side.b, value_a, value_b)))

    def first(self, where: np.ndarray, sections: int) -> np.ndarray:
        """(sections,) number of the first strip of each section of a mask (k,); -1 where there is none."""
        found = np.full(sections, -1)
        index = np.flatnonzero(where)[::-1]
        found[self.row[index]] = index
        return found


def positive_area(strips: Strips, by: np.ndarray | float, inside: np.ndarray, sections: int) -> np.ndarray:
    """(sections,) mm²: integral over u of the positive part of the heights of some strips, each changed by an amount.

    Parameters
    ----------
    by : mm added to all, or (k,); inside : (k,) bool, which strips count
    """
    value_a, value_b = strips.value_a + by, strips.value_b + by
    low, high = np.fmin(value_a, value_b), np.fmax(value_a, value_b)
    with np.errstate(invalid="ignore", divide="ignore"):
        part = np.where(low >= 0, (low + high) / 2, np.where(high > 0, high**2 / (2 * (high - low)), 0.0))
    area = np.where(inside & np.isfinite(part), part * np.nan_to_num(strips.b - strips.a), 0.0)
    return np.bincount(strips.row, area, sections)


def centre_of_area(strips: Strips, by: np.ndarray | float, inside: np.ndarray, sections: int) -> np.ndarray:
    """(n,) mm from P, of each section: middle along u of the area of positive_area; NaN where there is none."""
    value_a, value_b = strips.value_a + by, strips.value_b + by
    with np.errstate(invalid="ignore", divide="ignore"):
        zero = value_a / (value_a - value_b)  # share of the interval at which the function crosses 0
        start = np.where((value_a < 0) & (value_b > 0), zero, 0.0)
        end = np.where((value_a > 0) & (value_b < 0), zero, 1.0)
        f, g = np.maximum(value_a, 0.0), np.maximum(value_b, 0.0)
        run = (end - start) * (strips.b - strips.a)
        part = run * (f + g) / 2
        place = strips.a + start * (strips.b - strips.a)
        place = place + run * np.where(f + g > 0, (f + 2 * g) / (3 * (f + g)), 0.0)
        keep = inside & np.isfinite(part)
        total = np.bincount(strips.row, np.where(keep, part, 0.0), sections)
        moment = np.bincount(strips.row, np.where(keep, part * place, 0.0), sections)
        return np.asarray(moment / np.where(total > 0, total, np.nan))
