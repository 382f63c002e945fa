"""Floor and flash trap of sections typed here, against their closed form (areas of rectangles and trapezia)."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from typed_sections import BASE, outline, plate, rib, section

from seamcheck.measure.flash_trap import measure_trap, turned
from seamcheck.measure.floor import find_floor
from seamcheck.sections.integrals import Strips, centre_of_area, positive_area
from seamcheck.sections.intervals import decompose, side_of

W, H, B, C = 1.2, 0.9, 1.4, 0.4  # rib width and height, trap width, collapse


def sides(*stations):
    """Outer and inner side of stations that are lists of outlines."""
    found = decompose(section(*stations), len(stations), np.zeros((len(stations), 0)), BASE, 1.0, 20.0)
    return side_of(found, len(stations), True), side_of(found, len(stations), False)


def trap(*parts, side=0, deepest=3.0):
    half = sides(parts)[side]
    edge, most = np.array([W / 2]), np.array([deepest])
    floor = find_floor(half, edge, most)
    nothing = np.zeros(half.a.shape, dtype=bool)
    return floor, measure_trap(half, edge, floor, C, np.array([W]), most, nothing)


def room(draft, height=H, width=B):
    """Between flank, floor, wall and the cover lowered by C: a trapezium."""
    tan = np.tan(np.radians(draft))
    return width * (height - C) - tan * (height**2 - C**2) / 2


@pytest.mark.parametrize("side", [0, 1], ids=["outer", "inner"])
@pytest.mark.parametrize("draft", [0.0, 1.0, 5.0])
def test_a_trap_closed_by_a_lip(draft, side):
    floor, found = trap(rib(W, H, B, lip=0.3, draft=draft), plate(), side=side)
    assert floor.height == pytest.approx([H])
    assert floor.foot == pytest.approx([W / 2 + H * np.tan(np.radians(draft))])
    assert found.area == pytest.approx([room(draft)])
    assert found.lip_gap == pytest.approx([H - 0.3 - C])
    assert (found.is_open, found.end) == (pytest.approx([0.0]), pytest.approx([W / 2 + B]))


def test_an_open_trap_ends_at_the_edge_of_the_floor():
    _, found = trap(rib(W, H, B, lip=None), plate())
    assert found.is_open == [1.0]
    assert np.isnan(found.lip_gap)
    assert found.area == pytest.approx([room(0.0)])


def test_an_open_trap_ends_at_the_edge_of_the_cover_where_that_comes_first():
    _, found = trap(rib(W, H, B, lip=None), plate(right=1.5))
    assert found.is_open == [1.0]
    assert found.area == pytest.approx([room(0.0, width=1.5 - W / 2)])


def test_a_wall_beside_the_cover_closes_the_trap_and_leaves_its_slit():
    edge = W / 2 + B - 0.1  # the cover ends 0.1 mm before the wall
    _, found = trap(rib(W, H, B, lip=H + 1.5), plate(left=-edge, right=edge))
    assert found.is_open == [0.0]
    assert found.lip_gap == pytest.approx([0.1])
    assert found.area == pytest.approx([room(0.0)])


def test_a_lip_lower_than_0_2_mm_is_none():
    _, low = trap(rib(W, H, B, lip=0.19), plate())
    _, high = trap(rib(W, H, B, lip=0.21), plate())
    assert (low.is_open[0], high.is_open[0]) == (1.0, 0.0)


def test_a_floor_deeper_than_a_trap_can_be_is_no_floor_and_has_no_trap():
    floor, found = trap(rib(W, 4.0, B), plate(), deepest=3.0)
    assert np.isnan(floor.height)
    assert np.isnan(found.area)
    assert np.isnan(found.is_open)


def test_a_flank_that_runs_down_without_shoulder_has_no_floor():
    wall = outline(BASE, [(-0.6, -8.0), (0.6, -8.0), (0.6, 0.0), (-0.6, 0.0)])
    floor, found = trap(wall, plate())
    assert np.isnan([floor.height[0], found.area[0], found.lip_gap[0]]).all()


def test_each_station_is_taken_by_itself():
    lower = [rib(W, 1.1, 1.0, lip=0.4), plate()]
    half = sides([rib(W, H, B), plate()], lower)[0]
    edge, most = np.full(2, W / 2), np.full(2, 3.0)
    floor = find_floor(half, edge, most)
    found = measure_trap(half, edge, floor, C, np.full(2, W), most, np.zeros(half.a.shape, dtype=bool))
    assert floor.height == pytest.approx([0.9, 1.1])
    assert found.area == pytest.approx([room(0.0), 1.0 * (1.1 - C)])
    assert found.lip_gap == pytest.approx([0.2, 0.3])


def test_the_positive_part_of_a_slope_and_its_centre():
    """A line from -1 to 3 over [0, 2] is positive on [0.5, 2]: a triangle of 1.5 x 3 / 2, its centre a third before
    the end (shapely's area and centroid)."""
    half = sides([plate(-1.0, 0.0, -2.0, 2.0, owner=BASE)])[0]
    low, high = np.full(half.a.shape, -1.0), np.full(half.a.shape, 3.0)
    strips, level = (Strips.of(half, low, end, np.isfinite(half.b)) for end in (high, low))
    triangle = shapely.Polygon([(0.5, 0), (2, 0), (2, 3)])
    every = np.ones(len(strips.a), dtype=bool)
    assert positive_area(strips, 0.0, every, 1) == pytest.approx([triangle.area])
    assert centre_of_area(strips, 0.0, every, 1) == pytest.approx([triangle.centroid.x])
    assert np.isnan(centre_of_area(level, 0.0, every, 1))


def test_room_in_a_turn_is_that_of_the_ring():
    """A trap of 1.4 x 0.5 mm inside of a turn of 6 mm: pi (r1² - r0²) h over the length 2 pi R of the mid-line."""
    near, far, height, radius = W / 2, W / 2 + B, H - C, 6.0
    ring = np.pi * ((radius - near) ** 2 - (radius - far) ** 2) * height
    per_length = turned(np.array([B * height]), np.array([(near + far) / 2]), np.array([1 / radius]))
    assert per_length == pytest.approx([ring / (2 * np.pi * radius)])
    assert turned(np.array([1.0]), np.array([3.0]), np.array([1.0])) == [0.0]
    assert turned(np.array([1.0]), np.array([3.0]), np.array([np.nan])) == [1.0]
