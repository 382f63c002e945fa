"""The collapse window: the smallest collapse that closes every gap, the largest that the geometry allows."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.known import Known, given, is_proven, rounded
from seamcheck.catalogue.quantities import REASONS
from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Value, value_of
from seamcheck.measure.material import melt as me
from seamcheck.measure.material.balance import lateness
from seamcheck.measure.material.track import Track
from seamcheck.measure.table import Survey
from seamcheck.settings.material import MaterialSettings

AS_GOOD = 1e-4
"""mm by which a collapse may miss an end of the window and still lie in it: less than any measurement is off."""


class Bound(Struct, frozen=True):
    """One end of the collapse window: mm, its cause in words, and the station or the place that causes it."""

    value: float
    cause: str
    path: str = ""
    station: int = -1
    at: tuple[float, ...] | None = None


class CollapseWindow(Struct, frozen=True):
    """Smallest and largest collapse that this geometry allows.

    lowest : what gap and flatness require
    highest : the smallest of ``uppers``; None when nothing limits
    uppers : what traps, travel and rib height allow, one each
    unknown : what could not be taken into account, as sentences
    """

    lowest: Bound
    uppers: tuple[Bound, ...]
    unknown: tuple[str, ...] = ()

    @property
    def highest(self) -> Bound | None:
        return min(self.uppers, key=lambda bound: bound.value, default=None)

    @property
    def width(self) -> float:
        """mm; negative: no collapse suits."""
        return float("inf") if self.highest is None else self.highest.value - self.lowest.value

    def place(self, collapse: float) -> str:
        """Position of a planned collapse: 'inside', 'too small', 'too large' or 'empty window'."""
        if self.width < -AS_GOOD:
            return "empty window"
        if collapse < self.lowest.value - AS_GOOD:
            return "too small"
        return "too large" if self.highest is not None and collapse > self.highest.value + AS_GOOD else "inside"


def free_travel(survey: Survey) -> tuple[float, list[Any] | None, str]:
    """Return (mm, place, why) of the free travel: inf when nothing is in the way, NaN when unknown."""
    entry = survey.interface.get("free_travel")
    value, at, why = float("nan"), None, "not measured"
    if entry is not None:
        at, why = entry.get("at"), str(entry.get("why") or "")
        if entry.get("value") is not None:
            value = float(entry["value"])
        elif why == "free":
            value = float("inf")
    for path in survey.paths:
        column = path.columns.get("free_travel")
        if column is not None and np.isfinite(column).any():
            i = int(np.nanargmin(column))
            if not value <= float(column[i]):
                value, at, why = float(column[i]), [float(x) for x in path.points[i]], ""
    return value, at, why


def collapse_window(
    tracks: Sequence[Track], survey: Survey, grid: me.AreaGrid | None, expansion: Known, settings: MaterialSettings
) -> CollapseWindow:
    """Smallest and largest collapse (mm) that suit the seam, and what limits them."""
    number = {key: known.value for key, known in settings.numbers.items()}
    first, unknown, uppers = survey.initial_contact, [], []
    late, path, station = 0.0, "", -1
    for track in tracks:
        values = lateness(track, first, "gap_max")
        if np.isfinite(values).any() and (station < 0 or float(np.nanmax(values)) > late):
            station, path = int(np.nanargmax(values)), track.id
            late = float(values[station])
    flat = number.get("tolerance.flatness_cover", 0.0) + number.get("tolerance.flatness_rib", 0.0)
    if flat == 0.0:
        unknown.append(say("material.no-flatness"))
    if station < 0:
        unknown.append(say("material.no-gap"))
    reserve = number["process.least_local_collapse"]
    cause = say("cause.gap", gap=late, flatness=flat, reserve=reserve)
    lowest = Bound(late + flat + reserve, cause, path, station)
    stations = [(track.id, i) for track in tracks for i in range(len(track.s))]
    if grid is not None:
        surplus = expansion.value * grid.melt - number["process.trap_fill"] * grid.traps
        holds = me.largest_holding(grid.collapses, surplus)
        if np.isfinite(holds).any():
            i = int(np.nanargmin(holds))
            uppers.append(Bound(float(holds[i]), say("cause.traps"), *stations[i]))
        elif not np.isinf(holds).any():
            unknown.append(say("material.no-traps"))
    travel, at, why = free_travel(survey)
    if np.isfinite(travel):
        uppers.append(
            Bound(
                travel - number["process.travel_reserve"],
                say("cause.travel", travel=travel, reserve=number["process.travel_reserve"]),
                at=None if at is None else tuple(float(c) for c in at),
            )
        )
    elif travel != travel:
        known = why in REASONS
        unknown.append(say("material.no-travel", why=why) if known else say("material.travel-unknown"))
    heights = [track.column("rib_height") + lateness(track, first) for track in tracks]
    for track, height in zip(tracks, heights, strict=True):
        if np.isfinite(height).any():
            i = int(np.nanargmin(height))
            value = float(height[i]) - number["process.height_reserve"]
            cause = say("cause.height", reserve=number["process.height_reserve"])
            uppers.append(Bound(value, cause, track.id, i))
    return CollapseWindow(lowest, tuple(sorted(uppers, key=lambda bound: bound.value)), tuple(unknown))


def _bound_dict(bound: Bound, tracks: Sequence[Track]) -> dict[str, Any]:
    place = None if bound.at is None else [rounded(c, 9) for c in bound.at]
    entry: dict[str, Any] = {"value_mm": rounded(bound.value), "cause": bound.cause, "at": place}
    for track in tracks:
        if track.id == bound.path and bound.station >= 0:
            entry.update(contour=track.id, s_mm=rounded(track.s[bound.station]), at=track.point(bound.station))
    return entry


def window_section(
    window: CollapseWindow,
    tracks: Sequence[Track],
    grid: me.AreaGrid | None,
    expansion: Known,
    collapse: float,
    settings: MaterialSettings,
    survey: Survey,
) -> dict[str, Any]:
    """The document's section on the collapse window."""
    limit = settings.numbers["process.trap_fill"].value
    section: dict[str, Any] = {
        "place": window.place(collapse),
        "planned_mm": rounded(collapse),
        "width_mm": rounded(window.width),
        "lowest": _bound_dict(window.lowest, tracks),
        "highest": None if window.highest is None else _bound_dict(window.highest, tracks),
        "uppers": [_bound_dict(bound, tracks) for bound in window.uppers],
        "unknown": list(window.unknown),
        "inputs": {
            key: settings.numbers[f"process.{key}"].as_dict()
            for key in ("trap_fill", "least_local_collapse", "travel_reserve", "height_reserve")
        },
    }
    if grid is None:
        return section
    first = survey.initial_contact
    late = np.concatenate([lateness(track, first, "gap_max") for track in tracks])
    length = np.concatenate([track.length for track in tracks])
    flat = sum(
        settings.numbers[f"tolerance.{key}"].value
        for key in ("flatness_cover", "flatness_rib")
        if f"tolerance.{key}" in settings.numbers
    )
    reserve = settings.numbers["process.least_local_collapse"].value
    travel = free_travel(survey)[0]
    known = np.isfinite(late)
    weight = float(length[known].sum())
    picture: dict[str, list[Any]] = {
        "collapse_mm": [],
        "closed_share": [],
        "trap_fill": [],
        "trap_fill_inner": [],
        "trap_fill_outer": [],
        "travel_left_mm": [],
    }
    for c, melt, inner, outer in zip(grid.collapses, grid.melt, grid.inner, grid.outer, strict=True):
        picture["collapse_mm"].append(rounded(c))
        closed = float(length[known][late[known] + flat + reserve <= c + 1e-9].sum())
        picture["closed_share"].append(rounded(closed / weight, 4) if weight else None)
        for key, trap, share in (
            ("trap_fill", me.both_traps(inner, outer), 1.0),
            ("trap_fill_inner", inner, 0.5),
            ("trap_fill_outer", outer, 0.5),
        ):
            picture[key].append(_most(me.fill(melt, trap, expansion.value, share)))
        picture["travel_left_mm"].append(rounded(travel - c))
    section["picture"] = {"trap_fill_limit": rounded(limit), **picture}
    return section


def unproven_values(
    window: CollapseWindow,
    tracks: Sequence[Track],
    grid: me.AreaGrid | None,
    expansion: Known,
    settings: MaterialSettings,
    survey: Survey,
    interface: dict[str, Value],
) -> None:
    """Add what rests on the melt's expansion alone, where that is from memory or assumed: no must-fix comes of it."""
    if is_proven(expansion) or grid is None:
        return
    wider = collapse_window(tracks, survey, grid, given(1.0, "1"), settings).width
    wider = min(wider, float(grid.collapses[-1]) - window.lowest.value) if np.isinf(wider) else wider
    interface["unproven_expansion"] = value_of(expansion.value)
    if np.isfinite(window.width):
        interface["unproven_window"] = value_of(max(wider - window.width, 0.0))


def _most(values: np.ndarray) -> float | None:
    return rounded(float(np.nanmax(values)), 4) if np.isfinite(values).any() else None


def window_values(
    window: CollapseWindow, tracks: Sequence[Track], collapse: float, interface: dict[str, Value]
) -> None:
    """Put the window's values, each with its place, among those of the whole interface."""
    low, high = _bound_dict(window.lowest, tracks), window.highest
    interface["collapse_above_lowest"] = value_of(collapse - window.lowest.value, low["at"], window.lowest.cause)
    if high is None:
        for key in ("collapse_window", "collapse_below_highest"):
            interface[key] = value_of(None, why="free")
        return
    at = _bound_dict(high, tracks)["at"]
    both = say("cause.both", high=high.cause, low=window.lowest.cause)
    interface["collapse_window"] = value_of(window.width, at, both)
    interface["collapse_below_highest"] = value_of(high.value - collapse, at, high.cause)
