"""The nest: a block with a pocket for the base, open by a draft for insertion, and where it carries the base."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from shapely import Polygon

from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import Axes, Column, column, without
from seamcheck.preparation.clamp import RISES, upright
from seamcheck.preparation.corridor import FIT, polygons, rings_of
from seamcheck.proposal.shape import as_line
from seamcheck.sections.pieces import ring_through
from seamcheck.settings.tables import Trial

FLOOR, WALL = 10.0, 8.0
"""mm: how far the block goes on below the pocket's floor and beside its walls. Assumption."""


@dataclass(frozen=True, slots=True, eq=False)
class Nest:
    """The block, the height of its floor (mm in the frame), rings of the pocket and of what it carries (n, 2) mm."""

    solid: Any
    low: float
    pocket: tuple[np.ndarray, ...]
    support: tuple[np.ndarray, ...]


def nest_of(axes: Axes, joint: Mapping[str, Any], bodies: Mapping[str, Body], frame: Frame, trial: Trial) -> Nest:
    """The nest below the base of one joint."""
    value = joint["interface"]["nest_area"]
    by_part: dict[str, list[int]] = {}
    for face in value.get("faces") or ():
        by_part.setdefault(face["part"], []).append(int(face["face"]))
    support = shapely.union_all([union_region(bodies[part], faces, frame) for part, faces in by_part.items()])
    base = [bodies[i] for i in joint["base"]]
    if value.get("lowest") is None:
        low = float(min(frame.boxes(body.boxes)[:, 2].min() for body in base))
    else:
        low = float(frame.local(np.asarray(value["lowest"], dtype=float))[2])
    gripped, below = [], []
    for body in base:
        for i, box in enumerate(frame.boxes(body.boxes)):
            if not box[2] <= low + trial.nest_grip:
                continue
            region = face_region(body, i, frame)
            gripped.append(region)
            if box[2] < low - RISES:
                below.append(region)
    shape = shapely.union_all([part.buffer(0.01) for part in gripped if not part.is_empty])
    outline = Polygon(max(polygons(shape), key=lambda part: part.area).exterior).buffer(trial.nest_play, quad_segs=32)
    lean = float(np.tan(np.radians(trial.nest_draft)))
    floor, rim = low - FLOOR, low + trial.nest_grip
    block = column(axes, upright(outline.buffer(WALL, join_style="mitre", mitre_limit=2.0), floor, rim))
    foot = ring_through(np.asarray(outline.exterior.coords)[:-1], FIT)
    wider = foot.offset(lean * (trial.nest_grip + 1.0)) if lean else foot
    pocket = column(axes, Column(low, rim + 1.0, as_line(foot), as_line(wider)))
    deeper = shapely.union_all([part.buffer(trial.nest_play) for part in below if not part.is_empty])
    holes = [column(axes, upright(part, floor - 1.0, rim + 1.0)) for part in polygons(deeper)]
    carried = support.difference(deeper)
    return Nest(
        without(block, pocket, *holes), low, tuple(rings_of(outline)),
        tuple(ring for part in polygons(carried) for ring in rings_of(part)),
    )  # fmt: skip
