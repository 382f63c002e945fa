"""The nest: a block with a pocket for the base, open by a draft for insertion, and where it carries the base."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely import Polygon

from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import Axes, Column, column, without
from seamcheck.preparation.clamp import LEVEL, RISES, upright
from seamcheck.preparation.corridor import FIT, polygons, rings_of
from seamcheck.proposal.level import as_line
from seamcheck.sections.pieces import ring_through
from seamcheck.settings.tables import Trial

BELOW_COVER, LEAST_GRIP = 0.5, 0.5
"""mm: how far the pocket's rim stays below the sunken cover, and how deep it is at least. Assumption."""

FLOOR, WALL = 10.0, 8.0
"""mm: how far the block goes on below the pocket's floor and beside its walls. Assumption."""


class Nest(Struct, frozen=True, eq=False):
    """The block; low : mm in the frame, its floor; grip : mm, its depth; rings of the pocket and of what it carries
    (n, 2) mm."""

    solid: Any
    low: float
    grip: float
    pocket: tuple[np.ndarray, ...]
    support: tuple[np.ndarray, ...]


def nest_of(
    axes: Axes, joint: Mapping[str, Any], bodies: Mapping[str, Body], frame: Frame, trial: Trial, collapse: float
) -> Nest:
    """The nest below the base of one joint.

    Parameters
    ----------
    collapse : mm by which the cover sinks; the pocket's rim stays below it
    """
    base = [bodies[i] for i in joint["base"]]
    bottom = float(min(frame.boxes(body.boxes)[:, 2].min() for body in base))
    lowest, below_seam = joint["interface"]["nest_area"].get("lowest"), _faces_below(joint, bodies)
    low = bottom if lowest is None else float(frame.local(np.asarray(lowest, dtype=float))[2])
    carried = _level(below_seam, frame, low).difference(_deeper(base, frame, low, trial))
    if carried.is_empty:  # what lies below the seam is out of reach, as a ledge within the housing: the base stands
        low = bottom
        carried = _level([(body, i) for body in base for i in range(len(body.faces))], frame, low)
    gripped = [
        face_region(body, i, frame)
        for body in base
        for i, box in enumerate(frame.boxes(body.boxes))
        if box[2] <= low + trial.nest_grip
    ]
    shape = shapely.union_all([part.buffer(0.01) for part in gripped if not part.is_empty])
    outline = Polygon(max(polygons(shape), key=lambda part: part.area).exterior).buffer(trial.nest_play, quad_segs=32)
    wall = outline.buffer(WALL, join_style="mitre", mitre_limit=2.0)
    others = [body for name, body in bodies.items() if name not in joint["base"]]
    grip = max(min(trial.nest_grip, _room(others, frame, wall, low) - collapse - BELOW_COVER), LEAST_GRIP)
    lean = float(np.tan(np.radians(trial.nest_draft)))
    floor, rim = low - FLOOR, low + grip
    foot = ring_through(np.asarray(outline.exterior.coords)[:-1], FIT)
    wider = foot.offset(lean * (grip + 1.0)) if lean else foot
    pocket = column(axes, Column(low, rim + 1.0, as_line(foot), as_line(wider)))
    holes = [column(axes, upright(part, floor - 1.0, rim + 1.0)) for part in polygons(_deeper(base, frame, low, trial))]
    return Nest(
        without(column(axes, upright(wall, floor, rim)), pocket, *holes), low, grip, tuple(rings_of(outline)),
        tuple(ring for part in polygons(carried) for ring in rings_of(part)),
    )  # fmt: skip


def _faces_below(joint: Mapping[str, Any], bodies: Mapping[str, Body]) -> list[tuple[Body, int]]:
    """Faces at which the material straight below the seam ends, as the review found them."""
    faces = joint["interface"]["nest_area"].get("faces") or ()
    return [(bodies[face["part"]], int(face["face"])) for face in faces]


def _level(faces: Sequence[tuple[Body, int]], frame: Frame, low: float) -> shapely.Geometry:
    """Those of the faces that lie on the pocket's floor."""
    found = []
    for body, i in faces:
        box = frame.boxes(body.boxes[i : i + 1])[0]
        if max(abs(box[2] - low), abs(box[5] - low)) < LEVEL:
            found.append(face_region(body, i, frame))
    return shapely.union_all(found)


def _deeper(base: Sequence[Body], frame: Frame, low: float, trial: Trial) -> shapely.Geometry:
    """Where the base goes on below the pocket's floor, with play."""
    found = [
        face_region(body, i, frame).buffer(trial.nest_play)
        for body in base
        for i, box in enumerate(frame.boxes(body.boxes))
        if box[2] < low - RISES
    ]
    return shapely.union_all([part for part in found if not part.is_empty])


def _room(others: Sequence[Body], frame: Frame, wall: Polygon, low: float) -> float:
    """mm from the pocket's floor up to the lowest place of another part over the block; inf without one."""
    boxes = [frame.boxes(body.box[None])[0] for body in others if np.isfinite(body.box).all()]
    over = [box[2] - low for box in boxes if box[5] > low and shapely.box(*box[[0, 1, 3, 4]]).intersects(wall)]
    return float(min(over, default=np.inf))
