"""The folder of a scan: links in it are never followed for writing, and no signal leaves it half done."""

from __future__ import annotations

import os
import shutil
import signal
import sqlite3
import subprocess
import sys
import time

import pytest
from guard_runs import AS_SCRIPT, ROOT, seamcheck
from telling import telling

from seamcheck.cli.shared import check_can_write, write_file
from seamcheck.errors import UsageError
from seamcheck.preparation.prepare import check_folder, write_all
from seamcheck.samples import samples
from seamcheck.scanning.run import WRITTEN

SOUND = next(sample.file for sample in samples() if sample.name == "sound")


@pytest.mark.skipif(os.name != "posix", reason="links need rights elsewhere")
@pytest.mark.parametrize(
    "name", telling([*WRITTEN, ".index.html.part", ".index.csv.part", "index.html"], [*WRITTEN, "index.html"])
)
def test_a_planted_link_is_not_followed(tmp_path, name):
    (tmp_path / "in").mkdir()
    (tmp_path / "in/m.step").write_bytes(b"ISO-10303-21; END-ISO-10303-21;")
    (tmp_path / "out").mkdir()
    victim = tmp_path / "victim"
    if name in ("pages", "measured"):
        victim.mkdir()
    else:
        victim.write_text("precious")
    (tmp_path / "out" / name).symlink_to(victim)
    done = seamcheck("scan", "in", "--out", "out", "--jobs", "1", cwd=tmp_path)
    assert done.returncode == 2, done.stdout
    if victim.is_file():
        assert victim.read_text() == "precious"
    else:
        assert not list(victim.iterdir())
    if name in WRITTEN:
        assert b"link" in done.stderr


def started(folder):
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    words = [sys.executable, "-P", "-c", AS_SCRIPT, "scan", "in", "--out", "out", "--jobs", "1"]
    return subprocess.Popen(words, cwd=folder, env=env, stdout=subprocess.PIPE, stderr=subprocess.PIPE)


@pytest.mark.skipif(os.name != "posix", reason="signals as POSIX has them")
@pytest.mark.parametrize(
    "numbers", telling([("SIGINT", "SIGINT", "SIGINT"), ("SIGHUP",), ("SIGTERM", "SIGINT")], [("SIGTERM", "SIGINT")])
)
def test_signals_leave_an_index_and_nothing_running(tmp_path, numbers):
    (tmp_path / "in").mkdir()
    for n in range(12):  # ten seconds at least: the signals come in the second
        shutil.copy(SOUND, tmp_path / f"in/m{n}.step")
        with (tmp_path / f"in/m{n}.step").open("ab") as file:
            file.write(b"\n" * (n + 1))
    process = started(tmp_path)
    try:
        until = time.monotonic() + 60
        while not (tmp_path / "out/store.sqlite").exists() and time.monotonic() < until:
            time.sleep(0.05)
        time.sleep(1.0)
        for number in numbers:
            process.send_signal(getattr(signal, number))
            time.sleep(0.1)
        process.communicate(timeout=60)
    finally:
        process.kill()
    # A second Ctrl-C that comes when the scan has ended kills the interpreter on its way out: a shell sees 130 as well.
    assert process.returncode in (130, -signal.SIGINT)
    with sqlite3.connect(tmp_path / "out/store.sqlite") as db:
        assert [row[0] for row in db.execute("SELECT how FROM scans")] == ["stopped"]
    assert (tmp_path / "out/index.html").exists()
    assert not (tmp_path / "out/.unpacked").exists()


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
@pytest.mark.parametrize("leads_to", ["a file", "a pipe", "nothing", "no folder"])
def test_a_link_in_place_of_an_output_is_replaced_not_followed(tmp_path, leads_to):
    """Of every command: all write through ``write_file``. Whoever opens the pipe to write waits for ever."""
    (tmp_path / "victim").mkdir()
    victim = tmp_path / ("gone/file" if leads_to == "no folder" else "victim/file")
    if leads_to == "a file":
        victim.write_text("precious")
    if leads_to == "a pipe":
        os.mkfifo(victim)
    (tmp_path / "out.json").symlink_to(victim)
    check_can_write(tmp_path / "out.json")
    write_file(tmp_path / "out.json", "made")
    assert not (tmp_path / "out.json").is_symlink()
    assert (tmp_path / "out.json").read_text() == "made"
    assert (tmp_path / "victim/file").exists() == (leads_to in ("a file", "a pipe"))
    assert leads_to != "a file" or victim.read_text() == "precious"


@pytest.mark.parametrize("leads_to", ["an empty folder", "nothing"])
def test_a_link_in_place_of_a_trial_s_folder_is_not_followed(tmp_path, leads_to):
    (tmp_path / "victim").mkdir()
    victim = tmp_path / "victim/folder"
    if leads_to == "an empty folder":
        victim.mkdir()
    (tmp_path / "trial").symlink_to(victim)
    with pytest.raises(UsageError, match="trial"):
        write_all(check_folder(tmp_path / "trial"), {"sheet.md": b"made"})
    assert [file.name for file in (tmp_path / "victim").rglob("*")] == (["folder"] if victim.exists() else [])
