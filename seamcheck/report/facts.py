"""What every report says about a review document: order of findings, limits as bands, words for values.

Nothing is measured or judged here. A stretch counts as broken where a finding of the document says so.
"""

from __future__ import annotations

import math
import shlex
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from typing import TYPE_CHECKING, Any

from msgspec import Struct

from seamcheck.catalogue.cautions import CAUTIONS, PRE_CHECK
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.repairs import PROPOSED_FOR
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import in_voice, localised, tr, unit_in_voice, voice
from seamcheck.report import language, place

if TYPE_CHECKING:
    import numpy as np  # loaded where it is needed: a review without findings is shown without it

Document = Mapping[str, Any]

coordinate, point = place.coordinate, place.point

SEVERITIES = ("must-fix", "attention", "note")
MARKS = {"must-fix": "◆", "attention": "▲", "note": "○"}
VERDICTS = {
    "pass": "Within the limits",
    "attention": "Within the must-fix limits, with points for attention",
    "fail": "A limit is broken",
    "not-reviewed": "Not reviewed",
}
"""Verdict -> headline; in the language of a report by ``verdict_headline``."""


def pre_check() -> str:
    """What a review is worth, in a sentence."""
    return tr(PRE_CHECK)


class Numbered(Struct, frozen=True):
    """A finding with its number in the order of harm and its worst station (None: not on a path)."""

    number: int
    finding: Mapping[str, Any]
    contour: str | None
    station: int | None

    @property
    def is_waived(self) -> bool:
        return bool(self.finding.get("waived"))


def rule_title(rule: str) -> str:
    """A rule as people call it, also of a document by another version."""
    return language.rule_title(rule)


def finding_title(finding: Mapping[str, Any]) -> str:
    """The rule, and the side where it judges both: 'Volume of one flash trap, inner side'."""
    side = str(finding.get("quantity") or "").rpartition("_")[2]
    title = rule_title(finding["rule"])
    if side not in ("inner", "outer") or side in RULES_OF_ONE_SIDE.get(finding["rule"], ()):
        return title
    return f"{title}, {tr('inner side') if side == 'inner' else tr('outer side')}"


RULES_OF_ONE_SIDE = {rule.key: [s for s in ("inner", "outer") if s in rule.title.lower()] for rule in RULES.values()}
"""Rule -> the side that its title names."""


def severity_word(severity: str) -> str:
    """A severity in the language of the report."""
    words = {"must-fix": tr("must-fix"), "attention": tr("attention"), "note": tr("note"), "off": tr("off")}
    return words.get(severity, severity)


def verdict_word(verdict: str) -> str:
    """A verdict in the language of the report."""
    words = {
        "pass": tr("pass"), "attention": tr("attention"), "fail": tr("fail"), "not-reviewed": tr("not-reviewed"),
    }  # fmt: skip
    return words.get(verdict, verdict)


def role_word(role: str) -> str:
    """The role of a part in the language of the report."""
    words = {
        "cover": tr("cover"), "base": tr("base"), "cover and base": tr("cover and base"), "other": tr("other part"),
    }  # fmt: skip
    return words.get(role, role)


def length_unit_word(name: str) -> str:
    """A file's unit of length in the language of the report."""
    words = {
        "millimetre": tr("millimetre"), "centimetre": tr("centimetre"), "metre": tr("metre"), "inch": tr("inch"),
        "foot": tr("foot"),
    }  # fmt: skip
    return words.get(name, name)


def verdict_headline(verdict: str) -> str:
    """A verdict as a headline."""
    words = {
        "pass": tr("Within the limits"), "attention": tr("Within the must-fix limits, with points for attention"),
        "fail": tr("A limit is broken"), "not-reviewed": tr("Not reviewed"),
    }  # fmt: skip
    return words.get(verdict, verdict)


def unit_of(column: str) -> str:
    """Unit as people read it; '' for ratios and shares."""
    unit = QUANTITIES[column].unit if column in QUANTITIES else ""
    return "" if unit == "1" else unit_in_voice(unit)


def number_text(value: Any, column: str) -> str:
    """A value with the quantity's decimals and unit; 'not measured' for None and NaN."""
    if value is None or not isinstance(value, int | float) or not math.isfinite(value):
        return tr("not measured")
    if column.startswith("trap_open"):
        return tr("open") if value else tr("closed")
    value, unit, decimals = _spoken(value, column)
    text = f"{value:.{decimals}f}"
    if float(text) == 0:
        text = text.lstrip("-")
    return f"{localised(text)} {unit}" if unit else localised(text)


def _spoken(value: float, column: str) -> tuple[float, str, int]:
    """A value of a column, its unit and its decimals, as the report writes them."""
    q = QUANTITIES.get(column)
    value, unit, decimals = in_voice(float(value), q.unit if q else "", q.decimals if q else 3)
    return value, "" if unit == "1" else unit, decimals


def mm(value: float, decimals: int = 1) -> str:
    """A length given in mm, with the unit of the report: '12.0 mm'."""
    return shown(value, "mm", decimals)


def short_text(value: float, column: str, unit: bool = True) -> str:
    """A limit with its unit, no more digits than it has: '0.6 mm'."""
    value, name, decimals = _spoken(value, column)
    name = name if unit else ""
    return f"{localised(f'{round(value, decimals) + 0.0:g}')}{' ' if name else ''}{name}"


def limit_text(limit: Any, column: str) -> str:
    """A limit (number, pair or None) with unit."""
    if isinstance(limit, list | tuple):
        low, high = (*limit, None, None)[:2]
        if low is not None and high is not None:
            return span(short_text(low, column, unit=False), short_text(high, column))
        limit = low if low is not None else high
    return "" if limit is None else short_text(limit, column)


def span(low: str, high: str) -> str:
    """'0.6 to 2 mm'."""
    return tr("{low} to {high}", low=low, high=high)


def at_least(text: str) -> str:
    """'at least 0.6 mm'."""
    return tr("at least {limit}", limit=text)


def at_most(text: str) -> str:
    """'at most 0.6 mm'."""
    return tr("at most {limit}", limit=text)


def joints(document: Document) -> list[Mapping[str, Any]]:
    """The document's joints."""
    return list(document.get("joints") or ())


def part_names(document: Document) -> dict[str, str]:
    """Part id -> name as people read it: the name, with the id where several share it; the id where there is none."""
    called = {p["id"]: p.get("name") or p["id"] for p in document["model"].get("parts") or ()}
    often = Counter(called.values())
    return {part: name if often[name] == 1 else f"{name} ({part})" for part, name in called.items()}


def paths(document: Document) -> Iterator[tuple[Mapping[str, Any], Mapping[str, Any]]]:
    """All (joint, contour) pairs."""
    for joint in joints(document):
        for contour in joint.get("contours") or ():
            yield joint, contour


def column_of(contour: Mapping[str, Any], key: str) -> np.ndarray:
    """One column of a contour as (n,) float, NaN where the document says null or has no such column."""
    import numpy as np

    values = contour["stations"].get(key)
    count = len(contour["stations"]["s"])
    if values is None:
        return np.full(count, np.nan)
    return np.array(values, dtype=float)  # None is NaN there


def points_of(contour: Mapping[str, Any]) -> np.ndarray:
    """Stations as (n, 3), mm."""
    import numpy as np

    return np.column_stack([np.asarray(contour["stations"][axis], dtype=float) for axis in "xyz"]).reshape(-1, 3)


def harm_order(finding: Mapping[str, Any]) -> tuple[Any, ...]:
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


def can_be_proposed(document: Document, numbered: Numbered) -> bool:
    """Whether ``seamcheck propose`` tries a change for a finding."""
    finding = numbered.finding
    grave = finding["severity"] in ("must-fix", "attention") and not numbered.is_waived
    return grave and finding["rule"] in PROPOSED_FOR and bool(document["model"].get("sha256"))


def propose_command(document: Document) -> str:
    """The command that proposes changes of the model that was reviewed."""
    return shlex.join(["seamcheck", "propose", *(file["file"] for file in document["model"]["files"])])


def numbered_findings(document: Document) -> list[Numbered]:
    """Findings in the order of harm, numbered from 1, each with its station."""
    ordered = sorted(document.get("findings") or (), key=harm_order)
    return [Numbered(n, f, *_place(document, f)) for n, f in enumerate(ordered, start=1)]


def _place(document: Document, finding: Mapping[str, Any]) -> tuple[str | None, int | None]:
    """The path and station that the finding names, else those nearest to its place; (None, None) without."""
    if finding.get("contour") is not None and finding.get("station") is not None:
        return finding["contour"], int(finding["station"])
    import numpy as np

    at = finding.get("at")
    best: tuple[float, str | None, int | None] = (math.inf, None, None)
    if at is None:
        return None, None
    for joint, contour in paths(document):
        if joint["id"] != finding.get("joint") or finding.get("contour") not in (None, contour["id"]):
            continue
        distance = np.linalg.norm(points_of(contour) - np.asarray(at, dtype=float), axis=1)
        if len(distance) and float(distance.min()) < best[0]:
            best = (float(distance.min()), contour["id"], int(distance.argmin()))
    return best[1], best[2]


def spots(document: Document, numbered: Numbered) -> list[tuple[str, int]]:
    """Path and station of every place of a finding, its own first."""
    finding = numbered.finding
    further = [_place(document, place) for place in each_place(finding)[1:]]
    found = [(numbered.contour, numbered.station), *further]
    return [(contour, station) for contour, station in found if contour is not None and station is not None]


_OF_OTHER_RULES = ("rule", "severity")
"""What a place says only where it is another rule's than the finding's."""


def each_place(finding: Mapping[str, Any]) -> list[dict[str, Any]]:
    """A finding at each of its places, its own first; a place may be that of another rule with the same cause."""
    further = (
        {key: v for key, v in place.items() if v is not None or key not in _OF_OTHER_RULES}
        for place in finding.get("places") or ()
    )
    return [{**finding, **place, "places": ()} for place in ({}, *further)]


def rules_of(finding: Mapping[str, Any]) -> list[str]:
    """The rules that are broken at the places of a finding, its own first."""
    return list(dict.fromkeys(place["rule"] for place in each_place(finding)))


def under_rule(finding: Mapping[str, Any], rule: str) -> list[dict[str, Any]]:
    """The places of a finding at which one rule is broken, each as a finding; empty where it is none of its rules."""
    return [place for place in each_place(finding) if place["rule"] == rule]


def stations_of_finding(document: Document, finding: Mapping[str, Any], contour: Mapping[str, Any]) -> np.ndarray:
    """(n,) bool: stations on the finding's stretch, which passes the start where from_s > to_s.

    Without a stretch: the whole path that it names, else the one station nearest to its place. With its further places.
    """
    import numpy as np

    s = np.asarray(contour["stations"]["s"], dtype=float)
    further = finding.get("places") or ()
    if further:
        spots = ({**finding, **place, "places": ()} for place in further)
        rest = np.any([stations_of_finding(document, spot, contour) for spot in spots], axis=0)
        return np.asarray(stations_of_finding(document, {**finding, "places": ()}, contour) | rest)
    start, end = finding.get("from_s"), finding.get("to_s")
    if is_everywhere(finding):
        return np.full(len(s), finding["contour"] == contour["id"])
    if start is None or end is None:
        where, station = _place(document, finding)
        return np.asarray(np.arange(len(s)) == (station if where == contour["id"] and station is not None else -1))
    if finding.get("contour") != contour["id"]:
        return np.zeros(len(s), dtype=bool)
    slack = 1e-6
    if start <= end:
        return np.asarray((s >= start - slack) & (s <= end + slack))
    return np.asarray((s >= start - slack) | (s <= end + slack))


def is_everywhere(finding: Mapping[str, Any]) -> bool:
    """Whether a finding holds along its whole path: it names the path and no stretch of it."""
    return finding.get("contour") is not None and finding.get("from_s") is None


def place_of_waiver(document: Document, finding: Mapping[str, Any]) -> dict[str, Any] | None:
    """The place that a waiver of this finding names (settings/waivers.py), a little wider; None where it has none."""
    if finding.get("contour") is not None:
        place = {"joint": finding["joint"], "contour": finding["contour"]}
        if finding.get("from_s") is None or is_all_along(document, finding):
            return place
        return {**place, "from_s": round(max(finding["from_s"] - 0.5, 0.0), 3), "to_s": round(finding["to_s"] + 0.5, 3)}
    if finding.get("at"):
        return {"joint": finding["joint"] or "", "at": [round(c, 3) for c in finding["at"]], "radius": 2.0}
    return None


def questions(document: Document) -> list[tuple[str, str]]:
    """(key, text) of what a review asks others."""
    items = document.get("not_checked") or ()
    return [(m["key"], m["text"]) for m in items if m["key"].startswith("ask.") and not m["key"].endswith(".answered")]


def headline(document: Document) -> str:
    """The verdict in a few words."""
    verdict = document["verdict"]
    if verdict == "fail":
        count = sum(
            place["severity"] == "must-fix"
            for f in document["findings"]
            if not f.get("waived")
            for place in each_place(f)
        )
        if count != 1:
            return tr("Limits are broken in {count} places", count=count)
        only = next(f for f in document["findings"] if f["severity"] == "must-fix" and not f.get("waived"))
        return tr("A limit is broken: {title}", title=_inside(finding_title(only)))
    return verdict_headline(str(verdict))


def _inside(title: str) -> str:
    """A title within a sentence: 'Clamp land' -> 'clamp land'; a German noun keeps its capital."""
    return title[:1].lower() + title[1:] if voice().language == "en" else title


def place_text(document: Document, finding: Mapping[str, Any]) -> str:
    """'s = 12.0 to 30.5 mm', 'along the whole seam', a point, or 'whole seam' where a finding has no place."""
    start, end = finding.get("from_s"), finding.get("to_s")
    if start is not None and end is not None:
        if is_all_along(document, finding):
            return tr("along the whole seam")
        return f"s = {mm(start)}" if start == end else f"s = {span(coordinate(start, 1), mm(end))}"
    if finding.get("at"):
        named = zip("xyz", finding["at"], strict=True)
        return ", ".join(f"{axis} {coordinate(c)}" for axis, c in named) + f" {unit_in_voice('mm')}"
    return tr("whole seam")


def is_all_along(document: Document, finding: Mapping[str, Any]) -> bool:
    """Whether a finding's stretch is the whole of the joint's only path."""
    own = [c for j, c in paths(document) if j["id"] == finding.get("joint")]
    length = finding.get("length_mm")
    return len(own) == 1 and length is not None and float(length) >= 0.995 * float(own[0]["length_mm"])


def reason_text(document: Document, code: str) -> str:
    """A reason code of the document as a sentence."""
    return str((document.get("reasons") or REASONS).get(code, code))


def collapse_of(document: Document) -> float | None:
    """The planned collapse, mm; None where the document does not say."""
    value = (document.get("settings") or {}).get("collapse_mm")
    return float(value) if isinstance(value, int | float) else None


def half_angle(document: Document) -> float:
    """° of the scanner's cone to each side; 0 without a scanner."""
    scanner = (document.get("settings") or {}).get("scanner") or {}
    return float(scanner.get("half_angle") or 0.0)


def beam_margin(document: Document) -> float:
    """Room beside the rib that belongs to the beam corridor, mm; the clamp land begins beyond it."""
    return float((document.get("settings") or {}).get("beam_margin_mm") or 0.0)


def initial_contact(joint: Mapping[str, Any]) -> float:
    """How far the cover sinks from where it is drawn until it first touches the rib, mm; 0 where it is not known."""
    return float(joint.get("initial_contact_mm") or 0.0)


def texts(messages: Iterable[Mapping[str, Any]]) -> list[str]:
    """The sentences of messages: notes, reasons why, assumptions, what was not checked."""
    return [str(message["text"]) for message in messages]


def cautions(document: Document) -> list[str]:
    """The document's cautions; the project's own where it has none."""
    return texts(document.get("cautions") or ()) or list(CAUTIONS)


def quantity_title(finding: Mapping[str, Any]) -> str:
    """Title of a finding's quantity."""
    return language.quantity_title(finding.get("quantity") or "")


def value_text(finding: Mapping[str, Any]) -> str:
    """The finding's value with its unit; without one how long its stretch is, '–' where it has none."""
    value = finding.get("value")
    if value is not None:
        return number_text(value, finding.get("quantity") or "")
    length = finding.get("length_mm") if finding.get("from_s") is not None else None
    return tr("over {length}", length=mm(length)) if length else "–"


def margin_text(finding: Mapping[str, Any]) -> str:
    """How far a finding's value lies beyond or inside its limit; '' without a number."""
    margin = finding.get("margin")
    if not isinstance(margin, int | float):
        return ""
    quantity = str(finding.get("quantity") or "")
    if quantity.startswith("trap_open"):
        return ""
    text = shown(100 * abs(margin), "%", 0) if quantity in _SHARES else number_text(abs(margin), quantity)
    return tr("{by} beyond the limit", by=text) if margin < 0 else tr("{by} inside the limit", by=text)


_SHARES = ("beam_clear", "light_clear")
"""Shares of one that sentences tell in percent."""


def more_places(finding: Mapping[str, Any]) -> str:
    """', 7 more' where a finding is told with further places; else ''."""
    count = len(finding.get("places") or ())
    return tr(", {count} more", count=count) if count else ""


def limit_words(document: Document, finding: Mapping[str, Any]) -> str:
    """The limit that a finding breaks, in words."""
    limit, value = finding.get("limit"), finding.get("value")
    column = finding.get("quantity") or ""
    if limit is None:
        return ""
    if column.startswith("trap_open"):
        return tr("should be closed")
    if isinstance(limit, int | float) and isinstance(value, int | float) and (finding.get("margin") or 0) < 0:
        steps = steps_of(document, finding)
        if len(steps) > 1:
            told = {key: short_text(bound, column) for key, bound in steps.items()}
            mild, grave = told["attention"], told["must-fix"]
            if value < limit:
                return tr("attention below {mild}, must-fix below {grave}", mild=mild, grave=grave)
            return tr("attention above {mild}, must-fix above {grave}", mild=mild, grave=grave)
        if limit == 0 and value > 0 and str(finding.get("unit")) in ("mm", "mm²", "mm³"):
            return tr("none allowed")
        text = short_text(limit, column)
        return at_least(text) if value < limit else at_most(text)
    return limit_text(limit, column)


def limit_short(document: Document, finding: Mapping[str, Any]) -> str:
    """``limit_words`` where there is little room: 'above 0.1 / 0.2 mm' of a rule in two steps."""
    steps, column = steps_of(document, finding), finding.get("quantity") or ""
    if not steps or (finding.get("margin") or 0) >= 0:
        return limit_words(document, finding)
    both = f"{short_text(steps['attention'], column, unit=False)} / {short_text(steps['must-fix'], column)}"
    below = float(finding["value"]) < float(finding["limit"])
    return at_least(both) if below else at_most(both)


def change_of(finding: Mapping[str, Any]) -> float | None:
    """How much to change, mm, as the remedy says; None where it names no length."""
    return length_of(finding, "by")


def length_of(finding: Mapping[str, Any], name: str) -> float | None:
    """A length that the remedy names, mm; None without it."""
    told = (finding.get("args") or {}).get(name)
    return float(told["value"]) if isinstance(told, Mapping) and told.get("unit") == "mm" else None


def lip_leaves(finding: Mapping[str, Any]) -> float | None:
    """mm that a lip leaves after the collapse, in the middle of what the remedy names; None where it names nothing."""
    least, most = length_of(finding, "least"), length_of(finding, "most")
    return None if least is None or most is None else (least + most) / 2


def met_at(document: Document, finding: Mapping[str, Any]) -> list[float] | None:
    """(3,) mm, where the cover meets what stops it, of a finding about its free travel: the nearest such place."""
    if finding.get("quantity") != "free_travel" or finding.get("at") is None:
        return None
    joint = next((j for j in joints(document) if j["id"] == finding.get("joint")), None)
    places = ((joint or {}).get("interface", {}).get("free_travel") or {}).get("places") or ()
    met = [p["at"] for p in places if p.get("at") and abs((p["value"] or 0.0) - (finding.get("value") or 0.0)) < 0.02]
    return min(met, key=lambda at: math.dist(at, finding["at"]), default=None)


def steps_of(document: Document, finding: Mapping[str, Any]) -> dict[str, float]:
    """Severity -> limit of a rule in two steps, at the finding's station and on the side that it breaks; else empty."""
    value, limit, station = finding.get("value"), finding.get("limit"), finding.get("station")
    contour = next((c for j, c in paths(document) if (j["id"], c["id"]) == _path_of(finding)), None)
    if contour is None or station is None or not isinstance(value, int | float) or not isinstance(limit, int | float):
        return {}
    side, found = "low" if value < limit else "high", {}
    for bound in contour.get("bounds") or ():
        names = (finding.get("column"), finding.get("quantity"))
        if bound["rule"] == finding["rule"] and {bound["column"], bound["quantity"]} & set(names):
            edge = bound[side][station] if isinstance(bound[side], list | tuple) else bound[side]
            if isinstance(edge, int | float) and (bound["column"] == names[0] or bound["severity"] not in found):
                found[str(bound["severity"])] = float(edge)
    return found if {"attention", "must-fix"} == set(found) else {}


def _path_of(finding: Mapping[str, Any]) -> tuple[Any, Any]:
    return finding.get("joint"), finding.get("contour")


def goal(document: Document, finding: Mapping[str, Any]) -> float | None:
    """What a broken value should become, as text and drawings have it; None where that is not one number to draw to.

    It is where the amount of the remedy leads: not to the limit where the remedy goes on to the rest of the seam.
    Without such an amount it is the limit; of a rule in two steps the milder one.
    """
    limit, margin = finding.get("limit"), finding.get("margin")
    if not isinstance(limit, int | float) or not isinstance(margin, int | float) or margin >= 0:
        return None
    quantity = str(finding.get("quantity"))
    if (
        quantity.startswith("trap_open")
        or quantity in ("beam_clear", "light_clear")
        or finding.get("unit") not in ("mm", "°", "1")
    ):
        return None
    if quantity.startswith("gap"):
        return 0.0
    mild, by, value = steps_of(document, finding).get("attention", float(limit)), change_of(finding), finding["value"]
    if by is None or finding.get("unit") != "mm":
        return mild
    led = float(value) + by if value < limit else float(value) - by
    return mild if abs(led - mild) <= _ROUNDED else round(led, 3)


_ROUNDED = 0.0101  # mm: amounts of a remedy are rounded up by less


def goal_text(document: Document, finding: Mapping[str, Any]) -> str:
    """``goal`` in words: '1 mm'; '' without one."""
    wanted = goal(document, finding)
    return "" if wanted is None else number_text(wanted, finding["quantity"])


def entry_text(entry: Mapping[str, Any]) -> str:
    """One number of a rule as it is set: 'reserve 0.2 mm'."""
    value, unit, decimals = in_voice(entry["value"], entry["unit"], 6)
    return f"{entry['name']} {localised(f'{round(value, decimals):g}')}{'' if unit == '1' else f' {unit}'}"
