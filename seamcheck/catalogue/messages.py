"""Sentences by key: what findings say, in English, and the numbers and words that go into each.

A finding carries the key and the values beside the English text. Another language, or other units, need one
table like ``WORDINGS``: ``fill`` makes the sentence from it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping

from msgspec import Struct

from seamcheck.catalogue.kind_words import base_of, worded
from seamcheck.catalogue.kinds import KINDS
from seamcheck.catalogue.message import Amount, Message
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import Check, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import Value, sentence
from seamcheck.catalogue.words import change_by

LOW, HIGH = "low", "high"
BELOW_ZERO, GRAVE, PARTLY = "below-zero", "grave", "partly"
AT_RISK, OPEN_PLACE, RIB_GONE = "at-risk", "seam-open.interrupted", "seam-open.no-rib"
NO_COUNTERPART = "seam-open.no-opposite"
WALL_ENDS, WALL_INTERRUPTED = "seam-open.wall-ends", "seam-open.wall-interrupted"
MOVED, IN_LIGHT, POCKET, LOW_RIB = "moved", "in-light", "pocket", "low-rib"
SAME_ELSEWHERE, GROUPED, ALONG_PATHS = "places", "places.grouped", "places.paths"
SAME_CAUSE = "places.cause"
JUNCTIONS = "seam-junction.several"


LAP_ROOM, LAP_NARROW = "rib-missing.room", "rib-missing.narrow"
LAP_COVER, LAP_STEP = "rib-missing.cover", "rib-missing.step"


def lap_kind(kind: str) -> str:
    """Key of the sentence that names a kind of joint without a rib."""
    return f"rib-missing.{kind}"


class Wording(Struct, frozen=True):
    """English texts with {places}: what is said, what to do about it, and what goes wrong otherwise."""

    says: str
    remedy: str = ""
    harm: str = ""


def message(key: str, args: Mapping[str, Value]) -> Message:
    """The sentence of a key with its values filled in."""
    return sentence(key, wording(key).says, args).message


def wording(key: str) -> Wording:
    """The texts of a key, in the words of the kind of joint that it ends in (catalogue/kind_words.py).

    Raises
    ------
    KeyError : no such key
    """
    if key in WORDINGS:
        return WORDINGS[key]
    base, word = base_of(key)
    own = WORDINGS[base]
    return Wording(*(worded(text, word) for text in (own.says, own.remedy, own.harm)))


def is_known(key: str) -> bool:
    """Whether this version has the texts of a key."""
    return key in WORDINGS or base_of(key)[0] in WORDINGS


def amount_of(value: float, quantity: str) -> Amount:
    """A value of a quantity, as it is read: with its unit and its decimals."""
    q = QUANTITIES[quantity]
    return Amount(float(value), q.unit, q.decimals)


def apart(value: Amount, limit: Amount) -> Amount:
    """The value with as many decimals more, at most three, as it takes to read differently from the limit it breaks."""
    finer = (Amount(value.value, value.unit, value.decimals + more) for more in range(4))
    return next((told for told in finer if str(told) != str(limit)), value)


def change_of(by: float, unit: str) -> Amount:
    """How much to change, rounded up so that following the advice is enough."""
    return Amount(change_by(by, unit), unit, 2)


def significant(value: float, unit: str, digits: int = 3) -> Amount:
    """A value as it is read to so many digits in all."""
    places = digits - 1 - math.floor(math.log10(abs(value))) if value else 0
    return Amount(float(value), unit, min(max(places, 0), 9))


def bound_key(rule: Rule, check: Check, side: str) -> str:
    """Key of what is said where a check fails on one side (LOW or HIGH), or for a reason."""
    return f"{rule.key}.{check.column}.{side}"


_BY_CAUSE = (
    ("beam-path", "beam_clear", LOW, MOVED, "Move {part} {way:word}[ (along {axis})] by {by}, or cut it back by "
     "as much: that clears the beam and its margin."),
    ("beam-path", "beam_clear", LOW, IN_LIGHT, "Move {part} out of the beam path."),
    ("scanner-shadow", "light_clear", LOW, MOVED, "Move {part} {way:word}[ (along {axis})] by {by}, or cut it "
     "back by as much: that clears the beam and its margin; or put the scanner higher, or shift its axis."),
    ("scanner-shadow", "light_clear", LOW, IN_LIGHT, "Move {part} out of the beam path, put the scanner higher, or "
     "shift its axis."),
    ("contact-gap", "gap_max", HIGH, POCKET, "Fill the pocket in the cover[ by {by}]."),
    ("contact-gap", "gap_max", HIGH, LOW_RIB, "Raise the rib here[ by {by}]."),
)  # fmt: skip
"""Rule, column, side, cause -> what to do where the geometry tells the cause."""


def _wordings() -> dict[str, Wording]:
    found: dict[str, Wording] = {}

    def put(key: str, wording: Wording) -> None:
        if found.setdefault(key, wording) != wording:
            raise ValueError(f"two wordings for {key}")

    for rule in RULES.values():
        if rule.says:
            put(rule.key, Wording(rule.says, rule.remedy, rule.harm))
        for check in rule.checks:
            for side, bound in ((LOW, check.lower), (HIGH, check.upper)):
                if bound is None:
                    continue
                key, harm = bound_key(rule, check, side), bound.harm or rule.harm
                put(key, Wording(bound.says, bound.remedy, harm))
                if bound.below_zero:
                    put(f"{key}.{BELOW_ZERO}", Wording(bound.below_zero, bound.remedy, harm))
                if bound.grave:
                    put(f"{key}.{GRAVE}", Wording(bound.grave_says))
            for reason, words in check.failing_reasons.items():
                other = check.upper or check.lower or rule.bounds()[0]
                put(bound_key(rule, check, reason), Wording(words, other.remedy, other.harm or rule.harm))
    open_seam = RULES["seam-open"]
    put(OPEN_PLACE, Wording("The rib is interrupted for {length}.", open_seam.remedy, open_seam.harm))
    put(RIB_GONE, Wording("The rib is missing for {length}.", open_seam.remedy, open_seam.harm))
    wall = "Close the seam: continue the wall to its start, or into another wall."
    put(WALL_ENDS, Wording("The wall that is welded ends here.", wall, open_seam.harm))
    put(WALL_INTERRUPTED, Wording("The wall that is welded is interrupted for {length}.", wall, open_seam.harm))
    meet = RULES["seam-junction"]
    several = "{paths} paths of the seam meet at each of {count} junctions: {where:list}."
    put(JUNCTIONS, Wording(several, meet.remedy, meet.harm))
    alone = "The seam is interrupted for {length}: no opposite part faces the rib there."
    put(NO_COUNTERPART, Wording(alone, "Extend the opposite part along the whole rib.", open_seam.harm))
    put(
        AT_RISK,
        Wording(
            "{name:title} is {value} as drawn and holds the limit of {limit}; with the tolerance of ±{tolerance} "
            "the worst case is {worst_case}, which does not. Of parts distributed {spread} over it, {share} lie "
            "outside."
        ),
    )
    for name, column, side, cause, remedy in _BY_CAUSE:
        told = found[f"{name}.{column}.{side}"]
        put(f"{name}.{column}.{side}.{cause}", Wording(told.says, remedy, told.harm))
    put(SAME_ELSEWHERE, Wording("Broken in the same way, {count} more: {where:list}."))
    put(GROUPED, Wording("They are reported as one finding, because there are {count} in all."))
    put(SAME_CAUSE, Wording("The same cause, {cause:word}, also breaks other limits:"))
    put(ALONG_PATHS, Wording("The same holds along {where}."))
    lap, band = RULES["rib-missing"], "The band is {width} wide and {length} long."
    room = "A weld rib of {rib} with a flash trap of {trap} on each side fits on the band."
    narrow = "A weld rib of {rib} with a flash trap of {trap} on each side needs {needed}: widen the band by {by}."
    put(LAP_ROOM, Wording(band, f"{lap.remedy} {room}", lap.harm))
    put(LAP_NARROW, Wording(band, f"{lap.remedy} {narrow}", lap.harm))
    put(LAP_COVER, Wording("The cover over it is {thickness} thick, the gap {gap}."))
    put(LAP_STEP, Wording("The step beside it is {step} high."))
    for kind, what in KINDS.items():
        put(lap_kind(kind), Wording(what))
    put(PARTLY, Wording("This applies to {length} of this stretch; the rest is beyond {limit}."))
    return found


WORDINGS: dict[str, Wording] = _wordings()
"""Key -> English wording."""
