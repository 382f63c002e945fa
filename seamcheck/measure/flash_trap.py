"""The flash trap beside the rib on one side. Dense tables in, one number per station out."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.measure.additions import Column, Columns
from seamcheck.measure.areas import RibSide, TrapRoom
from seamcheck.measure.floor import LIP, Floor
from seamcheck.sections.integrals import Strips
from seamcheck.sections.intervals import Side
from seamcheck.sections.rows import first_true, shifted, take, value_before

SLIT = 0.5  # mm, widest slit between the cover's edge and a wall that still closes the trap
TRAP_SEARCH = 3.0  # rib widths beside the flank within which a groove may be closed by a lip
_NO_AREA = 1e-6  # mm²: of a trap that is none, because the opposite part ends with the rib
_AS_NEAR = 0.01  # mm: a lip's top is reached where the gap is within this of its smallest


class Trap(Struct, frozen=True, eq=False):
    """The flash trap on one side.

    area : (n,) mm²; lip_gap : (n,) mm, NaN where open or closed by another rib; is_open : (n,) 1.0 or 0.0, NaN without
    floor; by_rib : (n,) bool, closed by another rib of the seam, whose half of the trap is left out
    end : (n,) mm from P to the end of the trap; centre : (n,) mm from P to the area's centre
    room : the same trap at any other drop, of the n sections that it was measured of
    """

    area: np.ndarray
    lip_gap: np.ndarray
    is_open: np.ndarray
    end: np.ndarray
    by_rib: np.ndarray
    centre: np.ndarray
    room: TrapRoom

    def at(self, rows: np.ndarray) -> Trap:
        """The traps, mm² and mm, of rows (k,), numbers of some of the (n,)."""
        columns = (name for name in Trap.__struct_fields__ if name != "room")
        return replace(self, **{name: getattr(self, name)[rows] for name in columns})


def trap_columns(
    traps: Mapping[str, Trap], melt: np.ndarray, bend: np.ndarray, in_corner: Mapping[str, np.ndarray]
) -> Columns:
    """Area, openness and lip gap of both traps, and their volume over that of the melt; NaN with a reason.

    Parameters
    ----------
    melt : (n,) mm² of the melt
    bend : (n,) 1/mm, of the mid-line, positive where it bends toward the outer side
    in_corner : (n,) bool by side, where the trap leads into that of another stretch of the seam
    """
    columns: dict[str, Column] = {}
    for name, trap in traps.items():
        columns[f"trap_area_{name}"] = Column.of(trap.area, "no-shoulder")
        columns[f"trap_open_{name}"] = Column.of(trap.is_open, "no-shoulder")
        closed = np.where(trap.by_rib, "other-rib", "no-shoulder")
        columns[f"lip_gap_{name}"] = Column.of(trap.lip_gap, np.where(trap.is_open == 1.0, "no-lip", closed))
    areas = [trap.area for trap in traps.values()]
    neither = np.isnan(areas).all(axis=0)
    none = [(trap.is_open == 1.0) & (trap.area < _NO_AREA) for trap in traps.values()]
    bare = np.any(none, axis=0) & np.all(
        [mark | np.isnan(area) for mark, area in zip(none, areas, strict=True)], axis=0
    )
    with np.errstate(invalid="ignore", divide="ignore"):
        room = Column.of(np.where(neither, 0.0, np.nan_to_num(areas).sum(axis=0)) / melt, "depends")
        columns["trap_room"] = room.without(bare, "bare-sides")
        for name, trap in traps.items():
            in_turn = turned(trap.area, trap.centre, bend if name == "outer" else -bend)
            columns[f"trap_room_{name}"] = Column.of(trap.area / (melt / 2), "no-shoulder")
            columns[f"trap_corner_{name}"] = Column.of(in_turn / (melt / 2), "no-shoulder")
    return _without(columns, in_corner, "corner")


def blank_under_holes(roofless: Mapping[str, np.ndarray], traps: Columns, cover: Columns) -> Columns:
    """Where the cover has a hole over the rib, a flash trap on the side of the hole has no meaning.

    Parameters
    ----------
    roofless : (n,) bool by side, as of is_roofless
    """
    hole = cover["cover_thickness"].reasons
    for key in ("cover_thickness_min", "cover_thickness_max"):
        hole = np.where(np.isin(hole, ("hole", "no-cover")), hole, cover[key].reasons)
    is_hole = np.isin(hole, ("hole", "no-cover"))
    return _without(traps, {name: is_hole & bare for name, bare in roofless.items()}, hole)


def _without(traps: Columns, where: Mapping[str, np.ndarray], reason: str | np.ndarray) -> Columns:
    """Columns of traps, not measured where (n,) by side; what counts both sides together, where either is not."""
    either = np.any(list(where.values()), axis=0)
    return {key: column.without(where.get(key.rpartition("_")[2], either), reason) for key, column in traps.items()}


def measure_trap(
    side: Side,
    edge: np.ndarray,
    floor: Floor,
    drop: float,
    rib_width: np.ndarray,
    deepest: np.ndarray,
    other: np.ndarray,
) -> Trap:
    """Flash trap beside the rib with the opposite part lowered by drop; NaN with a reason where there is none.

    Parameters
    ----------
    drop : mm, planned collapse plus the smallest gap of the seam
    rib_width : (n,) mm
    deepest : (n,) mm; an opposite surface further above the rib top than this ends the trap as an edge does
    other : (n, k) bool, intervals of another rib of the seam: it closes the trap without a lip, and both share it
    """
    most = side.a.shape[1]
    columns = np.arange(most)[None, :]
    exists = np.isfinite(side.b)
    out_there = exists & (columns >= floor.index[:, None])
    level = -floor.height
    floor_low = np.where(out_there, np.fmin(side.floor_a, side.floor_b), np.inf)
    running = np.minimum.accumulate(np.where(np.isfinite(floor_low), floor_low, np.inf), axis=1)
    running = np.minimum(shifted(running, np.inf), level[:, None])  # of what lies before the interval
    # rise of the floor's part, fall of the roof, end of the floor, end of the roof
    rise = first_true(out_there & (np.fmax(side.floor_a, side.floor_b) >= running + LIP))
    beyond = exists & (side.b > edge[:, None])
    roof = np.where(beyond, np.fmax(side.roof_a, side.roof_b), -np.inf)
    roof_run = shifted(np.maximum.accumulate(np.where(np.isfinite(roof), roof, -np.inf), axis=1), -np.inf)
    roof_run = np.fmax(roof_run, np.where(beyond, side.roof_a, -np.inf))
    fall = first_true(out_there & (np.fmin(side.roof_a, side.roof_b) <= roof_run - LIP))
    missing_floor = out_there & ~np.isfinite(side.floor_a)
    sunk = out_there & (np.fmin(side.floor_a, side.floor_b) < level[:, None] - LIP)
    groove_closes = (
        (rise >= 0)
        & (take(side.a, rise) <= edge + TRAP_SEARCH * rib_width)
        & (np.fmax(take(side.floor_a, rise), take(side.floor_b, rise)) >= level + LIP)
    )
    floor_end = first_true(missing_floor | (sunk & ~groove_closes[:, None]))
    floor_end = np.where(groove_closes & (floor_end > rise), -1, floor_end)
    gone = np.fmax(side.roof_a, side.roof_b) > deepest[:, None]  # the inside of the housing, beyond its wall
    roof_end = first_true(out_there & (~np.isfinite(side.roof_a) | gone))
    behind = take(side.b, np.maximum(exists.sum(axis=1) - 1, 0))

    def at(index: np.ndarray) -> np.ndarray:
        return np.where(index >= 0, take(side.a, index), np.inf)

    u_rise, u_fall, u_floor, u_roof = at(rise), at(fall), at(floor_end), at(roof_end)
    by_lip = (u_rise < np.inf) & (u_rise <= u_roof) & (u_rise <= u_floor)
    by_hanging = ~by_lip & (u_fall < np.inf) & (u_fall <= u_roof) & (u_fall <= u_floor)
    by_wall = ~by_lip & ~by_hanging & (u_rise < np.inf) & (u_roof < u_floor) & (u_rise <= u_roof + SLIT)
    by_skirt = ~by_lip & ~by_hanging & ~by_wall & (u_fall < np.inf) & (u_floor <= u_roof) & (u_fall <= u_floor + SLIT)
    closed = by_lip | by_hanging | by_wall | by_skirt
    last_roof = value_before(side.roof_b, roof_end)
    last_floor = value_before(side.floor_b, floor_end)
    roof_a = np.where(np.isfinite(side.roof_a), side.roof_a, np.where(by_wall, last_roof, np.nan)[:, None])
    roof_b = np.where(np.isfinite(side.roof_b), side.roof_b, np.where(by_wall, last_roof, np.nan)[:, None])
    skirt_zone = by_skirt[:, None] & (columns >= floor_end[:, None])
    floor_a = np.where(skirt_zone, last_floor[:, None], side.floor_a)
    floor_b = np.where(skirt_zone, last_floor[:, None], side.floor_b)
    gap_a, gap_b = roof_a - floor_a, roof_b - floor_b

    start = np.where(by_lip, rise, np.where(by_hanging, fall, -1))
    lip_zone = (columns >= start[:, None]) & exists & (start >= 0)[:, None]
    lip_zone &= side.a <= (take(side.a, np.maximum(start, 0)) + 1.5)[:, None]
    opens = lip_zone & (
        np.fmin(gap_a, gap_b) > np.minimum.accumulate(np.where(lip_zone, np.fmin(gap_a, gap_b), np.inf), 1) + LIP
    )
    first_open = first_true(opens)
    lip_zone &= (first_open < 0)[:, None] | (columns < first_open[:, None])
    lip_zone &= np.isfinite(gap_a)
    nearest = np.min(np.where(lip_zone, np.fmin(gap_a, gap_b), np.inf), axis=1, initial=np.inf)
    at_a = first_true(lip_zone & (gap_a <= nearest[:, None] + _AS_NEAR))
    at_b = first_true(lip_zone & (gap_b <= nearest[:, None] + _AS_NEAR))
    bare = (by_lip | by_hanging) & np.isinf(nearest)  # nothing lies over the lip: it closes nothing
    by_lip, by_hanging, closed = by_lip & ~bare, by_hanging & ~bare, closed & ~bare
    lip_u = np.fmin(np.where(at_a >= 0, take(side.a, at_a), np.inf), np.where(at_b >= 0, take(side.b, at_b), np.inf))
    none = ~np.isfinite(floor.height)
    by_rib = by_lip & take(other, rise)
    end = np.where(
        by_lip | by_hanging,
        lip_u,
        np.where(by_wall, u_rise, np.where(by_skirt, u_fall, np.fmin(np.fmin(u_floor, u_roof), behind))),
    )
    end = np.where(none, np.nan, end)
    # a wall: out to where it reaches the lowered underside
    inside = exists & (side.a >= edge[:, None] - 2e-5) & (by_wall[:, None] | (side.a < end[:, None] - 1e-6))
    inside &= ~none[:, None]
    room = TrapRoom(
        Strips.of(side, gap_a, gap_b, inside), (by_wall[:, None] & (columns >= rise[:, None]))[inside], end,
        by_wall & ~none, np.where(none, np.nan, np.where(by_rib, 0.5, 1.0)),
    )  # fmt: skip
    end = room.end_at(drop)
    lip_gap = np.where((by_lip | by_hanging) & ~by_rib, nearest - drop, np.nan)
    lip_gap[by_wall] = end[by_wall] - u_roof[by_wall]
    lip_gap[by_skirt] = u_fall[by_skirt] - u_floor[by_skirt]
    return Trap(
        room.area(drop, end),
        np.where(none, np.nan, lip_gap),
        np.where(none, np.nan, np.where(closed, 0.0, 1.0)),
        end,
        by_rib & ~none,
        room.centre(drop, end),
        room,
    )


def rib_side(side: Side, floor: Floor) -> RibSide:
    """The rib on one side, as far as it can melt: up to the floor of its trap."""
    columns = np.arange(side.a.shape[1])[None, :]
    ends = np.where(floor.index >= 0, floor.index, side.a.shape[1])
    above = np.isfinite(side.b) & (columns < ends[:, None])
    return RibSide(Strips.of(side, side.floor_a, side.floor_b, above), len(side.a))


def is_roofless(side: Side, edge: np.ndarray) -> np.ndarray:
    """(n,) bool: whether the opposite part does not reach over what lies right beside the edge of the rib top.

    Parameters
    ----------
    edge : (n,) mm from P to the edge of the rib top on this side
    """
    beside = first_true((side.b > edge[:, None] + 2e-5) & np.isfinite(side.b))
    return np.asarray((beside < 0) | ~np.isfinite(take(side.roof_a, beside)))


def turned(area: np.ndarray, centre: np.ndarray, bend: np.ndarray) -> np.ndarray:
    """(n,) mm², trap area per length of mid-line in a corner, by the path of its centroid.

    Parameters
    ----------
    area : (n,) mm²; centre : (n,) mm from P; bend : (n,) 1/mm, positive where the line bends toward this side

    Notes
    -----
    Second theorem of Pappus and Guldinus: volume = area times the path of its centroid. Where the trap reaches
    beyond the centre of the corner nothing is left of it: 0.
    """
    return np.asarray(area * np.maximum(1.0 - np.nan_to_num(bend) * np.nan_to_num(centre), 0.0))
