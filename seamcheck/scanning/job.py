"""One review of a scan: what goes into the child, and what the child makes of it."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from seamcheck.assembly.parts import ModelFile
from seamcheck.errors import NotReviewed, SeamcheckError
from seamcheck.scanning.archives import Refused, unpack
from seamcheck.scanning.digest import Digest, digest
from seamcheck.scanning.errors import Lost
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.isolation import WarmWorkers

PAGES = ("none", "findings", "all")
"""Models that get a report page: none, those with a must-fix or attention finding, all."""

KEPT_MB = 2000.0
"""Largest size of what is kept of measured models."""

_DEVICES = {"CON", "PRN", "AUX", "NUL", *(f"{port}{n}" for port in ("COM", "LPT") for n in "0123456789")}
"""Names that mean devices on Windows, with any ending."""

PRELOAD = ("seamcheck.scanning.warm_up",)
"""What a warm process loads for reviews of a scan."""


@dataclass(frozen=True, slots=True)
class JobFile:
    """One file of a model: where it lies, or its bytes (for workers that can't see it)."""

    name: str
    place: str
    member: int | None
    sha256: str
    data: bytes | None = None


@dataclass(frozen=True, slots=True)
class Job:
    """One review to do.

    Attributes
    ----------
    key : of the review, see going_by.review_key
    version : of seamcheck, which a worker must have as well
    files : in the order of the model
    settings, pages : what to go by, and which models get a page
    time_limit, memory_limit, most_bytes : s, MB, and bytes that one archive member may unpack to
    kept : folder in which what is measured is kept for reviews under other limits; '' for none
    """

    key: str
    version: str
    files: tuple[JobFile, ...]
    settings: Settings
    pages: str
    time_limit: float
    memory_limit: float
    most_bytes: int
    kept: str = ""


@dataclass(frozen=True, slots=True)
class Outcome:
    """What came of a job.

    Attributes
    ----------
    digest : the rows for the store
    page : the report page as UTF-8, None where none was asked for
    again : 'no'; 'with-higher-limits' where time or memory ran out; 'next-scan' where it says nothing about
        the model
    seconds : wall time
    """

    digest: Digest
    page: bytes | None
    again: str = "no"
    seconds: float = 0.0


class NoRoom(SeamcheckError):
    """A model can't be unpacked because the disk is full."""


def review_job(job: Job, folder: str, progress: Callable[..., None]) -> Outcome:
    """Review one model; runs in the child. Files that must be unpacked go into ``folder``."""
    from seamcheck.cache.folder import Folder
    from seamcheck.document.make import not_reviewed_document
    from seamcheck.pipeline import remembered, review_model

    try:
        paths = [_on_disk(file, Path(folder) / str(n), job.most_bytes) for n, file in enumerate(job.files)]
    except NotReviewed as reason:
        return Outcome(digest(not_reviewed_document(_model_files(job), reason, job.settings)), None)
    with_view, kept = job.pages != "none", Folder(Path(job.kept), KEPT_MB, tidied_every=16) if job.kept else None
    document = None if kept is None else remembered(paths, job.settings, progress, with_view, kept)
    if document is None:
        document = review_model(paths, job.settings, with_view, progress, kept)
    view = document.pop("view", None)
    rows = digest(document)
    page = None
    if job.pages == "all" or (job.pages == "findings" and rows.review["must_fix"] + rows.review["attention"]):
        page = _page(document if view is None else {**document, "view": view})
    return Outcome(rows, page)


def attempt(workers: WarmWorkers, job: Job, room: Path | None = None) -> Outcome:
    """Run a job in a child of its own, whatever end it comes to.

    Raises
    ------
    Lost : the child was ended from outside
    Stopped : the workers were closed
    """
    import time

    from seamcheck.document.make import not_reviewed_document

    began = time.monotonic()
    with _folder_for(job, room) as folder:
        try:
            outcome: Outcome = workers.run(
                "seamcheck.scanning.job:review_job", (job, folder),
                time_limit_s=job.time_limit, memory_limit_mb=job.memory_limit,
            )  # fmt: skip
        except NotReviewed as reason:
            if getattr(reason, "ended_from_outside", False):
                raise Lost(reason.code, reason.message) from None
            again = "with-higher-limits" if reason.code in ("timeout", "out-of-memory") else "no"
            document = not_reviewed_document(_model_files(job), reason, job.settings)
            outcome = Outcome(digest(document), None, again)
    return replace(outcome, seconds=time.monotonic() - began)


def lost_outcome(job: Job, lost: Lost) -> Outcome:
    """The row of a job that was ended from outside each time it was tried."""
    from seamcheck.document.make import not_reviewed_document

    reason = NotReviewed(lost.code, lost.message)
    return Outcome(digest(not_reviewed_document(_model_files(job), reason, job.settings)), None, "next-scan")


def safe_name(name: str) -> str:
    """A name that every system takes for a file: the name itself where it is one, else 'model.step'."""
    plain = all(c.isprintable() and c not in '<>:"/\\|?*' for c in name)
    plain &= name.partition(".")[0].rstrip().upper() not in _DEVICES
    return name if plain and name.strip(". ") == name and 0 < len(name.encode()) <= 200 else "model.step"


def _on_disk(file: JobFile, folder: Path, most_bytes: int) -> Path:
    """The file as one that can be read: itself, or a copy in a folder of our own."""
    if file.member is None and file.data is None:
        return Path(file.place)
    target = folder / safe_name(file.name)
    try:
        folder.mkdir()
        if file.data is not None:
            target.write_bytes(file.data)
        elif file.member is not None:
            unpack(Path(file.place), file.member, target, most_bytes)
    except Refused as refused:
        raise NotReviewed("unreadable", refused.reason) from None
    except OSError as why:
        raise NoRoom(f"{file.name!r} can't be unpacked into {folder.parent}: {why.strerror or why}.") from None
    return target


def _page(document: dict[str, Any]) -> bytes | None:
    from seamcheck.report.html.page import render_html

    try:
        return render_html(document).encode("utf-8")
    except Exception:  # the review stands without its page; the index says that there is none
        return None


def _model_files(job: Job) -> list[ModelFile]:
    return [ModelFile(file.name, file.sha256, "", "") for file in job.files]


@contextmanager
def _folder_for(job: Job, room: Path | None) -> Iterator[str]:
    """A folder to unpack into, gone afterwards; '' where nothing is to be unpacked."""
    if all(file.member is None and file.data is None for file in job.files):
        yield ""
        return
    try:
        folder = tempfile.mkdtemp(prefix="seamcheck-", dir=room)
    except OSError as why:
        raise NoRoom(f"A model can't be unpacked: {why.strerror or why} ({os.fspath(room or '')}).") from None
    try:
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)
