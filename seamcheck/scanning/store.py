"""The store of a scan: one SQLite file. Everything goes in through parameters, a review whole or not at all.

The file is in rollback mode (not write-ahead logging): it stays a single file that can be copied, and it works on
shared folders. Each review is a transaction of its own, on the disk before the next one begins.
"""

from __future__ import annotations

import itertools
import json
import os
import sqlite3
import time
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import UTC, datetime
from importlib import resources
from pathlib import Path
from typing import Any

from msgspec import Struct
from msgspec.structs import replace

from seamcheck.assembly.names import readable
from seamcheck.scanning.digest import Digest, text, unpack
from seamcheck.scanning.errors import ScanStopped, cannot_write
from seamcheck.scanning.files import Content
from seamcheck.scanning.found import Found, OtherFiles
from seamcheck.scanning.lines import line_of
from seamcheck.version import __version__

NAME = "store.sqlite"
APPLICATION_ID = 0x7365616D  # "seam", in the file's head (SQLite file format, 1.3.15)
SCHEMA_VERSION = 3

_CHILDREN = ("findings", "quantities", "interface_values", "materials", "joints", "parts")
_BUSY_S = 600.0
_SQLITE_LEAST = (3, 37, 0)  # STRICT tables


class Listed(Struct, frozen=True):
    """A model as it goes into the list.

    Attributes
    ----------
    contents : of each of its files, None where not known
    awaits : the review that they need, None where not known
    is_done : whether that is there
    """

    found: Found
    contents: tuple[Content | None, ...]
    awaits: str | None = None
    is_done: bool = False


class OlderStore(ScanStopped):
    """The store was written by an older version of seamcheck, in another form."""

    def __init__(self, file: Path, version: int) -> None:
        super().__init__(file, version)
        self.file, self.version = file, version

    def __str__(self) -> str:
        return (
            f"{self.file} was written by an older seamcheck (store version {self.version}; this one writes "
            f"{SCHEMA_VERSION}). A scan into its folder puts it aside and begins a new one; SQL still reads it."
        )


def open_to_write(folder: Path, tell: Callable[[str], None]) -> Store:
    """The store of a scan's folder; one of an older form is put aside under another name, and told.

    Nothing of use is lost: a review counts only for the version of seamcheck that made it.
    """
    try:
        return Store(folder / NAME, tell)
    except OlderStore as older:
        aside = _free_name(folder / f"store-version-{older.version}.sqlite")
        try:
            (folder / NAME).rename(aside)
        except OSError as why:
            raise cannot_write(aside, why) from None
        tell(
            f"The store was written by an older seamcheck, whose reviews don't count for this one: it was put aside as "
            f"{aside.name}, and everything is reviewed again."
        )
        return Store(folder / NAME, tell)


def _free_name(path: Path) -> Path:
    names = itertools.chain([path], (path.with_stem(f"{path.stem}-{n}") for n in itertools.count(2)))
    return next(name for name in names if not name.exists())


class Store:
    """The open store; used by one thread."""

    def __init__(self, file: Path, on_wait: Callable[[str], None] = lambda sentence: None) -> None:
        self.file, self._on_wait = file, on_wait
        if sqlite3.sqlite_version_info < _SQLITE_LEAST:
            raise ScanStopped(
                f"A scan needs SQLite 3.37 or newer; this Python has {sqlite3.sqlite_version}. Use a newer Python."
            )
        with self._errors_in_words():
            self._db = sqlite3.connect(file, timeout=2.0, isolation_level=None)
            self._db.row_factory = sqlite3.Row
            try:
                self._db.execute("PRAGMA foreign_keys = ON")
                self._db.execute("PRAGMA synchronous = EXTRA")
                self._db.execute("PRAGMA journal_mode = DELETE")
                self._prepare()
            except BaseException:
                self._db.close()
                raise

    def close(self) -> None:
        self._db.close()

    def __enter__(self) -> Store:
        return self

    def __exit__(self, *error: object) -> None:
        self.close()

    # What a scan found

    def begin_scan(self, folders: list[str], settings: str, settings_file: str | None, toml: str) -> int:
        """Note that a scan begins; returns its number."""
        with self.transaction() as db:
            db.execute("UPDATE scans SET how = 'stopped' WHERE how = 'running'")  # killed ones
            db.execute(
                "INSERT INTO settings VALUES (?, ?, ?) ON CONFLICT DO NOTHING", (settings, settings_file, text(toml))
            )
            row = db.execute(
                "INSERT INTO scans (started, seamcheck, settings, folders, how) VALUES (?, ?, ?, ?, 'running') "
                "RETURNING scan",
                (now(), __version__, settings, json.dumps([readable(folder) for folder in folders])),
            ).fetchone()
        return int(row[0])

    def end_scan(self, scan: int, how: str) -> None:
        with self.transaction() as db:
            db.execute("UPDATE scans SET ended = ?, how = ? WHERE scan = ?", (now(), how, scan))

    def begin_list(self, db: sqlite3.Connection) -> None:
        """Begin to list what a walk finds: what stands in the list and is not found again goes in ``end_list``."""
        db.execute("CREATE TEMP TABLE IF NOT EXISTS found (model INTEGER PRIMARY KEY)")  # rowids of models
        for table in ("temp.found", "ignored_settings", "other_files"):
            db.execute(f"DELETE FROM {table}")  # the name is one of three written here

    def listed_reviewed(self, batch: Sequence[Found]) -> dict[tuple[str, str], list[sqlite3.Row]]:
        """Of those found models that stand in the list as reviewed: (folder, path) -> a row for each of their files."""
        if not batch:
            return {}
        rows = self._all(
            f"WITH asked (folder, path) AS (VALUES {', '.join(['(?, ?)'] * len(batch))}) "
            "SELECT m.rowid AS model, m.folder, m.path, m.awaits, f.place, f.member, f.sha256, s.stamp FROM asked "
            "CROSS JOIN models AS m USING (folder, path) CROSS JOIN model_files AS f USING (folder, path) "
            "LEFT JOIN stamps AS s ON s.place = f.place AND f.member IS NULL "
            "WHERE m.state = 'reviewed' AND m.review = m.awaits ORDER BY m.rowid, f.n",
            tuple(text for found in batch for text in (readable(found.folder), found.path)),
        )
        files: dict[tuple[str, str], list[sqlite3.Row]] = {}
        for row in rows:
            files.setdefault((row["folder"], row["path"]), []).append(row)
        return files

    def keep_models(self, db: sqlite3.Connection, models: Iterable[int]) -> None:
        """Keep models as they stand in the list."""
        db.executemany("INSERT INTO temp.found VALUES (?) ON CONFLICT DO NOTHING", [(model,) for model in models])

    def known(self, places: Sequence[Path]) -> dict[Path, tuple[str, Content]]:
        """Of files whose content is known: place -> (stamp, content)."""
        by_place = {os.fsencode(place): place for place in places}
        return {
            by_place[row["place"]]: (row["stamp"], Content(row["sha256"], row["bytes"]))
            for row in self.of_many("SELECT * FROM stamps WHERE place IN ({})", list(by_place))
        }

    def add_models(self, db: sqlite3.Connection, batch: Sequence[Listed]) -> None:
        """Add what a walk found, in its order; two names that are spelled alike get numbers."""
        db.execute("SAVEPOINT batch")
        if self._add_models(db, batch) < len(batch):
            db.execute("ROLLBACK TO batch")
            for listed in batch:
                numbers, path = itertools.count(2), listed.found.path
                while not self._add_models(db, [replace(listed, found=replace(listed.found, path=path))]):
                    path = f"{listed.found.path} ({next(numbers)})"
        db.execute("RELEASE batch")

    def _add_models(self, db: sqlite3.Connection, batch: Sequence[Listed]) -> int:
        """How many could be added."""
        rows, files = [], []
        for listed in batch:
            found, key = listed.found, listed.awaits
            folder, path = readable(found.folder), found.path
            state = "skipped" if found.code else "reviewed" if listed.is_done else "waiting"
            rows.append(
                (
                    folder, path, found.supplier, text(found.name), state, key, key if listed.is_done else None,
                    found.code or None, text(found.reason) or None,
                )
            )  # fmt: skip
            for n, (file, content) in enumerate(zip(found.files, listed.contents, strict=True)):
                place = os.fsencode(file.place)
                known = content or Content(file.sha256, file.bytes)
                files.append((folder, path, n, text(file.name), place, file.member, known.bytes, known.sha256 or None))
        names = [row[:2] for row in rows]
        db.executemany(
            "DELETE FROM models WHERE folder = ? AND path = ? AND rowid NOT IN (SELECT model FROM temp.found)", names
        )
        added = db.executemany(
            "INSERT INTO models (folder, path, supplier, name, state, awaits, review, reason_code, reason) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING",
            rows,
        ).rowcount
        if added == len(rows):
            db.executemany("INSERT INTO model_files VALUES (?, ?, ?, ?, ?, ?, ?, ?)", files)
            db.executemany("INSERT INTO temp.found SELECT rowid FROM models WHERE folder = ? AND path = ?", names)
        return added

    def end_list(self, db: sqlite3.Connection, other_files: OtherFiles) -> None:
        """When the walk is over: take from the list what was not found, and note what else lay in the folders."""
        db.execute("DELETE FROM models WHERE rowid NOT IN (SELECT model FROM temp.found)")
        db.executemany(
            "INSERT INTO ignored_settings VALUES (?, ?) ON CONFLICT DO NOTHING",
            [(readable(folder), path) for folder, path in other_files.settings],
        )
        db.executemany(
            "INSERT INTO other_files VALUES (?, ?) ON CONFLICT DO UPDATE SET files = files + excluded.files",
            [(readable(ending), files) for ending, files in other_files.others.items()],
        )
        db.execute("DELETE FROM stamps WHERE place NOT IN (SELECT place FROM model_files)")
        db.execute("DELETE FROM temp.found")

    def unhashed(self, after: tuple[str, str], most: int) -> list[sqlite3.Row]:
        """The next waiting models in order of which it is not known which review they need."""
        return self._all(
            "SELECT folder, path FROM models WHERE awaits IS NULL AND state = 'waiting' AND (folder, path) > (?, ?) "
            "ORDER BY folder, path LIMIT ?",
            (*after, most),
        )

    def waiting(self, after: tuple[str, str] = ("", ""), most: int = 100) -> list[sqlite3.Row]:
        """The next waiting models in order, with their files (``files_of``)."""
        return self._all(
            "SELECT folder, path, awaits FROM models WHERE state = 'waiting' AND (folder, path) > (?, ?) "
            "ORDER BY folder, path LIMIT ?",
            (*after, most),
        )

    def files_of(self, folder: str, path: str) -> list[sqlite3.Row]:
        """Files of a model; ``name`` and ``place`` as the system gives them."""
        return self._all("SELECT * FROM model_files WHERE folder = ? AND path = ? ORDER BY n", (folder, path))

    def count(self, state: str) -> int:
        """How many models are in a state."""
        return int(self._all("SELECT count(*) FROM models WHERE state = ?", (state,))[0][0])

    def count_unhashed(self) -> int:
        """How many models wait of which it is not known which review they need."""
        return int(self._all("SELECT count(*) FROM models WHERE awaits IS NULL AND state = 'waiting'")[0][0])

    def count_awaited(self) -> int:
        """How many reviews the waiting models need; models of the same name and content share one."""
        return int(self._all("SELECT count(DISTINCT awaits) FROM models WHERE state = 'waiting'")[0][0])

    def skip(self, db: sqlite3.Connection, folder: str, path: str, code: str, reason: str) -> None:
        db.execute(
            "UPDATE models SET state = 'skipped', reason_code = ?, reason = ? WHERE folder = ? AND path = ?",
            (code, text(reason), folder, path),
        )

    def hashed(self, db: sqlite3.Connection, folder: str, path: str, files: list[Content], key: str) -> None:
        """Note the contents of a model's files and the review that they need."""
        db.executemany(
            "UPDATE model_files SET sha256 = ?, bytes = ? WHERE folder = ? AND path = ? AND n = ?",
            [(file.sha256, file.bytes, folder, path, n) for n, file in enumerate(files)],
        )
        db.executemany(
            "INSERT OR REPLACE INTO stamps SELECT place, ?, ?, ? FROM model_files "
            "WHERE folder = ? AND path = ? AND n = ? AND member IS NULL",
            [(file.stamp, file.sha256, file.bytes, folder, path, n) for n, file in enumerate(files) if file.stamp],
        )
        db.execute("UPDATE models SET awaits = ? WHERE folder = ? AND path = ?", (key, folder, path))

    def link(self, db: sqlite3.Connection, key: str) -> None:
        """Give a review to all models that wait for it."""
        db.execute("UPDATE models SET state = 'reviewed', review = awaits WHERE awaits = ?", (key,))

    # Reviews

    def stored(self, keys: Iterable[str]) -> dict[str, sqlite3.Row]:
        """Verdict, counts, page and effort of those reviews that are there, by key."""
        rows = self.of_many(
            "SELECT r.review, r.verdict, r.must_fix, r.attention, r.again, e.time_limit, e.memory_limit, "
            "p.file AS page FROM reviews AS r JOIN efforts AS e USING (review) LEFT JOIN pages AS p USING (review) "
            "WHERE r.review IN ({})",
            list(keys),
        )
        return {row["review"]: row for row in rows}

    def of_many(self, question: str, keys: Sequence[Any]) -> list[sqlite3.Row]:
        """The rows of a SELECT for some keys, which go in as parameters where the text has {}."""
        return self._all(question.format(", ".join("?" * len(keys))), tuple(keys)) if keys else []

    def save(
        self,
        key: str,
        settings: str,
        rows: Digest,
        again: str,
        effort: Mapping[str, Any],
        page: str | None,
        relink: tuple[str, str] | None = None,
    ) -> None:
        """Write one review with all that belongs to it, and give it to the models that wait for it.

        ``relink`` names a model whose content was found to be another one than it had when it was looked at.
        """  # fmt: skip
        review = {"review": key, "settings": settings, "seamcheck": __version__, **rows.review, "again": again}
        with self.transaction() as db:
            db.execute("UPDATE models SET state = 'waiting', review = NULL WHERE review = ?", (key,))
            db.execute("DELETE FROM reviews WHERE review = ?", (key,))
            _insert(db, "reviews", [review])
            _insert(db, "documents", [{"review": key, "zlib_json": rows.document}])
            _insert(db, "efforts", [{"review": key, **effort, "finished": now()}])
            for table in _CHILDREN:
                _insert(db, table, [{"review": key, **row} for row in getattr(rows, table)])
            _insert(db, "lines", [{"review": key, **line_of(rows)}])
            if page is not None:
                _insert(db, "pages", [{"review": key, "file": page}])
            if relink is not None:
                files = [(digest, n) for n, digest in enumerate(rows.files)]
                db.executemany(
                    "UPDATE model_files SET sha256 = ? WHERE folder = ? AND path = ? AND n = ?",
                    [(digest, *relink, n) for digest, n in files],
                )
                db.execute("UPDATE models SET awaits = ? WHERE folder = ? AND path = ?", (key, *relink))
            self.link(db, key)

    def document(self, review: str) -> dict[str, Any]:
        """The review document of one review, without section outlines and meshes."""
        rows = self._all("SELECT zlib_json FROM documents WHERE review = ?", (review,))
        if not rows:
            raise KeyError(review)
        return unpack(rows[0][0])

    # Questions

    def results(self) -> Iterator[sqlite3.Row]:
        """All rows of the view ``results`` with those of ``lines``, the worst first, one after the other."""
        yield from self._db.execute(
            "SELECT results.*, rule, message, remedy, broken, kinds, confidence, measured FROM results "
            "LEFT JOIN lines USING (review) ORDER BY CASE verdict WHEN 'fail' THEN 0 WHEN 'not-reviewed' THEN 1 "
            "WHEN 'waiting' THEN 2 WHEN 'attention' THEN 3 ELSE 4 END, must_fix DESC, exceeds DESC, "
            "attention DESC, folder, path"
        )

    def rows(self, question: str, values: tuple[Any, ...] = ()) -> list[sqlite3.Row]:
        """The rows of a SELECT; the text is seamcheck's own, values go in as parameters."""
        return self._all(question, values)

    def verdicts(self) -> dict[str, int]:
        return {row[0]: row[1] for row in self._all("SELECT verdict, count(*) FROM results GROUP BY verdict")}

    # Within

    @contextmanager
    def transaction(self) -> Iterator[sqlite3.Connection]:
        """All or nothing; waits while another program reads."""
        with self._errors_in_words():
            self._execute_when_free("BEGIN IMMEDIATE")
            try:
                yield self._db
                self._execute_when_free("COMMIT")
            except BaseException:
                if self._db.in_transaction:
                    self._db.execute("ROLLBACK")
                raise

    def _execute_when_free(self, statement: str) -> None:
        began = time.monotonic()
        while True:
            try:
                self._db.execute(statement)
                return
            except sqlite3.OperationalError as why:
                if why.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY:
                    raise
                if time.monotonic() - began > _BUSY_S:
                    raise ScanStopped(
                        f"Another program has held {self.file} for {_BUSY_S / 60:.0f} minutes. Close it, and scan "
                        "again; what was reviewed so far is kept."
                    ) from None
                self._on_wait(f"Another program holds {self.file}; waiting for it.")

    def _all(self, question: str, values: tuple[Any, ...] = ()) -> list[sqlite3.Row]:
        with self._errors_in_words():
            return self._db.execute(question, values).fetchall()

    @contextmanager
    def _errors_in_words(self) -> Iterator[None]:
        """Errors of SQLite in words."""
        try:
            yield
        except sqlite3.DatabaseError as why:
            known = (sqlite3.IntegrityError, sqlite3.ProgrammingError, sqlite3.DataError)
            if isinstance(why, known):  # not the disk, but what was to be written
                raise
            name = getattr(why, "sqlite_errorname", "") or ""
            if name.startswith(("SQLITE_NOTADB", "SQLITE_CORRUPT")):
                raise ScanStopped(
                    f"{self.file} is not the store of a scan, or it is damaged ({why}). Move it away, or name another "
                    "folder with --out."
                ) from None
            raise cannot_write(self.file, why) from None

    def _prepare(self) -> None:
        """Make the tables of a new file; refuse a file of another kind or version."""
        kind = self._db.execute("PRAGMA application_id").fetchone()[0]
        version = self._db.execute("PRAGMA user_version").fetchone()[0]
        if not self._db.execute("SELECT count(*) FROM sqlite_schema").fetchone()[0]:
            schema = resources.files("seamcheck.scanning").joinpath("store_schema.sql").read_text("utf-8")
            self._db.executescript(
                f"BEGIN IMMEDIATE;\n{schema}\nPRAGMA application_id = {APPLICATION_ID};\n"
                f"PRAGMA user_version = {SCHEMA_VERSION};\nCOMMIT;"
            )
            return
        if kind != APPLICATION_ID:
            raise ScanStopped(f"{self.file} is a database of another program. Name another folder with --out.")
        if version > SCHEMA_VERSION:
            raise ScanStopped(
                f"{self.file} was written by a newer seamcheck (store version {version}; this one writes "
                f"{SCHEMA_VERSION}). Use that version, or name another folder with --out; nothing was changed."
            )
        if version < SCHEMA_VERSION:
            raise OlderStore(self.file, version)


def open_to_read(folder: Path) -> Store:
    """The store of a finished scan; ScanStopped where there is none."""
    if not (folder / NAME).is_file():
        raise ScanStopped(f"There is no store of a scan in {folder}.")
    return Store(folder / NAME)


def place_of(row: sqlite3.Row) -> Path:
    """Where a file lies, or the archive that holds it."""
    return Path(os.fsdecode(row["place"]))


def name_of(row: sqlite3.Row) -> str:
    """The name of a file as the review document gives it."""
    return place_of(row).name if row["member"] is None else str(row["name"])


def now() -> str:
    """Date and time of day, UTC."""
    return datetime.now(UTC).strftime("%Y-%m-%d %H:%M:%S")


def _insert(db: sqlite3.Connection, table: str, rows: list[dict[str, Any]]) -> None:
    """Insert rows of equal keys; table and keys are names of this program, values are parameters."""
    if rows:
        keys = list(rows[0])
        marks = ", ".join(f":{key}" for key in keys)
        db.executemany(f"INSERT INTO {table} ({', '.join(keys)}) VALUES ({marks})", rows)
