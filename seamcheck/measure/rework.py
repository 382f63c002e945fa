"""What travel and flash traps leave for a second melting of the seam, once the planned collapse is done."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, Column, Columns, Value, value_of
from seamcheck.measure.material.melt import both_traps, largest_holding
from seamcheck.measure.table import PathSurvey, Survey

_STEPS = 8  # collapses, from the planned one to the rib's height, between which areas are taken as straight


def rework_values(joint: Joint, survey: Survey, collapse: float, found: Mapping[str, Value]) -> Additions:
    """Travel left, share of the traps filled, and the second collapse that both and the rib's height allow.

    Parameters
    ----------
    collapse : mm, the planned one
    found : values of the whole interface; uses free_travel, melt_volume and the volumes of both traps
    """
    if joint.rib_on == "none":
        return Additions({})
    columns = {path.id: _columns(path, collapse) for path in survey.paths}
    travel = found["free_travel"]
    left: Value = {**travel, "value": None if travel["value"] is None else travel["value"] - collapse}
    left = {key: left[key] for key in ("value", "at", "why", "faces") if key in left}
    values = {"travel_left": left, "trap_filled": _filled(found)}
    return Additions({**values, "second_collapse": _least(survey, columns, left)}, columns)


def collapse_left(reserve: np.ndarray, surplus: np.ndarray, height: np.ndarray) -> np.ndarray:
    """Further collapse until the melt fills the traps, or the rib is melted down to their floor.

    Parameters
    ----------
    reserve : (m,) mm beyond the planned collapse, ascending from 0
    surplus : (m, n) mm², melt of all that is melted down by then, less both traps; NaN where not known
    height : (n,) mm of rib that is left after the planned collapse; NaN where not known

    Returns
    -------
    (n,) mm; NaN where the height or the surplus is not known
    """
    return np.asarray(np.minimum(largest_holding(reserve, surplus), height))


def _columns(path: PathSurvey, collapse: float) -> Columns:
    height = np.asarray(path.columns["rib_height"], dtype=float) - collapse
    nothing = {"collapse_left": Column.of(np.full(len(path.s), np.nan), "depends")}
    if path.areas_at is None or not np.isfinite(height).any():
        return nothing
    reserve = np.linspace(0.0, max(float(np.nanmax(height)), 1e-3), _STEPS + 1)
    melt, inner, outer = (np.array(rows) for rows in zip(*(path.areas_at(collapse + x) for x in reserve), strict=True))
    known = np.isfinite(np.asarray(path.columns["trap_room"], dtype=float))
    least = collapse_left(reserve, np.where(known, melt - both_traps(inner, outer), np.nan), height)
    why = np.where(path.reasons["trap_room"] != "", path.reasons["trap_room"], "depends")
    return {"collapse_left": Column.of(least, why)}


def _filled(found: Mapping[str, Value]) -> Value:
    """The melt's volume over that of both traps."""
    melt = found["melt_volume"]
    rooms = [found[f"trap_volume_{side}"]["value"] for side in ("inner", "outer")]
    room = sum(value for value in rooms if value is not None)
    if melt["value"] is None or not room > 0.0:
        return value_of(None, why=melt["why"] or "no-shoulder")
    return value_of(melt["value"] / room)


def _least(survey: Survey, columns: Mapping[str, Columns], travel: Mapping[str, Any]) -> Value:
    """The smallest of the travel left and of what rib and traps leave along the seam, and what ends it there."""
    best = value_of(None, why="depends")
    for path in survey.paths:
        values = columns[path.id]["collapse_left"].values
        if np.isfinite(values).any():
            k = int(np.nanargmin(values))
            if best["value"] is None or values[k] < best["value"]:
                best = value_of(float(values[k]), path.points[k], say("place.rework.seam"))
    if travel["value"] is not None and (best["value"] is None or travel["value"] < best["value"]):
        best = dict(travel)
    return best
