"""The page about the whole interface: every quantity is known, every setting is shown and can be taken."""

from __future__ import annotations

import re
from pathlib import Path

from seamcheck.catalogue.interface_quantities import INTERFACE_QUANTITIES
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.settings.declared import CLAMP, LOAD, SCANNER
from seamcheck.settings.file import read_settings

PAGE = (Path(__file__).resolve().parents[2] / "docs" / "interface.md").read_text("utf-8")


def test_every_quantity_on_the_page_exists_and_none_is_left_out():
    table = "\n".join(line for line in PAGE.splitlines() if line.startswith("| "))
    named = set(re.findall(r"`([a-z_]+)`", table)) - {"then"}
    assert named <= set(QUANTITIES)
    left_out = set(INTERFACE_QUANTITIES) - named
    assert left_out == {"melt_volume", "clamp_area_inner", "clamp_area_outer"}


def test_the_settings_on_the_page_can_be_taken(tmp_path):
    (tmp_path / "tolerances.csv").write_text("gap, 0.02\n")
    file = tmp_path / "seamcheck.toml"
    file.write_text(PAGE.partition("```toml\n")[2].partition("```")[0], encoding="utf-8")
    settings = read_settings(file)
    assert (settings.scanner.distance, settings.clamp.pressure, settings.intended_stop) == (300.0, 2.0, 0.4)
    assert settings.tolerances["gap"] == 0.02
    shown = {line.partition("=")[0].strip() for line in PAGE.splitlines()}
    assert {*SCANNER, *CLAMP} | ({*LOAD} - {"force"}) <= shown


def test_the_cautions_stand_on_it():
    assert "never an approval" in PAGE
    assert "Class 4" in PAGE
