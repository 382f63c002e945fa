"""Moves of an existing rib's dimensions against plane geometry; numbers typed in."""

import math

import pytest
from msgspec.structs import replace
from shapely import Polygon

from seamcheck.proposal.mending import Bounds, Present, Side, closed, columns, fewest_moves

SIDE = Side(height=0.9, foot=1.6, end=2.6, area=0.5, turn=0.95, lip=0.6)
PRESENT = Present(
    width=1.2, width_least=1.2, width_most=1.2, lean=0.0, collapse=0.4, travel=math.inf, depth=10.0, inner=SIDE,
    outer=SIDE,
)  # fmt: skip
BOUNDS = [
    Bounds("rib_width", 0.6, 2.5), Bounds("rib_height", 0.6, None), Bounds("slenderness", None, 1.5),
    Bounds("trap_room", 1.2, None), Bounds("trap_room_inner", 1.0, None), Bounds("trap_room_outer", 1.0, None),
    Bounds("lip_gap_inner", 0.1, 0.3), Bounds("lip_gap_outer", 0.1, 0.3), Bounds("free_travel", 0.6, None),
]  # fmt: skip


def with_side(name, **changes):
    return replace(PRESENT, **{name: replace(SIDE, **changes)})


def test_a_section_that_holds_its_bounds_stays():
    assert fewest_moves(PRESENT, BOUNDS, ["trap-room"]) == {}


@pytest.mark.parametrize(
    ("moves", "width", "height", "wall"),
    [
        ({"floor_inner": 0.2}, 1.2, 1.1, 1.6),
        ({"wall_inner": 0.15}, 1.2, 0.9, 1.75),
        ({"rib": 0.3}, 1.5, 0.9, 1.6),
        ({"floor_inner": -0.1, "wall_inner": 0.2, "rib": -0.1}, 1.1, 0.8, 1.8),
    ],
)
def test_trap_room_after_moves_is_that_of_the_rectangle(moves, width, height, wall):
    # Shoelace area (shapely) of the trap between flank, floor, wall and the lowered cover, upright flanks.
    trap = Polygon([(width / 2, -0.4), (wall, -0.4), (wall, -height), (width / 2, -height)]).area
    assert columns(PRESENT, moves)["trap_room_inner"][0] == pytest.approx(trap / (width * 0.4 / 2))


def test_a_floor_that_is_too_high_is_lowered_and_nothing_else():
    present = with_side("outer", height=0.55, area=0.15 * 1.0, lip=None, foot=3.0, end=3.0)
    moves = fewest_moves(replace(present, outer=replace(present.outer, area=2.4 * 0.15)), BOUNDS, ["rib-height"])
    assert set(moves) == {"floor_outer"}
    assert moves["floor_outer"] == pytest.approx(0.06, abs=0.011)  # 0.60 mm are asked for, with 0.01 mm kept


def test_a_lip_that_leaves_too_much_is_raised():
    moves = fewest_moves(with_side("inner", height=1.4, area=1.0, lip=0.9), BOUNDS, ["lip-gap"])
    assert set(moves) == {"lip_inner"}
    assert moves["lip_inner"] == pytest.approx(-0.21, abs=0.011)  # from 0.5 mm to under 0.3 mm


def test_a_trap_that_is_too_small_is_widened_or_deepened_by_what_is_missing():
    moves = fewest_moves(with_side("inner", foot=0.99, area=0.195), BOUNDS, ["trap-side"])
    (name,) = moves
    assert name in ("wall_inner", "floor_inner")
    least, _ = columns(with_side("inner", foot=0.99, area=0.195), moves)["trap_room_inner"]
    assert 1.0 <= least < 1.12


def test_what_does_not_fit_is_not_moved():
    # A wall of 1.4 mm depth leaves no floor of 0.8 mm below a deeper trap, and the lip no width for a wider one.
    tight = with_side("inner", foot=0.99, area=0.10, end=1.5)
    narrowest = [Bounds("rib_width", 1.15, 2.5), *BOUNDS[1:]]
    assert fewest_moves(replace(tight, depth=1.7, outer=tight.inner), narrowest, ["trap-room"]) is None


def test_a_lip_of_its_own_takes_its_width_from_the_trap():
    found = closed(with_side("inner", lip=None, end=1.6), "inner", 0.5, 0.6)
    assert found.inner.foot == pytest.approx(1.1)
    assert found.inner.area == pytest.approx(0.5 - 0.5 * (0.9 - 0.4))
    assert found.inner.lip == 0.6
