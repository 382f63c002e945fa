"""Planning the joints of one model and cutting them: runs in a child process, since it reads the model."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import msgspec
import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.assembly import read_assembly
from seamcheck.assembly.parts import Assembly, Part
from seamcheck.contour import trace_contour
from seamcheck.errors import NotReviewed
from seamcheck.joint import Joint, find_joints, join_pieces
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import union_region
from seamcheck.kernel import Body
from seamcheck.kernel.distance import depth_inside
from seamcheck.kernel.grooves import NotCut, shortest_edge, volume, without
from seamcheck.kernel.write_step import write_bodies
from seamcheck.proposal.design import VARIABLES, Design, Space, Wishes, design, narrowest, on_grid
from seamcheck.proposal.records import Bound, Change, Dimension, JointProposal, Short
from seamcheck.proposal.repair import filled_to_contact, mend
from seamcheck.proposal.room import Line, Net, Room, measure_room, nets_of, outside_stretches, rounded, with_walls
from seamcheck.proposal.shape import Cut, contact_faces, cut_joint
from seamcheck.settings.settings import Settings

TITLES = {
    "rib_width": "rib width at the contact plane",
    "rib_height": "rib height above both trap floors",
    "trap_inner": "width of the inner flash trap",
    "trap_outer": "width of the outer flash trap",
    "lowering": "land beside the traps below the contact plane",
}
"""Dimension of a section -> how people call it."""

RADII = (4.5, 3.3, 3.03)
"""mm, radii to which corners of the mid-line are rounded, the most comfortable first."""

FLAT_KINDS = ("flat-lap", "plain-wall", "stepped-lap", "ledge")
REDRAWN = frozenset(
    {"corner-radius", "trap-corner", "seam-open", "rib-missing", "rib-width", "rib-height", "slenderness", "trap-room",
     "trap-side", "lip-gap", "sink-travel", "trap-open-inner", "rib-uniformity"}
)  # fmt: skip
"""Rules on the joint itself: where no move mends one, the joint is drawn anew."""

LEVEL = 0.2
"""mm: a contact that rises by more is no level one."""

USUAL_HALF = 0.4
"""mm, half the width of a slender rib."""

MOST_AWAY = 5.0
"""mm that a mid-line is moved in from the outer border beyond what the section needs."""

DEPTH_SPACING = 3.0
"""mm along the seam between the places where the wall's depth is taken."""

Progress = Callable[..., None]


@dataclass(frozen=True, slots=True, eq=False)
class _Contact:
    """A flat contact as a joint can use it: base's frame with z out of the base, faces, region, lines, heights."""

    joint: Joint
    frame: Frame
    body: Body
    faces: tuple[int, ...]
    region: BaseGeometry
    lines: tuple[Line, ...]
    heights: tuple[float, float]


def plan_joints(
    paths: Sequence[Path], settings: Settings, wishes: Wishes, target: Path, review: Mapping[str, Any],
    progress: Progress = lambda stage: None,
) -> tuple[JointProposal, ...]:  # fmt: skip
    """Cut a joint into every flat contact of a model, move what breaks a limit where a rib stands, and write it.

    Parameters
    ----------
    target : folder; 'proposed.step' and 'tools.step' are written into it where at least one part was changed
    review : document of the model's review

    Raises
    ------
    NotReviewed : as a review of the model
    """
    progress("reading")
    assembly = read_assembly(paths, progress)
    progress("finding")
    assembly = join_pieces(assembly, settings)
    shapes = {part.id: part.shape for part in assembly.parts}
    tools: list[tuple[str, Any]] = []
    proposals = []
    for joint in find_joints(assembly, settings):
        progress("designing")
        if has_rib(joint):
            proposal, bodies = _mended(joint, review, settings, wishes, shapes, assembly)
            tools += bodies
        else:
            proposal, cut = _joint(joint, settings, wishes, shapes)
            if cut is not None:
                shapes[_carrier(joint, wishes)[0]] = cut.part
                tools += [(f"{joint.id} lowering", cut.lowering), (f"{joint.id} flash traps", cut.traps)]
        proposals.append(proposal)
    if tools:
        progress("writing")
        write_bodies([_named(part, shapes[part.id]) for part in assembly.parts], target / "proposed.step")
        write_bodies([(name, shape, _TOOL) for name, shape in tools], target / "tools.step")
    return tuple(proposals)


_TOOL = (0.76, 0.36, 0.12, 0.6)


def _named(part: Part, shape: Any) -> tuple[str, Any, tuple[float, float, float, float]]:
    colour = part.colour or (0.72, 0.74, 0.72)
    return part.name or part.id, shape, (*colour, 1.0 - float(part.transparency or 0.0))


def has_rib(joint: Joint) -> bool:
    """Whether a weld rib stands already."""
    return joint.rib_on != "none" and joint.kind not in FLAT_KINDS


def _head(joint: Joint, rib_on: str) -> dict[str, Any]:
    cover, base = (", ".join(joint.parts[i].name or i for i in ids) for ids in (joint.cover, joint.base))
    return {"joint": joint.id, "cover": cover, "base": base, "carrier": cover if rib_on == "cover" else base}


def _mended(
    joint: Joint, review: Mapping[str, Any], settings: Settings, wishes: Wishes, shapes: dict[str, Any],
    assembly: Assembly,
) -> tuple[JointProposal, list[tuple[str, Any]]]:  # fmt: skip
    """What a rib that stands already needs: nothing, some moves, or to be drawn anew."""
    head = _head(joint, joint.rib_on)
    record = next((r for r in review.get("joints", ()) if r["id"] == joint.id), None)
    findings = [
        f for f in review.get("findings", ())
        if f["joint"] == joint.id and f["severity"] in ("must-fix", "attention") and not f["waived"]
    ]  # fmt: skip
    if record is None or not findings:
        return JointProposal(**head, state="sound", message="There is a weld rib already, and it holds its limits."), []
    before = dict(shapes)
    changes, left = mend(joint, record, findings, settings, wishes.lip, shapes)
    facts: dict[str, Any] = {"changes": changes, "left": left}
    if not changes and any(one.rule in REDRAWN for one in left):
        anew = _drawn_anew(joint, record, settings, replace(wishes, rib_on=joint.rib_on), shapes, assembly)
        if anew is not None and anew[1] is not None:
            shapes[joint.rib_part] = anew[1].part
            ids = tuple(one.finding for one in left if one.rule in REDRAWN)
            drawn = Change(
                part=head["carrier"], what="the joint is drawn anew on the same contact", by=None, findings=ids
            )
            rest = tuple(one for one in left if one.rule not in REDRAWN)
            return msgspec.structs.replace(anew[0], changes=(drawn,), left=rest), _differences(joint, before, shapes)
    state = "mended" if changes else "not-mended"
    message = (
        "; ".join(_said(change) for change in changes).capitalize() + "."
        if changes
        else "Nothing could be moved: " + "; ".join(dict.fromkeys(f"{one.rule}: {one.why}" for one in left)) + "."
    )
    return JointProposal(**head, **facts, state=state, message=message), _differences(joint, before, shapes)


def _said(change: Change) -> str:
    return change.what + ("" if change.by is None else f" by {change.by:.2f} mm")


def _differences(joint: Joint, before: Mapping[str, Any], after: Mapping[str, Any]) -> list[tuple[str, Any]]:
    """What was added to and taken from the parts, as bodies."""
    found = []
    for part, shape in after.items():
        if shape is before[part]:
            continue
        for what, body in (("added", without(shape, before[part])), ("taken away", without(before[part], shape))):
            if volume(body) > 1e-6:
                found.append((f"{joint.id} {what}", body))
    return found


def _drawn_anew(
    joint: Joint, record: Mapping[str, Any], settings: Settings, wishes: Wishes, shapes: dict[str, Any],
    assembly: Assembly,
) -> tuple[JointProposal, Cut | None] | None:  # fmt: skip
    """A new joint on the contact plane of the old one, its traps filled first; None where that can't be."""
    try:
        flat = filled_to_contact(joint, record, settings, shapes[joint.rib_part])
    except NotCut:
        return None
    pair = {*joint.cover, *joint.base}
    parts = [
        replace(part, shape=flat if part.id == joint.rib_part else shapes[part.id])
        for part in assembly.parts
        if part.id in pair
    ]
    try:
        (again,) = find_joints(replace(assembly, parts=tuple(parts)), settings)
    except (NotReviewed, ValueError):
        return None
    if has_rib(again):
        return None
    return _joint(again, settings, wishes, {part.id: part.shape for part in parts})


def _joint(
    joint: Joint, settings: Settings, wishes: Wishes, shapes: dict[str, Any]
) -> tuple[JointProposal, Cut | None]:
    head = _head(joint, wishes.rib_on)
    if joint.kind not in FLAT_KINDS or len(joint.base) != 1 or len(joint.cover) != 1:
        message = f"The parts meet as {joint.kind}: there is no flat contact from which a rib could be cut."
        return JointProposal(**head, state="not-flat", message=message), None
    contact = _contact_of(joint, settings, wishes, shapes)
    if contact is None:
        message = "Base and cover do not lie flat on each other all along the seam."
        return JointProposal(**head, state="not-flat", message=message), None
    return _fitted(contact, head, settings, wishes)


def _carrier(joint: Joint, wishes: Wishes) -> tuple[str, str]:
    """Id of the part that is to carry the rib, and of the other one."""
    base, cover = joint.base[0], joint.cover[0]
    return (base, cover) if wishes.rib_on == "base" else (cover, base)


def _contact_of(joint: Joint, settings: Settings, wishes: Wishes, shapes: dict[str, Any]) -> _Contact | None:
    """The region in which both parts lie on each other, and the lines along its middle."""
    carrier, other = _carrier(joint, wishes)
    body, counter = Body(shapes[carrier]), joint.bodies[other]
    boxes = joint.bodies[joint.rib_part].boxes[list(joint.rib_faces)]
    middle = (boxes[:, :3].min(axis=0) + boxes[:, 3:].max(axis=0)) / 2.0
    height = float(joint.frame.local(middle)[2])
    frame = Frame.along(-joint.beam if wishes.rib_on == "base" else joint.beam, middle)
    turned = shapely.transform(joint.region, lambda xy: _into(frame, joint.frame, xy, height))
    reach = _height_reach(joint, frame)
    faces = contact_faces(body, turned, frame, 1.0, reach)
    under = contact_faces(counter, turned, frame, -1.0, reach)
    if not faces or not under:
        return None
    lying = union_region(body, faces, frame).intersection(union_region(counter, under, frame))
    region = lying.intersection(turned.buffer(0.01))
    if region.is_empty or region.area < 0.5 * turned.area:
        return None
    own = joint
    if joint.rib_part != carrier or region.area < 0.98 * turned.area:
        roles: dict[str, Any] = {"rib_part": carrier, "counter_part": other, "rib_faces": tuple(faces)}
        own = replace(joint, frame=frame, region=region, **roles)
    contour = trace_contour(own)
    lines, heights = [], []
    for path in contour.paths:
        local = frame.local(own.frame.world(path.points))
        lines.append(Line(path.id, path.closed, local[:, :2]))
        heights += [float(local[:, 2].min()), float(local[:, 2].max())]
    return _Contact(joint, frame, body, tuple(faces), region, tuple(lines), (min(heights), max(heights)))


def _into(frame: Frame, other: Frame, xy: np.ndarray, z: float) -> np.ndarray:
    world = other.world(np.column_stack([xy, np.full(len(xy), z)]))
    local: np.ndarray = frame.local(world)[:, :2]
    return local


def _height_reach(joint: Joint, frame: Frame) -> float:
    """mm, how far the seam's faces reach above and below the frame's origin."""
    boxes = joint.bodies[joint.rib_part].boxes[list(joint.rib_faces)]
    corners = np.array([[b[i], b[j], b[k]] for b in boxes for i in (0, 3) for j in (1, 4) for k in (2, 5)])
    return float(np.abs(frame.local(corners)[:, 2]).max()) + 0.1


def _fitted(
    contact: _Contact, head: dict[str, Any], settings: Settings, wishes: Wishes
) -> tuple[JointProposal, Cut | None]:
    if contact.heights[1] - contact.heights[0] > LEVEL:
        wishes = replace(wishes, draft=0.0)  # a flank that leans from one height would not keep the rib's width
    found = _best(contact, settings, wishes)
    if found is None:
        message = (
            "The contact does not run round closed: a seam with open ends can't be tight. Close the contact first, or "
            "name the parts that belong together."
        )
        return JointProposal(**head, state="not-flat", message=message), None
    chosen, nets, rooms, radius, space = found
    facts: dict[str, Any] = {
        "bounds": tuple(
            Bound(rule=m.rule, quantity=m.quantity, value=m.value, bound=m.bound, share=m.share)
            for m in chosen.margins
        ),
        "dimensions": _dimensions(chosen, settings),
        "corner_radius": radius,
        "seam_length": float(sum(net.length for net in nets)),
        "room_inner": space.inner, "room_outer": space.outer,
        "depth": space.depth if np.isfinite(space.depth) else None,
    }  # fmt: skip
    if not chosen.fits:
        short = _short(contact, rooms, settings, wishes, space)
        message, instead = _why_not(chosen, short, contact, settings, wishes, space)
        return JointProposal(**head, **facts, state="no-room", message=message, short=short, instead=instead), None
    try:
        cut = cut_joint(
            contact.body, contact.faces, contact.frame, nets, chosen.section, contact.heights, contact.region
        )
    except NotCut as why:
        return JointProposal(**head, **facts, state="no-room", message=str(why)), None
    removed = volume(contact.body.shape) - volume(cut.part)
    s = chosen.section
    message = (
        f"A rib {s.rib_width:.2f} mm wide and {s.rib_height:.2f} mm high between flash traps {s.trap_inner:.2f} mm and "
        f"{s.trap_outer:.2f} mm wide, the land beside them {s.lowering:.2f} mm lower."
    )
    return (
        JointProposal(
            **head, **facts, state="cut", message=message, removed_volume=removed, shortest_edge=shortest_edge(cut.part)
        ),
        cut,
    )  # fmt: skip


def _best(
    contact: _Contact, settings: Settings, wishes: Wishes
) -> tuple[Design, list[Net], list[Room], float, Space] | None:
    """The design over the mid-lines and corner radii that may be chosen; None where no line runs round closed."""
    depth = _depth(contact)
    tried = []
    for lines in _middle_lines(contact, settings, wishes, depth):
        for radius in RADII:
            nets = [net.rounded(radius) for net in lines]
            rooms = [measure_room(net.outline, contact.region) for net in nets]
            walls = [measure_room(wall, contact.region) for net in nets for wall in net.walls]
            space = Space(
                min(float(reach.min()) for reach in (*(r.inner for r in rooms + walls), *(w.outer for w in walls))),
                min(float(room.outer.min()) for room in rooms), depth,
                min(room.radius("inner") for room in rooms), min(room.radius("outer") for room in rooms),
            )  # fmt: skip
            found = on_grid(design(space, settings, wishes), space, settings, wishes)
            tried.append((found, nets, rooms + walls, radius, space))
            if found.fits and found.aimed > 0.3:
                break
    return max(
        tried,
        key=lambda t: (t[0].fits, t[4].outer >= _with_land(settings), round(min(t[0].aimed, 0.3), 2)),
        default=None,
    )


def _middle_lines(contact: _Contact, settings: Settings, wishes: Wishes, depth: float) -> list[tuple[Net, ...]]:
    """Lines that a rib could follow: the middle of the contact, and a line at one distance from its outer border.

    The second one is nearer to the border where the contact is wider on its inside (screw posts, corners), and
    further where the clamp needs the room.
    """
    traced = nets_of(contact.lines)
    found = [] if traced is None else [traced]
    walls = [wall for net in traced or () for wall in net.walls]
    whole = max(getattr(contact.region, "geoms", [contact.region]), key=lambda part: part.area)
    border = shapely.Polygon(whole.exterior)
    inner, outer = narrowest(settings, wishes, depth)
    for least in (max(outer, wishes.outer_at_least), max(outer, _with_land(settings))):
        best: tuple[float, Line] | None = None
        for away in np.arange(least + 0.02, outer + MOST_AWAY, 0.1):
            shrunk = border.buffer(-away, quad_segs=64)
            if shrunk.is_empty or not isinstance(shrunk, shapely.Polygon):
                break
            line = Line("c1", True, np.asarray(shrunk.exterior.coords)[:-1][::-1])
            room = measure_room(rounded(line, RADII[-1]), contact.region)
            spare = min(float(room.inner.min()) - inner, float(room.outer.min()) - outer)
            if best is None or spare > best[0]:
                best = (spare, line)
        if best is not None:
            found.append((with_walls(best[1], walls),))
    return found


def _with_land(settings: Settings) -> float:
    """mm from the mid-line to the border that leave land for the clamp beside the light of a slender rib."""
    return USUAL_HALF + settings.beam_margin + settings.limit("clamp-land", "min")


def _depth(contact: _Contact) -> float:
    """mm, least material below the contact along the light."""
    points = []
    for line in contact.lines:
        curve = line.curve
        at = shapely.line_interpolate_point(curve, np.arange(0.0, curve.length, DEPTH_SPACING))
        points.append(shapely.get_coordinates(at))
    xy = np.vstack(points)
    top = contact.heights[0]
    start = contact.frame.world(np.column_stack([xy, np.full(len(xy), top - 0.01)]))
    depths = depth_inside(contact.body, start, -contact.frame.axes[2]) + 0.01
    return float(np.nanmin(depths)) if np.isfinite(depths).any() else float("inf")


def _dimensions(chosen: Design, settings: Settings) -> tuple[Dimension, ...]:
    keys = {"rib_width": "rib_width", "rib_height": "rib_height"}
    found = [
        Dimension(
            key=name, title=TITLES[name], value=getattr(chosen.section, name), unit="mm",
            tolerance=settings.tolerances.get(keys.get(name, "")),
        )
        for name in VARIABLES
    ]  # fmt: skip
    found.append(Dimension(key="draft", title="draft of flanks and trap walls", value=chosen.section.draft, unit="°"))
    found.append(Dimension(key="collapse", title="planned collapse", value=chosen.section.collapse, unit="mm"))
    return tuple(found)


def _short(
    contact: _Contact, rooms: Sequence[Room], settings: Settings, wishes: Wishes, space: Space
) -> tuple[Short, ...]:
    need = dict(zip(("inner", "outer"), narrowest(settings, wishes, space.depth), strict=True))
    found = []
    for room in rooms:
        for side in ("inner", "outer"):
            has = getattr(room, side)
            needed = need[side] if room.line.closed else need["inner"]  # both sides of a dividing wall lie inside
            for start, end, missing, worst in outside_stretches(room, needed - has):
                at = contact.frame.world(np.array([*room.at[worst], 0.0]))
                found.append(
                    Short(
                        contour=room.line.id, side=side, from_s=start, to_s=end,
                        at=(float(at[0]), float(at[1]), float(at[2])),
                        room=float(has[worst]), need=needed, missing=missing,
                    )
                )  # fmt: skip
    return tuple(found)


def _why_not(
    chosen: Design, short: Sequence[Short], contact: _Contact, settings: Settings, wishes: Wishes, space: Space
) -> tuple[str, tuple[str, ...]]:
    """The reason, and what would make it fit."""
    instead = []
    if short:
        worst = max(short, key=lambda s: s.missing)
        message = (
            f"Over s = {worst.from_s:.1f} to {worst.to_s:.1f} mm the contact is {worst.missing:.2f} mm too narrow on "
            f"the {worst.side} side: {worst.room:.2f} mm from the mid-line, {worst.need:.2f} mm are needed."
        )
        instead.append(f"Widen the contact there by {worst.missing:.2f} mm on the {worst.side} side.")
    else:
        least = chosen.least
        message = (
            f"The nearest limit can't be held: {least.rule}, {least.quantity} {least.value:.2f} against "
            f"{least.bound:.2f}."
        )
    for side in ("outer", "inner"):
        other = replace(wishes, open_outer=True) if side == "outer" else replace(wishes, open_inner=True)
        if not getattr(wishes, f"open_{side}") and design(space, settings, other).fits:
            instead.append(
                f"Leave out the {side} lip (--open {side}): it would fit; flash then shows on the {side} side."
            )
    if wishes.fixed and design(space, settings, replace(wishes, fixed={})).fits:
        instead.append("Leave the fixed dimensions free: without them it fits.")
    return message, tuple(instead)
