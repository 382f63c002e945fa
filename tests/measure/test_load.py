"""What the weld has to hold: closed form on a round lid, from the settings to the finding."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from builder import Spec, build, circle
from interface_models import interface
from telling import telling

from seamcheck.errors import UsageError
from seamcheck.measure.load import stresses
from seamcheck.pipeline import review_model
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings
from seamcheck.settings.tables import Load
from seamcheck.settings.writing import as_toml

RADIUS, WIDTH, PRESSURE = 25.0, 1.2, 0.1
ROUND = Spec(track=circle(RADIUS), rib_width=WIDTH)


def test_tension_is_load_over_width_and_moment_over_its_section_modulus():
    """A strip 2 mm wide, 1 mm long: 3 N/mm and 4 N·mm: 1.5 MPa and 4 / (2² / 6) = 6 MPa more where it is peeled."""
    least, most = stresses(np.array([3.0]), np.array([2.0]), np.array([4.0]), np.array([2.0]))
    assert least == pytest.approx([1.5])
    assert most == pytest.approx([7.5])


def test_a_round_lid_under_pressure():
    """Theory of Plates and Shells, section 16: area pi a², load p a / 2, moment of the clamped edge p a² / 8."""
    _, values = interface(build(ROUND).parts, load=Load(PRESSURE, None, 50.0, 0.5))
    assert values["enclosed_area"]["value"] == pytest.approx(np.pi * RADIUS**2, rel=1e-3)
    assert values["load_force"]["value"] == pytest.approx(PRESSURE * np.pi * RADIUS**2, rel=1e-3)
    line, moment = PRESSURE * RADIUS / 2, PRESSURE * RADIUS**2 / 8
    assert values["line_load_mean"]["value"] == pytest.approx(line, rel=1e-3)
    least, most = line / WIDTH, line / WIDTH + 6 * moment / WIDTH**2
    assert values["weld_stress_least"]["value"] == pytest.approx(least, rel=0.02)
    assert values["weld_stress_most"]["value"] == pytest.approx(most, rel=0.02)
    assert values["weld_use_least"]["value"] == pytest.approx(least / 25.0, rel=0.02)
    assert values["weld_use_most"]["value"] == pytest.approx(most / 25.0, rel=0.02)
    # the same as a force
    _, pushed = interface(build(ROUND).parts, load=Load(None, PRESSURE * np.pi * RADIUS**2, 50.0, 0.5))
    assert pushed["weld_stress_most"]["value"] == pytest.approx(values["weld_stress_most"]["value"], rel=2e-3)


def test_without_strength_and_factor_it_is_not_evaluated():
    _, values = interface(build(ROUND).parts, load=Load(PRESSURE))
    assert values["weld_use_most"] == {"value": None, "at": None, "why": "no-strength"}
    assert values["weld_stress_most"]["value"] is not None


@pytest.fixture(scope="module")
def file(tmp_path_factory) -> Path:
    return build(ROUND).write(tmp_path_factory.mktemp("load") / "round.step")


@pytest.mark.parametrize(
    ("strength", "rules"),
    telling(
        [(50.0, ["weld-peel"]), (2.0, ["weld-load"]), (200.0, []), (None, [])], [(50.0, ["weld-peel"])], several=True
    ),
)
def test_the_weld_is_judged_by_what_the_settings_say_it_bears(file, strength, rules):
    """Tension 1.0 MPa by the load alone, 33.6 with the moment; the weld bears half of the strength."""
    bears = "" if strength is None else f"strength = {strength}\nweld-factor = 0.5\n"
    document = review_model([file], parse_settings(f"[load]\npressure = {PRESSURE}\n{bears}"))
    assert [f["rule"] for f in document["findings"]] == rules
    assert any("no proof of strength" in remark["text"] for remark in document["assumptions"])
    told = any("strength and weld factor" in remark["text"] for remark in document["not_checked"])
    assert told == (strength is None)
    assert document["settings"]["load"]["pressure"] == PRESSURE


def test_a_review_without_a_load_says_nothing_of_it(file):
    document = review_model([file], Settings())
    assert "load" not in document["settings"]
    assert "enclosed_area" not in document["joints"][0]["interface"]
    assert "line_load" not in document["joints"][0]["contours"][0]["stations"]


def test_settings_of_a_load():
    settings = parse_settings("[load]\nforce = 200\nstrength = 40\n")
    assert settings.load == Load(None, 200.0, 40.0, None)
    assert parse_settings(as_toml(settings)).load == settings.load
    assert settings.changed({"load.weld-factor": 0.4}).load == Load(None, 200.0, 40.0, 0.4)
    for text in ("[load]\nstrength = 40\n", "[load]\nforce = 200\npressure = 0.1\n"):
        with pytest.raises(UsageError, match="either pressure"):
            parse_settings(text)
