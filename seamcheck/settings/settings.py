"""Settings of a review: planned collapse, roles, every limit and severity, waivers, each with its origin."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import in_unit, shown
from seamcheck.errors import UsageError
from seamcheck.settings.tables import READERS, TABLE_KEYS, Clamp, Scanner, changed_table, is_table_key
from seamcheck.settings.waivers import Waiver

DEFAULT, FILE, OPTION = "default", "file", "option"
"""Where a setting comes from; an option wins over the file, the file over the default."""


@dataclass(frozen=True, slots=True)
class Number:
    """One number that is not the limit of a rule; ``key`` with '_' for '-' is its attribute in Settings."""

    key: str
    default: float
    unit: str
    what: str
    standing: str
    least: float
    most: float

    @property
    def attribute(self) -> str:
        return self.key.replace("-", "_")


NUMBERS: dict[str, Number] = {
    n.key: n
    for n in (
        Number(
            "collapse", 0.4, "mm", "planned collapse: how far the rib melts down",
            "common practice: 0.2 to 0.8 mm; set your own", 0.01, 5.0,
        ),
        Number(
            "beam-margin", 0.0, "mm", "room for the light beside the rib; the clamp land begins beyond it",
            "assumption", 0.0, 20.0,
        ),
        Number(
            "station-spacing", 0.5, "mm", "distance between two stations along the seam",
            "assumption; refined where a quantity changes fast", 0.02, 20.0,
        ),
        Number(
            "lateral-play", 0.0, "mm", "how far the cover may shift sideways in the base while it sinks",
            "assumption", 0.0, 5.0,
        ),
        Number(
            "intended-stop", 0.0, "mm",
            "travel at which a stop is meant to end the collapse; 0 where there is none",
            "of your design", 0.0, 5.0,
        ),
    )
}  # fmt: skip

TEXTS: dict[str, str] = {
    "cover": "name or id of the part to take as the cover",
    "base": "name or id of the part to take as the base",
    "beam": "direction in which the light travels, from the cover into the base",
}
"""Settings that are not numbers."""


def default_limits() -> dict[str, float]:
    """'rule.name' -> default of every limit."""
    return {f"{rule.key}.{limit.name}": limit.default for rule in RULES.values() for limit in rule.limits}


@dataclass(frozen=True, slots=True)
class Settings:
    """What a review goes by; frozen, picklable, without anything of the model.

    Attributes
    ----------
    collapse, beam_margin, station_spacing, lateral_play, intended_stop : mm, see NUMBERS
    cover, base : part name or id, None to find them
    beam : (3,) direction of the light, not necessarily of length 1; None to find it
    limits : 'rule.name' -> value, all of them
    severities : rule -> severity or 'off', all of them
    waivers : accepted findings
    material : the ``[material]`` table as read, None without one
    scanner : where the light comes from, None without a ``[scanner]`` table
    clamp : the clamp tool
    tolerances : quantity -> how far (+-) it may differ from the drawing
    origins : key -> 'file' or 'option' for what is not a default
    file : name of the settings file, without folders; '' without one
    today : the day that decides about waivers; None takes the clock's
    """

    collapse: float = NUMBERS["collapse"].default
    beam_margin: float = NUMBERS["beam-margin"].default
    station_spacing: float = NUMBERS["station-spacing"].default
    lateral_play: float = NUMBERS["lateral-play"].default
    intended_stop: float = NUMBERS["intended-stop"].default
    cover: str | None = None
    base: str | None = None
    beam: tuple[float, float, float] | None = None
    limits: Mapping[str, float] = field(default_factory=default_limits)
    severities: Mapping[str, str] = field(default_factory=lambda: {r.key: r.severity for r in RULES.values()})
    waivers: tuple[Waiver, ...] = ()
    material: Mapping[str, Any] | None = None
    scanner: Scanner | None = None
    clamp: Clamp = field(default_factory=Clamp)
    tolerances: Mapping[str, float] = field(default_factory=dict)
    origins: Mapping[str, str] = field(default_factory=dict)
    file: str = ""
    today: date | None = None

    def __post_init__(self) -> None:
        for number in NUMBERS.values():
            _within(number.key, getattr(self, number.attribute), number.unit, number.least, number.most)
        for rule in RULES.values():
            for limit in rule.limits:
                key = f"{rule.key}.{limit.name}"
                _within(key, self.limits[key], limit.unit, limit.least, limit.most)
            low, high = (self.limits.get(f"{rule.key}.{name}") for name in ("min", "max"))
            if low is not None and high is not None and rule.fails == "outside" and low > high:
                raise UsageError(f"{rule.key}: min ({low:g}) lies above max ({high:g}); nothing could hold that.")

    def limit(self, rule: str, name: str) -> float:
        """One number of a rule."""
        return self.limits[f"{rule}.{name}"]

    def severity(self, rule: str) -> str:
        return self.severities[rule]

    def origin(self, key: str) -> str:
        """'default', 'file' or 'option' of a key: 'collapse', 'rib-width.min', 'rib-width.severity' ..."""
        return self.origins.get(key, DEFAULT)

    def rule_origin(self, rule: str) -> str:
        """Where the numbers of a rule come from: the strongest origin among them."""
        keys = [f"{rule}.{limit.name}" for limit in RULES[rule].limits]
        if "collapse" in RULES[rule].needs():
            keys.append("collapse")
        found = {self.origin(key) for key in keys}
        return next((o for o in (OPTION, FILE) if o in found), DEFAULT)

    def changed(self, values: Mapping[str, Any], origin: str = OPTION) -> Settings:
        """A copy with other values.

        Parameters
        ----------
        values : key -> value; keys as in the settings file ('collapse', 'beam', 'rib-width.min',
            'rib-width.severity', 'scanner.distance'), '_' counts as '-'; numbers may be text with a unit. The
            tables 'scanner', 'clamp' and 'tolerance' also whole, as a mapping; None takes one away
        origin : what is remembered about them

        Raises
        ------
        UsageError : an unknown key or a value that can't be taken
        """
        fields: dict[str, Any] = {}
        limits, severities, origins = dict(self.limits), dict(self.severities), dict(self.origins)
        tables: dict[str, dict[str, Any] | None] = {}
        for given, value in values.items():
            key = known_key(given.replace("_", "-"))
            origins[key.partition(".")[0] if is_table_key(key) else key] = origin
            if is_table_key(key):
                changed_table(tables, key, value, self)
            elif key in NUMBERS:
                fields[NUMBERS[key].attribute] = number(key, value, NUMBERS[key].unit)
            elif key == "beam":
                fields["beam"] = None if value is None else direction(value)
            elif key in TEXTS:
                fields[key] = None if value is None else part_name(key, value)
            elif key.endswith(".severity"):
                rule = key.removesuffix(".severity")
                severities[rule] = severity(rule, value)
            else:
                rule, _, name = key.partition(".")
                limits[key] = number(key, value, RULES[rule].limit(name).unit)
        for table, entries in tables.items():
            name, read, nothing = READERS[table]
            fields[name] = nothing if entries is None else read(entries)
        return replace(self, limits=limits, severities=severities, origins=origins, **fields)


def known_key(key: str) -> str:
    """The key itself; UsageError with the nearest one where it does not exist."""
    if key in NUMBERS or key in TEXTS or key in all_limit_keys() or is_table_key(key):
        return key
    raise UsageError(unknown(key, (*NUMBERS, *TEXTS, *TABLE_KEYS, *all_limit_keys()), "setting"))


def all_limit_keys() -> tuple[str, ...]:
    """'rule.name' of every limit and 'rule.severity' of every rule."""
    keys = []
    for rule in RULES.values():
        keys += [f"{rule.key}.{limit.name}" for limit in rule.limits]
        keys.append(f"{rule.key}.severity")
    return tuple(keys)


def unknown(word: str, valid: Iterable[str], kind: str) -> str:
    """A sentence about a word that does not exist, with the nearest one that does."""
    valid = list(valid)
    near = nearest(word, valid)
    if near:
        return f"There is no {kind} {word!r}. Did you mean {near!r}?"
    if len(valid) <= 8:
        return f"There is no {kind} {word!r}. There are: {', '.join(valid)}."
    return f"There is no {kind} {word!r}. `seamcheck settings` lists all of them."


def nearest(word: str, valid: Iterable[str]) -> str:
    """The valid word most like the given one; '' where none is."""
    plain: dict[str, str] = {}
    for v in valid:  # the first of two that differ only in '-' and '_': a rule before a quantity
        plain.setdefault(v.lower().replace("_", "-"), v)
    found = difflib.get_close_matches(word.lower().replace("_", "-"), plain, n=1, cutoff=0.5)
    return plain[found[0]] if found else ""


def number(key: str, written: Any, unit: str) -> float:
    try:
        return in_unit(written, unit)
    except ValueError as why:
        raise UsageError(f"{key} {why}.") from None


def severity(rule: str, written: Any) -> str:
    if written in SEVERITIES:
        return str(written)
    near = nearest(str(written), SEVERITIES)
    hint = f" Did you mean {near!r}?" if near else ""
    raise UsageError(f"{rule}.severity must be one of {', '.join(SEVERITIES)}; got {written!r}.{hint}")


def part_name(key: str, written: Any) -> str:
    if not isinstance(written, str) or not written.strip():
        raise UsageError(f"{key} must be the name or id of a part; got {written!r}.")
    return written


def direction(written: Any) -> tuple[float, float, float]:
    """(3,) from '-z', 'x,y,z' or three numbers."""
    axes = {"x": (1.0, 0.0, 0.0), "y": (0.0, 1.0, 0.0), "z": (0.0, 0.0, 1.0)}
    how = 'write x,y,z such as 0,0,-1, or an axis such as "-z"'
    values: list[Any] = []
    if isinstance(written, str):
        text = written.strip().lower()
        if text.lstrip("+-") in axes and len(text) <= 2:
            sign = -1.0 if text.startswith("-") else 1.0
            x, y, z = axes[text[-1]]
            return sign * x + 0.0, sign * y + 0.0, sign * z + 0.0
        values = list(text.replace(",", " ").split())
    elif isinstance(written, Iterable):
        values = list(written)
    try:
        x, y, z = (in_unit(v if isinstance(v, str) else float(v), "1") for v in values)
    except (ValueError, TypeError, OverflowError):
        raise UsageError(f"beam must be a direction: {how}; got {str(written)[:80]!r}.") from None
    if x * x + y * y + z * z < 1e-18:
        raise UsageError("beam must be a direction; got one of length 0.")
    return x, y, z


def _within(key: str, value: float, unit: str, least: float, most: float) -> None:
    if not least <= value <= most:
        said = (
            f"between {shown(least, unit)} and {shown(most, unit)}"
            if most < float("inf")
            else (f"at least {shown(least, unit)}")
        )
        raise UsageError(f"{key} must be {said}; got {shown(value, unit)}.")
