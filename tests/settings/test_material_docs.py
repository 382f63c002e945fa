"""The page docs/material.md and the settings template tell the truth."""

import re
import tomllib
from pathlib import Path

import pytest
from material_surveys import run, survey

from seamcheck.catalogue.material_rules import MATERIAL_RULES
from seamcheck.catalogue.polymers import CELLS, polymer_table
from seamcheck.measure.material import MaterialSettings, assess
from seamcheck.settings.declared import MATERIAL
from seamcheck.settings.file import parse_settings
from seamcheck.settings.writing import material_template

PAGE = (Path(__file__).parents[2] / "docs" / "material.md").read_text("utf-8")
EXAMPLES = re.findall(r"```toml\n(.*?)```", PAGE, re.DOTALL)


@pytest.mark.parametrize("text", EXAMPLES, ids=range(len(EXAMPLES)))
def test_every_example_is_accepted(text):
    parse_settings(text)


def test_the_page_names_every_entry_symbol_and_cell():
    for word in (*(e.name for e in MATERIAL), *polymer_table().polymers, *CELLS):
        assert f"`{word}`" in PAGE, word
    for key in ("transmission", "energy-uniformity", "plaque-range", "thickness-of-class", "weld-start"):
        assert key in {rule.key for rule in MATERIAL_RULES}
        assert f"`{key}`" in PAGE
    assert "Class 4" in PAGE


@pytest.mark.parametrize("entry", [e for e in MATERIAL if e.default is not None], ids=lambda e: e.name)
def test_the_page_has_each_default(entry):
    span = "" if entry.low is None else f" ({entry.low:g} to {entry.high:g})"
    row = re.search(rf"^\| `{entry.name}` \| ([^|]+) \|.*\| ([^|]+) \|$", PAGE, re.MULTILINE)
    assert row.groups() == (entry.unit, f"{entry.default:g}{span}, {entry.standing}")


def test_the_page_states_what_the_example_gives():
    settings = parse_settings(EXAMPLES[0]).materials()
    document = assess(survey(run()), settings, 0.4).document
    results = {entry["key"]: entry["value"] for entry in document["energy"]["results"]}
    assert results["energy_per_length"] == pytest.approx(0.53, abs=0.005)
    assert results["melt_energy"] == pytest.approx(210, abs=1)
    assert results["laser_energy"] == pytest.approx(970, abs=5)
    assert results["least_time"] == pytest.approx(3.2, abs=0.05)
    assert results["start_time"] == pytest.approx(5.5, abs=0.1)
    assert results["weld_time"] == pytest.approx(13, abs=0.5)
    assert results["passes"] == pytest.approx(66, abs=2)
    assert results["least_power"] == pytest.approx(61, abs=0.5)
    assert results["clamp_force"] == pytest.approx(1200)
    assert document["transmission"]["limit_path_28_mm"] == pytest.approx(2.59, abs=0.005)
    assert document["melt"]["expansion"]["value"] == pytest.approx(1.20, abs=0.005)
    contour = document["transmission"]["contours"][0]
    assert (round(contour["low_percent"]), round(contour["high_percent"])) == (34, 38)


def test_the_template_is_a_settings_file_once_uncommented():
    lines = []
    for line in material_template().splitlines():
        text = line.removeprefix("# ")
        if re.match(r"(\[material|\w+ = [\[\"\d])", text):
            lines.append(text)
    table = tomllib.loads("\n".join(lines))["material"]
    settings = MaterialSettings.from_table(table)
    for entry in MATERIAL:
        assert f"# {entry.name} =" in material_template()
        if entry.default is not None:
            assert settings.numbers[entry.key.removeprefix("material.")].value == pytest.approx(entry.default)
