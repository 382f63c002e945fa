"""Seeded defects: one fault on a sound Spec, with rule, place, extent and true value."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from .ops import cut, cylinder, fuse, stretch
from .pair import Model, assemble, draw
from .spec import Spec

GREY = (0.55, 0.57, 0.60)


@dataclass(frozen=True)
class Flaw:
    """One seeded defect.

    Attributes
    ----------
    kind : which defect; see DEFECTS
    quantity, value : what a true measurement gives over the stretch; ``value`` None where there is none
    rules : keys of the rules that the stretch breaks under the default limits
    s, length : middle and extent along the mid-line, mm
    at : its middle on the mid-line, assembly coordinates, mm
    """

    kind: str
    quantity: str
    value: float | None
    rules: tuple[str, ...]
    s: float
    length: float
    at: tuple[float, float, float]


Shapes = tuple[Any, Any, Sequence[tuple[str, Any, "tuple[float, ...] | None"]]]
Outcome = tuple[Shapes, str, "float | None", tuple[str, ...]]
Outline = list[tuple[float, float]]


def rectangle(o0: float, o1: float, z0: float, z1: float) -> Outline:
    return [(o0, z0), (o1, z0), (o1, z1), (o0, z1)]


def _beside(spec: Spec, side: str, sign: int, edge: float) -> Outline:
    """What lies beside a flank of the same draft ``edge`` from the mid-line, down to the floor."""
    height, draft = spec.height(side), math.tan(spec.draft(side))
    beyond = spec.flank(side, height) + 0.05
    outline = [(edge, 1.0), (edge, 0.0), (edge + draft * height, -height), (beyond, -height), (beyond, 1.0)]
    return [(sign * o, z) for o, z in outline]


def _thin_rib(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    for sign, side in ((1, "outer"), (-1, "inner")):
        base = cut(base, stretch(spec.track, s, length, _beside(spec, side, sign, (spec.rib_width - by) / 2)))
    width = spec.rib_width - by
    rules = ("rib-uniformity",) if by > 0.1 * spec.rib_width else ()
    return (cover, base, ()), "rib_width", width, rules + (("rib-width",) if width < 0.6 else ())


def _wide_rib(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    deep, edge = spec.rib_height + 0.3, (spec.rib_width + by) / 2
    feet = [edge + math.tan(spec.draft(side)) * deep for side in ("inner", "outer")]
    outline = [(-edge, 0.0), (-feet[0], -deep), (feet[1], -deep), (edge, 0.0)]
    base = fuse(base, stretch(spec.track, s, length, outline))
    width = spec.rib_width + by
    rules = ("rib-uniformity",) if by > 0.1 * spec.rib_width else ()
    return (cover, base, ()), "rib_width", width, rules + (("rib-width",) if width > 2.5 else ())


def _low_rib(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    reach = spec.flank("outer", spec.rib_height_outer) + 0.2
    base = cut(base, stretch(spec.track, s, length, rectangle(-reach, reach, -by, 1)))
    rules = ("contact-gap",) if spec.gap + by > 0.1 else ()
    height = spec.rib_height - by
    return (cover, base, ()), "gap", spec.gap + by, rules + (("rib-height",) if height < 0.6 else ())


def _no_rib(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    reach = spec.flank("outer", spec.rib_height_outer) + 0.1
    base = cut(base, stretch(spec.track, s, length, rectangle(-reach, reach, -spec.rib_height, 1)))
    return (cover, base, ()), "rib_height", None, ("seam-open",)


def _narrow_traps(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """Both lips come ``by`` nearer to the rib."""
    for sign, side in ((-1, "inner"), (1, "outer")):
        face, low = spec.trap_end(side), -spec.height(side) - 0.3
        outline = rectangle(sign * (face - by), sign * (face + 0.4), low, -spec.lip_depth(side))
        base = fuse(base, stretch(spec.track, s, length, outline))
    narrower = replace(spec, trap_width_inner=spec.trap_width_inner - by, trap_width_outer=spec.trap_width_outer - by)
    values = narrower.truth().values
    rules: tuple[str, ...] = ("trap-room",) if values["trap_room"] < 1.2 else ()
    if min(values["trap_room_inner"], values["trap_room_outer"]) < 1.0:
        rules += ("trap-side",)
    return (cover, base, ()), "trap_room", values["trap_room"], rules


def _short_land(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A step down in the light-side face ``by`` nearer to the rib than the edge."""
    land = spec.truth().values["clamp_land"] - by
    top = spec.gap + spec.cover_thickness
    outline = rectangle(spec.rib_width / 2 + land, spec.cover_edge + 1, top - 0.5, top + 1)
    cover = cut(cover, stretch(spec.track, s, length, outline))
    return (cover, base, ()), "clamp_land", land, ("clamp-land",) if land < 1.0 else ()


def _thick_cover(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A pad on the light side, out to the cover's edge."""
    top = spec.gap + spec.cover_thickness
    outline = rectangle(-spec.rib_width - 1, spec.cover_edge, top - 0.3, top + by)
    cover = fuse(cover, stretch(spec.track, s, length, outline))
    return (cover, base, ()), "cover_thickness", *_thickness(spec, spec.cover_thickness + by)


def _thin_cover(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A pocket in the light side, out to the cover's edge."""
    top = spec.gap + spec.cover_thickness
    outline = rectangle(-spec.rib_width - 1, spec.cover_edge + 1, top - by, top + 1)
    cover = cut(cover, stretch(spec.track, s, length, outline))
    return (cover, base, ()), "cover_thickness", *_thickness(spec, spec.cover_thickness - by)


def _thickness(spec: Spec, value: float) -> tuple[float, tuple[str, ...]]:
    rules = ("cover-uniformity",) if abs(value - spec.cover_thickness) > 0.3 else ()
    return value, rules + (("cover-thickness",) if not 0.8 <= value <= 3.0 else ())


def _gap(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A recess in the cover's underside over the rib and both traps' beginnings."""
    reach = spec.rib_width / 2 + 0.5
    outline = rectangle(-reach, reach, spec.gap - 1, spec.gap + by)
    cover = cut(cover, stretch(spec.track, s, length, outline))
    return (cover, base, ()), "gap", spec.gap + by, ("contact-gap",) if spec.gap + by > 0.1 else ()


def _post(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A block on the inner lip that stops the cover ``by`` earlier than anything else."""
    travel = spec.truth().values["free_travel"] - by
    a, b = -spec.trap_end("inner"), -spec.wall_face("inner")
    base = fuse(base, stretch(spec.track, s, length, rectangle(b, a, -spec.lip_depth("inner") - 0.3, -travel)))
    rules = ("sink-travel",) if travel < 0.6 else ()
    return (cover, base, ()), "free_travel", travel, rules + (("lip-gap",) if travel - 0.4 < 0.1 else ())


def _hole(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A round hole of diameter ``length`` centred on the mid-line."""
    xy, _ = spec.track.at(np.array([s]))
    cover = cut(cover, cylinder((*xy[0], spec.gap - 1), length / 2, spec.cover_thickness + 2))
    return (cover, base, ()), "cover_thickness", None, ("cover-hole",)


def _shade(spec: Spec, cover: Any, base: Any, s: float, length: float, by: float) -> Outcome:
    """A foreign block above the cover that shades the inner half of the rib."""
    top = spec.gap + spec.cover_thickness
    block = stretch(spec.track, s, length, rectangle(-4.0, 0.0, top + 2, top + 5))
    return (cover, base, (("cable clip", block, GREY),)), "beam_clear", 0.5, ("beam-path",)


Maker = Callable[[Spec, Any, Any, float, float, float], Outcome]
DEFECTS: dict[str, tuple[Maker, float]] = {
    "thin-rib": (_thin_rib, 0.3),
    "wide-rib": (_wide_rib, 0.3),
    "low-rib": (_low_rib, 0.35),
    "no-rib": (_no_rib, 0.0),
    "narrow-traps": (_narrow_traps, 1.0),
    "short-land": (_short_land, 1.9),
    "thick-cover": (_thick_cover, 0.5),
    "thin-cover": (_thin_cover, 0.5),
    "gap": (_gap, 0.2),
    "post": (_post, 0.15),
    "hole": (_hole, 0.0),
    "shade": (_shade, 0.0),
}
"""Kind -> (how it is made, by how much in mm when nothing else is asked for)."""


def spoil(
    kind: str, spec: Spec | None = None, s: float | None = None, length: float = 3.0, by: float | None = None
) -> tuple[Model, Flaw]:
    """A sound pair with one defect.

    Parameters
    ----------
    kind : key of DEFECTS
    s : middle of the defect on the mid-line, mm; the middle of the first straight run unless given
    length : extent along the mid-line, mm; the stretch must stay within one straight run or arc
    by : size of the defect, mm
    """
    spec = spec or Spec()
    make, usual = DEFECTS[kind]
    s = spec.track.middle_of_run() if s is None else s
    (cover, base, others), quantity, value, rules = make(spec, *draw(spec), s, length, usual if by is None else by)
    model = assemble(spec, cover, base, *others)
    x, y, z = model.truth.place(np.array([s]))[0][0]
    return model, Flaw(kind, quantity, value, rules, s, length, (float(x), float(y), float(z)))
