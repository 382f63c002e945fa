"""What stands in [tolerance], [clamp] and [limits] is used for the materials as well."""

from __future__ import annotations

import pytest

from seamcheck.errors import UsageError
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

MATERIAL = '[material]\ncover = "PP"\nbase = "PP"\n'
TOLERANCES = ("thickness", "width", "gap", "travel", "trap", "flatness_cover", "flatness_rib")


def numbers(text):
    return parse_settings(text).materials().numbers


def tolerances(text):
    found = numbers(text)
    return {key: found[f"tolerance.{key}"].value for key in TOLERANCES if f"tolerance.{key}" in found}


def test_without_materials_there_is_nothing_to_complete():
    assert Settings().materials() is None
    assert parse_settings("[tolerance]\ngap = 0.1\n").materials() is None


def test_tolerances_are_written_once():
    text = "[tolerance]\ncover_thickness = 0.06\nrib_width = 0.05\ngap = 0.03\nfree_travel = 0.1\nlip_gap_inner = 0.2\n"
    assert tolerances(MATERIAL + text) == {"thickness": 0.06, "width": 0.05, "gap": 0.03, "travel": 0.1}


def test_tolerances_stand_in_one_table():
    text = "[tolerance]\nrib_width = 0.05\ncollapse = 0.04\ntrap_area = 5\ncpk = 1.33\n"
    found = numbers(MATERIAL + text)
    assert {key: found[f"tolerance.{key}"].value for key in ("width", "collapse", "trap", "cpk")} == {
        "width": 0.05,
        "collapse": 0.04,
        "trap": 5,
        "cpk": 1.33,
    }
    with pytest.raises(UsageError, match=r"the one table \[tolerance\].*width is rib_width"):
        parse_settings(MATERIAL + "[material.tolerance]\nwidth = 0.02\n")


def test_a_pressure_of_the_process_wins():
    text = f"{MATERIAL}[material.process]\npressure = 3.0\n[clamp]\npressure = 2.0\n"
    assert numbers(text)["process.pressure"].value == 3.0


@pytest.mark.parametrize(("flattened", "left"), [(0.0, (0.1, 0.3)), (0.1, (0.075, 0.225)), (0.5, (0.0, 0.0))])
def test_flatness_is_what_the_clamp_leaves_of_it(flattened, left):
    """0.1 + 0.3 mm, less what is pressed flat, each in proportion (exact arithmetic)."""
    text = f"{MATERIAL}[tolerance]\nflatness_cover = 0.1\nflatness_rib = 0.3\nflattened = {flattened}\n"
    assert tuple(tolerances(text).values()) == pytest.approx(left)


def test_the_pressure_of_the_clamp_is_that_of_the_process():
    assert numbers(f"{MATERIAL}[clamp]\npressure = 2.0\n")["process.pressure"].value == 2.0


def test_the_reserves_are_those_of_the_limits_that_judge_the_same():
    found = numbers(f"{MATERIAL}[limits.rib-height]\nreserve = 0.3\n")
    assert (found["process.height_reserve"].value, found["process.travel_reserve"].value) == (0.3, 0.2)
    assert (found["process.height_reserve"].standing, found["process.travel_reserve"].standing) == (
        "given",
        "assumption",
    )
    own = numbers(f"{MATERIAL}[material.process]\ntravel_reserve = 0.05\n[limits.sink-travel]\nreserve = 0.3\n")
    assert own["process.travel_reserve"].value == 0.05


def test_a_joint_of_its_own_is_completed_as_well():
    text = f"{MATERIAL}[material.joints.j2.process]\nhold = 3.0\n[tolerance]\nrib_width = 0.05\ngap = 0.03\n"
    second = parse_settings(text).materials().for_joint("j2").numbers
    assert (second["tolerance.width"].value, second["tolerance.gap"].value) == (0.05, 0.03)


def test_no_value_from_elsewhere_is_beyond_what_materials_take():
    assert numbers(f"{MATERIAL}[clamp]\npressure = 90.0\n")["process.pressure"].value == 50.0
