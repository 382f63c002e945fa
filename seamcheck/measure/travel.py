"""How far the cover can sink along the light until it touches anything but the rib, and what it touches."""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.kernel import Body
from seamcheck.kernel.distance import contains, line_hits
from seamcheck.measure.corridor import rib_region
from seamcheck.measure.table import Survey, first_rest
from seamcheck.sections.facing import DEEPEST, FaceList, Gaps, Sheet, View, face_pairs, gaps, heights_at, tree_of

_BEYOND = 0.3  # mm beyond the planned collapse within which everything that would touch is listed
FURTHER = (5.0, np.inf)  # mm: where nothing touches so soon, how far the first touch is looked for
_ASIDE = 2.0  # mm beside the rib top in which its flanks and fillets are looked for
_CLOSE, _EDGE = 0.05, 0.001  # mm: flanks that reach no further than this have nothing on them; room for rounding
_RINGS, _ALONG = 12, 120  # distances and places at which it is looked how far the flanks reach
_FAIR = 0.25  # share of one side of the rib from which on what stands there is flank, less is a feature on it
_STEEP = np.cos(np.radians(30.0))
_DIRECTIONS = 16  # in which the cover is shifted by the lateral play
_SLIM = 0.02  # mm: overlaps of facets narrower than this are looked at exactly
_MOST_PLACES = 50


@dataclass(frozen=True, slots=True)
class Touch:
    """Something that the cover meets while it sinks.

    gap : mm along the light as drawn; at : (3,) mm on the lower face, in the model's coordinates
    cover, other : (part id, face index)
    """

    gap: float
    at: tuple[float, float, float]
    cover: tuple[str, int]
    other: tuple[str, int]


def sinking(joint: Joint, contour: Contour, survey: Survey, settings: Any) -> dict[str, dict]:
    """The free travel over the whole interface: 'free_travel' with its place and 'places' in order of touch.

    Parameters
    ----------
    settings : uses collapse and lateral_play (mm)

    Notes
    -----
    Travel counts from first rest, the smallest gap of the whole seam. All parts but the cover stand still.
    """
    if joint.rib_on == "none":
        return {"free_travel": {"value": None, "at": None, "why": "no-rib"}}
    rest = first_rest(survey)
    if not np.isfinite(rest):
        return {"free_travel": {"value": None, "at": None, "why": "no-opposite"}}
    play = float(getattr(settings, "lateral_play", 0.0))
    touches = find_touches(joint, contour, rest, settings.collapse + _BEYOND, play)
    for most in FURTHER:
        if touches:
            break
        touches = find_touches(joint, contour, rest, most, play)[:1]
    if not touches:
        return {
            "free_travel": {
                "value": None,
                "at": None,
                "why": "free",
                "first_rest": rest,
                "lateral_play": play,
            }
        }
    places = [place_of(touch, rest, joint) for touch in touches[:_MOST_PLACES]]
    return {"free_travel": places[0] | {"first_rest": rest, "lateral_play": play, "places": places}}


def find_touches(joint: Joint, contour: Contour, rest: float, travel: float, play: float) -> list[Touch]:
    """What the cover meets within some travel from first rest, nearest first; one entry per feature.

    Parameters
    ----------
    rest : mm, smallest gap of the seam; travel : mm, may be infinite; play : mm
    """
    view = View.of(joint)
    most = rest + travel
    moving = {i: joint.bodies[i] for i in joint.cover}
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
    top = rib_region(joint, view)
    aside = max(_rib_reach(top, above.where(marked_above)), _rib_reach(top, under.where(marked_under)))
    left_out = (top.buffer(aside + play, quad_segs=8), marked_above, marked_under)
    best: dict[tuple[int, int, int, int], Touch] = {}
    for shift in _shifts(play):
        found = gaps(above, under, most, shift, *left_out)
        _take_least(best, found, above, under, upper, lower, shift, view)
    return _features(list(best.values()), joint)


def rib_faces(joint: Joint) -> np.ndarray:
    """Faces of the rib: its top, and from there the flanks and fillets down to the first face that is flat."""
    return ridge(joint.rib, joint.rib_faces, joint.frame.axes[2])


def _of_other_ribs(faces: FaceList, joint: Joint) -> np.ndarray:
    """(n,) bool: faces of the ribs of neighbouring joints, which melt as this one's does."""
    mask = np.zeros(len(faces.face), dtype=bool)
    for part, tops in joint.other_ribs:
        if part in faces.ids:
            mine = ridge(joint.bodies[part], tops, joint.frame.axes[2])
            mask |= (faces.part == faces.ids.index(part)) & np.isin(faces.face, mine)
    return mask


def ridge(body: Body, tops: tuple[int, ...], z: np.ndarray) -> np.ndarray:
    """A rib's top faces with what goes down from them to the first flat faces."""
    edges = {}
    by_edge: dict[int, list[int]] = {}
    near = _near_rib(body, tops)
    for face in near:
        edges[face] = body.edge_indices(face)
        for edge in edges[face]:
            by_edge.setdefault(edge, []).append(face)
    facets = body.facets(near, 0.05, 0.35)
    across = np.cross(facets.corners[:, 1] - facets.corners[:, 0], facets.corners[:, 2] - facets.corners[:, 0]) / 2
    area = np.bincount(facets.face, np.linalg.norm(across, axis=1), len(body.faces))
    facing = np.bincount(facets.face, across @ z, len(body.faces))
    with np.errstate(invalid="ignore", divide="ignore"):
        flat = np.abs(facing / area) > _STEEP
    found = set(tops)
    todo = deque((face, 0) for face in tops)
    while todo:
        face, steps = todo.popleft()
        if steps == 4:
            continue
        for edge in edges.get(face, ()):
            for neighbour in by_edge[edge]:
                if neighbour not in found and not flat[neighbour]:
                    found.add(neighbour)
                    todo.append((neighbour, steps + 1))
    return np.array(sorted(found))


def _near_rib(body: Body, tops: tuple[int, ...]) -> np.ndarray:
    own = body.boxes[list(tops)]
    low, high = np.nanmin(own[:, :3], axis=0) - _ASIDE, np.nanmax(own[:, 3:], axis=0) + _ASIDE
    with np.errstate(invalid="ignore"):
        return np.flatnonzero(np.all((body.boxes[:, :3] <= high) & (body.boxes[:, 3:] >= low), axis=1))


def _rib_reach(top: BaseGeometry, sheet: Sheet) -> float:
    """mm beside the rib's top that its flanks and fillets reach along most of it.

    Parameters
    ----------
    top : the rib's top in the view; sheet : facets of top, flanks and fillets

    Notes
    -----
    A gusset or a ramp on a flank reaches further than the flank does along the rest of the seam: what of it lies
    beyond is no rib, and stops the cover.
    """
    if not len(sheet.face):
        return 0.0
    corners = np.unique(sheet.corners[:, :, :2].reshape(-1, 2), axis=0)
    close = top.buffer(_CLOSE, quad_segs=8)
    shapely.prepare(close)
    beyond = corners[~shapely.contains_xy(close, corners)]
    if not len(beyond):
        return _CLOSE
    ends = [shapely.get_coordinates(ring) for ring in shapely.get_parts(top.boundary)]
    border = shapely.STRtree(np.concatenate([shapely.linestrings(np.stack([e[:-1], e[1:]], axis=1)) for e in ends]))
    _, away = border.query_nearest(shapely.points(beyond), return_distance=True)
    furthest = min(float(away.max()), _ASIDE)
    low, high, tree = 0.0, furthest, tree_of(sheet)
    for far in np.linspace(0.0, furthest, _RINGS + 1)[1:]:
        if not _is_covered(top, far, sheet, tree):
            high = far
            break
        low = far
    while high - low > _CLOSE / 4:
        middle = (low + high) / 2
        low, high = (middle, high) if _is_covered(top, middle, sheet, tree) else (low, middle)
    return high + _EDGE


def _is_covered(top: BaseGeometry, far: float, sheet: Sheet, tree: shapely.STRtree) -> bool:
    """Whether facets lie along a fair share of one of the lines that run round the top at a distance."""
    for line in shapely.get_parts(top.buffer(far, quad_segs=8).boundary):
        places = shapely.line_interpolate_point(line, np.arange(_ALONG) / _ALONG, normalized=True)
        xy = shapely.get_coordinates(places)
        _, on, _ = heights_at(np.column_stack([xy, np.zeros(len(xy))]), sheet, tree)
        if len(np.unique(on)) >= _FAIR * _ALONG:
            return True
    return False


def _marked(sheet: Sheet, ids: tuple[str, ...], part: str, faces: np.ndarray) -> np.ndarray:
    if part not in ids:
        return np.zeros(len(sheet.face), dtype=bool)
    return (sheet.part == ids.index(part)) & np.isin(sheet.face, faces)


def _shifts(play: float) -> np.ndarray:
    """(k, 2) mm: where the cover may stand; in the middle, and round it at half and at the whole play."""
    if play <= 0:
        return np.zeros((1, 2))
    angle = np.linspace(0, 2 * np.pi, _DIRECTIONS, endpoint=False)
    ring = np.column_stack([np.cos(angle), np.sin(angle)])
    return np.vstack([np.zeros((1, 2)), 0.5 * play * ring, play * ring])


def _take_least(
    best: dict, found: Gaps, above: Sheet, under: Sheet, upper: FaceList, lower: FaceList,
    shift: np.ndarray, view: View,
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
            if (found.slim[i] < _SLIM or found.gap[i] < -1e-3) and not _is_real(
                found.inner[i], shift, found.gap[i], bodies, key, view
            ):
                continue
            height = under.height(found.lower[i : i + 1], found.at[i : i + 1])[0]
            at = view.world(np.append(found.at[i], height))
            best[key] = Touch(float(found.gap[i]), (float(at[0]), float(at[1]), float(at[2])), cover, other)
            break


def _is_real(
    place: np.ndarray,
    shift: np.ndarray,
    gap: float,
    bodies: tuple[Body, Body],
    key: tuple[int, ...],
    view: View,
) -> bool:
    """Whether both exact faces lie over one another there, and, where they overlap, both solids as well."""
    low = view.world(np.append(place, 0.0))
    high = view.world(np.append(place - shift, 0.0))
    top = line_hits(bodies[1], key[3], low, view.up)
    under = line_hits(bodies[0], key[1], high, view.up)
    if not len(top) or not len(under):
        return False
    if gap >= -1e-3:
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


def place_of(touch: Touch, rest: float, joint: Joint) -> dict[str, Any]:
    """A touch as a place of the free travel."""
    names = {part: joint.parts[part].name or part for part in (touch.cover[0], touch.other[0])}
    says = "meets" if touch.gap > -1e-3 else f"is drawn {-touch.gap:.2f} mm into"
    return {
        "value": touch.gap - rest,
        "at": list(touch.at),
        "why": f"There '{names[touch.cover[0]]}' {says} '{names[touch.other[0]]}'.",
        "faces": [{"part": part, "face": face} for part, face in (touch.cover, touch.other)],
    }
