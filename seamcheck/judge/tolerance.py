"""Limits in the worst case of a tolerance: inside, at risk, outside."""

from __future__ import annotations

from msgspec.structs import replace

from seamcheck.catalogue.messages import AT_RISK as AT_RISK_WORDS
from seamcheck.catalogue.messages import amount_of, message
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, Check
from seamcheck.judge.findings import AT_RISK
from seamcheck.judge.joint_judge import DraftFinding
from seamcheck.settings.settings import Settings


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
    title, column = QUANTITIES[check.column].title, check.column
    says = message(
        AT_RISK_WORDS,
        {
            "name": title[0].upper() + title[1:],
            "value": amount_of(found.value or 0.0, column),
            "limit": amount_of(found.limit, column),
            "tolerance": amount_of(found.tolerance, column),
            "worst_case": amount_of(found.worst_case, column),
        },
    )
    severity = ATTENTION if found.severity == MUST_FIX else found.severity
    found = replace(found, message=says.text, messages=(says,), severity=severity, state=AT_RISK)
    return replace(draft, finding=found, side=f"{draft.side}.risk")
