"""Comparing two revisions: findings fixed, new, remaining; settings, parts and materials that differ."""

from __future__ import annotations

import copy
import math

import pytest
from comparison.compare_models import HOSTILE, file_of, renumbered, restarted, review_here, reviewed
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from msgspec.structs import replace

import seamcheck
from seamcheck.comparison.document import compare_documents, worse
from seamcheck.comparison.schema import schema
from seamcheck.errors import UsageError
from seamcheck.pipeline import review_model
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

# Ground truth: the defects that the models are drawn with (tests/builder/defects.py).


def compared(old, new):
    document = compare_documents(old, new)
    Draft202012Validator(schema()).validate(document)
    return document


def rules(document, kind):
    return [(e.get("new") or e["old"])["rule"] for e in document["findings"][kind]]


def test_a_defect_that_comes_is_new_and_one_that_goes_is_fixed():
    document = compared(reviewed("plain"), reviewed("wide"))
    assert rules(document, "new") == ["rib-uniformity"]
    (entry,) = document["findings"]["new"]
    assert (entry["how"], entry["before"]) == ("value", pytest.approx(1.2, abs=0.002))
    assert document["outcome"] == "worse"
    back = compared(reviewed("wide"), reviewed("plain"))
    assert rules(back, "fixed") == ["rib-uniformity"]
    assert (back["findings"]["fixed"][0]["how"], back["outcome"]) == ("value", "not-worse")
    assert back["findings"]["fixed"][0]["now"] == pytest.approx(1.2, abs=0.002)


def test_a_defect_that_grows_is_worse_by_as_much():
    # drawn 0.3 mm wider, then 0.5 mm: 0.2 mm farther beyond the same limit
    document = compared(reviewed("wide"), reviewed("wider"))
    (entry,) = document["findings"]["remaining"]
    assert entry["state"] == "worse"
    assert entry["margin_by"] == pytest.approx(-0.2, abs=0.002)
    assert entry["length_by_mm"] == pytest.approx(0.0, abs=0.05)
    assert document["outcome"] == "worse"
    assert compared(reviewed("wider"), reviewed("wide"))["findings"]["remaining"][0]["state"] == "better"


def test_a_defect_that_gets_longer_is_worse_by_as_much():
    (entry,) = compared(reviewed("wide"), reviewed("wide longer"))["findings"]["remaining"]
    assert entry["state"] == "worse"
    assert entry["length_by_mm"] == pytest.approx(4.0, abs=0.05)
    assert entry["margin_by"] == pytest.approx(0.0, abs=0.002)


def test_a_defect_that_slides_a_little_remains_whatever_its_name():
    old, new = reviewed("wide"), reviewed("wide beside")
    new["findings"][0]["id"] = "rib-uniformity-00000000"
    document = compared(old, new)
    assert len(document["findings"]["remaining"]) == 1
    assert not document["findings"]["new"]


@pytest.mark.parametrize("other", ["wide, cover first", "wide, boss"])
def test_names_of_findings_stay_with_another_order_of_parts_and_an_unrelated_feature(other):
    assert [f["id"] for f in reviewed(other)["findings"]] == [f["id"] for f in reviewed("wide")["findings"]]
    document = compared(reviewed("wide"), reviewed(other))
    assert [e["state"] for e in document["findings"]["remaining"]] == ["same"]
    assert not document["joints"][0]["quantities"]


def test_names_of_findings_stay_with_other_entity_numbers(tmp_path):
    new = review_model([renumbered(file_of("wide"), tmp_path / "wide.step")], Settings())
    assert [f["id"] for f in new["findings"]] == [f["id"] for f in reviewed("wide")["findings"]]
    assert new["findings"][0]["faces"] != reviewed("wide")["findings"][0]["faces"]


def test_joints_are_known_by_their_places_and_one_that_is_gone_is_told():
    from report.report_documents import two_joints

    old, new = two_joints(), two_joints()
    names = {"j1": "j2", "j2": "j1"}
    new["joints"].reverse()
    for entry in (*new["joints"], *({"id": f["joint"], "of": f} for f in new["findings"])):
        entry["id"] = names[entry["id"]]
        if "of" in entry:
            entry["of"]["joint"] = entry["id"]
    document = compared(old, new)
    assert {(j["old"], j["new"]) for j in document["joints"]} == {("j1", "j2"), ("j2", "j1")}
    assert document["identical"]
    new["joints"] = new["joints"][1:]
    kept = new["joints"][0]["id"]
    new["findings"] = [f for f in new["findings"] if f["joint"] == kept]
    document = compared(old, new)
    gone = [j for j in document["joints"] if j["new"] is None]
    assert len(gone) == 1
    assert not document["identical"]
    assert {e["how"] for e in document["findings"]["fixed"]} <= {"seam-gone"}


@pytest.mark.parametrize("other", ["wide, cover first", "wide, moved"])
def test_a_finding_is_known_again_with_parts_in_another_order_and_on_a_moved_model(other):
    document = compared(reviewed("wide"), reviewed(other))
    (entry,) = document["findings"]["remaining"]
    assert entry["state"] == "same"
    assert document["outcome"] == "not-worse"


def test_the_place_decides_where_two_findings_exchange_names():
    # two defects in one 10 mm cell, at s = 11 and 15; the first is mended, the second takes over its name
    old, new = reviewed("two near"), reviewed("one near")
    first, second = sorted(old["findings"], key=lambda f: abs(f["at"][0] - new["findings"][0]["at"][0]), reverse=True)
    assert len({f["id"].rpartition("-")[0] for f in old["findings"]} | {"x"}) >= 2
    new["findings"][0]["id"] = first["id"]
    document = compared(old, new)
    assert [e["old"]["id"] for e in document["findings"]["fixed"]] == [first["id"]]
    assert [e["old"]["id"] for e in document["findings"]["remaining"]] == [second["id"]]


def test_findings_that_grow_together_are_not_new_and_pieces_are_not_new_either():
    old, new = reviewed("two near"), reviewed("two near")
    first, second = sorted(new["findings"], key=lambda f: f["from_s"])
    whole = copy.deepcopy(first)
    whole["to_s"], whole["length_mm"] = second["to_s"], second["to_s"] - first["from_s"]
    new["findings"] = [whole]
    document = compared(old, new)
    (entry,) = document["findings"]["remaining"]
    assert len(entry["merged"]) == 1
    assert entry["state"] == "worse"  # 2 + 2 mm have become 6 mm
    assert not document["findings"]["fixed"]
    back = compared(new, old)
    assert not back["findings"]["new"]
    assert sorted(e["is_piece"] for e in back["findings"]["remaining"]) == [False, True]


def test_the_worst_place_alone_does_not_make_two_findings_one():
    # another rule, or the other side of the limit, is another finding even at the same place
    old, new = reviewed("wide"), reviewed("wide")
    new["findings"][0]["rule"] = "rib-width"
    assert rules(compared(old, new), "new") == ["rib-width"]
    new = reviewed("wide")
    new["findings"][0]["value"] = 0.9
    assert rules(compared(old, new), "new") == ["rib-uniformity"]


@settings(max_examples=10)
@given(by=st.integers(0, 250), backwards=st.booleans(), names=st.booleans())
def test_findings_are_matched_on_contours_that_begin_elsewhere(by, backwards, names):
    old = reviewed("two near")
    new = restarted(old, by, backwards)
    if names:
        for finding in new["findings"]:
            finding["id"] = f"{finding['rule']}-ffffffff{finding['station']}"
    document = compared(old, new)
    assert [e["state"] for e in document["findings"]["remaining"]] == ["same", "same"]
    for entry in document["findings"]["remaining"]:
        assert entry["old"]["at"] == entry["new"]["at"]


def test_a_finding_on_a_stretch_that_is_gone_is_fixed_because_the_seam_is_gone():
    document = compared(reviewed("wide"), reviewed("gap"))
    assert [e["how"] for e in document["findings"]["fixed"]] == ["seam-gone"]
    assert rules(document, "new") == ["seam-open"]


def test_a_limit_that_was_loosened_fixes_nothing():
    new = reviewed("wide", rib_uniformity__share=0.3, rib_uniformity__attention=0.3)
    document = compared(reviewed("wide"), new)
    assert not document["findings"]["fixed"]
    assert [e["how"] for e in document["findings"]["dropped"]] == ["limit"]
    assert [(e["rule"], e["name"], e["old"], e["new"]) for e in document["limits"]] == [
        ("rib-uniformity", "attention", 0.1, 0.3),
        ("rib-uniformity", "share", 0.2, 0.3),
    ]
    assert "like with like" in document["warnings"][0]


def test_a_rule_that_was_switched_off_fixes_nothing():
    document = compared(reviewed("wide"), reviewed("wide", rib_uniformity__severity="off"))
    assert not document["findings"]["fixed"]
    assert [e["how"] for e in document["findings"]["dropped"]] == ["rule-off"]
    assert ("must-fix", "off") in [(e["old"], e["new"]) for e in document["limits"]]


def test_another_collapse_is_told():
    document = compared(reviewed("plain"), reviewed("plain", collapse=0.35))
    assert [(e["key"], e["old"], e["new"]) for e in document["settings"]] == [("collapse_mm", 0.4, 0.35)]


def test_a_waived_finding_is_not_worse_and_one_whose_waiver_ended_is():
    waived = reviewed("wide")
    waived["findings"][0]["waived"] = {"reason": "trial welds were tight", "until": None, "origin": None}
    assert compared(reviewed("plain"), waived)["outcome"] == "not-worse"
    document = compared(waived, reviewed("wide"))
    assert [e["state"] for e in document["findings"]["remaining"]] == ["worse"]
    assert document["outcome"] == "worse"


def test_a_renamed_part_is_told_and_its_findings_stay_known():
    document = compared(reviewed("plain"), reviewed("renamed"))
    (entry,) = document["parts"]["renamed"]
    assert (entry["role"], entry["old"]) == ("cover", "window lid")
    assert entry["new"].startswith("lid`|<img")
    assert HOSTILE.startswith(entry["new"][:10])


@pytest.mark.parametrize(("old", "new"), [("one part", "plain"), ("plain", "one part"), ("one part", "one part")])
def test_what_was_not_reviewed_is_not_compared(old, new):
    document = compared(reviewed(old), reviewed(new))
    assert document["outcome"] == "not-compared"
    assert "was not reviewed" in document["reason"]
    assert not document["identical"]
    assert seamcheck.Comparison(document).exit_code == 2


def test_attention_counts_as_worse_only_where_it_is_asked_for():
    document = compared(reviewed("plain"), reviewed("wide", rib_uniformity__severity="attention"))
    assert document["outcome"] == "not-worse"
    assert len(worse(document["findings"], ("must-fix", "attention"))) == 1


def test_the_library_takes_models_documents_and_reviews_in_any_mixture(tmp_path, monkeypatch):
    monkeypatch.setattr("seamcheck.pipeline.review", review_here)
    review = seamcheck.Review(reviewed("plain"))
    file = tmp_path / "old.json"
    file.write_text(review.to_json(), "utf-8")
    by_model = seamcheck.compare(file, file_of("wide"))
    by_review = seamcheck.compare(review, reviewed("wide"))
    assert by_model.document == by_review.document
    assert (by_model.outcome, by_model.exit_code, len(by_model.new)) == ("worse", 1, 1)
    assert by_model.to_json().endswith("}\n")
    assert seamcheck.compare(review, review).exit_code == 0


def test_both_models_are_reviewed_with_the_settings_beside_the_new_one(tmp_path, monkeypatch):
    monkeypatch.setattr("seamcheck.pipeline.review", review_here)
    new = tmp_path / "new.step"
    new.write_bytes(file_of("wide").read_bytes())
    (tmp_path / "seamcheck.toml").write_text("[limits.rib-uniformity]\nshare = 0.3\nattention = 0.3\n")
    comparison = seamcheck.compare(file_of("plain"), new)
    assert not comparison.document["limits"]
    assert not comparison.new


@pytest.mark.parametrize("text", ["{", "{}", '{"document": "other"}', '{"document": "seamcheck-review"}', "{" * 5000])
def test_a_file_that_is_no_review_document_is_refused_in_a_sentence(text, tmp_path):
    file = tmp_path / "old.json"
    file.write_text(text)
    with pytest.raises(UsageError) as error:
        seamcheck.compare(file, reviewed("plain"))
    assert "old.json" in str(error.value)


def test_values_of_materials_stand_side_by_side():
    text = '[material]\ncover = "PBT"\nbase = "PBT"\nplaques = [[1.0, 46.0], [2.0, 33.5], [3.0, 24.4]]\n'
    chosen = replace(Settings(), material=parse_settings(text).material)
    old, new = (review_model([file_of(name)], chosen) for name in ("plain", "thicker cover"))
    document = compared(old, new)
    entries = {e["title"]: e for e in document["joints"][0]["material"]}
    # Beer-Lambert with the fitted K: T falls by exp(-K 0.2); K from the old value's own document
    light = old["joints"][0]["material"]["transmission"]
    least = entries["transmission, least"]
    assert least["new"] / least["old"] == pytest.approx(math.exp(-light["extinction_per_mm"] * 0.2), rel=1e-3)
    assert "transmission" in {q["quantity"] for q in document["joints"][0]["quantities"]}
    without = compared(reviewed("plain"), new)
    assert "transmission" in without["joints"][0]["only_new"]
    assert {e["kind"] for e in without["joints"][0]["material"]} == {"input", "result"}
