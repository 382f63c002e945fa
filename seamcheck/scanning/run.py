"""A scan from its folders to its index: look what lies there, review what is new, write the lists."""

from __future__ import annotations

import shutil
import sqlite3
import tempfile
from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, wait
from datetime import date
from itertools import islice
from os import PathLike, fsencode, fspath, scandir
from pathlib import Path
from typing import Any

from msgspec import Struct, field
from msgspec.structs import replace

from seamcheck.assembly.names import readable
from seamcheck.cache.folder import UNFINISHED
from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.isolation import Stopped, WarmWorkers
from seamcheck.pipeline import MEMORY_LIMIT, TIME_LIMIT
from seamcheck.scanning.answers import NO_SEAM, Answer, Answers, read_answers
from seamcheck.scanning.archives import Member, Refused
from seamcheck.scanning.digest import text
from seamcheck.scanning.errors import Lost, cannot_write
from seamcheck.scanning.files import Content, hash_file, written_whole
from seamcheck.scanning.found import SKIPPED, Found, FoundFile, Walk
from seamcheck.scanning.index import write_index
from seamcheck.scanning.job import PAGES, Job, JobFile, Outcome, lost_outcome
from seamcheck.scanning.lock import NAME as LOCK
from seamcheck.scanning.lock import FolderLock
from seamcheck.scanning.pairs import read_list, rules_from
from seamcheck.scanning.patterns import patterns_from, stem
from seamcheck.scanning.result import ScanResult
from seamcheck.scanning.review_settings import review_key, reviewers_settings, settings_hash
from seamcheck.scanning.store import NAME as STORE
from seamcheck.scanning.store import Listed, Store, name_of, open_to_write, place_of
from seamcheck.scanning.workers import LocalWorkers, Workers
from seamcheck.settings.settings import Settings
from seamcheck.settings.writing import as_toml
from seamcheck.version import __version__

MOST_TRIES = 2
"""So often a review is begun whose process or worker is ended from outside."""

UNPACK_LIMIT_MB = 1000.0

_ARCHIVE_TIME_S, _ARCHIVE_MEMORY_MB = 600.0, 1500.0
KEPT = "measured"
"""Folder in the scan's own in which measured models are kept."""

WRITTEN = (LOCK, STORE, f"{STORE}-wal", f"{STORE}-shm", f"{STORE}-journal", "pages", KEPT)
"""What a scan writes into in its folder, not beside first; none of these may be a link."""

_BATCH = 200


class Progress(Struct):
    """Where a scan is; given to ``on_progress`` now and then, the same object each time.

    Attributes
    ----------
    stage : 'looking', 'reviewing' or 'writing'
    found : models found so far
    looked : of these, looked at
    to_review, reviewed : reviews that this scan has to do, and has done
    verdicts : of the reviews done
    note : a sentence that is told once, else ''
    """

    stage: str = "looking"
    found: int = 0
    looked: int = 0
    to_review: int = 0
    reviewed: int = 0
    verdicts: Counter[str] = field(default_factory=Counter)
    note: str = ""


def scan(
    folders: str | PathLike[str] | Iterable[str | PathLike[str]],
    out: str | PathLike[str],
    settings: Settings | str | PathLike[str] | None = None,
    *,
    patterns: Iterable[str] = (),
    pairs: Iterable[str] = (),
    pair_list: str | PathLike[str] | None = None,
    joints: str | PathLike[str] | None = None,
    follow_links: bool = False,
    jobs: int | None = None,
    time_limit: float | None = None,
    memory_limit: float | None = None,
    unpack_limit: float | None = None,
    pages: str = "findings",
    again: bool = False,
    keep_measured: bool = True,
    cluster: str | None = None,
    shared: bool = False,
    workers: Workers | None = None,
    on_progress: Callable[[Progress], None] = lambda progress: None,
    **overrides: Any,
) -> ScanResult:
    """Review every model in some folders; only what is new or changed is reviewed anew.

    Parameters
    ----------
    folders : scanned with all folders below them
    out : folder for the store, the index and the report pages; made where it is missing
    settings : Settings or a settings file; None for ``seamcheck.toml`` in ``out`` or the working folder. A file
        that lies in a scanned folder is used only where it is named here.
    patterns : for the names of files, such as '*.stp'; default: STEP files, gzip and zip archives of them
    pairs : words by which the names of cover and base differ, such as 'lid=case'
    pair_list : file that lists models of several files, see ``pairs.read_list``
    joints : table of cover, base and beam of single models, or that there is no seam, see ``answers.read_answers``
    jobs : reviews at a time; None for all processors
    time_limit, memory_limit : s and MB for each review; None for 600 and 4096
    unpack_limit : MB that one model in an archive may unpack to; None for 1000
    pages : 'findings' (models with a must-fix or attention finding), 'all' or 'none'
    again : review everything anew
    keep_measured : keep what is measured in ``out``, so that a scan under other limits or materials need not measure
        unchanged models again; not with a cluster
    cluster, shared : address of a Dask scheduler, and whether its workers see the same paths
    workers : who does the reviews instead, see ``workers.Workers``; closed at the end
    on_progress : called now and then
    overrides : single settings, as for ``seamcheck.review``

    Raises
    ------
    UsageError : something given can't be taken
    ScanStopped : the scan can't go on; what it finished is kept
    KeyboardInterrupt : after the index was written for what is done
    """
    given = [folders] if isinstance(folders, str | PathLike) else list(folders)
    roots = [Path(folder) for folder in dict.fromkeys(fspath(folder) for folder in given)]
    _check_folders(roots)
    if pages not in PAGES:
        raise UsageError(f"pages is one of {', '.join(PAGES)}; got {pages!r}.")
    if cluster is not None and jobs is not None:
        raise UsageError("--jobs counts reviews on this machine; with --cluster the workers' threads count.")
    if shared and cluster is None:
        raise UsageError("--shared applies to the workers of a --cluster; none is given.")
    target = Path(out)
    file: Path | None = None
    passed: list[Path] = []
    if not isinstance(settings, Settings):
        settings, file, passed = reviewers_settings(None if settings is None else Path(settings), target, roots)
    single_limits = overrides.pop("limits", {})
    settings = settings.changed({**overrides, **single_limits})
    walk_options = {
        "patterns": patterns_from(patterns), "rules": rules_from(pairs), "follow_links": follow_links, "out": target,
        "listed": () if pair_list is None else read_list(Path(pair_list)),
    }  # fmt: skip
    answers = {} if joints is None else read_answers(Path(joints))
    limits = Limits(time_limit or TIME_LIMIT, memory_limit or MEMORY_LIMIT, unpack_limit or UNPACK_LIMIT_MB)
    _make(target)
    with FolderLock(target):
        _clean(target)
        progress = Progress()

        def tell(sentence: str) -> None:
            progress.note = sentence
            on_progress(progress)
            progress.note = ""

        for ignored in passed:
            tell(f"Not used: {ignored}, because it lies in a scanned folder. Name it with --settings to use it.")
        with open_to_write(target, tell) as store:
            kept = str((target / KEPT).absolute()) if keep_measured and cluster is None and not again else ""
            run = _Run(store, target, settings, answers, limits, pages, again, kept, progress, on_progress)
            number = store.begin_scan(
                [str(root) for root in roots], run.settings_hash, settings.file or None, as_toml(settings)
            )
            try:
                if workers is None:
                    workers = _workers(jobs, cluster, shared, tell)
                with _Archives(walk_options["patterns"], limits.most_bytes) as archives:
                    walk = Walk(roots, archives.look_into, **walk_options)  # type: ignore[arg-type]
                    run.look(walk)
                    run.review(workers, archives)
            except KeyboardInterrupt:
                _close(workers)
                store.end_scan(number, "stopped")
                write_index(store, target)
                raise
            finally:
                _close(workers)
            progress.stage = "writing"
            on_progress(progress)
            write_index(store, target)
            store.end_scan(number, "complete")
            return ScanResult.of(store, target, progress.reviewed, file)


class Limits(Struct, frozen=True):
    """Of every review: s, MB, and MB that one member of an archive may unpack to."""

    time_s: float
    memory_mb: float
    unpack_mb: float

    @property
    def most_bytes(self) -> int:
        return int(self.unpack_mb * 1e6)


class _Run:
    """The two passes of a scan: look at everything, then review what is missing."""

    def __init__(
        self, store: Store, out: Path, settings: Settings, answers: Mapping[tuple[str, str], Answer], limits: Limits,
        pages: str, again: bool, kept: str,
        progress: Progress, on_progress: Callable[[Progress], None],
    ) -> None:  # fmt: skip
        self.settings = replace(settings, today=settings.today or date.today())
        self.settings_hash = settings_hash(self.settings)
        self._answers = Answers(answers, self.settings)
        self._store, self._out, self._limits, self._pages, self._again = store, out, limits, pages, again
        self._kept, self._progress, self._tell = kept, progress, on_progress
        self._pages_there: frozenset[str] = frozenset()

    # Looking

    def look(self, walk: Walk) -> None:
        """Write the list of models anew, link those whose review is there already, and hash what is not known yet."""
        self._pages_there = _names_in(self._out / "pages")
        with self._store.transaction() as db:
            self._store.begin_list(db)
            found = iter(walk)
            while batch := list(islice(found, _BATCH)):
                kept = {} if self._again else self._as_listed(batch)
                self._store.keep_models(db, kept.values())
                self._store.add_models(db, self._listed([one for n, one in enumerate(batch) if n not in kept]))
                self._progress.found += len(batch)
                self._tell(self._progress)
            self._store.end_list(db, walk.other_files)
        waiting = self._store.count_unhashed()
        self._progress.looked = self._progress.found - waiting
        after = ("", "")
        while waiting and (rows := self._store.unhashed(after, _BATCH)):
            with self._store.transaction() as db:
                for row in rows:
                    self._look_at(db, row["folder"], row["path"])
                    self._progress.looked += 1
            self._tell(self._progress)
            after = (rows[-1]["folder"], rows[-1]["path"])
        self._progress.to_review = self._store.count_awaited()

    def _as_listed(self, batch: Sequence[Found]) -> dict[int, int]:
        """Which of these models stand in the list just so, with a review that need not be done again.

        Number in the batch -> the model's in the store.
        """
        files_of = self._store.listed_reviewed(batch)
        same: dict[int, sqlite3.Row] = {}
        seen: set[tuple[str, str]] = set()
        for number, found in enumerate(batch):
            model = readable(found.folder), found.path
            files = files_of.get(model, [])
            if found.code or model in seen or not _are_the_same(found.files, files):
                continue
            seen.add(model)  # another one that is spelled alike gets a number
            answer = self._answers.of(*model)
            digests, names = [file["sha256"] for file in files], list(map(_name_of, found.files))
            if (answer is None or not answer.no_seam) and self._key(model, names, digests) == files[0]["awaits"]:
                same[number] = files[0]
        done = self._done({file["awaits"] for file in same.values()})
        return {number: file["model"] for number, file in same.items() if file["awaits"] in done}

    def _done(self, keys: set[str]) -> set[str]:
        """Those reviews that are in the store and need not be done again."""
        return {key for key, row in self._store.stored(keys).items() if self._is_done(row)}

    def _listed(self, batch: Sequence[Found]) -> list[Listed]:
        """Models as found, with what is known of their files and of their reviews."""
        plain = [file.place for found in batch for file in found.files if file.stamp]
        known = {} if self._again else self._store.known(plain)

        def content(file: FoundFile) -> Content | None:
            if file.sha256:
                return Content(file.sha256, file.bytes)
            stamp, found = known.get(file.place, ("", None))
            return found if stamp and stamp == file.stamp else None

        listed = []
        for found in batch:
            contents = tuple(content(file) for file in found.files)
            model = readable(found.folder), found.path
            answer = self._answers.of(*model)
            key = None
            if not found.code and all(contents) and not (answer is not None and answer.no_seam):
                names = list(map(_name_of, found.files))
                key = self._key(model, names, [one.sha256 for one in contents if one is not None])
            listed.append(Listed(found, contents, key))
        if self._again:
            return listed
        done = self._done({one.awaits for one in listed if one.awaits is not None})
        return [replace(one, is_done=True) if one.awaits in done else one for one in listed]

    def _look_at(self, db: Any, folder: str, path: str) -> None:
        contents, names = [], []
        answer = self._answers.of(folder, path)
        if answer is not None and answer.no_seam:
            self._store.skip(db, folder, path, NO_SEAM, SKIPPED[NO_SEAM])
            return
        try:
            for file in self._store.files_of(folder, path):
                is_known = file["sha256"] and file["member"] is not None
                contents.append(Content(file["sha256"], file["bytes"]) if is_known else hash_file(place_of(file)))
                names.append(name_of(file))
        except Refused as refused:
            self._store.skip(db, folder, path, refused.code, refused.reason)
            return
        key = self._key((folder, path), names, [one.sha256 for one in contents])
        self._store.hashed(db, folder, path, contents, key)
        if not self._again and self._done({key}):
            self._store.link(db, key)

    def _key(self, model: tuple[str, str], names: Sequence[str], digests: Sequence[str]) -> str:
        told = self._answers.settings_of(*model)
        by = self.settings_hash if told is self.settings else settings_hash(told)
        return review_key(list(zip(names, digests, strict=True)), by, __version__)

    def _is_done(self, stored: sqlite3.Row) -> bool:
        """Whether a review that is in the store need not be done again."""
        if stored["again"] == "next-scan":
            return False
        if stored["again"] == "with-higher-limits" and (
            self._limits.time_s > stored["time_limit"] or self._limits.memory_mb > stored["memory_limit"]
        ):
            return False
        wants_page = self._pages == "all" or (self._pages == "findings" and stored["must_fix"] + stored["attention"])
        return not wants_page or (stored["page"] is not None and stored["page"] in self._pages_there)

    # Reviewing

    def review(self, workers: Workers, archives: _Archives) -> None:
        """Review what waits, as much at a time as the workers take."""
        self._progress.stage = "reviewing"
        running: dict[Future[Outcome], tuple[Job, tuple[str, str], int]] = {}
        begun: set[str] = set()
        jobs, before = self._jobs(begun, archives, workers), 0
        while True:
            while len(running) < workers.count + 1 and (item := next(jobs, None)) is not None:
                job, model = item
                running[workers.submit(job)] = (job, model, 1)
            if not running:
                if self._progress.reviewed > before and self._store.count("waiting"):
                    # a file that changed meanwhile has left another one of its former content waiting
                    before, jobs = self._progress.reviewed, self._jobs(begun, archives, workers)
                    continue
                return
            done, _ = wait(running, timeout=0.25, return_when=FIRST_COMPLETED)
            for future in done:
                job, model, tries = running.pop(future)
                try:
                    outcome = future.result()
                except Lost as lost:
                    if tries < MOST_TRIES:
                        running[workers.submit(job)] = (job, model, tries + 1)
                        continue
                    outcome = lost_outcome(job, lost)
                except OSError as why:  # no room or no handles left to start a child with
                    raise cannot_write(tempfile.gettempdir(), why) from None
                self._keep(job, model, outcome, tries)
                begun.discard(job.key)
            self._tell(self._progress)

    def _jobs(self, begun: set[str], archives: _Archives, workers: Workers) -> Any:
        """One job after the other for each review that is missing; only the next one is in memory."""
        after = ("", "")
        while rows := self._store.waiting(after, 1):
            row = rows[0]
            after = (row["folder"], row["path"])
            if row["awaits"] in begun:  # another model of the same name and content is just being reviewed
                continue
            job = self._job(row, archives, workers.sends_bytes)
            if job is not None:
                begun.add(job.key)
                yield job, after

    def _job(self, row: Any, archives: _Archives, sends_bytes: bool) -> Job | None:
        try:
            files = tuple(
                JobFile(
                    name_of(file),
                    str(place_of(file)),
                    file["member"],
                    file["sha256"],
                    archives.read(place_of(file), file["member"]) if sends_bytes else None,
                )
                for file in self._store.files_of(row["folder"], row["path"])
            )
        except Refused as refused:
            with self._store.transaction() as db:
                self._store.skip(db, row["folder"], row["path"], refused.code, refused.reason)
            return None
        told = self._answers.settings_of(row["folder"], row["path"])
        return Job(
            row["awaits"], __version__, files, told, self._pages, self._limits.time_s,
            self._limits.memory_mb, self._limits.most_bytes, self._kept,
        )  # fmt: skip

    def _keep(self, job: Job, model: tuple[str, str], outcome: Outcome, tries: int) -> None:
        """Write one review, its page first: a review that is in the store is whole."""
        key, relink, again = job.key, None, outcome.again
        read, expected = outcome.digest.files, tuple(file.sha256 for file in job.files)
        if read != expected and outcome.digest.review["reason_code"] == "unreadable":
            again = "next-scan"  # it went away or changed just now: that says nothing about this content
        elif read != expected and len(read) == len(expected) and all(read):
            key, relink = (
                self._key(model, [file.name for file in job.files], read),
                model,
            )  # changed since it was looked at
        page = None
        if outcome.page is not None:
            page = f"{page_stem(job.files[0].name)}-{key[:12]}.html"
            with written_whole(self._out / "pages" / page) as file:
                file.write(outcome.page)
        effort = {
            "seconds": round(outcome.seconds, 3), "tries": tries, "time_limit": job.time_limit,
            "memory_limit": job.memory_limit,
        }  # fmt: skip
        try:
            self._store.save(key, self.settings_hash, outcome.digest, again, effort, page, relink)
        except (sqlite3.IntegrityError, sqlite3.InterfaceError, sqlite3.DataError, OverflowError) as why:
            lost = Lost(
                "crashed", f"The review can't be stored ({type(why).__name__}: {why}). Please report this model."
            )
            outcome = lost_outcome(job, lost)
            self._store.save(key, self.settings_hash, outcome.digest, "no", effort, None, relink)
        self._progress.reviewed += 1
        self._progress.verdicts[outcome.digest.review["verdict"]] += 1


class _Archives:
    """Looks into archives in a limited child, which is started with the first archive."""

    def __init__(self, patterns: Any, most_bytes: int) -> None:
        self._patterns, self._most_bytes = patterns, most_bytes
        self._child: WarmWorkers | None = None

    def look_into(self, path: Path) -> list[Member] | Refused:
        found: list[Member] | Refused = self._run("look_into", path, (path, self._patterns, self._most_bytes))
        return found

    def read(self, place: Path, member: int | None) -> bytes:
        """The unpacked bytes of a file; raises Refused."""
        if member is not None:
            data = self._run("read", place, (place, member, self._most_bytes))
            if isinstance(data, Refused):
                raise data
            return bytes(data)
        try:
            return place.read_bytes()
        except OSError as why:
            raise Refused("unreadable", f"It can't be read: {why.strerror or why}.") from None

    def _run(self, function: str, path: Path, args: tuple[Any, ...]) -> Any:
        if self._child is None:
            self._child = WarmWorkers(1, preload=("seamcheck.scanning.archives",))
        memory = _ARCHIVE_MEMORY_MB + (2 * self._most_bytes / 1e6 if function == "read" else 0)
        try:
            return self._child.run(
                "seamcheck.scanning.archives:answer", (function, *args),
                time_limit_s=_ARCHIVE_TIME_S, memory_limit_mb=memory, writable=(),
            )  # fmt: skip
        except Stopped:
            raise
        except SeamcheckError as why:
            return Refused("archive-damaged", f"{path.name!r} can't be unpacked: {why}")

    def __enter__(self) -> _Archives:
        return self

    def __exit__(self, *error: object) -> None:
        if self._child is not None:
            self._child.close()


def _are_the_same(found: Sequence[FoundFile], listed: Sequence[sqlite3.Row]) -> bool:
    """Whether files are those in the list, with the same content."""
    return len(found) == len(listed) > 0 and all(
        fsencode(file.place) == row["place"]
        and file.member == row["member"]
        and (file.stamp == row["stamp"] if file.stamp else file.sha256 == row["sha256"] != "")
        for file, row in zip(found, listed, strict=True)
    )


def _name_of(file: FoundFile) -> str:
    """The name of a file as the review document gives it."""
    return file.place.name if file.member is None else text(file.name)


def page_stem(name: str) -> str:
    """The beginning of a page's name: letters, digits, '-' and '_' of the model's name, at most 60."""
    kept = "".join(c if c.isascii() and (c.isalnum() or c in "-_") else "-" for c in stem(name))
    return kept.strip("-")[:60] or "model"


def _workers(jobs: int | None, cluster: str | None, shared: bool, tell: Callable[[str], None]) -> Workers:
    if cluster is None:
        return LocalWorkers(jobs)
    from seamcheck.scanning.cluster import ClusterWorkers

    return ClusterWorkers(cluster, shared, tell)


def _close(workers: Workers | None) -> None:
    if workers is not None:
        workers.close()


def _check_folders(roots: Sequence[Path]) -> None:
    if not roots:
        raise UsageError("Name at least one folder to scan.")
    for root in roots:
        if not root.exists():
            raise UsageError(f"There is no folder {root}.")
        if not root.is_dir():
            raise UsageError(f"{root} is a file, not a folder. To review one model, write: seamcheck review {root}")
    for root in roots:
        for other in roots:
            if root is not other and root.resolve().is_relative_to(other.resolve()):
                raise UsageError(f"{root} lies in {other}, or is the same; name each folder once.")


def _names_in(folder: Path) -> frozenset[str]:
    """Names of the plain files in a folder."""
    with scandir(folder) as entries:
        return frozenset(entry.name for entry in entries if entry.is_file())


def _make(out: Path) -> None:
    for name in WRITTEN:
        if (out / name).is_symlink():  # planted, it would lead what is written to another place
            raise UsageError(f"{out / name} is a link, and links are never followed for writing. Take it away first.")
    try:
        (out / "pages").mkdir(parents=True, exist_ok=True)
    except (FileExistsError, NotADirectoryError):
        raise UsageError(f"{out} is a file, not a folder. Name a folder with --out.") from None
    except OSError as why:
        raise cannot_write(out, why) from None


def _clean(out: Path) -> None:
    """Remove what a killed scan left behind, also what earlier versions unpacked."""
    try:
        shutil.rmtree(out / ".unpacked", ignore_errors=True)
        kept = (out / KEPT).glob(f"*{UNFINISHED}")
        for part in (*out.glob(".*.part"), *(out / "pages").glob(".*.part"), *kept):
            part.unlink(missing_ok=True)
    except OSError as why:
        raise cannot_write(out, why) from None


__all__ = ["Progress", "ScanResult", "scan"]
