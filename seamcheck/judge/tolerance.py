"""Limits in the worst case of a tolerance: inside, at risk, outside."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, Literal

import msgspec
import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.field_types import Real
from seamcheck.catalogue.keys import QuantityKey, RuleKey
from seamcheck.catalogue.message import Sentence
from seamcheck.catalogue.messages import AT_RISK as AT_RISK_WORDS
from seamcheck.catalogue.messages import amount_of, message
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, Bound, Check, Rule, slack_of
from seamcheck.catalogue.say import say
from seamcheck.judge.bounds import JudgedSeam, in_force
from seamcheck.judge.findings import AT_RISK, INSIDE, OUTSIDE, JointResult
from seamcheck.judge.joint_judge import DraftFinding
from seamcheck.settings.settings import Settings


class ToleranceState(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """State of one limit of a quantity with a tolerance at its worst place: a record of the review document."""

    rule: RuleKey
    quantity: QuantityKey
    side: Literal["low", "high"]
    severity: str
    state: Literal["inside", "at risk", "outside"]
    value: Real | None
    tolerance: Real | None
    worst_case: Real | None
    limit: Real | None
    outside_ppm: Real | None
    unit: str
    origin: Literal["default", "file", "option"] = msgspec.field(name="from")


def tolerance_states(joint: JointResult, seam: JudgedSeam) -> Iterator[ToleranceState]:
    """For every limit of a quantity with a tolerance: inside, at risk or outside, worst case, parts outside."""
    settings = seam.settings
    origin: Any = settings.origin("tolerance")
    cpk = settings.tolerances.get("cpk")
    for rule in in_force(settings):
        if not seam.judges(rule):
            continue
        for check in rule.checks:
            tolerance = tolerance_of(settings, check)
            if tolerance is None:
                continue
            for side, bound in _sides(check):
                for formula, severity in seam.steps(rule, bound):
                    found = _worst_against(joint, seam, rule, check, bound, formula, side)
                    if found is None:
                        continue
                    value, limit, margin = found
                    slack = slack_of(check.column, QUANTITIES[check.column].unit)
                    yield ToleranceState(
                        rule=rule.key, quantity=check.column, side=side, severity=severity,
                        state=state_of(margin, tolerance, slack), value=value, tolerance=tolerance,
                        worst_case=value + (-tolerance if side == "low" else tolerance), limit=limit,
                        outside_ppm=1e6 * float(share_outside(margin, tolerance, cpk)),
                        unit=QUANTITIES[check.column].unit, origin=origin,
                    )  # fmt: skip


def _worst_against(
    joint: JointResult, seam: JudgedSeam, rule: Rule, check: Check, bound: Bound, formula: str, side: str
) -> tuple[float, float, float] | None:
    """Value, limit and margin where one bound is nearest to being broken; None where nothing was measured."""
    pairs = [(view.judged_values(check, bound), view.limit(rule, check, formula)) for view in seam.paths]
    entry = joint.survey.interface.get(check.column, {})
    if entry.get("value") is not None and (check.column == "free_travel" or not pairs[0][0].size):
        pairs.append((np.array([entry["value"]]), np.array([seam.constant(rule, formula)])))
    values = np.concatenate([np.ravel(a) for a, _ in pairs])
    limits = np.concatenate([np.ravel(b) for _, b in pairs])
    margin = values - limits if side == "low" else limits - values
    if not np.isfinite(margin).any():
        return None
    worst = int(np.nanargmin(margin))
    return float(values[worst]), float(limits[worst]), float(margin[worst])


def share_outside(margin: np.ndarray | float, tolerance: float, cpk: float | None) -> np.ndarray:
    """Share 0..1 of parts that lie beyond a limit which the drawing holds by ``margin``.

    Parameters
    ----------
    margin : in the unit of ``tolerance``; negative where the drawing itself is outside
    tolerance : +-
    cpk : capability of a centred process, then normal with tolerance / (3 cpk) as standard deviation; None: even
        between the ends (JCGM 101:2008, 6.4.2)
    """
    margin = np.asarray(margin, dtype=float)
    if not tolerance > 0.0:
        return np.where(margin < 0.0, 1.0, 0.0)
    if cpk is not None:
        from scipy.special import ndtr  # not before a spread is judged: the command line loads no scipy

        return np.asarray(ndtr(-margin * 3.0 * cpk / tolerance))
    return np.asarray(np.clip((tolerance - margin) / (2.0 * tolerance), 0.0, 1.0))


def percent_of_parts(share: float) -> Sentence:
    """A share of parts for people: percent, or parts in a million where it is small."""
    if share >= 0.01:
        return say("share.percent", share=100.0 * share)
    return say("share.million", count=1e6 * share) if share >= 1e-6 else say("share.less")


def state_of(margin: float, tolerance: float, slack: float) -> Literal["inside", "at risk", "outside"]:
    """State of a value that lies ``margin`` inside its limit, known to ``slack``, and may differ by +-tolerance."""
    return OUTSIDE if margin < -slack else AT_RISK if margin - tolerance < -slack else INSIDE


def _sides(check: Check) -> Iterator[tuple[Literal["low", "high"], Bound]]:
    if check.lower is not None:
        yield "low", check.lower
    if check.upper is not None:
        yield "high", check.upper


def tolerance_of(settings: Settings, check: Check) -> float | None:
    """How far (+-) what a check judges may differ from the drawing; None where nothing is set."""
    tolerances = settings.tolerances
    found = tolerances.get(check.judged, tolerances.get(check.column))
    return None if found is None else float(found)


def with_tolerance(draft: DraftFinding, settings: Settings, check: Check, side: str) -> DraftFinding:
    """The draft with tolerance and worst case, where a tolerance is set."""
    tolerance, value = tolerance_of(settings, check), draft.finding.value
    if tolerance is None or value is None:
        return draft
    worst = value - tolerance if side == "low" else value + tolerance
    return replace(draft, finding=replace(draft.finding, tolerance=tolerance, worst_case=worst))


def at_risk(draft: DraftFinding, settings: Settings, check: Check, side: str) -> DraftFinding:
    """A draft of a value that holds its limit as drawn, but not in the worst case: attention at most."""
    draft = with_tolerance(draft, settings, check, side)
    found = draft.finding
    assert found.tolerance is not None
    assert found.worst_case is not None
    assert found.limit is not None
    column, cpk = check.column, settings.tolerances.get("cpk")
    says = message(
        AT_RISK_WORDS,
        {
            "name": column,
            "value": amount_of(found.value or 0.0, column),
            "limit": amount_of(found.limit, column),
            "tolerance": amount_of(found.tolerance, column),
            "worst_case": amount_of(found.worst_case, column),
            "spread": say("spread.even") if cpk is None else say("spread.normal", cpk=cpk),
            "share": percent_of_parts(float(share_outside(found.margin or 0.0, found.tolerance, cpk))),
        },
    )
    severity = ATTENTION if found.severity == MUST_FIX else found.severity
    found = replace(found, message=says.text, messages=(says,), severity=severity, state=AT_RISK)
    return replace(draft, finding=found, side=f"{draft.side}.risk")
