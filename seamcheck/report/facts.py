"""What every report says about a review document: order of findings, limits as bands, words for values.

Nothing is measured or judged here. A stretch counts as broken where a finding of the document says so.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from seamcheck.limits.quantities import QUANTITIES, REASONS

Document = Mapping[str, Any]

SEVERITIES = ("must-fix", "attention", "note")
MARKS = {"must-fix": "◆", "attention": "▲", "note": "○"}
VERDICTS = {
    "pass": "Within the limits",
    "attention": "Within the must-fix limits, with points to look at",
    "fail": "A limit is broken",
    "not-reviewed": "Not reviewed",
}
PRE_CHECK = (
    "A pre-check of CAD data by geometry and rules of thumb. It is not an approval, not a qualification of a "
    "weld process, and it replaces no trial."
)
ASSUMPTIONS = (
    "The model is taken as drawn: nominal dimensions, no shrinkage, warp, tolerance or flatness.",
    "The cover sinks straight along the beam, by the same planned collapse everywhere.",
    "The light travels parallel to the beam direction; refraction and the angle of a scanner are left out.",
    "Melt is shared half and half between the inner and the outer flash trap where one side is judged alone.",
    "Colour and transparency in CAD are hints and prove nothing about the material.",
)

# State of a station in the track of one rule
UNKNOWN, WITHIN, NEAR, BROKEN, WAIVED = 0, 1, 2, 3, 4
NEAR_SHARE = 0.10
"""A value within this share of its limit is drawn as close to it (drawing only; it changes no verdict)."""


@dataclass(frozen=True, slots=True)
class Band:
    """One limit as the interval in which the values of a column must lie.

    Attributes
    ----------
    rule, title : the rule's key and how people call it
    column : key of the quantity
    low, high : bounds in the column's unit; None where there is none
    words : the limit in words, with unit
    standing, origin : where the number comes from; 'default', 'file' or 'option'
    """

    rule: str
    title: str
    column: str
    low: float | None
    high: float | None
    words: str
    standing: str
    origin: str


@dataclass(frozen=True, slots=True)
class Numbered:
    """A finding with its number in the order of harm and its worst station (None: not on a path)."""

    number: int
    finding: Mapping[str, Any]
    contour: str | None
    station: int | None

    @property
    def is_waived(self) -> bool:
        return bool(self.finding.get("waived"))


def title_of(rule: str) -> str:
    """'rib-width' -> 'Rib width'."""
    return rule.replace("-", " ").replace("_", " ").capitalize()


def unit_of(column: str) -> str:
    """Unit as people read it; '' for ratios and shares."""
    unit = QUANTITIES[column].unit if column in QUANTITIES else ""
    return "" if unit == "1" else unit


def number_text(value: Any, column: str) -> str:
    """A value with the quantity's decimals and unit; 'not measured' for None and NaN."""
    if value is None or not isinstance(value, int | float) or not math.isfinite(value):
        return "not measured"
    decimals = QUANTITIES[column].decimals if column in QUANTITIES else 3
    unit = unit_of(column)
    text = f"{value:.{decimals}f}"
    if float(text) == 0:
        text = text.lstrip("-")
    return f"{text} {unit}" if unit else text


def limit_text(limit: Any, column: str) -> str:
    """A limit (number, pair or None) with unit."""
    if isinstance(limit, list | tuple):
        low, high = (*limit, None, None)[:2]
        if low is not None and high is not None:
            bare = number_text(low, column).removesuffix(" " + unit_of(column))
            return f"{bare} to {number_text(high, column)}"
        limit = low if low is not None else high
    return "" if limit is None else number_text(limit, column)


def joints(document: Document) -> list[Mapping[str, Any]]:
    return list(document.get("joints") or ())


def part_names(document: Document) -> dict[str, str]:
    """Part id -> name as people read it: the name, or the id where the file gives none."""
    parts = document["model"].get("parts") or ()
    return {p["id"]: (p.get("name") or p["id"]) for p in parts}


def paths(document: Document) -> Iterator[tuple[Mapping[str, Any], Mapping[str, Any]]]:
    """All (joint, contour) pairs."""
    for joint in joints(document):
        for contour in joint.get("contours") or ():
            yield joint, contour


def column_of(contour: Mapping[str, Any], key: str) -> np.ndarray:
    """One column of a contour as (n,) float, NaN where the document says null or has no such column."""
    values = contour["stations"].get(key)
    count = len(contour["stations"]["s"])
    if values is None:
        return np.full(count, np.nan)
    return np.array([np.nan if v is None else float(v) for v in values], dtype=float)


def points_of(contour: Mapping[str, Any]) -> np.ndarray:
    """Stations as (n, 3), mm."""
    return np.column_stack([np.asarray(contour["stations"][axis], dtype=float) for axis in "xyz"]).reshape(
        -1, 3
    )


def harm_order(finding: Mapping[str, Any]) -> tuple:
    """Sort key: waived last, must-fix first, then how far beyond the limit, then how long."""
    severity = finding.get("severity")
    rank = SEVERITIES.index(severity) if severity in SEVERITIES else len(SEVERITIES)
    margin, limit = finding.get("margin"), finding.get("limit")
    if isinstance(limit, list | tuple):
        limit = next((b for b in limit if b), None)
    relative = -math.inf
    if isinstance(margin, int | float):
        relative = margin / abs(limit) if isinstance(limit, int | float) and limit else float(margin)
    return (
        bool(finding.get("waived")),
        rank,
        relative,
        -float(finding.get("length_mm") or 0.0),
        str(finding.get("id")),
    )


def numbered_findings(document: Document) -> list[Numbered]:
    """Findings in the order of harm, numbered from 1, each with its station."""
    ordered = sorted(document.get("findings") or (), key=harm_order)
    return [Numbered(n, f, *_place(document, f)) for n, f in enumerate(ordered, start=1)]


def _place(document: Document, finding: Mapping[str, Any]) -> tuple[str | None, int | None]:
    """The path and the station nearest to the finding's place; (None, None) where it has none."""
    at = finding.get("at")
    best: tuple[float, str | None, int | None] = (math.inf, None, None)
    if at is None:
        return None, None
    for joint, contour in paths(document):
        if joint["id"] != finding.get("joint"):
            continue
        if finding.get("contour") not in (None, contour["id"]):
            continue
        distance = np.linalg.norm(points_of(contour) - np.asarray(at, dtype=float), axis=1)
        if len(distance) and float(distance.min()) < best[0]:
            best = (float(distance.min()), contour["id"], int(distance.argmin()))
    return best[1], best[2]


def stations_of_finding(finding: Mapping[str, Any], contour: Mapping[str, Any]) -> np.ndarray:
    """(n,) bool: stations on the finding's stretch; a stretch that passes the start has from_s > to_s."""
    s = np.asarray(contour["stations"]["s"], dtype=float)
    start, end = finding.get("from_s"), finding.get("to_s")
    if finding.get("contour") != contour["id"] or start is None or end is None:
        return np.zeros(len(s), dtype=bool)
    slack = 1e-6
    if start <= end:
        return (s >= start - slack) & (s <= end + slack)
    return (s >= start - slack) | (s <= end + slack)


def seam_median(joint: Mapping[str, Any], column: str) -> float | None:
    """Median of a column over all paths of a joint; None where nothing was measured."""
    columns = [column_of(c, column) for c in joint.get("contours") or ()]
    values = np.concatenate(columns) if columns else np.empty(0)
    values = values[np.isfinite(values)]
    return float(np.median(values)) if len(values) else None


def bands(document: Document, joint: Mapping[str, Any]) -> list[Band]:
    """The limits of the document as intervals for the columns of one joint, in the document's order."""
    result = []
    for entry in document.get("limits") or ():
        low, high, words = _interval(entry, joint)
        result.append(
            Band(
                rule=entry["rule"],
                title=entry.get("title") or title_of(entry["rule"]),
                column=entry.get("quantity") or "",
                low=low,
                high=high,
                words=words,
                standing=entry.get("standing") or "",
                origin=entry.get("from") or "",
            )
        )
    return result


def _interval(entry: Mapping[str, Any], joint: Mapping[str, Any]) -> tuple[float | None, float | None, str]:
    """Bounds of one limit, and the limit in words."""
    value, column, fails = entry.get("value"), entry.get("quantity") or "", entry.get("fails")
    if isinstance(value, list | tuple):
        low, high = (*value, None, None)[:2]
        if low is not None and high is not None:
            return low, high, limit_text(value, column)
        fails, value = ("below", low) if low is not None else ("above", high)
    if not isinstance(value, int | float) or isinstance(value, bool):
        return None, None, "" if value is None else str(value)
    if fails == "below":
        return float(value), None, f"at least {number_text(value, column)}"
    if fails == "above":
        return None, float(value), f"at most {number_text(value, column)}"
    if fails == "size-above":
        return -float(value), float(value), f"within ±{number_text(value, column)}"
    if fails in ("evenness", "evenness-share"):
        median = seam_median(joint, column)
        words = (
            f"median ±{number_text(value, column)}" if fails == "evenness" else f"median ±{100 * value:g} %"
        )
        if median is None:
            return None, None, words
        reach = value if fails == "evenness" else abs(median) * value
        return median - reach, median + reach, words
    return None, None, number_text(value, column)


def room(values: np.ndarray, low: float | None, high: float | None) -> np.ndarray:
    """How far values lie inside a band, as a share of the nearer bound; negative beyond it, NaN unknown."""
    result = np.full(len(values), np.inf)
    for bound, distance in ((low, values - (low or 0.0)), (high, (high or 0.0) - values)):
        if bound is not None:
            scale = abs(bound) if bound else 1.0
            if low is not None and high is not None:
                scale = min(scale, (high - low) / 2) or 1.0
            result = np.minimum(result, distance / scale)
    if low is None and high is None:
        result[:] = np.nan
    result[~np.isfinite(values)] = np.nan
    return result


def track(document: Document, contour: Mapping[str, Any], joint: Mapping[str, Any], band: Band) -> np.ndarray:
    """(n,) int, UNKNOWN ... WAIVED: the state of every station under one rule."""
    values = column_of(contour, band.column)
    inside = room(values, band.low, band.high)
    state = np.full(len(values), WITHIN)
    state[~np.isfinite(values)] = UNKNOWN
    if band.low != band.high:
        state[np.isfinite(inside) & (inside < NEAR_SHARE)] = NEAR
        exact = np.isfinite(values) & ((values == band.low) | (values == band.high)) & _only_one(band)
        state[exact & _at_its_best(band)] = WITHIN
    for finding in document.get("findings") or ():
        if finding.get("joint") == joint["id"] and finding.get("rule") == band.rule:
            state[stations_of_finding(finding, contour)] = WAIVED if finding.get("waived") else BROKEN
    return state


def _only_one(band: Band) -> bool:
    return (band.low is None) != (band.high is None)


def _at_its_best(band: Band) -> bool:
    """A share whose limit is its largest possible value is not 'close to the limit' when it meets it."""
    return band.column == "beam_clear" and band.low == 1.0


def headline(document: Document) -> str:
    """The verdict in a few words."""
    verdict = document["verdict"]
    if verdict == "fail":
        count = sum(f["severity"] == "must-fix" and not f.get("waived") for f in document["findings"])
        return "A limit is broken" if count == 1 else f"Limits are broken in {count} places"
    return VERDICTS.get(verdict, str(verdict))


def sentences(document: Document) -> list[str]:
    """Two or three sentences for a busy reader."""
    if document["verdict"] == "not-reviewed":
        reason = document.get("reason") or {}
        return [
            reason.get("message") or "The model could not be reviewed.",
            "Nothing was measured, nothing was judged.",
        ]
    counts = {s: 0 for s in SEVERITIES}
    waived = 0
    for finding in document["findings"]:
        if finding.get("waived"):
            waived += 1
        else:
            counts[finding["severity"]] = counts.get(finding["severity"], 0) + 1
    said = [seam_sentence(document)]
    found = numbered_findings(document)
    live = [n for n in found if not n.is_waived and n.finding["severity"] != "note"]
    if live:
        worst = live[0].finding
        said.append(f"The gravest: {worst['message']}")
        if worst.get("remedy"):
            said.append(worst["remedy"])
    else:
        said.append("No stretch of it breaks a limit that was checked.")
    if waived:
        said.append(f"{waived} finding is waived." if waived == 1 else f"{waived} findings are waived.")
    return said


def seam_sentence(document: Document) -> str:
    """'One seam of 382.8 mm, closed, looked at in 766 sections.'"""
    all_paths = list(paths(document))
    length = sum(float(c["length_mm"]) for _, c in all_paths)
    count = sum(len(c["stations"]["s"]) for _, c in all_paths)
    many = len(joints(document))
    shape = ""
    if len(all_paths) == 1:
        shape = ", closed" if all_paths[0][1]["closed"] else ", open"
    elif many == 1:
        shape = f" in {len(all_paths)} paths"
    what = "One seam" if many == 1 else f"{many} seams"
    return f"{what} of {length:.1f} mm{shape}, looked at in {count} sections."


def reason_text(code: str) -> str:
    return REASONS.get(code, code)


def runs(state: np.ndarray) -> list[list[int]]:
    """Equal neighbours as [first, last, state]."""
    if not len(state):
        return []
    starts = np.concatenate([[0], np.flatnonzero(np.diff(state)) + 1])
    ends = np.concatenate([starts[1:] - 1, [len(state) - 1]])
    return [[int(a), int(b), int(state[a])] for a, b in zip(starts, ends, strict=True)]


def worst_state(states: list[np.ndarray], count: int) -> np.ndarray:
    """The gravest state of every station: broken before waived before close before within before unknown."""
    gravity = np.array([0, 1, 2, 4, 3])  # UNKNOWN, WITHIN, NEAR, BROKEN, WAIVED
    if not states:
        return np.full(count, UNKNOWN)
    stack = np.array(states)
    rows = gravity[stack].argmax(axis=0)
    return stack[rows, np.arange(count)]


def collapse_of(document: Document) -> float | None:
    """The planned collapse, mm; None where the document does not say."""
    for place in (document, document.get("settings") or {}):
        value = place.get("collapse_mm", place.get("collapse"))
        if isinstance(value, int | float):
            return float(value)
    return None


def first_rest(joint: Mapping[str, Any]) -> float:
    """How far the cover sinks from where it is drawn until it first rests on the rib, mm: the seam's least gap."""
    gaps = [column_of(c, "gap_min") for c in joint.get("contours") or ()]
    gaps += [column_of(c, "gap") for c in joint.get("contours") or ()]
    values = np.concatenate(gaps) if gaps else np.empty(0)
    values = values[np.isfinite(values)]
    return float(values.min()) if len(values) else 0.0


CAUTIONS = (
    "This is a geometric and rule-of-thumb pre-check of CAD data. It is not an approval, not a weld-process "
    "qualification and not a substitute for trials, testing and the judgement of qualified persons.",
    "Laser sources for plastic welding are normally Class 4 in the sense of IEC 60825-1: direct and diffusely "
    "reflected radiation endangers eyes and skin and can ignite material; the radiation is mostly invisible. "
    "Welding belongs in an interlocked enclosure, with a laser-safety officer where required.",
    "Heating plastics releases fumes and possibly toxic products: extraction is needed. Clamps and presses crush: "
    "machine safety rules apply.",
    "Pressure-tight, medical, food, fuel, battery and safety-related parts need a validated process and their own "
    "standards. Local law, codes and licensed practice take precedence. No warranty.",
)


def cautions(document: Document) -> list[str]:
    """The document's cautions; the project's own where it has none."""
    return list(document.get("cautions") or CAUTIONS)


def quantity_title(finding: Mapping[str, Any]) -> str:
    key = finding.get("quantity") or ""
    return QUANTITIES[key].title if key in QUANTITIES else key.replace("_", " ")


def value_text(finding: Mapping[str, Any]) -> str:
    """The finding's value with its unit; '–' where a place, not a number, is what was found."""
    value = finding.get("value")
    return "–" if value is None else number_text(value, finding.get("quantity") or "")


def margin_text(finding: Mapping[str, Any]) -> str:
    margin = finding.get("margin")
    if not isinstance(margin, int | float):
        return ""
    text = number_text(abs(margin), finding.get("quantity") or "")
    return f"{text} beyond the limit" if margin < 0 else f"{text} inside the limit"


def limit_words(document: Document, finding: Mapping[str, Any]) -> str:
    """The limit that a finding breaks, in words."""
    limit, value = finding.get("limit"), finding.get("value")
    column = finding.get("quantity") or ""
    if limit is None:
        return ""
    if isinstance(limit, int | float) and isinstance(value, int | float) and (finding.get("margin") or 0) < 0:
        return f"{'at least' if value < limit else 'at most'} {number_text(limit, column)}"
    return limit_text(limit, column)
