"""A model with a weld rib: move what breaks a limit, leave the rest. Runs in the child process that reads the model."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from itertools import product
from typing import Any

import msgspec
import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.message import Message, Sentence
from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.joint.regions import face_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import NotCut, common, solids_of, volume
from seamcheck.kernel.moving import filled, pulled, without_faces
from seamcheck.proposal.mending import SECTION_RULES
from seamcheck.proposal.records import Change, Left
from seamcheck.proposal.whole_section import move_section
from seamcheck.proposal.work import Mending, by_hand, leave, moved
from seamcheck.settings.settings import Settings

PLAY = 0.1
"""mm that two parts are kept apart where they overlapped. Assumption."""


def mend(
    joint: Joint, record: Mapping[str, Any], findings: Sequence[Mapping[str, Any]], settings: Settings, lip: float,
    shapes: dict[str, Any],
) -> tuple[tuple[Change, ...], tuple[Left, ...]]:  # fmt: skip
    """Move what the findings of one joint's review say, as far as it can be moved.

    Parameters
    ----------
    joint : with a weld rib
    record : of the joint in the review's document: bounds, summary, interface
    findings : of the review, those of this joint that are must-fix or attention
    lip : mm, least width of a lip
    shapes : part id -> shape; changed in place

    Returns
    -------
    what was moved, and which findings were left and why
    """
    work = Mending(joint, record, settings, lip, shapes)
    section = [f for f in findings if f["rule"] in SECTION_RULES or f["rule"] == "trap-open-inner"]
    others = [f for f in findings if f not in section]
    for finding in [f for f in section if f["rule"] == "sink-travel"]:
        _cut_back(work, finding)
    for finding in others:
        _one(work, finding)
    still = [f for f in section if f["id"] not in work.handled]
    if still:
        move_section(work, still)
    return tuple(work.changes), tuple(work.left)


def _one(work: Mending, finding: Mapping[str, Any]) -> None:
    rule = str(finding["rule"])
    if rule not in WAYS:
        leave(work, finding, by_hand(finding))
        return
    try:
        WAYS[rule](work, finding)
    except NotCut as why:
        leave(work, finding, say("propose.tried", why=why.why))


def _smooth(work: Mending, finding: Mapping[str, Any]) -> None:
    """Take away a pad, or fill a groove or recess, where the finding lies."""
    on_cover = finding["rule"] in ("contact-gap", "cover-uniformity", "transmission", "collapse-window")
    cover, base = work.joint.cover[0], work.joint.base[0]
    order = (cover, base) if on_cover else (work.joint.rib_part,)
    why = NotCut(say("propose.cut.no-feature"))
    for part, beyond in product(order, (2.0, 4.0, 8.0)):
        body = Body(work.shapes[part])
        for faces in _small_faces(work, body, finding, beyond):
            try:
                shape = without_faces(body, faces)
            except NotCut as problem:
                why = problem
                continue
            change = Body(shape).volume - body.volume
            if abs(change) < 1e-4:
                continue
            what = "propose.levelled" if change < 0 else "propose.filled"
            moved(work, part, shape, say(what, s=_at_s(finding)), None, [finding])
            return
    raise why


def _window(work: Mending, finding: Mapping[str, Any]) -> None:
    """Smooth what makes the gap; where nothing does, say which limits leave no collapse."""
    try:
        _smooth(work, finding)
    except NotCut:
        window = work.record["interface"].get("collapse_window") or {}
        travel, most = _travel_asked(window, finding), work.settings.collapse + work.settings.limit("lip-gap", "max")
        ends = _sentence_of(window)
        if travel is not None and travel > most:
            leave(work, finding, say("propose.window-land", ends=ends, travel=travel, most=most))
        else:
            leave(work, finding, say("propose.window", ends=ends))


def _sentence_of(window: Mapping[str, Any]) -> Sentence:
    """What the review says of the collapse window's ends, as a sentence that knows its key."""
    said = window.get("said")
    return Sentence.of(msgspec.convert(said, Message)) if said else say("propose.both-limits")


def _travel_asked(window: Mapping[str, Any], finding: Mapping[str, Any]) -> float | None:
    """mm of free travel that would open the collapse window; None where something else closes it."""
    highest = window.get("said", {}).get("parts", {}).get("high", ())
    travels = [one["args"]["travel"]["value"] for one in highest if one["key"] == "cause.travel"]
    return travels[0] + finding["limit"] - finding["value"] if travels else None


def _at_s(finding: Mapping[str, Any]) -> float:
    return float(finding["from_s"] or 0.0)


def _small_faces(work: Mending, body: Body, finding: Mapping[str, Any], beyond: float) -> list[list[int]]:
    """Sets of faces that may bound a small feature at the finding and no more than ``beyond`` mm around it."""
    at = np.asarray(finding["at"], dtype=float)
    reach = float(finding["length_mm"] or 2.0) / 2.0 + beyond
    boxes = body.boxes
    away = np.maximum(np.abs(boxes[:, :3] - at), np.abs(boxes[:, 3:] - at)).max(axis=1)
    near = np.flatnonzero(away < reach)
    if not len(near):
        return []
    facing = np.abs(body.planes[near, :3] @ work.up) > 0.99
    seam = set(work.joint.rib_faces) if body.shape.IsSame(work.joint.bodies[work.joint.rib_part].shape) else set()
    sets = [list(near), [i for i in near if i not in seam], list(near[~facing]), list(near[facing])]
    return [list(map(int, faces)) for faces in sets if len(faces)]


def _cut_back(work: Mending, finding: Mapping[str, Any]) -> None:
    """Cut back what the cover meets first, where that is no floor or lip of the whole seam."""
    places = (work.record["interface"].get("free_travel") or {}).get("places") or []
    low = [p for p in places if p["value"] < finding["limit"] and len(p.get("faces") or ()) == 2]
    length = float(work.record.get("length_mm") or 0.0)
    if not low or float(finding["length_mm"] or 0.0) > 0.5 * length:
        return
    missing = float(finding["limit"]) - min(p["value"] for p in low) + 0.02
    by_part: dict[str, list[int]] = {}
    for place in low:
        face = next(f for f in place["faces"] if f["part"] in work.joint.base)
        by_part.setdefault(face["part"], []).append(int(face["face"]))
    try:
        for part, faces in by_part.items():
            shape = pulled(Body(work.shapes[part]), sorted(set(faces)), -np.asarray(work.joint.beam), -missing)
            moved(work, part, shape, say("propose.cut-back"), missing, [finding])
    except NotCut as why:
        leave(work, finding, say("propose.tried", why=why.why))


def _set_stop(work: Mending, finding: Mapping[str, Any]) -> None:
    """Set the stop to the height that is stated for it."""
    travel = work.record["interface"]["free_travel"]
    stop = work.settings.intended_stop
    face = next((f for f in travel["faces"] if f["part"] in work.joint.base), None)
    if not stop or face is None:
        raise NotCut(say("propose.cut.no-stop"))
    by = float(travel["value"]) - float(stop)
    shape = pulled(Body(work.shapes[face["part"]]), [int(face["face"])], -np.asarray(work.joint.beam), by)
    what = say("propose.stop-raised" if by > 0 else "propose.stop-lowered")
    moved(work, face["part"], shape, what, abs(by), [finding])


def _part(work: Mending, finding: Mapping[str, Any]) -> None:
    """Move faces of the cover back, out of the parts that it overlaps: of each overlap the face with the least way."""
    moves: list[tuple[str, float]] = []
    tried = dict(work.shapes)
    for place in work.record["interface"]["overlap"].get("places") or []:
        pair = {face["part"] for face in place.get("faces") or []}
        covers, others = pair & set(work.joint.cover), pair - set(work.joint.cover)
        if len(covers) != 1 or len(others) != 1:
            raise NotCut(say("propose.cut.overlap-of"))
        (part,), (other,) = covers, others
        shape, by = _freed(tried[part], tried[other], np.asarray(place["at"], dtype=float))
        tried[part] = shape
        moves.append((part, by))
    if not moves:
        raise NotCut(say("propose.cut.no-overlap"))
    for part, by in moves:
        moved(work, part, tried[part], say("propose.moved-out"), by, [finding])


def _freed(shape: Any, other: Any, at: np.ndarray) -> tuple[Any, float]:
    """A part with one plane face moved back until it no longer runs into another part at a place; and by how much.

    Raises
    ------
    NotCut : no plane face frees it on its own
    """
    shared = [Body(solid) for solid in solids_of(common(shape, other))]
    if not shared:
        raise NotCut(say("propose.cut.touch"))
    one = min(shared, key=lambda b: float(np.linalg.norm(np.maximum(0.0, np.maximum(b.box[:3] - at, at - b.box[3:])))))
    points = one.facets(range(len(one.faces)), 0.01).corners.reshape(-1, 3)
    body, ways = Body(shape), []
    for i in map(int, np.flatnonzero(~np.isnan(body.planes[:, 0]))):
        depth = body.planes[i, 3] - points @ body.planes[i, :3]
        box, far = body.boxes[i], 0.01
        touches = np.all(box[:3] - far <= one.box[3:]) and np.all(box[3:] + far >= one.box[:3])
        if touches and -far < depth.min() < far:
            ways.append((float(depth.max()) + PLAY, i))
    for by, i in sorted(ways):
        try:
            freed = pulled(body, [i], body.planes[i, :3], -by)
        except NotCut:
            continue
        if volume(common(freed, one.shape)) < 1e-6:
            return freed, by
    raise NotCut(say("propose.cut.no-plane"))


def _thickness(work: Mending, finding: Mapping[str, Any]) -> None:
    """Lower or raise the cover's top over the seam."""
    part = work.joint.cover[0]
    body = Body(work.shapes[part])
    faces = _lit(work, body, 0.999)
    if not faces:
        raise NotCut(say("propose.cut.no-level"))
    by = float(finding["limit"]) - float(finding["value"])
    by = float(by + np.sign(by) * 0.01)
    shape = pulled(body, faces, work.light_side, by)
    what = say("propose.cover-raised" if by > 0 else "propose.cover-lowered")
    moved(work, part, shape, what, abs(by), [finding])


def _land(work: Mending, finding: Mapping[str, Any]) -> None:
    """Take away the chamfer or rounding that ends the land."""
    part = work.joint.cover[0]
    body = Body(work.shapes[part])
    top = _lit(work, body, 0.999)
    beside = [i for i in body.neighbours(set(top)) if 0.05 < _slope(body, i, work.light_side) < 0.97]
    if not beside:
        raise NotCut(say("propose.cut.no-chamfer"))
    moved(work, part, without_faces(body, beside), say("propose.chamfer"), None, [finding])


def _level_land(work: Mending, finding: Mapping[str, Any]) -> None:
    """Fill a land that falls off up to the height of its highest place."""
    part = work.joint.cover[0]
    body = Body(work.shapes[part])
    falling = [i for i in _lit(work, body, 0.94) if _slope(body, i, work.light_side) < 0.9995]
    if not falling:
        raise NotCut(say("propose.cut.inclined"))
    level = max(float((body.facets([i], 0.02).corners @ work.light_side).max()) for i in falling)
    shape = filled(body, falling, work.light_side, level)
    moved(work, part, shape, say("propose.land-level"), None, [finding])


def _lit(work: Mending, body: Body, least: float) -> list[int]:
    """Faces of the cover's top that lie over the band beside the seam."""
    frame = work.joint.frame
    band = work.joint.region.buffer(0.5)
    contact = float(np.median([frame.world(np.array([*xy, 0.0])) @ work.light_side for xy in _corners(band)]))
    found = []
    for i in range(len(body.faces)):
        box = body.boxes[i]
        corners = np.array([[box[a], box[b], box[c]] for a in (0, 3) for b in (1, 4) for c in (2, 5)])
        if np.isnan(corners).any() or float((corners @ work.light_side).max()) < contact + 0.3:
            continue
        if _slope(body, i, work.light_side) < least:
            continue
        if face_region(body, i, frame).intersection(band.buffer(4.0)).area > 0.5:
            found.append(i)
    return found


def _corners(region: BaseGeometry) -> np.ndarray:
    found: np.ndarray = shapely.get_coordinates(region)[:200]
    return found


def _slope(body: Body, face: int, direction: np.ndarray) -> float:
    """Mean cosine between a face's normals and a direction."""
    corners = body.facets([face], 0.05).corners
    if not len(corners):
        return 0.0
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    size = float(np.linalg.norm(normals, axis=1).sum())
    return float((normals @ direction).sum()) / size if size > 0.0 else 0.0


WAYS: dict[str, Callable[[Mending, Mapping[str, Any]], None]] = {
    "rib-uniformity": _smooth, "contact-gap": _smooth, "cover-uniformity": _smooth, "seam-open": _smooth,
    "transmission": _smooth, "collapse-window": _window,
    "intended-stop": _set_stop, "parts-overlap": _part, "cover-thickness": _thickness, "clamp-land": _land,
    "clamp-tilt": _level_land,
}  # fmt: skip
"""Rule -> what is tried for one place; the rules on the whole section are in ``mending.MOVED_FOR``."""
