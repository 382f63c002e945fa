"""Sizes and shares by which a joint is told are the model's own: no rigid motion of the whole changes them."""

from __future__ import annotations

import math

import cadquery as cq
import numpy as np
import pytest
from builder.hard.tree import bodies
from builder.joints import JOINTS
from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec
from OCP.TopLoc import TopLoc_Location
from proposal.propose_models import cee, circle, ell, pair
from telling import telling

from seamcheck.joint.candidates import read_pair
from seamcheck.joint.evidence import around, weigh
from seamcheck.joint.frame import Frame
from seamcheck.joint.outline import lie_close, lies_mostly_within, lies_within, outline, shadow
from seamcheck.joint.reading import readings_of
from seamcheck.kernel import Body

MOTIONS = {
    "as drawn": ((1, 0, 0), 0.0),
    "a quarter turn": ((1, 0, 0), 90.0),
    "askew about x": ((1, 0, 0), 45.0),
    "askew in its plane": ((0, 0, 1), 31.0),
    "askew": ((1, 2, 3), 40.0),
    "askew the other way": ((-3, 1, 2), 113.0),
}
"""Axis through the origin, and degrees."""


def placed(shape, how):
    """A shape, turned and moved with the whole model."""
    axis, degrees = MOTIONS[how]
    turn, away = gp_Trsf(), gp_Trsf()
    turn.SetRotation(gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(*map(float, axis))), math.radians(degrees))
    away.SetTranslation(gp_Vec(31, -17, 9))
    away.Multiply(turn)
    return shape.Moved(TopLoc_Location(away))


def readings(shapes, how):
    parts = {f"p{i}": Body(placed(shape, how)) for i, shape in enumerate(shapes, start=1)}
    found, meetings = read_pair(("p1", "p2"), parts)
    told = [reading for candidate in found for reading in readings_of(candidate, None, None, None)]
    return parts, told, meetings


ROUNDED = 5**2 * (1 - math.pi / 4)  # mm²: a wall of 5 mm is round at the inner side of the outline's re-entrant corner
SHARES = {
    # walls of 5 mm: within an L of 70 x 50, arms 24 wide, and within a C of 70 x 60, arms 22 wide
    "L": (ell(70, 50, 24), 5.0, (60 * 14 + 14 * 26 + ROUNDED) / (70 * 24 + 24 * 26)),
    "C": (cee(70, 60, 22), 5.0, (60 * 12 * 2 + 12 * 26 + 2 * ROUNDED) / (70 * 22 * 2 + 22 * 16)),
    "circle": (circle(25), 4.0, (21 / 25) ** 2),
}
"""Outline, wall, and the share of the outline's area that the wall encloses, by hand."""


@pytest.mark.parametrize("how", telling(MOTIONS, ["as drawn", "askew in its plane", "askew"]))
@pytest.mark.parametrize("name", SHARES)
def test_a_wall_encloses_its_share_of_the_outline_in_every_pose(name, how):
    draw, wall, share = SHARES[name]
    parts, told, meetings = readings([s.val().wrapped for s in pair(draw, wall).values()], how)
    (reading,) = told
    assert around(reading, parts)[0] == pytest.approx(share, rel=2e-3)  # chords of 0.05 mm on the circle
    assert all(e.weight == 1.0 for e in weigh(reading, parts, meetings, False))


@pytest.mark.parametrize("name", telling(JOINTS, ["wall-20"]))
def test_no_joint_is_worth_more_or_less_in_another_pose(name):
    """Confidence of every reading that could be a joint, as drawn and askew. Weak ones may read a face otherwise."""
    shapes = [shape for _, shape in bodies(JOINTS[name]().root)][:2]
    worth = []
    for how in ("as drawn", "askew", "askew the other way"):
        parts, told, meetings = readings(shapes, how)
        sure = (float(np.prod([e.weight for e in weigh(r, parts, meetings, False)])) for r in told)
        worth.append(sorted(w for w in sure if w > 0.4))
    assert worth[1] == pytest.approx(worth[0], abs=0.01)
    assert worth[2] == pytest.approx(worth[0], abs=0.01)


@pytest.mark.parametrize("how", MOTIONS)
def test_a_body_has_its_own_sides_however_it_is_placed(how):
    box = Body(placed(cq.Workplane().box(60, 20, 5).val().wrapped, how)).own_box
    np.testing.assert_allclose(box.sides, (5, 20, 60), atol=1e-6)
    assert box.diagonal == pytest.approx(math.sqrt(60**2 + 20**2 + 5**2))
    plate = Body(placed(cq.Workplane().circle(30).extrude(4).val().wrapped, how)).own_box
    np.testing.assert_allclose(plate.sides, (4, 60, 60), rtol=5e-3)
    ball = Body(placed(cq.Workplane().sphere(10).val().wrapped, how)).own_box
    np.testing.assert_allclose(ball.sides, (20, 20, 20), rtol=0.05)  # seen by 11 x 11 points


@pytest.mark.parametrize("how", ["as drawn", "askew"])
def test_where_two_bodies_lie_to_each_other(how):
    def body(x, y, z, *centre):
        return Body(placed(cq.Workplane().box(x, y, z).translate(centre).val().wrapped, how))

    tray, board = body(60, 40, 10, 0, 0, 0), body(50, 30, 2, 0, 0, 0)
    lid, aside = body(60, 40, 2, 0, 0, 6), body(60, 40, 2, 0, 0, 6.2)
    assert lies_within(board, tray, 0.01)
    assert not lies_within(tray, board, 0.01)
    assert lies_mostly_within(tray, board)
    assert not lies_mostly_within(tray, lid)
    assert lie_close(tray, lid, 0.15)
    assert not lie_close(tray, aside, 0.15)
    z = placed(cq.Workplane().box(1, 1, 1).val().wrapped, how).Location().Transformation().VectorialPart()
    seen = Frame.along(np.array([z.Value(i, 3) for i in (1, 2, 3)]), np.zeros(3))
    assert outline(tray, seen).deep == pytest.approx(10)
    assert (outline(tray, seen).short, outline(tray, seen).long) == pytest.approx((40, 60))
    assert shadow(tray, seen).area == pytest.approx(2400, abs=0.5)
