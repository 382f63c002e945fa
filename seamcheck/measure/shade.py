"""What stands in the way of the beam, where some of the rib's width lies in the shade."""

from __future__ import annotations

import numpy as np

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.table import PathSurvey, Survey, rib_width
from seamcheck.sections.face_gaps import FaceList, Sheet

_ACROSS = np.array([-0.95, -0.6, -0.3, 0.0, 0.3, 0.6, 0.95])  # of half the beam's width
_ABOVE = 0.05  # mm above the rib's top from which on something stands over it
_AROUND = 6.0  # mm beside the rib to which what shades it is looked at
_TURN = 0.7  # cosine of the turn of a seam beyond which one move of a part does not clear both ends of its shade


def shades(joint: Joint, survey: Survey, margin: float) -> Additions:
    """The value 'beam_clear' of the whole interface, one place for each stretch in one shade; nothing without shade.

    Parameters
    ----------
    margin : mm beside the beam that is to be clear as well: the beam margin
    """
    dark = [np.asarray(path.columns["beam_clear"], dtype=float) < 1.0 - 1e-6 for path in survey.paths]
    if not any(mark.any() for mark in dark):
        return Additions({})
    view = joint.view
    points = np.concatenate([view.local(p.points[d]) for p, d in zip(survey.paths, dark, strict=True) if d.any()])
    low, high = points.min(axis=0) - _AROUND, points.max(axis=0) + _AROUND
    others = {i: body for i, body in joint.bodies.items() if i not in joint.cover}
    faces = FaceList.of(others, view, 1.0, np.array([*low, *high[:2], np.inf]))
    sheet = faces.facets(view, 1.0)
    zone = np.array([*low, *high[:2], np.inf])
    under = FaceList.of(others, view, -1.0, zone).facets(view, -1.0)
    cover = FaceList.of({i: joint.bodies[i] for i in joint.cover}, view, 1.0, zone).facets(view, 1.0)
    places: list[Value] = []
    for path, mark in zip(survey.paths, dark, strict=True):
        if mark.any():
            places += _places(path, np.flatnonzero(mark), (sheet, cover, under), faces, joint, view, margin)
    places.sort(key=lambda place: place["value"])
    return Additions({"beam_clear": {**places[0], "places": places}})


def _places(
    path: PathSurvey, stations: np.ndarray, sheets: tuple[Sheet, Sheet, Sheet], faces: FaceList, joint: Joint,
    view: Frame, margin: float,
) -> list[Value]:  # fmt: skip
    owner, face, _ = _over(path, stations, sheets[0], view)
    lowest, _, above = _over(path, stations, sheets[2], view)
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
        way = _way_out(path, stations[a:b], sheets[0].where(sheets[0].part == owner[k]), view, margin) if part else {}
        if part and lowest[k] == owner[k]:
            way["above"] = float(above[k])
        found.append(value_of(float(clear[k]), path.points[stations[k]], why, faces=hit, **way))
    return found


def _way_out(path: PathSurvey, stations: np.ndarray, part: Sheet, view: Frame, margin: float) -> dict[str, object]:
    """By how much ('move', mm) and in which 'direction' the facets of a part leave the beam over a stretch.

    Empty where no single move across the seam clears it, or where the part reaches further than it was looked at.
    """
    width = np.asarray(path.columns.get("light_width", rib_width(path)), dtype=float)[stations]
    u = path.u[stations]
    places, across = view.local(path.points[stations]), u @ view.axes.T
    ways = clearances(places, across[:, :2], width / 2 + margin, part.corners)
    best: tuple[float, np.ndarray] | None = None
    for sign, way in zip((-1.0, 1.0), ways, strict=True):
        if not np.isfinite(way).any():
            continue
        k = int(np.nanargmax(way))
        turn = u @ u[k]
        with np.errstate(invalid="ignore", divide="ignore"):
            move = float(np.nanmax(way / turn))
        known = np.isfinite(way)
        if (turn[known] > _TURN).all() and move < _AROUND and (best is None or move < best[0]):
            best = move, sign * u[k]
    return {} if best is None else {"move": best[0], "direction": [float(c) for c in best[1]]}


def clearances(
    places: np.ndarray, across: np.ndarray, half: np.ndarray, corners: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """How far facets above a seam have to move inward, and outward, until none of them lies over the light.

    Parameters
    ----------
    places : (n, 3) mm, on the rib's top, in a view along the beam
    across : (n, 2) unit vectors from inner to outer in that view
    half : (n,) mm, half the width that is to be clear
    corners : (m, 3, 3) mm, facets in that view

    Returns
    -------
    Two arrays (n,) mm: inward and outward; NaN where nothing lies over the light.
    """
    inward, outward = np.full(len(places), np.nan), np.full(len(places), np.nan)
    for i, (place, u) in enumerate(zip(places, across, strict=True)):
        away = corners - place
        t, off = away[:, :, :2] @ u, away[:, :, :2] @ np.array([-u[1], u[0]])
        low, high = np.full(len(corners), np.inf), np.full(len(corners), -np.inf)
        least = np.full(len(corners), np.inf)
        for a, b in ((0, 1), (1, 2), (2, 0)):
            crosses = (off[:, a] < 0) != (off[:, b] < 0)
            share = np.full(len(corners), np.nan)
            share[crosses] = off[crosses, a] / (off[crosses, a] - off[crosses, b])
            at = t[:, a] + share * (t[:, b] - t[:, a])
            height = away[:, a, 2] + share * (away[:, b, 2] - away[:, a, 2])
            low, high, least = np.fmin(low, at), np.fmax(high, at), np.fmin(least, height)
        over = (high > low) & (least > _ABOVE)
        if not over.any():
            continue
        reach = _joined(low[over], high[over], float(half[i]))
        if reach is not None:
            inward[i], outward[i] = reach[1] + half[i], half[i] - reach[0]
    return inward, outward


def _joined(low: np.ndarray, high: np.ndarray, half: float) -> tuple[float, float] | None:
    """From where to where intervals (k,) that touch each other cover what lies within ``half`` of 0; None: nothing."""
    order = np.argsort(low)
    low, most = low[order], np.maximum.accumulate(high[order])
    starts = np.flatnonzero(np.append(True, low[1:] > most[:-1] + 1e-6))
    ends = np.append(starts[1:], len(low)) - 1
    runs = [(float(low[a]), float(most[b])) for a, b in zip(starts, ends, strict=True)]
    mine = [run for run in runs if run[1] > -half and run[0] < half]
    return (mine[0][0], mine[-1][1]) if mine else None


def _across(path: PathSurvey, stations: np.ndarray, view: Frame) -> np.ndarray:
    """(k * places, 3) in the view: places over the width of the beam at stations (k,)."""
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


def _over(
    path: PathSurvey, stations: np.ndarray, sheet: Sheet, view: Frame
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """(k,) part (index, -1 for none), face and height, mm, of what stands lowest over the rib at stations (k,)."""
    local = _across(path, stations, view)
    part, face, above = np.full(len(stations), -1), np.full(len(stations), -1), np.full(len(stations), np.nan)
    if not len(sheet.face):
        return part, face, above
    height, index, facet = heights_at(local, sheet.corners)
    over = height > local[index, 2] + _ABOVE
    station, height, facet = index[over] // len(_ACROSS), height[over], facet[over]
    order = np.lexsort((-height, station))  # the lowest is written last
    part[station[order]], face[station[order]] = sheet.part[facet[order]], sheet.face[facet[order]]
    above[station[order]] = (height - local[index[over], 2])[order]
    return part, face, above
