"""Which findings a waiver covers, and which waivers no longer match anything."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

import numpy as np
from msgspec.structs import replace

from seamcheck.judge.findings import Finding, JointResult, Judgement, Waived
from seamcheck.settings.settings import Settings
from seamcheck.settings.waivers import Waiver


def with_waivers(found: list[Finding], settings: Settings, joints: Mapping[str, JointResult]) -> Judgement:
    """The findings, those that a waiver covers marked, and the state of every waiver.

    A waiver covers a finding only if its place holds all of it: a fault that grows beyond it is reported again.
    """
    today = settings.today or date.today()
    used: list[list[str]] = [[] for _ in settings.waivers]
    partly: list[list[str]] = [[] for _ in settings.waivers]
    result = []
    for finding in found:
        waived = None
        for i, waiver in enumerate(settings.waivers):
            touches, covers = _covered(waiver, finding, joints[finding.joint])
            if touches and not covers:
                partly[i].append(finding.id)
            if covers:
                used[i].append(finding.id)
                if not waiver.is_expired(today) and waived is None:
                    until = None if waiver.until is None else waiver.until.isoformat()
                    waived = Waived(waiver.reason, until, waiver.origin or None)
        result.append(replace(finding, waived=waived))
    states = []
    for i, waiver in enumerate(settings.waivers):
        state = "expired" if waiver.is_expired(today) else "used" if used[i] else "unused"
        states.append({**waiver.as_dict(), "state": state, "findings": used[i], "partly": partly[i]})
    return Judgement(tuple(result), tuple(states))


def _covered(waiver: Waiver, finding: Finding, joint: JointResult) -> tuple[bool, bool]:
    """Whether the waiver's place holds the finding's worst station, and whether all of the finding."""
    if waiver.rule != finding.rule or (waiver.joint and waiver.joint != finding.joint):
        return False, False
    if waiver.at is not None:
        places = _places(finding, joint)
        if finding.at is None or not len(places):
            return False, False
        middle = np.asarray(waiver.at)
        touches = float(np.linalg.norm(np.asarray(finding.at) - middle)) <= waiver.radius
        return touches, touches and bool(np.all(np.linalg.norm(places - middle, axis=1) <= waiver.radius))
    if waiver.contour != finding.contour:
        return False, False
    if waiver.from_s is None or waiver.to_s is None:
        return True, True
    if finding.from_s is None or finding.length_mm is None:
        return False, False
    path = next(p for p in joint.survey.paths if p.id == finding.contour)
    span = waiver.to_s - waiver.from_s
    if span < 0 and path.closed:
        span += path.length
    start = finding.from_s - waiver.from_s
    if path.closed:
        start = (start + 0.5) % path.length - 0.5
    length = (finding.to_s or 0.0) - finding.from_s if finding.rule == "seam-open" else finding.length_mm
    return -0.5 <= start <= span + 0.5, start >= -0.5 and start + length <= span + 0.5


def _places(finding: Finding, joint: JointResult) -> np.ndarray:
    """(n, 3) mm: all stations of a finding, or its place where it lies on none."""
    if finding.contour is None or finding.from_s is None or finding.length_mm is None or finding.to_s is None:
        return np.zeros((0, 3)) if finding.at is None else np.array([finding.at])
    path = next(p for p in joint.survey.paths if p.id == finding.contour)
    if finding.from_s <= finding.to_s:
        on = (path.s >= finding.from_s) & (path.s <= finding.to_s)
    else:
        on = (path.s >= finding.from_s) | (path.s <= finding.to_s)
    return np.vstack([path.points[on], [finding.at]]) if finding.at is not None else path.points[on]
