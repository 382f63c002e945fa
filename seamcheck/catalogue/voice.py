"""The language and the unit of length in which reports are written; documents are always English and in mm.

A report asks for a text by its English wording or, where it comes from the catalogue, by its key. ``speaking`` sets
language and unit for what is written within it. The German texts stand in ``languages/de.po`` (gettext), read by Babel.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from string import Formatter
from typing import Any

from msgspec import Struct

from seamcheck.catalogue.kind_words import worded

LANGUAGES = {"en": "English", "de": "Deutsch"}
"""Code of a language -> its own name."""

LENGTHS = ("mm", "in")
"""Units in which lengths can be written."""

_INCH: dict[str, tuple[float, str, int]] = {
    "mm": (25.4, "in", 2),
    "mm²": (25.4**2, "in²", 3),
    "mm³": (25.4**3, "in³", 4),
    "mm/s": (25.4, "in/s", 1),
}
"""Unit -> how much of it makes one of the other, that one, and how many more decimals it takes to say as much."""

_FINEST = 4
"""Decimals of an inch that say enough: 0.0001 in are 0.0025 mm."""


class Voice(Struct, frozen=True):
    """How a report speaks.

    Attributes
    ----------
    language : a key of LANGUAGES
    length : one of LENGTHS
    melts : what stands in for the rib that the texts speak of ('wall', see kind_words.py), '' for none
    """

    language: str = "en"
    length: str = "mm"
    melts: str = ""


_ENGLISH = Voice()
_VOICE: ContextVar[Voice] = ContextVar("voice", default=_ENGLISH)


def voice() -> Voice:
    """The voice that holds here."""
    return _VOICE.get()


@contextmanager
def speaking(wanted: Voice) -> Iterator[None]:
    """Everything written within speaks like this."""
    token = _VOICE.set(wanted)
    try:
        yield
    finally:
        _VOICE.reset(token)


def tr(english: str, /, **values: object) -> str:
    """A fixed text of a report in its language, its {places} filled in.

    Parameters
    ----------
    english : as it is written in the code; it is what a language without this text shows
    values : by the names of its places; a number whose place says how it is written gets the language's decimal sign
    """
    text = translated("", english)
    return _FILLING.vformat(text, (), values) if values else text


class _Filling(Formatter):
    def format_field(self, value: object, format_spec: str) -> str:
        text = format(value, format_spec)
        return localised(text) if format_spec and isinstance(value, int | float) else text


_FILLING = _Filling()


def translated(key: str, english: str) -> str:
    """A text of the catalogue in the language of the report; the English one where that has none.

    Parameters
    ----------
    key : of the text, '' for a fixed text of a report, which is found by its English wording
    """
    language = voice().language
    text = english if language == "en" else _texts(language).get((key, "" if key else english), english)
    return text if key.startswith("standing/") else worded(text, voice().melts, language)  # a source says what it says


def decimal_sign() -> str:
    """What stands before the decimals."""
    return _decimal_sign(voice().language)


def localised(number: str) -> str:
    """A number as Python writes it with the decimal sign of the language."""
    return number.replace(".", decimal_sign())


def in_voice(value: float, unit: str, decimals: int) -> tuple[float, str, int]:
    """A value, its unit and its decimals as the report writes them."""
    if voice().length == "mm" or unit not in _INCH:
        return value, unit, decimals
    factor, other, more = _INCH[unit]
    return value / factor, other, min(decimals + more, max(_FINEST, more))


def unit_in_voice(unit: str) -> str:
    """The unit in which the report writes values of a unit."""
    return in_voice(0.0, unit, 0)[1]


@cache
def _decimal_sign(language: str) -> str:
    if language == "en":
        return "."
    from babel.numbers import get_decimal_symbol

    return get_decimal_symbol(language)


@cache
def _texts(language: str) -> Mapping[tuple[str, str], str]:
    """(key, '') or ('', English wording) -> text."""
    return {
        (m.context or "", "" if m.context else m.id): m.string for m in read_catalogue(language) if m.id and m.string
    }


def read_catalogue(language: str) -> Any:
    """The texts of a language as Babel's catalogue."""
    from importlib import resources

    from babel.messages.pofile import read_po

    with resources.files("seamcheck.catalogue.languages").joinpath(f"{language}.po").open("rb") as stream:
        return read_po(stream, locale=language)
