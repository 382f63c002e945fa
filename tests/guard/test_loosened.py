"""What a settings file beside a stranger's model makes milder stands at the top of every output."""

from __future__ import annotations

import json
import shutil

import pytest
from shell import shell

from seamcheck.samples import samples

LOOSE = """
station-spacing = 0.6
beam-margin = 0.1
[limits.rib-width]
min = 0.1
severity = "note"
[limits.corner-radius]
severity = "off"
[limits.cover-thickness]
min = 1.0
[[waivers]]
rule = "rib-width"
at = [0, 0, 0]
radius = 500.0
reason = "we know better"
"""
SAYS = (
    "The settings file seamcheck.toml loosens 1 limit (rib-width.min), switches 1 rule (corner-radius) off, makes 1 "
    "rule (rib-width) less severe, looks at the seam only every 0.6 mm, keeps only 0.10 mm free beside the beam and "
    "waives 1 place (rib-width)."
)

OUTPUTS = ("html", "csv", "dxf", "step", "sarif", "junit", "markdown")


@pytest.fixture(scope="module")
def outputs(tmp_path_factory):
    """Every output of a review under such settings, as text."""
    folder = tmp_path_factory.mktemp("loose")
    sample = next(sample.file for sample in samples() if sample.name == "rib-width")
    shutil.copy(sample, folder / "model.step")
    (folder / "seamcheck.toml").write_text(LOOSE)
    wanted = [word for name in OUTPUTS for word in (f"--{name}", f"out.{name}")]
    done = shell("review", "model.step", *wanted, "--json", "out.json", cwd=folder)
    assert done.exit_code in (0, 1), done.stderr
    texts = {name: (folder / f"out.{name}").read_text("utf-8") for name in (*OUTPUTS, "json")}
    texts["terminal"] = done.stdout
    for name, words in (
        ("quiet", ("--quiet",)), ("plain", ("--annotations", "plain")), ("workflow", ("--annotations", "workflow")),
    ):  # fmt: skip
        texts[name] = shell("report", "out.json", *words, cwd=folder).stdout
    texts["each"] = shell("review", "model.step", "--each", cwd=folder).stdout
    return texts


def plain(text: str) -> str:
    """Without the marks that each kind of file puts around its words."""
    for mark in ("&#39;", "\\", "\n", "'"):
        text = text.replace(mark, "" if mark == "\\" else " ")
    return " ".join(text.split())


def test_every_output_says_it_at_its_top(outputs):
    for name in (*OUTPUTS, "terminal", "quiet", "plain", "workflow", "each"):  # one test: the reviews cost much
        text = plain(outputs[name])
        sentence = SAYS.replace(",", " -") if name == "csv" else SAYS
        assert sentence in text, f"{name}: {text[:3000]}"
        if name in ("terminal", "quiet", "each", "markdown", "csv", "plain", "workflow"):
            assert text.index(sentence) < 400, name


def test_the_document_holds_it_too(outputs):
    document = json.loads(outputs["json"])
    assert document["settings"]["file"] == "seamcheck.toml"
    assert document["settings"]["from"]["rib-width.min"] == "file"


def test_without_a_settings_file_nothing_says_it(tmp_path):
    sample = next(sample.file for sample in samples() if sample.name == "rib-width")
    done = shell("review", sample, "--markdown", "m.md", "--html", "m.html", cwd=tmp_path)
    for text in (done.stdout, (tmp_path / "m.md").read_text("utf-8"), (tmp_path / "m.html").read_text("utf-8")):
        assert "loosens" not in text
