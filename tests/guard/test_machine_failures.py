"""What fails before a model was opened says nothing of the model: it is the machine's; the next scan tries again."""

from __future__ import annotations

import resource
import shutil
import subprocess
import sys

import pytest
from guard_runs import AS_SCRIPT, ROOT, seamcheck
from shell import shell

from seamcheck.errors import NotReviewed
from seamcheck.isolation import WarmWorkers
from seamcheck.samples import samples
from seamcheck.scanning.store import open_to_read

pytestmark = pytest.mark.skipif(not sys.platform.startswith("linux"), reason="limits of a shell as Linux has them")


@pytest.fixture
def models(tmp_path):
    (tmp_path / "models").mkdir()
    shutil.copy(next(sample.file for sample in samples() if sample.name == "sound"), tmp_path / "models/sound.step")
    return tmp_path


def limited(megabytes: int, *args: str, cwd) -> subprocess.CompletedProcess:
    """seamcheck under a memory limit of the shell, as ``ulimit -v`` sets it."""
    size = megabytes * 1_000_000
    return subprocess.run(
        [sys.executable, "-P", "-c", AS_SCRIPT, *args], cwd=cwd, capture_output=True, timeout=900, check=False,
        env={"PYTHONPATH": str(ROOT), "PATH": "/usr/bin:/bin", "SEAMCHECK_CACHE": "", "OPENBLAS_NUM_THREADS": "1"},
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_AS, (size, size)),
    )  # fmt: skip


def row(out):
    with open_to_read(out) as store:
        return store.rows(
            "SELECT verdict, reason_code, reason, again FROM results LEFT JOIN "
            "(SELECT review AS r, again FROM reviews) ON r = results.review"
        )[0]


@pytest.mark.thorough
def test_a_low_memory_limit_of_the_shell_is_no_verdict_about_the_model(models):
    done = limited(700, "scan", "models", "--out", "out", "--jobs", "1", cwd=models)
    found = row(models / "out")
    assert (done.returncode, found["verdict"], found["again"]) == (2, "not-reviewed", "next-scan"), done.stderr.decode()
    assert found["reason_code"] in ("not-started", "out-of-memory")
    assert "damaged" not in found["reason"]
    assert "machine" in found["reason"] or "ulimit" in found["reason"]
    done = seamcheck("scan", "models", "--out", "out", "--jobs", "1", cwd=models)
    assert done.returncode == 0, done.stderr.decode()
    assert row(models / "out")["verdict"] == "pass"


def test_a_low_memory_limit_of_the_shell_is_named_by_a_review(models):
    done = limited(300, "review", "models/sound.step", cwd=models)
    assert done.returncode == 2
    assert b"damaged" not in done.stdout + done.stderr
    assert b"Traceback" not in done.stderr


@pytest.mark.parametrize("ways", ["fresh", "warm"])
@pytest.mark.parametrize(
    ("function", "limits"),
    [
        ("no_such_module:at_all", {}),
        ("isolation_jobs:leave_at_once", {}),
        ("isolation_jobs:crash_at_once", {}),
        ("isolation_jobs:sleep_at_once", {"time_limit_s": 0.4}),
        ("isolation_jobs:sleep_at_once", {"memory_limit_mb": 1}),
    ],
)
def test_every_end_before_the_first_stage_is_the_machine_s(ways, function, limits):
    with WarmWorkers(1, preload=(), warm=ways == "warm") as workers, pytest.raises(NotReviewed) as caught:
        workers.run(function, (), **limits)
    assert caught.value.code == "not-started"
    assert caught.value.ended_from_outside
    assert "machine" in caught.value.message


@pytest.mark.parametrize("value", ["nan", "inf", "-1", "0", "1e400"])
@pytest.mark.parametrize("option", ["--time-limit", "--memory-limit"])
@pytest.mark.parametrize(
    "command", [("review", "m.step"), ("compare", "m.step", "m.step"), ("scan", ".", "--out", "o")]
)
def test_a_limit_is_a_finite_number_above_0(tmp_path, command, option, value):
    (tmp_path / "m.step").write_text("ISO-10303-21;")
    done = shell(*command, option, value)
    assert done.exit_code == 2
    assert "finite number above 0" in done.output
