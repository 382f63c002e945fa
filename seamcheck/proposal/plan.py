"""Planning the joints of one model and cutting them: runs in a child process, since it reads the model."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.assembly import read_assembly
from seamcheck.assembly.parts import Part
from seamcheck.contour import trace_contour
from seamcheck.joint import Joint, find_joints, join_pieces
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import union_region
from seamcheck.kernel import Body
from seamcheck.kernel.distance import depth_inside
from seamcheck.kernel.grooves import NotCut, shortest_edge, volume
from seamcheck.kernel.write_step import write_bodies
from seamcheck.proposal.design import VARIABLES, Design, Space, Wishes, design, narrowest, on_grid
from seamcheck.proposal.records import Bound, Dimension, JointProposal, Short
from seamcheck.proposal.room import Line, Room, measure_room, outside_stretches, rounded
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
"""mm, radii to which corners of the middle line are rounded, the most comfortable first."""

FLAT_KINDS = ("flat-lap", "plain-wall", "stepped-lap", "ledge")
LEVEL = 0.2
"""mm: a contact that rises by more is no level one."""

USUAL_HALF = 0.4
"""mm, half the width of a slender rib."""

MOST_AWAY = 5.0
"""mm that a middle line is moved in from the outer border beyond what the section needs."""

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
    paths: Sequence[Path], settings: Settings, wishes: Wishes, target: Path, progress: Progress = lambda stage: None
) -> tuple[JointProposal, ...]:
    """Propose a joint for every flat contact of a model, and write the model with the joints cut.

    Parameters
    ----------
    target : folder; 'proposed.step' and 'tools.step' are written into it where at least one joint was cut

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
        proposal, cut = _joint(joint, settings, wishes, shapes)
        proposals.append(proposal)
        if cut is not None:
            shapes[_carrier(joint, wishes)[0]] = cut.part
            tools += [(f"{joint.id} lowering", cut.lowering), (f"{joint.id} flash traps", cut.traps)]
    if tools:
        progress("writing")
        write_bodies([_named(part, shapes[part.id]) for part in assembly.parts], target / "proposed.step")
        write_bodies([(name, shape, _TOOL) for name, shape in tools], target / "tools.step")
    return tuple(proposals)


_TOOL = (0.76, 0.36, 0.12, 0.6)


def _named(part: Part, shape: Any) -> tuple[str, Any, tuple[float, float, float, float]]:
    colour = part.colour or (0.72, 0.74, 0.72)
    return part.name or part.id, shape, (*colour, 1.0 - float(part.transparency or 0.0))


def _joint(
    joint: Joint, settings: Settings, wishes: Wishes, shapes: dict[str, Any]
) -> tuple[JointProposal, Cut | None]:
    cover, base = (", ".join(joint.parts[i].name or i for i in ids) for ids in (joint.cover, joint.base))
    carrier = cover if wishes.rib_on == "cover" else base
    head: dict[str, Any] = {"joint": joint.id, "cover": cover, "base": base, "carrier": carrier}
    if joint.rib_on != "none" and joint.kind not in FLAT_KINDS:
        message = "There is a weld rib already; a rib is cut from a flat contact only."
        return JointProposal(**head, state="has-rib", message=message), None
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
    chosen, rooms, radius, space = found
    rounded_lines = [room.line for room in rooms]
    facts: dict[str, Any] = {
        "bounds": tuple(
            Bound(rule=m.rule, quantity=m.quantity, value=m.value, bound=m.bound, share=m.share)
            for m in chosen.margins
        ),
        "dimensions": _dimensions(chosen, settings),
        "corner_radius": radius,
        "seam_length": float(sum(line.curve.length for line in rounded_lines)),
        "room_inner": space.inner, "room_outer": space.outer,
        "depth": space.depth if np.isfinite(space.depth) else None,
    }  # fmt: skip
    if not chosen.fits:
        short = _short(contact, rooms, settings, wishes, space)
        message, instead = _why_not(chosen, short, contact, settings, wishes, space)
        return JointProposal(**head, **facts, state="no-room", message=message, short=short, instead=instead), None
    try:
        cut = cut_joint(
            contact.body, contact.faces, contact.frame, rounded_lines, chosen.section, contact.heights, contact.region
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


def _best(contact: _Contact, settings: Settings, wishes: Wishes) -> tuple[Design, list[Room], float, Space] | None:
    """The design over the middle lines and corner radii that may be chosen; None where no line runs round closed."""
    depth = _depth(contact)
    tried = []
    for lines in _middle_lines(contact, settings, wishes, depth):
        for radius in RADII:
            rooms = [measure_room(rounded(line, radius), contact.region) for line in lines]
            space = Space(
                min(float(room.inner.min()) for room in rooms), min(float(room.outer.min()) for room in rooms), depth,
                min(room.radius("inner") for room in rooms), min(room.radius("outer") for room in rooms),
            )  # fmt: skip
            found = on_grid(design(space, settings, wishes), space, settings, wishes)
            tried.append((found, rooms, radius, space))
            if found.fits and found.aimed > 0.3:
                break
    return max(
        tried,
        key=lambda t: (t[0].fits, t[3].outer >= _with_land(settings), round(min(t[0].aimed, 0.3), 2)),
        default=None,
    )


def _middle_lines(contact: _Contact, settings: Settings, wishes: Wishes, depth: float) -> list[tuple[Line, ...]]:
    """Lines that a rib could follow: the middle of the contact, and a line at one distance from its outer border.

    The second one is nearer to the border where the contact is wider on its inside (screw posts, corners), and
    further where the clamp needs the room.
    """
    found = [contact.lines] if all(line.closed for line in contact.lines) else []
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
            found.append((best[1],))
    return found


def _with_land(settings: Settings) -> float:
    """mm from the middle line to the border that leave land for the clamp beside the light of a slender rib."""
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
            for start, end, missing, worst in outside_stretches(room, need[side] - has):
                at = contact.frame.world(np.array([*room.at[worst], 0.0]))
                found.append(
                    Short(
                        contour=room.line.id, side=side, from_s=start, to_s=end,
                        at=(float(at[0]), float(at[1]), float(at[2])),
                        room=float(has[worst]), need=need[side], missing=missing,
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
            f"the {worst.side} side: {worst.room:.2f} mm from the middle line, {worst.need:.2f} mm are needed."
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
