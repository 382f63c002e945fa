"""Rules, quantities, reasons and settings explained, as renderables made from their declarations."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

from rich.console import RenderableType
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.known import standing_sentence
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import ATTENTION, Bound, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import shown
from seamcheck.errors import REASONS as REFUSALS
from seamcheck.errors import UsageError
from seamcheck.report.terminal import heading, indented, table
from seamcheck.settings.declared import SETTINGS
from seamcheck.settings.reading import unknown
from seamcheck.settings.settings import Settings


def overview(settings: Settings) -> Iterator[RenderableType]:
    """All rules with their limits, and all quantities."""
    rules = table(("rule", "severity", "limit", "standing"))
    for rule in RULES.values():
        rules.add_row(rule.key, settings.severity(rule.key), limits_in_words(rule, settings), rule.standing)
    yield Text("Rules", style="bold")
    yield rules
    yield from heading("Quantities")
    quantities = table(("quantity", "unit", "judged by"))
    for q in QUANTITIES.values():
        quantities.add_row(q.key, "" if q.unit == "1" else q.unit, ", ".join(judged_by(q.key)))
    yield quantities
    yield Text()
    yield Text("`seamcheck explain NAME` explains one of them: what it is, what harm it does, what to change.")


def page(word: str, settings: Settings) -> Iterator[RenderableType]:
    """One rule, quantity, setting or reason; UsageError with the nearest word where there is none."""
    key = word.strip()
    if key in RULES:
        yield from _rule(RULES[key], settings)
    elif key.replace("-", "_") in QUANTITIES:
        yield from _quantity(key.replace("-", "_"), settings)
    elif key in SETTINGS or key.replace("_", "-") in SETTINGS:
        setting = SETTINGS.get(key) or SETTINGS[key.replace("_", "-")]
        yield Text(f"{setting.key} (setting)", style="bold")
        value = settings.value(setting)
        now = "not set" if value is None else shown(value, setting.unit)
        yield Text(f"{setting.what[0].upper()}{setting.what[1:]}: {now} ({setting.standing_in_words()}).")
    elif key in REASONS:
        yield Text(f"{key} (why something was not measured)", style="bold")
        yield Text(REASONS[key])
    elif key in REFUSALS:
        yield Text(f"{key} (why a model was not reviewed)", style="bold")
        yield Text(REFUSALS[key])
    else:
        raise UsageError(unknown(key, (*RULES, *QUANTITIES, *SETTINGS, *REASONS, *REFUSALS), "rule or quantity"))


def limits_in_words(rule: Rule, settings: Settings) -> str:
    """'min 0.60 mm, max 2.00 mm'; '' for a rule without numbers."""
    return ", ".join(f"{limit.name} {shown(settings.limit(rule.key, limit.name), limit.unit)}" for limit in rule.limits)


def bounds_in_words(bound: Bound, rule: Rule, settings: Settings) -> list[str]:
    """All bounds of one side: 'rib_width at most 2.50 mm', what asks for attention, what holds for a flat lap."""
    said = [bound_in_words(bound.formula, rule, settings)]
    if bound.attention:
        said.append(f"{bound_in_words(bound.attention, rule, settings)}, else {ATTENTION}")
    if bound.unproven:
        unproven = bound_in_words(bound.unproven, rule, settings)
        said.append(f"{unproven} where a number behind it is not proven; between the two bounds {ATTENTION}")
    if bound.on_flat:
        said.append(f"{bound_in_words(bound.on_flat, rule, settings)} for a flat or stepped lap")
    return said


def bound_in_words(formula: str, rule: Rule, settings: Settings) -> str:
    """A bound's formula with its limits filled in: 'collapse + 0.20 mm'."""
    text = formula
    for limit in rule.limits:
        value = shown(settings.limit(rule.key, limit.name), limit.unit)
        text = re.sub(rf"\b{limit.name}\b(?!\()", value, text)
    text = text.replace("main_least", "least on most of the seam").replace("main_most", "largest on most of the seam")
    return text.replace("larger(", "the larger of (").replace("smaller(", "the smaller of (").replace("*", "·")


def _rule(rule: Rule, settings: Settings) -> Iterator[RenderableType]:
    yield Text(f"{rule.key}: {rule.title}", style="bold")
    yield Text(rule.what)
    yield Text()
    for check in rule.checks:
        for word, bound in (("at least", check.lower), ("at most", check.upper)):
            for words in () if bound is None else bounds_in_words(bound, rule, settings):
                yield Text(f"Limit: {check.column} {word} {words}")
    yield Text(f"Standing of the number: {rule.standing}. {standing_sentence(rule.standing)} {rule.standing_text}")
    yield Text(f"Severity: {settings.severity(rule.key)}")
    yield Text()
    yield Text(f"Harm: {rule.harm}")
    for remedy in dict.fromkeys([*(b.remedy for b in rule.bounds()), *([rule.remedy] if rule.remedy else [])]):
        yield Text(f"Do: {without_amount(remedy)}")
    yield Text()
    columns = dict.fromkeys([c.column for c in rule.checks] or rule.quantities)
    for column in columns:
        q = QUANTITIES[column]
        yield Text(f"{q.key}: {q.definition}")
    for check in rule.checks:
        for why, text in check.accepted_reasons.items():
            yield Text(f"Not measured because of {why!r} is no fault of its own: {text}.", style="dim")
    yield Text()
    if rule.limits:
        yield Text("To change it, in seamcheck.toml:")
        yield indented(f"[limits.{rule.key}]", 4)
        for limit in rule.limits:
            value = f"{settings.limit(rule.key, limit.name):g}"
            yield indented(f"{limit.name} = {value}   # {_unit(limit.unit)}{limit.what}", 4)
        first = rule.limits[0].name
        value = f"{settings.limit(rule.key, first):g}"
        yield Text(f"or: seamcheck review MODEL --limit {rule.key}.{first}={value}")
    else:
        yield Text(f"It has no number; its severity can be set: --severity {rule.key}=note")
    yield Text()
    yield Text(SHORT_CAUTION, style="dim")


def _quantity(key: str, settings: Settings) -> Iterator[RenderableType]:
    from seamcheck.report.joint_drawing import letters_in  # needed for this page alone

    q = QUANTITIES[key]
    yield Text(f"{q.key}: {q.title}{'' if q.unit == '1' else f', {q.unit}'}", style="bold")
    yield Text(q.definition)
    if q.detail:
        yield Text(q.detail)
    if letters := letters_in(q.whole_definition):
        yield Text(f"{'; '.join(letters)} (drawn in docs/joint.svg).", style="dim")
    places = {"station": "at every station", "contour": "once for a seam", "interface": "once for the interface"}
    yield Text(f"Measured {places[q.per]}.")
    judged = judged_by(key)
    for name in judged:
        rule = RULES[name]
        words = limits_in_words(rule, settings)
        yield Text(f"Judged by {name} ({settings.severity(name)}){': ' + words if words else ''}")
    if not judged:
        yield Text("No rule judges it; it is shown for information.")


def judged_by(column: str) -> list[str]:
    """Keys of the rules that look at a quantity."""
    return _judges().get(column, [])


@cache
def _judges() -> dict[str, list[str]]:
    """Quantity -> keys of the rules that look at it."""
    found: dict[str, list[str]] = {}
    for rule in RULES.values():
        for column in {*rule.quantities, *(key for c in rule.checks for key in (c.column, c.judged))}:
            found.setdefault(column, []).append(rule.key)
    return found


def _unit(unit: str) -> str:
    return "" if unit == "1" else f"{unit}, "


def without_amount(remedy: str) -> str:
    """A remedy without the part that holds a place's own number."""
    return re.sub(r"\[[^\]]*\]", "", remedy)
