"""Ribs that a Spec does not describe: rounded, twin, of changing width, on a straight bar; hooks beside them."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.gp import gp_Vec
from scipy.special import ellipe

from ..defects import rectangle
from ..ops import box, cut, cylinder, fuse, stretch
from ..pair import CLEAR, DARK, draw
from ..solid import level_face, moved
from ..spec import Spec
from ..track import circle, ellipse, rounded_rectangle
from .truth import HardModel, Node, PathTruth, SeamTruth, Value, along, moved_by, straight, values_of

HERE = np.eye(4)
PLAIN = Spec(track=rounded_rectangle(60, 40, 9), draft_inner=0, draft_outer=0)
LAND = ("clamp_land", "clamp_tilt")
FEW = ("gap", "cover_thickness", "beam_clear")


def _model(cover: Any, base: Any, note: str, *paths: PathTruth, **more: Any) -> HardModel:
    nodes = (Node("sensor housing", base, colour=DARK), Node("window lid", cover, colour=CLEAR))
    root = Node("weather station", None, tuple((node, HERE) for node in nodes))
    return HardModel(root, (SeamTruth(1, 0, paths, **more),), note=note)


def _few(spec: Spec, **other: Value) -> dict[str, Value]:
    true = spec.truth().values
    return {**{key: true[key] for key in FEW}, **other}


def rounded_top() -> HardModel:
    """A rib whose top is round all over: two fillets of 0.39 mm that meet on the mid-line."""
    spec = replace(PLAIN, rib_width=0.0, top_fillet=0.39, rib_height_inner=1.0, rib_height_outer=1.0)
    no_flat = ("rib_width", "rib_width_top", "clamp_land", "beam_clear")
    path = along(spec.track, values_of(spec, no_flat))
    return _model(*draw(spec), "The rib's top has no flat at all.", path)


def twin_ribs() -> HardModel:
    """Two ribs side by side, 2.6 mm between their mid-lines: what a too wide rib is to be replaced by."""
    spec = replace(PLAIN, rib_width=0.9, trap_width_outer=4.0, clamp_land=5.0)
    cover, base = draw(spec)
    half, away = spec.rib_width / 2, 2.6
    face = level_face(spec.track, -spec.rib_height - 0.5, away + half, away - half)
    second = BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, spec.rib_height + 0.5)).Shape()
    values = _few(spec, rib_width=0.9, rib_height=spec.rib_height)
    outer = rounded_rectangle(60 + 2 * away, 40 + 2 * away, 9 + away)
    paths = (along(spec.track, values), along(outer, values))
    return _model(cover, fuse(base, second), "Two closed ribs, one within the other, 1.7 mm apart.", *paths)


def eccentric_rib() -> HardModel:
    """A round rib between circles 0.3 mm out of centre: 1.05 to 1.35 mm wide.

    The line equidistant from both circles is an ellipse with their centres as foci (d1 + d2 = r1 + r2).
    """
    spec = replace(PLAIN, track=circle(25))
    cover, base = draw(spec)
    big, small, e = 25.6, 24.4, 0.3
    room = spec.trap_end("inner") - 0.05
    low = -spec.rib_height
    ring = cut(cylinder((0, 0, low), 25.7, 2), cylinder((0, 0, low - 1), 25 - room, 4))
    rib = cut(cylinder((0, 0, low - 0.5), big, 0.5 - low), cylinder((e, 0, low - 1), small, 3))
    base = fuse(cut(base, ring), rib)
    a, focal = (big + small) / 2, e / 2
    b = math.sqrt(a * a - focal * focal)
    line = ellipse(a, b)
    t = np.linspace(0, 1, 8000, endpoint=False)
    xy, _ = line.points_t(t)
    points = np.column_stack([xy[:, 0] + focal, xy[:, 1], np.zeros(len(xy))])  # foci at 0 and e

    def width(at: np.ndarray) -> np.ndarray:
        p = np.asarray(at)[:, :2]
        # the ellipse's normal halves the angle between the rays to its foci
        one, two = p, p - [e, 0]
        n = one / np.linalg.norm(one, axis=1)[:, None] + two / np.linalg.norm(two, axis=1)[:, None]
        n /= np.linalg.norm(n, axis=1)[:, None]
        return _along(one, n, big) - _along(two, n, small)

    length = 4 * a * float(ellipe(1 - (b / a) ** 2))
    path = PathTruth(points, True, length, _few(spec, rib_width=width, rib_height=spec.rib_height))
    return _model(cover, base, "The rib's width changes smoothly.", path, rules=("rib-uniformity",))


def _along(p: np.ndarray, n: np.ndarray, radius: float) -> np.ndarray:
    """How far from p along n the circle about the origin is met, going outward."""
    half = (p * n).sum(axis=1)
    return -half + np.sqrt(half**2 - (p**2).sum(axis=1) + radius**2)


def straight_bar() -> HardModel:
    """A bar of 60 mm with one straight rib: nothing is enclosed, both ends are open."""
    spec = replace(PLAIN, inner="open", outer="open")
    base = fuse(box((-32, -4, -8), (32, 4, -0.9)), box((-30, -0.6, -2), (30, 0.6, 0)))
    cover = box((-32, -4, 0), (32, 4, 2))
    ends = ((-30.0, 0.0, 0.0, 2.0), (30.0, 0.0, 0.0, 2.0))
    values = _few(spec, rib_width=1.2, rib_height=0.9, melt_area=0.48)
    path = straight((-30, 0, 0), (30, 0, 0), values, not_within=ends)
    return _model(cover, base, "One straight rib with two open ends.", path, rules=("seam-open",))


def snap_hooks() -> HardModel:
    """Arms of the cover hook into recesses of the wall: contact whose faces look the other way."""
    cover, base = draw(PLAIN)
    face = -PLAIN.wall_face("inner")
    for run in range(4):
        s = PLAIN.track.middle_of_run(run)
        base = cut(base, stretch(PLAIN.track, s, 7.0, rectangle(face - 1, face + 0.9, -7.5, -4.5)))
        arm = stretch(PLAIN.track, s, 5.0, rectangle(face - 1.3, face - 0.1, -6.0, 0.3))
        hook = stretch(PLAIN.track, s, 5.0, rectangle(face - 0.3, face + 0.6, -5.9, -4.5))
        cover = fuse(cover, arm, hook)
    path = along(PLAIN.track, values_of(PLAIN))
    return _model(cover, base, "Hooks hold the cover from below; they do not stop it.", path)


def one_cover_on_two_bases() -> HardModel:
    """Two bases side by side under one cover."""
    spec = replace(PLAIN, track=rounded_rectangle(40, 30, 8))
    plate, base = draw(spec)
    left, right = moved_by(-26), moved_by(26)
    cover = fuse(moved(plate, left), box((-8, -6, 0), (8, 6, 2)), moved(plate, right))
    case = Node("capsule", base, colour=DARK)
    lid = Node("double lid", cover, colour=CLEAR)
    root = Node("weather station", None, ((case, left), (lid, HERE), (case, right)))
    path = along(spec.track, values_of(spec, LAND))
    seams = tuple(SeamTruth(1, i, (replace(path, points=path.points + m[:3, 3]),)) for i, m in ((0, left), (2, right)))
    return HardModel(root, seams, note="One cover closes two bases: two seams.")


RIBS: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (rounded_top, twin_ribs, eccentric_rib, straight_bar, snap_hooks, one_cover_on_two_bases)
}
