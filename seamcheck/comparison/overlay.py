"""The sections of two reviews at the same places, brought over each other, for pictures.

Outlines and stations are those of the documents' part "view"; nothing is measured on them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.comparison.align import JointPair, align
from seamcheck.comparison.along import changes_of
from seamcheck.comparison.motion import find_motion
from seamcheck.comparison.paths import SeamPath, seam_paths
from seamcheck.comparison.rigid import Rigid
from seamcheck.document.view import SectionSet, unpack_view
from seamcheck.report.plan import sections_of

Document = Mapping[str, Any]

MOST = 150
"""So many places of a path are shown, and those where a quantity changed most."""


class Place(Struct, frozen=True, eq=False):
    """One place of the new seam and its counterpart on the old one.

    Attributes
    ----------
    s, old_s : mm along the new and the old path
    new, old : segments (m, 4) mm and owners (m,) of both sections, in the new station's frame: its point at the
        origin, u to the outer side, v against the beam
    """

    s: float
    old_s: float
    new: tuple[np.ndarray, np.ndarray]
    old: tuple[np.ndarray, np.ndarray]


class Overlay(Struct, frozen=True, eq=False):
    """The places of one path of the new seam; ``worst`` is the one where most changed."""

    joint: str
    contour: str
    places: tuple[Place, ...]
    worst: int


def overlays(old: Document, new: Document) -> tuple[Overlay, ...]:
    """Both sections along every path that both models have; none where a document carries no outlines."""
    if not old.get("view") or not new.get("view"):
        return ()
    before, after = seam_paths(old), seam_paths(new)
    motion = find_motion(old, new, before, after).motion
    before = tuple(path.moved(motion) for path in before)
    old_sections, new_sections = unpack_view(old["view"])[0], unpack_view(new["view"])[0]
    found = []
    for pair in align(old, new, before, after).pairs:
        for k, path in enumerate(pair.after):
            overlay = _of_path(pair, k, path, motion, old_sections, new_sections)
            if overlay is not None:
                found.append(overlay)
    return tuple(found)


def _of_path(
    pair: JointPair, k: int, path: SeamPath, motion: Rigid,
    old_sections: tuple[SectionSet, ...], new_sections: tuple[SectionSet, ...],
) -> Overlay | None:  # fmt: skip
    own = sections_of(new_sections, pair.new["id"], path.id)
    feet = pair.onto_old[k]
    if own is None or not feet.found.any():
        return None
    known = {int(i) for i in own.stations if feet.found[i]}
    changes = [change for change in changes_of(pair) if change.path.id == path.id]
    wanted = _spread(sorted(known), [change.s for change in changes], path.s)
    places = []
    for i in wanted:
        other = pair.before[int(feet.path[i])]
        there = sections_of(old_sections, pair.old["id"], other.id)
        now = own.at(i)
        j = None if there is None else _nearest(there.stations, int(feet.station[i]))
        was = None if there is None or j is None else there.at(j)
        if now is None or was is None or j is None:
            continue
        moved = _into(was[0], other, j, path, i, motion, pair)
        places.append(Place(float(path.s[i]), float(other.s[j]), now, (moved, was[1])))
    if not places:
        return None
    largest = max(changes, key=lambda change: abs(change.by or 0.0), default=None)
    at = 0.0 if largest is None else float(largest.s)
    return Overlay(pair.new["id"], path.id, tuple(places), int(np.argmin([abs(place.s - at) for place in places])))


def _spread(known: Sequence[int], marked: Sequence[float], s: np.ndarray) -> list[int]:
    """At most MOST of the stations, evenly, and those nearest to the marked arc lengths."""
    if not known:
        return []
    step = max(1, -(-len(known) // MOST))
    near = {known[int(np.argmin(np.abs(s[list(known)] - at)))] for at in marked}
    return sorted({*known[::step], *near})


def _nearest(stations: np.ndarray, station: int) -> int | None:
    """The station with a section nearest to one, at most two stations away."""
    if not len(stations):
        return None
    best = int(stations[np.argmin(np.abs(stations - station))])
    return best if abs(best - station) <= 2 else None


def _into(
    segments: np.ndarray, old: SeamPath, j: int, new: SeamPath, i: int, motion: Rigid, pair: JointPair
) -> np.ndarray:
    """Segments (m, 4) of an old section, in the frame of a new station; ``old`` is moved into the new model."""
    light_then = motion.vectors(np.asarray(pair.old["beam"], dtype=float))
    light_now = np.asarray(pair.new["beam"], dtype=float)
    ends = np.asarray(segments, dtype=float).reshape(-1, 2)
    world = old.points[j] + ends[:, :1] * old.u[j] - ends[:, 1:] * light_then
    away = world - new.points[i]
    return np.column_stack([away @ new.u[i], -(away @ light_now)]).reshape(-1, 4)
