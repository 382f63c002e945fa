"""Light from a scanner at every station: angle, offset, path through the cover, and what shades the rib.

Stations are independent of each other. Between the source and the cover's top every facet of every part can stand in
the way.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.say import say
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.measure.additions import Additions, Column, Value, value_of
from seamcheck.measure.beam_path import Source, Top, aim, enter, is_on_top, light_width, lighting
from seamcheck.measure.material.optics import cover_shift, spot_stretch
from seamcheck.measure.obstacles import Obstacles
from seamcheck.measure.table import PathSurvey, Shade, Survey
from seamcheck.sections.face_gaps import Sheet
from seamcheck.settings.tables import Light

_ACROSS = (-0.998, 0.0, 0.998)  # of half the beam's width: where it must arrive
_RIM = 8  # rays round the cone
_FURTHEST, _STEP = 6.0, 0.005  # mm: how far aside a part is moved at most, and how closely its way is looked for
_TURN = 0.7  # cosine of the turn of a seam beyond which one move of a part does not clear both ends of its shadow


def light(joint: Joint, contour: Contour, survey: Survey, given: Light) -> Additions:
    """Values of the interface, columns and shade of every path.

    Without a scanner there are no columns: the angle is not evaluated, and nothing is guessed.
    """
    scanner = given.scanner
    if scanner is None:
        return Additions({"beam_angle": value_of(None, why="no-scanner")})
    view = joint.view
    lit, tops, source = lighting(joint, contour, survey, scanner, view)
    columns, dark = {}, {}
    worst, largest = value_of(None, why="no-cover"), value_of(None, why="no-cover")
    places: list[Value] = []
    obstacles = Obstacles(joint, view)
    for path in survey.paths:
        found = _chief(path, tops[path.id], source, joint, given.index)
        share, blockers, dark[path.id] = _clear(path, tops[path.id], source, joint, given, lit, view, obstacles)
        found["light_clear"] = share
        columns[path.id] = {key: Column.of(values, "no-cover") for key, values in found.items()}
        if np.isfinite(share).any():
            i = int(np.nanargmin(share))
            if worst["value"] is None or share[i] < worst["value"]:
                worst = _shadow(path, share, blockers, i, joint)
            for place, stations in _shadows(path, share, blockers, joint):
                moved = _Moved.of(path, stations, tops[path.id], source, joint, given, obstacles)
                part = obstacles.ids.index(place["faces"][0]["part"])
                places.append(place | moved.way_out(path.u[stations], part))
            k = int(np.nanargmax(found["beam_angle"]))
            if largest["value"] is None or found["beam_angle"][k] > largest["value"]:
                largest = value_of(float(found["beam_angle"][k]), path.points[k])
    values = {"beam_angle": largest, "light_clear": worst | ({"places": places} if places else {})}
    return Additions(values, columns, dark)


def _shadow(
    path: PathSurvey, share: np.ndarray, blockers: Sequence[tuple[str, int] | None], i: int, joint: Joint
) -> Value:
    """What is in the beam path at one station."""
    blocker = blockers[i]
    faces = [] if blocker is None else [{"part": blocker[0], "face": blocker[1]}]
    return value_of(float(share[i]), path.points[i], _who(blocker, joint), faces=faces)


def _shadows(
    path: PathSurvey, share: np.ndarray, blockers: Sequence[tuple[str, int] | None], joint: Joint
) -> Iterator[tuple[Value, np.ndarray]]:
    """The darkest station of every stretch that one part shades, in order along the path, and the stretch's (k,)."""
    owner = np.array([b[0] if b is not None and v < 1.0 else "" for b, v in zip(blockers, share, strict=True)])
    starts = np.flatnonzero(np.append(True, owner[1:] != owner[:-1]))
    for a, b in zip(starts, np.append(starts[1:], len(owner)), strict=True):
        if owner[a]:
            yield _shadow(path, share, blockers, int(a + np.nanargmin(share[a:b])), joint), np.arange(a, b)


class _Moved(Struct, frozen=True, eq=False):
    """Rays from a stretch of the cover's top to the source, among obstacles of which one part is moved aside.

    start, out : (n, 3) in the view; reach : (n,) mm
    """

    start: np.ndarray
    out: np.ndarray
    reach: np.ndarray
    obstacles: Obstacles

    @staticmethod
    def of(
        path: PathSurvey, stations: np.ndarray, top: Top, source: Source, joint: Joint, given: Light,
        obstacles: Obstacles,
    ) -> _Moved:  # fmt: skip
        """Rays that must be free at stations (k,): of the light with its margin, the beam's cone included."""
        width = light_width(path, top, source, joint, given)
        known = stations[np.isfinite(top.normal[stations, 0]) & np.isfinite(width[stations])]
        here, view = Top(top.place[known], top.normal[known]), obstacles.view
        start, out = [], []
        for across in _ACROSS:
            targets = path.points[known] + (across * (width[known] / 2 + given.margin))[:, None] * path.u[known]
            chief, _, _ = aim(targets, here, source, given.index)
            for ray in _cone(chief, np.radians(0.0 if given.scanner is None else given.scanner.half_angle)):
                entry, _ = enter(targets, here, ray, given.index)
                sound = np.isfinite(entry).all(axis=1)
                start.append(entry[sound])
                out.append(-ray[sound])
        begin = np.concatenate(start)
        reach = np.full(len(begin), np.inf)
        if source.pivot is not None:
            reach = np.linalg.norm(source.pivot - begin, axis=1)
        return _Moved(view.local(begin), np.concatenate(out) @ view.axes.T, reach, obstacles)

    def way_out(self, u: np.ndarray, part: int) -> dict[str, object]:
        """By how much ('move', mm) and in which 'direction' a part (index) clears all rays of a stretch.

        Along the mean of u (k, 3) or against it, whichever is shorter; empty where no way of _FURTHEST does, or where
        the seam turns too far for one move.
        """
        mean = u.mean(axis=0)
        mean = mean / max(float(np.linalg.norm(mean)), 1e-9)
        if (u @ mean < _TURN).any():
            return {}
        best: tuple[float, np.ndarray] | None = None
        for way in (-mean, mean):
            low, high = 0.0, _FURTHEST if best is None else best[0]
            if self._is_hit(part, high * way):
                continue
            while high - low > _STEP:  # blocked at low, free at high
                middle = (low + high) / 2
                low, high = (middle, high) if self._is_hit(part, middle * way) else (low, middle)
            best = high, way
        return {} if best is None else {"move": best[0], "direction": [float(c) for c in best[1]]}

    def _is_hit(self, part: int, by: np.ndarray) -> bool:
        """Whether a ray meets a part that is moved by (3,) mm in the model's coordinates."""
        hit, _, _ = self.obstacles.first(self.start - by @ self.obstacles.view.axes.T, self.out, self.reach)
        return bool((hit == part).any())


def _chief(path: PathSurvey, top: Top, source: Source, joint: Joint, index: float) -> dict[str, np.ndarray]:
    with np.errstate(invalid="ignore"):
        ray, incidence, way = aim(path.points, top, source, index)
        depth = ((top.place - path.points) * top.normal).sum(axis=1)
        return {
            "beam_angle": np.degrees(incidence),
            "spot_offset": cover_shift(incidence, depth, index),
            "spot_stretch": spot_stretch(incidence),
            "path_in_cover": way,
            "light_lean": np.degrees(np.arctan2(-(ray * path.u).sum(axis=1), ray @ joint.beam)),
        }


def _clear(
    path: PathSurvey, top: Top, source: Source, joint: Joint, given: Light, lit: Sheet, view: Frame,
    obstacles: Obstacles,
) -> tuple[np.ndarray, list[tuple[str, int] | None], Shade]:  # fmt: skip
    """Share of the rays that arrive at every station, one face that stands in the way of others, and the shade."""
    n, half_angle = len(path.s), 0.0 if given.scanner is None else given.scanner.half_angle
    width = light_width(path, top, source, joint, given)
    total, arrived = np.zeros(n), np.zeros(n)
    blocker: list[tuple[str, int] | None] = [None] * n
    known = np.flatnonzero(np.isfinite(top.normal[:, 0]) & np.isfinite(width))
    here = Top(top.place[known], top.normal[known])
    strips = []
    for third, across in enumerate(_ACROSS):
        rays, clear = 0, np.zeros(len(known))
        hit, stopper = np.full((len(known), 3), np.nan), np.full(len(known), "", dtype=object)
        targets = path.points[known] + (across * width[known] / 2)[:, None] * path.u[known]
        chief, _, _ = aim(targets, here, source, given.index)
        for ray in _cone(chief, np.radians(half_angle)):
            entry, _ = enter(targets, here, ray, given.index)
            sound = np.isfinite(entry).all(axis=1)
            blocked = np.ones(len(known), dtype=bool)
            reach = np.full(len(known), np.inf)
            if source.pivot is not None:
                reach = np.linalg.norm(source.pivot - entry, axis=1)
            on_top = is_on_top(view.local(entry[sound]), lit)
            part, face, far = obstacles.first(view.local(entry[sound]), -ray[sound] @ view.axes.T, reach[sound])
            blocked[sound] = ~on_top | (part >= 0)
            for i, p, f in zip(known[sound][part >= 0], part[part >= 0], face[part >= 0], strict=True):
                blocker[i] = blocker[i] or (obstacles.ids[p], int(f))
            new = (part >= 0) & (stopper[sound] == "")
            rows = np.flatnonzero(sound)[new]
            hit[rows] = entry[rows] - far[new, None] * ray[rows]
            stopper[rows] = [obstacles.ids[p] for p in part[new]]
            total[known] += 1
            arrived[known] += ~blocked
            rays, clear = rays + 1, clear + ~blocked
        ends = width[known] * ((third - 1.5) / 3), width[known] * ((third - 0.5) / 3)
        strips.append(_dark(path, known, ends, clear / rays, hit, stopper, joint.beam))
    with np.errstate(invalid="ignore", divide="ignore"):
        return arrived / total, blocker, strips[0].joined(strips[1]).joined(strips[2])


def _dark(
    path: PathSurvey, stations: np.ndarray, ends: tuple[np.ndarray, np.ndarray], share: np.ndarray, hit: np.ndarray,
    part: np.ndarray, beam: np.ndarray,
) -> Shade:  # fmt: skip
    """Strips at stations (k,) with rays missing; hit (k, 3) in the model's coordinates, turned into the section's."""
    away = hit - path.points[stations]
    u = path.u[stations]
    place = np.column_stack([(away * u).sum(axis=1), -away @ beam, (away * np.cross(beam, u)).sum(axis=1)])
    dim = np.flatnonzero(share < 1.0 - 1e-9)
    low, high = ends
    return Shade(stations[dim], low[dim], high[dim], share[dim], place[dim], part[dim], np.ones(len(dim), dtype=bool))


def _cone(chief: np.ndarray, half_angle: float) -> list[np.ndarray]:
    """The middle ray and, for a cone, rays round its rim; each (n, 3) unit."""
    if half_angle <= 0:
        return [chief]
    seed = np.where(np.abs(chief[:, :1]) < 0.9, [[1.0, 0.0, 0.0]], [[0.0, 1.0, 0.0]])
    x = np.cross(chief, seed)
    x /= np.linalg.norm(x, axis=1, keepdims=True)
    y = np.cross(chief, x)
    angles = 2 * np.pi * np.arange(_RIM) / _RIM
    rim = [np.cos(half_angle) * chief + np.sin(half_angle) * (np.cos(a) * x + np.sin(a) * y) for a in angles]
    return [chief, *rim]


def _who(blocker: tuple[str, int] | None, joint: Joint) -> str:
    if blocker is None:
        return ""
    return say("place.light", part=f"'{joint.parts[blocker[0]].name or blocker[0]}'")
