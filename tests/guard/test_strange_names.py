"""Names of files and parts as strangers give them: reviewed, readable, short, on one line, and the same everywhere."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import zipfile

import pytest
from guard_runs import ROOT, seamcheck
from shell import shell
from telling import telling

from seamcheck.assembly.names import MOST, readable, short
from seamcheck.assembly.source import Given
from seamcheck.pipeline import review_model
from seamcheck.samples import samples
from seamcheck.scanning.job import Job, JobFile, review_job
from seamcheck.settings.answers import read_answers, with_answers
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

SOUND = next(sample.file for sample in samples() if sample.name == "sound")
TURNED = "\u202e"  # right-to-left override


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere names of files are Unicode")
def test_a_file_name_that_is_no_utf8_is_reviewed(tmp_path):
    name = os.fsdecode(b"geh\xe4use \xff.step")
    shutil.copy(SOUND, tmp_path / name)
    done = seamcheck("review", name, "--json", "r.json", cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    assert json.loads((tmp_path / "r.json").read_text())["model"]["file"] == r"geh\xe4use \xff.step"
    done = shell("scan", ".", "--out", "out", "--jobs", "1", cwd=tmp_path)
    assert done.exit_code == 0, done.stderr
    (tmp_path / "x").mkdir()
    shutil.copy(tmp_path / name, tmp_path / "x" / name)
    assert shell("compare", name, f"x/{name}", cwd=tmp_path).exit_code == 0


def test_unseen_characters_are_spelled_out_and_long_names_cut():
    assert readable(f"lid{TURNED}gpj.step") == r"lid\u202egpj.step"
    assert readable("a\nb\x1b[31m") == r"a\nb\x1b[31m"
    assert readable("Gehäuse 蓋 7") == "Gehäuse 蓋 7"
    long = "lid " + "x" * 330 + " left"
    assert len(short(long)) == MOST
    assert short(long).startswith("lid xxx")
    assert short(long).endswith("x left")
    assert short("lid") == "lid"


def test_texts_of_settings_and_answers_are_spelled_out(tmp_path):
    waiver = f'[[waivers]]\nrule = "rib-width"\nat = [0, 0, 0]\nreason = "fine {TURNED}\\u200b"\n'
    settings = parse_settings(f'{waiver}[joint]\ncover = "lid{TURNED}"\n')
    assert settings.waivers[0].reason == r"fine \u202e\u200b"
    assert settings.cover == r"lid\u202e"
    accepted = {"id": "x", "rule": "rib-width", "place": {"contour": "c1"}, "decision": "accept"}
    accepted |= {"text": f"fine{TURNED}\nly", "by": f"a{TURNED}", "date": "2027-01-01"}
    told = {"document": "seamcheck-answers", "schema_version": 1, "findings": [accepted]}
    told["questions"] = [{"key": "nest", "answer": f"stiff{TURNED}"}]
    (tmp_path / "a.json").write_text(json.dumps(told))
    answers = read_answers(tmp_path / "a.json")
    assert answers.waivers("a.json")[0].reason == "fine\\u202e\nly (a\\u202e, 2027-01-01)"
    open_question = {"not_checked": [{"key": "nest", "args": {}, "text": "How stiff?"}]}
    assert with_answers(open_question, answers)["not_checked"][0]["text"] == r"Answered: How stiff? stiff\u202e"


@pytest.fixture(scope="module")
def named(tmp_path_factory):
    """A model whose parts have hostile names, and its review as text and document."""
    folder = tmp_path_factory.mktemp("named")
    text = SOUND.read_bytes()
    first, second = (part["name"] for part in review_model((SOUND,), Settings())["model"]["parts"][:2])
    wide = "".join(f"{ord(c):04X}" for c in f"lid{TURNED}x").encode()
    text = text.replace(b"'" + first.encode() + b"'", b"'\\X2\\" + wide + b"\\X0\\'")
    text = text.replace(b"'" + second.encode() + b"'", b"'case " + b"y" * 330 + b" end'")
    (folder / "m.step").write_bytes(text)
    done = shell("review", "m.step", "--json", "r.json", "--html", "r.html", cwd=folder)
    assert done.exit_code == 0, done.stderr
    return done.stdout, (folder / "r.json").read_text(), (folder / "r.html").read_text("utf-8")


def test_a_name_never_turns_a_line_round(named):
    for text in named:
        assert TURNED not in text
        assert "\\u202e" in text.replace("\\\\", "\\")


def unseen(text: str) -> list[str]:
    return [hex(ord(c)) for c in text if c != "\n" and not c.isprintable()]


TURNING = f"m{TURNED}gpj\u200b\u2066\x1b[31m\x07\u2028.step"


def test_a_file_name_never_turns_a_line_round(named, tmp_path, monkeypatch):
    """Where a path stands as it was given: in what a command says of files, and as the suite of a test run."""

    monkeypatch.chdir(tmp_path)
    (tmp_path / "r.json").write_text(named[1])
    for folder in ("::error::models", "in"):
        (tmp_path / folder).mkdir()
    (tmp_path / "in" / TURNING).write_text("no model")
    shutil.copy(SOUND, tmp_path / TURNING)
    told = ""
    for words in (
        ("settings", TURNING),
        ("report", "r.json", "--model", TURNING, "--junit", "r.xml", "--annotations", "plain"),
        ("review", TURNING, "--each", "--baseline", "::error::models"),
        ("scan", "in", "--out", f"out{TURNED}"),
    ):
        done = shell(*words)
        told += done.stdout + done.stderr
    assert unseen(told) == []
    assert not [line for line in told.splitlines() if line.startswith("::")]
    assert unseen((tmp_path / "r.xml").read_text("utf-8")) == []
    assert TURNED not in (tmp_path / "r.xml").read_text("utf-8")


@pytest.mark.thorough
def test_a_file_name_never_turns_a_line_round_in_a_proposal_or_a_trial(tmp_path):
    name = "rib-missing"
    shutil.copy(next(sample.file for sample in samples() if sample.name == name), tmp_path / TURNING)
    done = seamcheck("propose", TURNING, "--json", "p.json", "--html", "p.html", "--dxf", "p.dxf", cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    shutil.copy(SOUND, tmp_path / TURNING)
    prepared = seamcheck("prepare", TURNING, "--into", "trial", cwd=tmp_path)
    assert prepared.returncode == 0, prepared.stderr
    said = [done.stdout, done.stderr, prepared.stdout, prepared.stderr]
    said += [file.read_bytes() for file in (tmp_path / "trial").iterdir()]
    said += [(tmp_path / file).read_bytes() for file in ("p.json", "p.html", "p.dxf")]
    for text in said:
        assert not {"0x202e", "0x200b", "0x2066", "0x2028", "0x1b"} & set(unseen(text.decode("utf-8")))
    assert "\\u202e" not in (tmp_path / "p.json").read_text().replace("\\\\", "")


def test_a_long_name_stands_in_full_in_one_place(named):
    terminal, document, _ = named
    assert "y" * 100 not in terminal
    assert document.count("y" * 300) == 1
    parts = json.loads(document)["model"]["parts"]
    assert [p["path"][-1] for p in parts if "y" * 100 in p["path"][-1]] == ["case " + "y" * 330 + " end"]


def test_no_printed_line_begins_with_a_command_of_a_host(tmp_path):
    """A name with blanks wraps; what then begins a line is no command."""
    import click
    from click.testing import CliRunner
    from rich.text import Text

    from seamcheck.cli.shared import show

    @click.command()
    def shown():
        show([Text("x" * 105 + " ::error::the job failed " + "y" * 90 + " ##[error]so did this")])

    lines = CliRunner().invoke(shown).output.splitlines()
    assert len(lines) > 1
    assert not [line for line in lines if line.lstrip().startswith(("::", "##["))]


def test_an_error_stays_on_one_line(tmp_path):
    name = "no\n::error::such.step"
    done = seamcheck("report", name, cwd=tmp_path)
    assert done.returncode == 2
    assert len(done.stderr.decode().strip().splitlines()) == 1


@pytest.mark.thorough
def test_a_model_named_like_an_option_is_a_model_to_the_hook(tmp_path):
    """As pre-commit calls it: entry, args, then the names of files."""
    import yaml

    hook = yaml.safe_load((ROOT / ".pre-commit-hooks.yaml").read_text())[0]
    shutil.copy(SOUND, tmp_path / "--settings=loose.step")
    (tmp_path / "loose.step").write_text("collapse = 'loose'")
    words = [*hook["entry"].split()[1:], *hook["args"], "--settings=loose.step"]
    done = seamcheck(*words, cwd=tmp_path, SEAMCHECK_CACHE="")
    assert done.returncode == 0, done.stderr
    assert b"--settings=loose.step" in done.stdout


ODD = ["a:b.step", "CON.step", "a?.step", "a|b.step", "x" * 230 + ".step", " lead.step", "two\nlines.step", "..step"]


@pytest.mark.parametrize("name", telling(ODD, ["two\nlines.step"]))
def test_a_file_that_was_sent_or_unpacked_keeps_its_name(tmp_path, name, monkeypatch):
    """A cluster's worker and a local scan write the same document; neither writes the model to the disk."""
    data = SOUND.read_bytes()
    with zipfile.ZipFile(tmp_path / "m.zip", "w") as archive:
        archive.writestr(name, data)
    limits = (Settings(), "none", 60.0, 4000.0, 10**9)
    temporary = tmp_path / "temporary"
    temporary.mkdir()
    monkeypatch.setattr("tempfile.tempdir", str(temporary))
    sent = review_job(Job("k", "v", (JobFile(name, "", None, "", data),), *limits), lambda *stage: None)
    unpacked = review_job(Job("k", "v", (JobFile(name, str(tmp_path / "m.zip"), 0, ""),), *limits), lambda *s: None)
    there = review_model((Given(name, data),), Settings())
    assert sent.digest == unpacked.digest
    assert there["model"]["file"] == readable(name)
    assert sent.digest.review["verdict"] == there["verdict"]
    assert not list(temporary.iterdir())


def test_thousands_of_assemblies_within_one_another_are_walked(tmp_path):
    """In a process of its own: the kernel itself may give up on them, seamcheck must not."""
    script = (
        "from OCP.TDocStd import TDocStd_Document\nfrom OCP.TCollection import TCollection_ExtendedString\n"
        "from OCP.XCAFDoc import XCAFDoc_DocumentTool\nfrom OCP.BRepPrimAPI import BRepPrimAPI_MakeBox\n"
        "from OCP.TopLoc import TopLoc_Location\nfrom seamcheck.assembly.products import placed_products\n"
        "document = TDocStd_Document(TCollection_ExtendedString('x'))\n"
        "tool = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())\n"
        "inner = tool.AddShape(BRepPrimAPI_MakeBox(1, 1, 1).Shape(), False)\n"
        "for n in range(3000):\n"
        "    outer = tool.NewShape()\n    tool.AddComponent(outer, inner, TopLoc_Location())\n    inner = outer\n"
        "products = list(placed_products(document))\nprint(len(products), len(products[0].path))\n"
        "import os; os._exit(0)\n"
    )
    done = subprocess.run(
        [sys.executable, "-P", "-c", script], capture_output=True, timeout=900, check=False,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
    )  # fmt: skip
    assert b"RecursionError" not in done.stderr
    if done.returncode < 0:
        pytest.skip("the kernel itself can't build so deep a tree here")
    count, depth = done.stdout.split()
    assert int(count) == 1
    assert int(depth) > 3000
