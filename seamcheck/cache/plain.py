"""Values as JSON and back, exactly: frozen things, arrays, tuples, NaN. Nothing that is read can run code."""

from __future__ import annotations

import base64
from collections.abc import Mapping
from typing import Any

import msgspec
import numpy as np

from seamcheck.catalogue.message import Message, Sentence

MOST_ARRAY_BYTES = 100_000_000
"""Of an array of words: a long word that is named many times unpacks to much more than it takes."""

_KIND = "!"  # key that marks an object that is no mapping


def plain(value: Any, things: Mapping[str, type]) -> Any:
    """A value in terms of JSON.

    Parameters
    ----------
    value : None, numbers, text, lists, tuples, mappings with text as keys, arrays, and records in ``things``
    things : name -> class of a record

    Raises
    ------
    TypeError : anything else
    """
    if isinstance(value, Sentence):
        return {_KIND: "sentence", "of": msgspec.to_builtins(value.message)}
    if value is None or isinstance(value, bool | int | str):
        return value
    if isinstance(value, np.generic):
        value = value.item()
        return plain(value, things)
    if isinstance(value, float):
        return value  # Python writes the shortest text that is read as the same number; NaN and infinity too
    if isinstance(value, np.ndarray):
        return _array(value)
    if isinstance(value, tuple):
        return {_KIND: "tuple", "of": [plain(item, things) for item in value]}
    if isinstance(value, list):
        return [plain(item, things) for item in value]
    if isinstance(value, Mapping):
        if any(not isinstance(key, str) or key == _KIND for key in value):
            raise TypeError(f"a mapping with keys such as {next(iter(value))!r} can't be kept")
        return {key: plain(item, things) for key, item in value.items()}
    name = type(value).__name__
    if isinstance(value, msgspec.Struct) and things.get(name) is type(value):
        return {_KIND: name, **{field: plain(item, things) for field, item in msgspec.structs.asdict(value).items()}}
    raise TypeError(f"a {name} can't be kept")


def restored(value: Any, things: Mapping[str, type]) -> Any:
    """The value that ``plain`` was given."""
    if isinstance(value, list):
        return [restored(item, things) for item in value]
    if not isinstance(value, dict):
        return value
    kind = value.get(_KIND)
    if kind is None:
        return {key: restored(item, things) for key, item in value.items()}
    if kind == "tuple":
        return tuple(restored(item, things) for item in value["of"])
    if kind == "sentence":
        return Sentence.of(msgspec.convert(value["of"], Message))
    if kind == "array":
        raw = base64.b64decode(value["data"], validate=True)
        return np.frombuffer(raw, dtype=np.dtype(value["dtype"])).reshape(value["shape"]).copy()
    if kind == "words":
        codes = restored(value["codes"], things)
        words = np.array(value["words"], dtype=value["dtype"])
        if (
            words.dtype.kind not in "UO"
            or not all(isinstance(word, str) for word in value["words"])
            or words.dtype.itemsize * codes.size > MOST_ARRAY_BYTES
        ):
            raise ValueError("no array of words that was kept")
        return words[codes]
    return things[kind](**{key: restored(item, things) for key, item in value.items() if key != _KIND})


def _array(value: np.ndarray) -> dict[str, Any]:
    is_text = value.dtype.kind == "O" and all(isinstance(item, str) for item in value.flat)
    if value.dtype.kind == "U" or is_text:  # few different words, often repeated
        words, codes = np.unique(value, return_inverse=True)
        numbers = _array(codes.reshape(value.shape).astype(np.int32))
        return {_KIND: "words", "dtype": value.dtype.str, "words": words.tolist(), "codes": numbers}
    if value.dtype.kind not in "bif":
        raise TypeError(f"an array of {value.dtype} can't be kept")
    data = base64.b64encode(np.ascontiguousarray(value).tobytes()).decode()
    return {_KIND: "array", "dtype": value.dtype.str, "shape": list(value.shape), "data": data}
