"""The truth of drawn pairs against plane sections of their meshes: trimesh cuts, shapely measures.

Nothing here knows the closed forms or the kernel's sections: the solids are meshed, random planes across the
seam cut the triangles (trimesh.intersections.mesh_plane), and widths, areas and distances are read off the
polygons with shapely. Tolerances: chords within 0.001 mm of the faces.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely
import trimesh
from OCP.BRep import BRep_Tool
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.TopAbs import TopAbs_REVERSED
from OCP.TopLoc import TopLoc_Location
from telling import telling

from builder import Spec, build, c_shape, circle, ellipse, l_shape, rounded_rectangle
from builder.ops import faces
from builder.solid import surface, volume

CHORD = 0.001
NEAR = 0.003
"""mm: two flanks, each within CHORD, cut where the facets' normals differ from the true ones."""

RECT = rounded_rectangle(60, 40, 9)
SPECS = {
    "plain": Spec(track=RECT, draft_inner=0, draft_outer=0),
    "uneven": Spec(
        track=l_shape(),
        rib_width=0.9,
        rib_height_inner=0.8,
        rib_height_outer=1.25,
        draft_inner=0.5,
        draft_outer=2.5,
        trap_width_inner=1.1,
        trap_width_outer=1.9,
        lip_height_inner=0.25,
        lip_height_outer=0.6,
        turn=(50, 10, -20),
        shift=(30, -80, 12),
    ),
    "filleted": Spec(track=circle(15), top_fillet=0.22, root_fillet=0.18, draft_outer=2.0, turn=(0, 90, 0)),
    "recessed": Spec(track=c_shape(), outer="wall", trap_width_outer=2.1, slit=0.15, gap=0.05),
    "open": Spec(track=ellipse(20, 15), inner="open", outer="open", edge_chamfer=0.5, clamp_land=1.6),
    "hanging": Spec(track=RECT, inner="hang", outer="hang", gap=-0.1),
    "flush outside": Spec(track=RECT, outer="flush", draft_outer=0.0, edge_fillet=0.7),
    "flush inside": Spec(track=circle(14), inner="flush", draft_inner=0.0),
    "rib on the cover": Spec(track=RECT, rib_on="cover", turn=(-90, 0, 0)),
    "filleted on the cover": Spec(track=circle(15), rib_on="cover", top_fillet=0.15, root_fillet=0.1),
}


def mesh_of(shape):
    """The solid's triangles as a trimesh."""
    BRepMesh_IncrementalMesh(shape, CHORD, False, 0.3, False)
    points, triangles = [], []
    for face in faces(shape):
        place = TopLoc_Location()
        mesh = BRep_Tool.Triangulation_s(face, place)
        start = len(points)
        for i in range(1, mesh.NbNodes() + 1):
            p = mesh.Node(i).Transformed(place.Transformation())
            points.append((p.X(), p.Y(), p.Z()))
        for i in range(1, mesh.NbTriangles() + 1):
            a, b, c = mesh.Triangle(i).Get()
            turn = (a, c, b) if face.Orientation() == TopAbs_REVERSED else (a, b, c)
            triangles.append([start + k - 1 for k in turn])
    return trimesh.Trimesh(np.array(points), np.array(triangles), process=True)


def section(mesh, at, u, v):
    """The cut through the solid as polygon(s) in (u, v) about ``at``, within 9 mm."""
    lines = trimesh.intersections.mesh_plane(mesh, np.cross(u, v), at) - at
    flat = np.round(np.stack([lines @ u, lines @ v], axis=-1), 7)
    flat = flat[np.abs(flat[:, 0] - flat[:, 1]).sum(axis=1) > 0]
    rings = list(shapely.polygonize(shapely.linestrings(flat)).geoms)
    # of rings within rings every second one is solid
    solid = [r for r in rings if sum(o.contains(r.representative_point()) for o in rings if o is not r) % 2 == 0]
    return shapely.unary_union(solid).intersection(shapely.box(-9, -25, 9, 9))


def chord(shape, a, b):
    """Stretches of the straight line from a to b that lie within the polygon, as one length."""
    return shape.intersection(shapely.LineString([a, b])).length


@pytest.fixture(
    scope="module", params=telling(SPECS, ["uneven", "filleted", "recessed", "flush inside", "rib on the cover"])
)
def cuts(request):
    """(spec, truth, sections of (rib part, other part, cover) at random stations, the rib pointing up)."""
    spec = SPECS[request.param]
    model = build(spec)
    meshes = {name: mesh_of(shape) for name, shape, _ in model.parts}
    for name, shape, _ in model.parts:  # the meshes are closed and as big as the solids
        assert meshes[name].is_watertight
        assert meshes[name].volume == pytest.approx(volume(shape), abs=CHORD * surface(shape))
    s = np.random.default_rng(7).uniform(0, model.truth.length, 5)
    points, outward = model.truth.place(s)
    v = -model.truth.beam
    found = []
    for p, u in zip(points, outward, strict=True):
        base, cover = (section(meshes[n], p, u, v) for n in (spec.base_name, spec.cover_name))
        if spec.rib_on == "cover":
            base, cover = (shapely.affinity.scale(x, 1, -1, origin=(0, 0)) for x in (base, cover))
        found.append((cover, base, cover) if spec.rib_on == "cover" else (base, cover, cover))
    return spec, model.truth.values, found


def test_rib_and_heights(cuts):
    spec, true, found = cuts
    for rib, _, _ in found:
        h = true["rib_height"]
        flat = rib.boundary.intersection(shapely.box(-3, -1e-5, 3, 1e-5))
        assert flat.length == pytest.approx(true["rib_width"], abs=NEAR)
        assert chord(rib, (-2, -h / 2), (2, -h / 2)) == pytest.approx(true["rib_width_mid"], abs=NEAR)
        # the root by two chords of the straight flanks, carried on to the floor
        low, high = (chord(rib, (-2, -d), (2, -d)) for d in (0.6 * h, 0.4 * h))
        assert low + (low - high) * 2 == pytest.approx(true["rib_width_root"], abs=5 * NEAR)
        for side, sign in (("outer", 1), ("inner", -1)):
            if math.isnan(true[f"rib_height_{side}"]):
                continue
            o = sign * (spec.flank(side, spec.height(side)) + 0.5)
            floor = rib.intersection(shapely.LineString([(o, 0), (o, -9)])).bounds[3]
            assert -floor == pytest.approx(true[f"rib_height_{side}"], abs=NEAR)


def test_melt_area(cuts):
    spec, true, found = cuts
    left, _, right, _ = _rib_box(spec, 0.05)
    for rib, _, _ in found:
        melt = rib.intersection(shapely.box(left, -0.4, right, 0.5))
        assert melt.area == pytest.approx(true["melt_area"], abs=NEAR)


def test_gap_thickness_and_land(cuts):
    spec, true, found = cuts
    sign = -1 if spec.rib_on == "cover" else 1
    for rib, other, cover in found:
        below = other.intersection(shapely.LineString([(0, -1), (0, 3)]))
        assert below.bounds[1] == pytest.approx(true["gap"], abs=1e-6)
        line = shapely.LineString([(0, 9 * sign), (0, -3 * sign)])
        thick = cover.intersection(line)
        if spec.rib_on == "cover":
            thick = shapely.LineString([(0, thick.bounds[1]), (0, 0)])
        assert thick.length == pytest.approx(true["cover_thickness"], abs=1e-6)
        top = max(y * sign for _, y in shapely.get_coordinates(cover)) * sign
        flat = cover.boundary.intersection(shapely.box(spec.rib_width / 2, top - 1e-5, 9, top + 1e-5))
        assert flat.length == pytest.approx(true["clamp_land"], abs=NEAR)
        assert rib.area > 0


def test_free_travel_is_where_the_parts_first_meet(cuts):
    spec, true, found = cuts
    if math.isnan(true["free_travel"]):
        return
    for rib, other, _ in found:
        rest = shapely.affinity.translate(other, 0, -true["gap"])
        no_rib = rib.difference(shapely.box(*_rib_box(spec, 0.02)))
        for more, meets in ((-0.003, False), (0.003, True)):
            lower = shapely.affinity.translate(rest, 0, -(true["free_travel"] + more))
            assert (lower.intersection(no_rib).area > 0) is meets


def test_traps_and_lips(cuts):
    spec, true, found = cuts
    for rib, other, _ in found:
        lowered = shapely.affinity.translate(other, 0, -true["gap"] - 0.4)
        for side, sign in (("outer", 1), ("inner", -1)):
            if spec.kind(side) == "flush":
                continue
            end = spec.trap_end(side)
            if spec.kind(side) == "open" and side == "outer":
                end = min(end, spec.cover_edge)
            window = _between(0.0, sign * end, -3, -0.4)
            # beside a wall the slit counts as covered: the underside is carried on across it
            lowered_here = lowered.union(_between(0, sign * end, -0.4, 0.5)) if spec.kind(side) == "wall" else lowered
            air = window.difference(rib).difference(lowered_here)
            parts = [g for g in getattr(air, "geoms", [air]) if g.area > 1e-3]
            beside = max(parts, key=lambda g: g.bounds[3])
            assert beside.area == pytest.approx(true[f"trap_area_{side}"], abs=2 * NEAR)
            assert true[f"trap_open_{side}"] == (spec.kind(side) == "open")
            gap = true[f"lip_gap_{side}"]
            if spec.kind(side) == "open":
                assert math.isnan(gap)
                continue
            # shortest distance between the parts beyond the trap's end
            strip = shapely.box(
                *sorted((sign * (end - 0.4), sign * 8))[:1], -9, sorted((sign * (end - 0.4), sign * 8))[1], 9
            )
            assert rib.intersection(strip).distance(lowered.intersection(strip)) == pytest.approx(gap, abs=NEAR)


def test_wall_below(cuts):
    spec, true, found = cuts
    if spec.rib_on == "cover":
        return
    for rib, _, _ in found:
        z = -max(spec.rib_height_inner, spec.rib_height_outer) - 0.2
        line = rib.intersection(shapely.LineString([(-8.9, z), (8.9, z)]))
        wall = [g for g in getattr(line, "geoms", [line]) if g.bounds[0] <= 0 <= g.bounds[2]]
        assert wall[0].length == pytest.approx(true["wall_width"], abs=NEAR)


def test_the_check_itself_sees_a_difference():
    # the polygons of a rib that is 0.02 mm wider must not pass for the narrower one's
    spec = replace(SPECS["plain"], rib_width=1.22)
    model = build(spec)
    base = mesh_of(model.shape(spec.base_name))
    (p,), (u,) = model.truth.place(np.array([3.0]))
    rib = section(base, p, u, -model.truth.beam)
    assert abs(chord(rib, (-2, -0.4), (2, -0.4)) - SPECS["plain"].truth().values["rib_width_mid"]) > 5 * NEAR


def _rib_box(spec, more):
    h = max(spec.rib_height_inner, spec.rib_height_outer)
    return (-spec.flank("inner", h) - more, -h - 1, spec.flank("outer", h) + more, 1)


def _between(a, b, low, high):
    return shapely.box(min(a, b), low, max(a, b), high)
