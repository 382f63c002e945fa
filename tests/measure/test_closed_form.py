"""Drawn pairs whose every quantity is known in closed form, measured within the project's bars."""

from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from builder import Spec, build, c_shape, circle, ellipse, l_shape, rounded_rectangle
from measuring import measure
from scipy.special import ellipe
from telling import telling

BASE = Spec()
TURNED = {"turn": (30.0, 50.0, -70.0), "shift": (100.0, -33.0, 7.0), "cover_first": True}
SPECS = {
    "plain": BASE,
    "upright flanks": dataclasses.replace(BASE, draft_inner=0.0, draft_outer=0.0),
    "unequal drafts": dataclasses.replace(BASE, draft_inner=2.0, draft_outer=0.5),
    "fillets": dataclasses.replace(BASE, top_fillet=0.15, root_fillet=0.2),
    "unequal heights": dataclasses.replace(BASE, rib_height_inner=1.2, rib_height_outer=0.8),
    "open inside": dataclasses.replace(BASE, inner="open"),
    "open on both sides": dataclasses.replace(BASE, inner="open", outer="open"),
    "recessed": dataclasses.replace(BASE, outer="wall", lip_width=2.0),
    "small gap": dataclasses.replace(BASE, gap=0.05),
    "welded state": dataclasses.replace(BASE, gap=-0.4),
    "turned in space": dataclasses.replace(BASE, top_fillet=0.1, root_fillet=0.15, **TURNED),
    "chamfered cover": dataclasses.replace(BASE, edge_chamfer=0.5),
    "circle": dataclasses.replace(BASE, track=circle(12), top_fillet=0.15, root_fillet=0.2),
    "narrow wall below": dataclasses.replace(BASE, stem=(-1.2, 1.4)),
    "ellipse": dataclasses.replace(BASE, track=ellipse(30, 20)),
    "L": dataclasses.replace(BASE, track=l_shape()),
    "C": dataclasses.replace(BASE, track=c_shape()),
    "wide rib": dataclasses.replace(BASE, rib_width=2.0, rib_height_inner=1.5, rib_height_outer=1.5, clamp_land=4.0),
    "narrow rib": dataclasses.replace(BASE, rib_width=0.6, **TURNED),
}


QUICK = (
    "unequal drafts", "unequal heights", "open inside", "recessed", "turned in space", "C", "narrow rib",
)  # fmt: skip


@pytest.fixture(scope="module", params=telling(SPECS, QUICK))
def case(request):
    model = build(SPECS[request.param])
    return model.truth, measure(model.parts)


def test_the_contour_is_the_true_mid_line(case):
    truth, measured = case
    assert truth.distance(measured.points).max() < 0.002  # the bar for the centre line, mm
    assert measured.contour.length == pytest.approx(truth.length, rel=5e-4)
    assert measured.joint.beam @ truth.beam > math.cos(math.radians(0.01))


def test_every_quantity_has_its_true_value_at_every_station(case):
    # Bars: lengths 0.01 mm (median 0.002), areas 1 % or 0.005 mm², from the closed form of the drawn section.
    truth, measured = case
    for key, expected in truth.values.items():
        if key == "rib":
            continue
        found = measured.column(key)
        if math.isnan(expected):
            assert np.isnan(found).all(), key
            continue
        error = np.abs(found - expected)
        if "area" in key:
            bar, middle = max(0.005, 0.01 * expected), max(0.005, 0.01 * expected)
        elif "room" in key or key == "slenderness":
            bar, middle = 0.02 * expected, 0.01 * expected  # quotients of two measured values
        elif "draft" in key:
            bar, middle = 0.2, 0.05  # degrees: 0.001 mm over a fifth of the height
        else:
            bar, middle = 0.01, 0.002
        assert not np.isnan(found).any(), (key, measured.reasons(key))
        assert error.max() <= bar, (key, expected, error.max())
        assert np.median(error) <= middle, (key, expected, np.median(error))


def test_length_is_that_of_the_handbook():
    # Perimeter of a rounded rectangle 120 x 80, r = 10: 382.831853 (exact: 2 (a + b) - 8 r + 2 pi r).
    assert measure(build(BASE).parts).contour.length == pytest.approx(382.831853, rel=5e-5)
    # Perimeter of an ellipse 4 a E(m), m = 1 - b²/a² (complete elliptic integral, scipy's ellipe).
    drawn = measure(build(SPECS["ellipse"]).parts)
    assert drawn.contour.length == pytest.approx(4 * 30 * ellipe(1 - 20**2 / 30**2), rel=5e-4)


def test_the_contour_turns_once():
    # Turning number of a simple closed curve is +-1 (Hopf's Umlaufsatz); counter-clockwise seen from the light.
    path = measure(build(SPECS["L"]).parts).contour.paths[0]
    angle = np.arctan2(path.u[:, 1], path.u[:, 0])
    turns = np.diff(np.append(angle, angle[0]))
    assert np.sum(np.arctan2(np.sin(turns), np.cos(turns))) == pytest.approx(2 * math.pi)


def test_melted_volume_is_that_of_pappus():
    # Pappus-Guldinus: volume = area x path of its centroid; for a symmetric rib on a circle of radius 40 the
    # displaced ring is pi ((R + w/2)² - (R - w/2)²) c = 150.796447 mm³ for w = 1.5, c = 0.4.
    spec = dataclasses.replace(BASE, track=circle(40), rib_width=1.5, draft_inner=0.0, draft_outer=0.0)
    measured = measure(build(spec).parts)
    path = measured.survey.paths[0]
    s = np.append(path.s, path.length)
    area = np.append(path.columns["melt_area"], path.columns["melt_area"][0])
    assert np.trapezoid(area, s) == pytest.approx(150.796447, rel=1e-3)


def test_station_spacing_changes_no_value():
    spec = dataclasses.replace(BASE, track=rounded_rectangle(40, 30, 6))
    fine, coarse = (measure(build(spec).parts, station_spacing=step) for step in (0.2, 1.3))
    for key in ("rib_width", "rib_height", "melt_area", "trap_area_outer", "clamp_land", "cover_thickness"):
        assert np.median(fine.column(key)) == pytest.approx(np.median(coarse.column(key)), abs=1e-3), key
    assert len(fine.points) > 2 * len(coarse.points)
