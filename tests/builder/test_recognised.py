"""What is recognised on the drawn cases: kind, roles, light, closed or open, or the true reason for a refusal.

A telling few run in the quick suite, all of them in the thorough one; ``python -m benchmarks.recognition`` makes the
table.
"""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest

from builder.hard.tree import write_model
from builder.hard.truth import motion
from builder.joints import JOINTS
from builder.joints.compare import HONEST, RIGHT, row
from builder.joints.truth import JointTruth, case
from builder.ops import box, cut
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

QUICK = {"rib-on-base", "rib-on-cover", "screws-beside-a-rib"}

KNOWN: dict[str, str] = {}
"""Faults that are known and open: the test fails when one of them is gone, so that it leaves this list."""


def _marks(name: str) -> list[pytest.MarkDecorator]:
    marks = [] if name in QUICK else [pytest.mark.thorough]
    if name in KNOWN:
        marks.append(pytest.mark.xfail(reason=KNOWN[name], strict=True))
    return marks


@pytest.mark.parametrize("name", [pytest.param(name, marks=_marks(name)) for name in JOINTS])
def test_the_joint_is_recognised(name, tmp_path):
    drawn = JOINTS[name]()
    found = row(review_model([write_model(tmp_path / f"{name}.step", drawn)], Settings()), drawn)
    assert found.outcome in (RIGHT, HONEST), f"{found.outcome}: {'; '.join(found.why)}"


def test_a_strip_along_one_side_is_a_seam_only_where_its_parts_are_named(tmp_path):
    wall = cut(box((-30, -20, 0), (30, 20, 15)), box((-28, -18, 2), (28, 18, 16)), box((-31, -21, 13), (31, 17, 16)))
    model = write_model(
        tmp_path / "strip.step", case([wall, box((-30, -20, 15), (30, 20, 17))], note="One wall stands.")
    )
    refused = review_model([model], Settings())
    assert "--cover" in refused["reason"]["message"]
    (joint,) = review_model([model], Settings(cover="p2", base="p1"))["joints"]
    assert joint["kind"] == "plain-wall"
    assert not joint["contours"][0]["closed"]


# -- the comparison itself, with documents typed in -----------------------------------------------------

TRUTH = SimpleNamespace(
    joints=(JointTruth(("ledge",), must=("rib-missing",)),), reasons=(), says=(), volume=0.0, most=3
)
NONE = SimpleNamespace(joints=(), reasons=("no-seam",), says=("play",), volume=2400.0, most=3)


def _document(**changes):
    joint = {
        "id": "j1", "cover": ["p2"], "base": ["p1"], "kind": "ledge", "confidence": 0.8, "rib_on": "none",
        "beam": [0.0, 0.0, -1.0], "contours": [{"closed": True}], "junctions": {}, "interruptions": [],
    }  # fmt: skip
    findings = [{"joint": "j1", "rule": rule, "severity": "must-fix"} for rule in changes.pop("rules", ["rib-missing"])]
    return {"verdict": "fail", "joints": [joint | changes], "findings": findings, "reason": None}


def _refused(message, code="no-seam"):
    return {"verdict": "not-reviewed", "joints": [], "findings": [], "reason": {"code": code, "message": message}}


@pytest.mark.parametrize(
    ("changes", "outcome"),
    [
        ({}, RIGHT),
        ({"kind": "weld-rib"}, "wrong kind"),
        ({"cover": ["p1"], "base": ["p2"], "beam": [0, 0, 1]}, "wrong roles"),
        ({"cover": ["p3"]}, "wrong joint"),
        ({"beam": [0.0, 0.05, -1.0]}, "wrong light"),
        ({"contours": [{"closed": True}, {"closed": False}]}, "wrong closed"),
        ({"contours": []}, "wrong closed"),
        ({"rules": []}, "missed finding"),
        ({"rules": ["rib-missing", "clamp-land"]}, "false finding"),
    ],
)
def test_the_comparison_sees_what_is_wrong(changes, outcome):
    found = row(_document(**changes), TRUTH)
    assert found.outcome == outcome, found.why
    assert found.is_wrong_joint is outcome.startswith(("wrong kind", "wrong roles", "wrong joint", "wrong light"))


def test_a_joint_where_there_is_none_and_none_where_there_is_one():
    assert row(_document(), NONE).outcome == "wrong joint"
    assert row(_refused("Nothing."), TRUTH).outcome == "missed joint"


@pytest.mark.parametrize(
    ("message", "outcome"),
    [
        ("A plug lid with play; they share 2,400 mm³.", RIGHT),
        ("A plug lid with play; they share 2 410.5 mm³.", RIGHT),
        ("A plug lid with play; they share 2 600 mm³.", "wrong sentence"),
        ("They share 2400 mm³.", "wrong sentence"),
    ],
)
def test_a_refusal_must_say_why(message, outcome):
    assert row(_refused(message), NONE).outcome == outcome
    assert row(_refused(message, "ambiguous"), NONE).outcome == "wrong reason"


def test_roles_and_light_follow_order_and_motion():
    # a quarter turn about x takes the light from -z to +y: (x, y, z) -> (x, -z, y)
    turn = motion((90, 0, 0), (0, 0, 0))
    drawn = case(
        [box((0, 0, 0), (1, 1, 1))] * 3, JointTruth(("ledge",), cover=2, base=0), order=(2, 1, 0), turn=turn, note=""
    )
    (joint,) = drawn.joints
    assert (joint.cover, joint.base) == (0, 2)
    np.testing.assert_allclose(joint.beam, (0, 1, 0), atol=1e-12)
