"""Cost grows with what it is for, and seams of every kind stay within multiples of one import of the kernel.

The bars themselves are measured by ``python -m benchmarks``; here are ratios of one run, with room for a busy machine.
"""

import sys
from dataclasses import replace
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))  # the benchmarks are no part of the package

from benchmarks.drawn import LADDERS, SHAPES, draw_shape  # noqa: E402
from benchmarks.measure import job, shell  # noqa: E402
from benchmarks.parts import SAMPLES, Climbed, climb  # noqa: E402

BUSY = 1.6  # times the bar: what is measured once on a busy machine
KERNELS = 3.0 / 0.65  # imports of the kernel: the bar on any seam up to 500 mm
SLOW = {"lamp": 1.6}  # times the bar that these are known to take


@pytest.fixture(scope="module")
def kernel():
    """CPU seconds of importing the CAD kernel, in this run."""
    return job("kernel", Path(), times=3)["cpu"]


def test_powers_of_growth_are_those_of_the_numbers():
    square = Climbed(((1.0, 1.0), (2.0, 4.0), (4.0, 16.0)))
    assert square.fitted == pytest.approx(2.0)
    bent = Climbed(((1.0, 1.0), (10.0, 1.0), (100.0, 10.0)))
    assert bent.last == pytest.approx(1.0)
    assert bent.fitted == pytest.approx(0.5)


@pytest.mark.thorough
@pytest.mark.parametrize("name", LADDERS)
def test_cost_grows_no_faster_than_what_it_is_for(name, tmp_path):
    ladder = replace(LADDERS[name], sizes=LADDERS[name].sizes[:2])
    assert climb(name, tmp_path, ladder).last < 1.3  # the bar is 1.1


@pytest.mark.thorough
@pytest.mark.parametrize("name", SHAPES)
def test_a_seam_of_any_kind_costs_a_few_imports_of_the_kernel(name, tmp_path, kernel):
    found = job("review", draw_shape(name, tmp_path))
    assert found["cpu"] < BUSY * SLOW.get(name, 1.0) * KERNELS * kernel


@pytest.mark.thorough
def test_a_sample_from_the_shell_costs_a_few_imports_of_the_kernel(tmp_path, kernel):
    sample = str(SAMPLES / "sound.step")
    cold = shell("review", sample, times=1, cache=str(tmp_path))
    kept = shell("review", sample, times=3, cache=str(tmp_path))
    assert cold < 4.5 * kernel
    assert kept < 1.0 * kernel  # reading what is kept must not load the kernel
