"""The settings file ``seamcheck.toml``: found, read and checked, and written with every limit explained."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from datetime import date, datetime
from pathlib import Path
from typing import Any

from seamcheck.catalogue.rule import STANDINGS
from seamcheck.catalogue.rules import RULES
from seamcheck.errors import UsageError
from seamcheck.settings.guard import text_of
from seamcheck.settings.settings import (
    FILE,
    NUMBERS,
    TEXTS,
    Settings,
    direction,
    nearest,
    number,
    part_name,
    severity,
)
from seamcheck.settings.tables import READERS, as_lines
from seamcheck.settings.tables import TABLES as INTERFACE_TABLES
from seamcheck.settings.waivers import Waiver

NAME = "seamcheck.toml"

_TABLES = ("joint", "limits", "waivers", "material", *INTERFACE_TABLES)
_WAIVER_KEYS = ("rule", "reason", "at", "radius", "contour", "from", "to", "joint", "until")


def find_settings_file(model: Path) -> Path | None:
    """The nearest ``seamcheck.toml`` beside the model or in a folder above it."""
    for folder in model.resolve().parents:
        if (folder / NAME).is_file():
            return folder / NAME
    return None


def read_settings(path: Path) -> Settings:
    """Settings of one file, over the defaults.

    Raises
    ------
    UsageError : the file can't be read, is not TOML, or has a key or value that can't be taken; the sentence
        names file and line, and the nearest key that exists
    """
    text = text_of(path, "the settings file")
    return parse_settings(text, str(path), path.name)


def parse_settings(text: str, where: str = NAME, name: str = NAME) -> Settings:
    """Settings of a file's text; ``where`` stands in errors, ``name`` in the settings."""
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    try:
        table = tomlkit.parse(text).unwrap()
    except TOMLKitError as why:
        line = getattr(why, "line", None)
        at = f", line {line}" if line else ""
        message = re.sub(r" at line \d+ col \d+$", "", str(why)).rstrip(".")
        raise UsageError(f"{where}{at}: this is not valid TOML: {message}.") from None
    except RecursionError:
        raise UsageError(f"{where}: this is nested too deep.") from None
    except ValueError as why:  # a number of thousands of digits, a day that does not exist
        raise UsageError(f"{where}: this is not valid TOML: {why}.") from None
    return _Reader(where, name, _lines_of_keys(text)).settings(table)


class _Reader:
    """Walks the parsed table; knows on which line each key stands."""

    def __init__(self, where: str, name: str, lines: Mapping[tuple[str, ...], int]) -> None:
        self.where, self.name, self.lines = where, name, lines

    def settings(self, table: Mapping[str, Any]) -> Settings:
        fields: dict[str, Any] = {"file": self.name}
        limits = dict(Settings().limits)
        severities = dict(Settings().severities)
        origins: dict[str, str] = {}
        valid = (*NUMBERS, *_TABLES)
        for key, value in table.items():
            if key in NUMBERS:
                fields[NUMBERS[key].attribute] = self.ask((key,), number, key, value, NUMBERS[key].unit)
                origins[key] = FILE
            elif key == "joint":
                fields |= self.joint(value, origins)
            elif key == "limits":
                self.limits(value, limits, severities, origins)
            elif key == "waivers":
                fields["waivers"] = self.waivers(value)
            elif key == "material":
                fields["material"] = self.material(value)
            elif key in INTERFACE_TABLES:
                fields |= self.interface(key, value, origins)
            else:
                self.unknown((key,), key, valid)
        try:
            return Settings(limits=limits, severities=severities, origins=origins, **fields)
        except UsageError as why:  # a value out of range: the sentence begins with its key
            key = re.split(r"[: ]", str(why), maxsplit=1)[0]
            rule, _, limit = key.partition(".")
            raise self.fault(("limits", rule, limit) if rule in RULES else (key,), str(why)) from None

    def joint(self, table: Any, origins: dict[str, str]) -> dict[str, Any]:
        fields: dict[str, Any] = {}
        for key, value in self.table(("joint",), table).items():
            if key not in TEXTS:
                self.unknown(("joint", key), key, tuple(TEXTS))
            if key == "beam":
                fields[key] = self.ask(("joint", key), direction, value)
            else:
                fields[key] = self.ask(("joint", key), part_name, key, value)
            origins[key] = FILE
        return fields

    def limits(self, table: Any, limits: dict[str, float], severities: dict[str, str], origins: dict[str, str]) -> None:
        for rule, values in self.table(("limits",), table).items():
            if rule not in RULES:
                self.unknown(("limits", rule), rule, tuple(RULES), "rule")
            names = tuple(limit.name for limit in RULES[rule].limits)
            for name, value in self.table(("limits", rule), values).items():
                path, key = ("limits", rule, name), f"{rule}.{name}"
                if name == "severity":
                    severities[rule] = self.ask(path, severity, rule, value)
                elif name in names:
                    limits[key] = self.ask(path, number, key, value, RULES[rule].limit(name).unit)
                else:
                    self.unknown(path, name, (*names, "severity"), f"limit of {rule}")
                origins[key] = FILE

    def waivers(self, entries: Any) -> tuple[Waiver, ...]:
        if not isinstance(entries, list):
            raise self.fault(("waivers",), "waivers are written as [[waivers]], one table for each")
        return tuple(self.waiver(("waivers", str(i)), entry) for i, entry in enumerate(entries))

    def waiver(self, path: tuple[str, ...], entry: Any) -> Waiver:
        entry = self.table(path, entry)
        for key in entry:
            if key not in _WAIVER_KEYS:
                self.unknown((*path, key), key, _WAIVER_KEYS, "entry of a waiver")
        rule, reason = entry.get("rule"), entry.get("reason")
        if rule is None:
            raise self.fault(path, 'a waiver needs a rule, such as rule = "clamp-land"')
        if rule not in RULES:
            self.unknown((*path, "rule"), str(rule), tuple(RULES), "rule")
        if not isinstance(reason, str) or not reason.strip():
            raise self.fault(path, 'a waiver needs a reason, such as reason = "accepted after trial welds"')
        if ("at" in entry) == ("contour" in entry):
            raise self.fault(
                path, 'a waiver needs one place: at = [x, y, z] with a radius, or contour = "c1" (from, to)'
            )
        if ("from" in entry) != ("to" in entry) or ("from" in entry and "contour" not in entry):
            raise self.fault(path, "a stretch is written with contour, from and to together")
        values: dict[str, Any] = {}
        if "at" in entry:
            at = entry["at"]
            if not isinstance(at, list) or len(at) != 3:
                raise self.fault((*path, "at"), f"at must be three coordinates [x, y, z]; got {at!r}")
            values["at"] = tuple(self.ask((*path, "at"), number, "at", v, "mm") for v in at)
        for key, name in (("radius", "radius"), ("from", "from_s"), ("to", "to_s")):
            if key in entry:
                values[name] = self.ask((*path, key), number, key, entry[key], "mm")
        if values.get("radius", 1.0) <= 0:
            raise self.fault((*path, "radius"), f"radius must be above 0; got {values['radius']:g}")
        for key in ("contour", "joint"):
            if key in entry:
                values[key] = self.ask((*path, key), part_name, key, entry[key])
        if "until" in entry:
            values["until"] = self.day((*path, "until"), entry["until"])
        origin = f"{self.name}, line {self.line(path)}"
        return Waiver(rule=rule, reason=reason.strip(), origin=origin, **values)

    def day(self, path: tuple[str, ...], value: Any) -> date:
        if isinstance(value, datetime):
            return value.date()
        if isinstance(value, date):
            return value
        try:
            return date.fromisoformat(value)
        except (TypeError, ValueError):
            raise self.fault(path, f"until must be a day such as 2027-06-30; got {value!r}") from None

    def material(self, table: Any) -> Mapping[str, Any]:
        from seamcheck.settings.material import MaterialSettings

        table = self.table(("material",), table)
        self.ask_table("material", MaterialSettings.from_table, table)
        return table

    def interface(self, key: str, table: Any, origins: dict[str, str]) -> dict[str, Any]:
        origins[key] = FILE
        name, read, _ = READERS[key]
        more = (Path(self.where).parent,) if key == "tolerance" else ()
        return {name: self.ask_table(key, lambda entries: read(entries, *more), self.table((key,), table))}

    def table(self, path: tuple[str, ...], value: Any) -> Mapping[str, Any]:
        if not isinstance(value, dict):
            raise self.fault(path, f"{'.'.join(path)} must be a table; got {value!r}")
        return value

    def ask(self, path: tuple[str, ...], function: Any, *arguments: Any) -> Any:
        try:
            return function(*arguments)
        except UsageError as why:
            raise self.fault(path, str(why)) from None

    def ask_table(self, key: str, read: Callable[[Mapping[str, Any]], Any], table: Mapping[str, Any]) -> Any:
        """What a reader makes of a whole table; an error is given the line of the entry that it is about."""
        try:
            return read(table)
        except UsageError as why:
            raise self.fault((key, *_culprit(read, table, str(why))), str(why)) from None

    def unknown(self, path: tuple[str, ...], word: str, valid: tuple[str, ...], kind: str = "setting") -> None:
        near = nearest(word, valid)
        hint = f"did you mean {near!r}?" if near else f"there are: {', '.join(valid)}."
        raise self.fault(path, f"there is no {kind} {word!r}; {hint}")

    def fault(self, path: tuple[str, ...], sentence: str) -> UsageError:
        end = "" if sentence.endswith((".", "?")) else "."
        return UsageError(f"{self.where}, line {self.line(path)}: {sentence}{end}")

    def line(self, path: tuple[str, ...]) -> int:
        """Line of a key, or of the nearest table that holds it."""
        for end in range(len(path), 0, -1):
            if path[:end] in self.lines:
                return self.lines[path[:end]]
        return 1


def _culprit(read: Callable[[Mapping[str, Any]], Any], table: Mapping[str, Any], said: str) -> tuple[str, ...]:
    """Path of the entry of a table without which its reader does not say what it said; () where none is alone to blame.

    An entry without which all is well goes before one without which something else is said and that is named.
    """

    def complaint(entries: Mapping[str, Any]) -> str:
        try:
            read(entries)
        except UsageError as why:
            return str(why)
        return ""

    left = {gone: complaint({k: v for k, v in table.items() if k != gone}) for gone in table}
    blamed = [key for key, what in left.items() if not what]
    blamed += [key for key, what in left.items() if what not in ("", said) and key in said]
    if not blamed:
        return ()
    key, value = blamed[0], table[blamed[0]]
    if isinstance(value, list):
        without = (complaint({**table, key: value[:i] + value[i + 1 :]}) for i in range(len(value)))
        return (key, *(str(i) for i, what in enumerate(without) if what != said))[:2]
    if not isinstance(value, Mapping):
        return (key,)
    return (key, *_culprit(lambda entries: read({**table, key: entries}), value, said))


_HEADER = re.compile(r"\s*(\[\[?)\s*([^\[\]]+?)\s*\]\]?\s*(?:#.*)?$")
_KEY = re.compile(r"""\s*((?:[\w-]+|"[^"]*"|'[^']*')(?:\s*\.\s*(?:[\w-]+|"[^"]*"|'[^']*'))*)\s*=""")


def _lines_of_keys(text: str) -> dict[tuple[str, ...], int]:
    """Dotted path of every key and table -> its line from 1 on; tables in [[lists]] carry their number."""
    found: dict[tuple[str, ...], int] = {}
    counts: dict[tuple[str, ...], int] = {}
    table: tuple[str, ...] = ()
    quote = ""  # inside a text over several lines
    for at, line in enumerate(text.splitlines(), 1):
        if quote:
            quote = "" if line.count(quote) % 2 else quote
            continue
        header = _HEADER.match(line)
        key = _KEY.match(line)
        if header:
            table = _split(header[2])
            if header[1] == "[[":
                counts[table] = counts.get(table, -1) + 1
                table = (*table, str(counts[table]))
            found.setdefault(table, at)
        elif key:
            path = (*table, *_split(key[1]))
            for end in range(len(table) + 1, len(path) + 1):
                found.setdefault(path[:end], at)
        quote = next((q for q in ('"""', "'''") if line.count(q) % 2), "")
    return found


def _split(dotted: str) -> tuple[str, ...]:
    return tuple(m.strip("\"'") for m in re.findall(r"""[\w-]+|"[^"]*"|'[^']*'""", dotted))


def as_toml(settings: Settings | None = None) -> str:
    """The settings as the text of a settings file, every number and limit explained; reads back the same."""
    settings = settings or Settings()
    lines = [
        *_comment(
            "Settings of seamcheck. Put this file beside the model, or in a folder above it, as "
            "seamcheck.toml. Everything is optional: what is left out keeps its default. A number without a "
            "unit is in mm, ° or "
            'a plain share; text may carry another unit: "0.02 in", "10 %".'
        ),
        "",
    ]
    for n in NUMBERS.values():
        value = getattr(settings, n.attribute)
        lines += [f"# {n.what} ({n.standing})", f"{n.key} = {_plain(value)}  # {n.unit}", ""]
    lines += ["[joint]", "# Leave these out to have cover, base and light found."]
    for key, what in TEXTS.items():
        value = getattr(settings, key)
        example = '"-z"' if key == "beam" else '"name of the part"'
        lines.append(f"{key} = {_plain(value)}  # {what}" if value is not None else f"# {key} = {example}  # {what}")
    lines.append("")
    lines += _comment("Where the numbers come from: " + " ".join(f"{key}: {text}" for key, text in STANDINGS.items()))
    lines += _comment("severity is must-fix, attention, note or off.")
    for rule in RULES.values():
        lines += ["", *_comment(f"{rule.title}. {rule.what}")]
        lines += _comment(f"Harm where it is broken: {rule.harm}")
        lines += _comment(f"Standing: {rule.standing}. {rule.standing_text}")
        lines.append(f"[limits.{rule.key}]")
        for limit in rule.limits:
            unit = "" if limit.unit == "1" else f"{limit.unit}, "
            value = settings.limit(rule.key, limit.name)
            lines.append(f"{limit.name} = {_plain(value)}  # {unit}{limit.what}")
        lines.append(f"severity = {_plain(settings.severity(rule.key))}")
    lines += ["", *as_lines(settings.scanner, settings.clamp, settings.tolerances)]
    lines += [*_waivers_as_toml(settings), *_material_as_toml(settings)]
    return "\n".join(lines).rstrip() + "\n"


def _waivers_as_toml(settings: Settings) -> list[str]:
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
        lines += ["", "[[waivers]]", f"rule = {_plain(w.rule)}"]
        if w.at is not None:
            lines += [f"at = {_plain(w.at)}", f"radius = {_plain(w.radius)}"]
        else:
            lines.append(f"contour = {_plain(w.contour)}")
        if w.from_s is not None:
            lines += [f"from = {_plain(w.from_s)}", f"to = {_plain(w.to_s)}"]
        if w.joint:
            lines.append(f"joint = {_plain(w.joint)}")
        lines.append(f"reason = {_plain(w.reason)}")
        if w.until is not None:
            lines.append(f"until = {w.until.isoformat()}")
    return [*lines, ""]


def _material_as_toml(settings: Settings) -> list[str]:
    from seamcheck.settings.material_template import settings_template

    if settings.material is None:
        return settings_template().splitlines()
    import tomlkit

    return tomlkit.dumps({"material": settings.material}).splitlines()


def _plain(value: Any) -> str:
    import tomlkit

    return tomlkit.item(list(value) if isinstance(value, tuple) else value).as_string()


def _comment(text: str) -> list[str]:
    import textwrap

    return [f"# {line}" for line in textwrap.wrap(text, 108)]
