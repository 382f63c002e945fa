"""Speed does not fall back: ratios of CPU seconds within one run, with generous margins.

The bars themselves are measured by ``python -m benchmarks``; a busy machine moves both sides of a ratio alike. What
reviews a model of hundreds of faces runs in the thorough suite.
"""

import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))  # the benchmarks are no part of the package

from benchmarks.measure import job, loads_no_kernel, run  # noqa: E402
from benchmarks.models import Kind, housing  # noqa: E402


@pytest.fixture(scope="module")
def found(tmp_path_factory):
    """Reviews of a small housing and of one with 700 more faces far from the seam, and a bare read of that."""
    folder = tmp_path_factory.mktemp("models")
    small, large = folder / "small.step", folder / "large.step"
    assert housing(small, Kind(100)) < 120
    assert housing(large, Kind(800, "one")) >= 800
    return {"bare": job("bare", large), "small": job("review", small), "large": job("review", large)}


def after_reading(review):
    return sum(review["stages"].get(name, 0.0) for name in ("finding", "tracing", "measuring", "judging"))


@pytest.mark.thorough
def test_faces_far_from_the_seam_cost_little_beside_reading(found):
    # holes, pins and blocks, all in one face: the kernel's own mesher took many times as long over them
    assert found["large"]["stations"] == found["small"]["stations"]
    assert after_reading(found["large"]) < 2.0 * after_reading(found["small"])


@pytest.mark.thorough
def test_reading_costs_no_more_than_the_kernels_own_way(found):
    stages = found["large"]["stages"]
    ours = sum(stages.get(name, 0.0) for name in ("start", "reading", "transferring", "checking"))
    assert ours < 1.8 * found["bare"]["cpu"]


@pytest.mark.thorough
def test_memory_stays_near_that_of_the_bare_read(found):
    assert (
        found["large"]["peak_mb"] < found["bare"]["peak_mb"] + 350
    )  # libraries and facets; the bar is at 18 000 faces


def test_help_loads_no_kernel():
    for arguments in (["--help"], ["--version"], ["explain"], ["settings"]):
        assert loads_no_kernel(*arguments)


def test_an_exit_code_loads_no_scipy():
    # every review asks for one, without any baseline: importing what compares documents took a third of a second
    code = (
        "import sys; from seamcheck.comparison.baseline import exit_code, baseline_lines; print('scipy' in sys.modules)"
    )
    assert run([sys.executable, "-c", code]).strip() == "False"
