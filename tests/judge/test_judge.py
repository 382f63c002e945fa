"""Judging on arrays typed here: each rule, where it is broken, and what is said."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st
from limits_surveys import circle, joint, path_survey
from msgspec.structs import replace

from seamcheck.catalogue.rules import RULES
from seamcheck.errors import NotReviewed
from seamcheck.judge.bounds import main_span
from seamcheck.judge.judge import judge
from seamcheck.measure.table import Interruption
from seamcheck.settings.settings import Settings

DEFAULTS = Settings()


def found(*joints, settings=DEFAULTS, **options):
    return judge(list(joints), settings, **options).findings


def test_a_sound_seam_has_no_finding_and_passes():
    result = judge([joint()], DEFAULTS)
    assert result.findings == ()
    assert result.verdict == "pass"


def test_no_joint_or_a_joint_without_stations_is_no_pass():
    empty = joint()
    empty = replace(empty, survey=replace(empty.survey, paths=()))
    for nothing in ([], [empty]):
        with pytest.raises(NotReviewed) as refused:
            judge(nothing, DEFAULTS)
        assert refused.value.code == "no-seam"


# (rule, column, spoiled value, severity, value that holds the limit just so); the numbers are those of the
# table in docs/rules.md, typed again here
CASES = [
    ("rib-width", "rib_width", 0.55, "must-fix", 0.6),
    ("rib-width", "rib_width", 2.05, "attention", 2.0),
    ("rib-width", "rib_width", 2.55, "must-fix", 2.0),
    ("rib-uniformity", "rib_width", 1.05, "attention", 1.08),
    ("rib-uniformity", "rib_width", 1.35, "attention", 1.32),
    ("rib-uniformity", "rib_width", 0.95, "must-fix", 1.08),
    ("rib-uniformity", "rib_width", 1.45, "must-fix", 1.32),
    ("rib-height", "rib_height", 0.55, "must-fix", 0.6),
    ("trap-room", "trap_room", 1.15, "must-fix", 1.2),
    ("clamp-land", "clamp_land", 0.95, "must-fix", 1.0),
    ("cover-thickness", "cover_thickness_min", 0.75, "must-fix", 0.8),
    ("cover-thickness", "cover_thickness_max", 3.1, "must-fix", 3.0),
    ("cover-uniformity", "cover_thickness_min", 1.65, "must-fix", 1.7),
    ("cover-uniformity", "cover_thickness_max", 2.35, "must-fix", 2.3),
    ("contact-gap", "gap_max", 0.15, "attention", 0.1),
    ("contact-gap", "gap_min", -0.15, "attention", -0.1),
    ("contact-gap", "gap_max", 0.25, "must-fix", 0.1),
    ("contact-gap", "gap_min", -0.25, "must-fix", -0.1),
    ("sink-travel", "free_travel", 0.55, "must-fix", 0.6),
    ("beam-path", "beam_clear", 0.9, "must-fix", 1.0),
    ("trap-side", "trap_room_inner", 0.9, "attention", 1.0),
    ("trap-side", "trap_room_outer", 0.9, "attention", 1.0),
    ("trap-corner", "trap_corner_inner", 0.9, "attention", 1.0),
    ("trap-corner", "trap_corner_outer", 0.9, "attention", 1.0),
    ("trap-open-inner", "trap_open_inner", 1.0, "attention", 0.0),
    ("lip-gap", "lip_gap_inner", 0.05, "attention", 0.1),
    ("lip-gap", "lip_gap_outer", 0.35, "attention", 0.3),
    ("slenderness", "slenderness", 1.6, "attention", 1.5),
    ("corner-radius", "corner_radius", 2.9, "attention", 3.0),
    ("support-offset", "support_offset", 0.65, "attention", 0.6),
    ("clamp-tilt", "clamp_tilt", 2.5, "attention", 2.0),
    ("flank-draft", "draft_inner", 0.0, "note", 0.5),
    ("flank-draft", "draft_outer", 3.5, "note", 3.0),
]


@pytest.mark.parametrize(("rule", "column", "bad", "severity", "just"), CASES)
def test_each_rule_is_broken_beyond_its_limit_and_nowhere_else(rule, column, bad, severity, just):
    hits = [f for f in found(circle((column, 30, 34, bad))) if f.rule == rule]
    assert len(hits) == 1
    finding = hits[0]
    assert finding.severity == severity
    assert finding.value == pytest.approx(bad)
    assert finding.from_s == pytest.approx(29.75)
    assert finding.to_s == pytest.approx(34.25)
    assert finding.length_mm == pytest.approx(4.5)
    assert finding.margin == pytest.approx(-abs(finding.value - finding.limit))
    assert finding.quantity in RULES[rule].quantities
    assert finding.joint == "j1"
    assert finding.contour == "c1"
    assert np.hypot(*finding.at[:2]) == pytest.approx(120 / (2 * math.pi))
    assert [f for f in found(circle((column, 30, 34, just))) if f.rule == rule] == []


def test_one_stretch_beyond_both_bounds_is_one_finding_that_says_how_much_of_it_must_change():
    hits = [f for f in found(circle(("rib_width", 30, 40, 2.2), ("rib_width", 34, 36, 2.7))) if f.rule == "rib-width"]
    assert [(f.severity, f.value, f.limit) for f in hits] == [("must-fix", 2.7, 2.5)]
    assert hits[0].length_mm == pytest.approx(10.5)
    assert hits[0].message.endswith("This applies to 2.50 mm of this stretch; the rest is beyond 2.00 mm.")


def test_a_stricter_limit_than_the_attention_bound_is_the_one_that_counts():
    settings = Settings().changed({"rib-width.max": 1.8})
    hits = [f for f in found(circle(("rib_width", 30, 34, 1.9)), settings=settings) if f.rule == "rib-width"]
    assert [(f.severity, f.limit) for f in hits] == [("must-fix", 1.8)]


def test_a_rule_made_milder_is_milder_at_both_bounds():
    settings = Settings().changed({"rib-width.severity": "note"})
    hits = [f for w in (2.2, 2.7) for f in found(circle(("rib_width", 1, 2, w)), settings=settings)]
    assert {f.severity for f in hits if f.rule == "rib-width"} == {"note"}


def test_a_lap_keeps_the_strict_gap():
    settings = Settings(collapse=0.8).changed({"rib-missing.severity": "off"})
    lap = joint(path_survey(changes=[("gap_max", 30, 34, 0.15)]), rib_on="none")
    hits = [f for f in found(lap, settings=settings) if f.rule == "contact-gap"]
    assert [(f.severity, f.limit) for f in hits] == [("must-fix", 0.1)]
    missing = found(lap, settings=Settings(collapse=0.8))
    assert [(f.rule, f.also) for f in missing] == [("rib-missing", ("contact-gap",))]


def test_a_step_of_the_cover_between_two_halves_is_found():
    """2.0 mm on one part, 2.4 mm on the other: a median between them would be within 0.3 mm of both."""
    step = [(f"cover_thickness_{end}", 0, 58, 2.4) for end in ("min", "max")]
    hits = [f for f in found(circle(*step)) if f.rule == "cover-uniformity"]
    assert [(f.value, f.limit) for f in hits] == [(2.4, pytest.approx(2.3))]
    within = [(f"cover_thickness_{end}", 0, 58, 2.3) for end in ("min", "max")]
    assert [f for f in found(circle(*within)) if f.rule == "cover-uniformity"] == []


def test_a_cover_that_grows_thicker_is_uneven_at_its_ends():
    """A taper of 0.5 mm: 0.3 mm of it hold together, the rest is marked on both sides of the middle."""
    path = path_survey(closed=False, length=100.0, n=401)
    for end in ("min", "max"):
        path.columns[f"cover_thickness_{end}"][:] = np.linspace(2.0, 2.5, 401)
    hits = [f for f in found(joint(path)) if f.rule == "cover-uniformity"]
    assert [(f.value, round(f.limit, 2)) for f in hits] == [(2.0, 2.1), (2.5, 2.4)]


def test_the_main_part_of_a_seam():
    least, most, weights = np.array([2.0, 2.0, 2.1, np.nan, 2.6]), np.array([2.1, 2.0, 2.2, 2.0, 2.7]), np.ones(5)
    assert main_span(least, most, weights, 0.3) == (2.0, 2.2)
    assert main_span(least, most, np.array([1, 1, 1, 1, 9.0]), 0.3) == (2.6, 2.7)
    assert main_span(least, most, weights, 1.0) == (2.0, 2.7)
    assert np.isnan(main_span(least, least + 1.0, weights, 0.3)).all()
    assert np.isnan(main_span(np.zeros(0), np.zeros(0), np.zeros(0), 0.3)).all()


@pytest.mark.parametrize(("travel", "rules"), [(0.55, ["rib-height"]), (0.5, ["rib-height", "sink-travel"])])
def test_a_low_rib_and_the_floor_that_stops_the_cover_are_one_finding(travel, rules):
    floor = circle(("rib_height", 30, 34, 0.55), ("free_travel", 30, 34, travel))
    at = floor.survey.paths[0].points[64].tolist()
    far = {"free_travel": {"value": travel, "at": at, "why": ""}}
    hits = found(replace(floor, survey=replace(floor.survey, interface=far)))
    assert [f.rule for f in hits] == rules
    assert hits[0].also == (("sink-travel",) if len(rules) == 1 else ())


def test_a_low_spot_breaks_height_and_gap_as_two_findings():
    rules = [f.rule for f in found(circle(("rib_height", 50, 52, 0.5), ("gap_max", 50, 52, 0.5)))]
    assert sorted(rules) == ["contact-gap", "rib-height"]


def test_the_worst_station_is_shown():
    spoiled = circle(("rib_width", 30, 40, 0.59), ("rib_width", 36, 36, 0.4))
    finding = next(f for f in found(spoiled) if f.rule == "rib-width")
    assert finding.value == 0.4
    assert finding.station == 72  # s = 36 mm at 0.5 mm spacing


def test_of_equally_bad_stations_the_middle_one_is_shown():
    finding = next(f for f in found(circle(("clamp_land", 20, 40, 0.5))) if f.rule == "clamp-land")
    assert finding.station == 60


def test_numbers_in_the_remedy_lead_back_into_the_limit():
    hits = {f.rule: f for f in found(circle(("rib_width", 30, 34, 0.487)))}
    assert hits["rib-width"].remedy == "Widen the rib by 0.12 mm."
    hits = {f.rule: f for f in found(circle(("trap_room", 30, 34, 0.8)))}
    # (1.2 - 0.8) of a melt area of 0.48 mm² are missing; the traps, 1.0 and 1.1 deep, lose 0.4 each: 0.192 / 1.3
    assert "by 0.15 mm at its present depth" in hits["trap-room"].remedy
    # (1.0 - 0.8) of half the melt are missing: 0.048 mm² / 0.6
    hits = {f.rule: f for f in found(circle(("trap_room_inner", 30, 34, 0.8)))}
    assert "Widen the inner flash trap by 0.08 mm at its present depth" in hits["trap-side"].remedy


def test_no_sentence_keeps_a_placeholder():
    joints = [circle((column, 30, 34, bad)) for _, column, bad, _, _ in CASES]
    joints.append(joint(rib_on="none", kind="flat-lap", band_width=6.0))
    for j in joints:
        for finding in found(j):
            for text in (finding.message, finding.remedy, finding.harm):
                assert text
                assert not set("{}[]") & set(text), text
                assert "nan" not in text


def test_slenderness_beyond_two_says_so():
    mild, grave = (found(circle(("slenderness", 1, 2, v)))[0] for v in (1.8, 2.2))
    assert "any case" not in mild.message
    assert "Above 2.00 a change is needed in any case." in grave.message


def test_uniformity_is_against_the_whole_seam_not_one_path():
    wide = path_survey("c1", length=300.0, n=600)
    narrow = path_survey("c2", closed=False, ends=("junction:J1", "junction:J2"), length=40, n=81,
                         changes=[("rib_width", 0, 40, 1.0)])  # fmt: skip
    hits = [f for f in found(joint(wide, narrow)) if f.rule == "rib-uniformity"]
    assert [(f.contour, f.limit) for f in hits] == [("c2", pytest.approx(1.08))]


def test_the_limit_of_height_and_travel_follows_the_collapse():
    settings = Settings(collapse=0.7)
    hits = {f.rule: f for f in found(circle(("rib_height", 1, 2, 0.85)), settings=settings)}
    assert hits["rib-height"].limit == pytest.approx(0.9)
    assert hits["sink-travel"].limit == pytest.approx(0.9)


def test_corner_radius_grows_with_the_rib():
    wide = circle(("rib_width", 0, 120, 1.8), ("corner_radius", 10, 12, 3.5))
    hits = [f for f in found(wide) if f.rule == "corner-radius"]
    assert hits[0].limit == pytest.approx(3.6)


def test_a_sharp_corner_is_a_turn_of_radius_zero():
    hits = found(circle(("corner_radius", 10, 10, "corner"), ("rib_width", 9.5, 10.5, "corner")))
    assert [(f.rule, f.value) for f in hits] == [("corner-radius", 0.0)]


# Not measured


MUST_BE_MEASURED = (
    "rib_width",
    "rib_height",
    "trap_room",
    "clamp_land",
    "cover_thickness_min",
    "gap_max",
    "free_travel",
    "beam_clear",
)


@pytest.mark.parametrize("column", MUST_BE_MEASURED)
def test_what_is_not_measured_is_said_and_never_passes(column):
    result = judge([circle((column, 30, 33, "broken-geometry"))], DEFAULTS)
    assert [(f.rule, f.quantity, f.value) for f in result.findings] == [("not-measured", column, None)]
    assert "do not close to a section" in result.findings[0].message
    assert result.verdict == "attention"


def test_a_column_that_is_missing_altogether_is_not_a_pass():
    survey = joint()
    columns = {k: v for k, v in survey.survey.paths[0].columns.items() if k != "clamp_land"}
    bare = replace(survey.survey.paths[0], columns=columns)
    hits = found(joint(bare))
    assert [(f.rule, f.quantity, f.length_mm) for f in hits] == [("not-measured", "clamp_land", 120.0)]


@pytest.mark.parametrize(("column", "reason"), [("free_travel", "free"), ("corner_radius", "straight"),
                                                ("rib_width", "junction"), ("rib_width", "end"),
                                                ("rib_height_inner", "no-shoulder"),
                                                ("lip_gap_inner", "no-shoulder")])  # fmt: skip
def test_accepted_reasons_pass(column, reason):
    assert found(circle((column, 30, 33, reason))) == ()


def test_several_columns_lost_at_one_place_are_one_finding():
    hits = found(*[circle(*[(c, 30, 33, "broken-geometry") for c in ("rib_width", "rib_height", "gap_min")])])
    assert len(hits) == 1
    for title in ("rib width", "rib height", "smallest gap"):
        assert title in hits[0].message


def test_no_land_at_all_is_a_land_of_nothing():
    hits = found(circle(("clamp_land", 30, 33, "no-land")))
    assert [(f.rule, f.value, f.severity) for f in hits] == [("clamp-land", 0.0, "must-fix")]


def test_a_rounded_top_is_judged_at_half_height():
    ok = circle(("rib_width", 0, 120, "rounded-top"))
    assert found(ok) == ()
    thin = circle(("rib_width", 0, 120, "rounded-top"), ("rib_width_mid", 0, 120, 0.5))
    hits = [f for f in found(thin) if f.rule == "rib-width"]
    assert [(f.value, f.column, f.quantity) for f in hits] == [(0.5, "rib_width_mid", "rib_width")]


def test_a_hole_in_the_cover_is_one_finding():
    hole = [(c, 30, 33, "hole") for c in ("cover_thickness", "cover_thickness_min", "cover_thickness_max")]
    hole += [(c, 30, 33, "no-opposite") for c in ("gap", "gap_min", "gap_max")]
    hits = found(circle(*hole))
    assert [(f.rule, f.severity, f.quantity) for f in hits][:1] == [("cover-hole", "must-fix", "cover_thickness")]
    assert "a hole" in hits[0].message


def test_where_no_cover_is_nothing_else_about_the_cover_is_judged():
    hole = [(c, 30, 33, "hole") for c in ("cover_thickness", "cover_thickness_min", "cover_thickness_max")]
    there = [("clamp_land", 30, 33, 0.0), ("trap_room", 30, 33, 0.0), ("rib_width", 30, 33, 0.5)]
    assert [f.rule for f in found(circle(*hole, *there))] == ["rib-width", "rib-uniformity", "cover-hole"]


def test_a_rib_that_faces_nothing_is_an_interruption_and_no_gap():
    hits = found(circle(*[(c, 30, 33, "no-opposite") for c in ("gap", "gap_min", "gap_max")]))
    assert [(f.rule, f.severity, f.value) for f in hits] == [("seam-open", "must-fix", None)]


# The welded state


def test_a_constant_overlap_by_the_collapse_is_a_note():
    welded = circle(("gap_min", 0, 120, -0.42), ("gap_max", 0, 120, -0.38))
    result = judge([welded], DEFAULTS)
    assert [(f.rule, f.severity) for f in result.findings] == [("drawn-welded", "note")]
    assert result.verdict == "pass"


@pytest.mark.parametrize("overlap", [0.30, 0.50])
def test_another_constant_overlap_is_a_fault(overlap):
    hits = found(circle(("gap_min", 0, 120, -overlap), ("gap_max", 0, 120, -overlap)))
    assert [f.rule for f in hits] == ["contact-gap"]


def test_an_overlap_that_ends_somewhere_is_a_fault():
    hits = found(circle(("gap_min", 0, 100, -0.4), ("gap_max", 0, 100, -0.4)))
    assert [f.rule for f in hits] == ["contact-gap"]


# Open seams and missing ribs


def test_an_interruption_is_one_finding_that_names_the_others():
    gap = Interruption(3.0, np.array([-1.5, 0.0, 0.0]), (("c1", 0), ("c1", -1)))
    near = [("rib_height", 0, 0.4, 0.2), ("rib_width", 99.6, 100, 0.3)]
    path = path_survey(closed=False, length=100.0, n=401, changes=near)
    hits = found(joint(path, interruptions=(gap,)))
    assert [f.rule for f in hits] == ["seam-open"]
    assert hits[0].length_mm == 3.0
    assert hits[0].at == (-1.5, 0.0, 0.0)
    assert hits[0].quantity == "rib_height"
    assert set(hits[0].also) == {"rib-missing", "rib-height", "rib-width", "rib-uniformity"}


def test_a_fault_further_away_is_not_swallowed_by_an_interruption():
    gap = Interruption(3.0, np.array([-1.5, 0.0, 0.0]), (("c1", 0), ("c1", -1)))
    path = path_survey(closed=False, length=100.0, n=401, changes=[("rib_height", 5, 6, 0.2)])
    assert [f.rule for f in found(joint(path, interruptions=(gap,)))] == ["seam-open", "rib-height"]


def test_a_graver_fault_is_not_merged_into_an_open_seam_that_counts_less():
    settings = Settings().changed({"seam-open.severity": "note"})
    path = path_survey(closed=False, length=100.0, n=401, changes=[("rib_height", 0, 0.4, 0.2)])
    hits = found(joint(path), settings=settings)
    assert sorted(f.rule for f in hits) == ["rib-height", "seam-open", "seam-open"]


def test_both_open_ends_are_found():
    hits = found(joint(path_survey(closed=False, length=100.0)))
    assert [f.rule for f in hits] == ["seam-open", "seam-open"]
    assert sorted(f.at[0] for f in hits) == [0.0, 100.0]


def test_an_open_wall_is_told_of_as_a_wall():
    hits = found(joint(path_survey(closed=False, length=100.0), kind="plain-wall"))
    assert {f.message for f in hits if f.rule == "seam-open"} == {"The wall that is welded ends here."}
    assert not any("rib-missing" in f.also for f in hits)


def test_ends_at_junctions_are_not_open_and_the_junction_is_a_note():
    path = path_survey(closed=False, length=100.0, ends=("junction:J1", "junction:J2"))
    places = {"J1": np.zeros(3), "J2": np.array([100.0, 0, 0])}
    hits = found(joint(path, junctions=places))
    assert [(f.rule, f.severity) for f in hits] == [("seam-junction", "note")]
    assert {hits[0].at[0], *(place.at[0] for place in hits[0].places)} == {0.0, 100.0}


def test_a_missing_stretch_within_a_path_is_an_open_seam():
    lost = [(c, 40, 44, "no-rib") for c in ("rib_width", "rib_height", "trap_room", "gap_min", "gap_max")]
    hits = found(circle(*lost))
    assert [(f.rule, f.length_mm) for f in hits] == [("seam-open", pytest.approx(4.5))]
    assert "rib-missing" in hits[0].also


def test_a_lap_has_one_finding_that_says_what_it_is_and_whether_a_rib_has_room():
    nothing = [(c, 0, 120, "no-rib") for c in ("rib_width", "rib_height", "trap_room")]
    path = path_survey(changes=[*nothing, ("cover_thickness_max", 10, 14, 5.0), ("corner_radius", 0, 9, 1.0)])
    lap = joint(path, rib_on="none", kind="stepped-lap", band_width=1.5, step=1.0)
    (hit,) = found(lap)
    assert (hit.rule, hit.quantity, hit.severity) == ("rib-missing", "rib", "must-fix")
    assert "1.50 mm wide" in hit.message
    assert "1.00 mm high" in hit.message
    # by hand: 1.2 x 1.0 x 0.4 / 2 over 0.6 makes a trap of 0.40 on each side of a rib of 1.0, so 1.80 in all
    assert "widen the band by 0.30 mm" in hit.remedy
    (roomy,) = found(replace(lap, band_width=2.4))
    assert "a flash trap of 0.70 mm on each side" in roomy.remedy
    accepted = Settings().changed({"rib-missing.severity": "off"})
    assert [f.rule for f in found(lap, settings=accepted)] == ["cover-thickness", "cover-uniformity"]


def test_a_plain_wall_is_not_judged_by_the_shoulders_of_a_rib():
    low = [("rib_height", 0, 120, 0.1), ("slenderness", 0, 120, 9.0), ("trap_room", 0, 120, 0.1)]
    wall = joint(path_survey(changes=[*low, ("rib_width", 30, 34, 0.5)]), kind="plain-wall")
    assert {f.rule for f in found(wall)} == {"rib-width", "rib-uniformity", "traps-missing"}


def test_a_joint_that_was_left_out_is_no_pass():
    result = judge([joint(left_out=("'lid' (p3) on 'case' (p1) may be another joint and was not reviewed",))], DEFAULTS)
    assert [f.rule for f in result.findings] == ["joint-left-out"]
    assert result.verdict == "attention"


# The whole interface


def test_a_place_where_the_cover_meets_something_is_found():
    far = {"free_travel": {"value": 0.2, "at": [3.0, 4.0, 5.0], "why": ""}}
    hits = found(joint(interface=far))
    assert [(f.rule, f.contour, f.at, f.value) for f in hits] == [("sink-travel", None, (3.0, 4.0, 5.0), 0.2)]


def test_a_place_that_a_section_reports_already_is_not_said_twice():
    path = path_survey(changes=[("free_travel", 10, 12, 0.2)])
    at = path.points[22].tolist()
    far = {"free_travel": {"value": 0.2, "at": at, "why": ""}}
    assert [f.contour for f in found(joint(path, interface=far))] == ["c1"]


# Names that stay


def test_names_do_not_depend_on_start_order_or_joint_number():
    spoil = [("clamp_land", 30, 34, 0.5), ("rib_width", 80, 83, 0.5)]
    names = {"p1": "case", "p2": "lid"}
    first = found(joint(path_survey(changes=spoil)), part_names=names)
    turned = found(
        joint(path_survey(changes=spoil, start=77.0), cover=("p9",), base=("p4",), joint_id="j3"),
        part_names={"p4": "case", "p9": "lid"},
    )
    assert {f.id for f in first} == {f.id for f in turned}
    assert len({f.id for f in first}) == len(first)


def test_a_small_edit_keeps_the_name():
    before = found(circle(("clamp_land", 30, 34, 0.5)))
    after = found(circle(("clamp_land", 30, 34.5, 0.43), ("cover_thickness_max", 70, 72, 3.4)))
    assert before[0].id in {f.id for f in after}


def test_two_findings_in_one_cell_have_two_names():
    hits = found(circle(("gap_max", 30, 30.4, 0.3), ("gap_max", 32, 32.4, 0.3)))
    assert len(hits) == 2
    assert len({f.id for f in hits}) == 2


def test_a_fault_along_the_whole_seam_keeps_its_name_wherever_it_is_worst():
    one = found(circle(("clamp_land", 0, 120, 0.5), ("clamp_land", 10, 10, 0.4)))
    other = found(circle(("clamp_land", 0, 120, 0.5), ("clamp_land", 90, 90, 0.4)))
    assert [f.id for f in one] == [f.id for f in other]


# Severities


def test_a_rule_that_is_off_is_not_judged():
    settings = Settings().changed({"clamp-land.severity": "off"})
    assert found(circle(("clamp_land", 30, 34, 0.5)), settings=settings) == ()


def test_a_severity_can_be_changed():
    settings = Settings().changed({"corner-radius.severity": "must-fix"})
    result = judge([circle(("corner_radius", 30, 34, 1.0))], settings)
    assert result.verdict == "fail"


@hypothesis_settings(max_examples=40, deadline=None)
@given(
    st.integers(0, 239),
    st.integers(1, 80),
    st.sampled_from([c for c in CASES if c[0] not in ("rib-uniformity", "cover-uniformity")]),
    st.integers(0, 239),
)
def test_a_seeded_fault_is_found_where_it_is_wherever_the_path_starts(begin, count, case, turn):
    rule, column, bad, _, _ = case
    where = (begin + np.arange(count)) % 240
    path = path_survey(start=turn * 0.5)
    true = np.round(((path.s + turn * 0.5) % 120.0) / 0.5).astype(int) % 240
    path.columns[column][np.isin(true, where)] = bad
    hits = [f for f in found(joint(path)) if f.rule == rule]
    assert len(hits) == 1
    assert hits[0].length_mm == pytest.approx(count * 0.5)
    assert true[hits[0].station] in where


@pytest.mark.parametrize(("narrow", "rules"), [("inner", ["trap-side"]), ("outer", ["trap-side", "trap-corner"])])
def test_a_trap_too_small_on_its_own_is_said_once_in_the_turn(narrow, rules):
    """The turn takes room of the inner trap; that trap, or the one on the other side, is too small by itself."""
    hits = found(circle((f"trap_room_{narrow}", 30, 40, 0.8), ("trap_corner_inner", 32, 36, 0.7)))
    assert [f.rule for f in hits] == rules
    assert hits[0].also == (("trap-corner",) if narrow == "inner" else ())


def test_a_ledge_beside_its_wall_is_said_once():
    changes = (("support_depth", 0, 120, 2.0), ("overhang", 30, 40, 3.0))
    alone = found(circle_with(*changes))
    assert [f.rule for f in alone] == ["overhang"]
    assert alone[0].limit == 2.0
    both = found(circle_with(*changes, ("support_offset", 28, 42, 0.9)))
    assert [(f.rule, f.also) for f in both] == [("support-offset", ("overhang",))]


def circle_with(*changes):
    """A circle with columns that only the whole interface adds."""
    path = circle().survey.paths[0]
    zeros = {key: np.zeros(len(path.s)) for key in ("overhang", "support_depth", "root_to_plate")}
    columns = {**{key: values.copy() for key, values in path.columns.items()}, **zeros}
    for key, low, high, value in changes:
        columns[key][(path.s >= low) & (path.s <= high)] = value
    empty = {key: np.full(len(path.s), "") for key in zeros}
    return joint(replace(path, columns=columns, reasons={**path.reasons, **empty}))


def test_a_root_that_is_thick_for_its_plate_is_a_note():
    hits = found(circle_with(("root_to_plate", 30, 34, 0.8)))
    assert [(f.rule, f.severity, f.value, f.limit) for f in hits] == [("sink-mark", "note", 0.8, 0.7)]
    assert "to 1.78 mm" in hits[0].remedy  # root 1.24 mm / 0.7, rounded up
    assert not found(circle_with(("root_to_plate", 30, 34, 0.7)))


def test_a_stop_that_is_never_met_is_missing():
    path = path_survey(changes=[("free_travel", 0, 120, "free")])
    free = {"value": None, "at": None, "why": "free"}
    interface = {"free_travel": free, "stop_difference": free, "stop_collapse": {"value": 0.0, "at": None, "why": ""}}
    hits = found(joint(path, interface=interface), settings=replace(DEFAULTS, intended_stop=0.4))
    assert [f.rule for f in hits] == ["intended-stop"]
    assert "is missing" in hits[0].message


@pytest.mark.parametrize(
    ("key", "bad", "rule", "severity", "just"),
    [
        ("guide_play", 0.03, "guide-play", "attention", 0.05),
        ("guide_depth", -0.15, "guide-depth", "attention", 0.0),
        ("guide_draft", 0.3, "guide-draft", "note", 0.5),
        ("second_collapse", 0.25, "second-collapse", "attention", 0.3),
    ],
)
def test_values_of_guides_and_of_a_second_melting(key, bad, rule, severity, just):
    def hits(value, settings=DEFAULTS):
        entry = {"value": value, "at": [0.0, 0.0, 0.0], "why": ""}
        return [f for f in found(joint(path_survey(), interface={key: entry}), settings=settings) if f.rule == rule]

    planned = replace(DEFAULTS, second_collapse=0.2)
    assert [(f.severity, f.value) for f in hits(bad, planned)] == [(severity, bad)]
    assert hits(just, planned) == []
    assert hits(None, planned) == []
    assert len(hits(bad)) == (rule != "second-collapse")  # judged only where one is planned


def test_flanks_that_wedge_where_the_travel_ends_are_told_once():
    faces = [{"part": "p1", "face": 3}, {"part": "p2", "face": 5}]
    travel = {"value": 0.2, "at": [9.0, 0.0, 0.0], "why": "There 'lid' meets 'box'.", "faces": faces}
    play = {"value": -0.02, "at": [9.0, 0.0, 0.0], "why": "", "faces": faces}
    survey = {"free_travel": {**travel, "places": [travel]}, "guide_play": play}
    hits = found(joint(path_survey(), interface=survey))
    assert [(f.rule, f.also) for f in hits] == [("sink-travel", ("guide-play",))]
    elsewhere = {**play, "faces": [{"part": "p1", "face": 4}, faces[1]]}
    hits = found(joint(path_survey(), interface={**survey, "guide_play": elsewhere}))
    assert sorted(f.rule for f in hits) == ["guide-play", "sink-travel"]


def test_each_place_of_the_interface_is_a_finding_of_its_own():
    """Two parts near the seam and one far enough; two stretches without land for the clamp."""
    near = [{"value": v, "at": [v, 0.0, 0.0], "why": f"'part {v}' stands there."} for v in (2.0, 4.0, 6.0)]
    bare = [{"value": 0.9, "at": [0.0, y, 0.0], "why": f"Here {y} mm of it have none."} for y in (8.0, 3.0)]
    interface = {
        "free_travel": {"value": 0.6, "at": None, "why": ""},
        "neighbour_distance": {**near[0], "places": near},
        "clamp_share": {**bare[0], "places": bare},
    }
    hits = found(joint(interface=interface))
    assert [f.rule for f in hits] == ["clamp-reach", "clamp-reach", "near-parts", "near-parts"]
    assert {f.at for f in hits} == {(0.0, 8.0, 0.0), (0.0, 3.0, 0.0), (2.0, 0.0, 0.0), (4.0, 0.0, 0.0)}
    assert len({f.id for f in hits}) == 4
    assert min(f.message for f in hits if f.rule == "near-parts") == (
        "Another part is 2.00 mm from the seam; it should be at least 5.00 mm. 'part 2.0' stands there."
    )
