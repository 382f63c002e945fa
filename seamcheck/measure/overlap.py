"""Where the cover penetrates another part elsewhere than at the rib: press fits, threads, mistakes."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

import numpy as np
import shapely
from msgspec.structs import replace

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.measure.additions import Additions, value_of
from seamcheck.measure.corridor import rib_region
from seamcheck.measure.crossing import crossings, face_pairs, lines_of, pierce
from seamcheck.measure.depth import Overlap, deepest, within
from seamcheck.measure.ridge import rib_faces, ridge
from seamcheck.sections.face_gaps import DEEPEST

_BESIDE_RIB = 0.6  # mm round the rib's top in which its flanks may reach into the cover: drawn as welded
_MOST = 50


def find_overlaps(joint: Joint, moving: Collection[str] = ()) -> list[Overlap]:
    """All overlaps of cover parts with other parts, the rib's own left out; the deepest first.

    Parameters
    ----------
    moving : parts that move with the cover and never stop it

    Notes
    -----
    Two closed surfaces that interpenetrate cross along closed lines. Inside of such a line, at some places, the way
    through both parts is measured square to the faces that cross along it. The shortest one counts at each place, and
    the longest of these is the depth. An overlap along the beam stops the cover; one with a part other than the base
    that lies deeper than parts are drawn into each other along the beam may be held by the cover, and is no stop.
    """
    view = joint.view
    zone = rib_region(joint, view).buffer(_BESIDE_RIB)
    found: list[Overlap] = []
    for one in joint.cover:
        for other, body in joint.bodies.items():
            if other in joint.cover:
                continue
            found += _of_pair(joint, one, other, joint.bodies[one], body, view, zone)
    found.sort(key=lambda overlap: (-round(overlap.depth, 6), overlap.other, overlap.at))
    return [replace(overlap, is_stop=_is_stop(overlap, joint, moving)) for overlap in found[:_MOST]]


def _is_stop(overlap: Overlap, joint: Joint, moving: Collection[str]) -> bool:
    other = overlap.other[0]
    if other in moving or (other not in joint.base and overlap.depth > DEEPEST):
        return False
    return bool(abs(np.dot(overlap.along, joint.beam)) >= np.sqrt(0.5))


def overlap_value(overlaps: Sequence[Overlap], joint: Joint) -> Additions:
    """The value 'overlap': the deepest of those that do not stop the cover, with all their places."""
    places = [
        overlap.place(
            overlap.depth,
            say("place.overlap", one=f"'{_name(joint, overlap.cover)}'", other=f"'{_name(joint, overlap.other)}'"),
        )
        for overlap in overlaps
        if not overlap.is_stop
    ]
    return Additions({"overlap": {**places[0], "places": places} if places else value_of(0.0)})


def _name(joint: Joint, face: tuple[str, int]) -> str:
    return joint.parts[face[0]].name or face[0]


def _of_pair(
    joint: Joint, one: str, other: str, cover: Body, body: Body, view: Frame, zone: shapely.Geometry
) -> Iterator[Overlap]:
    if not pierce(cover.box[None], body.box[None])[0]:
        return
    a, b = face_pairs(cover, body)
    if joint.rib_part in (one, other):  # the rib's top melts, wherever it lies
        melts = np.isin(a if joint.rib_part == one else b, joint.rib_faces)
        a, b = a[~melts], b[~melts]
    if len(a):
        place, pair, upper, lower = crossings(cover, body, a, b)
        if len(place):
            kept = ~_is_rib(joint, one, other, upper, lower, view.local(place)[:, :2], zone)
            place, pair, upper, lower = place[kept], pair[kept], upper[kept], lower[kept]
        along_lines = (deepest(one, other, cover, body, place[k], upper[k], lower[k]) for k in lines_of(place, pair))
        yield from _once([overlap for overlap in along_lines if overlap is not None], cover, body)
        if len(place):
            return
    yield from within(one, other, cover, body)


def _once(found: list[Overlap], cover: Body, body: Body) -> list[Overlap]:
    """Overlaps of one pair, each once: its border may be several lines, between neighbouring faces."""

    kept: list[Overlap] = []
    for overlap in sorted(found, key=lambda o: (-round(o.depth, 6), o.at)):
        if not any(
            are_near(cover, overlap.cover[1], other.cover[1]) and are_near(body, overlap.other[1], other.other[1])
            for other in kept
        ):
            kept.append(overlap)
    return kept


def _is_rib(
    joint: Joint, one: str, other: str, upper: np.ndarray, lower: np.ndarray, flat: np.ndarray, zone: shapely.Geometry
) -> np.ndarray:
    """(k,) bool: crossings on the rib's own flanks beside its top, and on the ribs of neighbouring joints."""
    rib = np.zeros(len(flat), dtype=bool)
    for part, faces in ((one, upper), (other, lower)):
        if part == joint.rib_part:
            rib |= np.isin(faces, rib_faces(joint)) & shapely.contains_xy(zone, flat)
        for owner, tops in joint.other_ribs:
            if owner == part:
                rib |= np.isin(faces, ridge(joint.bodies[part], tops, joint.frame.axes[2]))
    return rib


def are_near(body: Body, one: int, other: int) -> bool:
    """Whether two faces are the same or neighbours."""
    return one == other or bool(body.edge_indices(one) & body.edge_indices(other))
