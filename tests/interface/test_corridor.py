"""What the light takes of the cover's top, and what that leaves for the clamp: closed form."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, build, circle
from interface_models import interface
from scipy.optimize import brentq

from seamcheck.interface.corridor import tool_setback
from seamcheck.interface.settings import Clamp, Scanner


def entry(height: float, radius: float, depth: float, index: float) -> float:
    """Radius at which the ray to ``radius`` below the top enters it: root of x + t tan b = r, sin a = n sin b."""

    def over(x: float) -> float:
        inside = np.arcsin(np.sin(np.arctan(x / height)) / index)
        return x + depth * np.tan(inside) - radius

    return brentq(over, 0.0, radius, xtol=1e-12)


@pytest.mark.parametrize("half_angle", [pytest.param(0.0, marks=pytest.mark.thorough), 3.0])
def test_land_begins_beyond_the_refracted_cone(half_angle):
    """Rib 1.2 wide on radius 25, cover to 28.2; what the light takes is a ring, a little nearer to the axis."""
    index, depth, height = 1.58, 2.0, 120.0
    scanner = Scanner(height, None, half_angle, index)
    _, found = interface(build(Spec(track=circle(25), turn=(20, 10, 5))).parts, beam_margin=0.2, scanner=scanner)
    wider = 0.2 + depth * np.tan(np.arcsin(np.sin(np.radians(half_angle)) / index))
    low, high = entry(height, 24.4, depth, index) - wider, entry(height, 25.6, depth, index) + wider
    assert high < 25.8 + wider - 0.1  # drawn in by 0.25 mm
    inner, outer = np.pi * (low**2 - (low - 5.0) ** 2), np.pi * (28.2**2 - high**2)
    assert found["clamp_area_inner"]["value"] == pytest.approx(inner, rel=0.002)
    assert found["clamp_area_outer"]["value"] == pytest.approx(outer, rel=0.002)


@pytest.mark.thorough
def test_telecentric_light_stays_over_the_rib():
    _, found = interface(build(Spec(track=circle(25))).parts, scanner=Scanner())
    assert found["clamp_area_outer"]["value"] == pytest.approx(np.pi * (28.2**2 - 25.6**2), rel=0.002)


@pytest.mark.thorough
def test_a_clamp_of_20_mm_at_18_4_degrees_needs_6_6_mm():
    """20 tan 18.364963 (angle: recomputed check value of the scanner's root at H = 300, r = 100, t = 2, n = 1.58)."""
    spec = Spec(track=circle(100))
    _, found = interface(build(spec).parts, scanner=Scanner(300.0, None, 0.0, 1.58), clamp=Clamp(height=20.0))
    assert found["tool_setback"]["value"] == pytest.approx(6.6396, abs=2e-3)
    assert np.hypot(*found["tool_setback"]["at"][:2]) == pytest.approx(100, abs=0.01)


def test_the_cone_asks_for_more():
    found = tool_setback({"value": 10.0, "at": None, "why": ""}, Scanner(300.0, None, 5.0), 12.0)
    assert found["tool_setback"]["value"] == pytest.approx(12.0 * np.tan(np.radians(15.0)))


def test_without_a_scanner_it_is_not_evaluated():
    assert tool_setback({"value": None, "at": None, "why": "no-scanner"}, None, 12.0)["tool_setback"]["value"] is None
