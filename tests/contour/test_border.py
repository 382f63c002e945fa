"""The nearest border on both sides of a line: against every segment looked at one by one."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.contour.midline import Border

WIDTH = 1.2


@pytest.mark.parametrize("far", [0.0, 1.5])
def test_the_nearest_border_on_each_side(far):
    """A ring of 1.2 mm, and places beside it that find the border far off, or not at all within three widths."""
    ring = shapely.Point(0, 0).buffer(20.6, quad_segs=90) - shapely.Point(0, 0).buffer(19.4, quad_segs=90)
    angle = np.linspace(0.0, 6.2, 97)
    u = np.column_stack([np.cos(angle), np.sin(angle)])
    points = (20.0 + far * np.sin(3 * angle))[:, None] * u
    low, high = Border(ring).nearest(points, u, 3 * WIDTH)
    nodes = [shapely.get_coordinates(line) for line in shapely.get_parts(ring.boundary)]
    segments = shapely.linestrings(np.concatenate([np.stack([n[:-1], n[1:]], axis=1) for n in nodes]))
    for point, across, *found in zip(points, u, low, high, strict=True):
        near = shapely.get_coordinates(shapely.shortest_line(shapely.Point(point), segments))[1::2] - point
        away = np.hypot(*near.T)
        for sign, place in zip((-1.0, 1.0), found, strict=True):
            asked = (sign * (near @ across) > 0.35 * away) & (away <= 3 * WIDTH)
            if asked.any():
                assert np.hypot(*(place - point)) == pytest.approx(away[asked].min(), abs=1e-12)
            else:
                assert np.isnan(place).all()
