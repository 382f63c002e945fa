"""What a second melting may melt down: closed form of traps with straight walls, of travel, of the rib's height."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, build, rounded_rectangle
from interface_models import interface
from telling import telling

from seamcheck.measure.rework import collapse_left
from seamcheck.pipeline import remembered, review_model
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

COLLAPSE, WIDTH, HEIGHT = 0.4, 1.2, 0.9
STRAIGHT = {"track": rounded_rectangle(40, 30, 8), "draft_inner": 0.0, "draft_outer": 0.0, "rib_width": WIDTH}


def until_full(trap: float) -> float:
    """Both traps ``trap`` wide hold 2 trap (h - d) with the cover sunk by d, and the melt is w d: full at d, less c."""
    return 2 * trap * HEIGHT / (2 * trap + WIDTH) - COLLAPSE


@pytest.mark.parametrize("trap", telling([0.55, 0.7, 0.9, 1.4], [0.7]))
def test_what_traps_and_travel_leave(trap):
    """Lips 0.3 mm high end the travel 0.6 mm below the rib's top."""
    found, values = interface(build(Spec(trap_width_inner=trap, trap_width_outer=trap, **STRAIGHT)).parts)
    travel = HEIGHT - 0.3 - COLLAPSE
    assert values["travel_left"]["value"] == pytest.approx(travel, abs=1e-3)
    by_traps = min(until_full(trap), HEIGHT - COLLAPSE)
    assert values["second_collapse"]["value"] == pytest.approx(min(travel, by_traps), abs=2e-3)
    filled = WIDTH * COLLAPSE / (2 * trap * (HEIGHT - COLLAPSE))
    assert values["trap_filled"]["value"] == pytest.approx(filled, rel=0.01)
    left = measured(found, values)
    straight = np.isinf(found.column("corner_radius")) | np.isnan(found.column("corner_radius"))
    assert left[straight] == pytest.approx(by_traps, abs=2e-3)


def measured(found, values):
    from measuring import settings

    from seamcheck.measure.rework import rework_values

    added = rework_values(found.joint, found.survey, settings().collapse, values)
    return np.concatenate([columns["collapse_left"].values for columns in added.columns.values()])


def test_the_first_zero_counts_and_the_rib_ends_it():
    reserve = np.array([0.0, 0.1, 0.2])
    surplus = np.array([[-0.2, -0.3, 0.1, np.nan], [0.0, -0.2, 0.2, np.nan], [0.2, -0.1, 0.3, np.nan]])
    left = collapse_left(reserve, surplus, np.array([0.5, 0.15, 0.5, 0.5]))
    assert left == pytest.approx([0.1, 0.15, 0.0, np.nan], nan_ok=True)


def test_it_is_judged_where_a_second_collapse_is_planned(tmp_path):
    """Travel of 0.2 mm is left: 0.2 mm with 0.1 in reserve do not fit, 0.1 do; without a plan it is only shown."""
    file = build(Spec(**{**STRAIGHT, "draft_inner": 1.0, "draft_outer": 1.0})).write(tmp_path / "m.step")
    review_model([file], Settings(), cache=tmp_path / "kept")
    for planned, rules in ((0.2, ["second-collapse"]), (0.1, []), (None, [])):
        text = "" if planned is None else f"second-collapse = {planned}\n"
        document = remembered([file], parse_settings(text), None, False, tmp_path / "kept")
        assert [f["rule"] for f in document["findings"]] == rules
        assert document["settings"]["second_collapse_mm"] == (planned or 0.0)
        assert document["joints"][0]["interface"]["second_collapse"]["value"] == pytest.approx(0.2, abs=1e-3)
