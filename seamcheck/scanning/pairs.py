"""Models that come as separate files: which of them belong together."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterable, Sequence
from pathlib import Path

from msgspec import Struct

from seamcheck.errors import UsageError
from seamcheck.scanning.patterns import stem
from seamcheck.settings.guard import bytes_of

MOST_BYTES = 20_000_000
"""Of a list of files; a line has some 100."""


class PairRule(Struct, frozen=True):
    """Two words by which the names of two files differ: 'ws-7-lid.step' and 'ws-7-case.step'."""

    cover: str
    base: str


def rules_from(given: Iterable[str]) -> tuple[PairRule, ...]:
    """'lid=case' as a rule."""
    rules = []
    for text in given:
        cover, sign, base = (piece.strip().lower() for piece in text.partition("="))
        if not sign or not cover or not base or cover == base:
            raise UsageError(f"A rule for pairs is two words, such as lid=case; got {text!r}.")
        rules.append(PairRule(cover, base))
    return tuple(rules)


def paired(names: Sequence[str], rules: Sequence[PairRule]) -> list[tuple[str, ...]]:
    """The names of one folder in groups: pairs that the rules find, all others alone; in the order of names.

    A name pairs where exactly one other name is the same but for the rule's word; a file is in one pair at most.
    """
    partner: dict[str, str] = {}
    by_stem: dict[str, list[str]] = {}
    for name in names:
        by_stem.setdefault(stem(name).lower(), []).append(name)
    for rule in rules:
        for name in names:
            own = stem(name).lower()
            if name in partner or len(by_stem[own]) != 1:
                continue
            wanted = {own[: at.start()] + rule.base + own[at.end() :] for at in re.finditer(re.escape(rule.cover), own)}
            found = [other for key in sorted(wanted) for other in by_stem.get(key, ()) if other not in partner]
            if len(found) == 1 and found[0] != name:
                partner[name], partner[found[0]] = found[0], ""
    groups: list[tuple[str, ...]] = []
    for name in names:
        other = partner.get(name)
        if other is None:
            groups.append((name,))
        elif other:
            groups.append((name, other))
    return groups


def read_list(file: Path) -> list[tuple[Path, ...]]:
    """Groups of files from a list: one model a line, its files separated by commas, the cover's first.

    Names are taken from the folder of the list on. Empty lines and lines that begin with '#' are passed over.
    """
    try:
        lines = bytes_of(file, "the list of files", MOST_BYTES).decode("utf-8-sig").splitlines()
    except UnicodeDecodeError:
        raise UsageError(f"{file} is not a list of files: it is not UTF-8 text.") from None
    groups = []
    for number, line in enumerate(lines, start=1):
        if not line.strip() or line.lstrip().startswith("#"):
            continue
        names = [cell.strip() for cell in next(csv.reader([line], skipinitialspace=True))]
        if len(names) < 2 or not all(names) or len(set(names)) < len(names):
            found = "an empty name" if not all(names) else "one twice" if len(names) > 1 else "one name"
            raise UsageError(
                f"{file}, line {number}: two or more different files belong here, such as lid.step, case.step; "
                f"there is {found}."
            )
        groups.append(tuple(file.parent / name for name in names))
    return groups
