"""One model that can't be reviewed, or one baseline that can't be used, never hides what the others show."""

from __future__ import annotations

import shutil
import sys

import pytest
from shell import shell
from telling import telling

from seamcheck.samples import samples

SAMPLES = {sample.name: sample.file for sample in samples()}
SINGLE = b"ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\n#1=PRODUCT('x','x','',());\nENDSEC;\nEND-ISO-10303-21;\n"


@pytest.fixture
def folder(tmp_path):
    (tmp_path / "m").mkdir()
    shutil.copy(SAMPLES["sound"], tmp_path / "m/b-good.step")
    shutil.copy(SAMPLES["rib-width"], tmp_path / "m/c-bad.step")
    (tmp_path / "m/a-empty.step").write_bytes(SINGLE)
    return tmp_path


def each(folder, *more):
    return shell("review", "m", "--each", *more, cwd=folder)


def test_a_model_that_is_expected_not_to_be_reviewed_can_be_accepted(folder):
    (folder / "m/c-bad.step").unlink()
    (folder / "m/b-good.step").unlink()
    assert each(folder, "--accept", "empty").exit_code == 0
    assert each(folder, "--accept", "timeout").exit_code == 2
    assert each(folder, "--accept", "nonsense").exit_code == 2


def test_accepting_never_hides_a_broken_limit(folder):
    assert each(folder, "--accept", "any").exit_code == 1


@pytest.mark.parametrize("kind", telling(["not-reviewed", "damaged"], ["damaged"]))
def test_a_baseline_that_is_none_stops_nothing(folder, kind):
    each(folder, "--json", "base")
    if kind == "damaged":
        (folder / "base/m/a-empty.step.json").write_text("{")
    wanted = ("--baseline", "base", "--sarif", "s.json", "--junit", "j.xml", "--accept", "any")
    done = each(folder, *wanted)
    assert {"b-good", "c-bad"} <= {word.split(".")[0].split("/")[-1] for word in done.stdout.split()}
    assert (folder / "s.json").exists()
    assert (folder / "j.xml").exists()
    assert done.exit_code == (2 if kind == "damaged" else 0), done.stderr


@pytest.mark.parametrize(("model", "code"), telling([("c-bad", 1), ("b-good", 2)], [("c-bad", 1)], several=True))
def test_an_output_whose_library_is_missing_leaves_a_broken_limit_broken(folder, model, code, monkeypatch):
    monkeypatch.setitem(sys.modules, "ezdxf", None)
    done = shell("review", f"m/{model}.step", "--dxf", "x.dxf", cwd=folder)
    assert done.exit_code == code, done.stderr
    assert "dxf" in done.stderr


def test_a_link_in_the_folder_of_outputs_is_not_followed(folder):
    (folder / "elsewhere").mkdir()
    (folder / "out").mkdir()
    (folder / "out/m").symlink_to(folder / "elsewhere")
    done = each(folder, "--json", "out", "--accept", "any")
    assert not list((folder / "elsewhere").iterdir())
    assert done.exit_code == 1
    assert "leads out" in done.stderr
