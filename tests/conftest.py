"""Settings of all tests."""

import os
import shutil
import tempfile
from pathlib import Path

import pytest
from hypothesis import settings

from seamcheck.isolation import imports

os.environ["SEAMCHECK_CACHE_SECRET"] = "of the tests"  # leaves the user's own alone
os.environ["SEAMCHECK_CACHE"] = ""  # tests measure what they test; those of the cache name a folder

_KEPT = "SEAMCHECK_TESTS_KEPT"
_TOLD_FROM_KEPT = frozenset({"cli", "comparison", "document", "guard", "judge", "preparation", "report", "samples"})
"""Rooms whose tests look at what is made of a measurement, not at measuring: a model is measured once a run for all."""


def pytest_configure(config: pytest.Config) -> None:
    if not hasattr(config, "workerinput"):  # one folder for all workers, made by who starts them
        os.environ[_KEPT] = tempfile.mkdtemp(prefix="seamcheck-tests-")


def pytest_unconfigure(config: pytest.Config) -> None:
    if not hasattr(config, "workerinput"):
        shutil.rmtree(os.environ.pop(_KEPT, ""), ignore_errors=True)


@pytest.hookimpl(tryfirst=True)
def pytest_runtest_setup(item: pytest.Item) -> None:
    """Before any fixture, those of a module too."""
    room = item.path.relative_to(Path(__file__).parent).parts[0]
    os.environ["SEAMCHECK_CACHE"] = os.environ.get(_KEPT, "") if room in _TOLD_FROM_KEPT else ""


# jobs of the tests' own: their children import from the folders of the tests, too
imports.ALSO += [str(folder) for folder in Path(__file__).parent.glob("**/") if folder.name != "__pycache__"]

# No time limit for a single example: on a busy machine a first example may take long without being wrong. The quick
# suite draws the same examples each time, so that it judges a change and not its luck; the long one draws new ones.
settings.register_profile("quick", deadline=None, derandomize=True)
settings.register_profile("thorough", deadline=None, print_blob=True)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "quick"))
