"""A lap is measured as a whole where the settings say that no rib is wanted, and only there."""

from __future__ import annotations

from builder.hard import HARD, write_model

from seamcheck.cache.key import measuring
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

WANTED = Settings().changed({"rib-missing.severity": "off"})


def test_a_lap_that_is_wanted_is_surveyed_over_the_whole_interface(tmp_path):
    path = write_model(tmp_path / "lap.step", HARD["flat-on-flat"]())
    missing, wanted = (review_model([path], settings)["joints"][0]["interface"] for settings in (Settings(), WANTED))
    assert not missing
    assert {"clamp_share", "overlap", "field_circle"} <= set(wanted)


def test_what_is_kept_of_a_lap_depends_on_whether_it_is_wanted():
    assert measuring(WANTED) != measuring(Settings())
    assert measuring(Settings().changed({"rib-missing.severity": "note"})) == measuring(Settings())
