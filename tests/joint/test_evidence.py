"""Graded weights, and what of a band lies bare, on typed numbers."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.joint.contact import Surface
from seamcheck.joint.evidence import graded
from seamcheck.joint.frame import Frame
from seamcheck.joint.kind import kind_of
from seamcheck.joint.meeting import along, bare, covered
from seamcheck.joint.profile import EDGE, TRAP, BorderProfile
from seamcheck.joint.regions import seen_facets

FRAME = Frame.along(np.array([0.0, 0.0, 1.0]), np.zeros(3))


@pytest.mark.parametrize(("value", "weight"), [(0.0, 0.4), (0.2, 0.4), (0.5, 0.7), (0.8, 1.0), (2.0, 1.0)])
def test_a_weight_runs_straight_between_its_two_values(value, weight):
    assert graded(value, 0.2, 0.8, 0.4) == pytest.approx(weight)


def test_what_is_better_small_is_graded_by_its_negative():
    assert graded(-0.16, -0.16, -0.05, 0.45) == pytest.approx(0.45)
    assert graded(-0.05, -0.16, -0.05, 0.45) == pytest.approx(1.0)


def above(*boxes, z=0.0):
    """Facets that look down at height z, two for each box (x0, y0, x1, y1)."""
    corners = []
    for x0, y0, x1, y1 in boxes:
        a, b, c, d = (x0, y0, z), (x1, y0, z), (x1, y1, z), (x0, y1, z)
        corners += [[a, c, b], [a, d, c]]
    count = len(corners)
    return Surface(np.array(corners, float), np.tile([0.0, 0.0, -1.0], (count, 1)), np.ones(count), np.arange(count))


RING = shapely.box(0, 0, 60, 40).difference(shapely.box(2, 2, 58, 38))


@pytest.mark.parametrize(
    ("covers", "z", "area"),
    [
        ([(-1, -1, 61, 41)], 0.0, 0.0),
        ([(-1, -1, 30, 41)], 0.0, 30 * 40 - 28 * 36),  # half of the ring
        ([(-1, -1, 30, 41), (36, -1, 61, 41)], 0.0, 0.0),  # an opening of 6 mm is three widths: a notch, no end
        ([(0.5, 0.5, 59.5, 39.5)], 0.0, 0.0),  # play at the edge is no bare stretch
        ([(-1, -1, 61, 41)], 1.5, RING.area),  # further than parts that face each other
    ],
)  # fmt: skip
def test_long_stretches_under_nothing_are_bare(covers, z, area):
    found = bare(RING, covered(RING, 0.0, above(*covers, z=z), FRAME))
    assert found.area == pytest.approx(area, abs=1.0)


@pytest.mark.parametrize(
    ("covers", "z", "share"),
    [
        ([(-5, -5, 105, 9)], 0.0, 1.0),
        ([(-5, 1, 105, 9)], 0.0, 1.0),  # narrower than the wall's top, but all along it
        ([(-5, -5, 50, 9)], 0.0, 0.52),  # half of it, and what lies within half a width
        ([(-5, -5, 105, 9)], 1.5, 0.0),
    ],
)  # fmt: skip
def test_a_band_is_opposed_along_its_length(covers, z, share):
    wall = shapely.box(0, 0, 100, 4)
    assert along(wall, covered(wall, 0.0, above(*covers, z=z), FRAME)) == pytest.approx(share, abs=0.005)


def test_facets_seen_from_above_are_joined_even_where_slivers_hinder_it(monkeypatch):
    corners = np.array([[[0, 0], [4, 0], [4, 2]], [[0, 0], [4, 2], [0, 2]], [[1, 1], [2, 1], [3, 1]]], dtype=float)
    assert seen_facets(corners).area == pytest.approx(8.0)
    union = shapely.union_all

    def stumbles(shapes, grid_size=None):
        if grid_size is None:
            raise shapely.GEOSException("side location conflict")
        return union(shapes, grid_size=grid_size)

    monkeypatch.setattr(shapely, "union_all", stumbles)
    assert seen_facets(corners).area == pytest.approx(8.0)


def test_a_wall_in_a_channel_of_the_lid_stays_a_wall():
    share = np.eye(6)[EDGE]
    assert kind_of(BorderProfile(share, 1.0, np.nan, np.nan, channel=1.0), 1.0, 2.0) == "plain-wall"
    assert kind_of(BorderProfile(share, 1.0, np.nan, np.nan, channel=0.0), 1.0, 2.0) == "stepped-lap"


def test_a_wall_in_front_of_another_wall_overlaps_it():
    share = np.eye(6)[EDGE]
    assert kind_of(BorderProfile(share, 0.0, np.nan, np.nan, channel=1.0, backed=1.0), 1.0, 2.0) == "stepped-lap"
    assert kind_of(BorderProfile(share, 0.0, np.nan, np.nan, channel=1.0), 1.0, 2.0) == "plain-wall"


def test_a_ridge_wider_than_4_mm_is_no_rib():
    profile = BorderProfile(np.eye(6)[TRAP], 0.0, 2.1, np.nan, walled=0.0)
    assert [kind_of(profile, 1.0, width) for width in (3.0, 5.0)] == ["weld-rib", "flat-lap"]


def test_a_high_wall_behind_a_skirt_is_no_rib():
    share = 0.5 * np.eye(6)[EDGE] + 0.5 * np.eye(6)[TRAP]
    assert kind_of(BorderProfile(share, 0.0, 1.8, np.nan, skirted=0.5, walled=0.0), 1.0, 1.0) == "stepped-lap"
    assert kind_of(BorderProfile(share, 0.0, 1.8, np.nan, skirted=0.0), 1.0, 1.0) == "weld-rib"
    assert kind_of(BorderProfile(share, 0.0, 0.9, np.nan, skirted=0.5), 1.0, 1.2) == "weld-rib"


def test_a_high_band_beside_one_open_floor_is_a_wall():
    one_side = 0.5 * np.eye(6)[EDGE] + 0.5 * np.eye(6)[TRAP]
    assert kind_of(BorderProfile(one_side, 0.0, 3.0, np.nan, walled=0.0), 1.0, 1.6) == "plain-wall"
    assert kind_of(BorderProfile(one_side, 0.0, 1.2, np.nan, walled=0.0), 1.0, 1.6) == "weld-rib"
    assert kind_of(BorderProfile(np.eye(6)[TRAP], 0.0, 3.0, np.nan, walled=0.0), 1.0, 1.6) == "weld-rib"
