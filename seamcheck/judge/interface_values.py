"""Values of the whole interface against bounds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any

import numpy as np

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import SLACK, Check, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.words import amount, fill, value_text
from seamcheck.judge.bounds import JudgedSeam
from seamcheck.judge.findings import Finding
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, point
from seamcheck.judge.tolerance import at_risk, tolerance_of, with_tolerance

_SAME_PLACE = 3.0  # mm: a place of the whole interface this near to a section's finding is the same place


def interface_value(judging: JointJudge, rule: Rule, check: Check) -> Iterator[DraftFinding]:
    """One value of the whole interface against its bounds; where it has several places, each of them."""
    entry = judging.joint.survey.interface.get(check.column, {})
    for place in entry.get("places") or (entry,):
        yield from _value_at(judging, rule, check, place)


def _value_at(judging: JointJudge, rule: Rule, check: Check, entry: Mapping[str, Any]) -> Iterator[DraftFinding]:
    value, at = entry.get("value"), entry.get("at")
    if value is None and entry.get("why") in check.failing_reasons:
        bound = check.upper or check.lower
        assert bound is not None
        finding = judging.finding(rule, check.failing_reasons[entry["why"]], fill(bound.remedy, {}))
        yield DraftFinding(replace(finding, column=check.column), f"{check.column}.none", None)
    for side, bound in (("low", check.lower), ("high", check.upper)):
        if bound is None or value is None:
            continue
        unit = QUANTITIES[check.column].unit
        slack, tolerance = SLACK.get(unit, 0.001), tolerance_of(judging.settings, check) or 0.0
        steps = [(judging.seam.constant(rule, text), severity) for text, severity in judging.seam.steps(rule, bound)]
        margins = [value - limit if side == "low" else limit - value for limit, _ in steps]
        is_broken = min(margins) < -slack
        passed = [i for i, room in enumerate(margins) if room - (0.0 if is_broken else tolerance) < -slack]
        if not passed:
            continue
        (limit, severity), margin = steps[passed[0]], margins[passed[0]]
        words = {
            "value": value_text(value, check.column),
            "limit": value_text(limit, check.column),
            "size": value_text(abs(value), check.column),
            "size_limit": value_text(abs(limit), check.column),
            "collapse": value_text(judging.settings.collapse, "gap"),
            "why": _sentence(entry.get("why")),
            "percent": f"{100.0 * value:.3g} %",
            "by": amount(abs(margin - (0.0 if is_broken else tolerance)), unit),
        }
        finding = replace(
            judging.finding(rule, fill(bound.sentence(value, slack), words), fill(bound.remedy, words)),
            severity=severity, column=check.column, value=float(value), limit=limit, margin=float(margin),
            at=None if at is None else point(np.asarray(at, dtype=float)),
            faces=tuple((f["part"], f["face"]) for f in entry.get("faces", ())),
        )  # fmt: skip
        place = None if at is None else np.asarray(at, dtype=float)
        settle = with_tolerance if is_broken else at_risk
        yield settle(DraftFinding(finding, f"{check.column}.{side}", place), judging.settings, check, side)


def interface_travel(judging: JointJudge, drafts: Sequence[DraftFinding]) -> Iterator[DraftFinding]:
    """The free travel over the whole interface, with its places."""
    rule = RULES["sink-travel"]
    check, bound = rule.checks[0], rule.checks[0].lower
    assert bound is not None
    entry = judging.joint.survey.interface.get("free_travel")
    if not entry:
        return
    limit = judging.seam.constant(rule, bound.formula)
    known = [d.finding for d in drafts if "sink-travel" in (d.finding.rule, *d.finding.also)]
    for place in (entry, *entry.get("places", ())):
        value, at = place.get("value"), place.get("at")
        tolerance = tolerance_of(judging.settings, check) if place is entry else None
        is_broken = value is not None and value < limit - SLACK["mm"]
        is_risky = value is not None and value - (tolerance or 0.0) < limit - SLACK["mm"]
        if value is None or not (is_broken or is_risky):
            continue
        if any(_is_same_place(f, value, at, judging.seam) for f in known):
            continue
        words = {
            "value": value_text(value, check.column),
            "size": value_text(abs(value), check.column),
            "limit": value_text(limit, check.column),
            "collapse": value_text(judging.settings.collapse, "gap"),
            "by": amount(limit - value + (0.0 if is_broken else tolerance or 0.0), "mm"),
        }
        says = " ".join(filter(None, [fill(bound.sentence(value, SLACK["mm"]), words), _sentence(place.get("why"))]))
        finding = replace(
            judging.finding(rule, says, fill(bound.remedy, words)),
            column=check.column, value=float(value), limit=limit, margin=float(value) - limit,
            at=None if at is None else point(np.asarray(at, dtype=float)),
            faces=tuple((f["part"], f["face"]) for f in place.get("faces", ())),
        )  # fmt: skip
        draft = DraftFinding(finding, "interface", None if at is None else np.asarray(at, dtype=float))
        settle = with_tolerance if is_broken else at_risk
        draft = settle(draft, judging.settings, check, "low")
        known.append(draft.finding)
        yield draft


def with_places(judging: JointJudge, drafts: Sequence[DraftFinding]) -> list[DraftFinding]:
    """Stretches whose quantity has places of the whole interface: what is said and shown of those that lie on it."""
    result = []
    for draft in drafts:
        found = draft.finding
        places = judging.joint.survey.interface.get(found.column, {}).get("places", ())
        if found.contour is not None and found.column != "free_travel":
            here = [p for p in places if _is_on(found, p["at"], judging.seam)]
            said = dict.fromkeys(_sentence(p.get("why")) for p in here)
            faces = [(f["part"], f["face"]) for p in here for f in p.get("faces", ())]
            message = " ".join(filter(None, (found.message, *said)))
            found = replace(found, message=message, faces=tuple(dict.fromkeys((*found.faces, *faces))))
        result.append(replace(draft, finding=found))
    return result


def _is_on(finding: Finding, at: Sequence[float], seam: JudgedSeam) -> bool:
    view = next(v for v in seam.paths if v.path.id == finding.contour)
    on = view.within(finding.from_s or 0.0, finding.length_mm or 0.0)
    return bool(np.any(np.linalg.norm(view.path.points[on] - np.asarray(at, dtype=float), axis=1) < 1e-6))


def _is_same_place(finding: Finding, value: float, at: Sequence[float] | None, seam: JudgedSeam) -> bool:
    if finding.value is None or at is None or value < finding.value - 0.01:
        return False
    if finding.contour is None:
        return finding.at is not None and float(np.linalg.norm(np.subtract(finding.at, at))) < _SAME_PLACE
    view = next(v for v in seam.paths if v.path.id == finding.contour)
    on = view.within(finding.from_s or 0.0, finding.length_mm or 0.0)
    return bool(np.any(np.linalg.norm(view.path.points[on] - np.asarray(at, dtype=float), axis=1) < _SAME_PLACE))


def _sentence(why: object) -> str:
    """What the survey says about a place, if it is a sentence and no mere reason code."""
    return why if isinstance(why, str) and " " in why else ""
