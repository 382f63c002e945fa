"""Energy, time, force and cooling: orders of magnitude from melt, light and process."""

from __future__ import annotations

from collections.abc import Callable, Mapping

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

Numbers = float | np.ndarray
"""One number, or an array of them."""


def melted_area(displaced: Numbers, layer: Numbers, width: Numbers) -> np.ndarray:
    """Melted section, mm², any shape: what is displaced (mm²) and a layer (mm) on both sides of the width (mm)."""
    return np.asarray(
        np.asarray(displaced, dtype=float) + 2.0 * np.asarray(layer, dtype=float) * np.asarray(width, dtype=float)
    )


def heat_to_weld(heat: Numbers, rise: Numbers, fusion: Numbers) -> np.ndarray:
    """Heat that melts the polymer, J/g, any shape: mean cp (J/(g·K)) times rise (K), plus fusion (J/g)."""
    return np.asarray(np.asarray(heat, dtype=float) * rise + fusion)


def energy_per_length(density: Numbers, area: Numbers, heat: Numbers) -> np.ndarray:
    """Energy per mm of seam, J/mm, any shape: density (g/cm³) times melted area (mm²) times heat (J/g).

    No heat is lost to the surroundings: a lower bound.
    """
    return np.asarray(np.asarray(density, dtype=float) * 1e-3 * np.asarray(area, dtype=float) * heat)


def steady_layer(speed: Numbers, pressure: Numbers, viscosity: Numbers, width: Numbers) -> np.ndarray:
    """Melt layer, mm, any shape, at which as much is squeezed out as melts at ``speed`` (mm/s).

    A layer h is squeezed out of a strip at p h³ / (μ w²): Newtonian lubrication film, F/L = μ w³ V / h³.
    """
    return np.asarray(np.cbrt(np.asarray(speed, dtype=float) * viscosity * 1e-6 * np.square(width) / pressure))


def cooling_depth(diffusivity: Numbers, time: Numbers) -> np.ndarray:
    """Depth that heat reaches in ``time`` (s), mm, any shape: √(4 a t), diffusivity a in mm²/s."""
    return np.asarray(np.sqrt(4.0 * np.asarray(diffusivity, dtype=float) * time))


def first_pass_rise(
    power: float, transmission: Numbers, speed: float, width: Numbers, depth: float, density: float, heat: float
) -> np.ndarray:
    """Rise of the base's surface in one pass, K, any shape; all heat stays within ``width`` times ``depth`` (mm)."""
    share = np.asarray(transmission, dtype=float)
    return power * share / (speed * np.asarray(width, dtype=float) * depth * density * 1e-3 * heat)


class EnergyInputs(Struct, frozen=True, eq=False):
    """What the estimate is made from; arrays per station, over all paths of the joint.

    Attributes
    ----------
    displaced : collapse (mm), () or (m,) -> (n,) or (m, n) mm² of rib section displaced
    length : (n,) mm that each station stands for
    width : (n,) mm, rib width
    transmission : (n,) share 0..1 that passes the cover and falls onto the rib, or all NaN when unknown
    collapse : mm
    numbers : density, heat, fusion, rise, layer and, where known, use, power, speed, pressure, viscosity,
        diffusivity; units as in the functions above
    transmission_factor, width_factor : applied to all stations; for the sensitivity and the ranges

    Collapse, numbers and factors may be (m,) arrays: m combinations at once.
    """

    displaced: Callable[[Numbers], np.ndarray]
    length: np.ndarray
    width: np.ndarray
    transmission: np.ndarray
    collapse: Numbers
    numbers: Mapping[str, Numbers]
    transmission_factor: Numbers = 1.0
    width_factor: Numbers = 1.0


def melt_energy(inputs: EnergyInputs) -> np.ndarray:
    """Energy (J/mm) that each station needs to melt: (n,), of m combinations (m, n)."""
    n = inputs.numbers
    factor = _beside_stations(inputs.width_factor)
    area = melted_area(inputs.displaced(inputs.collapse) * factor, _beside_stations(n["layer"]), inputs.width * factor)
    heat = heat_to_weld(n["heat"], n["rise"], n["fusion"])
    return energy_per_length(_beside_stations(n["density"]), area, _beside_stations(heat))


def estimate(inputs: EnergyInputs) -> dict[str, np.ndarray]:
    """Every result that the inputs suffice for, each () or, of m combinations, (m,), in the units of EnergyInputs.

    Stations without a value (NaN) count as the mean of the others, weighted by their length.
    """
    n = {key: np.asarray(value, dtype=float) for key, value in inputs.numbers.items()}
    out: dict[str, np.ndarray] = {}
    total = float(inputs.length.sum())
    width = _mean(inputs.width, inputs.length) * np.asarray(inputs.width_factor, dtype=float)
    if "pressure" in n and np.isfinite(width).all():
        out["clamp_force"] = n["pressure"] * width * total
    if "speed" in n:
        out["pass_time"] = total / n["speed"]
        out["cooling_depth"] = cooling_depth(n["diffusivity"], out["pass_time"])
    if "density" not in n:
        return out
    need = melt_energy(inputs)
    mean = _mean(need, inputs.length)
    if not np.isfinite(mean).all():
        return out
    out["energy_per_length"] = mean
    out["melt_energy"] = mean * total
    through = inputs.transmission * _beside_stations(inputs.transmission_factor)
    dose = need / (through * _beside_stations(n["use"]))
    even = _mean(dose, inputs.length)
    if not np.isfinite(even).all():
        return out
    out["laser_energy"] = even * total
    out["laser_energy_even"] = np.nanmax(dose, axis=-1) * total
    light = _mean(through, inputs.length)
    if "power" not in n:
        return out
    power = n["power"]
    out["least_time"] = out["laser_energy_even"] / power
    heat = heat_to_weld(n["heat"], n["rise"], n["fusion"])
    speed = power * light * n["use"] / (total * width * n["density"] * 1e-3 * heat)
    if "pressure" in n:
        out["steady_layer"] = steady_layer(speed, n["pressure"], n["viscosity"], width)
    return out


SENSITIVE = (
    "density",
    "heat",
    "fusion",
    "rise",
    "layer",
    "use",
    "power",
    "speed",
    "pressure",
    "viscosity",
    "diffusivity",
)


def sensitivity(inputs: EnergyInputs, change: float = 0.1) -> dict[str, dict[str, tuple[float, float]]]:
    """What a change of each input by ``change`` (share) down and up does to each result, as shares of it.

    Beside the numbers: 'transmission', 'rib width' and 'collapse'. Results that don't move are left out.
    """
    nominal = estimate(inputs)
    table: dict[str, dict[str, tuple[float, float]]] = {}

    def shifts(name: str, factor: float) -> EnergyInputs:
        if name == "transmission":
            return replace(inputs, transmission_factor=np.asarray(inputs.transmission_factor) * factor)
        if name == "rib width":
            return replace(inputs, width_factor=np.asarray(inputs.width_factor) * factor)
        if name == "collapse":
            return replace(inputs, collapse=np.asarray(inputs.collapse) * factor)
        return replace(inputs, numbers={**inputs.numbers, name: np.asarray(inputs.numbers[name]) * factor})

    for name in (*(key for key in SENSITIVE if key in inputs.numbers), "transmission", "rib width", "collapse"):
        down, up = estimate(shifts(name, 1.0 - change)), estimate(shifts(name, 1.0 + change))
        moved = {}
        for key, value in nominal.items():
            if value and key in down and key in up:
                pair = (float(down[key] / value - 1.0), float(up[key] / value - 1.0))
                if max(abs(pair[0]), abs(pair[1])) > 1e-9:
                    moved[key] = pair
        if moved:
            table[name] = moved
    return table


def _beside_stations(values: Numbers) -> np.ndarray:
    """Of m combinations (m, 1), so that they go with (n,) stations."""
    return np.asarray(values, dtype=float)[..., None]


def _mean(values: np.ndarray, weights: np.ndarray) -> np.ndarray:
    """Mean over the stations, the last axis; NaN where none has a value."""
    known = np.isfinite(values)
    weight = np.where(known, weights, 0.0).sum(axis=-1)
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.asarray(np.where(known, values, 0.0) @ weights / np.where(weight > 0.0, weight, np.nan))
