"""Of all readings those that are joints: the best of each pair, and what is left out, with the reason."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.assembly.parts import Part
from seamcheck.catalogue.kinds import STEPPED_LAP
from seamcheck.catalogue.say import Value, refused, say
from seamcheck.errors import NotReviewed
from seamcheck.joint.candidates import interruptions
from seamcheck.joint.constants import CARRIES, IS_BESIDE, MARGIN, SAME_LEVEL, THIN
from seamcheck.joint.evidence import graded
from seamcheck.joint.names import Names
from seamcheck.joint.profile import FILLED
from seamcheck.joint.reading import Evidence, Reading
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet

_WORTH_A_WORD = 0.2  # share of the seam's length from which on another rib is mentioned


class Chosen(Struct, frozen=True, eq=False):
    """Joints, and what was left out.

    Attributes
    ----------
    readings : one for each joint, the best first
    passed_over : other bands, as sentences
    doubt : two readings of the same parts that are equally good: then there is no joint
    unresolved : ribs under covers of their own that could not be told for sure, as sentences
    """

    readings: tuple[Reading, ...]
    passed_over: tuple[str, ...]
    unresolved: tuple[str, ...]
    doubt: tuple[Reading, Reading] | None = None


def choose(readings: Sequence[Reading], bodies: Mapping[str, Body], parts: Mapping[str, Part], names: Names) -> Chosen:
    """The readings that are joints, each with its margin over the next way to read the same parts."""
    worth = _worth_of(readings, bodies)
    ranked = sorted(readings, key=lambda r: (-worth(r), r.cover, r.base))
    chosen: list[Reading] = []
    passed: list[str] = []
    unsure: list[Reading] = []
    for reading in ranked:
        if reading.confidence < CARRIES:
            unsure.append(reading)
            continue
        rivals = [r for r in chosen if r.pair & reading.pair]
        if chosen and not rivals and not reading.candidate.stands_out and _at_a_housing(reading, chosen, bodies):
            continue  # parts inside the housing that lie on each other
        if not all(_side_by_side(reading, r) for r in rivals):
            rival = max((r for r in rivals if not _side_by_side(reading, r)), key=worth)
            if reading.candidate.stands_out and reading.pair != rival.pair:
                passed.append(_passed_over(reading, names))
            continue  # another band of the same parts, or another reading of them
        second = _next(reading, ranked)
        sure = reading if second is None else _with_margin(reading, worth(second) / worth(reading))
        if second is not None and sure.confidence < CARRIES:
            settled = _by_transparency(reading, second, parts, names)
            if settled is None or settled.confidence < CARRIES:
                return Chosen((), (), (), (reading, second))
            sure = settled
        chosen.append(sure)
    unresolved = [_unresolved(r, names) for r in unsure if chosen and _is_a_joint_of_its_own(r, chosen)]
    return Chosen(tuple(chosen), tuple(dict.fromkeys(passed)), tuple(dict.fromkeys(unresolved)))


def _worth_of(readings: Sequence[Reading], bodies: Mapping[str, Body]) -> Callable[[Reading], float]:
    alone = len({r.pair for r in readings}) == 1
    volume = {i: 1.0 if alone else bodies[i].volume for r in readings for i in r.pair}
    nearest: dict[frozenset[str], float] = {}
    for r in readings:
        nearest[r.pair] = min(nearest.get(r.pair, np.inf), r.candidate.gap)

    def worth(reading: Reading) -> float:
        smaller = min(volume[reading.cover], volume[reading.base])
        later = reading.candidate.gap - nearest[reading.pair]  # touches later than another
        thick = max(0.0, reading.thickness / THIN - 1.0)  # light hardly passes through a thick part
        plain = reading.candidate.score * smaller ** (1 / 3) / (1.0 + 5.0 * later) / (1.0 + thick)
        return float(plain * reading.confidence)

    return worth


def _next(reading: Reading, ranked: Sequence[Reading]) -> Reading | None:
    """The best reading after this one that would be another joint of one of its parts in its place."""
    later = ranked[next(i for i, r in enumerate(ranked) if r is reading) + 1 :]
    own = (reading.cover, reading.base)
    others = (r for r in later if r.pair & reading.pair and (r.cover, r.base) != own)
    return next((r for r in others if not _side_by_side(reading, r)), None)


def _with_margin(reading: Reading, share: float) -> Reading:
    """The reading with less confidence for the worth of the next one (share of its own, 0 to 1)."""
    told = Evidence(graded(-share, *MARGIN), say("evidence.margin", share=100 * share))
    return replace(reading, evidence=(*reading.evidence, told))


def _side_by_side(one: Reading, other: Reading) -> bool:
    """Whether two readings can both be joints: two covers on one base, or one cover on two bases at one level."""
    if one.pair == other.pair or _overlap(one, other):
        return False
    if one.base == other.base and one.cover != other.cover:
        return True
    return bool(
        one.cover == other.cover
        and one.base != other.base
        and one.candidate.stands_out
        and other.candidate.stands_out
        and abs(one.candidate.gap - other.candidate.gap) <= SAME_LEVEL
        and one.beam @ other.beam > 0.99
    )


def _overlap(reading: Reading, other: Reading) -> bool:
    """Whether a seam lies under or over another one (light would have to pass two parts)."""
    if reading.beam @ other.beam < 0.9:
        return False
    outline = shapely.get_coordinates(reading.candidate.region)
    level = np.full(len(outline), reading.candidate.level)
    world = reading.candidate.frame.world(np.column_stack([outline, level]))
    mine = shapely.MultiPoint(other.candidate.frame.local(world)[:, :2]).convex_hull
    theirs = other.candidate.region.convex_hull
    return bool(mine.intersection(theirs).area > 0.5 * min(mine.area, theirs.area))


def _at_a_housing(reading: Reading, chosen: Sequence[Reading], bodies: Mapping[str, Body]) -> bool:
    """Whether the parts come near those of a joint: parts beside them are a housing of their own."""
    boxes = {i: np.asarray(bodies[i].box) for r in (reading, *chosen) for i in r.pair}
    taken = np.array([boxes[i] for r in chosen for i in r.pair])
    return any(bool(boxes_meet(taken, boxes[i]).any()) for i in reading.pair)


def _is_a_joint_of_its_own(reading: Reading, chosen: Sequence[Reading]) -> bool:
    """Whether an unsure reading is a rib under another cover than those that are reviewed."""
    return bool(
        reading.candidate.stands_out
        and not any(reading.cover in r.pair for r in chosen)
        and any(reading.base in r.pair for r in chosen)
        and reading.candidate.length > _WORTH_A_WORD * max(r.candidate.length for r in chosen)
    )


def _unresolved(reading: Reading, names: Names) -> str:
    against = [e.says for e in reading.evidence if e.weight < 1.0]
    return say("joint.left-out", cover=names(reading.cover), base=names(reading.base), against=against)


def _passed_over(reading: Reading, names: Names) -> str:
    candidate = reading.candidate
    return say(
        "joint.passed-over", part=names(candidate.carrier), length=candidate.length, opposite=names(candidate.counter)
    )


def _by_transparency(first: Reading, second: Reading, parts: Mapping[str, Part], names: Names) -> Reading | None:
    """Where only the roles are in doubt, a part drawn see-through is taken as the cover: a hint."""
    if first.pair != second.pair or first.cover == second.cover:
        return None
    clear = {i: parts[i].transparency or 0.0 for i in (first.cover, second.cover)}
    if abs(clear[first.cover] - clear[second.cover]) < 0.2:
        return None
    better, worse = (first, second) if clear[first.cover] > clear[second.cover] else (second, first)
    return replace(better, doubt=say("joint.see-through", other=names(worse.cover), cover=names(better.cover)))


def _either_way(first: Reading, second: Reading, names: Names) -> NotReviewed:
    """The refusal of a band that light reaches as well from one side as from the other."""
    band = first.candidate
    more: dict[str, Value] = {}
    if band.kind == STEPPED_LAP and band.border.share[FILLED] >= IS_BESIDE:
        more = {"tongue": names(band.counter), "groove": names(band.carrier), "step": band.border.step}
    cuts = interruptions(band.region, band.length)
    if cuts:
        place = band.frame.world(np.append(max(cuts)[1], band.level))
        more |= {"open": sum(c for c, _ in cuts), "place": ", ".join(f"{c:.1f}" for c in place)}
    return refused(
        "ambiguous", "ambiguous.ridge" if band.stands_out else "ambiguous.roles", one=names(first.cover),
        other=names(second.cover), band=band.describes, gap=band.gap, first=first.thickness, second=second.thickness,
        **more,
    )  # fmt: skip


def doubtful(doubt: tuple[Reading, Reading], names: Names) -> NotReviewed:
    """The refusal of a model with two readings that are equally good."""
    if doubt[0].candidate is doubt[1].candidate:
        return _either_way(*doubt, names)
    one, other = (
        say("any.reading", cover=names(r.cover), base=names(r.base), band=r.candidate.describes) for r in doubt
    )
    return refused("ambiguous", "ambiguous.two", first=one, second=other)
