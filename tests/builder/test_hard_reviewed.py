"""The whole way from file to document on every hard model, against its closed-form truth.

A telling few run in the quick suite, all of them in the thorough one.
"""

from __future__ import annotations

import pytest

from builder.hard import HARD, write_model
from builder.hard.compare import differences
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

QUICK = {
    "recessed-turned",
    "rib-on-cover-circle",
    "shaded-by-a-frame",
    "one-cover-on-two-bases",
    "tight-corners",
    "dividing-wall",
    "interrupted-three-times",
    "flat-on-flat",
    "cover-in-two-pieces",
    "blind-hole",
    "mitred-with-lips",
    "light-from-either-side",
}

FROM_THE_RIB = Settings().changed({"beam-margin": 0.0})
"""The land of the truth begins at the edge of the rib's top."""

KNOWN: dict[str, str] = {}
"""Faults that are known and open: the test fails when one of them is gone, so that it leaves this list."""


def _marks(name: str) -> list[pytest.MarkDecorator]:
    marks = [] if name in QUICK else [pytest.mark.thorough]
    if name in KNOWN:
        marks.append(pytest.mark.xfail(reason=KNOWN[name], strict=True))
    return marks


@pytest.mark.parametrize("name", [pytest.param(name, marks=_marks(name)) for name in HARD])
def test_the_document_says_what_is_true(name, tmp_path):
    model = HARD[name]()
    path = write_model(tmp_path / f"{name}.step", model)
    assert differences(review_model([path], FROM_THE_RIB), model) == []


def test_the_comparison_sees_what_is_wrong(tmp_path):
    """One number or one finding changed in a right document, and it is not right any more."""
    model = HARD["interrupted-three-times"]()
    document = review_model([write_model(tmp_path / "m.step", model)], FROM_THE_RIB)
    contour = document["joints"][0]["contours"][0]
    middle = len(contour["stations"]["s"]) // 2
    for key in ("rib_width", "gap", "melt_area", "x", "clamp_land"):
        kept = contour["stations"][key][middle]
        contour["stations"][key][middle] = kept + 0.05
        assert differences(document, model), key
        contour["stations"][key][middle] = None if key != "x" else kept
        assert bool(differences(document, model)) is (key != "x"), key
        contour["stations"][key][middle] = kept
    kept = document["findings"].copy()
    document["findings"] = [f for f in kept if f["rule"] != "seam-open"]
    assert differences(document, model)
    document["findings"] = [*kept, {**kept[0], "rule": "rib-width", "severity": "must-fix"}]
    assert differences(document, model)
    document["findings"] = kept
    assert differences(document, model) == []
