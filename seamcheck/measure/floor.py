"""The floor beside the rib on one side. Dense tables in, one number per station out."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.sections.intervals import Side
from seamcheck.sections.rows import first_true, shifted, take

LIP = 0.2 - 0.0017
"""mm that a lip rises above the trap floor (or hangs down), at least: 0.2 mm less the measuring error. No drawing has
just this number, so that a lip of one height is one along the whole seam."""

_FLAT = np.tan(np.radians(30.0))
_LEVEL = np.tan(np.radians(5.0))
_SHALLOW = 0.05  # mm below the rib top from which on a flat face can be a floor
_AS_FAR = 0.01  # mm beyond the edge that the rib has elsewhere, up to which a lowered top may reach
_ROOT = 0.5  # mm: a flat right behind a slope of less than 30 degrees still is the floor


class Floor(Struct, frozen=True, eq=False):
    """The trap floor beside the rib.

    height : (n,) mm from the floor up to the rib top; NaN where the flank has no shoulder
    foot : (n,) mm from P to where the floor begins; where there is none, where the flank ends
    index : (n,) number of the floor's first interval, or of the first one beyond the flank
    """

    height: np.ndarray
    foot: np.ndarray
    index: np.ndarray


def find_floor(
    side: Side, edge: np.ndarray, deepest: np.ndarray, missing_width: np.ndarray | float = 0.0, own: float = 0.0
) -> Floor:
    """The nearest surface beside the flank that faces the beam, root fillet left out; NaN where there is none.

    Parameters
    ----------
    edge : (n,) mm from P to the edge of the rib top on this side
    deepest : (n,) mm; a floor that lies deeper is another floor: no shoulder
    missing_width : (n,) mm beside the edge over which the rib is wider elsewhere; what lies wholly there, no deeper
        than ``own`` mm below the top, is the rib's own top, chamfered or lowered, and no floor
    """
    exists = np.isfinite(side.b)
    low = np.fmin(side.floor_a, side.floor_b)
    lowered = exists & (side.b <= (edge + missing_width)[:, None] + _AS_FAR) & (low > -own)
    beyond = exists & (side.b > edge[:, None] + 2e-5) & ~(lowered & (np.asarray(missing_width) > 0.0)[..., None])
    with np.errstate(invalid="ignore", divide="ignore"):
        slope = np.abs(side.floor_b - side.floor_a) / (side.b - side.a)
    slope = np.where(np.isfinite(slope), slope, np.inf)
    steepest = _steepest_of_face(side.floor_face, np.where(beyond, slope, 0.0))
    below = np.minimum(side.floor_a, side.floor_b) < -_SHALLOW
    flat = beyond & (slope < _FLAT) & (steepest < _FLAT) & below
    first = first_true(flat)
    level = flat & (slope < _LEVEL) & (side.a < take(side.b, first)[:, None] + _ROOT)
    better = first_true(level)
    use_level = (better >= 0) & (take(slope, first) >= _LEVEL)
    lower = take(side.floor_a, better) < take(side.floor_a, first) + 1e-6
    first = np.where(use_level & lower, better, first)
    groove = _groove(side, beyond, deepest)
    first = np.where(first < 0, groove, first)
    first_beyond = first_true(beyond)
    # every surface between flank and floor must exist, else the flank runs down without a shoulder
    columns = np.arange(side.a.shape[1])[None, :]
    between = (columns >= first_beyond[:, None]) & (columns < first[:, None])
    broken = (between & ~np.isfinite(side.floor_a)).any(axis=1)
    height = -np.where(first >= 0, take(side.floor_a, first), np.nan)
    is_groove = (first >= 0) & (first == groove) & ~take(flat, first).astype(bool)
    height = np.where(is_groove, -np.fmin(take(side.floor_a, first), take(side.floor_b, first)), height)
    none = (first < 0) | broken | ~(height <= deepest)
    foot = np.where(none, np.where(first_beyond >= 0, take(side.a, first_beyond), edge), take(side.a, first))
    sunken = first_true(beyond & ~(np.minimum(side.floor_a, side.floor_b) > -deepest[:, None]))
    index = np.where(none, np.where(sunken >= 0, sunken, first_beyond), first)
    foot = np.where(none & (sunken >= 0), take(side.a, sunken), foot)
    return Floor(np.where(none, np.nan, height), foot, index)


def _groove(side: Side, beyond: np.ndarray, deepest: np.ndarray) -> np.ndarray:
    """The lowest interval of a rounded groove: floors that sink and rise again without a flat."""
    low = np.where(beyond, np.fmin(side.floor_a, side.floor_b), np.inf)
    low = np.where(np.isfinite(low), low, np.inf)
    running = shifted(np.minimum.accumulate(low, axis=1), np.inf)
    risen = first_true(beyond & (np.fmax(side.floor_a, side.floor_b) > running + LIP) & (running < -_SHALLOW))
    columns = np.arange(low.shape[1])[None, :]
    before = np.where(columns <= risen[:, None], low, np.inf)
    lowest = np.argmin(before, axis=1)
    found = (risen >= 0) & (np.take_along_axis(before, lowest[:, None], 1)[:, 0] > -deepest)
    return np.where(found, lowest, -1)


def _steepest_of_face(face: np.ndarray, slope: np.ndarray) -> np.ndarray:
    """For every interval the largest slope that its face shows anywhere in the section."""
    number = face + 1  # of none: 0
    is_there = np.zeros(int(number.max(initial=0)) + 1, dtype=bool)
    is_there[number] = True
    place = np.cumsum(is_there)[number] - 1 + np.count_nonzero(is_there) * np.arange(len(face))[:, None]
    most = np.zeros(np.count_nonzero(is_there) * len(face))
    np.maximum.at(most, place.ravel(), np.where(np.isfinite(slope), slope, 0.0).ravel())
    return np.asarray(most[place])


def other_ribs(side: Side, floor: Floor, rib_faces: tuple[int, ...]) -> np.ndarray:
    """(n, k) bool: intervals beyond the floor's begin that belong to another rib of the seam, flanks and fillets too.

    Parameters
    ----------
    rib_faces : faces of the rib tops of the whole seam
    """
    columns = np.arange(side.a.shape[1])[None, :]
    out_there = np.isfinite(side.b) & (columns >= floor.index[:, None]) & (floor.index >= 0)[:, None]
    other = out_there & np.isin(side.floor_face, rib_faces)
    if not other.any():
        return np.asarray(other)
    with np.errstate(invalid="ignore", divide="ignore"):
        slope = np.abs(side.floor_b - side.floor_a) / (side.b - side.a)
    leaning = out_there & (_steepest_of_face(side.floor_face, np.where(out_there, slope, 0.0)) >= _FLAT)
    for column in range(1, other.shape[1]):
        other[:, column] |= other[:, column - 1] & leaning[:, column]
    for column in range(other.shape[1] - 2, -1, -1):
        other[:, column] |= other[:, column + 1] & leaning[:, column]
    return np.asarray(other)
