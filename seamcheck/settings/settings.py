"""Settings of a review: planned collapse, roles, every limit and severity, waivers, each with its origin."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from msgspec import Struct, field
from msgspec.structs import force_setattr, replace

from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.setting import Setting
from seamcheck.errors import UsageError
from seamcheck.settings.declared import (
    CLAMP,
    LOAD,
    MATERIAL,
    NUMBERS,
    RENAMED,
    SCANNER,
    TABLES,
    TEXTS,
    TRIAL,
    USUAL_INDEX,
)
from seamcheck.settings.reading import SettingFault, Table, blamed_on, check, choice, direction, number, text, unknown
from seamcheck.settings.tables import (
    Clamp,
    Light,
    Load,
    Scanner,
    Trial,
    Written,
    read_clamp,
    read_load,
    read_scanner,
    read_tolerances,
    read_trial,
)
from seamcheck.settings.waivers import Waiver, read_waivers

if TYPE_CHECKING:
    from seamcheck.settings.material import MaterialSettings

Optics = tuple[float | None, float | None]
"""Width of the spot at the rib, mm, and refractive index of the cover."""

DEFAULT, FILE, OPTION, MODEL = "default", "file", "option", "model"
"""Where a setting comes from; an option wins over the file, the file over the model, the model over the default."""


def default_limits() -> dict[str, float]:
    """'rule.name' -> default of every limit."""
    limits = ((f"{rule.key}.{limit.name}", limit.default) for rule in RULES.values() for limit in rule.limits)
    return {key: default for key, default in limits if default is not None}


class Settings(Struct, frozen=True):
    """What a review goes by; frozen, picklable, without anything of the model.

    Attributes
    ----------
    collapse, beam_margin, station_spacing, lateral_play, intended_stop, second_collapse : mm, see declared.NUMBERS
    cover, base : part name or id, None to find them
    beam : (3,) beam direction, not necessarily of length 1; None to find it
    limits : 'rule.name' -> value, all of them
    severities : rule -> severity or 'off', all of them
    waivers : accepted findings
    material : materials and process, None without a ``[material]`` table
    scanner : where the light comes from, None without a ``[scanner]`` table
    clamp : the clamp tool
    load : what the weld has to hold, None without a ``[load]`` table
    trial : what tools, path and cycle of a trial go by; a review takes no notice of it
    optics : joint id, '' for every other joint -> (spot mm, index of the cover), each None where the materials give
        none; follows from ``material``, and is all of it that measuring goes by
    tolerances : quantity -> how far (+-) it may differ from the drawing
    origins : key -> 'file' or 'option' for what is not a default
    file : name of the settings file, without folders; '' without one
    today : the day that decides about waivers; None takes the clock's
    """

    collapse: float = NUMBERS["collapse"].default or 0.0
    beam_margin: float = NUMBERS["beam-margin"].default or 0.0
    station_spacing: float = NUMBERS["station-spacing"].default or 0.0
    lateral_play: float = NUMBERS["lateral-play"].default or 0.0
    intended_stop: float = NUMBERS["intended-stop"].default or 0.0
    second_collapse: float = NUMBERS["second-collapse"].default or 0.0
    cover: str | None = None
    base: str | None = None
    beam: tuple[float, float, float] | None = None
    limits: Mapping[str, float] = field(default_factory=default_limits)
    severities: Mapping[str, str] = field(default_factory=lambda: {r.key: r.severity for r in RULES.values()})
    waivers: tuple[Waiver, ...] = ()
    material: MaterialSettings | None = None
    scanner: Scanner | None = None
    clamp: Clamp = field(default_factory=Clamp)
    load: Load | None = None
    trial: Trial = field(default_factory=Trial)
    optics: Mapping[str, Optics] = field(default_factory=dict)
    tolerances: Mapping[str, float] = field(default_factory=dict)
    origins: Mapping[str, str] = field(default_factory=dict)
    file: str = ""
    today: date | None = None

    def __post_init__(self) -> None:
        if self.material is not None:
            found = self.material.optics()
            if self.scanner is None:  # light along the beam is not refracted
                found = {joint: (spot, None) for joint, (spot, _) in found.items()}
            is_told = any(value is not None for own in found.values() for value in own)
            force_setattr(self, "optics", found if is_told else {})
        for setting in NUMBERS.values():
            with blamed_on((setting.name,)):
                check(setting.name, getattr(self, setting.attribute), setting)
        for rule in RULES.values():
            for limit in rule.limits:
                key = f"{rule.key}.{limit.name}"
                with blamed_on(("limits", rule.key, limit.name)):
                    check(key, self.limits[key], limit)
            low, high = (self.limits.get(f"{rule.key}.{name}") for name in ("min", "max"))
            if low is not None and high is not None and rule.fails == "outside" and low > high:
                said = f"{rule.key}: min ({low:g}) lies above max ({high:g}); nothing could hold that."
                raise SettingFault(("limits", rule.key), said)

    def light(self, joint: str = "") -> Light:
        """What measuring goes by of the light onto a joint."""
        spot, index = self.optics.get(joint, self.optics.get("", (None, None)))
        given = None if self.scanner is None else self.scanner.index
        found = next((value for value in (given, index) if value is not None), USUAL_INDEX)
        return Light(spot, self.scanner, found, self.beam_margin)

    def limit(self, rule: str, name: str) -> float:
        """One number of a rule."""
        return self.limits[f"{rule}.{name}"]

    def value(self, setting: Setting) -> float | None:
        """Value of a setting that is no limit, in its unit; None where it is not set and has no default."""
        table, _, section = setting.table.partition(".")
        if table == "material":
            found = None if self.material is None else self.material.get(f"{section}.{setting.name}")
            return setting.default if found is None else found.value
        holder = {"scanner": self.scanner, "clamp": self.clamp, "load": self.load, "trial": self.trial}.get(table, self)
        return setting.default if holder is None else getattr(holder, setting.attribute)

    def severity(self, rule: str) -> str:
        """Severity of a rule, or 'off'."""
        return self.severities[rule]

    def origin(self, key: str) -> str:
        """'default', 'file' or 'option' of a key: 'collapse', 'rib-width.min', 'rib-width.severity' ..."""
        return self.origins.get(key, DEFAULT)

    def travel_reserve(self) -> float:
        """mm that must be left of the free travel: less where a tolerance of it is judged, unless it was set."""
        is_own = self.origin("sink-travel.reserve") != DEFAULT
        is_judged = "free_travel" in self.tolerances and not is_own
        return self.limit("sink-travel", "toleranced" if is_judged else "reserve")

    def materials(self) -> MaterialSettings | None:
        """Materials and process, completed by what other tables hold; None without a ``[material]`` table."""
        if self.material is None:
            return None
        from seamcheck.settings.material import completed

        travel, height = self.travel_reserve(), self.limit("rib-height", "reserve")
        reserves = {
            "process.travel_reserve": (travel, self.origin("sink-travel.reserve") != DEFAULT),
            "process.height_reserve": (height, self.origin("rib-height.reserve") != DEFAULT),
        }
        return completed(self.material, self.tolerances, self.clamp.pressure, reserves)

    def with_called_out(self, stated: Mapping[str, float]) -> Settings:
        """A copy with tolerances that the model states; those of the settings win."""
        if not stated:
            return self
        new = {key: value for key, value in stated.items() if key not in self.tolerances}
        origins = {**self.origins, **{f"tolerance.{key}": MODEL for key in new}}
        return replace(self, tolerances={**self.tolerances, **new}, origins=origins)

    def with_part(self, role: str, part: str) -> Settings:
        """A copy that names the part to take as 'cover' or 'base'."""
        return replace(self, cover=part if role == "cover" else self.cover, base=part if role == "base" else self.base)

    def changed(self, values: Mapping[str, Any], origin: str = OPTION) -> Settings:
        """A copy with other values.

        Parameters
        ----------
        values : key -> value; keys as in the settings file ('collapse', 'beam', 'rib-width.min',
            'rib-width.severity', 'scanner.distance'), '_' counts as '-'; numbers may be text with a unit. The
            tables 'scanner', 'clamp', 'load', 'trial', 'tolerance' and 'material' also whole, as a mapping; None takes
            one away
        origin : what is remembered about them

        Raises
        ------
        UsageError : an unknown key or a value that can't be taken
        """
        table: dict[str, Any] = {}
        for given, value in values.items():
            path = path_of(given.replace("_", "-"))
            if path[0] in _AS_TABLE and len(path) > 1:
                _change_entry(table.setdefault(path[0], _AS_TABLE[path[0]](self)), path[1:], given, value)
            else:
                inner = table
                for key in path[:-1]:
                    inner = inner.setdefault(key, {})
                is_typed = isinstance(value, Written)
                inner[path[-1]] = value.as_table() if is_typed else value
        return read(table, self, origin)


_AS_TABLE: dict[str, Callable[[Settings], dict[str, Any]]] = {
    "scanner": lambda settings: settings.scanner.as_table() if settings.scanner else {},
    "clamp": lambda settings: settings.clamp.as_table(),
    "load": lambda settings: settings.load.as_table() if settings.load else {},
    "trial": lambda settings: settings.trial.as_table(),
    "tolerance": lambda settings: dict(settings.tolerances),
    "material": lambda settings: {} if settings.material is None else _copy(settings.material.written),
}
"""Tables that are read as a whole: one changed entry goes with the others."""


def _copy(table: Mapping[str, Any]) -> dict[str, Any]:
    return {key: _copy(value) if isinstance(value, Mapping) else value for key, value in table.items()}


def _change_entry(table: dict[str, Any], path: tuple[str, ...], given: str, value: Any) -> None:
    """Put one entry into a table that is read as a whole."""
    if given.startswith(("tolerance", "material")):  # their entries are written with '_'
        path = tuple(key.replace("-", "_") for key in path)
    for key in path[:-1]:
        table = table.setdefault(key, {})
    if path == ("distance",):
        table.pop("telecentric", None)
    if path == ("telecentric",) and str(value).lower() == "true":
        table.pop("distance", None)
    table[path[-1]] = value


def read(
    table: Mapping[str, Any], over: Settings | None = None, origin: str = FILE, folder: Path | None = None
) -> Settings:
    """Settings of a table as it was written, over other settings.

    Parameters
    ----------
    table : as the file holds it: numbers, 'joint', 'limits', 'scanner' ...
    over : what counts where the table says nothing; None for the defaults
    origin : what is remembered about the values
    folder : beside which files lie that it names

    Raises
    ------
    SettingFault : an unknown key or a value that can't be taken; it has the path of that entry
    """
    over = over or Settings()
    top = Table(table, (), "")
    top.only((*NUMBERS, *TABLES), "setting")
    fields: dict[str, Any] = {}
    origins = dict(over.origins)
    for setting in NUMBERS.values():
        if setting.name in table:
            fields[setting.attribute] = top.number(setting)
            origins[setting.name] = origin
    if "joint" in table:
        fields |= _joint(top.table("joint", ""))
        origins |= dict.fromkeys(table["joint"], origin)
    if "limits" in table:
        limits, severities = _limits(top.table("limits"))
        fields["limits"], fields["severities"] = {**over.limits, **limits}, {**over.severities, **severities}
        origins |= dict.fromkeys((*limits, *(f"{rule}.severity" for rule in severities)), origin)
    if "waivers" in table:
        fields["waivers"] = read_waivers(table["waivers"])
    if "material" in table:
        from seamcheck.settings.material import read_material

        fields["material"], fields["optics"] = read_material(table["material"]), {}
    for key, name, take in (
        ("scanner", "scanner", read_scanner),
        ("clamp", "clamp", read_clamp),
        ("load", "load", read_load),
        ("trial", "trial", read_trial),
        ("tolerance", "tolerances", lambda written: read_tolerances(written, folder)),
    ):
        if key in table:
            fields[name] = take(table[key])
            origins[key] = origin
    return replace(over, origins=origins, **fields)


_TAKERS: dict[str, Callable[[str, Any], Any]] = {"cover": text, "base": text, "beam": direction}


def _joint(table: Table) -> dict[str, Any]:
    table.only(TEXTS, "setting")
    return {key: table.maybe(key, None, _TAKERS[key]) for key in table.values}


def _limits(table: Table) -> tuple[dict[str, float], dict[str, str]]:
    """'rule.name' -> value and rule -> severity, of what the table holds."""
    limits: dict[str, float] = {}
    severities: dict[str, str] = {}
    table.only(RULES, "rule")
    for rule in table.values:
        entries, known = table.table(rule, rule), {limit.name: limit for limit in RULES[rule].limits}
        for name in entries.values:
            if f"{rule}.{name}" in RENAMED:
                raise SettingFault((*entries.path, name), f"{rule}.{name} is now {RENAMED[f'{rule}.{name}']}.")
        entries.only((*known, "severity"), f"limit of {rule}")
        for name in entries.values:
            if name == "severity":
                severities[rule] = entries.at(name, choice, SEVERITIES)
            else:
                limits[f"{rule}.{name}"] = entries.at(name, number, known[name])
    return limits, severities


def path_of(key: str) -> tuple[str, ...]:
    """Path in the settings file of a setting such as 'rib-width.min' or 'beam'; UsageError for an unknown one."""
    table, _, rest = key.partition(".")
    if key in NUMBERS or (table in _AS_TABLE and (rest or key == table)):
        return tuple(key.split("."))
    if key in TEXTS:
        return "joint", key
    if table in RULES and (key in all_limit_keys() or key in RENAMED):
        return "limits", table, rest
    raise UsageError(unknown(key, (*NUMBERS, *TEXTS, *_TABLE_KEYS, *all_limit_keys()), "setting"))


_TABLE_KEYS: tuple[str, ...] = (
    *_AS_TABLE,
    *(setting.key for setting in (*SCANNER.values(), *CLAMP.values(), *LOAD.values(), *TRIAL.values(), *MATERIAL)),
    "scanner.axis",
    "scanner.telecentric",
)


def all_limit_keys() -> tuple[str, ...]:
    """'rule.name' of every limit and 'rule.severity' of every rule."""
    keys = []
    for rule in RULES.values():
        keys += [f"{rule.key}.{limit.name}" for limit in rule.limits]
        keys.append(f"{rule.key}.severity")
    return tuple(keys)
