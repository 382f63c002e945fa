"""What matters where paths of the seam meet: whether the rib melts through there, and where its melt goes."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.catalogue.kinds import WELD_RIB
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.heights import heights_at, highest_at
from seamcheck.measure.additions import Additions, Value, value_of
from seamcheck.measure.corridor import rib_region
from seamcheck.measure.meaning import JUNCTION
from seamcheck.measure.table import Survey
from seamcheck.sections.face_gaps import FaceList

ROOM = 2.0
"""Rib widths round a junction within which melt and room for it are added up: a trap reaches little further."""
_STEPS = 40  # places looked at from the junction to the border of that
_DEEPEST = 4.0  # rib widths that a floor may lie below the rib's top and still be that of a trap
_ABOVE = 1.0  # mm by which the opposite part may be drawn into the rib
_FLANK = 0.5  # rib widths beside the rib's top in which its flanks melt with it


def junction_values(joint: Joint, contour: Contour, survey: Survey, collapse: float) -> Additions:
    """The values 'junction_gap' and 'junction_room' of the worst junction, a place for each; nothing without any.

    Parameters
    ----------
    collapse : mm

    Notes
    -----
    With the cover lowered by the collapse from initial contact, g is what is left between both parts along the beam,
    negative where the rib has melted. Volumes are sums over a square grid of places, within ROOM rib widths. Where no
    floor lies beside the rib (a plain wall) there is no room to measure: None with the reason 'no-shoulder'.
    """
    if not contour.junctions:
        return Additions({})
    view, up, width = joint.view, joint.up, contour.rib_width
    top = rib_region(joint, view)
    lowered = survey.initial_contact + collapse
    gaps: list[Value] = []
    rooms: list[Value] = []
    for name in sorted(contour.junctions):
        at = joint.frame.world(contour.junctions[name])
        centre = view.local(at)
        spread = ROOM * width * (np.arange(-_STEPS, _STEPS) + 0.5) / _STEPS  # off the borders of what is drawn square
        grid = np.stack(np.meshgrid(spread, spread), axis=-1).reshape(-1, 2)
        away = np.linalg.norm(grid, axis=1)
        places, away = (x[away < ROOM * width] for x in (centre[:2] + grid, away))
        own, left = _between(joint, places, centre, up)
        left = left - lowered
        is_top = shapely.contains_xy(top, places)
        known = is_top & np.isfinite(left) & (away < JUNCTION * width)
        gap = float(left[known].max() + collapse) if known.any() else None
        gaps.append(value_of(gap, at, "" if known.any() else "broken-geometry", junction=name))
        near = shapely.contains_xy(top.buffer(_FLANK * width), places)
        melt = float(-left[near & (left < 0)].sum())
        floor = np.isfinite(left) & (left > 0) & (own > up * centre[2] - _DEEPEST * width)
        room = float(left[floor & ~is_top].sum())
        has_traps = joint.kind == WELD_RIB and floor.any() and melt > 0
        rooms.append(
            value_of(room / melt if has_traps else None, at, "" if has_traps else "no-shoulder", junction=name)
        )
    gaps.sort(key=lambda place: -np.inf if place["value"] is None else -place["value"])
    rooms.sort(key=lambda place: np.inf if place["value"] is None else place["value"])
    return Additions({"junction_gap": {**gaps[0], "places": gaps}, "junction_room": {**rooms[0], "places": rooms}})


def _between(joint: Joint, places: np.ndarray, centre: np.ndarray, up: float) -> tuple[np.ndarray, np.ndarray]:
    """(n,) mm twice: height of the part with the rib toward the other one, -inf without; and the gap to that part,
    inf without, both along the beam at places (n, 2) of the view."""
    low, high = places.min(axis=0), places.max(axis=0)
    zone = np.array([*low, -np.inf, *high, np.inf])
    where = shapely.box(*low, *high)
    parts = joint.rib_part, joint.counter_part
    sheets = [
        FaceList.of({part: joint.bodies[part]}, joint.view, sense, zone).facets(joint.view, sense, where)
        for part, sense in zip(parts, (up, -up), strict=True)
    ]
    own = up * sheets[0].corners[..., 2]
    own = highest_at(places, np.dstack([sheets[0].corners[..., :2], own[..., None]]))
    height, index, _ = heights_at(places, sheets[1].corners)
    height = up * height
    over = height > np.maximum(own[index], up * centre[2] - _ABOVE) - _ABOVE
    roof = np.full(len(places), np.inf)
    np.minimum.at(roof, index[over], height[over])
    return own, np.where(np.isfinite(own), roof - np.where(np.isfinite(own), own, 0.0), np.inf)
