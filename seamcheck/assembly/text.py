"""The records of STEP text (ISO 10303-21): find them by number, keyword or place, without a parser."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cached_property

import numpy as np

_NUMBER = re.compile(rb"#(\d+)\s*=")
_REFERENCE = re.compile(rb"#(\d+)")
_STRING = re.compile(rb"'(?:[^']|'')*'")
_COMMENT = re.compile(rb"/\*.*?\*/", re.DOTALL)


class StepText:
    """One file's text with an index of its records, made when first needed.

    Parameters
    ----------
    data : text that begins with ISO-10303-21, after any number of line breaks
    """

    def __init__(self, data: bytes) -> None:
        self.data = data

    @cached_property
    def offsets(self) -> dict[int, int]:
        """Where each record begins, by its number."""
        return {int(found[1]): found.start() for found in _NUMBER.finditer(self.data)}

    @cached_property
    def _line_ends(self) -> np.ndarray:
        return np.flatnonzero(np.frombuffer(self.data, dtype=np.uint8) == 10)

    def line(self, offset: int) -> int:
        """The line (1-based) in which an offset lies."""
        return int(np.searchsorted(self._line_ends, offset)) + 1

    def has(self, keyword: bytes) -> bool:
        return keyword in self.data

    def record(self, number: int) -> bytes:
        """A record's text behind its '=' up to its ';', b'' when there is none."""
        offset = self.offsets.get(number)
        return b"" if offset is None else self.record_at(offset)

    def record_at(self, offset: int) -> bytes:
        begin = self.data.find(b"=", offset) + 1
        end = self.data.find(b";", begin)
        while end > 0 and self.data.count(b"'", begin, end) % 2:  # that one stands in a string
            end = self.data.find(b";", end + 1)
        return self.data[begin : end if end > 0 else len(self.data)].strip()

    def records_of(self, keyword: bytes) -> Iterator[tuple[int, int]]:
        """Number and offset of every record that has a keyword, in the order of the text."""
        pattern = re.compile(rb"(?<![A-Z0-9_])" + keyword + rb"\s*\(")
        for found in pattern.finditer(self.data):
            begin = max(self.data.rfind(b";", 0, found.start()), 0)
            number = _NUMBER.search(self.data, begin, found.start())
            if number is not None:
                yield int(number[1]), number.start()

    def references(self, record: bytes) -> list[int]:
        """Numbers that a record refers to, in order, strings left out."""
        return [int(number) for number in _REFERENCE.findall(without_strings(record))]


def without_strings(text: bytes) -> bytes:
    """Text with every string emptied."""
    return _STRING.sub(b"''", text) if b"'" in text else text


def without_comments(text: bytes) -> bytes:
    return _COMMENT.sub(b" ", text) if b"/*" in text else text


__all__ = ["StepText", "without_comments", "without_strings"]
