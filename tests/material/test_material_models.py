"""Drawn models: the closed-form section against surveys at other collapses; the two material samples."""

import json

import numpy as np
import pytest

from seamcheck.isolation import run_isolated
from seamcheck.limits.settings_file import read_settings
from seamcheck.pipeline import review
from seamcheck.samples import samples

SAMPLES = {sample.name: sample for sample in samples()}


def areas(name, collapses):
    """Surveyed melt and trap areas at each collapse, and the closed form of the first one at all of them."""
    from seamcheck.assembly import read_assembly
    from seamcheck.contour import trace_contour
    from seamcheck.joint import find_joints
    from seamcheck.limits.settings import Settings
    from seamcheck.material.balance import first_rest, section_areas
    from seamcheck.material.track import track_of
    from seamcheck.survey import survey_joint

    settings = Settings().changed({"collapse": collapses[0]})
    joint = find_joints(read_assembly([SAMPLES[name].file]), settings)[0]
    contour = trace_contour(joint, settings)
    rows, formula = [], None
    for collapse in collapses:
        path = survey_joint(joint, contour, settings.changed({"collapse": collapse})).paths[0]
        if formula is None:
            track = track_of(path)
            formula = section_areas(track, first_rest([track]), collapse)
        measured = [path.columns[key] for key in ("melt_area", "trap_area_inner", "trap_area_outer")]
        rows.append((np.array(measured), np.array(formula(collapse))))
    return rows


def test_the_closed_form_gives_what_a_survey_at_another_collapse_measures():
    job = (f"{__name__}:areas", ("flank-draft", (0.4, 0.15, 0.6)))
    for measured, computed in run_isolated(*job, time_limit_s=120.0):
        np.testing.assert_allclose(computed, measured, atol=5e-4)  # mm²


# Three plaques: K and T0 by numpy's own fit of ln T, at 2.4 + 0.28 mm of lid.
PLAQUES = np.polyfit([1, 2, 3], np.log([0.46, 0.335, 0.244]), 1)
CASES = [
    ("transmission", float(100 * np.exp(np.polyval(PLAQUES, 2.68)))),
    # Travel 0.6 less 0.1; gap 0.08, flatness 0.2 and 0.15, and 0.1 of collapse left.
    ("collapse-window", 0.6 - 0.1 - (0.08 + 0.35 + 0.1)),
]


@pytest.mark.parametrize(("name", "value"), CASES)
def test_a_sample_is_within_geometry_and_breaks_its_rule_by_material(name, value):
    sample = SAMPLES[name]
    document = review(sample.file, read_settings(sample.settings)).document
    assert document["verdict"] == "fail"
    (finding,) = document["findings"]
    assert finding["rule"] == sample.rule == name
    assert finding["value"] == pytest.approx(value, abs=2e-3)
    json.dumps(document["joints"][0]["material"], allow_nan=False)
    if name == "transmission":
        assert finding["length_mm"] == pytest.approx(6.0, abs=0.6)
