"""What is looked up row by row and face by face, against loops over the same tables."""

from __future__ import annotations

import numpy as np
import pytest

from seamcheck.measure.additions import Column
from seamcheck.measure.floor import _steepest_of_face
from seamcheck.sections.rows import first_true

RANDOM = np.random.default_rng(5)


@pytest.mark.parametrize("share", [0.0, 0.1, 0.6, 1.0])
def test_the_first_true_of_a_row_is_where_a_loop_finds_it(share):
    mask = RANDOM.random((60, 9)) < share
    assert first_true(mask).tolist() == [next((k for k, hit in enumerate(row) if hit), -1) for row in mask.tolist()]


@pytest.mark.parametrize("faces", [(-1,), (-1, 3), (-1, 0, 2, 17_999)])  # -1: no face
def test_the_steepest_of_a_face_is_its_steepest_in_its_own_row(faces):
    face, slope = RANDOM.choice(faces, (40, 7)), RANDOM.random((40, 7))
    slope[RANDOM.random(slope.shape) < 0.2] = np.inf  # nothing that has a slope
    counted = np.where(np.isfinite(slope), slope, 0.0)
    told = [[max(counted[i, face[i] == of]) for of in face[i]] for i in range(len(face))]
    assert _steepest_of_face(face, slope).tolist() == told


def test_a_column_is_blank_where_it_is_asked_for_and_nowhere_else():
    column = Column.of(np.array([1.0, np.nan, 3.0]), "hole")
    assert column.without(np.zeros(3, dtype=bool), "corner").reasons.tolist() == ["", "hole", ""]
    blank = column.without(np.array([True, True, False]), np.array(["corner", "end", "end"], dtype=object))
    assert np.isnan(blank.values).tolist() == [True, True, False]
    assert blank.reasons.tolist() == ["corner", "end", ""]
    assert blank.reasons.dtype.kind == "U"
