"""A waived or known finding stays the same one when a part is renamed, the model moved as a whole or turned, or the
parts change their order in the file."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

import pytest
from builder import Spec, build, circle, rounded_rectangle, spoil

sys.path.insert(0, str(Path(__file__).parents[1]))

from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

BOX = Spec(track=rounded_rectangle(18, 14, 5), wall_height=6.0, cover_name="lid", base_name="housing")
RING = Spec(track=circle(9), wall_height=6.0, cover_name="lid", base_name="housing", rib_width=0.5)

CHANGES = {
    "renamed": {"cover_name": "deckel-v2", "base_name": "gehaeuse"},
    "moved as a whole": {"shift": (40.0, -7.3, 12.1)},
    "turned": {"turn": (25.0, 10.0, 40.0)},
    "order of the parts": {"cover_first": True},
}


def ids(folder: Path, spec: Spec, spoiled: bool) -> list[tuple[str, str]]:
    model = spoil("no-rib", spec, length=2.0)[0] if spoiled else build(spec)
    document = review_model((model.write(folder / "model.step"),), Settings().changed({"station-spacing": 2.0}))
    found = [(f["rule"], f["id"]) for f in document["findings"] if f["severity"] == "must-fix"]
    assert found
    return sorted(found)


@pytest.fixture(scope="module")
def before(tmp_path_factory):
    folder = tmp_path_factory.mktemp("before")
    return {False: ids(folder, RING, False), True: ids(folder, BOX, True)}


@pytest.mark.parametrize("change", CHANGES)
@pytest.mark.parametrize("spoiled", [False, True], ids=["narrow rib", "interrupted rib"])
def test_ids_stay(before, tmp_path, spoiled, change):
    spec = replace(BOX if spoiled else RING, **CHANGES[change])
    assert ids(tmp_path, spec, spoiled) == before[spoiled]
