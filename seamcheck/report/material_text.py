"""The material section of the review document as lines of text. Computes nothing."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import in_voice, localised, tr
from seamcheck.report.facts import mm, span
from seamcheck.report.language import known_word, term

SHOWN = (
    "melt_energy", "laser_energy_even", "least_power", "start_time", "weld_time", "passes", "cycle_time",
    "peak_temperature", "cover_surface", "cooling_time", "melted_base", "melted_cover", "clamp_force",
    "first_pass_rise",
)  # fmt: skip
"""Results of the energy estimate that the terminal shows; the document holds all."""


def material_lines(section: Mapping[str, Any]) -> list[str]:
    """Return the lines that the terminal report prints for one joint's "material" section."""
    lines: list[str] = []
    settings = section["settings"]
    names = " / ".join((settings[part] or {}).get("name", tr("not named")) for part in ("cover", "base"))
    lines.append(tr("Material (cover / base): {names}", names=names))
    if "pair" in section:
        pair = section["pair"]
        verdict = f"{term('pair', pair['verdict'])} ({known_word(pair['standing'])})"
        lines.append("  " + tr("Pair: {verdict}. {message}", verdict=verdict, message=pair["message"]))
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
    lines += ["  " + tr("Note: {note}", note=note) for note in section["notes"]]
    lines.append("  " + tr("Orders of magnitude, no process setting and no approval; a trial weld is required."))
    return lines


def drawn() -> str:
    """What the shares of random combinations say beside the window."""
    return tr(
        "The collapse window takes gap, flatness and rib at their worst at once; these combinations draw each by "
        "chance within its range, so some can suit where the window is empty."
    )


def plain_number(value: float | None, decimals: int) -> str:
    """A number without unit, with the decimal sign of the report."""
    return "–" if value is None else localised(f"{value:.{decimals}f}")


def amount(value: float | None, unit: str, bare: bool = False) -> str:
    """Three digits, never in powers of ten, in the unit of the report; with its unit unless ``bare``."""
    if value is None:
        return "–"
    value, unit, _ = in_voice(value, unit, 0)
    text = localised(f"{value:.0f}" if abs(value) >= 100.0 else f"{value:.3g}")
    return text if bare or unit == "1" else f"{text} {unit}"


def terms(family: str, keys: Sequence[str]) -> str:
    """Several keys of the section in words, by commas."""
    return ", ".join(term(family, key) for key in keys)


def corner_sentence(corners: Mapping[str, Any]) -> str:
    """The tightest turn, the acceleration that the given speed takes there, and what the scanner makes of it."""
    told = tr(
        "Tightest corner: R = {radius} on {path}{place}. At the given speed the spot's acceleration there is "
        "{acceleration} m/s² ({how}).",
        radius=mm(corners["least_corner_radius_mm"], 2), path=corners["contour"], place=_at(corners["at"]),
        acceleration=plain_number(corners["acceleration_mm_s2"] / 1000.0, 0), how=corners["how"],
    )  # fmt: skip
    slowed = corners.get("slowed_to_mm_s")
    if slowed is None:
        return told
    speed = amount(slowed, "mm/s")
    return f"{told} " + tr(
        ("With the acceleration given it takes this corner at {speed}; the chart of the corner dose shows the effect."),
        speed=speed,
    )


def _light(light: Mapping[str, Any]) -> list[str]:
    lines = []
    for contour in light["contours"]:
        text = tr(
            "Transmission {path}: least {least} % ({likely} %) through {length} at s = {s}{place}",
            path=contour["contour"], least=plain_number(contour["least_percent"], 1),
            likely=span(plain_number(contour["low_percent"], 0), plain_number(contour["high_percent"], 0)),
            length=mm(contour["light_path_mm"], 2), s=mm(contour["s_mm"]), place=_at(contour["at"]),
        )  # fmt: skip
        if contour["carried_on_mm"]:
            text += tr(
                "; over {length} of the seam the curve is extrapolated beyond the thickest plaque, up to {times} times",
                length=mm(contour["carried_on_mm"]), times=plain_number(contour["farthest_of_plaque"], 2),
            )  # fmt: skip
        lines.append(f"  {text}")
    limit = light["limit_path_28_mm"]
    if limit is not None:
        told = tr(
            "28 % is transmitted up to a thickness of {length} (common practice, no published source).",
            length=mm(limit, 2),
        )
        lines.append(f"    {told}")
    for place in light["places"]:
        thin = place["thin_by_mm"]
        told = tr(
            "{what} on {path} from s = {stretch}, {length} of cover",
            what=place["what"], path=place["contour"], length=mm(place["light_path_mm"], 2),
            stretch=span(plain_length(place["from_s_mm"], 1), mm(place["to_s_mm"])),
        )  # fmt: skip
        lines.append(f"    {told}" + ("" if thin is None else tr(": make it {length} thinner", length=mm(thin, 2))))
    return lines


def _melt(melt: Mapping[str, Any], window: Mapping[str, Any]) -> list[str]:
    lines = []
    expansion = melt["expansion"]
    lines.append(
        "  "
        + tr(
            "Hot melt takes {times} times the volume of the solid ({standing}).",
            times=plain_number(expansion["value"], 2), standing=known_word(expansion["standing"]),
        )
    )  # fmt: skip
    for contour in melt["contours"]:
        fills = [
            f"{side} {plain_number(contour[key]['most'], 2)}"
            for side, key in (
                (tr("both traps"), "trap_fill"),
                (tr("inner"), "trap_fill_inner"),
                (tr("outer"), "trap_fill_outer"),
            )
            if key in contour
        ]
        if fills:
            told = tr(
                "Fullest flash trap on {path}: {fills} (1 is full)", path=contour["contour"], fills=", ".join(fills)
            )
            lines.append(f"    {told}")
    low, high = window["lowest"], window["highest"]
    ends = span(
        f"{mm(low['value_mm'], 2)} ({low['cause']})",
        tr("no end found") if high is None else f"{mm(high['value_mm'], 2)} ({high['cause']}{_at(high['at'])})",
    )
    told = tr(
        "Collapse window: {ends}; planned {planned}: {state}",
        ends=ends, planned=shown(window["planned_mm"], "mm", 2), state=term("window", window["place"]),
    )  # fmt: skip
    return [*lines, f"  {told}", *("    " + tr("Not in it: {what}", what=what) for what in window["unknown"])]


def _energy(energy: Mapping[str, Any]) -> list[str]:
    lines = ["  " + tr("Energy and time, orders of magnitude:")]
    for entry in energy["results"]:
        if entry["key"] in SHOWN and entry["value"] is not None:
            unit, low, high = entry["unit"], entry.get("low"), entry.get("high")
            likely = f" ({span(amount(low, unit, True), amount(high, unit, True))})" if low not in (None, high) else ""
            standing = known_word(entry["standing"])
            lines.append(f"    {entry['title']}: {amount(entry['value'], unit)}{likely}; {standing}")
    corners = energy["corners"]
    if corners is not None and corners["acceleration_mm_s2"] is not None:
        lines.append(f"    {corner_sentence(corners)}")
    return lines


def _heat(heat: Mapping[str, Any]) -> list[str]:
    lines = ["  " + tr("Heat: {sentence}", sentence=sentence) for sentence in (*heat["says"], *heat["not_evaluated"])]
    return [*lines, "    " + tr("With: {inputs}.", inputs=heat["with"])] if heat["with"] else lines


def _chances(chances: Mapping[str, Any]) -> list[str]:
    lines = [
        "  "
        + tr(
            "In {share} % of {count} tolerance combinations: {what}",
            share=plain_number(100 * share, 0), count=chances["combinations"], what=term("condition", what),
        )
        for what, share in chances["shares"].items()
    ]  # fmt: skip
    return [*lines, f"    {drawn()}"] if lines else []


def plain_length(value: float, decimals: int) -> str:
    """A length given in mm, without its unit."""
    value, _, more = in_voice(value, "mm", decimals)
    return plain_number(value, more)


def _at(point: Sequence[float] | None) -> str:
    if point is None:
        return ""
    return tr(" at ({place})", place="; ".join(plain_length(round(x, 2) + 0.0, 2) for x in point))
