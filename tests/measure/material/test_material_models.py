"""Drawn models: the closed-form section against surveys at other collapses; the two material samples."""

import json

import numpy as np
import pytest
from telling import telling

from seamcheck.catalogue.rules import RULES
from seamcheck.isolation import run_isolated
from seamcheck.pipeline import review
from seamcheck.samples import samples
from seamcheck.settings.file import read_settings

SAMPLES = {sample.name: sample for sample in samples()}


def areas(name, collapses):
    """Surveyed melt and trap areas at each collapse, and the closed form of the first one at all of them."""
    from seamcheck.assembly import read_assembly
    from seamcheck.contour import trace_contour
    from seamcheck.joint import find_joints
    from seamcheck.measure import survey_joint
    from seamcheck.measure.material.balance import sections
    from seamcheck.measure.material.melt import closed_form
    from seamcheck.measure.material.track import track_of
    from seamcheck.settings.settings import Settings

    settings = Settings().changed({"collapse": collapses[0]})
    joint = find_joints(read_assembly([SAMPLES[name].file]), settings)[0]
    contour = trace_contour(joint)
    rows, formula = [], None
    for collapse in collapses:
        path = survey_joint(joint, contour, settings.changed({"collapse": collapse})).paths[0]
        if formula is None:
            track = track_of(path)
            formula = closed_form(*sections(track, float(np.nanmin(path.columns["gap_min"])), collapse))
        measured = [path.columns[key] for key in ("melt_area", "trap_area_inner", "trap_area_outer")]
        rows.append((np.array(measured), np.array(formula(collapse))))
    return rows


def test_the_closed_form_gives_what_a_survey_at_another_collapse_measures():
    job = (f"{__name__}:areas", ("flank-draft", (0.4, 0.15, 0.6)))
    for measured, computed in run_isolated(*job, time_limit_s=120.0):
        np.testing.assert_allclose(computed, measured, atol=5e-4)  # mm²


def exact_areas(file, collapses):
    """Areas that a survey at the first collapse gives at all of them, and what surveys at each of them measure."""
    from seamcheck.assembly import read_assembly
    from seamcheck.contour import trace_contour
    from seamcheck.joint import find_joints
    from seamcheck.measure import survey_joint
    from seamcheck.settings.settings import Settings

    settings = Settings().changed({"collapse": collapses[0]})
    joint = find_joints(read_assembly([file]), settings)[0]
    contour = trace_contour(joint)
    areas_at, rows = None, []
    for collapse in collapses:
        path = survey_joint(joint, contour, settings.changed({"collapse": collapse})).paths[0]
        areas_at = areas_at or path.areas_at
        keys = ("melt_area", "trap_area_inner", "trap_area_outer")
        rows.append((areas_at(collapse), [path.columns[key] for key in keys], path.s))
    return rows


@pytest.fixture(scope="module")
def filleted(tmp_path_factory):
    """A housing with fillets at the root of its rib, which a plain section does not have."""
    from builder import Spec, assemble, draw

    spec = Spec(root_fillet=0.4, top_fillet=0.15, draft_inner=2.0)
    file = tmp_path_factory.mktemp("model") / "filleted.step"
    assemble(spec, *draw(spec)).write(file)
    return file


@pytest.mark.thorough
def test_areas_at_another_collapse_are_those_of_a_survey_at_it(filleted):
    for found, measured, _ in run_isolated(f"{__name__}:exact_areas", (filleted, (0.4, 0.1, 0.65)), time_limit_s=120.0):
        np.testing.assert_allclose(found, measured, atol=1e-9)


@pytest.mark.thorough
def test_areas_at_another_collapse_have_the_closed_form():
    # Sharp-edged section of the sample's drawing: rib 1.2 wide, 0.9 high, traps 1.4 wide at the floor, flanks drafted
    # by 1 degree. Melt: w c + c^2 tan; trap under the cover: b (h - c) + (h - c)^2 tan / 2.
    w, h, b, tan = 1.2, 0.9, 1.4, np.tan(np.radians(1.0))
    rows = run_isolated(f"{__name__}:exact_areas", (SAMPLES["clamp-land"].file, (0.4, 0.2, 0.55)), time_limit_s=120.0)
    for (found, _, _), c in zip(rows, (0.4, 0.2, 0.55), strict=True):
        trap = b * (h - c) + (h - c) ** 2 * tan / 2
        np.testing.assert_allclose(np.nanmedian(found, axis=1), [w * c + c**2 * tan, trap, trap], atol=1e-3)


# Three plaques: K and T0 by numpy's own fit of ln T, at 2.4 + 0.28 mm of lid.
PLAQUES = np.polyfit([1, 2, 3], np.log([0.46, 0.335, 0.244]), 1)
CASES = [
    ("transmission", float(100 * np.exp(np.polyval(PLAQUES, 2.68)))),
    # Travel 0.6 less 0.2; gap 0.08, flatness 0.2 and 0.15, and 0.1 of collapse left.
    ("collapse-window", 0.6 - 0.2 - (0.08 + 0.35 + 0.1)),
]


@pytest.mark.parametrize(("name", "value"), telling(CASES, CASES[1:], several=True))
def test_a_sample_is_within_geometry_and_breaks_its_rule_by_material(name, value):
    sample = SAMPLES[name]
    document = review(sample.file, read_settings(sample.settings)).document
    assert document["verdict"] == {"must-fix": "fail"}.get(RULES[name].severity, "attention")
    (finding,) = document["findings"]
    assert finding["rule"] == sample.rule == name
    assert finding["value"] == pytest.approx(value, abs=2e-3)
    json.dumps(document["joints"][0]["material"], allow_nan=False)
    if name == "transmission":
        assert finding["length_mm"] == pytest.approx(6.0, abs=0.6)
