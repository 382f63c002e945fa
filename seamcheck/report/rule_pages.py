"""The pages docs/rules.md and docs/quantities.md, made from the declarations.

``python -m seamcheck.report.rule_pages`` writes them anew after a rule or quantity was added.
"""

from __future__ import annotations

from pathlib import Path

from seamcheck.catalogue.cautions import CAUTIONS
from seamcheck.catalogue.known import OF_DEFAULTS, standing_sentence
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import ACCEPTED_EVERYWHERE, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.report.explain import bounds_in_words, judged_by, limits_in_words, without_amount
from seamcheck.report.joint_drawing import LETTERS, joint_drawing
from seamcheck.settings.declared import RENAMED, SETTINGS
from seamcheck.settings.settings import Settings

DOCS = Path(__file__).parents[2] / "docs"


def rules_page() -> str:
    """docs/rules.md."""
    settings = Settings()
    lines = ["# Rules", "", "Made from the declarations in `seamcheck/catalogue/rules.py`; do not edit here.", ""]
    lines += ["Where a number comes from is written beside it:", ""]
    lines += [f"- **{key}**: {standing_sentence(key)}" for key in OF_DEFAULTS]
    lines += ["", "| rule | severity | default limit | standing |", "|---|---|---|---|"]
    for rule in RULES.values():
        words = limits_in_words(rule, settings)
        lines.append(f"| [{rule.key}](#{rule.key}) | {rule.severity} | {words} | {rule.standing} |")
    lines += [
        "",
        "A place that breaks a **must-fix** rule makes the verdict *fail*; one that breaks an **attention** "
        "rule makes it *attention*; a **note** changes nothing. Every number and severity can be set in "
        "`seamcheck.toml`.",
        "",
        "What could not be measured never counts as a pass: a column of a must-fix rule without a value is "
        "a finding of `not-measured`, except where the reason is accepted:",
        "",
        *(f"- `{key}`: {text}." for key, text in ACCEPTED_EVERYWHERE.items()),
        *_further_accepted(),
        "",
    ]
    for rule in RULES.values():
        lines += _rule(rule, settings)
    lines += ["## Cautions", "", *(f"{caution}\n" for caution in CAUTIONS)]
    return "\n".join(lines).rstrip() + "\n"


def quantities_page() -> str:
    """docs/quantities.md."""
    lines = [
        "# Quantities",
        "",
        "Made from the declarations in `seamcheck/catalogue/quantities.py`; do not edit here.",
        "",
        "![The joint in section, with the letters that definitions use](joint.svg)",
        "",
    ]
    lines += ["Letters stand for what the drawing shows:", ""]
    lines += [f"- `{letter}`: {meaning}" for letter, meaning in LETTERS.items()]
    lines += [
        "",
        "With the rib on the cover everything is mirrored. What else decides a value stands [below](#in-detail).",
        "",
        "| key | unit | definition | judged by |",
        "|---|---|---|---|",
    ]
    for q in QUANTITIES.values():
        rules = ", ".join(f"[{key}](rules.md#{key})" for key in judged_by(q.key))
        lines.append(f"| `{q.key}` | {'' if q.unit == '1' else q.unit} | {q.definition} | {rules} |")
    lines += ["", "## In detail", ""]
    lines += [f"- `{q.key}`: {q.detail}" for q in QUANTITIES.values() if q.detail]
    lines += ["", "## Why something is not measured", ""]
    lines += [f"- `{key}`: {text}" for key, text in REASONS.items()]
    return "\n".join(lines) + "\n"


def settings_page() -> str:
    """docs/settings.md."""
    lines = [
        "# Settings",
        "",
        "Made from the declarations in `seamcheck/settings/declared.py`; do not edit here. Limits of rules stand in "
        "[rules.md](rules.md). `seamcheck settings --write seamcheck.toml` writes a file with all of them, and "
        "`seamcheck explain NAME` explains one.",
        "",
        'A number without a unit is in the unit beside it; text may carry another one of the same kind: `"0.02 in"`, '
        '`"2 bar"`, `"60 %"`. Numbers of `[material]` may also be `[value, low, high]`.',
        "",
        "| key | unit | default | from | to | what it is | standing of the default |",
        "|---|---|---|---|---|---|---|",
    ]
    for setting in SETTINGS.values():
        default = "" if setting.default is None else f"{setting.default:g}"
        unit = "" if setting.unit == "1" else setting.unit
        cells = (f"`{setting.key}`", unit, default, f"{setting.least:g}", f"{setting.most:g}", setting.what)
        lines.append(f"| {' | '.join(cells)} | {setting.standing_in_words()} |")
    lines += ["", "Where a default comes from:", ""]
    lines += [f"- **{key}**: {standing_sentence(key)}" for key in (*OF_DEFAULTS, "your own")]
    lines += ["", "## Renamed", "", "An old key in a settings file is answered with the new one:", ""]
    lines += [f"- `{old}` is now {new}." for old, new in RENAMED.items()]
    return "\n".join(lines) + "\n"


def _further_accepted() -> list[str]:
    """Reasons that are accepted for single columns only, as lines."""
    found: dict[tuple[str, str], list[str]] = {}
    for rule in RULES.values():
        for check in rule.checks:
            for why, text in check.accepted_reasons.items():
                columns = found.setdefault((why, text), [])
                if check.column not in columns:
                    columns.append(check.column)
    return [
        f"- `{why}` for {', '.join(f'`{column}`' for column in columns)}: {text}."
        for (why, text), columns in found.items()
    ]


def _rule(rule: Rule, settings: Settings) -> list[str]:
    lines = [f"## {rule.key}", "", f"**{rule.title}.** {rule.what}", ""]
    for check in rule.checks:
        for word, bound in (("at least", check.lower), ("at most", check.upper)):
            for words in () if bound is None else bounds_in_words(bound, rule, settings):
                lines.append(f"- `{check.column}` {word} {words}")
    remedies = dict.fromkeys([*(b.remedy for b in rule.bounds()), *([rule.remedy] if rule.remedy else [])])
    lines += [
        f"- Severity: {rule.severity}",
        f"- Standing of the number: {rule.standing}. {rule.standing_text}",
        f"- Harm: {rule.harm}",
        *(f"- Do: {without_amount(remedy)}" for remedy in remedies),
        "",
    ]
    return lines


if __name__ == "__main__":
    DOCS.mkdir(exist_ok=True)
    (DOCS / "rules.md").write_text(rules_page(), encoding="utf-8")
    (DOCS / "joint.svg").write_text(f"{joint_drawing()}\n", encoding="utf-8")
    (DOCS / "quantities.md").write_text(quantities_page(), encoding="utf-8")
    (DOCS / "settings.md").write_text(settings_page(), encoding="utf-8")
