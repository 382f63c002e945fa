"""The glTF file by the validator of those who wrote the standard. See gltf/README.md."""

from __future__ import annotations

import base64
import json
from pathlib import Path

import pytest
from report_browser import browser, needs_browser
from report_documents import hostile, housing, two_joints, with_junction

from seamcheck.report.glb import render_glb
from seamcheck.samples import samples

pytestmark = needs_browser

VALIDATOR = Path(__file__).parent / "gltf" / "gltf_validator.dart.js"
ASK = """
const bytes = Uint8Array.from(atob(arguments[0]), letter => letter.charCodeAt(0));
const done = arguments[arguments.length - 1];
window.gltf.validateBytes(bytes, {maxIssues: 0}).then(report => done(JSON.stringify(report)), why => done(String(why)));
"""


@pytest.fixture(scope="module")
def validate(tmp_path_factory):
    """The validator's report of a file's bytes."""
    with browser(tmp_path_factory.mktemp("profile")) as opened:
        opened.driver.get("data:text/html,<title>validator</title>")
        opened.driver.set_script_timeout(60)
        opened.run("window.exports = {};" + VALIDATOR.read_text("utf-8") + "; window.gltf = window.exports;")
        yield lambda data: json.loads(opened.driver.execute_async_script(ASK, base64.b64encode(data).decode()))


def faults(report):
    """Errors, warnings and notes; hints left out (a buffer view may go without its target, glTF 2.0 section 5.11)."""
    return [m["code"] + " " + m.get("pointer", "") for m in report["issues"]["messages"] if m["severity"] < 3]


DOCUMENTS = {
    "housing": lambda: housing(step=2.0),
    "two": two_joints,
    "junction": with_junction,
    "hostile": hostile,
    "no-view": lambda: housing(step=4.0, view=False),
}


@pytest.mark.parametrize("name", DOCUMENTS)
def test_the_validator_finds_nothing(validate, name):
    report = validate(render_glb(DOCUMENTS[name]()))
    assert faults(report) == []
    assert report["info"]["version"] == "2.0"
    assert report["info"]["totalTriangleCount"] > 0


SOME = ("sound", "two-chambers", "corner-radius")


@pytest.mark.parametrize(
    "sample",
    [
        pytest.param(s, id=s.name, marks=() if s.name in SOME else pytest.mark.thorough)
        for s in samples()
    ],
)  # fmt: skip
def test_of_reviewed_models_neither(validate, sample):
    from seamcheck.pipeline import review

    document = review(sample.file, with_view=True).document
    if document["joints"]:
        assert faults(validate(render_glb(document))) == []


def test_the_validator_sees_what_is_wrong(validate):
    data = render_glb(housing(step=4.0, view=False))
    assert faults(validate(data)) == []
    for right, wrong, code in (
        (b'"componentType":5126', b'"componentType":5125', "INVALID"),
        (b'"scene":0', b'"scene":7', "UNRESOLVED_REFERENCE"),
        (b'"doubleSided":true', b'"doubleSided":null', "TYPE_MISMATCH"),
    ):
        assert right in data
        assert code in " ".join(faults(validate(data.replace(right, wrong, 1))))
