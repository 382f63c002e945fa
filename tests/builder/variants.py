"""What a Spec alone does not describe: flat rim, dividing wall, tilted land, bump, pins (drawing frame)."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace, BRepBuilderAPI_MakePolygon
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.gp import gp_Pnt, gp_Vec

from .ops import cone, cut, fuse, stretch
from .section import chain
from .solid import swept_solid
from .spec import Spec


def flat_rim(spec: Spec) -> Any:
    """A base without rib and traps: the wall ends in a flat rim at z = 0."""
    inner, outer = -spec.wall_face("inner"), spec.wall_face("outer")
    low = -spec.wall_height
    vertices = [(inner, low + spec.floor_thickness, 0.0), (inner, 0.0, 0.0), (outer, 0.0, 0.0), (outer, low, 0.0)]
    return swept_solid(spec.track, chain(vertices))


def tilted_cover(spec: Spec, degrees: float, start: float = -0.05) -> Any:
    """A cover whose light-side face falls off outward from ``start`` mm beyond the rib top's edge."""
    edge, top, bend = spec.cover_edge, spec.gap + spec.cover_thickness, spec.rib_width / 2 + start
    drop = math.tan(math.radians(degrees)) * (edge - bend)
    return swept_solid(spec.track, chain([(edge, spec.gap, 0.0), (edge, top - drop, 0.0), (bend, top, 0.0)]))


def divider(spec: Spec, at: float, reach: float, along: str = "y") -> tuple[Any, Any]:
    """A straight dividing wall with traps and lips, and its rib alone, which runs into the rib all round.

    Parameters
    ----------
    at : position of its mid-line on the other axis
    reach : half the distance between the mid-lines of the seam that it joins
    along : axis along which it runs
    """
    h = spec.rib_height
    face, end = spec.wall_face("inner"), spec.trap_end("inner")
    lip, low = -spec.lip_depth("inner"), -spec.wall_height + spec.floor_thickness / 2
    root, top = spec.flank("inner", h), spec.half_virtual("inner")
    half = [(face, low), (face, lip), (end, lip), (end, -h), (root, -h), (top, 0.0)]
    wall = half + [(-o, z) for o, z in reversed(half)]
    rib = [(root, -h), (top, 0.0), (-top, 0.0), (-root, -h)]
    # the wall ends within the lip all round, the rib on the mid-line
    short = reach - spec.trap_end("inner") - spec.lip_width / 2
    return _bar(wall, at, short, along), _bar(rib, at, reach, along)


def divided(spec: Spec, base: Any, at: float, reach: float, along: str = "y") -> Any:
    """The base with a dividing wall (two T-junctions)."""
    return fuse(base, *divider(spec, at, reach, along))


def bumped(spec: Spec, base: Any, s: float, length: float, o: tuple[float, float], rise: float) -> Any:
    """The base with a pad of height ``rise`` on the outer trap floor between the offsets ``o``."""
    floor = -spec.rib_height_outer
    outline = [(o[0], floor - 0.3), (o[1], floor - 0.3), (o[1], floor + rise), (o[0], floor + rise)]
    return fuse(base, stretch(spec.track, s, length, outline))


def pinned(
    spec: Spec,
    cover: Any,
    base: Any,
    places: Sequence[tuple[float, float]],
    *,
    draft: float = 1.0,
    play: float = 0.1,
    tip: float = -5.0,
    mouth: float = -1.0,
    radius: float = 2.0,
    chamfer: float = 0.0,
) -> tuple[Any, Any]:
    """Cover with pins and base with posts that hold holes for them, all leaning by ``draft`` degrees.

    Parameters
    ----------
    places : (x, y) of the pins
    play : mm sideways by which holes are wider than pins, as drawn
    tip, mouth : height of the pins' lower and of the posts' upper end; radius : of a pin at z = 0
    chamfer : at the pins' tips, 45°
    """  # fmt: skip
    lean = math.tan(math.radians(draft))
    foot = -spec.wall_height + spec.floor_thickness / 2

    def wide(z: float, more: float = 0.0) -> float:
        return radius + lean * z + more

    for at in places:
        pin = cone(at, tip + chamfer, 0.5, wide(tip + chamfer), wide(0.5))
        if chamfer:
            pin = fuse(pin, cone(at, tip, tip + chamfer, wide(tip + chamfer) - chamfer, wide(tip + chamfer)))
        post = cone(at, foot, mouth, 2 * radius, 2 * radius)
        hole = cone(at, foot + 1.0, mouth + 0.1, wide(foot + 1.0, play), wide(mouth + 0.1, play))
        cover, base = fuse(cover, pin), fuse(base, cut(post, hole))
    return cover, base


def _bar(outline: list[tuple[float, float]], at: float, reach: float, along: str) -> Any:
    maker = BRepBuilderAPI_MakePolygon()
    for o, z in outline:
        maker.Add(gp_Pnt(at + o, -reach, z) if along == "y" else gp_Pnt(-reach, at + o, z))
    maker.Close()
    way = gp_Vec(0, 2 * reach, 0) if along == "y" else gp_Vec(2 * reach, 0, 0)
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(maker.Wire(), True).Face(), way).Shape()
