"""What the heat model says about a joint: its inputs from the settings, columns, results and sentences."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.known import Known, rounded, weakest
from seamcheck.catalogue.material_results import OF_HEAT
from seamcheck.catalogue.polymers import Compound
from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Columns, Value
from seamcheck.measure.material.energy import first_pass_rise
from seamcheck.measure.material.heat.along import FINE, REACH, Course, Heating, course, model_at
from seamcheck.measure.material.heat.grid import Body, Surroundings
from seamcheck.measure.material.heat.weld import Pass, Process, pass_rows, single_pass
from seamcheck.measure.material.track import Track
from seamcheck.settings.material import MaterialSettings


class HeatFound(Struct, frozen=True, eq=False):
    """Outcome: the document's "heat" section, results as entries, and values of the whole interface."""

    section: dict[str, Any]
    entries: list[dict[str, Any]]
    interface: dict[str, Value]
    column: dict[str, np.ndarray]
    """(n,) over all stations: melting_start (s, inf where it never melts), least_power (W), energy_in_step (J/mm)."""


def light_share(width: np.ndarray, settings: MaterialSettings) -> np.ndarray:
    """(n,) share of the light that falls on the rib: 1, or rib width over spot where that is wider; NaN without a rib.

    The spot is taken as evenly bright over its width.
    """
    spot = settings.get("laser.spot")
    if spot is None:
        return np.where(np.isfinite(width), 1.0, np.nan)
    return np.minimum(1.0, width / spot.value)


def heat_of(
    tracks: Sequence[Track],
    columns: Mapping[str, Columns],
    settings: MaterialSettings,
    rib_on: str,
    temperature: Known | None,
    collapse: float,
) -> HeatFound | None:
    """Run the heat model along the seam; None where no laser power is given.

    What is missing for it stands in the section's "not_evaluated".
    """
    if settings.get("laser.power") is None:
        return None
    missing = _missing(columns, settings, temperature)
    if missing:
        return HeatFound({"kind": None, "says": [], "with": "", "not_evaluated": missing}, [], {}, {})
    assert temperature is not None
    assert settings.base is not None
    assert settings.cover is not None
    rib, other = (settings.base, settings.cover) if rib_on != "cover" else (settings.cover, settings.base)
    number = {key: known.value for key, known in settings.numbers.items()}
    length = np.concatenate([track.length for track in tracks])
    through = np.concatenate([columns[track.id]["transmission"].values for track in tracks]) / 100.0
    width = np.concatenate([track.width() for track in tracks])
    ambient = number["process.room_temperature"]
    melting = (_softening(rib) - ambient, _softening(other) - ambient)
    share = light_share(width, settings)
    arriving = through * share * number["laser.use"] * number["laser.power"]
    bodies = (body_of(rib), body_of(other))
    around = _around(number)
    heating = Heating(
        power=arriving / float(length.sum()),
        width=width,
        height=np.concatenate([track.column("rib_height") for track in tracks]),
        wall=np.concatenate([track.column("wall_width") for track in tracks]),
        cover=np.concatenate([track.column("cover_thickness") for track in tracks]),
        cover_width=_cover_width(tracks, width),
        base=bodies[0],
        cover_body=bodies[1],
        around=around,
        depth=number["laser.absorption_depth"],
        melting=melting,
        leaving=max(temperature.value - ambient, max(melting)),
        collapse=collapse,
        layer=number["process.residual_layer"],
        longest=number["process.longest_heating"],
    )
    used = _with(rib, other, temperature, ambient, settings, through)
    if number.get("laser.passes") == 1.0:
        return _one_pass(tracks, heating, arriving, settings, ambient, used)
    return _many_passes(tracks, heating, settings, ambient, used, through, rib, float(length.sum()))


def _missing(columns: Mapping[str, Columns], settings: MaterialSettings, temperature: Known | None) -> list[str]:
    """What the heat model lacks, as sentences."""
    missing: list[str] = []
    if settings.cover is None or settings.base is None:
        missing.append(say("heat.no-materials"))
    through = [own["transmission"].values for own in columns.values() if "transmission" in own]
    if not any(np.isfinite(values).any() for values in through):
        missing.append(say("heat.no-plaques"))
    if settings.get("laser.passes") is not None and settings.numbers["laser.passes"].value == 1.0:
        for key in ("laser.speed", "laser.spot"):
            if settings.get(key) is None:
                missing.append(say("heat.no-number", setting=f"material.{key}"))
    if temperature is None and not missing:
        missing.append(say("heat.no-temperature"))
    return missing


def _softening(compound: Compound) -> float:
    """Temperature (°C) at which it begins to flow: melting point, or the lower end of an amorphous melt's window."""
    known = compound.polymer.cells.get("melting")
    return compound.polymer.window[0] if known is None else known.value


def body_of(compound: Compound) -> Body:
    """Conductivity, heat and heat of fusion of a compound by volume."""
    density = compound.density().value * 1e-3  # g/mm³
    return Body(
        conductivity=compound.conductivity().value * 1e-3,
        heat=density * compound.heat_to_melt().value,
        latent=density * compound.fusion().value,
    )


def _around(number: Mapping[str, float]) -> Surroundings:
    air = number["process.air_loss"] * 1e-6
    tool = number.get("process.tool_loss", number["process.air_loss"]) * 1e-6
    return Surroundings(free=air, top=tool, bottom=tool)


def _cover_width(tracks: Sequence[Track], width: np.ndarray) -> np.ndarray:
    """(n,) mm, of the cover: out to the end of its land where that was measured, inward as far as heat gets."""
    land = np.concatenate([track.column("clamp_land") for track in tracks])
    out = np.minimum(REACH, width / 2.0 + np.where(np.isfinite(land), land, REACH))
    return out + REACH


def _with(
    rib: Compound, other: Compound, temperature: Known, ambient: float, settings: MaterialSettings, through: np.ndarray
) -> str:
    """The inputs that times and temperatures depend on, to be printed with them."""

    def of(compound: Compound) -> str:
        return say(
            "heat.with.material", name=compound.name, density=compound.density().value,
            heat=compound.heat_to_melt().value, conductivity=compound.conductivity().value,
            fusion=compound.fusion().value, flows=_softening(compound),
        )  # fmt: skip

    tool = settings.get("process.tool_loss")
    light = say(
        "heat.with.light", use=settings.numbers["laser.use"].value, least=100 * float(np.nanmin(through)),
        most=100 * float(np.nanmax(through)), depth=settings.numbers["laser.absorption_depth"].value,
    )  # fmt: skip
    air = settings.numbers["process.air_loss"].value
    losses = (
        say("heat.with.losses-unknown", air=air) if tool is None else say("heat.with.losses", air=air, tool=tool.value)
    )
    bodies = [of(rib)] if rib.name == other.name else [of(rib), of(other)]
    heated = say("heat.with.rise", room=ambient, melt=temperature.value, rise=temperature.value - ambient)
    return say("heat.with", inputs=[heated, *bodies, light, losses])


def _entry(
    key: str, value: float, standing: str, low: float | None = None, high: float | None = None
) -> dict[str, Any]:
    entry = {
        "key": key, "value": rounded(value), "unit": OF_HEAT[key][0], "title": say(f"result.{key}"),
        "how": say(f"how.{key}"), "inputs": ["heat model"], "standing": say("result.standing", standing=standing),
    }  # fmt: skip
    if low is not None and high is not None and np.isfinite([low, high]).all():
        entry |= {"low": rounded(low), "high": rounded(high)}
    return entry


def _many_passes(
    tracks: Sequence[Track], heating: Heating, settings: MaterialSettings, ambient: float, used: str,
    through: np.ndarray, rib: Compound, length: float,
) -> HeatFound | None:  # fmt: skip
    found = course(heating)
    if found is None:
        return None
    number = {key: known.value for key, known in settings.numbers.items()}
    power = number["laser.power"]
    standing = weakest(
        (
            rib.density(), rib.conductivity(), rib.heat_to_melt(), rib.fusion(),
            settings.numbers["laser.use"], settings.numbers["laser.absorption_depth"],
        )
    )  # fmt: skip
    weld, slow = found.weld, found.slowest
    least = power * float(np.nanmax(found.least))
    point = _place(tracks, slow)
    entries = [_entry("plane_time", found.plane, standing), _entry("least_power", least, standing)]
    says: list[str] = []
    missing: list[str] = []
    interface = {
        "power_reserve": {
            "value": power / least if least > 0 else None,
            "at": point,
            "why": _reached(found, heating, ambient),
        },
        "weld_time": _weld_time(found, point),
    }
    if weld.start != weld.start:
        reached = _reached(found, heating, ambient)
        says.append(
            say("heat.never", why=reached, power=least)
            if _never_melts(found)
            else say("heat.long", why=reached, time=heating.longest)
        )
    else:
        entries.append(_entry("start_time", weld.start, standing, *_range(found, settings, heating)))
        if weld.finish == weld.finish:
            entries += _finished(found, heating, settings, ambient, standing, length, rib, through)
            says.append(say("heat.grids", error=100 * found.error, rows=FINE))
            peak = next((e["value"] for e in entries if e["key"] == "peak_temperature"), None)
            limit = settings.get("process.decomposition")
            if limit is None:
                missing.append(say("heat.no-decomposition"))
            elif peak is not None:
                interface["decomposition_margin"] = {
                    "value": limit.value - peak, "at": _place(tracks, found.fastest),
                    "why": say("heat.peak", peak=peak),
                }  # fmt: skip
        else:
            says.append(say("heat.not-reached", time=heating.longest))
    section = {
        "kind": "repeated passes",
        "says": says,
        "with": used,
        "not_evaluated": missing,
        "discretisation_percent": rounded(100.0 * found.error, 3),
        "slowest_at": point,
        "course": {
            "time_s": [rounded(float(t), 4) for t in weld.times],
            "collapse_mm": [rounded(float(c), 4) for c in weld.sunk],
        },
    }
    column = {"melting_start": found.start, "least_power": power * found.least}
    return HeatFound(section, entries, interface, column | {"energy_in_step": _in_step(found, heating, power, length)})


def _weld_time(found: Course, point: list[float | None]) -> Value:
    """Time (s) with the laser on, or why there is none: the slowest place never melts, or the weld takes too long."""
    if np.isfinite(found.weld.finish):
        return {"value": found.weld.finish, "at": point, "why": ""}
    return {"value": None, "at": point, "why": "never-melts" if _never_melts(found) else "too-long"}


def _never_melts(found: Course) -> bool:
    """Whether some place takes more than the power given to melt at all."""
    return float(np.nanmax(found.least)) > 1.0  # share of the power


def _in_step(found: Course, heating: Heating, power: float, length: float) -> np.ndarray:
    """(n,) J/mm of light over the whole weld with which every place melts when the slowest does at even power.

    Notes
    -----
    Until a place melts its rise is in proportion to its power: the heat that it needs is that of an even weld times
    the rise to melting over its own rise in the slowest one's time. NaN where no weld is finished.
    """
    even = power * found.weld.finish / length
    rise = heating.power * found.responses.rise(heating.width, float(found.start[found.slowest]))
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.asarray(even * max(heating.melting) / rise)


def _reached(found: Course, heating: Heating, ambient: float) -> str:
    wanted = max(heating.melting) + ambient
    if found.weld.steady == np.inf:
        return say("heat.wanted", wanted=wanted)
    return say("heat.reached", comes=found.weld.steady + ambient, wanted=wanted)


def _range(found: Course, settings: MaterialSettings, heating: Heating) -> tuple[float, float]:
    """Least and largest time (s) to melting at the slowest place, over the range of the share that becomes heat."""
    use, i = settings.numbers["laser.use"], found.slowest
    power = heating.power[i] * np.array([use.high, use.low]) / use.value
    times, _ = found.responses.start(power, np.full(2, heating.width[i]), max(heating.melting))
    return float(times[0]), float(times[1])


def _finished(
    found: Course, heating: Heating, settings: MaterialSettings, ambient: float, standing: str, length: float,
    rib: Compound, through: np.ndarray,
) -> list[dict[str, Any]]:  # fmt: skip
    """Entries of a weld that reaches its collapse."""
    number = {key: known.value for key, known in settings.numbers.items()}
    weld, hot = found.weld, found.hottest or found.weld
    flash = 0.0
    if "laser.speed" in number:
        at = found.fastest
        spread = number.get("laser.spot", float(heating.width[at]))
        flash = float(first_pass_rise(
            number["laser.power"], float(through[at]), number["laser.speed"], spread, heating.depth,
            rib.density().value, rib.cold_heat().value,
        ))  # fmt: skip
    entries = [_entry("weld_time", weld.finish, standing)]
    if "laser.speed" in number:
        entries.append(
            _entry("passes", float(np.ceil(round(weld.finish * number["laser.speed"] / length, 9))), standing)
        )
    entries.append(_entry("cycle_time", weld.finish + number["process.handling"] + number["process.hold"], standing))
    if weld.finish > weld.start and heating.collapse > 0.0:
        entries.append(_entry("melting_speed", heating.collapse / (weld.finish - weld.start), standing))
    entries.append(_entry("peak_temperature", ambient + max(hot.peak, weld.peak) + flash, standing))
    entries.append(_entry("cover_surface", ambient + max(hot.cover_top, weld.cover_top), standing))
    if weld.cooling == weld.cooling:
        entries.append(
            _entry("cooling_time", max(weld.cooling, hot.cooling if hot.cooling == hot.cooling else 0.0), standing)
        )
    return entries


def _one_pass(
    tracks: Sequence[Track],
    heating: Heating,
    arriving: np.ndarray,
    settings: MaterialSettings,
    ambient: float,
    used: str,
) -> HeatFound | None:
    """One passage of the spot, at the places that get least and most."""
    speed, spot = settings.numbers["laser.speed"].value, settings.numbers["laser.spot"].value
    known = np.flatnonzero(np.isfinite(arriving) & np.isfinite(heating.width))
    if not len(known):
        return None
    dim, bright = known[np.argmin(arriving[known])], known[np.argmax(arriving[known])]
    passes: dict[str, Pass] = {}
    for name, i in (("dim", dim), ("bright", bright)):
        process = Process(float(arriving[i]) / spot, heating.depth, heating.melting, heating.leaving, 0.0)
        rows = pass_rows(heating.depth, heating.base, spot / speed)
        model = replace(model_at(heating, int(i), fine=rows), removable=0.0)
        passes[name] = single_pass(model, process, spot / speed)
    standing = weakest((settings.numbers["laser.use"], settings.numbers["laser.absorption_depth"]))
    low, high = passes["dim"], passes["bright"]
    entries = [
        _entry("melted_base", low.depth[0], standing),
        _entry("melted_cover", low.depth[1], standing),
        _entry("peak_temperature", ambient + high.peak, standing),
        _entry("cover_surface", ambient + high.cover_top, standing),
    ]
    if high.cooling == high.cooling:
        entries.append(_entry("cooling_time", high.cooling, standing))
    melts = max(heating.melting)
    reserve = low.highest / melts
    why = say("heat.comes", comes=low.highest + ambient, wanted=melts + ambient)
    line = settings.numbers["laser.power"].value / speed
    says: list[str] = [say("heat.one-pass", speed=speed, energy=line)]
    if reserve < 1.0:
        says.append(say("heat.least-place", why=why))
    interface = {"power_reserve": {"value": reserve, "at": _place(tracks, int(dim)), "why": why}}
    missing: list[str] = []
    limit = settings.get("process.decomposition")
    if limit is None:
        missing.append(say("heat.no-decomposition"))
    else:
        peak = ambient + high.peak
        interface["decomposition_margin"] = {
            "value": limit.value - peak, "at": _place(tracks, int(bright)), "why": say("heat.peak", peak=peak),
        }  # fmt: skip
    section = {"kind": "single pass", "says": says, "with": used, "not_evaluated": missing}
    with np.errstate(invalid="ignore", divide="ignore"):
        alike = line * arriving[dim] / arriving  # as much light onto the rib as the dimmest place gets
    return HeatFound(section, entries, interface, {"energy_in_step": alike})


def _place(tracks: Sequence[Track], station: int) -> list[float | None]:
    for track in tracks:
        if station < len(track.s):
            return track.point(station)
        station -= len(track.s)
    raise IndexError(station)
