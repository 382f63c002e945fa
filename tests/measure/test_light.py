"""Light from a scanner: Snell's law, check values of geometrical optics, shadows against trimesh's rays."""

from __future__ import annotations

import numpy as np
import pytest
import trimesh
from builder import Spec, assemble, build, circle, draw, rounded_rectangle
from builder.ops import box, cut
from interface_models import interface, measure, settings
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
from OCP.gp import gp_Pnt
from scipy.optimize import brentq

from seamcheck.measure.interface import survey_interface
from seamcheck.measure.obstacles import meet
from seamcheck.measure.shade import clearances, shades
from seamcheck.settings.tables import Scanner


def columns(spec: Spec, scanner: Scanner, *others, spacing: float = 0.5):
    model = assemble(spec, *draw(spec), *others)
    found = measure(model.parts, station_spacing=spacing, scanner=scanner)
    chosen = settings(scanner=scanner, lateral_play=0.0, station_spacing=spacing)
    return survey_interface(found.joint, found.contour, found.survey, chosen)


def enters(height: float, radius: float, depth: float, index: float) -> float:
    """Radius at which the ray to ``radius`` below a level top enters it: scipy's root of Snell's law."""

    def over(x: float) -> float:
        return x + depth * np.tan(np.arcsin(np.sin(np.arctan(x / height)) / index)) - radius

    return brentq(over, 0.0, radius, xtol=1e-12)


@pytest.mark.parametrize(
    ("height", "radius", "thickness", "index", "angle", "way"),
    [
        (300, 100, 2.0, 1.58, 18.364963, 2.040991),
        pytest.param(250, 120, 3.0, 1.53, 25.477075, 3.0 / np.cos(np.radians(16.328479)), marks=pytest.mark.thorough),
    ],
)
@pytest.mark.parametrize("turn", [pytest.param((0, 0, 0), marks=pytest.mark.thorough), (50, -20, 10)])
def test_the_ray_to_a_round_seam_has_the_angle_of_snell(height, radius, thickness, index, angle, way, turn):
    """Check values recomputed from sin a = n sin b and x + t tan b = r, tan a = x / H."""
    spec = Spec(track=circle(radius), cover_thickness=thickness, turn=turn, shift=(3, 4, 5))
    path = columns(spec, Scanner(height, None, 0.0, index), spacing=3.0).paths[0].columns  # alike all round
    assert path["beam_angle"] == pytest.approx(angle, abs=0.001)
    assert path["path_in_cover"] == pytest.approx(way, abs=1e-4)
    a = np.radians(angle)
    b = np.arcsin(np.sin(a) / index)
    assert path["spot_offset"] == pytest.approx(thickness * (np.tan(a) - np.tan(b)), abs=1e-4)
    assert path["spot_stretch"] == pytest.approx(1 / np.cos(a), abs=1e-4)
    assert path["light_clear"].min() == 1.0
    assert path["light_lean"] == pytest.approx(-angle, abs=0.001)  # from over the middle: the inner side
    for name, edge in (("inner", radius - 0.6), ("outer", radius + 0.6)):
        assert path[f"light_enters_{name}"] == pytest.approx(enters(height, edge, thickness, index) - radius, abs=1e-3)


@pytest.mark.thorough
def test_the_axis_can_stand_elsewhere():
    """Axis over the seam's right end: there the light comes straight down, on the left at atan(100 / 301.3)."""
    spec = Spec(track=circle(50))
    path = columns(spec, Scanner(300, (50.0, 0.0, 0.0), 0.0, 1.5)).paths[0]
    at_axis = np.argmin(np.linalg.norm(path.points - [50, 0, 0], axis=1))
    assert path.columns["beam_angle"][at_axis] < 0.1
    assert path.columns["beam_angle"].max() == pytest.approx(np.degrees(np.arctan(100 / (300 + 2 / 1.5))), abs=0.02)


def test_telecentric_light_comes_along_the_beam():
    path = columns(Spec(track=circle(25), turn=(10, 20, 30)), Scanner()).paths[0].columns
    assert path["beam_angle"] == pytest.approx(0, abs=1e-3)
    assert path["path_in_cover"] == pytest.approx(2.0, abs=1e-6)
    assert path["light_clear"].min() == 1.0


def test_without_a_scanner_the_angle_is_not_evaluated_but_the_field_is_stated():
    _, found = interface(build(Spec(track=circle(25))).parts)
    for key in ("beam_angle", "tool_setback_inner", "tool_setback_outer"):
        assert found[key] == {"value": None, "at": None, "why": "no-scanner"}
    assert found["field_circle"]["value"] == pytest.approx(50, abs=0.01)


CONNECTOR = ((-24.0, -6.0, 2.0 + 0.5), (-18.6, 6.0, 62.0))
"""A tall block inside the seam's left side, x from -24 to -18.6: 5.6 mm from the rib, 60 mm high."""


def test_a_tall_connector_that_shades_the_beam_under_15_degrees_is_found():
    """The seam's left side lies at x = -30. From a scanner over the middle the ray rises by less than 15
    degrees from the beam; at the block's top its way inward is longer than the 6 mm to the block."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    scanner = Scanner(200.0, None, 0.0, 1.5)
    free = columns(spec, scanner).paths[0]
    assert free.columns["beam_angle"].max() < 15.0
    assert free.columns["light_clear"].min() == 1.0
    shaded = columns(spec, scanner, ("connector", box(*CONNECTOR), None))
    path = shaded.paths[0]
    dark = path.columns["light_clear"] < 1
    assert dark.any()
    middle = dark & (np.abs(path.points[:, 0] + 30) < 0.01)
    widest = np.abs(path.points[middle, 1]).max()
    edges = [abs(y) for y in path.points[(np.abs(path.points[:, 0] + 30) < 0.01) & ~dark, 1]]
    # the ray from (-30, y, 2) to the pivot (0, 0, 202) leaves the block's height, 62, after 0.3 of its way:
    # there it stands at 0.7 y, within the block's |y| <= 6
    assert widest == pytest.approx(6.0 / 0.7, abs=0.3)
    assert min(edges) > widest - 1e-9
    assert "connector" in shaded.interface["light_clear"]["why"]
    # at that height the ray to the light's inner edge (these settings have no margin) stands at 0.7 of where it enters:
    # so far the block's side at x = -24 has to go to clear it
    (place,) = shaded.interface["light_clear"]["places"]
    inner = enters(200.0, 30.0 - 0.998 * 0.6, 2.0, 1.5)
    assert place["move"] == pytest.approx(24.0 - 0.7 * inner, abs=0.01)
    assert place["direction"] == pytest.approx([1.0, 0.0, 0.0], abs=1e-9)
    assert (
        interface(assemble(spec, *draw(spec), ("connector", box(*CONNECTOR), None)).parts)[0].column("beam_clear").min()
        == 1.0
    )  # straight down nothing stands in the way


@pytest.mark.thorough
def test_a_cone_needs_more_room_than_its_middle_ray():
    """A wall 1.5 mm beside the rib, 30 mm high: clear for parallel light, not for a cone of 5 degrees.

    At the wall's top the cone is 30 tan 5 = 2.6 mm wide to each side, and the wall 0.9 mm from the rib's edge.
    """
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    wall = box((-28.5, -5, 2.0), (-27.5, 5, 32.0))
    parts = (("screen", wall, None),)
    assert columns(spec, Scanner(), *parts).paths[0].columns["light_clear"].min() == 1.0
    shaded = columns(spec, Scanner(half_angle=5.0), *parts).paths[0]
    near = (np.abs(shaded.points[:, 1]) < 4) & (shaded.points[:, 0] < 0)
    assert shaded.columns["light_clear"][near].max() < 1.0
    assert shaded.columns["light_clear"][shaded.points[:, 0] > 0].min() == 1.0


@pytest.mark.thorough
def test_light_that_would_enter_through_the_covers_edge_does_not_count():
    """A land of 0.2 mm and light at about 40 degrees: the ray to the rib enters 1 mm outside of it."""
    spec = Spec(track=circle(50), clamp_land=0.2)
    outside = columns(spec, Scanner(60.0, (150.0, 0.0, 0.0), 0.0, 1.5)).paths[0]
    facing = outside.points[:, 0] > 49
    assert outside.columns["light_clear"][facing].max() < 1.0


def test_rays_agree_with_trimesh():
    rng = np.random.default_rng(3)
    mesh = trimesh.creation.icosphere(2, 5.0)
    start = rng.uniform(-8, 8, (300, 3)) + np.array([0, 0, 20])
    way = rng.uniform(-4, 4, (300, 3)) - np.array([0, 0, 40])
    _, expected_ray, _ = mesh.ray.intersects_location(start, way, multiple_hits=True)
    pairs = [(i, j) for i in range(300) for j in range(len(mesh.triangles))]
    ray, facet = np.array(pairs).T
    t = meet(start[ray], way[ray], mesh.triangles[facet])
    assert set(ray[np.isfinite(t)]) == set(expected_ray)


@pytest.mark.thorough
def test_boxes_of_the_builder_are_those_of_the_kernel():
    """The block that shades is the kernel's own box, so that the shadow test stands on its own."""
    block = BRepPrimAPI_MakeBox(gp_Pnt(*CONNECTOR[0]), gp_Pnt(*CONNECTOR[1])).Shape()
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    one = columns(spec, Scanner(200.0, None, 0.0, 1.5), ("connector", block, None)).paths[0]
    other = columns(spec, Scanner(200.0, None, 0.0, 1.5), ("connector", box(*CONNECTOR), None)).paths[0]
    assert np.array_equal(one.columns["light_clear"], other.columns["light_clear"])


def test_what_shades_light_along_the_beam_is_named():
    """A foreign block over the inner half of the rib, 3 mm long, and a void in the cover over its outer half."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    clip = box((-2.0, -19.9, 5.0), (2.0, -15.0, 7.0))
    void = box((-2.0, 20.1, 0.8), (2.0, 22.0, 1.2))
    found = measure(assemble(spec, cut(cover, void), base, ("clip", clip, None)).parts)
    places = shades(found.joint, found.survey, 0.2).values["beam_clear"]["places"]
    assert len(places) == 2
    by_side = {place["at"][1] < 0: place for place in places}
    assert by_side[True]["why"].startswith("'clip' is in the beam path")
    assert [face["part"] for face in by_side[True]["faces"]] == ["p3"]
    # the seam runs at y = -20, outward is -y: the block's edge at -19.9 has to go to -20 + 0.6 + 0.2 margin, inward
    assert by_side[True]["move"] == pytest.approx(0.7, abs=1e-3)
    assert by_side[True]["direction"] == pytest.approx([0.0, 1.0, 0.0], abs=1e-9)
    assert "move" not in by_side[False]
    assert "void" in by_side[False]["why"]
    assert by_side[False]["faces"] == []
    # of 1.2 mm of width from 20 - 0.6 to 20 + 0.6 the block takes what lies within 19.9, the void what lies beyond 20.1
    assert [by_side[side]["value"] for side in (True, False)] == pytest.approx([0.7 / 1.2, 0.7 / 1.2], abs=0.01)
    sound = measure(assemble(spec, cover, base).parts)
    assert shades(sound.joint, sound.survey, 0.2).values == {}


def test_the_way_out_of_the_light_of_typed_facets():
    """Two triangles that make a square plate from u = -3 to 0.1, 4 mm up; one below counts for nothing."""
    plate = np.array([[[-3, -5, 4], [0.1, -5, 4], [0.1, 5, 4]], [[-3, -5, 4], [0.1, 5, 4], [-3, 5, 4]]], dtype=float)
    low = np.array([[[-1, -5, -1], [5, -5, -1], [5, 5, -1]]], dtype=float)
    places, across = np.array([[0.0, 0.0, 0.0], [0.0, 9.0, 0.0]]), np.array([[1.0, 0.0], [1.0, 0.0]])
    inward, outward = clearances(places, across, np.array([0.8, 0.8]), np.concatenate([plate, low]))
    assert inward == pytest.approx([0.1 + 0.8, np.nan], nan_ok=True)
    assert outward == pytest.approx([0.8 + 3.0, np.nan], nan_ok=True)
