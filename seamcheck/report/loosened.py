"""What a settings file makes milder than the defaults. It may be a stranger's, so every output says it at its top."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import tr
from seamcheck.settings.declared import NUMBERS

_SHOWN = 4
"""So many keys of a kind are named; the others are counted."""


def loosened(document: Mapping[str, Any]) -> str:
    """One sentence about limits, rules and waivers of the settings file; '' where it makes nothing milder."""
    settings = document.get("settings") or {}
    if not settings.get("file"):
        return ""
    said = list(_said(document, settings.get("from") or {}))
    if not said:
        return ""
    words = said[0] if len(said) == 1 else tr("{first} and {last}", first=", ".join(said[:-1]), last=said[-1])
    return tr("The settings file {file} {what}.", file=settings["file"], what=words)


def _said(document: Mapping[str, Any], origins: Mapping[str, str]) -> Iterator[str]:
    limits = [entry for entry in document["limits"] if entry.get("from") == "file" and _is_looser(entry)]
    if limits:
        keys = ["{rule}.{name}".format(**entry) for entry in limits]
        one, many = tr("loosens 1 limit ({named})"), tr("loosens {count} limits ({named})")
        yield _told(keys, one, many)
    off, weaker = _severities(document, origins)
    if off:
        yield _told(off, tr("switches 1 rule ({named}) off"), tr("switches {count} rules ({named}) off"))
    if weaker:
        one, many = tr("makes 1 rule ({named}) less severe"), tr("makes {count} rules ({named}) less severe")
        yield _told(weaker, one, many)
    settings = document["settings"]
    wide, narrow = settings["station_spacing_mm"], settings["beam_margin_mm"]
    if origins.get("station-spacing") == "file" and wide > (NUMBERS["station-spacing"].default or 0.0):
        yield tr("looks at the seam only every {length}", length=shown(wide, "mm", 1))
    if origins.get("beam-margin") == "file" and narrow < (NUMBERS["beam-margin"].default or 0.0):
        yield tr("keeps only {length} free beside the beam", length=shown(narrow, "mm", 2))
    begins = f"{settings['file']}, line "  # other waivers come from answers that the user named
    waivers = [waiver for waiver in document.get("waivers") or () if (waiver.get("origin") or "").startswith(begins)]
    if waivers:
        keys = [waiver["rule"] for waiver in waivers]
        yield _told(keys, tr("waives 1 place ({named})"), tr("waives {count} places ({named})"))


def _is_looser(entry: Mapping[str, Any]) -> bool:
    """Whether a limit lets more through than its default; where that has no direction, whether it differs."""
    rule = RULES.get(entry["rule"])
    if rule is None or entry.get("name") is None or entry.get("value") is None:
        return False
    default = next((limit.default for limit in rule.limits if limit.name == entry["name"]), entry["value"])
    more = entry["value"] - default
    if entry["name"] == "min" or (entry["name"] != "max" and rule.fails == "below"):
        return bool(more < 0)
    if entry["name"] == "max" or rule.fails in ("above", "size-above", "uniformity", "uniformity-share"):
        return bool(more > 0)
    return bool(more)


def _severities(document: Mapping[str, Any], origins: Mapping[str, str]) -> tuple[list[str], list[str]]:
    """Rules that the file switches off, and rules that it makes less severe."""
    off, weaker = [], []
    for key in {entry["rule"]: None for entry in document["limits"]}:
        rule = RULES.get(key)
        if rule is None or origins.get(f"{key}.severity") != "file":
            continue
        now = next(entry["severity"] for entry in document["limits"] if entry["rule"] == key)
        if now == "off" and rule.severity != "off":
            off.append(key)
        elif now in SEVERITIES and SEVERITIES.index(now) > SEVERITIES.index(rule.severity):
            weaker.append(key)
    return off, weaker


def _told(keys: Sequence[str], one: str, many: str) -> str:
    """One of two templates, for one key or several, with their count and the first of them."""
    named = ", ".join(keys[:_SHOWN]) + (" ..." if len(keys) > _SHOWN else "")
    return (one if len(keys) == 1 else many).format(count=len(keys), named=named)
