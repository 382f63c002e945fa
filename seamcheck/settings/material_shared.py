"""Numbers that stand in another table of the settings and hold for the materials as well: written once, used twice."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from seamcheck.settings.material import ENTRIES

FROM_TOLERANCES: dict[str, str] = {
    "thickness": "cover_thickness",
    "width": "rib_width",
    "gap": "gap",
    "travel": "free_travel",
}
"""Entry of ``[material.tolerance]`` -> quantity of ``[tolerance]`` that stands in for it."""

FLATNESS = ("flatness_cover", "flatness_rib")


def completed(
    table: Mapping[str, Any] | None, tolerances: Mapping[str, float], pressure: float | None
) -> Mapping[str, Any] | None:
    """The ``[material]`` table with what it leaves out and other tables hold; None without materials.

    Parameters
    ----------
    table : as read
    tolerances : of ``[tolerance]``: quantity -> +-; flatness and what the clamp presses flat of it, mm
    pressure : of ``[clamp]``, MPa

    Notes
    -----
    What stands in ``[material]`` wins. Flatness there is what is left under the clamp: of both flatnesses together
    ``flattened`` is taken off, of each in proportion.
    """
    if table is None:
        return None
    fed: dict[str, float] = {key: tolerances[name] for key, name in FROM_TOLERANCES.items() if name in tolerances}
    together = sum(tolerances.get(key, 0.0) for key in FLATNESS)
    left = max(0.0, together - tolerances.get("flattened", 0.0))
    fed |= {key: tolerances[key] * left / together for key in FLATNESS if tolerances.get(key, 0.0) > 0.0}
    sections = {"tolerance": fed, "process": {} if pressure is None else {"pressure": pressure}}
    result = dict(table)
    for section, values in sections.items():
        held = {key: min(value, _most(section, key)) for key, value in values.items()}
        if held:
            result[section] = {**held, **table.get(section, {})}
    return result


def _most(section: str, key: str) -> float:
    return next(entry.most for entry in ENTRIES if (entry.section, entry.key) == (section, key))
