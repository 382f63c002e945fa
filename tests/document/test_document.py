"""The review document: shape, schema, sameness, and what it says about what was not measured."""

import json

import jsonschema
import numpy as np
import pytest
from limits_surveys import circle, joint, path_survey

import seamcheck.document.schema as schema_module
from seamcheck.assembly.parts import Assembly, Entity, ModelFile, Part
from seamcheck.catalogue.quantities import MEASURED
from seamcheck.document.make import make_document, not_reviewed_document, schema
from seamcheck.document.plain import number, numbers, to_json
from seamcheck.document.view import SectionSet, pack_view
from seamcheck.errors import REASONS, NotReviewed, UsageError
from seamcheck.judge.judge import judge
from seamcheck.report.review import Review
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

FILE = ModelFile("station.step", "ab" * 32, "AP214", "mm")


def assembly(names=("case", "lid")):
    parts = []
    for i, name in enumerate(names, 1):
        entities = (None, None, None, Entity(120 + i, 40), None, Entity(220 + i, 90), None, None)
        parts.append(Part(f"p{i}", name, ("station", name), "solid", None, 1, 8, entities=entities))
    return Assembly((FILE,), tuple(parts))


def document(*joints, settings=None, **more):
    settings = settings or Settings()
    joints = list(joints) or [joint()]
    names = {part.id: part.name for part in assembly().parts}
    return make_document(assembly(), joints, judge(joints, settings, names), settings, **more)


def sentences(messages):
    return [said["text"] for said in messages]


def section_of(contour):
    """One segment in the section of a contour's first station."""
    return SectionSet("j1", contour, np.array([0]), np.array([0, 1]), np.zeros((1, 4)), np.zeros(1), np.zeros(1))


def check(doc):
    jsonschema.Draft202012Validator(schema()).validate(json.loads(to_json(doc)))


SPOILED = [
    circle(("rib_width", 30, 34, 0.5)),
    circle(("rib_width", 110, 120, 0.5), ("rib_width", 0, 5, 0.5)),
    circle(("clamp_land", 30, 34, "broken-geometry")),
    circle(("gap_max", 30, 34, "no-opposite")),
    joint(path_survey(closed=False, length=50.0)),
    joint(rib_on="none"),
    joint(interface={"free_travel": {"value": 0.1, "at": [1.0, 2.0, 3.0], "why": ""}}),
    joint(interface={}),
    joint(
        path_survey(closed=False, ends=("junction:J1", "junction:J2")), junctions={"J1": np.zeros(3), "J2": np.ones(3)}
    ),
]


def test_the_shipped_schema_is_the_one_made_from_the_declarations():
    assert schema() == schema_module.make_schema()
    jsonschema.Draft202012Validator.check_schema(schema())


@pytest.mark.parametrize("spoiled", SPOILED, ids=range(len(SPOILED)))
def test_every_document_holds_the_schema(spoiled):
    doc = document(spoiled)
    check(doc)


@pytest.mark.parametrize("code", REASONS)
def test_a_model_that_was_not_reviewed_has_a_document_with_its_reason(code):
    doc = not_reviewed_document([FILE], NotReviewed(code, "Because."), Settings())
    check(doc)
    assert doc["verdict"] == "not-reviewed"
    assert doc["reason"] == {"code": code, "message": "Because.", "key": code, "args": {}}
    assert Review(doc).exit_code == 2


def test_the_schema_refuses_what_is_not_a_review():
    validator = jsonschema.Draft202012Validator(schema())
    doc = json.loads(to_json(document(SPOILED[0])))
    for spoil in (
        lambda d: d.pop("verdict"),
        lambda d: d.update(verdict="fine"),
        lambda d: d["findings"][0].update(severity="off"),
        lambda d: d["findings"][0].pop("at"),
        lambda d: d["joints"][0]["contours"][0]["stations"]["rib_width"].append("wide"),
        lambda d: d.update(reason={"code": "empty", "message": ""}),
        lambda d: d.update(extra=1),
    ):
        wrong = json.loads(json.dumps(doc))
        spoil(wrong)
        assert not validator.is_valid(wrong)


def test_the_same_review_gives_the_same_bytes():
    one, other = (to_json(document(SPOILED[0], settings=Settings(collapse=0.35))) for _ in range(2))
    assert one == other


def test_nothing_of_the_clock_is_in_it():
    text = parse_settings("[[waivers]]\nrule='rib-width'\nreason='seen'\ncontour='c1'\nuntil=2030-01-01\n")
    days = [to_json(document(SPOILED[0], settings=text.changed({}))) for _ in range(2)]
    assert days[0] == days[1]


def test_what_is_not_measured_is_null_and_its_run_has_a_reason():
    doc = document(circle(("clamp_land", 30, 34, "broken-geometry"), ("corner_radius", 0, 120, "straight")))
    contour = doc["joints"][0]["contours"][0]
    s = np.array(contour["stations"]["s"])
    land = contour["stations"]["clamp_land"]
    assert [v is None for v in land] == ((s >= 30) & (s <= 34)).tolist()
    runs = {(r["column"], r["why"]): (r["from_s"], r["to_s"]) for r in contour["unmeasured"]}
    assert runs == {("clamp_land", "broken-geometry"): (30.0, 34.0), ("corner_radius", "straight"): (0.0, 119.5)}
    assert contour["summary"]["corner_radius"] is None
    assert set(doc["reasons"]) >= {why for _, why in runs}


def test_a_finding_carries_the_entity_and_line_of_its_faces():
    finding = document(SPOILED[0])["findings"][0]
    assert finding["faces"] == [
        {"part": "p1", "face": 3, "step_entity": "#121", "line": 40},
        {"part": "p2", "face": 5, "step_entity": "#222", "line": 90},
    ]


def test_an_unknown_entity_is_null_not_a_guess():
    bare = Assembly((FILE,), tuple(Part(f"p{i}", "", (), "solid", None, 1, 8) for i in (1, 2)))
    joints = [SPOILED[0]]
    doc = make_document(bare, joints, judge(joints, Settings()), Settings())
    check(doc)
    assert doc["findings"][0]["faces"][0]["step_entity"] is None


def test_limits_carry_origin_and_standing():
    settings = parse_settings("[limits.rib-width]\nmin = 0.7\n").changed({"clamp-land.min": "1.5 mm"})
    entries = {(e["rule"], e["name"]): e for e in document(settings=settings)["limits"]}
    assert entries["rib-width", "min"]["from"] == "file"
    assert entries["rib-width", "max"]["from"] == "default"
    assert (entries["clamp-land", "min"]["from"], entries["clamp-land", "min"]["value"]) == ("option", 1.5)
    assert entries["clamp-land", "min"]["standing"] == "common practice"


def test_bounds_along_the_contour_are_the_judged_ones():
    wide = circle(("rib_width", 0, 60, 1.8))
    bounds = {
        (b["rule"], b["column"], b["severity"]): b for b in document(wide)["joints"][0]["contours"][0]["bounds"]
    }  # corner-radius: at least twice the rib's width, and 3 mm
    turn = bounds["corner-radius", "corner_radius", "attention"]["low"]
    assert (turn[10], turn[-1]) == (3.6, 3.0)
    assert bounds["rib-height", "rib_height", "must-fix"]["low"] == 0.6
    sides = {severity: bounds["rib-width", "rib_width", severity] for severity in ("must-fix", "attention")}
    assert {key: (b["low"], b["high"]) for key, b in sides.items()} == {
        "must-fix": (0.6, 2.5),
        "attention": (None, 2.0),
    }


def test_a_rule_that_is_off_stands_among_what_was_not_checked():
    doc = document(settings=Settings().changed({"clamp-land.severity": "off"}))
    assert "Clamp land: switched off in the settings." in sentences(doc["not_checked"])


def test_travel_that_was_followed_only_in_sections_is_said():
    assert any(
        "Free travel away from the seam" in item for item in sentences(document(joint(interface={}))["not_checked"])
    )
    assert not any("Free travel away" in item for item in sentences(document()["not_checked"]))


def test_a_view_passes_through_untouched():
    view = pack_view([section_of("c1")])
    doc = document(view=view)
    check(doc)
    assert doc["view"] == view


def test_cautions_are_always_there():
    for doc in (document(), not_reviewed_document([FILE], NotReviewed("empty", "x"), Settings())):
        text = " ".join(said["text"] for said in doc["cautions"])
        for word in ("not an approval", "Class 4", "IEC 60825-1", "crush", "validated process"):
            assert word in text


@pytest.mark.parametrize(
    ("value", "expected"),
    [(1.23456789, 1.234568), (-0.0, 0.0), (float("nan"), None), (float("inf"), None), (None, None), (-1e-9, 0.0)],
)
def test_numbers_are_rounded_and_finite(value, expected):
    assert number(value) == expected
    assert str(number(value)) == str(expected)


def test_arrays_become_lists_with_nulls():
    assert numbers(np.array([[1.0, np.nan], [np.inf, -0.0]])) == [[1.0, None], [None, 0.0]]


def test_names_that_are_not_text_do_not_break_the_json():
    text = to_json({"name": "lid \ud800", "é": [1, None]})
    assert json.loads(text)["é"] == [1, None]
    text.encode("utf-8")


# The Review


def test_a_review_reads_back_from_its_json():
    review = Review(document(SPOILED[1]))
    again = Review.from_json(review.to_json())
    assert again.to_json() == review.to_json()
    assert again.findings == review.findings
    assert (again.verdict, again.exit_code) == ("fail", 1)


def test_a_review_gives_arrays():
    review = Review(document(circle(("clamp_land", 30, 34, "broken-geometry"))))
    contour = review.contours[0]
    assert contour.points.shape == (240, 3)
    assert np.isnan(contour["clamp_land"]).sum() == 9
    assert set(contour.columns) == {k for k, q in MEASURED.items() if q.per == "station"}
    assert review.length == 120.0


@pytest.mark.parametrize("text", ["{", "[]", '{"document": "letter"}', '{"document": "seamcheck-review"}'])
def test_what_is_not_a_review_document_is_refused(text):
    with pytest.raises(UsageError):
        Review.from_json(text)
