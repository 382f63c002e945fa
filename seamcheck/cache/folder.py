"""A folder of kept entries: bounded, checked for damage, safe for several processes at once.

Nothing here raises: a folder that can't be used keeps nothing, and a damaged entry is none.
"""

from __future__ import annotations

import hashlib
import hmac
import os
import secrets
import shutil
import stat
import tempfile
import time
from contextlib import suppress
from pathlib import Path

from msgspec import Struct

VARIABLE = "SEAMCHECK_CACHE"
"""Environment variable: a folder for the cache; empty for none."""

SECRET_VARIABLE = "SEAMCHECK_CACHE_SECRET"
"""Environment variable: text that entries are sealed with, for machines that share a cache they trust."""

MOST_MB = 300.0
LEAST_FREE_MB = 500.0
"""Room on the disk that is left to others."""

_MAGIC = b"seamcheck measured 2\n"
_SUFFIX, UNFINISHED = ".measured", ".unfinished"
_ABANDONED_S = 3600.0  # an unfinished file so old was left by a process that died


def default_folder() -> Path | None:
    """The folder that ``SEAMCHECK_CACHE`` names, else that of the user; None where it is set to nothing."""
    named = os.environ.get(VARIABLE)
    if named is not None:
        return Path(named) if named else None
    from platformdirs import user_cache_path

    return user_cache_path("seamcheck", appauthor=False)


class Folder(Struct, frozen=True):
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
            content = _bounded(file, self._most_bytes)
            secret = machine_secret()
        except (OSError, ValueError, MemoryError):
            return None
        head = len(_MAGIC) + 32
        data = content[head:]
        if not content.startswith(_MAGIC) or not hmac.compare_digest(
            _seal(secret, key, data), content[len(_MAGIC) : head]
        ):
            with suppress(OSError):
                file.unlink()
            return None
        with suppress(OSError):
            os.utime(file)  # used now
        return data

    def save(self, key: str, data: bytes) -> bool:
        """Keep an entry, whole or not at all; false where that is not possible."""
        name = ""
        try:
            content = _MAGIC + _seal(machine_secret(), key, data) + data
            if len(content) > self._most_bytes:
                return False
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

    def prepare(self) -> list[str]:
        """Make the folder and the secret, so that a child that can write nowhere else can keep something; its path."""
        with suppress(OSError, ValueError):
            machine_secret()
            self.path.mkdir(mode=0o700, parents=True, exist_ok=True)
        return [str(self.path)]

    def why_unused(self) -> str:
        """Why nothing is kept in the folder, as a sentence; '' where it can be used or does not exist yet."""
        try:
            if _is_ours(self.path):
                return ""
        except FileNotFoundError:
            return ""
        except OSError as why:
            return f"Nothing is kept: the cache folder {self.path} can't be used ({why.strerror or why})."
        return (
            f"Nothing is kept: others can write into the cache folder {self.path}, or it is no folder of yours. Take "
            f"their right away (chmod go-w), or name another folder with {VARIABLE}."
        )

    @property
    def _most_bytes(self) -> int:
        """Of one entry."""
        return int(self.most_mb * 1e6 / 2)

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


def machine_secret() -> bytes:
    """What entries are sealed with: SECRET_VARIABLE, else a file of the user's that is made when first needed.

    Whoever can write into the cache folder, such as a CI cache filled by a stranger's branch, can't seal an entry.
    """
    named = os.environ.get(SECRET_VARIABLE)
    if named:
        return hashlib.sha256(named.encode("utf-8", "surrogateescape")).digest()
    from platformdirs import user_data_path

    file = user_data_path("seamcheck", appauthor=False) / "cache-secret"
    try:
        secret = _bounded(file, 1000)
        if len(secret) == 32:
            return secret
    except FileNotFoundError:
        pass
    file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(dir=file.parent)  # mode 600
    with os.fdopen(handle, "wb") as new:
        new.write(secrets.token_bytes(32))
    try:
        os.link(name, file)  # the first of several processes wins
    except FileExistsError:
        pass
    except OSError:  # no links there
        os.replace(name, file)
    finally:
        with suppress(OSError):
            os.unlink(name)
    return _bounded(file, 1000)


def _seal(secret: bytes, key: str, data: bytes) -> bytes:
    return hmac.new(secret, key.encode() + b"\0" + data, hashlib.sha256).digest()


def _bounded(file: Path, most: int) -> bytes:
    """The bytes of a plain file; ValueError where it is another thing or larger, or a link where the system tells."""
    handle = os.open(file, os.O_RDONLY | sum(getattr(os, n, 0) for n in ("O_NOFOLLOW", "O_NONBLOCK", "O_BINARY")))
    with os.fdopen(handle, "rb") as stream:
        facts = os.fstat(handle)
        if not stat.S_ISREG(facts.st_mode) or facts.st_size > most:
            raise ValueError(f"{file} is no plain file of at most {most} bytes")
        return stream.read(most)


def _is_ours(path: Path) -> bool:
    """Whether nobody else can write into the folder: an entry that others made could hide a fault of a model."""
    facts = os.stat(path)
    if not hasattr(os, "getuid"):  # Windows: the user's own folder is closed to others by its access list
        return stat.S_ISDIR(facts.st_mode)
    return stat.S_ISDIR(facts.st_mode) and facts.st_uid == os.getuid() and not facts.st_mode & 0o022
