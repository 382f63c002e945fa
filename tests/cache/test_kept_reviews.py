"""A review from what was kept says, byte for byte, what a review that measures says."""

import json
import os
import shutil
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given
from hypothesis import settings as run
from hypothesis import strategies as st
from msgspec.structs import replace

from seamcheck import pipeline
from seamcheck.assembly.parts import ModelFile
from seamcheck.assembly.source import file_facts
from seamcheck.cache.folder import Folder
from seamcheck.cache.key import AFTERWARDS, key_of
from seamcheck.cache.measured import keep, recall
from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.samples import samples
from seamcheck.settings.material import read_material
from seamcheck.settings.settings import Settings
from seamcheck.settings.tables import Clamp, Load, Scanner, Trial
from seamcheck.settings.waivers import Waiver

SAMPLES = Path(pipeline.__file__).parents[1] / "sample_models"
NAMES = ("seam-junction", "cover-hole")
DAY = date(2026, 1, 1)


def bare(name):
    return replace(Settings(), today=DAY)


def as_bytes(document):
    return json.dumps(document, sort_keys=True).encode()


@pytest.fixture(scope="module")
def measured(tmp_path_factory):
    """Of each sample what was measured, as it was and as it comes back from a folder."""
    folder = Folder(tmp_path_factory.mktemp("cache"))
    os.chmod(folder.path, 0o700)
    found, taken = {}, []
    keep_it = pipeline._judged
    pipeline._judged = lambda measured, *rest: taken.append(measured) or keep_it(measured, *rest)
    try:
        for name in NAMES:
            path = SAMPLES / f"{name}.step"
            pipeline.review_model((path,), bare(name), True)
            assert keep(folder, taken[-1], bare(name))
            back = recall(folder, [file_facts(path)], bare(name), True)
            assert back is not None
            found[name] = (taken[-1], back)
    finally:
        pipeline._judged = keep_it
    return found


limits = st.fixed_dictionaries(
    {},
    optional={
        f"{rule.key}.{limit.name}": st.sampled_from(
            [x for x in (0.8 * limit.default, limit.default, 1.25 * limit.default) if limit.least <= x <= limit.most]
        )
        for rule in RULES.values()
        for limit in rule.limits
    }
    | {f"{key}.severity": st.sampled_from(SEVERITIES) for key in RULES},
)


@run(max_examples=6, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(name=st.sampled_from(NAMES), changes=limits, with_view=st.booleans(), waived=st.booleans())
def test_the_document_is_the_same_under_any_limits(measured, name, changes, with_view, waived):
    asked = bare(name).changed(changes)
    if waived:
        rule = sorted(RULES)[0]
        asked = replace(asked, waivers=(Waiver(reason="seen", rule=rule),))
    now, kept = (as_bytes(pipeline._judged(m, asked, with_view, lambda stage: None)) for m in measured[name])
    assert now == kept


def test_a_second_review_needs_no_child(tmp_path, monkeypatch):
    folder, model = tmp_path / "kept", SAMPLES / "rib-height.step"
    first = pipeline.review(model, Settings(today=DAY), cache=folder)
    assert len(list(folder.iterdir())) == 1
    monkeypatch.setattr("seamcheck.isolation.run_isolated", lambda *a, **k: pytest.fail("measured again"))
    again = pipeline.review(model, Settings(today=DAY), cache=folder)
    assert as_bytes(again.document) == as_bytes(first.document)
    other = pipeline.review(
        model,
        Settings(today=DAY).changed({f"{rule}.severity": "note" for rule in ("rib-height", "sink-travel")}),
        cache=folder,
    )
    assert (first.verdict, other.verdict) == ("fail", "pass")
    with pytest.raises(pytest.fail.Exception):
        pipeline.review(model, Settings(today=DAY), cache=False)
    with pytest.raises(pytest.fail.Exception):  # it was kept without a view
        pipeline.review(model, Settings(today=DAY), cache=folder, with_view=True)
    with pytest.raises(pytest.fail.Exception):
        pipeline.review(model, Settings(today=DAY), cache=folder, collapse=0.35)
    copy = tmp_path / "rib-height.step"
    shutil.copy(model, copy)
    assert pipeline.review(copy, Settings(today=DAY), cache=folder).verdict == "fail"  # the same name and bytes
    copy.write_bytes(copy.read_bytes() + b"\n")
    with pytest.raises(pytest.fail.Exception):
        pipeline.review(copy, Settings(today=DAY), cache=folder)


def test_sections_are_kept_for_materials_and_measured_for_them_where_they_are_not(measured, tmp_path):
    files, name = [file_facts(SAMPLES / "cover-hole.step")], "cover-hole"
    with_material = replace(bare(name), material=read_material({"cover": "PC", "base": "PC"}))
    without, full = Folder(tmp_path / "without"), Folder(tmp_path / "full")
    assert keep(without, measured[name][0], bare(name))
    assert keep(full, measured[name][0], with_material)
    assert recall(without, files, bare(name), False) is not None
    assert recall(without, files, with_material, False) is None
    assert recall(full, files, bare(name), False) is not None
    back = recall(full, files, with_material, False)
    now, kept = (as_bytes(pipeline._judged(m, with_material, False, lambda s: None)) for m in (measured[name][0], back))
    assert now == kept
    assert b"collapse_window" in now


OTHER = {
    "collapse": 0.35, "beam_margin": 0.1, "station_spacing": 0.25, "lateral_play": 0.1, "intended_stop": 0.3,
    "second_collapse": 0.2,
    "cover": "lid", "base": "case", "beam": (0.0, 0.0, -1.0), "scanner": Scanner(distance=300.0),
    "clamp": Clamp(reach=4.0), "load": Load(pressure=0.1), "trial": Trial(speed=500.0),
    "tolerances": {"rib-width": 0.05},
    "limits": {**Settings().limits, "rib-width.min": 0.7}, "severities": {**Settings().severities, "rib-width": "note"},
    "waivers": (Waiver(reason="seen", rule="rib-width"),), "material": read_material({"cover": "PC"}),
    "optics": {"": (2.0, None)}, "origins": {"collapse": "file"},
    "file": "seamcheck.toml", "today": DAY,
}  # fmt: skip


@pytest.mark.parametrize("name", Settings.__struct_fields__)
def test_every_setting_is_part_of_the_key_unless_it_comes_in_afterwards(name):
    # a new setting must be named here: with what other value, and whether measuring may know it
    files = [ModelFile("a.step", "00", "AP214", "mm")]
    changed = key_of(files, replace(Settings(), **{name: OTHER[name]})) != key_of(files, Settings())
    assert changed == (name not in AFTERWARDS)


def test_names_contents_and_order_of_files_are_part_of_the_key():
    a, b = ModelFile("a.step", "00", "", ""), ModelFile("b.step", "11", "", "")
    keys = {key_of(files, Settings()) for files in ([a], [b], [a, b], [b, a], [replace(a, sha256="11")])}
    assert len(keys) == 5


@pytest.mark.thorough
def test_a_folder_that_cannot_be_used_is_no_failure(tmp_path):
    file = tmp_path / "a file"
    file.write_text("in the way")
    review = pipeline.review(SAMPLES / "rib-width.step", Settings(today=DAY), cache=file)
    assert review.verdict == "fail"
    assert file.read_text() == "in the way"


def test_a_kept_review_loads_neither_the_kernel_nor_what_measures(tmp_path):
    """Loading them costs several times what reading and judging what is kept does."""
    code = (
        "import sys; from seamcheck.pipeline import review\n"
        "review(sys.argv[1], cache=sys.argv[2])\n"
        "heavy = ('OCP', 'scipy', 'shapely', 'seamcheck.measure.seam')\n"
        "print([name for name in heavy if name in sys.modules])"
    )
    sample = next(sample.file for sample in samples() if sample.name == "corner-radius")
    command = [sys.executable, "-c", code, str(sample), str(tmp_path / "kept")]
    first, second = (subprocess.run(command, capture_output=True, text=True, check=True).stdout for _ in range(2))
    assert second.strip() == "[]"
    assert first.strip() == "[]"  # all that is heavy is loaded by the child
    assert list((tmp_path / "kept").glob("*.measured"))
