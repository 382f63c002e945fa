"""A surveyed joint as judging sees it: columns with substitutes, bounds everywhere, medians."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.formula import evaluate, names
from seamcheck.catalogue.interface_rules import NEEDS
from seamcheck.catalogue.kinds import PLAIN_WALL
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import ACCEPTED_EVERYWHERE, OFF, Bound, Check, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.findings import JointResult
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import MERGE, Stretch, bridged, cell_lengths, grown, stretches, weighted_median
from seamcheck.settings.settings import Settings

RIB_MISSING, TRAPS_MISSING = "rib-missing", "traps-missing"

NO_SHOULDERS = frozenset(
    {RIB_MISSING, "rib-height", "slenderness", "flank-draft", "trap-room", "trap-side", "trap-corner", "lip-gap"}
)
"""Rules about the shoulders of a rib: the top of a plain wall has none, and melts all the same."""

_ON_LAPS = (RIB_MISSING, "contact-gap", "model-doubt", "joint-left-out")

_NO_COVER = ("hole", "no-cover")
_COVER_COLUMNS = ("cover_thickness", "cover_thickness_min", "cover_thickness_max")


class Step(Struct, frozen=True, eq=False):
    """One bound at every station of a path: (n,) ``limit``, and the severity of a value beyond it."""

    limit: np.ndarray
    severity: str

    def margin(self, values: np.ndarray, side: str) -> np.ndarray:
        """(n,) how far inside of a 'low' or 'high' bound the values lie; negative beyond it."""
        return np.asarray(values - self.limit if side == "low" else self.limit - values)


class JudgedSeam:
    """All paths of one joint."""

    def __init__(self, joint: JointResult, settings: Settings) -> None:
        self.survey, self.settings = joint.survey, settings
        self.is_flat = joint.rib_on == "none"
        self.kind = joint.kind
        self.paths = [JudgedPath(path, self) for path in joint.survey.paths if len(path.s)]
        self._medians: dict[str, float] = {}
        self._main_spans: dict[tuple[str, float], tuple[float, float]] = {}
        self._constants: dict[str, dict[str, float]] = {}

    def judges(self, rule: Rule) -> bool:
        """Whether a rule is in force and speaks of joints of this kind.

        A lap has one fault, the rib that it lacks, and nothing that follows from it is judged; where the settings
        switch that rule off, a lap is what is wanted, and the rules for flat contact judge it.
        """
        if self.settings.severity(rule.key) == OFF:
            return False
        if self.is_flat:
            if self.settings.severity(RIB_MISSING) != OFF:
                return rule.key in _ON_LAPS
            return rule.for_flat_overlap
        if self.kind == PLAIN_WALL:
            return rule.key not in NO_SHOULDERS
        return rule.key not in (RIB_MISSING, TRAPS_MISSING)

    def pooled(self, key: str) -> np.ndarray:
        """One column over all paths."""
        columns = [view.column(key) for view in self.paths]
        return np.concatenate(columns) if columns else np.zeros(0)

    def median(self, key: str) -> float:
        """Median of a column over the whole seam, each station counting as long as its part of the path."""
        if key not in self._medians:
            weights = self.weights()
            self._medians[key] = weighted_median(self.pooled(key), weights) if len(weights) else float("nan")
        return self._medians[key]

    def main_span(self, quantity: str, width: float) -> tuple[float, float]:
        """Least and largest value on the main part of the seam, see main_span() below."""
        key = (quantity, width)
        if key not in self._main_spans:
            least, most = self.pooled(f"{quantity}_min"), self.pooled(f"{quantity}_max")
            self._main_spans[key] = main_span(least, most, self.weights(), width)
        return self._main_spans[key]

    def weights(self) -> np.ndarray:
        """(n,) mm, length of seam that each station of all paths stands for."""
        weights = [cell_lengths(v.path.s, v.path.length, v.path.closed) for v in self.paths]
        return np.concatenate(weights) if weights else np.zeros(0)

    def steps(self, rule: Rule, bound: Bound) -> tuple[tuple[str, str], ...]:
        """(formula, severity) of each bound that holds for this joint, the gravest first."""
        return bound.steps(self.settings.severity(rule.key), self.is_flat, bool(self._unproven(bound)))

    def constants(self, rule: Rule) -> dict[str, float]:
        """What a bound can be made from without looking at a station."""
        if rule.key not in self._constants:
            self._constants[rule.key] = self._constants_of(rule)
        return self._constants[rule.key]

    def _constants_of(self, rule: Rule) -> dict[str, float]:
        own = {limit.name: self.settings.limit(rule.key, limit.name) for limit in rule.limits}
        if rule.key == "sink-travel":
            own["reserve"] = self._reserve_of_travel()
        planned = {"collapse": self.settings.collapse, "second_collapse": self.settings.second_collapse}
        unproven = {key: value for bound in rule.bounds() for key, value in self._unproven(bound).items()}
        return {**planned, **unproven, **own}

    def _unproven(self, bound: Bound) -> dict[str, float]:
        """What the survey found that is not proven, and that the bound takes into account; {} where there is none."""
        found = {key: self.survey.interface.get(key, {}).get("value") for key in names(bound.unproven or "0")}
        return {key: float(value) for key, value in found.items() if value is not None}

    def _reserve_of_travel(self) -> float:
        """mm on top of the collapse: none before an intended stop, less where a tolerance of the travel is judged."""
        if self.settings.intended_stop > 0:
            return -self.settings.limit("intended-stop", "within")
        return self.settings.travel_reserve()

    def constant(self, rule: Rule, formula: str) -> float:
        """A bound that needs no station."""
        return float(evaluate(formula, self.constants(rule)))


class JudgedPath:
    """One path."""

    def __init__(self, path: PathSurvey, seam: JudgedSeam) -> None:
        self.path, self.seam = path, seam
        gone = np.zeros(len(path.s), dtype=bool)
        for key in _COVER_COLUMNS:
            gone |= np.isin(self.reason(key), _NO_COVER)
        self.uncovered = gone
        """(n,) bool: no plastic of the cover over the rib."""
        self._limits: dict[tuple[str, str, str], np.ndarray] = {}

    def column(self, key: str) -> np.ndarray:
        """(n,) float; all NaN where the survey has no such column."""
        values = self.path.columns.get(key)
        return np.full(len(self.path.s), np.nan) if values is None else np.asarray(values, dtype=float)

    def reason(self, key: str) -> np.ndarray:
        """(n,) text."""
        reasons = self.path.reasons.get(key)
        return np.full(len(self.path.s), "") if reasons is None else np.asarray(reasons).astype(str)

    def values(self, check: Check) -> tuple[np.ndarray, np.ndarray]:
        """(n,) values that a check judges, and (n,) the column that each comes from."""
        values = self.column(check.column).copy()
        source = np.full(len(values), check.column, dtype=object)
        reason = self.reason(check.column)
        for why, value in check.value_for_reason.items():
            values[np.isnan(values) & (reason == why)] = value
        if check.substitute:
            there = np.isnan(values) & (reason == check.substitute_reason)
            values[there] = self.column(check.substitute)[there]
            source[there] = check.substitute
        return values, source

    def judged_values(self, check: Check, bound: Bound) -> np.ndarray:
        """(n,) values that a bound judges: NaN where a column is known that the bound only stands in for."""
        values = self.values(check)[0].copy()
        for column in bound.stands_in_for:
            values[np.isfinite(self.column(column))] = np.nan
        return values

    def steps(self, rule: Rule, check: Check, bound: Bound) -> list[Step]:
        """The bounds at every station, the gravest first."""
        return [Step(self.limit(rule, check, text), severity) for text, severity in self.seam.steps(rule, bound)]

    def limit(self, rule: Rule, check: Check, formula: str) -> np.ndarray:
        """(n,) a bound's formula at every station."""
        key = (rule.key, check.judged, formula)
        if key not in self._limits:
            self._limits[key] = self._limit_of(rule, check, formula)
        return self._limits[key]

    def _limit_of(self, rule: Rule, check: Check, formula: str) -> np.ndarray:
        known: dict[str, object] = dict(self.seam.constants(rule))
        for name in names(formula):
            if name == "median":
                known[name] = self.seam.median(check.judged)
            elif name in ("main_least", "main_most"):
                span = self.seam.main_span(check.judged, self.seam.settings.limit(rule.key, "max"))
                known[name] = span[name == "main_most"]
            elif name in QUANTITIES and name not in known:
                column = self.column(name)
                known[name] = np.where(np.isnan(column), self.seam.median(name), column)
        return np.broadcast_to(np.asarray(evaluate(formula, known), dtype=float), self.path.s.shape)

    def numbers_at(self, station: int, rule: Rule) -> dict[str, float]:
        """Everything that a remedy's amount can be made from, at one station."""
        columns = {key: float(self.column(key)[station]) for key in QUANTITIES}
        by_median = {"median", "main_least", "main_most"} & set(rule.needs())
        medians = {"median": self.seam.median(rule.quantities[0])} if by_median else {}
        return {**columns, **medians, **self.seam.constants(rule)}

    def stretches(self, mark: np.ndarray, merge: float = MERGE) -> list[Stretch]:
        """Stretches of (n,) bool, those closer than ``merge`` mm as one; a closed path wraps."""
        return stretches(mark, self.path.s, self.path.length, self.path.closed, merge)

    def beyond(self, margin: np.ndarray, slack: float) -> np.ndarray:
        """(n,) bool: where a margin is missed by more than the measuring error; what lies beside that goes with it.

        A stretch begins where the margin is missed by more than ``slack`` and goes on as long as it is missed by half
        of that, so that values which differ by less than they can be measured to make one stretch.
        """
        with np.errstate(invalid="ignore"):
            return grown(margin < -slack, margin < -slack / 2, self.path.closed)

    def bridged(self, mark: np.ndarray, unknown: np.ndarray) -> np.ndarray:
        return bridged(mark, unknown, self.path.s, self.path.length, self.path.closed)

    def within(self, start: float, length: float) -> np.ndarray:
        """(n,) bool: stations from ``start`` on for ``length`` mm, round the start of a closed path."""
        ahead = self.path.s - start
        if self.path.closed:
            ahead = ahead % self.path.length
        return (ahead >= -1e-9) & (ahead <= length + 1e-9)

    def place(self, s: float) -> np.ndarray:
        """(3,) mm at an arc length, between the stations."""
        path = self.path
        if path.closed:
            at = np.append(path.s, path.s[0] + path.length)
            points = np.vstack([path.points, path.points[:1]])
            s = (s - path.s[0]) % path.length + path.s[0]
        else:
            at, points = path.s, path.points
        return np.array([np.interp(s, at, points[:, i]) for i in range(3)])

    def uncovered_reason(self, station: int) -> str:
        """Why there is no cover over the rib at a station: 'hole' or 'no-cover'."""
        for key in _COVER_COLUMNS:
            reason = str(self.reason(key)[station])
            if reason in _NO_COVER:
                return reason
        raise ValueError(f"station {station} is covered")


def in_force(settings: Settings) -> list[Rule]:
    """All rules; optional ones only where the settings hold what they need."""
    return [
        rule for rule in RULES.values() if not rule.optional or bool(getattr(settings, NEEDS.get(rule.key, "material")))
    ]


def main_span(least: np.ndarray, most: np.ndarray, weights: np.ndarray, width: float) -> tuple[float, float]:
    """Ends of what lies within the span of a width that holds most of a seam.

    Parameters
    ----------
    least, most : (n,) smallest and largest value at each station, NaN where not measured
    weights : (n,) mm, how much of the seam a station stands for
    width : of the span, in the unit of the values

    Returns
    -------
    (least, most) over the stations that lie in the span wholly. Of equally long ones the span nearest to the
    weighted median counts; (NaN, NaN) where no station has both values, or none fits into the width.
    """
    known = np.isfinite(least) & np.isfinite(most)
    low, high, weights = least[known], most[known], weights[known]
    fits = high - low <= width + 1e-9
    if not fits.any():
        return float("nan"), float("nan")
    low, high, weights = low[fits], high[fits], weights[fits]
    if high.max() - low.min() <= width + 1e-9:
        return float(low.min()), float(high.max())
    starts = np.unique(np.round(np.concatenate([low, high - width]), 3))
    inside = (low >= starts[:, None] - 5e-4) & (high <= starts[:, None] + width + 5e-4)
    held = inside @ weights
    best = np.flatnonzero(held >= held.max() * (1 - 1e-9))
    middle = weighted_median((low + high) / 2, weights)
    chosen = inside[best[np.argmin(np.abs(starts[best] + width / 2 - middle))]]
    return float(low[chosen].min()), float(high[chosen].max())


def unmeasured_columns(rules: Sequence[Rule], view: JudgedPath) -> Mapping[str, np.ndarray]:
    """Columns of the rules that have no value for a reason that is not accepted: column -> (n,) bool."""
    accepted: dict[str, set[str]] = {}
    values: dict[str, np.ndarray] = {}
    for rule in rules:
        for check in rule.checks:
            if QUANTITIES[check.column].per == "interface":
                continue
            allowed = accepted.setdefault(check.column, set(ACCEPTED_EVERYWHERE))
            allowed |= {*check.accepted_reasons, *check.failing_reasons}
            values.setdefault(check.column, view.values(check)[0])
    result = {}
    for column, found in values.items():
        mark = np.isnan(found) & ~np.isin(view.reason(column), sorted(accepted[column])) & ~view.uncovered
        if mark.any():
            result[column] = mark
    return result
