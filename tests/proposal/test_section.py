"""The proposed section, its room and its curves against closed form; arrays typed in."""

import math
from itertools import pairwise

import numpy as np
import pytest
import shapely
from shapely import Polygon

from seamcheck.proposal.design import LEAST_LIP, Choices, Space, design, narrowest, on_grid
from seamcheck.proposal.room import Line, measure_room, outside_stretches, rounded
from seamcheck.proposal.section import Section
from seamcheck.sections.pieces import lines_and_arcs, ring_through, rings_of
from seamcheck.settings.settings import Settings

SECTION = Section(1.2, 1.0, 0.8, 0.6, 0.65, 1.0, 0.4)


def circle(radius, n=720, centre=(0.0, 0.0)):
    angle = np.linspace(0, 2 * np.pi, n, endpoint=False)
    return np.column_stack([centre[0] + radius * np.cos(angle), centre[1] + radius * np.sin(angle)])


def test_melt_area_is_the_trapezium_of_the_drafted_rib():
    # Displaced area of a rib with equal drafts: w c + c² tan a (plane geometry of a trapezium).
    assert SECTION.melt_area == pytest.approx(1.2 * 0.4 + 0.16 * math.tan(math.radians(1.0)), abs=1e-12)


@pytest.mark.parametrize("is_open", [False, True])
def test_trap_area_is_that_of_its_polygon(is_open):
    # The area of the same outline by shapely (shoelace formula).
    section = Section(1.2, 1.0, 0.8, 0.6, 0.65, 2.0, 0.4, open_outer=is_open)
    lean = math.tan(math.radians(2.0))
    flank = [(0.6 + lean * y, -y) for y in (0.4, 1.0)]
    wall = [(1.2 - (0.0 if is_open else lean * y), -y) for y in (1.0, 0.4)]
    assert section.trap_area("outer") == pytest.approx(Polygon(flank + wall).area, abs=1e-12)


def test_a_trap_on_the_inside_of_a_turn_counts_with_the_way_of_its_middle():
    # Pappus-Guldinus: the volume is the area times the way of its centroid, R - (w + t) / 2 against R.
    assert SECTION.turn_factor("inner", 10.0) == pytest.approx(1 - (1.2 + 0.8) / 2 / 10.0)


@pytest.mark.parametrize("half", [1.2, 1.5, 2.0, 3.0])
def test_a_design_holds_every_limit_and_its_room(half):
    settings = Settings()
    space = Space(half, half, 8.0, 6.0, 9.0)
    chosen = on_grid(design(space, settings), space, settings, Choices())
    s = chosen.section
    assert chosen.fits
    assert s.half_width("inner") + LEAST_LIP <= half + 1e-9
    assert s.half_width("outer") + LEAST_LIP <= half + 1e-9
    assert s.rib_height >= 0.4 + settings.limit("rib-height", "reserve")
    assert s.rib_height / s.width_at(s.rib_height / 2) <= settings.limit("slenderness", "max")
    both = s.trap_area("inner") + s.trap_area("outer")
    assert both >= settings.limit("trap-room", "min") * s.melt_area


def test_more_room_never_makes_the_margin_smaller():
    aims = [design(Space(half, half), Settings()).aimed for half in (1.0, 1.2, 1.5, 2.0, 3.0)]
    assert all(after >= before - 1e-3 for before, after in pairwise(aims))


def test_where_the_room_is_less_than_the_narrowest_section_nothing_fits():
    settings = Settings()
    inner, outer = narrowest(settings)
    assert design(Space(inner + 0.02, outer + 0.02), settings).fits
    assert not design(Space(inner - 0.02, outer - 0.02), settings).fits


def test_fixed_dimensions_stay():
    choices = Choices({"rib_width": 1.2, "trap_outer": 0.9})
    chosen = on_grid(design(Space(3, 3), Settings(), choices), Space(3, 3), Settings(), choices)
    assert (chosen.section.rib_width, chosen.section.trap_outer) == (1.2, 0.9)


def test_room_of_a_ring_is_its_half_width_on_both_sides():
    contact = Polygon(circle(22.0, 2000)).difference(Polygon(circle(18.0, 2000)))
    room = measure_room(Line("c1", True, circle(19.5)), contact)
    np.testing.assert_allclose(room.inner, 1.5, atol=2e-3)  # chords of the drawn circles: sagitta 0.0002, 0.0004
    np.testing.assert_allclose(room.outer, 2.5, atol=2e-3)
    assert room.radius("inner") == pytest.approx(19.5, rel=5e-3)
    assert room.radius("outer") == np.inf


def test_room_does_not_hang_on_the_sense_in_which_a_loop_runs():
    contact = Polygon(circle(22.0)).difference(Polygon(circle(18.0)))
    rooms = [measure_room(Line("c1", True, circle(19.5)[::step]), contact) for step in (1, -1)]
    assert rooms[0].outer.min() == pytest.approx(rooms[1].outer.min(), abs=1e-3)
    assert rooms[0].radius("inner") == pytest.approx(rooms[1].radius("inner"), rel=1e-2)


def test_a_sharp_corner_is_rounded_to_the_radius():
    square = np.array([(0, 0), (40, 0), (40, 30), (0, 30)], dtype=float)
    found = rounded(Line("c1", True, square), 3.0)
    # Perimeter of a rounded rectangle: 2 (a + b) - (8 - 2 pi) r.
    assert found.curve.length == pytest.approx(140 - (8 - 2 * np.pi) * 3.0, abs=2e-3)


def test_stretches_that_miss_room_pass_the_start_of_a_loop():
    room = measure_room(Line("c1", True, circle(20.0)), Polygon(circle(30.0)))
    missing = np.full(len(room.s), -1.0)
    missing[:5], missing[-3:] = 0.2, 0.5
    (start, end, most, worst), *others = outside_stretches(room, missing)
    assert not others
    assert start == pytest.approx(room.s[-3])
    assert end == pytest.approx(room.s[4])
    assert most == 0.5
    assert worst >= len(room.s) - 3


@pytest.mark.parametrize("by", [-0.8, 0.6, 2.0])
def test_a_ring_of_lines_and_arcs_is_offset_to_concentric_arcs(by):
    # Steiner: perimeter of the parallel curve of a convex curve is L + 2 pi d; area A + L d + pi d².
    shape = shapely.box(-30, -20, 30, 20).buffer(-8).buffer(8, quad_segs=256)
    ring = ring_through(np.asarray(shape.exterior.coords)[:-1])
    found = ring.offset(by)
    length = 2 * (60 + 40) - (8 - 2 * np.pi) * 8
    # The fit lets a line run 0.1 mm into an arc (0.001 mm off it), which an offset carries on: 1e-4 of the length.
    assert sum(piece.length for piece in found.pieces) == pytest.approx(length + 2 * np.pi * by, rel=2e-4)
    ends = shapely.points([piece.start for piece in found.pieces])
    np.testing.assert_allclose(shapely.distance(ends, shape.exterior), abs(by), atol=0.003)
    assert len(found.pieces) == len(ring.pieces) <= 12


def test_an_outline_with_a_hole_gives_both_rings():
    region = Polygon(circle(10.0)).difference(Polygon(circle(4.0, centre=(1.0, 0.0))))
    ((outline, holes),) = rings_of(region)
    assert sum(p.length for p in outline.pieces) == pytest.approx(2 * np.pi * 10, abs=0.01)
    assert sum(p.length for p in holes[0].pieces) == pytest.approx(2 * np.pi * 4, abs=0.01)


def test_a_straight_run_is_one_line():
    assert len(lines_and_arcs(np.column_stack([np.linspace(0, 9, 40), np.zeros(40)]), False)) == 1
