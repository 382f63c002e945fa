"""The section of a whole seam with a rib: its dimensions read, the fewest of them moved, or all filled up."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.contour import trace_contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.distance import depth_inside
from seamcheck.kernel.grooves import ABOVE, Axes, NotCut, common, slab, united
from seamcheck.kernel.moving import BURIED, added, pulled, taken
from seamcheck.kernel.stepped import Flat, Wall, stepped
from seamcheck.proposal.level import WALL_FIT, as_line
from seamcheck.proposal.mending import SIDES, Bounds, Present, Side, closed, fewest_moves
from seamcheck.proposal.room import Line, measure_room
from seamcheck.proposal.work import Mending, leave, moved
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


class Band(Struct, frozen=True, eq=False, dict=True):
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


def move_section(work: Mending, findings: Sequence[Mapping[str, Any]]) -> None:
    """Move the fewest dimensions of the section that bring the limits of some findings in, all along the seam."""
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
            raise NotCut(say("propose.cut.no-move"))
        shape = work.shapes[part]
        if lip is not None:
            shape = _with_lip(shape, band, "inner", present, lip)
        shape = _with_moves(shape, band, present, moves)
    except NotCut as why:
        for finding in findings:
            leave(work, finding, why.why)
        return
    if lip is not None:
        what = say("propose.lip", width=work.lip, below=lip)
        moved(work, part, shape, what, None, findings)
    for name, by in moves.items():
        moved(work, part, shape, say(f"propose.{name}-{'more' if by > 0 else 'less'}"), abs(by), findings)


def read_present(joint: Joint, record: Mapping[str, Any], settings: Settings, body: Body) -> tuple[Band, Present]:
    """The section of an existing rib: heights and areas from its review, widths from the part's faces.

    Raises
    ------
    NotCut : the seam is not level, does not run round, or has no trap with a level floor on one side
    """
    band = _band(joint)
    summary = record["summary"]
    if any(not summary.get(key) for key in ("rib_width", "trap_area_inner", "trap_area_outer")):
        raise NotCut(say("propose.cut.no-trap"))
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
        raise NotCut(say("propose.cut.floor", side=name))
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
        raise NotCut(say("propose.cut.branches"))
    heights = np.concatenate([path.points[:, 2] for path in paths])
    if float(np.ptp(heights)) > LEVEL:
        raise NotCut(say("propose.cut.not-level"))
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
