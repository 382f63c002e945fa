"""Bounds, areas and lengths of facets: against numpy's own, and a turned triangle in closed form."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from seamcheck.joint.facets import area_vectors, bounds_of, cross, lengths
from seamcheck.joint.frame import Frame

RANDOM = np.random.default_rng(11)
CORNERS = RANDOM.uniform(-50.0, 50.0, (200, 3, 3))


@pytest.mark.parametrize("corners", [CORNERS, CORNERS[:, :, :2], CORNERS[:0]])
def test_bounds_are_those_of_all_corners(corners):
    low, high = bounds_of(corners)
    assert np.array_equal(low, corners.min(axis=1))
    assert np.array_equal(high, corners.max(axis=1))


def test_lengths_and_areas_agree_with_numpy():
    np.testing.assert_allclose(lengths(CORNERS[:, 0]), np.linalg.norm(CORNERS[:, 0], axis=1), rtol=1e-14)
    one, other = CORNERS[:, 1] - CORNERS[:, 0], CORNERS[:, 2] - CORNERS[:, 0]
    np.testing.assert_allclose(area_vectors(CORNERS), np.cross(one, other), atol=1e-10)
    np.testing.assert_allclose(cross(one[:, :2], other[:, :2]), np.cross(one, other)[:, 2], atol=1e-10)


@pytest.mark.parametrize("turn", [(0.0, 0.0, 0.0), (17.0, -31.0, 59.0), (90.0, 45.0, 180.0)])
def test_a_turned_triangle_of_3_and_4_mm_has_6_square_millimetres(turn):
    turned = Rotation.from_euler("xyz", turn, degrees=True)
    flat = np.array([[0.0, 0.0, 0.0], [3.0, 0.0, 0.0], [0.0, 4.0, 0.0]])
    across = area_vectors(turned.apply(flat)[None] + 7.3)
    assert lengths(across)[0] / 2 == pytest.approx(6.0, rel=1e-12)
    np.testing.assert_allclose(across[0] / 12.0, turned.apply([0.0, 0.0, 1.0]), atol=1e-12)


@pytest.mark.parametrize("shape", [(3,), (0, 3), (5, 3), (0, 3, 3), (5, 3, 3)])
def test_a_frame_takes_points_of_any_shape_there_and_back(shape):
    frame = Frame.along(np.array([1.0, 2.0, -2.0]), np.array([4.0, -5.0, 6.0]))
    points = RANDOM.uniform(-9.0, 9.0, shape)
    local = frame.local(points)
    assert local.shape == shape
    np.testing.assert_allclose(frame.world(local), points, atol=1e-12)
    np.testing.assert_allclose(local[..., 2], (points - frame.origin) @ frame.up, atol=1e-12)
