"""Flanks of cover and base that pass close to each other while the cover sinks: which they are, and their play."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.catalogue.kinds import PLAIN_WALL
from seamcheck.joint import Joint
from seamcheck.joint.facets import spans
from seamcheck.joint.frame import Frame
from seamcheck.measure.depth import Overlap
from seamcheck.measure.overlap import are_near
from seamcheck.measure.ridge import rib_faces, ridge
from seamcheck.sections.face_gaps import FaceList

NEAR = 0.3  # mm between two flanks that guide each other; further apart they do not guide
STEEP = np.sin(np.radians(15.0))  # of a facet's normal along the beam: a larger lean is lead-in, no flank
_LEAST = 0.5  # mm of a flank's height; lower ones guide nothing
_ENGAGED = 0.05  # mm of common height at the end of the travel
OFF = 1e-3  # mm from the ends of a flank at which it is cut
_BEHIND = 0.1  # mm that flanks may overlap; what lies further behind is something else


class Cut(Struct, frozen=True, eq=False):
    """A flank cut level: ends (k, 2, 2) mm in the view, normal (k, 2) unit vectors out of the material."""

    ends: np.ndarray
    normal: np.ndarray


def cut_at(corners: np.ndarray, normal: np.ndarray, level: float) -> Cut:
    """Cut facets at a level.

    Parameters
    ----------
    corners : (m, 3, 3) mm; normal : (m, 3) unit, out of the material; level : mm along z
    """
    z = corners[:, :, 2] - level
    crossed = (z.min(axis=1) < 0.0) & (z.max(axis=1) > 0.0)
    corners, z, normal = corners[crossed], z[crossed], normal[crossed]
    one = np.stack([corners, np.roll(corners, -1, axis=1)], axis=2)  # (m, 3 sides, 2 ends, 3)
    za, zb = z, np.roll(z, -1, axis=1)
    meets = (za < 0.0) != (zb < 0.0)
    with np.errstate(invalid="ignore", divide="ignore"):
        share = np.where(meets, za / (za - zb), 0.0)[:, :, None]
    place = one[:, :, 0, :2] + share * (one[:, :, 1, :2] - one[:, :, 0, :2])
    ends = place[meets].reshape(-1, 2, 2)  # a facet that is crossed has two sides that are
    flat = normal[:, :2] / np.maximum(np.linalg.norm(normal[:, :2], axis=1), 1e-12)[:, None]
    return Cut(ends, flat)


def play_between(one: Cut, other: Cut, near: float = NEAR) -> tuple[float, np.ndarray]:
    """The shortest way sideways between two cut flanks that face each other.

    Returns
    -------
    mm, negative where one stands up to 0.1 mm in the other, and its place (2,) on the other one; (inf, NaN) where they
    come no nearer than ``near`` mm
    """
    nothing = np.inf, np.full(2, np.nan)
    if not len(one.ends) or not len(other.ends):
        return nothing
    a, b = shapely.linestrings(one.ends), shapely.linestrings(other.ends)
    i, j = shapely.STRtree(b).query(a, predicate="dwithin", distance=near)
    facing = (one.normal[i] * other.normal[j]).sum(axis=1) < -0.7
    i, j = i[facing], j[facing]
    if not len(i):
        return nothing
    ways = shapely.get_coordinates(shapely.shortest_line(a[i], b[j])).reshape(-1, 2, 2)
    step = ways[:, 1] - ways[:, 0]
    size = np.linalg.norm(step, axis=1)
    ahead = (step * one.normal[i]).sum(axis=1)
    before, behind = ahead >= 0.7 * size - 1e-9, (ahead <= -0.7 * size) & (size <= _BEHIND)
    real = before | behind  # the other one lies in front or behind, not beside it
    if not real.any():
        return nothing
    i, size, at, sign = i[real], size[real], ways[real, 1], np.where(before[real], 1.0, -1.0)
    nearest = np.lexsort((size, i))
    nearest = nearest[np.unique(i[nearest], return_index=True)[1]]  # of each segment the nearest before or behind it
    k = nearest[np.argmin((sign * size)[nearest])]
    return float(sign[k] * size[k]), at[k]


class Flank(Struct, frozen=True, eq=False):
    """The steep facets of one face: corners (m, 3, 3) mm and normal (m, 3) in the view; low, high mm."""

    part: str
    face: int
    corners: np.ndarray
    normal: np.ndarray

    @property
    def low(self) -> float:
        return float(self.corners[:, :, 2].min())

    @property
    def high(self) -> float:
        return float(self.corners[:, :, 2].max())


class Guide(Struct, frozen=True, eq=False):
    """Two flanks that pass each other.

    play : mm at the end of the travel, at (3,) mm in the view; depth : mm of common height at initial contact, negative
    where they meet later
    """

    cover: Flank
    base: Flank
    play: float
    at: np.ndarray
    depth: float


def find_guides(joint: Joint, contact: float, collapse: float, overlaps: Sequence[Overlap]) -> Iterator[Guide]:
    """All pairs of flanks, one on the cover and one on the base, that come near each other.

    Parameters
    ----------
    contact : mm that the cover sinks as drawn until it first touches the rib; collapse : mm
    overlaps : where both are drawn into each other, which has its own value
    """
    view, end = joint.view, contact + collapse
    upper, lower = (_list(joint, parts, view) for parts in (joint.cover, joint.base))
    one, other = _near_pairs(upper.box, lower.box, end)
    if not len(one):
        return
    over, under = _flanks(upper, np.unique(one), view), _flanks(lower, np.unique(other), view)
    for i, j in zip(one.tolist(), other.tolist(), strict=True):
        a, b = over.get(i), under.get(j)
        if a is None or b is None or _is_press(a, b, joint, overlaps):
            continue
        low, high = max(a.low - end, b.low), min(a.high - end, b.high)
        if high - low < _ENGAGED:
            continue
        best = np.inf, np.full(2, np.nan), 0.0
        for level in np.linspace(low + OFF, high - OFF, 3):
            play, at = play_between(cut_at(a.corners, a.normal, level + end), cut_at(b.corners, b.normal, level))
            best = min(best, (play, at, level), key=lambda found: found[0])
        if np.isfinite(best[0]):
            depth = min(a.high - contact, b.high) - max(a.low - contact, b.low)
            yield Guide(a, b, best[0], np.append(best[1], best[2]), depth)


def _list(joint: Joint, parts: Sequence[str], view: Frame) -> FaceList:
    """Faces of some parts that may be flanks: upright ones, those of ribs left out."""
    everywhere = np.array([-np.inf] * 3 + [np.inf] * 3)
    faces = FaceList.of({part: joint.bodies[part] for part in parts}, view, None, everywhere)
    keep = (faces.box[:, 5] - faces.box[:, 2]) >= _LEAST
    for k, part in enumerate(faces.ids):
        body, mine = faces.bodies[k], faces.part == k
        tilt = np.abs(body.planes[faces.face[mine], :3] @ view.up)
        keep[mine] &= ~(tilt > STEEP)
        gone = [ridge(body, tops, joint.frame.axes[2]) for owner, tops in joint.other_ribs if owner == part]
        if part == joint.rib_part and joint.kind != PLAIN_WALL and joint.rib_on != "none":
            gone.append(rib_faces(joint))
        if gone:
            keep[mine] &= ~np.isin(faces.face[mine], np.concatenate(gone))
    return faces.take(np.flatnonzero(keep))


def _near_pairs(a: np.ndarray, b: np.ndarray, end: float) -> tuple[np.ndarray, np.ndarray]:
    """Faces whose boxes (n, 6) and (m, 6) come near enough sideways, and share some height at the end of the travel."""
    if not len(a) or not len(b):
        return np.empty(0, int), np.empty(0, int)
    tree = shapely.STRtree(spans(b[:, :2], b[:, 3:5]))
    one, other = tree.query(spans(a[:, :2] - NEAR, a[:, 3:5] + NEAR))
    near = (a[one, 2] - end < b[other, 5]) & (a[one, 5] - end > b[other, 2])
    return one[near], other[near]


def _flanks(faces: FaceList, which: np.ndarray, view: Frame) -> dict[int, Flank]:
    """Number in the list -> flank, of faces that have upright facets over some height."""
    some = faces.take(which)
    sheet = some.facets(view, None)
    steep = sheet.where(np.abs(sheet.normal[:, 2]) <= STEEP)
    found = {}
    for k, (part, face) in enumerate(zip(some.part.tolist(), some.face.tolist(), strict=True)):
        mine = (steep.part == part) & (steep.face == face)
        if not mine.any():
            continue
        flank = Flank(faces.ids[part], face, steep.corners[mine], steep.normal[mine])
        if flank.high - flank.low >= _LEAST:
            found[int(which[k])] = flank
    return found


def _is_press(a: Flank, b: Flank, joint: Joint, overlaps: Sequence[Overlap]) -> bool:
    """Whether both overlap as drawn: that is a finding of its own."""
    return any(
        (a.part, b.part) == (overlap.cover[0], overlap.other[0])
        and overlap.cover[1] >= 0
        and are_near(joint.bodies[a.part], a.face, overlap.cover[1])
        and are_near(joint.bodies[b.part], b.face, overlap.other[1])
        for overlap in overlaps
    )
