"""What a proposal's own review makes of it; reviews typed in."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from seamcheck.proposal.proving import held, remedies_of, short_of_land
from seamcheck.proposal.records import Change, JointProposal, Left


def finding(rule, severity="must-fix", one=None, **more):
    facts = {
        "quantity": rule,
        "contour": "c1",
        "from_s": 1.0,
        "joint": "j1",
        "waived": None,
        "message": f"{rule} says.",
        "messages": [{"key": "note", "args": {}, "text": f"{rule} says."}],
    }
    return {"id": one or f"{rule}-1", "rule": rule, "severity": severity} | facts | more


def reviewed(*findings):
    return SimpleNamespace(verdict="fail", document={"findings": list(findings)})


def joint(state="mended", changes=(), left=()):
    return JointProposal(
        joint="j1", cover="lid", base="case", carrier="case", state=state, message="It was moved.", changes=changes,
        left=left,
    )  # fmt: skip


def outcome(joints, before, after):
    return held(joints, before, after, remedies_of(joints, before, after))


def test_a_must_fix_of_any_rule_keeps_it_from_being_a_proposal():
    kept, named = outcome([joint()], reviewed(finding("lip-gap")), reviewed(finding("clamp-land")))
    assert kept == ("clamp-land: clamp-land says.",)
    assert named == ()


@pytest.mark.parametrize(
    ("rule", "was_there", "keeps"),
    [("slenderness", False, True), ("slenderness", True, False), ("clamp-tilt", False, False)],
)
def test_an_attention_keeps_it_only_where_the_proposal_caused_it(rule, was_there, keeps):
    before = [finding("lip-gap"), *([finding(rule, "attention")] if was_there else [])]
    kept, named = outcome([joint()], reviewed(*before), reviewed(finding(rule, "attention")))
    assert (len(kept), len(named)) == ((1, 0) if keeps else (0, 1))


def test_what_mends_none_of_the_findings_is_not_held():
    change = Change(part="case", what="a face is moved", by=0.1, findings=("seam-step-1",))
    before = reviewed(finding("seam-step", "attention"))
    kept, _ = outcome([joint(changes=(change,))], before, before)
    assert kept == ("it mends none of the findings.",)
    kept, _ = outcome([joint(changes=(change,))], before, reviewed())
    assert kept == ()


def test_a_finding_fits_where_the_new_review_no_longer_has_it():
    change = Change(part="case", what="the rib is wider", by=0.2, findings=("rib-width-1",))
    left = Left(finding="seam-step-1", rule="seam-step", why="the whole seam would have to lie in one plane")
    before = reviewed(finding("rib-width"), finding("seam-step", "attention"), finding("gap", "note"))
    found = remedies_of([joint(changes=(change,), left=(left,))], before, reviewed(finding("seam-step", "attention")))
    assert [(one.rule, one.fits, one.says) for one in found] == [
        ("rib-width", "yes", "the rib is wider by 0.20 mm"),
        ("seam-step", "no", "the whole seam would have to lie in one plane. Measured: seam-step says."),
    ]


def test_only_a_land_that_is_too_narrow_asks_for_another_drawing():
    land = finding("clamp-land", value=0.7, limit=1.0)
    assert short_of_land(reviewed(land)) == pytest.approx(0.3)
    assert short_of_land(reviewed(land, finding("lip-gap", value=0.5, limit=0.3))) == 0.0
    assert short_of_land(reviewed()) == 0.0
