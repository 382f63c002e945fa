"""The share of parts that break a limit which holds as drawn."""

from __future__ import annotations

from collections.abc import Sequence

import msgspec
import numpy as np

from seamcheck.catalogue.field_types import Real
from seamcheck.catalogue.keys import RuleKey
from seamcheck.catalogue.rule import MUST_FIX
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.bounds import JudgedSeam
from seamcheck.judge.findings import OUTSIDE
from seamcheck.judge.tolerance import ToleranceState

COMBINATIONS = "combinations_outside"
"""Quantity of the material side: share of tolerance combinations without a weld, %."""

_DRAWN = ("free_travel", "gap")
"""Quantities with limits of their own that the combinations draw too."""


class PartsOutside(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """Parts in which something breaks that holds as drawn: a record of the review document.

    Attributes
    ----------
    ppm : parts in a million; spread : how parts lie within a tolerance; rules : what breaks, the most frequent first
    """

    ppm: Real | None
    spread: str
    rules: list[RuleKey]


def parts_outside(seam: JudgedSeam, states: Sequence[ToleranceState]) -> PartsOutside | None:
    """The share of parts in which something breaks; None without tolerances.

    Parameters
    ----------
    states : every limit of a quantity with a tolerance, at its worst place

    Notes
    -----
    Only limits that must be held, and that the drawing holds. One deviation moves a quantity along the whole seam: of
    its limits on one side the nearest alone counts. Different quantities are taken as independent. The material side's
    random combinations, in which a collapse finds no room or closes no gap, draw travel and gap as well: of these and
    the combinations only the largest share counts, as it is the same deviation that breaks both.
    """
    tolerances = seam.settings.tolerances
    if not tolerances:
        return None
    worst: dict[tuple[str, str], tuple[float, str]] = {}
    for one in states:
        if one.state == OUTSIDE or one.severity != MUST_FIX:
            continue
        key = (_entry(one, tolerances), one.side)
        worst[key] = max(worst.get(key, (0.0, "")), ((one.outside_ppm or 0.0) / 1e6, one.rule))
    sides: dict[str, float] = {}
    for (entry, _), (share, _) in worst.items():
        sides[entry] = sides.get(entry, 0.0) + share
    breaking = [rule for share, rule in sorted(worst.values(), reverse=True) if share > 0.0]
    combinations = seam.survey.interface.get(COMBINATIONS, {}).get("value")
    if combinations:
        drawn = [sides.pop(entry, 0.0) for entry in _DRAWN]
        sides[COMBINATIONS] = max(combinations / 100.0, *drawn)
        breaking.insert(0, "collapse-window")
    good = float(np.prod([1.0 - min(share, 1.0) for share in sides.values()]))
    spread = f"normal, Cpk {tolerances['cpk']:g}" if "cpk" in tolerances else "even between the ends"
    return PartsOutside(ppm=1e6 * (1.0 - good), spread=spread, rules=list(dict.fromkeys(breaking)))


def _entry(one: ToleranceState, tolerances: object) -> str:
    """The entry of ``[tolerance]`` that moves a quantity: its own, or that of the quantity it is an edge of."""
    check = next(check for check in RULES[one.rule].checks if check.column == one.quantity)
    return check.judged if check.judged in tolerances else check.column  # type: ignore[operator]
