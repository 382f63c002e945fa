"""Columns against bounds: stretches that break a limit, and stretches that were not measured."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.formula import evaluate
from seamcheck.catalogue.message import Amount
from seamcheck.catalogue.messages import BELOW_ZERO, GRAVE, amount_of, bound_key, change_of, message
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import MUST_FIX, Bound, Check, Rule, slack_of
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.bounds import JudgedPath, unmeasured_columns
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, saying
from seamcheck.judge.tolerance import at_risk, tolerance_of, with_tolerance
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import Stretch

_TIE = 5e-4  # margins nearer than this to the worst count as equally bad; the middle one is shown


def broken_stretches(judging: JointJudge, rule: Rule, check: Check, view: JudgedPath) -> Iterator[DraftFinding]:
    """Stretches of one path on which one check of a rule is broken, or at risk within its tolerance."""
    values, column = view.values(check)
    for side, bound in (("low", check.lower), ("high", check.upper)):
        if bound is None:
            continue
        limit = view.bound(rule, check, bound)
        margin = values - limit if side == "low" else limit - values
        slack = slack_of(check.column, QUANTITIES[check.column].unit)
        with np.errstate(invalid="ignore"):
            broken = margin < -slack
        if rule.needs_cover:
            broken &= ~view.uncovered
        for stretch in view.stretches(broken):
            worst = _worst(margin, stretch, view.path)
            numbers = (float(values[worst]), float(limit[worst]), float(margin[worst]))
            draft = _numbered(judging, rule, check, bound, view, stretch, worst, numbers, column[worst], side)
            yield with_tolerance(draft, judging.settings, check, side)
        yield from _at_risk(judging, rule, check, bound, view, values, limit, margin, column, side, broken)
    for reason in check.failing_reasons:
        mark = (view.reason(check.column) == reason) & np.isnan(values) & ~view.uncovered
        for stretch in view.stretches(mark):
            middle = int(stretch.stations[len(stretch.stations) // 2])
            key = bound_key(rule, check, reason)
            draft = judging.on_stretch(rule, view, stretch, middle, key, {}, f"{check.column}.{reason}")
            yield replace(draft, finding=replace(draft.finding, quantity=check.judged, column=check.column))


def _at_risk(
    judging: JointJudge,
    rule: Rule,
    check: Check,
    bound: Bound,
    view: JudgedPath,
    values: np.ndarray,
    limit: np.ndarray,
    margin: np.ndarray,
    column: np.ndarray,
    side: str,
    broken: np.ndarray,
) -> Iterator[DraftFinding]:
    """Stretches inside the limit as drawn that leave it in the worst case of their tolerance."""
    tolerance = tolerance_of(judging.settings, check)
    if tolerance is None:
        return
    slack = slack_of(check.column, QUANTITIES[check.column].unit)
    with np.errstate(invalid="ignore"):
        risky = (margin - tolerance < -slack) & ~broken
    if rule.needs_cover:
        risky &= ~view.uncovered
    for stretch in view.stretches(risky):
        worst = _worst(margin, stretch, view.path)
        nominal = float(values[worst])
        off = nominal - tolerance if side == "low" else nominal + tolerance
        numbers = (off, float(limit[worst]), float(margin[worst]) - tolerance)
        draft = _numbered(judging, rule, check, bound, view, stretch, worst, numbers, column[worst], side)
        found = replace(draft.finding, value=nominal, margin=float(margin[worst]))
        yield at_risk(replace(draft, finding=found), judging.settings, check, side)


def _numbered(
    judging: JointJudge,
    rule: Rule,
    check: Check,
    bound: Bound,
    view: JudgedPath,
    stretch: Stretch,
    worst: int,
    numbers: tuple[float, float, float],
    column: str,
    side: str,
) -> DraftFinding:
    value, limit, margin = numbers
    key = check.column
    names = view.numbers_at(worst, rule) | {"value": value, "limit": limit}
    by = float(evaluate(bound.change, names))
    args: dict[str, Amount | str] = {
        "value": amount_of(value, key),
        "limit": amount_of(limit, key),
        "collapse": amount_of(judging.settings.collapse, "gap"),
        "size": amount_of(abs(value), key),
        "size_limit": amount_of(abs(limit), key),
        "percent": Amount(100.0 * value, "%", 0),
    }
    if "median" in names:
        args["median"] = amount_of(names["median"], key)
    if np.isfinite(by) and by > 0:
        args["by"] = change_of(by, bound.change_unit or QUANTITIES[key].unit)
    words = bound_key(rule, check, side)
    if bound.is_below_zero(value, slack_of(key, QUANTITIES[key].unit)):
        words = f"{words}.{BELOW_ZERO}"
    draft = judging.on_stretch(rule, view, stretch, worst, words, args, f"{check.column}.{side}")
    found = replace(
        draft.finding, quantity=check.judged, column=column, value=value, limit=limit, margin=margin,
        unit=QUANTITIES[key].unit,
    )  # fmt: skip
    if bound.grave:
        grave = float(evaluate(bound.grave, names))
        if (value > grave) if side == "high" else (value < grave):
            grave_key = f"{bound_key(rule, check, side)}.{GRAVE}"
            found = saying(found, message(grave_key, {"grave": amount_of(grave, key)}))
    return replace(draft, finding=found)


def holes(judging: JointJudge) -> Iterator[DraftFinding]:
    """Stretches without plastic of the cover over the rib."""
    rule = RULES["cover-hole"]
    for view in judging.seam.paths:
        for stretch in view.stretches(view.uncovered):
            middle = int(stretch.stations[len(stretch.stations) // 2])
            reason = view.uncovered_reason(middle)
            why = {"hole": "a hole", "no-cover": "the rib runs on beyond the cover"}[reason]
            yield judging.on_stretch(rule, view, stretch, middle, rule.key, {"reason": why}, "hole")


def not_measured(judging: JointJudge, rules: Sequence[Rule], drawn_welded: bool) -> Iterator[DraftFinding]:
    """Stretches where a column of a must-fix rule has no value for a reason that is not accepted."""
    rule = RULES["not-measured"]
    must = [
        r
        for r in rules
        if judging.settings.severity(r.key) == MUST_FIX and not (r.key == "contact-gap" and drawn_welded)
    ]
    for view in judging.seam.paths:
        waiting = unmeasured_columns(must, view)
        anything = np.any(list(waiting.values()), axis=0) if waiting else np.zeros(len(view.path.s), bool)
        for stretch in view.stretches(anything):
            middle = int(stretch.stations[len(stretch.stations) // 2])
            missing = [key for key, mark in waiting.items() if mark[stretch.stations].any()]
            parts = []
            for key in missing:
                at = stretch.stations[waiting[key][stretch.stations]]
                reasons = dict.fromkeys(view.reason(key)[at])
                why = "; ".join(_reason_text(r) for r in reasons)
                parts.append(f"{QUANTITIES[key].title} ({why})")
            args = {"what": "; ".join(parts)}
            draft = judging.on_stretch(rule, view, stretch, middle, rule.key, args, missing[0])
            yield replace(
                draft,
                finding=replace(
                    draft.finding,
                    quantity=missing[0],
                    column=missing[0],
                    unit=QUANTITIES[missing[0]].unit,
                ),
            )


def _worst(margin: np.ndarray, stretch: Stretch, path: PathSurvey) -> int:
    """The station with the smallest margin; of equally bad ones the one nearest to the stretch's middle."""
    values = margin[stretch.stations]
    equal = stretch.stations[values <= np.nanmin(values) + _TIE]
    from_start = (path.s[equal] - stretch.from_s) % path.length if path.closed else path.s[equal] - stretch.from_s
    return int(equal[np.argmin(np.abs(from_start - stretch.length / 2))])


def _reason_text(reason: str) -> str:
    return REASONS.get(reason, "no reason given").rstrip(".").lower() if reason else "no reason given"
