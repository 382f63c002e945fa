"""What is read from sound files: bodies, names, places, units, colours."""

import math
import re

import cadquery as cq
import pytest
from reading_models import box, extent, replace, volume, write, write_painted, write_tree

from seamcheck.assembly import read_assembly


@pytest.mark.parametrize(
    ("unit", "name"), [("MM", "millimetre"), ("INCH", "inch"), ("M", "metre"), ("FT", "foot"), ("CM", "centimetre")]
)
def test_every_length_unit_becomes_millimetres(tmp_path, unit, name):
    path = write(tmp_path / "a.step", [("case", box(40, 30, 10), None)], unit=unit)
    assembly = read_assembly(path)
    assert assembly.files[0].length_unit == name
    assert extent(assembly.parts[0].shape) == pytest.approx((0, 0, 0, 40, 30, 10), abs=1e-6)
    # the records are found also where the text's numbers are no millimetres
    assert None not in assembly.parts[0].entities


@pytest.mark.parametrize(("unit", "size"), [("INCH", "inch"), ("FT", "foot")])
def test_a_unit_is_what_it_is_defined_by_whatever_it_is_called(tmp_path, unit, size):
    """ISO 10303-41: the conversion factor defines a unit; some writers call the millimetre 'METRE'."""
    path = write(tmp_path / "a.step", [("case", box(40, 30, 10), None)], unit=unit)
    replace(path, r"CONVERSION_BASED_UNIT\('[A-Z]+'", "CONVERSION_BASED_UNIT('METRE'")
    assembly = read_assembly(path)
    assert assembly.files[0].length_unit == size
    assert not assembly.doubts
    assert f"calls its length unit metre and defines it as one {size}" in assembly.notes[0]
    assert extent(assembly.parts[0].shape) == pytest.approx((0, 0, 0, 40, 30, 10), abs=1e-6)


def test_a_missing_length_unit_is_a_note_and_means_millimetres(tmp_path):
    path = write(tmp_path / "a.step", [("case", box(40, 30, 10), None)])
    replace(path, r"\( LENGTH_UNIT\(\) NAMED_UNIT\(\*\) SI_UNIT\(\.MILLI\.,\.METRE\.\) \)",
            "( NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.) )")  # fmt: skip
    assembly = read_assembly(path)
    assert assembly.files[0].length_unit == ""
    assert "no length unit" in assembly.notes[0]
    assert extent(assembly.parts[0].shape) == pytest.approx((0, 0, 0, 40, 30, 10), abs=1e-6)


@pytest.mark.parametrize(
    ("schema", "declared"),
    [("AP203", "CONFIG_CONTROL_DESIGN"), ("AP214IS", "AUTOMOTIVE_DESIGN"), ("AP242DIS", "AP242_MANAGED")],
)
def test_the_three_usual_schemas_are_read_and_named(tmp_path, schema, declared):
    path = write(tmp_path / "a.step", [("case", box(40, 30, 10), None)], schema=schema)
    assembly = read_assembly(path)
    assert assembly.files[0].step_schema.startswith(declared)
    assert volume(assembly.parts[0].shape) == pytest.approx(40 * 30 * 10)


def test_names_survive_in_utf8_and_as_escapes(tmp_path):
    path = write(tmp_path / "a.step", [("Gehäuse", box(40, 30, 10), None), ("lid", box(40, 30, 2), None)])
    # ISO 10303-21, 6.4.3.3: \X2\ brings UTF-16 code units as four hex digits each, \X0\ ends it
    replace(path, "PRODUCT\\('lid','lid'", r"PRODUCT('lid','\\X2\\30AB30D030FC\\X0\\ 1'")
    assert [part.name for part in read_assembly(path).parts] == ["Gehäuse", "カバー 1"]


def test_empty_and_equal_names_give_separate_parts(tmp_path):
    path = write(tmp_path / "a.step", [("x", box(40, 30, 10), None), ("x", box(40, 30, 2), None)])
    assembly = read_assembly(path)
    assert [(part.id, part.name) for part in assembly.parts] == [("p1", "x"), ("p2", "x")]
    replace(path, r"PRODUCT\('x','x'", "PRODUCT('',''")
    replace(path, r"(NEXT_ASSEMBLY_USAGE_OCCURRENCE\('\d+',)'x','[^']*'", r"\1'',''")
    assembly = read_assembly(path)
    assert [(part.id, part.name) for part in assembly.parts] == [("p1", ""), ("p2", "")]


def test_nested_placements_multiply(tmp_path):
    inner = cq.Assembly(name="inner").add(box(10, 4, 2), name="bar", loc=cq.Location((5, 0, 0)))
    outer = cq.Assembly(name="outer").add(inner, name="inner", loc=cq.Location((0, 0, 0), (0, 0, 1), 90))
    station = cq.Assembly(name="station")
    station.add(outer, name="first", loc=cq.Location((0, 0, 7)))
    station.add(outer, name="second", loc=cq.Location((100, 0, 0), (1, 0, 0), 180))
    assembly = read_assembly(write_tree(tmp_path / "a.step", station))
    first, second = assembly.parts
    assert first.path == ("station", "first", "inner", "bar")
    # by hand: x 5..15, y 0..4, z 0..2 turned by 90 degrees about z: x -4..0, y 5..15; then moved
    assert extent(first.shape) == pytest.approx((-4, 5, 7, 0, 15, 9), abs=1e-6)
    assert extent(second.shape) == pytest.approx((96, -15, -2, 100, -5, 0), abs=1e-6)


def test_a_mirrored_body_keeps_its_outside(tmp_path):
    wedge = cq.Workplane().polyline([(0, 0), (30, 0), (0, 20)]).close().extrude(10)
    path = write(tmp_path / "a.step", [("left", wedge, None), ("right", wedge.mirror("YZ"), None)])
    left, right = read_assembly(path).parts
    # closed form: half of 30 x 20, times 10; positive where the faces point outward
    assert (volume(left.shape), volume(right.shape)) == pytest.approx((3000, 3000))
    assert extent(right.shape) == pytest.approx((-30, 0, 0, 0, 20, 10), abs=1e-6)


def test_colour_and_transparency_come_from_the_instance_or_the_product(tmp_path):
    station = cq.Assembly(name="station")
    station.add(box(40, 30, 10), name="case", color=cq.Color(0.1, 0.1, 0.1))
    station.add(box(40, 30, 2), name="lid", color=cq.Color(0.2, 0.4, 0.6, 0.25), loc=cq.Location((0, 0, 10)))
    station.add(box(5, 5, 5), name="screw")
    case, lid, screw = read_assembly(write_tree(tmp_path / "a.step", station)).parts
    assert case.colour == pytest.approx((0.1, 0.1, 0.1), abs=0.005)
    assert lid.colour == pytest.approx((0.2, 0.4, 0.6), abs=0.005)
    assert (case.transparency, lid.transparency) == pytest.approx((0.0, 0.75), abs=0.005)
    assert (screw.colour, screw.transparency) == (None, None)


@pytest.mark.parametrize(
    ("painted", "seen"), [("inside", (True, True)), ("first", (True, False)), ("second", (False, True))]
)
def test_the_colour_of_an_instance_reaches_what_is_in_it(tmp_path, painted, seen):
    green = (0.0, 1.0, 0.0)
    parts = read_assembly(write_painted(tmp_path / "a.step", painted, green)).parts
    assert [part.colour for part in parts] == [green if shown else None for shown in seen]


def test_several_solids_in_one_product_are_several_parts(tmp_path):
    both = cq.Compound.makeCompound([box(40, 30, 10).val(), box(40, 30, 2).translate((0, 0, 10)).val()])
    assembly = read_assembly(write(tmp_path / "a.step", [("both", both, None)]))
    assert [(part.name, part.kind, part.faces) for part in assembly.parts] == [("both", "solid", 6)] * 2
    assert [volume(part.shape) for part in assembly.parts] == pytest.approx([12000, 2400])


def test_files_given_together_share_one_frame(tmp_path):
    lid = write(tmp_path / "lid.step", [("lid", box(40, 30, 2), cq.Location((0, 0, 10)))], unit="INCH")
    case = write(tmp_path / "case.step", [("case", box(40, 30, 10), None)])
    assembly = read_assembly([lid, case])
    assert [file.name for file in assembly.files] == ["lid.step", "case.step"]
    assert [(part.id, part.name, part.file) for part in assembly.parts] == [("p1", "lid", 0), ("p2", "case", 1)]
    assert extent(assembly.parts[0].shape)[2] == pytest.approx(10)


def test_the_only_solid_of_a_file_is_called_as_its_file(tmp_path):
    top = write(tmp_path / "top.step", [("2026-04-17-19-05-48-952", box(40, 30, 2), cq.Location((0, 0, 10)))])
    bottom = write(tmp_path / "bottom.step", [("2026-04-17-19-05-48-953", box(40, 30, 10), None)])
    parts = read_assembly([top, bottom]).parts
    assert [part.name for part in parts] == ["top", "bottom"]
    assert [part.path[-1] for part in parts] == ["2026-04-17-19-05-48-952", "2026-04-17-19-05-48-953"]
    assert [part.name for part in read_assembly(top).parts] == ["2026-04-17-19-05-48-952"]


def test_sheets_beside_solids_are_named_as_such(tmp_path):
    sheet = cq.Workplane().rect(20, 20).extrude(5).faces("<Z or >Z").vals()[0]
    assembly = read_assembly(write(tmp_path / "a.step", [("case", box(40, 30, 10), None), ("foil", sheet, None)]))
    assert [(part.name, part.kind, part.solids) for part in assembly.parts] == [
        ("case", "solid", 1),
        ("foil", "sheet", 0),
    ]


def test_a_body_drawn_inside_out_is_turned_and_noted(tmp_path):
    path = write(tmp_path / "a.step", [("case", box(40, 30, 10), None)])
    replace(path, r"(ADVANCED_FACE\([^;]*),\.([TF])\.\);", lambda found: (
        f"{found[1]},.{'F' if found[2] == 'T' else 'T'}.);"))  # fmt: skip
    part = read_assembly(path).parts[0]
    assert part.kind == "solid"
    assert volume(part.shape) == pytest.approx(12000)


def test_an_open_shell_with_a_small_hole_stays_a_solid_with_a_note(tmp_path):
    plate = cq.Workplane().box(60, 60, 5).faces(">Z").workplane().rarray(10, 10, 4, 4).rect(4, 4).extrude(2)
    path = write(tmp_path / "a.step", [("case", plate, cq.Location((100, 0, 0))), ("lid", box(9, 9, 9), None)])
    text = path.read_text()
    listed = re.search(r"CLOSED_SHELL\('',\([^;]*;", text)[0]
    path.write_text(text.replace(listed, listed[: listed.rindex(",")] + "));"))
    part = read_assembly(path).parts[0]
    assert part.kind == "solid"
    assert "not closed" in part.notes[0]
    where = [float(value) for value in re.findall(r"-?\d+\.\d", part.notes[1])]
    assert 70 < where[0] < 130  # it says where, in the frame of the assembly
    assert volume(part.shape) > 0


def test_stages_are_reported_in_order(tmp_path):
    stages = []
    read_assembly(write(tmp_path / "a.step", [("case", box(40, 30, 10), None)]), stages.append)
    assert stages == ["reading", "transferring", "checking"]


def test_reading_prints_nothing(tmp_path, capfd):
    read_assembly(write(tmp_path / "a.step", [("case", box(40, 30, 10), None)]))
    assert capfd.readouterr() == ("", "")


@pytest.mark.parametrize(("scale", "factor"), [(1000, 0.001), (0.001, 1000)])
def test_absurd_sizes_are_scale_suspect_with_the_factor(tmp_path, scale, factor):
    from seamcheck.errors import NotReviewed

    parts = [("case", box(40 * scale, 30 * scale, 10 * scale), None)]
    parts.append(("lid", box(40 * scale, 30 * scale, 2 * scale), None))
    with pytest.raises(NotReviewed) as refused:
        read_assembly(write(tmp_path / "a.step", parts))
    assert refused.value.code == "scale-suspect"
    assert f"factor of {factor:g} " in refused.value.message


def test_one_huge_body_among_sane_ones_is_a_note(tmp_path):
    parts = [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), None), ("hall", box(2e4, 2e4, 5e3), None)]
    assembly = read_assembly(write(tmp_path / "a.step", parts))
    assert [part.kind for part in assembly.parts] == ["solid"] * 3
    assert any("'hall'" in note for note in assembly.notes)


def test_hundreds_of_instances_keep_their_order(tmp_path):
    ball = cq.Workplane().sphere(1)
    station = cq.Assembly(name="station")
    for number in range(200):
        station.add(ball, name=f"ball {number}", loc=cq.Location((3 * number, 0, 0)))
    parts = read_assembly(write_tree(tmp_path / "a.step", station)).parts
    assert [round((extent(part.shape)[0] + 1) / 3) for part in parts] == list(range(200))
    assert volume(parts[0].shape) == pytest.approx(4 / 3 * math.pi)
