"""What the light takes of the cover's top, and what that leaves for the clamp: closed form."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from builder import Spec, assemble, build, circle, draw, spoil
from builder.variants import tilted_cover
from interface_models import interface
from measuring import measure
from scipy.optimize import brentq

from seamcheck.measure import PathSurvey, Survey
from seamcheck.measure.corridor import light_corridor, tool_setbacks
from seamcheck.settings.tables import Clamp, Light, Scanner


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


def crossed(parts, given: Light, towards: tuple[float, float]) -> tuple[float, float]:
    """Nearest and farthest distance from the axis at which a line that leaves it square crosses the light's room."""
    found = measure(parts)
    view = found.joint.view
    room = light_corridor(found.joint, found.contour, found.survey, view, given)
    ends = view.local(np.array([[0.0, 0.0, 0.0], [40.0 * towards[0], 40.0 * towards[1], 0.0]]))[:, :2]
    line = shapely.LineString(ends).intersection(room)
    away = np.linalg.norm(shapely.get_coordinates(line) - ends[0], axis=1)
    return float(away.min()), float(away.max())


@pytest.mark.thorough
def test_each_place_takes_its_own_thickness():
    """A pad 20 mm long that makes the cover 2.8 mm thick instead of 2.0; the pivot stands 120 mm over the thin top."""
    index, half_angle, margin = 1.58, 3.0, 0.2
    spec = Spec(track=circle(25))
    model, _ = spoil("thick-cover", spec, length=20.0, by=0.8, s=spec.track.length / 2)
    scanner = Scanner(120.0, None, half_angle, index)
    for towards, depth in (((-1.0, 0.0), 2.8), ((1.0, 0.0), 2.0)):
        height = 122.0 - depth
        spread = np.tan(np.arcsin(np.sin(np.radians(half_angle)) / index))
        low, high = crossed(model.parts, Light(None, scanner, index, margin), towards)
        for found, edge, sign in ((low, 24.4, -1.0), (high, 25.6, 1.0)):
            way = np.hypot(depth, edge - entry(height, edge, depth, index))
            assert found == pytest.approx(entry(height, edge, depth, index) + sign * (margin + way * spread), abs=2e-3)


def test_a_tilted_top_bends_the_light_by_its_own_normal():
    """The top falls off outward by 4 degrees: Snell at its normal, in the plane through the axis (scipy's root)."""
    index, lean = 1.58, np.radians(4.0)
    spec = Spec(track=circle(25))
    begin = 25.0 + spec.rib_width / 2 - 1.6

    def top(r: float) -> float:
        return spec.cover_thickness - np.tan(lean) * (r - begin)

    pivot, normal = top(25.0) + 120.0, np.array([np.sin(lean), np.cos(lean)])

    def off(x: float, target: float) -> float:
        air = np.array([x, top(x) - pivot])
        on = np.array([target - x, -top(x)])
        across = np.array([normal[1], -normal[0]])
        return air @ across / np.linalg.norm(air) - index * (on @ across) / np.linalg.norm(on)

    _, base = draw(spec)
    parts = assemble(spec, tilted_cover(spec, 4.0, start=-1.6), base).parts
    low, high = crossed(parts, Light(None, Scanner(120.0), index), (1.0, 0.0))
    for found, edge in ((low, 24.4), (high, 25.6)):
        assert found == pytest.approx(brentq(off, edge - 3.0, edge + 3.0, args=(edge,)), abs=2e-3)


@pytest.mark.thorough
def test_telecentric_light_stays_over_the_rib():
    _, found = interface(build(Spec(track=circle(25))).parts, scanner=Scanner())
    assert found["clamp_area_outer"]["value"] == pytest.approx(np.pi * (28.2**2 - 25.6**2), rel=0.002)


@pytest.mark.thorough
def test_a_clamp_of_20_mm_at_18_4_degrees_needs_6_6_mm():
    """20 tan 18.364963 (angle: recomputed check value of the scanner's root at H = 300, r = 100, t = 2, n = 1.58)."""
    spec = Spec(track=circle(100))
    _, found = interface(build(spec).parts, scanner=Scanner(300.0, None, 0.0, 1.58), clamp=Clamp(height=20.0))
    assert found["tool_setback_inner"]["value"] == pytest.approx(6.6396, abs=2e-3)
    assert np.hypot(*found["tool_setback_inner"]["at"][:2]) == pytest.approx(100, abs=0.01)
    assert found["tool_setback_outer"]["value"] == 0.0  # the light leans away from it


def leaning(*degrees: float) -> Survey:
    """A survey in which the light leans by so much at its stations, positive from the outer side."""
    n = len(degrees)
    nothing = np.zeros(n, dtype=int)
    path = PathSurvey(
        "c1", True, float(n), (), np.arange(float(n)), np.arange(3.0 * n).reshape(n, 3), np.ones((n, 3)),
        {"light_lean": np.array(degrees)}, {}, nothing, nothing,
    )  # fmt: skip
    return Survey((path,), {}, ())


@pytest.mark.parametrize(
    ("half_angle", "inner", "outer"), [(0.0, np.tan(np.radians(10.0)), 0.0), (5.0, np.tan(np.radians(15.0)), None)]
)
def test_each_side_of_the_clamp_stands_back_by_its_own_rays(half_angle, inner, outer):
    """The light leans by 10 and 2 degrees from the inner side: the outer one sees only what the cone adds to -2."""
    found = tool_setbacks(leaning(-10.0, -2.0), half_angle, 12.0).values
    assert found["tool_setback_inner"]["value"] == pytest.approx(12.0 * inner)
    assert found["tool_setback_inner"]["at"] == [0.0, 1.0, 2.0]
    expected = 12.0 * np.tan(np.radians(3.0)) if outer is None else outer
    assert found["tool_setback_outer"]["value"] == pytest.approx(expected)
