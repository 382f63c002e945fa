"""From an assembly to its joints: who is cover, who is base, where the light comes from, and why."""

from __future__ import annotations

from collections.abc import Container, Iterable
from dataclasses import dataclass, replace

import numpy as np
import shapely

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.catalogue.kinds import FLAT_LAP, WELD_RIB
from seamcheck.errors import NotReviewed, UsageError
from seamcheck.joint.beam import pull_direction
from seamcheck.joint.candidates import Candidate, is_free, is_shaded, read_pair
from seamcheck.joint.contact import LARGEST_GAP, face_all_round, near_surface
from seamcheck.joint.frame import Frame
from seamcheck.joint.joint import Joint
from seamcheck.joint.light import flat_boxes
from seamcheck.joint.names import named_part, shown
from seamcheck.joint.patches import SAME_LEVEL
from seamcheck.joint.regions import union_region
from seamcheck.kernel import Body
from seamcheck.kernel.distance import shape_distance
from seamcheck.settings.settings import Settings

_EQUALLY_GOOD = 0.8  # a second reading with more than this share of the best one's score is a doubt
_WORTH = 0.3  # seams with less than this share of the best one's score are not called seams
_WORTH_A_WORD = 0.2  # share of the seam's length from which on another rib is mentioned
_THIN = 4.0  # mm: plastic that light is expected to pass; a thicker part is the less likely cover
_MOST_PASSED_OVER = 3
_MOST_PAIRS = 6  # whose exact distance is worth its time
_LAP = 0.2  # mm: flat faces further apart, or deeper in each other, do not lie on each other
_SMALL = 0.25  # share of the largest part's size below which flat contact is that of a nut or a screw head
_OPAQUE = 8.0  # mm: plastic that lets no useful light through
_TOUCHING = 0.02  # mm: the modelled state is 'touching' up to this gap or overlap


@dataclass(frozen=True, slots=True, eq=False)
class Looked:
    """What there is to choose from.

    Attributes
    ----------
    bodies, parts : by id; pairs : ids of solids near each other; readings : of all pairs
    beam : (3,) as given, or None
    """

    bodies: dict[str, Body]
    parts: dict[str, Part]
    pairs: list[tuple[str, str]]
    readings: list[Reading]
    beam: np.ndarray | None

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
    if len(solids) == 1:
        raise NotReviewed(
            "single-part",
            f"The model holds one part only ({shown(solids[0])}). A seam needs a cover and a base: give the "
            "assembly, or both files together.",
        )
    whole: dict[str | None, str] = {part.id: part.joined_to for part in assembly.parts if part.joined_to}
    cover = named_part(whole.get(settings.cover, settings.cover), solids, "--cover")
    base = named_part(whole.get(settings.base, settings.base), solids, "--base")
    if cover is not None and cover is base:
        raise UsageError("--cover and --base name the same part. Name two different parts.")
    bodies = {part.id: Body(part.shape) for part in solids}
    pairs = [pair for pair in _near_pairs(solids, bodies) if frozenset(pair) not in apart]
    if cover or base:
        pairs = [pair for pair in pairs if all(p is None or p.id in pair for p in (cover, base))]
    if not pairs:
        raise NotReviewed("no-contact", _no_contact(solids, bodies))
    beam = None if settings.beam is None else np.asarray(settings.beam, dtype=float)
    if beam is not None:
        beam = beam / np.linalg.norm(beam)
    least_cover = _SMALL * max(_size(body) for body in bodies.values())
    readings = [
        reading
        for pair in pairs
        for candidate in read_pair(pair, bodies)
        for reading in _readings(candidate, cover, base, beam)
        if cover or base or reading.candidate.stands_out or _size(bodies[reading.cover]) > least_cover
    ]
    return Looked(bodies, {part.id: part for part in assembly.parts}, pairs, readings, beam)


def find_joints(assembly: Assembly, settings: Settings) -> list[Joint]:
    """All joints of an assembly, whose parts are whole (see ``joint.pieces``).

    Parameters
    ----------
    assembly : as read
    settings : uses cover, base (part name, id or None) and beam ((3,) or None)

    Raises
    ------
    NotReviewed : no-solid, single-part, no-contact, no-seam or ambiguous
    UsageError : a part name that doesn't occur
    """
    looked = look(assembly, settings)
    bodies, parts = looked.bodies, looked.parts
    if not looked.readings:
        raise _no_seam(looked.pairs, bodies, parts)
    chosen = _choose(looked.readings, bodies, parts)
    for reading in chosen:
        _check_contact(reading, bodies, parts)
    joints = [_joint(f"j{i}", reading, bodies, parts, looked.beam) for i, reading in enumerate(chosen, 1)]
    return [replace(joint, other_ribs=_other_ribs(joint, joints)) for joint in joints]


def _size(body: Body) -> float:
    """mm, diagonal of the body's box; 0 where it is unknown."""
    return float(np.nan_to_num(np.linalg.norm(body.box[3:] - body.box[:3])))


def _no_seam(pairs: list[tuple[str, str]], bodies: dict[str, Body], parts: dict[str, Part]) -> NotReviewed:
    if len(pairs) <= _MOST_PAIRS:  # boxes of turned parts overlap though the parts are far from each other
        away = [(shape_distance(bodies[one].shape, bodies[other].shape)[0], one, other) for one, other in pairs]
        nearest, one, other = min(away, key=lambda found: np.nan_to_num(found[0]))
        if nearest > LARGEST_GAP:
            return NotReviewed("no-contact", _apart(nearest, shown(parts[one]), shown(parts[other])))
    largest = set(sorted(bodies, key=lambda i: -bodies[i].volume)[:2])  # not a screw in its hole
    for one, other in pairs:
        a, b = bodies[one], bodies[other]
        if {one, other} == largest and face_all_round(near_surface(a, b.box), near_surface(b, a.box)):
            return NotReviewed(
                "unsupported",
                f"{shown(parts[one])} and {shown(parts[other])} meet all round an axis, like a tube in a socket. A "
                "seam round a cylinder is welded from the side while the part turns; only seams that light from one "
                "direction reaches are reviewed here.",
            )
    return NotReviewed(
        "no-seam",
        "Parts touch, but no narrow band between them stands out like a weld rib with a free way for the "
        "light. Check that cover and base are in their welded position, or name them with --cover and --base.",
    )


def _other_ribs(joint: Joint, joints: list[Joint]) -> tuple[tuple[str, tuple[int, ...]], ...]:
    mine = {joint.rib_part, joint.counter_part}
    return tuple(
        (other.rib_part, other.rib_faces)
        for other in joints
        if other is not joint and mine & {other.rib_part, other.counter_part}
    )


class Reading:
    """A candidate with the side on which the light comes in."""

    def __init__(self, candidate: Candidate, through_counter: bool, doubt: str = "") -> None:
        self.candidate = candidate
        self.through_counter = through_counter
        self.doubt = doubt
        self.passed_over: list[str] = []
        self.cover = candidate.counter if through_counter else candidate.carrier
        self.base = candidate.carrier if through_counter else candidate.counter
        self.side = candidate.through_counter if through_counter else candidate.through_carrier
        self.thickness = self.side.thickness
        self.beam = -candidate.frame.axes[2] if through_counter else candidate.frame.axes[2]


def _readings(candidate: Candidate, cover: Part | None, base: Part | None, beam: np.ndarray | None) -> list[Reading]:
    """The ways in which light can reach a candidate, settled where one is clearly better."""
    both = [Reading(candidate, True), Reading(candidate, False)]
    settled = [
        r
        for r in both
        if (cover is None or r.cover == cover.id)
        and (base is None or r.base == base.id)
        and (beam is None or r.beam @ beam > 0.7)
    ]
    if cover or base or beam is not None:
        return settled[:1] if len(settled) == 1 else _clearer(settled)
    free = _clearer([r for r in both if is_free(r.side)])
    if len(free) == 1 and free[0].side.thickness > _OPAQUE:
        # rather a thin part with something in front of it than light through a block; it stays as unlikely
        shaded = [r for r in both if is_shaded(r.side) and r.side.thickness <= _THIN]
        for r in shaded:
            r.thickness = free[0].side.thickness
            r.doubt = "Other parts stand in the way of the light through the cover; no other way lets light in."
        return shaded or free
    return free


def _clearer(readings: list[Reading]) -> list[Reading]:
    """Of two open sides the one with the much thinner part; both in doubt where they are alike."""
    if len(readings) < 2:
        return readings
    first, second = sorted(readings, key=lambda r: r.side.thickness)
    if second.side.thickness > 1.5 * first.side.thickness or not is_free(second.side):
        return [first]
    return [first, second]


def _choose(readings: list[Reading], bodies: dict[str, Body], parts: dict[str, Part]) -> list[Reading]:
    alone = len({frozenset((r.cover, r.base)) for r in readings}) == 1
    volume = {i: 1.0 if alone else bodies[i].volume for r in readings for i in (r.cover, r.base)}
    nearest: dict[frozenset[str], float] = {}
    for r in readings:
        pair = frozenset((r.cover, r.base))
        nearest[pair] = min(nearest.get(pair, np.inf), r.candidate.gap)

    def worth(reading: Reading) -> float:
        smaller = min(volume[reading.cover], volume[reading.base])
        later = reading.candidate.gap - nearest[frozenset((reading.cover, reading.base))]  # touches later than another
        thick = max(0.0, reading.thickness / _THIN - 1.0)  # light hardly gets through a thick part
        return float(reading.candidate.score * smaller ** (1 / 3) / (1.0 + 5.0 * later) / (1.0 + thick))

    ranked = sorted(readings, key=lambda r: (-worth(r), r.cover, r.base))
    chosen: list[Reading] = []
    for reading in ranked:
        if worth(reading) <= 0:
            break
        if worth(reading) < _WORTH * worth(ranked[0]):
            _mention(reading, ranked[0], parts)
            continue
        rivals = [r for r in chosen if {r.cover, r.base} & {reading.cover, reading.base}]
        same_base = [r for r in rivals if r.base == reading.base and r.cover != reading.cover]
        if not rivals or (len(same_base) == len(rivals) and not _overlap(reading, same_base)):
            chosen.append(reading)
            continue
        rival = max(rivals, key=worth)
        if (rival.cover, rival.base) == (reading.cover, reading.base):
            continue  # another band of the same pair that touches later or is shorter
        if worth(reading) > _EQUALLY_GOOD * worth(rival):
            if all(_beside_each_other(reading, r) for r in rivals):
                chosen.append(reading)
                continue
            rival = _by_transparency(rival, reading, parts) or _doubt(rival, reading, parts)
        elif reading.candidate.stands_out and len(rival.passed_over) < _MOST_PASSED_OVER:
            rival.passed_over.append(_passed_over(reading, parts))
    return chosen


def _mention(reading: Reading, best: Reading, parts: dict[str, Part]) -> None:
    """Say of a rib under another cover that it is much smaller than the seam and not reviewed."""
    own = reading.candidate
    small = own.length < _WORTH_A_WORD * best.candidate.length or own.encloses <= 0
    if own.stands_out and not small and reading.cover != best.cover and len(best.passed_over) < _MOST_PASSED_OVER:
        best.passed_over.append(_passed_over(reading, parts))


def _passed_over(reading: Reading, parts: dict[str, Part]) -> str:
    return (
        f"Not taken for a seam: {shown(parts[reading.candidate.carrier])} also carries a band "
        f"{reading.candidate.length:.0f} mm long that faces {shown(parts[reading.candidate.counter])}. Name the two "
        "with --cover and --base to have it reviewed."
    )


def _check_contact(reading: Reading, bodies: dict[str, Body], parts: dict[str, Part]) -> None:
    """Flat faces that stay apart with no rib between them are no lap-type contact."""
    candidate = reading.candidate
    if candidate.stands_out or abs(candidate.gap) <= _LAP:
        return
    between = [i for i in bodies if i not in (reading.cover, reading.base) and _fills_gap(bodies[i], candidate)]
    if between:
        raise NotReviewed(
            "unsupported",
            f"{shown(parts[between[0]])} fills the gap between {shown(parts[reading.cover])} and "
            f"{shown(parts[reading.base])}: a weld rib drawn as a part of its own, or a gasket. Unite a rib with the "
            "part that it is moulded on, and export again.",
        )
    raise NotReviewed(
        "no-seam",
        f"{shown(parts[reading.cover])} and {shown(parts[reading.base])} face each other along a narrow band, but "
        f"{candidate.gap:+.2f} mm apart and with no weld rib between them. Move the cover to its welded position. If "
        "a ridge with a sharp edge stands there: give its top a flat or a rounding, so that it has a width to measure.",
    )


def _fills_gap(body: Body, candidate: Candidate) -> bool:
    """Whether a body lies between the two faces of a band that is open."""
    if not np.isfinite(body.box).all():
        return False
    low, high = flat_boxes(body.box[None], candidate.frame)
    if not shapely.box(*low[0], *high[0]).intersects(candidate.region):
        return False
    height = candidate.frame.local(body.facets(np.arange(len(body.faces)), 0.1, 0.5).corners)[..., 2]
    return bool(
        len(height) and candidate.level - _LAP < height.min() and height.max() < candidate.level + candidate.gap + _LAP
    )


def _beside_each_other(first: Reading, second: Reading) -> bool:
    """Whether one cover closes two bases: ribs of both, side by side, with the light from one side."""
    return (
        first.cover == second.cover
        and first.base != second.base
        and first.candidate.stands_out
        and second.candidate.stands_out
        and abs(first.candidate.gap - second.candidate.gap) <= SAME_LEVEL
        and first.beam @ second.beam > 0.99
        and not _overlap(first, [second])
    )


def _overlap(reading: Reading, others: list[Reading]) -> bool:
    """Whether a seam lies under or over another one (light would have to pass two parts)."""
    for other in others:
        axes = other.candidate.frame
        if abs(axes.axes[2] @ reading.candidate.frame.axes[2]) < 0.9:
            continue
        outline = shapely.get_coordinates(reading.candidate.region)
        world = reading.candidate.frame.world(np.column_stack([outline, np.zeros(len(outline))]))
        mine = shapely.MultiPoint(axes.local(world)[:, :2]).convex_hull
        theirs = other.candidate.region.convex_hull
        if mine.intersection(theirs).area > 0.5 * min(mine.area, theirs.area):
            return True
    return False


def _by_transparency(first: Reading, second: Reading, parts: dict[str, Part]) -> Reading | None:
    """Where only the roles are in doubt, a part drawn see-through is taken as the cover: a hint."""
    if {first.cover, first.base} != {second.cover, second.base} or first.cover == second.cover:
        return None
    clear = {i: parts[i].transparency or 0.0 for i in (first.cover, second.cover)}
    if abs(clear[first.cover] - clear[second.cover]) < 0.2:
        return None
    better, worse = (first, second) if clear[first.cover] > clear[second.cover] else (second, first)
    if better is not first:  # the ranked one is already chosen; turn it
        first.cover, first.base, first.side, first.beam = better.cover, better.base, better.side, better.beam
        first.candidate, first.through_counter = better.candidate, better.through_counter
    first.doubt = (
        f"By geometry {shown(parts[worse.cover])} could be the cover as well; {shown(parts[better.cover])} is drawn "
        "see-through (a hint, no proof)."
    )
    return first


def _doubt(first: Reading, second: Reading, parts: dict[str, Part]) -> Reading:
    def say(r: Reading) -> str:
        return f"{shown(parts[r.cover])} as cover on {shown(parts[r.base])}"

    raise NotReviewed(
        "ambiguous",
        f"Two readings are about equally good: {say(first)}, or {say(second)}. "
        "Say which one with --cover and --base (and --beam, if the light comes from the other side).",
    )


def _joint(
    ident: str, reading: Reading, bodies: dict[str, Body], parts: dict[str, Part], beam: np.ndarray | None
) -> Joint:
    candidate = reading.candidate
    z = candidate.frame.axes[2]
    rib = bodies[candidate.carrier]
    notes = []
    if beam is not None:
        z = beam * np.sign(beam @ z)
        notes.append("The light's direction was given.")
    else:
        pull = pull_direction(rib, candidate.faces, z)
        if pull is not None:
            z = pull
            notes.append("The light runs along the direction of pull of the rib's flanks.")
        else:
            notes.append("The light runs square to the seam faces (the flanks leave the direction open).")
    origin = candidate.frame.world(np.append(shapely.get_coordinates(candidate.region.centroid)[0], 0.0))
    frame = Frame.along(z, origin)
    region = union_region(rib, candidate.faces, frame)
    side, other = (
        reading.side,
        (candidate.through_carrier if reading.through_counter else candidate.through_counter),
    )
    cover, base = parts[reading.cover], parts[reading.base]
    is_rib = candidate.stands_out
    rib_on = ("base" if reading.through_counter else "cover") if is_rib else "none"
    if not is_rib:
        notes.append("No shoulder runs beside the band anywhere: a lap-type contact without a weld rib.")
    why = [
        f"{shown(parts[candidate.carrier])} carries a band {candidate.width:.2f} mm "
        f"wide and {candidate.length:.0f} mm long that faces {shown(parts[candidate.counter])} at "
        f"{candidate.gap:+.2f} mm; beside it the surface falls away on {candidate.falls:.0%} of its border.",
        f"{shown(cover)} is the cover: {side.thickness:.2f} mm thick over the seam, and the way out is free over "
        f"{side.free:.0%} of it.",
        f"{shown(base)} is the base: "
        + (
            f"on its side the light would have to pass {other.thickness:.1f} mm."
            if is_free(other)
            else "on its side the way of the light is not free."
        ),
        *notes,
        *([reading.doubt] if reading.doubt else []),
        *reading.passed_over,
    ]
    return Joint(
        ident,
        (cover.id,),
        (base.id,),
        rib_on,
        -z if reading.through_counter else z,
        _state(candidate.gap),
        tuple(why),
        frame,
        candidate.carrier,
        candidate.counter,
        candidate.faces,
        region,
        any(p.rounded for p in candidate.patches),
        candidate.gap,
        bodies,
        parts,
        kind=FLAT_LAP if rib_on == "none" else WELD_RIB,
    )


def _state(gap: float) -> str:
    if abs(gap) <= _TOUCHING:
        return "touching"
    return "gap" if gap > 0 else "overlap"


def _near_pairs(solids: list[Part], bodies: dict[str, Body]) -> Iterable[tuple[str, str]]:
    """Pairs of parts whose boxes come within reach."""
    boxes = np.array([bodies[part.id].box for part in solids])
    low, high = boxes[:, :3], boxes[:, 3:]
    for i in range(len(solids)):
        with np.errstate(invalid="ignore"):
            near = np.all((low <= high[i] + LARGEST_GAP) & (high >= low[i] - LARGEST_GAP), axis=1)
        for j in np.flatnonzero(near):
            if j > i:
                yield solids[i].id, solids[j].id


def _no_contact(solids: list[Part], bodies: dict[str, Body]) -> str:
    nearest, names = np.inf, ("", "")
    for i, a in enumerate(solids):
        for b in solids[i + 1 :]:
            low = np.maximum(bodies[a.id].box[:3], bodies[b.id].box[:3])
            high = np.minimum(bodies[a.id].box[3:], bodies[b.id].box[3:])
            apart = float(np.linalg.norm(np.maximum(low - high, 0.0)))
            if apart < nearest:
                nearest, names = apart, (shown(a), shown(b))
    return _apart(nearest, *names)


def _apart(distance: float, one: str, other: str) -> str:
    return (
        f"No two parts come close enough to be welded: the nearest, {one} and {other}, are about {distance:.2f} mm "
        f"apart, the search stops at {LARGEST_GAP:.2f} mm. Move the cover to its welded position."
    )
