"""What stands in [tolerance] and [clamp] is used for the materials as well."""

from __future__ import annotations

import pytest

from seamcheck.settings.material import MaterialSettings
from seamcheck.settings.material_shared import completed

TABLE = {"cover": "PP", "base": "PP"}


def test_without_materials_there_is_nothing_to_complete():
    assert completed(None, {"gap": 0.1}, 2.0) is None


def test_tolerances_are_written_once():
    given = {"cover_thickness": 0.06, "rib_width": 0.05, "gap": 0.03, "free_travel": 0.1, "lip_gap_inner": 0.2}
    assert completed(TABLE, given, None)["tolerance"] == {"thickness": 0.06, "width": 0.05, "gap": 0.03, "travel": 0.1}


def test_what_stands_in_the_materials_table_wins():
    table = {**TABLE, "tolerance": {"width": 0.02, "trap": 5}, "process": {"pressure": 3.0}}
    found = completed(table, {"rib_width": 0.05, "gap": 0.03}, 2.0)
    assert found["tolerance"] == {"width": 0.02, "trap": 5, "gap": 0.03}
    assert found["process"] == {"pressure": 3.0}
    assert table["tolerance"] == {"width": 0.02, "trap": 5}


@pytest.mark.parametrize(("flattened", "left"), [(0.0, (0.1, 0.3)), (0.1, (0.075, 0.225)), (0.5, (0.0, 0.0))])
def test_flatness_is_what_the_clamp_leaves_of_it(flattened, left):
    """0.1 + 0.3 mm, less what is pressed flat, each in proportion (exact arithmetic)."""
    given = {"flatness_cover": 0.1, "flatness_rib": 0.3, "flattened": flattened}
    found = completed(TABLE, given, None)["tolerance"]
    assert (found["flatness_cover"], found["flatness_rib"]) == pytest.approx(left)


def test_the_pressure_of_the_clamp_is_that_of_the_process():
    assert completed(TABLE, {}, 2.0)["process"]["pressure"] == 2.0


def test_no_value_from_elsewhere_is_beyond_what_materials_take():
    MaterialSettings.from_table(completed(TABLE, {"rib_width": 50.0, "free_travel": 99.0}, 90.0))
