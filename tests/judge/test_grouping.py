"""One cause, one finding: what says the same in many places of a model is told once, with its places."""

from __future__ import annotations

from limits_surveys import circle
from msgspec.structs import replace

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
