"""Holes that open in the rib's top: how wide, how deep, and whether they go right through."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.catalogue.say import say
from seamcheck.contour.holes import hole_width, without_holes
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.table import Survey
from seamcheck.sections.face_gaps import FaceList, Sheet

_BELOW = 0.02  # mm below the rib's top from which on something is the bottom of a hole


def rib_holes(joint: Joint, survey: Survey) -> Additions:
    """The value 'rib_hole', the width of the widest hole in the rib's top, a place for each; nothing without any.

    Notes
    -----
    Width is the diameter of the largest circle that fits into the opening. Depth is taken under that circle's centre,
    from the rib's top down to the next face that looks up; without one the hole goes through.
    """
    holes = without_holes(joint.region)[1]
    if not holes:
        return Additions({})
    view, frame = joint.view, joint.frame
    centres = np.array([shapely.get_coordinates(shapely.maximum_inscribed_circle(hole))[0] for hole in holes])
    flat = view.local(frame.world(np.column_stack([centres, np.zeros(len(centres))])))
    points = np.concatenate([view.local(path.points) for path in survey.paths])
    nearest = np.linalg.norm(points[None, :, :2] - flat[:, None, :2], axis=2).argmin(axis=1)
    flat[:, 2] = points[nearest, 2]
    depths = _depths(flat, _floors(joint, view, flat), joint.up)
    places: list[Value] = []
    for hole, place, depth in zip(holes, flat, depths, strict=True):
        width = hole_width(hole)
        says = say("place.through") if np.isinf(depth) else say("place.deep", depth=float(depth))
        faces = [{"part": joint.rib_part, "face": int(face)} for face in joint.rib_faces[:1]]
        places.append(value_of(width, view.world(place), says, faces=faces))
    places.sort(key=lambda place: -float(place["value"]))
    return Additions({"rib_hole": {**places[0], "places": places}})


def _floors(joint: Joint, view: Frame, flat: np.ndarray) -> Sheet:
    """Facets of the part with the rib that look the way its top does, under or over some places."""
    low, high = flat.min(axis=0) - 1.0, flat.max(axis=0) + 1.0
    zone = np.array([low[0], low[1], -np.inf, high[0], high[1], np.inf])
    return FaceList.of({joint.rib_part: joint.rib}, view, joint.up, zone).facets(view, joint.up)


def _depths(flat: np.ndarray, floors: Sheet, up: float) -> np.ndarray:
    """(n,) mm from places (n, 3) on the rib's top into the part to the next face, inf where there is none."""
    depth = np.full(len(flat), np.inf)
    height, index, _ = heights_at(flat, floors.corners)
    below = up * (flat[index, 2] - height)
    inside = below > _BELOW
    np.minimum.at(depth, index[inside], below[inside])
    return depth
