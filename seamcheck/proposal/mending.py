"""Which dimensions of an existing rib have to move, and by how much: as few as possible, then as little as possible."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from itertools import combinations, product
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.proposal.design import LEAST_FLOOR, LEAST_LIP, LEAST_RISE, LEAST_TRAP

SIDES = ("inner", "outer")
MOVES = ("rib", "floor_inner", "floor_outer", "wall_inner", "wall_outer", "lip_inner", "lip_outer")
"""What can move: the rib's width (+ wider), a trap's floor (+ deeper), the wall that closes it (+ wider trap), a lip's
top (+ lower)."""

_FLOORS, _WALLS, _LIPS = ("floor_inner", "floor_outer"), ("wall_inner", "wall_outer"), ("lip_inner", "lip_outer")
MOVED_FOR = {
    "rib-width": ("rib", *_WALLS),
    "rib-height": _FLOORS,
    "slenderness": ("rib", *_FLOORS),
    "trap-room": (*_WALLS, *_FLOORS),
    "trap-side": (*_WALLS, *_FLOORS),
    "trap-corner": (*_WALLS, *_FLOORS),
    "trap-open-inner": (*_WALLS, *_FLOORS),
    "lip-gap": _LIPS,
    "sink-travel": (*_LIPS, *_FLOORS),
}
"""Rule -> the moves that are tried first; all others only where these do not help."""

RESERVE = 0.01
"""mm, or as a share where a limit is one: kept to a limit that was broken; others keep this or what they had."""

SECTION_RULES = frozenset(MOVED_FOR)
"""Rules on the section of the rib and its traps, which a move of its dimensions can mend."""

ROUNDING = 1e-9
"""mm, of sums that ought to be zero."""

_GRIDS = {1: (1.5, 0.01), 2: (1.0, 0.02), 3: (0.8, 0.1)}
"""How many dimensions move -> how far is looked, and in which steps, mm."""


class Side(Struct, frozen=True):
    """One side of an existing rib, lengths in mm from the mid-line or below the contact plane.

    Attributes
    ----------
    height : of the rib above this trap's floor
    foot : from the mid-line to the wall that closes the trap, at its floor; to the floor's edge where it is open
    end : from the mid-line to the border of the flange
    area : mm², of the trap after the collapse; its least value
    turn : the least trap area in a turn as a share of the trap's area, 1 without turns
    lip : of the lip's top below the contact plane; None where nothing closes the trap
    """

    height: float
    foot: float
    end: float
    area: float
    turn: float
    lip: float | None


class Present(Struct, frozen=True):
    """The section of an existing rib as its review measured it.

    Attributes
    ----------
    width : of the rib at the contact plane, mm; width_least and width_most along the seam
    lean : tangent of the flanks' draft
    collapse : planned, mm
    travel : free travel that other places than lips and floors leave, mm; inf where they limit nothing
    depth : of the wall below the contact plane, mm
    """

    width: float
    width_least: float
    width_most: float
    lean: float
    collapse: float
    travel: float
    depth: float
    inner: Side
    outer: Side

    def side(self, name: str) -> Side:
        return self.inner if name == "inner" else self.outer


class Bounds(Struct, frozen=True):
    """(lowest, highest) value that a column may take, each None where it has none."""

    column: str
    low: float | None
    high: float | None


def columns(present: Present, moves: Mapping[str, Any]) -> dict[str, tuple[Any, Any]]:
    """Column -> (least, largest) value along the seam after some moves.

    Parameters
    ----------
    moves : name in MOVES -> mm, numbers or arrays of one shape

    Notes
    -----
    Plane geometry of a trapezium: a floor lowered by d adds d times the trap's mean width, a wall moved by d adds
    d (h - c), a rib widened by d takes d / 2 (h - c) on each side and adds c d to the melt.
    """
    p, c = present, present.collapse
    wider = np.maximum(moves.get("rib", 0.0), 0.05 - p.width)
    melt = (p.width + wider) * c + c * c * p.lean
    found: dict[str, tuple[Any, Any]] = {"rib_width": (p.width_least + wider, p.width_most + wider)}
    heights, travels, areas = [], [p.travel], []
    for name in SIDES:
        side = p.side(name)
        height = side.height + moves.get(f"floor_{name}", 0.0)
        mean = side.area / max(side.height - c, 1e-3)
        area = side.area + mean * (height - side.height)
        area = area + (height - c) * (moves.get(f"wall_{name}", 0.0) - wider / 2.0)
        heights.append(height)
        areas.append(area)
        found[f"trap_room_{name}"] = (2.0 * area / melt,) * 2
        found[f"trap_corner_{name}"] = (2.0 * area * side.turn / melt,) * 2
        travels.append(height)
        if side.lip is not None:
            lip = side.lip + moves.get(f"lip_{name}", 0.0)
            travels.append(lip)
            found[f"lip_gap_{name}"] = (lip - c,) * 2
    lowest, highest = np.minimum(*heights), np.maximum(*heights)
    found["rib_height"] = (lowest,) * 2
    found["slenderness"] = (highest / (p.width + wider + highest * p.lean),) * 2
    found["trap_room"] = ((areas[0] + areas[1]) / melt,) * 2
    travel = travels[0]
    for other in travels[1:]:
        travel = np.minimum(travel, other)
    found["free_travel"] = (travel,) * 2
    return found


def spare(
    present: Present, bounds: Iterable[Bounds], moves: Mapping[str, Any], lip: float = LEAST_LIP
) -> tuple[list[Any], list[Any]]:
    """What remains to every bound of the rules, and of the room and moulding, after some moves; negative: broken.

    Returns
    -------
    numbers or arrays as in ``moves``, in the unit of each bound; always in the same order
    """
    values = columns(present, moves)
    left: list[Any] = []
    for bound in bounds:
        if bound.column not in values:
            continue
        least, most = values[bound.column]
        for at, sign, value in ((bound.low, 1.0, least), (bound.high, -1.0, most)):
            if at is not None and math.isfinite(at):
                left.append(sign * (value - at))
    room: list[Any] = []
    for name in SIDES:
        side, wall = present.side(name), moves.get(f"wall_{name}", 0.0)
        height = side.height + moves.get(f"floor_{name}", 0.0)
        room.append(
            side.foot - (present.width + moves.get("rib", 0.0)) / 2.0 - height * present.lean + wall - LEAST_TRAP
        )
        room.append(present.depth - height - LEAST_FLOOR)
        if side.lip is not None:
            room.append(side.end - side.foot - wall - lip)
            room.append(height - side.lip - moves.get(f"lip_{name}", 0.0) - LEAST_RISE)
    return left, room


def fewest_moves(
    present: Present, bounds: Sequence[Bounds], rules: Iterable[str], lip: float = LEAST_LIP
) -> dict[str, float] | None:
    """The moves that bring every bound in: the fewest dimensions, of those the least total way; None where none do.

    Parameters
    ----------
    bounds : of the columns that ``columns`` gives; others are left out
    rules : that are broken, keys of MOVED_FOR
    lip : mm, least width of a lip
    """
    rules_now, room_now = ([float(one) for one in part] for part in spare(present, bounds, {}, lip))
    if min(rules_now) >= -ROUNDING:
        return {}
    first = [name for name in MOVES if any(name in MOVED_FOR[rule] for rule in rules)]
    for names, reserve in product((first, list(MOVES)), (RESERVE, 0.0)):
        asked = [reserve if one < -ROUNDING else min(reserve, one) for one in rules_now]
        asked += [min(0.0, one) for one in room_now]  # what moulding asks for does not get worse
        for count in _GRIDS:
            best: tuple[float, dict[str, float]] | None = None
            for chosen in combinations(_movable(present, names), count):
                found = _least_way(present, bounds, chosen, asked, lip)
                if found is not None and (best is None or found[0] < best[0] - ROUNDING):
                    best = found
            if best is not None:
                return best[1]
    return None


def _least_way(
    present: Present, bounds: Sequence[Bounds], chosen: tuple[str, ...], asked: Sequence[float], lip: float
) -> tuple[float, dict[str, float]] | None:
    """Total way in mm, and the moves of some dimensions, on the grid of their number."""
    reach, step = _GRIDS[len(chosen)]
    axis = np.arange(-round(reach / step), round(reach / step) + 1) * step
    grid = np.meshgrid(*([axis[np.abs(axis) > ROUNDING]] * len(chosen)), indexing="ij")
    fits = np.ones(grid[0].shape, dtype=bool)
    after = spare(present, bounds, dict(zip(chosen, grid, strict=True)), lip)
    for one, need in zip((*after[0], *after[1]), asked, strict=True):
        fits &= np.asarray(one >= need - ROUNDING)
    if not fits.any():
        return None
    way = np.where(fits, np.sum(np.abs(grid), axis=0), np.inf)
    at = np.unravel_index(int(np.argmin(way)), way.shape)
    return float(way[at]), {name: round(float(g[at]), 4) for name, g in zip(chosen, grid, strict=True)}


def closed(present: Present, side: str, lip: float, depth: float) -> Present:
    """The section with a lip of its own where the trap was open.

    Parameters
    ----------
    lip : mm, width of the lip at the floor's edge
    depth : mm, of its top below the contact plane
    """
    old = present.side(side)
    new = replace(old, foot=old.foot - lip, lip=depth, area=old.area - lip * (old.height - present.collapse))
    return replace(present, inner=new) if side == "inner" else replace(present, outer=new)


def _movable(present: Present, names: Iterable[str]) -> list[str]:
    """Those of some moves whose face is there: an open trap has neither wall nor lip."""
    gone = {f"{what}_{side}" for side in SIDES if present.side(side).lip is None for what in ("wall", "lip")}
    return [name for name in names if name not in gone]
