"""Hundreds of models: every row accounted for, two scans at once, a full and a read-only disk, speed, memory."""

import json
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import zipfile
from collections import Counter
from pathlib import Path

import psutil
import pytest

sys.path.insert(0, str(Path(__file__).parents[1]))
from damage import variants
from scan_fakes import dump, rows

from seamcheck.errors import REASONS
from seamcheck.samples import samples

pytestmark = pytest.mark.thorough

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
FILES = {sample.name: sample.file.read_bytes() for sample in samples()}
SMALL = ("corner-radius", "seam-open", "sound", "transmission", "near-parts", "wall-opening")


def numbered(data: bytes, n: int) -> bytes:
    """The same model as another file: a comment in its head (ISO 10303-21, 6.5) changes the hash and nothing else."""
    return data.replace(b"HEADER;", b"HEADER;\n/* copy %d */" % n, 1)


def command(*options: str) -> list[str]:
    return [sys.executable, "-m", "seamcheck", "scan", "in", "--out", *options]


def run(place: Path, *options: str, **more):
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    return subprocess.run(command(*options), cwd=place, env=env, capture_output=True, text=True, timeout=3000, **more)


def started(place: Path, *options: str) -> subprocess.Popen:
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    before = signal.signal(signal.SIGINT, signal.default_int_handler)  # a shell may have it ignored
    try:
        return subprocess.Popen(
            command(*options), cwd=place, env=env, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True
        )
    finally:
        signal.signal(signal.SIGINT, before)


def cpu_seconds_of(place: Path, *options: str) -> tuple[float, float, int]:
    """Wall and CPU seconds of a scan with all its children, and its exit code."""
    before, began = os.times(), time.monotonic()
    done = run(place, *options)
    after = os.times()
    cpu = after.children_user + after.children_system - before.children_user - before.children_system
    return time.monotonic() - began, cpu, done.returncode


def test_three_hundred_models_are_all_accounted_for(tmp_path):
    """300 sound files and 80 damaged ones; then nothing changed, and a second scan is quick."""
    n = 0
    for n in range(300):
        name = sorted(FILES)[n % len(FILES)] if n < 2 * len(FILES) else SMALL[n % len(SMALL)]
        target = tmp_path / "in" / f"supplier-{n % 7}" / f"{name}-{n}.step"
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(numbered(FILES[name], n))
    (tmp_path / "in/damaged").mkdir()
    for variant in variants(FILES["corner-radius"], 80):
        (tmp_path / "in/damaged" / f"{variant.way}-{variant.seed}.step").write_bytes(variant.data)
    wall, cpu, code = cpu_seconds_of(tmp_path, "out", "--time-limit", "200")
    assert code == 1
    verdicts = dict(rows(tmp_path / "out", "SELECT path, verdict FROM results"))
    assert set(verdicts) == {str(f.relative_to(tmp_path / "in")) for f in (tmp_path / "in").rglob("*.step")}
    alone = {sample.name: sample for sample in samples()}
    for path, verdict in verdicts.items():
        name = Path(path).name.rsplit("-", 1)[0]
        if not path.startswith("damaged") and alone[name].rule is None:
            assert verdict in ("pass", "attention"), path
    refused = rows(tmp_path / "out", "SELECT reason_code, reason FROM results WHERE verdict = 'not-reviewed'")
    assert all(code in REASONS and reason for code, reason in refused)
    again_wall, again_cpu, code = cpu_seconds_of(tmp_path, "out", "--time-limit", "200")
    print(
        f"\n380 models: {wall:.0f} s wall, {cpu:.0f} s CPU; unchanged: {again_wall:.1f} s wall, {again_cpu:.1f} s CPU"
    )
    print(Counter(verdicts.values()), Counter(code for code, _ in refused))
    assert code == 1
    assert wall >= 50 * again_wall


@pytest.fixture(scope="module")
def small_place(tmp_path_factory):
    """36 small models: sound, damaged, copied, packed, and what isn't a model; and their undisturbed scan."""
    place = tmp_path_factory.mktemp("small")
    folder = place / "in"
    folder.mkdir()
    for n in range(22):
        (folder / f"{n}.step").write_bytes(numbered(FILES[SMALL[n % 3]], n))
    for variant in variants(FILES["corner-radius"], 8, first=30):
        (folder / f"{variant.way}.step").write_bytes(variant.data)
    (folder / "copies").mkdir()
    shutil.copy(folder / "1.step", folder / "copies/1.step")
    with zipfile.ZipFile(folder / "box.zip", "w", zipfile.ZIP_DEFLATED) as archive:
        for n in range(4):
            archive.writestr(f"{n}/packed.step", numbered(FILES["corner-radius"], 100 + n))
    (folder / "pointer.step").write_text("version https://git-lfs.github.com/spec/v1\n")
    done = run(place, "whole", "--pages", "findings")
    assert done.returncode == 1, done.stderr
    return place


def _gone(family: list[psutil.Process]) -> None:
    """No child outlives its scan."""
    _, alive = psutil.wait_procs(family, timeout=10)
    assert not alive


def test_two_scans_at_once_one_is_refused(small_place):
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    both = [
        subprocess.Popen(
            command("both"), cwd=small_place, env=env, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
        )
        for _ in range(2)
    ]
    told = [scan.communicate(timeout=900)[1] for scan in both]
    assert sorted(scan.returncode for scan in both) == [1, 2]
    refused = told[[scan.returncode for scan in both].index(2)]
    assert "Another scan is writing into both (process" in refused
    assert dump(small_place / "both") == dump(small_place / "whole")


@pytest.fixture
def small_disk(tmp_path):
    """A tmpfs of 3 MB; where none may be mounted the test says so."""
    disk = tmp_path / "disk"
    disk.mkdir()
    mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=3m", "tmpfs", disk], capture_output=True)
    if mounted.returncode:
        pytest.skip("no tmpfs can be mounted here; tests/scanning/test_scan.py fills a database instead")
    yield disk
    subprocess.run(["umount", disk], check=True)


def test_a_full_disk_and_then_room_again(small_place, small_disk):
    done = run(small_place, str(small_disk / "out"), "--jobs", "2")
    assert done.returncode == 2
    assert "The disk is full" in done.stderr
    assert "kept" in done.stderr
    assert "Traceback" not in done.stderr
    kept = len(dump(small_disk / "out")["reviews"])
    assert kept > 0
    subprocess.run(["mount", "-o", "remount,size=200m", small_disk], check=True)
    done = run(small_place, str(small_disk / "out"))
    assert done.returncode == 1
    assert dump(small_disk / "out") == dump(small_place / "whole")
    subprocess.run(["mount", "-o", "remount,ro", small_disk], check=True)
    done = run(small_place, str(small_disk / "out"))
    assert done.returncode == 2
    assert "can't be written" in done.stderr
    assert dump(small_disk / "out") == dump(small_place / "whole")


def test_ctrl_c_and_sigterm_say_how_to_go_on(small_place):
    for number in (signal.SIGINT, signal.SIGTERM):
        scan = started(small_place, "stopped", "--again")
        time.sleep(9)
        family = psutil.Process(scan.pid).children(recursive=True)
        scan.send_signal(number)
        _, told = scan.communicate(timeout=60)
        assert scan.returncode == 130
        assert "the same command resumes there" in told
        assert "Traceback" not in told
        assert "stopped before its end" in (small_place / "stopped/index.html").read_text()
        _gone(family)
    done = run(small_place, "stopped")
    assert done.returncode == 1
    assert dump(small_place / "stopped") == dump(small_place / "whole")


BARE = """
import sys, time
from pathlib import Path
import seamcheck.scanning.warm_up
from seamcheck.settings.settings import Settings
from seamcheck.pipeline import review_model

began = time.process_time()
for file in sorted(Path("in").glob("*.step")):
    review_model((file,), Settings())
print(time.process_time() - began)
"""


def test_two_processors_do_nearly_twice_as_much(tmp_path):
    """On a busy machine: by what a scan adds as CPU time, and by how many reviews it keeps running at a time."""
    (tmp_path / "in").mkdir()
    for n in range(40):
        (tmp_path / "in" / f"{n}.step").write_bytes(numbered(FILES[SMALL[n % 3]], n))
    env = os.environ | {"PYTHONPATH": str(ROOT), "OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1"}
    bare = subprocess.run(
        [sys.executable, "-c", BARE], cwd=tmp_path, env=env, capture_output=True, text=True, check=True
    )
    reviews = float(bare.stdout)
    is_quiet = psutil.cpu_percent(interval=2.0) < 15  # else the wall time tells of what else the machine does
    timed = {jobs: cpu_seconds_of(tmp_path, f"jobs-{jobs}", "--jobs", str(jobs), "--pages", "none") for jobs in (1, 2)}
    idle_wall, idle_cpu, _ = cpu_seconds_of(tmp_path, "jobs-1", "--jobs", "1", "--pages", "none")  # start, look, write
    overhead = (timed[1][1] - reviews) / 40
    busy = rows(tmp_path / "jobs-2", "SELECT sum(seconds) FROM efforts")[0][0] / (timed[2][0] - idle_wall)
    growth = (timed[2][1] - idle_cpu) / (timed[1][1] - idle_cpu)
    ratio = timed[1][0] / timed[2][0]
    print(f"\n40 models, 1 job {timed[1][0]:.0f} s wall, 2 jobs {timed[2][0]:.0f} s: {ratio:.2f} times")
    print(f"CPU: reviews alone {reviews:.1f} s, scans {timed[1][1]:.1f} and {timed[2][1]:.1f} s")
    print(f"beyond the reviews {overhead:.3f} s a model; with 2 jobs {busy:.2f} reviews ran at a time")
    assert overhead <= 0.3
    assert busy >= 1.8
    assert growth <= 1.15
    if is_quiet:
        assert ratio >= 1.5


MANY = """
import sys, resource, json
sys.path.insert(0, {here!r})
from scan_fakes import Fakes
import seamcheck

class Counting(Fakes):
    def submit(self, job):
        self.jobs.clear()  # keep none
        return super().submit(job)

result = seamcheck.scan("in", "out", workers=Counting(), pages="none")
print(json.dumps([result.models, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024]))
"""


@pytest.fixture
def quick_disk(tmp_path):
    """A folder in memory where the system has one: here it is not the disk that is looked at."""
    if not os.access("/dev/shm", os.W_OK):
        yield tmp_path
        return
    with tempfile.TemporaryDirectory(dir="/dev/shm") as folder:
        yield Path(folder)


def test_memory_stays_flat_over_ten_thousand_models(quick_disk):
    used = {}
    for count in (500, 10_000):
        place = quick_disk / str(count)
        for n in range(count):
            folder = place / "in" / f"s{n % 40}"
            folder.mkdir(parents=True, exist_ok=True)
            (folder / "m.step" if n < 40 else folder / f"m{n}.step").write_text(
                f"ISO-10303-21;\n/* {('fail', 'pass')[n % 2]} {n} */\nEND-ISO-10303-21;\n"
            )
        code = MANY.format(here=str(HERE))
        done = subprocess.run(
            [sys.executable, "-c", code], cwd=place, capture_output=True, text=True, timeout=3000,
            env=os.environ | {"PYTHONPATH": os.pathsep.join([str(ROOT), *sys.path])},
        )  # fmt: skip
        assert done.returncode == 0, done.stderr
        models, used[count] = json.loads(done.stdout)
        assert models == count
    size = {
        name: (quick_disk / "10000/out" / name).stat().st_size / 1e6
        for name in ("index.html", "index.csv", "store.sqlite")
    }
    print(f"\nMB resident at most: {used}; MB of files: {size}")
    assert used[10_000] < used[500] + 25
    assert size["index.html"] < 10
