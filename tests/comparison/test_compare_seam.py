"""Comparing two revisions: what moved and what changed along the seam, against what was drawn."""

from __future__ import annotations

import math

import msgspec
import numpy as np
import pytest
from comparison.compare_models import SHIFT, SPEC, TURN, file_of, renumbered, restarted, reviewed
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from telling import telling

from seamcheck.comparison.document import compare_documents
from seamcheck.comparison.records import Comparison
from seamcheck.comparison.schema import make_schema, schema
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

# Ground truth throughout: the dimensions that the models are drawn from (tests/builder). Tolerances: the measuring
# error of DESIGN, 0.01 mm for lengths across the seam, and for lengths along it the station spacing at steps.


def compared(old, new):
    document = compare_documents(old, new)
    Draft202012Validator(schema()).validate(document)
    msgspec.convert(document, Comparison)
    return document


def quantity(document, key):
    return next(q for q in document["joints"][0]["quantities"] if q["quantity"] == key)


def nothing_in(document):
    joint = document["joints"][0]
    findings = document["findings"]
    assert not any(joint[key] for key in ("pieces", "quantities", "interface", "material"))
    assert not findings["new"]
    assert not findings["fixed"]
    assert not findings["dropped"]
    assert all(entry["state"] == "same" for entry in findings["remaining"])
    assert joint["shift"]["max_mm"] <= 0.01


def test_the_schema_ships_as_it_is_made():
    assert schema() == make_schema()
    Draft202012Validator.check_schema(schema())


@pytest.mark.parametrize("name", telling(["plain", "wide", "gap", "two gaps"], ["two gaps"]))
def test_a_model_against_itself_is_empty(name):
    document = compared(reviewed(name), reviewed(name))
    assert document["identical"]
    assert document["outcome"] == "not-worse"
    nothing_in(document)


@pytest.mark.parametrize("other", ["cover first", "boss"])
def test_part_order_and_an_unrelated_feature_change_nothing(other):
    document = compared(reviewed("plain"), reviewed(other))
    nothing_in(document)
    assert document["identical"] == (other == "cover first")  # the boss shows in the count of faces


def test_other_entity_numbers_change_nothing(tmp_path):
    file = renumbered(file_of("wide"), tmp_path / "wide.step")
    new = review_model([file], Settings())
    old = reviewed("wide")
    assert [f["faces"][0]["step_entity"] for f in new["findings"]] != [
        f["faces"][0]["step_entity"] for f in old["findings"]
    ]
    document = compared(old, new)
    assert document["identical"]
    assert len(document["findings"]["remaining"]) == 1


@settings(max_examples=12)
@given(by=st.integers(1, 250), backwards=st.booleans(), other_sides=st.booleans())
def test_the_start_and_the_way_round_change_nothing(by, backwards, other_sides):
    old = reviewed("wide")
    document = compared(old, restarted(old, by, backwards, other_sides))
    nothing_in(document)
    assert document["joints"][0]["sides_swapped"] == other_sides
    assert len(document["findings"]["remaining"]) == 1
    nothing_in(compared(restarted(old, by, backwards, other_sides), old))


@settings(max_examples=8)
@given(by=st.integers(0, 250), backwards=st.booleans())
def test_a_wider_stretch_is_reported_where_it_is_drawn(by, backwards):
    # wide-rib: 4.0 mm long about s = 14, both flanks 0.15 mm out. Closed form: width +0.30; melt area +0.30 x 0.4
    # = +0.12 mm²; each trap -0.15 x (0.9 - 0.4) = -0.075 mm²; clamp land -0.15.
    document = compared(restarted(reviewed("plain"), by, backwards), reviewed("wide"))
    expected = {"rib_width": 0.3, "melt_area": 0.12, "trap_area_inner": -0.075, "trap_area_outer": -0.075}
    at, _ = SPEC.truth().place(np.array([14.0]))
    for key, amount in (expected | {"clamp_land": -0.15}).items():
        (change,) = quantity(document, key)["changes"]
        assert change["by"] == pytest.approx(amount, abs=0.002)
        assert change["length_mm"] == pytest.approx(4.0, abs=0.1)
        assert np.linalg.norm(np.array(change["at"]) - at[0]) < 0.5
    (change,) = quantity(document, "rib_width")["changes"]
    assert (change["old"], change["new"]) == (pytest.approx(1.2, abs=0.002), pytest.approx(1.5, abs=0.002))
    assert "cover_thickness" in document["joints"][0]["unchanged"]
    assert document["outcome"] == "worse"


def test_another_spacing_of_stations_makes_no_changes():
    document = compared(reviewed("wide"), reviewed("wide", station_spacing=0.37))
    joint = document["joints"][0]
    assert not joint["quantities"]
    assert [entry["key"] for entry in document["settings"]] == ["station_spacing_mm"]
    assert document["warnings"]


def test_a_change_all_along_is_one_change_of_the_whole_contour():
    document = compared(reviewed("plain"), reviewed("thicker cover"))
    joint = document["joints"][0]
    assert {q["quantity"] for q in joint["quantities"]} == {
        "cover_thickness", "cover_thickness_min", "cover_thickness_max",
    }  # fmt: skip
    (change,) = quantity(document, "cover_thickness")["changes"]
    assert change["is_whole"]
    assert change["by"] == pytest.approx(0.2, abs=0.001)


def test_a_moved_model_is_brought_back():
    document = compared(reviewed("plain"), reviewed("moved"))
    assert document["motion"]["kind"] == "moved"
    assert document["motion"]["shift_mm"] == pytest.approx(SHIFT, abs=0.001)
    assert document["motion"]["angle_deg"] == 0.0
    nothing_in(document)
    assert not document["identical"]


def test_a_turned_model_is_brought_back_and_said_to_be_turned():
    from scipy.spatial.transform import Rotation

    document = compared(reviewed("plain"), reviewed("turned"))
    motion = document["motion"]
    turn = Rotation.from_rotvec(np.radians(TURN))
    # the outline is alike after half a turn about the light: both answers bring the seam onto itself
    half = turn * Rotation.from_euler("z", 180, degrees=True)
    assert motion["kind"] == "turned"
    assert "rotated" in motion["says"]
    angles = [math.degrees(r.magnitude()) for r in (turn, half)]
    assert min(abs(motion["angle_deg"] - angle) for angle in angles) < 0.01
    assert document["joints"][0]["shift"]["max_mm"] < 0.01
    assert not document["joints"][0]["quantities"]


def test_a_change_is_found_on_a_moved_model_in_the_new_coordinates():
    document = compared(reviewed("plain"), reviewed("wide, moved"))
    (change,) = quantity(document, "rib_width")["changes"]
    at, _ = SPEC.truth().place(np.array([14.0]))
    assert np.linalg.norm(np.array(change["at"]) - at[0] - SHIFT) < 0.5
    assert change["by"] == pytest.approx(0.3, abs=0.002)


@pytest.mark.thorough
def test_a_seam_drawn_outward_lies_beside_the_old_one():
    # Steiner: the parallel curve at distance d of a convex outline is 2 pi d longer (DOMAIN, check value 17).
    document = compared(reviewed("plain"), reviewed("bigger"))
    joint = document["joints"][0]
    assert joint["length_mm"]["by"] == pytest.approx(2 * math.pi * 0.5, abs=0.01)
    assert joint["shift"]["mean_mm"] == pytest.approx(0.5, abs=0.005)
    assert joint["shift"]["max_mm"] == pytest.approx(0.5, abs=0.01)
    assert {q["quantity"] for q in joint["quantities"]} == {"corner_radius", "trap_corner_inner", "trap_corner_outer"}
    for change in quantity(document, "corner_radius")["changes"]:
        assert (change["old"], change["new"]) == (pytest.approx(6, abs=0.05), pytest.approx(6.5, abs=0.05))


@pytest.mark.parametrize(("name", "places"), [("gap", [14.0]), ("two gaps", [14.0, 76.9])])
def test_stretches_without_rib_are_removed_and_the_rest_is_unchanged(name, places):
    document = compared(reviewed("plain"), reviewed(name))
    joint = document["joints"][0]
    assert joint["paths"] == {"old": 1, "new": len(places)}
    assert [piece["what"] for piece in joint["pieces"]] == ["removed"] * len(places)
    drawn, _ = SPEC.truth().place(np.array(places))
    for piece in joint["pieces"]:
        assert piece["length_mm"] == pytest.approx(4.0, abs=0.05)
        assert np.linalg.norm(drawn - piece["at"], axis=1).min() < 0.3
    assert joint["length_mm"]["by"] == pytest.approx(-4.0 * len(places), abs=0.02)
    assert not {"rib_width", "trap_area_inner", "cover_thickness"} & {q["quantity"] for q in joint["quantities"]}
    back = compared(reviewed(name), reviewed("plain"))
    assert [piece["what"] for piece in back["joints"][0]["pieces"]] == ["added"] * len(places)


def test_open_paths_that_run_the_other_way_compare_each_side_with_itself():
    old = reviewed("gap")
    contour = old["joints"][0]["contours"][0]
    inner = contour["stations"]["trap_area_inner"]
    contour["stations"]["trap_area_inner"] = [v if v is None else v + 0.2 for v in inner]
    document = compared(old, restarted(old, 0, backwards=True, other_sides=True))
    assert document["joints"][0]["sides_swapped"]
    nothing_in(document)


def test_the_same_reviews_give_the_same_bytes():
    from seamcheck.document.plain import to_json

    texts = {to_json(compare_documents(reviewed("plain"), reviewed("turned"))) for _ in range(2)}
    assert len(texts) == 1
