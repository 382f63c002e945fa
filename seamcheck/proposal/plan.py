"""Planning the joints of one model and cutting them: runs in a child process, since it reads the model."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any

import msgspec
import numpy as np
from msgspec.structs import replace

from seamcheck.assembly import read_assembly
from seamcheck.assembly.parts import Assembly, Part
from seamcheck.catalogue.say import say
from seamcheck.errors import NotReviewed
from seamcheck.joint import Joint, find_joints, join_pieces
from seamcheck.kernel.grooves import NotCut, shortest_edge, volume, without
from seamcheck.kernel.write_step import write_bodies
from seamcheck.proposal.contact import Contact, carrier_of, contact_of
from seamcheck.proposal.design import VARIABLES, Choices, Design
from seamcheck.proposal.no_room import shallow_stretches, short_stretches, why_not
from seamcheck.proposal.proving import said_of
from seamcheck.proposal.records import Bound, Change, Dimension, JointProposal
from seamcheck.proposal.repair import mend
from seamcheck.proposal.route import best_route
from seamcheck.proposal.shape import Cut, cut_joint
from seamcheck.proposal.whole_section import filled_to_contact
from seamcheck.settings.settings import Settings

FLAT_KINDS = ("flat-lap", "plain-wall", "stepped-lap", "ledge")
REDRAWN = frozenset(
    {"corner-radius", "trap-corner", "seam-open", "rib-missing", "rib-width", "rib-height", "slenderness", "trap-room",
     "trap-side", "lip-gap", "sink-travel", "trap-open-inner", "rib-uniformity"}
)  # fmt: skip
"""Rules on the joint itself: where no move mends one, the joint is drawn anew."""

LEVEL = 0.2
"""mm: a contact that rises by more is no level one."""

Progress = Callable[..., None]


def plan_joints(
    paths: Sequence[Path], settings: Settings, choices: Choices, target: Path, review: Mapping[str, Any],
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
            proposal, bodies = _mended(joint, review, settings, choices, shapes, assembly)
            tools += bodies
        else:
            proposal, cut = _joint(joint, settings, choices, shapes)
            if cut is not None:
                shapes[carrier_of(joint, choices)[0]] = cut.part
                tools += [(f"{joint.id} {name}", tool) for name, tool in cut.tools]
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
    joint: Joint, review: Mapping[str, Any], settings: Settings, choices: Choices, shapes: dict[str, Any],
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
        return JointProposal(**head, state="sound", message=say("propose.sound")), []
    before = dict(shapes)
    changes, left = mend(joint, record, findings, settings, choices.lip, shapes)
    facts: dict[str, Any] = {"changes": changes, "left": left}
    if not changes and any(one.rule in REDRAWN for one in left):
        anew = _redrawn(joint, record, settings, replace(choices, rib_on=joint.rib_on), shapes, assembly)
        if anew is not None and anew[1] is not None:
            shapes[joint.rib_part] = anew[1].part
            ids = tuple(one.finding for one in left if one.rule in REDRAWN)
            drawn = Change(part=head["carrier"], what=say("propose.anew"), by=None, findings=ids)
            rest = tuple(one for one in left if one.rule not in REDRAWN)
            return msgspec.structs.replace(anew[0], changes=(drawn,), left=rest), _differences(joint, before, shapes)
    state = "mended" if changes else "not-mended"
    why_not = {f"{one.rule}: {one.why}": say("propose.for-rule", rule=one.rule, why=one.why) for one in left}
    message = (
        say("propose.moved", changes=[said_of(change) for change in changes])
        if changes
        else say("propose.not-moved", reasons=list(why_not.values()))
    )
    return JointProposal(**head, **facts, state=state, message=message), _differences(joint, before, shapes)


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


def _redrawn(
    joint: Joint, record: Mapping[str, Any], settings: Settings, choices: Choices, shapes: dict[str, Any],
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
    return _joint(again, settings, choices, {part.id: part.shape for part in parts})


def _joint(
    joint: Joint, settings: Settings, choices: Choices, shapes: dict[str, Any]
) -> tuple[JointProposal, Cut | None]:
    head = _head(joint, choices.rib_on)
    if joint.kind not in FLAT_KINDS or len(joint.base) != 1 or len(joint.cover) != 1:
        message = say("propose.no-flat", kind=joint.kind)
        return JointProposal(**head, state="not-flat", message=message), None
    contact = contact_of(joint, settings, choices, shapes)
    if contact is None:
        message = say("propose.not-flat")
        return JointProposal(**head, state="not-flat", message=message), None
    return _fitted(contact, head, settings, choices)


def _fitted(
    contact: Contact, head: dict[str, Any], settings: Settings, choices: Choices
) -> tuple[JointProposal, Cut | None]:
    if contact.heights[1] - contact.heights[0] > LEVEL:
        choices = replace(choices, draft=0.0)  # a flank that leans from one height would not keep the rib's width
    found = best_route(contact, settings, choices)
    if found is None:
        message = say("propose.open")
        return JointProposal(**head, state="not-flat", message=message), None
    chosen, nets, rooms, radius, space = found.design, found.nets, found.rooms, found.radius, found.space
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
        short = shallow_stretches(contact, settings, choices, space) or short_stretches(
            contact, rooms, settings, choices, space
        )
        why, instead = why_not(chosen, short, contact, settings, choices, space)
        return JointProposal(**head, **facts, state="no-room", message=why, short=short, instead=instead), None
    try:
        cut = cut_joint(
            contact.body, contact.faces, contact.frame, nets, chosen.section, contact.heights, contact.region
        )
    except NotCut as why:
        return JointProposal(**head, **facts, state="no-room", message=say("propose.not-cut", why=why.why)), None
    removed = volume(contact.body.shape) - volume(cut.part)
    s = chosen.section
    message = say(
        "propose.cut-rib",
        width=s.rib_width,
        height=s.rib_height,
        inner=s.trap_inner,
        outer=s.trap_outer,
        low=s.lowering,
    )
    return (
        JointProposal(
            **head, **facts, state="cut", message=message, removed_volume=removed, shortest_edge=shortest_edge(cut.part)
        ),
        cut,
    )  # fmt: skip


def _dimensions(chosen: Design, settings: Settings) -> tuple[Dimension, ...]:
    keys = {"rib_width": "rib_width", "rib_height": "rib_height"}
    found = [
        Dimension(
            key=name, title=say(f"propose.size.{name}"), value=getattr(chosen.section, name), unit="mm",
            tolerance=settings.tolerances.get(keys.get(name, "")),
        )
        for name in VARIABLES
    ]  # fmt: skip
    found.append(Dimension(key="draft", title=say("propose.size.draft"), value=chosen.section.draft, unit="°"))
    found.append(
        Dimension(key="collapse", title=say("propose.size.collapse"), value=chosen.section.collapse, unit="mm")
    )
    return tuple(found)
