"""The bytes of a model file, read once, before the kernel sees them."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from pathlib import Path

from seamcheck.errors import NotReviewed


@dataclass(frozen=True, slots=True)
class Source:
    """One file as it was read: its name without folders, its bytes and their SHA-256 as hex text."""

    name: str
    data: bytes
    sha256: str


def read_source(path: Path) -> Source:
    """Read a model file to its end, once; raises NotReviewed with what is wrong."""
    try:
        data = path.read_bytes()
    except OSError as error:
        raise NotReviewed("unreadable", f"{path.name!r} can't be read: {error.strerror}.") from error
    return Source(path.name, data, hashlib.sha256(data).hexdigest())
