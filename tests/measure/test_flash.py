"""Room of the flash traps round turns, lips after the collapse, what flash would reach: closed form."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from builder import Spec, assemble, build, circle, draw, rounded_rectangle, spoil
from builder.ops import box, cut, cylinder
from interface_models import interface
from measuring import measure

from seamcheck.measure.flash_trap import turned

SQUARE = Spec(rib_width=1.2, draft_inner=0, draft_outer=0)
"""Traps are rectangles between flank and lip, 0.9 - 0.4 = 0.5 mm high after the collapse."""


def ring(r0: float, r1: float) -> float:
    return np.pi * (r1**2 - r0**2)


def test_a_corner_of_90_degrees():
    """Pappus and Guldinus: R = 5, area 0.8 mm², its middle 1.25 mm aside: pi/2 (R -+ 1.25) 0.8 mm³."""
    area, centre = np.full(2, 0.8), np.full(2, 1.25)
    per_length = turned(area, centre, np.array([1.0, -1.0]) / 5.0)
    assert per_length * np.pi / 2 * 5.0 == pytest.approx([4.712389, 7.853982], abs=1e-6)


def test_nothing_is_left_of_a_trap_beyond_the_centre_of_the_turn():
    assert turned(np.array([0.8]), np.array([1.25]), np.array([1.0]))[0] == 0.0


@pytest.mark.parametrize(
    ("radius", "turn"),
    [
        (6.0, (20, -30, 40)),
        *(
            pytest.param(radius, turn, marks=pytest.mark.thorough)
            for radius, turn in ((6.0, (0, 0, 0)), (12.0, (0, 0, 0)), (12.0, (20, -30, 40)), (30.0, (20, -30, 40)))
        ),
    ],
)
def test_volumes_of_round_traps_are_those_of_rings(radius, turn):
    """Each trap after the collapse is a ring of 0.5 mm height between flank and lip."""
    spec = replace(SQUARE, track=circle(radius), turn=turn)
    _, found = interface(build(spec).parts)
    half, inner, outer = 0.6, spec.trap_end("inner"), spec.trap_end("outer")
    volumes = (0.5 * ring(radius - inner, radius - half), 0.5 * ring(radius + half, radius + outer))
    assert found["trap_volume_inner"]["value"] == pytest.approx(volumes[0], rel=2e-3)
    assert found["trap_volume_outer"]["value"] == pytest.approx(volumes[1], rel=2e-3)
    assert found["melt_volume"]["value"] == pytest.approx(0.4 * ring(radius - 0.6, radius + 0.6), rel=2e-3)
    middle = (half + inner) / 2
    assert found["corner_loss_inner"]["value"] == pytest.approx(
        middle / radius, abs=0.0015
    )  # the worst of all stations
    assert found["corner_loss_outer"]["value"] == 0.0


def test_corners_of_a_rectangle_lose_and_win_the_same_share():
    """Straight runs lose nothing; in all four corners together the inner trap's way is 2 pi d shorter."""
    spec = replace(SQUARE, track=rounded_rectangle(60, 40, 6))
    found, values = interface(build(spec).parts)
    middle = (0.6 + spec.trap_end("inner")) / 2
    area = 0.5 * (spec.trap_end("inner") - 0.6)
    assert values["trap_volume_inner"]["value"] == pytest.approx(
        area * (spec.track.length - 2 * np.pi * middle), rel=3e-3
    )
    outer = (0.6 + spec.trap_end("outer")) / 2
    area = 0.5 * (spec.trap_end("outer") - 0.6)
    assert values["trap_volume_outer"]["value"] == pytest.approx(
        area * (spec.track.length + 2 * np.pi * outer), rel=3e-3
    )
    at = np.abs(values["corner_loss_inner"]["at"])
    assert at[0] > 24
    assert at[1] > 14
    straight = np.abs(found.points[:, 0]) < 22
    turn, room = found.column("trap_corner_inner"), found.column("trap_room_inner")
    assert turn[straight] == pytest.approx(room[straight], rel=1e-6)
    assert turn.min() == pytest.approx(room.min() * (1 - middle / 6.0), rel=0.01)


def test_the_turn_ends_where_the_arc_ends():
    """Lines and arcs of 6 mm: up to 0.05 mm from their joints each section counts by its own edges, 0 or 1/6."""
    spec = replace(SQUARE, track=rounded_rectangle(60, 40, 6))
    found = measure(build(spec).parts)
    middle = (0.6 + spec.trap_end("inner")) / 2
    place = np.abs(found.points)
    arc = (place[:, 0] > 24.0) & (place[:, 1] > 14.0)
    near = np.minimum(np.abs(place[:, 0] - 24.0), np.abs(place[:, 1] - 14.0))
    assert (near < 0.1).sum() >= 8
    sure = near > 1e-3
    for side, sign in (("inner", -1.0), ("outer", 1.0)):
        factor = found.column(f"trap_corner_{side}") / found.column(f"trap_room_{side}")
        assert factor[sure] == pytest.approx(np.where(arc, 1.0 + sign * middle / 6.0, 1.0)[sure], abs=2e-4)


def test_a_notch_in_one_edge_is_no_turn_of_the_line():
    """The rib is widened on its outer side over 3 mm, with edges that bend there; the mid-line runs straight on."""
    model, _ = spoil("wide-rib", replace(SQUARE, track=rounded_rectangle(60, 40, 6)), length=3.0, by=0.3, s=30.0)
    found = measure(model.parts)
    straight = (np.abs(found.points[:, 0]) < 22.0) & np.isfinite(found.column("trap_corner_inner"))
    room = found.column("trap_room_inner")[straight]
    assert found.column("trap_corner_inner")[straight] == pytest.approx(room, rel=0.02)


def test_the_tightest_and_the_widest_lip_with_side_and_place():
    """Lips end 0.6 mm below the rib's top, the outer one 0.25 mm deeper: 0.2 and 0.45 mm after the collapse."""
    spec = replace(SQUARE, track=circle(20), rib_height_outer=1.15)
    _, found = interface(build(spec).parts)
    tight, wide = found["lip_tightest"], found["lip_widest"]
    assert (tight["value"], tight["why"]) == (pytest.approx(0.2, abs=1e-3), "On the inner side.")
    assert (wide["value"], wide["why"]) == (pytest.approx(0.45, abs=1e-3), "On the outer side.")
    assert np.hypot(*wide["at"][:2]) == pytest.approx(20, abs=0.01)


def test_flash_would_reach_the_board_that_stands_inside():
    spec = replace(SQUARE, track=circle(25), inner="open")
    board = box((-19, -4, -6), (-15, 4, -4))
    _, found = interface(assemble(spec, *draw(spec), ("sensor board", board, None)).parts)
    why = found["flash_open_inner"]["why"]
    assert why.startswith("Flash would reach the inside of the housing. Nearest there: 'sensor board', ")
    assert found["flash_open_outer"] == {"value": 0.0, "at": None, "why": ""}


@pytest.mark.parametrize(
    ("hole", "reached"),
    [pytest.param(0.0, "the inside of the housing", marks=pytest.mark.thorough), (22.0, "the opening")],
)
def test_round_an_opening_the_inner_side_is_the_visible_one(hole, reached):
    """The same seam under a whole lid and under a ring."""
    spec = replace(SQUARE, track=circle(25), inner="open", wall_height=6.0)
    cover, base = draw(spec)
    if hole:
        cover, base = (cut(part, cylinder((0, 0, -9), hole, 30)) for part in (cover, base))
    _, found = interface(assemble(spec, cover, base).parts)
    assert reached in found["flash_open_inner"]["why"]


def test_under_a_hole_of_the_cover_a_trap_has_no_room_to_speak_of():
    """A hole of 3 mm over the rib: the traps beside it are not measured there, and closed everywhere else."""
    model, _ = spoil("hole", Spec(track=circle(20)), length=3.0)
    found = measure(model.parts)
    bare = np.isnan(found.column("cover_thickness"))
    for key in ("trap_room", "trap_room_inner", "trap_corner_outer", "trap_area_outer"):
        values = found.column(key)
        assert np.isnan(values[bare]).any()
        assert np.nanmin(values) > 0.5 * np.nanmax(values)
    assert np.nanmax(found.column("trap_open_inner")) == 0.0
    assert found.reasons("trap_room") == {"hole"}
