"""No stretch of a band is left out in silence: lines and bands typed in here."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.contour.skeleton import skeleton
from seamcheck.contour.trace import untraced

RING = shapely.box(0, 0, 60, 40).difference(shapely.box(2, 2, 58, 38))
MIDDLE = np.array([(1, 1), (59, 1), (59, 39), (1, 39), (1, 1)], dtype=float)


def test_a_ring_with_a_line_all_round_leaves_nothing():
    assert untraced(shapely.MultiPolygon([RING]), [MIDDLE], 2.0) == 0.0


def test_a_side_without_a_line_is_told():
    # three sides are followed; of the long side all is left but a width at both ends: 60 - 2 * (1 + 2) = 54
    left = untraced(shapely.MultiPolygon([RING]), [MIDDLE[1:]], 2.0)
    assert left == pytest.approx(54.0 + 2.0, abs=3.0)  # half the outline of a piece counts its ends as well


def test_a_post_that_merges_with_the_band_is_no_stretch():
    with_post = RING.union(shapely.Point(30, 1).buffer(4))
    assert untraced(shapely.MultiPolygon([with_post]), [MIDDLE], 2.0) == 0.0


def test_both_parts_of_a_band_that_is_pinched_off_are_followed():
    halves = shapely.box(0, 0, 30, 2).union(shapely.box(30.01, 0, 70, 2)).union(shapely.box(29, 0.999, 31, 1.001))
    chains, _ = skeleton(halves, 2.0)
    length = sum(float(np.linalg.norm(np.diff(c.points, axis=0), axis=1).sum()) for c in chains)
    assert length > 60.0
