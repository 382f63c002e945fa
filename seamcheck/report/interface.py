"""What was measured over the whole interface, as rows for people; every report shows the same ones."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.interface_quantities import INTERFACE_QUANTITIES
from seamcheck.catalogue.quantities import MEASURED, QUANTITIES
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import localised, tr
from seamcheck.report.language import quantity_title
from seamcheck.report.place import point

Row = tuple[str, str, str, str]
"""Title, value with unit, place, remark; '' for what there is none of."""


def interface_rows(joint: Mapping[str, Any], reasons: Mapping[str, str]) -> list[Row]:
    """Rows of one joint of a review document, in the order in which the quantities are declared."""
    return [row for key in QUANTITIES if key in joint["interface"] for row in _rows(key, joint["interface"], reasons)]


def _rows(key: str, interface: Mapping[str, Any], reasons: Mapping[str, str]) -> Iterator[Row]:
    if key not in MEASURED and key not in INTERFACE_QUANTITIES:
        return
    q, entry = QUANTITIES[key], interface[key]
    title = quantity_title(key)
    title = title if q.per == "interface" else f"{title}, {_which(key)}"
    why = str(entry.get("why") or "")
    remark = why if " " in why else reasons.get(why, "")
    if entry.get("value") is None:
        free = tr("nothing is in the way")
        yield title, free if why == "free" else tr("not measured"), "", "" if why == "free" else remark
        return
    yield title, shown(entry["value"], q.unit, q.decimals), _place(entry), remark
    if key == "free_travel":
        for place in entry.get("places", ())[1:]:
            yield (
                f"  {tr('then')}",
                shown(place["value"], q.unit, q.decimals),
                _place(place),
                str(place.get("why") or ""),
            )
    if entry.get("force_newton") is not None:
        along = localised(f"{entry['force_newton_per_mm']:.2f} N/mm")
        yield f"  {tr('force over the rib')}", f"{entry['force_newton']:.0f} N", "", along
    if entry.get("pressure_on_land_mpa") is not None:
        pressure = localised(f"{entry['pressure_on_land_mpa']:.2f} MPa")
        yield f"  {tr('pressure on all of that area')}", pressure, "", ""


def _which(key: str) -> str:
    """Which value of a column is told of the whole interface."""
    least, largest = tr("least"), tr("largest")
    words = {
        "free_travel": tr("whole interface"), "beam_angle": largest, "light_clear": least, "beam_clear": least,
        "support_depth": least, "overhang": largest,
    }  # fmt: skip
    return words.get(key, tr("worst place"))


def _place(entry: Mapping[str, Any]) -> str:
    at = entry.get("at")
    return "" if not at else point(at)
