"""The command line: help, wrong use, outputs, exit codes. What the child does is replaced."""

import json
import os
import subprocess
import sys
import time
from pathlib import Path

import pytest
from shell import shell

sys.path.insert(0, str(Path(__file__).parents[1] / "limits"))
from limits_surveys import circle, joint

from seamcheck import pipeline
from seamcheck.assembly.parts import Assembly, ModelFile, Part
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.cli.group import COMMANDS
from seamcheck.document.make import make_document, not_reviewed_document
from seamcheck.errors import NotReviewed, UsageError
from seamcheck.judge.judge import judge
from seamcheck.report.review import Review
from seamcheck.settings.file import parse_settings


@pytest.fixture
def model(tmp_path):
    file = tmp_path / "station.step"
    file.write_text("ISO-10303-21;")
    return file


@pytest.fixture
def reviewed(monkeypatch):
    """Replace what the child does; returns a function that sets the joints which it finds."""
    seen = {}

    def set_joints(*joints, refusal=None):
        def fake(function, args, progress=None, **limits):
            paths, settings, *_ = args
            seen.update(paths=paths, settings=settings, limits=limits)
            if progress is not None:
                progress("measuring")
            if isinstance(refusal, NotReviewed):
                return not_reviewed_document([pipeline.file_facts(p) for p in paths], refusal, settings)
            if refusal is not None:
                raise refusal
            parts = (
                Part("p1", "case", (), "solid", None, 1, 8),
                Part("p2", "lid [bold]x\x1b[31m", (), "solid", None, 1, 8),
            )
            files = (ModelFile(Path(paths[0]).name, "ab" * 32, "AP214", "mm"),)
            found = list(joints) or [joint()]
            judgement = judge(found, settings, {part.id: part.name for part in parts})
            return make_document(Assembly(files, parts), found, judgement, settings)

        monkeypatch.setattr("seamcheck.isolation.run_isolated", fake)
        return seen

    set_joints()
    return set_joints


# Help


def test_help_lists_every_command():
    result = shell("--help")
    assert result.exit_code == 0
    for name, (_, line) in COMMANDS.items():
        assert name in result.output
        assert line[:40] in result.output


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_explains_itself(name):
    result = shell(name, "--help")
    assert result.exit_code == 0
    assert f"seamcheck {name}" in result.output  # an example of its use


def test_help_comes_at_once():
    def once():
        start = time.perf_counter()
        subprocess.run([sys.executable, "-m", "seamcheck", "--help"], check=True, capture_output=True)
        return time.perf_counter() - start

    bare = min(_bare_python() for _ in range(3))
    assert min(once() for _ in range(5)) < max(0.15, 8 * bare)  # the bar; more where a bare start takes over 0.02 s


def _bare_python():
    start = time.perf_counter()
    subprocess.run([sys.executable, "-c", "pass"], check=True)
    return time.perf_counter() - start


# Wrong use: one sentence, exit code 2, no traceback


@pytest.mark.parametrize(
    ("args", "words"),
    [
        (["reviw", "a.step"], ["'reviw'", "'review'"]),
        (["a.step"], ["seamcheck review a.step"]),
        (["review"], ["MODEL"]),
        (["review", "a.step", "--limt", "x"], ["--limt", "--limit"]),
        (["review", "a.step", "--limit", "rib-width.min"], ["rib-width.min=0.7"]),
        (["review", "a.step", "--limit", "rib-width.mn=1"], ["'rib-width.min'"]),
        (["review", "a.step", "--limit", "rib-width.min=wide"], ["rib-width.min", "a length"]),
        (["review", "a.step", "--severity", "clamp-land=loud"], ["must-fix, attention, note, off"]),
        (["review", "a.step", "--collapse", "0.4 deg"], ["collapse", "an angle"]),
        (["review", "a.step", "--beam", "up"], ["direction", "0,0,-1"]),
        (["review", "a.step", "--today", "soon"], ["2027-06-30"]),
        (["review", "a.step", "--json", "no/such/folder/f.json"], ["no folder"]),
        (["review", "a.step", "--time-limit", "0"], ["--time-limit"]),
        (["review", "a.step", "--settings", "no.toml"], ["no.toml", "can't be read"]),
        (["explain", "clamp-lnd"], ["'clamp-land'"]),
        (["settings", "--write", "no/such/f.toml"], ["no folder"]),
    ],
)
def test_wrong_use_is_one_sentence(args, words, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "a.step").write_text("x")
    result = shell(*args)
    assert result.exit_code == 2
    assert result.stdout == ""
    assert len(result.stderr.strip().splitlines()) == 1
    for word in words:
        assert word in result.stderr
    assert "Traceback" not in result.stderr


def test_a_missing_file_and_a_folder_are_not_reviewed(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "folder.step").mkdir()
    for name, words in (("nothing.step", "There is no file"), ("folder.step", "is a folder")):
        result = shell("review", name, "--json", "out.json")
        assert result.exit_code == 2
        assert "NOT REVIEWED" in result.output
        assert words in result.output
        document = json.loads(Path("out.json").read_text())
        assert document["reason"]["code"] == "unreadable"


# Review


def test_a_sound_model_passes(reviewed, model):
    reviewed()
    result = shell("review", str(model))
    assert result.exit_code == 0
    assert result.output.startswith("PASS")
    for word in ("Seam ", "cover 'lid", "base 'case'", "120.0 mm closed", "Not checked"):
        assert word in result.output
    assert len(result.output.splitlines()) <= 40
    whole = shell("review", str(model), "--verbose").output
    for word in ("Seam j1", "120.0 mm, closed", "rib width", "planned collapse"):
        assert word in whole
    for caution in ("Class 4", "never an approval"):
        assert caution in result.output
    assert result.stderr == ""


def test_a_broken_limit_is_shown_with_all_that_is_needed(reviewed, model):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    result = shell("review", str(model))
    assert result.exit_code == 1
    lines = result.output
    assert lines.startswith("FAIL")
    for word in (
        "MUST-FIX  rib-width",
        "0.487 mm",
        "0.60 mm",
        "Widen the rib by 0.12 mm.",
        "Harm:",
        "s = 29.8 to 34.2",
    ):
        assert word in lines


@pytest.mark.parametrize(
    ("change", "code", "strict"), [(("rib_height", 3, 4, 0.1), 1, 1), (("slenderness", 3, 4, 1.8), 0, 1), (None, 0, 0)]
)
def test_exit_codes(reviewed, model, change, code, strict):
    reviewed(circle(change) if change else joint())
    assert shell("review", str(model)).exit_code == code
    assert shell("review", str(model), "--strict").exit_code == strict


def test_a_refusal_has_exit_code_two_and_one_sentence(reviewed, model):
    reviewed(refusal=NotReviewed("single-part", "The file holds one part; give the other one too."))
    result = shell("review", str(model), "-q")
    assert result.exit_code == 2
    assert result.output == "NOT REVIEWED  station.step  The file holds one part; give the other one too.\n"


def test_wrong_use_found_in_the_child_is_one_sentence(reviewed, model):
    reviewed(refusal=UsageError("No part is called 'ld'. Did you mean 'lid'?"))
    result = shell("review", str(model), "--cover", "ld")
    assert result.exit_code == 2
    assert result.stderr == "seamcheck: No part is called 'ld'. Did you mean 'lid'?\n"


def test_quiet_is_one_line(reviewed, model, tmp_path):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    result = shell("review", str(model), "--quiet", "--json", str(tmp_path / "f.json"))
    assert result.output.count("\n") == 1
    assert result.output.startswith("FAIL  station.step  ")


def test_json_to_standard_output_is_json_alone(reviewed, model):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    result = shell("review", str(model), "--json", "-")
    document = json.loads(result.stdout)
    assert document["verdict"] == "fail"
    assert Review(document).exit_code == result.exit_code == 1


def test_the_document_holds_everything_that_the_terminal_shows(reviewed, model):
    reviewed(circle(("rib_width", 30, 34, 0.487), ("clamp_land", 50, 52, "broken-geometry")))
    document = json.loads(shell("review", str(model), "--json", "-").stdout)
    shown = shell("review", str(model), "--verbose").stdout
    for finding in document["findings"]:
        for key in ("id", "rule", "harm"):
            assert " ".join(finding[key].split()) in " ".join(shown.split())
    for item in (said["text"] for said in document["not_checked"]):
        assert " ".join(item.split()) in " ".join(shown.split())


def test_the_same_command_writes_the_same_bytes(reviewed, model, tmp_path):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    for name in "ab":
        shell("review", str(model), "--json", str(tmp_path / name))
    assert (tmp_path / "a").read_bytes() == (tmp_path / "b").read_bytes()


def test_names_from_the_model_are_plain_text(reviewed, model):
    reviewed()
    result = shell("review", str(model))
    assert "[bold]x" in result.output
    assert "\x1b" not in result.output


def test_options_reach_the_settings(reviewed, model):
    seen = reviewed()
    (model.parent / "seamcheck.toml").write_text("collapse = 0.5\n[limits.clamp-land]\nmin = 1.5\n")
    limits = ("--limit", "rib-width.min=0.03 in", "--severity", "corner-radius=off", "--set", "station-spacing=0.25")
    roles = ("--cover", "lid", "--beam", "-z")
    shell("review", str(model), *limits, *roles, "--time-limit", "5", "--today", "2031-01-01")
    settings = seen["settings"]
    assert settings.collapse == 0.5
    assert settings.limit("clamp-land", "min") == 1.5
    assert settings.limit("rib-width", "min") == pytest.approx(0.762)
    assert settings.severity("corner-radius") == "off"
    assert (settings.cover, settings.beam, settings.station_spacing) == ("lid", (0, 0, -1), 0.25)
    assert seen["limits"]["time_limit_s"] == 5
    assert settings.today.isoformat() == "2031-01-01"
    shell("review", str(model), "--no-settings-file")
    assert seen["settings"].collapse == 0.4


def test_the_settings_file_is_named(reviewed, model):
    reviewed()
    (model.parent / "seamcheck.toml").write_text("collapse = 0.5\n")
    text = " ".join(shell("review", str(model)).output.split())
    assert "collapse 0.50 mm (settings file)" in text
    assert "settings from seamcheck.toml" in text


def test_a_wrong_settings_file_beside_the_model_is_named_with_its_line(reviewed, model):
    reviewed()
    (model.parent / "seamcheck.toml").write_text("\ncolapse = 0.5\n")
    result = shell("review", str(model))
    assert result.exit_code == 2
    assert "seamcheck.toml, line 2: There is no setting 'colapse'. Did you mean 'collapse'?" in result.stderr


def test_waivers_are_shown_in_every_state(reviewed, model):
    reviewed(circle(("clamp_land", 30, 34, 0.5)))
    (model.parent / "seamcheck.toml").write_text(
        "[[waivers]]\nrule='clamp-land'\nreason='tight in trials'\ncontour='c1'\n"
        "[[waivers]]\nrule='rib-width'\nreason='long gone'\nat=[1, 2, 3]\n"
        "[[waivers]]\nrule='clamp-land'\nreason='old'\ncontour='c1'\nuntil=2020-01-01\n"
    )
    result = shell("review", str(model), "--today", "2030-01-01")
    assert result.exit_code == 0
    text = " ".join(result.output.split())
    assert "No limit is broken, 1 waived." in text
    assert "Waived: tight in trials (seamcheck.toml, line 1)" in text
    assert "The waiver of rib-width within 2 mm of (1, 2, 3) covers no finding any more" in text
    assert "The waiver of clamp-land on c1 ended on 2020-01-01 and counts no more" in text


def test_no_colours_in_a_pipe(reviewed, model):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    assert "\x1b" not in shell("review", str(model), env={"FORCE_COLOR": None}).output


def test_a_file_is_whole_or_not_there(reviewed, model, tmp_path, monkeypatch):
    reviewed()
    target = tmp_path / "f.json"
    target.write_text("before")

    def full(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    result = shell("review", str(model), "--json", str(target))
    assert result.exit_code == 2
    assert "No space left on device" in result.stderr
    assert "PASS" in result.output  # the review itself is not lost
    assert target.read_text() == "before"
    assert sorted(p.name for p in tmp_path.iterdir()) == ["f.json", "station.step"]


def test_outputs_are_written_and_told(reviewed, model, tmp_path):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    result = shell("review", str(model), "--csv", str(tmp_path / "t.csv"), "--html", str(tmp_path / "p.html"))
    assert f"Written: {tmp_path / 't.csv'}" in result.output
    assert "rib_width" in (tmp_path / "t.csv").read_text("utf-8")
    assert "<html" in (tmp_path / "p.html").read_text("utf-8")


def test_the_paper_reaches_page_and_print(reviewed, model, tmp_path, monkeypatch):
    monkeypatch.setattr("seamcheck.report.pdf.render_pdf", lambda document, paper=None, **more: f"on {paper}".encode())
    reviewed()
    for given, written in (("letter", "letter"), ("a4", "A4"), (None, None)):
        files = [f"--html={tmp_path / 'r.html'}", f"--pdf={tmp_path / 'r.pdf'}"]
        result = shell("review", str(model), *files, *(["--paper", given] if given else []))
        assert result.exit_code == 0, result.output
        assert (tmp_path / "r.pdf").read_text() == f"on {written}"
        size = {"letter": "8.5in 11in", "A4": "210mm 297mm", None: ""}[written]
        page = (tmp_path / "r.html").read_text("utf-8")
        assert (f"@page {{ size: {size}; }}" in page) if size else ("@page { size:" not in page)


def test_one_output_that_fails_does_not_take_the_others_with_it(reviewed, model, tmp_path, monkeypatch):
    reviewed()
    monkeypatch.setattr("seamcheck.report.csv.render_csv", lambda document: 1 / 0)
    result = shell("review", str(model), "--csv", str(tmp_path / "t.csv"), "--json", str(tmp_path / "f.json"))
    assert result.exit_code == 2
    assert "t.csv could not be made: ZeroDivisionError" in result.stderr
    assert (tmp_path / "f.json").exists()


def test_tables_of_what_was_not_reviewed_are_not_written(reviewed, model, tmp_path):
    reviewed(refusal=NotReviewed("no-seam", "No seam."))
    result = shell("review", str(model), "--csv", str(tmp_path / "t.csv"), "--json", str(tmp_path / "f.json"))
    assert result.exit_code == 2
    assert "Not written" in result.output
    assert sorted(p.name for p in tmp_path.iterdir()) == ["f.json", "station.step"]


def test_only_one_output_goes_to_standard_output(model):
    result = shell("review", str(model), "--csv", "-", "--json", "-")
    assert result.exit_code == 2
    assert "Only one output" in result.stderr


# Report


def test_a_report_shows_the_same_as_the_review(reviewed, model, tmp_path):
    reviewed(circle(("rib_width", 30, 34, 0.487)))
    target = tmp_path / "f.json"
    first = shell("review", str(model), "--json", str(target))
    again = shell("report", str(target), "--html", str(tmp_path / "p.html"))
    assert again.exit_code == first.exit_code == 1
    assert again.output.splitlines()[:-1] == first.output.splitlines()[:-1]  # the last line names the files
    assert shell("report", "-", "-q", input=target.read_text("utf-8")).output.startswith("FAIL  station.step")


WRONG_DOCUMENTS = (
    b"{",
    b"[1]",
    b"\xff\xfe",
    b'{"document": "seamcheck-review", "schema_version": 9}',
    b'{"document": "seamcheck-review", "schema_version": 1}',
)


@pytest.mark.parametrize("content", WRONG_DOCUMENTS)
def test_what_is_no_review_document_is_refused_in_one_sentence(tmp_path, content):
    file = tmp_path / "f.json"
    file.write_bytes(content)
    result = shell("report", str(file))
    assert result.exit_code == 2
    assert len(result.stderr.strip().splitlines()) == 1


# Explain, settings, samples


def test_samples_are_written_and_not_overwritten(tmp_path):
    folder = tmp_path / "models"
    assert shell("samples", str(folder)).exit_code == 0
    assert (folder / "sound.step").read_bytes().startswith(b"ISO-10303-21;")
    assert shell("samples", str(folder)).exit_code == 0  # the same content is kept
    (folder / "sound.step").write_text("mine")
    again = shell("samples", str(folder))
    assert again.exit_code == 2
    assert "sound.step" in again.stderr
    assert (folder / "sound.step").read_text() == "mine"


@pytest.mark.parametrize("word", [*RULES, *QUANTITIES, "collapse", "no-shoulder", "single-part"])
def test_explain_knows_every_word(word):
    result = shell("explain", word)
    assert result.exit_code == 0
    assert word in result.output
    if word in RULES:
        text = " ".join(result.output.split())
        for part in (RULES[word].what, RULES[word].harm, RULES[word].standing_text):
            assert " ".join(part.split()) in text
        assert "{" not in text
        assert "never an approval" in text


def test_explain_without_a_word_lists_all():
    text = shell("explain").output
    for key in (*RULES, *QUANTITIES):
        assert key in text


def test_explain_shows_the_limits_of_a_settings_file(tmp_path):
    file = tmp_path / "s.toml"
    file.write_text("[limits.clamp-land]\nmin = 1.75\n")
    assert "at least 1.75 mm" in shell("explain", "clamp-land", "--settings", str(file)).output


def test_settings_prints_a_file_that_reads_back():
    assert parse_settings(shell("settings").stdout).limits == parse_settings("").limits


def test_settings_writes_but_does_not_overwrite(tmp_path):
    file = tmp_path / "seamcheck.toml"
    assert shell("settings", "--write", str(file)).exit_code == 0
    file.write_text(file.read_text().replace("collapse = 0.4", "collapse = 0.3"))
    result = shell("settings", "--write", str(file))
    assert result.exit_code == 2
    assert "--force" in result.stderr
    assert "collapse = 0.3" in shell("settings", str(tmp_path / "m.step")).stdout
    assert shell("settings", "--write", str(file), "--force").exit_code == 0
    assert "collapse = 0.4" in file.read_text()


def test_the_library_call_does_the_same(reviewed, model):
    import seamcheck

    seen = reviewed(circle(("rib_width", 30, 34, 0.487)))
    review = seamcheck.review(model, collapse=0.3, limits={"rib-width.min": 0.45, "corner-radius.severity": "off"})
    assert (review.verdict, [f.rule for f in review.findings]) == ("fail", ["rib-uniformity"])
    assert seen["settings"].collapse == 0.3
    with pytest.raises(UsageError, match="'collapse'"):
        seamcheck.review(model, colapse=0.3)
