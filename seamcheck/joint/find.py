"""From an assembly to its joints: enumerate readings, weigh them, choose those that the evidence carries."""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator, Mapping
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.catalogue.kinds import PLAIN_WALL, WELD_RIB
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed, UsageError
from seamcheck.joint.beam import light_axis
from seamcheck.joint.candidates import is_free, read_pair
from seamcheck.joint.choose import choose, doubtful
from seamcheck.joint.constants import LARGEST_GAP, SAME_LEVEL, TOUCHING
from seamcheck.joint.evidence import weigh
from seamcheck.joint.explain import no_joint, too_far
from seamcheck.joint.frame import Frame
from seamcheck.joint.joint import Joint
from seamcheck.joint.meeting import Meeting, is_broad, opposed_area, without
from seamcheck.joint.names import Names, named_part
from seamcheck.joint.pictured import pictured
from seamcheck.joint.reading import Reading, readings_of
from seamcheck.joint.regions import union_region
from seamcheck.joint.sizes import Sizes
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet
from seamcheck.kernel.distance import shape_distance
from seamcheck.settings.settings import Settings

_TENTH = 0.1  # of the largest face that is opposed: a smaller one needs no word
_NEAREST = 3  # pairs of parts whose exact distance is taken where none comes near another
_SAME_WAY = 0.99  # cosine between two directions that are one


class Enumerated(Struct, frozen=True, eq=False):
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


def look(assembly: Assembly, settings: Settings) -> Enumerated:
    """All readings of an assembly.

    Parameters
    ----------
    assembly : as read
    settings : uses cover, base (part name, id or None) and beam ((3,) or None)

    Raises
    ------
    NotReviewed : no-solid, single-part, no-contact
    UsageError : a part name that doesn't occur
    """
    solids = [part for part in assembly.parts if part.kind == "solid"]
    if not solids:
        raise refused("no-solid", "no-solid.none")
    bodies = {part.id: Body(part.shape) for part in solids}
    names = Names(assembly, bodies)
    if len(solids) == 1:
        raise refused("single-part", "single-part.one", part=names(solids[0].id))
    whole = {part.id: part.joined_to for part in assembly.parts if part.joined_to}
    cover, base = (
        named_part(whole.get(wanted, wanted) if wanted else None, solids, option)
        for wanted, option in ((settings.cover, "--cover"), (settings.base, "--base"))
    )
    if cover is not None and cover is base:
        raise UsageError("--cover and --base name the same part. Name two different parts.")
    pairs = list(_near_pairs(solids, bodies))
    if cover or base:
        pairs = [pair for pair in pairs if all(p is None or p.id in pair for p in (cover, base))]
    if not pairs:
        raise _no_contact(solids, bodies, names)
    beam = None if settings.beam is None else np.asarray(settings.beam, dtype=float)
    if beam is not None:
        beam = beam / np.linalg.norm(beam)
    sizes = Sizes(bodies)
    if not cover and not base and len(pairs) > 1:  # two parts as small as components on a board are no housing
        pairs = [pair for pair in pairs if not all(map(sizes.is_small, pair))] or pairs
    read = [read_pair(pair, bodies, bool(cover or base)) for pair in pairs]
    readings = [
        reading
        for candidates, _ in read
        for candidate in candidates
        for reading in readings_of(candidate, cover, base, beam)
        if cover or base or reading.candidate.stands_out or not sizes.is_small(reading.cover)
    ]
    meetings = [meeting for _, found in read for meeting in found]
    parts = {part.id: part for part in assembly.parts}
    return Enumerated(bodies, parts, pairs, readings, meetings, beam, cover is not None or base is not None)


def between_others(looked: Enumerated, assembly: Assembly, apart: Container[frozenset[str]]) -> Enumerated:
    """What is left where no seam is sought between some pairs of parts.

    Raises
    ------
    NotReviewed : no-contact, where no pair is left
    """

    def counts(pair: Iterable[str]) -> bool:
        return frozenset(pair) not in apart

    pairs = [pair for pair in looked.pairs if counts(pair)]
    if not pairs:
        raise _no_contact([looked.parts[i] for i in looked.bodies], looked.bodies, Names(assembly, looked.bodies))
    readings = [reading for reading in looked.readings if counts(reading.pair)]
    meetings = [meeting for meeting in looked.meetings if counts(meeting.pair)]
    return replace(looked, pairs=pairs, readings=readings, meetings=meetings)


class Looked:
    """``look``, which answers at once where it is asked the same again: first pieces are sought, then joints."""

    def __init__(self) -> None:
        self._asked: tuple[Any, ...] = ()
        self._answer: Enumerated | None = None

    def __call__(self, assembly: Assembly, settings: Settings) -> Enumerated:
        """As ``look``."""
        asked = (settings.cover, settings.base, settings.beam)
        if self._answer is None or self._asked[0] is not assembly or self._asked[1:] != asked:
            self._answer = None
            self._answer = look(assembly, settings)
            self._asked = (assembly, *asked)
        return self._answer

    def forget(self) -> None:
        """Nothing more will be asked."""
        self._asked, self._answer = (), None


def find_joints(assembly: Assembly, settings: Settings, seen: Looked | None = None) -> list[Joint]:
    """All joints of an assembly, whose parts are whole (see ``joint.pieces``).

    Parameters
    ----------
    assembly : as read
    settings : uses cover, base (part name, id or None) and beam ((3,) or None)
    seen : what was looked at when its pieces were joined

    Raises
    ------
    NotReviewed : no-solid, single-part, no-contact, no-seam, unsupported or ambiguous
    UsageError : a part name that doesn't occur
    """
    looked = look(assembly, settings) if seen is None else seen(assembly, settings)
    if seen is not None:
        seen.forget()
    names = Names(assembly, looked.bodies)
    readings = [replace(r, evidence=weigh(r, looked.bodies, looked.meetings, looked.named)) for r in looked.readings]
    chosen = choose(readings, looked.bodies, looked.parts, names)
    if chosen.doubt is not None:
        why = doubtful(chosen.doubt, names)
        raise NotReviewed(why.code, why.message, pictured(chosen.doubt, looked.bodies, names))
    if not chosen.readings:
        why = no_joint(looked.pairs, readings, looked.meetings, looked.bodies, names)
        raise NotReviewed(why.code, why.message, pictured(_best(readings), looked.bodies, names))
    joints = [
        replace(joint, why=(*joint.why, *_beside_the_seam(reading, looked.meetings, names)))
        for reading in chosen.readings
        for joint in [_joint(f"j{chosen.readings.index(reading) + 1}", reading, looked, names)]
    ]
    joints[0] = replace(joints[0], why=(*joints[0].why, *chosen.passed_over), left_out=chosen.unresolved)
    return [replace(joint, other_ribs=_other_ribs(joint, joints)) for joint in joints]


def _beside_the_seam(reading: Reading, meetings: list[Meeting], names: Names) -> list[str]:
    """Other faces of the same parts in the same direction that are worth a word, each with why it is no part of it."""
    candidate = reading.candidate
    told: list[str] = []
    for meeting in meetings:
        same = (meeting.one, meeting.other) == (candidate.carrier, candidate.counter)
        if not same or meeting.frame.axes[2] @ candidate.frame.axes[2] < _SAME_WAY:
            continue
        least = _TENTH * max(opposed_area(patch) for patch in meeting.patches)
        for patch in meeting.seated:
            if opposed_area(patch) < least or set(patch.faces) <= set(candidate.faces):
                continue
            if abs(patch.gap - candidate.gap) > SAME_LEVEL:
                why = "joint.beside.level"
            else:
                why = "joint.beside.pad" if is_broad(patch) else "joint.beside.strip"
            told.append(
                say(
                    why, part=names(meeting.one), opposite=names(meeting.other), area=opposed_area(patch),
                    width=patch.width, length=patch.length, gap=patch.gap,
                )
            )  # fmt: skip
    return told


def _best(readings: list[Reading]) -> list[Reading]:
    """Those with the most confidence, one for each way to name cover and base, the best first."""
    ranked = sorted(readings, key=lambda r: (-r.confidence, -r.candidate.score))
    return list({(r.cover, r.base): r for r in reversed(ranked)}.values())[::-1]


def _other_ribs(joint: Joint, joints: list[Joint]) -> tuple[tuple[str, tuple[int, ...]], ...]:
    mine = {joint.rib_part, joint.counter_part}
    return tuple(
        (other.rib_part, other.rib_faces)
        for other in joints
        if other is not joint and mine & {other.rib_part, other.counter_part}
    )


def _joint(ident: str, reading: Reading, looked: Enumerated, names: Names) -> Joint:
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
        step=candidate.border.step,
    )


def _axis(reading: Reading, looked: Enumerated) -> tuple[np.ndarray, str]:
    """(3,) unit vector from the band's part into the other one along the light, and how it was found."""
    z = reading.candidate.frame.axes[2]
    if looked.beam is not None:
        return looked.beam * np.sign(looked.beam @ z), say("joint.light.given")
    pull = light_axis(looked.bodies[reading.candidate.carrier], reading.candidate.faces, z)
    if pull is None:
        return z, say("joint.light.square")
    return pull, say("joint.light.pull")


def _why(reading: Reading, how: str, names: Names) -> tuple[str, ...]:
    """The reasons for seam, roles and light."""
    candidate, side, other = reading.candidate, reading.side, reading.other_side
    cover, base = names(reading.cover), names(reading.base)
    return (
        say(
            "joint.band", rib=names(candidate.carrier), width=candidate.width, length=candidate.length,
            opposite=names(candidate.counter), gap=candidate.gap, kind=candidate.kind,
        ),
        say("joint.cover", cover=cover, thickness=side.thickness, free=100 * side.free),
        say("joint.base", base=base, thickness=other.thickness)
        if is_free(other)
        else say("joint.base.blocked", base=base),
        how,
        *([reading.doubt] if reading.doubt else []),
        *(say("joint.for" if e.weight >= 1.0 else "joint.against", evidence=e.says) for e in reading.evidence),
    )  # fmt: skip


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


def _no_contact(solids: list[Part], bodies: Mapping[str, Body], names: Names) -> NotReviewed:
    """The refusal with the distance of the nearest two parts: exact ones of the pairs whose boxes are nearest."""
    boxes = np.array([bodies[part.id].box for part in solids])
    one, other = np.triu_indices(len(solids), k=1)
    between = np.maximum(boxes[one, :3], boxes[other, :3]) - np.minimum(boxes[one, 3:], boxes[other, 3:])
    apart = np.nan_to_num(np.linalg.norm(np.maximum(between, 0.0), axis=1), nan=np.inf)
    found: list[tuple[float, str, str]] = []
    for k in np.argsort(apart, kind="stable")[:_NEAREST]:
        if found and min(found)[0] <= apart[k]:
            break  # these boxes, and all that follow, are further apart
        a, b = solids[one[k]].id, solids[other[k]].id
        exact = shape_distance(bodies[a].shape, bodies[b].shape)[0]
        found.append((exact if np.isfinite(exact) else float(apart[k]), names(a), names(b)))
    return too_far(*min(found))
