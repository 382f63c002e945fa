"""Parts that are neither cover nor base: how near they come to the seam."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.kernel import Body
from seamcheck.kernel.distance import shape_distance
from seamcheck.measure.additions import Additions, value_of
from seamcheck.measure.corridor import rib_region

_LOOK = 10.0  # mm from the rib within which other parts are measured


def neighbours(joint: Joint) -> Additions:
    """The part nearest to the rib's seam faces, with its place, and all parts within 10 mm, nearest first."""
    near = []
    view = joint.view
    region, own = rib_region(joint, view), view.boxes(joint.rib.boxes[list(joint.rib_faces)])
    shapely.prepare(region)
    for ident, body in joint.bodies.items():
        if ident in joint.cover or ident in joint.base:
            continue
        boxes = view.boxes(body.boxes)
        aside = shapely.distance(region, shapely.box(*boxes.T[[0, 1, 3, 4]]))
        level = np.maximum(np.nanmin(own[:, 2]) - boxes[:, 5], boxes[:, 2] - np.nanmax(own[:, 5]))
        found = nearest_faces(joint.rib, joint.rib_faces, body, _LOOK, np.hypot(aside, np.maximum(level, 0.0)))
        if found is not None:
            distance, at, face, rib_face = found
            near.append((distance, ident, face, rib_face, at))
    if not near:
        return Additions({"neighbour_distance": value_of(None, why="no-neighbour-part")})
    near.sort(key=lambda entry: (round(entry[0], 9), entry[1]))
    entries = [
        value_of(
            distance,
            at,
            say("place.stands", part=f"'{joint.parts[ident].name or ident}'"),
            faces=[{"part": joint.rib_part, "face": rib_face}, {"part": ident, "face": face}],
        )
        for distance, ident, face, rib_face, at in near
    ]
    return Additions({"neighbour_distance": {**entries[0], "places": entries}})


def nearest_faces(
    body: Body, faces: tuple[int, ...], other: Body, most: float, least: np.ndarray | None = None
) -> tuple[float, np.ndarray, int, int] | None:
    """Shortest distance of some faces of a body from another body's faces, up to a distance (mm).

    Parameters
    ----------
    least : (n,) mm that the other body's faces are away at least, where that is known

    Returns
    -------
    distance mm, place (3,) on the other body, its face, and the face of the body; None beyond the distance
    """
    own = body.boxes[list(faces)]
    reach = np.concatenate([np.nanmin(own[:, :3], axis=0) - most, np.nanmax(own[:, 3:], axis=0) + most])
    if not np.isfinite(other.box).all() or (other.box[:3] > reach[3:]).any() or (other.box[3:] < reach[:3]).any():
        return None
    apart = np.maximum(own[:, None, :3] - other.boxes[None, :, 3:], other.boxes[None, :, :3] - own[:, None, 3:])
    bound = np.linalg.norm(np.maximum(apart, 0.0), axis=2)
    if least is not None:
        bound = np.maximum(bound, least)
    bound = np.where(np.isfinite(bound), bound, np.inf)
    best: tuple[float, np.ndarray, int, int] | None = None
    limit = most
    for k in np.argsort(bound, axis=None, kind="stable"):
        i, j = np.unravel_index(k, bound.shape)
        if bound[i, j] > limit:
            break
        distance, _, at = shape_distance(body.faces[faces[i]], other.faces[j])
        if distance <= limit and (best is None or distance < best[0]):
            best, limit = (distance, at, int(j), int(faces[i])), distance
    return best
