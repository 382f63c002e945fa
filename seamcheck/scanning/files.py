"""The bytes of found files: hashed in pieces, so that no file needs memory."""

from __future__ import annotations

import hashlib
import os
import stat
from pathlib import Path

from seamcheck.scanning.archives import Refused

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


def write_whole(target: Path, data: bytes) -> None:
    """Write a file whole or not at all, and have it on the disk; raises OSError."""
    unfinished = target.with_name(f".{target.name[:100]}.part")
    try:
        unfinished.unlink(missing_ok=True)  # a link that was planted there must not be followed
        with unfinished.open("xb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        os.replace(unfinished, target)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise
