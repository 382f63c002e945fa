"""The ``[scanner]``, ``[clamp]`` and ``[tolerance]`` tables of seamcheck.toml: read, checked, explained."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

from seamcheck.catalogue.units import in_unit
from seamcheck.errors import UsageError
from seamcheck.settings.guard import below, text_of

TABLES = ("scanner", "clamp", "tolerance")


@dataclass(frozen=True, slots=True)
class Entry:
    """One number of a table: None as default means that what needs it is not evaluated."""

    key: str
    default: float | None
    unit: str
    what: str
    standing: str
    least: float
    most: float


SCANNER: tuple[Entry, ...] = (
    Entry(
        "distance", None, "mm", "from the pivot of the scanner's mirrors down to the cover's top face",
        "of your machine", 1.0, 1e5,
    ),
    Entry(
        "half-angle", 0.0, "°", "convergence of the beam: half the angle of its cone",
        "of your machine; 0 looks at the beam's middle only", 0.0, 45.0,
    ),
    Entry("index", 1.5, "1", "refractive index of the cover at the weld's wavelength",
          "assumption: 1.48 to 1.62 for common plastics", 1.0, 2.5),
)  # fmt: skip

CLAMP: tuple[Entry, ...] = (
    Entry("height", 20.0, "mm", "height of the clamp tool above the cover", "assumption", 0.1, 1000.0),
    Entry("reach", 5.0, "mm", "how far from the rib a clamp land still presses on it", "assumption", 0.1, 100.0),
    Entry("width", 0.5, "mm", "least width of a land that counts", "assumption", 0.05, 100.0),
    Entry("pressure", None, "MPa", "pressure over the rib's top", "of your process", 0.001, 100.0),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Scanner:
    """Where the light comes from.

    Attributes
    ----------
    distance : mm, None where it is telecentric
    axis : (3,) mm, a point on the optical axis in the model's coordinates; None: over the middle of the seam
    half_angle : degrees; index : of the cover
    """

    distance: float | None = None
    axis: tuple[float, float, float] | None = None
    half_angle: float = 0.0
    index: float = 1.5

    @property
    def is_telecentric(self) -> bool:
        return self.distance is None


@dataclass(frozen=True, slots=True)
class Clamp:
    """The clamp tool: height mm, reach mm, least width of land mm, pressure MPa or None."""

    height: float = 20.0
    reach: float = 5.0
    width: float = 0.5
    pressure: float | None = None


def scanner_from(table: Mapping[str, Any]) -> Scanner:
    """The scanner of a ``[scanner]`` table.

    Raises
    ------
    UsageError : an unknown key, a value that can't be taken, or neither a distance nor telecentric = true
    """
    known = {entry.key: entry for entry in SCANNER}
    values: dict[str, Any] = {}
    for key, written in table.items():
        if key == "telecentric":
            if not isinstance(written, bool):
                raise UsageError(f"scanner.telecentric must be true or false; got {written!r}.")
        elif key == "axis":
            values["axis"] = _point("scanner.axis", written)
        else:
            values[key.replace("-", "_")] = _number("scanner", known, key, written, ("axis", "telecentric"))
    telecentric = table.get("telecentric", False)
    if telecentric == ("distance" in table):
        raise UsageError(
            "scanner needs either distance, from the mirrors' pivot to the cover's top face, or telecentric = true."
        )
    return Scanner(**values)


def clamp_from(table: Mapping[str, Any]) -> Clamp:
    """The clamp of a ``[clamp]`` table; UsageError as in scanner_from."""
    known = {entry.key: entry for entry in CLAMP}
    return Clamp(**{key: _number("clamp", known, key, written) for key, written in table.items()})


def tolerances_from(table: Mapping[str, Any], folder: Path | None = None) -> Mapping[str, float]:
    """Quantity -> how far (+-) it may differ from the drawing.

    Parameters
    ----------
    table : quantity -> +-; ``file`` names a table file, entries beside it win
    folder : beside which that file lies; None for the working folder

    Raises
    ------
    UsageError : a quantity that does not exist, a value that can't be taken, or a file that can't be read
    """
    found: dict[str, float] = {}
    if "file" in table:
        found |= _tolerances_of_file(table["file"], folder)
    for written_key, written in table.items():
        if written_key != "file":
            key, value = _tolerance(written_key, written, f"tolerance.{written_key}")
            found[key] = value
    return found


def _tolerance(written_key: str, written: Any, name: str) -> tuple[str, float]:
    from seamcheck.catalogue.quantities import QUANTITIES
    from seamcheck.settings.settings import unknown

    key = _quantity(written_key)
    if key is None:
        raise UsageError(unknown(written_key, _quantities(), "quantity"))
    value = _in_unit(name, written, QUANTITIES[key].unit if key in QUANTITIES else "mm")
    if not 0.0 <= value < float("inf"):
        raise UsageError(f"{name} must be 0 or more; got {written!r}.")
    return key, value


def _quantities() -> tuple[str, ...]:
    """All that can have a tolerance."""
    from seamcheck.catalogue.quantities import QUANTITIES

    return (*QUANTITIES, *FLATNESS)


def _quantity(written: str) -> str | None:
    key = written.replace("-", "_")
    return key if key in _quantities() else None


def _tolerances_of_file(written: Any, folder: Path | None) -> dict[str, float]:
    """A table of two columns, quantity and tolerance, divided by commas, semicolons or tabs; '#' begins a comment.

    What the file holds is never part of an error: it may not be what the settings say that it is.
    """
    if not isinstance(written, str) or not written.strip():
        raise UsageError(f'tolerance.file must name a table file, such as "tolerances.csv"; got {written!r}.')
    path = Path(written) if folder is None else below(folder, written)
    if path is None:
        raise UsageError(
            "tolerance.file must lie below the folder of the settings file. To use another one, name it on the command "
            "line: --tolerance file=TABLE."
        )
    from seamcheck.settings.settings import nearest

    lines = text_of(path, "the tolerance table").splitlines()
    found: dict[str, float] = {}
    for number, line in enumerate(lines, 1):
        cells = [cell.strip().strip('"') for cell in re.split(r"[;,\t]", line.partition("#")[0])]
        if not any(cells) or [cell.lower() for cell in cells[:2]] == ["quantity", "tolerance"]:
            continue
        where = f"{path}, line {number}"
        if len([cell for cell in cells if cell]) != 2:
            raise UsageError(f"{where}: a row has a quantity and its tolerance, such as rib_width, 0.05.")
        known = _quantity(cells[0])
        if known is None:
            near = nearest(cells[0], _quantities())
            raise UsageError(f"{where}: there is no such quantity." + (f" Did you mean {near!r}?" if near else ""))
        try:
            key, value = _tolerance(known, cells[1].lstrip("±").strip(), known)
        except UsageError:
            raise UsageError(
                f"{where}: the tolerance of {known} must be a number or a length, 0 or more, such as 0.05."
            ) from None
        if key in found:
            raise UsageError(f"{where}: {key} stands there twice.")
        found[key] = value
    return found


FLATNESS: dict[str, str] = {
    "flatness_cover": "flatness of the cover's underside over the whole seam",
    "flatness_rib": "flatness of the rib's top over the whole seam",
    "flattened": "how much of both the clamp presses flat",
}
"""Entries of ``[tolerance]`` that are no quantities: what a cover and a rib are off the plane, mm."""


READERS: dict[str, tuple[str, Callable[..., Any], Any]] = {
    "scanner": ("scanner", scanner_from, None),
    "clamp": ("clamp", clamp_from, Clamp()),
    "tolerance": ("tolerances", tolerances_from, {}),
}
"""Table -> attribute of the settings, what reads it, and what stands there without it."""


TABLE_KEYS: tuple[str, ...] = (
    *TABLES,
    *(f"scanner.{key}" for key in (*(entry.key for entry in SCANNER), "axis", "telecentric")),
    *(f"clamp.{entry.key}" for entry in CLAMP),
)
"""The tables and, where they are few, their entries, as they are named in single settings."""


def is_table_key(key: str) -> bool:
    """Whether a key names one of the tables or an entry of one: 'scanner', 'scanner.distance', 'tolerance.gap'."""
    return key.partition(".")[0] in TABLES


def changed_table(tables: dict[str, dict[str, Any] | None], key: str, value: Any, settings: Any) -> None:
    """Put one changed entry, or a whole table, into ``tables``; what was set before stays.

    Raises
    ------
    UsageError : a whole table that is neither a mapping nor None
    """
    table, _, entry = key.partition(".")
    if not entry:
        if isinstance(value, Scanner | Clamp):
            value = table_of(value)
        if value is not None and not isinstance(value, Mapping):
            raise UsageError(f"{table} must be a table of entries, such as {_EXAMPLES[table]}; got {value!r}.")
        tables[table] = None if value is None else dict(value)
        return
    if table not in tables or tables[table] is None:
        before = getattr(settings, READERS[table][0])
        tables[table] = dict(before) if isinstance(before, Mapping) else table_of(before)
    entries = tables[table]
    assert entries is not None
    if table == "tolerance":
        entries.pop(entry.replace("-", "_"), None)
    elif entry == "axis" and isinstance(value, str):
        value = [part.strip() for part in value.strip("[] ").split(",")]
    elif entry == "telecentric" and isinstance(value, str):
        value = {"true": True, "false": False}.get(value.lower(), value)
    if (entry, value) == ("telecentric", True):
        entries.pop("distance", None)
    elif entry == "distance":
        entries.pop("telecentric", None)
    entries[entry] = value


def table_of(thing: Scanner | Clamp | None) -> dict[str, Any]:
    """A scanner or clamp as the table that it is read from."""
    if thing is None:
        return {}
    entries = {key.replace("_", "-"): value for key, value in asdict(thing).items() if value is not None}
    if isinstance(thing, Scanner) and thing.is_telecentric:
        entries["telecentric"] = True
    return entries


_EXAMPLES = {
    "scanner": "distance = 300 (scanner.distance=300)",
    "clamp": "height = 20 (clamp.height=20)",
    "tolerance": "rib_width = 0.05 (tolerance.rib_width=0.05)",
}


def _number(table: str, known: Mapping[str, Entry], key: str, written: Any, others: tuple[str, ...] = ()) -> float:
    if key not in known:
        raise UsageError(f"There is no entry {key!r} in [{table}]. There are: {', '.join((*known, *others))}.")
    entry = known[key]
    value = _in_unit(f"{table}.{key}", written, entry.unit)
    if not entry.least <= value <= entry.most:
        raise UsageError(f"{table}.{key} must be between {entry.least:g} and {entry.most:g}; got {written!r}.")
    return value


def _in_unit(name: str, written: Any, unit: str) -> float:
    try:
        return float(written) if unit == "MPa" else in_unit(written, unit)
    except OverflowError:
        raise UsageError(f"{name} must be a finite number.") from None
    except (TypeError, ValueError) as why:
        raise UsageError(f"{name} {why}.") from None


def _point(name: str, written: Any) -> tuple[float, float, float]:
    try:
        x, y, z = (in_unit(value, "mm") for value in written)
    except (TypeError, ValueError):
        raise UsageError(f"{name} must be three coordinates [x, y, z]; got {written!r}.") from None
    return x, y, z


def as_lines(scanner: Scanner | None, clamp: Clamp, tolerances: Mapping[str, float]) -> list[str]:
    """The tables as lines of a settings file, explained; those that are not set stand as comments."""
    lines = ["# Where the light comes from. Without this table it is taken as parallel, along the beam."]
    off = "# " if scanner is None else ""
    given = scanner or Scanner()
    lines.append(f"{off}[scanner]")
    telecentric = scanner is not None and scanner.is_telecentric
    lines.append(f"{'' if telecentric else '# '}telecentric = true  # instead of a distance")
    for entry in SCANNER:
        value = getattr(given, entry.key.replace("-", "_"))
        hide = off or ("# " if value is None else "")
        shown = f"{value:g}" if value is not None else "300.0"
        lines.append(f"{hide}{entry.key} = {shown}  # {entry.unit}, {entry.what} ({entry.standing})")
    axis = "# " if given.axis is None else ""
    at = ", ".join(repr(float(x)) for x in (given.axis or (0.0, 0.0, 0.0)))
    lines += [f"{axis}axis = [{at}]  # a point on the optical axis; left out: over the seam's middle", ""]
    lines += ["# The clamp tool.", "[clamp]"]
    for entry in CLAMP:
        value = getattr(clamp, entry.key)
        hide, shown = ("# ", "2.0") if value is None else ("", repr(float(value)))
        lines.append(f"{hide}{entry.key} = {shown}  # {entry.unit}, {entry.what} ({entry.standing})")
    lines += [
        "",
        "# How far parts may differ from the drawing: quantity = + or - so much, from your own tolerance",
        "# class. A value inside its limit by less than that is reported as at risk. Quantities without an",
        "# entry are judged at their nominal value only. [material.tolerance] takes from here what it leaves",
        '# out. file = "tolerances.csv" takes them from a table beside this file: rows of quantity, tolerance.',
        "# Also, in mm:",
        *(f"# {key}: {what}" for key, what in FLATNESS.items()),
        "[tolerance]" if tolerances else "# [tolerance]",
    ]
    lines += [f"{key} = {value!r}" for key, value in tolerances.items()] or ["# rib_width = 0.05"]
    return [*lines, ""]
