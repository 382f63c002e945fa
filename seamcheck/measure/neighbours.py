"""Parts that are neither cover nor base: their distance from the spot on the seam."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.kernel.distance import point_distance, shape_distance
from seamcheck.measure.additions import Additions, value_of
from seamcheck.measure.corridor import light_at_rib
from seamcheck.settings.tables import Light

_LOOK = 10.0  # mm from the spot within which other parts are measured
_TURNS, _STILL = 30, 1e-7  # steps of the search for the nearest place, and mm that it may still move


class Lit(Struct, frozen=True, eq=False):
    """The strip of the beam where it meets the rib.

    Attributes
    ----------
    region : of the strip, in the view
    view : frame along the beam
    points : (n, 3) mm in the view, of the contour: how high the strip lies
    """

    region: BaseGeometry
    view: Frame
    points: np.ndarray

    def nearest(self, point: np.ndarray) -> np.ndarray:
        """(3,) mm, place of the strip nearest to a point (3,), on the level that the contour has beside it."""
        place = self.view.local(point)
        flat = shapely.Point(place[:2])
        if not self.region.covers(flat):
            flat = shapely.get_point(shapely.shortest_line(self.region, flat), 0)
        xy = np.array([flat.x, flat.y])
        level = self.points[np.argmin(np.linalg.norm(self.points[:, :2] - xy, axis=1)), 2]
        return self.view.world(np.append(xy, level))

    def distance(self, start: np.ndarray, body: Body, face: int) -> tuple[float, np.ndarray]:
        """Shortest distance (mm) of the strip from a face, found from a place (3,) on it, and the place (3,).

        Nearest places of the strip and of the face in turn, until they no longer change.
        """
        at, distance = start, float("inf")
        for _ in range(_TURNS):
            lit = self.nearest(at)
            now, there = point_distance(body, face, lit)
            if not now < distance - _STILL:
                break
            at, distance = there, now
        return distance, at


def neighbours(joint: Joint, contour: Contour, given: Light) -> Additions:
    """The part nearest to the spot on the rib, with its place, and all parts within 10 mm, nearest first.

    Parameters
    ----------
    given : of the light, spot and margin: it takes a strip as wide as the spot, or as the rib's top where none is
        given, and the margin on both sides
    """
    near = []
    view = joint.view
    points = view.local(joint.frame.world(np.vstack([path.points for path in contour.paths])))
    lit = Lit(light_at_rib(joint, contour, view, given), view, points)
    own = view.boxes(joint.rib.boxes[list(joint.rib_faces)])
    spread = (given.spot or 0.0) / 2.0 + given.margin
    shapely.prepare(lit.region)
    for ident, body in joint.bodies.items():
        if ident in joint.cover or ident in joint.base:
            continue
        boxes = view.boxes(body.boxes)
        aside = shapely.distance(lit.region, shapely.box(*boxes.T[[0, 1, 3, 4]]))
        level = np.maximum(np.nanmin(own[:, 2]) - boxes[:, 5], boxes[:, 2] - np.nanmax(own[:, 5]))
        least = np.hypot(aside, np.maximum(level, 0.0))
        found = nearest_faces(joint.rib, joint.rib_faces, body, lit, least, spread)
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
    body: Body, faces: tuple[int, ...], other: Body, lit: Lit, least: np.ndarray, spread: float
) -> tuple[float, np.ndarray, int, int] | None:
    """Shortest distance of the light on some faces of a body from another body's faces, up to 10 mm.

    Parameters
    ----------
    least : (n,) mm that the other body's faces are away from the beam at least
    spread : mm that the light stands out beyond the faces at most

    Returns
    -------
    distance mm, place (3,) on the other body, its face, and the face of the body; None beyond the distance
    """
    own = body.boxes[list(faces)]
    most = _LOOK + spread
    reach = np.concatenate([np.nanmin(own[:, :3], axis=0) - most, np.nanmax(own[:, 3:], axis=0) + most])
    if not np.isfinite(other.box).all() or (other.box[:3] > reach[3:]).any() or (other.box[3:] < reach[:3]).any():
        return None
    apart = np.maximum(own[:, None, :3] - other.boxes[None, :, 3:], other.boxes[None, :, :3] - own[:, None, 3:])
    bound = np.maximum(np.linalg.norm(np.maximum(apart, 0.0), axis=2) - spread, least)
    bound = np.where(np.isfinite(bound), bound, np.inf)
    best: tuple[float, np.ndarray, int, int] | None = None
    limit = _LOOK
    for k in np.argsort(bound, axis=None, kind="stable"):
        i, j = np.unravel_index(k, bound.shape)
        if bound[i, j] > limit:
            break
        apart_now, _, at = shape_distance(body.faces[faces[i]], other.faces[j])
        if not apart_now <= limit + spread:
            continue
        distance, at = lit.distance(at, other, int(j))
        if distance <= limit and (best is None or distance < best[0]):
            best, limit = (distance, at, int(j), int(faces[i])), distance
    return best
