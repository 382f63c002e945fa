"""One cause, one finding: what says the same in many places of a model is told once, with its places."""

from __future__ import annotations

from limits_surveys import circle
from msgspec.structs import replace

from seamcheck.catalogue.causes import CAUSES
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.findings import Waived
from seamcheck.judge.grouping import MOST, grouped
from seamcheck.judge.judge import judge
from seamcheck.settings.settings import Settings

GAPS = [("gap_max", start, start + 1.0, 0.3) for start in (10, 20, 30, 40, 50, 60, 70)]


def found(*changes):
    return judge([circle(*changes)], Settings()).findings


def test_up_to_six_findings_stand_alone():
    hits = found(*GAPS[:MOST])
    assert len(hits) == MOST
    assert not any(hit.places for hit in hits)


def test_more_are_one_finding_with_all_its_places():
    worst = ("gap_max", 80, 81, 0.5)
    (hit,) = found(*GAPS, worst)
    assert (hit.rule, hit.severity, hit.value) == ("contact-gap", "must-fix", 0.5)
    assert sorted(round(place.from_s) for place in hit.places) == [10, 20, 30, 40, 50, 60, 70]
    assert {place.value for place in hit.places} == {0.3}
    assert "in the same way, 7 more: c1 at s = " in hit.message
    assert "there are 8 in all" in hit.message
    assert hit.message == " ".join(said.text for said in hit.messages)


def test_rules_and_sides_of_a_limit_stay_apart_as_long_as_that_is_enough():
    thin = [("cover_thickness_min", start, start + 1.0, 0.5) for start in (15, 25)]
    hits = found(*GAPS, *thin)
    assert {(hit.rule, len(hit.places)) for hit in hits} >= {("contact-gap", 6), ("cover-thickness", 1)}


def test_what_is_waived_is_not_told_again():
    hits = list(found(*GAPS[:MOST]))
    accepted = [replace(hit, id=f"{hit.id}-x", waived=Waived("seen", None, None)) for hit in hits]
    assert grouped([*hits, *accepted]) == (*hits, *accepted)


def test_what_one_change_mends_is_one_finding_where_there_are_many():
    """Land and thickness of the cover have one cause, the flash traps another one; a gap and a corner have none."""
    hits = found(
        ("clamp_land", 0, 200, 0.1), ("clamp_tilt", 10, 20, 9.0), ("cover_thickness_max", 60, 70, 9.0),
        ("trap_room", 20, 30, 0.2), ("trap_open_inner", 50, 60, 1.0), ("lip_gap_inner", 80, 90, 0.5),
        ("gap_max", 10, 11, 0.3), ("corner_radius", 5, 6, 0.1),
    )  # fmt: skip
    told = {hit.rule: hit for hit in hits if hit.severity != "note"}
    assert set(told) == {"contact-gap", "corner-radius", "clamp-land", "trap-room"}
    land, room = told["clamp-land"], told["trap-room"]
    assert {place.rule for place in land.places} == {"cover-thickness", "cover-uniformity"}
    assert set(land.also) == {"cover-thickness", "cover-uniformity", "clamp-tilt"}
    assert set(room.also) == {"trap-open-inner", "lip-gap"}
    assert [place.severity for place in land.places] == ["must-fix", "must-fix"]
    assert "The same cause, the shape of the cover over and beside the seam, also breaks other limits: " in land.message
    assert "over the rib" in land.message.split("limits:")[1]
    assert land.message == " ".join(said.text for said in land.messages)
    assert not told["contact-gap"].places


def test_a_rule_has_one_cause_and_is_declared():
    rules = [rule for _, some in CAUSES.values() for rule in some]
    assert len(rules) == len(set(rules))
    assert set(rules) <= set(RULES)
