"""The one shape in which every module hands on what it has measured."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, slots=True, eq=False)
class Column:
    """One quantity along one path.

    Attributes
    ----------
    values : (n,) float, NaN where not measured
    reasons : (n,) str, '' where measured, else a key of REASONS in catalogue/quantities.py
    """

    values: np.ndarray
    reasons: np.ndarray

    @staticmethod
    def of(values: np.ndarray, reason: str | np.ndarray = "broken-geometry") -> Column:
        """Values with one reason, or (n,) reasons, for those that are NaN."""
        values = np.asarray(values, dtype=float)
        return Column(values, np.where(np.isnan(values), reason, "").astype(str))

    def without(self, where: np.ndarray, reason: str | np.ndarray) -> Column:
        """The same, not measured where ``where`` (n,) is true, for one reason or (n,) reasons."""
        return Column(np.where(where, np.nan, self.values), np.where(where, reason, self.reasons).astype(str))


Columns = Mapping[str, Column]
"""Key of a quantity -> its column along one path."""
