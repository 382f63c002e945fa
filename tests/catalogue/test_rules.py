"""The declarations: every rule whole, its numbers as agreed, its words usable."""

import re

import numpy as np
import pytest
from scipy.stats import norm

from seamcheck.catalogue.formula import evaluate, names
from seamcheck.catalogue.known import OF_DEFAULTS
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import ACCEPTED_EVERYWHERE, SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.words import change_by
from seamcheck.settings.settings import Settings, all_limit_keys

# The agreed default limits, typed again: common practice or assumptions, for none of them a published source
AGREED = {
    "rib-width.min": 0.6,
    "rib-width.attention": 2.0,
    "rib-width.max": 2.5,
    "rib-uniformity.attention": 0.10,
    "rib-uniformity.share": 0.20,
    "rib-height.reserve": 0.2,
    "trap-room.min": 1.2,
    "clamp-land.min": 1.0,
    "cover-thickness.min": 0.8,
    "cover-thickness.max": 3.0,
    "cover-uniformity.max": 0.3,
    "contact-gap.attention": 0.1,
    "contact-gap.share": 0.5,
    "contact-gap.flat": 0.1,
    "drawn-welded.within": 0.05,
    "sink-travel.reserve": 0.2,
    "sink-travel.toleranced": 0.1,
    "beam-path.min": 1.0,
    "slenderness.max": 1.5,
    "slenderness.grave": 2.0,
    "corner-radius.widths": 2.0,
    "corner-radius.min": 3.0,
    "support-offset.share": 0.5,
    "clamp-tilt.max": 2.0,
    "lip-gap.min": 0.1,
    "lip-gap.max": 0.3,
    "trap-side.min": 1.0,
    "trap-corner.min": 1.0,
    "flank-draft.max": 3.0,
    "sink-mark.max": 0.7,
    "guide-play.min": 0.05,
    "guide-depth.min": 0.0,
    "guide-draft.min": 0.5,
    "second-collapse.reserve": 0.1,
    "seam-junction.apart": 0.1,
    "seam-junction.room": 1.2,
}
MUST_FIX = {
    "rib-width", "rib-uniformity", "rib-height", "trap-room", "clamp-land", "cover-thickness", "cover-uniformity",
    "cover-hole", "contact-gap", "sink-travel", "beam-path", "seam-open", "rib-missing",
}  # fmt: skip
NOTES = {"flank-draft", "drawn-welded", "near-parts", "seam-step", "path-distance", "sink-mark", "guide-draft"}

FILLED = {"value", "limit", "median", "collapse", "size", "size_limit", "percent", "by", "reason"} | {
    "count",
    "what",
    "grave",
    "why",
    "width",
    "deeper",
    "other",
    "side",
    "each",
    "low",
    "high",
    "least",
    "most",
    "length",
    "axis",
    "both",
    "way",
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
    assert rule.standing in OF_DEFAULTS
    assert rule.standing_text
    assert rule.quantities
    for quantity in rule.quantities:
        assert quantity in QUANTITIES
    if not rule.checks:
        assert rule.says
        assert rule.remedy
    for check in rule.checks:
        assert check.lower or check.upper or check.failing_reasons
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
    known = {limit.name for limit in rule.limits} | set(QUANTITIES)
    known |= {"collapse", "second_collapse", "median", "main_least", "main_most"}
    for bound in rule.bounds():
        for formula in bound.formulas():
            assert set(names(formula)) <= known
        assert set(names(bound.change)) <= known | {"value", "limit"}
    used = {n for b in rule.bounds() for text in (*b.formulas(), b.grave) if text for n in names(text)}
    for limit in rule.limits:
        assert limit.name in used or not rule.checks or limit.name == "toleranced", f"{limit.name} is used nowhere"


@pytest.mark.parametrize("rule", RULES.values(), ids=RULES)
def test_sentences_end_and_name_their_numbers(rule):
    texts = [rule.says, rule.remedy] if not rule.checks else []
    for bound in rule.bounds():
        texts += [bound.says, bound.remedy]
    for text in texts:
        assert text.endswith((".", "{why}", "{what}")), text  # both hold whole sentences
        assert text.count("[") == text.count("]")
        for name in re.findall(r"\{(\w+)\}", text):
            assert name in FILLED


def test_accepted_reasons_are_reasons():
    assert set(ACCEPTED_EVERYWHERE) <= set(REASONS)


def test_keys_of_settings_are_unique():
    keys = all_limit_keys()
    assert len(keys) == len(set(keys))


def test_the_reserve_of_travel_is_what_its_standing_says():
    """Two dimensions of ±0.1 mm at Cpk 1, normal: standard deviation 0.1 / 3 each (scipy's normal distribution)."""
    spread = np.hypot(0.1, 0.1) / 3
    assert norm.sf(0.1 / spread) == pytest.approx(0.017, abs=5e-4)
    assert norm.sf(0.2 / spread) == pytest.approx(1e-5, rel=0.15)
    assert "1e-5" in RULES["sink-travel"].standing_text
    assert "1.7 %" in RULES["sink-travel"].standing_text


def test_an_attention_bound_is_reached_before_the_rule_is_broken():
    bounds = [(rule, bound) for rule in RULES.values() for bound in rule.bounds() if bound.attention]
    assert {rule.key for rule, _ in bounds} == {"rib-width", "rib-uniformity", "contact-gap", "energy-uniformity"}
    for rule, bound in bounds:
        assert [s for _, s in bound.steps(rule.severity, False)] == ["must-fix", "attention"]
        assert [s for _, s in bound.steps("note", False)] == ["note", "note"]
        values = {limit.name: limit.default for limit in rule.limits} | {"collapse": 0.4, "median": 1.2}
        full, early = (evaluate(text, values) for text, _ in bound.steps(rule.severity, False))
        side = "upper" if any(check.upper is bound for check in rule.checks) else "lower"
        assert early < full if side == "upper" else early > full


@pytest.mark.parametrize(("by", "told"), [(0.200006, 0.20), (0.113, 0.12), (0.2, 0.2), (0.2006, 0.21), (0.004, 0.01)])
def test_the_change_follows_from_the_numbers_that_are_printed(by, told):
    assert change_by(by, "mm") == pytest.approx(told)
