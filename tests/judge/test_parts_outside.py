"""The share of parts outside: closed forms, JCGM 101, and the judgement that takes it up."""

import sys
from pathlib import Path

import numpy as np
import pytest
from scipy.stats import norm, uniform

from seamcheck.judge.bounds import JudgedSeam
from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.judge.parts_outside import parts_outside
from seamcheck.judge.tolerance import share_outside, tolerance_states
from seamcheck.measure.material import MaterialSettings, assess
from seamcheck.measure.material.uncertainty import deviations
from seamcheck.settings.material import completed
from seamcheck.settings.settings import Settings

sys.path.insert(0, str(Path(__file__).parents[1] / "measure"))
from material_surveys import run, survey


@pytest.mark.parametrize("margin", [-0.02, 0.0, 0.03, 0.1, 0.15])
def test_one_limit_is_the_tail_of_its_distribution(margin):
    # scipy's distributions: normal with the third of the tolerance over Cpk, and the rectangle.
    for cpk in (0.67, 1.0, 1.33):
        assert share_outside(margin, 0.1, cpk) == pytest.approx(norm.sf(margin, scale=0.1 / (3 * cpk)), rel=1e-9)
    assert share_outside(margin, 0.1, None) == pytest.approx(uniform.sf(margin, -0.1, 0.2))
    # Cpk 1 leaves 1350 parts in a million beyond one side, by definition of the index.
    assert 1e6 * share_outside(0.1, 0.1, 1.0) == pytest.approx(1350, abs=0.5)


def test_sums_of_drawn_deviations_are_those_of_the_guide():
    # JCGM 101:2008, 9.2: sum of four quantities with standard deviation 1. Normal (9.2.2): 95 % within ±3.92;
    # rectangular (9.2.3): standard deviation 2.00 and 95 % within ±3.88.
    random = np.random.default_rng(1)
    for cpk, half, bound in ((1.0, 3.0, 3.92), (None, np.sqrt(3.0), 3.88)):
        total = sum(deviations(random, half, cpk, 400_000) for _ in range(4))
        assert total.std() == pytest.approx(2.0, abs=0.01)
        assert np.quantile(np.abs(total), 0.95) == pytest.approx(bound, abs=0.02)


TABLE = {"cover": "PC", "base": "PC", "plaques": [[2.0, 88.0]], "samples": {"count": 20000}}


def joint(path, tolerances, travel, materials=True):
    whole = survey(path, travel=travel)
    if materials:
        settings = completed(MaterialSettings.from_table(TABLE), tolerances, None)
        whole = assess(whole, settings, 0.4).onto(whole)
    return JointResult("j1", ("p1",), ("p2",), "base", np.array([0, 0, -1.0]), "touching", (), whole)


def found(one, tolerances):
    return {f.rule: f for f in judge([one], Settings().changed({"tolerance": tolerances})).findings}


def test_a_quantity_with_a_tolerance_moves_as_a_whole_and_quantities_are_independent():
    # Rib 1.5 ± 0.1 against 0.6: far. Height 1.2 ± 0.66 against 0.4 + 0.2: 0.06 of 1.32 beyond. Travel 0.8 ± 0.5 in the
    # sections, against 0.4 + 0.1 (where a tolerance of it is judged, the reserve is small): 0.2 of 1.0 beyond.
    tolerances = {"rib_width": 0.1, "rib_height": 0.66, "free_travel": 0.5}
    settings = Settings().changed({"tolerance": tolerances})
    one = joint(run(), tolerances, 1.0, materials=False)
    seam = JudgedSeam(one, settings)
    states = list(tolerance_states(one, seam))
    shares = {(state.rule, state.side): state.outside_ppm / 1e6 for state in states}
    assert shares["rib-height", "low"] == pytest.approx(0.06 / 1.32)
    assert shares["rib-width", "low"] == 0.0
    assert shares["sink-travel", "low"] == pytest.approx(0.2)
    found = parts_outside(seam, states)
    assert found.ppm == pytest.approx(1e6 * (1 - (1 - 0.06 / 1.32) * (1 - 0.2)))
    assert found.rules == ["sink-travel", "rib-height"]


def test_half_of_the_combinations_without_a_weld_is_no_pass():
    # Travel 0.65 less a reserve of 0.2 leaves 0.45; the machine reaches 0.4 ± 0.1 evenly: a quarter of it lies above.
    tolerances = {"collapse": 0.1}
    finding = found(joint(run(), tolerances, 0.65), tolerances)["parts-outside"]
    assert finding.severity == "attention"
    assert finding.value == pytest.approx(25.0, abs=1.3)  # 4 standard deviations of 20000 draws
    assert "25 %" in finding.message or "24 %" in finding.message or "26 %" in finding.message
    # A process of Cpk 1 leaves norm.sf(0.05 / (0.1 / 3)) = 6.7 % there; without tolerances nothing is said.
    tolerances = {"collapse": 0.1, "cpk": 1.0}
    finding = found(joint(run(), tolerances, 0.65), tolerances)["parts-outside"]
    assert finding.value == pytest.approx(100 * norm.sf(1.5), abs=0.7)
    assert "parts-outside" not in found(joint(run(), {}, 0.65), {})


def test_a_travel_that_is_too_short_counts_once():
    # Travel 0.65 ± 0.3 evenly. The combinations want 0.4 + 0.2: (0.3 - 0.05) / 0.6 of the parts have less. The limit of
    # sink-travel, 0.4 + 0.1, is broken in 25 % of all, and they are among them.
    tolerances = {"free_travel": 0.3}
    one = joint(run(), tolerances, 0.65)
    seam = JudgedSeam(one, Settings().changed({"tolerance": tolerances}))
    states = list(tolerance_states(one, seam))
    assert max(state.outside_ppm for state in states) == pytest.approx(250_000)
    assert parts_outside(seam, states).ppm / 1e6 == pytest.approx(0.25 / 0.6, abs=0.015)


def test_what_a_finding_of_its_own_tells_is_not_said_twice():
    tolerances = {"rib_height": 0.66}
    findings = found(joint(run(), tolerances, 1.0), tolerances)
    assert findings["rib-height"].state == "at risk"
    assert "5 %" in findings["rib-height"].message
    assert "parts-outside" not in findings
