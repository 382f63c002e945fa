"""How thick the rib's root is against the plate that it stands on: where it is thick, the other side sinks in."""

from __future__ import annotations

import numpy as np

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, Column, Columns, Value, value_of
from seamcheck.measure.table import PathSurvey, Survey


def sink_values(joint: Joint, survey: Survey) -> Additions:
    """The ratio along the seam, and the largest of it.

    Parameters
    ----------
    survey : uses rib_width_root, rib_height, and cover_thickness or wall_width with support_depth
    """
    if joint.rib_on == "none":
        return Additions({})
    columns: dict[str, Columns] = {}
    best = value_of(None, why="wall-below")
    for path in survey.paths:
        plate = _plate(path, joint.rib_on == "cover")
        root = np.asarray(path.columns["rib_width_root"], dtype=float)
        ratio = root_to_plate(root, plate.values)
        why = np.where(plate.reasons == "", "depends", plate.reasons)
        if np.isfinite(ratio).any():
            columns[path.id] = {"root_to_plate": Column.of(ratio, why)}
            k = int(np.nanargmax(ratio))
            if best["value"] is None or ratio[k] > best["value"]:
                best = _told(float(ratio[k]), float(root[k]), float(plate.values[k]), path.points[k])
    return Additions({"root_to_plate": best}, columns)


def root_to_plate(root: np.ndarray, plate: np.ndarray) -> np.ndarray:
    """(n,) width of the rib at its root (n,) mm over the thickness of its plate (n,) mm; NaN where either is."""
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.where(plate > 0.0, root / plate, np.nan)


def _plate(path: PathSurvey, on_cover: bool) -> Column:
    """mm of plate below the rib's root; NaN over a wall, which goes on where the rib stands."""
    height = np.asarray(path.columns["rib_height"], dtype=float)
    if on_cover:
        return Column.of(np.asarray(path.columns["cover_thickness"], dtype=float) - height, "depends")
    plate = np.asarray(path.columns["support_depth"], dtype=float) - height
    return Column.of(plate, "depends").without(np.isfinite(np.asarray(path.columns["wall_width"])), "wall-below")


def _told(ratio: float, root: float, plate: float, at: np.ndarray) -> Value:
    return value_of(ratio, at, say("place.root", root=root, plate=plate))
