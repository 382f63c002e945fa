"""Materials and process as the ``[material]`` table names them, every number with its standing."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Any

from msgspec import Struct, field
from msgspec.structs import replace

from seamcheck.catalogue.known import Known, assumed, given
from seamcheck.catalogue.pairs import own_pairs
from seamcheck.catalogue.polymers import Compound, PolymerTable, polymer_table
from seamcheck.catalogue.say import say
from seamcheck.errors import UsageError
from seamcheck.settings.declared import FLATNESS, MATERIAL, MATERIAL_SECTIONS
from seamcheck.settings.plaques import Plaque, check_plaques, read_plaques
from seamcheck.settings.reading import SettingFault, Table, blamed_on, known

_TOP = ("cover", "base", "plaques", "polymer", "pairs", "joints", *MATERIAL_SECTIONS)

_FROM_TOLERANCES = {
    "tolerance.thickness": "cover_thickness",
    "tolerance.width": "rib_width",
    "tolerance.gap": "gap",
    "tolerance.travel": "free_travel",
    "tolerance.collapse": "collapse",
    "tolerance.trap": "trap_area",
    "tolerance.cpk": "cpk",
}
"""Number of the material side -> entry of ``[tolerance]`` that it is taken from."""


class MaterialSettings(Struct, frozen=True, eq=False):
    """What the user says of the materials and the process of a joint.

    Attributes
    ----------
    cover, base : the compounds, or None where not named
    plaques : ((thickness mm, percent), ...) as measured; () when none
    numbers : dotted key ('laser.power') -> Known; the given ones, and the defaults of the others
    pairs : the user's own pairs
    table : all polymers that are known
    joints : joint id -> MaterialSettings of that joint, where it differs
    written : the table that it was read from
    """

    cover: Compound | None
    base: Compound | None
    plaques: tuple[tuple[float, float], ...] = ()
    numbers: Mapping[str, Known] = field(default_factory=dict)
    pairs: tuple[dict[str, Any], ...] = ()
    table: PolymerTable | None = None
    joints: Mapping[str, MaterialSettings] = field(default_factory=dict)
    written: Mapping[str, Any] = field(default_factory=dict)

    def get(self, key: str) -> Known | None:
        """Return a number by dotted key, or None where it was not given and has no default."""
        return self.numbers.get(key)

    def index(self) -> Known:
        """Return the cover's refractive index: given, from the polymer table, or assumed."""
        if "light.index" in self.numbers:
            return self.numbers["light.index"]
        if self.cover is not None:
            return self.cover.polymer.get("index")
        return assumed(1.55, "1", say("known.index-unnamed"), 1.42, 1.65)

    def optics(self) -> dict[str, tuple[float | None, float | None]]:
        """Joint id, '' for every other one -> width of the spot (mm) and index of the cover; None where not given."""
        spot = self.get("laser.spot")
        is_known = "light.index" in self.numbers or self.cover is not None
        own = (None if spot is None else spot.value, self.index().value if is_known else None)
        return {"": own, **{joint: settings.optics()[""] for joint, settings in self.joints.items()}}

    def for_joint(self, joint: str) -> MaterialSettings:
        """Return the settings of one joint."""
        return self.joints.get(joint, self)

    @classmethod
    def from_table(cls, table: Mapping[str, Any]) -> MaterialSettings:
        """Return the settings of a ``[material]`` table; UsageError says what is wrong."""
        return _read(Table.of(table, ("material",)))

    def as_dict(self) -> dict[str, Any]:
        """Return the settings as the review document prints them, each number with its standing."""
        return {
            "cover": None if self.cover is None else _compound_dict(self.cover),
            "base": None if self.base is None else _compound_dict(self.base),
            "plaques": [{"thickness_mm": t, "percent": p} for t, p in self.plaques],
            "numbers": {key: known.as_dict() for key, known in sorted(self.numbers.items())},
        }


def _compound_dict(compound: Compound) -> dict[str, Any]:
    entry: dict[str, Any] = {"name": compound.name, "polymer": compound.polymer.symbol, "kind": compound.polymer.kind}
    for share in ("glass", "mineral", "carbon"):
        if getattr(compound, share):
            entry[f"{share}_percent"] = round(100.0 * getattr(compound, share), 3)
    entry["window_c"] = list(compound.polymer.window)
    entry["window_standing"] = compound.polymer.window_standing
    return entry


def read_material(written: Any) -> MaterialSettings | None:
    """The settings of a ``[material]`` table; None without one. SettingFault for what can't be taken."""
    return None if written is None else _read(Table.of(written, ("material",)))


def _read(table: Table) -> MaterialSettings:
    if "tolerance" in table.values:
        names = ", ".join(f"{old.partition('.')[2]} is {new}" for old, new in _FROM_TOLERANCES.items())
        raise SettingFault((*table.path, "tolerance"), f"Tolerances stand in the one table [tolerance] ({names}).")
    table.only(_TOP)
    rest = {key: value for key, value in table.values.items() if key != "joints"}
    joints = {}
    for joint in table.table("joints").values:
        changes = table.table("joints").table(joint)
        if "joints" in changes.values:
            raise SettingFault(changes.path, f"[material.joints.{joint}] can't hold joints of its own.")
        joints[str(joint)] = _read_joint(table, rest, changes)
    polymers = polymer_table()
    for symbol in table.table("polymer").values:
        row = table.table("polymer").table(symbol)
        with blamed_on(row.path, row.values):
            polymers = polymers.with_own({symbol: row.values})
    settings = MaterialSettings(
        cover=table.maybe("cover", None, _compound, polymers),
        base=table.maybe("base", None, _compound, polymers),
        plaques=table.maybe("plaques", (), read_plaques),
        numbers=_numbers(table),
        pairs=_pairs(table, polymers),
        table=polymers,
        joints=joints,
        written=table.values,
    )
    _check_together(settings, table)
    return settings


def _compound(_: str, written: Any, polymers: PolymerTable) -> Compound:
    return polymers.compound(written)


def _read_joint(table: Table, rest: Mapping[str, Any], changes: Table) -> MaterialSettings:
    """What differs for one joint, over the rest of the table."""
    try:
        return _read(Table(_merged(rest, changes.values), table.path, table.name))
    except SettingFault as why:
        raise SettingFault((*changes.path, *why.path[len(table.path) :]), why.sentence) from None


def _merged(base: Mapping[str, Any], changes: Mapping[str, Any]) -> dict[str, Any]:
    merged = dict(base)
    for key, value in changes.items():
        old = merged.get(key)
        merged[key] = _merged(old, value) if isinstance(old, Mapping) and isinstance(value, Mapping) else value
    return merged


def _numbers(table: Table) -> dict[str, Known]:
    sections = {section: table.table(section) for section in MATERIAL_SECTIONS}
    for section, entries in sections.items():
        entries.only(setting.name for setting in MATERIAL if setting.table == f"material.{section}")
    found = {
        setting.key.removeprefix("material."): entries.maybe(setting.name, setting.known, known, setting)
        for setting in MATERIAL
        for entries in (sections[setting.table.partition(".")[2]],)
    }
    return {key: value for key, value in found.items() if value is not None}


def _pairs(table: Table, polymers: PolymerTable) -> tuple[dict[str, Any], ...]:
    written = table.values.get("pairs", [])
    with blamed_on((*table.path, "pairs", "0") if isinstance(written, list) else (*table.path, "pairs")):
        return own_pairs(written, polymers)


def _check_together(settings: MaterialSettings, table: Table) -> None:
    """Checks that need more than one entry."""
    if settings.plaques:
        scatter = settings.numbers["light.plaque_scatter"].value / 100.0
        plaques = [Plaque(t, p / 100.0) for t, p in settings.plaques]
        with blamed_on((*table.path, "plaques")):
            check_plaques(plaques, settings.index().value, scatter)
    melt, room = settings.get("process.melt_temperature"), settings.numbers["process.room_temperature"]
    if melt is not None and melt.value <= room.value:
        with blamed_on((*table.path, "process", "melt_temperature")):
            raise UsageError(
                f"material.process.melt_temperature ({melt.value:g} °C) must lie above the room temperature "
                f"({room.value:g} °C)."
            )


def completed(
    material: MaterialSettings,
    tolerances: Mapping[str, float],
    pressure: float | None,
    reserves: Mapping[str, tuple[float, bool]] | None = None,
) -> MaterialSettings:
    """The settings with what they leave out and other tables hold: written once, used twice.

    Parameters
    ----------
    tolerances : of ``[tolerance]``: quantity -> +-; flatness and what the clamp presses flat of it, mm
    pressure : of ``[clamp]``, MPa
    reserves : 'process.travel_reserve' ... -> mm, of the limits that judge the same, and whether they were set

    Notes
    -----
    What stands in ``[material]`` wins. Flatness there is what is left under the clamp: of both flatnesses together
    ``flattened`` is taken off, of each in proportion.
    """
    fed = {key: tolerances[name] for key, name in _FROM_TOLERANCES.items() if name in tolerances}
    flatness = {key: tolerances.get(key, 0.0) for key in FLATNESS if key.startswith("flatness")}
    together = sum(flatness.values())
    left = max(0.0, together - tolerances.get("flattened", 0.0))
    fed |= {f"tolerance.{key}": value * left / together for key, value in flatness.items() if value > 0.0}
    if pressure is not None:
        fed["process.pressure"] = pressure
    fed |= {key: value for key, (value, _) in (reserves or {}).items()}
    return _fed(material, fed, {key for key, (_, is_set) in (reserves or {}).items() if not is_set})


def _unit(key: str) -> str:
    return {"tolerance.trap": "%", "tolerance.cpk": "1"}.get(key, "mm")


def _fed(material: MaterialSettings, fed: Mapping[str, float], by_default: Collection[str]) -> MaterialSettings:
    numbers = dict(material.numbers)
    numbers |= {key: given(value, _unit(key)) for key, value in fed.items() if key.startswith("tolerance.")}
    for setting in MATERIAL:
        key = setting.key.removeprefix("material.")
        if key in fed and (key not in numbers or numbers[key].standing != "given"):
            value = min(fed[key], setting.most)
            if key in by_default and key in numbers:
                numbers[key] = replace(numbers[key], value=value, low=value, high=value)
            elif key not in numbers or numbers[key].value != value:
                numbers[key] = given(value, setting.unit)
    joints = {joint: _fed(own, fed, by_default) for joint, own in material.joints.items()}
    return replace(material, numbers=numbers, joints=joints)
