"""The ``[scanner]``, ``[clamp]``, ``[trial]`` and ``[tolerance]`` tables: what they hold, read and checked."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from msgspec import Struct
from msgspec.structs import asdict

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.setting import Setting
from seamcheck.errors import UsageError
from seamcheck.settings.declared import (
    CLAMP,
    FLATNESS,
    LOAD,
    PROCESS_TOLERANCES,
    SCANNER,
    TRIAL,
    USUAL_INDEX,
    tolerance,
)
from seamcheck.settings.guard import below, text_of
from seamcheck.settings.reading import SettingFault, Table, flag, nearest, number, point, text, unknown

_EXAMPLES = {
    "scanner": "distance = 300 (scanner.distance=300)",
    "clamp": "height = 20 (clamp.height=20)",
    "load": "pressure = 0.1 (load.pressure=0.1)",
    "trial": "speed = 2000 (trial.speed=2000)",
    "tolerance": "rib_width = 0.05 (tolerance.rib_width=0.05)",
}


class Written(Struct, frozen=True):
    """What a table of the settings holds."""

    def as_table(self) -> dict[str, Any]:
        """The table that it is read from."""
        return {key.replace("_", "-"): value for key, value in asdict(self).items() if value is not None}


class Scanner(Written, frozen=True):
    """Where the light comes from.

    Attributes
    ----------
    distance : mm, None where it is telecentric
    axis : (3,) mm, a point on the optical axis in the model's coordinates; None: over the middle of the seam
    half_angle : degrees; index : of the cover, None where it follows from the cover's material
    """

    distance: float | None = None
    axis: tuple[float, float, float] | None = None
    half_angle: float = 0.0
    index: float | None = None

    @property
    def is_telecentric(self) -> bool:
        """Whether the light travels parallel to the axis everywhere."""
        return self.distance is None

    def as_table(self) -> dict[str, Any]:
        """The table that it is read from."""
        return {**super().as_table(), **({"telecentric": True} if self.is_telecentric else {})}


class Light(Struct, frozen=True):
    """What measuring goes by of the light onto one joint.

    Attributes
    ----------
    spot : mm, width of the spot where it meets the rib; None: as wide as the rib
    scanner : None for light along the beam
    index : refractive index of the cover
    margin : mm, room beside the beam
    """

    spot: float | None = None
    scanner: Scanner | None = None
    index: float = USUAL_INDEX
    margin: float = 0.0


class Clamp(Written, frozen=True):
    """The clamp tool: height mm, reach mm, least width of land mm; pressure, modulus of the cover MPa or None."""

    height: float = 20.0
    reach: float = 5.0
    width: float = 0.5
    pressure: float | None = None
    modulus: float | None = None


class Load(Written, frozen=True):
    """What the weld has to hold: pressure MPa inside, or force N; strength MPa, weld factor; None where not given."""

    pressure: float | None = None
    force: float | None = None
    strength: float | None = None
    weld_factor: float | None = None


class Trial(Written, frozen=True):
    """What tools, path and cycle of a trial go by, see declared.TRIAL; mm, degrees, s, W; None where not given."""

    speed: float | None = None
    acceleration: float | None = None
    laps: float | None = None
    overlap: float = TRIAL["overlap"].default or 0.0
    power: float | None = None
    frame_width: float = TRIAL["frame-width"].default or 0.0
    clearance: float = TRIAL["clearance"].default or 0.0
    nest_grip: float = TRIAL["nest-grip"].default or 0.0
    nest_play: float = TRIAL["nest-play"].default or 0.0
    nest_draft: float = TRIAL["nest-draft"].default or 0.0
    plate_thickness: float | None = None
    plate_index: float | None = None
    cooling: float | None = None
    handling: float | None = None
    hours: float | None = None
    used: float = TRIAL["used"].default or 0.0
    parts: float | None = None

    @property
    def plate(self) -> tuple[float, float] | None:
        """Thickness (mm) and refractive index of a transparent plate; None for a frame."""
        if self.plate_thickness is None or self.plate_index is None:
            return None
        return self.plate_thickness, self.plate_index


def _numbers(name: str, written: Any, settings: Mapping[str, Setting], *others: str) -> tuple[Table, dict[str, Any]]:
    """A table, which may hold these settings and others, and the settings' values by their attributes."""
    table = Table.of({} if written is None else written, (name,), _EXAMPLES[name])
    table.only((*settings, *others))
    return table, {setting.attribute: table.number(setting) for setting in settings.values()}


def read_scanner(written: Any) -> Scanner | None:
    """The scanner of a ``[scanner]`` table; None without one. SettingFault for what can't be taken."""
    if written is None:
        return None
    table, numbers = _numbers("scanner", written, SCANNER, "axis", "telecentric")
    scanner = Scanner(axis=table.maybe("axis", None, point), **numbers)
    telecentric = table.maybe("telecentric", False, flag)
    if telecentric == ("distance" in table.values):
        said = "scanner needs either distance, from the mirrors' pivot to the cover's top face, or telecentric = true."
        raise SettingFault(table.path, said)
    return scanner


def read_clamp(written: Any) -> Clamp:
    """The clamp of a ``[clamp]`` table. SettingFault for what can't be taken."""
    return Clamp(**_numbers("clamp", written, CLAMP)[1])


def read_trial(written: Any) -> Trial:
    """What a trial goes by, of a ``[trial]`` table. SettingFault for what can't be taken."""
    table, numbers = _numbers("trial", written, TRIAL)
    trial = Trial(**numbers)
    if (trial.plate_thickness is None) != (trial.plate_index is None):
        raise SettingFault(table.path, "A plate needs both plate-thickness, in mm, and plate-index.")
    if trial.laps is not None and trial.laps != round(trial.laps):
        raise SettingFault((*table.path, "laps"), f"trial.laps is a whole number; got {trial.laps:g}.")
    return trial


def read_load(written: Any) -> Load | None:
    """The load of a ``[load]`` table; None without one. SettingFault for what can't be taken."""
    if written is None:
        return None
    table, numbers = _numbers("load", written, LOAD)
    load = Load(**numbers)
    if (load.pressure is None) == (load.force is None):
        raise SettingFault(table.path, "load needs either pressure, in MPa inside, or force, in N on the cover.")
    return load


def read_tolerances(written: Any, folder: Path | None = None) -> Mapping[str, float]:
    """Quantity -> how far (+-) it may differ from the drawing.

    Parameters
    ----------
    written : quantity -> +-; ``file`` names a table file, entries beside it win
    folder : beside which that file lies; None for the working folder

    Raises
    ------
    SettingFault : a quantity that does not exist, a value that can't be taken, or a file that can't be read
    """
    table = Table.of({} if written is None else written, ("tolerance",), _EXAMPLES["tolerance"])
    nothing: dict[str, float] = {}
    found = table.maybe("file", nothing, _tolerances_of_file, folder)
    return found | dict(table.at(key, _tolerance, key) for key in table.values if key != "file")


def _tolerance(name: str, written: Any, key: str) -> tuple[str, float]:
    setting = tolerance(key)
    if setting is None:
        raise UsageError(unknown(key, (*QUANTITIES, *FLATNESS, *PROCESS_TOLERANCES), "quantity"))
    return setting.name, number(name, written, setting)


def _tolerances_of_file(entry: str, written: Any, folder: Path | None) -> dict[str, float]:
    """A table of two columns, quantity and tolerance, divided by commas, semicolons or tabs; '#' begins a comment.

    What the file holds is never part of an error: it may not be what the settings say that it is.
    """
    name = text(entry, written, 'the name of a table file, such as "tolerances.csv"')
    path = Path(name) if folder is None else below(folder, name)
    if path is None:
        raise UsageError(
            f"{entry} must lie below the folder of the settings file. To use another one, name it on the command "
            "line: --tolerance file=TABLE."
        )
    found: dict[str, float] = {}
    for count, line in enumerate(text_of(path, "the tolerance table").splitlines(), 1):
        cells = [cell.strip().strip('"') for cell in re.split(r"[;,\t]", line.partition("#")[0])]
        if not any(cells) or [cell.lower() for cell in cells[:2]] == ["quantity", "tolerance"]:
            continue
        where = f"{path}, line {count}"
        if len([cell for cell in cells if cell]) != 2:
            raise UsageError(f"{where}: a row has a quantity and its tolerance, such as rib_width, 0.05.")
        setting = tolerance(cells[0])
        if setting is None:
            near = nearest(cells[0], (*QUANTITIES, *FLATNESS, *PROCESS_TOLERANCES))
            raise UsageError(f"{where}: there is no such quantity." + (f" Did you mean {near!r}?" if near else ""))
        if setting.name in found:
            raise UsageError(f"{where}: {setting.name} stands there twice.")
        try:
            found[setting.name] = number(setting.name, cells[1].lstrip("±").strip(), setting)
        except UsageError:
            said = "must be a number or a length, 0 or more, such as 0.05."
            raise UsageError(f"{where}: the tolerance of {setting.name} {said}") from None
    return found
