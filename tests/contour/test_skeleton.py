"""The middle of bands typed here: rings, strips, and where bands meet."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.contour.skeleton import skeleton

WIDTH = 1.2


def band(*lines):
    """The band of WIDTH along lines, with flat ends."""
    return shapely.union_all([shapely.LineString(line).buffer(WIDTH / 2, cap_style="flat") for line in lines])


def test_a_ring_has_one_closed_middle_on_its_circle():
    middle = shapely.Point(3.0, -2.0).buffer(20.0, quad_segs=64).exterior
    chains, junctions = skeleton(middle.buffer(WIDTH / 2), WIDTH)
    assert junctions == {}
    assert [(chain.closed, chain.ends) for chain in chains] == [(True, (None, None))]
    radius = np.linalg.norm(chains[0].points - (3.0, -2.0), axis=1)
    assert radius == pytest.approx(np.full(len(radius), 20.0), abs=0.02)
    length = shapely.LinearRing(chains[0].points).length
    assert length == pytest.approx(2 * np.pi * 20.0, rel=2e-3)


def test_a_strip_has_one_open_middle_from_end_to_end():
    chains, junctions = skeleton(band([(0, 0), (30, 0)]), WIDTH)
    assert junctions == {}
    assert [(chain.closed, chain.ends) for chain in chains] == [(False, (None, None))]
    assert np.abs(chains[0].points[:, 1]).max() < 1e-6
    low, high = chains[0].points[:, 0].min(), chains[0].points[:, 0].max()
    assert (low, high) == (pytest.approx(WIDTH / 2, abs=0.15), pytest.approx(30 - WIDTH / 2, abs=0.15))


def test_three_bands_meet_in_one_junction():
    chains, junctions = skeleton(band([(-20, 0), (20, 0)], [(0, 0), (0, 15)]), WIDTH)
    assert len(junctions) == 1
    ((number, place),) = junctions.items()
    assert place == pytest.approx([0.0, 0.0], abs=0.25)
    assert len(chains) == 3
    assert all(number in chain.ends and None in chain.ends and not chain.closed for chain in chains)


def test_a_dividing_wall_makes_three_chains_between_two_junctions():
    frame = shapely.LinearRing([(0, 0), (40, 0), (40, 20), (0, 20)]).buffer(WIDTH / 2, join_style="mitre")
    chains, junctions = skeleton(frame.union(band([(15, 0), (15, 20)])), WIDTH)
    assert len(junctions) == 2
    assert sorted(np.round(place[1]) for place in junctions.values()) == [0, 20]
    assert [set(chain.ends) for chain in chains] == [set(junctions)] * 3


def test_corners_leave_no_branches():
    frame = shapely.LinearRing([(0, 0), (40, 0), (40, 20), (0, 20)]).buffer(WIDTH / 2, join_style="mitre")
    chains, junctions = skeleton(frame, WIDTH)
    assert (len(chains), chains[0].closed, junctions) == (1, True, {})
    assert shapely.LinearRing(chains[0].points).length == pytest.approx(120.0, rel=0.02)
