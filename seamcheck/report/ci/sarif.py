"""SARIF 2.1.0 (OASIS standard, errata 01): findings as results, rules with help from their one declaration."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from pathlib import PurePath
from typing import Any

from seamcheck.catalogue.cautions import CAUTIONS
from seamcheck.catalogue.known import standing_sentence
from seamcheck.catalogue.rules import RULES
from seamcheck.report.ci.escape import address, one_line
from seamcheck.report.ci.reviews import (
    BETTER,
    NEW,
    SAME,
    WORSE,
    Document,
    Finding,
    Reviewed,
    as_reviewed,
    caution,
    rules_in_force,
    severity_of,
    where,
)
from seamcheck.report.facts import part_names, rule_title, texts
from seamcheck.report.loosened import loosened
from seamcheck.version import __version__

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
LEVELS = {"must-fix": "error", "attention": "warning", "note": "note", "off": "none"}
STATES = {NEW: "new", WORSE: "updated", SAME: "unchanged", BETTER: "updated"}
FINGERPRINT = "seamcheckFinding/v1"

_LINE_HASH = "primaryLocationLineHash"
"""The key of a fingerprint by which common hosts follow a result; without it they take the text of the line, and
entity numbers change with every export."""

Record = dict[str, Any]


def render_sarif(documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> str:
    """The log as JSON text: one run, whatever the number of models."""
    reviews = as_reviewed(documents, paths)
    rules = rules_in_force(reviews)
    run: Record = {
        "tool": {"driver": _driver(reviews, rules)},
        "columnKind": "utf16CodeUnits",
        "artifacts": [entry for review in reviews for entry in _artifacts(review)],
        "results": _results(reviews, rules),
        "invocations": [
            {
                "executionSuccessful": all(r.document["verdict"] != "not-reviewed" for r in reviews),
                "toolExecutionNotifications": [_refused(r) for r in reviews if r.document["verdict"] == "not-reviewed"],
            }
        ],
        "properties": {"cautions": list(CAUTIONS), "notChecked": _not_checked(reviews)},
    }
    if milder := [words for review in reviews if (words := loosened(review.document))]:
        run["properties"]["settings"] = list(dict.fromkeys(milder))
    if any(review.baseline is not None for review in reviews):
        run["properties"]["baselines"] = [review.baseline["file"] for review in reviews if review.baseline is not None]
    log = {"$schema": SCHEMA, "version": "2.1.0", "runs": [run]}
    text = json.dumps(log, indent=1, ensure_ascii=False, allow_nan=False) + "\n"
    return text.encode("utf-8", "replace").decode("utf-8")  # lone surrogates from damaged names


def _driver(reviews: Sequence[Reviewed], rules: Sequence[str]) -> Record:
    return {
        "name": "seamcheck",
        "version": __version__,
        "semanticVersion": __version__,
        "shortDescription": {"text": "Pre-checks the CAD of laser-welded plastic housings."},
        "fullDescription": {"text": caution()},
        "rules": [_rule(key, reviews) for key in rules],
    }


def _rule(key: str, reviews: Sequence[Reviewed]) -> Record:
    """A rule with its words as declared; its level is that of the first review that judges it."""
    severities = [severity_of(review.document, key) for review in reviews]
    severity = next((s for s in severities if s != "off"), "off")
    configuration: Record = {"level": LEVELS[severity], "enabled": severity != "off"}
    record: Record = {"id": key, "name": rule_title(key), "defaultConfiguration": configuration}
    rule = RULES.get(key)
    if rule is None:
        return record
    remedies = list(dict.fromkeys([*(b.remedy for b in rule.bounds()), *([rule.remedy] if rule.remedy else [])]))
    plain = [
        rule.what,
        f"Harm: {rule.harm}",
        *(f"Do: {_without_amount(remedy)}" for remedy in remedies),
        f"Standing of the number: {rule.standing} ({standing_sentence(rule.standing)}) {rule.standing_text}".rstrip(),
        "A pre-check of CAD data, never an approval.",
    ]
    return record | {
        "shortDescription": {"text": rule.title},
        "fullDescription": {"text": rule.what},
        "help": {"text": "\n".join(plain), "markdown": "\n\n".join(plain)},
        "properties": {"standing": rule.standing, "severity": severity},
    }


def _without_amount(remedy: str) -> str:
    from seamcheck.report.explain import without_amount

    return without_amount(remedy)


def _artifacts(review: Reviewed) -> list[Record]:
    return [
        {
            "location": {"uri": address(path)},
            "mimeType": "model/step",
            **({"hashes": {"sha-256": entry["sha256"]}} if entry["sha256"] else {}),
        }
        for path, entry in zip(review.files, review.document["model"]["files"], strict=False)
    ]


def _results(reviews: Sequence[Reviewed], rules: Sequence[str]) -> list[Record]:
    return [_result(review, finding, rules) for review in reviews for finding in review.document["findings"]]


def _result(review: Reviewed, finding: Finding, rules: Sequence[str]) -> Record:
    known = review.lines_of(finding)
    places = [_location(review, finding, path, line, face) for path, line, face in known]
    first = places[0] if places else _location(review, finding, review.files[0], None, None)
    result: Record = {
        "ruleId": finding["rule"],
        "ruleIndex": rules.index(finding["rule"]),
        "kind": "fail",
        "level": LEVELS[finding["severity"]],
        "message": {"text": one_line(f"{finding['message']} At {where(finding)}. {finding['remedy']}")},
        "locations": [first],
        "fingerprints": {FINGERPRINT: finding["id"]},
        "partialFingerprints": {_LINE_HASH: f"{finding['id']}:1"},
        "properties": _numbers(finding),
    }
    if places[1:]:
        result["relatedLocations"] = [{"id": k, **place} for k, place in enumerate(places[1:], 1)]
    if finding["waived"]:
        result["suppressions"] = [
            {"kind": "external", "status": "accepted", "justification": str(finding["waived"]["reason"])}
        ]
    state = review.state(finding)
    if state is not None:
        result["baselineState"] = STATES[state]
    return result


def _location(
    review: Reviewed, finding: Finding, path: str, line: int | None, face: Mapping[str, Any] | None
) -> Record:
    """File and line of the face's STEP entity; the place in space beside it."""
    physical: Record = {"artifactLocation": {"uri": address(path)}}
    if line is not None:
        physical["region"] = {"startLine": line}
    result: Record = {"physicalLocation": physical}
    names = part_names(review.document)
    logical = []
    if face is not None:
        name = one_line(names.get(face["part"], face["part"]))
        logical.append({"name": name, "fullyQualifiedName": f"{name} {face['step_entity']}", "kind": "part"})
    if finding["contour"] is not None:
        logical.append({"name": finding["contour"], "fullyQualifiedName": _path_name(finding), "kind": "seam path"})
    if logical:
        result["logicalLocations"] = logical
    if finding["at"] is not None:
        x, y, z = finding["at"]
        result["properties"] = {"x_mm": x, "y_mm": y, "z_mm": z}
    return result


def _path_name(finding: Finding) -> str:
    return f"{finding['joint']}.{finding['contour']}"


def _numbers(finding: Finding) -> Record:
    keys = ("severity", "quantity", "value", "limit", "unit", "margin", "joint", "contour", "length_mm")
    numbers: Record = {key: finding[key] for key in keys}
    numbers |= {"from_s_mm": finding["from_s"], "to_s_mm": finding["to_s"], "state": finding["state"]}
    if finding["at"] is not None:
        numbers |= dict(zip(("x_mm", "y_mm", "z_mm"), finding["at"], strict=True))
    return {**numbers, "harm": finding["harm"], "also": list(finding["also"])}


def _refused(review: Reviewed) -> Record:
    """A model that was not reviewed, as a notification of the run: it is no result of a rule."""
    reason = review.document["reason"]
    return {
        "level": "error",
        "descriptor": {"id": reason["code"]},
        "message": {"text": one_line(reason["message"])},
        "locations": [{"physicalLocation": {"artifactLocation": {"uri": address(review.files[0])}}}],
    }


def _not_checked(reviews: Sequence[Reviewed]) -> list[str]:
    return list(dict.fromkeys(line for review in reviews for line in texts(review.document["not_checked"])))
