"""Energy, time and force of the joint: the columns per station, and the section of the document."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

import numpy as np

from seamcheck.catalogue.known import Known, assumed, rounded, weakest
from seamcheck.catalogue.material_results import BOUNDS
from seamcheck.catalogue.polymers import Compound
from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Column, Columns
from seamcheck.measure.material import energy as en
from seamcheck.measure.material import melt as me
from seamcheck.measure.material.heating import HeatFound, light_share
from seamcheck.measure.material.track import Track
from seamcheck.measure.material.uncertainty import Chances
from seamcheck.settings.material import MaterialSettings


def energy_inputs(
    tracks: Sequence[Track],
    columns: Mapping[str, Columns],
    grid: me.AreaGrid | None,
    collapse: float,
    settings: MaterialSettings,
    rib_on: str,
    temperature: Known | None,
    notes: list[str],
) -> tuple[en.EnergyInputs | None, dict[str, Known]]:
    """Return the inputs of the energy estimate and what they are made from."""
    rib = settings.base if rib_on == "base" else settings.cover
    used: dict[str, Known] = {}
    for name, key in (
        ("power", "laser.power"),
        ("speed", "laser.speed"),
        ("use", "laser.use"),
        ("depth", "laser.absorption_depth"),
        ("pressure", "process.pressure"),
        ("viscosity", "process.viscosity"),
        ("layer", "process.residual_layer"),
    ):
        known = settings.get(key)
        if known is not None:
            used[name] = known
    if rib is not None and temperature is not None:
        ambient = settings.numbers["process.room_temperature"].value
        used["density"], used["heat"], used["fusion"] = rib.density(), rib.heat_to_melt(), rib.fusion()
        used["cold_heat"] = rib.cold_heat()
        used["rise"] = Known(
            temperature.value - ambient,
            "K",
            temperature.standing,
            temperature.source,
            max(temperature.low - ambient, 0.0),
            temperature.high - ambient,
        )
        used["conductivity"] = rib.conductivity()
    if rib is not None:
        used["diffusivity"] = diffusivity(rib)
    elif "speed" in used:
        used["diffusivity"] = assumed(0.11, "mm²/s", say("known.diffusivity"), 0.08, 0.16)
    if grid is None or not tracks or ("density" not in used and "pressure" not in used and "speed" not in used):
        return None, used
    length = np.concatenate([track.length for track in tracks])
    width = np.concatenate([track.width() for track in tracks])
    through = np.concatenate(
        [columns[t.id]["transmission"].values if "transmission" in columns[t.id] else t.column("") for t in tracks]
    )
    unknown = float(length[~np.isfinite(width)].sum())
    if unknown > 0.001 * float(length.sum()):
        notes.append(say("material.unmeasured", unknown=unknown, length=float(length.sum())))
    numbers = {name: known.value for name, known in used.items()}
    onto = through / 100.0 * light_share(width, settings)
    return en.EnergyInputs(grid.melt_at, length, width, onto, collapse, numbers), used


def diffusivity(rib: Compound) -> Known:
    """Thermal diffusivity (mm²/s): conductivity / (density · heat), each of the compound near 20 °C."""
    k, rho, cp = rib.conductivity(), rib.density(), rib.cold_heat()
    return Known(
        k.value / (rho.value * cp.value),
        "mm²/s",
        weakest((k, rho, cp)),
        say("mixed.diffusivity", conductivity=k.value, density=rho.value, heat=cp.value),
        k.low / (rho.high * cp.high),
        k.high / (rho.low * cp.low),
    )


def energy_section(
    tracks: Sequence[Track],
    columns: dict[str, dict[str, Column]],
    inputs: en.EnergyInputs,
    used: Mapping[str, Known],
    settings: MaterialSettings,
    notes: list[str],
    chances: Chances | None,
    heat: HeatFound | None,
) -> dict[str, Any]:
    """The document's section on energy and time."""
    if "density" in used:
        need = en.melt_energy(inputs)
        for track, part in parts(tracks):
            columns[track.id]["energy_need"] = track.because(need[part], "melt_area", "rib_width", "gap")
    results = en.estimate(inputs)
    rise = first_pass_rises(inputs, used, settings)
    if rise is not None:
        results["first_pass_rise"] = np.asarray(np.nanmax(rise))
    section: dict[str, Any] = {"results": [], "inputs": {name: known.as_dict() for name, known in sorted(used.items())}}
    moved_by = en.sensitivity(inputs)
    for key, (unit, _, _) in BOUNDS.items():
        if key in results:
            names = [name for name, moved in moved_by.items() if key in moved]
            standing = weakest(used[name] for name in names if name in used)
            section["results"].append(
                {
                    "key": key,
                    "value": rounded(results[key]),
                    "unit": unit,
                    "title": say(f"result.{key}"),
                    "how": say(f"how.{key}"),
                    "inputs": names,
                    "standing": say("result.standing", standing=standing),
                    **_range(chances, key),
                }
            )
    if heat is not None:
        section["results"] += heat.entries
    section["sensitivity"] = [
        {
            "input": name,
            "change_percent": 10.0,
            "effects": {
                key: {"down_percent": rounded(100 * a, 4), "up_percent": rounded(100 * b, 4)}
                for key, (a, b) in moved.items()
            },
        }
        for name, moved in moved_by.items()
    ]
    section["corners"] = _corners(tracks, columns, settings)
    _spot_notes(inputs, settings, notes)
    section["notes"] = [say("material.orders"), say("material.passes")]
    return section


def _spot_notes(inputs: en.EnergyInputs, settings: MaterialSettings, notes: list[str]) -> None:
    spot = settings.get("laser.spot")
    if spot is None or not np.isfinite(inputs.width).any():
        return
    narrow, wide = float(np.nanmin(inputs.width)), float(np.nanmax(inputs.width))
    if spot.value < wide:
        notes.append(say("material.spot-narrow", spot=spot.value, widest=wide))
    elif spot.value > narrow:
        notes.append(
            say("material.spot-wide", spot=spot.value, share=100 * (1 - narrow / spot.value), narrowest=narrow)
        )


def first_pass_rises(
    inputs: en.EnergyInputs, used: Mapping[str, Known], settings: MaterialSettings
) -> np.ndarray | None:
    """(n,) K, rise of the base's surface in one pass; None where an input lacks.

    All heat of the spot's width, or of the rib's where no spot is given, arises within the absorption depth.
    """
    if any(key not in used for key in ("power", "speed", "depth", "density", "cold_heat")):
        return None
    spot = settings.get("laser.spot")
    onto = inputs.transmission / light_share(inputs.width, settings)
    if not np.isfinite(onto).any():
        return None
    width = inputs.width if spot is None else np.full(len(onto), spot.value)
    n = {key: known.value for key, known in used.items()}
    return en.first_pass_rise(n["power"], onto, n["speed"], width, n["depth"], n["density"], n["cold_heat"])


def parts(tracks: Sequence[Track]) -> Iterator[tuple[Track, slice]]:
    """Each track with its part of an array over the stations of all."""
    start = 0
    for track in tracks:
        yield track, slice(start, start + len(track.s))
        start += len(track.s)


def add_surplus(tracks: Sequence[Track], settings: MaterialSettings, columns: dict[str, dict[str, Column]]) -> None:
    """Add the column energy_surplus: the light that each place gets, over the energy that it needs to melt.

    Where no rib melts, every place needs the same.
    """
    if not tracks or any("transmission" not in columns[track.id] for track in tracks):
        return
    through = [columns[track.id]["transmission"].values for track in tracks]
    area = [track.column("melt_area") for track in tracks]
    area = [a if np.isfinite(a).any() else np.ones(len(a)) for a in area]
    gets = [
        t * np.nan_to_num(light_share(track.width(), settings), nan=1.0)
        for t, track in zip(through, tracks, strict=True)
    ]
    with np.errstate(divide="ignore", invalid="ignore"):
        dose = np.concatenate([g / a for g, a in zip(gets, area, strict=True)])
    dose[~(np.isfinite(dose) & (dose > 0.0))] = np.nan
    if not np.isfinite(dose).any():
        return
    surplus = dose / np.nanmin(dose)
    for track, part in parts(tracks):
        columns[track.id]["energy_surplus"] = track.because(
            surplus[part], "melt_area", "rib_width", "gap", "cover_thickness_max", "cover_thickness"
        )


def _range(chances: Chances | None, key: str) -> dict[str, Any]:
    """Return the range of a result over the random combinations."""
    if chances is None or key not in chances.ranges:
        return {}
    low, _, high = chances.ranges[key]
    return {"low": rounded(low), "high": rounded(high)}


def _corners(
    tracks: Sequence[Track], columns: dict[str, dict[str, Column]], settings: MaterialSettings
) -> dict[str, Any] | None:
    """Add the column corner_dose; return the tightest corner with its acceleration."""
    speed, most = settings.get("laser.speed"), settings.get("laser.acceleration")
    if speed is None:
        return None
    tightest: tuple[float, Track, int] | None = None
    for track in tracks:
        radius = track.column("corner_radius")
        finite = np.where(np.isfinite(radius), radius, np.inf)
        if len(finite) and (tightest is None or finite.min() < tightest[0]):
            tightest = (float(finite.min()), track, int(finite.argmin()))
        if most is not None:
            why = np.asarray(track.survey.reasons.get("corner_radius", np.full(len(radius), "")), dtype="U24")
            straight = ~np.isfinite(radius) & ((why == "straight") | (why == "") & np.isinf(radius))
            with np.errstate(invalid="ignore", divide="ignore"):
                dose = np.maximum(1.0, speed.value / np.sqrt(most.value * radius))
            dose = np.where(straight, 1.0, dose)
            columns[track.id]["corner_dose"] = track.because(dose, "corner_radius")
    if tightest is None or not np.isfinite(tightest[0]):
        return None
    least, track, i = tightest
    entry = {
        "least_corner_radius_mm": rounded(least),
        "at": track.point(i),
        "contour": track.id,
        "acceleration_mm_s2": rounded(speed.value**2 / least) if least > 0 else None,
        "how": say("how.turn"),
    }
    if most is not None:
        entry["slowed_to_mm_s"] = rounded(min(speed.value, float(np.sqrt(most.value * least))))
    return entry
