"""Defects of 0.5 mm and more, drawn into sound pairs: all found, in place, with the true value, and nothing else."""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from builder import DEFECTS, Spec, build, circle, spoil
from measuring import assembly
from telling import telling

from seamcheck.contour import trace_contour
from seamcheck.joint import find_joints
from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.measure import survey_joint
from seamcheck.settings.settings import Settings

PLACES = {
    "half a millimetre": {"length": 0.5},
    "three millimetres": {"length": 3.0},
    "on a circle": {"spec": Spec(track=circle(15)), "length": 1.0},
    "turned": {
        "spec": dataclasses.replace(Spec(), turn=(20.0, 40.0, 100.0), shift=(5.0, 6.0, -70.0), cover_first=True),
        "length": 2.0,
    },
}


def findings(parts):
    settings = Settings().changed({"beam-margin": 0.0})  # land from the rib's edge, as the defects are drawn
    results = []
    for joint in find_joints(assembly(parts), settings):
        survey = survey_joint(joint, trace_contour(joint), settings)
        results.append(JointResult(**joint.facts(), survey=survey))
    return judge(results, settings, {}).findings


SEEDED = [(kind, place) for kind in DEFECTS for place in PLACES]
QUICK = [(kind, list(PLACES)[k % len(PLACES)]) for k, kind in enumerate(DEFECTS)]  # every kind once


@pytest.mark.parametrize("seeded", telling(SEEDED, QUICK), ids="-".join)
def test_a_seeded_defect_is_found_in_its_place_with_its_value(seeded):
    kind, place = seeded
    model, flaw = spoil(kind, **PLACES[place])
    found = findings(model.parts)
    assert set(flaw.rules) <= {finding.rule for finding in found}
    assert {finding.rule for finding in found if finding.severity == "must-fix"} <= set(flaw.rules)
    for finding in found:
        if finding.rule not in flaw.rules:
            continue
        reach = flaw.length / 2 + 1.0  # within 1 mm of the defect
        assert np.linalg.norm(np.array(finding.at) - flaw.at) < reach + 3.0 * (finding.quantity in ("clamp_land",))
        if finding.quantity == flaw.quantity and flaw.value is not None:
            assert finding.value == pytest.approx(flaw.value, abs=0.01)


@pytest.mark.parametrize("spec", [Spec(), Spec(track=circle(15))], ids=["rounded rectangle", "circle"])
def test_a_sound_pair_has_no_finding_to_fix(spec):
    assert [f.rule for f in findings(build(spec).parts) if f.severity != "note"] == []
