"""Temperatures of the cells in time: implicit steps with one factorised matrix for many steps of one length."""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from scipy import sparse
from scipy.sparse.linalg import splu

from seamcheck.measure.material.heat.grid import Grid


class Field(Struct, eq=False):
    """State of a section.

    Attributes
    ----------
    grid : the cells
    rise : (n,) K above the surroundings
    molten : (n,) 0..1, how much of the latent heat each cell has taken up
    melting : (n,) K above the surroundings at which each cell melts; inf where it has no latent heat
    """

    grid: Grid
    rise: np.ndarray
    molten: np.ndarray
    melting: np.ndarray
    _length: float = 0.0
    _solver: object = None

    def step(self, duration: float, source: np.ndarray) -> None:
        """Advance by ``duration`` (s) with ``source`` (n,) W/mm in the cells.

        Backward Euler for conduction and losses. Latent heat afterwards, cell by cell: heat above the melting point
        melts what is still solid there, heat lost below it lets the melt crystallise (temperature recovery; such
        schemes are compared by V. Voller and C. Swaminathan, Numer. Heat Transfer B 19, 1991).
        """
        grid = self.grid
        store = grid.heat * grid.area
        if self._solver is None or duration != self._length:
            matrix = sparse.diags(store / duration + grid.loss, format="csc") + grid.conduction
            self._solver = splu(matrix.tocsc(), permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True})
            self._length = duration
        self.rise = self._solver.solve(store / duration * self.rise + source)  # type: ignore[attr-defined]
        melts = np.flatnonzero(grid.latent > 0.0)
        if len(melts):
            ratio = grid.latent[melts] / grid.heat[melts]
            before = self.molten[melts]
            now = np.clip(before + (self.rise[melts] - self.melting[melts]) / ratio, 0.0, 1.0)
            self.molten[melts] = now
            self.rise[melts] -= (now - before) * ratio

    def moved_to(self, grid: Grid, gone: np.ndarray) -> Field:
        """Return the same state on a grid that lacks the cells ``gone`` (n,) bool."""
        keep = ~gone
        return Field(grid, self.rise[keep], self.molten[keep], self.melting[keep])

    def interface(self) -> np.ndarray:
        """(n,) K, rise where rib and cover touch, one a column, from the middle outward.

        Extrapolated from the cover's two lowest rows: no light turns to heat there.
        """
        grid = self.grid
        _, first = grid.interface
        near, far = self.rise[first], self.rise[grid.second]
        one, two = grid.row_height[grid.rows[first[0]]], grid.row_height[grid.rows[grid.second[0]]]
        return np.asarray(near + (near - far) * one / (one + two))

    def interface_mean(self) -> float:
        """Mean rise (K) over the rib's width."""
        width = self.grid.column_width[: self.grid.columns]
        return float(np.sum(self.interface() * width) / width.sum())

    def cover_top(self) -> float:
        """Highest rise (K) at the cover's top, in the middle of its uppermost cells."""
        return float(self.rise[self.grid.top].max())


def cold(grid: Grid, melting: tuple[float, float]) -> Field:
    """Return a section at the temperature of its surroundings.

    melting : K above the surroundings at which base and cover melt
    """
    point = np.where(grid.in_base, melting[0], melting[1])
    count = len(grid.area)
    return Field(grid, np.zeros(count), np.zeros(count), np.where(grid.latent > 0.0, point, np.inf))


def light_source(grid: Grid, depth: float) -> np.ndarray:
    """(n,) share of the heat in each cell, together 1/2: half the section.

    Even over the rib's width, falling off as exp(-z / depth) below its top (Beer and Lambert). Where the rows are
    coarser than ``depth``, heat nearer to the interface than the middle of the first row is divided between
    the rows on both sides of it, so that heat arises at the right depth on the whole.
    """
    share = np.zeros(len(grid.area))
    base, cover = grid.interface
    width = grid.column_width[: grid.columns]
    across = 0.5 * width / width.sum()
    top = int(grid.rows[base[0]])
    thick = grid.row_height[top::-1]
    edges = np.concatenate([[0.0], np.cumsum(thick)])
    passed = np.exp(-edges / depth) if depth > 0.0 else np.where(edges > 0.0, 0.0, 1.0)
    here = passed[:-1] - passed[1:]
    here[-1] += passed[-1]
    for k in np.flatnonzero(here > 1e-6 * here.max()):
        cells = np.flatnonzero((grid.rows == top - k) & (grid.column < grid.columns))[: grid.columns]
        share[cells] = across * here[k]
    share[base] += across * (1.0 - share.sum() / across.sum())
    middle = depth - thick[0] * passed[1] / here[0] if depth > 0.0 else 0.0  # mean depth of the heat in the first row
    if depth < thick[0]:
        moved = (thick[0] / 2.0 - middle) / (thick[0] / 2.0 + grid.row_height[top + 1] / 2.0) * share[base]
        share[base] -= moved
        share[cover] += moved
    return share


def steady_rise(grid: Grid, source: np.ndarray) -> np.ndarray:
    """(n,) K, rise that the section ends at under a constant ``source`` (n,) W/mm; inf where nothing leaves it."""
    if not (grid.loss > 0.0).any():
        return np.full(len(grid.area), np.inf)
    matrix = grid.conduction + sparse.diags(grid.loss, format="csc")
    return np.asarray(splu(matrix.tocsc()).solve(source))
