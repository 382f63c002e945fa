"""Ribs that break a limit: what is broken is moved, the rest stays, and the proposed model's own review proves it."""

from __future__ import annotations

import pytest
from propose_models import solids_of

from seamcheck import propose
from seamcheck.catalogue.repairs import PROPOSED_FOR
from seamcheck.proposal.mending import SECTION_RULES
from seamcheck.proposal.plan import REDRAWN
from seamcheck.proposal.repair import WAYS
from seamcheck.samples import samples
from seamcheck.settings.settings import Settings

SAMPLES = {sample.name: sample for sample in samples()}

MENDED = {
    "rib-width": "the rib is wider",
    "rib-height": "the outer trap's floor is deeper",
    "rib-uniformity": "a pad at s =",
    "slenderness": "the rib is wider",
    "trap-room": "the inner trap's floor is deeper",
    "trap-side": "the inner trap is wider",
    "trap-corner": "the inner trap is wider",
    "trap-open-inner": "closes the inner flash trap",
    "lip-gap": "the outer lip is higher",
    "sink-travel": "what the cover meets first is cut back",
    "seam-open": "a recess or groove at s =",
    "contact-gap": "a recess or groove at s =",
    "corner-radius": "the joint is redrawn",
    "cover-thickness": "the cover's top is lowered",
    "cover-uniformity": "a pad at s =",
    "transmission": "a pad at s =",
    "clamp-land": "the chamfer that ends the land is removed",
    "clamp-tilt": "the sloping land is filled level",
    "intended-stop": "the stop is raised",
    "parts-overlap": "a face is moved clear of the other part",
}
"""Sample -> what is moved; each breaks one rule by its geometry."""

LEFT = {
    "cover-hole": "There is no cover over 3.0 mm of the rib here",
    "beam-path": "of the beam's width reaches the rib",
    "clamp-reach": "of the seam has land square to the beam",
    "wall-opening": "An opening goes through the wall below 8.00 mm",
    "support-offset": "the wall below",
    "wall-to-rib": "the wall below",
    "overhang": "the wall below",
    "seam-step": "inclined",
    "scanner-shadow": "scanner",
    "beam-angle": "scanner",
    "flatness-stack": "tolerances",
    "collapse-window": "0.73 mm below the contact",
}
"""Sample -> words of the reason why nothing of the joint is changed, with what was measured there."""


def test_a_remedy_names_the_proposal_for_exactly_the_rules_that_it_changes_something_for():
    # the review tells its reader for which findings a change can be tried; what is tried stands in the proposal
    assert set(SECTION_RULES) | set(WAYS) | REDRAWN == PROPOSED_FOR
    assert set(MENDED) <= PROPOSED_FOR
    assert set(LEFT) & PROPOSED_FOR == {"collapse-window"}  # tried, and left with the reason


def proposed(name):
    sample = SAMPLES[name]
    return propose(sample.file, Settings() if sample.settings is None else sample.settings)


def holds(name, tmp_path):
    result = proposed(name)
    assert result.outcome == "proposed", (result.document.message, result.document.kept_from)
    assert not [f for f in result.review.findings if f.severity in ("must-fix", "attention")]
    (joint,) = result.document.joints
    assert any(MENDED[name] in change.what for change in joint.changes), joint.changes
    assert [(one.rule, one.fits) for one in result.document.remedies if one.rule == name]
    assert {one.fits for one in result.document.remedies} == {"yes"}
    solids = solids_of(result.step, tmp_path)
    assert all(solid.isValid() for solid in solids)
    assert min(edge.Length() for solid in solids for edge in solid.Edges()) > 0.01
    return result


def test_a_trap_floor_that_is_too_high_is_lowered_and_nothing_else_moves(tmp_path):
    result = holds("rib-height", tmp_path)
    before, after = (r.document["joints"][0]["summary"] for r in (result.before, result.review))
    for kept in ("rib_width", "rib_height_inner", "lip_gap_inner", "clamp_land", "cover_thickness", "trap_area_inner"):
        assert after[kept]["median"] == pytest.approx(before[kept]["median"], abs=0.002), kept
    assert after["rib_height_outer"]["median"] == pytest.approx(before["rib_height_outer"]["median"] + 0.05, abs=0.011)


@pytest.mark.thorough
@pytest.mark.parametrize("name", MENDED)
def test_what_a_sample_breaks_is_mended(name, tmp_path):
    holds(name, tmp_path)


@pytest.mark.thorough
@pytest.mark.parametrize("name", LEFT)
def test_what_the_joint_itself_can_not_mend_is_left_with_the_reason(name):
    result = proposed(name)
    assert result.outcome in ("no-proposal", "not-held")
    reasons = [one.says for one in result.document.remedies if one.fits == "no"]
    assert reasons
    assert any(LEFT[name] in reason for reason in reasons), reasons
