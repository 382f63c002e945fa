"""Why a finding is gone, or new: the value, the limit, the rule, or the seam itself."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from seamcheck.comparison.align import Alignment, JointPair
from seamcheck.comparison.along import value_at
from seamcheck.comparison.background import limit_differences, rule_is_on, setting_differences
from seamcheck.comparison.nearest import find_nearest
from seamcheck.comparison.paths import SeamPath
from seamcheck.comparison.rigid import STILL, Rigid
from seamcheck.comparison.tolerances import tolerance
from seamcheck.document.plain import number, numbers

HOW = (
    "value", "limit", "limit-follows", "rule-off", "rule-on", "not-measured", "was-not-measured", "seam-gone",
    "seam-new", "other",
)  # fmt: skip
"""Why a finding came or went; a report has words for each (words.py)."""

Document = Mapping[str, Any]
Finding = Mapping[str, Any]


def why_gone(finding: Finding, old: Document, new: Document, alignment: Alignment, motion: Rigid) -> dict[str, Any]:
    """Why a finding of the old review is not in the new one.

    Returns
    -------
    {"how": key of HOW, "now": the value there now, "place": where that is on the new model}
    """
    pair = next((p for p in alignment.pairs if p.old["id"] == finding["joint"]), None)
    how, value = _why(finding, pair, motion, old, new, is_old=True)
    codes = {"off": "rule-off", "unmeasured": "not-measured", "place": "seam-gone"}
    return {"how": codes.get(how, how), "now": value, "place": _place_now(finding, pair, motion)}


def _place_now(finding: Finding, pair: JointPair | None, motion: Rigid) -> dict[str, Any] | None:
    """{"at", "contour", "s"} of an old finding in the new model; contour and s None where the seam is not there."""
    if finding["at"] is None:
        return None
    place = motion.points(np.array([finding["at"]], dtype=float))
    result: dict[str, Any] = {"at": numbers(place[0]), "contour": None, "s": None}
    if pair is not None and finding["contour"] is not None:
        feet = find_nearest(place, pair.after, tangents=_tangent(finding, pair, is_old=True))
        if feet.found[0]:
            result |= {"contour": pair.after[feet.path[0]].id, "s": number(float(feet.s[0]))}
    return result


def why_new(finding: Finding, old: Document, new: Document, alignment: Alignment) -> dict[str, Any]:
    """{"how", "before"}: why a finding of the new review was not in the old one, and the value there before."""
    pair = next((p for p in alignment.pairs if p.new["id"] == finding["joint"]), None)
    how, value = _why(finding, pair, STILL, old, new, is_old=False)
    codes = {"off": "rule-on", "unmeasured": "was-not-measured", "place": "seam-new"}
    return {"how": codes.get(how, how), "before": value}


def _why(
    finding: Finding, pair: JointPair | None, motion: Rigid, old: Document, new: Document, is_old: bool
) -> tuple[str, float | None]:
    """What differs in the other review at a finding's place, and the value there."""
    other = new if is_old else old
    if not rule_is_on(other, finding["rule"]):
        return "off", None
    if pair is None:
        return "place", None
    column, value = finding["column"] or finding["quantity"], finding["value"]
    if finding["contour"] is None or finding["at"] is None:
        entry = (pair.new if is_old else pair.old)["interface"].get(column, {})
        there = entry.get("value")
    else:
        place = motion.points(np.array([finding["at"]], dtype=float))
        paths: tuple[SeamPath, ...] = pair.after if is_old else pair.before
        feet = find_nearest(place, paths, tangents=_tangent(finding, pair, is_old))
        if not feet.found[0]:
            return "place", None
        path = paths[feet.path[0]]
        if column not in path.columns:
            return "other", None
        there = value_at(path, column, float(feet.s[0]))
        if there is None:
            return ("unmeasured" if value is not None else "other"), None
    if there is None or value is None:
        return "other", number(there)
    if abs(there - value) > float(tolerance(column, max(abs(there), abs(value)))):
        return "value", number(there)
    if finding["limit"] is None:
        return "other", number(there)
    return ("limit" if finding["rule"] in _rules_set_otherwise(old, new) else "limit-follows"), number(there)


def _tangent(finding: Finding, pair: JointPair, is_old: bool) -> np.ndarray | None:
    """(1, 3) the way of the seam at a finding's worst station; None where it names none."""
    paths = pair.before if is_old else pair.after
    path = next((p for p in paths if p.id == finding["contour"]), None)
    station = finding.get("station")
    if path is None or station is None or not 0 <= station < len(path.s):
        return None
    return path.tangents[[station]]


def _rules_set_otherwise(old: Document, new: Document) -> set[str]:
    """Rules with another limit in the settings; all of them where the planned collapse differs."""
    if any(entry["key"] == "collapse_mm" for entry in setting_differences(old, new)):
        return {entry["rule"] for entry in new["limits"]}
    return {entry["rule"] for entry in limit_differences(old, new)}
