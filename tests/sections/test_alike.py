"""Equal sections of straight stretches are cut once: at every station the lines are those of a cut of its own."""

import numpy as np
import pytest

from seamcheck.sections.alike import cut_alike
from seamcheck.sections.slices import BASE, Soup, box_tree, cut

REACH = 6.0
S = np.arange(0.05, 100.0, 0.25)  # no station meets a corner


def quad(a, b, c, d):
    return [(a, b, c), (a, c, d)]


def strip(x0, x1, y0, y1, z0, z1):
    """A flat from (x0, y) to (x1, y), z0 high at y0 and z1 at y1."""
    return quad((x0, y0, z0), (x1, y0, z0), (x1, y1, z1), (x0, y1, z1))


def flank(x0, x1, y, z0, z1):
    return quad((x0, y, z0), (x1, y, z0), (x1, y, z1), (x0, y, z1))


def soup(*faces):
    corners = np.array([triangle for face in faces for triangle in face], dtype=float)
    face = np.repeat(np.arange(len(faces)), [len(face) for face in faces])
    return Soup.of(corners, np.full(len(corners), BASE), face)


RIB = [strip(0, 100, -0.5, 0.5, 1.0, 1.0), flank(0, 100, 0.5, 0.0, 1.0), flank(0, 100, -0.5, 0.0, 1.0)]
FLOORS = [strip(0, 100, 0.5, 9.0, 0.0, 0.3), strip(0, 100, -9.0, -0.5, 0.0, 0.0)]
CASES = {
    "even": ([], 1),
    "pad of 0.2 mm": ([strip(40.0, 40.2, 1.0, 2.0, 1.0, 1.0)], 3),
    "step": ([strip(60, 100, 1.0, 2.0, 1.0, 1.0)], 2),
    "wedge": ([quad((20, 1, 1), (60, 1, 1), (60, 3, 1), (20, 2, 1))], 162),
    "side askew across everything": ([quad((30.0, -9, 2), (30.7, -9, 2), (31.2, 9, 2), (30.6, 9, 2))], None),
    "rises along the seam": ([quad((0, 1, 1), (100, 1, 2), (100, 2, 2), (0, 2, 1))], len(S)),
}


def line(turn):
    u = np.array([np.sin(turn), np.cos(turn)])
    along = np.array([u[1], -u[0]])
    return S[:, None] * along, np.tile(u, (len(S), 1)), np.array([along, u])


@pytest.mark.parametrize("turn", [0.0, 0.7])
@pytest.mark.parametrize("case", CASES)
def test_the_same_lines_as_a_cut_at_every_station(case, turn):
    faces, count = CASES[case]
    points, u, axes = line(turn)
    corners = soup(*RIB, *FLOORS, *faces)
    turned = Soup.of(np.dstack([corners.corners[..., :2] @ axes, corners.corners[..., 2]]), corners.owner, corners.face)
    tree = box_tree(turned)
    found, of = cut_alike(turned, points, u, REACH, tree, np.zeros((len(S), 1)))
    own = cut(turned, points, u, REACH, tree)
    for station in range(len(S)):
        mine, single = found.only(found.station == of[station]), own.only(own.station == station)
        assert len(mine.u0) == len(single.u0)
        for name in ("u0", "w0", "u1", "w1", "nu", "nw", "face"):
            np.testing.assert_allclose(getattr(mine, name), getattr(single, name), atol=2e-9)
    assert of[-1] + 1 == (count or of[-1] + 1)


def test_what_must_be_equal_too_divides_the_stretch():
    points, u, _ = line(0.0)
    corners = soup(*RIB, *FLOORS)
    marks = np.column_stack([np.where(S < 30.0, 1.0, 2.0), np.where((S > 50.0) & (S < 51.0), np.nan, 0.0)])
    _, of = cut_alike(corners, points, u, REACH, box_tree(corners), marks)
    assert of[0] == 0
    assert len(np.unique(of[S < 30.0])) == 1
    assert of[S > 30.0][0] == 1
    assert len(np.unique(of[(S > 50.0) & (S < 51.0)])) == 4  # NaN equals nothing


def test_sections_that_may_not_stand_for_others_are_all_cut():
    points, u, _ = line(0.0)
    corners = soup(*RIB, *FLOORS)
    nothing = np.zeros((len(S), 1))
    _, of = cut_alike(corners, points, u, REACH, box_tree(corners), nothing, lambda _, count: np.zeros(count, bool))
    assert np.array_equal(of, np.arange(len(S)))


def test_lines_of_one_plane_are_whole_and_end_at_the_reach():
    points, u, _ = line(0.0)
    corners = soup(*RIB, *FLOORS)
    found = cut(corners, points[:1], u[:1], REACH)
    assert len(found.u0) == 5
    assert found.u0.min() == -REACH
    assert found.u1.max() == REACH
    outer = found.only(found.face == 3)
    assert outer.w1[0] == pytest.approx(0.3 * (REACH - 0.5) / 8.5)
