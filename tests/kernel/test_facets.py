"""Triangles of faces against closed forms: areas, distances from cylinders and tori, shared borders."""

import math

import numpy as np
import pytest
from builder.ops import cut, cylinder
from builder.topology import as_nurbs
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox, BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakeTorus
from OCP.Geom import Geom_BezierSurface
from OCP.GeomConvert import GeomConvert
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt
from OCP.TColgp import TColgp_Array2OfPnt
from OCP.TopAbs import TopAbs_FACE
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS

from seamcheck.kernel import Body, mesh
from seamcheck.kernel.flat import fan, ring_of, triangles_of

AXIS = gp_Ax2(gp_Pnt(1.0, -2.0, 0.5), gp_Dir(0.0, 0.0, 1.0))


def area(corners):
    return np.linalg.norm(np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]), axis=1).sum() / 2


def plate(holes):
    tools = [cylinder((2.0 + 3.0 * i, 2.0 + 3.0 * k, -1.0), 0.8, 4.0) for i in range(holes) for k in range(holes)]
    return Body(cut(BRepPrimAPI_MakeBox(3.0 * holes + 1, 3.0 * holes + 1, 2.0).Solid(), *tools))


def test_a_plane_with_many_holes_has_its_area_and_looks_outward():
    body = plate(4)
    facets = body.facets(range(len(body.faces)), 0.001)
    # Closed form: the plate's square less the holes as regular polygons with at most 0.001 mm sagitta
    steps = math.ceil(2 * math.pi / (2 * math.acos(1 - 0.001 / 0.8)))
    hole = steps / 2 * 0.8**2 * math.sin(2 * math.pi / steps)
    flat = [i for i in range(len(body.faces)) if abs(body.planes[i, 2]) > 0.9]
    assert [body.faces[i].NbChildren() for i in flat] == [17, 17]
    for i in flat:
        mine = facets.corners[facets.face == i]
        assert area(mine) == pytest.approx(13.0**2 - 16 * hole, abs=2e-6)  # corners at 1e-7 mm along 130 mm
        across = np.cross(mine[:, 1] - mine[:, 0], mine[:, 2] - mine[:, 0])
        assert (across[:, 2] * body.planes[i, 2] >= 0).all()
        np.testing.assert_allclose(mine[..., 2], 2.0 if body.planes[i, 2] > 0 else 0.0, atol=1e-9)


def test_the_kernel_makes_the_same_area_of_it():
    body = plate(3)
    flat = next(i for i in range(len(body.faces)) if body.planes[i, 2] > 0.9)
    ours = area(body.facets([flat], 0.001).corners)
    (theirs,) = mesh.mesh([body.faces[flat]], 0.001, 0.1, [mesh.RULED])
    assert ours == pytest.approx(area(theirs), abs=9 * 0.8 * 2 * math.pi * 0.001)


def test_outlines_that_do_not_close_are_refused():
    square = [np.array([(0, 0, 0), (1, 0, 0)], float), np.array([(1, 0, 0), (1, 1, 0)], float)]
    plane = np.array([0.0, 0.0, 1.0, 0.0])
    assert triangles_of(square, plane, 1) is None
    bow = [np.array([(0, 0, 0), (1, 1, 0), (1, 0, 0), (0, 1, 0), (0, 0, 0)], float)]
    assert triangles_of(bow, plane, 1) is None


@pytest.mark.parametrize("deflection", [0.05, 0.002])
def test_free_form_strips_lie_near_the_surface_with_few_triangles(deflection):
    # A cylinder and a torus as rational splines are still exactly these; distances from them in closed form.
    tube = Body(as_nurbs(BRepPrimAPI_MakeCylinder(AXIS, 30.0, 5.0, 1.5).Solid()))
    ring = Body(as_nurbs(BRepPrimAPI_MakeTorus(AXIS, 30.0, 0.5, 1.5).Solid()))
    for body, distance, most in (
        (tube, lambda r, z: np.abs(r - 30.0), 500),
        (ring, lambda r, z: np.abs(np.hypot(r - 30.0, z) - 0.5), 20000),
    ):
        curved = np.flatnonzero(body.is_free_form)
        assert len(curved)
        corners = body.facets(curved, deflection).corners
        if body is tube:
            corners = corners[np.ptp(corners[..., 2], axis=1) > 1.0]  # not the level faces
        assert len(corners) < most
        samples = np.concatenate([corners.reshape(-1, 3), corners.mean(axis=1), corners[:, :2].mean(axis=1)])
        x, y, z = (samples - np.array([1.0, -2.0, 0.5])).T
        assert distance(np.hypot(x, y), z).max() <= deflection * 1.001


def test_faces_side_by_side_share_their_border():
    # Sides that only one triangle has must cancel over a closed body (the boundary of a boundary is empty).
    body = Body(as_nurbs(BRepPrimAPI_MakeCylinder(AXIS, 30.0, 5.0, 1.5).Solid()))
    corners = np.round(body.facets(range(len(body.faces)), 0.01).corners, 6)
    ends = np.concatenate([corners[:, [k, (k + 1) % 3]] for k in range(3)])
    forth = {tuple(map(tuple, pair)) for pair in ends}
    assert all((b, a) in forth for a, b in forth)


def test_every_kind_of_face_is_facetted():
    body = Body(as_nurbs(BRepPrimAPI_MakeTorus(AXIS, 30.0, 0.5).Solid()))
    explorer = TopExp_Explorer(body.shape, TopAbs_FACE)
    assert explorer.More()
    assert TopoDS.Face_s(explorer.Current()).NbChildren() >= 1
    facets = body.facets(range(len(body.faces)), 0.01)
    # Pappus: surface of a torus 4 pi² R r
    assert area(facets.corners) == pytest.approx(4 * math.pi**2 * 30.0 * 0.5, rel=0.02)


@pytest.mark.parametrize("bulge", [3.0, 40.0])
def test_a_face_between_straight_edges_follows_its_bulge(bulge):
    # Bernstein polynomials over an even grid of poles: x = 60 u, y = 60 v, z = 36 bulge u²(1-u)² v²(1-v)²
    poles = TColgp_Array2OfPnt(1, 5, 1, 5)
    for i in range(5):
        for k in range(5):
            poles.SetValue(i + 1, k + 1, gp_Pnt(15.0 * i, 15.0 * k, bulge if i == k == 2 else 0.0))
    face = BRepBuilderAPI_MakeFace(GeomConvert.SurfaceToBSplineSurface_s(Geom_BezierSurface(poles)), 1e-6).Face()
    body = Body(face)
    corners = body.facets([0], 0.002).corners
    weights = np.array([(1, 0, 0), (1 / 3, 1 / 3, 1 / 3), (0.5, 0.5, 0.0), (0, 0.2, 0.8)])
    places = np.einsum("wc,mcx->mwx", weights, corners).reshape(-1, 3)
    u, v = places[:, 0] / 60.0, places[:, 1] / 60.0
    height = bulge * 36.0 * (u * (1 - u) * v * (1 - v)) ** 2
    across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    level = np.repeat(np.abs(across[:, 2]) / np.linalg.norm(across, axis=1), len(weights))
    assert (np.abs(places[:, 2] - height) * level).max() < 0.0021  # square to the facet
    assert across[:, 2].sum() / 2 == pytest.approx(3600.0, abs=1e-6)


def test_splinters_across_a_large_plane_are_left_out_and_its_area_is_not():
    # Two half circles of 600 nodes each and a hole; closed form: polygons of even steps
    def ring(radius, steps, turn):
        angle = np.linspace(0.0, 2.0 * np.pi, steps + 1) * turn
        return radius * np.column_stack([np.cos(angle), np.sin(angle), 0.0 * angle])

    outer, hole = ring(50.0, 1200, 1), ring(4.0, 90, -1)
    plane = np.array([0.0, 0.0, 1.0, 0.0])
    corners = triangles_of([outer[:601], outer[600:], hole], plane, 2)
    expected = sum(s * n / 2 * r**2 * math.sin(2 * math.pi / n) for s, n, r in ((1, 1200, 50.0), (-1, 90, 4.0)))
    assert area(corners) == pytest.approx(expected, rel=1e-9)
    sides = np.linalg.norm(np.roll(corners, -1, axis=1) - corners, axis=2)
    at_border = np.linalg.norm(corners, axis=2).max(axis=1) > 49.9
    # the core's border leaves its circle by 1 mm at most: chords up to sqrt(8 r) mm, and not 100 mm across
    assert sides[at_border].max() < math.sqrt(8 * 44.0 * 1.0)
    known = {tuple(point) for point in np.concatenate([outer, hole])}
    on_border = corners.reshape(-1, 3)[(np.abs(np.linalg.norm(corners, axis=2) - 50.0) < 0.1).ravel()]
    assert all(tuple(point) in known for point in on_border)


@pytest.mark.parametrize("turned", [False, True])
def test_a_face_of_three_or_four_corners_needs_no_more(turned):
    corners = [(0.0, 0.0, 5.0), (4.0, 0.0, 5.0), (5.0, 3.0, 5.0), (0.0, 2.0, 5.0)]
    lines = [tuple(sorted((corners[k], corners[(k + 1) % 4]))) for k in (2, 0, 3, 1)]
    ring = ring_of(lines)
    assert sorted(ring) == sorted(corners)
    triangles = fan(ring[::-1] if turned else ring, [0.0, 0.0, 1.0])
    normal = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    assert (normal[:, 2] > 0).all()
    x, y = np.array(corners)[:, :2].T  # shoelace formula
    assert normal[:, 2].sum() / 2 == pytest.approx((x * np.roll(y, -1) - y * np.roll(x, -1)).sum() / 2)
    dented = [*corners[:2], (1.0, 1.0, 5.0), corners[3]]
    assert fan(dented, [0.0, 0.0, 1.0]) is None
    assert ring_of([lines[0], lines[1], lines[2], (corners[0], corners[2])]) is None
