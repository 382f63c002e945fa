"""Lengths of rays over an area, against shapely's intersections one by one."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.measure.area_rays import AreaBorders


@pytest.mark.parametrize("turn", [0.0, 0.3])
def test_rays_over_a_ring_with_a_notch_and_an_island(turn):
    """From its border, its corners and from outside, along its sides and askew."""
    ring = shapely.box(0, 0, 10, 10) - shapely.box(3, 3, 7, 7) - shapely.box(4, 9, 6, 10)
    area = shapely.affinity.rotate(ring | shapely.Point(5, 5).buffer(1), turn, (0, 0), use_radians=True)
    start = (
        np.array([[0, 0], [0, 5], [-1, 5], [0, 10], [3, 3], [5, 0], [5, -2], [0, 3], [20, 20], [5, 5], [0, 9]]) * 1.0
    )
    angle = np.repeat([0.0, 0.4, np.pi / 4, np.pi / 2, 2.5, np.pi], len(start))
    start, angle = np.tile(start, (6, 1)) @ [[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]], angle + turn
    ahead = np.column_stack([np.cos(angle), np.sin(angle)])
    rays = shapely.linestrings(np.stack([start, start + 8.0 * ahead], axis=1))
    inside = shapely.buffer(area, -1e-9)  # a ray along a border may count or not
    found = AreaBorders.of(area).along(start, ahead, 8.0)
    assert (found >= shapely.length(shapely.intersection(rays, inside)) - 1e-6).all()
    assert (found <= shapely.length(shapely.intersection(rays, shapely.buffer(area, 1e-9))) + 1e-6).all()
    assert 4.0 in np.round(found, 6)


def test_no_area_is_run_over():
    assert AreaBorders.of(shapely.Polygon()).along(np.zeros((2, 2)), np.eye(2), 5.0).tolist() == [0.0, 0.0]
