"""Models in gzip and zip archives, unpacked within bounds. Runs in a limited child: archives are strangers' too.

Nothing is ever written to a path that an archive names. Archives within archives stay closed. A bound on the
unpacked bytes and on their ratio to the packed ones holds while unpacking, whatever the archive's head says.
"""

from __future__ import annotations

import gzip
import hashlib
import io
import zipfile
import zlib
from collections.abc import Iterator
from pathlib import Path
from typing import IO

from msgspec import Struct

from seamcheck.scanning.patterns import ARCHIVE_ENDINGS, GZIP_ENDINGS, Patterns

MOST_MEMBERS = 5_000
"""Models that one archive may hold."""

MOST_RATIO = 200
"""Unpacked bytes for one packed byte. STEP text packs to a fifth or a tenth; what repeats itself to a fiftieth.
Deflate itself can reach 1032."""

RATIO_FROM_BYTES = 4_000_000
"""Below so many unpacked bytes the ratio does no harm."""

MOST_TIMES = 4
"""All members of one archive together may unpack to so many times the bound for one."""

_CHUNK = 1 << 20


class Refused(Exception):
    """A member or a whole archive that is not unpacked; ``code`` and ``reason`` go into its row."""

    def __init__(self, code: str, reason: str) -> None:
        super().__init__(code, reason)
        self.code, self.reason = code, reason


class Member(Struct, frozen=True):
    """One model in an archive.

    Attributes
    ----------
    number : in the archive's list; 0 for gzip, which holds one file
    path : as the archive names it, for reading only
    bytes, sha256 : unpacked
    code, reason : why it can't be reviewed; '' where it can
    """

    number: int
    path: str
    bytes: int = 0
    sha256: str = ""
    code: str = ""
    reason: str = ""


def look_into(path: Path, patterns: Patterns, most_bytes: int) -> list[Member] | Refused:
    """All models in an archive, each with its size and hash; what the archive itself is refused for."""
    try:
        kind = _kind(path)
        if kind == "gzip":
            return [_look_at_gzip(path, most_bytes)]
        if kind == "zip":
            return _look_at_zip(path, patterns, most_bytes)
        ending = path.suffix.lower()
        if ending == ".zip" or ending in GZIP_ENDINGS:
            return Refused("archive-damaged", f"{path.name!r} is not a {ending[1:]} archive. Copy or pack it again.")
        return [Member(0, "", path.stat().st_size)]  # .stpz that holds plain text
    except Refused as refused:
        return refused
    except OSError as why:
        return Refused("unreadable", f"{path.name!r} can't be read: {why.strerror or why}.")


def read(path: Path, number: int, most_bytes: int) -> bytes:
    """One member as bytes; raises Refused."""
    return b"".join(chunks(path, number, most_bytes))


def chunks(path: Path, number: int, most_bytes: int) -> Iterator[bytes]:
    """One member piece by piece; raises Refused where it is damaged or unpacks to too much."""
    kind = _kind(path)
    try:
        if kind == "zip":
            with zipfile.ZipFile(path) as archive:
                info = archive.infolist()[number]
                with archive.open(info) as stream:
                    yield from _bounded(stream, info.compress_size, most_bytes)
        else:
            with gzip.open(path) if kind == "gzip" else path.open("rb") as stream:
                yield from _bounded(stream, path.stat().st_size, most_bytes)
    except (zipfile.BadZipFile, gzip.BadGzipFile, zlib.error, EOFError, IndexError) as why:
        raise Refused("archive-damaged", f"It can't be unpacked ({why}). Copy or pack it again.") from None


def _kind(path: Path) -> str:
    with path.open("rb") as file:
        start = file.read(4)
    return "gzip" if start[:2] == b"\x1f\x8b" else "zip" if start in (b"PK\x03\x04", b"PK\x05\x06") else ""


def _look_at_gzip(path: Path, most_bytes: int) -> Member:
    return _member(path, 0, "", most_bytes)


def _look_at_zip(path: Path, patterns: Patterns, most_bytes: int) -> list[Member]:
    try:
        with zipfile.ZipFile(path) as archive:
            infos = archive.infolist()
    except (zipfile.BadZipFile, ValueError, NotImplementedError) as why:
        raise Refused("archive-damaged", f"{path.name!r} can't be opened ({why}). Copy or pack it again.") from None
    wanted = [(n, info) for n, info in enumerate(infos) if not info.is_dir() and patterns.match(base_name(info))]
    if len(wanted) > MOST_MEMBERS:
        raise Refused(
            "archive-too-big",
            f"{path.name!r} holds {len(wanted)} models; at most {MOST_MEMBERS} are unpacked. Unpack it, and scan "
            "the folder.",
        )
    members, together = [], 0
    for number, info in wanted:
        if base_name(info).lower().endswith(ARCHIVE_ENDINGS):
            reason = "An archive within an archive is not opened. Unpack the outer one, and scan the folder."
            members.append(Member(number, info.filename, info.file_size, code="archive-in-archive", reason=reason))
        elif info.flag_bits & 1:
            reason = "It is locked with a password. Unpack the archive, and scan the folder."
            members.append(Member(number, info.filename, info.file_size, code="locked", reason=reason))
        elif together > MOST_TIMES * most_bytes:
            members.append(Member(number, info.filename, info.file_size, code="archive-too-big", reason=_TOO_MUCH))
        else:
            members.append(_member(path, number, info.filename, most_bytes))
            together += members[-1].bytes
    return members


_TOO_MUCH = "Together the models in this archive are too large. Unpack it, and scan the folder."


def _member(path: Path, number: int, name: str, most_bytes: int) -> Member:
    digest, size = hashlib.sha256(), 0
    try:
        for chunk in chunks(path, number, most_bytes):
            digest.update(chunk)
            size += len(chunk)
    except Refused as refused:
        return Member(number, name, size, code=refused.code, reason=refused.reason)
    except (NotImplementedError, RuntimeError) as why:
        return Member(number, name, size, code="archive-damaged", reason=f"It can't be unpacked: {why}.")
    return Member(number, name, size, digest.hexdigest())


def _bounded(stream: IO[bytes] | io.BufferedIOBase, packed: int, most_bytes: int) -> Iterator[bytes]:
    size = 0
    while chunk := stream.read(_CHUNK):
        size += len(chunk)
        if size > most_bytes:
            raise Refused(
                "archive-too-big",
                f"It unpacks to more than {most_bytes / 1e6:g} MB. If it is a model, allow more with --unpack-limit.",
            )
        if size > max(RATIO_FROM_BYTES, MOST_RATIO * packed):
            raise Refused(
                "archive-too-big",
                f"It unpacks to more than {MOST_RATIO} times its packed size, which no STEP file does.",
            )
        yield chunk


def base_name(info: zipfile.ZipInfo) -> str:
    """The last step of a member's path, with either slash as a sign between steps."""
    return info.filename.replace("\\", "/").rpartition("/")[2]


def answer(function: str, *args: object) -> object:
    """What the child is asked: 'look_into' or 'read'; a refusal is an answer, too."""
    try:
        return {"look_into": look_into, "read": read}[function](*args)  # type: ignore[operator]
    except Refused as refused:
        return refused
    except OSError as why:
        return Refused("unreadable", f"It can't be read: {why.strerror or why}.")
