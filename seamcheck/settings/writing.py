"""The settings file as text, every number and limit explained."""

from __future__ import annotations

import textwrap
from typing import Any

from seamcheck.catalogue.known import OF_DEFAULTS, standing_sentence
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.setting import Setting
from seamcheck.settings.declared import (
    CLAMP,
    FLATNESS,
    LOAD,
    MATERIAL,
    MATERIAL_SECTIONS,
    NUMBERS,
    PROCESS_TOLERANCES,
    SCANNER,
    TEXTS,
    TRIAL,
)
from seamcheck.settings.settings import Settings
from seamcheck.settings.tables import Load, Scanner


def as_toml(settings: Settings | None = None) -> str:
    """The settings as the text of a settings file, every number and limit explained; reads back the same."""
    settings = settings or Settings()
    lines = [
        *_comment(
            "Settings of seamcheck. Put this file beside the model, or in a folder above it, as seamcheck.toml. "
            "Everything is optional: what is left out keeps its default. A number without a unit is in the unit beside "
            'it; text may carry another one: "0.02 in", "10 %".'
        ),
        "",
        *(_entry(setting, getattr(settings, setting.attribute)) for setting in NUMBERS.values()),
        "",
        *_joint(settings),
        *_limits(settings),
        *_scanner(settings.scanner),
        "# The clamp tool.",
        "[clamp]",
        *(_entry(setting, getattr(settings.clamp, setting.attribute), "2.0") for setting in CLAMP.values()),
        "",
        *_load(settings.load),
        "# For clamp, nest, weld path and cycle of `seamcheck prepare`; a review ignores it.",
        "[trial]",
        *(_entry(setting, getattr(settings.trial, setting.attribute), "1.0") for setting in TRIAL.values()),
        "",
        *_tolerances(settings),
        *_waivers(settings),
        *_material(settings),
    ]
    return "\n".join(lines).rstrip() + "\n"


def _entry(setting: Setting, value: float | None, example: str = "", hide: str = "") -> str:
    """One line: key, value, unit, meaning and standing; a comment where nothing is set."""
    unit = "" if setting.unit == "1" else f"{setting.unit}, "
    about = f"{unit}{setting.what} ({setting.standing_in_words()})"
    if value is None:
        return f"# {setting.name} = {example}  # {about}"
    return f"{hide}{setting.name} = {_plain(value)}  # {about}"


def _joint(settings: Settings) -> list[str]:
    lines = ["[joint]", "# Leave these out to have cover, base and beam found."]
    for key, what in TEXTS.items():
        value = getattr(settings, key)
        example = '"-z"' if key == "beam" else '"name of the part"'
        lines.append(f"{key} = {_plain(value)}  # {what}" if value is not None else f"# {key} = {example}  # {what}")
    return [*lines, ""]


def _limits(settings: Settings) -> list[str]:
    standings = " ".join(f"{key}: {standing_sentence(key)}" for key in OF_DEFAULTS)
    lines = [*_comment(f"Where the numbers come from: {standings}")]
    lines += _comment("severity is must-fix, attention, note or off.")
    for rule in RULES.values():
        lines += ["", *_comment(f"{rule.title}. {rule.what}")]
        lines += _comment(f"Harm where it is broken: {rule.harm}")
        lines += _comment(f"Standing: {rule.standing}. {rule.standing_text}")
        lines.append(f"[limits.{rule.key}]")
        for limit in rule.limits:
            unit = "" if limit.unit == "1" else f"{limit.unit}, "
            lines.append(f"{limit.name} = {_plain(settings.limit(rule.key, limit.name))}  # {unit}{limit.what}")
        lines.append(f"severity = {_plain(settings.severity(rule.key))}")
    return [*lines, ""]


def _scanner(scanner: Scanner | None) -> list[str]:
    given, hide = scanner or Scanner(), "# " if scanner is None else ""
    telecentric = "" if scanner is not None and scanner.is_telecentric else "# "
    at = ", ".join(repr(float(x)) for x in (given.axis or (0.0, 0.0, 0.0)))
    return [
        "# Where the beam comes from. Without this table it is taken as parallel.",
        f"{hide}[scanner]",
        f"{telecentric}telecentric = true  # instead of a distance",
        *(_entry(setting, getattr(given, setting.attribute), "300.0", hide) for setting in SCANNER.values()),
        f"{'# ' if given.axis is None else ''}axis = [{at}]  # a point on the optical axis; left out: over the seam's "
        "middle",
        "",
    ]


def _load(load: Load | None) -> list[str]:
    given, hide = load or Load(), "# " if load is None else ""
    lines = _comment(
        "What the weld has to hold. Without this table it is not evaluated; strength and weld factor have no default. "
        "An estimate from a plate of even thickness, no proof of strength."
    )
    entries = [_entry(setting, getattr(given, setting.attribute), "0.1", hide) for setting in LOAD.values()]
    return [*lines, f"{hide}[load]", *entries, ""]


def _tolerances(settings: Settings) -> list[str]:
    lines = _comment(
        "How far parts may differ from the drawing: quantity = + or - so much, from your own tolerance class. A value "
        "inside its limit by less than that is reported as at risk. Quantities without an entry are judged at their "
        "nominal value only. "
        'file = "tolerances.csv" takes them from a table beside this file: rows of quantity, tolerance. Also, in mm:'
    )
    lines += [f"# {key}: {what}" for key, what in FLATNESS.items()]
    lines += [f"# {key} ({unit}): {what}" for key, (unit, what) in PROCESS_TOLERANCES.items()]
    lines.append("[tolerance]" if settings.tolerances else "# [tolerance]")
    lines += [f"{key} = {value!r}" for key, value in settings.tolerances.items()] or ["# rib_width = 0.05"]
    return [*lines, ""]


def _waivers(settings: Settings) -> list[str]:
    lines = _comment(
        "Waivers: findings that were looked at and accepted. The whole finding must lie within the place. "
        "They stay in every report, marked as waived; one that matches nothing any more is reported."
    )
    if not settings.waivers:
        example = (
            "[[waivers]]",
            'rule = "clamp-land"',
            'at = [61.5, 0.0, 24.0]  # or: contour = "c1", from = 120.0, to = 131.5 (mm along it)',
            "radius = 3.0",
            'reason = "Trial welds were tight with the clamp as built."',
            "until = 2027-06-30  # last day; leave it out for ever",
        )
        return [*lines, *(f"# {line}" for line in example), ""]
    for w in settings.waivers:
        entries = {
            "rule": w.rule,
            "at": w.at,
            "radius": w.radius if w.at is not None else None,
            "contour": w.contour or None,
            "from": w.from_s,
            "to": w.to_s,
            "joint": w.joint or None,
            "reason": w.reason,
            "until": w.until,
        }
        lines += ["", "[[waivers]]", *(f"{key} = {_plain(v)}" for key, v in entries.items() if v is not None)]
    return [*lines, ""]


_SHARED = {
    "tolerance": "What is left out here is taken from [tolerance]: thickness from cover_thickness, width from "
    "rib_width, gap, travel from free_travel, and flatness less what is flattened.",
    "process": "A pressure left out here is taken from [clamp], the reserves from sink-travel and rib-height.",
}


def _material(settings: Settings) -> list[str]:
    if settings.material is None:
        return material_template().splitlines()
    import tomlkit

    return tomlkit.dumps({"material": settings.material.written}).splitlines()


def material_template() -> str:
    """The ``[material]`` part of a settings file, every entry explained and commented out."""
    lines = [
        "# Material, light and process: all optional. Without them the review of the geometry stands alone.",
        "# Every number can also be written as [value, low, high]; ranges of the results come from there.",
        "# [material]",
        '# cover = "PP"          # ISO 1043: symbol, and filler after a hyphen, such as PA6-GF30 or PBT-(GF20+MD10)',
        '# base = "PP-GF30"',
        "# plaques = [[1.0, 55.0], [2.0, 36.0]]   # measured on the cover's grade and colour: [thickness mm, percent]",
        "",
    ]
    for section, title in MATERIAL_SECTIONS.items():
        lines.append(f"# [material.{section}]   # {title}")
        lines += [f"# {text}" for text in (_SHARED.get(section),) if text]
        own = (setting for setting in MATERIAL if setting.table == f"material.{section}")
        lines += [_entry(setting, setting.default, hide="# ") for setting in own]
        lines.append("")
    lines.append("# [material.joints.j2]   # what differs for one joint, in the same shape\n")
    return "\n".join(lines)


def _plain(value: Any) -> str:
    import tomlkit

    return str(tomlkit.item(list(value) if isinstance(value, tuple) else value).as_string())


def _comment(words: str) -> list[str]:
    return [f"# {line}" for line in textwrap.wrap(words, 108, break_on_hyphens=False)]
