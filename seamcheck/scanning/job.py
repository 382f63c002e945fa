"""One review of a scan: what goes into the child, and what the child makes of it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from msgspec import Struct
from msgspec.structs import replace

from seamcheck.assembly.names import readable
from seamcheck.assembly.parts import ModelFile
from seamcheck.assembly.source import Given
from seamcheck.catalogue.say import refused
from seamcheck.errors import NotReviewed
from seamcheck.scanning.archives import Refused, read
from seamcheck.scanning.digest import Digest, digest
from seamcheck.scanning.errors import Lost
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.isolation import WarmWorkers

PAGES = ("none", "findings", "all")
"""Models that get a report page: none, those with a must-fix or attention finding, all."""

KEPT_MB = 2000.0
"""Largest size of what is kept of measured models."""

PRELOAD = ("seamcheck.scanning.warm_up",)
"""What a warm process loads for reviews of a scan."""


class JobFile(Struct, frozen=True):
    """One file of a model: where it lies, or its bytes (for workers that can't see it)."""

    name: str
    place: str
    member: int | None
    sha256: str
    data: bytes | None = None


class Job(Struct, frozen=True):
    """One review to do.

    Attributes
    ----------
    key : of the review, see review_settings.review_key
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


class Outcome(Struct, frozen=True):
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


def review_job(job: Job, progress: Callable[..., None]) -> Outcome:
    """Review one model; runs in the child. What must be unpacked, or was sent, stays in memory: no copy is written."""
    from seamcheck.cache.folder import Folder
    from seamcheck.document.make import not_reviewed_document
    from seamcheck.pipeline import remembered, review_model

    try:
        paths = [_file(file, job.most_bytes) for file in job.files]
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


def attempt(workers: WarmWorkers, job: Job) -> Outcome:
    """Run a job in a child of its own, whatever end it comes to.

    Raises
    ------
    Lost : the child was ended from outside
    Stopped : the workers were closed
    """
    import time

    from seamcheck.cache.folder import Folder
    from seamcheck.document.make import not_reviewed_document

    began = time.monotonic()
    try:
        outcome: Outcome = workers.run(
            "seamcheck.scanning.job:review_job",
            (job,),
            time_limit_s=job.time_limit,
            memory_limit_mb=job.memory_limit,
            writable=Folder(Path(job.kept)).prepare() if job.kept else (),
        )
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


def _file(file: JobFile, most_bytes: int) -> Path | Given:
    """The file where it lies, or its bytes."""
    if file.data is not None:
        return Given(file.name, file.data)
    if file.member is None:
        return Path(file.place)
    try:
        return Given(file.name, read(Path(file.place), file.member, most_bytes))
    except Refused as fault:
        raise refused("unreadable", "unreadable.archive", why=fault.reason) from None
    except OSError as why:
        error = str(why.strerror or why)
        raise refused("unreadable", "unreadable.unpack", file=repr(readable(file.name)), error=error) from None


def _page(document: dict[str, Any]) -> bytes | None:
    from seamcheck.report.html.page import render_html

    try:
        return render_html(document).encode("utf-8")
    except Exception:  # the review stands without its page; the index says that there is none
        return None


def _model_files(job: Job) -> list[ModelFile]:
    return [ModelFile(readable(file.name), file.sha256, "", "") for file in job.files]
