"""Clamp land, support, neighbours and open traps against closed form and the kernel's own areas and distances."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from builder import Spec, assemble, build, circle, draw, rounded_rectangle
from builder.ops import box, cut, cylinder, fuse, solids
from builder.solid import level_face, surface
from interface_models import interface
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepExtrema import BRepExtrema_DistShapeShape
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakeSphere
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt

from seamcheck.pipeline import review
from seamcheck.samples import samples
from seamcheck.settings.tables import Clamp

AREA = 0.002  # relative: the bar of areas is 1 %


def ring(r0: float, r1: float) -> float:
    return np.pi * (r1**2 - r0**2)


def test_land_on_both_sides_of_a_round_seam():
    """Rib 1.2 wide on radius 25, cover to 28.2, reach 5 mm inward; the light's margin takes 0.3 of both."""
    spec = Spec(track=circle(25), turn=(20, 10, 5))
    _, found = interface(build(spec).parts, beam_margin=0.3)
    assert found["clamp_area_outer"]["value"] == pytest.approx(ring(25.9, 28.2), rel=AREA)
    assert found["clamp_area_inner"]["value"] == pytest.approx(ring(19.1, 24.1), rel=AREA)
    assert found["clamp_area"]["value"] == pytest.approx(ring(25.9, 28.2) + ring(19.1, 24.1), rel=AREA)
    assert found["clamp_share"]["value"] == 1.0


@pytest.mark.thorough
def test_land_agrees_with_the_kernels_own_faces():
    """Rounded rectangle: the kernel's area of the ring between two parallels of the mid-line."""
    spec = Spec(track=rounded_rectangle(60, 40, 8), edge_chamfer=0.4)
    _, found = interface(build(spec).parts)
    face = level_face(spec.track, 2.0, 0.6 + spec.clamp_land, 0.6)
    assert found["clamp_area_outer"]["value"] == pytest.approx(surface(face), rel=AREA)


@pytest.mark.parametrize(
    ("shape", "turn"),
    [
        ("cylinder", (20, 10, 5)),
        pytest.param("ball", (0, 0, 0), marks=pytest.mark.thorough),
        pytest.param("ball", (20, 10, 5), marks=pytest.mark.thorough),
    ],
)
def test_a_gently_curved_top_is_land_as_well(shape, turn):
    """A top bent in a radius of 600 mm leans by less than 3 degrees; seen along the beam the land is rings."""
    spec = Spec(track=circle(12), cover_thickness=3.0)
    cover, base = draw(spec)
    middle = gp_Pnt(0, 0 if shape == "ball" else -50, 2.8 - 600)
    under = (
        BRepPrimAPI_MakeSphere(middle, 600.0)
        if shape == "ball"
        else BRepPrimAPI_MakeCylinder(gp_Ax2(middle, gp_Dir(0, 1, 0)), 600.0, 100.0)
    )
    cover = solids(BRepAlgoAPI_Common(cover, under.Shape()).Shape())[0]
    knob = cylinder((8.5, 0, 1.5), 1.0, 4.0)
    cover = fuse(cover, knob)
    model = assemble(replace(spec, turn=turn), cover, base)
    _, found = interface(model.parts)
    assert found["clamp_area_outer"]["value"] == pytest.approx(ring(12.6, 15.2), rel=AREA)
    # the knob's flat top is land too, at another height
    assert found["clamp_area_inner"]["value"] == pytest.approx(ring(6.4, 11.4), rel=0.004)


@pytest.mark.thorough
def test_what_stands_on_the_land_takes_area_and_what_hangs_high_above_does_not():
    spec = Spec(track=circle(25))
    cover, base = draw(spec)
    dome = BRepPrimAPI_MakeSphere(gp_Pnt(21.5, 0, 2), 1.0).Shape()
    cover = fuse(cover, dome)
    hood = box((-23, -1, 2 + 10), (-21, 1, 2 + 15))
    parts = assemble(spec, cover, base, ("hood", hood, None)).parts
    whole = ring(19.4, 24.4)
    _, tall = interface(parts, clamp=Clamp(height=20))
    assert tall["clamp_area_inner"]["value"] == pytest.approx(whole - np.pi - 4.0, rel=AREA)
    _, low = interface(parts, clamp=Clamp(height=8))
    assert low["clamp_area_inner"]["value"] == pytest.approx(whole - np.pi, rel=AREA)


def test_the_share_of_the_seam_without_land():
    """Blocks over 10 mm of one straight side and over 6 mm of the other leave no land there: two places."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    blocks = [("bridge", box((-5, 10, 2.5), (5, 30, 9)), None), ("cable", box((8, -30, 2.5), (14, -10, 9)), None)]
    _, found = interface(assemble(spec, *draw(spec), *blocks).parts)
    entry = found["clamp_share"]
    assert entry["value"] == pytest.approx(1 - 16 / spec.track.length, abs=1.2 / spec.track.length)
    assert [place["length"] for place in entry["places"]] == pytest.approx([10, 6], abs=0.6)
    assert entry["at"] == pytest.approx([0, 20, 0], abs=0.6)
    assert entry["places"][1]["at"] == pytest.approx([11, -20, 0], abs=0.6)


@pytest.mark.thorough
def test_force_is_pressure_times_area_of_the_rib():
    """2 MPa over a rib of 1.5 mm and 400 mm give 1200 N, 3 N/mm (exact arithmetic)."""
    track = rounded_rectangle(120, 96.5840734641020, 10)  # perimeter 2 (120 + 96.58) - 80 + 20 pi = 416
    spec = Spec(track=track, rib_width=1.5)
    _, found = interface(build(spec).parts, clamp=Clamp(pressure=2.0))
    entry = found["clamp_area"]
    assert entry["force_newton_per_mm"] == pytest.approx(3.0, rel=1e-4)
    assert entry["force_newton"] == pytest.approx(3.0 * track.length, rel=1e-4)
    assert entry["pressure_on_land_mpa"] == pytest.approx(entry["force_newton"] / entry["value"])


@pytest.mark.parametrize("turn", [pytest.param((0, 0, 0), marks=pytest.mark.thorough), (30, 0, 15)])
def test_distance_of_other_parts(turn):
    """Closed form, and the kernel's distance between the whole part and the rib's top."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    near = box((-30 + 0.6 + 2.0, -3, -6), (-20, 3, -1.5))  # 2.0 beside the rib's edge, 1.5 below its top
    far = cylinder((0, 0, -11), 2, 3)
    model = assemble(spec, *draw(spec), ("filter", near, None), ("spring", far, None))
    found, values = interface(model.parts)
    entry = values["neighbour_distance"]
    assert entry["value"] == pytest.approx(2.5, abs=1e-4)
    assert [f["part"] for f in entry["faces"]] == ["p1", "p3"]
    assert len(entry["places"]) == 1
    top = found.joint.rib.faces[entry["faces"][0]["face"]]
    assert BRepExtrema_DistShapeShape(top, near).Value() == pytest.approx(entry["value"], abs=1e-6)


@pytest.mark.parametrize(
    ("spot", "margin", "beside"),
    [(None, 0.2, 1.8), (2.2, 0.0, 1.5), (2.2, 0.2, 1.3), (0.6, 0.0, 2.3)],
    ids=["rib with margin", "wide spot", "wide spot with margin", "narrow spot"],
)
def test_other_parts_are_measured_from_the_light(spot, margin, beside):
    """A block 2.0 mm beside the rib's edge (1.2 wide) and 1.5 below its top: closed form; a ball beside it likewise."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    near = box((-30 + 0.6 + 2.0, -3, -6), (-20, 3, -1.5))
    model = assemble(spec, *draw(spec), ("filter", near, None))
    _, values = interface(model.parts, beam_margin=margin, optics={"": (spot, None)})
    assert values["neighbour_distance"]["value"] == pytest.approx(np.hypot(beside, 1.5), abs=1e-4)


@pytest.mark.parametrize("spot", [1.2, 3.2])
def test_a_round_neighbour_is_nearest_to_the_light_elsewhere_than_to_the_rib(spot):
    """A ball of radius 1, 4 beside the rib's edge and 3 below its top: from the strip's edge to its middle, less 1."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    ball = BRepPrimAPI_MakeSphere(gp_Pnt(-30 + 0.6 + 4.0, 0.0, -3.0), 1.0).Shape()
    model = assemble(spec, *draw(spec), ("bulb", ball, None))
    _, values = interface(model.parts, beam_margin=0.0, optics={"": (spot, None)})
    expected = np.hypot(4.0 - (spot - 1.2) / 2, 3.0) - 1.0
    assert values["neighbour_distance"]["value"] == pytest.approx(expected, abs=1e-4)


@pytest.mark.thorough
def test_alone_there_are_no_neighbours():
    _, found = interface(build(Spec(track=circle(25))).parts)
    assert found["neighbour_distance"] == {"value": None, "at": None, "why": "no-neighbour-part"}


def test_the_wall_below_the_rib_carries_it_on_a_nest():
    spec = Spec(track=circle(25), turn=(15, 25, 0))
    _, found = interface(build(spec).parts)
    assert found["support_depth"]["value"] == pytest.approx(spec.wall_height, abs=1e-6)
    assert found["support_open"]["value"] == 0.0
    assert found["nest_area"]["value"] == pytest.approx(ring(24.4, 25.6), rel=AREA)


def test_an_opening_in_the_wall_is_found_below_the_seam():
    """A window 8 mm wide and 4 mm high through the straight wall, 5 mm below the rib's top."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    base = cut(base, box((-4, 12, -9), (4, 30, -5)))
    _, found = interface(assemble(spec, cover, base).parts)
    assert found["support_open"]["value"] == pytest.approx(8.0, abs=0.6)
    assert found["support_depth"]["value"] == pytest.approx(5.0, abs=1e-6)
    assert abs(found["support_open"]["at"][0]) < 4


@pytest.mark.thorough
def test_open_traps_say_what_flash_would_reach():
    track = circle(25)
    _, found = interface(build(Spec(track=track, inner="open")).parts)
    assert found["flash_open_inner"]["value"] == pytest.approx(track.length, rel=1e-3)
    assert "inside" in found["flash_open_inner"]["why"]
    assert found["flash_open_outer"] == {"value": 0.0, "at": None, "why": ""}


@pytest.mark.thorough
def test_wall_to_rib():
    spec = Spec(track=circle(25), stem=(-1.5, 1.7))
    _, found = interface(build(spec).parts)
    width = spec.flank("inner", 0.45) + spec.flank("outer", 0.45)
    wall = spec.wall_face("inner") + spec.wall_face("outer")
    assert found["wall_to_rib"]["value"] == pytest.approx(wall / width, abs=0.005)


def test_a_tilted_flat_is_no_land_and_the_reason_says_so():
    """The sample's cover rises 1 in 2 all along: atan(1/2) = 26.565°; not square to the beam within 5°."""
    sample = next(s for s in samples() if s.name == "seam-step")
    found = next(f for f in review(sample.file).document["findings"] if f["rule"] == "clamp-reach")
    assert found["value"] == 0.0
    assert "tilted by 26.6°" in found["message"]
