"""Values of the whole interface against bounds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, cast

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.message import Amount, Message, message_of
from seamcheck.catalogue.messages import BELOW_ZERO, LOW, amount_of, apart, bound_key, change_of, significant
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import SLACK, Check, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.bounds import JudgedSeam
from seamcheck.judge.findings import Finding, Place
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, faces_of, point, saying
from seamcheck.judge.tolerance import at_risk, tolerance_of, with_tolerance

SAME_PLACE = 3.0  # mm: a place of the whole interface this near to a section's finding is the same place


def interface_value(judging: JointJudge, rule: Rule, check: Check) -> Iterator[DraftFinding]:
    """One value of the whole interface against its bounds; where it has several places, each of them."""
    entry = judging.joint.survey.interface.get(check.column, {})
    for place in entry.get("places") or (entry,):
        yield from _value_at(judging, rule, check, place)


def _value_at(judging: JointJudge, rule: Rule, check: Check, entry: Mapping[str, Any]) -> Iterator[DraftFinding]:
    value, at = entry.get("value"), entry.get("at")
    if value is None and entry.get("why") in check.failing_reasons:
        finding = judging.finding(rule, bound_key(rule, check, entry["why"]), {})
        found = replace(finding, quantity=check.judged, column=check.column, unit=QUANTITIES[check.column].unit)
        where = None if at is None else np.asarray(at, dtype=float)
        found = found if where is None else replace(found, at=point(where))
        yield DraftFinding(found, f"{check.column}.none", where)
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
        args: dict[str, Amount | str] = {
            "value": apart(amount_of(value, check.column), amount_of(limit, check.column)),
            "limit": amount_of(limit, check.column),
            "size": apart(amount_of(abs(value), check.column), amount_of(abs(limit), check.column)),
            "size_limit": amount_of(abs(limit), check.column),
            "collapse": amount_of(judging.settings.collapse, "gap"),
            "why": _sentence(entry.get("why")),
            "percent": significant(100.0 * value, "%"),
            "by": change_of(abs(margins[-1] - (0.0 if is_broken else tolerance)), unit),
        }
        if limit > 0:
            args["most"] = amount_of(limit, check.column)
        key, grade = bound_key(rule, check, side), cast(Any, severity)
        if bound.is_below_zero(value, slack):
            key = f"{key}.{BELOW_ZERO}"
        finding = replace(
            judging.finding(rule, key, args),
            severity=grade, column=check.column, value=float(value), limit=limit, margin=float(margin),
            at=None if at is None else point(np.asarray(at, dtype=float)),
            faces=faces_of(entry),
        )  # fmt: skip
        known = entry.get("on_rib", at)
        place = None if known is None else np.asarray(known, dtype=float)
        settle = with_tolerance if is_broken else at_risk
        finding = _stretched(finding, entry)
        yield settle(DraftFinding(finding, f"{check.column}.{side}", place), judging.settings, check, side)


def _stretched(finding: Finding, entry: Mapping[str, Any]) -> Finding:
    """The finding on the first stretch of the seam that its value names, the others as further places."""
    if not (runs := entry.get("stretches")):
        return finding
    first, *rest = runs
    places = tuple(
        Place(
            contour=run["contour"], at=point(np.asarray(run["at"])), station=run["station"], from_s=run["from_s"],
            to_s=run["to_s"], length_mm=run["length"], value=run["length"],
        )
        for run in rest
    )  # fmt: skip
    return replace(
        finding, contour=first["contour"], station=first["station"], from_s=first["from_s"], to_s=first["to_s"],
        length_mm=first["length"], places=places,
    )  # fmt: skip


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
        args: dict[str, Amount | str] = {
            "value": amount_of(value, check.column),
            "size": amount_of(abs(value), check.column),
            "limit": amount_of(limit, check.column),
            "collapse": amount_of(judging.settings.collapse, "gap"),
            "by": change_of(limit - value + (0.0 if is_broken else tolerance or 0.0), "mm"),
        }
        key = bound_key(rule, check, LOW)
        if bound.is_below_zero(value, SLACK["mm"]):
            key = f"{key}.{BELOW_ZERO}"
        finding = replace(
            saying(judging.finding(rule, key, args), *_said(place)),
            column=check.column, value=float(value), limit=limit, margin=float(value) - limit,
            at=None if at is None else point(np.asarray(at, dtype=float)),
            faces=faces_of(place),
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
        places = judging.joint.survey.interface.get(found.column or "", {}).get("places", ())
        if found.contour is not None and found.column != "free_travel":
            here = [p for p in places if _is_on(found, p["at"], judging.seam)]
            faces = [face for p in here for face in faces_of(p)]
            found = saying(found, *(said for p in here for said in _said(p)))
            found = replace(found, faces=tuple(dict.fromkeys((*found.faces, *faces))))
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
        return finding.at is not None and float(np.linalg.norm(np.subtract(finding.at, at))) < SAME_PLACE
    view = next(v for v in seam.paths if v.path.id == finding.contour)
    on = view.within(finding.from_s or 0.0, finding.length_mm or 0.0)
    return bool(np.any(np.linalg.norm(view.path.points[on] - np.asarray(at, dtype=float), axis=1) < SAME_PLACE))


def _said(entry: Mapping[str, Any]) -> tuple[Message, ...]:
    """What the survey says about a place, as a sentence of its own."""
    why = entry.get("why")
    return (message_of(why),) if isinstance(why, str) and " " in why else ()


def _sentence(why: object) -> str:
    """What the survey says about a place; '' where there is a mere reason code."""
    return why if isinstance(why, str) and " " in why else ""
