"""From an assembly to its joints: enumerate readings, weigh them, choose those that the evidence carries."""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping
from dataclasses import dataclass, replace

import numpy as np
import shapely

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.catalogue.kinds import KIND_NAMES, PLAIN_WALL, WELD_RIB
from seamcheck.errors import NotReviewed, UsageError
from seamcheck.joint.beam import light_axis
from seamcheck.joint.candidates import is_free, read_pair
from seamcheck.joint.choose import choose
from seamcheck.joint.constants import LARGEST_GAP, SMALL, TOUCHING
from seamcheck.joint.evidence import weigh
from seamcheck.joint.explain import distance_text, no_joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.joint import Joint
from seamcheck.joint.meeting import Meeting, without
from seamcheck.joint.names import Names, named_part
from seamcheck.joint.reading import Reading, readings_of
from seamcheck.joint.regions import union_region
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet, diagonal
from seamcheck.settings.settings import Settings


@dataclass(frozen=True, slots=True, eq=False)
class Looked:
    """What there is to choose from.

    Attributes
    ----------
    bodies, parts : by id; pairs : ids of solids near each other; readings, meetings : of all pairs
    beam : (3,) as given, or None; named : whether the user named a part
    """

    bodies: dict[str, Body]
    parts: dict[str, Part]
    pairs: list[tuple[str, str]]
    readings: list[Reading]
    meetings: list[Meeting]
    beam: np.ndarray | None
    named: bool

    @property
    def likeliest(self) -> Reading | None:
        return max(self.readings, key=lambda reading: reading.candidate.score, default=None)


def look(assembly: Assembly, settings: Settings, apart: Container[frozenset[str]] = ()) -> Looked:
    """All readings of an assembly.

    Parameters
    ----------
    assembly : as read
    settings : uses cover, base (part name, id or None) and beam ((3,) or None)
    apart : pairs of ids between which no seam is sought

    Raises
    ------
    NotReviewed : no-solid, single-part, no-contact
    UsageError : a part name that doesn't occur
    """
    solids = [part for part in assembly.parts if part.kind == "solid"]
    if not solids:
        raise NotReviewed(
            "no-solid", "The model holds no solid body. Export cover and base as solids, not as surfaces."
        )
    bodies = {part.id: Body(part.shape) for part in solids}
    names = Names(assembly, bodies)
    if len(solids) == 1:
        raise NotReviewed(
            "single-part",
            f"The model holds one part only ({names(solids[0].id)}). A seam needs a cover and a base: give the "
            "assembly, or both files together.",
        )
    whole = {part.id: part.joined_to for part in assembly.parts if part.joined_to}
    cover, base = (
        named_part(whole.get(wanted, wanted) if wanted else None, solids, option)
        for wanted, option in ((settings.cover, "--cover"), (settings.base, "--base"))
    )
    if cover is not None and cover is base:
        raise UsageError("--cover and --base name the same part. Name two different parts.")
    pairs = [pair for pair in _near_pairs(solids, bodies) if frozenset(pair) not in apart]
    if cover or base:
        pairs = [pair for pair in pairs if all(p is None or p.id in pair for p in (cover, base))]
    if not pairs:
        raise NotReviewed("no-contact", _no_contact(solids, bodies, names))
    beam = None if settings.beam is None else np.asarray(settings.beam, dtype=float)
    if beam is not None:
        beam = beam / np.linalg.norm(beam)
    least_cover = SMALL * max(diagonal(body.box) for body in bodies.values())
    read = [read_pair(pair, bodies) for pair in pairs]
    readings = [
        reading
        for candidates, _ in read
        for candidate in candidates
        for reading in readings_of(candidate, cover, base, beam)
        if cover or base or reading.candidate.stands_out or diagonal(bodies[reading.cover].box) > least_cover
    ]
    meetings = [meeting for _, found in read for meeting in found]
    parts = {part.id: part for part in assembly.parts}
    return Looked(bodies, parts, pairs, readings, meetings, beam, cover is not None or base is not None)


def find_joints(assembly: Assembly, settings: Settings) -> list[Joint]:
    """All joints of an assembly, whose parts are whole (see ``joint.pieces``).

    Parameters
    ----------
    assembly : as read
    settings : uses cover, base (part name, id or None) and beam ((3,) or None)

    Raises
    ------
    NotReviewed : no-solid, single-part, no-contact, no-seam, unsupported or ambiguous
    UsageError : a part name that doesn't occur
    """
    looked = look(assembly, settings)
    names = Names(assembly, looked.bodies)
    readings = [replace(r, evidence=weigh(r, looked.bodies, looked.named)) for r in looked.readings]
    chosen = choose(readings, looked.bodies, looked.parts, names)
    if not chosen.readings:
        raise no_joint(looked.pairs, readings, looked.meetings, looked.bodies, names)
    joints = [_joint(f"j{i}", reading, looked, names) for i, reading in enumerate(chosen.readings, 1)]
    joints[0] = replace(joints[0], why=(*joints[0].why, *chosen.passed_over), left_out=chosen.unresolved)
    return [replace(joint, other_ribs=_other_ribs(joint, joints)) for joint in joints]


def _other_ribs(joint: Joint, joints: list[Joint]) -> tuple[tuple[str, tuple[int, ...]], ...]:
    mine = {joint.rib_part, joint.counter_part}
    return tuple(
        (other.rib_part, other.rib_faces)
        for other in joints
        if other is not joint and mine & {other.rib_part, other.counter_part}
    )


def _joint(ident: str, reading: Reading, looked: Looked, names: Names) -> Joint:
    candidate = reading.candidate
    z, how = _axis(reading, looked)
    origin = candidate.frame.world(np.append(shapely.get_coordinates(candidate.region.centroid)[0], 0.0))
    frame = Frame.along(z, origin)
    melts = candidate.kind in (WELD_RIB, PLAIN_WALL)
    return Joint(
        id=ident,
        cover=(reading.cover,),
        base=(reading.base,),
        rib_on=("base" if reading.through_counter else "cover") if melts else "none",
        beam=-z if reading.through_counter else z,
        modelled_state=_state(candidate.gap),
        why=_why(reading, how, names),
        frame=frame,
        rib_part=candidate.carrier,
        counter_part=candidate.counter,
        rib_faces=candidate.faces,
        region=without(
            union_region(looked.bodies[candidate.carrier], candidate.faces, frame),
            candidate.bare,
            candidate.level,
            candidate.frame,
            frame,
        ),
        rounded=any(p.rounded for p in candidate.patches),
        gap=candidate.gap,
        bodies=looked.bodies,
        parts=looked.parts,
        kind=candidate.kind,
        confidence=round(reading.confidence, 3),
        band_width=candidate.width,
        step=candidate.beside.step,
    )


def _axis(reading: Reading, looked: Looked) -> tuple[np.ndarray, str]:
    """(3,) unit vector from the band's part into the other one along the light, and how it was found."""
    z = reading.candidate.frame.axes[2]
    if looked.beam is not None:
        return looked.beam * np.sign(looked.beam @ z), "The light's direction was given."
    pull = light_axis(looked.bodies[reading.candidate.carrier], reading.candidate.faces, z)
    if pull is None:
        return z, "The light runs square to the seam faces (the flanks leave the direction open)."
    return pull, "The light runs along the direction of pull of the rib's flanks."


def _why(reading: Reading, how: str, names: Names) -> tuple[str, ...]:
    """The reasons for seam, roles and light."""
    candidate, side, other = reading.candidate, reading.side, reading.other_side
    cover, base = names(reading.cover), names(reading.base)
    return (
        f"{names(candidate.carrier)} carries a band {candidate.width:.2f} mm wide and {candidate.length:.0f} mm long "
        f"that faces {names(candidate.counter)} at {candidate.gap:+.2f} mm: {KIND_NAMES[candidate.kind]}.",
        f"{cover} is the cover: {side.thickness:.2f} mm thick over the seam, and the way out is free over "
        f"{side.free:.0%} of it.",
        f"{base} is the base: "
        + (
            f"on its side the light would have to pass {other.thickness:.1f} mm."
            if is_free(other)
            else "on its side the way of the light is not free."
        ),
        how,
        *([reading.doubt] if reading.doubt else []),
        *(f"{'For' if e.weight >= 1.0 else 'Against'}: {e.says}" for e in reading.evidence),
    )


def _state(gap: float) -> str:
    if abs(gap) <= TOUCHING:
        return "touching"
    return "gap" if gap > 0 else "overlap"


def _near_pairs(solids: list[Part], bodies: Mapping[str, Body]) -> Iterator[tuple[str, str]]:
    """Pairs of parts whose boxes come within reach."""
    boxes = np.array([bodies[part.id].box for part in solids])
    for i in range(len(solids)):
        for j in np.flatnonzero(boxes_meet(boxes[i + 1 :], boxes[i], LARGEST_GAP)) + i + 1:
            yield solids[i].id, solids[j].id


def _no_contact(solids: list[Part], bodies: Mapping[str, Body], names: Names) -> str:
    nearest, who = np.inf, ("", "")
    for i, a in enumerate(solids):
        for b in solids[i + 1 :]:
            low = np.maximum(bodies[a.id].box[:3], bodies[b.id].box[:3])
            high = np.minimum(bodies[a.id].box[3:], bodies[b.id].box[3:])
            apart = float(np.linalg.norm(np.maximum(low - high, 0.0)))
            if apart < nearest:
                nearest, who = apart, (names(a.id), names(b.id))
    return distance_text(nearest, *who)
