"""The whole interface against the kernel's exact distances and against rays of trimesh, on a range of models."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np
import pytest
import trimesh
from builder import Spec, assemble, c_shape, circle, draw, ellipse, rounded_rectangle
from builder.ops import box, cut, cylinder, fuse, stretch
from builder.section import Piece
from builder.solid import moved, swept_solid
from interface_models import interface
from measuring import measure, settings
from OCP.BRepExtrema import BRepExtrema_DistShapeShape
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCone, BRepPrimAPI_MakeSphere
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt

from seamcheck.kernel import Body
from seamcheck.measure.interface import survey_interface
from seamcheck.measure.material.optics import entry_points
from seamcheck.settings.tables import Scanner

WITHIN = 0.01  # mm: the bar for travel and light
FLOOR = -12.0


def cone(x: float, y: float, top: float, half: float = 25.0) -> Any:
    """A sharp cone whose apex points at the cover."""
    radius = (top - FLOOR + 1) * np.tan(np.radians(half))
    axis = gp_Ax2(gp_Pnt(x, y, FLOOR - 1), gp_Dir(0, 0, 1))
    return BRepPrimAPI_MakeCone(axis, float(radius), 0.0, top - FLOOR + 1).Shape()


def ball(x: float, y: float, top: float, radius: float) -> Any:
    return fuse(
        BRepPrimAPI_MakeSphere(gp_Pnt(x, y, top - radius), radius).Shape(),
        cylinder((x, y, FLOOR - 1), radius / 2, top - radius - FLOOR + 1),
    )


def _inside(track: Any) -> tuple[float, float]:
    """A place 5 mm inside of a straight run."""
    xy, normal = track.at(np.array([track.middle_of_run()]))
    return tuple(float(c) for c in (xy - 5.0 * normal)[0])


@dataclass(frozen=True)
class Case:
    """A spec, what stands on the base's floor, and what the cover carries below."""

    spec: Spec
    posts: Callable[[], list[Any]]
    hangs: Callable[[], list[Any]] = lambda: []


CASES = {
    "post": Case(Spec(track=rounded_rectangle(60, 40, 8)), lambda: [cylinder((3.3, -4.1, FLOOR - 1), 0.7, 12.63)]),
    "ball, turned": Case(
        Spec(track=rounded_rectangle(50, 50, 12), turn=(20, -30, 40), shift=(11, 7, -3)),
        lambda: [ball(-5.2, 3.9, -0.41, 1.7)],
    ),
    "cone, apart": Case(Spec(track=circle(24), gap=0.06), lambda: [cone(2.2, -3.1, -0.33)]),
    "ellipse": Case(Spec(track=ellipse(32, 22), draft_inner=2), lambda: [box((-3, -2, FLOOR - 1), (4, 3, -0.27))]),
    "post on post": Case(
        Spec(track=circle(26), turn=(0, 35, 5)),
        lambda: [cylinder((5, 5, FLOOR - 1), 1.5, 10.0)],
        lambda: [cylinder((5.4, 4.7, -3.0 + 0.45), 1.1, 3.0)],
    ),
    "ball against ball": Case(
        Spec(track=rounded_rectangle(56, 44, 9)),
        lambda: [ball(4.0, 2.0, -2.0, 1.5)],
        lambda: [BRepPrimAPI_MakeSphere(gp_Pnt(4.9, 2.6, 0.3), 1.8).Shape()],
    ),
    "filleted": Case(
        Spec(track=rounded_rectangle(60, 40, 10), top_fillet=0.15, root_fillet=0.2),
        lambda: [cone(-9.0, 1.0, -0.52, 40.0)],
    ),
    "bracket": Case(
        Spec(track=c_shape(60, 60, 20, 7), trap_width_inner=0.9),
        lambda: [cylinder((*_inside(c_shape(60, 60, 20, 7)), FLOOR - 1), 0.15, 12.61)],
    ),
}
QUICK = ("ball against ball",)
MARKED = [pytest.param(n, marks=[] if n in QUICK else [pytest.mark.thorough]) for n in CASES]


def ribless(spec: Spec, posts: list[Any]) -> Any:
    """The placed base drawn without its rib: one flat from trap floor to trap floor, and what stands on it."""
    left = (-spec.trap_end("inner"), -spec.rib_height_inner)
    right = (spec.trap_end("outer"), -spec.rib_height_outer)
    pieces = spec.base_chain()
    first = next(i for i, p in enumerate(pieces) if np.allclose(p.start, left))
    last = next(i for i, p in enumerate(pieces) if np.allclose(p.end, right))
    bare = swept_solid(spec.track, (*pieces[:first], Piece(left, right), *pieces[last + 1 :]))
    return moved(fuse(bare, *posts), spec.matrix)


def drawn(case: Case) -> tuple[Any, Any]:
    cover, base = draw(case.spec)
    return fuse(cover, *case.hangs()) if case.hangs() else cover, fuse(base, *case.posts())


def mesh_of(shape: Any, deflection: float = 0.004) -> trimesh.Trimesh:
    body = Body(shape)
    facets = body.facets(range(len(body.faces)), deflection, 0.3)
    return trimesh.Trimesh(facets.corners.reshape(-1, 3), np.arange(3 * len(facets.face)).reshape(-1, 3))


def down(spec: Spec) -> np.ndarray:
    return spec.matrix[:3, :3] @ [0.0, 0.0, -1.0]


@pytest.mark.parametrize("name", MARKED)
def test_cover_and_base_touch_just_there_by_the_kernel(name):
    """BRepExtrema: apart when lowered by 0.01 mm less than the free travel, touching at 0.01 mm more."""
    case = CASES[name]
    cover, base = drawn(case)
    model = assemble(case.spec, cover, base)
    travel = interface(model.parts)[1]["free_travel"]
    still = ribless(case.spec, case.posts())

    def apart(by: float) -> float:
        motion = np.eye(4)
        motion[:3, 3] = by * down(case.spec)
        return BRepExtrema_DistShapeShape(moved(model.shape("window lid"), motion), still).Value()

    sunk = travel["value"] + travel["initial_contact"]
    assert apart(sunk - WITHIN) > 1e-4
    assert apart(sunk + WITHIN) == 0.0


@pytest.mark.parametrize("name", [pytest.param(n, marks=[pytest.mark.thorough] * (n not in QUICK)) for n in CASES])
def test_rays_of_trimesh_find_no_nearer_place_and_the_same_nearest(name):
    """Rays along the beam from everywhere on the ribless base, densely round the place that was found."""
    case = CASES[name]
    cover, base = drawn(case)
    model = assemble(case.spec, cover, base)
    travel = interface(model.parts)[1]["free_travel"]
    lid, still = mesh_of(model.shape("window lid")), mesh_of(ribless(case.spec, case.posts()))
    rng = np.random.default_rng(11)
    points, _ = trimesh.sample.sample_surface(still, 2500, seed=11)
    near = still.triangles_center[np.linalg.norm(still.triangles_center - travel["at"], axis=1) < 3.0]
    local = np.concatenate([rng.uniform(-d, d, (80, 3)) for d in (0.05, 0.001)]) + np.array(travel["at"])
    local -= ((local - travel["at"]) @ down(case.spec))[:, None] * down(case.spec)
    starts = np.concatenate([points, near, local])
    above = starts - 60.0 * down(case.spec)  # well above everything; both surfaces are met on the way down
    hit, ray, _ = lid.ray.intersects_location(above, np.broadcast_to(down(case.spec), above.shape))
    lowest = np.full(len(above), -np.inf)
    np.maximum.at(lowest, ray, ((hit - above[ray]) * down(case.spec)[None]).sum(axis=1))
    hit, ray, _ = still.ray.intersects_location(above, np.broadcast_to(down(case.spec), above.shape))
    highest = np.full(len(above), np.inf)
    np.minimum.at(highest, ray, ((hit - above[ray]) * down(case.spec)[None]).sum(axis=1))
    gaps = (highest - lowest)[np.isfinite(lowest)]
    assert gaps.min() - travel["initial_contact"] == pytest.approx(travel["value"], abs=WITHIN)


SEAMS = {
    "plain": Spec(track=rounded_rectangle(60, 40, 8)),
    "turned": Spec(track=ellipse(32, 22), turn=(20, -30, 40), shift=(11, 7, -3)),
    "ledge": Spec(track=circle(24), stem=(1.2, 3.7)),
    "open outside": Spec(track=circle(20), outer="open", trap_width_outer=2.0),
}


@pytest.mark.parametrize("name", [pytest.param(n, marks=[pytest.mark.thorough] * (n != "ledge")) for n in SEAMS])
def test_material_below_the_rib_by_rays_of_trimesh(name):
    spec = SEAMS[name]
    cover, base = draw(spec)
    base = cut(base, stretch(spec.track, spec.track.middle_of_run(), 5.0, [(-9, -7), (9, -7), (9, -5), (-9, -5)]))
    model = assemble(spec, cover, base)
    found = measure(model.parts)
    path = survey_interface(found.joint, found.contour, found.survey, settings(lateral_play=0.0)).paths[0]
    mesh = mesh_of(model.shape("sensor housing"))
    start = path.points + 0.05 * down(spec)
    hit, ray, _ = mesh.ray.intersects_location(start, np.broadcast_to(down(spec), start.shape))
    depth = np.full(len(start), np.inf)
    np.minimum.at(depth, ray, ((hit - start[ray]) * down(spec)[None]).sum(axis=1) + 0.05)
    measured = path.columns["support_depth"]
    # at the opening's very edge both answers are right
    differ = np.abs(measured - depth) > WITHIN
    assert differ.sum() <= 4
    assert bool(np.ptp(measured) > 1.0) == (name != "ledge")  # there the opening lies below the ledge, beside the rib


@pytest.mark.parametrize("lean", [0.0, pytest.param(60.0, marks=pytest.mark.thorough)])
@pytest.mark.parametrize("turn", [(0, 0, 0), pytest.param((30, -15, 70), marks=pytest.mark.thorough)])
def test_shadows_by_rays_of_trimesh(lean, turn):
    """A ball on a mast and a clip of the cover, a scanner over the middle and one aside: the same rays are stopped.

    The refracted way in is that of the optics' own closed-form tests; what stands in the light is trimesh's word.
    """
    spec = Spec(track=rounded_rectangle(60, 40, 8), turn=turn, shift=(3, 1, 2))
    cover, base = draw(spec)
    cover = fuse(cover, stretch(spec.track, spec.track.middle_of_run(1), 6.0, [(-5, 1), (-3, 1), (-3, 14), (-5, 14)]))
    globe = fuse(BRepPrimAPI_MakeSphere(gp_Pnt(-18, 6, 40), 6.0).Shape(), cylinder((-18, 6, 2.5), 1.0, 36.0))
    model = assemble(spec, cover, base, ("globe", globe, None))
    index, height = 1.5, 150.0
    axis = spec.matrix[:3, :3] @ [lean, 0.0, 0.0] + spec.matrix[:3, 3]
    scanner = Scanner(height, tuple(axis), 0.0, index)
    found = measure(model.parts)
    path = survey_interface(
        found.joint, found.contour, found.survey, settings(lateral_play=0.0, scanner=scanner)
    ).paths[0]
    up = -down(spec)
    pivot = axis + (height + spec.cover_thickness) * up
    meshes = [mesh_of(shape) for _, shape, *_ in model.parts]
    total = np.zeros(len(path.s))
    margin = np.zeros(len(path.s), dtype=bool)  # stations at which a hair's breadth decides
    for across in (-0.998, 0.0, 0.998):
        stopped = []
        for nudge in (0.0, -0.02, 0.02):
            side = across * path.columns["rib_width_top"] / 2 + nudge
            targets = path.points + side[:, None] * path.u
            top = targets + spec.cover_thickness * up
            entry, *_ = entry_points(pivot, targets, top, np.broadcast_to(up, targets.shape), index)
            way = pivot - entry
            way /= np.linalg.norm(way, axis=1, keepdims=True)
            stopped.append(np.any([m.ray.intersects_any(entry + 0.01 * way, way) for m in meshes], axis=0))
        total += ~stopped[0]
        margin |= (stopped[0] != stopped[1]) | (stopped[0] != stopped[2])
    share = total / 3
    assert (share < 1).sum() > 4
    assert np.array_equal(path.columns["light_clear"][~margin], share[~margin])
    assert margin.mean() < 0.05
