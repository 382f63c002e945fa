"""Limits in the worst case of a tolerance: inside, at risk, outside."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from scipy.special import ndtr

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, Check
from seamcheck.catalogue.words import value_text
from seamcheck.judge.findings import AT_RISK
from seamcheck.judge.joint_judge import DraftFinding
from seamcheck.settings.settings import Settings


def tolerance_of(settings: Settings, check: Check) -> float | None:
    """How far (+-) what a check judges may differ from the drawing; None where nothing is set."""
    tolerances = settings.tolerances
    found = tolerances.get(check.judged, tolerances.get(check.column))
    return None if found is None else float(found)


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
        return np.asarray(ndtr(-margin * 3.0 * cpk / tolerance))
    return np.clip((tolerance - margin) / (2.0 * tolerance), 0.0, 1.0)


def percent_of_parts(share: float) -> str:
    """A share of parts for people: percent, or parts in a million where it is small."""
    if share >= 0.01:
        return f"{100.0 * share:.0f} %"
    return f"{1e6 * share:.0f} in a million" if share >= 1e-6 else "fewer than one in a million"


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
    title = QUANTITIES[check.column].title
    name, key = title[0].upper() + title[1:], check.column
    says = (
        f"{name} is {value_text(found.value or 0.0, key)} as drawn and holds the limit of "
        f"{value_text(found.limit, key)}; with the tolerance of ±{value_text(found.tolerance, key)} the "
        f"worst case is {value_text(found.worst_case, key)}, which does not."
    )
    share = float(share_outside(found.margin or 0.0, found.tolerance, settings.tolerances.get("cpk")))
    spread = "evenly" if "cpk" not in settings.tolerances else f"normally with Cpk {settings.tolerances['cpk']:g}"
    says += f" Of parts spread {spread} over it {percent_of_parts(share)} lie outside."
    severity = ATTENTION if found.severity == MUST_FIX else found.severity
    found = replace(found, message=says, severity=severity, state=AT_RISK)
    return replace(draft, finding=found, side=f"{draft.side}.risk")
