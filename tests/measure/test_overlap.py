"""Interpenetrating parts elsewhere than at the rib: drawn depths, the kernel's own common volume."""

from __future__ import annotations

import pytest
from builder import Spec, circle, draw, rounded_rectangle
from builder.defects import rectangle
from builder.ops import box, cut, cylinder, fuse, stretch
from builder.pair import assemble
from interface_models import interface
from measuring import assembly, settings
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepGProp import BRepGProp
from OCP.BRepPrimAPI import BRepPrimAPI_MakeSphere
from OCP.gp import gp_Pnt
from OCP.GProp import GProp_GProps

from seamcheck.joint import find_joints
from seamcheck.measure.overlap import find_overlaps

SPEC = Spec(track=rounded_rectangle(60, 40, 8))
FLOOR = -12.0  # top of the inner floor of a default base


def found(parts) -> list:
    return find_overlaps(find_joints(assembly(parts), settings())[0])


def pressed(spec: Spec, by: float):
    """A tongue of the cover, 8 mm long, that reaches ``by`` mm into the inner face of the wall."""
    cover, base = draw(spec)
    wall = -spec.wall_face("inner")
    tongue = stretch(spec.track, spec.track.middle_of_run(), 8.0, rectangle(wall - 1.2, wall + by, -5.0, 0.5))
    return fuse(cover, tongue), base


def common_volume(one, other) -> float:
    volume = GProp_GProps()
    BRepGProp.VolumeProperties_s(BRepAlgoAPI_Common(one, other).Shape(), volume)
    return volume.Mass()


@pytest.mark.parametrize(
    "spec",
    [SPEC, Spec(track=SPEC.track, turn=(20, -30, 40), shift=(11, 7, -3)), Spec(track=circle(25), gap=-0.4)],
    ids=["plain", "turned", "welded"],
)
def test_a_sound_pair_overlaps_nowhere_but_at_its_rib(spec):
    cover, base = draw(spec)
    assert found(assemble(spec, cover, base).parts) == []


@pytest.mark.parametrize("turn", [(0, 0, 0), (20, -30, 40)])
def test_a_tongue_that_presses_into_the_wall_is_found_with_its_depth(turn):
    spec = Spec(track=SPEC.track, turn=turn)
    cover, base = pressed(spec, 0.08)
    overlap = found(assemble(spec, cover, base).parts)[0]
    assert overlap.depth == pytest.approx(0.08, abs=1e-4)
    assert {overlap.cover[0], overlap.other[0]} == {"p1", "p2"}


def test_the_kernel_finds_the_same_room():
    """Common volume = depth x length x height of a tongue 8 mm long, 5 mm deep, less the room over the trap floor."""
    cover, base = pressed(SPEC, 0.08)
    height = 5.0 - SPEC.rib_height_inner + SPEC.lip_height_inner
    assert common_volume(cover, base) == pytest.approx(8.0 * 0.08 * height, rel=0.01)
    overlap = found(assemble(SPEC, cover, base).parts)[0]
    assert overlap.depth * 8.0 * height == pytest.approx(common_volume(cover, base), rel=0.01)


def test_a_tongue_with_room_presses_nowhere():
    cover, base = pressed(SPEC, -0.02)
    assert found(assemble(SPEC, cover, base).parts) == []


def test_a_pin_that_fills_its_hole_touches_only():
    cover, base = draw(SPEC)
    base = cut(fuse(base, cylinder((4, 5, FLOOR - 1), 2.5, 11.0)), cylinder((4, 5, -11), 1.5, 12))
    cover = fuse(cover, cylinder((4, 5, -2.2), 1.5, 3.0))
    assert found(assemble(SPEC, cover, base).parts) == []


def test_a_deep_overlap_along_the_light_is_travel_below_zero():
    """A post up to 2.5 mm below the rib's top, a pin of the cover down to 5 mm: 2.5 mm of both in one room."""
    spec = Spec(track=circle(20))
    cover, base = draw(spec)
    base = fuse(base, cylinder((2, 3, FLOOR - 1), 3.0, 13.0 - 2.5))
    cover = fuse(cover, cylinder((2, 3, -5), 2.0, 5.5))
    _, values = interface(assemble(spec, cover, base).parts)
    assert values["free_travel"]["value"] == pytest.approx(-2.5, abs=1e-3)
    assert "by 2.50 mm as drawn" in values["free_travel"]["why"]
    assert values["free_travel"]["places"][1]["value"] == pytest.approx(0.6, abs=1e-3)
    assert values["overlap"]["value"] == 0.0


def test_a_part_within_the_covers_plastic_is_found():
    """An insert of 3 x 2 x 1 mm drawn into a lid that has no hole for it."""
    cover, base = draw(SPEC)
    insert = box((-1.5, -1.0, 0.5), (1.5, 1.0, 1.5))
    overlap = found(assemble(SPEC, cover, base, ("insert", insert, None)).parts)[0]
    assert overlap.depth == pytest.approx(1.0, abs=1e-3)
    assert overlap.other[0] == "p3"


def test_a_pin_too_thick_for_its_hole_presses_by_the_difference():
    """Radius 1.55 in a hole of 1.5: 0.05 mm all round, in whatever direction it is looked at."""
    cover, base = draw(SPEC)
    base = cut(fuse(base, cylinder((4, 5, FLOOR - 1), 3.0, 9.0)), cylinder((4, 5, FLOOR + 0.5), 1.5, 20))
    cover = fuse(cover, cylinder((4, 5, -8.0), 1.55, 8.5))
    assert [o.depth for o in found(assemble(SPEC, cover, base).parts)] == pytest.approx([0.05], abs=1e-3)


def test_a_skirt_that_presses_all_round_is_as_deep_as_drawn():
    """A tongue all round, 0.05 mm into the wall; both are cylinders about the same axis."""
    spec = Spec(track=circle(30))
    cover, base = draw(spec)
    edge = 30.0 - spec.wall_face("inner") + 0.05
    tongue = cut(cylinder((0, 0, -3.0), edge, 3.3), cylinder((0, 0, -4.0), edge - 1.2, 6.0))
    depths = [o.depth for o in found(assemble(spec, fuse(cover, tongue), base).parts)]
    assert depths == pytest.approx([0.05], abs=1e-3)


def test_a_low_press_is_no_stop():
    """A tongue 0.8 mm below the rib's top, 0.08 mm into the lip beside the trap: sideways; the lips stop the cover."""
    cover, base = draw(SPEC)
    wall = -SPEC.wall_face("inner")
    tongue = stretch(SPEC.track, SPEC.track.middle_of_run(), 8.0, rectangle(wall - 1.2, wall + 0.08, -0.8, 0.5))
    _, values = interface(assemble(SPEC, fuse(cover, tongue), base).parts)
    assert values["overlap"]["value"] == pytest.approx(0.08, abs=1e-3)
    assert values["free_travel"]["value"] == pytest.approx(0.6, abs=1e-3)


def test_a_knob_that_presses_into_the_wall_is_as_deep_as_drawn():
    """A ball of radius 2 on a tongue, 0.2 mm into the wall: it crosses the wall's face at an acute angle."""
    cover, base = draw(SPEC)
    wall = 20.0 - SPEC.wall_face("inner")
    tongue = box((-1.0, wall - 2.5, -6.0), (1.0, wall - 0.5, 0.5))
    knob = BRepPrimAPI_MakeSphere(gp_Pnt(0.0, wall - 1.8, -4.0), 2.0).Shape()
    overlap = found(assemble(SPEC, fuse(fuse(cover, tongue), knob), base).parts)[0]
    assert overlap.depth == pytest.approx(0.2, abs=0.02)
    assert abs(overlap.along[2]) < 0.5
