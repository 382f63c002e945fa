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
from seamcheck.preparation.corridor import unsupported
from seamcheck.preparation.cycle import Times
from seamcheck.preparation.files import Program, path_csv, quaternion
from seamcheck.preparation.path import AREA, HEAT, MELT, Drive, energy, fastest, in_shares, needs_of, weld_path
from seamcheck.preparation.pressing import bending
from seamcheck.preparation.scanner import Field, field_coordinates, plate_transmission
from seamcheck.preparation.strokes import strokes_of

BEAM = np.array([0.0, 0.0, -1.0])
FRAME = Frame(np.zeros(3), np.eye(3))


def level_tops(height):
    """A top square to the axis, at a height (n,) mm in the frame over each point."""

    def tops(places):
        on = np.column_stack([places[:, :2], height])
        return on, np.broadcast_to([0.0, 0.0, 1.0], on.shape)

    return tops


def contour(points, radius=None, closed=True, ends=(), name="c1", **columns):
    n = len(points)
    lengths = np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1)
    s = np.append(0.0, np.cumsum(lengths[:-1]))
    stations = {
        "s": s.tolist(), "x": points[:, 0].tolist(), "y": points[:, 1].tolist(), "z": [0.0] * n,
        "corner_radius": radius or [None] * n, "melt_area": [0.5] * n, "cover_thickness": [2.0] * n, "gap": [0.0] * n,
        "rib_width": [1.2] * n,
        **{key: list(values) for key, values in columns.items()},
    }  # fmt: skip
    length = float(lengths.sum()) if closed else float(s[-1])
    return {"id": name, "closed": closed, "length_mm": length, "ends": list(ends), "stations": stations}


def paths_of(contours, drive):
    strokes = strokes_of(contours)
    return [
        weld_path(stroke, need, contours, BEAM, drive)
        for stroke, need in zip(strokes, needs_of(strokes, contours), strict=True)
    ]


def path_of(drawn, drive):
    (path,) = paths_of([drawn], drive)
    return path


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


def read(paths, contours):
    program = Program(
        in_shares(paths), [np.zeros((len(path.s), 2)) for path in paths], [c["id"] for c in contours], 1, FRAME,
        ["model x; mm"],
    )  # fmt: skip
    text = path_csv(program)
    assert text.startswith("# model x; mm\n")
    assert "IEC 60825-1" in text
    return pandas.read_csv(io.StringIO(text), comment="#")


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("acceleration", [None, 2.0e4])
@pytest.mark.parametrize("column", ["energy_in_step", "energy_need"])
def test_the_table_brings_every_millimetre_the_energy_that_it_needs(shape, acceleration, column):
    points, radius = SHAPES[shape]()
    n = len(points)
    need = 0.4 + 0.1 * np.sin(np.linspace(0, 6 * np.pi, n))
    transmission = 50.0 + 20.0 * np.cos(np.linspace(0, 2 * np.pi, n))
    drawn = contour(points, radius, transmission=transmission, **{column: need})
    path = path_of(drawn, Drive(800.0, acceleration, overlap=6.0))
    table = read([path], [drawn])
    watts = table["power_share"] * path.greatest_power * table["ramp_share"]
    brought = energy(table["s_mm"].to_numpy(), table["speed_mm_s"].to_numpy(), watts.to_numpy())
    # What is asked for, integrated along the closed path by the trapezoid rule: the heat model's energy as it is, the
    # energy to melt over the transmission.
    ds = np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1)
    asked = need if column == "energy_in_step" else need / (transmission / 100.0)
    wanted = float(np.sum((asked + np.roll(asked, -1)) / 2.0 * ds))
    assert brought == pytest.approx(wanted, rel=0.01)


def test_the_best_known_need_counts_and_gaps_in_it_are_filled():
    points, radius = circle(n=100)
    area = np.full(100, 0.5)
    known = np.where(np.arange(100) < 90, 2.0, np.nan)
    for columns, of, value in (
        ({"energy_in_step": known, "melt_area": area}, HEAT, 2.0),
        ({"energy_in_step": np.full(100, np.nan), "energy_need": known, "transmission": np.full(100, 50.0)}, MELT, 4.0),
        ({"energy_need": known, "melt_area": area}, AREA, 1.0),
    ):
        contours = [contour(points, radius, **columns)]
        (need,) = needs_of(strokes_of(contours), contours)
        assert need.of == of
        np.testing.assert_allclose(need.energy, value)
        assert need.between == pytest.approx(0.0 if of == AREA else 0.1 * contours[0]["length_mm"], abs=1e-6)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("plate", [None, (5.0, 1.49)])
def test_light_sent_as_told_meets_the_middle_line_through_the_cover(shape, plate):
    # Traced with Snell's law in vector form, layer by layer: d2 = d1 / n + (cos θ1 / n - cos θ2) N.
    points, _ = SHAPES[shape]()
    points = np.column_stack([points, np.zeros(len(points))])
    axis, distance, index = np.array([12.0, -7.0]), 180.0, 1.58
    thickness = np.full(len(points), 2.0)
    told = field_coordinates(Field(FRAME, 2.0 + distance, axis, index, plate), points, thickness, level_tops(thickness))
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
    assert np.abs(at - points).max() < 1e-4


def test_a_ray_enters_the_cover_where_the_worked_example_says():
    # H = 300, r = 100, t = 2, n = 1.58: it enters at x = 99.593005 mm, the root of x + t tan θ2 = r, solved by hand;
    # the straight ray through there meets the rib's plane at x (H + t) / H.
    field = Field(FRAME, 302.0, np.zeros(2), 1.58)
    told = field_coordinates(field, np.array([[100.0, 0.0, 0.0]]), np.array([2.0]), level_tops(np.array([2.0])))
    assert told[0] == pytest.approx([99.593005 * 302.0 / 300.0, 0.0], abs=1e-4)


def test_parallel_light_is_turned_by_a_tilted_top():
    # Snell at a plane tilted by 10°: the ray in the plastic leans by 10° - asin(sin 10° / n) from the vertical; over
    # t = 2 mm below its entry that is 2 tan of it.
    tilt, index = np.radians(10.0), 1.5
    normal = np.array([np.sin(tilt), 0.0, np.cos(tilt)])

    def tops(places):
        on = places.copy()
        on[:, 2] = 2.0 - np.tan(tilt) * places[:, 0]
        return on, np.broadcast_to(normal, places.shape)

    field = Field(FRAME, None, np.zeros(2), index)
    (told,) = field_coordinates(field, np.zeros((1, 3)), np.array([2.0]), tops)
    lean = tilt - np.arcsin(np.sin(tilt) / index)
    aside = -told[0] * np.tan(tilt) + 2.0
    assert told[0] == pytest.approx(aside * np.tan(lean), abs=2e-4)


def test_a_clear_plate_passes_what_both_surfaces_leave():
    assert plate_transmission(1.49) == pytest.approx(0.92543710, abs=1e-8)  # 2 n / (n² + 1) = slab formula without loss


def test_a_circle_is_driven_at_the_speed_that_its_acceleration_allows():
    # Circular motion: a = v² / R.
    points, radius = circle(30.0)
    path = path_of(contour(points, radius), Drive(5000.0, 1.2e4))
    np.testing.assert_allclose(path.speed, math.sqrt(1.2e4 * 30.0), rtol=1e-9)


def test_along_a_straight_run_speed_rises_as_under_constant_acceleration():
    # v² = v0² + 2 a s (uniform acceleration).
    s = np.linspace(0, 10, 101)
    bend = np.zeros(101)
    bend[0] = 1.0 / 2.0
    found = fastest(s, bend, 1e4, 1000.0)
    np.testing.assert_allclose(found**2, 1000.0 * 2.0 + 2 * 1000.0 * s, rtol=1e-9)


@pytest.mark.parametrize(("clockwise", "start"), [(False, 32.5), (True, 37.5)])
def test_start_and_overlap_lie_around_the_middle_of_the_longest_straight_run(clockwise, start):
    # The run from x = 5 to 65 at y = 0: its middle at 35, 30 mm from both corners, an overlap of 5 mm around it.
    points, radius = ell()
    path = path_of(contour(points, radius), Drive(500.0, overlap=5.0, clockwise=clockwise))
    assert path.points[0][:2] == pytest.approx([start, 0.0], abs=0.3)
    assert path.to_corner == pytest.approx(30.0 - 2.5, abs=0.3)
    lap = path.s < path.length - 1e-6
    assert shapely.Polygon(path.points[lap, :2]).exterior.is_ccw != clockwise
    np.testing.assert_allclose(path.points[path.s >= path.length - 1e-9][0], path.points[0], atol=1e-9)
    assert path.points[-1][:2] == pytest.approx([70.0 - start, 0.0], abs=0.3)


def test_speeds_agree_where_a_lap_ends_and_begins():
    points, radius = ell()
    path = path_of(contour(points, radius), Drive(5000.0, 2.0e4))
    over = path.s >= path.length - 1e-9
    np.testing.assert_allclose(path.speed[over], np.interp(path.s[over] - path.length, path.s, path.speed), rtol=1e-6)


def test_the_length_of_the_table_is_that_of_the_ellipse_and_the_overlap():
    # Perimeter 4 a E(1 - b²/a²) (complete elliptic integral, scipy).
    points, radius = ellipse()
    path = path_of(contour(points, radius), Drive(500.0, overlap=6.0))
    assert path.length == pytest.approx(4 * 40 * ellipe(1 - (25 / 40) ** 2), rel=1e-4)
    assert path.s[-1] - path.length == pytest.approx(6.0)


def straight(a, b, ends, name):
    n = round(math.dist(a, b) / 0.5) + 1
    return contour(np.linspace(a, b, n), closed=False, ends=ends, name=name)


def divided(order=(0, 1, 2)):
    """A frame of 60 x 40 mm and a wall at x = 10, in three paths that meet in two junctions."""
    left = np.array([(10, -20), (-30, -20), (-30, 20), (10, 20)], dtype=float)
    right = np.array([(10, 20), (30, 20), (30, -20), (10, -20)], dtype=float)

    def along(corners):
        line = shapely.LineString(corners)
        s = np.linspace(0, line.length, round(line.length / 0.5) + 1)
        return shapely.get_coordinates(shapely.line_interpolate_point(line, s))

    ends = ["junction:J1", "junction:J2"]
    three = [
        contour(along(left), closed=False, ends=ends, name="c1"),
        contour(along(right), closed=False, ends=ends[::-1], name="c2"),
        straight((10.0, 20.0), (10.0, -20.0), ends[::-1], "c3"),
    ]
    return [three[k] for k in order]


@pytest.mark.parametrize("order", [(0, 1, 2), (2, 1, 0), (1, 2, 0)])
def test_a_dividing_wall_is_a_stroke_of_its_own_after_the_frame(order):
    frame, wall = strokes_of(divided(order))
    assert frame.closed
    assert not wall.closed
    assert set(frame.id.split("+")) == {"c1", "c2"}
    assert frame.length == pytest.approx(2 * (60 + 40))
    # The wall ends where the frame's rib, 1.2 mm wide, begins.
    assert wall.short == pytest.approx((0.6, 0.6))
    np.testing.assert_allclose(sorted(frame.points[np.searchsorted(frame.s, frame.meets), 1]), [-20, 20], atol=1e-9)


def test_start_and_overlap_keep_away_from_junctions():
    # The longest runs are 60 mm at y = ±20, each with a junction at x = 10: 40 mm are left to its left, whose middle is
    # at x = -10.
    path, wall = paths_of(divided(), Drive(500.0, overlap=4.0))
    corners = np.array([(-30, -20), (-30, 20), (30, 20), (30, -20), (10, 20), (10, -20)], dtype=float)
    begins = path.points[0][:2]
    assert np.linalg.norm(corners - begins, axis=1).min() > 17.0
    assert wall.length == pytest.approx(40 - 1.2)
    assert wall.points[[0, -1], 1] == pytest.approx([19.4, -19.4])
    assert (wall.ramp == 1.0).all()


def test_the_strokes_together_bring_what_the_branched_seam_needs():
    # 1 J/mm everywhere: the frame's 200 mm and the wall between the edges of the frame's rib.
    contours = [
        {**c, "stations": {**c["stations"], "energy_in_step": [1.0] * len(c["stations"]["s"])}} for c in divided()
    ]
    paths = paths_of(contours, Drive(500.0, 1.0e5, overlap=4.0))
    table = read(paths, contours)
    greatest, brought = max(path.greatest_power for path in paths), 0.0
    for _, rows in table.groupby("stroke"):
        watts = rows["power_share"] * rows["ramp_share"] * greatest
        brought += energy(rows["s_mm"].to_numpy(), rows["speed_mm_s"].to_numpy(), watts.to_numpy())
    assert brought == pytest.approx(200.0 + 38.8, rel=0.002)


def test_crossing_walls_each_run_through():
    arms = [straight((0.0, 0.0), end, ["junction:J1", "open"], f"c{k}")
            for k, end in enumerate([(20.0, 0.0), (0.0, 15.0), (-20.0, 0.0), (0.0, -15.0)], 1)]  # fmt: skip
    first, second = strokes_of(arms)
    assert {first.id, second.id} == {"c3+c1", "c4+c2"} or {first.id, second.id} == {"c1+c3", "c2+c4"}
    assert (first.length, second.length) == (40.0, 30.0)
    assert first.short == second.short == (0.0, 0.0)


def test_where_three_meet_alike_two_are_one_stroke():
    # Three ribs at 120°: each turns into the other by 60°, so that two are one stroke; the third ends at their edge.
    arms = [
        straight((0.0, 0.0), (r * math.cos(a), r * math.sin(a)), ["junction:J1", "open"], f"c{k}")
        for k, (r, a) in enumerate([(30.0, 0.0), (20.0, 2 * math.pi / 3), (10.0, 4 * math.pi / 3)], 1)
    ]
    strokes = strokes_of(arms)
    assert len(strokes) == 2
    assert sum(sum(stroke.short) for stroke in strokes) == pytest.approx(0.6)


def test_an_open_seam_is_welded_from_end_to_end():
    path = path_of(straight((0.0, 0.0), (30.0, 0.0), ["open", "open"], "c1"), Drive(500.0, overlap=5.0))
    assert (path.s[0], path.s[-1], path.length) == (0.0, 30.0, 30.0)
    assert (path.ramp == 1.0).all()


def test_a_tool_looks_with_the_light_and_along_the_path():
    from scipy.spatial.transform import Rotation

    w, x, y, z = quaternion(np.array([0.6, 0.8, 0.3]), np.array([0.0, 0.0, 1.0]))
    turned = Rotation.from_quat([x, y, z, w])
    np.testing.assert_allclose(turned.apply([0, 0, 1]), [0, 0, -1], atol=1e-12)
    np.testing.assert_allclose(turned.apply([1, 0, 0]), [0.6, 0.8, 0], atol=1e-12)


def test_bending_is_that_of_a_clamped_strip():
    # End-loaded cantilever F a³ / (3 E I), I = t³ / 12 for 1 mm of width (any handbook), as a plate stiffer by
    # 1 / (1 - ν²) with ν = 0.4.
    beam = 2.4 * 3.0**3 / (3 * 2300 * 2.0**3 / 12)
    found = bending(np.array([2.4, np.nan]), np.array([3.0, 3.0]), np.array([2.0, 2.0]), 2300.0)
    assert found[0] == pytest.approx(beam * (1 - 0.4**2))
    assert np.isnan(found[1])


def test_stretches_without_support_are_named():
    points = np.column_stack([np.linspace(0, 10, 11), np.zeros(11)])
    hangs, support = np.zeros(11, dtype=bool), shapely.box(-1, -1, 3.5, 1)
    assert unsupported(points, np.arange(11.0), support, 10.0, hangs) == [(4.0, 10.0)]
    hangs[1:3] = True  # over an opening in the wall
    assert unsupported(points, np.arange(11.0), support, 10.0, hangs) == [(1.0, 2.0), (4.0, 10.0)]


def test_a_cycle_of_nine_seconds_makes_four_hundred_parts_an_hour():
    times = Times(welding=2.0, cooling=2.0, handling=5.0, hours=1000.0, used=0.5, parts=500_000)
    assert times.cycle == 9.0
    assert times.parts_a_year == pytest.approx(200_000)
    assert times.stations == 3
