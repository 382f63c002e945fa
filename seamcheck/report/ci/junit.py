"""JUnit XML: one test suite for each model, one test case for each rule.

There is no standard behind JUnit XML; this is the structure that CI hosts read in common (testsuites, testsuite,
testcase with failure, error, skipped and system-out), and what the widely used schema "junit-10.xsd" allows.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import PurePath
from xml.etree import ElementTree as ET

from seamcheck.assembly.names import readable
from seamcheck.catalogue.rules import RULES
from seamcheck.report.ci.escape import xml_text
from seamcheck.report.ci.reviews import (
    Document,
    Finding,
    Reviewed,
    as_reviewed,
    caution,
    known_words,
    rules_in_force,
    severity_of,
    verdict_words,
    where,
)
from seamcheck.report.facts import rule_title
from seamcheck.report.loosened import loosened


def render_junit(documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> str:
    """The XML as text.

    A rule with a must-fix finding that is neither waived nor known from a baseline is a failure; findings of lower
    severity, waived and known ones stand in the test case's output. A rule that is switched off is skipped, and a
    model that was not reviewed is an error.
    """
    reviews = as_reviewed(documents, paths)
    root = ET.Element("testsuites", name="seamcheck")
    for review in reviews:
        _suite(root, review)
    totals = {key: sum(int(suite.get(key, "0")) for suite in root) for key in ("tests", "failures", "errors")}
    for key, count in totals.items():
        root.set(key, str(count))
    ET.indent(root, " ")
    text = ET.tostring(root, encoding="unicode")
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{text}\n'


def _suite(root: ET.Element, review: Reviewed) -> None:
    name = _clean(review.title)
    suite = ET.SubElement(root, "testsuite", name=name)
    properties = ET.SubElement(suite, "properties")
    for key, value in _properties(review):
        ET.SubElement(properties, "property", name=key, value=_clean(value))
    if review.document["verdict"] == "not-reviewed":
        case = ET.SubElement(suite, "testcase", classname=f"seamcheck.{name}", name="review", time="0")
        reason = review.document["reason"]
        error = ET.SubElement(case, "error", message=_clean(reason["message"]), type=_clean(reason["code"]))
        error.text = _clean(reason["message"])
    else:
        for rule in rules_in_force([review]):
            _case(suite, review, rule, name)
    cases = suite.findall("testcase")
    counts = {
        "tests": len(cases),
        "failures": sum(case.find("failure") is not None for case in cases),
        "errors": sum(case.find("error") is not None for case in cases),
        "skipped": sum(case.find("skipped") is not None for case in cases),
    }
    for key, count in counts.items():
        suite.set(key, str(count))
    suite.set("time", "0")
    ET.SubElement(suite, "system-out").text = _clean(f"{verdict_words(review)}\n{caution()}")


def _properties(review: Reviewed) -> Iterator[tuple[str, str]]:
    document = review.document
    yield "seamcheck", document["seamcheck"]
    yield "verdict", document["verdict"]
    if milder := loosened(document):
        yield "settings", milder
    for path, entry in zip(review.files, document["model"]["files"], strict=False):
        yield "file", path
        yield "sha256", entry["sha256"]
    if review.baseline is not None:
        yield "baseline", str(review.baseline["file"])


def _case(suite: ET.Element, review: Reviewed, rule: str, name: str) -> None:
    case = ET.SubElement(suite, "testcase", classname=f"seamcheck.{name}", name=_clean(rule), time="0")
    findings = [f for f in review.document["findings"] if f["rule"] == rule]
    if severity_of(review.document, rule) == "off" and not findings:
        ET.SubElement(case, "skipped", message="switched off in the settings")
        return
    failing = [f for f in findings if review.counts(f)]
    if failing:
        first = failing[0]["message"]
        more = f" (and {len(failing) - 1} more)" if len(failing) > 1 else ""
        failure = ET.SubElement(case, "failure", message=_clean(first + more), type=_clean(rule))
        failure.text = _clean("\n\n".join(_told(review, f) for f in failing))
    others = [f for f in findings if not review.counts(f)]
    if others:
        ET.SubElement(case, "system-out").text = _clean("\n\n".join(_told(review, f) for f in others))


def _told(review: Reviewed, finding: Finding) -> str:
    said = [f"{finding['severity']}: {finding['message']}", f"Where: {where(finding)}"]
    said += [f"File: {path}, line {line} ({face['step_entity']})" for path, line, face in review.lines_of(finding)]
    said += [f"Harm: {finding['harm']}", f"Do: {finding['remedy']}", f"Rule: {_rule(finding['rule'])}"]
    if finding["waived"]:
        said.append(f"Waived: {finding['waived']['reason']}")
    known = known_words(review, finding)
    if known:
        said.append(f"Baseline: {known}")
    return "\n".join([*said, f"Id: {finding['id']}"])


def _rule(key: str) -> str:
    return f"{rule_title(key)}. {RULES[key].what}" if key in RULES else rule_title(key)


def _clean(text: str) -> str:
    return "\n".join(readable(line) for line in xml_text(str(text)).split("\n"))
