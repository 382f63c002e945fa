"""From a section and mid-lines to bodies: what is cut away, and the part that is left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import ABOVE, Axes, Column, column, common, cut_out, slab, united, without
from seamcheck.proposal.level import FLAT, PLAY, as_line, built_in, cutting_bodies, free_land, level_traps, strips
from seamcheck.proposal.room import Net
from seamcheck.proposal.section import Section
from seamcheck.sections.pieces import Ring, rings_of


@dataclass(frozen=True, slots=True, eq=False)
class Cut:
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
    frame : z out of the part, against the light or along it
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
    low, high = heights[0] - section.rib_height - 0.2, heights[1] + 2 * ABOVE
    rib = united(
        [
            _column(axes, *strip, section, low, high, +1.0)
            for strip in strips(nets, section.rib_width / 2.0, section.rib_width / 2.0)
        ]
    )
    wide = strips(nets, section.half_width("inner"), section.half_width("outer"))
    traps = united([_column(axes, *strip, section, low, high, -1.0) for strip in wide])
    land = slab(body, faces, up, section.lowering)
    if union_region(body, faces, frame).area > 1.01 * region.area:
        around = region.buffer(PLAY, join_style="mitre")
        straight = replace(section, draft=0.0)
        land = common(land, united([_column(axes, *strip, straight, low, high, 1.0) for strip in rings_of(around)]))
    lowering = without(land, rib)
    deep = without(common(slab(body, faces, up, section.rib_height), traps), rib)
    part = cut_out(body, [lowering, deep])
    return Cut(part, (("lowering", lowering), ("flash traps", deep)))


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
