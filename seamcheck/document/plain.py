"""Plain values of the review document: rounded numbers, and JSON text that is always the same."""

from __future__ import annotations

import json
import math
from typing import Any

import numpy as np

DECIMALS = 6
"""Digits after the point of every number in the document."""


def number(value: float | None) -> float | None:
    """A finite number rounded; None for None, NaN and infinities."""
    if value is None or not math.isfinite(value):
        return None
    return round(float(value), DECIMALS) + 0.0  # + 0.0 turns -0.0 into 0.0


def numbers(values: np.ndarray) -> list[Any]:
    """An array of any shape as nested lists of rounded numbers, None where it is not finite."""
    values = np.asarray(values, dtype=float)
    plain: list[Any] = (np.round(values, DECIMALS) + 0.0).tolist()
    if np.isfinite(values).all():
        return plain
    if values.ndim == 1:
        return [v if math.isfinite(v) else None for v in plain]
    return [numbers(row) for row in values]


def to_json(document: Any) -> str:
    """JSON text: objects and lists of objects indented, lists of numbers on one line."""
    parts: list[str] = []
    _write(document, "", parts)
    text = "".join(parts) + "\n"
    return text.encode("utf-8", "replace").decode("utf-8")  # lone surrogates from damaged names


def _write(value: Any, indent: str, parts: list[str]) -> None:
    deeper = indent + " "
    if isinstance(value, dict) and value:
        mark = "{\n"
        for key, item in value.items():
            parts.append(f"{mark}{deeper}{json.dumps(key, ensure_ascii=False)}: ")
            _write(item, deeper, parts)
            mark = ",\n"
        parts.append(f"\n{indent}}}")
    elif isinstance(value, list) and any(isinstance(item, dict) for item in value):
        mark = "[\n"
        for item in value:
            parts.append(mark + deeper)
            _write(item, deeper, parts)
            mark = ",\n"
        parts.append(f"\n{indent}]")
    else:
        parts.append(json.dumps(value, ensure_ascii=False, allow_nan=False, separators=(",", ":")))
