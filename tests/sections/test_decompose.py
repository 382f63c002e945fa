"""Sections typed here, split into intervals: floors, roofs, plastic, and what blocks the light."""

from __future__ import annotations

import numpy as np
import pytest
from typed_sections import BASE, COVER, OTHER, outline, plate, rib, section

from seamcheck.sections.intervals import decompose, side_of
from seamcheck.sections.levels import crossings, is_inside, nearest_end, support_offset


def split(*stations, extra=None, reach=20.0, rib_owner=BASE, up=1.0):
    breaks = np.zeros((len(stations), 0)) if extra is None else np.array(extra, dtype=float)
    return decompose(section(*stations), len(stations), breaks, rib_owner, up, reach)


def test_a_section_is_split_at_every_end_of_a_line_and_over_the_middle():
    found = split([rib(1.2, 0.9, 1.4, lip=0.3), plate(0.1, 2.1)])
    assert found.a == pytest.approx([-6, -2.6, -2, -0.6, 0, 0.6, 2, 2.6])
    assert found.b == pytest.approx([-2.6, -2, -0.6, 0, 0.6, 2, 2.6, 6])
    np.testing.assert_allclose(found.floor_a, [np.nan, -0.6, -0.9, 0, 0, -0.9, -0.6, np.nan], atol=1e-12)
    assert found.roof_a == pytest.approx(np.full(8, 0.1))
    assert found.plastic_a == pytest.approx(np.full(8, 2.0))
    assert found.stretches.tolist() == [1] * 8
    assert not found.blocked.any()


def test_further_break_points_and_the_reach_are_kept():
    found = split([plate()], extra=[[1.5, np.nan]], reach=4.0)
    assert found.a == pytest.approx([-4, 0, 1.5])
    assert found.b == pytest.approx([0, 1.5, 4])


def test_a_slanted_top_has_its_heights_at_both_ends():
    wedge = outline(BASE, [(-1.0, -2.0), (1.0, -2.0), (1.0, -0.4), (-1.0, 0.0)])
    found = split([wedge, plate()])
    own = np.isfinite(found.floor_a)
    assert found.floor_a[own] == pytest.approx([0.0, -0.2])
    assert found.floor_b[own] == pytest.approx([-0.2, -0.4])


def test_a_void_in_the_cover_and_a_part_above_it_are_seen():
    hollow = [plate(0.0, 0.8), plate(1.2, 2.0), plate(5.0, 6.0, -1.0, 1.0, owner=OTHER), rib()]
    found = split(hollow)
    assert set(found.stretches) == {2}
    assert found.plastic_a == pytest.approx(np.full(len(found.a), 0.8))
    assert found.blocked.tolist() == ((found.a >= -1.0) & (found.b <= 1.0)).tolist()


def test_the_rib_may_hang_from_the_cover():
    """Heights count from the rib's top as always: the cover with a rib is turned over, the base is the plate above."""
    hanging = rib(1.2, 0.9, 1.4)
    hanging[:, 6] = COVER
    base = plate(owner=BASE)
    found = split([hanging, base], rib_owner=COVER, up=-1.0)
    middle = (found.a + found.b) / 2
    on_top = np.abs(middle) < 0.6
    assert found.floor_a[on_top] == pytest.approx(np.zeros(on_top.sum()))
    assert found.roof_a[on_top] == pytest.approx(np.zeros(on_top.sum()))
    assert found.plastic_a[on_top] == pytest.approx(np.full(on_top.sum(), 2.9))


def test_the_inner_side_is_the_outer_one_of_the_mirrored_section():
    lopsided = outline(BASE, [(-3, -3), (2, -3), (2, -0.5), (0.6, -0.9), (0.6, 0), (-0.6, 0), (-0.6, -0.7), (-3, -0.7)])
    mirrored = outline(BASE, [(-2, -3), (3, -3), (3, -0.7), (0.6, -0.7), (0.6, 0), (-0.6, 0), (-0.6, -0.9), (-2, -0.5)])
    inner = side_of(split([lopsided, plate()]), 1, False)
    outer = side_of(split([mirrored, plate()]), 1, True)
    for name in ("a", "b", "floor_a", "floor_b", "roof_a", "plastic_a"):
        np.testing.assert_allclose(getattr(inner, name), getattr(outer, name), atol=1e-12)


@pytest.mark.parametrize("draft", [0.0, 2.0])
def test_the_flanks_at_half_height(draft):
    """Distance of a flank at w: half the width plus |w| tan(draft)."""
    lines = section([rib(1.2, 0.9, 1.4, draft=draft)])
    found = crossings(lines, BASE, np.array([-0.45]))
    expected = 0.6 + 0.45 * np.tan(np.radians(draft))
    assert nearest_end(found, 1, True) == pytest.approx([expected])
    assert nearest_end(found, 1, False) == pytest.approx([expected])
    assert np.isnan(nearest_end(crossings(lines, BASE, np.array([np.nan])), 1, True))


def test_the_support_below_the_rib_is_the_middle_of_its_wall():
    stem = outline(BASE, [(0.5, -8.0), (2.5, -8.0), (2.5, -0.9), (0.5, -0.9)])
    found = crossings(section([rib(wall=0.5), stem]), BASE, np.array([-4.0]))
    edges, beyond = np.array([0.6]), np.array([1.2])
    assert support_offset(found, 1, edges, edges, beyond, np.array([True])) == pytest.approx([1.5])
    broad = crossings(section([plate(-9.0, -1.0, -8.0, 8.0, owner=BASE)]), BASE, np.array([-4.0]))
    assert support_offset(broad, 1, edges, edges, beyond, np.array([True])) == [0.0]


def test_where_nothing_lies_below_the_rib_there_is_no_offset_of_the_support():
    """A plate from -2 to -1 mm that reaches beyond the section: material at -1.5, none at -4."""
    lines = section([plate(-2.0, -1.0, -9.0, 9.0, owner=BASE)])
    edges, beyond = np.array([0.6]), np.array([1.2])
    for level, expected in ((-1.5, True), (-4.0, False)):
        at = np.array([level])
        inside = is_inside(lines, BASE, at)
        assert inside == [expected]
        offset = support_offset(crossings(lines, BASE, at), 1, edges, edges, beyond, inside)
        assert offset == [0.0] if expected else np.isnan(offset)
