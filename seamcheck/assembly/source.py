"""The bytes of a model file: read once, and checked before the kernel sees them."""

from __future__ import annotations

import errno
import hashlib
import os
import re
import stat
from contextlib import suppress
from itertools import islice
from pathlib import Path

from msgspec import Struct

from seamcheck.assembly.disguise import what_it_is
from seamcheck.assembly.names import readable
from seamcheck.assembly.parts import ModelFile
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed

LARGEST_MB = 1000.0  # about a million faces; the kernel needs some twenty times the size of the file as memory

_START = b"ISO-10303-21"
_END = b"END-ISO-10303-21"
_LAST_SECTION, _END_OF_SECTION = b"DATA", b"ENDSEC;"
_WHOLE_END = re.compile(rb"ENDSEC\s*;\s*END-ISO-10303-21\s*;")
_MOST_ENDS = 3  # in texts and comments, that are looked at
_RECORD = re.compile(rb"#\d+\s*=")
_BYTE_ORDER_MARK = b"\xef\xbb\xbf"


class Source(Struct, frozen=True):
    """One file as it was read.

    Attributes
    ----------
    name : without folders
    data : STEP text that begins with ISO-10303-21, with the line breaks of the file
    sha256 : of the file's own bytes, hex text
    doubts : sentences on damage
    colours : whether the kernel can read its colours
    """

    name: str
    data: bytes
    sha256: str
    doubts: tuple[str, ...] = ()
    colours: bool = True


class Given(Struct, frozen=True):
    """A model file as its bytes, for what lies in no file: a member of an archive, what was sent to another machine."""

    name: str
    data: bytes


def read_source(file: Path | Given, largest_mb: float = LARGEST_MB) -> Source:
    """Read a model file to its end, once; raises NotReviewed with what is wrong and what to do."""
    raw = file.data if isinstance(file, Given) else _read_steady(file, largest_mb)
    name = readable(file.name)
    text, doubts = _step_text(name, raw)
    return Source(name, text, hashlib.sha256(raw).hexdigest(), doubts)


def _read_steady(path: Path, largest_mb: float) -> bytes:
    """The bytes of a regular file; read again once when it changes meanwhile."""
    name = readable(path.name or str(path))
    try:
        _refuse_special(path, largest_mb)
        for _ in range(2):
            with open(path, "rb") as file:
                before = os.fstat(file.fileno())
                data = file.read()
                after = os.fstat(file.fileno())
            if (before.st_size, before.st_mtime_ns) == (after.st_size, after.st_mtime_ns) and after.st_size == len(
                data
            ):
                return data
    except OSError as error:
        raise NotReviewed("unreadable", _why_not(name, error)) from error
    except ValueError as error:  # a path with a NUL in it
        raise refused("unreadable", "unreadable.name", file=repr(name)) from error
    raise refused("unreadable", "unreadable.changes", file=repr(name))


def _refuse_special(path: Path, largest_mb: float) -> None:
    """Raise for what is no regular file (opening a pipe could wait for ever) and for what is too large."""
    name = readable(path.name or str(path))
    facts = os.stat(path)
    if stat.S_ISDIR(facts.st_mode):
        raise refused("unreadable", "unreadable.folder", file=repr(name))
    if not stat.S_ISREG(facts.st_mode):
        raise refused("unreadable", "unreadable.device", file=repr(name))
    if facts.st_size > largest_mb * 1e6:
        size = facts.st_size / 1e6
        raise refused("unsupported", "unsupported.large", file=repr(name), size=size, most=largest_mb)


def _why_not(name: str, error: OSError) -> str:
    if error.errno == errno.ENOENT:
        return say("unreadable.absent", file=repr(name))
    if error.errno in (errno.EACCES, errno.EPERM):
        return say("unreadable.permission", file=repr(name))
    if error.errno == errno.ENAMETOOLONG:
        return say("unreadable.long-name", file=repr(name[:60]))
    return say("unreadable.error", file=repr(name), error=str(error.strerror or error))


def _step_text(name: str, raw: bytes) -> tuple[bytes, tuple[str, ...]]:
    """The text from ISO-10303-21 on, after checking that it is STEP text to its end; and doubts about that end."""
    if not raw.strip(b"\0 \t\r\n"):
        raise refused("empty", "empty.text", file=repr(name))
    other = what_it_is(raw)
    if other is not None:
        raise refused("not-step", f"not-step.{other}", file=repr(name))
    text = raw[len(_BYTE_ORDER_MARK) :] if raw.startswith(_BYTE_ORDER_MARK) else raw
    start = text[:4096].find(_START)
    if start < 0:
        raise refused("not-step", "not-step.start", file=repr(name))
    # what stands before the start is blanked out, its line breaks kept: line numbers stay those of the file
    whole = b"\n" * text[:start].count(b"\n") + text[start:]
    end = _end_of(whole)
    if end is not None and _RECORD.search(whole, end):
        return whole[:end], (say("file.behind-end", file=repr(name), line=whole.count(b"\n", 0, end) + 1),)
    if text.rfind(_END) > start:
        return whole, ()
    if text.rfind(_END_OF_SECTION) <= text.rfind(_LAST_SECTION):
        raise refused("unreadable", "unreadable.cut", file=repr(name))
    doubt = say("file.cut", file=repr(name))
    return whole[: whole.rfind(_END_OF_SECTION)] + _END_OF_SECTION + b"\n" + _END + b";\n", (doubt,)


def _end_of(text: bytes) -> int | None:
    """Behind the end of the exchange structure (ISO 10303-21, 5.3); None without one outside of texts and comments.

    What stands behind it belongs to no model, though the kernel would read records there as well.
    """
    for found in islice(_WHOLE_END.finditer(text), _MOST_ENDS):
        place = found.start()
        is_text = text.count(b"'", 0, place) % 2
        if not is_text and text.count(b"/*", 0, place) == text.count(b"*/", 0, place):
            return found.end()
    return None


def file_facts(file: Path | Given) -> ModelFile:
    """Name and SHA-256 of a file that could not be read as STEP; '' for the hash of what is not read at all."""
    digest = ""
    if isinstance(file, Given):
        digest = hashlib.sha256(file.data).hexdigest()
    else:
        with suppress(OSError, ValueError):
            facts = os.stat(file)
            # opening a pipe could wait for ever, and what is too large to be read is not read for its hash
            if stat.S_ISREG(facts.st_mode) and facts.st_size <= LARGEST_MB * 1e6:
                with open(file, "rb") as stream:
                    digest = hashlib.file_digest(stream, "sha256").hexdigest()
    return ModelFile(readable(file.name), digest, "", "")
