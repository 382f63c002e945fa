"""Curves, surfaces and stored triangles at once, against the kernel's own answer one by one."""

import math

import numpy as np
import pytest
from builder import Spec, closed_spline, draw
from builder.topology import as_nurbs
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve, BRepAdaptor_Curve2d, BRepAdaptor_Surface
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCone, BRepPrimAPI_MakeTorus
from OCP.GeomAPI import GeomAPI_Interpolate
from OCP.GeomConvert import GeomConvert
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt
from OCP.TColgp import TColgp_HArray1OfPnt
from OCP.TopAbs import TopAbs_EDGE
from OCP.TopExp import TopExp_Explorer
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS

from seamcheck.kernel import Body
from seamcheck.kernel.curves import bending, edge_line
from seamcheck.kernel.evaluate import curve_function, surface_function
from seamcheck.kernel.triangulations import triangulations

AXIS = gp_Ax2(gp_Pnt(1.0, -2.0, 0.5), gp_Dir(0.3, 0.1, 1.0))


@pytest.fixture(scope="module")
def bodies():
    """Rational splines (periodic ones, too), and a housing along a quintic spline with fillets."""
    housing = draw(Spec(track=closed_spline(), top_fillet=0.1, root_fillet=0.15))[1]
    return [
        Body(as_nurbs(BRepPrimAPI_MakeTorus(AXIS, 30.0, 4.0).Solid())),
        Body(as_nurbs(BRepPrimAPI_MakeCone(AXIS, 12.0, 7.0, 5.0, 2.0).Solid())),
        Body(housing),
    ]


def edges(face):
    explorer = TopExp_Explorer(face, TopAbs_EDGE)
    while explorer.More():
        edge = TopoDS.Edge_s(explorer.Current())
        if not BRep_Tool.Degenerated_s(edge):
            yield edge
        explorer.Next()


def test_surfaces_are_where_the_kernel_says(bodies):
    random, count = np.random.default_rng(3), 0
    for body in bodies:
        for face in body.faces:
            surface, at = BRep_Tool.Surface_s(face, TopLoc_Location()), BRepAdaptor_Surface(face)
            low = np.array([at.FirstUParameter(), at.FirstVParameter()])
            high = np.array([at.LastUParameter(), at.LastVParameter()])
            uv = low + random.random((40, 2)) * (high - low)
            kernels = [surface.Value(u, v) for u, v in uv.tolist()]
            np.testing.assert_allclose(
                surface_function(surface)(uv), [(p.X(), p.Y(), p.Z()) for p in kernels], atol=1e-11
            )
            u, v = uv[:6, 0], uv[6:10, 1]
            kernels = [[surface.Value(*pair).Coord() for pair in zip([x] * len(v), v, strict=True)] for x in u]
            np.testing.assert_allclose(surface_function(surface).on_grid(u, v), kernels, atol=1e-11)
            count += type(surface).__name__ == "Geom_BSplineSurface"
    assert count > 10


def test_curves_in_space_and_on_the_surface_meet_at_equal_parameters(bodies):
    for body in bodies:
        for face in body.faces[:12]:
            surface = surface_function(BRep_Tool.Surface_s(face, TopLoc_Location()))
            for edge in edges(face):
                line, curve = edge_line(edge, 0.01), BRepAdaptor_Curve(edge)
                kernels = [curve.Value(t) for t in line.at.tolist()]
                np.testing.assert_allclose(line.points, [(p.X(), p.Y(), p.Z()) for p in kernels], atol=1e-11)
                uv = curve_function(BRepAdaptor_Curve2d(edge, face).Curve())(line.at)
                assert np.abs(surface(uv) - line.points).max() < 1e-5


@pytest.mark.parametrize("tolerance", [0.001, 0.05])
def test_an_edge_keeps_within_its_tolerance(bodies, tolerance):
    splines = 0
    for body in bodies:
        for edge in {hash(e): e for face in body.faces for e in edges(face)}.values():
            line, curve = edge_line(edge, tolerance), BRepAdaptor_Curve(edge)
            splines += bending(edge) == 2
            share = np.linspace(0.0, 1.0, 40)
            t = (line.at[:-1, None] + np.diff(line.at)[:, None] * share).ravel()
            points = np.array([(p.X(), p.Y(), p.Z()) for p in map(curve.Value, t.tolist())]).reshape(-1, 40, 3)
            chord = np.diff(line.points, axis=0)[:, None]
            along = ((points - line.points[:-1, None]) * chord).sum(-1) / np.maximum((chord**2).sum(-1), 1e-30)
            away = points - line.points[:-1, None] - along[..., None] * chord
            assert np.linalg.norm(away, axis=-1).max() <= 1.02 * tolerance
    assert splines > 10


def test_an_edge_that_is_a_straight_spline_is_one_chord(bodies):
    slant = math.hypot(12.0 - 7.0, 5.0)  # of a cone from 12 to 7 mm over 5 mm
    lines = [edge_line(e, 0.001) for face in bodies[1].faces for e in edges(face) if bending(e) == 2]
    axial = [line for line in lines if math.isclose(np.linalg.norm(line.points[-1] - line.points[0]), slant)]
    assert axial
    assert all(len(line.at) == 2 for line in axial)


def test_an_edge_may_run_across_the_place_where_its_closed_curve_begins():
    points = TColgp_HArray1OfPnt(1, 7)
    for i in range(7):
        angle = 2.0 * math.pi * i / 7
        points.SetValue(i + 1, gp_Pnt((20.0 + 3.0 * (i % 2)) * math.cos(angle), 15.0 * math.sin(angle), 0.3 * i))
    closed = GeomAPI_Interpolate(points, True, 1e-6)
    closed.Perform()
    curve = closed.Curve()
    assert curve.IsPeriodic()
    period = curve.LastParameter() - curve.FirstParameter()
    first, last = curve.FirstParameter() + 0.6 * period, curve.FirstParameter() + 1.4 * period
    line = edge_line(BRepBuilderAPI_MakeEdge(curve, first, last).Edge(), 0.001)
    assert line.at[-1] - line.at[0] == pytest.approx(0.8 * period)
    assert len(line.at) > 50
    np.testing.assert_allclose(line.points, [curve.Value(t).Coord() for t in line.at.tolist()], atol=1e-11)
    middles = (line.at[:-1] + line.at[1:]) / 2
    away = np.array([curve.Value(t).Coord() for t in middles.tolist()]) - (line.points[:-1] + line.points[1:]) / 2
    chord = np.diff(line.points, axis=0)
    square = away - chord * ((away * chord).sum(1) / (chord**2).sum(1))[:, None]
    assert np.linalg.norm(square, axis=1).max() <= 0.00102
    ring = BRepPrimAPI_MakeTorus(AXIS, 30.0, 4.0).Solid()
    surface = GeomConvert.SurfaceToBSplineSurface_s(BRep_Tool.Surface_s(Body(ring).faces[0], TopLoc_Location()))
    uv = np.random.default_rng(5).uniform(-3.0, 9.0, (50, 2))
    assert surface.IsUPeriodic()
    assert surface.IsVPeriodic()
    kernels = [surface.Value(u, v).Coord() for u, v in uv.tolist()]
    np.testing.assert_allclose(surface_function(surface)(uv), kernels, atol=1e-10)


def test_stored_triangles_are_the_kernels():
    body = Body(as_nurbs(BRepPrimAPI_MakeCone(AXIS, 12.0, 7.0, 5.0, 2.0).Solid()))
    BRepMesh_IncrementalMesh(body.shape, 0.05)
    some = [body.faces[2], body.faces[0], body.faces[2], body.faces[1]]  # in any order, and one twice
    for face, found in zip(some, triangulations(some), strict=True):
        stored = BRep_Tool.Triangulation_s(face, TopLoc_Location())
        nodes = [stored.Node(i) for i in range(1, stored.NbNodes() + 1)]
        assert np.array_equal(found.nodes, [(p.X(), p.Y(), p.Z()) for p in nodes])
        uv = [stored.UVNode(i) for i in range(1, stored.NbNodes() + 1)]
        assert np.array_equal(found.uv, [(p.X(), p.Y()) for p in uv])
        index = [stored.Triangle(i).Get() for i in range(1, stored.NbTriangles() + 1)]
        assert np.array_equal(found.index + 1, index)
    assert triangulations([Body(BRepPrimAPI_MakeTorus(AXIS, 30.0, 4.0).Solid()).faces[0]]) == [None]


def test_a_free_form_housing_is_meshed_without_cracks(bodies):
    # The sides of the triangles of a closed body cancel (the boundary of a boundary is empty): no crack, all outward.
    body = bodies[2]
    corners = body.facets(range(len(body.faces)), 0.002).corners
    nodes, index = np.unique(np.round(corners.reshape(-1, 3), 6), axis=0, return_inverse=True)
    index = index.reshape(-1, 3)
    forth = np.concatenate([index[:, [k, (k + 1) % 3]] for k in range(3)])
    forth = forth[forth[:, 0] != forth[:, 1]]
    ahead, back = forth[:, 0] * len(nodes) + forth[:, 1], forth[:, 1] * len(nodes) + forth[:, 0]
    assert np.array_equal(np.sort(ahead), np.sort(back))
    volume = np.einsum("ij,ij->i", corners[:, 0], np.cross(corners[:, 1], corners[:, 2])).sum() / 6
    assert math.isclose(volume, body.volume, rel_tol=2e-3)  # the kernel's to about 0.1 %
