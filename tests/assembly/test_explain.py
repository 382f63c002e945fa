"""What the size and the damage of a model add to a review that came to nothing, or to nonsense."""

from __future__ import annotations

import re

import cadquery as cq
import msgspec
import pytest
from builder import Spec, rounded_rectangle
from builder.pair import draw
from builder.step import write_step
from builder.topology import lowest_face, scaled, without_faces
from reading_models import box, replace, write

from seamcheck.assembly import read_assembly
from seamcheck.assembly.explain import costs, explained
from seamcheck.errors import NotReviewed
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

SPEC = Spec(track=rounded_rectangle(120, 80, 10))


def reviewed(path, **settings):
    return review_model([path], Settings().changed({"station_spacing": 2.0, **settings}))


@pytest.fixture(scope="module")
def drawn():
    return draw(SPEC)


# NIST Handbook 44, appendix C: 1 inch = 25.4 mm exactly
@pytest.mark.parametrize(
    ("scale", "mistake"),
    [(1 / 25.4, "inches had been taken for millimetres"), (0.1, "centimetres had been taken for millimetres")],
)
def test_inches_and_centimetres_taken_for_millimetres_are_told(tmp_path, drawn, scale, mistake):
    lid, case = (scaled(shape, scale) for shape in drawn)
    path = write_step(tmp_path / "model.step", [("lid", lid, None), ("case", case, None)])
    reason = reviewed(path)["reason"]
    assert reason["code"] in ("scale-suspect", "no-seam")  # a rib of 0.05 mm is hardly found
    assert mistake in reason["message"]


def test_a_cover_too_thin_is_told_with_the_factor_that_makes_it_usual(tmp_path, drawn):
    lid, case = (scaled(shape, 0.1) for shape in drawn)
    path = write_step(tmp_path / "model.step", [("lid", lid, None), ("case", case, None)])
    reason = reviewed(path)["reason"]
    assert reason["code"] == "scale-suspect"
    assert "a cover 0.2 mm thick" in reason["message"]
    assert "A factor of 10 would" in reason["message"]
    # who names the parts says that the size is right
    assert reviewed(path, cover="lid", base="case")["verdict"] == "fail"


def test_a_size_that_is_odd_is_told_where_no_seam_is_found(tmp_path):
    parts = [("case", box(2000, 900, 10), None), ("lid", box(2000, 900, 2), cq.Location((0, 0, 10)))]
    reason = reviewed(write(tmp_path / "model.step", parts))["reason"]
    assert reason["code"] == "no-seam"
    assert "measures 2 m: if it should be 78.7 mm" in reason["message"]  # 2000 / 25.4
    assert "taken for inches (the file declares millimetre)" in reason["message"]


def test_a_usual_size_and_a_sound_model_add_nothing(tmp_path):
    parts = [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), cq.Location((0, 0, 30)))]
    assembly = read_assembly(write(tmp_path / "model.step", parts))
    reason = NotReviewed("no-contact", "Nothing touches.")
    assert explained(reason, assembly) is not None
    assert explained(reason, assembly).message == "Nothing touches."


def test_damage_leads_the_reason_that_it_may_explain(tmp_path):
    parts = [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), cq.Location((0, 0, 30)))]
    path = write(tmp_path / "model.step", parts)
    replace(path, r"(= EDGE_LOOP\('',\()#\d+,", r"\1", count=1)
    document = reviewed(path)
    assert document["reason"]["code"] == "no-contact"
    assert "The model also shows signs of damage: 'case': " in document["reason"]["message"]
    assert any("'case'" in note["text"] for note in document["model"]["notes"])


def test_a_second_part_that_is_only_a_sheet_is_named(tmp_path):
    sheet = cq.Workplane().rect(40, 30).extrude(2).faces("<Z").val()
    reason = reviewed(write(tmp_path / "model.step", [("case", box(40, 30, 10), None), ("lid", sheet, None)]))["reason"]
    assert reason["code"] == "single-part"
    assert "one solid only, 'case'; 'lid' is a sheet body" in reason["message"]


def test_the_same_body_twice_in_one_place_is_left_out_and_told(tmp_path, drawn):
    lid, case = drawn
    parts = [("lid", lid, None), ("case", case, None), ("lid copy", scaled(lid, 1.0), None)]
    document = reviewed(write_step(tmp_path / "model.step", parts))
    assert document["verdict"] == "attention"
    doubts = [finding["message"] for finding in document["findings"] if finding["rule"] == "model-doubt"]
    assert len(doubts) == 1
    assert "'lid copy' (p3): It stands in the same place as 'lid' (p1)" in doubts[0]


def test_one_body_in_two_files_is_a_single_part(tmp_path):
    case = box(40, 30, 10)
    files = [write(tmp_path / f"{name}.step", [(name, case, None)]) for name in ("case", "lid")]
    reason = review_model(files, Settings())["reason"]
    assert reason["code"] == "single-part"
    assert "'lid' (p2): It stands in the same place as 'case' (p1) and has the same shape" in reason["message"]


def test_bodies_of_one_box_and_different_volume_are_two(tmp_path):
    hollow = box(40, 30, 10).cut(box(20, 10, 4).translate((10, 10, 3)))
    solid = box(40, 30, 10).cut(box(10, 10, 4).translate((10, 10, 3)))
    assembly = read_assembly(write(tmp_path / "model.step", [("a", hollow, None), ("b", solid, None)]))
    assert [part.kind for part in assembly.parts] == ["solid", "solid"]


def test_a_solid_without_one_of_its_faces_is_reviewed_with_a_doubt(tmp_path, drawn):
    """The case has no underside; the file still lists it as a solid."""
    lid, case = drawn
    open_case = without_faces(case, lowest_face(case))
    document = reviewed(write_step(tmp_path / "model.step", [("lid", lid, None), ("case", open_case, None)]))
    assert document["verdict"] == "attention"
    doubt = next(finding["message"] for finding in document["findings"] if finding["rule"] == "model-doubt")
    assert re.search(r"'case': Its shell is not closed: \d+ of \d+ edges .* near \(", doubt)


def test_a_box_without_a_lid_is_a_solid_with_an_opening_where_the_file_lists_a_solid(tmp_path):
    path = write(tmp_path / "model.step", [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), None)])
    listed = re.search(r"CLOSED_SHELL\('',\((.*?)\)\)", path.read_text())[1]
    replace(path, re.escape(listed), ",".join(listed.split(",")[:-1]))
    case = read_assembly(path).parts[0]
    assert case.kind == "solid"
    assert "4 of 12 edges" in case.notes[0]  # by hand: the rim of the opening has four edges


def test_what_a_large_model_costs_is_said_of_its_parts_with_most_faces(drawn, tmp_path):
    assembly = read_assembly([write_step(tmp_path / "pair.step", [("lid", drawn[0], None), ("case", drawn[1], None)])])
    assert costs(assembly) is None
    many = msgspec.structs.replace(assembly, parts=tuple(msgspec.structs.replace(p, faces=900) for p in assembly.parts))
    assert f"2 bodies with 1800 faces; most are those of '{many.parts[0].name}' (p1)" in (costs(many) or "")
