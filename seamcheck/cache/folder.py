"""A folder of kept entries: bounded, checked for damage, safe for several processes at once.

Nothing here raises: a folder that can't be used keeps nothing, and a damaged entry is none.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import stat
import tempfile
import time
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

VARIABLE = "SEAMCHECK_CACHE"
"""Environment variable: a folder for the cache; empty for none."""

MOST_MB = 300.0
LEAST_FREE_MB = 500.0
"""Room on the disk that is left to others."""

_MAGIC = b"seamcheck measured 1\n"
_SUFFIX, UNFINISHED = ".measured", ".unfinished"
_ABANDONED_S = 3600.0  # an unfinished file so old was left by a process that died


def default_folder() -> Path | None:
    """The folder that ``SEAMCHECK_CACHE`` names, else that of the user; None where it is set to nothing."""
    named = os.environ.get(VARIABLE)
    if named is not None:
        return Path(named) if named else None
    from platformdirs import user_cache_path

    return user_cache_path("seamcheck", appauthor=False)


@dataclass(frozen=True, slots=True)
class Folder:
    """Entries of bytes under keys of hex text.

    Attributes
    ----------
    path : made when first needed
    most_mb : all entries together; those not used for longest go first
    tidied_every : about how many entries are saved until it is looked whether they are too many
    """

    path: Path
    most_mb: float = MOST_MB
    tidied_every: int = 1

    def load(self, key: str) -> bytes | None:
        """An entry, or None where there is no sound one."""
        file = self._file(key)
        try:
            if not _is_ours(self.path):
                return None
            content = file.read_bytes()
        except (OSError, ValueError, MemoryError):
            return None
        head = len(_MAGIC) + 32
        data = content[head:]
        if (
            not content.startswith(_MAGIC)
            or hashlib.sha256(key.encode() + data).digest() != content[len(_MAGIC) : head]
        ):
            with suppress(OSError):
                file.unlink()
            return None
        with suppress(OSError):
            os.utime(file)  # used now
        return data

    def save(self, key: str, data: bytes) -> bool:
        """Keep an entry, whole or not at all; false where that is not possible."""
        content = _MAGIC + hashlib.sha256(key.encode() + data).digest() + data
        if len(content) > self.most_mb * 1e6 / 2:
            return False
        name = ""
        try:
            self.path.mkdir(mode=0o700, parents=True, exist_ok=True)
            if not _is_ours(self.path) or shutil.disk_usage(self.path).free < len(content) + LEAST_FREE_MB * 1e6:
                return False
            handle, name = tempfile.mkstemp(suffix=UNFINISHED, dir=self.path)
            with os.fdopen(handle, "wb") as file:
                file.write(content)
            os.replace(name, self._file(key))
        except (OSError, ValueError):
            if name:
                with suppress(OSError):
                    os.unlink(name)
            return False
        if content[len(_MAGIC)] % self.tidied_every == 0:  # a byte of the digest
            self._make_room()
        return True

    def drop(self, key: str) -> None:
        """Forget an entry."""
        with suppress(OSError, ValueError):
            self._file(key).unlink()

    def _file(self, key: str) -> Path:
        return self.path / (key + _SUFFIX)

    def _make_room(self) -> None:
        entries = []
        with suppress(OSError), os.scandir(self.path) as listed:
            for entry in listed:
                with suppress(OSError):
                    facts = entry.stat(follow_symlinks=False)
                    if entry.name.endswith(_SUFFIX):
                        entries.append((facts.st_mtime, facts.st_size, entry.path))
                    elif entry.name.endswith(UNFINISHED) and facts.st_mtime < time.time() - _ABANDONED_S:
                        os.unlink(entry.path)
        total = sum(size for _, size, _ in entries)
        for _, size, path in sorted(entries):
            if total <= self.most_mb * 1e6:
                return
            with suppress(OSError):
                os.unlink(path)
            total -= size


def _is_ours(path: Path) -> bool:
    """Whether nobody else can write into the folder: an entry that others made could hide a fault of a model."""
    facts = os.stat(path)
    if not hasattr(os, "getuid"):  # Windows: the user's own folder is closed to others by its access list
        return stat.S_ISDIR(facts.st_mode)
    return stat.S_ISDIR(facts.st_mode) and facts.st_uid == os.getuid() and not facts.st_mode & 0o022
