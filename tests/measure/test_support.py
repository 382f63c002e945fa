"""What carries the rib: ledges, slits and openings at any depth, against closed form."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from builder import Spec, assemble, build, circle, draw, rounded_rectangle
from builder.ops import box, cut
from interface_models import interface

BOX = Spec(track=rounded_rectangle(60, 40, 8))


def carried(spec: Spec, *cuts):
    cover, base = draw(spec)
    for tool in cuts:
        base = cut(base, tool)
    return interface(assemble(spec, cover, base).parts)


@pytest.mark.parametrize(
    ("start", "turn"),
    [*(pytest.param(s, (0, 0, 0), marks=pytest.mark.thorough) for s in (0.5, 1.9)), (2.6, (25, 15, -40))],
)
def test_a_ledge_reaches_from_the_rib_to_the_wall(start, turn):
    """The wall stands ``start`` outside of the mid-line, below a flange of known depth."""
    spec = Spec(track=circle(24), stem=(start, start + 2.5), turn=turn)
    _, values = interface(build(spec).parts)
    depth = max(spec.rib_height_inner, spec.rib_height_outer) + spec.flange
    assert values["overhang"]["value"] == pytest.approx(start, abs=0.01)
    assert values["support_depth"]["value"] == pytest.approx(depth, abs=1e-3)
    assert values["support_open"]["value"] == 0.0


@pytest.mark.thorough
def test_a_wall_straight_below_is_no_ledge():
    _, values = interface(build(BOX).parts)
    assert values["overhang"]["value"] == 0.0
    assert values["support_open"]["value"] == 0.0


@pytest.mark.parametrize(
    "top", [pytest.param(-3.0, marks=pytest.mark.thorough), pytest.param(-6.0, marks=pytest.mark.thorough), -9.5]
)
def test_an_opening_at_any_depth_is_found(top):
    """A window 7 mm long and 2 mm high through the straight wall."""
    _, values = carried(BOX, box((-3.5, 12, top - 2), (3.5, 30, top)))
    assert values["support_open"]["value"] == pytest.approx(7.0, abs=0.6)
    assert values["support_depth"]["value"] == pytest.approx(-top, abs=1e-6)
    (stretch,) = values["support_open"]["stretches"]
    assert stretch["length"] == values["support_open"]["value"]
    assert values["support_open"]["at"] == stretch["at"]
    assert stretch["at"][1:] == pytest.approx([20.0, top - 1.0], abs=1e-6)  # in the middle of its height


def test_a_deep_opening_counts_where_half_of_the_seam_stands_on_a_ledge():
    """All along one side the wall is cut away below 4 mm; the window on the other side lies at 6 mm."""
    spec = replace(BOX, floor_thickness=2.0)
    cut_away = box((-40, -30, -9), (40, 0, -4))
    window = box((-3.5, 12, -8), (3.5, 30, -6))
    _, values = carried(spec, cut_away, window)
    below = spec.track.at(np.linspace(0, spec.track.length, 20001)[:-1])[0][:, 1] < 0
    expected = 7.0 + below.mean() * spec.track.length
    assert values["support_open"]["value"] == pytest.approx(expected, abs=1.5)


def test_a_slit_into_the_wall_is_a_ledge_up_to_its_end():
    """From inside a slit of 1 mm height is cut up to 0.7 mm beyond the mid-line (y = 20); there the wall goes on."""
    _, values = carried(BOX, box((-3, 12, -7), (3, 20.7, -6)))
    assert values["overhang"]["value"] == pytest.approx(0.7, abs=0.01)
    assert values["overhang"]["at"][1] == pytest.approx(20.0, abs=0.01)
    assert abs(values["overhang"]["at"][0]) < 3.01
    assert values["support_open"]["value"] == 0.0


@pytest.mark.parametrize(
    "turn", [(25, 15, -40), *(pytest.param(t, marks=pytest.mark.thorough) for t in ((0, 0, 0), (123, -41, 77)))]
)
def test_an_opening_of_a_round_wall_is_as_long_however_it_is_turned(turn):
    """A slot with straight sides: material carries on beside where a ray from the axis leaves the slot in the wall."""
    spec = Spec(track=circle(17), turn=turn)
    _, values = carried(spec, box((0, -3, -9), (40, 3, -6)))
    outside = 17 + spec.wall_face("outer")
    true = 2 * 17 * np.arcsin(3 / outside)
    assert values["support_open"]["value"] == pytest.approx(true, abs=0.5)  # the spacing of the stations
