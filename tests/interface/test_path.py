"""Scan field, rise and neighbouring stretches against closed form and shapely's own measures."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, build, c_shape, circle, draw, ellipse, rounded_rectangle
from builder.pair import assemble
from builder.variants import divided
from interface_models import interface

WITHIN = 0.01  # mm


def values(spec: Spec):
    return interface(build(spec).parts)[1]


def test_the_field_of_a_round_seam_is_its_diameter():
    found = values(Spec(track=circle(25), turn=(30, 40, 10), shift=(5, 6, 7)))
    assert found["field_circle"]["value"] == pytest.approx(50.0, abs=WITHIN)
    assert found["field_circle"]["at"] == pytest.approx([5, 6, 7], abs=WITHIN)
    assert found["field_length"]["value"] == pytest.approx(50.0, abs=WITHIN)


def test_the_field_of_a_rounded_rectangle():
    """Circle: centres of the corners lie at (20, 12), their radius 8: 2 (hypot(20, 12) + 8)."""
    found = values(Spec(track=rounded_rectangle(56, 40, 8), turn=(0, 0, 33)))
    assert found["field_circle"]["value"] == pytest.approx(2 * (np.hypot(20, 12) + 8), abs=WITHIN)
    assert found["field_length"]["value"] == pytest.approx(56, abs=WITHIN)
    assert found["field_width"]["value"] == pytest.approx(40, abs=WITHIN)
    turned = np.degrees(np.arctan2(*found["field_length"]["direction"][1::-1])) % 180
    assert turned == pytest.approx(33, abs=0.05)


@pytest.mark.thorough
def test_the_field_of_an_ellipse():
    found = values(Spec(track=ellipse(30, 20)))
    assert found["field_circle"]["value"] == pytest.approx(60, abs=WITHIN)
    assert found["field_width"]["value"] == pytest.approx(40, abs=WITHIN)


def test_a_level_seam_has_no_rise_in_any_position():
    found = values(Spec(track=circle(25), turn=(30, 40, 10)))
    assert found["seam_rise"]["value"] == pytest.approx(0, abs=1e-6)
    assert found["seam_slope"]["value"] == pytest.approx(0, abs=1e-4)


@pytest.mark.thorough
def test_arms_of_a_c_are_neighbours_and_sides_of_a_rectangle_are_not():
    track = c_shape(50, 50, 14, 4)
    found = values(Spec(track=track, trap_width_inner=0.8, inner="open"))["path_distance"]
    xy, _ = track.at(np.linspace(0, track.length, 4001)[:-1])
    s = np.linspace(0, track.length, 4001)[:-1]
    apart = np.linalg.norm(xy[:, None] - xy[None], axis=2)
    way = np.abs(s[:, None] - s[None])
    way = np.minimum(way, track.length - way)
    expected = apart[way > 3 * apart + 1.2].min()
    assert found["value"] == pytest.approx(expected, abs=0.02)
    assert values(Spec(track=rounded_rectangle(40, 25, 6)))["path_distance"]["value"] is None


@pytest.mark.thorough
def test_a_dividing_wall_is_a_neighbour_of_the_long_way_round_only():
    """Where seams meet, the distance goes to nothing by itself: that is no neighbourhood."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    base = divided(spec, base, 0.0, 20.0)
    _, found = interface(assemble(spec, cover, base).parts)
    value = found["path_distance"]["value"]
    assert value is None or value > 10
