"""The clamp land of sections typed here: where it ends, and its tilt."""

from __future__ import annotations

import numpy as np
import pytest
from typed_sections import BASE, COVER, OTHER, outline, plate, rib, section

from seamcheck.measure.clamp_land import measure_land

START = np.array([0.7])


def land(*parts, outer=True, start=START, up=1.0):
    return measure_land(section(parts), 1, start, outer, up, np.zeros(1))


def cover(*top):
    """A plate 2 mm thick from -6 to 6 whose upper side is given from the right to the left."""
    return outline(COVER, [(-6.0, 0.0), (6.0, 0.0), *top], face=100)


@pytest.mark.parametrize("outer", [True, False])
def test_a_flat_land_reaches_to_the_edge(outer):
    found = land(rib(), plate(), outer=outer)
    assert (found.width, found.tilt, found.why[0]) == (pytest.approx([5.3]), pytest.approx([0.0]), "")


def test_a_chamfer_ends_the_land_where_it_begins():
    found = land(rib(), cover((6.0, 1.5), (5.5, 2.0), (-6.0, 2.0)))
    assert found.width == pytest.approx([5.5 - 0.7])


def test_a_slope_of_the_land_is_its_tilt():
    fall = 5.3 * np.tan(np.radians(3.0))
    found = land(rib(), cover((6.0, 2.0 - fall), (0.7, 2.0), (-6.0, 2.0)))
    assert found.width == pytest.approx([5.3])
    assert found.tilt == pytest.approx([3.0])


@pytest.mark.parametrize(("bend", "width"), [(4.0, 5.3), (6.0, 2.3)])
def test_a_bend_of_more_than_5_degrees_ends_the_land(bend, width):
    fall = 3.0 * np.tan(np.radians(bend))
    found = land(rib(), cover((6.0, 2.0 - fall), (3.0, 2.0), (-6.0, 2.0)))
    assert found.width == pytest.approx([width], abs=1e-6)


@pytest.mark.parametrize("rise", [0.5, -0.5])
def test_a_step_ends_the_land(rise):
    found = land(rib(), cover((6.0, 2.0 + rise), (3.0, 2.0 + rise), (3.0, 2.0), (-6.0, 2.0)))
    assert found.width == pytest.approx([3.0 - 0.7])


def test_another_part_over_the_land_ends_it():
    found = land(rib(), plate(), plate(5.0, 6.0, 2.5, 3.5, owner=OTHER))
    assert found.width == pytest.approx([2.5 - 0.7])
    assert land(rib(), plate(), plate(-5.0, -4.0, 2.5, 3.5, owner=OTHER)).width == pytest.approx([5.3])


def test_beyond_the_edge_there_is_no_land_and_without_a_corridor_nothing_is_measured():
    gone = land(rib(), plate(right=0.5))
    assert np.isnan(gone.width)
    assert gone.why[0] == "no-land"
    unknown = land(rib(), plate(), start=np.array([np.nan]))
    assert np.isnan(unknown.width)
    assert unknown.why[0] == "depends"


def test_light_from_below_finds_the_land_below():
    turned = plate(-2.0, 0.0, -6.0, 4.0)
    found = land(outline(BASE, [(-0.6, 0.0), (0.6, 0.0), (0.6, 3.0), (-0.6, 3.0)]), turned, up=-1.0)
    assert found.width == pytest.approx([4.0 - 0.7])
