"""Models as other people draw them: a dome, a groove, posts, a frame in the way, a ridge with an edge (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import numpy as np
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism, BRepPrimAPI_MakeSphere
from OCP.gp import gp_Pnt, gp_Vec

from ..ops import cut, cylinder, fuse
from ..pair import CLEAR, DARK, draw
from ..section import chain
from ..solid import level_face, swept_solid
from ..spec import Spec
from ..track import AnyTrack, ellipse, rounded_rectangle
from .truth import HardModel, Node, PathTruth, SeamTruth, along, motion, values_of

HERE = np.eye(4)
TRACK = rounded_rectangle(60, 40, 9)
PLAIN = Spec(track=TRACK, draft_inner=0, draft_outer=0)


def _model(cover, base, note: str, path: PathTruth, *others: Node, **more) -> HardModel:
    nodes = (Node("sensor housing", base, colour=DARK), Node("window lid", cover, colour=CLEAR), *others)
    root = Node("weather station", None, tuple((node, HERE) for node in nodes))
    return HardModel(root, (SeamTruth(1, 0, (path,), **more),), note=note)


def wall(track: AnyTrack, inner: float, outer: float, low: float, high: float):
    """A closed wall between two parallels of a track."""
    return BRepPrimAPI_MakePrism(level_face(track, low, outer, inner), gp_Vec(0, 0, high - low)).Shape()


def plate(track: AnyTrack, edge: float, low: float, high: float):
    return BRepPrimAPI_MakePrism(level_face(track, low, edge), gp_Vec(0, 0, high - low)).Shape()


def _ball(radius: float, below: float):
    return BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, -below), radius).Shape()


def dome() -> HardModel:
    """Rib top and cover follow a ball of 61 mm about a point 45 mm below; the flanks stay upright."""
    radius, below = 61.0, 45.0
    case = cut(plate(TRACK, 4, 0, 20), plate(TRACK, -6, 2, 40))
    case = fuse(common(case, _ball(radius - 1.0, below)), common(wall(TRACK, -0.6, 0.6, 4, 30), _ball(radius, below)))
    lid = cut(common(plate(TRACK, 4, 0, 40), _ball(radius + 2.0, below)), _ball(radius, below))
    flat = along(TRACK, {}).points
    height = np.sqrt(radius**2 - (flat[:, :2] ** 2).sum(axis=1)) - below
    points = np.column_stack([flat[:, :2], height])
    length = float(np.linalg.norm(np.diff(np.vstack([points, points[:1]]), axis=0), axis=1).sum())
    path = PathTruth(points, True, length, {"rib_width": 1.2, "gap": 0.0, "beam_clear": 1.0})
    return _model(lid, case, "Rib top and cover lie on a ball.", path)


def common(shape, tool):
    return cut(shape, cut(shape, tool))


def deep_groove() -> HardModel:
    """A tongue of the cover, 1.2 by 2.2 mm, stands on the floor of a groove of 2.4 by 1.8 mm."""
    case = cut(fuse(wall(TRACK, -2.2, 2.2, -16, 0), plate(TRACK, 2.2, -18, -16)), wall(TRACK, -1.2, 1.2, -1.8, 1))
    lid = fuse(plate(TRACK, 4.2, 0.4, 2.4), wall(TRACK, -0.6, 0.6, -1.8, 0.4))
    trap = 0.6 * (2.2 - 0.4)
    values = {
        "rib_width": 1.2, "rib_height": 2.2, "gap": 0.0, "cover_thickness": 4.2, "melt_area": 0.48,
        "trap_area_inner": trap, "trap_area_outer": trap, "lip_gap_inner": 0.0, "lip_gap_outer": 0.0,
        "free_travel": 0.4, "beam_clear": 1.0, "clamp_land": 3.6,
    }  # fmt: skip
    note = "Tongue and groove: the walls of the groove close the traps and stop the cover."
    path = along(TRACK, values, z=-1.8)
    return _model(lid, case, note, path, rib_on="cover", rules=("sink-travel", "cover-thickness"))


def open_ellipse_on_the_cover() -> HardModel:
    """A rib with spline flanks hangs over a rim of 6 mm: nothing closes its traps."""
    track = ellipse(37, 22)
    case = cut(plate(track, 3, 0, 12), plate(track, -3, 2, 20))
    lid = fuse(plate(track, 3, 13, 15), wall(track, -0.6, 0.6, 12, 13))
    values = {
        "rib_width": 1.2, "rib_height": 1.0, "gap": 0.0, "cover_thickness": 3.0, "cover_thickness_min": 3.0,
        "cover_thickness_max": 3.0, "melt_area": 0.48, "trap_area_inner": 2.4 * 0.6, "trap_area_outer": 2.4 * 0.6,
        "trap_open_inner": 1.0, "trap_open_outer": 1.0, "clamp_land": 2.4, "beam_clear": 1.0,
    }  # fmt: skip
    path = along(track, values, z=12.0)
    return _model(lid, case, "A free-form rib on the cover, open on both sides.", path, rib_on="cover")


def posts_at_rib_level() -> HardModel:
    """Four screw posts inside end at the level of the rib's top: they stop the cover, they are no seam."""
    cover, base = draw(PLAIN)
    for x in (-18, 18):
        for y in (-9, 9):
            base = fuse(base, cut(cylinder((x, y, -14), 2.5, 14), cylinder((x, y, -12), 1.0, 13)))
    path = along(TRACK, values_of(PLAIN))
    return _model(cover, base, "Posts touch the cover together with the rib.", path, rules=("sink-travel",))


def shaded_by_a_frame() -> HardModel:
    """A bezel 15 mm above the cover covers the whole seam; light from below would have to pass 16 mm."""
    cover, base = draw(PLAIN)
    bezel = Node("bezel", wall(TRACK, -3, 4, 17, 19))
    path = along(TRACK, values_of(PLAIN, ("clamp_land", "clamp_tilt", "beam_clear"), beam_clear=0.0))
    note = "A frame far above stands in the way of the light."
    return _model(cover, base, note, path, bezel, rules=("beam-path", "clamp-land"))


def sharp_ridge() -> HardModel:
    """A ridge of triangular section touches the cover with its edge: it has no top whose width could be judged."""
    outline = ((-2.5, -13), (-2.5, -0.8), (-0.6, -0.8), (0.0, 0.0), (0.6, -0.8), (2.5, -0.8), (2.5, -15))
    case = swept_solid(TRACK, chain([(o, z, 0.0) for o, z in outline]))
    lid = plate(TRACK, 4, 0, 2)
    nodes = (Node("sensor housing", case, colour=DARK), Node("window lid", lid, colour=CLEAR))
    root = Node("weather station", None, tuple((node, HERE) for node in nodes))
    return HardModel(root, (), ("no-seam", "unsupported"), "A ridge that comes to an edge.", says=("sharp edge",))


def rib_of_its_own() -> HardModel:
    """The weld rib is a solid between a flat rim and a flat cover."""
    case = cut(plate(TRACK, 3, -16, -0.9), plate(TRACK, -3, -14, 1))
    parts = (
        ("sensor housing", case, DARK),
        ("rib", wall(TRACK, -0.6, 0.6, -0.9, 0), DARK),
        ("lid", plate(TRACK, 4, 0, 2), CLEAR),
    )
    root = Node(
        "weather station", None, tuple((Node(name, shape, colour=colour), HERE) for name, shape, colour in parts)
    )
    return HardModel(root, (), ("unsupported",), "A rib drawn as a part of its own.", says=("'rib'", "Unite"))


def collar_in_a_sleeve() -> HardModel:
    """A tube with a collar in a sleeve, turned in space: light would have to come from all sides."""
    tube = cut(fuse(cylinder((0, 0, 0), 10, 20), cylinder((0, 0, 8), 10.5, 3)), cylinder((0, 0, -1), 8, 22))
    sleeve = cut(cylinder((0, 0, 0), 12.5, 20), cylinder((0, 0, -1), 10.5, 22))
    nodes = (Node("sleeve", sleeve, colour=CLEAR), Node("tube", tube, colour=DARK))
    root = Node("weather station", None, tuple((node, HERE) for node in nodes))
    model = HardModel(root, (), ("unsupported",), "A seam round a cylinder.", says=("round an axis",))
    return model.turned(motion((50, 20, -30), (20, -30, 10)))


def _polygon(corners: int, inradius: float, low: float, high: float):
    """A prism over a regular polygon with the given radius of its inscribed circle."""
    outer = inradius / np.cos(np.pi / corners)
    outline = BRepBuilderAPI_MakePolygon()
    for k in range(corners):
        angle = 2 * np.pi * k / corners
        outline.Add(gp_Pnt(outer * np.cos(angle), outer * np.sin(angle), low))
    outline.Close()
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(outline.Wire()).Face(), gp_Vec(0, 0, high - low)).Shape()


def _shorter(turn: float, half: float) -> float:
    """How much longer the line of equal distance is than half a mitre: negative, mm.

    It is equally far from the inner corner and from the outer wall: a parabola y = x² / (4 half) from its vertex to
    x = 2 half tan(turn / 4), where it meets the other wall's; its length is a standard integral.
    """
    t = np.tan(turn / 4)
    return float(half * (t * np.sqrt(1 + t * t) + np.arcsinh(t)) - half * np.tan(turn / 2))


def _sharp(corners: int, inradius: float, note: str) -> HardModel:
    """Cover, base and rib over a regular polygon whose corners are mitred, nowhere rounded."""
    rib = cut(_polygon(corners, inradius + 0.6, -1, 0), _polygon(corners, inradius - 0.6, -2, 1))
    case = cut(_polygon(corners, inradius + 3, -15, -0.9), _polygon(corners, inradius - 3, -13, 1))
    lid = _polygon(corners, inradius + 3, 0, 1.8)
    outer = inradius / np.cos(np.pi / corners)
    angles = 2 * np.pi * np.arange(corners + 1) / corners
    tips = np.column_stack([outer * np.cos(angles), outer * np.sin(angles), np.zeros(corners + 1)])
    share = np.linspace(0, 1, 2000, endpoint=False)[:, None]
    points = np.vstack([a + share * (b - a) for a, b in pairwise(tips)])
    side = 2 * inradius * np.tan(np.pi / corners) + 2 * _shorter(2 * np.pi / corners, 0.6)
    values = {"rib_width": 1.2, "rib_height": 0.9, "gap": 0.0, "cover_thickness": 1.8, "clamp_land": 2.4}
    corner = tuple((float(x), float(y), 0.0, 2.5) for x, y, _ in tips[:-1])
    path = PathTruth(points, True, corners * side, values, corner)
    return _model(lid, fuse(case, rib), note, path)


def hexagon() -> HardModel:
    return _sharp(6, 24.0, "Six outer walls have more area than the seam; six corners of 120 degrees.")


def square() -> HardModel:
    return _sharp(4, 22.0, "Four corners of 90 degrees without a rounding.")


STRANGERS: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        dome,
        deep_groove,
        open_ellipse_on_the_cover,
        posts_at_rib_level,
        shaded_by_a_frame,
        sharp_ridge,
        rib_of_its_own,
        collar_in_a_sleeve,
        hexagon,
        square,
    )
}
