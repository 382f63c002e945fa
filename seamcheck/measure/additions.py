"""The one shape of every module's results."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct, field
from msgspec.structs import replace

from seamcheck.measure.table import PathSurvey, Shade, Survey


class Column(Struct, frozen=True, eq=False):
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
        """Values (n,) in the unit of their quantity, with one reason or (n,) reasons for those that are NaN."""
        values = np.asarray(values, dtype=float)
        return Column(values, np.where(np.isnan(values), reason, "").astype(str))

    def without(self, where: np.ndarray, reason: str | np.ndarray) -> Column:
        """The same column, NaN where the mask (n,) is true, for one reason or (n,) reasons."""
        if not np.any(where):
            return self
        return Column(np.where(where, np.nan, self.values), np.where(where, reason, self.reasons).astype(str))

    def at(self, rows: np.ndarray) -> Column:
        """The values and reasons of rows (k,), numbers of some of the (n,)."""
        return Column(self.values[rows], self.reasons[rows])


Columns = Mapping[str, Column]
"""Key of a quantity -> its column along one path."""

Value = dict[str, Any]
"""A value of the whole interface: {"value": float or None, "at": [x, y, z] or None, "why": str, ...}."""


def value_of(value: float | None, at: np.ndarray | Sequence[float] | None = None, why: str = "", **more: Any) -> Value:
    """A value of the whole interface with its place (3,) mm in the model's coordinates, and why or where it is so."""
    return {"value": value, "at": None if at is None else [float(c) for c in at], "why": why, **more}


class Additions(Struct, frozen=True, eq=False):
    """What one module adds to the survey of a joint.

    Attributes
    ----------
    values : key of a quantity -> value of the whole interface
    columns : path id -> columns of that path
    shades : path id -> strips of the rib top that the light reaches only in part
    """

    values: Mapping[str, Value]
    columns: Mapping[str, Columns] = field(default_factory=dict[str, Columns])
    shades: Mapping[str, Shade] = field(default_factory=dict[str, Shade])

    def __or__(self, other: Additions) -> Additions:
        """Both; of the same value or column that of the other one."""
        columns = {path: {**self.columns.get(path, {}), **more} for path, more in other.columns.items()}
        return Additions({**self.values, **other.values}, {**self.columns, **columns}, {**self.shades, **other.shades})

    def onto(self, survey: Survey) -> Survey:
        """The survey with all of this added to it."""
        paths = tuple(self.onto_path(path) for path in survey.paths)
        return replace(survey, paths=paths, interface={**survey.interface, **self.values})

    def onto_path(self, path: PathSurvey) -> PathSurvey:
        """One path with what belongs to it added."""
        columns, shade = self.columns.get(path.id, {}), self.shades.get(path.id)
        if shade is not None and path.shade is not None:
            shade = path.shade.joined(shade)
        return replace(
            path,
            columns={**path.columns, **{key: column.values for key, column in columns.items()}},
            reasons={**path.reasons, **{key: column.reasons for key, column in columns.items()}},
            shade=path.shade if shade is None else shade,
        )
