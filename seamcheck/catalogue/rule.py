"""The shape of a rule: what is judged, against which bounds, why, and what to do."""

from __future__ import annotations

from msgspec import Struct, field

from seamcheck.catalogue.formula import names
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.setting import Setting

MUST_FIX, ATTENTION, NOTE, OFF = "must-fix", "attention", "note", "off"
SEVERITIES = (MUST_FIX, ATTENTION, NOTE, OFF)
"""'off' is a setting only: the rule is not judged and stands in the list of what was not checked."""

SLACK = {"mm": 0.002, "mm²": 0.002, "1": 0.001, "°": 0.01, "%": 0.01}
"""Unit -> how far a value may lie beyond a bound and still count as holding it: less can't be measured."""

_SLACK_OF = {"corner_radius": 0.03}  # mm: a curvature is less exact than a length; 3 mm are known to 1 %


def slack_of(column: str, unit: str) -> float:
    """How far a column's value may lie beyond a bound and still count as holding it."""
    return _SLACK_OF.get(column, SLACK.get(unit, 0.001))


_ZERO_OF = {
    "draft_inner": 0.05,
    "draft_outer": 0.05,
}  # degrees: flanks that lean out by less lean as measured on chords


def zero_of(column: str, unit: str) -> float:
    """How far below zero a column's value may lie and still be spoken of as zero."""
    return _ZERO_OF.get(column, slack_of(column, unit))


ATTENTION_BOUND = "attention"
"""Name of the limit from which on a must-fix rule asks for attention, before it is broken."""


def severity_at(bound: str, severity: str) -> str:
    """Severity of a value beyond the bound of a limit: a rule that must be fixed is milder at its attention bound."""
    return ATTENTION if bound == ATTENTION_BOUND and severity == MUST_FIX else severity


ACCEPTED_EVERYWHERE = {
    "junction": "where seams meet, a section across one of them has no meaning; the junction is listed",
    "end": "at an open end the section is not whole; the open end is a finding of its own",
    "rib-hole": "where a hole opens in the rib's top, that is a finding of its own",
    "corner": "at a sharp corner a section has no meaning; the corner is a finding of corner-radius",
    "no-rib": "where the rib is missing, that is a finding of its own",
}
"""Reasons for which no quantity is reported as not measured, and why."""


class Bound(Struct, frozen=True):
    """One side on which a value can fail.

    Attributes
    ----------
    formula : the bound, from limit names, ``collapse``, other columns, and of the whole seam ``median``,
        ``main_least`` and ``main_most`` (ends of the span that holds most of the seam)
    attention : bound of the same kind, reached earlier; between the two a must-fix rule is ``attention``
    unproven : bound of the same kind in place of the formula where the value rests on a number from memory or an
        assumption; between the two a must-fix rule is ``attention``
    on_flat : the one bound where no rib melts down (a flat or stepped lap), in place of both
    says : what a finding says; {value} and {limit} are filled in with their unit
    remedy : what to do; the part in [brackets] is left out where the amount {by} is unknown
    change, change_unit : formula and unit of {by}, from ``value``, ``limit`` and the columns at the place
    lengths : further lengths that a remedy names, each with its formula of the same names
    grave, grave_says : a further bound, and what a finding adds beyond it
    stands_in_for : columns that tell more: where one of them is known, this bound is not judged
    harm : what goes wrong on this side, where the rule's harm tells of both
    below_zero : what a finding says instead where the value is negative; {size} is its size
    """

    formula: str
    says: str
    remedy: str
    change: str = "abs(limit - value)"
    change_unit: str = ""
    lengths: tuple[tuple[str, str], ...] = ()
    grave: str = ""
    grave_says: str = ""
    harm: str = ""
    below_zero: str = ""
    attention: str = ""
    unproven: str = ""
    on_flat: str = ""
    stands_in_for: tuple[str, ...] = ()

    def formulas(self) -> tuple[str, ...]:
        """All formulas that a value may be compared with."""
        return tuple(f for f in (self.formula, self.attention, self.unproven, self.on_flat) if f)

    def steps(self, severity: str, is_flat: bool, is_unproven: bool = False) -> tuple[tuple[str, str], ...]:
        """(formula, severity) of each bound that holds for a joint, the gravest first; ``severity`` is the rule's."""
        if is_flat and self.on_flat:
            return ((self.on_flat, severity),)
        milder = severity_at(ATTENTION_BOUND, severity)
        if is_unproven and self.unproven:
            return ((self.unproven, severity), (self.formula, milder))
        full = (self.formula, severity)
        return (full, (self.attention, milder)) if self.attention else (full,)

    def is_below_zero(self, value: float, slack: float) -> bool:
        """Whether a value that is known to ``slack`` is spoken of as below zero."""
        return bool(self.below_zero) and value < -slack


class Check(Struct, frozen=True):
    """One column judged by a rule.

    Attributes
    ----------
    column : of the survey
    quantity : under which a finding stands; the column itself unless that is an edge of the strip
    lower, upper : bounds
    substitute : column that is judged where this one is not measured for a reason in substitute_reason
    value_for_reason : reason -> value that stands for "not there", such as no land at all: 0
    failing_reasons : reason -> what a finding says where the column has no value for it and that alone breaks the rule
    accepted_reasons : further reasons for which this column may stay unmeasured, and why
    """

    column: str
    quantity: str = ""
    lower: Bound | None = None
    upper: Bound | None = None
    substitute: str = ""
    substitute_reason: str = ""
    value_for_reason: dict[str, float] = field(default_factory=dict)
    failing_reasons: dict[str, str] = field(default_factory=dict)
    accepted_reasons: dict[str, str] = field(default_factory=dict)

    @property
    def judged(self) -> str:
        """The quantity under which a finding stands."""
        return self.quantity or self.column


class Rule(Struct, frozen=True):
    """One rule, declared once; help, documents, reports and schema take their words from here.

    Attributes
    ----------
    key, title : 'rib-width', 'Rib width'
    severity : default severity
    fails : 'below', 'above', 'outside', 'size-above', 'uniformity', 'uniformity-share' or 'flag'
    what : the rule in one sentence
    harm : what goes wrong where it is broken
    standing, standing_text : a key of known.OF_DEFAULTS; what to know about the number
    limits : numbers that can be set
    checks : the columns judged; none for rules that look at something other than a column
    quantity : of findings where there are no checks
    says, remedy : of findings where there are no checks
    for_flat_overlap : whether it is judged as well where no rib stands between the parts
    needs_cover : not judged where no plastic of the cover lies over the rib; cover-hole reports that once
    optional : judged only where the survey has its quantity; settings (material, scanner ...) bring those in
    """

    key: str
    title: str
    severity: str
    fails: str
    what: str
    harm: str
    standing: str
    standing_text: str
    limits: tuple[Setting, ...] = ()
    checks: tuple[Check, ...] = ()
    quantity: str = ""
    says: str = ""
    remedy: str = ""
    for_flat_overlap: bool = False
    needs_cover: bool = False
    optional: bool = False

    @property
    def quantities(self) -> tuple[str, ...]:
        """Keys of the quantities under which its findings stand, in order."""
        return tuple(dict.fromkeys(c.judged for c in self.checks)) or (self.quantity,)

    @property
    def unit(self) -> str:
        """Unit of its first quantity."""
        return QUANTITIES[self.quantities[0]].unit

    def limit(self, name: str) -> Setting:
        """One of its limits; StopIteration where it has none of that name."""
        return next(limit for limit in self.limits if limit.name == name)

    def bounds(self) -> tuple[Bound, ...]:
        """All bounds of all checks."""
        return tuple(b for c in self.checks for b in (c.lower, c.upper) if b is not None)

    def needs(self) -> tuple[str, ...]:
        """Names that its bounds are made from, limit names left out."""
        own = {limit.name for limit in self.limits}
        return tuple(sorted({n for b in self.bounds() for f in b.formulas() for n in names(f)} - own))
