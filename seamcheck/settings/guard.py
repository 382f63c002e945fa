"""Files beside the model, which may be a stranger's: plain, small, and where they belong."""

from __future__ import annotations

import os
import stat
from pathlib import Path

from seamcheck.errors import UsageError

MOST_BYTES = 200_000
"""Of a settings file or a table that it names; the one with every limit explained has 30 000."""


def text_of(path: Path, what: str) -> str:
    """The text of a file; a mark for UTF-8 at its start is taken away.

    Parameters
    ----------
    what : 'the settings file', for the sentence

    Raises
    ------
    UsageError : it can't be read, is no plain file, too large, or not UTF-8. The sentence never
        shows what it holds.
    """
    try:
        return bytes_of(path, what, MOST_BYTES).decode("utf-8-sig")
    except UnicodeDecodeError:
        raise UsageError(f"{path}: {what} is not UTF-8 text.") from None


def bytes_of(path: Path, what: str, most: int) -> bytes:
    """The bytes of a plain file of at most ``most`` bytes; never waits for a pipe, never reads a device.

    Raises
    ------
    UsageError : it can't be read, is no plain file, or too large
    """
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
        with os.fdopen(handle, "rb") as file:
            if not stat.S_ISREG(os.fstat(handle).st_mode):
                raise UsageError(f"{path}: {what} is no plain file, but a device, a pipe or a folder.")
            data = file.read(most + 1)
    except IsADirectoryError:
        raise UsageError(f"{path}: {what} is no plain file, but a folder.") from None
    except (OSError, ValueError) as why:
        reason = (why.strerror if isinstance(why, OSError) else "") or why
        raise UsageError(f"{path}: {what} can't be read ({reason}).") from None
    if len(data) > most:
        raise UsageError(f"{path}: {what} is larger than {most / 1000:g} kB.")
    return data


def below(folder: Path, name: str) -> Path | None:
    """The path of a file that a settings file in ``folder`` names; None where it leads out of that folder."""
    try:
        place = (folder / name).resolve()
        return folder / name if place.is_relative_to(folder.resolve()) else None
    except (OSError, RuntimeError, ValueError):  # a circle of links, a name with a zero byte
        return None
