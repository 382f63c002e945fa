"""Cells over one half of the section: cover, rib and wall, symmetric about the rib's middle."""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from scipy import sparse


class Body(Struct, frozen=True):
    """What one part is made of, in W, J, mm, K.

    conductivity : W/(mm·K); heat : J/(mm³·K), density times specific heat
    latent : J/mm³ at ``melting``; 0 for an amorphous polymer
    """

    conductivity: float
    heat: float
    latent: float = 0.0


class Section(Struct, frozen=True):
    """The section of the seam, all mm.

    width, height : of the rib
    wall : width of what carries the rib, at least ``width``
    depth : how far that reaches below the rib
    cover : thickness of the cover; cover_width : how wide it is there
    """

    width: float
    height: float
    wall: float
    depth: float
    cover: float
    cover_width: float


class Surroundings(Struct, frozen=True):
    """Heat that leaves the section, W/(mm²·K): from free surfaces, from the cover's top, from below the wall."""

    free: float = 0.0
    top: float = 0.0
    bottom: float = 0.0


class Grid(Struct, frozen=True, eq=False):
    """The cells that hold material; every array over them, (n,).

    area : mm²; heat, latent : J/mm³; x, y : mm of the middle, y upward from the rib's top as drawn
    conduction : (n, n) W/(mm·K) between cells; loss : (n,) W/(mm·K) to the surroundings
    rows : row of each cell, counted from below; column : from the middle outward
    in_base : cells of the part with the rib
    columns : how many columns the rib has; row_height : (rows,) mm; column_width : (columns,) mm
    interface : (base cells, cover cells) that touch, from the middle outward; second, top : the cover's next row
        over them, and its uppermost
    """

    area: np.ndarray
    heat: np.ndarray
    latent: np.ndarray
    x: np.ndarray
    y: np.ndarray
    conduction: sparse.csc_matrix
    loss: np.ndarray
    rows: np.ndarray
    column: np.ndarray
    in_base: np.ndarray
    columns: int
    row_height: np.ndarray
    column_width: np.ndarray
    interface: tuple[np.ndarray, np.ndarray]
    second: np.ndarray
    top: np.ndarray


_GROWTH = 1.2  # of neighbouring cells: 1.35 starts a weld 6 % too early, see docs/trust.md
_TO_EDGE = 1.4  # of the rib's columns toward its edge, where heat turns sideways into the cover


def graded(length: float, first: float, growth: float = _GROWTH) -> np.ndarray:
    """(n,) mm, sizes of cells that begin with about ``first``, grow by the factor ``growth`` and fill ``length``."""
    count = max(1, round(np.log1p(length / first * (growth - 1.0)) / np.log(growth)))
    sizes = growth ** np.arange(count)
    return np.asarray(sizes * (length / sizes.sum()))


def lines(section: Section, fine: float, removable: float, columns: int) -> tuple[np.ndarray, np.ndarray, int]:
    """Widths of the columns (n,) mm, heights of the rows from below (m,) mm, and how many of the rows are the base's.

    fine : mm, height of the rows that the rib loses while it collapses, and beside the interface
    removable : mm of rib that are cut into such rows
    columns : over half the rib, the narrower the nearer to its edge
    """
    half = section.width / 2.0
    wide = max(section.wall, section.cover_width) / 2.0
    sizes = _TO_EDGE ** np.arange(columns)[::-1]
    across = half * sizes / sizes.sum()
    if wide > half:
        edges = sorted({e for e in (section.wall / 2.0 - half, section.cover_width / 2.0 - half) if e > 1e-9})
        start, first = 0.0, float(across[-1])
        for edge in edges:
            part = graded(edge - start, first)
            across, start, first = np.append(across, part), edge, float(part[-1])
    count = max(1, round(min(removable, 0.9 * section.height) / fine))
    peel = np.full(count, min(removable, 0.9 * section.height) / count)
    rest = graded(section.height - peel.sum(), fine)
    below = graded(section.depth, float(rest[-1]))
    down = np.concatenate([peel, rest, below])
    up = graded(section.cover, fine)
    return across, np.concatenate([down[::-1], up]), len(down)


def make_grid(
    section: Section,
    base: Body,
    cover: Body,
    around: Surroundings,
    across: np.ndarray,
    upward: np.ndarray,
    base_rows: int,
    removed: int = 0,
) -> Grid:
    """Cells of a section whose rib has lost its uppermost ``removed`` rows; above what is left lie the cover's rows.

    across : (n,) mm, widths of the columns; upward : (m,) mm, heights of the rows from below
    """
    keep = np.ones(len(upward), dtype=bool)
    keep[base_rows - removed : base_rows] = False
    upward = upward[keep]
    top_of_base = base_rows - removed
    x = np.cumsum(across) - across / 2.0
    y = np.cumsum(upward) - upward / 2.0
    y = y - upward[:top_of_base].sum()
    rib_left = section.height - (0.0 if not removed else section.height + section.depth - upward[:top_of_base].sum())
    is_base = np.arange(len(upward)) < top_of_base
    in_rib = is_base & (y > -rib_left)
    half, wall, wide = section.width / 2.0, section.wall / 2.0, section.cover_width / 2.0
    reach = np.where(is_base, np.where(in_rib, half, wall), wide)
    solid = x[:, None] < reach[None, :]
    number = np.full(solid.shape, -1)
    number[solid] = np.arange(solid.sum())
    k = np.where(is_base, base.conductivity, cover.conductivity)

    count = int(solid.sum())
    pairs: list[tuple[np.ndarray, np.ndarray, np.ndarray]] = []
    loss = np.zeros(count)
    i, j = np.nonzero(solid[:-1] & solid[1:])
    pairs.append((number[i, j], number[i + 1, j], k[j] * upward[j] / (x[i + 1] - x[i])))
    i, j = np.nonzero(solid[:, :-1] & solid[:, 1:])
    resist = upward[j] / (2.0 * k[j]) + upward[j + 1] / (2.0 * k[j + 1])
    pairs.append((number[i, j], number[i, j + 1], across[i] / resist))

    def leave(mask: np.ndarray, width: np.ndarray, way: np.ndarray, rate: np.ndarray | float) -> None:
        """Heat that leaves through one face of the cells: ``way`` mm of the cell and the surface in series."""
        a, b = np.nonzero(mask)
        rate = np.broadcast_to(rate, mask.shape)[a, b]
        with np.errstate(divide="ignore"):
            value = np.where(rate > 0.0, width[a, b] / (way[a, b] / (2.0 * k[b]) + 1.0 / np.maximum(rate, 1e-30)), 0.0)
        np.add.at(loss, number[a, b], value)

    sizes_x = np.broadcast_to(across[:, None], solid.shape)
    sizes_y = np.broadcast_to(upward[None, :], solid.shape)
    beyond = np.zeros_like(solid)
    beyond[:-1] = solid[1:]
    leave(solid & ~beyond, sizes_y, sizes_x, around.free)
    above = np.zeros_like(solid)
    above[:, :-1] = solid[:, 1:]
    upper = np.full(solid.shape, around.free)
    upper[:, -1] = around.top
    leave(solid & ~above, sizes_x, sizes_y, upper)
    under = np.zeros_like(solid)
    under[:, 1:] = solid[:, :-1]
    lower = np.full(solid.shape, around.free)
    lower[:, 0] = around.bottom
    leave(solid & ~under, sizes_x, sizes_y, lower)

    one, other, g = (np.concatenate(part) for part in zip(*pairs, strict=True))
    conduction = sparse.coo_matrix(
        (
            np.concatenate([g, g, -g, -g]),
            (np.concatenate([one, other, one, other]), np.concatenate([one, other, other, one])),
        ),
        shape=(count, count),
    ).tocsc()
    col, row = np.nonzero(solid)
    base_cell = is_base[row]
    columns = int((x < half).sum())
    touching = (number[:columns, top_of_base - 1], number[:columns, top_of_base])
    second = number[:columns, min(top_of_base + 1, len(upward) - 1)]
    return Grid(
        area=across[col] * upward[row],
        heat=np.where(base_cell, base.heat, cover.heat),
        latent=np.where(base_cell, base.latent, cover.latent),
        x=x[col],
        y=y[row],
        conduction=conduction,
        loss=loss,
        rows=row,
        column=col,
        in_base=base_cell,
        columns=columns,
        row_height=upward,
        column_width=across,
        interface=touching,
        second=second,
        top=number[:columns, -1],
    )
