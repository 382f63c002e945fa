"""Limits against the tolerances of the settings: worst case, and the share of parts that lie outside."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import MUST_FIX, OFF, Bound, Check, Rule, slack_of
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.bounds import JudgedSeam
from seamcheck.judge.findings import AT_RISK, INSIDE, OUTSIDE
from seamcheck.judge.tolerance import share_outside, tolerance_of

COMBINATIONS = "combinations_outside"
"""Quantity of the material side: share of tolerance combinations in which no weld comes about, %."""


@dataclass(frozen=True, slots=True)
class LimitWithTolerance:
    """One side of one limit of a quantity that has a tolerance, at its worst place.

    Attributes
    ----------
    rule, quantity, side : keys; side 'low' or 'high'
    state : inside, at risk or outside
    value, limit, tolerance, worst_case : in the quantity's unit
    share : 0..1 of parts that lie outside
    source : entry of ``[tolerance]`` that it comes from
    """

    rule: str
    quantity: str
    side: str
    state: str
    value: float
    limit: float
    tolerance: float
    worst_case: float
    share: float
    source: str


def limits_with_tolerance(seam: JudgedSeam) -> list[LimitWithTolerance]:
    """Every limit of a quantity with a tolerance, at the place of the seam where it is nearest to being broken."""
    settings = seam.settings
    found: list[LimitWithTolerance] = []
    for rule in RULES.values():
        if settings.severity(rule.key) == OFF or (seam.is_flat and not rule.for_flat_overlap):
            continue
        for check in rule.checks:
            tolerance = tolerance_of(settings, check)
            if tolerance is None:
                continue
            for side, bound in (("low", check.lower), ("high", check.upper)):
                if bound is not None:
                    found += _at_worst(seam, rule, check, bound, side, tolerance)
    return found


def _at_worst(
    seam: JudgedSeam, rule: Rule, check: Check, bound: Bound, side: str, tolerance: float
) -> Iterator[LimitWithTolerance]:
    pairs = []
    for view in seam.paths:
        values = view.values(check)[0].copy()
        for column in bound.stands_in_for:
            values[np.isfinite(view.column(column))] = np.nan
        pairs.append((values, view.steps(rule, check, bound)[0].limit))
    entry = seam.survey.interface.get(check.column, {})
    if entry.get("value") is not None and (check.column == "free_travel" or not pairs or not pairs[0][0].size):
        pairs.append((np.array([entry["value"]]), np.array([seam.constant(rule, bound.formula)])))
    if not pairs:
        return
    values = np.concatenate([np.ravel(a) for a, _ in pairs])
    limits = np.concatenate([np.ravel(b) for _, b in pairs])
    margin = values - limits if side == "low" else limits - values
    if not np.isfinite(margin).any():
        return
    worst = int(np.nanargmin(margin))
    least = float(margin[worst])
    slack = slack_of(check.column, QUANTITIES[check.column].unit)
    state = OUTSIDE if least < -slack else AT_RISK if least - tolerance < -slack else INSIDE
    sign = -1.0 if side == "low" else 1.0
    value = float(values[worst])
    share = float(share_outside(least, tolerance, seam.settings.tolerances.get("cpk")))
    source = check.judged if check.judged in seam.settings.tolerances else check.column
    yield LimitWithTolerance(
        rule.key, check.column, side, state, value, float(limits[worst]), tolerance, value + sign * tolerance,
        share, source,
    )  # fmt: skip


def share_of_parts(
    seam: JudgedSeam, limits: Sequence[LimitWithTolerance] | None = None
) -> tuple[float, tuple[str, ...]]:
    """Share 0..1 of parts in which something breaks that holds as drawn, and which rules, the most frequent first.

    Notes
    -----
    Only limits that must be held. One random number moves a quantity along the whole seam: of its limits on one side
    the nearest alone counts. Different quantities are taken as independent, and so are the material side's random
    combinations of gap, travel, rib and traps, where a collapse finds no room or closes no gap.
    """
    limits = limits_with_tolerance(seam) if limits is None else limits
    worst: dict[tuple[str, str], LimitWithTolerance] = {}
    for one in limits:
        if one.state == OUTSIDE or seam.settings.severity(one.rule) != MUST_FIX:
            continue
        key = (one.source, one.side)
        if key not in worst or one.share > worst[key].share:
            worst[key] = one
    sides: dict[str, float] = {}
    for (source, _), one in worst.items():
        sides[source] = sides.get(source, 0.0) + one.share
    good = float(np.prod([1.0 - min(share, 1.0) for share in sides.values()])) if sides else 1.0
    named = [one for one in sorted(worst.values(), key=lambda one: -one.share) if one.share > 0.0]
    rules = [one.rule for one in named]
    combinations = seam.survey.interface.get(COMBINATIONS, {}).get("value")
    if combinations is not None and combinations > 0.0:
        good *= 1.0 - combinations / 100.0
        rules.insert(0, "collapse-window")
    return 1.0 - good, tuple(dict.fromkeys(rules))
