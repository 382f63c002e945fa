"""The share of a seam that lies below a value, against numpy."""

import numpy as np
import pytest

from seamcheck.sections.stretches import weighted_quantile


@pytest.mark.parametrize("share", [0.05, 0.25, 0.5, 0.95])
def test_equal_lengths_give_the_usual_quantile(share):
    # numpy's 'averaged_inverted_cdf' is the same definition (type 2 of Hyndman and Fan 1996), by another's code.
    values = np.random.default_rng(4).normal(size=237)
    expected = np.quantile(values, share, method="averaged_inverted_cdf")
    assert weighted_quantile(values, np.full(237, 0.5), share) == pytest.approx(expected)


def test_a_value_counts_as_long_as_its_part_of_the_seam():
    # By hand: 90 mm at 1.0, 10 mm at 2.0. 5 % and 50 % of the length lie at 1.0, 95 % reaches into the rest.
    values, lengths = np.array([2.0, 1.0]), np.array([10.0, 90.0])
    assert [weighted_quantile(values, lengths, s) for s in (0.05, 0.5, 0.95)] == [1.0, 1.0, 2.0]


def test_what_is_not_measured_has_no_part_in_it():
    assert weighted_quantile(np.array([np.nan, 3.0]), np.array([5.0, 1.0]), 0.05) == 3.0
    assert np.isnan(weighted_quantile(np.array([np.nan]), np.array([1.0]), 0.5))
