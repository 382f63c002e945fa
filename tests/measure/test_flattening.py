"""What the clamp presses flat of a bowed cover: bending of a plate against beams of a textbook and scipy."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, build, rounded_rectangle
from interface_models import interface
from scipy.integrate import solve_bvp

from seamcheck.measure.flattening import load_to_flatten, stiffness
from seamcheck.settings.settings import Settings
from seamcheck.settings.tables import Clamp


def test_the_load_bends_a_strip_by_its_bow():
    """EI w'''' = q on two supports, solved by scipy: the middle comes down by the bow."""
    bending, bow, span, width = stiffness(2000.0, 2.0), 0.2, 64.0, 44.0
    load = load_to_flatten(bending, bow, span, width) * 2.0 / width  # N/mm² of the strip

    def rhs(x, y):
        return np.vstack([y[1], y[2], y[3], np.full_like(x, load / bending)])

    def ends(a, b):
        return np.array([a[0], a[2], b[0], b[2]])

    x = np.linspace(0.0, span, 50)
    found = solve_bvp(rhs, ends, x, np.zeros((4, 50)), tol=1e-8)
    assert abs(found.sol(span / 2)[0]) == pytest.approx(bow, rel=1e-4)


def test_a_thin_lid_takes_far_less_than_a_clamp_gives():
    """A lid of 2 mm, 64 x 44 mm, bowed by 0.2 mm over its long side: hundredths of a N/mm, against 2.4 of the clamp."""
    takes = load_to_flatten(stiffness(2000.0, 2.0), 0.2, 64.0, 44.0)
    assert 0.005 < takes < 0.05
    assert takes < 0.02 * 2.0 * 1.2


def test_a_review_takes_the_stiffest_of_the_models_and_each_leaves_the_lid_flat():
    """The table of docs/trust.md: closed forms of Timoshenko, and Navier's series for the plate on four sides."""
    bow, a, b, seam = 0.2, 64.0, 44.0, 200.0
    beam, plate = 2000.0 * 2.0**3 / 12.0, stiffness(2000.0, 2.0)
    whole = 384.0 / 5.0 * beam * bow / a**3 * b  # N, even load
    odd = np.arange(1, 60, 2)
    m, n = np.meshgrid(odd, odd)
    middle = (-1.0) ** ((m + n) / 2 - 1) * 16 / (np.pi**6 * m * n * ((m / a) ** 2 + (n / b) ** 2) ** 2)
    models = {
        "half of an even load over the seam": (whole / 2 / seam, 0.009),
        "load in the middle over the seam": (48 * beam * b * bow / a**3 / seam, 0.011),
        "along the bowed sides": (load_to_flatten(plate, bow, a, b), 0.032),
        "along the other sides": (load_to_flatten(plate, bow, a, b) * a / b, 0.047),
        "four sides, over the seam": (bow * plate / middle.sum() * a * b / seam, 0.16),
        "bowed over the short side": (load_to_flatten(plate, bow, b, a), 0.21),
    }
    for name, (found, told) in models.items():
        assert found == pytest.approx(told, rel=0.06), name
        assert found <= load_to_flatten(plate, bow, b, a)
        assert found < 2.0 * 1.2 / 10.0


LID = Spec(track=rounded_rectangle(64, 44, 8))
FLAT = {"flatness_cover": 0.2, "flatness_rib": 0.1}


def test_what_is_pressed_flat_counts_in_the_stack():
    clamp = Clamp(pressure=2.0, modulus=2000.0)
    _, found = interface(build(LID).parts, tolerances=FLAT, clamp=clamp)
    assert found["pressed_flat"]["value"] == pytest.approx(0.2)
    assert found["pressed_flat"]["has_newton_per_mm"] == pytest.approx(2.4, rel=1e-3)
    worse = load_to_flatten(stiffness(2000.0, 2.0), 0.2, 44.0, 64.0)  # bowed over its short side
    assert found["pressed_flat"]["takes_newton_per_mm"] == pytest.approx(worse, rel=1e-3)
    assert found["local_collapse_left"]["value"] == pytest.approx(0.4 - 0.1)
    _, weak = interface(build(LID).parts, tolerances=FLAT, clamp=Clamp(pressure=0.05, modulus=2000.0))
    assert weak["pressed_flat"]["value"] == pytest.approx(0.2 * 0.05 * 1.2 / worse, rel=1e-3)


def test_without_the_modulus_nothing_counts_as_pressed_flat_and_what_is_given_wins():
    _, found = interface(build(LID).parts, tolerances=FLAT, clamp=Clamp(pressure=2.0))
    assert found["pressed_flat"] == {"value": None, "at": None, "why": "no-stiffness"}
    assert found["local_collapse_left"]["value"] == pytest.approx(0.1)
    given = {**FLAT, "flattened": 0.05}
    _, found = interface(build(LID).parts, tolerances=given, clamp=Clamp(pressure=2.0, modulus=2000.0))
    assert "pressed_flat" not in found
    assert found["local_collapse_left"]["value"] == pytest.approx(0.15)
    assert Settings().clamp.modulus is None


def test_a_cover_with_a_skirt_is_no_plate():
    hanging = Spec(track=rounded_rectangle(64, 44, 8), outer="hang", lip_height_outer=0.8)
    _, found = interface(build(hanging).parts, tolerances=FLAT, clamp=Clamp(pressure=2.0, modulus=2000.0))
    assert found["pressed_flat"]["why"] == "no-plate"
