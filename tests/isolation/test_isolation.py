"""Functions that crash, hang, eat memory or chatter in a child: what the parent gets, and what is left."""

from __future__ import annotations

import ast
import os
import pickle
import signal
import subprocess
import sys
import time
from pathlib import Path

import psutil
import pytest

from seamcheck.errors import NotReviewed, UsageError
from seamcheck.isolation import Stopped, WarmWorkers, run_isolated, written_by_child
from seamcheck.isolation.frames import MOST_BYTES

HERE = str(Path(__file__).parent)
ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module", params=["fresh", "warm"])
def run(request):
    """Both ways to run a function in a child; they keep the same promises."""
    if request.param == "fresh":
        yield run_isolated
        return
    if not hasattr(os, "fork"):
        pytest.skip("this system has no fork")
    with WarmWorkers(1, preload=(), warm=True) as workers:
        yield workers.run


def not_reviewed(run, function, *args, **options) -> NotReviewed:
    with pytest.raises(NotReviewed) as caught:
        run(f"isolation_jobs:{function}", args, **options)
    return caught.value


def test_the_result_comes_back_and_chatter_does_not(run, capfd):
    stages = []
    assert run("isolation_jobs:add", (1, 2), progress=lambda *stage: stages.append(stage)) == 3
    assert stages == [("reading",), ("measuring", 0.5)]
    assert capfd.readouterr() == ("", "")


def test_every_job_has_a_process_of_its_own(run):
    assert len({run("isolation_jobs:who"), run("isolation_jobs:who"), os.getpid()}) == 3


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="threads are counted in /proc")
@pytest.mark.skipif((os.cpu_count() or 1) < 2, reason="numpy starts no threads where there is one processor")
def test_numpy_starts_no_threads_that_would_spin(run):
    assert run("isolation_jobs:threads_that_numpy_starts") == 0


def test_a_segfault_says_what_the_child_was_doing(run):
    error = not_reviewed(run, "crash")
    assert error.code == "crashed"
    assert "crashed while transferring" in error.message
    assert "crash" in error.traceback  # faulthandler's: the Python line that crashed


def test_the_time_limit_holds(run):
    began = time.monotonic()
    error = not_reviewed(run, "sleep", 600, time_limit_s=3)
    assert time.monotonic() - began < 300  # it sleeps for 600 s; a busy machine may add to the 3 s
    assert error.code == "timeout"
    assert "3 s" in error.message
    assert "finding" in error.message


@pytest.mark.parametrize("end", ["crash", "sleep"])
def test_a_bad_end_comes_with_what_was_found_odd_before(run, end):
    error = not_reviewed(run, f"remark_and_{end}", time_limit_s=None if end == "crash" else 3)
    assert error.message.endswith(" 'lid' is cracked.")
    assert error.message.count(".") <= 5
    assert "export it again" not in error.message  # what to do stands in the remark


def test_the_memory_limit_holds(run):
    error = not_reviewed(run, "costs_and_hog", memory_limit_mb=200)
    assert error.message.endswith("Possible cause: the model has 107 bodies.")
    assert error.code == "out-of-memory"
    assert "200 MB" in error.message


def test_errors_of_our_own_come_as_they_are(run):
    error = not_reviewed(run, "refuse")
    assert (error.code, error.message) == ("empty", "Nothing in it.")
    assert "refuse" in error.traceback
    with pytest.raises(UsageError, match="wrong option"):
        run("isolation_jobs:misuse")


def test_a_surprise_becomes_crashed_with_its_name_and_traceback(run):
    error = not_reviewed(run, "stumble")
    assert error.code == "crashed"
    assert "KeyError" in error.message
    assert "a surprise" in error.message
    assert "stumble" in error.traceback
    again = pickle.loads(pickle.dumps(error))
    assert (again.code, again.message, again.traceback) == (error.code, error.message, error.traceback)


def test_what_does_not_exist_or_can_not_travel_is_an_error_not_a_hang(run):
    assert not_reviewed(run, "nothing_of_this_name").code == "not-started"
    assert not_reviewed(run, "untravelled").code == "crashed"


def test_a_job_that_ends_its_process_is_a_crash(run):
    assert "exit status 3" in not_reviewed(run, "leave").message


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system has no such signal")
def test_a_child_that_the_system_kills_ran_out_of_memory(run):
    error = not_reviewed(run, "killed")
    assert error.code == "out-of-memory"
    assert "The system ended" in error.message


def waits(condition, seconds=120.0):
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        if condition():
            return True
        time.sleep(0.02)
    return False


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="elsewhere the child ends a little later")
@pytest.mark.parametrize(
    "way",
    [
        "run_isolated('isolation_jobs:who_and_sleep', (note,))",
        "WarmWorkers(1, preload=(), warm=True).run('isolation_jobs:who_and_sleep', (note,))",
        "from seamcheck.isolation import forked; forked.allow_forks()\n"
        "run_isolated('isolation_jobs:who_and_sleep', (note,))",
    ],
)
@pytest.mark.parametrize("end", ["SIGKILL", "SIGINT", "SIGTERM"])
def test_a_parent_that_ends_leaves_no_child(tmp_path, way, end):
    note = tmp_path / "pid"
    script = "import signal\nsignal.signal(signal.SIGINT, signal.default_int_handler)\n"  # a shell may have it ignored
    script += (
        f"from seamcheck.isolation import *\nfrom seamcheck.isolation import imports\nimports.ALSO.append({HERE!r})\n"
    )
    script += f"note = {str(note)!r}\n{way}"
    parent = subprocess.Popen([sys.executable, "-c", script], stderr=subprocess.DEVNULL)
    try:
        assert waits(lambda: note.exists() and note.read_text())
        family = psutil.Process(parent.pid).children(recursive=True)
        assert int(note.read_text()) in [process.pid for process in family]
        parent.send_signal(getattr(signal, end))
        parent.wait(timeout=120)
        assert waits(lambda: not any(process.is_running() for process in family))
    finally:
        parent.kill()


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="forks are made on Linux only")
def test_a_forked_child_keeps_the_promises_of_a_fresh_one_and_what_is_loaded(tmp_path):
    script = f"""
import sys, threading, time, types
sys.path.insert(0, {str(tmp_path / "strange")!r}); sys.path.insert(0, "")
from seamcheck.errors import NotReviewed
from seamcheck.isolation import forked, imports, run_isolated
imports.ALSO.append({HERE!r})
sys.modules["kept_by_the_parent"] = types.ModuleType("kept_by_the_parent")
forked.allow_forks()
held = open({str(tmp_path / "held.txt")!r}, "w")
print("written before", end="")  # still in this process's buffer
said = []
assert forked.can_fork()
said.append(run_isolated("isolation_jobs:add", (1, 2)))
said.append(run_isolated("isolation_jobs:what_it_has"))
said[-1]["kept"] &= all(run_isolated("isolation_jobs:what_it_has")["kept"] for _ in range(20))  # each at once
for job in ("crash", "refuse", "leave", "killed"):
    try:
        run_isolated("isolation_jobs:" + job)
    except NotReviewed as why:
        said.append((why.code, str(why)))
try:
    run_isolated("isolation_jobs:sleep", (600,), time_limit_s=0.5)
except NotReviewed as why:
    said.append(why.code)
stop = threading.Event()
other = threading.Thread(target=stop.wait)
other.start()
assert not forked.can_fork()
said.append(run_isolated("isolation_jobs:what_it_has")["kept"])
stop.set()
import os
print(repr((os.getpid(), said)))
"""
    environment = {**os.environ, "PYTHONPATH": str(tmp_path / "strange")}
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=False, env=environment, cwd=ROOT
    )
    assert done.returncode == 0, done.stderr
    before, _, told = done.stdout.partition("(")
    assert before == "written before"  # once: not by the children as well
    parent, (three, has, crashed, refused, left, killed, slow, kept) = ast.literal_eval("(" + told)
    assert three == 3
    assert has["kept"]
    assert has["files"] == []
    assert has["PYTHONPATH"] is None
    assert has["parent"] == parent
    assert "" not in has["path"]
    assert not [folder for folder in has["path"] if folder.startswith(str(tmp_path))]
    assert crashed[0] == "crashed"
    assert "SIGSEGV" in crashed[1]
    assert refused[0] == "empty"
    assert "exit status 3" in left[1]
    assert killed[0] == "out-of-memory"
    assert slow == "timeout"
    assert kept is False  # beside another thread the child is a fresh one


def test_the_parent_loads_no_kernel():
    script = "import sys, seamcheck.isolation, seamcheck.assembly; sys.exit('OCP' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", script], check=False).returncode == 0


def test_warm_workers_outlive_crashes_and_keep_the_order():
    if not hasattr(os, "fork"):
        pytest.skip("this system has no fork")
    with WarmWorkers(2, preload=(), warm=True) as workers:
        futures = [workers.submit("isolation_jobs:crash" if n % 3 == 0 else "isolation_jobs:double",
                                  () if n % 3 == 0 else (n,)) for n in range(12)]  # fmt: skip
        for n, future in enumerate(futures):
            if n % 3 == 0:
                assert future.exception().code == "crashed"
            else:
                assert future.result() == 2 * n


def test_leaving_the_pool_waits_for_its_jobs_and_an_error_ends_them(tmp_path):
    if not hasattr(os, "fork"):
        pytest.skip("this system has no fork")
    with WarmWorkers(1, preload=(), warm=True) as workers:
        futures = [workers.submit("isolation_jobs:double", (n,)) for n in range(3)]
    assert [future.result() for future in futures] == [0, 2, 4]
    note = tmp_path / "pid"
    began = time.monotonic()
    workers = WarmWorkers(1, preload=(), warm=True)
    futures = [workers.submit("isolation_jobs:who_and_sleep", (str(note),)) for _ in range(2)]
    assert waits(lambda: note.exists() and note.read_text())
    workers.__exit__(KeyboardInterrupt, KeyboardInterrupt(), None)
    assert time.monotonic() - began < 300  # each of the two jobs sleeps for 600 s
    assert waits(lambda: not psutil.pid_exists(int(note.read_text())))
    assert isinstance(futures[0].exception(), Stopped)
    assert futures[1].cancelled()


def test_a_server_that_was_killed_is_started_again():
    if not hasattr(os, "fork"):
        pytest.skip("this system has no fork")
    before = psutil.Process().children()
    with WarmWorkers(1, preload=(), warm=True) as workers:
        first = workers.run("isolation_jobs:who")
        (server,) = set(psutil.Process().children()) - set(before)
        server.kill()
        server.wait(timeout=120)
        assert workers.run("isolation_jobs:who") != first


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="Windows has neither such pipes nor links for everybody")
@pytest.mark.parametrize("what", ["pipe", "link", "folder", "too large", "missing"])
def test_what_a_child_wrote_is_read_only_where_it_is_a_plain_file(tmp_path, what):
    file, own = tmp_path / "proposed.step", tmp_path / "secret"
    own.write_bytes(b"of the user's")
    if what == "pipe":
        os.mkfifo(file)
    elif what == "link":
        file.symlink_to(own)
    elif what == "folder":
        file.mkdir()
    elif what == "too large":
        with file.open("wb") as stream:
            stream.truncate(MOST_BYTES + 1)  # takes no room on the disk
    with pytest.raises(NotReviewed, match=r"proposed\.step"):
        written_by_child(file)
    assert written_by_child(own) == b"of the user's"
