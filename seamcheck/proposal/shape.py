"""From a section and mid-lines to bodies: what is cut away, and the part that is left."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import ABOVE, Axes, Column, NotCut, column, common, cut_out, slab, united, volume, without
from seamcheck.proposal.level import (
    FLAT,
    PLAY,
    area_in,
    as_line,
    built_in,
    cutting_bodies,
    free_land,
    level_traps,
    strips,
)
from seamcheck.proposal.room import Net
from seamcheck.proposal.section import Section
from seamcheck.sections.pieces import Ring, rings_of

DRAFTED = 0.03
"""Share by which the draft of flanks and walls may change the volume of a cutting body."""


class Cut(Struct, frozen=True, eq=False):
    """The part with the joint, and the named bodies that were taken out of it; they reach above the contact."""

    part: Any
    tools: tuple[tuple[str, Any], ...]


def contact_faces(body: Body, contact: BaseGeometry, frame: Frame, up: float, height: float) -> list[int]:
    """Faces of a part that lie in the contact and look towards the other part.

    Parameters
    ----------
    contact : region in the frame's x, y
    up : +1 where the part's material lies below the contact in the frame, -1 above
    height : mm, largest height of the contact above and below the frame's origin that is looked at
    """
    found = []
    for i, box in enumerate(body.boxes):
        corners = frame.local(np.array([[box[a], box[b], box[c]] for a in (0, 3) for b in (1, 4) for c in (2, 5)]))
        if np.isnan(corners).any() or corners[:, 2].min() > height or corners[:, 2].max() < -height:
            continue
        if not shapely.box(*corners[:, :2].min(axis=0), *corners[:, :2].max(axis=0)).intersects(contact):
            continue
        facets = body.facets([i], 0.05)
        if not len(facets.corners):
            continue
        normals = np.cross(*(facets.corners[:, k] - facets.corners[:, 0] for k in (1, 2)))
        if up * float(normals.sum(axis=0) @ frame.axes[2]) < 0.3 * float(np.linalg.norm(normals, axis=1).sum()):
            continue
        if face_region(body, i, frame).intersection(contact).area > 1e-3:
            found.append(i)
    return found


def cut_joint(
    body: Body,
    faces: Sequence[int],
    frame: Frame,
    nets: Sequence[Net],
    section: Section,
    heights: tuple[float, float],
    region: BaseGeometry,
) -> Cut:
    """Cut the rib free: lower the land beside it, and deepen the traps.

    Parameters
    ----------
    faces : of the contact
    frame : z out of the part, against the beam or along it
    nets : mid-lines of the rib
    section : dimensions
    heights : mm, lowest and highest place of the contact in the frame
    region : the contact in the frame's x, y; the land is lowered there and ``PLAY`` beyond, no further

    Raises
    ------
    NotCut
    """
    if heights[1] - heights[0] < FLAT:
        level = float(np.mean(heights))
        land = free_land(body, faces, frame, section, level, region)
        if land is not None:
            beside = level_traps(nets, section, level, land)
            tools = cutting_bodies(frame, beside, land)
            part = built_in(body, frame, beside, land)
            return Cut(cut_out(body, [tool for _, tool in tools]) if part is None else part, tuple(tools))
    axes = Axes(frame.origin, frame.axes)
    up = frame.axes[2]
    boxes = frame.boxes(body.boxes[list(faces)])  # the traps reach lower on a slope than the mid-line does
    low, high = boxes[:, 2].min() - section.rib_height - 0.2, boxes[:, 5].max() + 2 * ABOVE
    narrow = strips(nets, section.rib_width / 2.0, section.rib_width / 2.0)
    rib = united([_column(axes, *strip, section, low, high, +1.0) for strip in narrow])
    wide = strips(nets, section.half_width("inner"), section.half_width("outer"))
    traps = united([_column(axes, *strip, section, low, high, -1.0) for strip in wide])
    land = slab(body, faces, up, section.lowering)
    seen = own = union_region(body, faces, frame)
    if own.area > 1.01 * region.area:
        around = region.buffer(PLAY, join_style="mitre")
        straight = replace(section, draft=0.0)
        land = common(land, united([_column(axes, *strip, straight, low, high, 1.0) for strip in rings_of(around)]))
        seen = own.intersection(around)
    lowering = without(land, rib)
    deep = without(common(slab(body, faces, up, section.rib_height), traps), rib)
    ribs, wides = (_areas(some) for some in (narrow, wide))
    _check_volume(lowering, seen.difference(ribs), section.lowering)
    _check_volume(deep, own.intersection(wides).difference(ribs), section.rib_height)
    part = cut_out(body, [lowering, deep])
    return Cut(part, (("lowering", lowering), ("flash traps", deep)))


def _areas(some: Sequence[tuple[Ring, tuple[Ring, ...]]]) -> BaseGeometry:
    """What strips take of the frame's plane."""
    holes = [shapely.union_all([area_in(hole) for hole in inside]) for _, inside in some]
    return shapely.union_all(
        [area_in(outline).difference(hole) for (outline, _), hole in zip(some, holes, strict=True)]
    )


def _check_volume(tool: Any, area: BaseGeometry, depth: float) -> None:
    """Raise where a cutting body is not its area, seen along z, times its height (Cavalieri).

    What it shares with the part agrees with what is left of the part also where it is itself not what it should be.
    """
    missing = abs(volume(tool) - area.area * (depth + ABOVE))
    if missing > DRAFTED * area.area * (depth + ABOVE):
        raise NotCut(say("propose.cut.volumes-by", by=missing))


def _column(
    axes: Axes, outline: Ring, holes: Sequence[Ring], section: Section, low: float, high: float, grows: float
) -> Any:
    """A column whose walls lean by the draft; ``grows`` +1: wider downward, -1: narrower."""
    top, bottom = (-grows * section.lean * z for z in (high, low))
    return column(
        axes,
        Column(
            low, high, as_line(outline.offset(bottom)), as_line(outline.offset(top)),
            tuple(as_line(hole.offset(-bottom)) for hole in holes), tuple(as_line(hole.offset(-top)) for hole in holes),
        ),
    )  # fmt: skip
