"""A reading: a candidate with the side on which the light comes in, and what speaks for and against it."""

from __future__ import annotations

import numpy as np
from msgspec import Struct, field
from msgspec.structs import replace

from seamcheck.assembly.parts import Part
from seamcheck.catalogue.say import say
from seamcheck.joint.candidates import Candidate, is_free, is_shaded
from seamcheck.joint.constants import CLEARLY_THINNER, OPAQUE, THIN
from seamcheck.joint.light import LightSide


class Evidence(Struct, frozen=True):
    """One thing that was measured on a reading.

    Attributes
    ----------
    weight : factor of the confidence: 1 speaks for it, less against it
    says : a sentence
    """

    weight: float
    says: str


class Reading(Struct, frozen=True, eq=False):
    """A way to read a pair of parts.

    Attributes
    ----------
    candidate : the band
    through_counter : whether the light comes through the part that faces the band (else through its own)
    thickness : mm, of plastic that the light passes
    doubt : what to know about the choice, a sentence or ''
    evidence : what speaks for and against it
    """

    candidate: Candidate
    through_counter: bool
    thickness: float
    doubt: str = ""
    evidence: tuple[Evidence, ...] = field(default=())

    @property
    def cover(self) -> str:
        return self.candidate.counter if self.through_counter else self.candidate.carrier

    @property
    def base(self) -> str:
        return self.candidate.carrier if self.through_counter else self.candidate.counter

    @property
    def side(self) -> LightSide:
        return self.candidate.through_counter if self.through_counter else self.candidate.through_carrier

    @property
    def other_side(self) -> LightSide:
        return self.candidate.through_carrier if self.through_counter else self.candidate.through_counter

    @property
    def beam(self) -> np.ndarray:
        """(3,) unit vector of the light."""
        z: np.ndarray = self.candidate.frame.axes[2]
        return -z if self.through_counter else z

    @property
    def confidence(self) -> float:
        """0 to 1: the product of all evidence."""
        return float(np.prod([e.weight for e in self.evidence]))

    @property
    def pair(self) -> frozenset[str]:
        return frozenset((self.cover, self.base))


def readings_of(candidate: Candidate, cover: Part | None, base: Part | None, beam: np.ndarray | None) -> list[Reading]:
    """The ways in which light can reach a candidate, settled where one is clearly better.

    Parameters
    ----------
    cover, base : parts that the user named; beam : (3,) unit vector, direction that the user gave
    """
    both = [
        Reading(candidate, through, side.thickness)
        for through, side in ((True, candidate.through_counter), (False, candidate.through_carrier))
    ]
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
    if len(free) == 1 and free[0].side.thickness > OPAQUE:
        # a thin part with an obstacle in front is preferred to light through a block; it stays as unlikely
        shaded = [r for r in both if is_shaded(r.side) and r.side.thickness <= THIN]
        doubt = say("joint.shaded")
        return [replace(r, thickness=free[0].side.thickness, doubt=doubt) for r in shaded] or free
    return free


def _clearer(readings: list[Reading]) -> list[Reading]:
    """Of two open sides the one with the much thinner part; both, in doubt, where they are alike."""
    if len(readings) < 2:
        return readings
    first, second = sorted(readings, key=lambda r: r.side.thickness)
    if second.side.thickness > CLEARLY_THINNER * first.side.thickness or not is_free(second.side):
        return [first]
    return [first, second]
