"""A model with two equally good readings shows both, and the options of each choose it."""

from __future__ import annotations

import shlex

import pytest
from builder.hard.tree import write_model
from builder.joints import JOINTS

from seamcheck.assembly import read_assembly
from seamcheck.catalogue.message import message_of
from seamcheck.document.read import read_text
from seamcheck.errors import NotReviewed
from seamcheck.joint import find_joints
from seamcheck.pipeline import review_model
from seamcheck.report.html import render_html
from seamcheck.report.reading_svg import reading_svg
from seamcheck.settings.settings import Settings


@pytest.fixture(scope="module")
def refused(tmp_path_factory):
    path = write_model(tmp_path_factory.mktemp("m") / "hood.step", JOINTS["rib-on-a-plate-under-a-hood"]())
    return path, review_model([path], Settings())


def test_both_readings_stand_in_the_document(refused):
    _, document = refused
    first, second = document["reason"]["readings"]
    assert {first["cover"], second["cover"]} == {"p1", "p2"}
    assert first["kind"] == second["kind"] == "weld-rib"
    assert min(first["confidence"], second["confidence"]) > 0.7
    for reading in (first, second):
        xs = [x for line in reading["band"] for x, _ in line]
        ys = [y for line in reading["band"] for _, y in line]
        # 60 x 40 with a rib 1.2 wide, turned by 15 degrees in the frame: its box lies between these
        assert 40 < max(xs) - min(xs) < 75
        assert 40 < max(ys) - min(ys) < 75
        assert reading_svg(reading).count("<path") == 2


def test_the_options_of_a_reading_choose_it(refused):
    path, document = refused
    for reading in document["reason"]["readings"]:
        words = shlex.split(reading["options"])
        told = dict(zip(words[::2], words[1::2], strict=True))
        beam = tuple(float(c) for c in told["--beam"].split(","))
        chosen = Settings().changed({"cover": told["--cover"], "base": told["--base"], "beam": beam})
        joint = review_model([path], chosen)["joints"][0]
        assert joint["cover"] == [reading["cover"]]
        assert joint["base"] == [reading["base"]]


def test_the_page_shows_a_picture_of_each(refused):
    _, document = refused
    page = render_html(document)
    assert page.count('<figure class="reading">') == 2
    for reading in document["reason"]["readings"]:
        assert reading["options"] in page


def test_the_document_is_read_back(refused):
    import json

    _, document = refused
    assert read_text(json.dumps(document), "d")["reason"]["readings"] == document["reason"]["readings"]


def test_roles_that_geometry_leaves_open_are_told_once_with_the_band(tmp_path):
    path = write_model(tmp_path / "shells.step", JOINTS["shells-with-a-tongue"]())
    assembly = read_assembly([path])
    with pytest.raises(NotReviewed, match="a stepped lap") as refusal:
        find_joints(assembly, Settings())
    said = message_of(refusal.value.message)
    assert said.key == "ambiguous.roles"
    # drawn: land 1.0 wide, groove 1.4 deep, opening of 9 mm; both parts lean 1.2 over 3.2 mm outside
    assert said.args["step"].value == pytest.approx(1.4, abs=0.02)
    assert said.args["open"].value == pytest.approx(9.0, abs=0.3)
    assert {said.args["tongue"], said.args["groove"]} == {"'part 1' (p1)", "'part 2' (p2)"}
