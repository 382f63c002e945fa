"""The bytes of found files: hashed in pieces, so that no file needs memory."""

from __future__ import annotations

import hashlib
import os
import stat
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any

from msgspec import Struct

from seamcheck.scanning.archives import Refused
from seamcheck.scanning.errors import cannot_write

_LFS_START = b"version https://git-lfs"
_LFS_MOST_BYTES = 1024
_CHUNK = 1 << 20


_SETTLED_NS = 2_000_000_000
"""A file that changed later than so long before it was read could change again without another time."""

_TELLS_CHANGES = os.name == "posix"  # elsewhere st_ctime is when a file was made


class Content(Struct, frozen=True):
    """What a file holds: SHA-256 (hex text) and size of its bytes, and the stamp under which they can be known again.

    The stamp is '' where the file may have changed since.
    """

    sha256: str
    bytes: int
    stamp: str = ""


def stamp_of(facts: os.stat_result) -> str:
    """Size, both times and number of a file: the same only while nobody has written to it or put another in its place.

    The system sets the time of the last change (st_ctime) at every write, renaming and setting of the other time.
    """
    return f"{facts.st_size}.{facts.st_mtime_ns}.{facts.st_ctime_ns}.{facts.st_ino}" if _TELLS_CHANGES else ""


def hash_file(place: Path) -> Content:
    """The content of a plain file; raises Refused for what is no model to read."""
    try:
        facts = os.stat(place)
        if not stat.S_ISREG(facts.st_mode):
            raise Refused("unreadable", "It is not a plain file but a device, a pipe or a folder.")
        digest, size = hashlib.sha256(), 0
        with open(place, "rb") as file:
            before, began = os.fstat(file.fileno()), time.time_ns()
            while chunk := file.read(_CHUNK):
                if not size and facts.st_size <= _LFS_MOST_BYTES and chunk.startswith(_LFS_START):
                    raise Refused(
                        "lfs-pointer",
                        "It is a Git LFS pointer, not the model itself. Run `git lfs pull`, and scan again.",
                    )
                digest.update(chunk)
                size += len(chunk)
            stamp = stamp_of(before)
            if stamp != stamp_of(os.fstat(file.fileno())) or before.st_ctime_ns > began - _SETTLED_NS:
                stamp = ""
    except OSError as why:
        raise Refused("unreadable", f"It can't be read: {why.strerror or why}.") from None
    return Content(digest.hexdigest(), size, stamp)


@contextmanager
def written_whole(target: Path, mode: str = "xb", **how: Any) -> Iterator[IO[Any]]:
    """A file to write that takes the target's place when it is whole and on the disk; else ScanStopped."""
    unfinished = target.with_name(f".{target.name[:100]}.part")
    try:
        unfinished.unlink(missing_ok=True)  # a link that was planted there must not be followed
        with unfinished.open(mode, **how) as file:
            yield file
            file.flush()
            os.fsync(file.fileno())
        os.replace(unfinished, target)
    except OSError as why:
        raise cannot_write(target, why) from None
    finally:
        unfinished.unlink(missing_ok=True)
