"""Facets of faces on a ball against closed form: area of a zone 2 pi r h (Archimedes), the distance below the ball."""

from __future__ import annotations

import numpy as np
import pytest

from seamcheck.kernel.ball import ball_triangles

CENTRE, RADIUS = np.array([3.0, -2.0, 7.0]), 40.0
TURNED = np.linalg.qr(np.array([[1.0, 2.0, 0.5], [0.0, 1.0, -1.0], [2.0, 0.0, 1.0]]))[0]


def parallel(angle: float, deflection: float) -> np.ndarray:
    """A circle of latitude, ``angle`` radians from the pole, chords within the deflection; it returns to its start."""
    ring = RADIUS * np.sin(angle)
    count = int(np.ceil(np.pi / np.arccos(1.0 - deflection / ring)))
    turn = np.linspace(0.0, 2 * np.pi, count + 1)
    line = np.column_stack([ring * np.cos(turn), ring * np.sin(turn), np.full(count + 1, RADIUS * np.cos(angle))])
    line[-1] = line[0]
    return CENTRE + line @ TURNED.T


def area_of(corners: np.ndarray) -> float:
    across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    return float(np.linalg.norm(across, axis=1).sum() / 2)


@pytest.mark.parametrize(("inner", "outer"), [(None, 0.6), (0.3, 0.6), (0.55, 0.6), (0.8, 1.2)])
@pytest.mark.parametrize("deflection", [0.01, 0.001])
def test_a_zone_of_a_ball_has_its_area_and_lies_within_the_chord_error(inner, outer, deflection):
    lines = [parallel(angle, deflection) for angle in (inner, outer) if angle is not None]
    height = RADIUS * (np.cos(inner or 0.0) - np.cos(outer))
    true = 2 * np.pi * RADIUS * height
    found = ball_triangles(lines, CENTRE, RADIUS, true, deflection)
    assert found is not None
    assert area_of(found) == pytest.approx(true, rel=2e-3)
    off = np.abs(np.linalg.norm(found - CENTRE, axis=2) - RADIUS)
    assert off.max() < 1e-9
    middle = RADIUS - np.linalg.norm(found.mean(axis=1) - CENTRE, axis=1)
    assert middle.min() >= 0
    assert middle.max() <= deflection
    normal = np.cross(found[:, 1] - found[:, 0], found[:, 2] - found[:, 0])
    assert ((normal * (found.mean(axis=1) - CENTRE)).sum(axis=1) > 0).all()
    border = {tuple(p) for line in lines for p in np.round(line, 9)}
    assert border <= {tuple(p) for p in np.round(found.reshape(-1, 3), 9)}


def test_what_reaches_round_the_ball_or_is_another_part_of_it_is_left_to_the_kernel():
    line = parallel(1.4, 0.01)
    assert ball_triangles([line], CENTRE, RADIUS, 2 * np.pi * RADIUS**2 * (1 - np.cos(1.4)), 0.01) is None
    line = parallel(0.6, 0.01)  # the rest of the ball has the same border
    assert ball_triangles([line], CENTRE, RADIUS, 2 * np.pi * RADIUS**2 * (1 + np.cos(0.6)), 0.01) is None
    assert ball_triangles([line[:5]], CENTRE, RADIUS, 100.0, 0.01) is None
    assert ball_triangles([], CENTRE, RADIUS, 100.0, 0.01) is None
