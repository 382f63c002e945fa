"""From a survey and the material settings to light, melt and energy of one joint."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import field
from msgspec.structs import replace

from seamcheck.catalogue.known import Known, assumed, rounded
from seamcheck.catalogue.pairs import RISKY, PairCheck, check_pair
from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Additions, Column, Columns, Value, value_of
from seamcheck.measure.material import melt as me
from seamcheck.measure.material.balance import add_melt_columns, lateness, melt_section
from seamcheck.measure.material.energy import EnergyInputs
from seamcheck.measure.material.heating import HeatFound, heat_of
from seamcheck.measure.material.light import add_class, add_light_columns, cover_fit, transmission_section
from seamcheck.measure.material.power import add_surplus, energy_inputs, energy_section, first_pass_rises, parts
from seamcheck.measure.material.track import Track, track_of
from seamcheck.measure.material.transmission import TransmissionFit
from seamcheck.measure.material.uncertainty import Chances, Joint, draw
from seamcheck.measure.material.window import (
    collapse_window,
    free_travel,
    unproven_values,
    window_section,
    window_values,
)
from seamcheck.measure.table import Survey
from seamcheck.settings.material import MaterialSettings

CAUTIONS = ("material.caution.orders", "material.caution.laser", "material.caution.critical")
"""Keys of what is reported beside light, melt, energy and time."""


class MaterialResult(Additions, frozen=True, eq=False):
    """What the materials add to the survey of one joint.

    Attributes
    ----------
    document : the joint's "material" section of the review document, plain values only
    """

    document: dict[str, Any] = field(default_factory=dict[str, Any])


def assess(
    survey: Survey, joint_settings: MaterialSettings, collapse: float, *, rib_on: str = "base"
) -> MaterialResult:
    """Assess light, material and melt along the seam of one joint.

    Parameters
    ----------
    survey : of the joint, with the columns of catalogue/quantities.py
    joint_settings : of this joint (MaterialSettings.for_joint)
    collapse : mm, planned, counted from initial contact
    rib_on : 'base' or 'cover', the rib's material is what melts; 'none' for a flat overlap

    Notes
    -----
    The light path through the cover is the surveyed cover thickness, lengthened by the slant of the ray where
    the survey has path_in_cover (a scanner was given). Where the survey has no areas at other collapses, a closed-form
    section fitted to the surveyed values stands in, which the document says.
    """
    joint_settings = _pressed(joint_settings, survey)
    tracks = [track_of(path) for path in survey.paths]
    columns: dict[str, dict[str, Column]] = {track.id: {} for track in tracks}
    interface: dict[str, Value] = {}
    notes: list[str] = []
    document: dict[str, Any] = {"settings": joint_settings.as_dict(), "collapse_mm": rounded(collapse)}

    pair = _pair(joint_settings)
    if pair is not None:
        document["pair"] = pair.as_dict()
        interface["pair_grade"] = value_of(_grade(pair), why=pair.as_dict()["message"])

    fit = cover_fit(joint_settings)
    add_light_columns(tracks, fit, columns)
    if fit is not None:
        document["transmission"] = transmission_section(tracks, fit, columns, joint_settings, interface)

    add_class(tracks, joint_settings, columns, interface)
    add_surplus(tracks, joint_settings, columns)
    if rib_on == "none":
        notes.append(say("material.no-rib"))
    else:
        _add_melt(
            survey, tracks, joint_settings, collapse, rib_on, pair, fit,
            columns, interface, document, notes,
        )  # fmt: skip
    if joint_settings.cover is not None and joint_settings.cover.carbon:
        notes.append(say("material.carbon", cover=joint_settings.cover.name))
    document["notes"] = notes
    document["cautions"] = [say(key) for key in CAUTIONS]
    return MaterialResult(interface, columns, document=document)


def add_to(
    survey: Survey, materials: MaterialSettings | None, joint: str, collapse: float, rib_on: str
) -> tuple[Survey, dict[str, dict[str, Any]]]:
    """Return the survey with the material side added, and what goes into the document's joint.

    Parameters
    ----------
    materials : what the settings say of them, or None; without any everything stays as it is
    joint : id of the joint
    """
    if materials is None:
        return survey, {}
    settings = materials.for_joint(joint)
    result = assess(survey, settings, collapse, rib_on=rib_on)
    return result.onto(survey), {"material": result.document}


def _add_melt(
    survey: Survey, tracks: list[Track], joint_settings: MaterialSettings, collapse: float, rib_on: str,
    pair: PairCheck | None, fit: TransmissionFit | None,
    columns: dict[str, dict[str, Column]], interface: dict[str, Value], document: dict[str, Any], notes: list[str],
) -> None:  # fmt: skip
    """Add melt, collapse window, energy and ranges to columns, interface values and document."""
    areas_at = {path.id: path.areas_at for path in survey.paths if path.areas_at is not None}
    temperature = melt_temperature(joint_settings, pair)
    rib = joint_settings.base if rib_on == "base" else joint_settings.cover
    expansion = (
        rib.melt_expansion(temperature.value)
        if rib is not None and temperature is not None
        else assumed(1.15, "1", say("known.expansion-unnamed"), 1.05, 1.25)
    )
    grids = add_melt_columns(tracks, survey.initial_contact, collapse, expansion, areas_at, columns)
    everything = me.joined(grids) if grids else None
    window = collapse_window(tracks, survey, everything, expansion, joint_settings)
    document["melt"] = melt_section(tracks, columns, collapse, expansion, joint_settings)
    if any(track.id not in areas_at for track in tracks):
        notes.append(say("material.fitted"))
    document["window"] = window_section(window, tracks, everything, expansion, collapse, joint_settings, survey)
    window_values(window, tracks, collapse, interface)
    unproven_values(window, tracks, everything, expansion, joint_settings, survey, interface)

    inputs, used = energy_inputs(tracks, columns, everything, collapse, joint_settings, rib_on, temperature, notes)
    heat = heat_of(tracks, columns, joint_settings, rib_on, temperature, collapse)
    if heat is not None:
        document["heat"] = heat.section
        interface.update(heat.interface)
        _heat_columns(tracks, heat, columns)
    if inputs is not None and number_of_passes(joint_settings) != 1.0:
        _rise_value(tracks, inputs, used, joint_settings, interface)
    chances = tolerance_chances(
        tracks, columns, fit, everything, expansion, survey, collapse, joint_settings, inputs, used
    )
    if inputs is not None:
        document["energy"] = energy_section(tracks, columns, inputs, used, joint_settings, notes, chances, heat)
    if chances is not None:
        document["uncertainty"] = chances.as_dict()
        if chances.outside is not None:
            interface["combinations_outside"] = value_of(100.0 * chances.outside)


def number_of_passes(settings: MaterialSettings) -> float | None:
    """As set; None where as many as it takes. A single pass is judged by its highest temperature."""
    passes = settings.get("laser.passes")
    return None if passes is None else passes.value


def _heat_columns(tracks: Sequence[Track], heat: HeatFound, columns: dict[str, dict[str, Column]]) -> None:
    for key, values in heat.column.items():
        for track, part in parts(tracks):
            own = values[part]
            why = track.reason(own, "rib_width", "cover_thickness_max", "cover_thickness")
            never = np.where(np.isinf(own), "never-melts", why)
            columns[track.id][key] = Column(np.where(np.isfinite(own), own, np.nan), never)


def _rise_value(
    tracks: Sequence[Track], inputs: EnergyInputs, used: Mapping[str, Known], settings: MaterialSettings,
    interface: dict[str, Value],
) -> None:  # fmt: skip
    rise = first_pass_rises(inputs, used, settings)
    if rise is not None:
        i = int(np.nanargmax(rise))
        at = next(track.point(i - part.start) for track, part in parts(tracks) if part.start <= i < part.stop)
        interface["first_pass_rise"] = value_of(float(rise[i])) | {"at": at}


def _pressed(settings: MaterialSettings, survey: Survey) -> MaterialSettings:
    """The settings with what the clamp presses flat of the cover taken off its flatness, where that was computed."""
    flat, key = survey.interface.get("pressed_flat", {}).get("value"), "tolerance.flatness_cover"
    if flat is None or key not in settings.numbers:
        return settings
    left = replace(settings.numbers[key], value=max(0.0, settings.numbers[key].value - flat))
    return replace(settings, numbers={**settings.numbers, key: left})


def _pair(settings: MaterialSettings) -> PairCheck | None:
    if settings.cover is None or settings.base is None:
        return None
    return check_pair(settings.cover.polymer, settings.base.polymer, settings.pairs)


def _grade(pair: PairCheck) -> float:
    return 0.0 if pair.verdict == "not weldable" else 1.0 if pair.verdict in RISKY else 2.0


def melt_temperature(settings: MaterialSettings, pair: PairCheck | None) -> Known | None:
    """Temperature of the melt (°C): as set, else the middle of the shared window; None where neither is known."""
    chosen = settings.get("process.melt_temperature")
    if chosen is not None:
        return chosen
    if pair is not None and pair.overlap > 0.0:
        low, high = pair.window
        return assumed((low + high) / 2.0, "°C", say("known.window"), low, high)
    for compound in (settings.base, settings.cover):
        if compound is not None:
            low, high = compound.polymer.window
            return assumed((low + high) / 2.0, "°C", say("known.window-one", name=compound.name), low, high)
    return None


def tolerance_chances(
    tracks: Sequence[Track],
    columns: Mapping[str, Columns],
    fit: TransmissionFit | None,
    grid: me.AreaGrid | None,
    expansion: Known,
    survey: Survey,
    collapse: float,
    settings: MaterialSettings,
    inputs: EnergyInputs | None,
    used: Mapping[str, Known],
) -> Chances | None:
    """What random combinations of the tolerances give; None where no tolerance is set."""
    if not tracks:
        return None
    first = survey.initial_contact
    late = [lateness(track, first, "gap_max") for track in tracks]
    worst = np.concatenate(late)
    path = np.concatenate([columns[track.id]["light_path"].values for track in tracks])
    height = np.concatenate([track.column("rib_height") + lateness(track, first) for track in tracks])
    width = np.concatenate([track.width() for track in tracks])
    value = {key: known.value for key, known in settings.numbers.items()}
    joint = Joint(
        path=path,
        fit=fit,
        grid=grid,
        expansion=expansion,
        trap_limit=value["process.trap_fill"],
        collapse=collapse,
        late_worst=float(np.nanmax(worst)) if np.isfinite(worst).any() else 0.0,
        travel=free_travel(survey)[0],
        height=height,
        width=width,
        energy=inputs,
        ranges=used,
        reserves={key: value[f"process.{key}"] for key in ("least_local_collapse", "travel_reserve", "height_reserve")},
        tolerance={key.removeprefix("tolerance."): v for key, v in value.items() if key.startswith("tolerance.")},
    )
    return draw(joint, int(value["samples.count"]), int(value["samples.seed"]))
