"""The same scan on a cluster: bytes sent or a folder shared, a worker lost midway, a model that ends workers."""

import importlib.util
import os
import signal
import threading
import time

import psutil
import pytest
from scan_cluster import cluster
from scan_fakes import dump, rows

import seamcheck
from seamcheck.errors import UsageError
from seamcheck.samples import samples
from seamcheck.scanning.run import Progress

pytestmark = pytest.mark.skipif(importlib.util.find_spec("distributed") is None, reason="distributed is not installed")


@pytest.fixture(scope="module")
def models(tmp_path_factory):
    """Eight small samples, one of them cut off."""
    folder = tmp_path_factory.mktemp("models")
    names = ["corner-radius", "seam-open", "sound", "rib-width", "contact-gap", "near-parts", "transmission"]
    for sample in samples():
        if sample.name in names:
            (folder / sample.file.name).write_bytes(sample.file.read_bytes())
    (folder / "cut.step").write_bytes((folder / "sound.step").read_bytes()[:9000])
    return folder


@pytest.fixture(scope="module")
def at_home(models, tmp_path_factory):
    out = tmp_path_factory.mktemp("home")
    seamcheck.scan(models, out)
    return dump(out)


def without_retries(tables):
    return {name: table for name, table in tables.items() if name != "scans"}


@pytest.mark.thorough
def test_a_cluster_gives_the_same_store_though_a_worker_is_killed(models, at_home, tmp_path):
    with cluster(tmp_path, workers=2) as (address, workers):
        _wait_for_workers(address, 2)
        killed = threading.Event()

        def kill_one(progress: Progress) -> None:
            if progress.reviewed >= 2 and not killed.is_set():
                killed.set()
                os.kill(workers[0].pid, signal.SIGKILL)

        result = seamcheck.scan(models, tmp_path / "out", cluster=address, on_progress=kill_one)
    assert killed.is_set()
    assert result.models == 8
    assert dump(tmp_path / "out") == at_home
    assert max(rows(tmp_path / "out", "SELECT tries FROM efforts"))[0] <= 2
    assert not _children_of_killed(workers[0].pid)


@pytest.mark.thorough
def test_a_shared_folder_sends_no_bytes(models, at_home, tmp_path):
    with cluster(tmp_path, workers=1, threads=2) as (address, _):
        seamcheck.scan(models, tmp_path / "out", cluster=address, shared=True)
    assert dump(tmp_path / "out") == at_home


ODD = [
    "a:b.step", "CON.step", "a?.step", "a|b.step", "x" * 230 + ".step", " lead.step", "two\nlines.step", "..step",
    "model.step", "%41.step", "a b.step", "-.step", "lid\u202egpj.step", "a\u0301.step", "\u00e1.step", "a'b\"c.step",
]  # fmt: skip


@pytest.mark.thorough
@pytest.mark.skipif(os.name != "posix", reason="elsewhere these can't be names of files")
def test_odd_names_of_files_give_the_same_documents(tmp_path):
    (tmp_path / "in").mkdir()
    data = next(sample.file for sample in samples() if sample.name == "corner-radius").read_bytes()
    for n, name in enumerate([*ODD, os.fsdecode(b"geh\xe4use.step")]):
        copy = data.replace(b"HEADER;", b"HEADER;\n/* copy %d */" % n, 1)
        (tmp_path / "in" / name).write_bytes(copy)
    seamcheck.scan(tmp_path / "in", tmp_path / "home")
    with cluster(tmp_path, workers=1, ttl="600s") as (address, _):
        _wait_for_workers(address, 1)
        seamcheck.scan(tmp_path / "in", tmp_path / "out", cluster=address)
    assert not rows(tmp_path / "out", "SELECT path, reason FROM results WHERE reason_code = 'crashed'")
    assert len(dump(tmp_path / "home")["reviews"]) == len(ODD) + 1
    assert dump(tmp_path / "out") == dump(tmp_path / "home")


POISON = """
import os, signal
import seamcheck.scanning.cluster as on_workers

if not hasattr(on_workers, "plain_attempt"):  # a preloaded module may be loaded twice
    on_workers.plain_attempt = on_workers.attempt

def attempt(workers, job):
    if job.files[0].name == "poison.step":
        os.kill(os.getpid(), signal.SIGKILL)
    return on_workers.plain_attempt(workers, job)

on_workers.attempt = attempt
"""


@pytest.mark.thorough
def test_a_model_that_ends_its_worker_ends_two_at_most(models, tmp_path):
    """Every review of one model takes its worker with it."""
    import shutil

    shutil.copytree(models, tmp_path / "in")
    (tmp_path / "in/poison.step").write_bytes(b"ISO-10303-21; /* poison */ END-ISO-10303-21;")
    poison = tmp_path / "poison.py"
    poison.write_text(POISON)
    with cluster(tmp_path, workers=4, preload=poison) as (address, workers):
        _wait_for_workers(address, 4)
        result = seamcheck.scan(tmp_path / "in", tmp_path / "out", cluster=address)
        assert sum(worker.poll() is not None for worker in workers) == 2
    assert result.reasons["crashed"] == 1
    assert "lost twice" in rows(tmp_path / "out", "SELECT reason FROM results WHERE path = 'poison.step'")[0][0]
    assert result.verdicts.total() == 9
    assert rows(
        tmp_path / "out", "SELECT again FROM reviews JOIN models USING (review) WHERE path = 'poison.step'"
    ) == [("next-scan",)]


def test_no_scheduler_is_one_sentence(models, tmp_path, monkeypatch):
    monkeypatch.setattr("seamcheck.scanning.cluster.CONNECT_S", 1.0)
    with pytest.raises(UsageError, match="No scheduler answers at tcp"):
        seamcheck.scan(models, tmp_path / "out", cluster="tcp://127.0.0.1:9")


def test_without_the_library_the_extra_is_named(models, tmp_path, monkeypatch):
    import sys

    monkeypatch.setitem(sys.modules, "distributed", None)
    with pytest.raises(UsageError, match=r"\[cluster\]"):
        seamcheck.scan(models, tmp_path / "out", cluster="tcp://127.0.0.1:9")


def _wait_for_workers(address: str, count: int) -> None:
    from distributed import Client

    with Client(address, set_as_default=False) as client:
        client.wait_for_workers(count, timeout=300)


def _children_of_killed(pid: int) -> list[int]:
    """Processes that a killed worker left behind, after a moment."""
    end = time.monotonic() + 5
    while True:
        left = [p.pid for p in psutil.process_iter(["ppid", "cmdline"]) if _serves(p, pid)]
        if not left or time.monotonic() > end:
            return left
        time.sleep(0.2)


def _serves(process, pid: int) -> bool:
    words = process.info["cmdline"] or []
    return any("fork_server" in word for word in words) and str(pid) in words
