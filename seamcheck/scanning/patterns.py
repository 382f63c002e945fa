"""Which files of a folder are models."""

from __future__ import annotations

from collections.abc import Iterable
from fnmatch import translate
from functools import cache
from re import Pattern, compile

from msgspec import Struct

from seamcheck.errors import UsageError

STEP_ENDINGS = (".step", ".stp", ".p21")
GZIP_ENDINGS = (".gz",)
ARCHIVE_ENDINGS = (".zip", ".stpz", ".gz")

DEFAULT = ("*.step", "*.stp", "*.p21", "*.stpz", "*.step.gz", "*.stp.gz", "*.p21.gz", "*.zip")


class Patterns(Struct, frozen=True):
    """Patterns for the names of files, upper and lower case alike; ``*``, ``?`` and ``[...]`` as in a shell."""

    patterns: tuple[str, ...] = DEFAULT

    def match(self, name: str) -> bool:
        return _any_of(self.patterns).match(name.lower()) is not None


@cache
def _any_of(patterns: tuple[str, ...]) -> Pattern[str]:
    return compile("|".join(translate(pattern) for pattern in patterns))


def patterns_from(given: Iterable[str]) -> Patterns:
    """The given patterns, or the default ones where none is given."""
    given = tuple(pattern.strip().lower() for pattern in given)
    for pattern in given:
        if not pattern or "/" in pattern or "\\" in pattern:
            raise UsageError(f"A pattern names files, not folders, such as *.stp or lid-*.step; got {pattern!r}.")
    return Patterns(given or DEFAULT)


def is_archive(name: str) -> bool:
    """Whether a file of this name holds other files."""
    return name.lower().endswith(ARCHIVE_ENDINGS)


def unpacked_name(name: str) -> str:
    """'lid.step.gz' -> 'lid.step', 'lid.stpz' -> 'lid.stp'."""
    low = name.lower()
    if low.endswith(".gz"):
        return name[:-3] or name
    return name[:-1] if low.endswith(".stpz") else name


def stem(name: str) -> str:
    """The name without its endings: 'lid.step.gz' -> 'lid'."""
    name = unpacked_name(name)
    for ending in STEP_ENDINGS:
        if name.lower().endswith(ending):
            return name[: -len(ending)]
    return name.rpartition(".")[0] or name


def ending(name: str) -> str:
    """'drawing.PDF' -> '.pdf'; '' without one."""
    dot = name.rfind(".")
    return name[dot:].lower()[:20] if dot > 0 else ""
