"""The numbers that a trial uses: from its settings, else from the review, else assumed; each with its source."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from msgspec import Struct

from seamcheck.catalogue.voice import tr
from seamcheck.preparation.path import Drive
from seamcheck.settings.declared import USUAL_SPEED
from seamcheck.settings.settings import Settings


class Sourced(Struct, frozen=True):
    """A number and where it comes from, in words; None where nothing gives one."""

    value: float | None
    source: str = ""


def number_of(joint: Mapping[str, Any], key: str) -> float | None:
    """A number of the materials and the process as the review took it; None without."""
    found = ((joint.get("material") or {}).get("settings") or {}).get("numbers", {}).get(key)
    return None if found is None else float(found["value"])


def result_of(joint: Mapping[str, Any], key: str) -> float | None:
    """A result of the review's energy and heat, such as 'weld_time'; None where it was not computed."""
    results = ((joint.get("material") or {}).get("energy") or {}).get("results") or ()
    found = next((entry["value"] for entry in results if entry["key"] == key), None)
    return None if found is None else float(found)


def speed_of(settings: Settings, joint: Mapping[str, Any]) -> Sourced:
    """mm/s, the most."""
    own, laser = settings.trial.speed, number_of(joint, "laser.speed")
    if own is not None:
        return Sourced(own, tr("given"))
    return Sourced(USUAL_SPEED, tr("assumed")) if laser is None else Sourced(laser, "material.laser.speed")


def drive_of(settings: Settings, joint: Mapping[str, Any], clockwise: bool) -> Drive:
    """How the paths of a joint are welded."""
    trial = settings.trial
    acceleration = trial.acceleration or number_of(joint, "laser.acceleration")
    return Drive(speed_of(settings, joint).value or USUAL_SPEED, acceleration, trial.overlap, clockwise)


def laps_of(settings: Settings, joint: Mapping[str, Any], lap: float) -> tuple[int, str]:
    """How often the paths are passed, and why.

    Parameters
    ----------
    lap : s for all of them once
    """
    if settings.trial.laps is not None:
        return int(settings.trial.laps), tr("given")
    if number_of(joint, "laser.passes") == 1.0:
        return 1, "material.laser.passes"
    time = result_of(joint, "weld_time")
    if time is not None:
        return max(1, math.ceil(round(time / lap, 6))), tr("{time:.1f} s of welding by the heat model", time=time)
    return 1, tr("assumed: no weld time is known")


def power_of(settings: Settings, joint: Mapping[str, Any]) -> float | None:
    """W, the most of the laser; None where nothing gives it."""
    return settings.trial.power or number_of(joint, "laser.power")


def pressure_of(settings: Settings, joint: Mapping[str, Any]) -> float | None:
    """MPa over the rib's top; None where nothing gives it."""
    return settings.clamp.pressure or number_of(joint, "process.pressure")


def cooling_of(settings: Settings, joint: Mapping[str, Any]) -> Sourced:
    """s under pressure after the light."""
    if settings.trial.cooling is not None:
        return Sourced(settings.trial.cooling, tr("given"))
    cools, hold = result_of(joint, "cooling_time"), number_of(joint, "process.hold")
    if cools is not None and (hold is None or cools > hold):
        return Sourced(cools, tr("until the seam is solid, by the heat model"))
    return Sourced(hold, "" if hold is None else "material.process.hold")


def handling_of(settings: Settings, joint: Mapping[str, Any]) -> Sourced:
    """s from one part to the next."""
    if settings.trial.handling is not None:
        return Sourced(settings.trial.handling, tr("given"))
    found = number_of(joint, "process.handling")
    return Sourced(found, "" if found is None else "material.process.handling")


def index_of(settings: Settings, joint: Mapping[str, Any]) -> float:
    """Refractive index of the cover, as the review took it."""
    return settings.light(str(joint["id"])).index
