"""Free travel over the whole interface: closed form, the kernel's own distances, rays through meshes."""

from __future__ import annotations

import numpy as np
import pytest
import trimesh
from builder import Spec, assemble, build, circle, draw, ellipse, rounded_rectangle, spoil
from builder.hard import HARD, write_model
from builder.ops import box, cut, cylinder, fuse, stretch
from builder.section import Piece
from builder.solid import moved, swept_solid
from interface_models import interface
from OCP.BRepExtrema import BRepExtrema_DistShapeShape
from OCP.BRepPrimAPI import BRepPrimAPI_MakeSphere
from OCP.gp import gp_Pnt

from seamcheck.kernel import Body
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

BASE_FLOOR = -12.0  # top of the inner floor of a default base: wall height 14, floor 2
WITHIN = 0.01  # mm: the bar for travel


def placed(spec: Spec, point) -> np.ndarray:
    """A point of the drawing in assembly coordinates."""
    return spec.matrix[:3, :3] @ np.asarray(point, dtype=float) + spec.matrix[:3, 3]


def kernel_distance(a, b) -> float:
    return BRepExtrema_DistShapeShape(a, b).Value()


def lowered(shape, spec: Spec, by: float):
    """A placed cover moved by some mm along the beam."""
    motion = np.eye(4)
    motion[:3, 3] = by * (spec.matrix[:3, :3] @ [0.0, 0.0, -1.0])
    return moved(shape, motion)


def ribless(spec: Spec, *posts):
    """The placed base drawn without its rib: one flat from trap floor to trap floor, and what stands on it."""
    left = (-spec.trap_end("inner"), -spec.rib_height_inner)
    right = (spec.trap_end("outer"), -spec.rib_height_outer)
    pieces = spec.base_chain()
    first = next(i for i, p in enumerate(pieces) if np.allclose(p.start, left))
    last = next(i for i, p in enumerate(pieces) if np.allclose(p.end, right))
    bare = swept_solid(spec.track, (*pieces[:first], Piece(left, right), *pieces[last + 1 :]))
    return moved(fuse(bare, *posts), spec.matrix)


@pytest.mark.thorough
def test_on_an_inclined_plane_the_floors_beside_the_rib_stop_the_cover(tmp_path):
    """Every level of the section is the same plane shifted by the rib's height of 0.9 mm along the beam."""
    document = review_model([write_model(tmp_path / "inclined.step", HARD["inclined-plane"]())], Settings())
    assert document["joints"][0]["interface"]["free_travel"]["value"] == pytest.approx(0.9, abs=WITHIN)


@pytest.mark.parametrize(
    "spec",
    [
        pytest.param(Spec(), marks=pytest.mark.thorough),
        pytest.param(Spec(turn=(20, -30, 40), shift=(11, 7, -3)), marks=pytest.mark.thorough),
        Spec(track=circle(25), gap=0.05),
        pytest.param(
            Spec(track=ellipse(18, 13), draft_inner=3, top_fillet=0.15, root_fillet=0.2), marks=pytest.mark.thorough
        ),
        Spec(outer="wall", track=rounded_rectangle(60, 40, 8)),
        pytest.param(Spec(gap=-0.4, lip_height_inner=0.2, lip_height_outer=0.25), marks=pytest.mark.thorough),
    ],
    ids=["plain", "turned", "round-apart", "filleted", "recessed", "welded"],
)
def test_a_sound_pair_sinks_to_its_lip(spec):
    """Closed form: the nearer lip's depth below the rib top."""
    _, found = interface(build(spec).parts)
    nearest = min(spec.lip_depth(side) for side in ("inner", "outer") if spec.kind(side) == "lip")
    assert found["free_travel"]["value"] == pytest.approx(nearest, abs=0.001)


@pytest.mark.parametrize("turn", [pytest.param((0, 0, 0), marks=pytest.mark.thorough), (20, -30, 40)])
def test_a_bump_of_0_3_mm_between_stations_is_found(turn):
    spec = Spec(turn=turn, shift=(3, 5, 7))
    cover, base = draw(spec)
    x, y = 10.037, 5.021  # far from the seam, on no grid
    base = fuse(base, cylinder((x, y, BASE_FLOOR - 1), 0.15, -0.25 - BASE_FLOOR + 1))
    _, found = interface(assemble(spec, cover, base).parts)
    travel = found["free_travel"]
    assert travel["value"] == pytest.approx(0.25, abs=0.001)
    assert np.linalg.norm(travel["at"] - placed(spec, (x, y, -0.25))) < 0.16


@pytest.mark.thorough
def test_a_low_bump_of_0_3_mm_on_the_lip_is_found():
    """On the seam itself, between two stations, 0.12 mm under the cover."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    o = (spec.trap_end("outer") + spec.wall_face("outer")) / 2
    xy, normal = spec.track.at(np.array([6.26]))
    place = xy[0] + o * normal[0]
    base = fuse(base, cylinder((*place, -0.7), 0.15, 0.58))
    _, found = interface(assemble(spec, cover, base).parts)
    assert found["free_travel"]["value"] == pytest.approx(0.12, abs=0.001)
    assert np.linalg.norm(np.subtract(found["free_travel"]["at"], (*place, -0.12))) < 0.16


def test_a_dome_is_met_at_its_top():
    """A ball of radius 2: the curved face's apex decides, not a corner of its facets."""
    spec = Spec(track=circle(25))
    cover, base = draw(spec)
    post = cylinder((3.3, 1.7, BASE_FLOOR - 1), 1.0, 10.0)
    ball = BRepPrimAPI_MakeSphere(gp_Pnt(3.3, 1.7, -2.31), 2.0).Shape()
    base = fuse(fuse(base, post), ball)
    model = assemble(spec, cover, base)
    _, found = interface(model.parts)
    assert found["free_travel"]["value"] == pytest.approx(0.31, abs=WITHIN)
    assert kernel_distance(model.shape("window lid"), ball) == pytest.approx(0.31, abs=1e-6)


def test_what_is_touched_before_the_collapse_is_listed_in_order():
    """A pin of the board, a post of the base and the lips, nearest first, each with its two faces."""
    spec = Spec(track=rounded_rectangle(60, 40, 8), lip_height_inner=0.55, lip_height_outer=0.3)
    cover, base = draw(spec)
    base = fuse(base, cylinder((-8, 3, BASE_FLOOR - 1), 1.0, -0.3 - BASE_FLOOR + 1))
    board = fuse(box((-5, -8, -9), (15, 8, -7.4)), cylinder((9, 2, -8), 0.4, 7.8))
    model = assemble(spec, cover, base, ("board", board, None))
    _, found = interface(model.parts)
    places = found["free_travel"]["places"]
    assert [p["value"] for p in places] == pytest.approx([0.2, 0.3, 0.35, 0.6], abs=0.001)
    parts = [[f["part"] for f in p["faces"]] for p in places]
    assert parts == [["p2", "p3"], ["p2", "p1"], ["p2", "p1"], ["p2", "p1"]]
    assert np.linalg.norm(np.subtract(places[0]["at"], (9, 2, -0.2))) < 0.41
    assert "board" in places[0]["why"]


def test_a_rib_on_the_cover_is_left_out_as_well():
    """The same pair upside down: the light passes the part with the rib."""
    spec = Spec(track=rounded_rectangle(60, 40, 8), wall_height=2.6, floor_thickness=1.2, flange=0.2)
    cover, base = draw(spec)
    found, values = interface(assemble(spec, cover, base).parts, base="window lid", cover="sensor housing")
    assert found.joint.rib_on == "cover"
    assert values["free_travel"]["value"] == pytest.approx(0.6, abs=0.001)


@pytest.mark.thorough
def test_lateral_play_lets_a_post_miss_its_pocket():
    """A pocket over a post with 0.1 mm room: free without play, met at 0.3 mm with a play of 0.15 mm."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    base = fuse(base, cylinder((2, 3, BASE_FLOOR - 1), 1.0, -0.3 - BASE_FLOOR + 1))
    cover = cut(cover, cylinder((2, 3, -1), 1.1, 1.8))
    parts = assemble(spec, cover, base).parts
    assert interface(parts)[1]["free_travel"]["value"] == pytest.approx(0.6, abs=0.001)
    assert interface(parts, lateral_play=0.05)[1]["free_travel"]["value"] == pytest.approx(0.6, abs=0.001)
    assert interface(parts, lateral_play=0.15)[1]["free_travel"]["value"] == pytest.approx(0.3, abs=0.001)


@pytest.mark.thorough
def test_a_pin_that_fits_its_hole_without_room_is_no_stop():
    """Facets of pin and hole overlap by slivers; the exact faces do not lie over one another."""
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    boss = cylinder((4, 5, BASE_FLOOR - 1), 2.5, 11.0)  # up to z = -2
    base = cut(fuse(base, boss), cylinder((4, 5, -11), 1.5, 12))
    cover = fuse(cover, cylinder((4, 5, -2.2), 1.5, 3.0))
    _, found = interface(assemble(spec, cover, base).parts)
    assert found["free_travel"]["value"] == pytest.approx(0.6, abs=0.001)


def test_parts_drawn_into_each_other_beside_the_rib_have_no_travel():
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    cover, base = draw(spec)
    base = fuse(base, cylinder((2, 3, BASE_FLOOR - 1), 1.0, 0.1 - BASE_FLOOR + 1))
    _, found = interface(assemble(spec, cover, base).parts)
    assert found["free_travel"]["value"] == pytest.approx(-0.1, abs=0.001)


SEEDS = [
    Spec(track=rounded_rectangle(60, 40, 8)),
    Spec(track=rounded_rectangle(60, 40, 8), turn=(10, 20, 30), lip_height_inner=0.45),
    Spec(track=circle(22), draft_inner=2, draft_outer=0.5, gap=0.04),
]


@pytest.mark.parametrize("spec", SEEDS, ids=["plain", "turned", "round"])
@pytest.mark.thorough
def test_the_kernel_agrees_that_the_cover_touches_there(spec):
    """Lowered to 0.05 mm before the touch, cover and ribless base are 0.05 mm apart (BRepExtrema)."""
    rng = np.random.default_rng(7)
    cover, base = draw(spec)
    x, y = rng.uniform(-6, 6, 2)
    post = cylinder((x, y, BASE_FLOOR - 1), 0.7, rng.uniform(-0.5, -0.2) - BASE_FLOOR + 1)
    model = assemble(spec, cover, fuse(base, post))
    _, values = interface(model.parts)
    travel = values["free_travel"]
    down = travel["value"] + travel["initial_contact"] - 0.05
    left = kernel_distance(lowered(model.shape("window lid"), spec, down), ribless(spec, post))
    assert left == pytest.approx(0.05, abs=WITHIN)


@pytest.mark.parametrize("spec", SEEDS[:2], ids=["plain", "turned"])
@pytest.mark.thorough
def test_rays_through_meshes_find_no_nearer_place(spec):
    """Rays of trimesh along the beam from the cover's underside onto the ribless base."""
    cover, base = draw(spec)
    block = box((-3, -2, BASE_FLOOR - 1), (4, 3, -0.37))
    model = assemble(spec, cover, fuse(base, block))
    _, values = interface(model.parts)
    bare = Body(ribless(spec, block))
    facets = bare.facets(range(len(bare.faces)), 0.01)
    mesh = trimesh.Trimesh(facets.corners.reshape(-1, 3), np.arange(3 * len(facets.face)).reshape(-1, 3))
    x, y = np.meshgrid(np.arange(-31.03, 31.1, 0.41), np.arange(-21.07, 21.1, 0.41))
    start = np.column_stack([x.ravel(), y.ravel(), np.full(x.size, spec.gap)])
    start = start @ spec.matrix[:3, :3].T + spec.matrix[:3, 3]
    down = np.broadcast_to(spec.matrix[:3, :3] @ [0.0, 0.0, -1.0], start.shape)
    hits, ray, _ = mesh.ray.intersects_location(start, down, multiple_hits=False)
    gap = ((hits - start[ray]) * down[ray]).sum(axis=1)
    assert gap.min() == pytest.approx(values["free_travel"]["value"], abs=WITHIN)


@pytest.mark.parametrize(
    ("side", "fillet"),
    [("inner", 0.15), *(pytest.param(*c, marks=pytest.mark.thorough) for c in (("inner", 0.0), ("outer", 0.15)))],
)
def test_a_gusset_on_a_flank_is_no_rib(side, fillet):
    """A ramp at 45 degrees over 4 mm: it meets the cover right beside the flank as it stands elsewhere.

    Default flanks have a draft of 1 degree; a small root fillet lies below all that the cover comes to. The ramp
    lies 0.1 mm below the rib's top 0.5 mm from the mid-line.
    """
    spec = Spec(track=rounded_rectangle(60, 40, 8), root_fillet=fillet)
    cover, base = draw(spec)
    sign = 1 if side == "outer" else -1
    ramp = [(sign * o, z) for o, z in ((0.5, -0.1), (1.4, -1.0), (0.5, -1.0))]
    base = fuse(base, stretch(spec.track, spec.track.middle_of_run(), 4.0, ramp if sign > 0 else ramp[::-1]))
    _, values = interface(assemble(spec, cover, base).parts)
    beside = spec.flank(side, 0.2)
    assert values["free_travel"]["value"] == pytest.approx(0.1 + beside - 0.5, abs=0.02)
    assert abs(values["free_travel"]["at"][0]) < 2.1


@pytest.mark.parametrize("kind", ["wide-rib", pytest.param("thin-rib", marks=pytest.mark.thorough)])
def test_a_rib_of_uneven_width_is_rib_all_over(kind):
    model, _ = spoil(kind, Spec(track=rounded_rectangle(60, 40, 8)), length=4.0, by=0.4)
    _, values = interface(model.parts)
    assert values["free_travel"]["value"] == pytest.approx(0.6, abs=0.001)
