"""Only one scan at a time writes into a folder. The system frees the lock when a process ends, however it ends."""

from __future__ import annotations

import json
import os
import socket
import sys
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType

from seamcheck.scanning.errors import ScanStopped, cannot_write

NAME = ".scan-lock"


class FolderLock:
    """Held as a context; raises ScanStopped where another scan holds it."""

    def __init__(self, folder: Path) -> None:
        self._file = folder / NAME

    def __enter__(self) -> FolderLock:
        try:
            self._handle = os.open(self._file, os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0), 0o644)
        except OSError as why:
            raise cannot_write(self._file, why) from None
        try:
            _lock(self._handle)
        except OSError:
            holder = self._holder()
            os.close(self._handle)
            raise ScanStopped(
                f"Another scan is writing into {self._file.parent}{holder}. Wait until it ends, or name another folder "
                "with --out."
            ) from None
        try:
            os.ftruncate(self._handle, 0)
            note = {"process": os.getpid(), "machine": socket.gethostname(), "since": _now()}
            os.write(self._handle, json.dumps(note).encode())
        except OSError as why:  # the disk is full: nothing else could be written either
            os.close(self._handle)
            raise cannot_write(self._file, why) from None
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        os.close(self._handle)  # the file stays: to delete it would let two scans hold two files of one name

    def _holder(self) -> str:
        try:
            note = json.loads(os.pread(self._handle, 1000, 0) if hasattr(os, "pread") else b"{}")
            return f" (process {note['process']} on {note['machine']}, since {note['since']})"
        except (OSError, ValueError, KeyError, TypeError):
            return ""


def _now() -> str:
    return datetime.now(UTC).strftime("%Y-%m-%d %H:%M:%S UTC")


def _lock(handle: int) -> None:
    if sys.platform == "win32":
        import msvcrt

        os.lseek(handle, 1 << 20, os.SEEK_SET)  # a byte behind the note, so that others may read the note
        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        os.lseek(handle, 0, os.SEEK_SET)
    else:
        import fcntl

        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
