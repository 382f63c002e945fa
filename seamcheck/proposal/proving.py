"""What a proposal's own review proves: what keeps it from being one, and which findings it mends."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import msgspec

from seamcheck.catalogue.message import Message, Sentence
from seamcheck.catalogue.say import say, together
from seamcheck.proposal.records import Change, JointProposal, Remedy

if TYPE_CHECKING:
    from seamcheck.report.review import Review

OWN_RULES = frozenset(
    {
        "rib-missing", "rib-width", "rib-uniformity", "rib-height", "slenderness", "corner-radius", "trap-room",
        "trap-side", "trap-corner", "trap-open-inner", "lip-gap", "sink-travel", "seam-open", "parts-overlap",
    }
)  # fmt: skip
"""Rules on what a proposal itself draws: an attention of one of these keeps it from being a proposal."""


def open_findings(reviewed: Review) -> tuple[int, int]:
    """How many must-fix and attention findings a review has."""
    if reviewed.verdict == "not-reviewed":
        return (10**6, 0)
    open_ones = [f["severity"] for f in reviewed.document["findings"] if not f["waived"]]
    return open_ones.count("must-fix"), open_ones.count("attention")


def said_of(change: Change) -> str:
    """What was moved, and by how much."""
    return change.what if change.by is None else say("propose.by", what=change.what, by=change.by)


def remedies_of(joints: Sequence[JointProposal], before: Review, after: Review | None) -> tuple[Remedy, ...]:
    """For every finding of the model as drawn: whether the proposal mends it."""
    moved: dict[str, list[str]] = {}
    left: dict[str, str] = {}
    for joint in joints:
        for change in joint.changes:
            for one in change.findings:
                moved.setdefault(one, []).append(said_of(change))
        left.update((one.finding, one.why) for one in joint.left)
    drawn = {joint.joint: joint.message for joint in joints if joint.state == "cut" and not joint.changes}
    no_room = {joint.joint: joint.message for joint in joints if joint.state in ("no-room", "not-flat")}
    after_findings = [] if after is None or after.verdict == "not-reviewed" else after.document["findings"]
    remains = {f["id"] for f in after_findings} | {(f["rule"], f["contour"], f["from_s"]) for f in after_findings}
    found = []
    for finding in before.document.get("findings", []):
        if finding["severity"] == "note" or finding["waived"]:
            continue
        one = str(finding["id"])
        gone = after is not None and after.verdict != "not-reviewed"
        gone = gone and one not in remains and (finding["rule"], finding["contour"], finding["from_s"]) not in remains
        did = say("propose.list", changes=moved[one]) if one in moved else None
        says = did or left.get(one, "") or drawn.get(str(finding["joint"]), "")
        if gone:
            says = says or say("propose.went")
        else:
            why = left.get(one) or (say("propose.still", what=says) if says else say("propose.nothing"))
            measured = say("propose.measured", why=why, measured=_says(finding))
            says = measured if one in left else no_room.get(str(finding["joint"]), measured)
        found.append(Remedy(finding=one, rule=finding["rule"], fits="yes" if gone else "no", says=says))
    return tuple(found)


def _says(finding: Mapping[str, Any]) -> str:
    """What a review says of a finding, as a sentence that knows its keys."""
    return together(*(Sentence.of(msgspec.convert(message, Message)) for message in finding["messages"]))


def short_of_land(after: Review) -> float:
    """mm by which the clamp's land is too narrow, where that is all that is broken; else 0."""
    broken = [f for f in after.document.get("findings", []) if f["severity"] == "must-fix" and not f["waived"]]
    if any(f["rule"] != "clamp-land" or f["value"] is None for f in broken):
        return 0.0
    return max((float(f["limit"]) - float(f["value"]) for f in broken), default=0.0)


def held(
    joints: Sequence[JointProposal], before: Review, after: Review, remedies: Sequence[Remedy]
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """What keeps a drawn joint from being a proposal, and attentions that are named only."""
    if after.verdict == "not-reviewed":
        return (str(after.document["reason"]["message"]),), ()
    kept: list[str] = [joint.message for joint in joints if joint.state not in ("cut", "mended", "sound")]
    known = {(f["rule"], f["quantity"]) for f in before.document["findings"]}
    named: list[str] = []
    for finding in after.document["findings"]:
        if finding["waived"] or finding["severity"] == "note":
            continue
        sentence = say("propose.found", rule=finding["rule"], says=_says(finding))
        is_own = finding["rule"] in OWN_RULES and (finding["rule"], finding["quantity"]) not in known
        (kept if finding["severity"] == "must-fix" or is_own else named).append(sentence)
    if remedies and all(one.fits == "no" for one in remedies):
        kept.append(say("propose.mends-none"))
    return tuple(kept), tuple(named)
