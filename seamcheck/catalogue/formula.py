"""Bounds written as short formulas, so that what is computed and what people read is one text."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache
from types import CodeType
from typing import Any


def evaluate(formula: str, value_of: Mapping[str, Any]) -> Any:
    """Value of a formula such as ``"collapse + reserve"`` or ``"larger(widths * rib_width, min)"``.

    Parameters
    ----------
    formula : declared in catalogue/rules.py, never taken from outside
    value_of : name -> number or (n,) array; asked only for the names that occur

    Notes
    -----
    ``larger`` and ``smaller`` pass over NaN where the other side is a number.
    """
    return eval(_compiled(formula), {"__builtins__": {}}, {**_functions(), **{n: value_of[n] for n in names(formula)}})


def names(formula: str) -> tuple[str, ...]:
    """Names that a formula needs, functions left out."""
    return tuple(sorted(set(_compiled(formula).co_names) - {"larger", "smaller", "abs", "log"}))


@lru_cache
def _compiled(formula: str) -> CodeType:
    return compile(formula, "<bound>", "eval")


@lru_cache
def _functions() -> Mapping[str, Callable[..., Any]]:
    import numpy as np  # not before the first bound is computed: --help and explain need no numpy

    return {"larger": np.fmax, "smaller": np.fmin, "abs": abs, "log": np.log}
