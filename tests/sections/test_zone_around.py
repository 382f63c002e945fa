"""Zones round the seam hold what lies within reach and stay small, however ragged the line is."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.sections.band import zone_around


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
