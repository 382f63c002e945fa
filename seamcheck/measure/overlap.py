"""Where the cover is drawn into another part elsewhere than at the rib: press fits, threads, mistakes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.kernel import Body
from seamcheck.kernel.body import Facets
from seamcheck.kernel.distance import contains, line_hits
from seamcheck.measure.corridor import rib_region
from seamcheck.measure.travel import FURTHER, find_touches, place_of, rib_faces, ridge
from seamcheck.sections.facing import DEEPEST, View

SHALLOW = 0.01  # mm: parts that reach into each other by less touch
_DEFLECTION, _ANGLE = 0.002, 0.2  # mm, radians
_BESIDE_RIB = 0.6  # mm round the rib's top in which its flanks may reach into the cover: drawn as welded
_INTO = np.array([0.01, 0.05, 0.2, 0.8])  # mm inside both faces at which an overlap is measured
_PLACES, _WAYS = 10, 6  # of each overlap at which, and directions in which its depth is measured
_SAME_WAY, _SQUARE = np.cos(np.radians(15.0)), np.cos(np.radians(18.0))
_MOST = 50


@dataclass(frozen=True, slots=True)
class Overlap:
    """One room that a cover part and another part both claim.

    depth : mm; at : (3,) mm in it; along : unit vector in which the depth lies
    cover, other : (part id, face index)
    """

    depth: float
    at: tuple[float, float, float]
    along: tuple[float, float, float]
    cover: tuple[str, int]
    other: tuple[str, int]


def overlaps(joint: Joint, contour: Contour, travel: dict[str, dict[str, Any]]) -> dict[str, dict[str, Any]]:
    """The value 'overlap' with its places, and 'free_travel' with what the cover is drawn into along the light.

    Parameters
    ----------
    travel : what sinking() returns

    Notes
    -----
    Two closed surfaces that claim a common room cross along closed lines. Inside of such a line, at some places,
    the way through both parts is measured square to the faces that cross along it. The shortest one counts at each
    place, and the longest of these is the depth.
    """
    free = travel["free_travel"]
    along: list[Overlap] = []
    aside: list[Overlap] = []
    for overlap in find_overlaps(joint):
        if abs(np.dot(overlap.along, joint.beam)) < np.sqrt(0.5):
            aside.append(overlap)
        elif overlap.other[0] not in joint.base and overlap.depth > DEEPEST:
            aside.append(overlap)  # perhaps held by the cover: it need not stand in its way
        else:
            along.append(overlap)
    values = {"overlap": _entry(aside, joint)}
    if free.get("first_rest") is not None:
        values["free_travel"] = _with_overlaps(_without_presses(free, aside, joint, contour), along, joint)
    return values


def find_overlaps(joint: Joint) -> list[Overlap]:
    """All overlaps of cover parts with other parts, the rib's own left out; the deepest first."""
    view = View.of(joint)
    zone = rib_region(joint, view).buffer(_BESIDE_RIB)
    found: list[Overlap] = []
    for one in joint.cover:
        for other, body in joint.bodies.items():
            if other in joint.cover:
                continue
            found += _of_pair(joint, one, other, joint.bodies[one], body, view, zone)
    found.sort(key=lambda overlap: (-round(overlap.depth, 6), overlap.other, overlap.at))
    return found[:_MOST]


def _of_pair(
    joint: Joint, one: str, other: str, cover: Body, body: Body, view: View, zone: shapely.Geometry
) -> Iterator[Overlap]:
    if not _pierce(cover.box[None], body.box[None])[0]:
        return
    a, b = _face_pairs(cover, body)
    if joint.rib_part in (one, other):  # the rib's top melts, wherever it lies
        melts = np.isin(a if joint.rib_part == one else b, joint.rib_faces)
        a, b = a[~melts], b[~melts]
    if len(a):
        place, pair, upper, lower = _crossings(cover, body, a, b)
        if len(place):
            kept = ~_is_rib(joint, one, other, upper, lower, view.local(place)[:, :2], zone)
            place, pair, upper, lower = place[kept], pair[kept], upper[kept], lower[kept]
        along_lines = (_deepest(one, other, cover, body, place[k], upper[k], lower[k]) for k in _lines(place, pair))
        yield from _once([overlap for overlap in along_lines if overlap is not None], cover, body)
        if len(place):
            return
    yield from _within(one, other, cover, body)


def _once(found: list[Overlap], cover: Body, body: Body) -> list[Overlap]:
    """Overlaps of one pair, each room once: its border may be several lines, between faces that are neighbours."""

    kept: list[Overlap] = []
    for overlap in sorted(found, key=lambda o: (-round(o.depth, 6), o.at)):
        if not any(
            _are_near(cover, overlap.cover[1], other.cover[1]) and _are_near(body, overlap.other[1], other.other[1])
            for other in kept
        ):
            kept.append(overlap)
    return kept


def _face_pairs(one: Body, other: Body) -> tuple[np.ndarray, np.ndarray]:
    """Faces of both of which the boxes reach through each other, and neither lies on one side of the other's plane."""
    mine, theirs = (np.flatnonzero(_meets(x.boxes, y.box)) for x, y in ((one, other), (other, one)))
    if not len(mine) or not len(theirs):
        return np.empty(0, int), np.empty(0, int)
    tree = shapely.STRtree(shapely.box(*other.boxes[theirs].T[[0, 1, 3, 4]]))
    i, j = tree.query(shapely.box(*one.boxes[mine].T[[0, 1, 3, 4]]))
    a, b = mine[i], theirs[j]
    real = _pierce(one.boxes[a], other.boxes[b])
    a, b = a[real], b[real]
    real = _through_plane(one.planes[a], other.boxes[b]) & _through_plane(other.planes[b], one.boxes[a])
    return a[real], b[real]


def _meets(boxes: np.ndarray, box: np.ndarray) -> np.ndarray:
    with np.errstate(invalid="ignore"):
        return np.all((boxes[:, :3] <= box[3:]) & (boxes[:, 3:] >= box[:3]), axis=1)


def _pierce(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """(n,) bool: whether boxes (n, 6) reach into each other by more than a touch, in every direction.

    A box without thickness in one direction must lie inside the other there.
    """
    with np.errstate(invalid="ignore"):
        common = np.minimum(a[:, 3:], b[:, 3:]) - np.maximum(a[:, :3], b[:, :3])
        reach = common > SHALLOW
        for x, y in ((a, b), (b, a)):
            thin = x[:, 3:] - x[:, :3] <= 2 * SHALLOW
            inside = (x[:, :3] > y[:, :3] + SHALLOW) & (x[:, 3:] < y[:, 3:] - SHALLOW)
            reach |= thin & inside
        return np.asarray(reach.all(axis=1))


def _through_plane(planes: np.ndarray, boxes: np.ndarray) -> np.ndarray:
    """(n,) bool: whether a box (6,) reaches through a plane (4,); true for what is no plane."""
    middle, half = (boxes[:, :3] + boxes[:, 3:]) / 2, (boxes[:, 3:] - boxes[:, :3]) / 2
    away = (planes[:, :3] * middle).sum(axis=1) - planes[:, 3]
    reach = (np.abs(planes[:, :3]) * half).sum(axis=1)
    with np.errstate(invalid="ignore"):
        return ~(np.abs(away) > reach - SHALLOW)  # NaN: not a plane


def _crossings(
    one: Body, other: Body, a: np.ndarray, b: np.ndarray
) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Where edges of facets go through facets of the other body: place (k, 3), pair of facets (k,), faces (k,)."""
    first, second = _facets(one, a, other.box), _facets(other, b, one.box)
    wanted = np.unique(a.astype(np.int64) * len(other.faces) + b)
    low, high = (x.corners.min(axis=1) for x in (first, second)), (x.corners.max(axis=1) for x in (first, second))
    (low_a, low_b), (high_a, high_b) = tuple(low), tuple(high)
    tree = shapely.STRtree(shapely.box(low_b[:, 0], low_b[:, 1], high_b[:, 0], high_b[:, 1]))
    i, j = tree.query(shapely.box(low_a[:, 0], low_a[:, 1], high_a[:, 0], high_a[:, 1]))
    near = (low_a[i, 2] <= high_b[j, 2]) & (high_a[i, 2] >= low_b[j, 2])
    i, j = i[near], j[near]
    near = np.isin(first.face[i].astype(np.int64) * len(other.faces) + second.face[j], wanted)
    i, j = i[near], j[near]
    near = _reach_through(one.planes, first.face, second, i, j) & _reach_through(other.planes, second.face, first, j, i)
    i, j = i[near], j[near]
    places, pairs = [np.empty((0, 3))], [np.empty(0, int)]
    for edged, whole in ((first.corners[i], second.corners[j]), (second.corners[j], first.corners[i])):
        for k in range(3):
            place, hit = _edge_through(edged[:, k], edged[:, (k + 1) % 3], whole)
            places.append(place[hit])
            pairs.append(np.flatnonzero(hit))
    pair = np.concatenate(pairs)
    return np.concatenate(places), pair, first.face[i[pair]], second.face[j[pair]]


def _reach_through(planes: np.ndarray, owner: np.ndarray, facets: Facets, i: np.ndarray, j: np.ndarray) -> np.ndarray:
    """(k,) bool: whether facet j has corners on both sides of the plane of facet i's face; true for what is none."""
    faces, place = np.unique(owner, return_inverse=True)
    away = np.einsum("fk,mck->fmc", planes[faces, :3], facets.corners) - planes[faces, 3][:, None, None]
    below, above = away < 0.0, away > 0.0
    through = (below[..., 0] | below[..., 1] | below[..., 2]) & (above[..., 0] | above[..., 1] | above[..., 2])
    return np.asarray((through | np.isnan(planes[faces, :1]))[place[i], j])


def _facets(body: Body, faces: np.ndarray, box: np.ndarray) -> Facets:
    """Facets of some faces; holes of theirs that lie beyond a box (6,) may be filled."""
    return body.facets(np.unique(faces), _DEFLECTION, _ANGLE, lambda boxes: np.flatnonzero(_meets(boxes, box)))


def _edge_through(start: np.ndarray, end: np.ndarray, corners: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Where edges (n, 3) meet triangles (n, 3, 3), and whether both ends lie off its plane by more than a touch."""
    one, two = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    normal = np.cross(one, two)
    with np.errstate(invalid="ignore", divide="ignore"):
        normal = normal / np.linalg.norm(normal, axis=1, keepdims=True)
        before, behind = (((x - corners[:, 0]) * normal).sum(axis=1) for x in (start, end))
        place = start + (before / (before - behind))[:, None] * (end - start)
        hit = (before * behind < 0.0) & (np.minimum(np.abs(before), np.abs(behind)) > SHALLOW)
        for k in range(3):
            side = corners[:, (k + 1) % 3] - corners[:, k]
            hit &= (np.cross(side, place - corners[:, k]) * normal).sum(axis=1) >= -1e-9
    return place, hit


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


def _lines(place: np.ndarray, pair: np.ndarray) -> list[np.ndarray]:
    """Crossings that hang together: those of one pair of facets, and those at one place."""
    if not len(place):
        return []
    from scipy.sparse import coo_matrix
    from scipy.sparse.csgraph import connected_components

    _, spot = np.unique(np.round(place, 4), axis=0, return_inverse=True)
    _, facets = np.unique(pair, return_inverse=True)
    spot, count = spot.ravel(), int(spot.max()) + 1
    size = count + int(facets.max()) + 1
    graph = coo_matrix((np.ones(len(spot)), (spot, count + facets)), shape=(size, size))
    _, label = connected_components(graph, directed=False)
    mine = label[spot]
    return [np.flatnonzero(mine == k) for k in np.unique(mine)]


def _deepest(
    one: str, other: str, cover: Body, body: Body, place: np.ndarray, upper: np.ndarray, lower: np.ndarray
) -> Overlap | None:
    """The overlap that a line of crossings belongs to; None where nothing lies in both bodies beside it."""
    spots: list[_Spot] = []
    ways: list[np.ndarray] = []
    for k in np.unique(np.linspace(0, len(place) - 1, _PLACES).round().astype(int)):
        faces = (int(upper[k]), int(lower[k]))
        normals = tuple(_normal(b, face, place[k]) for b, face in zip((cover, body), faces, strict=True))
        inward = -(normals[0] + normals[1])
        if not np.isfinite(inward).all() or np.linalg.norm(inward) < 0.05:
            continue  # faces that look at each other: nothing lies between them
        tried = place[k] + _INTO[:, None] * inward / np.linalg.norm(inward)
        held = contains(cover, tried) & contains(body, tried)
        if held[0]:  # else it is no border of a common room
            spots += [_Spot(inside, faces, normals) for inside in tried[held]]
            ways += [n for n in normals if len(ways) < _WAYS and all(abs(n @ way) < _SAME_WAY for way in ways)]
    for also_grazing in (False, True):
        found = [way for spot in spots if (way := _least(spot, ways, cover, body, also_grazing)) is not None]
        if found:
            deepest, at, along, spot = max(found, key=lambda way: way[0])
            if deepest <= SHALLOW:
                return None
            return Overlap(deepest, _three(at), _three(along), (one, spot.faces[0]), (other, spot.faces[1]))
    return None


@dataclass(frozen=True, slots=True, eq=False)
class _Spot:
    """A place (3,) just inside both bodies; the faces that cross there, and their outward normals (3,)."""

    inside: np.ndarray
    faces: tuple[int, int]
    normals: tuple[np.ndarray, ...]


def _least(
    spot: _Spot, ways: list[np.ndarray], cover: Body, body: Body, also_grazing: bool
) -> tuple[float, np.ndarray, np.ndarray, _Spot] | None:
    """The shortest way through both bodies at a spot: mm, its middle, its direction.

    Ways that graze a curved face of the spot, and end on it twice, are chords near its border: they tell no depth.
    """
    own = [n for n in spot.normals if all(abs(n @ way) < 1.0 - 1e-9 for way in ways)]
    best: tuple[float, np.ndarray, np.ndarray, _Spot] | None = None
    for along in (*ways, *own):
        low, high, ends = _way(cover, body, spot.inside, along)
        grazes = any(
            ends[0] == ends[1] == (side, face)
            and not np.isfinite(one.planes[face, 0])
            and abs(along @ spot.normals[side]) < _SQUARE
            for side, (one, face) in enumerate(zip((cover, body), spot.faces, strict=True))
        )
        if not np.isfinite(high - low) or (grazes and not also_grazing):
            continue
        if best is None or high - low < best[0]:
            best = (float(high - low), spot.inside + (low + high) / 2 * along, along, spot)
    return best


def _three(vector: np.ndarray) -> tuple[float, float, float]:
    return float(vector[0]), float(vector[1]), float(vector[2])


def _normal(body: Body, face: int, place: np.ndarray) -> np.ndarray:
    """(3,) outward normal of a face at a place on it: of its plane, else of the nearest facet."""
    plane = body.planes[face, :3]
    if np.isfinite(plane).all():
        return plane
    corners = body.facets([face], _DEFLECTION, _ANGLE).corners
    nearest = corners[np.argmin(np.linalg.norm(corners.mean(axis=1) - place, axis=1))]
    normal = np.cross(nearest[1] - nearest[0], nearest[2] - nearest[0])
    return normal / np.linalg.norm(normal)


def _way(
    one: Body, other: Body, inside: np.ndarray, along: np.ndarray
) -> tuple[float, float, tuple[tuple[int, int], tuple[int, int]]]:
    """(low, high) mm from a place inside both bodies to where either ends, against and along a direction.

    And what ends it there: (0 or 1 for the body, face); -1 where nothing does.
    """
    low, high = (-np.inf, (-1, -1)), (np.inf, (-1, -1))
    for side, body in enumerate((one, other)):
        for face in _on_line(body.boxes, inside, along):
            for t in line_hits(body, int(face), inside, along):
                if t < 0:
                    low = max(low, (float(t), (side, int(face))))
                else:
                    high = min(high, (float(t), (side, int(face))))
    return low[0], high[0], (low[1], high[1])


def _on_line(boxes: np.ndarray, start: np.ndarray, along: np.ndarray) -> np.ndarray:
    """Numbers of the boxes (n, 6) that a line meets."""
    with np.errstate(invalid="ignore", divide="ignore"):
        near, far = (boxes[:, :3] - 1e-6 - start) / along, (boxes[:, 3:] + 1e-6 - start) / along
        flat = np.abs(along) < 1e-12
        between = (boxes[:, :3] - 1e-6 <= start) & (boxes[:, 3:] + 1e-6 >= start)
        enter = np.where(flat, -np.inf, np.minimum(near, far)).max(axis=1)
        leave = np.where(flat, np.inf, np.maximum(near, far)).min(axis=1)
        return np.flatnonzero((enter <= leave) & (between | ~flat).all(axis=1))


def _within(one: str, other: str, cover: Body, body: Body) -> Iterator[Overlap]:
    """A part that lies in the cover's material as a whole, with no surface crossing."""
    inside = (body.box[:3] >= cover.box[:3] - SHALLOW).all() and (body.box[3:] <= cover.box[3:] + SHALLOW).all()
    if not inside or not len(body.faces):
        return
    corners = body.facets([0], _DEFLECTION, _ANGLE).corners
    if not len(corners):
        return
    place = corners[0].mean(axis=0) - _INTO[0] * _normal(body, 0, corners[0].mean(axis=0))
    if contains(cover, place[None])[0] and contains(body, place[None])[0]:
        size = body.box[3:] - body.box[:3]
        k = int(np.argmin(size))
        middle = (body.box[:3] + body.box[3:]) / 2
        yield Overlap(float(size[k]), _three(middle), _three(np.eye(3)[k]), (one, -1), (other, 0))


def _entry(found: list[Overlap], joint: Joint) -> dict[str, Any]:
    if not found:
        return {"value": 0.0, "at": None, "why": ""}
    places = [_place(overlap, overlap.depth, joint) for overlap in found]
    return {**places[0], "places": places}


def _place(overlap: Overlap, value: float, joint: Joint) -> dict[str, Any]:
    cover, other = (joint.parts[part].name or part for part in (overlap.cover[0], overlap.other[0]))
    return {
        "value": value,
        "at": list(overlap.at),
        "why": f"There '{cover}' and '{other}' claim the same room.",
        "faces": [{"part": part, "face": face} for part, face in (overlap.cover, overlap.other) if face >= 0],
    }


def _without_presses(free: dict[str, Any], aside: list[Overlap], joint: Joint, contour: Contour) -> dict[str, Any]:
    """The free travel without places at which the cover is drawn sideways into another part: that is no stop."""
    rest, play = float(free["first_rest"]), float(free["lateral_play"])
    places = [place for place in free.get("places", ()) if not _is_press(place, rest, aside, joint)]
    if len(places) == len(free.get("places", ())):
        return free
    for most in FURTHER:
        if not places:
            further = (place_of(touch, rest, joint) for touch in find_touches(joint, contour, rest, most, play))
            places = [place for place in further if not _is_press(place, rest, aside, joint)][:1]
    kept = {"first_rest": rest, "lateral_play": play}
    if not places:
        return {"value": None, "at": None, "why": "free", **kept}
    return {**places[0], **kept, "places": places}


def _is_press(place: dict[str, Any], rest: float, aside: list[Overlap], joint: Joint) -> bool:
    """Whether a place of the free travel lies in a room that was found as a sideways overlap."""
    if place["value"] + rest > -1e-3:
        return False
    (cover, above), (other, below) = ((face["part"], face["face"]) for face in place["faces"])
    return any(
        (cover, other) == (press.cover[0], press.other[0])
        and _are_near(joint.bodies[cover], above, press.cover[1])
        and _are_near(joint.bodies[other], below, press.other[1])
        for press in aside
        if press.cover[1] >= 0
    )


def _are_near(body: Body, one: int, other: int) -> bool:
    """Whether two faces are the same or neighbours."""
    return one == other or bool(body.edge_indices(one) & body.edge_indices(other))


def _with_overlaps(free: dict[str, Any], found: list[Overlap], joint: Joint) -> dict[str, Any]:
    """The free travel with overlaps along the light that lie too deep for sinking() to tell them from other storeys."""
    places = list(free.get("places", ()))
    rest = float(free["first_rest"])
    for overlap in found:
        pair = {overlap.cover[0], overlap.other[0]}
        known = [place["value"] + rest for place in places if {face["part"] for face in place.get("faces", ())} == pair]
        if not any(value <= -overlap.depth + 0.05 for value in known):
            place = _place(overlap, -overlap.depth - rest, joint)
            cover, other = (joint.parts[part].name or part for part in (overlap.cover[0], overlap.other[0]))
            places.append(place | {"why": f"There '{cover}' is drawn {overlap.depth:.2f} mm into '{other}'."})
    if len(places) == len(free.get("places", ())):
        return free
    places.sort(key=lambda place: place["value"])
    return {**places[0], "first_rest": free["first_rest"], "lateral_play": free["lateral_play"], "places": places}
