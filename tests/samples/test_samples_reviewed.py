"""Reviewing the samples: the sound ones pass, each spoiled one breaks its rule and no other must-fix rule."""

from __future__ import annotations

import pytest

import seamcheck
from seamcheck.catalogue.rule import MUST_FIX
from seamcheck.catalogue.rules import RULES
from seamcheck.samples import samples


@pytest.mark.thorough
@pytest.mark.parametrize("sample", samples(), ids=lambda s: s.name)
def test_a_sample_breaks_its_rule_and_no_other_that_must_be_fixed(sample):
    document = seamcheck.review(sample.file, sample.settings).document
    found = {finding["rule"] for finding in document["findings"]}
    if sample.rule is None:
        assert document["verdict"] == "pass", found
        return
    assert sample.rule in found
    must_fix = {f["rule"] for f in document["findings"] if f["severity"] == MUST_FIX}
    assert must_fix == ({sample.rule} if RULES[sample.rule].severity == MUST_FIX else set())
