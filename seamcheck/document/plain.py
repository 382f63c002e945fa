"""Plain values of the review document: rounded numbers, and JSON text that is always the same."""

from __future__ import annotations

import json
import math
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import msgspec

if TYPE_CHECKING:
    import numpy as np

DECIMALS = 6
"""Digits after the point of every number in the document."""

_ONLY_NUMBERS = frozenset({float, type(None)})
_LONG = 16  # numbers in a list from which it is quicker to take them as an array
_name_text = json.JSONEncoder(ensure_ascii=False).encode
_value_text = json.JSONEncoder(ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode


def number(value: float | None) -> float | None:
    """A finite number rounded; None for None, NaN and infinities."""
    if value is None or not math.isfinite(value):
        return None
    return round(float(value), DECIMALS) + 0.0  # + 0.0 turns -0.0 into 0.0


def numbers(values: np.ndarray | Sequence[float | None]) -> list[Any]:
    """An array of any shape as nested lists of rounded numbers, None where it is not finite."""
    import numpy as np

    values = np.asarray(values, dtype=float)
    plain: list[Any] = (np.round(values, DECIMALS) + 0.0).tolist()
    if np.isfinite(values).all():
        return plain
    if values.ndim == 1:
        return [v if math.isfinite(v) else None for v in plain]
    return [numbers(row) for row in values]


def plain(record: msgspec.Struct) -> dict[str, Any]:
    """A record as a dict of plain values: numbers rounded, None for those that are not finite, no unset keys."""
    result: dict[str, Any] = _plain(record)
    return result


def _plain(value: Any) -> Any:
    kind = type(value)
    if kind is float:
        return number(value)
    if kind is str or kind is int or kind is bool or value is None:
        return value
    if kind is dict:
        return {key: _plain(item) for key, item in value.items()}
    if kind is list or kind is tuple:
        if len(value) >= _LONG and _ONLY_NUMBERS.issuperset(map(type, value)):
            return numbers(value)  # None is NaN there
        return [_plain(item) for item in value]
    if isinstance(value, msgspec.Struct):
        pairs = zip(value.__struct_encode_fields__, value.__struct_fields__, strict=True)
        items = ((key, getattr(value, name)) for key, name in pairs)
        return {key: _plain(item) for key, item in items if item is not msgspec.UNSET}
    import numpy as np

    if isinstance(value, np.ndarray):
        return numbers(value)
    if isinstance(value, np.integer):
        return int(value)
    if isinstance(value, np.floating):
        return number(float(value))
    if isinstance(value, bool | int | float | str):
        return value
    if isinstance(value, Mapping):
        return {str(key): _plain(item) for key, item in value.items()}
    raise TypeError(f"{value!r} can't stand in the review document")


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
            parts.append(f"{mark}{deeper}{_name_text(key)}: ")
            _write(item, deeper, parts)
            mark = ",\n"
        parts.append(f"\n{indent}}}")
    elif isinstance(value, list) and dict in set(map(type, value)):
        mark = "[\n"
        for item in value:
            parts.append(mark + deeper)
            _write(item, deeper, parts)
            mark = ",\n"
        parts.append(f"\n{indent}]")
    else:
        parts.append(_value_text(value))
