"""Scanner, clamp and tolerances as single settings: from the command line, from Python, over the file's."""

from __future__ import annotations

import json

import pytest
from shell import shell

from seamcheck.errors import UsageError
from seamcheck.samples import samples
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings
from seamcheck.settings.tables import Clamp, Scanner

FILE = "[scanner]\ndistance = 250\nhalf-angle = 4\n[clamp]\nheight = 12\n[tolerance]\nrib_width = 0.05\n"


def test_single_entries_change_what_the_file_says():
    settings = parse_settings(FILE).changed(
        {"scanner.distance": "30 cm", "scanner.axis": "1, 2, 3", "clamp.pressure": "2", "tolerance.gap": 0.03}
    )
    assert settings.scanner == Scanner(300.0, (1.0, 2.0, 3.0), 4.0)
    assert settings.clamp == Clamp(12.0, 5.0, 0.5, 2.0)
    assert settings.tolerances == {"rib_width": 0.05, "gap": 0.03}
    assert {settings.origin(table) for table in ("scanner", "clamp", "tolerance")} == {"option"}


@pytest.mark.parametrize("whole", [{"distance": 200, "index": 1.58}, Scanner(200.0, None, 0.0, 1.58)])
def test_a_whole_table_takes_the_place_of_the_file_s(whole):
    assert parse_settings(FILE).changed({"scanner": whole}).scanner == Scanner(200.0, None, 0.0, 1.58)


def test_a_table_can_be_taken_away():
    settings = parse_settings(FILE).changed({"scanner": None, "clamp": None, "tolerance": None})
    assert (settings.scanner, settings.clamp, dict(settings.tolerances)) == (None, Clamp(), {})


def test_telecentric_and_distance_take_each_other_s_place():
    settings = parse_settings(FILE).changed({"scanner.telecentric": "true"})
    assert settings.scanner == Scanner(None, None, 4.0)
    assert settings.changed({"scanner.distance": 300}).scanner == Scanner(300.0, None, 4.0)


def test_a_tolerance_may_be_written_with_either_dash():
    settings = Settings().changed({"tolerance.rib-width": 0.05}).changed({"tolerance.rib_width": 0.07})
    assert settings.tolerances == {"rib_width": 0.07}


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"scanner.half-angle": 3}, "telecentric = true"),
        ({"scanner.hight": 3}, "There is no entry 'hight' in [scanner]"),
        ({"scaner.distance": 3}, "Did you mean 'scanner.distance'?"),
        ({"tolerance.rib_widht": 0.1}, "Did you mean 'rib_width'?"),
        ({"scanner.telecentric": "maybe"}, "true or false"),
        ({"clamp.reach": "far"}, "clamp.reach must be a length"),
        ({"scanner": 300}, "scanner must be a table of entries"),
        ({"scanner.axis": "1,2"}, "three coordinates"),
    ],
)
def test_what_can_not_be_taken_gets_a_sentence(change, says):
    with pytest.raises(UsageError) as caught:
        Settings().changed(change)
    assert says in str(caught.value)


def test_options_of_the_command_line_reach_the_document(tmp_path):
    sound = next(s.file for s in samples() if s.name == "sound")
    out = tmp_path / "review.json"
    options = ["--scanner", "distance=300", "--scanner", "half-angle=2", "--clamp", "pressure=2", "--tolerance"]
    result = shell("review", sound, *options, "rib_width=0.05", "--json", out, "-q")
    assert result.exit_code == 0, result.output

    document = json.loads(out.read_text("utf-8"))
    assert document["settings"]["scanner"]["distance"] == 300
    assert document["settings"]["scanner"]["half_angle"] == 2
    assert document["joints"][0]["interface"]["clamp_area"]["force_newton_per_mm"] == pytest.approx(2.4, rel=1e-3)
    assert [t["state"] for t in document["joints"][0]["tolerances"]] == [
        "inside"
    ] * 7  # both sides of two rules, and the bounds of attention


@pytest.mark.parametrize("option", ["--scanner", "--clamp", "--tolerance"])
def test_an_option_without_a_value_says_what_it_should_look_like(option):
    result = shell("review", "x.step", option, "distance")
    assert result.exit_code == 2
    assert "should look like" in result.output


def test_propose_and_prepare_take_answers_as_review_does_and_scan_says_that_it_does_not(tmp_path):
    """A file that accepts nothing that can be read stops each of them before any model is opened."""
    model, answers = tmp_path / "m.step", tmp_path / "answers.json"
    model.write_text("no model")
    answers.write_text("{}")
    for command in (("review",), ("propose",), ("prepare", "--into", tmp_path / "trial")):
        done = shell(*command, model, "--answers", answers)
        assert done.exit_code == 2
        assert "is not a file of answers" in done.output
    done = shell("scan", tmp_path, "--out", tmp_path / "out", "--answers", answers)
    assert done.exit_code == 2
    assert "--answers" in done.output
