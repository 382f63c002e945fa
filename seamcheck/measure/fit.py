"""Flanks that guide the cover: play and depth against the collapse, draft, lead-in."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
import shapely

from seamcheck.catalogue.say import say, together
from seamcheck.joint import Joint
from seamcheck.joint.heights import heights_at
from seamcheck.kernel import Body
from seamcheck.kernel.normals import spread_normals
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.crossing import ANGLE, DEFLECTION
from seamcheck.measure.depth import Overlap
from seamcheck.measure.guides import OFF, STEEP, Flank, Guide, cut_at, find_guides
from seamcheck.measure.overlap import are_near
from seamcheck.sections.face_gaps import FaceList

DRAFTED = 3.0  # mm of a flank's height from which on its draft counts: 0.5° are 0.03 mm there
_ROOM = 0.02  # mm that a rounding's facets may begin within the flank
_LEVEL = np.cos(np.radians(10.0))  # of a facet's normal along the beam: an end face, no lead-in
_ALIKE = 0.005  # mm by which guides may differ that are reported as one
_MOST_PLACES = 50
_UPRIGHT = np.sin(np.radians(0.1))  # of a facet's normal along the pull: one that leans less slides in either sense
_BEFORE = 0.01  # mm before a flank from which its way out of the mould is looked along
_STEEPEST = 0.1  # share of a flank's area that may lean less than its draft: the line where a bulge stands upright


def guide_values(joint: Joint, contact: float, collapse: float, overlaps: Sequence[Overlap]) -> Additions:
    """Play, depth, draft and lead-in of the flanks that guide the cover into the base; why not, where there are none.

    Parameters
    ----------
    contact : mm that the cover sinks as drawn until it first touches the rib; NaN where it never does
    collapse : mm
    overlaps : where both are drawn into each other, which has its own value
    """
    if not np.isfinite(contact):
        return Additions({"guide_play": value_of(None, why="no-opposite")})
    guides = list(find_guides(joint, contact, collapse, overlaps))
    if not guides:
        return Additions({"guide_play": value_of(None, why="no-guide")})
    features = _features(guides, joint)
    return Additions(
        {
            "guide_play": _least([min(f, key=lambda g: g.play) for f in features], lambda g: g.play, joint),
            "guide_depth": _least([max(f, key=lambda g: g.depth) for f in features], lambda g: g.depth, joint),
            "guide_draft": _draft(guides, joint),
            "lead_in": _lead_in(features, joint),
        }
    )


def _features(guides: list[Guide], joint: Joint) -> list[list[Guide]]:
    """The guides of one feature together: those whose flanks on the cover are neighbours."""
    groups: list[list[Guide]] = []
    for guide in guides:
        mine = [g for g in groups if any(_hang_together(guide.cover, other.cover, joint) for other in g)]
        groups = [g for g in groups if not any(g is one for one in mine)]
        groups.append([guide, *(other for g in mine for other in g)])
    return groups


def _hang_together(one: Flank, other: Flank, joint: Joint) -> bool:
    return one.part == other.part and are_near(joint.bodies[one.part], one.face, other.face)


def _faces(*flanks: Flank) -> list[dict[str, object]]:
    return [{"part": flank.part, "face": flank.face} for flank in flanks]


def _name(flank: Flank, joint: Joint) -> str:
    return f"'{joint.parts[flank.part].name or flank.part}'"


def _least(guides: list[Guide], key: Callable[[Guide], float], joint: Joint) -> Value:
    """The smallest value of the features, and all of them as places, the smallest first; equal ones as one place."""
    guides = sorted(guides, key=lambda guide: (round(key(guide), 6), guide.cover.part, guide.cover.face))
    alike: list[list[Guide]] = []
    for guide in guides:
        parts = guide.cover.part, guide.base.part
        same = (g for g in alike if (g[0].cover.part, g[0].base.part) == parts and key(guide) - key(g[0]) < _ALIKE)
        if group := next(same, None):
            group.append(guide)
        else:
            alike.append([guide])
    places = [
        value_of(key(first), joint.view.world(first.at), why, faces=_faces(first.cover, first.base))
        for first, why in ((group[0], _told(group[0], joint, len(group), key(group[0]))) for group in alike)
    ]
    return {**places[0], "places": places[:_MOST_PLACES]}


def _told(guide: Guide, joint: Joint, count: int, value: float) -> str:
    """Where it is; of flanks that meet after the cover has touched the rib, or run into each other, the lead-in too."""
    where = _between(guide, joint, count)
    return where if value >= 0.0 else together(where, say("place.lead-in", lead=_leads_in(guide, joint)))


def _leads_in(guide: Guide, joint: Joint) -> float:
    return _stands_back(guide.cover, joint, True) + _stands_back(guide.base, joint, False)


def _between(guide: Guide, joint: Joint, count: int = 1) -> str:
    return say("place.guide", cover=_name(guide.cover, joint), base=_name(guide.base, joint), count=count)


def _draft(guides: list[Guide], joint: Joint) -> Value:
    """The smallest draft of all flanks that are high enough for it to count; negative where one is an undercut."""
    flanks = {(f.part, f.face): f for g in guides for f in (g.cover, g.base) if f.high - f.low >= DRAFTED}
    if not flanks:
        return value_of(None, why="low-guides")
    drafts = {key: draft_of(joint.bodies[key[0]], key[1], joint.view.up) for key in flanks}
    drafts = {key: -draft if is_undercut(flanks[key], joint) else draft for key, draft in drafts.items()}
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
    From the exact surface, as facets of a cone lean unlike it; of a curved one the angle that nine tenths of what is
    upright exceed.
    """
    plane = body.planes[face, :3]
    if np.isfinite(plane).all():
        lean = float(abs(plane @ up))
    else:
        normals, area = spread_normals(body.faces[face])
        leans = np.abs(normals @ up)
        upright = leans <= STEEP
        if not upright.any():
            return float(np.degrees(np.arcsin(np.clip(leans.min(initial=1.0), 0.0, 1.0))))
        order = np.argsort(leans[upright])
        share = np.cumsum(area[upright][order]) / area[upright].sum()
        lean = float(leans[upright][order][np.searchsorted(share, _STEEPEST)])
    return float(np.degrees(np.arcsin(min(lean, 1.0))))


def is_undercut(flank: Flank, joint: Joint) -> bool:
    """Whether a flank leans toward material of its own part, which holds it in the mould in either sense of the pull.

    A flank that looks up can only be drawn up, one that looks down only down: more than a tenth of its area meets the
    part on that way. Upright flanks are none.
    """
    view, body = joint.view, joint.bodies[flank.part]
    leaning = np.abs(flank.normal[:, 2]) > _UPRIGHT
    corners, normal = flank.corners[leaning], flank.normal[leaning]
    if not len(corners):
        return False
    area = np.linalg.norm(np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]), axis=1)
    sense = np.sign(normal[:, 2])
    before = corners.mean(axis=1) + _BEFORE * normal
    low, high = before.min(axis=0) - 2 * _BEFORE, before.max(axis=0) + 2 * _BEFORE
    room = np.array([*low[:2], -np.inf, *high[:2], np.inf])
    sheet = FaceList.of({flank.part: body}, view, None, room).facets(view, None)
    height, index, _ = heights_at(before, sheet.corners)
    held = np.zeros(len(before), dtype=bool)
    held[index[sense[index] * (height - before[index, 2]) > _BEFORE]] = True
    return bool(area[held].sum() > _STEEPEST * area.sum())


def _lead_in(features: list[list[Guide]], joint: Joint) -> Value:
    """The smallest lead-in of the features: what the ends of both flanks that meet first stand back, together."""
    places = []
    for feature in features:
        first = min(feature, key=lambda g: (round(g.cover.low, 3), g.play))
        places.append((_leads_in(first, joint), first))
    back, first = min(places, key=lambda place: (round(place[0], 6), place[1].cover.face))
    return value_of(back, joint.view.world(first.at), _between(first, joint), faces=_faces(first.cover, first.base))


def _stands_back(flank: Flank, joint: Joint, down: bool) -> float:
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
    slanted = (-sign * normal[:, 2] > STEEP) & (np.abs(normal[:, 2]) < _LEVEL)  # looks toward the other part
    nearest = corners[:, :, 2].max(axis=1) if down else corners[:, :, 2].min(axis=1)
    slanted &= sign * (nearest - end) <= _ROOM
    corners, normal = corners[slanted], normal[slanted]
    if not len(corners):
        return 0.0
    far = float(corners[:, :, 2].min() if down else corners[:, :, 2].max())
    mouth = cut_at(flank.corners, flank.normal, end + sign * OFF)
    tip = cut_at(corners, normal, far + sign * OFF)
    if not len(mouth.ends) or not len(tip.ends):
        return 0.0
    return float(shapely.distance(shapely.multilinestrings(mouth.ends), shapely.multilinestrings(tip.ends)))
