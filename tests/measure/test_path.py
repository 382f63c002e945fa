"""Scan field, rise and neighbouring stretches against closed form and shapely's own measures."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest
from builder import Spec, build, c_shape, circle, draw, ellipse, rounded_rectangle
from builder.pair import assemble
from builder.variants import divided
from interface_models import interface

from seamcheck.contour import Contour, Path
from seamcheck.joint.frame import Frame
from seamcheck.measure.path import path_values

WITHIN = 0.01  # mm


def values(spec: Spec):
    return interface(build(spec).parts)[1]


def test_the_field_of_a_round_seam_is_its_diameter():
    found = values(Spec(track=circle(25), turn=(30, 40, 10), shift=(5, 6, 7)))
    assert found["field_circle"]["value"] == pytest.approx(50.0, abs=WITHIN)
    assert found["field_circle"]["at"] == pytest.approx([5, 6, 7], abs=WITHIN)
    assert found["field_length"]["value"] == pytest.approx(50.0, abs=WITHIN)


def test_the_field_of_a_rounded_rectangle():
    """Circle: centres of the corners lie at (20, 12), their radius 8: 2 (hypot(20, 12) + 8)."""
    found = values(Spec(track=rounded_rectangle(56, 40, 8), turn=(0, 0, 33)))
    assert found["field_circle"]["value"] == pytest.approx(2 * (np.hypot(20, 12) + 8), abs=WITHIN)
    assert found["field_length"]["value"] == pytest.approx(56, abs=WITHIN)
    assert found["field_width"]["value"] == pytest.approx(40, abs=WITHIN)
    turned = np.degrees(np.arctan2(*found["field_length"]["direction"][1::-1])) % 180
    assert turned == pytest.approx(33, abs=0.05)


@pytest.mark.thorough
def test_the_field_of_an_ellipse():
    found = values(Spec(track=ellipse(30, 20)))
    assert found["field_circle"]["value"] == pytest.approx(60, abs=WITHIN)
    assert found["field_width"]["value"] == pytest.approx(40, abs=WITHIN)


@pytest.mark.thorough
def test_a_level_seam_has_no_rise_in_any_position():
    found = values(Spec(track=circle(25), turn=(30, 40, 10)))
    assert found["seam_rise"]["value"] == pytest.approx(0, abs=1e-6)
    assert found["seam_slope"]["value"] == pytest.approx(0, abs=1e-4)


@pytest.mark.thorough
def test_arms_of_a_c_are_neighbours_and_sides_of_a_rectangle_are_not():
    track = c_shape(50, 50, 14, 4)
    found = values(Spec(track=track, trap_width_inner=0.8, inner="open"))["path_distance"]
    xy, _ = track.at(np.linspace(0, track.length, 4001)[:-1])
    s = np.linspace(0, track.length, 4001)[:-1]
    apart = np.linalg.norm(xy[:, None] - xy[None], axis=2)
    way = np.abs(s[:, None] - s[None])
    way = np.minimum(way, track.length - way)
    expected = apart[way > 3 * apart + 1.2].min()
    assert found["value"] == pytest.approx(expected, abs=0.02)
    assert values(Spec(track=rounded_rectangle(40, 25, 6)))["path_distance"]["value"] is None


@pytest.mark.thorough
def test_a_dividing_wall_is_a_neighbour_of_the_long_way_round_only():
    """Where seams meet, the distance goes to nothing by itself: that is no neighbourhood."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    base = divided(spec, base, 0.0, 20.0)
    _, found = interface(assemble(spec, cover, base).parts)
    value = found["path_distance"]["value"]
    assert value is None or value > 10


def typed(points: np.ndarray, closed: bool, width: float, *others: np.ndarray):
    """A contour of typed points in the press frame, with what path_values asks of a joint."""
    paths = []
    for i, line in enumerate((points, *others), 1):
        ahead = np.vstack([line, line[:1]]) if closed else line
        steps = np.linalg.norm(np.diff(ahead, axis=0), axis=1)
        s = np.concatenate([[0.0], np.cumsum(steps)])
        paths.append(
            Path(f"c{i}", closed, () if closed else ("open", "open"), s[: len(line)], float(s[-1]), line,
                 np.zeros((len(line), 2)))
        )  # fmt: skip
    frame = Frame(np.zeros(3), np.eye(3))
    return SimpleNamespace(frame=frame, up=1.0, view=frame), Contour(tuple(paths), {}, width)


@pytest.mark.parametrize(("radius", "rise", "waves"), [(25.0, 1.5, 1), (30.0, 0.8, 2), (40.0, 3.0, 3)])
def test_a_waving_seam_has_the_rise_the_slope_and_the_step_of_its_wave(radius, rise, waves):
    """z = a sin(k t) over a circle: rise 2 a, steepest slope a k / R, largest step over a width w along the seam.

    Near the steepest place the seam runs straight to second order: the step is 2 a sin(k q / 2), with the turn q
    that a way of w along the seam spans there.
    """
    t = np.linspace(0, 2 * np.pi, 6001)[:-1]
    points = np.column_stack([radius * np.cos(t), radius * np.sin(t), rise * np.sin(waves * t)])
    width = 1.2
    found = path_values(*typed(points, True, width)).values
    assert found["seam_rise"]["value"] == pytest.approx(2 * rise, abs=1e-4)
    slope = rise * waves / radius
    assert found["seam_slope"]["value"] == pytest.approx(np.degrees(np.arctan(slope)), abs=0.01)
    span = width / (radius * np.hypot(1.0, slope))
    assert found["seam_step"]["value"] == pytest.approx(2 * rise * np.sin(waves * span / 2), abs=1e-3)


def test_a_step_shows_with_its_height():
    """A ramp of 0.4 mm over 0.5 mm: all of it within one rib width."""
    x = np.linspace(0, 40, 401)
    line = np.column_stack([x, 0 * x, np.interp(x, [0, 20, 20.5, 40], [0, 0, 0.4, 0.4])])
    found = path_values(*typed(line, False, 1.2)).values
    assert found["seam_step"]["value"] == pytest.approx(0.4, abs=1e-9)
    assert found["seam_step"]["at"][0] == pytest.approx(20.25, abs=0.4)
    assert found["seam_slope"]["value"] == pytest.approx(np.degrees(np.arctan(0.8)), abs=1e-6)


@pytest.mark.parametrize("apart", [2.6, 7.3, 29.0, 31.0])
@pytest.mark.parametrize("closed", [True, False])
def test_two_stretches_side_by_side_have_their_distance(apart, closed):
    """Concentric circles or parallel lines; beyond 30 mm nothing is looked for."""
    if closed:
        t = np.linspace(0, 2 * np.pi, 1801)[:-1]
        one, other = (r * np.column_stack([np.cos(t), np.sin(t), 0 * t]) for r in (40.0, 40.0 + apart))
    else:
        x = np.linspace(0, 50, 501)
        one, other = (np.column_stack([x, 0 * x + y, 0 * x]) for y in (0.0, apart))
    found = path_values(*typed(one, closed, 1.0, other)).values["path_distance"]
    assert found["value"] == (pytest.approx(apart, abs=0.001) if apart < 30 else None)


@pytest.mark.parametrize(("a", "b"), [(60.0, 40.0), (33.3, 33.3), (120.0, 12.0)])
def test_the_field_of_a_typed_ellipse(a, b):
    """Smallest circle: the longer axis; smallest rectangle: both axes."""
    t = np.linspace(0, 2 * np.pi, 3601)[:-1]
    points = np.column_stack([a / 2 * np.cos(t), b / 2 * np.sin(t), 0 * t])
    found = path_values(*typed(points, True, 1.0)).values
    assert found["field_circle"]["value"] == pytest.approx(a, abs=0.001)
    assert found["field_length"]["value"] == pytest.approx(a, abs=0.001)
    assert found["field_width"]["value"] == pytest.approx(b, abs=0.001)
