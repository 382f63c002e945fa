"""No code of a stranger's folder runs: children import from where seamcheck, its libraries and Python lie, alone."""

from __future__ import annotations

import importlib.util
import os
import shutil
import sys
from functools import cache
from pathlib import Path

import pytest
from guard_runs import ROOT, run, seamcheck
from telling import telling

from seamcheck.isolation import run_isolated
from seamcheck.isolation.imports import libraries, program
from seamcheck.samples import samples

MARKER = "executed.txt"
HOSTILE = f"open({MARKER!r}, 'a').write(__name__ + '\\n')\nraise ImportError('a module of the working folder ran')\n"


@cache
def loaded_by_a_review() -> set[str]:
    """Top-level names of all modules that a review, its document and its pictures load, and those of Python itself."""
    script = (
        "import importlib, sys\n"
        "from seamcheck.isolation.loading import REVIEW_MODULES\n"
        "for name in (*REVIEW_MODULES, 'seamcheck.cli.group', 'seamcheck.scanning.run', 'seamcheck.scanning.warm_up',\n"
        "             'seamcheck.comparison.compare', 'seamcheck.report.html.page', 'seamcheck.report.text',\n"
        "             'seamcheck.document.read', 'seamcheck.report.dxf', 'seamcheck.report.glb'):\n"
        "    importlib.import_module(name)\n"
        "print('\\n'.join({name.partition('.')[0] for name in sys.modules}))\n"
    )
    done = run([sys.executable, "-P", "-c", script], Path(os.sep), 120, {"PYTHONPATH": str(ROOT)})
    assert done.returncode == 0, done.stderr
    return {*done.stdout.decode().split(), *sys.stdlib_module_names, "sitecustomize", "usercustomize"} - {"__main__"}


@pytest.fixture(scope="module")
def hostile(tmp_path_factory):
    """A folder with a model and, for every name that is imported, a module that says that it ran."""
    folder = tmp_path_factory.mktemp("hostile")
    models = [sample.file for sample in samples() if sample.name in ("sound", "rib-missing")]
    (folder / "models").mkdir()
    for place in (folder, folder / "models"):
        for model in models:
            shutil.copy(model, place / model.name)
    (folder / "models/rib-missing.step").unlink()
    names = loaded_by_a_review()
    assert {"numpy", "OCP", "scipy", "shapely", "click", "rich", "json", "ctypes"} <= names
    for place in (folder, folder / "models"):
        for name in names - {"seamcheck"}:
            (place / f"{name}.py").write_text(HOSTILE)
        (place / "seamcheck").mkdir()
        (place / "seamcheck/__init__.py").write_text(HOSTILE)
    (folder / "numpy-9.9.dist-info").mkdir()
    (folder / "numpy-9.9.dist-info/METADATA").write_text("Metadata-Version: 2.1\nName: numpy\nVersion: 9.9\n")
    return folder


COMMANDS = {
    "review": ("review", "sound.step", "--json", "review.json", "--with-view"),
    "review --each": ("review", "models", "--each", "--json", "each"),
    "scan": ("scan", "models", "--out", "out", "--jobs", "1"),
    "compare": ("compare", "sound.step", "models/sound.step"),
    "propose": ("propose", "rib-missing.step", "--html", "proposed.html"),
    "prepare": ("prepare", "sound.step", "--into", "trial"),
    "settings": ("settings", "sound.step"),
    "explain": ("explain", "rib-width"),
    "samples": ("samples", "written"),
    "help": ("--help",),
}


STARTING_CHILDREN = ("review", "review --each", "scan", "compare", "propose", "prepare")
RUNS = [*((name, "as installed") for name in COMMANDS), *((name, "working folder first") for name in STARTING_CHILDREN)]
QUICK = [("review", "working folder first"), ("help", "as installed")]


@pytest.mark.parametrize("called", telling(RUNS, QUICK), ids="-".join)
def test_modules_beside_a_model_are_never_run(hostile, called):
    """The path of the parent may hold the folder (PYTHONPATH with '' or '.'); its children still pass it by."""
    command, path = called
    (hostile / MARKER).unlink(missing_ok=True)
    shutil.rmtree(hostile / "trial", ignore_errors=True)
    if path == "as installed":
        done = seamcheck(*COMMANDS[command], cwd=hostile, SEAMCHECK_CACHE="")
    else:
        script = "import sys; import seamcheck.cli; sys.path.insert(0, ''); sys.path.insert(0, sys.argv.pop(1))\n"
        words = [sys.executable, "-P", "-c", script + LOADED_FIRST, str(hostile / "models"), *COMMANDS[command]]
        done = run(words, hostile, 900, {"PYTHONPATH": str(ROOT), "SEAMCHECK_CACHE": ""})
    assert not (hostile / MARKER).exists(), (hostile / MARKER).read_text()
    assert done.returncode == 0, done.stderr.decode()


# The parent has loaded everything before the folder comes onto its path, so what runs of it is run by a child.
# Python itself loads unicodedata, where it compiles a module with a letter by name in it for the first time.
LOADED_FIRST = (
    "path = sys.path[:2]; del sys.path[:2]\n"
    "import importlib\n"
    "from seamcheck.isolation.loading import REVIEW_MODULES\n"
    "for name in (*REVIEW_MODULES, 'seamcheck.cli.review', 'seamcheck.cli.scan', 'seamcheck.cli.compare',\n"
    "             'seamcheck.scanning.run', 'seamcheck.scanning.warm_up', 'seamcheck.scanning.index',\n"
    "             'seamcheck.comparison.compare', 'seamcheck.comparison.text', 'seamcheck.comparison.baseline',\n"
    "             'seamcheck.report.text', 'seamcheck.report.ci.escape', 'seamcheck.document.read', 'psutil',\n"
    "             'seamcheck.cli.propose', 'seamcheck.proposal.propose', 'seamcheck.proposal.text',\n"
    "             'seamcheck.cli.prepare', 'seamcheck.preparation.prepare', 'ezdxf', 'seamcheck.preparation.files',\n"
    "             'rich.console', 'rich.text', 'rich.table', 'rich.padding', 'rich.panel', 'sqlite3', 'tomlkit',\n"
    "             'tomllib', 'seamcheck.document.plain', 'unicodedata'):\n"
    "    importlib.import_module(name)\n"
    "sys.path[:0] = path\n"
    "seamcheck.cli.main()\n"
)


def test_python_m_takes_the_working_folder_off_the_path_before_it_imports_a_library(tmp_path):
    """``python -m`` puts the working folder first, and Python's own modules are looked for there before seamcheck runs:
    against those ``python -P -m seamcheck`` or the command ``seamcheck`` helps."""
    sample = next(sample.file for sample in samples() if sample.name == "sound")
    shutil.copy(sample, tmp_path / "sound.step")
    for name in loaded_by_a_review() - sys.stdlib_module_names - {"seamcheck"}:
        (tmp_path / f"{name}.py").write_text(HOSTILE)
    (tmp_path / "sitecustomize.py").unlink()  # Python itself looks for these two
    (tmp_path / "usercustomize.py").unlink()
    words = [sys.executable, "-m", "seamcheck", "review", "sound.step"]
    done = run(words, tmp_path, 120, {"PYTHONPATH": str(ROOT), "SEAMCHECK_CACHE": ""})
    assert not (tmp_path / MARKER).exists(), (tmp_path / MARKER).read_text()
    assert done.returncode == 0, done.stderr.decode()


def test_libraries_of_a_folder_of_their_own_are_found(tmp_path, monkeypatch):
    """``pip install --target``: a folder on the path into which libraries were installed; any other is left out."""
    installed, other, here = tmp_path / "installed", tmp_path / "other", tmp_path / "here"
    for folder in (installed, other, here):
        folder.mkdir()
    (installed / "numpy-2.0.dist-info").mkdir()
    (here / "numpy-2.0.dist-info").mkdir()
    monkeypatch.chdir(here)
    monkeypatch.setattr(sys, "path", ["", str(other), str(here), ".", str(installed), *sys.path])
    found = libraries()
    assert str(installed) in found
    assert not {"", ".", str(other), str(here)} & set(found)


def test_a_child_runs_the_same_seamcheck_whatever_else_is_installed(tmp_path):
    """An older seamcheck in a folder of libraries does not take the place of the one that runs."""
    other = tmp_path / "installed"
    (other / "seamcheck").mkdir(parents=True)
    (other / "seamcheck/__init__.py").write_text("raise ImportError('another seamcheck')")
    (other / "weld_seamcheck-0.0.dist-info").mkdir()
    script = (
        "import seamcheck.isolation, sys; sys.path.insert(0, sys.argv[1])\n"
        "print(seamcheck.isolation.run_isolated('seamcheck.isolation.imports:here'))"
    )
    done = run([sys.executable, "-P", "-c", script, str(other)], tmp_path, 60, {"PYTHONPATH": str(ROOT)})
    assert done.stdout.decode().strip() == str(ROOT), done.stderr.decode()


def test_libraries_of_the_user_s_own_folder_are_found(tmp_path):
    """``pip install --user``: the child looks there as its parent does."""
    base = tmp_path / "user"
    script = (
        "import site, pathlib, sys; folder = pathlib.Path(site.getusersitepackages()); folder.mkdir(parents=True)\n"
        "(folder / 'of_the_user.py').write_text('def answer(): return 42')\n"
    )
    run([sys.executable, "-c", script], tmp_path, 60, {"PYTHONUSERBASE": str(base)})
    ask = "from seamcheck.isolation import run_isolated; print(run_isolated('of_the_user:answer'))"
    system = Path(sys.base_prefix) / "bin" / f"python{sys.version_info.major}.{sys.version_info.minor}"
    if os.name != "posix" or not system.exists():
        pytest.skip("no Python outside of a virtual environment")
    needed = os.pathsep.join([str(ROOT), str(Path(importlib.util.find_spec("psutil").origin).parents[1])])
    done = run([str(system), "-c", ask], tmp_path, 60, {"PYTHONUSERBASE": str(base), "PYTHONPATH": needed})
    assert done.stdout.decode().strip() == "42", done.stderr.decode()


def test_what_a_job_needs_beside_is_only_what_was_named():
    """The tests' own jobs lie in folders that tests/conftest.py names; others on the path are passed by."""
    assert run_isolated("isolation_jobs:add", (1, 2)) == 3


@pytest.mark.skipif(os.name != "posix", reason="a script stands for a program")
@pytest.mark.parametrize("path", [".:{real}", "{here}:{real}", "{real}:."])
def test_a_program_of_the_working_folder_is_never_taken(tmp_path, monkeypatch, path):
    """As git and the browser are looked for: PATH may hold '.', and Windows looks there in any case."""
    real, here = tmp_path / "bin", tmp_path / "here"
    for folder in (real, here):
        folder.mkdir()
        (folder / "git").write_text("#!/bin/sh\n")
        (folder / "git").chmod(0o755)
    monkeypatch.chdir(here)
    monkeypatch.setenv("PATH", path.format(here=here, real=real))
    assert program("git") == str(real / "git")
    (real / "git").unlink()
    assert program("git") is None
