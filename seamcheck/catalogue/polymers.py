"""Polymers by ISO 1043-1 symbol, each cell with its source; compounds with fillers."""

from __future__ import annotations

import difflib
import re
import tomllib
from collections.abc import Mapping
from functools import cache
from importlib import resources
from typing import Any

from msgspec import Struct

from seamcheck.catalogue.known import Known, assumed, given, remembered
from seamcheck.catalogue.say import say
from seamcheck.errors import UsageError

CELLS: dict[str, tuple[str, float, float]] = {
    "melting": ("°C", -50.0, 500.0),
    "glass": ("°C", -150.0, 400.0),
    "density": ("g/cm³", 0.5, 3.0),
    "heat": ("J/(g·K)", 0.5, 5.0),
    "heat_to_melt": ("J/(g·K)", 0.5, 6.0),
    "fusion": ("J/g", 0.0, 500.0),
    "crystallinity": ("1", 0.0, 1.0),
    "solubility": ("MPa^0.5", 5.0, 50.0),
    "index": ("1", 1.2, 2.0),
    "conductivity": ("W/(m·K)", 0.01, 5.0),
    "expansion": ("1", 1.0, 2.0),
}
"""Cells of a polymer's row: unit, least and largest value that makes sense."""

KINDS = ("semi-crystalline", "amorphous", "blend", "elastomer")

OTHER_SPELLINGS: dict[str, str] = {
    "HDPE": "PE-HD",
    "PEHD": "PE-HD",
    "LDPE": "PE-LD",
    "PELD": "PE-LD",
    "PES": "PESU",
    "PA6.6": "PA66",
    "PA6/6": "PA66",
    "PVC": "PVC-U",
    "PPE": "PPE+PS",
    "PPO": "PPE+PS",
    "ABS+PC": "PC+ABS",
    "PS+PPE": "PPE+PS",
    "PSF": "PSU",
}
"""Spellings that are not in the standard, for the hint in an error message; never taken silently."""

GLASS_DENSITY = remembered(2.55, "g/cm³", say("known.glass"))
MINERAL_DENSITY = remembered(2.75, "g/cm³", say("known.mineral"))
FILLER_CONDUCTIVITY = remembered(1.0, "W/(m·K)", say("known.glass"))
FILLER_HEAT = remembered(0.8, "J/(g·K)", say("known.filler"))


class Polymer(Struct, frozen=True, eq=False):
    """One row of the table.

    Attributes
    ----------
    symbol : by ISO 1043-1
    kind : one of KINDS
    window : (low, high) °C, in which the melt is usually processed
    window_standing : 'from memory' or 'given'
    cells : name of a cell -> Known; a cell that nobody knows is missing
    components : symbols of a blend's components, () for a single polymer
    opaque : whether it scatters although it is amorphous, as rubber-modified ones do
    melt_volume : (A0, A1, A2, from °C, to °C) of cm³/g = A0 + A1 T + A2 T², or None
    hansen : (dispersion, polar, hydrogen) MPa^0.5, or None
    """

    symbol: str
    kind: str
    window: tuple[float, float]
    window_standing: str
    cells: Mapping[str, Known]
    components: tuple[str, ...] = ()
    opaque: bool = False
    melt_volume: tuple[float, float, float, float, float] | None = None
    hansen: tuple[float, float, float] | None = None

    def get(self, cell: str) -> Known:
        """Return a cell, or the assumption that stands in for it; KeyError where nothing can stand in."""
        if cell in self.cells:
            return self.cells[cell]
        if cell == "index":
            return assumed(1.55, "1", say("known.index"), 1.42, 1.65)
        if cell == "heat_to_melt":
            heat = self.cells["heat"]
            return assumed(1.3 * heat.value, "J/(g·K)", say("known.heat-to-melt"), 1.1 * heat.value, 1.5 * heat.value)
        if cell == "fusion" and self.kind in ("amorphous", "blend"):
            return Known(0.0, "J/g", "computed", say("known.no-fusion"))
        if cell == "crystallinity" and self.kind in ("amorphous", "blend"):
            return Known(0.0, "1", "computed", say("known.no-crystals"))
        if cell == "crystallinity":
            return assumed(0.4, "1", say("known.crystallinity"), 0.2, 0.7)
        if cell == "conductivity":
            return assumed(0.2, "W/(m·K)", say("known.conductivity"), 0.15, 0.3)
        if cell == "expansion" and self.kind in ("amorphous", "blend"):
            return assumed(1.1, "1", say("known.expansion-amorphous"), 1.05, 1.15)
        if cell == "expansion":
            return assumed(1.2, "1", say("known.expansion"), 1.1, 1.25)
        raise KeyError(cell)

    def melt_expansion(self, temperature: float) -> Known:
        """Return melt volume at ``temperature`` (°C) over solid volume at room temperature.

        Where the table has melt-volume constants: k = (A0 + A1 T + A2 T²) · density; beyond the range they
        were fitted in, the number is marked as an assumption.
        """
        if self.melt_volume is None:
            return self.get("expansion")
        a0, a1, a2, start, end = self.melt_volume
        value = (a0 + a1 * temperature + a2 * temperature**2) * self.cells["density"].value
        if not value > 0.8:
            return self.get("expansion")
        if start <= temperature <= end:
            source = say("source.s", temperature=temperature)
            return Known(value, "1", "source", source, value * 0.98, value * 1.02)
        source = say("source.s.beyond", start=start, end=end, temperature=temperature)
        return assumed(value, "1", source, value * 0.95, value * 1.05)


class Compound(Struct, frozen=True, eq=False):
    """A polymer with its fillers: what a part is moulded from.

    Attributes
    ----------
    name : as the user wrote it
    polymer : the row of the table
    glass, mineral : share of mass, 0..1
    carbon : share of mass of carbon fibre or powder, 0..1; it absorbs the light
    """

    name: str
    polymer: Polymer
    glass: float = 0.0
    mineral: float = 0.0
    carbon: float = 0.0

    @property
    def filler(self) -> float:
        """Share of mass that is not polymer."""
        return self.glass + self.mineral + self.carbon

    def density(self) -> Known:
        """Density by the rule of mixture of specific volumes (g/cm³)."""
        own = self.polymer.cells["density"]
        if not self.filler:
            return own

        def mixed(rho: float) -> float:
            return 1.0 / (
                (1.0 - self.filler) / rho
                + self.glass / GLASS_DENSITY.value
                + (self.mineral + self.carbon) / MINERAL_DENSITY.value
            )

        return Known(
            mixed(own.value),
            "g/cm³",
            "from memory",
            say("mixed.density", polymer=own.value),
            mixed(own.low),
            mixed(own.high),
        )

    def filler_volume(self) -> float:
        """Share of volume that is not polymer."""
        rest = self.glass / GLASS_DENSITY.value + (self.mineral + self.carbon) / MINERAL_DENSITY.value
        return rest / (rest + (1.0 - self.filler) / self.polymer.cells["density"].value)

    def conductivity(self) -> Known:
        """Thermal conductivity (W/(m·K)): of the polymer, fillers mixed in logarithmically by volume.

        The range ends at the mean weighted by volume: no mixture conducts better (Wiener's upper bound).
        """
        own = self.polymer.get("conductivity")
        if not self.filler:
            return own
        part, filler = self.filler_volume(), FILLER_CONDUCTIVITY.value

        def mixed(k: float) -> float:
            return float(k ** (1.0 - part) * filler**part)

        return Known(
            mixed(own.value),
            "W/(m·K)",
            "from memory",
            say("mixed.conductivity", polymer=own.value, filler=filler),
            mixed(own.low),
            max((1.0 - part) * own.high + part * filler, mixed(own.high)),
        )

    def cold_heat(self) -> Known:
        """Specific heat near 20 °C (J/(g·K)), fillers mixed in by mass."""
        return self._heat(self.polymer.cells["heat"])

    def heat_to_melt(self) -> Known:
        """Mean specific heat from 20 °C to the melt, fillers mixed in by mass (J/(g·K))."""
        return self._heat(self.polymer.get("heat_to_melt"))

    def _heat(self, own: Known) -> Known:
        if not self.filler:
            return own

        def mixed(heat: float) -> float:
            return (1.0 - self.filler) * heat + self.filler * FILLER_HEAT.value

        return Known(
            mixed(own.value),
            "J/(g·K)",
            own.standing,
            say("mixed.heat", polymer=own.value),
            mixed(own.low),
            mixed(own.high),
        )

    def fusion(self) -> Known:
        """Heat of fusion (J/g): crystallinity times the crystal's heat, polymer's share alone."""
        share, full = self.polymer.get("crystallinity"), self.polymer.get("fusion")
        standing = share.standing if full.value else full.standing
        rest = 1.0 - self.filler
        return Known(
            rest * share.value * full.value,
            "J/g",
            standing,
            say("mixed.fusion", share=share.value, full=full.value),
            rest * share.low * full.low,
            rest * share.high * full.high,
        )

    def melt_expansion(self, temperature: float) -> Known:
        """Melt volume over solid volume at ``temperature`` (°C); fillers keep their volume."""
        own = self.polymer.melt_expansion(temperature)
        if not self.filler:
            return own
        polymer = (1.0 - self.filler) / self.polymer.cells["density"].value
        rest = self.glass / GLASS_DENSITY.value + (self.mineral + self.carbon) / MINERAL_DENSITY.value

        def mixed(k: float) -> float:
            return (k * polymer + rest) / (polymer + rest)

        return Known(
            mixed(own.value),
            "1",
            own.standing,
            say("mixed.expansion", own=[own.source]) if own.source else say("mixed.expansion-only"),
            mixed(own.low),
            mixed(own.high),
        )


class PolymerTable(Struct, frozen=True, eq=False):
    """All polymers that are known, by symbol."""

    polymers: Mapping[str, Polymer]

    def find(self, symbol: str) -> Polymer:
        """Return the polymer with this symbol; UsageError with the nearest symbols when there is none."""
        wanted = symbol.strip()
        by_folded = {key.upper().replace(" ", ""): key for key in self.polymers}
        key = by_folded.get(wanted.upper().replace(" ", ""))
        if key is not None:
            return self.polymers[key]
        folded = wanted.upper().replace(" ", "")
        near = (
            [OTHER_SPELLINGS[folded]]
            if folded in OTHER_SPELLINGS
            else [by_folded[match] for match in difflib.get_close_matches(folded, by_folded, n=3, cutoff=0.5)]
        )
        hint = f" Nearest: {', '.join(near)}." if near else ""
        raise UsageError(
            f"No polymer has the symbol {symbol!r} (ISO 1043-1).{hint} Known: "
            f"{', '.join(sorted(self.polymers))}. A grade of your own goes into "
            f"[material.polymer.{_bare(wanted)}]."
        )

    def compound(self, name: str) -> Compound:
        """Return the compound that a designation such as ``PP-GF30`` or ``PBT-(GF20+MD10)`` stands for.

        The symbol follows ISO 1043-1, the filler ISO 1043-2 (G glass, M mineral, T talc, K calcium carbonate,
        C carbon; the second letter is the form; the number is percent of mass).
        """
        if not isinstance(name, str) or not name.strip():
            raise UsageError(f'A material is named by its ISO 1043 symbol, such as "PP" or "PA6-GF30"; got {name!r}.')
        found = _FILLED.match(name.strip())
        symbol, fillers = (found["symbol"], found["fillers"]) if found else (name, "")
        shares = {"G": 0.0, "M": 0.0, "T": 0.0, "K": 0.0, "C": 0.0}
        for letter, percent in _FILLER.findall(fillers.upper()):
            if letter not in shares:
                raise UsageError(
                    f"In {name!r} the filler {letter!r} is not one of G (glass), M, T, K (mineral), C (carbon)."
                )
            shares[letter] += float(percent) / 100.0
        compound = Compound(
            name.strip(), self.find(symbol), shares["G"], shares["M"] + shares["T"] + shares["K"], shares["C"]
        )
        if compound.filler > 0.7:
            raise UsageError(f"{name!r} has {100 * compound.filler:.0f} % filler; more than 70 % can't be moulded.")
        return compound

    def with_own(self, rows: Mapping[str, Mapping[str, Any]]) -> PolymerTable:
        """Return the table with the user's rows added; they win over those of the same symbol."""
        own = dict(self.polymers)
        for symbol, row in rows.items():
            own[symbol] = _own_row(symbol, row, own.get(symbol))
        return PolymerTable(own)


_FILLED = re.compile(r"^(?P<symbol>.+?)[-\s]\(?(?P<fillers>[A-Za-z]{1,2}\d+(?:\+[A-Za-z]{1,2}\d+)*)\)?$")
_FILLER = re.compile(r"([A-Z])[A-Z]?(\d+)")


def _bare(symbol: str) -> str:
    return symbol if re.fullmatch(r"[A-Za-z0-9_-]+", symbol) else f'"{symbol}"'


@cache
def _data() -> dict[str, Any]:
    return tomllib.loads(resources.files("seamcheck.catalogue").joinpath("data/polymers.toml").read_text("utf-8"))


@cache
def polymer_table() -> PolymerTable:
    """Return the table that ships with seamcheck."""
    polymers = {}
    for symbol, row in _data()["polymer"].items():
        cells = {}
        for name, (unit, _, _) in CELLS.items():
            if name in row:
                value, letter, *ends = row[name]
                standing = "source" if letter else "from memory"
                low, high = ends if ends else (float("nan"), float("nan"))
                cells[name] = Known(float(value), unit, standing, say(f"source.{letter}") if letter else "", low, high)
        volume = row.get("melt_volume")
        polymers[symbol] = Polymer(
            symbol,
            row["kind"],
            (float(row["window"][0]), float(row["window"][1])),
            "from memory",
            cells,
            tuple(row.get("components", ())),
            bool(row.get("opaque", False)),
            tuple(volume) if volume else None,
        )
    return PolymerTable(polymers)


def _own_row(symbol: str, row: Mapping[str, Any], base: Polymer | None) -> Polymer:
    """Return the polymer that the user described; what is left out comes from the row of the same symbol."""
    where = f"[material.polymer.{_bare(symbol)}]"
    if not isinstance(row, Mapping):
        raise UsageError(f"{where} must be a table with kind, window, density and so on.")
    allowed = {*CELLS, "kind", "window", "components", "hansen", "like"}
    for key in row:
        if key not in allowed:
            near = difflib.get_close_matches(key, allowed, n=1)
            raise UsageError(f"{where} has no entry {key!r}." + (f" Did you mean {near[0]!r}?" if near else ""))
    if "like" in row:
        base = polymer_table().find(str(row["like"]))
    kind = row.get("kind", base.kind if base else None)
    if kind not in KINDS:
        raise UsageError(f"{where} needs kind, one of: {', '.join(KINDS)} (or like = the symbol of a known polymer).")
    window = row.get("window", base.window if base else None)
    low, high = _numbers(window, 2, f"{where} window (°C)")
    if not -50.0 <= low < high <= 600.0:
        raise UsageError(f"{where} window must be [low, high] in °C with low below high; got {window!r}.")
    cells = dict(base.cells) if base else {}
    for name, (unit, least, most) in CELLS.items():
        if name not in row:
            continue
        entry = row[name]
        numbers = _numbers(entry if isinstance(entry, list) else [entry], (1, 3), f"{where} {name} ({unit})")
        if not all(least <= number <= most for number in numbers):
            raise UsageError(f"{where} {name} must lie between {least:g} and {most:g} {unit}; got {entry!r}.")
        if len(numbers) == 3 and not numbers[1] <= numbers[0] <= numbers[2]:
            raise UsageError(f"{where} {name} is [value, low, high] with low <= value <= high; got {entry!r}.")
        cells[name] = (
            given(numbers[0], unit)
            if len(numbers) == 1
            else Known(numbers[0], unit, "given", "", numbers[1], numbers[2])
        )
    for name in ("density", "heat"):
        if name not in cells:
            raise UsageError(f"{where} needs {name} ({CELLS[name][0]}).")
    if kind in ("semi-crystalline", "elastomer") and "fusion" not in cells:
        raise UsageError(f"{where} is {kind} and needs fusion (J/g of the fully crystalline polymer).")
    own_expansion = "expansion" in row
    hansen = _three(row["hansen"], f"{where} hansen (MPa^0.5)") if "hansen" in row else (base.hansen if base else None)
    components = row.get("components", list(base.components) if base else [])
    if not isinstance(components, list) or not all(isinstance(c, str) for c in components):
        raise UsageError(f"{where} components must be a list of symbols.")
    return Polymer(
        symbol,
        kind,
        (low, high),
        "given" if "window" in row else (base.window_standing if base else "given"),
        cells,
        tuple(components),
        bool(base and base.opaque),
        None if own_expansion or base is None else base.melt_volume,
        hansen,
    )


def _three(entry: object, what: str) -> tuple[float, float, float]:
    a, b, c = _numbers(entry, 3, what)
    return a, b, c


def _numbers(entry: object, count: int | tuple[int, int], what: str) -> list[float]:
    """Return the entry as finite numbers; UsageError when it is something else."""
    counts = (count,) if isinstance(count, int) else count
    if (
        not isinstance(entry, list | tuple)
        or len(entry) not in counts
        or any(isinstance(x, bool) or not isinstance(x, int | float) or x != x or abs(x) == float("inf") for x in entry)
    ):
        wanted = " or ".join("one number" if c == 1 else f"{c} numbers" for c in counts)
        raise UsageError(f"{what} takes {wanted}; got {entry!r}.")
    return [float(x) for x in entry]
