"""Flanks of cover and base that pass close to each other while the cover sinks: draft, play, depth, lead-in."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np
import shapely

from seamcheck.catalogue.kinds import PLAIN_WALL
from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.kernel.normals import spread_normals
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.crossing import ANGLE, DEFLECTION
from seamcheck.measure.depth import Overlap
from seamcheck.measure.overlap import are_near
from seamcheck.measure.ridge import rib_faces, ridge
from seamcheck.sections.face_gaps import FaceList

KEYS = ("guide_play", "guide_depth", "guide_draft", "lead_in")
NEAR = 0.3  # mm between two flanks that guide each other; further apart they only stand beside each other
_STEEP = np.sin(np.radians(15.0))  # of a facet's normal along the light: what leans more is lead-in, no flank
_LEAST = 0.5  # mm of a flank's height; lower ones guide nothing
DRAFTED = 3.0  # mm of a flank's height from which on its draft counts: 0.5° are 0.03 mm there
_ENGAGED = 0.05  # mm of common height at the end of the travel
_OFF = 1e-3  # mm from the ends of a flank at which it is cut
_ASIDE = 2.0  # mm along the light beside a flank's end within which its lead-in is looked for
_ROOM = 0.02  # mm that a rounding's facets may begin within the flank
_MOST_PLACES = 50
_ALIKE = 0.005  # mm by which guides may differ that are told as one
_LEVEL = np.cos(np.radians(10.0))  # of a facet's normal along the light: an end face, no lead-in
_BEHIND = 0.1  # mm that flanks may have run into each other; what lies further behind is something else
_SAME = 0.05  # degrees of drafts that are told as one


@dataclass(frozen=True, slots=True, eq=False)
class Cut:
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
    real = before | behind  # the other one lies before or behind it, not aside
    if not real.any():
        return nothing
    i, size, at, sign = i[real], size[real], ways[real, 1], np.where(before[real], 1.0, -1.0)
    nearest = np.lexsort((size, i))
    nearest = nearest[np.unique(i[nearest], return_index=True)[1]]  # of each segment the nearest before or behind it
    k = nearest[np.argmin((sign * size)[nearest])]
    return float(sign[k] * size[k]), at[k]


@dataclass(frozen=True, slots=True, eq=False)
class _Flank:
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


@dataclass(frozen=True, slots=True, eq=False)
class _Guide:
    """Two flanks that pass each other.

    play : mm at the end of the travel, at (3,) mm in the view; depth : mm of common height at initial contact, negative
    where they meet later
    """

    cover: _Flank
    base: _Flank
    play: float
    at: np.ndarray
    depth: float


def guide_values(joint: Joint, contact: float, collapse: float, overlaps: Sequence[Overlap]) -> Additions:
    """Play, depth, draft and lead-in of the flanks that guide the cover into the base.

    Parameters
    ----------
    contact : mm that the cover sinks as drawn until it first touches the rib; NaN where it never does
    collapse : mm
    overlaps : where both are drawn into each other, which has its own value
    """
    if not np.isfinite(contact):
        return Additions(dict.fromkeys(KEYS, value_of(None, why="no-opposite")))
    guides = list(_guides(joint, contact, collapse, overlaps))
    if not guides:
        return Additions(dict.fromkeys(KEYS, value_of(None, why="no-guide")))
    features = _features(guides, joint)
    return Additions(
        {
            "guide_play": _least([min(f, key=lambda g: g.play) for f in features], lambda g: g.play, joint),
            "guide_depth": _least([max(f, key=lambda g: g.depth) for f in features], lambda g: g.depth, joint),
            "guide_draft": _draft(guides, joint),
            "lead_in": _lead_in(features, joint),
        }
    )


def _guides(joint: Joint, contact: float, collapse: float, overlaps: Sequence[Overlap]) -> Iterator[_Guide]:
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
        for level in np.linspace(low + _OFF, high - _OFF, 3):
            play, at = play_between(cut_at(a.corners, a.normal, level + end), cut_at(b.corners, b.normal, level))
            best = min(best, (play, at, level), key=lambda found: found[0])
        if np.isfinite(best[0]):
            depth = min(a.high - contact, b.high) - max(a.low - contact, b.low)
            yield _Guide(a, b, best[0], np.append(best[1], best[2]), depth)


def _list(joint: Joint, parts: Sequence[str], view: Frame) -> FaceList:
    """Faces of some parts that may be flanks: upright ones, those of ribs left out."""
    everywhere = np.array([-np.inf] * 3 + [np.inf] * 3)
    faces = FaceList.of({part: joint.bodies[part] for part in parts}, view, None, everywhere)
    keep = (faces.box[:, 5] - faces.box[:, 2]) >= _LEAST
    for k, part in enumerate(faces.ids):
        body, mine = faces.bodies[k], faces.part == k
        tilt = np.abs(body.planes[faces.face[mine], :3] @ view.up)
        keep[mine] &= ~(tilt > _STEEP)
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
    tree = shapely.STRtree(shapely.box(b[:, 0], b[:, 1], b[:, 3], b[:, 4]))
    one, other = tree.query(shapely.box(a[:, 0] - NEAR, a[:, 1] - NEAR, a[:, 3] + NEAR, a[:, 4] + NEAR))
    near = (a[one, 2] - end < b[other, 5]) & (a[one, 5] - end > b[other, 2])
    return one[near], other[near]


def _flanks(faces: FaceList, which: np.ndarray, view: Frame) -> dict[int, _Flank]:
    """Number in the list -> flank, of faces that have upright facets over some height."""
    some = faces.take(which)
    sheet = some.facets(view, None)
    steep = sheet.where(np.abs(sheet.normal[:, 2]) <= _STEEP)
    found = {}
    for k, (part, face) in enumerate(zip(some.part.tolist(), some.face.tolist(), strict=True)):
        mine = (steep.part == part) & (steep.face == face)
        if not mine.any():
            continue
        flank = _Flank(faces.ids[part], face, steep.corners[mine], steep.normal[mine])
        if flank.high - flank.low >= _LEAST:
            found[int(which[k])] = flank
    return found


def _is_press(a: _Flank, b: _Flank, joint: Joint, overlaps: Sequence[Overlap]) -> bool:
    """Whether both are drawn into each other: that is told by itself."""
    return any(
        (a.part, b.part) == (overlap.cover[0], overlap.other[0])
        and overlap.cover[1] >= 0
        and are_near(joint.bodies[a.part], a.face, overlap.cover[1])
        and are_near(joint.bodies[b.part], b.face, overlap.other[1])
        for overlap in overlaps
    )


def _features(guides: list[_Guide], joint: Joint) -> list[list[_Guide]]:
    """The guides of one feature together: those whose flanks on the cover are neighbours."""
    groups: list[list[_Guide]] = []
    for guide in guides:
        mine = [g for g in groups if any(_hang_together(guide.cover, other.cover, joint) for other in g)]
        groups = [g for g in groups if not any(g is one for one in mine)]
        groups.append([guide, *(other for g in mine for other in g)])
    return groups


def _hang_together(one: _Flank, other: _Flank, joint: Joint) -> bool:
    return one.part == other.part and are_near(joint.bodies[one.part], one.face, other.face)


def _faces(*flanks: _Flank) -> list[dict[str, object]]:
    return [{"part": flank.part, "face": flank.face} for flank in flanks]


def _name(flank: _Flank, joint: Joint) -> str:
    return f"'{joint.parts[flank.part].name or flank.part}'"


def _least(guides: list[_Guide], key: Callable[[_Guide], float], joint: Joint) -> Value:
    """The smallest value of the features, and all of them as places, the smallest first; equal ones as one place."""
    guides = sorted(guides, key=lambda guide: (round(key(guide), 6), guide.cover.part, guide.cover.face))
    alike: list[list[_Guide]] = []
    for guide in guides:
        parts = guide.cover.part, guide.base.part
        same = (g for g in alike if (g[0].cover.part, g[0].base.part) == parts and key(guide) - key(g[0]) < _ALIKE)
        if group := next(same, None):
            group.append(guide)
        else:
            alike.append([guide])
    places = [
        value_of(key(first), joint.view.world(first.at), why, faces=_faces(first.cover, first.base))
        for first, why in ((group[0], _between(group[0], joint, len(group))) for group in alike)
    ]
    return {**places[0], "places": places[:_MOST_PLACES]}


def _between(guide: _Guide, joint: Joint, count: int = 1) -> str:
    return say("place.guide", cover=_name(guide.cover, joint), base=_name(guide.base, joint), count=count)


def _draft(guides: list[_Guide], joint: Joint) -> Value:
    """The smallest draft of all flanks that are high enough for it to count."""
    flanks = {(f.part, f.face): f for g in guides for f in (g.cover, g.base) if f.high - f.low >= DRAFTED}
    if not flanks:
        return value_of(None, why="low-guides")
    drafts = {key: draft_of(joint.bodies[key[0]], key[1], joint.view.up) for key in flanks}
    key = min(drafts, key=lambda k: (round(drafts[k], 3), flanks[k].low - flanks[k].high, k))
    worst = flanks[key]
    middle = joint.view.world(worst.corners.mean(axis=1)[0])
    why = say("place.flank", part=_name(worst, joint), height=worst.high - worst.low)
    return value_of(drafts[key], middle, why, faces=_faces(worst))


def draft_of(body: Body, face: int, up: np.ndarray) -> float:
    """Angle between a direction and a face, where it is least, in °.

    Parameters
    ----------
    up : (3,) unit vector

    Notes
    -----
    From the exact surface: facets of a cone lean unlike it.
    """
    plane = body.planes[face, :3]
    normals = plane[None] if np.isfinite(plane).all() else spread_normals(body.faces[face])[0]
    return float(np.degrees(np.arcsin(np.clip(np.abs(normals @ up).min(), 0.0, 1.0))))


def _lead_in(features: list[list[_Guide]], joint: Joint) -> Value:
    """The smallest lead-in of the features: what the ends of both flanks that meet first stand back, together."""
    places = []
    for feature in features:
        first = min(feature, key=lambda g: (round(g.cover.low, 3), g.play))
        back = sum(_stands_back(f, joint, down) for f, down in ((first.cover, True), (first.base, False)))
        places.append((back, first))
    back, first = min(places, key=lambda place: (round(place[0], 6), place[1].cover.face))
    return value_of(back, joint.view.world(first.at), _between(first, joint), faces=_faces(first.cover, first.base))


def _stands_back(flank: _Flank, joint: Joint, down: bool) -> float:
    """mm sideways that a chamfer or rounding at the lower (``down``) or upper end of a flank stands back from it."""
    body, view = joint.bodies[flank.part], joint.view
    sign, end = (1.0, flank.low) if down else (-1.0, flank.high)
    beside = body.neighbours({flank.face})
    facets = body.facets(beside, DEFLECTION, ANGLE) if beside else None
    if facets is None or not len(facets.face):
        return 0.0
    corners = view.local(facets.corners)
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    with np.errstate(invalid="ignore", divide="ignore"):
        normal /= np.linalg.norm(normal, axis=1)[:, None]
    slanted = (-sign * normal[:, 2] > _STEEP) & (np.abs(normal[:, 2]) < _LEVEL)  # looks toward the other part
    nearest = corners[:, :, 2].max(axis=1) if down else corners[:, :, 2].min(axis=1)
    slanted &= sign * (nearest - end) <= _ROOM
    corners, normal = corners[slanted], normal[slanted]
    if not len(corners):
        return 0.0
    far = float(corners[:, :, 2].min() if down else corners[:, :, 2].max())
    mouth = cut_at(flank.corners, flank.normal, end + sign * _OFF)
    tip = cut_at(corners, normal, far + sign * _OFF)
    if not len(mouth.ends) or not len(tip.ends):
        return 0.0
    return float(shapely.distance(shapely.multilinestrings(mouth.ends), shapely.multilinestrings(tip.ends)))
