"""Zones round the seam hold what lies within reach and stay small, however ragged the line is."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import shapely

from seamcheck.joint.frame import Frame
from seamcheck.sections.band import boxes_within, zone_around


def test_a_zone_holds_all_places_within_reach_and_little_more():
    angle = np.linspace(0.0, 2.0 * np.pi, 4000)
    ring = 30.0 * np.column_stack([np.cos(angle), np.sin(angle)])
    zone = zone_around([ring], 5.0)
    # closed form: a ring of 25 to 35 mm round the centre
    for radius, inside in ((25.001, True), (34.999, True), (24.0, False), (36.0, False)):
        places = radius / 30.0 * ring[::37]
        assert shapely.contains_xy(zone, places).all() == inside


def test_a_ragged_line_makes_no_more_nodes_than_its_reach_can_tell():
    x = np.linspace(0.0, 100.0, 5000)
    ragged = np.column_stack([x, 0.3 * np.sin(40.0 * x)])
    zone = zone_around([ragged], 12.0)
    assert shapely.get_num_coordinates(zone) < 100
    assert shapely.covers(zone, shapely.LineString(ragged[::10]).buffer(11.9))


def test_of_many_boxes_those_are_found_that_meet_a_zone():
    angle = np.linspace(0.0, 2.0 * np.pi, 400)
    zone = zone_around([30.0 * np.column_stack([np.cos(angle), np.sin(angle)])], 5.0)
    random = np.random.default_rng(5)
    corners = random.uniform(-50.0, 50.0, (4000, 3))
    size = random.choice([0.01, 1.0, 20.0], (4000, 3))
    right = zone.bounds[2]
    touching = [right, -1.0, 0.0, right + 3.0, 1.0, 1.0]
    over_all, far, empty = [-90.0] * 3 + [90.0] * 3, [1e12] * 3 + [1e13] * 3, [np.nan] * 6
    boxes = np.vstack([np.hstack([corners, corners + size]), touching, over_all, far, empty])
    flat = shapely.box(*boxes[:, [0, 1, 3, 4]].T)
    expected = np.flatnonzero(shapely.intersects(zone, flat))  # by the geometry library, one by one
    assert 500 < len(expected) < 3500
    assert 4000 in expected
    joint = SimpleNamespace(frame=Frame(np.zeros(3), np.eye(3)))
    assert np.array_equal(boxes_within(boxes, zone, joint), expected)
