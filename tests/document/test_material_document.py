"""The material side in the review document, the terminal report and the page."""

import io
import json
import re
import xml.etree.ElementTree as ET

import numpy as np
import pytest
from jsonschema import Draft202012Validator, ValidationError
from material_surveys import run, survey
from rich.console import Console, Group

from seamcheck.assembly.parts import Assembly, ModelFile, Part
from seamcheck.document.make import make_document, schema
from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.measure.material import add_to
from seamcheck.report.html.page import render_html
from seamcheck.report.text import full_report
from seamcheck.settings.file import parse_settings

TOML = """
[material]
cover = "PC"
base = "PBT-GF30"
plaques = [[1.0, 55.0], [2.0, 36.0]]
[material.laser]
power = 150
speed = 2000
[material.process]
pressure = 2
[material.samples]
count = 200
"""


def document_of(text=TOML, rib_on="base"):
    settings = parse_settings(text)
    thickness = np.full(801, 2.0)
    thickness[200:301] = 4.5
    found, extra = add_to(survey(run(thickness=thickness)), settings.material, "j1", 0.4, rib_on)
    joint = JointResult("j1", ("p1",), ("p2",), rib_on, np.array([0, 0, -1.0]), "touching", (), found, extra)
    parts = tuple(Part(p, name, (name,), "solid", None, 1, 6) for p, name in (("p1", "roof"), ("p2", "<b>body")))
    assembly = Assembly((ModelFile("rain-gauge.step", "5f" * 32, "AP242", "mm"),), parts)
    judgement = judge([joint], settings, {"p1": "roof", "p2": "body"})
    return json.loads(json.dumps(make_document(assembly, [joint], judgement, settings), allow_nan=False))


def terminal(document):
    console = Console(file=io.StringIO(), width=160)
    console.print(Group(*full_report(document)))
    return console.file.getvalue()


@pytest.mark.parametrize("rib_on", ["base", "none"])
def test_the_document_holds_its_schema(rib_on):
    document = document_of(rib_on=rib_on)
    validator = Draft202012Validator(schema())
    validator.validate(document)
    rules = {"transmission", "pair-doubt"} if rib_on == "base" else {"rib-missing"}
    assert rules <= {f["rule"] for f in document["findings"]}
    document["joints"][0]["material"]["transmission"]["form"] = 5
    with pytest.raises(ValidationError):
        validator.validate(document)


def test_without_materials_the_document_does_not_speak_of_them():
    document = document_of("collapse = 0.4\n")
    Draft202012Validator(schema()).validate(document)
    assert "material" not in document["joints"][0]
    assert "transmission" not in {entry["rule"] for entry in document["limits"]}
    assert "transmission" not in document["joints"][0]["contours"][0]["stations"]
    assert "Light, material and melt" not in render_html(document)
    assert any("material" in line["text"] for line in document["not_checked"])


def test_limits_of_materials_are_listed_with_their_standing():
    limits = {entry["rule"]: entry for entry in document_of()["limits"]}
    assert (limits["transmission"]["value"], limits["transmission"]["standing"]) == (28.0, "common practice")
    assert limits["thickness-of-class"]["standing"] == "from memory"


def test_the_terminal_says_it():
    text = terminal(document_of())
    assert "Trial weld required" in text
    assert "Collapse window" in text
    assert re.search(r"Transmission c1: least 12\.5 %", text)


def test_the_page_has_a_chapter_that_obeys_its_policy():
    page = render_html(document_of())
    chapter = page[page.index('<section id="material"') : page.index('<section id="file"')]
    assert "Trial weld required" in chapter
    assert "Class 4" in chapter
    # No inline styles: the page's security policy would drop them.
    assert "<style" not in chapter
    assert "style=" not in chapter
    svg = chapter[chapter.index("<svg") : chapter.index("</svg>") + 6]
    assert ET.fromstring(svg).tag.endswith("svg")
    assert "None" not in re.sub(r"<[^>]+>", " ", chapter)
    assert "Undefined" not in chapter
