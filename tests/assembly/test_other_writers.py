"""Models that other programs wrote, from packages of general-purpose libraries: never taken for damaged without
cause, and none of them a housing to be welded, so never passed.

The packages come through the ordinary clients (apt-get, pip, npm); a test says why it is skipped where one can't.
"""

from __future__ import annotations

import gzip
import shutil
import subprocess
import sys
import tarfile
import zipfile
from collections import Counter
from pathlib import Path

import pytest

from seamcheck.errors import NotReviewed
from seamcheck.isolation import WarmWorkers
from seamcheck.settings.settings import Settings

DEBIAN = ("gmsh-doc", "freecad-common")  # examples and parts libraries, written by several CAD programs
WHEELS = ("gmsh",)  # a mesh generator with its examples
SOURCES = ("build123d",)  # a CAD library with its docs
MODULES = (
    "occt-import-js",
)  # a reader with its test data: the public test rounds of STEP translators, AP203 and AP214

TIME_LIMIT_S = 300.0


def run(folder: Path, *command: str) -> None:
    """Run a client in a folder; skips the test where it is missing or gets nothing."""
    if shutil.which(command[0]) is None:
        pytest.skip(f"needs {command[0]}")
    done = subprocess.run(command, cwd=folder, capture_output=True, text=True, check=False)
    if done.returncode:
        pytest.skip(f"{' '.join(command[:2])} got nothing: {done.stderr.strip().splitlines()[-1:]}")


def models_in(folder: Path) -> list[Path]:
    """Copies of all different STEP files below a folder, unpacked."""
    models: dict[bytes, Path] = {}
    target = folder / "models"
    target.mkdir()
    for path in sorted(folder.rglob("*")):
        name = path.name.lower().removesuffix(".gz")
        if path.is_file() and path.parent != target and name.endswith((".stp", ".step")):
            data = path.read_bytes()
            data = gzip.decompress(data) if path.name.lower().endswith(".gz") else data
            models.setdefault(data, target / f"{len(models)}-{name}")
    for data, model in models.items():
        model.write_bytes(data)
    return list(models.values())


def from_debian(folder: Path) -> None:
    run(folder, "apt-get", "download", *DEBIAN)
    for package in folder.glob("*.deb"):
        run(folder, "dpkg-deb", "-x", str(package), str(folder / package.stem))


def from_wheels(folder: Path) -> None:
    run(folder, sys.executable, "-m", "pip", "download", "--no-deps", "--only-binary", ":all:", *WHEELS)
    for wheel in folder.glob("*.whl"):
        zipfile.ZipFile(wheel).extractall(folder / wheel.stem)


def from_sources(folder: Path) -> None:
    run(folder, sys.executable, "-m", "pip", "download", "--no-deps", "--no-binary", ":all:", *SOURCES)
    for archive in folder.glob("*.tar.gz"):
        with tarfile.open(archive) as source:
            source.extractall(folder / archive.stem, filter="data")


def from_modules(folder: Path) -> None:
    run(folder, "npm", "pack", *MODULES)
    for archive in folder.glob("*.tgz"):
        with tarfile.open(archive) as module:
            module.extractall(folder / archive.stem, filter="data")


FETCHERS = {"debian": (from_debian, 20), "wheels": (from_wheels, 4), "sources": (from_sources, 2)}
FETCHERS["modules"] = (from_modules, 40)


@pytest.mark.thorough
@pytest.mark.parametrize("origin", FETCHERS)
def test_models_of_other_programs_end_in_a_verdict_and_never_in_a_false_pass(origin, tmp_path):
    fetch, least = FETCHERS[origin]
    fetch(tmp_path)
    models = models_in(tmp_path)
    assert len(models) >= least
    with WarmWorkers(2, time_limit_s=TIME_LIMIT_S) as workers:
        jobs = [workers.submit("seamcheck.pipeline:review_model", ((path,), Settings())) for path in models]
    ends: Counter[str] = Counter()
    for path, job in zip(models, jobs, strict=True):
        assert job.exception() is None, (path.name, str(job.exception()))  # no crash, no timeout
        document = job.result()
        assert document["verdict"] != "pass", path.name  # none is a housing with a weld seam
        ends[(document["reason"] or {"code": document["verdict"]})["code"]] += 1
    print(f"\n{origin}: {len(models)} models: {dict(ends)}")


@pytest.mark.thorough
def test_models_of_other_programs_are_read_whole(tmp_path):
    from_debian(tmp_path)
    models = models_in(tmp_path)
    assert len(models) > 20
    with WarmWorkers(2, preload=("seamcheck.assembly.read", "reading_jobs"), time_limit_s=120) as workers:
        jobs = [workers.submit("reading_jobs:read_facts", (str(path),)) for path in models]
    silent, refused = [], []
    for job in jobs:
        error = job.exception()
        if error is not None:
            assert isinstance(error, NotReviewed)
            refused.append(error)
            continue
        facts = job.result()
        if not facts["notes"] and not any(part["notes"] for part in facts["parts"]):
            silent.append(facts)
        for part in facts["parts"]:
            assert part["kind"] == "sheet" or None not in part["entities"]
            assert part["kind"] == "sheet" or part["volume"] > 0.0
    # some of the parts are drawn as loose faces, and one solid has a shell that doesn't close
    assert {error.code for error in refused} <= {"no-solid"}
    assert len(refused) <= 3
    assert len(silent) >= len(models) - 4
