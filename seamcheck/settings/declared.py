"""Every setting that is not a limit of a rule, declared once; those stand in catalogue/rules.py."""

from __future__ import annotations

from collections.abc import Iterable

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import say
from seamcheck.catalogue.setting import Setting


def _by_name(settings: Iterable[Setting]) -> dict[str, Setting]:
    return {setting.name: setting for setting in settings}


NUMBERS: dict[str, Setting] = _by_name((
    Setting(
        "collapse", 0.4, "mm", "planned collapse: how far the rib melts down", 0.01, 5.0, "common practice",
        "0.2 to 0.8 mm, a public design guideline names 0.2 to 1.0 mm; set your own",
    ),
    Setting(
        "beam-margin", 0.2, "mm",
        "margin beside the beam for the positioning error of the spot; the clamp land begins beyond it", 0.0, 20.0,
        "assumption", "combined error of scanner and nest; set your own",
    ),
    Setting(
        "station-spacing", 0.5, "mm", "distance between two stations along the seam", 0.02, 20.0, "assumption",
        "refined where a quantity changes fast",
    ),
    Setting("lateral-play", 0.0, "mm", "how far the cover may shift sideways in the base while it sinks", 0.0, 5.0),
    Setting(
        "intended-stop", 0.0, "mm", "travel at which a stop should end the collapse; 0: no stop", 0.0, 5.0, "your own",
    ),
    Setting(
        "second-collapse", 0.0, "mm", "further collapse planned for welding a leaking part a second time; 0: none", 0.0,
        5.0, "your own",
    ),
))  # fmt: skip
"""Numbers at the top of the file; with '_' for '-' they are attributes of Settings."""

TEXTS: dict[str, str] = {
    "cover": "name or id of the part to take as the cover",
    "base": "name or id of the part to take as the base",
    "beam": "beam direction, from the cover into the base",
}
"""Entries of ``[joint]``, which are not numbers."""

USUAL_INDEX = 1.5
"""Refractive index of a cover of which nothing is known: 1.48 to 1.62 for common plastics."""

SCANNER: dict[str, Setting] = _by_name((
    Setting(
        "distance", None, "mm", "distance from the pivot of the scanner's mirrors down to the cover's top", 1.0, 1e5,
        "your own", table="scanner",
    ),
    Setting(
        "half-angle", 0.0, "°", "convergence of the beam: half the angle of its cone", 0.0, 45.0, "your own",
        "0 takes the beam's axis only", table="scanner",
    ),
    Setting(
        "index", None, "1",
        "refractive index of the cover at the weld's wavelength; left out: that of material.light, of the cover's "
        "polymer, else 1.5",
        1.0, 2.5, "assumption", "1.48 to 1.62 for common plastics", table="scanner",
    ),
))  # fmt: skip

CLAMP: dict[str, Setting] = _by_name((
    Setting("height", 20.0, "mm", "height of the clamp tool above the cover", 0.1, 1000.0, table="clamp"),
    Setting("reach", 5.0, "mm", "how far from the rib a clamp land still presses on it", 0.1, 100.0, table="clamp"),
    Setting("width", 0.5, "mm", "smallest width of a land that counts", 0.05, 100.0, table="clamp"),
    Setting("pressure", None, "MPa", "pressure over the rib top", 0.001, 100.0, "your own", table="clamp"),
    Setting(
        "modulus", None, "MPa",
        "Young's modulus of the cover: with the pressure it gives how much of the cover's flatness is pressed flat",
        1.0, 1e6, "your own", table="clamp",
    ),
))  # fmt: skip

LOAD: dict[str, Setting] = _by_name((
    Setting(
        "pressure", None, "MPa", "pressure inside that the weld has to hold", 1e-6, 1000.0, "your own", table="load",
    ),
    Setting(
        "force", None, "N", "force that pulls the cover off, in place of a pressure", 1e-3, 1e7, "your own",
        table="load",
    ),
    Setting(
        "strength", None, "MPa",
        "tensile strength of the weaker of both polymers, at the highest temperature and age in service", 0.1, 1000.0,
        "your own", table="load",
    ),
    Setting(
        "weld-factor", None, "1", "share of that strength that your trial welds reach", 0.01, 1.0, "your own",
        table="load",
    ),
))  # fmt: skip
"""What the weld has to hold; nothing has a default."""

TRIAL: dict[str, Setting] = _by_name((
    Setting(
        "speed", None, "mm/s",
        "highest speed of the spot or the robot; left out: material.laser.speed, else 1000 (assumption)", 0.1, 1e5,
        "your own", table="trial",
    ),
    Setting(
        "acceleration", None, "mm/s²",
        "largest acceleration of spot or robot, along and across the path; left out: material.laser.acceleration, else "
        "corners do not slow the path",
        1.0, 1e9, "your own", table="trial",
    ),
    Setting(
        "laps", None, "1", "number of laps; left out: as many as the weld takes by the heat model, else one", 1, 10000,
        "your own", table="trial",
    ),
    Setting(
        "overlap", 5.0, "mm", "overlap beyond the start of a closed path, in which the power ramps down", 0.0, 100.0,
        "assumption", "about three rib widths; try it", table="trial",
    ),
    Setting(
        "power", None, "W", "highest power of the laser at the cover; left out: material.laser.power", 0.1, 1e5,
        "your own", table="trial",
    ),
    Setting(
        "frame-width", 8.0, "mm", "width of the clamp's walls beside the beam", 1.0, 100.0, "assumption",
        "stiff enough for a clamp of tool steel over a part of hand size", table="trial",
    ),
    Setting(
        "clearance", 0.2, "mm", "clearance between clamp and beam, and around what rises above the cover", 0.0, 10.0,
        "assumption", "combined error of clamp and part", table="trial",
    ),
    Setting(
        "nest-grip", 6.0, "mm", "depth of the nest's pocket; its rim stays below the sunken cover", 0.5, 200.0,
        "assumption", table="trial",
    ),
    Setting(
        "nest-play", 0.1, "mm", "play between base and pocket, on each side", 0.0, 5.0, "assumption",
        "more where the base shrinks unevenly", table="trial",
    ),
    Setting(
        "nest-draft", 3.0, "°", "draft of the pocket's walls, for insertion", 0.0, 20.0, "assumption", table="trial",
    ),
    Setting(
        "plate-thickness", None, "mm", "thickness of a transparent plate that presses in place of a frame", 0.1, 100.0,
        "your own", table="trial",
    ),
    Setting(
        "plate-index", None, "1", "refractive index of that plate at the weld's wavelength", 1.01, 3.0, "your own",
        table="trial",
    ),
    Setting(
        "cooling", None, "s",
        "time under pressure after the laser is off; left out: the heat model's cooling time, or material.process.hold "
        "where that is longer",
        0.0, 3600.0, "your own", table="trial",
    ),
    Setting(
        "handling", None, "s", "time to take out one part and insert the next; left out: material.process.handling",
        0.0, 3600.0, "your own", table="trial",
    ),
    Setting("hours", None, "h", "working hours in a year", 1.0, 8784.0, "your own", table="trial"),
    Setting(
        "used", 1.0, "1", "share of these hours in which parts are made", 0.01, 1.0, "assumption",
        "no stops at all; set your own", table="trial",
    ),
    Setting("parts", None, "1", "parts wanted in a year", 1.0, 1e10, "your own", table="trial"),
))  # fmt: skip
"""Settings of ``seamcheck prepare``; a review does not use them."""

USUAL_SPEED = 1000.0
"""mm/s where no speed is given (assumption: the order of magnitude of mirror scanners)."""

FLATNESS: dict[str, str] = {
    "flatness_cover": "flatness of the cover's underside over the whole seam",
    "flatness_rib": "flatness of the rib top over the whole seam",
    "flattened": "how much of both flatnesses the clamp presses out",
}
"""Entries of ``[tolerance]`` that are no quantities: flatness of cover and rib, mm."""

PROCESS_TOLERANCES: dict[str, tuple[str, str]] = {
    "collapse": ("mm", "± of the collapse that the machine reaches"),
    "trap_area": ("%", "± of the area of both flash traps"),
    "cpk": (
        "1",
        "process capability: parts are spread normally, with a standard deviation of a third of the tolerance over "
        "cpk; left out: uniformly over the tolerance, the worst that it allows",
    ),
}  # fmt: skip
"""Further entries of ``[tolerance]``: unit, what it is."""


def tolerance(name: str) -> Setting | None:
    """The tolerance of a quantity, or one of FLATNESS and PROCESS_TOLERANCES; None where there is no such entry."""
    key = name.replace("-", "_")
    if key in FLATNESS:
        return Setting(key, None, "mm", FLATNESS[key], standing="your own", table="tolerance")
    if key in PROCESS_TOLERANCES:
        unit, what = PROCESS_TOLERANCES[key]
        least = 0.1 if key == "cpk" else 0.0
        return Setting(key, None, unit, what, least, standing="your own", table="tolerance")
    if key not in QUANTITIES:
        return None
    quantity = QUANTITIES[key]
    return Setting(key, None, quantity.unit, f"± of {quantity.title}", standing="your own", table="tolerance")


MATERIAL_SECTIONS: dict[str, str] = {
    "light": "Light and plaques",
    "laser": "Laser and scanner",
    "process": "Pressure, melt, time",
    "samples": "Random tolerance combinations",
}
"""Tables of numbers below ``[material]`` and their titles."""


def _material(
    section: str, name: str, unit: str, what: str, least: float, most: float, default: float | None = None,
    standing: str = "assumption", source: str = "", low: float | None = None, high: float | None = None,
) -> Setting:  # fmt: skip
    if default is None:
        standing = "your own"
    table = f"material.{section}"
    return Setting(name, default, unit, what, least, most, standing, source, table, low, high, has_range=True)


MATERIAL: tuple[Setting, ...] = (
    _material("light", "wavelength", "nm", "wavelength of the laser, at which the plaques were measured", 400, 2200),
    _material(
        "light", "index", "1", "refractive index of the cover at that wavelength (default: from the polymer table)",
        1.2, 2.0,
    ),
    _material("light", "plaque_scatter", "%", "relative standard deviation of one measured plaque", 0.1, 30, 3.0),
    _material("laser", "power", "W", "laser power at the cover", 0.1, 5000),
    _material("laser", "speed", "mm/s", "speed of the spot along the seam", 1, 50000),
    _material("laser", "spot", "mm", "width of the spot at the rib", 0.05, 20),
    _material(
        "laser", "use", "1", "share of the light that arrives at the rib and becomes heat there", 0.05, 1, 0.6,
        "assumption", say("known.use"), 0.4, 0.7,
    ),
    _material(
        "laser", "absorption_depth", "mm", "depth of the base in which the light turns to heat", 0.005, 2, 0.1,
        "from memory", "", 0.05, 0.2,
    ),
    _material("laser", "passes", "1", "passes round the seam; 1 is a single pass (default: as needed)", 1, 1e5),
    _material("laser", "acceleration", "mm/s²", "largest acceleration of the spot that the scanner can do", 100, 1e9),
    _material("process", "pressure", "MPa", "pressure over the rib top", 0.01, 50),
    _material(
        "process", "melt_temperature", "°C", "temperature of the melt (default: middle of the shared window)", 50, 500,
    ),
    _material("process", "room_temperature", "°C", "temperature before the weld", -40, 150, 20.0),
    _material(
        "process", "residual_layer", "mm", "melt left in the seam, on each side of it", 0.0, 2, 0.15, "from memory", "",
        0.1, 0.2,
    ),
    _material("process", "viscosity", "Pa·s", "viscosity of the melt", 1, 1e6, 500.0, "from memory", "", 100, 1000),
    _material("process", "handling", "s", "loading, clamping and unloading together", 0, 600, 8.0),
    _material("process", "hold", "s", "time under pressure after the laser is off", 0, 600, 2.0),
    _material("process", "decomposition", "°C", "temperature that neither polymer may reach in the weld", 100, 800),
    _material("process", "longest_heating", "s", "a weld that takes longer is given up", 1, 3600, 300.0),
    _material(
        "process", "air_loss", "W/(m²·K)", "heat that free surfaces lose to the air", 0, 1000, 10.0, "from memory",
        say("known.air-loss"), 2, 25,
    ),
    _material(
        "process", "tool_loss", "W/(m²·K)",
        "heat that clamp and nest take from the cover's top and from below the wall (default: as air)", 0, 1e5,
    ),
    _material("process", "trap_fill", "1", "largest share of a flash trap that the melt may fill", 0.1, 1.5, 1.0),
    _material(
        "process", "least_local_collapse", "mm", "collapse that must be left at the lowest place of the rib", 0.0, 2,
        0.1,
    ),
    _material(
        "process", "travel_reserve", "mm", "free travel that must be left after the collapse", 0.0, 2,
        RULES["sink-travel"].limit("reserve").default, "assumption", say("known.travel-reserve"),
    ),
    _material(
        "process", "height_reserve", "mm", "rib height that must be left after the collapse", 0.0, 5,
        RULES["rib-height"].limit("reserve").default, "assumption", say("known.height-reserve"),
    ),
    _material("samples", "count", "1", "tolerance combinations to try", 100, 200000, 2000.0),
    _material("samples", "seed", "1", "seed of the random numbers", 0, 2 **31, 1.0),
)  # fmt: skip
"""Every number of the ``[material]`` table but the materials themselves."""

WAIVER: dict[str, Setting] = _by_name((
    Setting("radius", 2.0, "mm", "how far from the place all of the finding may lie", 1e-6, table="waivers"),
    Setting("from", None, "mm", "start of the stretch along the contour", standing="your own", table="waivers"),
    Setting("to", None, "mm", "end of the stretch along the contour", standing="your own", table="waivers"),
))  # fmt: skip

SETTINGS: dict[str, Setting] = {
    setting.key: setting
    for setting in (*NUMBERS.values(), *SCANNER.values(), *CLAMP.values(), *LOAD.values(), *MATERIAL, *TRIAL.values())
}  # fmt: skip
"""Dotted name -> setting, limits of rules left out."""

TABLES = ("joint", "limits", "scanner", "clamp", "load", "tolerance", "material", "trial", "waivers")
"""Tables of the settings file, in the order in which they are written."""

RENAMED: dict[str, str] = {
    "contact-gap.max": "contact-gap.attention (mm, from which on a gap is attention) and contact-gap.share (in planned "
    "collapses, from which on it must be fixed)"
}
"""Old limit -> what to write instead."""
