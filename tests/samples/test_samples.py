"""The sample models: the shipped files are what the script draws, and copying them loses nothing."""

from __future__ import annotations

import importlib.util
import subprocess
import sys
from pathlib import Path

import pytest
from builder.ops import faces, solids
from OCP.Bnd import Bnd_Box
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps
from OCP.IFSelect import IFSelect_RetDone
from OCP.Message import Message
from OCP.STEPControl import STEPControl_Reader

from seamcheck.catalogue.interface_rules import NEEDS
from seamcheck.catalogue.rules import RULES
from seamcheck.errors import UsageError
from seamcheck.samples import samples, write_samples

ROOT = Path(__file__).resolve().parents[2]


def drawn():
    spec = importlib.util.spec_from_file_location("sample_models_draw", ROOT / "sample_models" / "draw.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.MODELS


MODELS = drawn()


def measures(shape):
    """Volume, surface, face count and box of a solid: the kernel's plain mass properties for both."""
    volume, area, bounds = GProp_GProps(), GProp_GProps(), Bnd_Box()
    BRepGProp.VolumeProperties_s(shape, volume)
    BRepGProp.SurfaceProperties_s(shape, area)
    BRepBndLib.AddOptimal_s(shape, bounds, False, False)
    return [volume.Mass(), area.Mass(), len(faces(shape)), *bounds.Get()]


@pytest.mark.parametrize("sample", samples(), ids=lambda s: s.name)
def test_the_shipped_file_is_what_the_script_draws(sample):
    Message.DefaultMessenger_s().ChangePrinters().Clear()
    reader = STEPControl_Reader()
    assert reader.ReadFile(str(sample.file)) == IFSelect_RetDone
    reader.TransferRoots()
    read = solids(reader.OneShape())
    parts = MODELS[sample.name]().parts
    assert len(read) == len(parts)
    for solid, (name, shape, _) in zip(read, parts, strict=True):
        assert measures(solid) == pytest.approx(measures(shape), rel=1e-6, abs=1e-4), name


def test_there_is_a_sound_sample_and_one_for_each_rule_that_geometry_alone_breaks():
    of_doubt = {"not-measured", "model-doubt", "joint-left-out"}
    of_tolerances = {"parts-outside"}  # shares of parts need a spread, which no drawing has
    geometric = {key for key, rule in RULES.items() if not rule.optional} - of_doubt - of_tolerances
    assert {s.rule for s in samples() if s.rule and not s.settings} == geometric
    by_settings = {s.rule for s in samples() if s.settings}
    assert by_settings <= {key for key, rule in RULES.items() if rule.optional}
    assert by_settings >= set(NEEDS)
    assert any(s.rule is None for s in samples())
    assert set(MODELS) == {s.name for s in samples()}


@pytest.mark.parametrize("sample", samples(), ids=lambda s: s.name)
def test_a_sample_is_small_and_says_what_it_is(sample):
    assert 0 < sample.file.stat().st_size < 150_000
    assert sample.sentence.endswith(".")
    assert "2026-01-01T00:00:00" in sample.file.read_text("latin-1")[:1000]


def test_writing_the_same_model_twice_gives_the_same_bytes(tmp_path):
    first = MODELS["beam-path"]().write(tmp_path / "a.step").read_bytes()
    assert MODELS["beam-path"]().write(tmp_path / "b.step").read_bytes() == first


def test_copies_are_complete_and_kept_on_a_second_run(tmp_path):
    folder = tmp_path / "new" / "models"
    written = write_samples(folder)
    shipped = [f for s in samples() for f in (s.file, s.settings) if f]
    assert [p.name for p in written] == [f.name for f in shipped]
    assert all(p.read_bytes() == f.read_bytes() for p, f in zip(written, shipped, strict=True))
    before = [p.stat().st_mtime_ns for p in written]
    assert [p.stat().st_mtime_ns for p in write_samples(folder)] == before


def test_a_differing_file_is_left_alone_and_nothing_is_written(tmp_path):
    (tmp_path / "sound.step").write_text("mine")
    with pytest.raises(UsageError, match=r"sound\.step"):
        write_samples(tmp_path)
    assert [p.name for p in tmp_path.iterdir()] == ["sound.step"]
    assert (tmp_path / "sound.step").read_text() == "mine"


def test_a_file_in_place_of_the_folder_is_named(tmp_path):
    (tmp_path / "taken").write_text("")
    with pytest.raises(UsageError, match="taken"):
        write_samples(tmp_path / "taken")


def test_no_kernel_is_imported_for_the_list():
    code = "import sys, seamcheck.samples as s; s.samples(); sys.exit('OCP' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], cwd=ROOT, check=False).returncode == 0


def test_the_table_in_the_readme_names_every_sample():
    text = (ROOT / "sample_models" / "README.md").read_text("utf-8")
    for sample in samples():
        assert f"| `{sample.file.name}` | {sample.rule or 'nothing'} | {sample.sentence} |" in text
