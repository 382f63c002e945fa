"""A baseline: what is known does not fail, what is new or worse does; through review and report alike."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from comparison.compare_models import file_of, review_here, reviewed
from shell import shell

from seamcheck.comparison.baseline import baseline_lines, exit_code, with_baseline
from seamcheck.document.plain import to_json
from seamcheck.document.read import check_document
from seamcheck.errors import UsageError

# Ground truth: the defects that the models are drawn with (tests/builder/defects.py).


def held(new: str, old: str) -> dict:
    document = with_baseline(reviewed(new), reviewed(old), "old.json")
    check_document(document, "document")
    return document


def states(document: dict) -> list[str]:
    return list(document["run"]["baseline"]["states"].values())


@pytest.mark.parametrize(
    ("new", "old", "state", "code"),
    [
        ("wide", "wide", ["same"], 0),
        ("wide", "plain", ["new"], 1),
        ("wider", "wide", ["worse"], 1),
        ("wide", "wider", ["better"], 0),
        ("wide beside", "wide", ["same"], 0),
        ("wide, moved", "wide", ["same"], 0),
        ("plain", "wide", [], 0),
        ("gap", "wide", ["new"], 1),
    ],
)
def test_only_new_and_worse_findings_fail(new, old, state, code):
    document = held(new, old)
    assert states(document) == state
    assert exit_code(document) == code


def test_without_a_baseline_every_finding_counts():
    assert exit_code(reviewed("wide")) == 1
    assert exit_code(reviewed("plain")) == 0
    assert exit_code(reviewed("one part")) == 2


def test_strict_counts_attention_as_well():
    document = reviewed("wide", rib_uniformity__severity="attention")
    assert (exit_code(document), exit_code(document, strict=True)) == (0, 1)
    known = with_baseline(document, document, "old.json")
    assert exit_code(known, strict=True) == 0


def test_what_is_fixed_is_told():
    document = held("plain", "wide")
    assert document["run"]["baseline"]["fixed"] == [reviewed("wide")["findings"][0]["id"]]
    assert any(line.startswith("  fixed: rib-uniformity-") for line in baseline_lines(document))


def test_other_settings_than_the_baselines_are_told():
    document = with_baseline(reviewed("wide", collapse=0.35), reviewed("wide"), "old.json")
    assert any("different settings" in line for line in baseline_lines(document))


def test_a_baseline_that_was_not_reviewed_is_refused():
    with pytest.raises(UsageError, match="can't be a baseline"):
        held("wide", "one part")


def test_a_model_that_is_not_reviewed_any_more_is_no_pass():
    assert exit_code(held("one part", "wide")) == 2


def written(folder: Path, name: str) -> Path:
    path = folder / f"{name}.json"
    path.write_text(to_json(reviewed(name)), "utf-8")
    return path


def test_report_holds_a_document_against_a_baseline_and_passes_it_on(tmp_path):
    old, new, out = written(tmp_path, "wide"), written(tmp_path, "wide beside"), tmp_path / "held.json"
    done = shell(
        "report", new, "--baseline", old, "--json", out, "--sarif", tmp_path / "s.sarif", "--annotations", "plain"
    )
    assert done.exit_code == 0, done.output
    assert "Against the baseline wide.json: 0 new or worse, 1 known, 0 fixed" in done.output
    assert ": note: " in done.output
    assert json.loads((tmp_path / "s.sarif").read_text())["runs"][0]["results"][0]["baselineState"] == "unchanged"
    again = shell("report", out, "--sarif", "-")  # the document knows it
    assert again.exit_code == 0
    assert json.loads(again.output)["runs"][0]["results"][0]["baselineState"] == "unchanged"


def test_report_without_a_baseline_fails(tmp_path):
    assert shell("report", written(tmp_path, "wide"), "-q").exit_code == 1


def test_every_output_for_ci_comes_from_a_document_alone(tmp_path):
    document = written(tmp_path, "wide")
    for option in ("--sarif", "--junit", "--markdown"):
        done = shell("report", document, option, "-", "--model", "models/a b.step")
        assert done.exit_code == 1
        assert "a b.step" in done.output or "a%20b.step" in done.output


@pytest.mark.parametrize("text", ["", "[]", "{}"])
def test_a_baseline_that_is_no_review_is_refused_in_a_sentence(text, tmp_path):
    (tmp_path / "old.json").write_text(text)
    done = shell("report", written(tmp_path, "wide"), "--baseline", tmp_path / "old.json")
    assert done.exit_code == 2
    assert done.output.count("\n") == 1


def test_review_takes_a_baseline(tmp_path, monkeypatch):
    monkeypatch.setattr("seamcheck.pipeline.review", review_here)
    done = shell("review", file_of("wide"), "--baseline", written(tmp_path, "wide"), "-q", "--annotations", "workflow")
    assert done.exit_code == 0, done.output
    assert "::notice file=" in done.output
    assert "::error" not in done.output
    assert done.output.splitlines()[1] == "Against the baseline wide.json: 0 new or worse, 1 known, 0 fixed"
