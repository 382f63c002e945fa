"""The weld path and what the scanner is told, against optics and geometry that know nothing of this code."""

import io
import math

import numpy as np
import pandas
import pytest
import shapely
from scipy.special import ellipe

from seamcheck.joint.frame import Frame
from seamcheck.measure.material.optics import refract
from seamcheck.preparation.cycle import Times
from seamcheck.preparation.files import path_csv, quaternion
from seamcheck.preparation.path import Drive, energy, speeds, weld_path
from seamcheck.preparation.scanner import Field, entry_radius, field_coordinates, leaves, plate_transmission
from seamcheck.preparation.tools import bending, unsupported

BEAM = np.array([0.0, 0.0, -1.0])
FRAME = Frame(np.zeros(3), np.eye(3))


def contour(points, radius, need=None, transmission=None):
    n = len(points)
    lengths = np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1)
    stations = {
        "s": np.append(0.0, np.cumsum(lengths[:-1])).tolist(), "x": points[:, 0].tolist(), "y": points[:, 1].tolist(),
        "z": [0.0] * n, "turn_radius": radius, "melt_area": [0.5] * n,
    }  # fmt: skip
    if need is not None:
        stations |= {"energy_need": list(need), "transmission": list(transmission)}
    return {"id": "c1", "closed": True, "length_mm": float(lengths.sum()), "stations": stations}


def circle(radius=30.0, n=400):
    a = np.linspace(0, 2 * np.pi, n, endpoint=False)
    return np.column_stack([radius * np.cos(a), radius * np.sin(a)]), [radius] * n


def ellipse(a=40.0, b=25.0, n=500):
    t = np.linspace(0, 2 * np.pi, n, endpoint=False)
    radius = (a**2 * np.sin(t) ** 2 + b**2 * np.cos(t) ** 2) ** 1.5 / (a * b)  # curvature of the ellipse, closed form
    return np.column_stack([a * np.cos(t), b * np.sin(t)]), radius.tolist()


def ell():
    outline = shapely.Polygon([(0, 0), (70, 0), (70, 24), (24, 24), (24, 50), (0, 50)])
    ring = outline.buffer(-5).buffer(10, quad_segs=64).buffer(-5, quad_segs=64).exterior
    s = np.linspace(0, ring.length, 450, endpoint=False)
    points = shapely.get_coordinates(shapely.line_interpolate_point(ring, s))
    turn = np.linalg.norm(np.roll(points, -1, axis=0) + np.roll(points, 1, axis=0) - 2 * points, axis=1)
    return points, [None if bend < 1e-3 else 5.0 for bend in turn]


SHAPES = {"round": circle, "curved": ellipse, "L": ell}


def read(path):
    text = path_csv(path, np.zeros((len(path.s), 2)), ["model x; mm"])
    assert text.startswith("# model x; mm\n")
    assert "IEC 60825-1" in text
    return pandas.read_csv(io.StringIO(text), comment="#")


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("acceleration", [None, 2.0e4])
def test_the_table_brings_every_millimetre_the_energy_that_it_needs(shape, acceleration):
    points, radius = SHAPES[shape]()
    n = len(points)
    need = 0.4 + 0.1 * np.sin(np.linspace(0, 6 * np.pi, n))
    transmission = 50.0 + 20.0 * np.cos(np.linspace(0, 2 * np.pi, n))
    drawn = contour(points, radius, need, transmission)
    path = weld_path(drawn, BEAM, Drive(800.0, acceleration, overlap=6.0))
    table = read(path)
    watts = table["power_share"] * path.greatest_power * table["ramp_share"]
    brought = energy(table["s_mm"].to_numpy(), table["speed_mm_s"].to_numpy(), watts.to_numpy())
    # What is asked for: need over transmission, integrated along the closed path by the trapezoid rule.
    ds = np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1)
    asked = need / (transmission / 100.0)
    wanted = float(np.sum((asked + np.roll(asked, -1)) / 2.0 * ds))
    assert brought == pytest.approx(wanted, rel=0.01)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("plate", [None, (5.0, 1.49)])
def test_light_sent_as_told_meets_the_middle_line_through_the_cover(shape, plate):
    # Traced with Snell's law in vector form, ray by ray: d2 = d1 / n + (cos θ1 / n - cos θ2) N.
    points, _ = SHAPES[shape]()
    points = np.column_stack([points, np.zeros(len(points))])
    axis, distance, index = np.array([12.0, -7.0]), 180.0, 1.58
    thickness = np.full(len(points), 2.0)
    told = field_coordinates(Field(FRAME, distance, axis, index, plate), points, thickness)
    pivot = np.array([*axis, 2.0 + distance])
    rays = np.column_stack([told, np.zeros(len(told))]) - pivot
    rays /= np.linalg.norm(rays, axis=1, keepdims=True)
    at, up = np.broadcast_to(pivot, rays.shape), np.array([0.0, 0.0, 1.0])
    layers = [(2.0, index)] if plate is None else [plate, (2.0, index)]
    level, before = 2.0 + (0.0 if plate is None else plate[0]), 1.0
    at = at + rays * ((level - at[:, 2]) / rays[:, 2])[:, None]
    for high, n in layers:
        rays = refract(rays, np.broadcast_to(up, rays.shape), n / before)
        level, before = level - high, n
        at = at + rays * ((level - at[:, 2]) / rays[:, 2])[:, None]
    assert np.abs(at - points).max() < 1e-6


def test_a_ray_enters_the_cover_where_the_worked_example_says():
    # H = 300, r = 100, t = 2, n = 1.58: x = 99.593005 mm, the root of x + t tan θ2 = r, solved by hand.
    (x,) = entry_radius(np.array([300.0]), np.array([100.0]), [(np.array([2.0]), 1.58)])
    assert x == pytest.approx(99.593005, abs=1e-5)
    assert leaves(np.array([x]), np.array([300.0]), [(np.array([2.0]), 1.58)]) == pytest.approx(100.0)


def test_a_clear_plate_passes_what_both_surfaces_leave():
    assert plate_transmission(1.49) == pytest.approx(0.92543710, abs=1e-8)  # 2 n / (n² + 1) = slab formula without loss


def test_a_circle_is_driven_at_the_speed_that_its_acceleration_allows():
    # Circular motion: a = v² / R.
    points, radius = circle(30.0)
    path = weld_path(contour(points, radius), BEAM, Drive(5000.0, 1.2e4))
    np.testing.assert_allclose(path.speed, math.sqrt(1.2e4 * 30.0), rtol=1e-9)


def test_along_a_straight_run_speed_rises_as_under_constant_acceleration():
    # v² = v0² + 2 a s (uniform acceleration).
    s = np.linspace(0, 10, 101)
    bend = np.zeros(101)
    bend[0] = 1.0 / 2.0
    found = speeds(s, bend, 1e4, 1000.0)
    np.testing.assert_allclose(found**2, 1000.0 * 2.0 + 2 * 1000.0 * s, rtol=1e-9)


def test_a_path_starts_in_the_middle_of_the_longest_straight_run_and_keeps_its_sense():
    points, radius = ell()
    for clockwise, sign in ((False, 1.0), (True, -1.0)):
        path = weld_path(contour(points, radius), BEAM, Drive(500.0, clockwise=clockwise))
        assert path.points[0][:2] == pytest.approx([35.0, 0.0], abs=3.0)
        loop = path.points[: len(points), :2]
        assert math.copysign(1.0, shapely.Polygon(loop).exterior.is_ccw - 0.5) == sign
        np.testing.assert_allclose(path.points[len(points) :], path.points[: len(path.s) - len(points)])


def test_the_length_of_the_table_is_that_of_the_ellipse_and_the_overlap():
    # Perimeter 4 a E(1 - b²/a²) (complete elliptic integral, scipy).
    points, radius = ellipse()
    path = weld_path(contour(points, radius), BEAM, Drive(500.0, overlap=6.0))
    assert path.s[len(points)] == pytest.approx(4 * 40 * ellipe(1 - (25 / 40) ** 2), rel=1e-4)
    assert 6.0 <= path.s[-1] - path.s[len(points)] < 7.0


def test_a_tool_looks_with_the_light_and_along_the_path():
    from scipy.spatial.transform import Rotation

    w, x, y, z = quaternion(np.array([0.6, 0.8, 0.0]), np.array([0.0, 0.0, 1.0]))
    turned = Rotation.from_quat([x, y, z, w])
    np.testing.assert_allclose(turned.apply([0, 0, 1]), [0, 0, -1], atol=1e-12)
    np.testing.assert_allclose(turned.apply([1, 0, 0]), [0.6, 0.8, 0], atol=1e-12)


def test_bending_is_that_of_a_clamped_strip():
    # End-loaded cantilever F a³ / (3 E I) with I = t³ / 12 for 1 mm of width (any handbook), stiffer by 1 / (1 - ν²).
    beam = 2.4 * 3.0**3 / (3 * 2300 * 2.0**3 / 12)
    assert bending(2.4, 3.0, 2.0, 2300.0, 0.38) == pytest.approx(beam * (1 - 0.38**2))


def test_stretches_without_support_are_named():
    points = np.column_stack([np.linspace(0, 10, 11), np.zeros(11)])
    assert unsupported(points, np.arange(11.0), shapely.box(-1, -1, 3.5, 1), 10.0) == [(4.0, 10.0)]


def test_a_cycle_of_nine_seconds_makes_four_hundred_parts_an_hour():
    times = Times(welding=2.0, cooling=2.0, handling=5.0, hours=1000.0, used=0.5, parts=500_000)
    assert times.cycle == 9.0
    assert times.parts_a_year == pytest.approx(200_000)
    assert times.stations == 3
