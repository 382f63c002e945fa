"""Runs along a path: what a seed grows into, and what is unknown between two marked stations."""

from __future__ import annotations

import numpy as np

from seamcheck.sections.stretches import bridged, grown


def bools(text: str) -> np.ndarray:
    return np.array([c == "x" for c in text])


def test_a_seed_takes_its_whole_run_and_no_other():
    assert grown(bools("..x......"), bools(".xxx..xx."), closed=False).tolist() == bools(".xxx.....").tolist()


def test_on_a_closed_path_a_run_goes_on_over_the_start():
    assert grown(bools("x........"), bools("xx.....xx"), closed=True).tolist() == bools("xx.....xx").tolist()
    assert grown(bools("x........"), bools("xx.....xx"), closed=False).tolist() == bools("xx.......").tolist()


def test_without_a_seed_nothing_grows():
    assert not grown(bools("...."), bools(".xx."), closed=True).any()


def test_what_is_unknown_between_two_marked_stations_is_bridged():
    s = np.arange(9.0)
    found = bridged(bools("xx...xx.."), bools("..xxx..x."), s, 9.0, closed=False)
    assert found.tolist() == bools("xxxxxxx..").tolist()


def test_a_long_unknown_stretch_parts_two_marked_ones():
    s = np.arange(9.0)
    found = bridged(bools("xx...xx.."), bools("..xxx...."), s, 9.0, closed=False, most=2.0)
    assert found.tolist() == bools("xx...xx..").tolist()


def test_a_known_station_that_holds_the_limit_is_no_bridge():
    s = np.arange(9.0)
    assert bridged(bools("xx...xx.."), bools("..x.x...."), s, 9.0, closed=False).tolist() == bools("xx...xx..").tolist()


def test_on_a_closed_path_the_bridge_may_pass_the_start():
    s = np.arange(9.0)
    found = bridged(bools(".x.....x."), bools("x.......x"), s, 9.0, closed=True)
    assert found.tolist() == bools("xx.....xx").tolist()
