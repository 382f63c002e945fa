"""Stretches: wrapping, merging and lengths, against a slow reading of the same words."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from seamcheck.sections.stretches import cell_lengths, stretches, weighted_median


def ring(n, step=1.0):
    return np.arange(n) * step, n * step


def test_a_stretch_reaches_half_way_to_the_stations_that_hold():
    s, length = ring(20)
    mark = np.zeros(20, bool)
    mark[5:8] = True
    (found,) = stretches(mark, s, length, closed=True)
    assert (found.from_s, found.to_s, found.length) == (4.5, 7.5, 3.0)
    assert list(found.stations) == [5, 6, 7]
    assert not found.is_whole


def test_a_stretch_over_the_start_of_a_closed_path_is_one():
    s, length = ring(20)
    mark = np.zeros(20, bool)
    mark[[18, 19, 0, 1]] = True
    (found,) = stretches(mark, s, length, closed=True)
    assert (found.from_s, found.to_s, found.length) == (17.5, 1.5, 4.0)
    assert list(found.stations) == [18, 19, 0, 1]


def test_the_same_marks_on_an_open_path_are_two():
    s, _ = ring(20)
    mark = np.zeros(20, bool)
    mark[[18, 19, 0, 1]] = True
    first, second = stretches(mark, s, 19.0, closed=False)
    assert (first.from_s, first.to_s) == (0.0, 1.5)
    assert (second.from_s, second.to_s) == (17.5, 19.0)


@pytest.mark.parametrize(("step", "count"), [(0.9, 1), (1.1, 2)])
def test_stretches_closer_than_a_millimetre_are_one(step, count):
    s, length = ring(30, step)
    mark = np.zeros(30, bool)
    mark[[10, 12]] = True
    assert len(stretches(mark, s, length, closed=True)) == count


def test_all_stations_are_the_whole_path():
    s, length = ring(8)
    (found,) = stretches(np.ones(8, bool), s, length, closed=True)
    assert (found.from_s, found.to_s, found.length, found.is_whole) == (0.0, 8.0, 8.0, True)


def test_no_mark_is_no_stretch():
    s, length = ring(8)
    assert stretches(np.zeros(8, bool), s, length, closed=True) == []


@given(st.lists(st.booleans(), min_size=3, max_size=60), st.integers(0, 59), st.sampled_from([0.3, 0.7, 1.0, 2.0]))
def test_turning_the_start_of_a_closed_path_changes_no_stretch(marks, turn, step):
    mark = np.array(marks)
    s, length = ring(len(mark), step)
    turn %= len(mark)
    one = stretches(mark, s, length, closed=True)
    other = stretches(np.roll(mark, turn), s, length, closed=True)
    assert {frozenset(map(int, x.stations)) for x in one} == {
        frozenset(int(i - turn) % len(mark) for i in x.stations) for x in other
    }
    assert sum(x.length for x in one) == pytest.approx(sum(x.length for x in other))


@given(st.lists(st.booleans(), min_size=3, max_size=60), st.booleans(), st.sampled_from([0.3, 0.6, 1.0, 2.0]))
def test_every_marked_station_is_in_exactly_one_stretch_and_stretches_are_apart(marks, closed, step):
    mark = np.array(marks)
    s, length = ring(len(mark), step)
    if not closed:
        length = float(s[-1])
    found = stretches(mark, s, length, closed)
    assert sorted(int(i) for x in found for i in x.stations) == list(np.flatnonzero(mark))
    for x in found:
        assert 0 <= x.from_s <= length
        assert 0 <= x.to_s <= length
        span = x.to_s - x.from_s if x.to_s >= x.from_s else x.to_s - x.from_s + length
        assert x.length == pytest.approx(span)
    ordered = sorted(found, key=lambda x: x.from_s)
    pairs = list(pairwise(ordered))
    if closed and len(found) > 1:
        pairs.append((ordered[-1], ordered[0]))
    for a, b in pairs:
        assert (b.from_s - a.to_s) % length >= 1.0 - 1e-9


def test_cells_add_up_to_the_path():
    s = np.array([0.0, 1.0, 1.2, 5.0])
    assert cell_lengths(s, 8.0, closed=True).sum() == pytest.approx(8.0)
    assert cell_lengths(s, 5.0, closed=False) == pytest.approx([0.5, 0.6, 2.0, 1.9])


@given(st.lists(st.floats(-100, 100), min_size=1, max_size=40))
def test_equal_weights_give_numpys_median(values):
    array = np.array(values)
    assert weighted_median(array, np.full(len(array), 0.37)) == pytest.approx(np.median(array), abs=1e-12)


def test_a_densely_sampled_place_does_not_move_the_median():
    values = np.array([1.0] * 10 + [9.0] * 30)
    weights = np.array([1.0] * 10 + [0.01] * 30)
    assert weighted_median(values, weights) == 1.0
