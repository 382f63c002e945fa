"""What the sinking cover meets first, everywhere between the moving parts and those that stand still."""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.catalogue.say import say, together
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.kernel.distance import contains, line_hits
from seamcheck.measure.corridor import holes_region, rib_region
from seamcheck.measure.moving import Moving
from seamcheck.measure.ridge import LoweredTop, rib_faces, rib_reach, ridge
from seamcheck.measure.table import Survey
from seamcheck.sections.face_gaps import DEEPEST, FaceList, Gaps, Sheet, face_pairs, gaps

_DIRECTIONS = 16  # in which the cover is shifted by the lateral play
_SLIM = 0.02  # mm: overlaps of facets narrower than this are looked at exactly
_INTO = -1e-3  # mm: parts that are nearer than this are drawn into each other


class Touch(Struct, frozen=True):
    """Something that the cover meets while it sinks.

    gap : mm along the beam as drawn; at : (3,) mm on the lower face, in the model's coordinates
    cover, other : (part id, face index)
    """

    gap: float
    at: tuple[float, float, float]
    cover: tuple[str, int]
    other: tuple[str, int]


class Sinking(Struct, frozen=True, eq=False):
    """What moves, from where, and what of the rib melts: all that is needed to look for touches.

    joint; survey : widths and heights say which faces are the rib's own; moving : parts; contact : mm that the cover
    sinks as drawn until it first touches the rib; play : mm by which it may stand aside
    """

    joint: Joint
    survey: Survey
    moving: Moving
    contact: float
    play: float


def find_touches(sinking: Sinking, soon: float, furthest: float) -> list[Touch]:
    """What the cover meets from initial contact on, nearest first; one entry per feature.

    Parameters
    ----------
    soon : mm, travel within which everything is found
    furthest : mm, travel within which, where nothing is met soon, the first touch is looked for; may be infinite
    """
    joint, play = sinking.joint, sinking.play
    view = joint.view
    most, enough = sinking.contact + furthest, sinking.contact + soon
    moving = {i: joint.bodies[i] for i in sinking.moving.with_cover}
    still = {i: body for i, body in joint.bodies.items() if i not in moving}
    boxes = view.boxes(np.array([body.box for body in moving.values()]))
    zone = np.concatenate([boxes[:, :3].min(axis=0) - play, boxes[:, 3:].max(axis=0) + play])
    below = zone.copy()
    below[2] = -np.inf if np.isinf(most) else zone[2] - most
    upper = FaceList.of(moving, view, -1.0, zone)
    lower = FaceList.of(still, view, 1.0, below)
    one, other = face_pairs(upper, lower, most, play)
    one, other = one[~_of_other_ribs(upper, joint)[one]], other[~_of_other_ribs(lower, joint)[other]]
    above, under = upper.take(one).facets(view, -1.0), lower.take(other).facets(view, 1.0)
    on_rib = rib_faces(joint)
    marked_above, marked_under = (
        _marked(sheet, faces.ids, joint.rib_part, on_rib) for sheet, faces in ((above, upper), (under, lower))
    )
    top, taken = rib_region(joint, view), LoweredTop.of(sinking.survey, view, holes_region(joint, view))
    aside = max(rib_reach(top, above.where(marked_above)), rib_reach(top, under.where(marked_under)))
    melts = [
        marked | (_of_part(sheet, faces.ids, joint.rib_part) & taken.holds(sheet))
        for marked, sheet, faces in ((marked_above, above, upper), (marked_under, under, lower))
    ]
    zone_of_rib = shapely.union(top.buffer(aside + play, quad_segs=8), taken.zone.buffer(play) if play else taken.zone)
    best: dict[tuple[int, int, int, int], Touch] = {}
    for shift in _shifts(play):
        found = gaps(above, under, most, shift, zone_of_rib, melts[0], melts[1], enough)
        _take_least(best, found, above, under, upper, lower, shift, view)
    touches = list(best.values())
    return _features([touch for touch in touches if touch.gap <= enough] or touches, joint)


def _of_other_ribs(faces: FaceList, joint: Joint) -> np.ndarray:
    """(n,) bool: faces of the ribs of neighbouring joints, which melt as this one's does."""
    mask = np.zeros(len(faces.face), dtype=bool)
    for part, tops in joint.other_ribs:
        if part in faces.ids:
            mine = ridge(joint.bodies[part], tops, joint.frame.axes[2])
            mask |= (faces.part == faces.ids.index(part)) & np.isin(faces.face, mine)
    return mask


def _marked(sheet: Sheet, ids: tuple[str, ...], part: str, faces: np.ndarray) -> np.ndarray:
    return _of_part(sheet, ids, part) & np.isin(sheet.face, faces)


def _of_part(sheet: Sheet, ids: tuple[str, ...], part: str) -> np.ndarray:
    """(m,) bool: facets of one part."""
    return np.asarray(sheet.part == (ids.index(part) if part in ids else -1))


def _shifts(play: float) -> np.ndarray:
    """(k, 2) mm: where the cover may stand; in the middle, and round it at half and at the whole play."""
    if play <= 0:
        return np.zeros((1, 2))
    angle = np.linspace(0, 2 * np.pi, _DIRECTIONS, endpoint=False)
    ring = np.column_stack([np.cos(angle), np.sin(angle)])
    return np.vstack([np.zeros((1, 2)), 0.5 * play * ring, play * ring])


def _take_least(
    best: dict[Any, Touch], found: Gaps, above: Sheet, under: Sheet, upper: FaceList, lower: FaceList,
    shift: np.ndarray, view: Frame,
) -> None:  # fmt: skip
    """Keep the nearest place of every pair of faces, confirmed on the exact faces where it is doubtful."""
    if not len(found.gap):
        return
    pair = np.column_stack(
        [above.part[found.upper], above.face[found.upper], under.part[found.lower], under.face[found.lower]]
    )
    order = np.lexsort((-np.round(found.area, 6), np.round(found.gap, 6), *pair.T[::-1]))
    starts = np.flatnonzero(np.append(True, (np.diff(pair[order], axis=0) != 0).any(axis=1)))
    for mine in np.split(order, starts[1:]):
        key = tuple(pair[mine[0]].tolist())
        cover, other = (upper.ids[key[0]], key[1]), (lower.ids[key[2]], key[3])
        bodies = upper.bodies[key[0]], lower.bodies[key[2]]
        for i in mine.tolist():
            if key in best and best[key].gap <= found.gap[i] + 1e-9:
                break
            if (found.slim[i] < _SLIM or found.gap[i] < _INTO) and not _is_real(
                found.inner[i], shift, found.gap[i], bodies, key, view
            ):
                continue
            height = under.height(found.lower[i : i + 1], found.at[i : i + 1])[0]
            at = view.world(np.append(found.at[i], height))
            best[key] = Touch(float(found.gap[i]), (float(at[0]), float(at[1]), float(at[2])), cover, other)
            break


def _is_real(
    place: np.ndarray, shift: np.ndarray, gap: float, bodies: tuple[Body, Body], key: tuple[int, ...], view: Frame
) -> bool:
    """Whether both exact faces lie over one another there, and, where they overlap, both solids as well."""
    low = view.world(np.append(place, 0.0))
    high = view.world(np.append(place - shift, 0.0))
    top = line_hits(bodies[1], key[3], low, view.up)
    under = line_hits(bodies[0], key[1], high, view.up)
    if not len(top) or not len(under):
        return False
    if gap >= _INTO:
        return True
    apart = under[:, None] - top[None, :]
    k, j = np.unravel_index(np.argmin(np.abs(apart - gap)), apart.shape)
    if not -DEEPEST <= apart[k, j] < 0:
        return False
    middle = (under[k] + top[j]) / 2
    return bool(
        contains(bodies[0], (high + middle * view.up)[None])[0]
        and contains(bodies[1], (low + middle * view.up)[None])[0]
    )


def _features(touches: list[Touch], joint: Joint) -> list[Touch]:
    """One touch for each feature: neighbouring faces of one part are one feature, its nearest place stands."""
    touches = sorted(touches, key=lambda t: (round(t.gap, 6), t.other, t.cover))
    least: dict[tuple[str, int], Touch] = {}
    for touch in touches:
        least.setdefault(touch.other, touch)
    kept: list[Touch] = []
    seen: set[tuple[str, int]] = set()
    by_part: dict[str, list[int]] = {}
    for part, face in least:
        by_part.setdefault(part, []).append(face)
    edges = {(p, f): joint.bodies[p].edge_indices(f) for p, faces in by_part.items() for f in faces}
    for start, touch in least.items():
        if start in seen:
            continue
        kept.append(touch)
        todo = [start]
        while todo:
            now = todo.pop()
            if now in seen:
                continue
            seen.add(now)
            todo += [
                (now[0], f) for f in by_part[now[0]] if (now[0], f) not in seen and edges[now] & edges[(now[0], f)]
            ]
    return kept


def place_of(touch: Touch, sinking: Sinking) -> dict[str, Any]:
    """A touch as a place of the free travel."""
    parts = sinking.joint.parts
    cover, other = (f"'{parts[part].name or part}'" for part in (touch.cover[0], touch.other[0]))
    drawn_into = touch.gap <= _INTO
    key = "place.into" if drawn_into else "place.meets"
    carried = say("place.carried", other=other) if touch.other[0] in sinking.moving.on_both else ""
    why = together(say(key, cover=cover, other=other, depth=-touch.gap), carried)
    return {
        "value": touch.gap - sinking.contact,
        "at": list(touch.at),
        "why": why,
        "faces": [{"part": part, "face": face} for part, face in (touch.cover, touch.other)],
    }
