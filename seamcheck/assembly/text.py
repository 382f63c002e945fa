"""The records of STEP text (ISO 10303-21): find them by number, keyword or place, without a parser."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Iterator
from functools import cached_property

import numpy as np

_EQUALS, _HASH, _SEMICOLON, _CLOSING = 61, 35, 59, 41  # ASCII
_BLANKS, _DIGITS = 4, 10  # at most so many stand between '#' and '='

_DATA = re.compile(rb"\bDATA\s*(?:\([^;]*\)\s*)?;")
_NUMBER = re.compile(rb"#(\d+)\s*=")
_RECORD_LINE = re.compile(rb"[\r\n]#\d+\s*=")
_REFERENCE = re.compile(rb"#(\d+)")
_STRING = re.compile(rb"'(?:[^']|'')*'")
_STRING_OR_COMMENT = re.compile(rb"'(?:[^']|'')*'|/\*.*?\*/", re.DOTALL)
_COMMENT = re.compile(rb"/\*.*?\*/", re.DOTALL)

_LOOKED_AT = 200  # places that are looked at one by one, each at the cost of a search through the text
_LARGEST_TABLE = 10_000_000  # 8 bytes a number


class StepText:
    """One file's text with an index of its records, made when first needed.

    Parameters
    ----------
    data : text that begins with ISO-10303-21, after any number of line breaks
    """

    def __init__(self, data: bytes) -> None:
        self.data = data

    @cached_property
    def _index(self) -> tuple[np.ndarray, np.ndarray]:
        """Numbers of all records, ascending, and the offset of the '#' with which each begins."""
        letters = np.frombuffer(self.data, dtype=np.uint8)
        at = np.flatnonzero(letters == _EQUALS)
        at = at[at > 0] - 1  # then walk back from every '=': blanks, digits, '#'
        for _ in range(_BLANKS):
            at = at - _is_blank(letters[at])
        numbers, scale = np.zeros(len(at), dtype=np.int64), 1
        for _ in range(_DIGITS):
            digit = letters[at].astype(np.int64) - 48
            more = (digit >= 0) & (digit <= 9)
            numbers += np.where(more, digit * scale, 0)
            at = at - more
            scale *= 10
        begins = letters[at] == _HASH
        order = np.argsort(numbers[begins], kind="stable")
        return numbers[begins][order], at[begins][order]

    def offset(self, number: int) -> int | None:
        """Where a record begins; of several with one number the last, as the kernel takes it."""
        numbers, offsets = self._index
        place = int(np.searchsorted(numbers, number, side="right")) - 1
        return int(offsets[place]) if place >= 0 and numbers[place] == number else None

    def offsets(self, numbers: Collection[int]) -> list[int]:
        """Where those of some records begin that are there; see ``offset``."""
        known, offsets = self._index
        wanted = np.fromiter(numbers, dtype=np.int64, count=len(numbers))
        place = np.searchsorted(known, wanted, side="right") - 1
        there = place >= 0
        there[there] = known[place[there]] == wanted[there]
        return [int(offset) for offset in offsets[place[there]]]

    @property
    def count(self) -> int:
        """Number of records."""
        return len(self._index[0])

    @cached_property
    def _referred(self) -> tuple[np.ndarray, np.ndarray]:
        """The different numbers behind any '#', ascending, those in strings and comments too; how often each."""
        return _counted(_references(self.data))

    def unreferred(self, numbers: list[int]) -> list[int]:
        """Those of some records that no record refers to, in order."""
        different, often = self._referred
        places = np.searchsorted(different, np.array(numbers, dtype=np.int64))
        return [n for n, place in zip(numbers, places, strict=True) if often[place] < 2]  # 1: its own number

    def missing(self) -> list[int]:
        """Numbers that records refer to and none has, ascending."""
        defined = self._index[0]
        suspects = _without(self._referred[0], defined).tolist()  # with those in strings and comments
        if not suspects:
            return []
        plain = without_strings_and_comments(self.data[max(0, self.data.find(b"DATA")) :])
        missing = set(_without(_counted(_references(plain))[0], defined).tolist())
        # behind a quotation mark without its partner all is taken for strings: look at the record alone, too
        unsure = [n for n in suspects if n not in missing][:_LOOKED_AT]
        missing.update(number for number in unsure if self._is_referred_in_a_record(number))
        return sorted(missing)

    def _is_referred_in_a_record(self, number: int) -> bool:
        for found in re.finditer(rb"#%d(?!\d)" % number, self.data):
            begin = self.data.rfind(b";", 0, found.start()) + 1
            if (
                _NUMBER.match(self.data[begin : begin + 100].lstrip())
                and self.data.count(b"'", begin, found.start()) % 2 == 0
                and self.data.rfind(b"/*", 0, found.start()) <= self.data.rfind(b"*/", 0, found.start())
            ):
                return True
        return False

    def repeated(self) -> list[int]:
        """Numbers that several records have, ascending; of very many the first."""
        numbers, offsets = self._index
        again = np.flatnonzero(np.diff(numbers) == 0)
        places = np.union1d(again, again + 1)[:_LOOKED_AT].tolist()  # of records whose number stands there again
        found = Counter(int(numbers[place]) for place in places if not self._is_quoted(int(offsets[place])))
        return sorted(number for number, count in found.items() if count > 1)

    def without_repeated(self) -> bytes:
        """The text with blanks in place of all records but the last of each number: the kernel may choke on them."""
        repeated = self.repeated()
        if not repeated:
            return self.data
        numbers, offsets = self._index
        data = bytearray(self.data)
        for number in repeated:
            begin, end = np.searchsorted(numbers, number, side="left"), np.searchsorted(numbers, number, side="right")
            for offset in offsets[begin : end - 1].tolist():
                if not self._is_quoted(offset):
                    following = _RECORD_LINE.search(self.data, offset + 1)  # quotation marks may be damaged
                    stop = min(self._end(offset) + 1, following.start() if following else len(self.data))
                    data[offset:stop] = re.sub(rb"[^\r\n]", b" ", self.data[offset:stop])
        return bytes(data)

    def unfinished(self) -> list[int]:
        """Offsets in the data section of every ';' that closes no record, for want of a ')' before it."""
        begin, end = _DATA.search(self.data), self.data.rfind(b"ENDSEC")
        if begin is None or end < begin.end():
            return []
        letters = np.frombuffer(self.data, dtype=np.uint8)
        at = np.flatnonzero(letters[begin.end() : end] == _SEMICOLON) + begin.end()
        before = at - 1
        for _ in range(_BLANKS):
            before = before - _is_blank(letters[before])
        suspects = at[letters[before] != _CLOSING].tolist()
        return [offset for offset in suspects[:_LOOKED_AT] if not self._is_aside(offset)]

    def _is_quoted(self, offset: int) -> bool:
        """Whether a place stands in a string or in a comment, as its own line tells."""
        begin = self.data.rfind(b"\n#", 0, offset) + 1
        in_string = self.data.count(b"'", begin, offset) % 2 == 1
        return in_string or self.data.rfind(b"/*", 0, offset) > self.data.rfind(b"*/", 0, offset)

    def _is_aside(self, offset: int) -> bool:
        """Whether a place stands in a string, in a comment, or behind one or behind the end of a section."""
        begin = self.data.rfind(b"\n#", 0, offset) + 1
        if self._is_quoted(offset):
            return True
        plain = without_strings_and_comments(self.data[begin:offset]).rstrip()
        return plain.endswith((b")", b"ENDSEC", b"DATA"))

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
        offset = self.offset(number)
        return b"" if offset is None else self.record_at(offset)

    def record_at(self, offset: int) -> bytes:
        begin = self.data.find(b"=", offset) + 1
        return self.data[begin : self._end(begin)].strip()

    def _end(self, begin: int) -> int:
        """Offset of the ';' that closes a record."""
        end = self.data.find(b";", begin)
        while end > 0 and self.data.count(b"'", begin, end) % 2:  # that one stands in a string
            end = self.data.find(b";", end + 1)
        return end if end > 0 else len(self.data)

    def records_of(self, keyword: bytes) -> Iterator[tuple[int, int]]:
        """Number and offset of every record that has a keyword, in the order of the text."""
        at = self.data.find(keyword)
        while at >= 0:
            after = at + len(keyword)
            begins = not self.data[at - 1 : at].isalnum() and self.data[at - 1 : at] != b"_"
            if begins and self.data[after : after + 20].lstrip().startswith(b"("):
                record = self.data.rfind(b";", 0, at) + 1
                number = _NUMBER.search(self.data, record, at)
                if number is not None:
                    yield int(number[1]), number.start()
            at = self.data.find(keyword, after)

    def references(self, record: bytes) -> list[int]:
        """Numbers that a record refers to, in order, strings left out."""
        return [int(number) for number in _REFERENCE.findall(without_strings(record))]


def _references(data: bytes) -> np.ndarray:
    """All numbers that stand directly behind a '#', in the order of the text."""
    letters = np.frombuffer(data + b" " * (_DIGITS + 1), dtype=np.uint8)
    at = np.flatnonzero(letters == _HASH) + 1
    at = at[letters[at] - 48 < 10]  # unsigned: what is below '0' wraps to above 9
    numbers = np.zeros(len(at), dtype=np.int64)
    going = np.ones(len(at), dtype=bool)
    for place in range(_DIGITS):
        digit = letters[at + place] - 48
        going &= digit < 10
        if not going.any():
            break
        numbers = np.where(going, numbers * 10 + digit, numbers)
    return numbers


def _counted(numbers: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The different numbers, ascending, and how often each occurs."""
    if numbers.max(initial=0) > _LARGEST_TABLE:
        return np.unique(numbers, return_counts=True)
    often = np.bincount(numbers)  # without sorting them
    different = np.flatnonzero(often)
    return different, often[different]


def _without(some: np.ndarray, others: np.ndarray) -> np.ndarray:
    """Those of ``some`` that are not among ``others``; both ascending."""
    if not len(others):
        return some
    places = np.minimum(np.searchsorted(others, some), len(others) - 1)
    return np.asarray(some[others[places] != some])


def _is_blank(letters: np.ndarray) -> np.ndarray:
    return np.asarray((letters == 32) | (letters == 9) | (letters == 10) | (letters == 13))


def without_strings(text: bytes) -> bytes:
    """Text with every string emptied."""
    return _STRING.sub(b"''", text) if b"'" in text else text


def without_strings_and_comments(text: bytes) -> bytes:
    """Text with every string emptied and every comment left out."""
    return _STRING_OR_COMMENT.sub(lambda found: b"''" if found[0].startswith(b"'") else b" ", text)


def without_comments(text: bytes) -> bytes:
    """The text of a STEP file with a space for each comment."""
    return _COMMENT.sub(b" ", text) if b"/*" in text else text
