"""JUnit XML against the schema that CI hosts use, and read back by other libraries."""

from __future__ import annotations

from pathlib import Path, PurePosixPath
from xml.etree import ElementTree as ET

import pytest
import xmlschema
from ci_documents import WILD, plain, refused, wild, with_states
from hypothesis import given
from hypothesis import strategies as st
from junitparser import Error, Failure, JUnitXml, Skipped

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.report.ci.escape import xml_text
from seamcheck.report.ci.junit import render_junit
from seamcheck.report.ci.reviews import Reviewed

# junit-10.xsd: MIT licence, (c) 2014 Gregory Boissinot (in its head), as the source of pytest carries it.
SCHEMA = xmlschema.XMLSchema(str(Path(__file__).with_name("junit-10.xsd")))


def suites(documents, paths=()):
    text = render_junit(documents, paths)
    SCHEMA.validate(text.partition("\n")[2])
    return JUnitXml.fromstring(text.encode())


@pytest.mark.parametrize(
    "document", [plain(), wild(), refused(), with_states(plain(), f0="same")], ids=["plain", "wild", "refused", "known"]
)
def test_the_xml_holds_the_schema(document):
    suites(document)


def test_a_rule_is_a_case_and_a_must_fix_finding_its_failure():
    document = plain()
    (suite,) = suites(document, [PurePosixPath("models/a.step")])
    failing = {case.name for case in suite if any(isinstance(r, Failure) for r in case.result)}
    assert failing == {f["rule"] for f in document["findings"] if f["severity"] == "must-fix" and not f["waived"]}
    assert {case.name for case in suite} >= {entry["rule"] for entry in document["limits"]}
    assert suite.failures == len(failing)
    assert suite.tests == len(list(suite))
    assert {case.classname for case in suite} == {"seamcheck.models/a.step"}


def test_the_failure_says_where_and_what_to_do():
    document = plain()
    finding = next(f for f in document["findings"] if f["severity"] == "must-fix")
    (suite,) = suites(document)
    (case,) = [case for case in suite if case.name == finding["rule"]]
    assert finding["message"] in case.result[0].message
    for text in (finding["harm"], finding["remedy"], finding["id"]):
        assert text in case.result[0].text


def test_known_and_waived_findings_are_no_failures():
    document = plain()
    for finding in document["findings"]:
        finding["severity"] = "must-fix"
    numbers = {f"f{k}": "same" for k in range(len(document["findings"]))}
    (suite,) = suites(with_states(document, **numbers))
    assert suite.failures == 0
    told = ET.fromstring(render_junit(with_states(document, **numbers)))
    assert "known from the baseline" in "".join(told.itertext())


def test_a_rule_that_is_off_is_skipped():
    document = plain()
    for entry in document["limits"]:
        if entry["rule"] == "lip-gap":
            entry["severity"] = "off"
    document["findings"] = [f for f in document["findings"] if f["rule"] != "lip-gap"]
    (suite,) = suites(document)
    skipped = {case.name for case in suite if any(isinstance(r, Skipped) for r in case.result)}
    assert "lip-gap" in skipped
    assert skipped == {entry["rule"] for entry in document["limits"] if entry["severity"] == "off"}


def test_a_model_that_was_not_reviewed_is_an_error():
    (suite,) = suites(refused())
    (case,) = list(suite)
    assert isinstance(case.result[0], Error)
    assert (suite.errors, case.result[0].type) == (1, "single-part")


def test_several_models_are_several_suites_and_the_totals_add_up():
    reviews = [Reviewed(plain(), [PurePosixPath(f"{name}.step")]) for name in "ab"]
    found = suites(reviews)
    assert [suite.name for suite in found] == ["a.step", "b.step"]
    assert found.failures == sum(suite.failures for suite in found)
    assert len(suites([])) == 0


def test_the_suite_carries_the_caution():
    assert SHORT_CAUTION in render_junit(plain())


def test_hostile_names_become_no_elements():
    tame, hostile = (ET.fromstring(render_junit(document)) for document in (plain(), wild()))
    assert hostile.find("testsuite").get("name").startswith(WILD[:20])
    assert [e.tag for e in hostile.iter()] == [e.tag for e in tame.iter()]
    assert "\x1b" not in render_junit(wild())


@given(st.text())
def test_any_text_can_stand_in_xml(text):
    # expat, the parser of the standard library, refuses what XML 1.0 does not allow
    element = ET.Element("a", b=xml_text(text))
    element.text = xml_text(text)
    read = ET.fromstring(ET.tostring(element, encoding="unicode"))
    plain_text = xml_text(text).replace("\r\n", "\n").replace("\r", "\n")
    assert (read.text or "") == plain_text or "\r" in text
