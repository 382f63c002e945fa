"""The settings file ``seamcheck.toml``: found, read, and every fault named with its line."""

from __future__ import annotations

import os
import re
from collections.abc import Iterable, Mapping
from pathlib import Path

from msgspec.structs import replace

from seamcheck.errors import UsageError
from seamcheck.settings.guard import text_of
from seamcheck.settings.reading import SettingFault
from seamcheck.settings.settings import Settings, read

NAME = "seamcheck.toml"


def find_settings_file(model: Path) -> Path | None:
    """The nearest ``seamcheck.toml`` beside the model or in a folder above it.

    Whatever bears the name counts, a link that leads nowhere too: read, it is refused, for to pass it by would be to
    judge by other limits than were meant.
    """
    return first_in(model.resolve().parents)


def first_in(folders: Iterable[Path]) -> Path | None:
    """The first ``seamcheck.toml`` in these folders, whatever it is."""
    return next((folder / NAME for folder in folders if os.path.lexists(folder / NAME)), None)


def table_named_by(path: Path) -> Path | None:
    """The table of tolerances that a settings file names; None where it names none or can't be read."""
    import tomllib

    try:
        table = tomllib.loads(text_of(path, "the settings file"))
        named = table["tolerance"]["file"]
    except (UsageError, ValueError, KeyError, TypeError, RecursionError):
        return None
    return path.parent / named if isinstance(named, str) else None


def read_settings(path: Path) -> Settings:
    """Settings of one file, over the defaults.

    Raises
    ------
    UsageError : the file can't be read, is not TOML, or has a key or value that can't be taken; the sentence
        names file and line, and the nearest key that exists
    """
    text = text_of(path, "the settings file")
    return parse_settings(text, str(path), path.name)


def read_found(path: Path) -> Settings:
    """As ``read_settings``, for a file that was found, not named: may be a stranger's link to something else.

    Raises
    ------
    UsageError : as ``read_settings``; of a link into another folder the sentence tells nothing that the file holds
    """
    try:
        return read_settings(path)
    except UsageError:
        target = Path(os.path.realpath(path))
        if target.parent == Path(os.path.realpath(path.parent)):
            raise
        raise UsageError(
            f"{path}: this is a link to a file elsewhere that holds no good settings. To see what is wrong, name it: "
            f"--settings {path}."
        ) from None


def parse_settings(text: str, where: str = NAME, name: str = NAME) -> Settings:
    """Settings of a file's text; ``where`` stands in errors, ``name`` in the settings."""
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    try:
        table = tomlkit.parse(text).unwrap()
    except TOMLKitError as why:
        line = getattr(why, "line", None)
        at = f", line {line}" if line else ""
        message = re.sub(r" at line \d+ col \d+$", "", str(why)).rstrip(".")
        raise UsageError(f"{where}{at}: this is not valid TOML: {message}.") from None
    except RecursionError:
        raise UsageError(f"{where}: this is nested too deep.") from None
    except ValueError as why:  # a number of thousands of digits, a day that does not exist
        raise UsageError(f"{where}: this is not valid TOML: {why}.") from None
    lines = _lines_of_keys(text)
    try:
        settings = read(table, folder=Path(where).parent)
    except SettingFault as why:
        raise UsageError(f"{where}, line {_line(lines, why.path)}: {why}") from None
    waivers = (
        replace(waiver, origin=f"{name}, line {_line(lines, ('waivers', str(i)))}")
        for i, waiver in enumerate(settings.waivers)
    )
    return replace(settings, file=name, waivers=tuple(waivers))


def _line(lines: Mapping[tuple[str, ...], int], path: tuple[str, ...]) -> int:
    """Line of a key, or of the nearest table that holds it."""
    return next((lines[path[:end]] for end in range(len(path), 0, -1) if path[:end] in lines), 1)


_HEADER = re.compile(r"\s*(\[\[?)\s*([^\[\]]+?)\s*\]\]?\s*(?:#.*)?$")
_KEY = re.compile(r"""\s*((?:[\w-]+|"[^"]*"|'[^']*')(?:\s*\.\s*(?:[\w-]+|"[^"]*"|'[^']*'))*)\s*=""")


def _lines_of_keys(text: str) -> dict[tuple[str, ...], int]:
    """Dotted path of every key and table -> its line from 1 on; tables in [[lists]] carry their number."""
    found: dict[tuple[str, ...], int] = {}
    counts: dict[tuple[str, ...], int] = {}
    table: tuple[str, ...] = ()
    quote = ""  # inside a text over several lines
    for at, line in enumerate(text.splitlines(), 1):
        if quote:
            quote = "" if line.count(quote) % 2 else quote
            continue
        header = _HEADER.match(line)
        key = _KEY.match(line)
        if header:
            table = _split(header[2])
            if header[1] == "[[":
                counts[table] = counts.get(table, -1) + 1
                table = (*table, str(counts[table]))
            found.setdefault(table, at)
        elif key:
            path = (*table, *_split(key[1]))
            for end in range(len(table) + 1, len(path) + 1):
                found.setdefault(path[:end], at)
        quote = next((q for q in ('"""', "'''") if line.count(q) % 2), "")
    return found


def _split(dotted: str) -> tuple[str, ...]:
    return tuple(m.strip("\"'") for m in re.findall(r"""[\w-]+|"[^"]*"|'[^']*'""", dotted))
