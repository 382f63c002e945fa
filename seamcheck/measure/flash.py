"""Where flash can go: open stretches and what it would reach, trap volume in corners, gaps left at the lips."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.clamp import inside_of
from seamcheck.measure.table import PathSurvey, Survey
from seamcheck.sections.face_gaps import FaceList
from seamcheck.sections.stretches import cell_lengths

SIDES = ("inner", "outer")
_PROBES = 15  # places along the longer side of what the seam encloses at which the cover is searched


def flash_values(joint: Joint, contour: Contour, survey: Survey, near: Sequence[Mapping[str, Any]]) -> Additions:
    """Per side: length of seam with an open trap and what flash would reach, volume, loss in corners.

    Parameters
    ----------
    near : other parts near the seam, nearest first, as neighbours() lists them

    Notes
    -----
    Volumes are sums of section area times length of mid-line times 1 -+ d / R (Pappus and Guldinus).
    """
    reaches = _Reaches(joint, contour, near)
    found: dict[str, Value] = {}
    for side in SIDES:
        found[f"flash_open_{side}"] = _open(survey, side, reaches)
        found |= _volume(survey, side)
    melt = sum(_integral(path, path.columns["melt_area"]) for path in survey.paths)
    found["melt_volume"] = value_of(melt) if melt > 0 else value_of(None, why="no-rib")
    return Additions(found | _lips(survey))


def _open(survey: Survey, side: str, reaches: _Reaches) -> Value:
    length, places, known = 0.0, [], False
    for path in survey.paths:
        values = np.asarray(path.columns[f"trap_open_{side}"], dtype=float)
        is_open = values == 1.0
        known |= bool(np.isfinite(values).any())
        length += float(cell_lengths(path.s, path.length, path.closed)[is_open].sum())
        places += list(path.points[is_open])
    if not known:
        return value_of(None, why="no-shoulder")
    if not places:
        return value_of(0.0)
    return value_of(length, places[len(places) // 2], reaches.say(side, np.array(places)))


class _Reaches:
    """What flash of an open stretch would reach; looked up only where there is one."""

    def __init__(self, joint: Joint, contour: Contour, near: Sequence[Mapping[str, Any]]) -> None:
        self.joint, self.contour, self.near = joint, contour, near

    def say(self, side: str, places: np.ndarray) -> str:
        """A sentence about flash that comes out on a side at places (n, 3)."""
        view = self.joint.view
        enclosed = inside_of(self.joint, self.contour, view)
        if enclosed.is_empty:
            return say("place.flash.no-inside")
        roofed = self._is_roofed(enclosed, view)
        within = "place.flash.inside" if roofed else "place.flash.opening"
        beyond = "place.flash.outside" if roofed else "place.flash.inside"
        parts = self._parts(enclosed, side == "inner", places, view)
        return say(within if side == "inner" else beyond, **({"parts": parts} if parts else {}))

    def _is_roofed(self, enclosed: BaseGeometry, view: Frame) -> bool:
        """Whether the cover lies over most of what the seam encloses; else it is a frame round an opening."""
        x0, y0, x1, y1 = enclosed.bounds
        step = max(x1 - x0, y1 - y0) / _PROBES
        grid = np.stack(np.meshgrid(np.arange(x0 + step / 2, x1, step), np.arange(y0 + step / 2, y1, step)), -1)
        xy = grid.reshape(-1, 2)
        xy = xy[shapely.contains_xy(enclosed, xy)]
        cover = {i: self.joint.bodies[i] for i in self.joint.cover}
        zone = np.array([x0, y0, -1e6, x1, y1, 1e6])
        sheet = FaceList.of(cover, view, 1.0, zone).facets(view, 1.0)
        _, over, _ = heights_at(xy, sheet.corners)
        return not len(xy) or len(np.unique(over)) >= 0.5 * len(xy)

    def _parts(self, enclosed: BaseGeometry, inner: bool, places: np.ndarray, view: Frame) -> list[str]:
        said: list[str] = []
        for entry in self.near:
            at = np.asarray(entry["at"])
            if bool(shapely.contains_xy(enclosed, *view.local(at)[:2])) == inner:
                ident = entry["faces"][1]["part"]
                away = float(np.linalg.norm(places - at, axis=1).min())
                said.append(say("place.flash.near", part=f"'{self.joint.parts[ident].name or ident}'", distance=away))
        return said[:3]


def _volume(survey: Survey, side: str) -> dict[str, Value]:
    """Volume of one trap along its own path, and the largest share of its section that is lost in a corner."""
    volume, worst, at, known = 0.0, 0.0, None, False
    for path in survey.paths:
        area = np.asarray(path.columns[f"trap_area_{side}"], dtype=float)
        with np.errstate(invalid="ignore", divide="ignore"):
            factor = np.asarray(path.columns[f"trap_corner_{side}"]) / np.asarray(path.columns[f"trap_room_{side}"])
        factor = np.where(np.isfinite(factor), factor, 1.0)
        known |= bool(np.isfinite(area).any())
        volume += _integral(path, area * factor)
        if np.isfinite(area).any() and 1.0 - factor.min() > worst + 1e-9:
            k = int(np.argmin(factor))
            worst, at = float(1.0 - factor[k]), path.points[k]
    if not known:
        nothing = value_of(None, why="no-shoulder")
        return {f"trap_volume_{side}": nothing, f"corner_loss_{side}": nothing}
    return {f"trap_volume_{side}": value_of(volume), f"corner_loss_{side}": value_of(worst, at)}


def _lips(survey: Survey) -> dict[str, Value]:
    """The tightest and the widest gap at a lip after the collapse, on both sides of the whole seam."""
    places = [
        (float(path.columns[f"lip_gap_{side}"][k]), path.points[k], side)
        for path in survey.paths
        for side in SIDES
        for k in _extremes(np.asarray(path.columns[f"lip_gap_{side}"], dtype=float))
    ]
    if not places:
        nothing = value_of(None, why="no-lip")
        return {"lip_tightest": nothing, "lip_widest": nothing}
    tight, wide = min(places, key=lambda p: p[0]), max(places, key=lambda p: p[0])
    return {
        key: value_of(value, at, say("place.side", side=side))
        for key, (value, at, side) in (("lip_tightest", tight), ("lip_widest", wide))
    }


def _extremes(values: np.ndarray) -> tuple[int, ...]:
    return (int(np.nanargmin(values)), int(np.nanargmax(values))) if np.isfinite(values).any() else ()


def _integral(path: PathSurvey, values: np.ndarray) -> float:
    """Sum of values times length of seam; places that were not measured count as their measured average."""
    values = np.asarray(values, dtype=float)
    cells, known = cell_lengths(path.s, path.length, path.closed), np.isfinite(values)
    if not known.any():
        return 0.0
    return float((values[known] * cells[known]).sum() * cells.sum() / cells[known].sum())
