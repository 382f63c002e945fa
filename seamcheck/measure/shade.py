"""What stands in the way of light along the beam, where some of the rib's width lies in the shade."""

from __future__ import annotations

import numpy as np

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.table import PathSurvey, Survey, rib_width
from seamcheck.sections.face_gaps import FaceList, Sheet

_ACROSS = np.array([-0.95, -0.6, -0.3, 0.0, 0.3, 0.6, 0.95])  # of half the light's width
_ABOVE = 0.05  # mm above the rib's top from which on something stands over it


def shades(joint: Joint, survey: Survey) -> Additions:
    """The value 'beam_clear' of the whole interface, one place for each stretch in one shade; nothing without shade."""
    dark = [np.asarray(path.columns["beam_clear"], dtype=float) < 1.0 - 1e-6 for path in survey.paths]
    if not any(mark.any() for mark in dark):
        return Additions({})
    view = joint.view
    points = np.concatenate([view.local(p.points[d]) for p, d in zip(survey.paths, dark, strict=True) if d.any()])
    low, high = points.min(axis=0) - 3.0, points.max(axis=0) + 3.0
    others = {i: body for i, body in joint.bodies.items() if i not in joint.cover}
    faces = FaceList.of(others, view, 1.0, np.array([*low, *high[:2], np.inf]))
    sheet = faces.facets(view, 1.0)
    zone = np.array([*low, *high[:2], np.inf])
    cover = FaceList.of({i: joint.bodies[i] for i in joint.cover}, view, 1.0, zone).facets(view, 1.0)
    places: list[Value] = []
    for path, mark in zip(survey.paths, dark, strict=True):
        if mark.any():
            places += _places(path, np.flatnonzero(mark), (sheet, cover), faces, joint, view)
    places.sort(key=lambda place: place["value"])
    return Additions({"beam_clear": {**places[0], "places": places}})


def _places(
    path: PathSurvey, stations: np.ndarray, sheets: tuple[Sheet, Sheet], faces: FaceList, joint: Joint, view: Frame
) -> list[Value]:
    owner, face = _over(path, stations, sheets[0], view)
    clear = np.asarray(path.columns["beam_clear"], dtype=float)[stations]
    starts = np.flatnonzero(np.append(True, (np.diff(stations) > 1) | (owner[1:] != owner[:-1])))
    found = []
    for a, b in zip(starts, np.append(starts[1:], len(stations)), strict=True):
        k = int(a + np.nanargmin(clear[a:b]))
        part = faces.ids[owner[k]] if owner[k] >= 0 else ""
        if part:
            why = say("place.light", part=f"'{joint.parts[part].name or part}'")
        else:
            beside = _is_beside(path, stations[k : k + 1], sheets[1], view)
            why = say("place.cover-beside" if beside else "place.cover-twice")
        hit = [{"part": part, "face": int(face[k])}] if part else []
        found.append(value_of(float(clear[k]), path.points[stations[k]], why, faces=hit))
    return found


def _across(path: PathSurvey, stations: np.ndarray, view: Frame) -> np.ndarray:
    """(k * places, 3) in the view: places over the width of the light at stations (k,)."""
    width = np.asarray(path.columns.get("light_width", rib_width(path)), dtype=float)
    half = np.nan_to_num(width[stations], nan=0.5) / 2
    places = path.points[stations, None] + _ACROSS[None, :, None] * half[:, None, None] * path.u[stations, None]
    return np.asarray(view.local(places.reshape(-1, 3)))


def _is_beside(path: PathSurvey, station: np.ndarray, cover: Sheet, view: Frame) -> bool:
    """Whether some of the light at a station (1,) meets nothing of the cover."""
    if "light_width" not in path.columns or not len(cover.face):
        return False
    _, index, _ = heights_at(_across(path, station, view), cover.corners)
    return len(np.unique(index)) < len(_ACROSS)


def _over(path: PathSurvey, stations: np.ndarray, sheet: Sheet, view: Frame) -> tuple[np.ndarray, np.ndarray]:
    """(k,) part (index, -1 for none) and face of what stands lowest over the rib's top at stations (k,)."""
    local = _across(path, stations, view)
    part, face = np.full(len(stations), -1), np.full(len(stations), -1)
    if not len(sheet.face):
        return part, face
    height, index, facet = heights_at(local, sheet.corners)
    over = height > local[index, 2] + _ABOVE
    station, height, facet = index[over] // len(_ACROSS), height[over], facet[over]
    order = np.lexsort((-height, station))  # the lowest is written last
    part[station[order]], face[station[order]] = sheet.part[facet[order]], sheet.face[facet[order]]
    return part, face
