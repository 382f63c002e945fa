"""Waivers: which findings they cover, when they end, and that none is lost silently."""

from datetime import date

import numpy as np
from limits_surveys import circle, joint, path_survey
from msgspec.structs import replace

from seamcheck.judge.judge import judge
from seamcheck.measure.table import Interruption
from seamcheck.settings.settings import Settings
from seamcheck.settings.waivers import Waiver

TODAY = date(2030, 6, 15)
SPOILED = circle(("clamp_land", 30, 34, 0.5))
PLACE = next(f.at for f in judge([SPOILED], Settings()).findings)


def judged(*waivers, joints=(SPOILED,), today=TODAY):
    return judge(list(joints), replace(Settings(), waivers=waivers, today=today))


def waiver(**more):
    return Waiver(**{"rule": "clamp-land", "reason": "trial welds are tight", **more})


def test_a_place_that_holds_the_whole_finding_waives_it():
    result = judged(waiver(at=PLACE, radius=3.0))
    assert [f.waived.reason for f in result.findings] == ["trial welds are tight"]
    assert result.verdict == "pass"
    assert result.waivers[0]["state"] == "used"
    assert result.waivers[0]["findings"] == [result.findings[0].id]


def test_a_finding_that_grows_beyond_the_place_comes_back():
    result = judged(waiver(at=PLACE, radius=1.5))
    assert result.findings[0].waived is None
    assert result.verdict == "fail"
    assert result.waivers[0]["state"] == "unused"
    assert result.waivers[0]["partly"] == [result.findings[0].id]


def test_another_place_or_rule_waives_nothing_and_is_reported():
    far = judged(waiver(at=(500.0, 0.0, 0.0), radius=3.0))
    other = judged(waiver(rule="rib-width", at=PLACE, radius=3.0))
    for result in (far, other):
        assert result.findings[0].waived is None
        assert result.waivers[0] | {"partly": []} == result.waivers[0]
        assert result.waivers[0]["state"] == "unused"


def test_a_stretch_that_holds_the_finding_waives_it():
    assert judged(waiver(contour="c1", from_s=29.0, to_s=35.0)).findings[0].waived
    assert judged(waiver(contour="c1")).findings[0].waived
    assert not judged(waiver(contour="c1", from_s=31.0, to_s=35.0)).findings[0].waived
    assert not judged(waiver(contour="c2")).findings[0].waived


def test_a_stretch_may_pass_the_start():
    over = circle(("clamp_land", 118, 120, 0.5), ("clamp_land", 0, 2, 0.5))
    assert judged(waiver(contour="c1", from_s=117.0, to_s=3.0), joints=[over]).findings[0].waived
    assert not judged(waiver(contour="c1", from_s=119.0, to_s=3.0), joints=[over]).findings[0].waived


def test_the_whole_seam_needs_a_waiver_of_the_whole_contour():
    all_of_it = circle(("clamp_land", 0, 120, 0.5))
    assert not judged(waiver(contour="c1", from_s=0.0, to_s=60.0), joints=[all_of_it]).findings[0].waived
    assert judged(waiver(contour="c1"), joints=[all_of_it]).findings[0].waived


def test_the_last_day_still_counts_and_the_next_one_does_not():
    on_the_day = judged(waiver(at=PLACE, radius=3.0, until=TODAY))
    after = judged(waiver(at=PLACE, radius=3.0, until=date(2030, 6, 14)))
    assert on_the_day.findings[0].waived.until == "2030-06-15"
    assert after.findings[0].waived is None
    assert (after.waivers[0]["state"], after.verdict) == ("expired", "fail")


def test_a_joint_can_be_named():
    assert judged(waiver(contour="c1", joint="j1")).findings[0].waived
    assert not judged(waiver(contour="c1", joint="j2")).findings[0].waived


def test_an_open_end_can_be_waived_by_its_place():
    gap = Interruption(3.0, np.array([-1.5, 0.0, 0.0]), (("c1", 0), ("c1", -1)))
    broken = joint(path_survey(closed=False, length=100.0), interruptions=(gap,))
    result = judged(waiver(rule="seam-open", at=(-1.5, 0.0, 0.0), radius=2.0), joints=[broken])
    assert [bool(f.waived) for f in result.findings] == [True]


def test_of_two_waivers_an_expired_one_does_not_hide_the_other():
    old = waiver(at=PLACE, radius=3.0, until=date(2020, 1, 1), reason="old")
    new = waiver(contour="c1", reason="new")
    assert judged(old, new).findings[0].waived.reason == "new"
