"""The smallest gap of two sheets of facets: the same with and without looking at all pairs."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.sections.face_gaps import Sheet, gaps


def wavy(level: float, height: float, count: int, seed: int) -> Sheet:
    """A square of 10 mm in facets, its nodes ``height`` mm about a level at random."""
    random = np.random.default_rng(seed)
    x, y = np.meshgrid(np.linspace(0, 10, count), np.linspace(0, 10, count))
    nodes = np.stack([x, y, level + height * random.uniform(-1, 1, x.shape)], axis=-1)
    a, b, c, d = nodes[:-1, :-1], nodes[:-1, 1:], nodes[1:, 1:], nodes[1:, :-1]
    corners = np.concatenate([np.stack(t, axis=-2).reshape(-1, 3, 3) for t in ((a, b, c), (a, c, d))])
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normal /= np.linalg.norm(normal, axis=1)[:, None]
    zero = np.zeros(len(corners), dtype=int)
    return Sheet(corners, normal, zero, zero)


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize("most", [1.2, 5.0, np.inf])
def test_the_nearest_gap_is_the_smallest_of_all(seed, most):
    upper, lower = wavy(1.5, 0.4, 14, seed), wavy(0.0, 0.4, 11, seed + 100)
    none, nowhere = (np.zeros(len(sheet.face), dtype=bool) for sheet in (upper, lower)), shapely.Polygon()
    marks = tuple(none)
    shift = np.array([0.13, -0.07])
    every = gaps(upper, lower, most, shift, nowhere, *marks)
    first = gaps(upper, lower, most, shift, nowhere, *marks, enough=0.0)
    assert first.gap.min() == pytest.approx(every.gap.min(), abs=1e-12)
    assert len(first.gap) <= len(every.gap)


def test_every_pair_within_reach_is_found():
    """Against all pairs looked at one by one: the gap at the corners of each overlap (shapely)."""
    upper, lower = wavy(1.0, 0.3, 6, 1), wavy(0.0, 0.3, 5, 2)
    marks = (np.zeros(len(upper.face), dtype=bool), np.zeros(len(lower.face), dtype=bool))
    found = gaps(upper, lower, 0.9, np.zeros(2), shapely.Polygon(), *marks)
    above, under = upper.triangles(np.zeros(2)), lower.triangles(np.zeros(2))
    expected = {}
    for i in range(len(above)):
        for j in range(len(under)):
            common = shapely.intersection(above[i], under[j])
            if common.area > 1e-9:
                xy = shapely.get_coordinates(common)
                one, other = np.full(len(xy), i), np.full(len(xy), j)
                least = float((upper.height(one, xy) - lower.height(other, xy)).min())
                if least <= 0.9:
                    expected[i, j] = least
    got = dict(zip(zip(found.upper.tolist(), found.lower.tolist(), strict=True), found.gap.tolist(), strict=True))
    assert got == pytest.approx(expected)
