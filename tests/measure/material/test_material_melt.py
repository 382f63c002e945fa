"""Melt balance: closed forms, numerical integration of the drawn outline, bodies of revolution."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from material_surveys import ring, run
from scipy.integrate import quad
from scipy.optimize import brentq
from shapely.geometry import Polygon, box

from seamcheck.measure.material import melt
from seamcheck.measure.material.track import track_of


def rib(width, draft_inner, draft_outer, radius):
    return melt.RibSection(
        *(
            np.array([float(x)])
            for x in (width, np.tan(np.radians(draft_inner)), np.tan(np.radians(draft_outer)), radius)
        )
    )


def outline(width, draft_inner, draft_outer, radius, depth):
    """Area of the rib's outline above ``depth``, fillets drawn as circles rolled inside (shapely)."""
    tall = 3.0
    a, b = np.tan(np.radians(draft_inner)) * tall, np.tan(np.radians(draft_outer)) * tall
    sharp = Polygon([(-width / 2, 0), (width / 2, 0), (width / 2 + b, -tall), (-width / 2 - a, -tall)])
    round_ = sharp if radius == 0 else sharp.buffer(-radius).buffer(radius, quad_segs=512)
    return round_.intersection(box(-9, -depth, 9, 9)).area


@pytest.mark.parametrize(
    ("draft", "radius", "width", "expected"),
    [(1.0, 0.0, 1.5, 0.602793), (2.0, 0.0, 1.5, 0.605587), (1.0, 0.2, 1.5, 0.586311)],
)
def test_displaced_area(draft, radius, width, expected):
    # w c + c² tan α less two fillets, w = 1.5, c = 0.4 (by hand).
    assert rib(width, draft, draft, radius).displaced(0.4)[0] == pytest.approx(expected, abs=1e-6)


@given(st.floats(0.8, 2.5), st.floats(0.0, 6.0), st.floats(0.0, 6.0), st.floats(0.02, 0.35), st.floats(0.01, 0.9))
def test_displaced_area_of_any_fillet_at_any_depth(width, inner, outer, radius, depth):
    expected = outline(width, inner, outer, radius, depth)
    assert rib(width, inner, outer, radius).displaced(depth)[0] == pytest.approx(expected, abs=2e-5)


def test_displaced_area_rises_with_depth_and_is_the_integral_of_the_width():
    section = rib(1.4, 1.0, 3.0, 0.15)
    depths = np.linspace(0, 1, 101)
    areas = np.array([section.displaced(d)[0] for d in depths])
    assert (np.diff(areas) > 0).all()
    assert section.displaced(0.0)[0] == 0.0
    assert section.displaced(-0.1)[0] == 0.0

    def chord(v):
        width = 1.4 + v * (np.tan(np.radians(1)) + np.tan(np.radians(3)))
        for draft in (1.0, 3.0):
            a = np.radians(draft)
            if v < 0.15 * (1 - np.sin(a)):
                length = 0.15 * np.tan(np.pi / 4 - a / 2)
                width -= v * np.tan(a) + length - np.sqrt(0.15**2 - (0.15 - v) ** 2)
        return width

    assert section.displaced(0.5)[0] == pytest.approx(quad(chord, 0, 0.5, points=[0.1421, 0.1474])[0], abs=1e-7)


@given(st.floats(0.8, 2.0), st.floats(0.0, 3.0), st.floats(0.0, 3.0), st.floats(0.03, 0.3), st.floats(0.8, 2.0))
def test_the_section_is_found_again_from_surveyed_widths(width, inner, outer, radius, height):
    tan = [np.tan(np.radians(a)) for a in (inner, outer)]
    top = width - radius * sum(np.tan(np.pi / 4 - np.arctan(t) / 2) for t in tan)
    found = melt.rib_section(*(np.array([x]) for x in (top, width + height / 2 * sum(tan), height, inner, outer)))
    assert found.radius[0] == pytest.approx(radius, abs=1e-9)
    assert found.width[0] == pytest.approx(width, abs=1e-9)


def test_trap_after_collapse():
    # Floor 1.2 mm below, 1.0 mm wide, collapse 0.4: 0.80 mm²; melt 0.6 mm², expansion 1.204: fill 0.4515.
    trap = melt.trap_section(np.array([0.8]), np.array([0.4]), np.array([1.2]), np.array([0.0]))
    assert trap.wall[0] == pytest.approx(1.0)
    assert trap.area(0.4)[0] == pytest.approx(0.80)
    assert melt.fill(np.array([0.6]), trap.area(0.4), 1.204, 0.5)[0] == pytest.approx(0.4515, abs=1e-6)


@given(st.floats(0.3, 3.0), st.floats(0.5, 2.5), st.floats(0.0, 5.0), st.floats(0.0, 0.4), st.floats(0.0, 3.0))
def test_trap_room_at_another_collapse_is_that_of_the_polygon(wall, height, draft, seen_at, asked_at):
    tan = np.tan(np.radians(draft))

    def drawn(depth):
        depth = min(depth, height)
        return Polygon([(tan * depth, -depth), (wall, -depth), (wall, -height), (tan * height, -height)]).area

    if wall <= tan * height:
        return
    trap = melt.trap_section(np.array([drawn(seen_at)]), np.array([seen_at]), np.array([height]), np.array([draft]))
    assert trap.area(asked_at)[0] == pytest.approx(drawn(asked_at), abs=1e-9)


def test_a_trap_without_room_is_full():
    np.testing.assert_array_equal(melt.fill(np.array([0.5, 0.0]), np.array([0.0, 0.0]), 1.2), [melt.FULL, 0.0])
    assert np.isnan(melt.fill(np.array([np.nan]), np.array([0.5]), 1.2)).all()


def test_volume_of_a_ring_follows_pappus_and_guldinus():
    # Rib 1.5 x 0.4 on radius 40: π (40.75² - 39.25²) 0.4 = 150.796447 mm³ (P. Guldin 1641).
    track = track_of(ring())
    assert track.volume(np.full(720, 0.6), np.zeros(720)) == pytest.approx(150.796447, abs=1e-6)
    inner = track.volume(np.full(720, 0.3), np.full(720, -0.375))
    assert inner == pytest.approx(np.pi * (40**2 - 39.25**2) * 0.4, rel=1e-9)


def test_trap_volumes_of_a_corner():
    # Quarter bend of radius 5, trap 0.8 mm² at 1.25 mm outside and inside: 0.8 (π/2)(5 ± 1.25).
    a = np.linspace(0, np.pi / 2, 400)
    u = np.column_stack([np.cos(a), np.sin(a), np.zeros(400)])
    path = ring()
    quarter = type(path)(
        "c1",
        False,
        2.5 * np.pi,
        ("open", "open"),
        5 * a,
        5 * u,
        u,
        {"corner_radius": np.full(400, 5.0)},
        {},
        path.rib_face[:400],
        path.cover_face[:400],
    )
    track = track_of(quarter)
    # The turning of an open path lacks half a step at both ends: 1/399 of the bend.
    assert track.volume(np.full(400, 0.8), np.full(400, 1.25)) == pytest.approx(7.853982, abs=0.005)
    assert track.volume(np.full(400, 0.8), np.full(400, -1.25)) == pytest.approx(4.712389, abs=0.005)
    assert melt.bend_factor(track.curvature()[1:-1], np.full(398, 1.25)) == pytest.approx(1.25, abs=1e-4)


def test_lengths_and_turning_add_up():
    # Total turning of a simple closed loop is 2π (H. Hopf 1935); negative: centre on the inner side.
    track = track_of(ring(n=97))
    assert track.length.sum() == pytest.approx(2 * np.pi * 40)
    assert track.turning.sum() == pytest.approx(-2 * np.pi, abs=1e-9)
    straight = track_of(run(n=33))
    assert straight.length.sum() == pytest.approx(400.0)
    np.testing.assert_allclose(straight.turning, 0.0, atol=1e-12)


def test_volume_is_scaled_over_what_was_not_measured():
    track = track_of(run())
    area = np.full(801, 0.6)
    area[100:201] = np.nan
    assert track.volume(area, np.zeros(801)) == pytest.approx(240.0)
    assert np.isnan(track.volume(np.full(801, np.nan), np.zeros(801)))


@given(st.floats(0.2, 2.0), st.floats(0.6, 2.0), st.floats(1.0, 1.4))
def test_what_the_traps_hold_agrees_with_a_root_finder(wall, height, expansion):
    # Straight flanks, no draft: k w c = 2 wall (h - c) has the root 2 wall h / (k w + 2 wall).
    rows = np.linspace(0.0, height, 61)
    surplus = expansion * 1.5 * rows - 2 * wall * (height - rows)
    held = melt.largest_holding(rows, surplus[:, None])[0]
    assert held == pytest.approx(2 * wall * height / (expansion * 1.5 + 2 * wall), abs=1e-9)
    root = brentq(lambda c: expansion * 1.5 * c - 2 * wall * (height - c), 0, height)
    assert held == pytest.approx(root, abs=1e-9)


def test_traps_that_always_or_never_hold():
    rows = np.array([0.0, 1.0])
    held = melt.largest_holding(rows, np.array([[-1.0, 0.5, np.nan], [-0.5, 1.0, 1.0]]))
    assert held[0] == np.inf
    assert held[1] == 0.0
    assert np.isnan(held[2])


def test_curvature_does_not_follow_the_noise_of_stations_that_lie_close_together():
    # A straight run, a quarter of radius 5 and a straight run, with stations 0.04 mm apart at both joints and the
    # mid-line off by up to 0.0005 mm: the angle of the chords gives up to three times the curvature there.
    near = np.linspace(-0.12, 0.12, 7)
    arc = 2.5 * np.pi
    s = np.unique(np.concatenate([np.linspace(0, 20 + arc + 20, 200), 20 + near, 20 + arc + near]))
    angle = np.clip((s - 20) / 5, 0, np.pi / 2)
    x = np.where(s < 20, s, 20 + 5 * np.sin(angle)) + 0.0
    y = np.where(s < 20, 0.0, 5 * (1 - np.cos(angle))) + np.maximum(s - 20 - arc, 0.0)
    tangent = np.column_stack([np.cos(angle), np.sin(angle), np.zeros(len(s))])
    u = np.column_stack([tangent[:, 1], -tangent[:, 0], np.zeros(len(s))])  # right of the way: the centre lies inward
    noise = np.random.default_rng(3).uniform(-0.0005, 0.0005, len(s))
    points = np.column_stack([x, y, np.zeros(len(s))]) + noise[:, None] * u
    radius = np.where((s >= 20) & (s <= 20 + arc), 5.0, np.nan)
    path = ring(n=len(s))
    bent = type(path)(
        "c1", False, float(s[-1]), ("open", "open"), s, points, u, {"corner_radius": radius}, {},
        path.rib_face, path.cover_face,
    )  # fmt: skip
    track = track_of(bent)
    chords = track.turning / track.length
    assert np.abs(chords).max() > 0.24  # what the chords say
    np.testing.assert_allclose(track.curvature(), np.where(np.isfinite(radius), -0.2, 0.0), atol=1e-12)
