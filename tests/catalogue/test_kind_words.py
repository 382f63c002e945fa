"""Texts about a rib in the words of a plain wall or a lap; the German wordings are common practice."""

import pytest

from seamcheck.catalogue.kind_words import base_of, keyed, word_of, worded
from seamcheck.catalogue.messages import message, wording
from seamcheck.catalogue.voice import Voice, speaking
from seamcheck.report.language import quantity_title, voice_of


def test_a_rib_becomes_the_wall_or_band_that_stands_in_its_place():
    assert worded("The rib is {value} wide. Ribs melt.", "wall") == "The wall is {value} wide. Walls melt."
    assert worded("The gap between rib and opposite part", "band") == "The gap between band and opposite part"
    assert worded("Put the wall below the rib.", "wall") == "Put the wall below the wall top."
    assert worded("{rib} lacks a weld rib: see wall-to-rib.", "wall") == "{rib} lacks a weld rib: see wall-to-rib."
    assert worded("What describes it contributes.", "wall") == "What describes it contributes."


@pytest.mark.parametrize(
    ("word", "expected"),
    [
        ("wall", "Die Wand ist schmal, zwei Wände sind breit, die Wandbreite gilt."),
        ("band", "Die Auflage ist schmal, zwei Auflagen sind breit, die Auflagenbreite gilt."),
    ],
)
def test_german_says_the_same(word, expected):
    assert worded("Die Rippe ist schmal, zwei Rippen sind breit, die Rippenbreite gilt.", word, "de") == expected


def test_a_key_tells_the_text_and_the_word():
    assert [word_of(kind) for kind in ("weld-rib", "plain-wall", "ledge")] == ["", "wall", "band"]
    assert base_of(keyed("rib-width.rib_width.high", "wall")) == ("rib-width.rib_width.high", "wall")
    assert base_of("rib-width.rib_width.high") == ("rib-width.rib_width.high", "")


def test_a_finding_on_a_plain_wall_speaks_of_the_wall():
    assert "wall" in wording("rib-width.rib_width.high.wall").remedy
    said = message("rib-width.rib_width.high.wall", {"value": "2.40 mm", "limit": "2.00 mm"})
    assert said.text == "The wall is 2.40 mm wide; it should be at most 2.00 mm."


def test_a_report_on_plain_walls_alone_speaks_of_walls():
    wall, rib = {"kind": "plain-wall"}, {"kind": "weld-rib"}
    with speaking(voice_of({"joints": [wall, wall]}, Voice())):
        assert quantity_title("rib_width") == "wall width"
    with speaking(voice_of({"joints": [wall, wall]}, Voice("de"))):
        assert quantity_title("rib_width") == "Wandbreite"
    assert voice_of({"joints": [wall, rib]}, Voice()) == voice_of({"joints": []}, Voice()) == Voice()
