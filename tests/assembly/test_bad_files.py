"""Files that can't be read: each gets its code and a sentence or two that a designer can act on."""

from __future__ import annotations

import bz2
import gzip
import io
import os
import re
import sys
import zipfile
from pathlib import Path

import cadquery as cq
import pytest
from reading_models import box, replace, write

from seamcheck.assembly import read_assembly
from seamcheck.errors import NotReviewed


@pytest.fixture(scope="module")
def sound(tmp_path_factory) -> bytes:
    path = tmp_path_factory.mktemp("sound") / "a.step"
    write(path, [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), cq.Location((0, 0, 10)))])
    return path.read_bytes()


def refused(path: Path) -> NotReviewed:
    """The refusal, checked to be one to three plain sentences that name the file or the part."""
    with pytest.raises(NotReviewed) as caught:
        read_assembly(path)
    message = str(caught.value)
    assert 1 <= len(re.findall(r"[.!](?: |$)", message)) <= 3, message
    assert message.endswith(".")
    assert len(message) < 300
    return caught.value


def refused_text(tmp_path, data: bytes) -> NotReviewed:
    path = tmp_path / "model.step"
    path.write_bytes(data)
    error = refused(path)
    assert "model.step" in error.message
    return error


def test_a_missing_file(tmp_path):
    error = refused(tmp_path / "nothing.step")
    assert error.code == "unreadable"
    assert "no file 'nothing.step'" in error.message


def test_a_folder(tmp_path):
    error = refused(tmp_path)
    assert error.code == "unreadable"
    assert "folder" in error.message


def test_no_file_at_all():
    with pytest.raises(NotReviewed) as caught:
        read_assembly([])
    assert caught.value.code == "empty"


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_a_pipe_and_a_device_never_block(tmp_path):
    os.mkfifo(tmp_path / "pipe.step")
    for path in (tmp_path / "pipe.step", Path(os.devnull)):
        error = refused(path)
        assert error.code == "unreadable"
        assert "device or a pipe" in error.message


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_the_facts_of_what_can_not_be_read_never_block(tmp_path):
    from seamcheck.assembly.source import file_facts

    os.mkfifo(tmp_path / "pipe.step")
    (tmp_path / "a.step").write_bytes(b"abc")
    assert file_facts(tmp_path / "pipe.step").sha256 == ""
    assert file_facts(tmp_path / "nothing.step").name == "nothing.step"
    # FIPS 180-2, appendix B.1
    assert file_facts(tmp_path / "a.step").sha256.startswith("ba7816bf8f01cfea414140de5dae2223")


def test_a_link_to_nowhere(tmp_path):
    (tmp_path / "a.step").symlink_to(tmp_path / "gone.step")
    assert refused(tmp_path / "a.step").code == "unreadable"


@pytest.mark.skipif(sys.platform == "win32" or os.geteuid() == 0, reason="everything may be read here")
def test_no_permission(tmp_path, sound):
    path = tmp_path / "a.step"
    path.write_bytes(sound)
    path.chmod(0)
    error = refused(path)
    assert error.code == "unreadable"
    assert "permission" in error.message


def test_permission_denied_by_the_system(tmp_path, sound, monkeypatch):
    import builtins

    path = tmp_path / "a.step"
    path.write_bytes(sound)

    def denied(*args, **options):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(builtins, "open", denied)
    error = refused(path)
    assert error.code == "unreadable"
    assert "permission" in error.message


def test_a_file_that_changes_while_it_is_read(tmp_path, sound, monkeypatch):
    path = tmp_path / "a.step"
    path.write_bytes(sound)
    real, calls = os.fstat, []

    def growing(descriptor):
        calls.append(descriptor)
        facts = list(real(descriptor))
        facts[6] += len(calls)  # st_size
        return os.stat_result(facts)

    monkeypatch.setattr(os, "fstat", growing)
    error = refused(path)
    assert error.code == "unreadable"
    assert "changes while it is read" in error.message


def test_a_file_beyond_the_size_that_is_read(tmp_path, sound):
    from seamcheck.assembly.source import read_source

    path = tmp_path / "a.step"
    path.write_bytes(sound)
    with pytest.raises(NotReviewed) as caught:
        read_source(path, largest_mb=0.001)
    assert caught.value.code == "unsupported"


def zipped(data: bytes) -> bytes:
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w") as archive:
        archive.writestr("model.step", data)
    return target.getvalue()


DISGUISES = {
    "gzip": (gzip.compress, "gzip"),
    "bzip2": (bz2.compress, "bzip2"),
    "zip": (zipped, "zip"),
    "UTF-16": (lambda data: data.decode("latin-1").encode("utf-16"), "UTF-16"),
    "UTF-16 without mark": (lambda data: data.decode("latin-1").encode("utf-16-be"), "UTF-16"),
    "HTML": (lambda data: b"<!DOCTYPE html>\n<html><body>Sign in</body></html>", "web page"),
    "XML": (lambda data: b"<?xml version='1.0'?><model/>", "XML"),
    "LFS": (lambda data: b"version https://git-lfs.github.com/spec/v1\noid sha256:4d\nsize 12345\n", "Git LFS"),
    "STL text": (lambda data: b"solid case\n facet normal 0 0 1\n", "STL"),
    "STL binary": (lambda data: bytes(80) + (2).to_bytes(4, "little") + bytes(100), "STL"),
    "IGES": (lambda data: b" " * 72 + b"S      1\n1H,,1H;" + b" " * 65 + b"G      1\n", "IGES"),
    "DXF": (lambda data: b"  0\r\nSECTION\r\n  2\r\nHEADER\r\n", "DXF"),
    "OBJ": (lambda data: b"# made by hand\nv 0 0 0\nv 1 0 0\n", "OBJ"),
    "PDF": (lambda data: b"%PDF-1.7\n", "PDF"),
    "text": (lambda data: b"Dear colleague, please find attached", "begin with ISO-10303-21"),
    "binary": (lambda data: bytes(range(256)) * 20, "binary"),
}


@pytest.mark.parametrize("disguise", DISGUISES)
def test_another_format_is_named(tmp_path, sound, disguise):
    change, word = DISGUISES[disguise]
    error = refused_text(tmp_path, change(sound))
    assert error.code == "not-step"
    assert word in error.message


def test_a_building_model(tmp_path, sound):
    error = refused_text(tmp_path, re.sub(rb"FILE_SCHEMA\(\('[^']*'", b"FILE_SCHEMA(('IFC4'", sound))
    assert error.code == "unsupported"


@pytest.mark.parametrize("data", [b"", b" \n\n", bytes(4096)], ids=["empty", "blank", "zeros"])
def test_an_empty_file(tmp_path, data):
    assert refused_text(tmp_path, data).code == "empty"


@pytest.mark.parametrize("share", [0.1, 0.5, 0.99])
def test_a_truncated_file(tmp_path, sound, share):
    error = refused_text(tmp_path, sound[: int(len(sound) * share)])
    assert error.code == "unreadable"
    assert "cut off" in error.message


def test_a_header_without_data(tmp_path, sound):
    head = sound[: sound.index(b"DATA;")] + b"DATA;\nENDSEC;\nEND-ISO-10303-21;\n"
    assert refused_text(tmp_path, head).code == "empty"


def test_what_stands_behind_the_end_is_not_read(tmp_path, sound):
    """ISO 10303-21 (2016), 5.3: END-ISO-10303-21 ends it all. The long run on damaged files found one read beyond."""
    path = tmp_path / "model.step"
    again = sound[sound.index(b"DATA;") + 200 :]  # records that the kernel would take in place of the first ones
    path.write_bytes(sound + again)
    assembly = read_assembly(path)
    assert [part.name for part in assembly.parts] == ["case", "lid"]
    assert len(assembly.doubts) == 1
    assert "text after its end" in assembly.doubts[0]
    end = b" ENDSEC;\nEND-ISO-10303-21; "
    path.write_bytes(sound.replace(b"DATA;", b"DATA;\n/*" + end + b"*/", 1).replace(b"'case'", b"'case" + end + b"'"))
    assembly = read_assembly(path)
    assert len(assembly.parts) == 2
    assert not [doubt for doubt in assembly.doubts if "after its end" in doubt]


@pytest.mark.parametrize("depth", [1000, 200_000])
@pytest.mark.parametrize("closed", [True, False])
def test_brackets_so_deep_that_the_kernel_would_crash(tmp_path, sound, depth, closed):
    deep = b"#9999=X(" + b"(" * depth + b")" * (depth * closed) + b");\n"
    path = tmp_path / "model.step"
    path.write_bytes(sound.replace(b"DATA;", b"DATA;\n" + deep))
    assembly = read_assembly(path)
    assert [part.name for part in assembly.parts] == ["case", "lid"]
    told = [int(n) for doubt in assembly.doubts for n in re.findall(r"nests brackets (\d+) deep", doubt)]
    assert depth < told[0] < depth + 10


@pytest.mark.parametrize("depth", [60, 1000])
def test_brackets_in_place_of_a_value_leave_the_record_its_own_last_bracket(tmp_path, sound, depth):
    deep, count = re.subn(
        rb"(PRODUCT_DEFINITION_SHAPE\s*\('','',)#\d+", rb"\1" + b"(" * depth + b")" * depth, sound, count=1
    )
    assert count == 1
    path = tmp_path / "model.step"
    path.write_bytes(deep)
    assembly = read_assembly(path)
    assert {"case", "lid"} >= {part.name for part in assembly.parts if part.name}
    assert len([part for part in assembly.parts if part.kind == "solid"]) == 2
    assert any("nests brackets" in doubt for doubt in assembly.doubts)


def test_brackets_in_no_order_but_too_deep(tmp_path, sound):
    deep = b"#9999=X(" + b"(1,(" * 5000 + b")" * 10_000 + b");\n"
    error = refused_text(tmp_path, sound.replace(b"DATA;", b"DATA;\n" + deep))
    assert error.code == "unreadable"
    assert "nests brackets 10001 deep" in error.message


@pytest.mark.parametrize(
    ("pattern", "new"),
    [
        (r"(= SURFACE_STYLE_USAGE\(\.BOTH\.,)#\d+", r"\1#{above}"),
        (r"(= SURFACE_STYLE_USAGE\(\.BOTH\.,)", r"\1$,"),
        (r"(= COLOUR_RGB\('',)[^,]*", r"\1INF"),
        (r"= SURFACE_SIDE_STYLE\(.*?;", r"= SURFACE_SI;"),
    ],
    ids=["in a circle", "one too many", "no number", "cut off"],
)
def test_damaged_colours_on_which_the_kernel_crashes_are_left_out_with_a_doubt(tmp_path, pattern, new):
    station = cq.Assembly(name="station")
    station.add(box(40, 30, 10), name="case", color=cq.Color(0.1, 0.1, 0.1))
    station.add(box(40, 30, 2), name="lid", loc=cq.Location((0, 0, 10)))
    path = tmp_path / "model.step"
    station.export(str(path))
    assembly = read_assembly(path)
    assert assembly.doubts == ()
    assert assembly.parts[0].colour is not None
    above = re.search(r"#(\d+) = PRESENTATION_STYLE_ASSIGNMENT", path.read_text())[1]
    replace(path, pattern, new.format(above=above))
    assembly = read_assembly(path)
    assert [(part.name, part.colour) for part in assembly.parts] == [("case", None), ("lid", None)]
    assert any("has damaged colours" in doubt for doubt in assembly.doubts)


def test_brackets_in_names_are_no_depth(tmp_path, sound):
    path = tmp_path / "a.step"
    path.write_bytes(sound.replace(b"PRODUCT('case','case'", b"PRODUCT('case','" + b"(" * 500 + b"'"))
    part = read_assembly(path).parts[0]
    assert part.path[-1] == "(" * 500
    assert part.name == "(" * 61 + "..." + "(" * 16


def test_a_product_that_contains_itself(tmp_path, sound):
    found = re.search(rb"NEXT_ASSEMBLY_USAGE_OCCURRENCE\([^#]*(#\d+),(#\d+)", sound)
    circle = found[0].replace(found[2], found[1])
    error = refused_text(tmp_path, sound.replace(found[0], circle))
    assert error.code == "unreadable"
    assert "'station'" in error.message


def test_products_that_contain_each_other(tmp_path, sound):
    found = re.search(rb"#(\d+) = NEXT_ASSEMBLY_USAGE_OCCURRENCE\([^#]*(#\d+),(#\d+)", sound)
    back = b"#99999 = NEXT_ASSEMBLY_USAGE_OCCURRENCE('9','','',%s,%s,$);\n" % (found[3], found[2])
    assert refused_text(tmp_path, sound.replace(b"DATA;\n", b"DATA;\n" + back)).code == "unreadable"


@pytest.mark.parametrize("number", [b"NaN", b"nan", b"-inf", b"1.#QNAN", b"1.#IND", b"1.E300", b"-4E+15", b"9" * 400])
def test_absurd_coordinates_name_their_part_and_line(tmp_path, sound, number):
    path = tmp_path / "model.step"
    point = re.search(rb"CARTESIAN_POINT\('',\((40\.),", sound)
    path.write_bytes(sound[: point.start(1)] + number + sound[point.end(1) :])
    error = refused(path)
    assert error.code == "unreadable"
    assert error.message.startswith("'case': ")
    assert f"line {sound[: point.start()].count(bytes([10])) + 1}" in error.message


@pytest.mark.parametrize("number", [b"NaN", b"1.E300"])
def test_absurd_coordinates_of_a_third_part_leave_it_out(tmp_path, number):
    parts = [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), cq.Location((0, 0, 10)))]
    path = write(tmp_path / "model.step", [*parts, ("chip", box(7, 5, 1), None)])
    data = path.read_bytes()
    path.write_bytes(re.sub(rb"CARTESIAN_POINT\('',\(7\.,5\.,1\.\)", b"CARTESIAN_POINT('',(7.,5.,%s)" % number, data))
    assembly = read_assembly(path)
    assert [part.kind for part in assembly.parts] == ["solid", "solid", "other"]
    assert any("of 'chip')" in doubt and "implausible" in doubt for doubt in assembly.doubts)


def test_words_like_numbers_in_names_do_no_harm(tmp_path, sound):
    path = tmp_path / "a.step"
    path.write_bytes(sound.replace(b"PRODUCT('case','case'", b"PRODUCT('case','nan inf'"))
    assert read_assembly(path).parts[0].name == "nan inf"


def test_only_other_files_named(tmp_path, sound):
    data = sound[: sound.index(b"DATA;")] + (
        b"DATA;\n#1=DOCUMENT_FILE('parts\\\\lid.stp','',$,#2,'','');\n#2=DOCUMENT_TYPE('cad');\n"
        b"ENDSEC;\nEND-ISO-10303-21;\n"
    )
    error = refused_text(tmp_path, data)
    assert error.code == "unsupported"
    assert "lid.stp" in error.message


def test_only_curves(tmp_path):
    from OCP.STEPControl import STEPControl_GeometricCurveSet, STEPControl_Writer

    writer = STEPControl_Writer()
    writer.Transfer(box(40, 30, 10).val().wrapped, STEPControl_GeometricCurveSet)
    writer.Write(str(tmp_path / "model.step"))
    error = refused(tmp_path / "model.step")
    assert error.code == "no-solid"
    assert "wireframe" in error.message


def test_only_triangles(tmp_path):
    from OCP.BRepMesh import BRepMesh_IncrementalMesh
    from OCP.Interface import Interface_Static
    from OCP.STEPControl import STEPControl_AsIs, STEPControl_Writer

    shape = cq.Workplane().cylinder(10, 5).val().wrapped
    BRepMesh_IncrementalMesh(shape, 0.1)
    writer = STEPControl_Writer()
    assert Interface_Static.SetCVal_s("write.step.schema", "AP242DIS")
    assert Interface_Static.SetIVal_s("write.step.tessellated", 1)
    writer.Transfer(shape, STEPControl_AsIs)
    writer.Write(str(tmp_path / "model.step"))
    Interface_Static.SetCVal_s("write.step.schema", "AP214IS")
    Interface_Static.SetIVal_s("write.step.tessellated", 2)
    text = (tmp_path / "model.step").read_text()
    assert "TESSELLATED" in text
    text = re.sub(r"MANIFOLD_SOLID_BREP\(", "MISSING_SOLID_BREP(", text)
    (tmp_path / "model.step").write_text(text)
    error = refused(tmp_path / "model.step")
    assert error.code == "unsupported"
    assert "triangles" in error.message


def test_only_sheets(tmp_path):
    sheet = cq.Workplane().rect(20, 20).extrude(5).faces("<Z").val()
    path = write(tmp_path / "a.step", [("foil", sheet, None), ("film", sheet, cq.Location((0, 0, 1)))])
    assert refused(path).code == "no-solid"


@pytest.mark.parametrize("keyword", ["NEXT_ASSEMBLY_USAGE_OCCURRENCE", "ITEM_DEFINED_TRANSFORMATION"])
def test_a_damaged_placement_is_a_doubt(tmp_path, sound, keyword):
    path = tmp_path / "a.step"
    path.write_bytes(sound)
    assert read_assembly(path).doubts == ()
    replace(path, rf"(.*){keyword}", r"\1DIRECTION", count=1)
    # the kernel takes the part and leaves it where it was drawn, without a word
    assert any("wrong place" in doubt for doubt in read_assembly(path).doubts)


def test_a_body_that_belongs_to_no_product_is_a_doubt_and_gets_no_name_of_the_kernel(tmp_path, sound):
    path = tmp_path / "a.step"
    path.write_bytes(sound)
    body = re.findall(r"#(\d+) = ADVANCED_BREP_SHAPE_REPRESENTATION", path.read_text())[-1]
    replace(path, rf"= SHAPE_DEFINITION_REPRESENTATION\((#\d+,#{body})\)", r"= SHAPE_DEFINITION_RYPRESENTATION(\1)")
    assembly = read_assembly(path)
    assert {part.name for part in assembly.parts} <= {"", "case", "lid"}
    assert any("belong to no product" in doubt for doubt in assembly.doubts)


def test_junk_before_the_start_and_a_byte_order_mark_are_skipped(tmp_path, sound):
    path = tmp_path / "a.step"
    path.write_bytes(b"\xef\xbb\xbf" + sound)
    assert len(read_assembly(path).parts) == 2
    path.write_bytes(b"mail header\n\n" + sound)
    part = read_assembly(path).parts[0]
    lines = path.read_bytes().split(b"\n")
    assert all(lines[entity.line - 1].startswith(b"#%d = ADVANCED_FACE" % entity.number) for entity in part.entities)
