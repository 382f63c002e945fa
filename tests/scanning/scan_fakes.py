"""Workers that review nothing: the kind of the document stands in the model's bytes. And folders to scan."""

from __future__ import annotations

import os
import signal
import sqlite3
import sys
from concurrent.futures import Future
from functools import cache, lru_cache
from pathlib import Path

from msgspec.structs import replace

sys.path.insert(0, str(Path(__file__).parents[1] / "report"))
import report_documents

from seamcheck.document.make import not_reviewed_document
from seamcheck.errors import NotReviewed
from seamcheck.scanning.digest import digest
from seamcheck.scanning.errors import Lost
from seamcheck.scanning.job import Outcome
from seamcheck.settings.settings import Settings

STEP = "ISO-10303-21;\n/* {kind} {n} */\nEND-ISO-10303-21;\n"


def model(folder: Path, name: str, kind: str = "fail", n: int = 0) -> Path:
    """A file that Fakes review as ``kind``: fail, pass, hostile, refused, lost, once-lost, vanishes."""
    file = folder / name
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(STEP.format(kind=kind, n=n))
    return file


@cache
def document(kind: str) -> dict:
    if kind == "pass":
        return report_documents.housing(step=4.0, view=False, clean=True)
    if kind == "hostile":
        return {k: v for k, v in report_documents.hostile().items() if k != "view"}
    return report_documents.housing(step=4.0, view=False)


class Fakes:
    """Workers for ``scan(workers=...)``; ``jobs`` are those that were submitted."""

    sends_bytes = False

    def __init__(self, count: int = 2, kill_after: int | None = None) -> None:
        self.count, self.jobs, self.closed, self.kill_after = count, [], False, kill_after

    def submit(self, job) -> Future:
        self.jobs.append(job)
        if self.kill_after is not None and len(self.jobs) > self.kill_after:
            os.kill(os.getpid(), signal.SIGKILL)
        future: Future = Future()
        try:
            future.set_result(self.outcome(job))
        except Exception as error:
            future.set_exception(error)
        return future

    def outcome(self, job) -> Outcome:
        kind = Path(job.files[0].place).read_text().split()[2]
        if kind == "lost" or (kind == "once-lost" and sum(j.key == job.key for j in self.jobs) == 1):
            raise Lost("crashed", "ended from outside")
        if kind == "interrupt":
            raise KeyboardInterrupt
        if kind == "refused":
            from seamcheck.assembly.parts import ModelFile

            files = [ModelFile(f.name, f.sha256, "", "") for f in job.files]
            refusal = NotReviewed("single-part", "The file holds one part.")
            return Outcome(digest(not_reviewed_document(files, refusal, Settings())), None)
        rows = canned(kind, job.files[0].name)
        return Outcome(
            replace(rows, files=tuple(f.sha256 for f in job.files)),
            b"<!doctype html>" if job.pages != "none" and rows.review["must_fix"] else None,
        )

    def close(self) -> None:
        self.closed = True


@lru_cache(maxsize=8)
def canned(kind: str, name: str):
    made = document(kind)
    return digest({**made, "model": {**made["model"], "file": name}})


NOT_COMPARED = ("scans", "efforts", "stamps")
"""Tables that tell how a run went."""


def dump(out: Path) -> dict[str, list[tuple]]:
    """Everything in a store that tells of models, each table in order of its keys."""
    db = sqlite3.connect(out / "store.sqlite")
    tables = [name for (name,) in db.execute("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY 1")]
    try:
        assert db.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert db.execute("PRAGMA foreign_key_check").fetchall() == []
        return {
            t: sorted(db.execute(f"SELECT * FROM {t}").fetchall(), key=repr) for t in tables if t not in NOT_COMPARED
        }
    finally:
        db.close()


def rows(out: Path, question: str, *values) -> list[tuple]:
    db = sqlite3.connect(out / "store.sqlite")
    try:
        return db.execute(question, values).fetchall()
    finally:
        db.close()
