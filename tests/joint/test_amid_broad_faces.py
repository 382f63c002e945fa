"""A closed band of contact amid broad faces: a lid, or a board in its holder. Only who draws it can tell."""

from __future__ import annotations

import pytest
from builder.hard.tree import write_model
from builder.joints import JOINTS

from seamcheck.assembly import read_assembly
from seamcheck.errors import NotReviewed
from seamcheck.joint import find_joints
from seamcheck.settings.settings import Settings


def test_it_is_a_lap_where_the_parts_are_named_and_none_otherwise(tmp_path):
    assembly = read_assembly([write_model(tmp_path / "a.step", JOINTS["lid-on-a-broad-plate"]())])
    with pytest.raises(NotReviewed):
        find_joints(assembly, Settings())
    (joint,) = find_joints(assembly, Settings(cover="part 1", base="part 2"))
    assert joint.kind == "flat-lap"
    # 48 x 38 round a pocket of 40 x 30, by hand
    assert joint.region.area == pytest.approx(48 * 38 - 40 * 30, rel=1e-3)
