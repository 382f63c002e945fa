"""A model with a weld rib: move what breaks a limit, leave the rest. Runs in the child process that reads the model."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import product
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import trace_contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.distance import depth_inside
from seamcheck.kernel.grooves import ABOVE, Axes, NotCut, common, slab, solids_of, united, volume
from seamcheck.kernel.moving import BURIED, added, filled, pulled, taken, without_faces
from seamcheck.kernel.stepped import Flat, Wall, stepped
from seamcheck.proposal.mending import SECTION_RULES, SIDES, Bounds, Present, Side, closed, fewest_moves
from seamcheck.proposal.records import Change, Left
from seamcheck.proposal.room import Line, measure_room
from seamcheck.proposal.shape import WALL_FIT, as_line
from seamcheck.sections.pieces import tangent_ring
from seamcheck.settings.settings import Settings

LEVEL = 0.2
"""mm: a seam that rises by more is no level one; its floors and lips have no one height."""

SAME = 0.03
"""mm: a face belongs to a floor or a lip where its height is this near to the measured one."""

BAND = 12.0
"""mm beside the mid-line in which floors, lips and lands are looked for."""

SEEN = 0.1
"""mm, widest leaning flank or wall seen from above that is closed between two level faces."""

LIP_GAP = 0.2
"""mm that a new lip leaves after the collapse: the middle of what the rule lip-gap allows."""

PLAY = 0.1
"""mm that two parts are kept apart where they overlapped. Assumption."""

BY_HAND = {
    "cover-hole": "the hole has a purpose that the model does not tell; move it[ {by} mm] out of the light by hand",
    "beam-path": "what shades the seam has a purpose that the model does not tell; move it by hand",
    "light-clear": "what shades the seam has a purpose that the model does not tell; move it[ {by} mm] by hand",
    "scanner-shadow": "it is decided by the scanner's place and by what stands beside the seam, not by the joint",
    "beam-angle": "it is decided by the scanner's place and field[, {by}° too far], not by the joint",
    "clamp-reach": "what stands on the land has a purpose that the model does not tell; move it[ {by} mm] by hand",
    "wall-opening": "the opening has a purpose that the model does not tell; move it by hand",
    "flatness-stack": "it is decided by the tolerances of the parts[, {by} mm too wide], not by their drawn shape",
    "support-offset": "the wall below the seam would have to move[ by {by} mm], and with it the housing's inside",
    "wall-to-rib": "the wall below the seam would have to grow, and with it the housing's inside or outside",
    "overhang": "the wall below the seam would have to move[ by {by} mm], and with it the housing's inside",
    "near-parts": "the other part has its place for a reason that the model does not tell[; {by} mm are missing]",
    "path-distance": "the two seams would have to move[ {by} mm] apart, and with them the walls below",
    "seam-step": "the whole seam would have to be laid level",
    "corner-radius": "the wall below the corner would have to turn in a larger radius[, by {by} mm]",
    "guide-play": "which of the two flanks may give way is not told by the model; set one back by hand",
    "guide-depth": "which of the two flanks may grow is not told by the model; lengthen one by hand",
    "guide-draft": "the draft hangs on how both parts are moulded, which the model does not tell",
    "sink-mark": "the plate below the rib would have to grow, and with it the part's other side",
    "second-collapse": "it is decided by the collapses that are planned, not by a fault of the joint",
    "rib-missing": "the rib is missing over a stretch that is not closed by its neighbours",
}
"""Rule -> why no move of the joint's own faces mends it; in brackets what is said where the finding has a number."""


@dataclass(frozen=True, slots=True, eq=False)
class _Mending:
    """What is being moved of one joint; ``shapes`` changes as moves succeed."""

    joint: Joint
    record: Mapping[str, Any]
    settings: Settings
    lip: float
    shapes: dict[str, Any]
    changes: list[Change] = field(default_factory=list)
    left: list[Left] = field(default_factory=list)
    handled: set[str] = field(default_factory=set)

    @property
    def up(self) -> np.ndarray:
        """(3,) out of the part that carries the rib."""
        axis: np.ndarray = self.joint.frame.axes[2]
        return axis

    @property
    def light_side(self) -> np.ndarray:
        """(3,) out of the cover towards the light's source."""
        return -np.asarray(self.joint.beam, dtype=float)


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
    work = _Mending(joint, record, settings, lip, shapes)
    section = [f for f in findings if f["rule"] in SECTION_RULES or f["rule"] == "trap-open-inner"]
    others = [f for f in findings if f not in section]
    for finding in [f for f in section if f["rule"] == "sink-travel"]:
        _cut_back(work, finding)
    for finding in others:
        _one(work, finding)
    still = [f for f in section if f["id"] not in work.handled]
    if still:
        _section(work, still)
    return tuple(work.changes), tuple(work.left)


# -- single places ----------------------------------------------------------------------------------------


def _one(work: _Mending, finding: Mapping[str, Any]) -> None:
    rule = str(finding["rule"])
    ways: dict[str, Callable[[_Mending, Mapping[str, Any]], None]] = {
        "rib-uniformity": _smooth, "contact-gap": _smooth, "cover-uniformity": _smooth, "seam-open": _smooth,
        "transmission": _smooth, "collapse-window": _window,
        "intended-stop": _set_stop, "parts-overlap": _part, "cover-thickness": _thickness, "clamp-land": _land,
        "clamp-tilt": _level_land,
    }  # fmt: skip
    if rule not in ways:
        _leave(work, finding, by_hand(finding))
        return
    try:
        ways[rule](work, finding)
    except NotCut as why:
        _leave(work, finding, f"it was tried, but {why.why}")


def by_hand(finding: Mapping[str, Any]) -> str:
    """Why no move of the joint's own faces mends a finding, with what was measured there."""
    said = BY_HAND.get(str(finding["rule"]), "no move of the joint's own faces is known to mend it")
    value, limit, unit = finding["value"], finding["limit"], finding.get("unit")
    known = value is not None and limit is not None and (unit in ("mm", "°") or "{by}" in said)
    said = re.sub(r"\[(.*?)\]", r"\1" if known else "", said)
    said = said.format(by=f"{abs(float(value) - float(limit)):.2f}") if known else said
    return said + _place(finding)


def _place(finding: Mapping[str, Any]) -> str:
    """Where along the seam a finding lies, as the end of a sentence."""
    start, end = finding.get("from_s"), finding.get("to_s")
    if start is None or end is None:
        return ""
    if abs(float(end) - float(start)) < 0.1:
        return f" (at s = {float(start):.1f} mm)"
    return f" (over s = {float(start):.1f} to {float(end):.1f} mm)"


def _leave(work: _Mending, finding: Mapping[str, Any], why: str) -> None:
    work.handled.add(str(finding["id"]))
    work.left.append(Left(finding=finding["id"], rule=finding["rule"], why=why))


def _moved(
    work: _Mending, part: str, shape: Any, what: str, by: float | None, findings: Sequence[Mapping[str, Any]]
) -> None:
    work.shapes[part] = shape
    ids = tuple(str(f["id"]) for f in findings)
    work.handled.update(ids)
    name = next((p.name for p in work.joint.parts.values() if p.id == part), None) or part
    work.changes.append(Change(part=name, what=what, by=by, findings=ids))


def _smooth(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Take away a pad, or fill a groove or recess, where the finding lies."""
    on_cover = finding["rule"] in ("contact-gap", "cover-uniformity", "transmission", "collapse-window")
    cover, base = work.joint.cover[0], work.joint.base[0]
    order = (cover, base) if on_cover else (work.joint.rib_part,)
    why = NotCut("no small feature was found there.")
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
            what = "a raised place is taken away" if change < 0 else "a recess or groove is filled"
            _moved(work, part, shape, f"{what} beside s = {_at_s(finding):.1f} mm", None, [finding])
            return
    raise why


def _window(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Smooth what makes the gap; where nothing does, say which limits leave no collapse."""
    try:
        _smooth(work, finding)
    except NotCut:
        window = work.record["interface"].get("collapse_window") or {}
        travel, most = _travel_asked(window, finding), work.settings.collapse + work.settings.limit("lip-gap", "max")
        why = f"no pad or recess makes the gap; no collapse is left between {window.get('why', 'both limits')}"
        if travel is not None and travel > most:
            why += (
                f"; the land would have to lie {travel:.2f} mm below the contact, where the lips then leave more than "
                f"lip-gap allows ({most:.2f} mm)"
            )
        _leave(work, finding, why)


def _travel_asked(window: Mapping[str, Any], finding: Mapping[str, Any]) -> float | None:
    """mm of free travel that would open the collapse window; None where something else closes it."""
    highest = window.get("said", {}).get("parts", {}).get("high", ())
    travels = [one["args"]["travel"]["value"] for one in highest if one["key"] == "cause.travel"]
    return travels[0] + finding["limit"] - finding["value"] if travels else None


def _at_s(finding: Mapping[str, Any]) -> float:
    return float(finding["from_s"] or 0.0)


def _small_faces(work: _Mending, body: Body, finding: Mapping[str, Any], beyond: float) -> list[list[int]]:
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


def _cut_back(work: _Mending, finding: Mapping[str, Any]) -> None:
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
            _moved(work, part, shape, "what the cover meets first is cut back", missing, [finding])
    except NotCut as why:
        _leave(work, finding, f"it was tried, but {why.why}")


def _set_stop(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Set the stop to the height that is stated for it."""
    travel = work.record["interface"]["free_travel"]
    stop = work.settings.intended_stop
    face = next((f for f in travel["faces"] if f["part"] in work.joint.base), None)
    if not stop or face is None:
        raise NotCut("the stop's face is not known.")
    by = float(travel["value"]) - float(stop)
    shape = pulled(Body(work.shapes[face["part"]]), [int(face["face"])], -np.asarray(work.joint.beam), by)
    _moved(work, face["part"], shape, "the stop is " + ("raised" if by > 0 else "lowered"), abs(by), [finding])


def _part(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Move faces of the cover back, out of the parts that it overlaps: of each overlap the face with the least way."""
    moves: list[tuple[str, float]] = []
    tried = dict(work.shapes)
    for place in work.record["interface"]["overlap"].get("places") or []:
        pair = {face["part"] for face in place.get("faces") or []}
        covers, others = pair & set(work.joint.cover), pair - set(work.joint.cover)
        if len(covers) != 1 or len(others) != 1:
            raise NotCut("the overlap is not one of the cover with one other part.")
        (part,), (other,) = covers, others
        moved, by = _freed(tried[part], tried[other], np.asarray(place["at"], dtype=float))
        tried[part] = moved
        moves.append((part, by))
    if not moves:
        raise NotCut("no overlap was found again.")
    for part, by in moves:
        _moved(work, part, tried[part], "a face is moved out of the other part", by, [finding])


def _freed(shape: Any, other: Any, at: np.ndarray) -> tuple[Any, float]:
    """A part with one plane face moved back until it no longer runs into another part at a place; and by how much.

    Raises
    ------
    NotCut : no plane face frees it on its own
    """
    shared = [Body(solid) for solid in solids_of(common(shape, other))]
    if not shared:
        raise NotCut("the parts touch there without sharing any volume.")
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
            moved = pulled(body, [i], body.planes[i, :3], -by)
        except NotCut:
            continue
        if volume(common(moved, one.shape)) < 1e-6:
            return moved, by
    raise NotCut("no plane face of the cover frees it on its own.")


def _thickness(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Lower or raise the cover's face towards the light over the seam."""
    part = work.joint.cover[0]
    body = Body(work.shapes[part])
    faces = _lit(work, body, 0.999)
    if not faces:
        raise NotCut("no level face of the cover lies over the seam.")
    by = float(finding["limit"]) - float(finding["value"])
    by = float(by + np.sign(by) * 0.01)
    shape = pulled(body, faces, work.light_side, by)
    what = "the cover's face towards the light is " + ("raised" if by > 0 else "lowered")
    _moved(work, part, shape, what, abs(by), [finding])


def _land(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Take away the chamfer or rounding that ends the land."""
    part = work.joint.cover[0]
    body = Body(work.shapes[part])
    top = _lit(work, body, 0.999)
    beside = [i for i in body.neighbours(set(top)) if 0.05 < _slope(body, i, work.light_side) < 0.97]
    if not beside:
        raise NotCut("the land is not ended by a chamfer or rounding of the cover; its border would have to move out.")
    _moved(work, part, without_faces(body, beside), "the chamfer that ends the land is taken away", None, [finding])


def _level_land(work: _Mending, finding: Mapping[str, Any]) -> None:
    """Fill a land that falls off up to the height of its highest place."""
    part = work.joint.cover[0]
    body = Body(work.shapes[part])
    falling = [i for i in _lit(work, body, 0.94) if _slope(body, i, work.light_side) < 0.9995]
    if not falling:
        raise NotCut("the land belongs to a seam that is itself inclined.")
    level = max(float((body.facets([i], 0.02).corners @ work.light_side).max()) for i in falling)
    shape = filled(body, falling, work.light_side, level)
    _moved(work, part, shape, "the land that falls off is filled level", None, [finding])


def _lit(work: _Mending, body: Body, least: float) -> list[int]:
    """Faces of the cover towards the light that lie over the band beside the seam."""
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


# -- the section of the whole seam --------------------------------------------------------------------------


@dataclass(frozen=True, eq=False)
class Band:
    """Mid-lines of the rib in the plane of its frame, and the height of the contact in it, mm."""

    frame: Frame
    lines: tuple[Line, ...]
    contact: float

    def depth(self, body: Body, face: int) -> float:
        """mm, of a plane face below the contact."""
        return self.contact - float(body.planes[face, 3] - self.frame.origin @ self.frame.axes[2])

    def level_faces(self, body: Body, side: str, depth: float) -> tuple[int, ...]:
        """Faces of the part beside the rib that look towards the other part from a depth below the contact."""
        strip = shapely.union_all([line.curve.buffer(BAND) for line in self.lines])
        found = []
        for i in map(int, np.flatnonzero(body.planes[:, :3] @ self.frame.axes[2] > 0.9999)):
            if abs(self.depth(body, i) - depth) > SAME:
                continue
            region = face_region(body, i, self.frame)
            inside = region.intersection(strip).area
            if inside and inside > 0.5 * region.area and _side_of(region, self.lines) == side:
                found.append(i)
        return tuple(found)


def _section(work: _Mending, findings: Sequence[Mapping[str, Any]]) -> None:
    part = work.joint.rib_part
    bounds = [
        Bounds(b["column"], b["low"], b["high"])
        for contour in work.record["contours"]
        for b in contour["bounds"]
        if b["severity"] in ("must-fix", "attention") and b["rule"] != "rib-uniformity"  # its bounds move with the rib
    ]
    try:
        band, present = read_present(work.joint, work.record, work.settings, Body(work.shapes[part]))
        lip = None
        if present.inner.lip is None and any(f["rule"] == "trap-open-inner" for f in findings):
            lip = present.collapse + LIP_GAP
            present = closed(present, "inner", work.lip, lip)
        moves = fewest_moves(present, bounds, [f["rule"] for f in findings], work.lip)
        if moves is None:
            raise NotCut("no move of up to three dimensions of rib, traps and lips brings all limits in.")
        shape = work.shapes[part]
        if lip is not None:
            shape = _with_lip(shape, band, "inner", present, lip)
        shape = _with_moves(shape, band, present, moves)
    except NotCut as why:
        for finding in findings:
            _leave(work, finding, why.why.rstrip("."))
        return
    if lip is not None:
        what = f"a lip {work.lip:.2f} mm wide, {lip:.2f} mm below the contact, closes the inner flash trap"
        _moved(work, part, shape, what, None, findings)
    for name, by in moves.items():
        _moved(work, part, shape, SENTENCES[name][by > 0], abs(by), findings)


SENTENCES = {
    "rib": ("the rib is narrower", "the rib is wider"),
    "floor_inner": ("the inner trap's floor is higher", "the inner trap's floor is deeper"),
    "floor_outer": ("the outer trap's floor is higher", "the outer trap's floor is deeper"),
    "wall_inner": ("the inner trap is narrower", "the inner trap is wider"),
    "wall_outer": ("the outer trap is narrower", "the outer trap is wider"),
    "lip_inner": ("the inner lip is higher", "the inner lip is lower"),
    "lip_outer": ("the outer lip is higher", "the outer lip is lower"),
}
"""Move -> what it is called where it is negative and where it is positive."""


def read_present(joint: Joint, record: Mapping[str, Any], settings: Settings, body: Body) -> tuple[Band, Present]:
    """The section of an existing rib: heights and areas from its review, widths from the part's faces.

    Raises
    ------
    NotCut : the seam is not level, does not run round, or has no trap with a level floor on one side
    """
    band = _band(joint)
    summary = record["summary"]
    if any(not summary.get(key) for key in ("rib_width", "trap_area_inner", "trap_area_outer")):
        raise NotCut("there is no flash trap whose dimensions could move.")
    rib = union_region(body, joint.rib_faces, joint.frame) if joint.rib_faces else joint.region
    sides = {name: _side(band, body, summary, name, rib, settings.collapse) for name in SIDES}
    width = summary["rib_width"]
    drafts = [summary[f"draft_{name}"]["median"] for name in SIDES if summary.get(f"draft_{name}")]
    return band, Present(
        width=float(width["median"]), width_least=float(width["min"]), width_most=float(width["max"]),
        lean=float(np.tan(np.radians(np.mean(drafts or [0.0])))), collapse=settings.collapse, travel=float("inf"),
        depth=_depth(band, body), inner=sides["inner"], outer=sides["outer"],
    )  # fmt: skip


def _side(band: Band, body: Body, summary: Mapping[str, Any], name: str, rib: BaseGeometry, collapse: float) -> Side:
    height = float(summary[f"rib_height_{name}"]["median"])
    gap = summary.get(f"lip_gap_{name}")
    lip = None if gap is None else float(gap["median"]) + collapse
    floors = band.level_faces(body, name, height)
    if not floors:
        raise NotCut(f"the floor of the {name} flash trap is not level.")
    lips = () if lip is None else band.level_faces(body, name, lip)
    inside = _closed(shapely.union_all([rib, union_region(body, floors, band.frame)]))
    whole = _closed(shapely.union_all([inside, union_region(body, lips, band.frame)])) if lips else inside
    foot = np.concatenate([getattr(measure_room(line, inside), name) for line in band.lines])
    end = np.concatenate([getattr(measure_room(line, whole), name) for line in band.lines])
    turned, straight = summary.get(f"trap_corner_{name}"), summary.get(f"trap_room_{name}")
    turn = turned["min"] / straight["min"] if turned and straight and straight["min"] else 1.0
    return Side(
        height=height, foot=float(np.median(foot)), end=float(np.min(end)),
        area=float(summary[f"trap_area_{name}"]["min"]), turn=min(1.0, float(turn)), lip=lip,
    )  # fmt: skip


def _closed(region: BaseGeometry) -> BaseGeometry:
    return region.buffer(SEEN, join_style="mitre").buffer(-SEEN, join_style="mitre")


def _depth(band: Band, body: Body) -> float:
    points = [
        shapely.get_coordinates(shapely.line_interpolate_point(x.curve, np.arange(0.0, x.curve.length, 3.0)))
        for x in band.lines
    ]
    xy = np.vstack(points)
    start = band.frame.world(np.column_stack([xy, np.full(len(xy), band.contact - 0.01)]))
    depths = depth_inside(body, start, -band.frame.axes[2]) + 0.01
    return float(np.nanmin(depths)) if np.isfinite(depths).any() else float("inf")


def _band(joint: Joint) -> Band:
    paths = trace_contour(joint).paths
    if not all(path.closed for path in paths):
        raise NotCut("the seam does not run round closed, or branches: its dimensions are not moved as a whole.")
    heights = np.concatenate([path.points[:, 2] for path in paths])
    if float(np.ptp(heights)) > LEVEL:
        raise NotCut("the seam is not level: its floors and lips have no one height.")
    lines = tuple(Line(path.id, True, path.points[:, :2]) for path in paths)
    return Band(joint.frame, lines, float(np.median(heights)))


def _side_of(region: BaseGeometry, lines: Sequence[Line]) -> str:
    point = region.representative_point()
    line = min(lines, key=lambda x: x.curve.distance(point))
    return "inner" if shapely.Polygon(line.points).contains(point) else "outer"


def _strips(
    band: Band, side: str, near: tuple[float, float], far: tuple[float, float], depth: float, top: float
) -> list[Any]:
    """Columns beside every mid-line, between two distances from it.

    Parameters
    ----------
    near, far : mm from the mid-line, each at the lower and at the upper end
    depth : mm, lower end below the contact
    top : mm, upper end above the contact
    """
    axes = Axes(band.frame.origin, band.frame.axes)
    low, high = band.contact - depth, band.contact + top
    found = []
    for line in band.lines:
        ring = tangent_ring(line.points, WALL_FIT)
        sign = 1.0 if side == "outer" else -1.0
        a, b = [ring.offset(sign * x) for x in near], [ring.offset(sign * x) for x in far]
        outline, hole = (b, a) if side == "outer" else (a, b)
        lines = [[as_line(one) for one in ends] for ends in (outline, hole)]
        walls = [Wall(low, high, *ends) for ends in lines]
        flats = [Flat(z, lines[0][k], (lines[1][k],)) for k, z in enumerate((low, high))]
        found.append(stepped(axes, walls, flats))
    return found


def _upright(x: float) -> tuple[float, float]:
    return x, x


def _with_lip(shape: Any, band: Band, side: str, present: Present, depth: float) -> Any:
    """A lip that raises the floor beyond the trap's new wall to a depth below the contact, flush with the edge."""
    body, one = Body(shape), present.side(side)
    floors = band.level_faces(body, side, one.height)
    over = slab(body, floors, band.frame.axes[2], BURIED, above=one.height - depth)
    beyond = _strips(band, side, _upright(one.foot), _upright(one.foot + 3.0), one.height + 1.0, 1.0)
    return added(shape, [common(over, united(beyond))])


def _with_moves(shape: Any, band: Band, present: Present, moves: Mapping[str, float]) -> Any:
    """The part with its floors, walls, rib and lips moved."""
    up, by = band.frame.axes[2], moves.get("rib", 0.0) / 2.0
    for name in SIDES:
        side = present.side(name)
        deeper, wider, lower = (moves.get(f"{what}_{name}", 0.0) for what in ("floor", "wall", "lip"))
        height = side.height + deeper
        foot = present.width / 2.0 + side.height * present.lean
        if deeper:
            body = Body(shape)
            shape = pulled(body, band.level_faces(body, name, side.height), up, -deeper)
        if deeper < 0.0:  # into flank and wall, which lean away from the floor
            ends = [foot] if side.lip is None else [foot, side.foot]
            for x in ends:
                strips = _strips(band, name, _upright(x - 0.15), _upright(x + 0.15), side.height + BURIED, -height)
                shape = added(shape, strips)
        wall = side.foot + wider
        if wider > 0.0:
            far = wall, wall + present.lean * (height + ABOVE)
            shape = taken(shape, _strips(band, name, _upright((foot + side.foot) / 2.0), far, height, ABOVE))
        elif wider < 0.0 and side.lip is not None:
            far = _upright(side.foot + 0.2)
            shape = added(shape, _strips(band, name, _upright(wall), far, height + BURIED, -side.lip))
        if lower and side.lip is not None:
            body = Body(shape)
            shape = pulled(body, band.level_faces(body, name, side.lip), up, -lower)
        half = present.width / 2.0 + by
        if by > 0.0:
            far = half + present.lean * (height + BURIED), half
            shape = added(shape, _strips(band, name, _upright(0.0), far, height + BURIED, 0.0))
        elif by < 0.0:
            near = half + present.lean * height, half - present.lean * ABOVE
            shape = taken(shape, _strips(band, name, near, _upright((foot + side.foot) / 2.0), height, ABOVE))
    return shape


def filled_to_contact(joint: Joint, record: Mapping[str, Any], settings: Settings, shape: Any) -> Any:
    """The part with its flash traps and the land beside them filled up to the contact, as if it had no rib yet.

    Raises
    ------
    NotCut
    """
    band, present = read_present(joint, record, settings, Body(shape))
    up = band.frame.axes[2]
    for name in SIDES:
        side = present.side(name)
        if side.lip is not None:
            body = Body(shape)
            shape = pulled(body, band.level_faces(body, name, side.lip), up, side.lip)
        body = Body(shape)
        shape = pulled(body, band.level_faces(body, name, side.height), up, side.height)
        foot = present.width / 2.0 + side.height * present.lean
        wall = side.foot - 0.2 if side.lip is None else min(side.foot + 0.2, side.end - 0.05)
        shape = added(shape, _strips(band, name, _upright(foot - 0.2), _upright(wall), side.height + BURIED, 0.0))
    return shape
