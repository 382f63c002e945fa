"""Meshes for pictures: everything near the seam, only what is large away from it."""

import numpy as np
import pytest

from seamcheck.isolation import run_isolated


def plate_with_pins():
    """Faces of a 100 x 100 x 2 mm plate with 12 x 12 pins of 1 x 1 x 3 mm on it; which are kept, and their area."""
    from OCP.BRep import BRep_Builder
    from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
    from OCP.gp import gp_Pnt
    from OCP.TopoDS import TopoDS_Compound

    from seamcheck.kernel.body import Body
    from seamcheck.kernel.display import display_facets

    builder, compound = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(compound)
    builder.Add(compound, BRepPrimAPI_MakeBox(gp_Pnt(0, 0, 0), 100, 100, 2).Shape())
    for i in range(12):
        for j in range(12):
            builder.Add(compound, BRepPrimAPI_MakeBox(gp_Pnt(4 + 8 * i, 4 + 8 * j, 2), 1, 1, 3).Shape())
    body = Body(compound)
    return [
        _shown(display_facets(body, 0.05, lambda boxes: boxes[:, 0] < 10.0, (most, most))) for most in (10_000, 300, 20)
    ]


def _shown(facets):
    a, b, c = facets.corners[:, 0], facets.corners[:, 1], facets.corners[:, 2]
    return np.unique(facets.face), float(np.linalg.norm(np.cross(b - a, c - a), axis=1).sum() / 2)


def plane_with_holes():
    """Area of a 100 x 100 mm plane with 60 holes of 2 x 2 mm, in a picture that takes 30 details at most."""
    from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon
    from OCP.gp import gp_Dir, gp_Pln, gp_Pnt
    from OCP.TopoDS import TopoDS

    from seamcheck.kernel.body import Body
    from seamcheck.kernel.display import display_facets

    def square(x, y, size):
        polygon = BRepBuilderAPI_MakePolygon()
        for dx, dy in ((0, 0), (1, 0), (1, 1), (0, 1)):
            polygon.Add(gp_Pnt(x + dx * size, y + dy * size, 0))
        polygon.Close()
        return polygon.Wire()

    make = BRepBuilderAPI_MakeFace(gp_Pln(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)), square(0, 0, 100), True)
    for k in range(60):
        make.Add(TopoDS.Wire_s(square(5 + 9 * (k % 10), 5 + 9 * (k // 10), 2).Reversed()))
    body = Body(make.Face())
    return [_shown(display_facets(body, 0.05, lambda boxes: boxes[:, 0] < 20.0, (30, 30)))[1]]


@pytest.fixture(scope="module")
def shown():
    return run_isolated(f"{__name__}:plate_with_pins", (), time_limit_s=60.0)


def test_a_small_model_is_shown_whole(shown):
    faces, area = shown[0]
    assert len(faces) == 6 * (1 + 144)
    # Plate 2 (100^2) + 4 (100 * 2), pins 2 (1) + 4 (3) each.
    assert area == pytest.approx(2 * 100**2 + 4 * 200 + 144 * 14, rel=1e-6)


def test_small_faces_away_from_the_seam_are_left_out_and_none_near_it(shown):
    faces, area = shown[1]
    assert set(range(6)) <= set(faces.tolist())  # the plate
    assert len(faces) == 6 + 12 * 6  # one row of pins stands near
    assert area == pytest.approx(2 * 100**2 + 4 * 200 + 12 * 14, rel=1e-6)


def test_of_too_many_near_the_seam_the_larger_ones_stay(shown):
    faces, _ = shown[2]
    assert set(range(6)) <= set(faces.tolist())
    assert len(faces) <= 6 + 48  # sides of the near pins at most, which are all alike


def test_few_holes_of_one_plane_stay_as_they_are():
    # One face is no reason to leave anything out: its 60 holes are cut out of it.
    (area,) = run_isolated(f"{__name__}:plane_with_holes", (), time_limit_s=60.0)
    assert area == pytest.approx(100**2 - 60 * 4, rel=1e-6)
