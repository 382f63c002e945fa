"""Published examples: a sound one holds the default limits, a known-bad one breaks them.

Sound: a public design guideline for laser transmission welding of plastics calls ribs of 2 mm typical, plans 0.2 to
1.0 mm of collapse, has covers of up to about 3 mm (semi-crystalline), and grooves twice as high as the collapse. Gaps:
contour-welded laps of PC, PA6 and PA6-GF30 were bridged up to 0.20, 0.40 and 0.25 mm and no further (Polym. Eng. Sci.
2011, doi 10.1002/pen.21943), by the expansion of the melt alone; a rib closes them by its collapse.
"""

import pytest
from limits_surveys import joint, path_survey

from seamcheck.judge.judge import judge
from seamcheck.settings.settings import Settings


def severities(collapse, **columns):
    changes = tuple((key, 0.0, 120.0, value) for key, value in columns.items())
    travel = {"free_travel": {"value": columns.get("free_travel", 1.2), "at": [0.0, 0.0, 0.0], "why": ""}}
    seam = joint(path_survey(changes=changes), interface=travel)
    return {finding.rule: finding.severity for finding in judge([seam], Settings(collapse=collapse)).findings}


@pytest.mark.parametrize("collapse", [0.2, 0.4, 1.0])
def test_a_joint_of_the_guideline_holds_the_limits(collapse):
    height = 2 * collapse
    width = dict.fromkeys(("rib_width", "rib_width_top", "rib_width_mid", "rib_width_root"), 2.0)
    thick = dict.fromkeys(("cover_thickness", "cover_thickness_min", "cover_thickness_max"), 3.0)
    rib = dict.fromkeys(("rib_height", "rib_height_inner", "rib_height_outer"), height)
    found = severities(collapse, free_travel=height, slenderness=height / 2.0, **width, **thick, **rib)
    assert found == {}


@pytest.mark.parametrize(
    ("gap", "collapse", "severity"),
    [(0.20, 0.4, "attention"), (0.25, 0.5, "attention"), (0.40, 0.8, "attention"), (0.42, 0.4, "must-fix")],
    ids=["PC bridged", "PA6-GF30 bridged", "PA6 bridged", "more than any was bridged"],
)
def test_gaps_that_were_bridged_are_not_forbidden_and_wider_ones_are(gap, collapse, severity):
    assert severities(collapse, gap=gap / 2, gap_max=gap, rib_height=1.2, free_travel=1.2)["contact-gap"] == severity


def test_what_the_guideline_calls_too_much_breaks_the_limits():
    """Grooves no higher than the collapse hold no flash and stop the cover; a semi-crystalline cover of twice 3 mm."""
    assert severities(0.4, rib_height=0.4, rib_height_inner=0.4, free_travel=0.4)["rib-height"] == "must-fix"
    assert severities(0.4, rib_height=0.4, free_travel=0.4)["sink-travel"] == "must-fix"
    assert severities(0.4, cover_thickness=6.0, cover_thickness_max=6.0)["cover-thickness"] == "must-fix"
