"""What a STEP file may hold to do harm: names in every output, files elsewhere, trees without end, huge texts."""

from __future__ import annotations

import io
import os
import re
import zipfile

import pytest
from guard_runs import seamcheck
from shell import shell
from telling import telling

from seamcheck.cli.outputs import OUTPUTS
from seamcheck.samples import samples

SOUND = next(sample.file for sample in samples() if sample.name == "sound").read_bytes()
LID = re.search(rb"PRODUCT\('([^']*lid[^']*)'", SOUND)[1]
TEXTS = [output.name for output in OUTPUTS if output.name not in ("pdf", "pictures", "step", "glb")]


def review(folder, data, *options, name="m.step"):
    (folder / name).write_bytes(data)
    return seamcheck("review", name, *options, cwd=folder)


def named(new: bytes) -> bytes:
    return SOUND.replace(b"'" + LID + b"'", b"'" + new + b"'")


# -- names ----------------------------------------------------------------------------------------------

NAMES = {
    "turned round": rb"lid\X2\202E\X0\gpj",
    "isolated": rb"lid\X2\2067\X0\gpj\X2\2069\X0\x",
    "half a character": rb"lid\X2\D800\X0\x",
    "zero byte": rb"lid\X2\0000\X0\x",
    "colours of a terminal": b"lid \x1b[31m\x1b]0;title\x07",
    "lines": rb"lid\X\0A::error::x\X\0D##[error]y",
    "markup": b"</script><img src=x onerror=alert(1)>",
    "markdown": b"[x](javascript:alert(1)) ](x) | `` <b>",
    "formula": b"=cmd|/c calc!A1",
    "a property of every object": b"__proto__",
}


@pytest.mark.parametrize(
    "name", [pytest.param(n, marks=() if n == "turned round" else pytest.mark.thorough) for n in NAMES]
)
def test_a_part_name_does_nothing_in_any_output(tmp_path, name):
    options = [word for output in (*TEXTS, "step", "glb") for word in (f"--{output}", f"out.{output}")]
    (tmp_path / "m.step").write_bytes(named(NAMES[name]))
    done = shell("review", "m.step", *options, cwd=tmp_path)
    assert done.exit_code == 0, done.stderr
    written = {output: (tmp_path / f"out.{output}").read_text("utf-8") for output in TEXTS}
    written["terminal"] = done.stdout
    written["glb"] = json_of_glb((tmp_path / "out.glb").read_bytes())
    written["step"] = named_in((tmp_path / "out.step").read_text("utf-8"))
    for output, text in written.items():
        for bad in "\u202e\u2066\u2067\u2068\u2069\0\x1b":
            assert bad not in text, (output, hex(ord(bad)))
        assert not [line for line in text.splitlines() if line.startswith(("::", "##["))], output
    assert "<img src=x" not in written["html"]
    outside_code = re.sub(r"(?<!`)`[^`\n]+`(?!`)", "", written["markdown"])  # shown as it is
    assert "<img" not in outside_code.replace("\\<img", "")


def json_of_glb(data: bytes) -> str:
    """Its first chunk (glTF 2.0, section 4.4.3)."""
    return data[20 : 20 + int.from_bytes(data[12:16], "little")].decode("utf-8")


def named_in(text: str) -> str:
    """STEP text with its wide characters spelled as they are (ISO 10303-21, 6.4.3)."""
    return re.sub(r"\\X2\\((?:[0-9A-F]{4})+)\\X0\\", lambda m: bytes.fromhex(m[1]).decode("utf-16-be", "replace"), text)


@pytest.mark.thorough
def test_a_part_name_is_spelled_out_in_a_printed_page(tmp_path):
    pypdf = pytest.importorskip("pypdf")
    done = review(tmp_path, named(NAMES["turned round"]), "--pdf", "out.pdf", "--pictures", "pictures")
    if b"browser" in done.stderr:
        pytest.skip("no browser here")
    assert done.returncode == 0, done.stderr
    text = "".join(
        page.extract_text() for page in pypdf.PdfReader(io.BytesIO((tmp_path / "out.pdf").read_bytes())).pages
    )
    assert "\u202e" not in text
    assert "lid\\u202egpj" in text


def test_a_scan_shows_names_as_harmless(tmp_path):
    (tmp_path / "in").mkdir()
    with zipfile.ZipFile(tmp_path / "in/a.zip", "w") as archive:
        archive.writestr("model\u202egpj\x1b[31m.step", named(NAMES["turned round"]))
    done = shell("scan", "in", "--out", "out", "--jobs", "1", "--pages", "all", cwd=tmp_path)
    assert done.exit_code == 0, done.stderr
    files = [tmp_path / "out/index.html", tmp_path / "out/index.csv", *(tmp_path / "out/pages").iterdir()]
    for text in [done.stdout, done.stderr, *(file.read_text("utf-8") for file in files)]:
        assert "\u202e" not in text
        assert "\x1b[31m" not in text


# -- files elsewhere ------------------------------------------------------------------------------------


def referring(place: bytes) -> bytes:
    """A model that says that a further part of it lies in another file (ISO 10303-214, external references)."""
    return SOUND.replace(
        b"ENDSEC;\nEND-ISO",
        b"#90001=DOCUMENT_FILE('" + place + b"','','',#90002,'',$);\n#90002=DOCUMENT_TYPE('geometry');\n"
        b"#90003=APPLIED_DOCUMENT_REFERENCE(#90001,'',(#90004));\n"
        b"#90004=PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS('','',$,$,(#90001));\n"
        b"#90005=APPLIED_EXTERNAL_IDENTIFICATION_ASSIGNMENT('" + place + b"',#90006,(#90001),#90007);\n"
        b"#90006=IDENTIFICATION_ROLE('external document id and location','');\n"
        b"#90007=EXTERNAL_SOURCE(IDENTIFIER(''));\nENDSEC;\nEND-ISO",
    )


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
@pytest.mark.parametrize("place", telling(["pipe.step", "other.step"], ["pipe.step"]))
def test_a_file_that_a_model_names_is_never_opened(tmp_path, place):
    os.mkfifo(tmp_path / "pipe.step")  # whoever opens it hangs
    (tmp_path / "other.step").write_bytes(SOUND.replace(LID, b"a part from elsewhere"))
    done = review(tmp_path, referring(place.encode()), "--json", "out.json")
    assert done.returncode == 0, done.stderr
    text = (tmp_path / "out.json").read_text()
    assert "a part from elsewhere" not in text
    assert "whose bodies are not reviewed" in text


# -- trees and texts ------------------------------------------------------------------------------------


def nested(levels: int) -> bytes:
    """The model below so many assemblies within one another, each a product of its own with one occurrence."""
    text = SOUND.decode("latin-1")
    body = dict(re.findall(r"^#(\d+)\s*=\s*(.*?);\s*$", text, re.MULTILINE | re.DOTALL))
    refers = lambda record: re.findall(r"#(\d+)", record)  # noqa: E731
    usages = [refers(record) for record in body.values() if record.startswith("NEXT_ASSEMBLY_USAGE")]
    top = ({above for above, *_ in usages} - {below for _, below, *_ in usages}).pop()
    shape = next(k for k, r in body.items() if r.startswith("PRODUCT_DEFINITION_SHAPE") and refers(r) == [top])
    drawn = (refers(r) for r in body.values() if r.startswith("SHAPE_DEFINITION_REPRESENTATION"))
    below = next(rep for definition, rep in drawn if definition == shape)
    frame = next(k for k in refers(body[below]) if body[k].startswith("AXIS2_PLACEMENT_3D"))
    units, (formation, stage) = refers(body[below])[-1], refers(body[top])
    field = refers(body[refers(body[formation])[0]])[0]
    first, lines = max(map(int, body)) + 1, []
    for level in range(levels):
        p = first + 11 * level
        lines += [
            f"#{p}=PRODUCT('level {level}','level {level}','',(#{field}));",
            f"#{p + 1}=PRODUCT_DEFINITION_FORMATION('','',#{p});",
            f"#{p + 2}=PRODUCT_DEFINITION('design','',#{p + 1},#{stage});",
            f"#{p + 3}=PRODUCT_DEFINITION_SHAPE('','',#{p + 2});",
            f"#{p + 4}=SHAPE_REPRESENTATION('',(#{frame}),#{units});",
            f"#{p + 5}=SHAPE_DEFINITION_REPRESENTATION(#{p + 3},#{p + 4});",
            f"#{p + 6}=NEXT_ASSEMBLY_USAGE_OCCURRENCE('{level}','level','',#{p + 2},#{top},$);",
            f"#{p + 7}=PRODUCT_DEFINITION_SHAPE('','',#{p + 6});",
            f"#{p + 8}=ITEM_DEFINED_TRANSFORMATION('','',#{frame},#{frame});",
            f"#{p + 9}=(REPRESENTATION_RELATIONSHIP('','',#{below},#{p + 4})"
            f"REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(#{p + 8})SHAPE_REPRESENTATION_RELATIONSHIP());",
            f"#{p + 10}=CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#{p + 9},#{p + 7});",
        ]
        top, below = str(p + 2), str(p + 4)
    return text.replace("ENDSEC;\nEND-ISO", "\n".join(lines) + "\nENDSEC;\nEND-ISO").encode("latin-1")


@pytest.mark.parametrize("levels", [200, pytest.param(3000, marks=pytest.mark.thorough)])
def test_assemblies_within_one_another_are_reviewed_as_one(tmp_path, levels):
    done = review(tmp_path, nested(levels), "--json", "out.json")
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "out.json").read_text().count("level 0") == 2  # in the paths of two parts
    assert b"Error" not in done.stderr


def packed(kind: str) -> bytes:
    """Texts on which a careless search takes the square of their length."""
    return {
        "quotes": SOUND.replace(b"DATA;", b"DATA;\n#99999=X('" + b"'" * 3_000_000 + b"');", 1),
        "comments": SOUND.replace(b"DATA;", b"DATA;\n" + b"/* " * 1_000_000 + b"*/", 1),
        "open records": SOUND.replace(b"ENDSEC;\nEND", b"\n#77=X(" * 400_000 + b");\nENDSEC;\nEND", 1),
        "hashes": SOUND.replace(b"ENDSEC;\nEND", b"#" * 3_000_000 + b"1=X();\nENDSEC;\nEND", 1),
        "semicolons": SOUND.replace(b"ENDSEC;\nEND", b";" * 3_000_000 + b"\nENDSEC;\nEND", 1),
        "blanks": SOUND.replace(b"DATA;", b"DATA;" + b" " * 20_000_000, 1),
        "a long number": SOUND.replace(b"ENDSEC;\nEND", b"#" + b"9" * 100_000 + b"=X();\nENDSEC;\nEND", 1),
        "a long name": named(b"l" * 1_000_000),
    }[kind]


@pytest.mark.thorough
@pytest.mark.parametrize(
    "kind", ["quotes", "comments", "open records", "hashes", "semicolons", "blanks", "a long number", "a long name"]
)
def test_a_text_made_to_take_long_does_not(tmp_path, kind):
    import resource

    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    done = review(tmp_path, packed(kind), "--quiet")
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    assert done.returncode in (0, 2), done.stderr
    assert after.ru_utime - before.ru_utime < 20.0


def test_an_archive_that_lies_about_itself_is_a_row(tmp_path):
    """Entries with paths upward, links, one name twice, and sizes that aren't so."""
    (tmp_path / "in").mkdir()
    content = io.BytesIO()
    with zipfile.ZipFile(content, "w") as archive:
        archive.writestr("../../up.step", SOUND)
        link = zipfile.ZipInfo("link.step")
        link.external_attr = 0o120777 << 16
        archive.writestr(link, "/etc/passwd")
        with pytest.warns(UserWarning, match="Duplicate"):
            archive.writestr("../../up.step", SOUND[:100])
    (tmp_path / "in/a.zip").write_bytes(content.getvalue())
    (tmp_path / "in/short.zip").write_bytes(content.getvalue()[:-500])
    done = shell("scan", "in", "--out", "out", "--jobs", "1", cwd=tmp_path)
    assert done.exit_code in (0, 1, 2)
    assert "Traceback" not in done.stderr
    table = (tmp_path / "out/index.csv").read_text("utf-8")
    assert "root:" not in table
    assert sorted(p.name for p in tmp_path.iterdir()) == ["in", "out"]
    assert not (tmp_path.parent / "up.step").exists()
