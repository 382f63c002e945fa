"""What a report says that it was given: plain titles, units that people use, each number once."""

import pytest

from seamcheck.catalogue.material_results import NUMBERS, TOLERANCES
from seamcheck.report.inputs import input_rows
from seamcheck.settings.declared import FLATNESS, MATERIAL, PROCESS_TOLERANCES


def rows(**document):
    return {title: (value, origin) for title, value, origin in input_rows(document)}


def materials(**numbers):
    known = {key.replace("__", "."): {"value": value, "unit": unit, "standing": standing}
             for key, (value, unit, standing) in numbers.items()}  # fmt: skip
    return {"joints": [{"material": {"settings": {"cover": {"name": "PP"}, "base": None, "numbers": known}}}]}


def test_numbers_of_the_materials_are_called_by_a_title_and_have_units_of_the_trade():
    found = rows(
        **materials(
            laser__power=(300.0, "W", "given"),
            laser__acceleration=(4e6, "mm/s²", "given"),
            laser__use=(0.6, "1", "assumption"),
            tolerance__thickness=(0.1, "mm", "given"),
        ),
        settings={"tolerances": {"cover_thickness": 0.1}},
    )
    assert found["laser power"] == ("300 W", "settings file")
    assert found["largest acceleration of the spot"] == ("4000 m/s²", "settings file")
    assert found["tolerance of cover thickness"][0] == "±0.10 mm"
    assert not [title for title in found if "." in title or "_" in title]
    assert "share that becomes heat" not in found  # nobody gave it
    assert len([title for title in found if "thickness" in title]) == 1


@pytest.mark.parametrize(
    ("key", "value", "title", "said"),
    [
        ("cpk", 1.33, "process capability Cpk", "1.33"),
        ("trap_area", 10.0, "tolerance of the trap area", "±10.00 %"),
        ("flattened", 0.05, "flattened by the clamp", "0.05 mm"),
        ("flatness_rib", 0.1, "flatness of the rib", "0.10 mm"),
        ("collapse", 0.05, "tolerance of the collapse", "±0.05 mm"),
        ("rib_height", 0.05, "tolerance of rib height", "±0.05 mm"),
    ],
)
def test_entries_of_the_tolerance_table_have_their_own_unit_and_sign(key, value, title, said):
    assert rows(settings={"tolerances": {key: value}})[title][0] == said


def test_every_number_that_can_be_given_has_a_title():
    assert {f"{setting.table.partition('.')[2]}.{setting.name}" for setting in MATERIAL} == set(NUMBERS)
    assert {*FLATNESS, *PROCESS_TOLERANCES} == set(TOLERANCES)
