"""What another station costs, against what the kernel's own section of it costs: the guard of the survey's speed."""

import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from benchmarks.measure import job  # noqa: E402
from benchmarks.models import FREE_FORM, HOUSING, Kind, housing  # noqa: E402


@pytest.mark.thorough
@pytest.mark.parametrize("spec", [HOUSING, FREE_FORM], ids=["prismatic", "free form"])
def test_a_station_costs_far_less_than_the_kernels_section(spec, tmp_path):
    model = tmp_path / "housing.step"
    housing(model, Kind(100), spec)
    ours, theirs = job("survey", model, 0.5), job("brep", model, 2)
    assert theirs["edges"] > 0
    assert theirs["cpu"] / theirs["stations"] > 8 * ours["cpu"] / ours["stations"]
