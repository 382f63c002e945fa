"""The volume of a body against closed forms, where its faces are offset and swept surfaces too."""

from __future__ import annotations

import math

import cadquery as cq
import numpy as np
import pytest
from builder.solid import volume
from proposal.propose_models import LID, case_on, circle, ellipse, lid_on
from scipy.special import ellipe

from seamcheck.kernel import Body

HEIGHT, FLOOR = 16.0, 4.0


def test_an_oval_case_has_the_volume_of_its_closed_form():
    """Perimeter of an ellipse by the complete elliptic integral; the area within its parallel curve is A - P t + pi t²
    (Steiner), as long as t is less than its least radius of curvature, b² / a = 12.5."""
    a, b, t = 32.0, 20.0, FLOOR
    area, round_it = math.pi * a * b, 4 * a * ellipe(1 - b * b / a / a)
    true = area * HEIGHT - (area - round_it * t + math.pi * t * t) * (HEIGHT - t)
    assert Body(case_on(ellipse(a, b)(), t).val().wrapped).volume == pytest.approx(true, rel=2e-3)


def test_a_waved_case_has_the_volume_of_its_sections():
    """Prismatic above its floor (Cavalieri): areas of its plane faces between their outlines (Gauss's shoelace)."""
    turns = 2 * math.pi * np.arange(48) / 48
    radii = 1.5 * np.cos(6 * turns)
    points = np.column_stack([(40 + radii) * np.cos(turns), (30 + radii) * np.sin(turns)])
    outline = cq.Workplane().spline([tuple(map(float, p)) for p in points], periodic=True).close()
    body = Body(case_on(outline, 2.0).val().wrapped)
    flat = np.flatnonzero(np.isfinite(body.planes[:, 0]))
    areas = [_shoelace(line) for face in flat for line in body.outline(int(face), 1e-4)]
    true = max(areas) * HEIGHT - min(areas) * (HEIGHT - 2.0)
    assert body.volume == pytest.approx(true, rel=2e-3)
    assert volume(body.shape) != pytest.approx(true, rel=5e-2)  # what the kernel integrates by itself


def _shoelace(line):
    x, y = line[:, 0], line[:, 1]
    return 0.5 * abs(np.sum(x[:-1] * y[1:] - x[1:] * y[:-1]))


@pytest.mark.parametrize(
    ("shape", "true"),
    [
        (case_on(circle(25)(), 3.0), math.pi * (25**2 * HEIGHT - 22**2 * (HEIGHT - 3.0))),
        (lid_on(ellipse(32, 20)()), math.pi * 32 * 20 * LID),
        (cq.Workplane().sphere(10), 4 / 3 * math.pi * 10**3),
    ],
    ids=["round-case", "oval-lid", "ball"],
)
def test_simple_bodies_have_the_volume_of_their_closed_form(shape, true):
    assert Body(shape.val().wrapped).volume == pytest.approx(true, rel=2e-3)
