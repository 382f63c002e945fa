"""Wheel, source archive and editable install: built, installed into a fresh environment of their own, and run there."""

import os
import shutil
import subprocess
import sys
import tarfile
import venv
import zipfile
from pathlib import Path

import click
import pytest

from seamcheck.samples import samples
from seamcheck.version import __version__

ROOT = Path(__file__).resolve().parents[2]
LIBRARIES = Path(click.__file__).resolve().parents[1]

pytestmark = pytest.mark.thorough


def run(*command, cwd, **more):
    clean = {key: value for key, value in os.environ.items() if not key.startswith("PYTHON")}
    return subprocess.run(command, cwd=cwd, env=clean, capture_output=True, text=True, check=False, **more)


@pytest.fixture(scope="module")
def source(tmp_path_factory):
    """The files of the project as they are in the repository, without what a build or a run leaves behind."""
    folder = tmp_path_factory.mktemp("source") / "project"
    named = run("git", "ls-files", "-z", "--cached", "--others", "--exclude-standard", cwd=ROOT).stdout
    for name in filter(None, named.split("\0")):
        if (ROOT / name).is_file():
            (folder / name).parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(ROOT / name, folder / name)
    return folder


def fresh_environment(folder: Path) -> Path:
    """A new environment that sees the libraries of this one, but not its seamcheck. Returns its folder of programs."""
    venv.create(folder, with_pip=True)
    (site,) = folder.glob("lib/python*/site-packages")
    (site / "libraries.pth").write_text(f"{LIBRARIES}\n")  # .pth files there are not followed
    return folder / "bin"


def installed(programs: Path, *what: str) -> None:
    done = run(programs / "pip", "install", "-q", "--no-deps", *what, cwd=programs)
    assert done.returncode == 0, done.stderr


def check_it_runs(programs: Path, place: Path, home: Path) -> None:
    """The program there is the one that was installed, writes the samples, reviews one and reports it."""
    where = run(programs / "python", "-c", "import seamcheck; print(seamcheck.__file__)", cwd=place)
    assert Path(where.stdout.strip()).is_relative_to(home), where
    assert run(programs / "seamcheck", "--version", cwd=place).stdout.split()[:2] == ["seamcheck", __version__]
    assert run(programs / "seamcheck", "samples", "models", cwd=place).returncode == 0
    assert {file.name for file in (place / "models").glob("*.step")} == {sample.file.name for sample in samples()}
    for name, code in (("sound", 0), ("rib-width", 1)):
        done = run(programs / "seamcheck", "review", f"models/{name}.step", "--json", "r.json", cwd=place)
        assert done.returncode == code, done.stderr
        done = run(programs / "seamcheck", "report", "r.json", "-q", "--html", "r.html", cwd=place)
        assert done.returncode == code, done.stderr


def test_a_wheel_installs_and_runs(source, tmp_path):
    done = run(sys.executable, "-m", "pip", "wheel", "-q", "--no-deps", "-w", str(tmp_path), str(source), cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    (wheel,) = tmp_path.glob("*.whl")
    assert wheel.name.startswith(f"weld_seamcheck-{__version__}-py3-none-any")
    names = zipfile.ZipFile(wheel).namelist()
    assert all(name.startswith(("seamcheck/", "weld_seamcheck-")) for name in names)
    assert "seamcheck/sample_models/sound.step" in names
    assert not any(name.endswith("draw.py") for name in names)
    metadata = zipfile.ZipFile(wheel).read(f"weld_seamcheck-{__version__}.dist-info/METADATA").decode()
    assert "License-Expression: MIT" in metadata
    assert "Author: the seamcheck developers" in metadata
    assert "@" not in metadata.partition("\n\n")[0]
    programs = fresh_environment(tmp_path / "fresh")
    installed(programs, str(wheel))
    check_it_runs(programs, tmp_path, tmp_path / "fresh")


def test_a_source_archive_installs_and_runs(source, tmp_path):
    programs = fresh_environment(tmp_path / "fresh")
    assert run(programs / "pip", "install", "-q", "setuptools>=77", cwd=tmp_path).returncode == 0
    make = f"import setuptools.build_meta as build; print(build.build_sdist({str(tmp_path)!r}))"
    done = run(programs / "python", "-c", make, cwd=source)
    assert done.returncode == 0, done.stderr
    (archive,) = tmp_path.glob("*.tar.gz")
    with tarfile.open(archive) as opened:
        names = opened.getnames()
    assert any(name.endswith("/sample_models/sound.step") for name in names)
    assert any(name.endswith("/CHANGELOG.md") for name in names)
    installed(programs, str(archive))
    check_it_runs(programs, tmp_path, tmp_path / "fresh")


def test_an_editable_install_finds_its_samples(source, tmp_path):
    programs = fresh_environment(tmp_path / "fresh")
    installed(programs, "-e", str(source))
    check_it_runs(programs, tmp_path, source)
