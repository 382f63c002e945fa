"""Light: against textbook values, an optics library, root finding and ray geometry done another way."""

import numpy as np
import pytest
import tmm  # transfer-matrix optics
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from seamcheck.measure.material import optics

INDEX = st.floats(1.3, 1.8)
ANGLE = st.floats(0.0, 1.4)


@pytest.mark.parametrize(("n", "expected"), [(1.58, 0.050538), (1.50, 0.040000), (1.4843, 0.038003)])
def test_normal_reflectance(n, expected):
    # Fresnel at normal incidence, textbook values (E. Hecht, Optics, section 4.6).
    assert optics.normal_reflectance(n) == pytest.approx(expected, abs=5e-7)


@pytest.mark.parametrize(("angle", "expected"), [(20.0, 12.501692), (30.0, 18.448715)])
def test_refraction_angle(angle, expected):
    # Snell's law, n = 1.58, by hand.
    assert np.degrees(optics.refraction_angle(np.radians(angle), 1.58)) == pytest.approx(expected, abs=1e-6)


@given(st.floats(0.0, 1.5), INDEX, st.floats(0.0, 6.28), st.floats(0.0, 3.1), st.floats(0.0, 6.28))
def test_refracted_rays_keep_their_part_along_the_surface(angle, n, turn, polar, azimuth):
    # Snell in another form: the wave vector's part along the surface is the same on both sides (continuity of
    # the field), and the refracted direction has length 1.
    normal = np.array([np.sin(polar) * np.cos(azimuth), np.sin(polar) * np.sin(azimuth), np.cos(polar)])
    helper = np.eye(3)[np.argmin(np.abs(normal))]
    e1 = np.cross(normal, helper)
    e1 /= np.linalg.norm(e1)
    along = np.cos(turn) * e1 + np.sin(turn) * np.cross(normal, e1)
    ray = np.sin(angle) * along - np.cos(angle) * normal
    inside = optics.refract(ray, normal, n)
    assert np.linalg.norm(inside) == pytest.approx(1.0, abs=1e-12)
    np.testing.assert_allclose(n * (inside + (-inside @ normal) * normal), np.sin(angle) * along, atol=1e-9)
    assert inside @ normal < 0.0


def test_tilted_top_turns_a_vertical_ray():
    # Top tilted by 10°, n = 1.58: deviation 10° - asin(sin 10° / 1.58) = 3.690224°, 0.128992 mm after 2 mm.
    tilt = np.radians(10.0)
    inside = optics.refract([[0, 0, -1.0]], [[np.sin(tilt), 0, np.cos(tilt)]], 1.58)[0]
    deviation = np.degrees(np.arccos(-inside[2]))
    assert deviation == pytest.approx(3.690224, abs=1e-6)
    assert 2.0 * np.tan(np.radians(deviation)) == pytest.approx(0.128992, abs=1e-6)


def test_a_ray_from_behind_is_not_refracted():
    assert np.isnan(optics.refract([0, 0, 1.0], [0, 0, 1.0], 1.5)).all()


@pytest.mark.parametrize(("angle", "expected"), [(10, 0.131506), (20, 0.284489), (30, 0.487500)])
def test_cover_shift(angle, expected):
    # t (tan θ1 - tan θ2), t = 2 mm, n = 1.58, by hand.
    assert optics.cover_shift(np.radians(angle), 2.0, 1.58) == pytest.approx(expected, abs=1e-6)


def test_scanner_examples():
    # By hand and by bisection: H, r, t, n -> entry, θ1, θ2, way in the plastic.
    entry, one, two, way = optics.scanner_entry(300.0, 100.0, 2.0, 1.58)
    np.testing.assert_allclose(
        [entry, np.degrees(one), np.degrees(two), way], [99.593005, 18.364963, 11.502494, 2.040991], atol=1e-6
    )
    entry, one, two, _ = optics.scanner_entry(250.0, 120.0, 3.0, 1.53)
    np.testing.assert_allclose([entry, np.degrees(one), np.degrees(two)], [119.121120, 25.477075, 16.328479], atol=1e-6)
    assert 2.0 * np.tan(np.radians(11.502494)) + 99.593005 == pytest.approx(100.0, abs=1e-6)


@given(st.floats(20.0, 1000.0), st.floats(0.0, 600.0), st.floats(0.0, 10.0), st.floats(1.3, 1.8))
def test_scanner_entry_agrees_with_a_root_finder(height, radius, thickness, n):
    def miss(x):
        return x + thickness * np.tan(np.arcsin(np.sin(np.arctan(x / height)) / n)) - radius

    expected = 0.0 if radius == 0.0 else brentq(miss, 0.0, radius, xtol=1e-13) if miss(radius) > 0 else radius
    assert optics.scanner_entry(height, radius, thickness, n)[0] == pytest.approx(expected, abs=1e-9)


@given(
    st.lists(
        st.tuples(*[st.floats(-80.0, 80.0)] * 2, st.floats(0.3, 5.0), st.floats(-0.5, 0.5), st.floats(0.0, 6.28)),
        min_size=1,
        max_size=6,
    )
)
def test_entry_points_send_the_refracted_ray_through_the_target(rows):
    # Checked by forward tracing: from the pivot to the entry, refracted there, the ray meets its target.
    pivot = np.array([5.0, -3.0, 300.0])
    targets = np.array([[x, y, 0.0] for x, y, *_ in rows])
    tilt, turn = np.array([r[3] for r in rows]), np.array([r[4] for r in rows])
    normals = np.column_stack([np.sin(tilt) * np.cos(turn), np.sin(tilt) * np.sin(turn), np.cos(tilt)])
    tops = targets + np.array([r[2] for r in rows])[:, None] * normals
    points, incidence, way, rays = optics.entry_points(pivot, targets, tops, normals, 1.55)
    np.testing.assert_allclose(np.sum((points - tops) * normals, axis=1), 0.0, atol=1e-9)
    inside = optics.refract(rays, normals, 1.55)
    np.testing.assert_allclose(points + way[:, None] * inside, targets, atol=1e-7)
    np.testing.assert_allclose(np.cos(incidence), -np.sum(rays * normals, axis=1), atol=1e-12)


def test_entry_points_are_unknown_when_the_pivot_is_below_the_top():
    points, *_ = optics.entry_points([0, 0, -1.0], [[0, 0, 0.0]], [[0, 0, 2.0]], [[0, 0, 1.0]], 1.5)
    assert np.isnan(points).all()


def test_the_most_that_a_clear_plate_passes():
    # 2n / (n² + 1), by hand for 1.49; and all inner reflections of an incoherent plate, by the optics library.
    assert optics.surface_limit(1.49) == pytest.approx(0.92543710, abs=1e-8)
    plate = tmm.inc_tmm("s", [1, 1.58, 1], [np.inf, 2e6, np.inf], ["i", "i", "i"], 0.0, 980.0)["T"]
    assert optics.surface_limit(1.58) == pytest.approx(plate, rel=1e-9)
    # One surface alone, at normal incidence.
    surface = tmm.interface_R("s", 1.0, 1.58, 0.0, 0.0)
    assert optics.normal_reflectance(1.58) == pytest.approx(surface, rel=1e-12)


def test_a_tilted_surface_stretches_the_spot():
    # Diameter / cos θ (geometry).
    assert optics.spot_stretch(np.radians(60.0)) == pytest.approx(2.0)
