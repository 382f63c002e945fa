"""Cylinders between two arcs: their area in closed form, and the nodes that the kernel's mesher gives their borders."""

from __future__ import annotations

import math

import numpy as np
import pytest
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakeTorus
from OCP.BRepTools import BRepTools
from OCP.GeomAbs import GeomAbs_SurfaceType
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Trsf
from OCP.TopLoc import TopLoc_Location

from seamcheck.kernel import Body, mesh
from seamcheck.kernel.tube import tube_triangles

RADIUS, HEIGHT = 6.0, 4.0
AXIS = gp_Ax2(gp_Pnt(1, -2, 3), gp_Dir(1, 2, 2), gp_Dir(2, -2, 1))
TUBE, RING = GeomAbs_SurfaceType.GeomAbs_Cylinder, GeomAbs_SurfaceType.GeomAbs_Torus


def faces(body: Body, kind: GeomAbs_SurfaceType) -> list[int]:
    return [i for i, surface in enumerate(body._surfaces) if surface.GetType() == kind]


def without_mesher(monkeypatch):
    def never(*_):
        raise AssertionError("the kernel's mesher was asked")

    monkeypatch.setattr("seamcheck.kernel.body.mesh", never)


@pytest.mark.parametrize("turn", [90.0, 200.0, 360.0])
@pytest.mark.parametrize("deflection", [0.05, 0.001])
def test_a_tube_has_the_area_of_its_chords_and_looks_away_from_the_material(turn, deflection, monkeypatch):
    angle = math.radians(turn)
    stud = Body(BRepPrimAPI_MakeCylinder(AXIS, RADIUS, HEIGHT, angle).Shape())
    hole = Body(stud.shape.Reversed())
    without_mesher(monkeypatch)
    step = min(2 * math.acos(1 - deflection / 2 / RADIUS), 0.15)  # half of the chord error, half of 0.3 radians
    count = math.ceil(angle / step)
    true = count * 2 * RADIUS * math.sin(angle / count / 2) * HEIGHT  # closed form: chords of equal steps
    for body, sense in ((stud, 1.0), (hole, -1.0)):
        corners = body.facets(faces(body, TUBE), deflection, 0.3).corners
        across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        assert len(corners) == 2 * count
        assert np.linalg.norm(across, axis=1).sum() / 2 == pytest.approx(true, rel=1e-9)
        away = corners.mean(axis=1) - AXIS.Location().Coord()
        axis = np.array(AXIS.Direction().Coord())
        away -= (away @ axis)[:, None] * axis
        assert (sense * (across * away).sum(axis=1) > 0.0).all()


@pytest.mark.parametrize("mirrored", [False, True])
@pytest.mark.parametrize("deflection", [0.05, 0.001])
def test_the_nodes_are_those_of_the_kernels_mesher(deflection, mirrored, monkeypatch):
    place = gp_Trsf()
    place.SetMirror(gp_Ax2(gp_Pnt(3, 1, 2), gp_Dir(1, 0, 0.5)))
    made = [
        BRepPrimAPI_MakeCylinder(AXIS, RADIUS, HEIGHT, 1.1).Shape(),
        BRepPrimAPI_MakeCylinder(AXIS, 0.02, HEIGHT, 1.1).Shape(),  # three steps are the least
        BRepPrimAPI_MakeTorus(AXIS, 12.0, 0.4, 0.0, 1.2, 1.5).Shape(),
    ]
    for shape in made:
        body = Body(shape.Moved(TopLoc_Location(place), False) if mirrored else shape)
        (curved,) = faces(body, TUBE) or faces(body, RING)
        kind = mesh.RULED if faces(body, TUBE) else mesh.RING
        (theirs,) = mesh.mesh([body.faces[curved]], deflection, 0.3, [kind])
        BRepTools.Clean_s(body.shape)
        with monkeypatch.context() as patched:
            without_mesher(patched)
            ours = body.facets([curved], deflection, 0.3).corners
        assert len(ours) == len(theirs)
        nodes = (np.unique(np.round(corners.reshape(-1, 3), 6), axis=0) for corners in (ours, theirs))
        np.testing.assert_allclose(*nodes, atol=2e-6)
        facing = (np.cross(c[:, 1] - c[:, 0], c[:, 2] - c[:, 0]).sum(axis=0) for c in (ours, theirs))
        np.testing.assert_allclose(*facing, atol=1e-9)


def test_what_is_no_tube_between_opposite_nodes_is_refused():
    axis, centre = np.array([0.0, 0.0, 1.0]), np.zeros(3)
    angle = np.linspace(0.0, 1.0, 6)
    low = np.column_stack([np.cos(angle), np.sin(angle), 0.0 * angle])
    high, sides = low + 2.0 * axis, [np.zeros((2, 3)), np.ones((2, 3))]
    assert len(tube_triangles([low, high[::-1], *sides], centre, axis)) == 10
    leaning = high + np.outer(angle, axis)
    for lines in ([low, leaning, *sides], [low, high[:4], *sides], [low, low, *sides], [low, high], [low, *sides]):
        assert tube_triangles(lines, centre, axis) is None
