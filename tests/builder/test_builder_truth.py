"""The builder's truth against the kernel's own mass properties, handbook formulas and check values."""

from __future__ import annotations

import math

import numpy as np
import pytest
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge, BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon
from OCP.BRepGProp import BRepGProp
from OCP.gp import gp_Pnt
from OCP.GProp import GProp_GProps
from scipy.special import ellipe
from telling import telling

from builder import (
    DEFECTS,
    Spec,
    build,
    c_shape,
    circle,
    closed_spline,
    draw,
    ellipse,
    l_shape,
    rounded_rectangle,
    spoil,
)
from builder.ops import box
from builder.solid import surface, volume
from builder.track import Track

TRACKS = [
    rounded_rectangle(120, 80, 10),
    rounded_rectangle(600, 90, 12),
    circle(40),
    l_shape(),
    c_shape(),
    ellipse(60, 40),
    closed_spline(),
]
THIRTY = circle(30)
SECTIONS = {
    "plain": Spec(draft_inner=0, draft_outer=0),
    "drafted-filleted": Spec(draft_inner=1, draft_outer=2, top_fillet=0.2, root_fillet=0.15),
    "recessed": Spec(outer="wall", rib_height_outer=1.3, trap_width_outer=2.0, draft_outer=0.5),
    "hanging-lips": Spec(inner="hang", outer="hang", edge_fillet=0.5, draft_inner=2),
    "flush-inside": Spec(inner="flush", draft_inner=0, lip_height_outer=0.25),
    "flush-outside": Spec(outer="flush", draft_outer=0, root_fillet=0.1),
    "rib-on-cover": Spec(rib_on="cover", top_fillet=0.15, root_fillet=0.1, rib_height_inner=1.1),
    "open": Spec(inner="open", outer="open", rib_height_inner=1.1, edge_chamfer=0.4, clamp_land=1.8),
}
SMALL = Spec(
    track=rounded_rectangle(8, 6.5, 2.4),
    rib_width=0.6,
    trap_width_inner=0.8,
    trap_width_outer=0.8,
    lip_width=0.5,
    clamp_land=1.4,
    cover_thickness=1.0,
    rib_height_inner=0.8,
    rib_height_outer=0.8,
    lip_height_inner=0.25,
    lip_height_outer=0.25,
    wall_height=6,
    floor_thickness=1,
)


def length_inside(shape, p, q) -> float:
    """Length of the straight edge from p to q that lies in the solid, by the kernel's Boolean."""
    edge = BRepBuilderAPI_MakeEdge(gp_Pnt(*map(float, p)), gp_Pnt(*map(float, q))).Edge()
    properties = GProp_GProps()
    BRepGProp.LinearProperties_s(BRepAlgoAPI_Common(shape, edge).Shape(), properties)
    return properties.Mass()


def area_inside(shape, corners) -> float:
    """Area of the plane window that lies in the solid, by the kernel's Boolean and mass properties."""
    polygon = BRepBuilderAPI_MakePolygon()
    for p in corners:
        polygon.Add(gp_Pnt(*map(float, p)))
    polygon.Close()
    return surface(BRepAlgoAPI_Common(shape, BRepBuilderAPI_MakeFace(polygon.Wire(), True).Face()).Shape())


def at_station(spec, s):
    """(o, z) -> (x, y, z) in the drawing's frame at arc length s."""
    xy, normal = spec.track.at(np.array([s]))
    return lambda o, z: (*(xy[0] + o * normal[0]), z)


def slab(low, high):
    return box((-400, -400, low), (400, 400, high))


def with_track(spec, track):
    return Spec(**{**{f: getattr(spec, f) for f in spec.__dataclass_fields__}, "track": track})


def test_line_lengths_are_those_of_the_handbook():
    # DOMAIN check values 15 and 16: perimeter of the rounded rectangle 2(a + b) - 8r + 2 pi r;
    # of the ellipse 4a E(m) by the complete elliptic integral (scipy.special.ellipe).
    assert rounded_rectangle(120, 80, 10).length == pytest.approx(382.831853, abs=1e-6)
    assert rounded_rectangle(120, 80, 10).area() == pytest.approx(9514.159265, abs=1e-6)
    assert ellipse(60, 40).length == pytest.approx(4 * 60 * ellipe(1 - (40 / 60) ** 2), rel=1e-9)
    assert circle(40).length == pytest.approx(2 * math.pi * 40, rel=1e-12)


@pytest.mark.parametrize("track", TRACKS, ids=lambda t: f"{t.name}-{t.length:.0f}")
def test_points_lie_on_the_line_and_parallels_at_their_distance(track):
    s = np.linspace(0, track.length, 97)
    xy, normal = track.at(s)
    np.testing.assert_allclose(track.distance(xy), 0, atol=1e-7)
    np.testing.assert_allclose(track.distance(xy + 1.3 * normal), 1.3, atol=1e-6)
    # Turning number: the total curvature of a simple closed line is 2 pi (Hopf's Umlaufsatz).
    ring = track.at(np.linspace(0, track.length, 4001))[1]
    turn = np.unwrap(np.arctan2(ring[:, 1], ring[:, 0]))
    assert turn[-1] - turn[0] == pytest.approx(2 * math.pi, abs=1e-6)


@pytest.mark.parametrize(
    ("draft", "fillet", "expected"), [(1.0, 0.0, 0.602793), (2.0, 0.0, 0.605587), (1.0, 0.2, 0.586311)]
)
def test_melt_area_is_the_check_value(draft, fillet, expected):
    # DOMAIN check value 21: virtual width 1.5, collapse 0.4; trapezium less two fillet areas.
    foot = fillet * math.tan(math.radians(45 - draft / 2))
    spec = Spec(rib_width=1.5 - 2 * foot, draft_inner=draft, draft_outer=draft, top_fillet=fillet)
    assert spec.truth().values["melt_area"] == pytest.approx(expected, abs=1e-6)


def test_the_melted_ring_has_the_volume_of_pappus():
    # DOMAIN check value 14 (Pappus-Guldinus): rib 1.5 x 0.4 on a circle of radius 40.
    _, base = draw(Spec(track=circle(40), rib_width=1.5, draft_inner=0, draft_outer=0))
    assert volume(BRepAlgoAPI_Common(base, slab(-0.4, 1)).Shape()) == pytest.approx(150.796447, abs=1e-5)


@pytest.mark.parametrize("track", TRACKS, ids=lambda t: f"{t.name}-{t.length:.0f}")
def test_the_melted_volume_is_melt_area_times_length(track):
    # Generalised Pappus-Guldinus along a closed plane curve: V = L A + 2 pi M, M = 0 for equal flanks.
    spec = Spec(track=track, draft_inner=1.5, draft_outer=1.5, top_fillet=0.15)
    _, base = draw(spec)
    melted = volume(BRepAlgoAPI_Common(base, slab(-0.4, 1)).Shape())
    assert melted == pytest.approx(spec.truth().values["melt_area"] * track.length, rel=2e-6)


@pytest.mark.parametrize("name", SECTIONS)
@pytest.mark.parametrize("track", telling(TRACKS[2:6], [TRACKS[3]]), ids=lambda t: t.name)
def test_sections_of_the_solid_have_the_true_widths_heights_and_areas(track, name):
    # splines cost the kernel's Boolean seconds: one station each
    if isinstance(track, Track):
        check_sections(with_track(SECTIONS[name], track), (0.11, 0.57))
    elif (name, track.name) in (("drafted-filleted", "spline"), ("recessed", "ellipse")):
        check_sections(with_track(SECTIONS[name], track), (0.57,))


def test_a_part_of_8_mm_has_the_true_sections():
    check_sections(SMALL, (0.05, 0.2, 0.4))


def test_a_part_of_600_mm_has_the_true_sections():
    check_sections(with_track(SECTIONS["drafted-filleted"], TRACKS[1]), (0.3,))


def check_sections(spec, shares):
    """Kernel's Boolean sections of the drawn solids against the truth, to a few nanometres."""
    cover, base = draw(spec)
    want, c, near = spec.truth().values, 0.4, 5e-6
    carrier, sign = (cover, -1) if spec.rib_on == "cover" else (base, 1)
    for share in shares:
        place = at_station(spec, share * spec.track.length)

        def at(o, z, place=place):  # mirrored where the rib hangs from the cover
            return place(o, sign * z)

        reach_in, reach_out = -spec.trap_end("inner") + 1e-6, spec.trap_end("outer") - 1e-6
        mid = want["rib_height"] / 2
        width = length_inside(carrier, at(reach_in, -mid), at(reach_out, -mid))
        assert width == pytest.approx(want["rib_width_mid"], abs=near)
        if not spec.top_fillet:
            width = length_inside(carrier, at(reach_in, -1e-7), at(reach_out, -1e-7))
            assert width == pytest.approx(want["rib_width_top"], abs=near)
        for side, o in (("inner", reach_in + 0.05), ("outer", reach_out - 0.05)):
            height = want[f"rib_height_{side}"]
            if spec.kind(side) == "flush":
                assert math.isnan(height)
                below = length_inside(carrier, at(np.sign(o) * (abs(o) + 0.1), 0), at(o * 1.2, -3))
                assert below == 0
                continue
            air = 1.6 - length_inside(carrier, at(o, 0), at(o, -1.6))
            assert air == pytest.approx(height, abs=near)
            end = reach_in if side == "inner" else min(reach_out, spec.cover_edge + (spec.outer == "wall"))
            window = [at(*p) for p in [(0, -height), (end, -height), (end, -c), (0, -c)]]
            free = abs(end) * (height - c) - area_inside(carrier, window)
            assert free == pytest.approx(want[f"trap_area_{side}"], abs=near)
            if spec.kind(side) in ("lip", "hang"):
                o = np.sign(o) * (spec.trap_end(side) + spec.lip_width / 2)
                apart = 1.8 - length_inside(base, place(o, -0.9), place(o, 0.9))
                apart -= length_inside(cover, place(o, -0.9), place(o, 0.9))
                assert apart - c == pytest.approx(want[f"lip_gap_{side}"], abs=near)
        melt = area_inside(carrier, [at(*p) for p in [(-1.2, -c), (1.2, -c), (1.2, 0.5), (-1.2, 0.5)]])
        assert melt == pytest.approx(want["melt_area"], abs=near)
        thick = length_inside(cover, place(0, -3), place(0, 9))
        assert thick == pytest.approx(want["cover_thickness"], abs=near)
        top = spec.gap + spec.cover_thickness - 1e-7
        flat = length_inside(cover, place(0, top), place(20, top))
        assert flat - spec.rib_width / 2 == pytest.approx(want["clamp_land"], abs=near)
        if math.isnan(want["wall_width"]):
            continue
        below = -max(spec.rib_height_inner, spec.rib_height_outer) - 0.2
        wall = length_inside(base, place(-spec.wall_face("inner") - 0.5, below), place(20, below))
        assert wall == pytest.approx(want["wall_width"], abs=near)


@pytest.mark.parametrize("name", telling(SECTIONS, ["recessed", "rib-on-cover"]))
def test_rotated_parts_keep_volume_and_the_truth_moves_along(name):
    spec = with_track(SECTIONS[name], TRACKS[0])
    turned = Spec(**{**spec.__dict__, "turn": (20, -35, 70), "shift": (11, -7, 130), "cover_first": True})
    still, away = build(spec), build(turned)
    assert [p[0] for p in away.parts] == [p[0] for p in still.parts][::-1]
    for part, shape, _ in still.parts:
        assert volume(away.shape(part)) == pytest.approx(volume(shape), rel=1e-9)
    points, u, _ = away.truth.stations(40)
    np.testing.assert_allclose(away.truth.distance(points), 0, atol=1e-9)
    np.testing.assert_allclose(u @ away.truth.beam, 0, atol=1e-12)
    p = points[3] - 0.2 * -away.truth.beam  # just below the rib top: inside the base
    assert length_inside(away.shape("sensor housing"), p, p + 0.1 * u[3]) == pytest.approx(0.1, abs=1e-9)


@pytest.mark.parametrize("kind", DEFECTS)
@pytest.mark.parametrize("track", telling([TRACKS[0], THIRTY], [THIRTY]), ids=lambda t: t.name)
def test_a_seeded_defect_is_where_it_says_and_nowhere_else(kind, track):
    spec = Spec(track=track)
    model, flaw = spoil(kind, spec, length=0.8)
    sound = build(spec)
    changed = [name for name, shape, _ in sound.parts if abs(volume(model.shape(name)) - volume(shape)) > 1e-6]
    if kind == "shade":
        assert changed == []
        assert len(model.parts) == 3
    else:
        assert len(changed) == 1
    np.testing.assert_allclose(model.truth.distance(np.array([flaw.at])), 0, atol=1e-9)
    base, cover = model.shape("sensor housing"), model.shape("window lid")
    for ds, inside in ((0, True), (0.39, True), (0.41, False), (-0.41, False)):
        at = at_station(spec, flaw.s + ds)
        measured = {
            "thin-rib": lambda at=at: length_inside(base, at(-1.5, -1e-7), at(1.5, -1e-7)),
            "wide-rib": lambda at=at: length_inside(base, at(-1.5, -1e-7), at(1.5, -1e-7)),
            "low-rib": lambda at=at: 3 - length_inside(base, at(0, -3), at(0, 0)),
            "short-land": lambda at=at: length_inside(cover, at(0.6, 2 - 1e-7), at(9, 2 - 1e-7)),
            "thick-cover": lambda at=at: length_inside(cover, at(0, -1), at(0, 9)),
            "thin-cover": lambda at=at: length_inside(cover, at(0, -1), at(0, 9)),
            "gap": lambda at=at: 2 - length_inside(cover, at(0, 0), at(0, 9)),
        }
        if kind in measured:
            ordinary = {"short-land": 2.6, "thick-cover": 2, "thin-cover": 2, "low-rib": 0, "gap": 0}
            sound_value = ordinary.get(kind, 1.2)
            assert measured[kind]() == pytest.approx(flaw.value if inside else sound_value, abs=1e-5)
