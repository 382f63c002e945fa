"""A hundred kills of scans and of clusters in the middle of their work: nothing lost, nothing left behind.

Counted are only kills that hit a running scan with reviews still to come; when a folder is scanned to its end, its
store is held against that of an undisturbed scan, and a new folder begins. With more or fewer kills::

    SEAMCHECK_KILLS=20 pytest -s -m thorough tests/scanning/test_kills.py
"""

from __future__ import annotations

import importlib.util
import os
import random
import signal
import sqlite3
import subprocess
import sys
import time
import zipfile
from collections import Counter
from pathlib import Path

import psutil
import pytest

sys.path.insert(0, str(Path(__file__).parents[1]))
from damage import variants
from scan_cluster import cluster, worker
from scan_fakes import dump

from seamcheck.samples import samples

pytestmark = pytest.mark.thorough

ROOT = Path(__file__).parents[2]
KILLS = int(os.environ.get("SEAMCHECK_KILLS", "100"))
FILES = {sample.name: sample.file.read_bytes() for sample in samples()}
SMALL = ("corner-radius", "seam-open", "sound")
PATIENCE_S = 300.0


@pytest.fixture(scope="module")
def place(tmp_path_factory):
    """22 small models, some of them damaged or packed, and the store of a scan that nobody disturbs."""
    place = tmp_path_factory.mktemp("kills")
    (place / "in").mkdir()
    for n in range(14):
        copy = FILES[SMALL[n % 3]].replace(b"HEADER;", b"HEADER;\n/* copy %d */" % n, 1)
        (place / f"in/{n}.step").write_bytes(copy)
    for variant in variants(FILES["corner-radius"], 4, first=30):
        (place / f"in/{variant.way}.step").write_bytes(variant.data)
    with zipfile.ZipFile(place / "in/box.zip", "w", zipfile.ZIP_DEFLATED) as archive:
        for n in range(4):
            archive.writestr(f"{n}/packed.step", FILES["sound"].replace(b"HEADER;", b"HEADER;\n/* packed %d */" % n, 1))
    (place / "temporary").mkdir()
    assert started(place, "whole").wait(timeout=3000) == 1
    return place


def started(place: Path, out: str, *options: str) -> subprocess.Popen:
    env = os.environ | {"PYTHONPATH": str(ROOT), "TMPDIR": str(place / "temporary"), "SEAMCHECK_CACHE": ""}
    words = [sys.executable, "-m", "seamcheck", "scan", "in", "--out", out, "--pages", "findings", *options]
    return subprocess.Popen(words, cwd=place, env=env, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def reviewed(out: Path) -> set[str]:
    """Keys of the reviews that a store holds; it is whole at every moment."""
    if not (out / "store.sqlite").exists():
        return set()
    db = sqlite3.connect(out / "store.sqlite")
    try:
        assert db.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        # what a lost worker took with it is to be tried again: no result yet
        return {key for (key,) in db.execute("SELECT review FROM reviews WHERE again <> 'next-scan'")}
    except sqlite3.OperationalError as why:
        if "no such table" in str(why):  # killed before the first table was made
            return set()
        raise
    finally:
        db.close()


def seen(out: Path) -> int:
    try:
        with sqlite3.connect(f"file:{out / 'store.sqlite'}?mode=ro", uri=True) as db:
            return int(db.execute("SELECT count(*) FROM reviews").fetchone()[0])
    except sqlite3.Error:
        return 0


def wait_for_work(scan: subprocess.Popen, out: Path, pick: random.Random) -> None:
    """Until this run has done none, one or two reviews, and a little longer."""
    begin, more, end = seen(out), pick.choice((0, 0, 1, 2)), time.monotonic() + PATIENCE_S
    while scan.poll() is None and seen(out) < begin + more and time.monotonic() < end:
        time.sleep(0.02)
    time.sleep(pick.uniform(0.0, 2.0 if more == 0 else 0.4))


def contents(folder: Path) -> dict[str, bytes]:
    return {file.name: file.read_bytes() for file in folder.iterdir()}


def left_behind(place: Path) -> list[Path]:
    """Files with a model in them that are left in the temporary folder."""
    found = [path for path in (place / "temporary").rglob("*") if path.is_file()]
    return [path for path in found if b"ISO-10303-21" in path.read_bytes()[:100_000]]


class Kills:
    """Kills scans of one place into folder after folder; ``scan_options`` as for the command."""

    def __init__(self, place: Path, name: str, pick: random.Random, *scan_options: str) -> None:
        self.place, self.name, self.pick, self.options = place, name, pick, scan_options
        self.hits: Counter[str] = Counter()
        self.rounds, self.out = 0, place / f"{name}-0"
        self.models = seen(place / "whole")

    def one(self, victims) -> None:
        """One run of a scan; ``victims``: its process -> pairs of what is killed and its id, of which one is taken."""
        before = reviewed(self.out)
        scan = started(self.place, self.out.name, *self.options)
        wait_for_work(scan, self.out, self.pick)
        if scan.poll() is not None:
            self.finished(scan.returncode)
            return
        what, pid = self.pick.choice(victims(scan))
        family = psutil.Process(scan.pid).children(recursive=True)
        try:
            os.kill(pid, signal.SIGKILL)
        except ProcessLookupError:
            scan.kill()
            scan.wait()
            return
        if what == "scan":
            scan.wait()
            _, alive = psutil.wait_procs(family, timeout=20)
            assert not alive, "a child outlives its scan"
            self.hits[what] += seen(self.out) < self.models
        else:  # the scan goes on without it, to its end or to the next kill
            self.hits[what] += seen(self.out) < self.models
            time.sleep(self.pick.uniform(0.2, 1.5))
            scan.kill()
            was_running = scan.wait() == -signal.SIGKILL
            self.hits["scan, soon after"] += was_running and seen(self.out) < self.models
            psutil.wait_procs(family, timeout=20)
        assert before <= reviewed(self.out), "a finished review is lost"
        assert left_behind(self.place) == []

    def finished(self, code: int) -> None:
        """The folder is scanned to its end: hold it against the undisturbed one, and begin a new one."""
        for _ in range(2):  # a review that was lost twice is tried again by the next scan
            code = started(self.place, self.out.name, *self.options).wait(timeout=3000)
        assert code == 1
        assert dump(self.out) == dump(self.place / "whole")
        pages = [
            {f.name: f.read_bytes() for f in (out / "pages").iterdir()} for out in (self.out, self.place / "whole")
        ]
        assert pages[0] == pages[1]
        assert {f.name for f in self.out.iterdir()} <= {f.name for f in (self.place / "whole").iterdir()}
        assert left_behind(self.place) == []
        self.rounds += 1
        self.out = self.place / f"{self.name}-{self.rounds}"


def test_scans_that_are_killed(place):
    kills = Kills(place, "killed", random.Random(20), "--jobs", "2")

    def victims(scan):
        family = [("a child", child.pid) for child in psutil.Process(scan.pid).children(recursive=True)]
        return [("scan", scan.pid), *([pick] if family and (pick := kills.pick.choice(family)) else [])]

    while kills.hits.total() < KILLS:
        kills.one(victims)
    kills.finished(0)
    print(f"\nkills: {dict(kills.hits)}; folders scanned to their end: {kills.rounds}")


@pytest.mark.skipif(importlib.util.find_spec("distributed") is None, reason="distributed is not installed")
def test_clusters_that_are_killed(place, monkeypatch):
    from distributed import Client

    monkeypatch.setenv("TMPDIR", str(place / "temporary"))
    with cluster(place, workers=2) as (address, workers):
        with Client(address, set_as_default=False) as client:
            client.wait_for_workers(2, timeout=120)
        kills = Kills(place, "cluster", random.Random(21), "--cluster", address)
        shared = {
            "env": os.environ | {"PYTHONPATH": str(ROOT)}, "cwd": place, "stdout": subprocess.DEVNULL,
            "stderr": subprocess.DEVNULL,
        }  # fmt: skip

        def victims(scan):
            alive = [process for process in workers if process.poll() is None]
            below = [c for process in alive for c in psutil.Process(process.pid).children(recursive=True)]
            return [
                ("scan", scan.pid), *[("a worker", process.pid) for process in alive[:1]],
                *[("a worker's child", kills.pick.choice(below).pid) for _ in below[:1]],
            ]  # fmt: skip

        while kills.hits.total() < KILLS:
            kills.one(victims)
            for process in [process for process in workers if process.poll() is not None]:
                workers.remove(process)
                workers.append(worker(place, address, 1, None, shared))
        kills.finished(0)
        for process in workers:
            process.kill()
            process.wait()
    print(f"\nkills: {dict(kills.hits)}; folders scanned to their end: {kills.rounds}")
    assert left_behind(place) == []
