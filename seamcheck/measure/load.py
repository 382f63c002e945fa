"""Load on the weld by an internal pressure or a force on the cover: line load, peel moment, stress."""

from __future__ import annotations

import numpy as np

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, Column, Columns, Value, value_of
from seamcheck.measure.clamp import inside_of
from seamcheck.measure.flattening import POISSON
from seamcheck.measure.plate import plate_edge
from seamcheck.measure.table import PathSurvey, Survey, rib_width
from seamcheck.settings.tables import Load

_KEYS = ("load_force", "line_load_mean", "weld_stress_least", "weld_stress_most", "weld_use_least", "weld_use_most")
_OVER = 2.0  # cover thicknesses over which load and moment are averaged along the seam


def load_values(joint: Joint, contour: Contour, survey: Survey, load: Load | None) -> Additions:
    """Loads and stresses of the weld; nothing without a ``[load]``.

    Notes
    -----
    The cover is a plate of constant thickness over what the seam encloses. Two bounds: hinged on the seam, where the
    weld carries the line load alone, and clamped by it, where it carries the moment at the plate's edge too. Stress is
    load / w, and load / w + 6 moment / w² on the side where the weld is peeled, w the rib's width.
    """
    if load is None:
        return Additions({})
    inside = inside_of(joint, contour, joint.view)
    if inside.is_empty:
        return Additions(dict.fromkeys(("enclosed_area", *_KEYS), value_of(None, why="no-inside")))
    area = float(inside.area)
    values: dict[str, Value] = {"enclosed_area": value_of(area)}
    pressure = load.pressure if load.pressure is not None else (load.force or 0.0) / area
    force = pressure * area
    values |= {"load_force": value_of(force), "line_load_mean": value_of(force / contour.length)}
    if len(survey.paths) != 1 or not survey.paths[0].closed:
        return Additions(values | dict.fromkeys(_KEYS[2:], value_of(None, why="no-single-loop")))
    path = survey.paths[0]
    thickness = path.columns["cover_thickness"]
    over = _OVER * float(np.nanmedian(thickness)) if np.isfinite(thickness).any() else 0.0
    line = joint.view.local(joint.frame.world(contour.paths[0].points))[:, :2]
    edge = plate_edge(line, pressure, POISSON, over)
    if edge is None:
        return Additions(values | dict.fromkeys(_KEYS[2:], value_of(None, why="no-plate-edge")))
    hinged, clamped, moment = (
        edge.at(found, path.s, path.length) for found in (edge.load_hinged, edge.load_clamped, edge.moment)
    )
    width = rib_width(path)
    least, most = stresses(hinged, clamped, moment, width)
    columns: Columns = {
        "line_load": Column.of(np.fmax(hinged, clamped)),
        "peel_moment": Column.of(moment),
        "weld_stress_least": Column.of(least, path.reasons["rib_width"]),
        "weld_stress_most": Column.of(most, path.reasons["rib_width"]),
    }
    for name, stress in (("least", least), ("most", most)):
        values[f"weld_stress_{name}"] = _worst(path, stress)
        values[f"weld_use_{name}"] = _used(values[f"weld_stress_{name}"], load)
    return Additions(values, {path.id: columns})


def stresses(
    hinged: np.ndarray, clamped: np.ndarray, moment: np.ndarray, width: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """Stress in the weld (MPa): by the line load alone, and with the peel moment at the edge that is stressed most.

    Parameters
    ----------
    hinged, clamped : (n,) N/mm; moment : (n,) N; width : (n,) mm
    """
    most = np.fmax(hinged, clamped) / width + 6.0 * moment / width**2
    return np.asarray(hinged / width), np.asarray(most)


def _worst(path: PathSurvey, stress: np.ndarray) -> Value:
    if not np.isfinite(stress).any():
        return value_of(None, why="no-rib")
    k = int(np.nanargmax(stress))
    return value_of(float(stress[k]), path.points[k])


def _used(stress: Value, load: Load) -> Value:
    """The stress over what the weld can carry; not evaluated without strength and weld factor."""
    if load.strength is None or load.weld_factor is None:
        return value_of(None, why="no-strength")
    if stress["value"] is None:
        return stress
    return value_of(float(stress["value"]) / (load.strength * load.weld_factor), stress["at"])
