"""The declarations: every rule whole, its numbers as agreed, its words usable."""

import re

import pytest

from seamcheck.catalogue.formula import names
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import ACCEPTED_EVERYWHERE, SEVERITIES, STANDINGS
from seamcheck.catalogue.rules import RULES
from seamcheck.settings.settings import Settings, all_limit_keys

# The agreed default limits, typed again: common practice or assumptions, for none of them a published source
AGREED = {
    "rib-width.min": 0.6,
    "rib-width.max": 2.0,
    "rib-evenness.share": 0.10,
    "rib-height.reserve": 0.2,
    "trap-room.min": 1.2,
    "clamp-land.min": 1.0,
    "cover-thickness.min": 0.8,
    "cover-thickness.max": 3.0,
    "cover-evenness.max": 0.3,
    "contact-gap.max": 0.1,
    "drawn-welded.within": 0.05,
    "sink-travel.reserve": 0.1,
    "beam-path.min": 1.0,
    "slenderness.max": 1.5,
    "slenderness.grave": 2.0,
    "turn-radius.widths": 2.0,
    "turn-radius.min": 3.0,
    "support-offset.share": 0.5,
    "clamp-tilt.max": 2.0,
    "lip-gap.min": 0.1,
    "lip-gap.max": 0.3,
    "trap-side.min": 1.0,
    "trap-corner.min": 1.0,
    "flank-draft.max": 3.0,
}
MUST_FIX = {
    "rib-width", "rib-evenness", "rib-height", "trap-room", "clamp-land", "cover-thickness", "cover-evenness",
    "cover-hole", "contact-gap", "sink-travel", "beam-path", "seam-open", "rib-missing",
}  # fmt: skip
NOTES = {"flank-draft", "drawn-welded", "seam-junction", "near-parts", "seam-step", "path-distance"}

FILLED = {"value", "limit", "median", "collapse", "size", "size_limit", "percent", "by", "reason"} | {
    "count",
    "what",
    "grave",
    "why",
}

GEOMETRY = [rule for rule in RULES.values() if not rule.optional]


@pytest.mark.parametrize("key", AGREED)
def test_defaults_are_the_agreed_ones(key):
    assert Settings().limits[key] == AGREED[key]


def test_the_planned_collapse_is_the_agreed_one():
    assert Settings().collapse == 0.4


def test_severities_are_the_agreed_ones():
    assert {r.key for r in GEOMETRY if r.severity == "must-fix"} == MUST_FIX
    assert {r.key for r in GEOMETRY if r.severity == "note"} == NOTES
    assert {r.severity for r in RULES.values()} <= set(SEVERITIES) - {"off"}


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_every_rule_is_whole(rule):
    assert re.fullmatch(r"[a-z]+(-[a-z]+)*", rule.key)
    assert rule.title
    assert rule.what.endswith(".")
    assert rule.harm.endswith(".")
    assert rule.standing in STANDINGS
    assert rule.standing_text
    assert rule.quantities
    for quantity in rule.quantities:
        assert quantity in QUANTITIES
    if not rule.checks:
        assert rule.says
        assert rule.remedy
    for check in rule.checks:
        assert check.lower or check.upper
        assert check.column in QUANTITIES
        assert QUANTITIES[check.judged].unit == QUANTITIES[check.column].unit
        reasons = {
            *check.accepted_reasons,
            *check.failing_reasons,
            *check.value_for_reason,
            *filter(None, [check.substitute_reason]),
        }
        assert reasons <= set(REASONS)


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_bounds_are_made_from_what_exists(rule):
    known = {limit.name for limit in rule.limits} | {"collapse", "median"} | set(QUANTITIES)
    for bound in rule.bounds():
        assert set(names(bound.formula)) <= known
        assert set(names(bound.change)) <= known | {"value", "limit"}
    used = {n for b in rule.bounds() for text in (b.formula, b.grave) if text for n in names(text)}
    for limit in rule.limits:
        assert limit.name in used or not rule.checks, f"{limit.name} is used nowhere"


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_sentences_end_and_name_their_numbers(rule):
    texts = [rule.says, rule.remedy] if not rule.checks else []
    for bound in rule.bounds():
        texts += [bound.says, bound.remedy]
    for text in texts:
        assert text.endswith((".", "{why}")), text
        assert text.count("[") == text.count("]")
        for name in re.findall(r"\{(\w+)\}", text):
            assert name in FILLED


def test_accepted_reasons_are_reasons():
    assert set(ACCEPTED_EVERYWHERE) <= set(REASONS)


def test_keys_of_settings_are_unique():
    keys = all_limit_keys()
    assert len(keys) == len(set(keys))
