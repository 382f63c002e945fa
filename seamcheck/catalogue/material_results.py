"""Results of light, heat and melt: unit, title and how each is computed; and the words of their inputs and states."""

from __future__ import annotations

BOUNDS: dict[str, tuple[str, str, str]] = {
    "energy_per_length": (
        "J/mm", "energy to melt one millimetre of seam",
        "density · melted area · (mean heat · rise + heat of fusion), no losses",
    ),
    "melt_energy": ("J", "energy to melt the whole seam", "energy per length over the whole path"),
    "laser_energy": (
        "J", "laser energy adapted along the seam to the need of each place, without conduction",
        "energy to melt / (transmission of the place · share of the light on the rib · share that becomes heat)",
    ),
    "laser_energy_even": (
        "J", "laser energy at constant power and speed until the slowest place has melted, without conduction",
        "largest need of any place, over the whole path",
    ),
    "least_time": (
        "s", "least time with the laser on, without conduction",
        "laser energy (even) / power: a lower bound; the heat model gives the time",
    ),
    "pass_time": ("s", "time of one pass", "length / speed, without jumps and slow corners"),
    "first_pass_rise": (
        "K", "rise of the base's surface in one pass, where it is highest",
        "power · transmission / (speed · width of the beam · absorption depth · density · heat)",
    ),
    "cooling_depth": (
        "mm", "depth that heat reaches between two passes",
        "√(4 · diffusivity · pass time); much more than the absorption depth: the rib does not melt all at once",
    ),
    "clamp_force": ("N", "clamp force", "pressure · rib width · length"),
    "steady_layer": (
        "mm", "melt layer while the rib collapses",
        "where melt is squeezed out as fast as it forms without losses: (speed · viscosity · width² / pressure)^(1/3)",
    ),
}  # fmt: skip
"""Bounds without conduction, and what needs no heat model: key -> unit, what it is, how it is computed."""

OF_HEAT: dict[str, tuple[str, str, str]] = {
    "plane_time": (
        "s", "time to melting without lateral conduction: a lower bound",
        "π (ΔT (e1 + e2) / (2 q))², e = √(k ρ cp): plane source between two half-spaces",
    ),
    "start_time": (
        "s", "time until the slowest place of the seam melts",
        "until the mean of the interface reaches the melting point, at constant power and speed",
    ),
    "weld_time": (
        "s", "time with the laser on, until the planned collapse is reached",
        "melt is pressed out as soon as the residual layer below the interface is as hot as the melt",
    ),
    "passes": ("1", "passes round the seam", "weld time · speed / length, rounded up"),
    "cycle_time": ("s", "cycle: weld, hold and handling", "weld time + hold + handling"),
    "least_power": (
        "W", "least power at which the whole seam melts at all", "steady state against the losses to air and tool",
    ),
    "melting_speed": ("mm/s", "mean speed of the collapse", "collapse / (weld time - time to melting)"),
    "peak_temperature": (
        "°C", "highest temperature in the seam",
        "at the place that gets hottest until the slowest has collapsed, with the rise of one pass",
    ),
    "cover_surface": (
        "°C", "highest temperature at the cover's top",
        "by conduction alone; light that the cover itself absorbs is not in it",
    ),
    "cooling_time": (
        "s", "time with the laser off until the seam is solid", "until the interface's mean is below the melting point",
    ),
    "melted_base": ("mm", "depth that melts in the base, mean over the beam's width", "one pass of the spot"),
    "melted_cover": ("mm", "depth that melts in the cover, mean over the beam's width", "one pass of the spot"),
}  # fmt: skip
"""Results of the heat model, in the same shape."""

RESULTS = {**BOUNDS, **OF_HEAT}

RESULT_TEXTS: dict[str, str] = {
    **{f"result.{key}": title for key, (_, title, _) in RESULTS.items()},
    **{f"how.{key}": how for key, (_, _, how) in RESULTS.items()},
    "how.turn": "speed² / corner radius; a scanner that can't follow slows down and delivers more energy there",
    "result.standing": "computed; weakest input: {standing:known}",
}

INPUTS: dict[str, str] = {
    "density": "density",
    "heat": "mean heat up to the melt",
    "cold_heat": "heat near 20 °C",
    "fusion": "heat of fusion",
    "rise": "temperature rise",
    "conductivity": "conductivity",
    "diffusivity": "diffusivity",
    "layer": "residual melt layer",
    "depth": "absorption depth",
    "use": "share that becomes heat",
    "power": "laser power",
    "speed": "speed of the spot",
    "pressure": "pressure",
    "viscosity": "viscosity of the melt",
    "transmission": "transmission",
    "rib width": "rib width",
    "collapse": "collapse",
    "heat model": "heat model",
    "melt expansion": "expansion of the melt",
    "plaque scatter": "scatter of the plaques",
    "form of the transmission curve": "form of the transmission curve",
    "tolerance.thickness": "tolerance of the cover thickness",
    "tolerance.width": "tolerance of the rib width",
    "tolerance.gap": "tolerance of the gap",
    "tolerance.travel": "tolerance of the free travel",
    "tolerance.collapse": "tolerance of the collapse",
    "tolerance.trap": "tolerance of the trap area",
    "tolerance.flatness_cover": "flatness of the cover",
    "tolerance.flatness_rib": "flatness of the rib",
}  # fmt: skip
"""Inputs of results, of sensitivities and of random combinations -> what they are called."""

TOLERANCES: dict[str, str] = {
    "collapse": "tolerance of the collapse",
    "trap_area": "tolerance of the trap area",
    "flatness_cover": "flatness of the cover",
    "flatness_rib": "flatness of the rib",
    "flattened": "flattened by the clamp",
    "cpk": "process capability Cpk",
}  # fmt: skip
"""Entries of the table ``[tolerance]`` that are no quantities -> what a report calls them."""

NUMBERS: dict[str, str] = {
    "light.wavelength": "wavelength",
    "light.index": "refractive index of the cover",
    "light.plaque_scatter": "scatter of the plaques",
    "laser.power": "laser power",
    "laser.speed": "speed of the spot",
    "laser.spot": "width of the spot",
    "laser.use": "share that becomes heat",
    "laser.absorption_depth": "absorption depth",
    "laser.passes": "passes round the seam",
    "laser.acceleration": "largest acceleration of the spot",
    "process.pressure": "pressure over the rib top",
    "process.melt_temperature": "temperature of the melt",
    "process.room_temperature": "temperature before the weld",
    "process.residual_layer": "residual melt layer",
    "process.viscosity": "viscosity of the melt",
    "process.handling": "handling time",
    "process.hold": "hold time",
    "process.decomposition": "decomposition temperature",
    "process.longest_heating": "longest heating",
    "process.air_loss": "heat loss to the air",
    "process.tool_loss": "heat loss to the tool",
    "process.trap_fill": "largest flash trap fill",
    "process.least_local_collapse": "least local collapse",
    "process.travel_reserve": "reserve of the free travel",
    "process.height_reserve": "reserve of the rib height",
    "samples.count": "random combinations",
    "samples.seed": "seed of the random numbers",
}  # fmt: skip
"""Numbers of the table ``[material]`` -> what a report calls them."""

CONDITIONS: dict[str, str] = {
    "transmission at or above 28 %": "transmission at or above 28 %",
    "gap closed by the collapse": "gap closed by the collapse",
    "travel left after the collapse": "travel left after the collapse",
    "traps hold the melt": "traps hold the melt",
    "a collapse exists that suits": "there is a suitable collapse",
    "all of them but the transmission": "all of them but the transmission",
    "all of them": "all of them",
}  # fmt: skip
"""What a share of the random combinations keeps."""

_STATES: dict[str, str] = {
    "window-inside": "inside",
    "window-too small": "too small",
    "window-too large": "too large",
    "window-empty window": "empty window",
    "form-one plaque": "one plaque",
    "form-two plaques": "two plaques",
    "form-least squares": "least squares",
    "pair-same polymer": "same polymer",
    "pair-common component": "common component",
    "pair-listed as weldable": "listed as weldable",
    "pair-some grades": "some grades",
    "pair-some reports": "some reports",
    "pair-conditional": "conditional",
    "pair-estimate: check by trial": "estimate: check by trial",
    "pair-estimate: unlikely": "estimate: unlikely",
    "pair-not weldable": "not weldable",
    "pair-unknown": "unknown",
}  # fmt: skip

TERMS: dict[str, str] = {
    **{f"input-{key}": word for key, word in INPUTS.items()},
    **{f"tolerance-{key}": word for key, word in TOLERANCES.items()},
    **{f"number-{key}": word for key, word in NUMBERS.items()},
    **{f"condition-{key}": word for key, word in CONDITIONS.items()}, **_STATES,
}  # fmt: skip
"""What a key of the document's part "material" is called: family and key.

Families: input, tolerance, number, condition, window, form, pair.
"""
