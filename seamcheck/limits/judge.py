"""Judging: surveyed columns against bounds, contiguous stretches as findings, waivers, the verdict."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from seamcheck.limits.bounds import PathView, SeamView, waiting_for
from seamcheck.limits.findings import AT_RISK, Finding, JointResult, Judgement
from seamcheck.limits.formula import evaluate
from seamcheck.limits.identity import finding_name, numbered
from seamcheck.limits.quantities import QUANTITIES, REASONS
from seamcheck.limits.rule import ATTENTION, MUST_FIX, OFF, SEVERITIES, SLACK, Bound, Check, Rule
from seamcheck.limits.rules import RULES
from seamcheck.limits.settings import Settings
from seamcheck.limits.stretches import Stretch
from seamcheck.limits.waiving import with_waivers
from seamcheck.limits.words import amount, fill, value_text
from seamcheck.material.rules import REPLACED_BY
from seamcheck.survey.table import Interruption, PathSurvey

_TIE = 5e-4  # margins nearer than this to the worst count as equally bad; the middle one is shown
_SAME_PLACE = 3.0  # mm: a place of the whole interface this near to a section's finding is the same place
_MERGED_WITH_MISSING_RIB = frozenset(
    key for key, rule in RULES.items() if rule.checks and not rule.for_flat_overlap and key != "sink-travel"
) | {"contact-gap", "not-measured"}


def judge(
    joints: Sequence[JointResult], settings: Settings, part_names: Mapping[str, str] | None = None
) -> Judgement:
    """Judge everything that was measured on all joints.

    Parameters
    ----------
    joints : as surveyed
    settings : limits, severities, waivers
    part_names : part id -> name, for names of findings that do not hang on the order of parts
    """
    part_names = part_names or {}
    found: list[Finding] = []
    names: list[str] = []
    for joint in joints:
        parts = [part_names.get(p, "") for p in (*joint.cover, *joint.base)]
        for draft in _Bench(joint, settings).drafts():
            found.append(draft.finding)
            names.append(finding_name(draft.finding.rule, draft.side, parts, draft.place))
    places = [f.at or (0.0, 0.0, 0.0) for f in found]
    coarse = [tuple(round(c, 3) for c in place) for place in places]
    found = [replace(f, id=name) for f, name in zip(found, numbered(names, coarse), strict=True)]
    rules = list(RULES)
    found.sort(
        key=lambda f: (
            SEVERITIES.index(f.severity),
            rules.index(f.rule),
            f.joint,
            f.contour or "",
            f.from_s or 0.0,
            f.id,
        )
    )
    return with_waivers(found, settings, {joint.id: joint for joint in joints})


@dataclass(frozen=True, slots=True, eq=False)
class _Draft:
    """A finding with what its name is made from."""

    finding: Finding
    side: str
    place: np.ndarray | None
    stations: np.ndarray | None = None


class _Bench:
    """One joint on the bench: every rule, one after the other."""

    def __init__(self, joint: JointResult, settings: Settings) -> None:
        self.joint, self.settings = joint, settings
        self.seam = SeamView(joint.survey, settings)
        self.is_flat = joint.rib_on == "none"

    def drafts(self) -> list[_Draft]:
        rules = [r for r in RULES.values() if self.settings.severity(r.key) != OFF and self._applies(r)]
        if self.is_flat:
            rules = [r for r in rules if r.for_flat_overlap]
        on = {rule.key for rule in rules}
        drafts: list[_Draft] = []
        drawn_welded = self._drawn_welded()
        for rule in rules:
            if rule.key == "contact-gap" and drawn_welded:
                continue
            for view in self.seam.paths:
                for check in rule.checks:
                    drafts += self._broken(rule, check, view)
        for rule in rules:
            for check in rule.checks:
                if QUANTITIES[check.column].per == "interface":
                    drafts += self._interface_value(rule, check)
        drafts = _without_replaced(drafts)
        if "sink-travel" in on:
            drafts += self._interface_travel(drafts)
        if "cover-hole" in on:
            drafts += self._holes()
        if "not-measured" in on:
            drafts += self._not_measured(rules, drawn_welded)
        if "drawn-welded" in on and drawn_welded:
            drafts.append(
                self._whole("drawn-welded", {"collapse": value_text(self.settings.collapse, "gap")})
            )
        if "seam-junction" in on:
            drafts += self._junctions()
        if self.is_flat:
            if "rib-missing" in on:
                drafts.append(self._whole("rib-missing", {}, also=self._left_out_on_flat()))
        elif "seam-open" in on:
            drafts = self._with_open_seam(drafts)
        return drafts

    # Columns against bounds

    def _broken(self, rule: Rule, check: Check, view: PathView) -> Iterator[_Draft]:
        values, column = view.values(check)
        for side, bound in (("low", check.lower), ("high", check.upper)):
            if bound is None:
                continue
            limit = view.bound(rule, check, bound)
            margin = values - limit if side == "low" else limit - values
            slack = SLACK.get(QUANTITIES[check.column].unit, 0.001)
            with np.errstate(invalid="ignore"):
                broken = margin < -slack
            if rule.needs_cover:
                broken &= ~view.uncovered
            for stretch in view.stretches(broken):
                worst = _worst(margin, stretch, view.path)
                numbers = (float(values[worst]), float(limit[worst]), float(margin[worst]))
                draft = self._numbered(rule, check, bound, view, stretch, worst, numbers, column[worst], side)
                yield with_tolerance(draft, self.settings, check, side)
            yield from self._at_risk(rule, check, bound, view, values, limit, margin, column, side, broken)
        for reason, sentence in check.absent.items():
            mark = (view.reason(check.column) == reason) & np.isnan(values) & ~view.uncovered
            for stretch in view.stretches(mark):
                middle = int(stretch.stations[len(stretch.stations) // 2])
                draft = self._plain(rule, view, stretch, middle, sentence, "", f"{check.column}.{reason}")
                bound = check.upper or check.lower
                assert bound is not None
                remedy, harm = fill(bound.remedy, {}), bound.harm or rule.harm
                yield replace(
                    draft,
                    finding=replace(
                        draft.finding, remedy=remedy, harm=harm, quantity=check.judged, column=check.column
                    ),
                )

    def _at_risk(
        self, rule: Rule, check: Check, bound: Bound, view: PathView, values: np.ndarray, limit: np.ndarray,
        margin: np.ndarray, column: np.ndarray, side: str, broken: np.ndarray,
    ) -> Iterator[_Draft]:  # fmt: skip
        """Stretches inside the limit as drawn that leave it in the worst case of their tolerance."""
        tolerance = tolerance_of(self.settings, check)
        if tolerance is None:
            return
        slack = SLACK.get(QUANTITIES[check.column].unit, 0.001)
        with np.errstate(invalid="ignore"):
            risky = (margin - tolerance < -slack) & ~broken
        if rule.needs_cover:
            risky &= ~view.uncovered
        for stretch in view.stretches(risky):
            worst = _worst(margin, stretch, view.path)
            nominal = float(values[worst])
            off = nominal - tolerance if side == "low" else nominal + tolerance
            numbers = (off, float(limit[worst]), float(margin[worst]) - tolerance)
            draft = self._numbered(rule, check, bound, view, stretch, worst, numbers, column[worst], side)
            found = replace(draft.finding, value=nominal, margin=float(margin[worst]))
            yield at_risk(replace(draft, finding=found), self.settings, check, side)

    def _numbered(
        self, rule: Rule, check: Check, bound: Bound, view: PathView, stretch: Stretch, worst: int,
        numbers: tuple[float, float, float], column: str, side: str,
    ) -> _Draft:  # fmt: skip
        value, limit, margin = numbers
        key = check.column
        names = view.numbers_at(worst, rule) | {"value": value, "limit": limit}
        by = float(evaluate(bound.change, names))
        words = {
            "value": value_text(value, key),
            "limit": value_text(limit, key),
            "median": value_text(names["median"], key) if "median" in names else "",
            "collapse": value_text(self.settings.collapse, "gap"),
            "size": value_text(abs(value), key),
            "size_limit": value_text(abs(limit), key),
            "percent": f"{100 * value:.0f} %",
        }
        if np.isfinite(by) and by > 0:
            words["by"] = amount(by, bound.change_unit or QUANTITIES[key].unit)
        says = fill(bound.says, words)
        if bound.grave:
            grave = float(evaluate(bound.grave, names))
            if (value > grave) if side == "high" else (value < grave):
                says += " " + fill(bound.grave_says, {"grave": value_text(grave, key)})
        draft = self._plain(
            rule, view, stretch, worst, says, fill(bound.remedy, words), f"{check.column}.{side}"
        )
        return replace(
            draft,
            finding=replace(
                draft.finding, harm=bound.harm or rule.harm, quantity=check.judged, column=column,
                value=value, limit=limit, margin=margin,
                unit=QUANTITIES[key].unit,
            ),
        )  # fmt: skip

    def _plain(
        self, rule: Rule, view: PathView, stretch: Stretch, station: int, says: str, remedy: str, side: str
    ) -> _Draft:
        path = view.path
        finding = self._finding(rule, says, remedy or rule.remedy)
        finding = replace(
            finding,
            contour=path.id,
            at=_point(path.points[station]),
            station=station,
            from_s=stretch.from_s,
            to_s=stretch.to_s,
            length_mm=stretch.length,
            faces=self._faces(path, station),
        )
        place = None if stretch.is_whole else view.place(stretch.middle)
        return _Draft(finding, f"{side}.{path.id if stretch.is_whole else ''}", place, stretch.stations)

    def _finding(self, rule: Rule, says: str, remedy: str) -> Finding:
        return Finding(
            id="", rule=rule.key, severity=self.settings.severity(rule.key), quantity=rule.quantities[0],
            column="", value=None, limit=None, unit=rule.unit, margin=None, joint=self.joint.id, contour=None,
            at=None, station=None, from_s=None, to_s=None, length_mm=None, faces=(), message=says,
            harm=rule.harm, remedy=remedy,
        )  # fmt: skip

    def _faces(self, path: PathSurvey, station: int) -> tuple[tuple[str, int], ...]:
        survey = self.joint.survey
        pairs = (
            (survey.rib_part, int(path.rib_face[station])),
            (survey.counter_part, int(path.cover_face[station])),
        )
        return tuple((part, face) for part, face in pairs if part and face >= 0)

    def _whole(self, key: str, words: Mapping[str, str], also: tuple[str, ...] = ()) -> _Draft:
        """A finding about the whole seam of the joint."""
        rule = RULES[key]
        finding = self._finding(rule, fill(rule.says, words), fill(rule.remedy, words))
        length = sum(view.path.length for view in self.seam.paths)
        first = self.seam.paths[0].path if self.seam.paths else None
        finding = replace(
            finding,
            length_mm=float(length),
            at=None
            if first is None or not len(first.points)
            else _point(first.points[len(first.points) // 2]),
            contour=first.id if first is not None and len(self.seam.paths) == 1 else None,
            also=also,
        )
        return _Draft(finding, "whole", None)

    # Rules that look at something other than a column

    def _drawn_welded(self) -> bool:
        """Whether all of the seam overlaps by the planned collapse."""
        within = self.settings.limit("drawn-welded", "within")
        low, high = self.seam.pooled("gap_min"), self.seam.pooled("gap_max")
        values = np.concatenate([low, high])
        values = values[np.isfinite(values)]
        return bool(len(values)) and bool(
            np.all(np.abs(values + self.settings.collapse) <= within + SLACK["mm"])
        )

    def _holes(self) -> Iterator[_Draft]:
        rule = RULES["cover-hole"]
        for view in self.seam.paths:
            for stretch in view.stretches(view.uncovered):
                middle = int(stretch.stations[len(stretch.stations) // 2])
                reason = view.uncovered_reason(middle)
                why = {"hole": "a hole", "no-cover": "the rib runs on beyond the cover"}[reason]
                yield self._plain(rule, view, stretch, middle, fill(rule.says, {"reason": why}), "", "hole")

    def _not_measured(self, rules: Sequence[Rule], drawn_welded: bool) -> Iterator[_Draft]:
        """Stretches where a column of a must-fix rule has no value for a reason that is not innocent."""
        rule = RULES["not-measured"]
        must = [
            r
            for r in rules
            if self.settings.severity(r.key) == MUST_FIX and not (r.key == "contact-gap" and drawn_welded)
        ]
        for view in self.seam.paths:
            waiting = waiting_for(must, view)
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
                says = fill(rule.says, {"what": "; ".join(parts)})
                draft = self._plain(rule, view, stretch, middle, says, "", missing[0])
                yield replace(
                    draft,
                    finding=replace(
                        draft.finding,
                        quantity=missing[0],
                        column=missing[0],
                        unit=QUANTITIES[missing[0]].unit,
                    ),
                )

    def _interface_travel(self, drafts: Sequence[_Draft]) -> Iterator[_Draft]:
        """The free travel over the whole interface, with its places."""
        rule = RULES["sink-travel"]
        check, bound = rule.checks[0], rule.checks[0].lower
        assert bound is not None
        entry = self.joint.survey.interface.get("free_travel")
        if not entry:
            return
        limit = float(evaluate(bound.formula, self.seam.constants(rule)))
        known = [d.finding for d in drafts if d.finding.rule == "sink-travel"]
        for place in (entry, *entry.get("places", ())):
            value, at = place.get("value"), place.get("at")
            tolerance = tolerance_of(self.settings, check) if place is entry else None
            is_broken = value is not None and value < limit - SLACK["mm"]
            is_risky = value is not None and value - (tolerance or 0.0) < limit - SLACK["mm"]
            if value is None or not (is_broken or is_risky):
                continue
            if any(_is_same_place(f, value, at, self.seam) for f in known):
                continue
            words = {
                "value": value_text(value, check.column),
                "limit": value_text(limit, check.column),
                "collapse": value_text(self.settings.collapse, "gap"),
                "by": amount(limit - value + (0.0 if is_broken else tolerance or 0.0), "mm"),
            }
            says = " ".join(filter(None, [fill(bound.says, words), _sentence(place.get("why"))]))
            finding = replace(
                self._finding(rule, says, fill(bound.remedy, words)),
                column=check.column, value=float(value), limit=limit, margin=float(value) - limit,
                at=None if at is None else _point(np.asarray(at, dtype=float)),
                faces=tuple((f["part"], f["face"]) for f in place.get("faces", ())),
            )  # fmt: skip
            draft = _Draft(finding, "interface", None if at is None else np.asarray(at, dtype=float))
            settle = with_tolerance if is_broken else at_risk
            draft = settle(draft, self.settings, check, "low")
            known.append(draft.finding)
            yield draft

    def _applies(self, rule: Rule) -> bool:
        """An optional rule applies where the joint has one of its quantities at all."""
        if not rule.optional:
            return True
        survey = self.joint.survey
        return any(
            check.column in survey.interface or any(check.column in path.columns for path in survey.paths)
            for check in rule.checks
        )

    def _interface_value(self, rule: Rule, check: Check) -> Iterator[_Draft]:
        """One value of the whole interface against its bounds."""
        entry = self.joint.survey.interface.get(check.column, {})
        value, at = entry.get("value"), entry.get("at")
        for side, bound in (("low", check.lower), ("high", check.upper)):
            if bound is None or value is None:
                continue
            limit = float(evaluate(bound.formula, self.seam.constants(rule)))
            margin = value - limit if side == "low" else limit - value
            slack = SLACK.get(QUANTITIES[check.column].unit, 0.001)
            is_broken = margin < -slack
            if not is_broken and not margin - (tolerance_of(self.settings, check) or 0.0) < -slack:
                continue
            words = {
                "value": value_text(value, check.column),
                "limit": value_text(limit, check.column),
                "collapse": value_text(self.settings.collapse, "gap"),
                "why": str(entry.get("why") or ""),
                "by": amount(
                    abs(margin - (0.0 if is_broken else tolerance_of(self.settings, check) or 0.0)),
                    QUANTITIES[check.column].unit,
                ),
            }
            finding = replace(
                self._finding(rule, fill(bound.says, words), fill(bound.remedy, words)),
                column=check.column, value=float(value), limit=limit, margin=float(margin),
                at=None if at is None else _point(np.asarray(at, dtype=float)),
                faces=tuple((f["part"], f["face"]) for f in entry.get("faces", ())),
            )  # fmt: skip
            place = None if at is None else np.asarray(at, dtype=float)
            settle = with_tolerance if is_broken else at_risk
            yield settle(_Draft(finding, f"{check.column}.{side}", place), self.settings, check, side)

    def _junctions(self) -> Iterator[_Draft]:
        rule = RULES["seam-junction"]
        for name, place in sorted(self.joint.survey.junctions.items()):
            ends = [e for view in self.seam.paths for e in view.path.ends]
            words = {"count": str(ends.count(f"junction:{name}"))}
            finding = self._finding(rule, fill(rule.says, words), rule.remedy)
            yield _Draft(replace(finding, at=_point(place)), "junction", np.asarray(place, dtype=float))

    def _left_out_on_flat(self) -> tuple[str, ...]:
        return tuple(
            key
            for key, rule in RULES.items()
            if not rule.for_flat_overlap and self.settings.severity(key) == MUST_FIX and self._applies(rule)
        )

    # The open seam, with what describes the same cause merged into it

    def _with_open_seam(self, drafts: list[_Draft]) -> list[_Draft]:
        width = self.seam.median("rib_width")
        reach = (width / 2 if np.isfinite(width) else 0.5) + 0.5
        result = list(drafts)
        for draft, near in self._open_places(reach):
            same = [d for d in result if _describes(d, near)]
            also = dict.fromkeys(["rib-missing", *(d.finding.rule for d in same)])
            result = [d for d in result if not any(d is s for s in same)]
            result.append(replace(draft, finding=replace(draft.finding, also=tuple(also))))
        return result

    def _open_places(self, reach: float) -> Iterator[tuple[_Draft, dict[str, np.ndarray]]]:
        """Each open place as a finding, with the stations near it: path id -> (n,) bool."""
        rule = RULES["seam-open"]
        taken = set()
        for gap in self.joint.survey.interruptions:
            taken |= set(gap.ends)
            says = f"The rib is interrupted for {value_text(gap.length, 'rib_height')}."
            yield self._at_ends(rule, says, gap, reach)
        for view in self.seam.paths:
            path = view.path
            for end, mark in zip((0, -1), path.ends, strict=False):
                if mark == "open" and (path.id, end) not in taken:
                    alone = Interruption(0.0, path.points[end], ((path.id, end),))
                    yield self._at_ends(rule, rule.says, alone, reach)
            no_rib = view.reason("rib_height") == "no-rib"
            for stretch in view.stretches(no_rib):
                middle = int(stretch.stations[len(stretch.stations) // 2])
                says = f"The rib is missing for {value_text(stretch.length, 'rib_height')}."
                near = view.within(stretch.from_s - reach, stretch.length + 2 * reach)
                yield self._plain(rule, view, stretch, middle, says, "", "no-rib"), {path.id: near}

    def _at_ends(
        self, rule: Rule, says: str, gap: Interruption, reach: float
    ) -> tuple[_Draft, dict[str, np.ndarray]]:
        views = {view.path.id: view for view in self.seam.paths}
        near: dict[str, np.ndarray] = {}
        for name, end in gap.ends:
            view = views[name]
            start = 0.0 if end == 0 else view.path.length - reach
            mark = view.within(start, reach)
            near[name] = near.get(name, np.zeros(len(mark), bool)) | mark
        name, end = gap.ends[0]
        path = views[name].path
        at = 0.0 if end == 0 else float(path.length)
        station = 0 if end == 0 else len(path.s) - 1
        finding = replace(
            self._finding(rule, says, rule.remedy),
            contour=name, at=_point(gap.at), station=station, from_s=at, to_s=at, length_mm=float(gap.length),
            faces=self._faces(path, station),
        )  # fmt: skip
        return _Draft(finding, "open", np.asarray(gap.at, dtype=float)), near


def tolerance_of(settings: Settings, check: Check) -> float | None:
    """How far (+-) what a check judges may differ from the drawing; None where nothing is set."""
    tolerances = settings.tolerances
    found = tolerances.get(check.judged, tolerances.get(check.column))
    return None if found is None else float(found)


def with_tolerance(draft: _Draft, settings: Settings, check: Check, side: str) -> _Draft:
    """The draft with tolerance and worst case, where a tolerance is set."""
    tolerance, value = tolerance_of(settings, check), draft.finding.value
    if tolerance is None or value is None:
        return draft
    worst = value - tolerance if side == "low" else value + tolerance
    return replace(draft, finding=replace(draft.finding, tolerance=tolerance, worst_case=worst))


def at_risk(draft: _Draft, settings: Settings, check: Check, side: str) -> _Draft:
    """A draft of a value that holds its limit as drawn, but not in the worst case: attention at most."""
    draft = with_tolerance(draft, settings, check, side)
    found = draft.finding
    assert found.tolerance is not None and found.worst_case is not None and found.limit is not None
    title = QUANTITIES[check.column].title
    name, key = title[0].upper() + title[1:], check.column
    says = (
        f"{name} is {value_text(found.value or 0.0, key)} as drawn and holds the limit of "
        f"{value_text(found.limit, key)}; with the tolerance of ±{value_text(found.tolerance, key)} the worst "
        f"case is {value_text(found.worst_case, key)}, which does not."
    )
    severity = ATTENTION if found.severity == MUST_FIX else found.severity
    found = replace(found, message=says, severity=severity, state=AT_RISK)
    return replace(draft, finding=found, side=f"{draft.side}.risk")


def _without_replaced(drafts: Sequence[_Draft]) -> list[_Draft]:
    """The drafts without those that a graver rule reports at the same place; it names them in ``also``."""
    kept: list[_Draft] = []
    also: dict[int, list[str]] = {}
    for draft in drafts:
        graver = REPLACED_BY.get(draft.finding.rule)
        same = [i for i, d in enumerate(drafts) if d.finding.rule == graver and _overlap(d, draft)]
        if not same:
            kept.append(draft)
        for i in same:
            also.setdefault(i, []).append(draft.finding.rule)
    named = {
        id(drafts[i]): replace(
            drafts[i],
            finding=replace(drafts[i].finding, also=tuple(dict.fromkeys((*drafts[i].finding.also, *rules)))),
        )
        for i, rules in also.items()
    }
    return [named.get(id(draft), draft) for draft in kept]


def _overlap(one: _Draft, other: _Draft) -> bool:
    if one.stations is None or other.stations is None:
        return one.stations is other.stations  # both about the whole interface
    if one.finding.contour != other.finding.contour:
        return False
    return bool(np.isin(one.stations, other.stations).any())


def _describes(draft: _Draft, near: Mapping[str, np.ndarray]) -> bool:
    """Whether a finding lies wholly near an open place and would say the same of it."""
    finding = draft.finding
    if finding.rule not in _MERGED_WITH_MISSING_RIB or draft.stations is None or finding.contour is None:
        return False
    if finding.contour not in near:
        return False
    return bool(np.all(near[finding.contour][draft.stations]))


def _worst(margin: np.ndarray, stretch: Stretch, path: PathSurvey) -> int:
    """The station with the smallest margin; of equally bad ones the one nearest to the stretch's middle."""
    values = margin[stretch.stations]
    equal = stretch.stations[values <= np.nanmin(values) + _TIE]
    from_start = (
        (path.s[equal] - stretch.from_s) % path.length if path.closed else path.s[equal] - stretch.from_s
    )
    return int(equal[np.argmin(np.abs(from_start - stretch.length / 2))])


def _point(place: np.ndarray) -> tuple[float, float, float]:
    x, y, z = (float(c) for c in place)
    return x, y, z


def _sentence(why: object) -> str:
    """What the survey says about a place, if it is a sentence and no mere reason code."""
    return why if isinstance(why, str) and " " in why else ""


def _reason_text(reason: str) -> str:
    return REASONS.get(reason, "no reason given").rstrip(".").lower() if reason else "no reason given"


def _is_same_place(finding: Finding, value: float, at: Sequence[float] | None, seam: SeamView) -> bool:
    if finding.value is None or at is None or value < finding.value - 0.01:
        return False
    if finding.contour is None:
        return finding.at is not None and float(np.linalg.norm(np.subtract(finding.at, at))) < _SAME_PLACE
    view = next(v for v in seam.paths if v.path.id == finding.contour)
    on = view.within(finding.from_s or 0.0, finding.length_mm or 0.0)
    return bool(
        np.any(np.linalg.norm(view.path.points[on] - np.asarray(at, dtype=float), axis=1) < _SAME_PLACE)
    )
