"""What lies beside the rib on one side: floor, flash trap, lip. Dense tables in, one number per station out."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from seamcheck.sections.intervals import Side

LIP = 0.2 - 0.0017
"""mm that a lip rises above the trap floor (or hangs down), at least: 0.2 mm less the measuring error. No drawing has
just this number, so that a lip of one height is one along the whole seam."""

SLIT = 0.5  # mm, widest slit between the cover's edge and a wall that still closes the trap
TRAP_SEARCH = 3.0  # rib widths beside the flank within which a groove may be closed by a lip
_FLAT = np.tan(np.radians(30.0))
_LEVEL = np.tan(np.radians(5.0))
_SHALLOW = 0.05  # mm below the rib top from which on a flat face can be a floor
_AS_NEAR = 0.01  # mm: a lip's top is reached where the gap is within this of its smallest
_AS_FAR = 0.01  # mm beyond the edge that the rib has elsewhere, to which what was lowered may reach
_ROOT = 0.5  # mm: a flat right behind a slope of less than 30 degrees still is the floor


@dataclass(frozen=True, slots=True, eq=False)
class Floor:
    """The trap floor beside the rib.

    height : (n,) mm from the floor up to the rib top; NaN where the flank has no shoulder
    foot : (n,) mm from P to where the floor begins; where there is none, where the flank ends
    index : (n,) number of the floor's first interval, or of the first one beyond the flank
    """

    height: np.ndarray
    foot: np.ndarray
    index: np.ndarray


@dataclass(frozen=True, slots=True, eq=False)
class Trap:
    """The flash trap on one side.

    area : (n,) mm²; lip_gap : (n,) mm, NaN where open or closed by another rib; is_open : (n,) 1.0 or 0.0, NaN without
    floor; by_rib : (n,) bool, closed by another rib of the seam, whose half of the room is left out
    end : (n,) mm from P to the end of the trap; centre : (n,) mm from P to the area's centre
    """

    area: np.ndarray
    lip_gap: np.ndarray
    is_open: np.ndarray
    end: np.ndarray
    by_rib: np.ndarray
    centre: np.ndarray


def find_floor(
    side: Side, edge: np.ndarray, deepest: np.ndarray, taken_off: np.ndarray | float = 0.0, own: float = 0.0
) -> Floor:
    """The nearest surface facing the light beside the flank, root fillet left out.

    Parameters
    ----------
    edge : (n,) mm from P to the edge of the rib top on this side
    deepest : (n,) mm; a floor that lies deeper is another floor: no shoulder
    taken_off : (n,) mm beside the edge that the rib reaches further elsewhere; what lies wholly there, and no deeper
        than ``own`` mm below the top, is the rib's own top, chamfered or lowered, and no floor
    """
    exists = np.isfinite(side.b)
    low = np.fmin(side.floor_a, side.floor_b)
    lowered = exists & (side.b <= (edge + taken_off)[:, None] + _AS_FAR) & (low > -own)
    beyond = exists & (side.b > edge[:, None] + 2e-5) & ~(lowered & (np.asarray(taken_off) > 0.0)[..., None])
    with np.errstate(invalid="ignore", divide="ignore"):
        slope = np.abs(side.floor_b - side.floor_a) / (side.b - side.a)
    slope = np.where(np.isfinite(slope), slope, np.inf)
    steepest = _steepest_of_face(side.floor_face, np.where(beyond, slope, 0.0))
    below = np.minimum(side.floor_a, side.floor_b) < -_SHALLOW
    flat = beyond & (slope < _FLAT) & (steepest < _FLAT) & below
    first = _first(flat)
    level = flat & (slope < _LEVEL) & (side.a < _take(side.b, first)[:, None] + _ROOT)
    better = _first(level)
    use_level = (better >= 0) & (_take(slope, first) >= _LEVEL)
    lower = _take(side.floor_a, better) < _take(side.floor_a, first) + 1e-6
    first = np.where(use_level & lower, better, first)
    groove = _groove(side, beyond, deepest)
    first = np.where(first < 0, groove, first)
    first_beyond = _first(beyond)
    # every surface between the flank and the floor must be there, else the flank runs down without shoulder
    columns = np.arange(side.a.shape[1])[None, :]
    between = (columns >= first_beyond[:, None]) & (columns < first[:, None])
    broken = (between & ~np.isfinite(side.floor_a)).any(axis=1)
    height = -np.where(first >= 0, _take(side.floor_a, first), np.nan)
    is_groove = (first >= 0) & (first == groove) & ~_take(flat, first).astype(bool)
    height = np.where(is_groove, -np.fmin(_take(side.floor_a, first), _take(side.floor_b, first)), height)
    none = (first < 0) | broken | ~(height <= deepest)
    foot = np.where(none, np.where(first_beyond >= 0, _take(side.a, first_beyond), edge), _take(side.a, first))
    sunken = _first(beyond & ~(np.minimum(side.floor_a, side.floor_b) > -deepest[:, None]))
    index = np.where(none, np.where(sunken >= 0, sunken, first_beyond), first)
    foot = np.where(none & (sunken >= 0), _take(side.a, sunken), foot)
    return Floor(np.where(none, np.nan, height), foot, index)


def _groove(side: Side, beyond: np.ndarray, deepest: np.ndarray) -> np.ndarray:
    """The lowest interval of a rounded groove: floors that sink and rise again without a flat."""
    low = np.where(beyond, np.fmin(side.floor_a, side.floor_b), np.inf)
    low = np.where(np.isfinite(low), low, np.inf)
    running = _shifted(np.minimum.accumulate(low, axis=1), np.inf)
    risen = _first(beyond & (np.fmax(side.floor_a, side.floor_b) > running + LIP) & (running < -_SHALLOW))
    columns = np.arange(low.shape[1])[None, :]
    before = np.where(columns <= risen[:, None], low, np.inf)
    lowest = np.argmin(before, axis=1)
    found = (risen >= 0) & (np.take_along_axis(before, lowest[:, None], 1)[:, 0] > -deepest)
    return np.where(found, lowest, -1)


def _steepest_of_face(face: np.ndarray, slope: np.ndarray) -> np.ndarray:
    """For every interval the largest slope that its face shows anywhere in the section."""
    rows = np.repeat(np.arange(len(face)), face.shape[1])
    keys = rows * (int(face.max(initial=0)) + 2) + face.ravel() + 1
    _, place = np.unique(keys, return_inverse=True)
    most = np.zeros(place.max() + 1)
    np.maximum.at(most, place, np.where(np.isfinite(slope), slope, 0.0).ravel())
    return most[place].reshape(face.shape)


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


def measure_trap(
    side: Side,
    edge: np.ndarray,
    floor: Floor,
    drop: float,
    rib_width: np.ndarray,
    deepest: np.ndarray,
    other: np.ndarray,
) -> Trap:
    """Room beside the rib with the opposite part lowered by drop.

    Parameters
    ----------
    drop : mm, planned collapse plus the smallest gap of the seam
    rib_width : (n,) mm
    deepest : (n,) mm; an opposite surface further above the rib top than this ends the trap as an edge does
    other : (n, k) bool, intervals of another rib of the seam: it closes the trap without a lip, and both share the room
    """
    most = side.a.shape[1]
    columns = np.arange(most)[None, :]
    exists = np.isfinite(side.b)
    out_there = exists & (columns >= floor.index[:, None])
    level = -floor.height
    floor_low = np.where(out_there, np.fmin(side.floor_a, side.floor_b), np.inf)
    running = np.minimum.accumulate(np.where(np.isfinite(floor_low), floor_low, np.inf), axis=1)
    running = np.minimum(_shifted(running, np.inf), level[:, None])  # of what lies before the interval
    # rise of the floor's part, fall of the roof, end of the floor, end of the roof
    rise = _first(out_there & (np.fmax(side.floor_a, side.floor_b) >= running + LIP))
    beyond = exists & (side.b > edge[:, None])
    roof = np.where(beyond, np.fmax(side.roof_a, side.roof_b), -np.inf)
    roof_run = _shifted(np.maximum.accumulate(np.where(np.isfinite(roof), roof, -np.inf), axis=1), -np.inf)
    roof_run = np.fmax(roof_run, np.where(beyond, side.roof_a, -np.inf))
    fall = _first(out_there & (np.fmin(side.roof_a, side.roof_b) <= roof_run - LIP))
    missing_floor = out_there & ~np.isfinite(side.floor_a)
    sunk = out_there & (np.fmin(side.floor_a, side.floor_b) < level[:, None] - LIP)
    groove_closes = (
        (rise >= 0)
        & (_take(side.a, rise) <= edge + TRAP_SEARCH * rib_width)
        & (np.fmax(_take(side.floor_a, rise), _take(side.floor_b, rise)) >= level + LIP)
    )
    floor_end = _first(missing_floor | (sunk & ~groove_closes[:, None]))
    floor_end = np.where(groove_closes & (floor_end > rise), -1, floor_end)
    gone = np.fmax(side.roof_a, side.roof_b) > deepest[:, None]  # the inside of the housing, seen past its wall
    roof_end = _first(out_there & (~np.isfinite(side.roof_a) | gone))
    behind = _take(side.b, np.maximum(exists.sum(axis=1) - 1, 0))

    def at(index: np.ndarray) -> np.ndarray:
        return np.where(index >= 0, _take(side.a, index), np.inf)

    u_rise, u_fall, u_floor, u_roof = at(rise), at(fall), at(floor_end), at(roof_end)
    by_lip = (u_rise < np.inf) & (u_rise <= u_roof) & (u_rise <= u_floor)
    by_hanging = ~by_lip & (u_fall < np.inf) & (u_fall <= u_roof) & (u_fall <= u_floor)
    by_wall = ~by_lip & ~by_hanging & (u_rise < np.inf) & (u_roof < u_floor) & (u_rise <= u_roof + SLIT)
    by_skirt = ~by_lip & ~by_hanging & ~by_wall & (u_fall < np.inf) & (u_floor <= u_roof) & (u_fall <= u_floor + SLIT)
    closed = by_lip | by_hanging | by_wall | by_skirt
    last_roof = _before(side.roof_b, roof_end)
    last_floor = _before(side.floor_b, floor_end)
    roof_a = np.where(np.isfinite(side.roof_a), side.roof_a, np.where(by_wall, last_roof, np.nan)[:, None]) - drop
    roof_b = np.where(np.isfinite(side.roof_b), side.roof_b, np.where(by_wall, last_roof, np.nan)[:, None]) - drop
    skirt_zone = by_skirt[:, None] & (columns >= floor_end[:, None])
    floor_a = np.where(skirt_zone, last_floor[:, None], side.floor_a)
    floor_b = np.where(skirt_zone, last_floor[:, None], side.floor_b)
    gap_a, gap_b = roof_a - floor_a, roof_b - floor_b

    start = np.where(by_lip, rise, np.where(by_hanging, fall, -1))
    lip_zone = (columns >= start[:, None]) & exists & (start >= 0)[:, None]
    lip_zone &= side.a <= (_take(side.a, np.maximum(start, 0)) + 1.5)[:, None]
    opens = lip_zone & (
        np.fmin(gap_a, gap_b) > np.minimum.accumulate(np.where(lip_zone, np.fmin(gap_a, gap_b), np.inf), 1) + LIP
    )
    first_open = _first(opens)
    lip_zone &= (first_open < 0)[:, None] | (columns < first_open[:, None])
    lip_zone &= np.isfinite(gap_a)
    nearest = np.min(np.where(lip_zone, np.fmin(gap_a, gap_b), np.inf), axis=1, initial=np.inf)
    at_a = _first(lip_zone & (gap_a <= nearest[:, None] + _AS_NEAR))
    at_b = _first(lip_zone & (gap_b <= nearest[:, None] + _AS_NEAR))
    bare = (by_lip | by_hanging) & np.isinf(nearest)  # nothing lies over the lip: it closes nothing
    by_lip, by_hanging, closed = by_lip & ~bare, by_hanging & ~bare, closed & ~bare
    lip_u = np.fmin(np.where(at_a >= 0, _take(side.a, at_a), np.inf), np.where(at_b >= 0, _take(side.b, at_b), np.inf))
    # a wall: out to where it reaches the lowered underside
    wall_zone = by_wall[:, None] & (columns >= rise[:, None]) & exists
    reached = _first(wall_zone & (gap_b <= 1e-6))
    reached_at_once = _first(wall_zone & (gap_a <= 1e-6))
    wall_u = np.where(
        (reached_at_once >= 0) & ((reached < 0) | (reached_at_once <= reached)),
        _take(side.a, np.maximum(reached_at_once, 0)),
        _crossing(side, gap_a, gap_b, reached),
    )
    wall_u = np.where(by_wall & (reached < 0) & (reached_at_once < 0), u_rise, wall_u)
    end = np.where(
        by_lip | by_hanging,
        lip_u,
        np.where(by_wall, wall_u, np.where(by_skirt, u_fall, np.fmin(np.fmin(u_floor, u_roof), behind))),
    )
    by_rib = by_lip & _take(other, rise)
    lip_gap = np.where((by_lip | by_hanging) & ~by_rib, nearest, np.nan)
    lip_gap[by_wall] = wall_u[by_wall] - u_roof[by_wall]
    lip_gap[by_skirt] = u_fall[by_skirt] - u_floor[by_skirt]
    inside = exists & (side.a >= edge[:, None] - 2e-5) & (side.a < end[:, None] - 1e-6)
    whole, centre = positive_area(side, gap_a, gap_b, inside), centre_of_area(side, gap_a, gap_b, inside)
    area = whole * np.where(by_rib, 0.5, 1.0)
    none = ~np.isfinite(floor.height)
    return Trap(
        np.where(none, np.nan, area),
        np.where(none, np.nan, lip_gap),
        np.where(none, np.nan, np.where(closed, 0.0, 1.0)),
        np.where(none, np.nan, end),
        by_rib & ~none,
        np.where(none, np.nan, centre),
    )


def is_roofless(side: Side, edge: np.ndarray) -> np.ndarray:
    """(n,) bool: whether nothing of the opposite part lies over what comes right beside the edge of the rib top.

    Parameters
    ----------
    edge : (n,) mm from P to the edge of the rib top on this side
    """
    beside = _first((side.b > edge[:, None] + 2e-5) & np.isfinite(side.b))
    return np.asarray((beside < 0) | ~np.isfinite(_take(side.roof_a, beside)))


def positive_area(side: Side, value_a: np.ndarray, value_b: np.ndarray, inside: np.ndarray) -> np.ndarray:
    """(n,) mm²: integral over u of the positive part of a function given at both ends of every interval."""
    run = np.where(inside, side.b - side.a, 0.0)
    low, high = np.fmin(value_a, value_b), np.fmax(value_a, value_b)
    with np.errstate(invalid="ignore", divide="ignore"):
        part = np.where(low >= 0, (low + high) / 2, np.where(high > 0, high**2 / (2 * (high - low)), 0.0))
    return np.asarray(np.nansum(np.where(inside & np.isfinite(part), part, 0.0) * np.nan_to_num(run), axis=1))


def centre_of_area(side: Side, value_a: np.ndarray, value_b: np.ndarray, inside: np.ndarray) -> np.ndarray:
    """(n,) mm from P: middle along u of the area of positive_area; NaN where there is none."""
    with np.errstate(invalid="ignore", divide="ignore"):
        zero = value_a / (value_a - value_b)  # share of the interval at which the function crosses 0
        start = np.where((value_a < 0) & (value_b > 0), zero, 0.0)
        end = np.where((value_a > 0) & (value_b < 0), zero, 1.0)
        f, g = np.maximum(value_a, 0.0), np.maximum(value_b, 0.0)
        run = (end - start) * (side.b - side.a)
        part = run * (f + g) / 2
        place = side.a + start * (side.b - side.a) + run * np.where(f + g > 0, (f + 2 * g) / (3 * (f + g)), 0.0)
        keep = inside & np.isfinite(part)
        total = np.where(keep, part, 0.0).sum(axis=1)
        return np.asarray(np.where(keep, part * place, 0.0).sum(axis=1) / np.where(total > 0, total, np.nan))


def turned(area: np.ndarray, centre: np.ndarray, bend: np.ndarray) -> np.ndarray:
    """Room per length of mid-line that a section has in a turn, mm²: by the way of its centre of area.

    Parameters
    ----------
    area : (n,) mm²; centre : (n,) mm from P; bend : (n,) 1/mm, positive where the line turns toward this side

    Notes
    -----
    Second theorem of Pappus and Guldinus: volume = area times the way of its centre. Where the trap reaches
    beyond the centre of the turn nothing is left of it: 0.
    """
    return np.asarray(area * np.maximum(1.0 - np.nan_to_num(bend) * np.nan_to_num(centre), 0.0))


def _crossing(side: Side, value_a: np.ndarray, value_b: np.ndarray, index: np.ndarray) -> np.ndarray:
    """Where a function that is positive at a reaches zero before b, in the given interval."""
    i = np.maximum(index, 0)
    a, b = _take(side.a, i), _take(side.b, i)
    fa, fb = _take(value_a, i), _take(value_b, i)
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.where(index >= 0, a + (b - a) * np.clip(fa / (fa - fb), 0, 1), np.nan)


def _before(values: np.ndarray, index: np.ndarray) -> np.ndarray:
    """Value of the interval before the given one; NaN where there is none."""
    known = index > 0
    return np.where(known, _take(values, np.maximum(index - 1, 0)), np.nan)


def _shifted(values: np.ndarray, first: float) -> np.ndarray:
    """Every column one place further out; the first column gets the given value."""
    out = np.full_like(values, first)
    out[:, 1:] = values[:, :-1]
    return out


def _first(mask: np.ndarray) -> np.ndarray:
    """(n,) number of the first true column in each row, -1 where none is."""
    return np.where(mask.any(axis=1), np.argmax(mask, axis=1), -1)


def _take(values: np.ndarray, index: np.ndarray) -> np.ndarray:
    """(n,) one column per row; index -1 takes the first (mask it yourself)."""
    return np.take_along_axis(values, np.maximum(index, 0)[:, None], axis=1)[:, 0]
