"""Bodies that are cut away beside a rib against closed form: tubes, parallel curves, cones."""

from __future__ import annotations

import math
from itertools import pairwise

import cadquery as cq
import numpy as np
import pytest
import shapely
from propose_models import curved, ellipse, inclined, pair, rectangle
from scipy.special import ellipe

from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import Axes, volume
from seamcheck.kernel.stepped import Flat, Wall, stepped
from seamcheck.proposal.level import as_line
from seamcheck.proposal.room import Line, Net, rounded
from seamcheck.proposal.section import Section
from seamcheck.proposal.shape import contact_faces, cut_joint
from seamcheck.sections.pieces import tangent_ring

AXES = Axes(np.zeros(3), np.eye(3))


def along(curve, n=4000):
    turn = np.linspace(0.0, 2.0 * np.pi, n, endpoint=False)
    return np.column_stack(curve(turn))


def ellipse_points(a, b):
    return along(lambda t: (a * np.cos(t), b * np.sin(t)))


def perimeter(a, b):
    """Of an ellipse: 4 a E(m) with m = 1 - b² / a² (Abramowitz and Stegun, 17.3)."""
    return 4.0 * a * float(ellipe(1.0 - b**2 / a**2))


def waved(t):
    radius = 30.0 + 2.0 * np.cos(3.0 * t)
    return radius * np.cos(t), radius * np.sin(t)


@pytest.mark.parametrize(
    "points",
    [ellipse_points(32.0, 20.0), along(waved), np.asarray(shapely.box(-30, -20, 30, 20).buffer(5, 64).exterior.coords)],
    ids=["ellipse", "waved circle", "rounded"],
)
@pytest.mark.parametrize("by", [0.0, 1.5, -1.5])
def test_a_ring_of_tangent_arcs_keeps_its_distance_from_the_curve_and_has_no_corner(points, by):
    points = points[:-1] if np.allclose(points[0], points[-1]) else points
    ring = tangent_ring(points, 0.002).offset(by)
    directions = []
    for piece in ring.pieces:
        chord, half = np.subtract(piece.end, piece.start), 2.0 * math.atan(piece.bulge)
        angle = math.atan2(chord[1], chord[0])
        directions.append((angle - half, angle + half))
    for (_, end), (start, _) in pairwise([*directions, directions[0]]):
        assert math.remainder(start - end, 2.0 * math.pi) == pytest.approx(0.0, abs=1e-9)
    ends = shapely.points([piece.start for piece in ring.pieces])
    np.testing.assert_allclose(shapely.distance(ends, shapely.LinearRing(points)), abs(by), atol=0.004)


def test_a_whole_circle_is_two_halves_of_one():
    ring = tangent_ring(along(lambda t: (3.0 + 28.0 * np.cos(t), 28.0 * np.sin(t))))
    assert [piece.bulge for piece in ring.pieces] == [1.0, 1.0]
    assert sum(piece.length for piece in ring.pieces) == pytest.approx(2 * math.pi * 28.0, rel=1e-6)


def test_a_body_of_leaning_walls_has_the_volume_of_a_hollow_frustum():
    # V = pi h / 3 (R² + R r + r²) of each cone frustum (any handbook of geometry).
    outer, inner = (tangent_ring(along(lambda t, r=r: (r * np.cos(t), r * np.sin(t)))) for r in (20.0, 10.0))
    low = [as_line(outer), as_line(inner)]
    high = [as_line(outer.offset(-1.0)), as_line(inner.offset(2.0))]
    walls = [Wall(0.0, 6.0, a, b) for a, b in zip(low, high, strict=True)]
    body = stepped(AXES, walls, [Flat(0.0, low[0], (low[1],)), Flat(6.0, high[0], (high[1],))])

    def frustum(at_low, at_high):
        return math.pi * 6.0 / 3.0 * (at_low**2 + at_low * at_high + at_high**2)

    assert volume(body) == pytest.approx(frustum(20.0, 19.0) - frustum(10.0, 12.0), rel=1e-9)


def rounded_points(length, width, radius):
    half = np.array([length, width]) / 2.0 - radius
    return np.asarray(shapely.box(*-half, *half).buffer(radius, quad_segs=256).exterior.coords)[:-1]


ROUNDED = 200.0 - (8.0 - 2.0 * math.pi) * 6.0


@pytest.mark.parametrize(
    ("drawn", "corner", "points", "length", "rel"),
    [
        pytest.param(rectangle(60, 40), 6.0, rounded_points(60, 40, 6.0), ROUNDED, 1e-3, id="straight walls"),
        pytest.param(  # the volumes of its spline walls are those of a mesh
            ellipse(32, 20), 0.0, ellipse_points(32, 20), perimeter(32.0, 20.0), 3e-3, id="ellipse",
            marks=pytest.mark.thorough,
        ),
    ],
)  # fmt: skip
def test_what_is_cut_out_of_a_wall_is_the_area_between_its_parallel_curves(drawn, corner, points, length, rel):
    # Area between the parallels at distances p < q of a closed convex curve of length L: L (q - p) + pi (q² - p²)
    # (J. Steiner). The case's wall is the strip from the outline to its parallel 4 mm inside; no draft.
    wall = 4.0
    body = Body(pair(drawn, wall, corner)["lamp case"].val().wrapped)
    section = Section(1.2, 1.0, 0.7, 0.6, 0.65, 0.0, 0.4)
    frame = Frame.along(np.array([0.0, 0.0, 1.0]), np.array([0.0, 0.0, 16.0]))

    def seen(xy):
        return frame.local(np.column_stack([xy, np.full(len(xy), 16.0)]))[:, :2]

    outline = shapely.Polygon(seen(points))
    middle = np.asarray(outline.buffer(-wall / 2.0, quad_segs=256).exterior.coords)[:-1]
    region = outline.difference(outline.buffer(-wall, quad_segs=256))
    top = int(np.nanargmax(body.planes[:, 3] * (body.planes[:, 2] > 0.9)))
    cut = cut_joint(body, [top], frame, [Net(Line("c1", True, middle))], section, (0.0, 0.0), region)

    def strip(p, q):
        return length * (q - p) + math.pi * (q**2 - p**2)

    land = strip(-4.0, -2.0 - 0.6) + strip(-2.0 + 0.6, 0.0)
    traps = strip(-2.0 - 0.6 - 0.7, -2.0 - 0.6) + strip(-2.0 + 0.6, -2.0 + 0.6 + 0.6)
    expected = land * section.lowering + traps * (section.rib_height - section.lowering)
    assert volume(body.shape) - volume(cut.part) == pytest.approx(expected, rel=rel)
    assert cq.Shape(cut.part).isValid()
    assert all(cq.Shape(tool).isValid() for _, tool in cut.tools)


@pytest.mark.thorough
@pytest.mark.parametrize(
    ("parts", "rise"),
    [(inclined(60, 40, 4.0, 20.0), lambda x: 16.0 + np.tan(np.radians(20.0)) * x), (curved(60, 40, 4.0, 60.0), None)],
    ids=["inclined by 20 degrees", "on a cylinder"],
)
def test_on_a_slope_what_is_cut_out_is_plan_area_times_depth(parts, rise):
    # Cavalieri: a strip lowered along z by one depth everywhere loses its area seen along z times that depth, however
    # the contact slopes. Areas by Steiner, as above; the cover sinks along z, so depths count along z.
    rise = rise or (lambda x: 16.0 - 60.0 + np.sqrt(60.0**2 - x**2))
    body = Body(parts["lamp case"].val().wrapped)
    frame = Frame.along(np.array([0.0, 0.0, 1.0]), np.array([0.0, 0.0, 16.0]))
    outline = shapely.Polygon(
        frame.local(np.column_stack([rounded_points(60, 40, 5.0), np.full(len(rounded_points(60, 40, 5.0)), 16.0)]))[
            :, :2
        ]
    )
    section = Section(1.2, 1.0, 0.7, 0.6, 0.65, 0.0, 0.4)
    middle = rounded(Line("c1", True, np.asarray(outline.buffer(-2.0, quad_segs=256).exterior.coords)[:-1]), 4.5).points
    region = outline.difference(outline.buffer(-4.0, quad_segs=256))
    along_it = shapely.get_coordinates(shapely.segmentize(shapely.LinearRing(middle), 0.1))
    heights = rise(frame.world(np.column_stack([along_it, np.zeros(len(along_it))]))[:, 0]) - 16.0
    faces = contact_faces(body, region, frame, 1.0, 20.0)
    span = float(heights.min()), float(heights.max())
    cut = cut_joint(body, faces, frame, [Net(Line("c1", True, middle))], section, span, region)
    outer, length = 200.0 - (8.0 - 2.0 * math.pi) * 5.0, 184.0 - (8.0 - 2.0 * math.pi) * 4.5

    def beside(p, q):
        return length * (q - p) + math.pi * (q**2 - p**2)

    land = outer * 4.0 - 16.0 * math.pi - beside(-0.6, 0.6)
    traps = beside(-0.6 - 0.7, -0.6) + beside(0.6, 0.6 + 0.6)
    expected = land * section.lowering + traps * (section.rib_height - section.lowering)
    assert volume(body.shape) - volume(cut.part) == pytest.approx(expected, rel=2e-3)
    assert cq.Shape(cut.part).isValid()
