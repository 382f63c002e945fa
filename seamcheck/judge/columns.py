"""Columns against bounds: stretches that break a limit, and stretches that were not measured."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.formula import evaluate
from seamcheck.catalogue.message import Amount, Message
from seamcheck.catalogue.messages import BELOW_ZERO, GRAVE, PARTLY, amount_of, apart, bound_key, change_of, message
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import MUST_FIX, Bound, Check, Rule, slack_of, zero_of
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import Value, say
from seamcheck.judge.bounds import JudgedPath, Step, unmeasured_columns
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, saying
from seamcheck.judge.tolerance import at_risk, tolerance_of, with_tolerance
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import MERGE, Stretch, cell_lengths

_MERGE_OF = {"clamp-land": 10.0, "clamp-tilt": 10.0}
"""mm: a land no longer than this between two faults carries no clamp: they are one, as the letters of an engraving."""

_TIE = 5e-4  # margins within this of the worst count as equally bad; the middle one is shown


def broken_stretches(judging: JointJudge, rule: Rule, check: Check, view: JudgedPath) -> Iterator[DraftFinding]:
    """Stretches of one path on which one check of a rule is broken, or at risk within its tolerance."""
    values, column = view.values(check)
    tolerance, merge = tolerance_of(judging.settings, check), _MERGE_OF.get(rule.key, MERGE)
    for side, bound in (("low", check.lower), ("high", check.upper)):
        if bound is None:
            continue
        case = _Case(judging, rule, check, bound, side, view, values, column)
        broken = case.beyond(0.0)
        for stretch in view.stretches(broken, merge):
            yield with_tolerance(case.draft(stretch, 0.0), judging.settings, check, side)
        if tolerance is not None:
            for stretch in view.stretches(case.beyond(tolerance) & ~broken, merge):
                yield at_risk(case.draft(stretch, tolerance), judging.settings, check, side)
    for reason in check.failing_reasons:
        mark = (view.reason(check.column) == reason) & np.isnan(values) & ~view.uncovered
        for stretch in view.stretches(mark):
            middle = int(stretch.stations[len(stretch.stations) // 2])
            key = bound_key(rule, check, reason)
            draft = judging.on_stretch(rule, view, stretch, middle, key, {}, f"{check.column}.{reason}")
            yield replace(draft, finding=replace(draft.finding, quantity=check.judged, column=check.column))


class _Case(Struct, frozen=True, eq=False):
    """One side of one check on one path: (n,) values, and the column that each comes from."""

    judging: JointJudge
    rule: Rule
    check: Check
    bound: Bound
    side: str
    view: JudgedPath
    values: np.ndarray
    column: np.ndarray

    def beyond(self, tolerance: float) -> np.ndarray:
        """(n,) bool: beyond one of the bounds, or close enough for the tolerance to reach it."""
        mark = np.zeros(len(self.values), dtype=bool)
        for step in self.view.steps(self.rule, self.check, self.bound):
            mark |= self._is_beyond(step, tolerance)
        for column in self.bound.stands_in_for:
            mark &= ~np.isfinite(self.view.column(column))
        mark = mark & ~self.view.uncovered if self.rule.needs_cover else mark
        return self.view.bridged(mark, np.isnan(self.values) | self.view.uncovered)

    def _is_beyond(self, step: Step, tolerance: float) -> np.ndarray:
        slack = slack_of(self.check.column, QUANTITIES[self.check.column].unit)
        return self.view.beyond(step.margin(self.values, self.side) - tolerance, slack)

    def draft(self, stretch: Stretch, tolerance: float) -> DraftFinding:
        """The finding of a stretch beyond a bound: against the most severe bound, at the place furthest beyond it."""
        steps = self.view.steps(self.rule, self.check, self.bound)
        marks = [self._is_beyond(step, tolerance)[stretch.stations] for step in steps]
        gravest = next(i for i, mark in enumerate(marks) if mark.any())
        step, mark = steps[gravest], marks[gravest]
        margin = step.margin(self.values, self.side)
        worst = _worst(margin, stretch, self.view.path)
        value = float(self.values[worst])
        off = value - tolerance if self.side == "low" else value + tolerance
        draft = self._told(stretch, worst, off, float(step.limit[worst]), float(steps[-1].limit[worst]))
        severity: Any = step.severity
        found = replace(draft.finding, severity=severity, value=value, margin=float(margin[worst]))
        if len(steps) > 1 and gravest == 0 and steps[1].severity != step.severity and not mark.all():
            found = saying(found, self._partly(steps[1], stretch, mark, worst))
        return replace(draft, finding=found)

    def _partly(self, milder: Step, stretch: Stretch, mark: np.ndarray, worst: int) -> Message:
        """How much of a stretch lies beyond the most severe bound; the rest is beyond the milder one only."""
        path = self.view.path
        length = cell_lengths(path.s, path.length, path.closed)[stretch.stations][mark].sum()
        limit = amount_of(abs(float(milder.limit[worst])), self.check.column)
        return message(PARTLY, {"length": amount_of(float(length), "gap"), "limit": limit})

    def _told(self, stretch: Stretch, station: int, value: float, limit: float, sound: float) -> DraftFinding:
        """The finding with its sentences, for a value at a station; ``sound``: limit from which on nothing is said."""
        rule, bound, key = self.rule, self.bound, self.check.column
        names = self.view.numbers_at(station, rule) | {"value": value, "limit": sound}
        by = _amount(bound.change, names)
        is_below = bound.is_below_zero(value, zero_of(key, QUANTITIES[key].unit))
        told_limit = amount_of(limit, key)
        args: dict[str, Amount | str] = {
            "value": apart(amount_of(max(value, 0.0) if bound.below_zero and not is_below else value, key), told_limit),
            "limit": told_limit,
            "collapse": amount_of(self.judging.settings.collapse, "gap"),
            "size": amount_of(abs(value), key),
            "size_limit": amount_of(abs(limit), key),
            "percent": Amount(100.0 * value, "%", 0),
        }
        if "median" in names:
            args["median"] = amount_of(names["median"], key)
        if np.isfinite(by) and by > 0:
            args["by"] = change_of(by, bound.change_unit or QUANTITIES[key].unit)
        for name, formula in bound.lengths:
            if np.isfinite(length := _amount(formula, names)) and length > 0:
                args[name] = change_of(length, "mm")
        side = bound_key(rule, self.check, self.side)
        words = f"{side}.{BELOW_ZERO}" if is_below else side
        draft = self.judging.on_stretch(rule, self.view, stretch, station, words, args, f"{key}.{self.side}")
        found = replace(
            draft.finding, quantity=self.check.judged, column=str(self.column[station]), limit=limit,
            unit=QUANTITIES[key].unit,
        )  # fmt: skip
        if bound.grave:
            grave = float(evaluate(bound.grave, names))
            if (value > grave) if self.side == "high" else (value < grave):
                found = saying(found, message(f"{side}.{GRAVE}", {"grave": amount_of(grave, key)}))
        return replace(draft, finding=found)


def _amount(formula: str, names: dict[str, float]) -> float:
    """A formula's value; NaN where it divides by zero."""
    try:
        return float(evaluate(formula, names))
    except ZeroDivisionError:
        return float("nan")


def holes(judging: JointJudge) -> Iterator[DraftFinding]:
    """Stretches without cover over the rib."""
    rule = RULES["cover-hole"]
    for view in judging.seam.paths:
        for stretch in view.stretches(view.uncovered):
            middle = int(stretch.stations[len(stretch.stations) // 2])
            reason = view.uncovered_reason(middle)
            length = {} if stretch.is_whole else {"length": Amount(stretch.length, "mm", 1)}
            args: dict[str, Value] = {"reason": {"hole": "cover-hole", "no-cover": "cover-ends"}[reason], **length}
            yield judging.on_stretch(rule, view, stretch, middle, rule.key, args, "hole")


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
                parts.append(say("part.unmeasured", quantity=key, reasons=",".join(reasons)))
            args: dict[str, Value] = {"what": parts}
            draft = judging.on_stretch(rule, view, stretch, middle, rule.key, args, missing[0])
            yield replace(
                draft,
                finding=replace(
                    draft.finding, quantity=missing[0], column=missing[0], unit=QUANTITIES[missing[0]].unit
                ),
            )


def _worst(margin: np.ndarray, stretch: Stretch, path: PathSurvey) -> int:
    """The station with the smallest margin; of equally bad ones the one nearest to the stretch's middle."""
    values = margin[stretch.stations]
    equal = stretch.stations[values <= np.nanmin(values) + _TIE]
    from_start = (path.s[equal] - stretch.from_s) % path.length if path.closed else path.s[equal] - stretch.from_s
    return int(equal[np.argmin(np.abs(from_start - stretch.length / 2))])
