"""Rigid motion, order of the parts, length unit and station spacing change nothing that is measured."""

from __future__ import annotations

import dataclasses
from functools import cache

import numpy as np
import pytest
from builder import Spec, build, rounded_rectangle
from hypothesis import given, settings
from hypothesis import strategies as st
from measuring import measure

from seamcheck.assembly import read_assembly

SPEC = Spec(track=rounded_rectangle(30, 22, 5), draft_outer=2.0, rib_height_outer=1.1, top_fillet=0.1)
KEYS = (
    "rib_width", "rib_width_mid", "rib_height_inner", "rib_height_outer", "draft_outer", "melt_area",
    "trap_area_inner", "trap_area_outer", "lip_gap_outer", "clamp_land", "cover_thickness", "gap", "free_travel",
    "beam_clear", "wall_width",
)  # fmt: skip


def middles(measured):
    return {key: float(np.median(measured.column(key))) for key in KEYS} | {"length": measured.contour.length}


@cache
def at_rest():
    return middles(measure(build(SPEC).parts))


def assert_same(found):
    for key, value in at_rest().items():
        assert found[key] == pytest.approx(value, abs=0.002), key  # the bar for lengths, mm


@settings(max_examples=4)
@given(
    turn=st.tuples(*[st.floats(-180, 180)] * 3),
    shift=st.tuples(*[st.floats(-500, 500)] * 3),
    cover_first=st.booleans(),
    spacing=st.floats(0.25, 1.0),
)
def test_motion_order_and_spacing_change_nothing(turn, shift, cover_first, spacing):
    moved = dataclasses.replace(SPEC, turn=turn, shift=shift, cover_first=cover_first)
    assert_same(middles(measure(build(moved).parts, station_spacing=spacing)))


@pytest.mark.parametrize("unit", ["mm", "in", "m", "ft"])
def test_the_length_unit_of_the_file_changes_nothing(unit, tmp_path):
    file = dataclasses.replace(build(SPEC), unit=unit).write(tmp_path / "housing.step")
    parts = [(part.name, part.shape) for part in read_assembly([file]).parts]
    assert_same(middles(measure(parts)))
