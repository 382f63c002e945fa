"""The bytes of found files: hashed in pieces, so that no file needs memory."""

from __future__ import annotations

import hashlib
import os
import stat
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any

from seamcheck.scanning.archives import Refused
from seamcheck.scanning.errors import cannot_write

_LFS_START = b"version https://git-lfs"
_LFS_MOST_BYTES = 1024
_CHUNK = 1 << 20


def hash_file(place: Path) -> tuple[str, int]:
    """SHA-256 (hex text) and size of a plain file; raises Refused for what is no model to read."""
    try:
        facts = os.stat(place)
        if not stat.S_ISREG(facts.st_mode):
            raise Refused("unreadable", "It is not a plain file but a device, a pipe or a folder.")
        digest, size = hashlib.sha256(), 0
        with open(place, "rb") as file:
            while chunk := file.read(_CHUNK):
                if not size and facts.st_size <= _LFS_MOST_BYTES and chunk.startswith(_LFS_START):
                    raise Refused(
                        "lfs-pointer",
                        "It is a Git LFS pointer, not the model itself. Run `git lfs pull`, and scan again.",
                    )
                digest.update(chunk)
                size += len(chunk)
    except OSError as why:
        raise Refused("unreadable", f"It can't be read: {why.strerror or why}.") from None
    return digest.hexdigest(), size


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
