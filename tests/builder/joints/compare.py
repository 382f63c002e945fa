"""A review document against the right answer of a case; imports no kernel."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Protocol

import numpy as np

from .truth import JointTruth

LIGHT = 1.0
"""degrees that the light may be off: recognition, not measurement (that is held to 0.005 elsewhere)."""
RIGHT, HONEST = "right", "honest"
WRONG = ("wrong joint", "wrong kind", "wrong roles", "wrong light")
"""Outcomes that are a wrong joint stated; the rest is missed, badly explained or wrongly judged."""


class Answer(Protocol):
    """The right answer, as a drawn case or a labelled file gives it."""

    @property
    def joints(self) -> tuple[JointTruth, ...]: ...
    @property
    def reasons(self) -> tuple[str, ...]: ...
    @property
    def says(self) -> tuple[str, ...]: ...
    @property
    def volume(self) -> float: ...
    @property
    def most(self) -> int: ...


@dataclass(frozen=True)
class Row:
    """One line of the table.

    Attributes
    ----------
    found : kinds found, or the code of the refusal
    roles, closed : whether roles and light, and closed or open are right; None where nothing can be compared
    findings : must-fix and attention
    confidence : the least of the joints found; NaN without
    outcome : 'right'; 'honest' (a refusal that is allowed); else what is wrong
    why : what differs, as sentences
    """

    found: str
    roles: bool | None
    closed: bool | None
    verdict: str
    findings: tuple[int, int]
    confidence: float
    outcome: str
    why: tuple[str, ...] = ()

    @property
    def is_wrong_joint(self) -> bool:
        return self.outcome in WRONG


def row(document: Mapping[str, Any], answer: Answer) -> Row:
    """Compare a document with the right answer."""
    severities = [f["severity"] for f in document["findings"] if not f.get("waived")]
    counts = severities.count("must-fix"), severities.count("attention")
    joints = document["joints"]
    if document["verdict"] == "not-reviewed":
        reason = document["reason"]
        outcome, why = _refusal(reason, answer)
        return Row(reason["code"], None, None, "not-reviewed", counts, float("nan"), outcome, why)
    found = " + ".join(kind_of(joint) for joint in joints) or "none"
    confidence = min((_sure(joint) for joint in joints), default=float("nan"))
    pairs, faults = _matched(joints, answer)
    roles = closed = None
    if pairs and not faults:
        told = [fault for joint, truth in pairs for fault in _told(joint, truth)]
        roles = not any(what in ("wrong roles", "wrong light") for what, _ in told)
        closed = not any(what == "wrong closed" for what, _ in told)
        faults = told + [f for joint, truth in pairs for f in _judged(joint, truth, document["findings"])]
    if sum(counts) > answer.most:
        faults.append(("too many findings", f"{sum(counts)} findings, {answer.most} at most"))
    rank = [*WRONG, "missed joint", "false pass", "wrong closed", "missed finding", "false finding"]
    faults.sort(key=lambda fault: rank.index(fault[0]) if fault[0] in rank else len(rank))
    outcome = faults[0][0] if faults else RIGHT
    why = tuple(sentence for _, sentence in faults)
    return Row(found, roles, closed, document["verdict"], counts, confidence, outcome, why)


def kind_of(joint: Mapping[str, Any]) -> str:
    """The kind of a joint as the document names it."""
    return str(joint.get("kind") or ("no-rib" if joint["rib_on"] == "none" else "weld-rib"))


def _sure(joint: Mapping[str, Any]) -> float:
    told = joint.get("confidence")
    return float("nan") if told is None else float(told)


def _refusal(reason: Mapping[str, str], answer: Answer) -> tuple[str, tuple[str, ...]]:
    said = f"{reason['code']}: {reason['message']}"
    right = reason["code"] in answer.reasons
    if answer.joints and not right:
        return "missed joint", (said,)
    if not right:
        return "wrong reason", (said,)
    silent = [words for words in answer.says if not re.search(words, reason["message"], re.IGNORECASE)]
    if answer.volume and not answer.joints and not _names(reason["message"], answer.volume):
        silent.append(f"{answer.volume:g} mm³")
    if silent:
        return "wrong sentence", (f"does not say {' / '.join(silent)}: {said}",)
    return (HONEST if answer.joints else RIGHT), (said,)


def _names(message: str, volume: float) -> bool:
    numbers = re.findall(r"(\d[\d\u202f\u00a0 ,]*(?:\.\d+)?) *mm(?:³|3)", message)
    found = [float(re.sub(r"[^\d.]", "", number)) for number in numbers]
    return any(abs(number - volume) <= 0.02 * volume for number in found)


Fault = tuple[str, str]


def _matched(joints: Sequence[Mapping[str, Any]], answer: Answer) -> tuple[list[tuple[Any, JointTruth]], list[Fault]]:
    """Pairs (found, true), and joints without their counterpart."""
    pairs, faults, left = [], [], list(joints)
    for truth in answer.joints:
        mine = next((j for j in left if _same(j, truth)), None)
        if mine is None:
            faults.append(("missed joint", f"no joint of p{truth.cover + 1} and p{truth.base + 1}"))
        else:
            left.remove(mine)
            pairs.append((mine, truth))
    for joint in left:
        what = f"{kind_of(joint)} of {', '.join(joint['cover'])} on {', '.join(joint['base'])}"
        faults.append(("wrong joint", f"a joint that is none: {what}"))
    return pairs, faults


def _same(joint: Mapping[str, Any], truth: JointTruth) -> bool:
    """Whether a joint is of these two parts, whichever way."""
    return {*joint["cover"], *joint["base"]} >= {f"p{truth.cover + 1}", f"p{truth.base + 1}"}


def _told(joint: Mapping[str, Any], truth: JointTruth) -> list[Fault]:
    faults: list[Fault] = []
    if kind_of(joint) not in truth.kinds:
        faults.append(("wrong kind", f"{kind_of(joint)} instead of {truth.kinds[0]}"))
    turned = f"p{truth.cover + 1}" not in joint["cover"]
    if turned and not truth.either:
        faults.append(("wrong roles", f"cover and base exchanged: cover {', '.join(joint['cover'])}"))
    beam = np.asarray(truth.beam) * (-1 if turned else 1)
    tilt = np.degrees(np.arctan2(np.linalg.norm(np.cross(joint["beam"], beam)), np.dot(joint["beam"], beam)))
    if tilt > LIGHT:
        faults.append(("wrong light", f"light off by {tilt:.1f} degrees"))
    closed = bool(joint["contours"]) and all(contour["closed"] for contour in joint["contours"])
    # what crosses a chamber from wall to wall is open by nature: a closed outline is then enough
    closed = closed or (bool(joint["junctions"]) and not joint["interruptions"])
    if closed is not truth.closed:
        faults.append(("wrong closed", "closed" if closed else f"open, {len(joint['contours'])} contours"))
    return faults


def _judged(joint: Mapping[str, Any], truth: JointTruth, findings: Sequence[Mapping[str, Any]]) -> list[Fault]:
    mine = {f["rule"] for f in findings if f["joint"] == joint["id"] and f["severity"] == "must-fix"}
    faults: list[Fault] = []
    if missed := set(truth.must) - mine:
        faults.append(("missed finding", f"no finding of {', '.join(sorted(missed))}"))
    if truth.may is not None and (false := mine - set(truth.must) - set(truth.may)):
        faults.append(("false finding", f"must-fix {', '.join(sorted(false))}"))
    return faults
