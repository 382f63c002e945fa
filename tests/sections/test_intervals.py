"""How much plastic lies over the rib, from the heights at which a line along the beam meets the cover's outline."""

from __future__ import annotations

import numpy as np
import pytest

from seamcheck.sections.intervals import plastic_over

UP, DOWN = True, False  # a face that looks toward the light, and one that looks away from it


def over(*faces, at=None):
    heights = np.array([height for height, _ in faces], dtype=float)
    lit = np.array([side for _, side in faces], dtype=bool)
    place = np.zeros(len(faces), dtype=int) if at is None else np.array(at)
    left, right, stretches = plastic_over(place, heights, heights, lit, int(place.max(initial=0)) + 1)
    np.testing.assert_array_equal(left, right)
    return left.tolist(), stretches.tolist()


def test_a_plate_is_as_thick_as_its_faces_are_apart():
    assert over((0.0, DOWN), (2.0, UP)) == ([2.0], [1])


def test_a_second_wall_of_the_cover_far_above_is_no_thickness_of_the_plate():
    assert over((0.0, DOWN), (2.0, UP), (28.0, DOWN), (30.0, UP)) == ([2.0], [2])


def test_a_line_along_an_upright_wall_does_not_double_the_thickness():
    # the foot of an embossed letter 0.3 mm high: the plate's face and the letter's top are both met
    assert over((0.0, DOWN), (2.2, UP), (2.5, UP)) == ([2.5], [1])


def test_two_layers_without_air_between_them_are_one_stretch():
    assert over((0.0, DOWN), (1.0, UP), (1.0, DOWN), (2.0, UP)) == ([2.0], [1])


def test_a_void_between_two_layers_counts_as_a_second_stretch():
    left, stretches = over((0.0, DOWN), (1.0, UP), (1.5, DOWN), (2.0, UP))
    assert left == [1.0]
    assert stretches == [2]


def test_a_hook_below_the_rib_is_no_plastic_over_it():
    assert over((-3.0, DOWN), (-2.0, UP), (0.0, DOWN), (2.0, UP)) == ([2.0], [1])


def test_an_overlap_as_drawn_counts_from_the_underside_of_the_cover():
    assert over((-0.4, DOWN), (1.6, UP)) == ([pytest.approx(2.0)], [1])


def test_an_outline_that_does_not_close_has_no_thickness():
    left, stretches = over((0.0, DOWN))
    assert np.isnan(left[0])
    assert stretches == [1]


def test_each_interval_is_taken_by_itself():
    left, stretches = over((0.0, DOWN), (2.0, UP), (1.0, DOWN), (1.5, UP), at=[0, 0, 2, 2])
    assert left == [2.0, 0.0, 0.5]
    assert stretches == [1, 0, 1]
