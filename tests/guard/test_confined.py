"""A child that reads a stranger's model writes nothing outside of its folder, starts no program and has no network."""

from __future__ import annotations

import ast
import ctypes
import socket
import sys

import pytest
from guard_runs import ROOT, seamcheck

from seamcheck.errors import NotReviewed
from seamcheck.isolation import WarmWorkers, run_isolated
from seamcheck.isolation.confine import _landlock_version, in_force

linux_alone = pytest.mark.skipif(not sys.platform.startswith("linux"), reason="Linux alone confines its children")

needs_landlock = pytest.mark.skipif(
    not sys.platform.startswith("linux") or _landlock_version(ctypes.CDLL(None, use_errno=True)) < 1,
    reason="this kernel has no Landlock, or it is switched off",
)


@pytest.fixture(scope="module", params=["fresh", "warm"])
def run(request):
    if request.param == "fresh":
        yield run_isolated
        return
    with WarmWorkers(1, preload=(), warm=True) as workers:
        yield workers.run


@needs_landlock
def test_nothing_is_written_outside_of_the_folder(run, tmp_path):
    (tmp_path / "own").mkdir()
    (tmp_path / "precious").write_text("x")
    own = {"writable": [str(tmp_path / "own")]}
    assert run("confined_jobs:write", (str(tmp_path / "own/a"),), **own) == "written"
    assert run("confined_jobs:write", (str(tmp_path / "b"),), **own) == "PermissionError"
    assert run("confined_jobs:write", (str(tmp_path / "precious"),), **own) == "PermissionError"
    assert run("confined_jobs:remove", (str(tmp_path / "precious"),), **own) == "PermissionError"
    assert run("confined_jobs:write", ("/dev/null",), writable=()) == "written"
    assert run("confined_jobs:write", (str(tmp_path / "c"),)) == "written"  # a job that is not confined


@needs_landlock
def test_no_program_is_started(run):
    assert run("confined_jobs:start", (), writable=()) == "PermissionError"


@linux_alone
@pytest.mark.parametrize("family", [socket.AF_INET, socket.AF_INET6])
def test_there_is_no_network(run, family):
    if "no network" not in in_force():
        pytest.skip("seccomp is not used on this machine")
    assert run("confined_jobs:connect", (int(family),), writable=()) == "PermissionError"


@pytest.mark.parametrize(
    ("job", "named"),
    [("answer_with_a_call", "mkdir"), ("raise_a_call", "mkdir"), ("answer_with_a_worker", "WarmWorkers")],
)
def test_an_answer_that_would_run_code_is_not_taken(run, tmp_path, job, named):
    """A child that obeys a stranger's model must not get out through what it answers."""
    made = tmp_path / "made"
    with pytest.raises(NotReviewed, match=named):
        run(f"confined_jobs:{job}", () if job == "answer_with_a_worker" else (str(made),), writable=())
    assert not made.exists()


def test_a_module_that_is_gone_says_nothing_of_the_model(run):
    with pytest.raises(NotReviewed, match="no_such_module") as caught:
        run("confined_jobs:not_installed", (), writable=())
    assert caught.value.ended_from_outside  # a scan tries again


def test_an_answer_without_end_is_not_waited_for(run):
    with pytest.raises(NotReviewed, match="an answer of 1000000 MB"):
        run("confined_jobs:answer_without_end", (), writable=())


def test_values_arrays_and_records_are_taken(run):
    found = run("confined_jobs:values", (), writable=())
    assert found["array"].tolist() == [[0.0, 1.0, 2.0], [3.0, 4.0, 5.0]]
    assert found["cut"].tolist() == [0, 2, 4, 6, 8]
    assert found["words"].tolist() == ["a", "b"]
    assert (found["said"], found["said"].message.key) == ("Text.", "a-key")
    assert (found["number"], found["set"], str(found["path"])) == (2.5, {1, 2}, "a/b")
    assert (found["record"].share, found["given"].name, found["count"]["a"], str(found["kind"])) == (
        0.5,
        "n",
        2,
        "float32",
    )


def test_the_version_says_what_is_in_force(tmp_path):
    done = seamcheck("--version", "--verbose", cwd=tmp_path)
    assert done.stdout.decode().splitlines()[1] == in_force()
    assert len(seamcheck("--version", cwd=tmp_path).stdout.splitlines()) == 1


def test_no_child_is_started_without_saying_where_it_may_write():
    """Confinement begins where ``writable`` is given: a forgotten one is a child that may write and send anything."""
    starting = {}
    for file in (ROOT / "seamcheck").rglob("*.py"):
        text = file.read_text("utf-8")
        if file.parent.name == "isolation" or "run_isolated(" not in text:
            continue
        calls = [node for node in ast.walk(ast.parse(text)) if isinstance(node, ast.Call)]
        starting[file.name] = [
            "writable" in {word.arg for word in call.keywords}
            for call in calls
            if getattr(call.func, "id", getattr(call.func, "attr", "")) == "run_isolated"
        ]
    assert {"pipeline.py", "propose.py", "prepare.py", "step.py"} <= starting.keys()
    assert {name: told for name, told in starting.items() if not all(told)} == {}
