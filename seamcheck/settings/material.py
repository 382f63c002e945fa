"""The ``[material]`` table of seamcheck.toml: read, checked, and every number with its standing."""

from __future__ import annotations

import difflib
import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from seamcheck.catalogue.known import Known, assumed, given, remembered
from seamcheck.catalogue.pairs import own_pairs
from seamcheck.catalogue.polymers import Compound, PolymerTable, polymer_table
from seamcheck.errors import UsageError
from seamcheck.settings.plaques import Plaque, check_plaques


@dataclass(frozen=True, slots=True)
class Entry:
    """One number of the table: its section and key, unit, meaning, least and largest value, what stands in.

    ``default`` is None for a number that has no stand-in: what needs it is then not computed.
    """

    section: str
    key: str
    unit: str
    meaning: str
    least: float
    most: float
    default: Known | None = None

    @property
    def name(self) -> str:
        """Dotted name in the settings file."""
        return f"material.{self.section}.{self.key}" if self.section else f"material.{self.key}"


ENTRIES: tuple[Entry, ...] = (
    Entry(
        "light",
        "wavelength",
        "nm",
        "wavelength at which the plaques were measured and the weld is made",
        400,
        2200,
    ),
    Entry(
        "light",
        "index",
        "1",
        "refractive index of the cover at that wavelength (default: from the polymer table)",
        1.2,
        2.0,
    ),
    Entry(
        "light",
        "plaque_scatter",
        "%",
        "relative standard deviation of one measured plaque",
        0.1,
        30,
        assumed(3.0, "%"),
    ),
    Entry("laser", "power", "W", "laser power at the cover", 0.1, 5000),
    Entry("laser", "speed", "mm/s", "speed of the spot along the seam", 1, 50000),
    Entry("laser", "spot", "mm", "width of the light spot at the rib", 0.05, 20),
    Entry(
        "laser",
        "use",
        "1",
        "share of the light that arrives at the rib and becomes heat there",
        0.05,
        1,
        assumed(0.6, "1", "losses, reflection at the base, light beside the rib", 0.4, 0.7),
    ),
    Entry(
        "laser",
        "absorption_depth",
        "mm",
        "depth of the base in which the light turns to heat",
        0.005,
        2,
        remembered(0.1, "mm", "", 0.05, 0.2),
    ),
    Entry("laser", "passes", "1", "passes round the seam; 1 is a single pass (default: as many as it takes)", 1, 1e5),
    Entry("laser", "acceleration", "mm/s²", "largest acceleration of the spot that the scanner can do", 100, 1e9),
    Entry("process", "pressure", "MPa", "pressure over the rib's top", 0.01, 50),
    Entry(
        "process",
        "melt_temperature",
        "°C",
        "temperature of the melt (default: middle of the shared window)",
        50,
        500,
    ),
    Entry("process", "room_temperature", "°C", "temperature before the weld", -40, 150, assumed(20.0, "°C")),
    Entry(
        "process",
        "residual_layer",
        "mm",
        "melt that stays in the seam, on each side of it",
        0.0,
        2,
        remembered(0.15, "mm", "", 0.1, 0.2),
    ),
    Entry(
        "process",
        "viscosity",
        "Pa·s",
        "viscosity of the melt",
        1,
        1e6,
        remembered(500.0, "Pa·s", "", 100, 1000),
    ),
    Entry("process", "handling", "s", "loading, clamping and unloading together", 0, 600, assumed(8.0, "s")),
    Entry("process", "hold", "s", "time under pressure after the light", 0, 600, assumed(2.0, "s")),
    Entry(
        "process",
        "decomposition",
        "°C",
        "temperature that neither polymer may reach in the weld",
        100,
        800,
    ),
    Entry(
        "process",
        "longest_heating",
        "s",
        "a weld that takes longer is given up",
        1,
        3600,
        assumed(300.0, "s"),
    ),
    Entry(
        "process",
        "air_loss",
        "W/(m²·K)",
        "heat that free surfaces lose to the air",
        0,
        1000,
        remembered(10.0, "W/(m²·K)", "free convection of air", 2, 25),
    ),
    Entry(
        "process",
        "tool_loss",
        "W/(m²·K)",
        "heat that clamp and nest take from the cover's top and from below the wall (default: as air)",
        0,
        1e5,
    ),
    Entry(
        "process",
        "trap_fill",
        "1",
        "largest share of a flash trap that the melt may fill",
        0.1,
        1.5,
        assumed(1.0, "1"),
    ),
    Entry(
        "process",
        "least_local_collapse",
        "mm",
        "collapse that must be left at the lowest place of the rib",
        0.0,
        2,
        assumed(0.1, "mm"),
    ),
    Entry(
        "process",
        "travel_reserve",
        "mm",
        "free travel that must be left after the collapse",
        0.0,
        2,
        assumed(0.1, "mm"),
    ),
    Entry(
        "process",
        "height_reserve",
        "mm",
        "rib height that must be left after the collapse",
        0.0,
        5,
        assumed(0.2, "mm"),
    ),
    Entry("tolerance", "collapse", "mm", "± of the collapse that the machine reaches", 0, 2),
    Entry("tolerance", "thickness", "mm", "± of the cover thickness", 0, 2),
    Entry("tolerance", "width", "mm", "± of the rib width", 0, 2),
    Entry("tolerance", "trap", "%", "± of the flash trap's area", 0, 90),
    Entry("tolerance", "gap", "mm", "± of the gap between rib and cover", 0, 2),
    Entry("tolerance", "travel", "mm", "± of the free travel", 0, 5),
    Entry(
        "tolerance",
        "flatness_cover",
        "mm",
        "flatness of the cover's seam face that is left under the clamp",
        0,
        10,
    ),
    Entry("tolerance", "flatness_rib", "mm", "flatness of the rib's top that is left under the clamp", 0, 10),
    Entry("samples", "count", "1", "tolerance combinations to try", 100, 200000, assumed(2000.0, "1")),
    Entry("samples", "seed", "1", "start of the random numbers", 0, 2**31, assumed(1.0, "1")),
)
"""Every number of the ``[material]`` table but the materials themselves."""

SECTIONS: dict[str, str] = {
    "light": "Light and plaques",
    "laser": "Laser and scanner",
    "process": "Pressure, melt, time",
    "tolerance": "Moulding and machine tolerances (worst case, plus and minus)",
    "samples": "Random tolerance combinations",
}

_TOP = ("cover", "base", "plaques", "polymer", "pairs", "joints", *SECTIONS)


@dataclass(frozen=True, slots=True, eq=False)
class MaterialSettings:
    """What the user says of the materials and the process of a joint.

    Attributes
    ----------
    cover, base : the compounds, or None where not named
    plaques : ((thickness mm, percent), ...) as measured; () when none
    numbers : dotted key ('laser.power') -> Known; the given ones, and the stand-ins of the others
    pairs : the user's own pairs
    table : all polymers that are known
    joints : joint id -> MaterialSettings of that joint, where it differs
    """

    cover: Compound | None
    base: Compound | None
    plaques: tuple[tuple[float, float], ...] = ()
    numbers: Mapping[str, Known] = field(default_factory=dict)
    pairs: tuple[dict, ...] = ()
    table: PolymerTable | None = None
    joints: Mapping[str, MaterialSettings] = field(default_factory=dict)

    def get(self, key: str) -> Known | None:
        """Return a number by dotted key, or None where it was not given and has no stand-in."""
        return self.numbers.get(key)

    def index(self) -> Known:
        """Return the cover's refractive index: given, from the polymer table, or assumed."""
        if "light.index" in self.numbers:
            return self.numbers["light.index"]
        if self.cover is not None:
            return self.cover.polymer.get("index")
        return assumed(1.55, "1", "no cover polymer named; plastics lie between 1.42 and 1.65", 1.42, 1.65)

    def for_joint(self, joint: str) -> MaterialSettings:
        """Return the settings of one joint."""
        return self.joints.get(joint, self)

    @classmethod
    def from_table(cls, table: Mapping[str, Any]) -> MaterialSettings:
        """Return the settings of a ``[material]`` table; UsageError says what is wrong."""
        if not isinstance(table, Mapping):
            raise UsageError(f"[material] must be a table; got {table!r}.")
        _no_strangers(table, _TOP, "[material]")
        joints = {}
        for joint, changes in _table(table.get("joints", {}), "[material.joints]").items():
            changes = _table(changes, f"[material.joints.{joint}]")
            rest = {key: value for key, value in table.items() if key != "joints"}
            if "joints" in changes:
                raise UsageError(f"[material.joints.{joint}] can't hold joints of its own.")
            joints[str(joint)] = cls.from_table(_merged(rest, changes))
        polymers = polymer_table().with_own(_table(table.get("polymer", {}), "[material.polymer]"))
        cover = polymers.compound(table["cover"]) if "cover" in table else None
        base = polymers.compound(table["base"]) if "base" in table else None
        plaques = _plaques(table.get("plaques", []))
        numbers = _numbers(table)
        settings = cls(cover, base, plaques, numbers, own_pairs(table.get("pairs", []), polymers), polymers, joints)
        _check_together(settings)
        return settings

    def as_dict(self) -> dict:
        """Return the settings as the review document prints them, each number with its standing."""
        return {
            "cover": None if self.cover is None else _compound_dict(self.cover),
            "base": None if self.base is None else _compound_dict(self.base),
            "plaques": [{"thickness_mm": t, "percent": p} for t, p in self.plaques],
            "numbers": {key: known.as_dict() for key, known in sorted(self.numbers.items())},
        }


def _compound_dict(compound: Compound) -> dict:
    entry: dict = {"name": compound.name, "polymer": compound.polymer.symbol, "kind": compound.polymer.kind}
    for share in ("glass", "mineral", "carbon"):
        if getattr(compound, share):
            entry[f"{share}_percent"] = round(100.0 * getattr(compound, share), 3)
    entry["window_c"] = list(compound.polymer.window)
    entry["window_standing"] = compound.polymer.window_standing
    return entry


def _table(value: object, where: str) -> Mapping[str, Any]:
    if not isinstance(value, Mapping):
        raise UsageError(f"{where} must be a table; got {value!r}.")
    return value


def _no_strangers(table: Mapping[str, Any], allowed: Sequence[str], where: str) -> None:
    for key in table:
        if key not in allowed:
            near = difflib.get_close_matches(str(key), allowed, n=1)
            hint = f" Did you mean {near[0]!r}?" if near else f" It knows: {', '.join(allowed)}."
            raise UsageError(f"{where} has no entry {str(key)!r}.{hint}")


def _merged(base: Mapping[str, Any], changes: Mapping[str, Any]) -> dict[str, Any]:
    merged = dict(base)
    for key, value in changes.items():
        old = merged.get(key)
        merged[key] = _merged(old, value) if isinstance(old, Mapping) and isinstance(value, Mapping) else value
    return merged


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value)


def _numbers(table: Mapping[str, Any]) -> dict[str, Known]:
    numbers = {}
    for section in SECTIONS:
        keys = [entry.key for entry in ENTRIES if entry.section == section]
        _no_strangers(_table(table.get(section, {}), f"[material.{section}]"), keys, f"[material.{section}]")
    for entry in ENTRIES:
        value = table.get(entry.section, {}).get(entry.key)
        if value is None:
            if entry.default is not None:
                numbers[f"{entry.section}.{entry.key}"] = entry.default
            continue
        known = _known(value, entry)
        numbers[f"{entry.section}.{entry.key}"] = known
    return numbers


def _known(value: object, entry: Entry) -> Known:
    written = list(value) if isinstance(value, list | tuple) else [value]
    if len(written) not in (1, 3) or not all(_is_number(part) for part in written):
        raise UsageError(
            f"{entry.name} ({entry.meaning}) takes a number in {entry.unit}, or [value, low, high]; got {value!r}."
        )
    parts = [float(part) for part in written]  # type: ignore[arg-type]
    for part in parts:
        if part < 0.0 and entry.least >= 0.0:
            raise UsageError(f"{entry.name} ({entry.meaning}) can't be negative; got {part:g} {entry.unit}.")
        if not entry.least <= part <= entry.most:
            raise UsageError(
                f"{entry.name} ({entry.meaning}) must lie between {entry.least:g} and {entry.most:g} "
                f"{entry.unit}; got {part:g}.{_unit_hint(entry, part)}"
            )
    if len(parts) == 1:
        return given(parts[0], entry.unit)
    if not parts[1] <= parts[0] <= parts[2]:
        raise UsageError(f"{entry.name} is [value, low, high] with low <= value <= high; got {value!r}.")
    return Known(parts[0], entry.unit, "given", "", parts[1], parts[2])


def _unit_hint(entry: Entry, value: float) -> str:
    hints = {"wavelength": (0.3, 2.5, 1000.0), "pressure": (1e4, 1e8, 1e-6), "speed": (0.001, 1.0, 1000.0)}
    low, high, factor = hints.get(entry.key, (1.0, 0.0, 1.0))
    return f" Did you mean {value * factor:g} {entry.unit}?" if low <= value <= high else ""


def _plaques(entries: object) -> tuple[tuple[float, float], ...]:
    if not isinstance(entries, list | tuple):
        raise UsageError(
            "material.plaques is a list of [thickness in mm, transmission in percent], such as "
            f"[[1.0, 55.0], [2.0, 36.0]]; got {entries!r}."
        )
    plaques = []
    for entry in entries:
        if not isinstance(entry, list | tuple) or len(entry) != 2 or not all(_is_number(x) for x in entry):
            raise UsageError(
                "Each of material.plaques is [thickness in mm, transmission in percent], such as "
                f"[2.0, 36.0]; got {entry!r}."
            )
        thickness, percent = float(entry[0]), float(entry[1])
        if not 0.05 <= thickness <= 50.0:
            raise UsageError(f"A plaque's thickness must lie between 0.05 and 50 mm; got {thickness:g}.")
        if percent > 100.0:
            raise UsageError(
                f"A plaque can't pass {percent:g} % of the light. Each entry is [thickness, percent]; "
                "were the two swapped?"
            )
        if percent <= 0.0:
            raise UsageError(
                f"The {thickness:g} mm plaque passes {percent:g} %: a cover that passes no light can't be "
                "welded through."
            )
        if percent < 1.0:
            raise UsageError(
                f"The {thickness:g} mm plaque passes {percent:g} %: is that a share? Write percent "
                f"({100 * percent:g}). If it is truly below 1 %, this cover can't be welded through."
            )
        plaques.append((thickness, percent))
    return tuple(sorted(plaques))


def _check_together(settings: MaterialSettings) -> None:
    """Checks that need more than one entry."""
    if settings.plaques:
        scatter = settings.numbers["light.plaque_scatter"].value / 100.0
        check_plaques([Plaque(t, p / 100.0) for t, p in settings.plaques], settings.index().value, scatter)
    melt = settings.get("process.melt_temperature")
    room = settings.numbers["process.room_temperature"].value
    if melt is not None and melt.value <= room:
        raise UsageError(
            f"material.process.melt_temperature ({melt.value:g} °C) must lie above the room temperature ({room:g} °C)."
        )
