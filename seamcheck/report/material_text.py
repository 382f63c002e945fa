"""The material section of the review document as lines of text. Computes nothing."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

SHOWN = (
    "melt_energy",
    "laser_energy_even",
    "least_power",
    "start_time",
    "weld_time",
    "passes",
    "cycle_time",
    "peak_temperature",
    "cover_surface",
    "cooling_time",
    "melted_base",
    "melted_cover",
    "clamp_force",
    "first_pass_rise",
)
"""Results of the energy estimate that the terminal shows; the document holds all."""


DRAWN = (
    "The collapse window takes gap, flatness and rib at their worst at once; these combinations draw each by chance "
    "within its range, so some can suit where the window is empty."
)


def material_lines(section: Mapping[str, Any]) -> list[str]:
    """Return the lines that the terminal report prints for one joint's "material" section."""
    lines: list[str] = []
    settings = section["settings"]
    names = " / ".join((settings[part] or {}).get("name", "not named") for part in ("cover", "base"))
    lines.append(f"Material (cover / base): {names}")
    if "pair" in section:
        pair = section["pair"]
        lines.append(f"  Pair: {pair['verdict']} ({pair['standing']}). {pair['message']}")
        lines += [f"    {why}" for why in pair["why"]]
        if pair["verdict"].startswith("estimate"):
            lines += [f"    {limit}" for limit in pair["limits"]]
    if "transmission" in section:
        lines += _light(section["transmission"])
    if "window" in section:
        lines += _melt(section["melt"], section["window"])
    if "energy" in section:
        lines += _energy(section["energy"])
    if "heat" in section:
        lines += _heat(section["heat"])
    if "uncertainty" in section:
        lines += _chances(section["uncertainty"])
    lines += [f"  Note: {note}" for note in section["notes"]]
    lines.append("  Orders of magnitude, no process setting and no approval; a trial weld is required.")
    return lines


def _light(light: Mapping[str, Any]) -> list[str]:
    lines = []
    for contour in light["contours"]:
        text = (
            f"  Transmission {contour['contour']}: least {contour['least_percent']:.1f} % "
            f"({contour['low_percent']:.0f} to {contour['high_percent']:.0f} %) through "
            f"{contour['light_path_mm']:.2f} mm at s = {contour['s_mm']:.1f} mm{_at(contour['at'])}"
        )
        if contour["carried_on_mm"]:
            text += (
                f"; over {contour['carried_on_mm']:.1f} mm of the seam the curve is extrapolated beyond the thickest "
                f"plaque, up to {contour['farthest_of_plaque']:.2f} times"
            )
        lines.append(text)
    limit = light["limit_path_28_mm"]
    if limit is not None:
        lines.append(f"    28 % is passed up to {limit:.2f} mm (common practice, no published source).")
    for place in light["places"]:
        thin = "" if place["thin_by_mm"] is None else f": make it {place['thin_by_mm']:.2f} mm thinner"
        lines.append(
            f"    {place['what']} on {place['contour']} from s = {place['from_s_mm']:.1f} to "
            f"{place['to_s_mm']:.1f} mm, {place['light_path_mm']:.2f} mm of cover{thin}"
        )
    return lines


def _melt(melt: Mapping[str, Any], window: Mapping[str, Any]) -> list[str]:
    lines = []
    expansion = melt["expansion"]
    lines.append(f"  Melt takes {expansion['value']:.2f} times its room while hot ({expansion['standing']}).")
    for contour in melt["contours"]:
        fills = [
            f"{side} {contour[key]['most']:.2f}"
            for side, key in (
                ("both traps", "trap_fill"),
                ("inner", "trap_fill_inner"),
                ("outer", "trap_fill_outer"),
            )
            if key in contour
        ]
        if fills:
            lines.append(f"    Fullest flash trap on {contour['contour']}: {', '.join(fills)} (1 is full)")
    low, high = window["lowest"], window["highest"]
    text = f"  Collapse window: {low['value_mm']:.2f} mm ({low['cause']}) to "
    text += "no end found" if high is None else f"{high['value_mm']:.2f} mm ({high['cause']}{_at(high['at'])})"
    lines.append(f"{text}; planned {window['planned_mm']:g} mm: {window['place']}")
    return lines + [f"    Not in it: {what}" for what in window["unknown"]]


def _energy(energy: Mapping[str, Any]) -> list[str]:
    lines = ["  Energy and time, orders of magnitude:"]
    for entry in energy["results"]:
        if entry["key"] in SHOWN and entry["value"] is not None:
            unit = "" if entry["unit"] == "1" else f" {entry['unit']}"
            span = (
                f" ({_number(entry['low'])} to {_number(entry['high'])})"
                if entry.get("low") is not None and entry["low"] != entry["high"]
                else ""
            )
            lines.append(f"    {entry['title']}: {_number(entry['value'])}{unit}{span}; {entry['standing']}")
    corners = energy["corners"]
    if corners is not None and corners["acceleration_mm_s2"] is not None:
        radius, metres = corners["least_turn_radius_mm"], corners["acceleration_mm_s2"] / 1000.0
        text = (
            f"    Tightest turn: R = {radius:.2f} mm on {corners['contour']}{_at(corners['at'])}; the speed there "
            f"takes {metres:.0f} m/s²"
        )
        slowed = corners.get("slowed_to_mm_s")
        if slowed is not None:
            text += f"; the scanner's acceleration allows {slowed:.0f} mm/s"
        lines.append(f"{text}. Slower light gives more energy there (column corner_dose).")
    return lines


def _heat(heat: Mapping[str, Any]) -> list[str]:
    lines = [f"  Heat: {sentence}" for sentence in (*heat["says"], *heat["not_evaluated"])]
    return [*lines, f"    With: {heat['with']}."] if heat["with"] else lines


def _chances(chances: Mapping[str, Any]) -> list[str]:
    lines = [
        f"  In {100 * share:.0f} % of {chances['combinations']} tolerance combinations: {what}"
        for what, share in chances["shares"].items()
    ]
    return [*lines, f"    {DRAWN}"] if lines else []


def _number(value: float) -> str:
    """Three digits, never in powers of ten."""
    return f"{value:.0f}" if abs(value) >= 100.0 else f"{value:.3g}"


def _at(point: Sequence[float] | None) -> str:
    return "" if point is None else f" at ({', '.join(f'{round(x, 2) + 0.0:.2f}' for x in point)})"
