"""Damage that the kernel reads over in silence: the reader says what is missing or doubtful."""

from __future__ import annotations

import re
from pathlib import Path

import cadquery as cq
import pytest
from hypothesis import given
from hypothesis import strategies as st
from reading_models import box, replace, write

from seamcheck.assembly import read_assembly
from seamcheck.assembly.owners import decoded
from seamcheck.assembly.text import StepText
from seamcheck.errors import NotReviewed

SAMPLES = sorted((Path(__file__).parents[2] / "sample_models").glob("*.step"))


@pytest.fixture
def model(tmp_path):
    """Three plain boxes in one assembly: case, lid and pin."""
    parts = [
        ("case", box(40, 30, 10), None),
        ("lid", box(40, 30, 2), cq.Location((0, 0, 10))),
        ("pin", cq.Workplane().circle(2).extrude(9), cq.Location((10, 10, 12))),
    ]
    return write(tmp_path / "model.step", parts)


def first_of(path, keyword):
    """Number of the first record with a keyword."""
    return int(re.search(rf"#(\d+)\s*=\s*{keyword}\(", path.read_text())[1])


def without_record(path, number):
    return replace(path, rf"(?s)\n#{number}\s*=.*?;", "")


def test_sound_models_raise_no_doubt(model):
    assert read_assembly(model).doubts == ()


@pytest.mark.parametrize("path", SAMPLES[:6], ids=lambda path: path.stem)
def test_sample_models_raise_no_doubt(path):
    assert read_assembly(path).doubts == ()


def test_a_solid_that_can_not_be_read_is_named_with_its_product(model):
    replace(model, r"MANIFOLD_SOLID_BREP\('',#(\d+)\)", r"NO_SUCH_SOLID('',#\1)", count=1)
    replace(model, r"NO_SUCH_SOLID", "MANIFOLD_SOLID_BREP")
    shell = re.search(r"#(\d+) = CLOSED_SHELL\('',\((.*?)\)\)", model.read_text())
    faces = shell[2].split(",")
    replace(model, re.escape(shell[2]), ",".join(faces[:3]))  # half of the case's faces: no solid any more
    assembly = read_assembly(model)
    assert [part.kind for part in assembly.parts] == ["sheet", "solid", "solid"]
    solid = first_of(model, "MANIFOLD_SOLID_BREP")
    assert any(
        "lists 3 solid bodies; 1 of them ('case', #" in doubt and f"#{solid}, " in doubt for doubt in assembly.doubts
    )
    assert set(assembly.doubts) <= {*assembly.notes, *assembly.doubts}


def test_with_one_solid_left_the_lost_one_is_the_reason(tmp_path):
    path = write(tmp_path / "two.step", [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), None)])
    listed = re.search(r"CLOSED_SHELL\('',\((.*?)\)\)", path.read_text())[1]
    replace(path, re.escape(listed), ",".join(listed.split(",")[:3]))
    with pytest.raises(NotReviewed) as refused:
        read_assembly(path)
    assert refused.value.code == "unreadable"
    assert "'case'" in refused.value.message


def test_a_missing_record_is_a_doubt_with_its_number(model):
    number = first_of(model, "CARTESIAN_POINT") + 10**6
    replace(model, r"(PRODUCT_RELATED_PRODUCT_CATEGORY\('part',\$,\()#\d+", rf"\1#{number}", count=1)
    assembly = read_assembly(model)
    assert len(assembly.parts) == 3
    assert any(f"#{number})" in doubt for doubt in assembly.doubts)


def test_a_record_that_stands_twice_is_a_doubt(model):
    number = first_of(model, "PRODUCT_RELATED_PRODUCT_CATEGORY")
    record = re.search(rf"#{number} = .*?;", model.read_text())[0]
    replace(model, re.escape(record), f"{record}\n{record}")
    assert any(f"#{number})" in doubt and "more than once" in doubt for doubt in read_assembly(model).doubts)


def test_only_the_last_of_records_with_one_number_stays():
    text = StepText(b"DATA;\n#1=A('#3=;',\n2.);\n#2=B(#1);\n#1=C('it''s');\n/* #2=D(); */\nENDSEC;")
    kept = text.without_repeated()
    assert kept == b"DATA;\n            \n    \n#2=B(#1);\n#1=C('it''s');\n/* #2=D(); */\nENDSEC;"
    assert StepText(kept).repeated() == []


def test_a_solid_that_belongs_to_nothing_is_a_doubt(model):
    solid = first_of(model, "MANIFOLD_SOLID_BREP")
    replace(model, rf"(ADVANCED_BREP_SHAPE_REPRESENTATION\('',\(#\d+),#{solid}\)", r"\1)")
    assembly = read_assembly(model)
    assert [part.name for part in assembly.parts] == ["lid", "pin"]
    assert any(f"#{solid})" in doubt and "belong to no body" in doubt for doubt in assembly.doubts)


@pytest.mark.parametrize("keyword", ["CARTESIAN_POINT", "PLANE"])
def test_an_edge_without_a_curve_is_a_doubt(model, keyword):
    """The kernel takes another curve and says nothing."""
    circle = first_of(model, "CIRCLE")
    replace(model, rf"#{circle} = CIRCLE", f"#{circle} = {keyword}")
    assert any(f"#{circle})" in doubt and "no curve" in doubt for doubt in read_assembly(model).doubts)


@pytest.mark.parametrize("away", [0.005, 0.5])
def test_a_corner_beside_its_edges_is_a_doubt_beyond_the_tolerance(model, away):
    """A corner is moved, its edges and faces are not: they miss each other by as much."""
    text = model.read_text()
    corner = first_of(model, "VERTEX_POINT")
    point = re.search(rf"#{corner} = VERTEX_POINT\('',#(\d+)\)", text)[1]
    x = re.search(rf"#{point} = CARTESIAN_POINT\('',\(([^,]*),", text)[1]
    replace(model, rf"(#{point} = CARTESIAN_POINT\('',\(){re.escape(x)},", rf"\g<1>{float(x) + away},")
    doubts = read_assembly(model).doubts
    if away < 0.02:
        assert doubts == ()
        return
    stated = [float(d) for doubt in doubts for d in re.findall(r"up to ([\d.]+) mm apart", doubt)]
    assert stated
    assert stated[0] == pytest.approx(away, rel=0.1)
    assert "'case'" in doubts[0]


def test_a_plane_beside_its_edges_is_a_doubt(model):
    """The kernel sets no tolerance between a plane and its edges, so nothing but the corners can tell."""
    text = model.read_text()
    plane = re.search(r"= PLANE\('',#(\d+)\)", text)[1]
    origin, axis = re.search(rf"#{plane} = AXIS2_PLACEMENT_3D\('',#(\d+),#(\d+),", text).groups()
    normal = [float(x) for x in re.search(rf"#{axis} = DIRECTION\('',\((.*?)\)\)", text)[1].split(",")]
    point = re.search(rf"#{origin} = CARTESIAN_POINT\('',\((.*?)\)\)", text)[1]
    moved = ",".join(repr(float(x) + 0.3 * n) for x, n in zip(point.split(","), normal, strict=True))
    replace(model, rf"#{origin} = CARTESIAN_POINT\('',\({re.escape(point)}", f"#{origin} = CARTESIAN_POINT('',({moved}")
    assert any("damaged outline" in doubt or "miss each other" in doubt for doubt in read_assembly(model).doubts)


def test_an_outline_with_a_gap_is_a_doubt(model):
    replace(model, r"(= EDGE_LOOP\('',\()#\d+,", r"\1", count=1)
    assert read_assembly(model).doubts


def test_numbers_in_names_and_comments_are_no_records(model):
    replace(model, r"PRODUCT\('pin','pin'", "PRODUCT('pin','pin #987654; #3=4 (it''s'")
    replace(model, r"\nDATA;", "\nDATA; /* #55 = don't #987653 */")
    assembly = read_assembly(model)
    assert assembly.doubts == ()
    assert assembly.parts[2].name.startswith("pin #987654")


def test_a_quotation_mark_without_partner_hides_no_missing_record():
    text = StepText(b"DATA;\n#1=A('x,#2);\n#2=B(#3);\n#4=C(#5);\nENDSEC;")
    assert 3 in text.missing()
    assert 5 in text.missing()


@given(st.lists(st.tuples(st.integers(1, 40), st.lists(st.integers(1, 60), max_size=4)), min_size=1, max_size=30))
def test_missing_and_repeated_records_as_plain_python_finds_them(records):
    lines = [f"#{number}=A('',{','.join(f'#{to}' for to in targets)});" for number, targets in records]
    text = StepText(("ISO-10303-21;\nDATA;\n" + "\n".join(lines) + "\nENDSEC;").encode())
    numbers = [number for number, _ in records]
    targets = {to for _, every in records for to in every}
    assert text.missing() == sorted(targets - set(numbers))
    assert text.repeated() == sorted({n for n in numbers if numbers.count(n) > 1})


def test_strings_of_the_file_are_decoded():
    # ISO 10303-21, 6.4.3.3: UTF-16 code units in hex between \X2\ and \X0\; 6.4.3.1: '' and \\
    assert decoded(rb"\X2\30AB30D030FC\X0\ 1 it''s") == "カバー 1 it's"
    assert decoded("Gehäuse".encode()) == "Gehäuse"


def test_a_hollow_solid_raises_no_doubt(tmp_path):
    """Its inner shells stand in the text as ORIENTED_CLOSED_SHELL (ISO 10303-42, brep_with_voids)."""
    hollow = (
        box(40, 30, 10).cut(box(10, 10, 4).translate((5, 5, 3))).cut(cq.Workplane().sphere(3).translate((30, 15, 5)))
    )
    path = write(tmp_path / "hollow.step", [("case", hollow, None), ("lid", box(40, 30, 2), None)])
    assert "BREP_WITH_VOIDS" in path.read_text()
    assembly = read_assembly(path)
    assert assembly.doubts == ()
    assert [part.faces for part in assembly.parts] == [13, 6]
    assert None not in assembly.parts[0].entities


def test_one_part_with_a_doubt_is_still_read(tmp_path):
    """Whether one part is enough is for the finder of seams to say."""
    path = write(tmp_path / "one.step", [("case", box(40, 30, 10), None)])
    replace(path, r"(= EDGE_LOOP\('',\()#\d+,", r"\1", count=1)
    assert len(read_assembly(path).parts) == 1


@pytest.mark.parametrize("unit", ["INCH", "FT"])
@pytest.mark.parametrize("stated", ["24.4,#", "304.0,#", None])
def test_a_unit_that_is_declared_wrongly_is_a_doubt(tmp_path, unit, stated):
    parts = [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), cq.Location((0, 0, 10)))]
    path = write(tmp_path / "model.step", parts, unit=unit)
    if stated is None:
        assert read_assembly(path).doubts == ()
        return
    replace(path, r"(= LENGTH_MEASURE_WITH_UNIT\().*?,(#?)", rf"\g<1>{stated}")
    assert any("length unit" in doubt for doubt in read_assembly(path).doubts)


@pytest.mark.parametrize("written", ["LENGTH_MEASURE(25.4),#{mm}", "LENGTH_MEASURE(2.54E1),#{mm}"])
def test_an_inch_is_known_in_every_spelling(tmp_path, written):
    path = write(tmp_path / "model.step", [("case", box(40, 30, 10), None)], unit="INCH")
    millimetre = re.search(r"LENGTH_MEASURE_WITH_UNIT\(25.4,#(\d+)\)", path.read_text())[1]
    replace(path, r"(= LENGTH_MEASURE_WITH_UNIT\().*?\);", rf"\g<1>{written.format(mm=millimetre)});")
    assert read_assembly(path).doubts == ()


def test_a_broken_record_is_a_doubt_with_its_line(model):
    lines = model.read_text().split("\n")
    number = next(n for n, line in enumerate(lines) if "PRODUCT_RELATED_PRODUCT_CATEGORY" in line)
    lines[number] = lines[number].replace(",(", ",;(")
    model.write_text("\n".join(lines))
    assert any(f"on line {number + 1}:" in doubt for doubt in read_assembly(model).doubts)


def test_semicolons_in_names_and_comments_break_no_record():
    text = b"HEADER;\nENDSEC;\nDATA;\n#1=A('x;y');/* ; */\n#2=B('it''s; ;')\n ;\n#3=C(#1) /* why; */;\nENDSEC;\nEND;"
    assert StepText(text).unfinished() == []
    assert StepText(text.replace(b"(#1)", b"(;#1)")).unfinished() != []
