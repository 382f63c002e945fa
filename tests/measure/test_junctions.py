"""What is measured where seams meet, against volumes of the drawn plan added up by shapely."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from builder.ops import box, cut, fuse
from builder.pair import draw
from builder.spec import Spec
from builder.track import rounded_rectangle
from builder.variants import divided
from measuring import measure, settings

from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.measure.junctions import junction_values

COLLAPSE, REACH = 0.4, 2.0  # mm; rib widths
SPEC = Spec(track=rounded_rectangle(60, 40, 6), draft_inner=0.0, draft_outer=0.0)


def pair(base_change=lambda base: base):
    cover, base = draw(SPEC)
    found = measure([("cover", cover), ("base", base_change(divided(SPEC, base, 0.0, 20.0)))], station_spacing=2.0)
    return found.joint, junction_values(found.joint, found.contour, found.survey, COLLAPSE).onto(found.survey)


def room_of_the_plan() -> float:
    """Volume beside the rib over what melts, within REACH of the T at (0, 20): upright prisms over the drawn plan."""
    disc = shapely.Point(0, 20).buffer(REACH * SPEC.rib_width, quad_segs=64)

    def along(inner: float, outer: float, end: float) -> shapely.Geometry:
        return shapely.box(-9, 20 - inner, 9, 20 + outer).union(shapely.box(-inner, 9, inner, 20 - end))

    half, face = SPEC.rib_width / 2, SPEC.wall_face("inner")
    rib = along(half, half, 0.0)
    traps = along(SPEC.trap_end("inner"), SPEC.trap_end("outer"), face)  # the seam's inner lip runs on between them
    lips = along(face, SPEC.wall_face("outer"), 0.0)
    melt = rib.intersection(disc).area * COLLAPSE
    room = traps.difference(rib).intersection(disc).area * (SPEC.rib_height - COLLAPSE)
    over_lips = lips.difference(traps).difference(rib).intersection(disc).area * max(
        SPEC.lip_depth("inner") - COLLAPSE, 0.0
    )
    return (room + over_lips) / melt


def findings(joint, survey):
    told = judge([JointResult(**joint.facts(), survey=survey)], settings()).findings
    return sorted((f for f in told if f.rule == "seam-junction"), key=lambda f: f.severity)


def test_room_at_a_sound_junction_is_that_of_the_plan():
    joint, survey = pair()
    values = survey.interface["junction_room"]["places"]
    assert [v["value"] for v in values] == pytest.approx([room_of_the_plan()] * 2, rel=0.02)
    assert survey.interface["junction_gap"]["value"] == pytest.approx(0.0, abs=1e-6)
    (told,) = findings(joint, survey)
    assert told.severity == "note"
    assert len(told.places) == 1  # the other junction


def test_a_junction_that_stays_apart_is_one_finding_there():
    bad, other = findings(*pair(lambda base: cut(base, box((-0.9, 19.2, -0.3), (0.9, 20.8, 1.0)))))
    assert (bad.severity, other.severity) == ("attention", "note")
    assert bad.value == pytest.approx(0.3, abs=1e-3)
    np.testing.assert_allclose(bad.at, (0.0, 20.0, -0.3), atol=0.05)


@pytest.mark.thorough
def test_a_junction_without_room_is_one_finding_there():
    pads = [box((x, 17.4, -2.0), (x + 2.6, 19.6, -0.5)) for x in (-3.0, 0.4)]  # 0.1 mm left over them
    bad, other = findings(*pair(lambda base: fuse(fuse(base, pads[0]), pads[1])))
    assert (bad.severity, other.severity) == ("attention", "note")
    assert bad.value < 1.2
    assert "flash traps hold" in bad.message
