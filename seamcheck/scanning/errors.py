"""What ends a scan, and what ends one try of one review."""

from __future__ import annotations

import errno
import sqlite3
from os import PathLike

from seamcheck.errors import SeamcheckError


class ScanStopped(SeamcheckError):
    """The scan can't go on; what it finished is kept. The sentence says what to do."""


class Lost(SeamcheckError):
    """A review was ended from outside: its process or its worker was killed. Nothing is known of the model.

    Attributes
    ----------
    code, message : what the row says if it happens again
    """

    def __init__(self, code: str, message: str) -> None:
        super().__init__(code, message)
        self.code, self.message = code, message

    def __str__(self) -> str:
        return self.message


KEPT = "What was reviewed so far is kept; the same command resumes there."


def cannot_write(place: str | PathLike[str], why: OSError | sqlite3.Error) -> ScanStopped:
    """The words for a file that can't be written."""
    if isinstance(why, OSError):
        full = why.errno in (errno.ENOSPC, errno.EDQUOT)
        denied = why.errno in (errno.EACCES, errno.EPERM, errno.EROFS)
        text = why.strerror or str(why)
    else:
        name = getattr(why, "sqlite_errorname", "")
        full = name == "SQLITE_FULL"
        denied = name.startswith(("SQLITE_READONLY", "SQLITE_CANTOPEN", "SQLITE_PERM"))
        text = str(why)
    if full:
        return ScanStopped(f"The disk is full: {place} can't be written. Free some disk space. {KEPT}")
    if denied:
        return ScanStopped(f"{place} can't be written: no permission. Name another folder with --out.")
    return ScanStopped(f"{place} can't be written ({text}). {KEPT}")
