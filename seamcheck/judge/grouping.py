"""One cause, one finding: findings that say the same in many places become one that names the places."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from msgspec.structs import replace

from seamcheck.catalogue.causes import CAUSE_OF
from seamcheck.catalogue.message import Amount, Message, Sentence
from seamcheck.catalogue.messages import ALONG_PATHS, GROUPED, JUNCTIONS, SAME_CAUSE, SAME_ELSEWHERE, message
from seamcheck.catalogue.rule import NOTE, SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import Value, say
from seamcheck.judge.findings import Finding, Place

MOST = 6
"""Findings of a model, notes and waived ones aside, above which those that say the same are reported as one."""

_MOST_NAMED = 6  # places that a sentence names; the finding's ``places`` holds all

Key = tuple[str | None, ...]


def grouped(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    """The findings in their order; where they are many, one for each rule and side that is broken.

    Waived findings and notes stay as they are: whoever waived a place has reviewed that place.

    Notes
    -----
    First what breaks one rule on one side of a limit, then one rule at all, then what has one cause. The most severe
    represents its group, of equally severe ones the one that misses its limit by most; the others are its ``places``.
    """
    count = sum(_counts(finding) for finding in findings)
    for key in (_side, _rule, _cause):
        if sum(_counts(finding) for finding in findings) > MOST:
            findings = _together(findings, key, count)
    return tuple(findings)


def _counts(finding: Finding) -> bool:
    return finding.severity != NOTE and finding.waived is None


def _rule(finding: Finding) -> Key:
    return finding.joint, finding.rule


def _cause(finding: Finding) -> Key:
    return finding.joint, CAUSE_OF.get(finding.rule, finding.rule)


def _side(finding: Finding) -> Key:
    """Joint, rule, column, and which side of the limit: an open seam has neither."""
    if finding.limit is None or finding.margin is None or finding.value is None:
        return finding.joint, finding.rule, finding.column, ""
    return finding.joint, finding.rule, finding.column, "low" if finding.value < finding.limit else "high"


def _together(findings: Sequence[Finding], key: Callable[[Finding], Key], count: int) -> list[Finding]:
    groups: dict[Key, list[Finding]] = {}
    for finding in findings:
        if _counts(finding):
            groups.setdefault(key(finding), []).append(finding)
    told: list[Finding] = []
    for finding in findings:
        if not _counts(finding):
            told.append(finding)
            continue
        group = groups[key(finding)]
        if finding is group[0]:
            told.append(_one(group, count) if len(group) > 1 else finding)
    return told


def _one(group: Sequence[Finding], count: int) -> Finding:
    """The finding that represents a group."""
    lead = min(group, key=_rank)
    rest = [finding for finding in group if finding is not lead]
    here = tuple(place for f in (lead, *rest) if f.rule == lead.rule for place in _places(f, lead))
    others = [f for f in rest if f.rule != lead.rule]
    places = (*here, *(place for f in others for place in _places(f, lead)))
    said = _own(lead)
    if here:
        said.append(message(SAME_ELSEWHERE, {"count": Amount(len(here), "", 0), "where": _where(here)}))
    if others:
        said.append(message(SAME_CAUSE, {"cause": CAUSE_OF[lead.rule]}))
        said += [one for f in others for one in _own(f)]
    said.append(message(GROUPED, {"count": Amount(count, "", 0)}))
    also = dict.fromkeys(rule for f in (lead, *rest) for rule in (f.rule, *f.also) if rule != lead.rule)
    faces = dict.fromkeys(face for finding in (lead, *rest) for face in finding.faces)
    return replace(
        lead, message=" ".join(m.text for m in said), messages=tuple(said), also=tuple(also), faces=tuple(faces),
        places=places,
    )  # fmt: skip


def _rank(finding: Finding) -> tuple[int, int, float]:
    """Severity, the rule's place in the catalogue, and by how much the limit is missed."""
    severity, rule = SEVERITIES.index(finding.severity), list(RULES).index(finding.rule)
    return severity, rule, finding.margin if finding.margin is not None else 0.0


def _own(finding: Finding) -> list[Message]:
    """What a finding says of its own place."""
    return [said for said in finding.messages if said.key not in (SAME_ELSEWHERE, GROUPED)]


def _places(finding: Finding, lead: Finding) -> tuple[Place, ...]:
    """The places of a finding within the group that another one represents; of its own ones only the further."""
    if finding is lead:
        return finding.places
    if finding.rule == lead.rule:
        return (place_of(finding), *finding.places)
    other = (replace(place, rule=finding.rule, severity=finding.severity) for place in finding.places)
    return (replace(place_of(finding), rule=finding.rule, severity=finding.severity), *other)


def along_paths(group: Sequence[Finding]) -> Finding:
    """One finding of several that each hold along a whole path; the first represents them."""
    lead, *rest = group
    where = ", ".join(finding.contour or "" for finding in rest)
    said = (*lead.messages, message(ALONG_PATHS, {"where": where}))
    places = tuple(place_of(finding) for finding in rest)
    return replace(lead, message=" ".join(m.text for m in said), messages=said, places=places)


def junctions_together(group: Sequence[Finding], paths: str) -> Finding:
    """One note of several junctions in each of which so many paths meet; the first represents them.

    Parameters
    ----------
    paths : how many
    """
    lead, places = group[0], tuple(map(place_of, group))
    args: dict[str, Value] = {"count": Amount(len(group), "", 0), "paths": paths, "where": _where(places)}
    said = message(JUNCTIONS, args)
    return replace(
        lead, key=JUNCTIONS, args=said.args, message=said.text, messages=(said,), places=places[1:],
    )  # fmt: skip


def place_of(finding: Finding) -> Place:
    """Where a finding holds, and what was measured there."""
    return Place(
        contour=finding.contour, at=finding.at, station=finding.station, from_s=finding.from_s, to_s=finding.to_s,
        length_mm=finding.length_mm, value=finding.value,
    )  # fmt: skip


def _where(places: Sequence[Place]) -> list[str]:
    """'c1 at s = 12.0 mm to 14.5 mm', 'c1 at s = 30.0 mm', 'at 1.0 / 2.0 / 3.0 mm', '4 more'."""
    named: list[str] = [_spot(place) for place in places[:_MOST_NAMED]]
    more = len(places) - len(named)
    return [*named, say("spot.more", count=more)] if more else named


def _spot(place: Place) -> Sentence:
    if place.from_s is not None and place.to_s is not None:
        path = place.contour or ""
        if place.from_s == place.to_s:
            return say("spot.station", path=path, start=place.from_s)
        return say("spot.stretch", path=path, start=place.from_s, end=place.to_s)
    if place.at is not None:
        return say("spot.point", place=" / ".join(f"{c:.1f}" for c in place.at))
    return say("spot.path", path=place.contour) if place.contour else say("spot.seam")
