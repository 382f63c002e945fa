"""One section through a weld: heating, collapse, cooling."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.measure.material.heat import field as fd
from seamcheck.measure.material.heat.grid import Body, Grid, Section, Surroundings, lines, make_grid


class Process(Struct, frozen=True):
    """What the section is exposed to; temperatures are K above the surroundings.

    Attributes
    ----------
    power : W/mm, heat that arrives on the rib, for each mm of seam, averaged over a pass
    depth : mm, in which the base turns the light to heat
    melting : of base and cover, where they begin to flow
    leaving : mean rise of the layer at which melt is pressed out of it
    layer : mm of rib below the interface that stay as melt while the rib collapses
    collapse : mm, planned
    longest : s, the weld is given up after that
    """

    power: float
    depth: float
    melting: tuple[float, float]
    leaving: float
    collapse: float
    layer: float = 0.15
    longest: float = 600.0


class Weld(Struct, frozen=True, eq=False):
    """What happened; NaN where it did not happen.

    start : s until the mean of the interface reaches the higher of the two melting points
    finish : s until the planned collapse is reached
    times, sunk : (m,) s and mm, collapse over time
    peak : K, highest rise of any cell until then; cover_top : K, highest at the cover's light side
    cooling : s from then on until the interface's mean is below the melting point again
    steady : K, rise of the interface's mean that the power ends at, if nothing gave way
    """

    start: float
    finish: float
    times: np.ndarray
    sunk: np.ndarray
    peak: float
    cover_top: float
    cooling: float
    steady: float


class Model(Struct, frozen=True, eq=False):
    """A section with its materials, cut into cells.

    fine : mm, height of the rows beside the interface; columns : over half the rib
    """

    section: Section
    base: Body
    cover: Body
    around: Surroundings
    removable: float = 0.0
    fine: float = 0.05
    columns: int = 5

    def grid(self, removed: int = 0) -> Grid:
        return make_grid(self.section, self.base, self.cover, self.around, *self._lines(), removed=removed)

    def removable_rows(self, collapse: float) -> tuple[int, float]:
        """How many rows a collapse (mm) takes, and their height (mm)."""
        _, upward, count = self._lines()
        height = float(upward[count - 1])
        return (max(1, round(collapse / height)) if collapse > 0.0 else 0), height

    def _lines(self) -> tuple[np.ndarray, np.ndarray, int]:
        return lines(self.section, self.fine, max(self.removable, 3.0 * self.fine), self.columns)


STEPS = 16  # of one length, before they grow
GROWTH = 1.4


def response(model: Model, depth: float, first: float, longest: float) -> tuple[np.ndarray, np.ndarray, float]:
    """Rise of the interface's mean in time for 1 W/mm, without latent heat: (m,) s, (m,) K, and in the end (K).

    Conduction is linear: at any power the rise is in proportion.
    """
    grid = model.grid()
    source = fd.light_source(grid, depth)
    steady = steady_mean(grid, source)
    state = fd.Field(grid, np.zeros(len(grid.area)), np.zeros(len(grid.area)), np.full(len(grid.area), np.inf))
    times, rises, now, step = [0.0], [0.0], 0.0, first
    while now < longest:
        for _ in range(STEPS):
            state.step(step, source)
            now += step
            times.append(now)
            rises.append(state.interface_mean())
        step *= GROWTH
    return np.array(times), np.array(rises), steady


def plane_time(flux: float, rise: float, base: Body, cover: Body) -> float:
    """Time (s) in which a plane source of ``flux`` (W/mm²) between two half-spaces heats it by ``rise`` (K).

    t = π (ΔT (e1 + e2) / (2 q))², e = √(k ρ cp) (H. Carslaw and J. Jaeger, Conduction of Heat in Solids, 2.9).
    No rib can be faster: it loses heat to its sides as well.
    """
    effusivity = sum(np.sqrt(body.conductivity * body.heat) for body in (base, cover))
    return float(np.pi * (rise * effusivity / (2.0 * flux)) ** 2)


def weld(model: Model, process: Process, sink: tuple[np.ndarray, np.ndarray] | None = None) -> Weld:
    """Run one section through a weld with the laser on until the planned collapse is reached.

    Parameters
    ----------
    sink : times (n,) s and collapse (n,) mm of the cover where another place of the seam holds it up; None:
        this section sinks as it melts

    Returns
    -------
    NaN for every time and temperature but ``steady`` where the section never melts.

    Notes
    -----
    The rib collapses row by row: the uppermost row is pressed out as soon as the mean of the layer below the interface
    has reached ``leaving`` (or when ``sink`` says so), takes its heat with it into the flash traps, and the cover
    touches the next one. How fast the melt can be squeezed out is not in it.
    """
    grid = model.grid()
    melts = max(process.melting)
    steady = steady_mean(grid, process.power * fd.light_source(grid, process.depth))
    nothing = float("nan")
    if steady < melts and sink is None:
        return Weld(nothing, nothing, np.zeros(1), np.zeros(1), nothing, nothing, nothing, steady)
    run = _Run(model, process, fd.cold(grid, process.melting))
    rows, height = model.removable_rows(process.collapse)
    step = plane_time(process.power / model.section.width, melts, model.base, model.cover) / 30.0
    start = nothing
    before = 0.0
    while start != start and run.now < process.longest:
        for _ in range(STEPS):
            run.step(step)
            mean = run.state.interface_mean()
            if mean >= melts:
                start = run.now - step * (mean - melts) / max(mean - before, 1e-12)
                break
            before = mean
        step *= GROWTH
    times, sunk = [0.0, run.now], [0.0, 0.0]
    per_row = model.base.heat * height * model.section.width * process.leaving / process.power
    step = shortest = min(step, per_row / 4.0)
    waited = 0
    while start == start and run.removed < rows and run.now < process.longest:
        run.step(step)
        waited += 1
        if waited % STEPS == 0:
            step *= GROWTH
        reached = np.inf if sink is None else float(np.interp(run.now, *sink)) + 1e-9
        while run.removed < rows and (
            run.layer() >= process.leaving if sink is None else reached >= (run.removed + 1) * height
        ):
            run.drop_row()
            times.append(run.now)
            sunk.append(run.removed * height)
            step, waited = shortest, 0
    finish = (run.now if run.removed >= rows else nothing) if start == start else nothing
    cooling = run.cool(melts) if finish == finish else nothing
    return Weld(start, finish, np.array(times), np.array(sunk), run.peak, run.cover_top, cooling, steady)


class Pass(Struct, frozen=True):
    """One pass of the spot over a section.

    highest : K, of the interface's mean; peak : K, of any cell; cover_top : K
    depth : (base, cover) mm that has been molten at some time, mean over the rib's width: heat of the base keeps
        melting the cover when the spot has passed
    cooling : s after the spot until the interface is solid again
    """

    highest: float
    peak: float
    cover_top: float
    depth: tuple[float, float]
    cooling: float


def pass_rows(depth: float, base: Body, duration: float) -> float:
    """Height (mm) of the rows beside the interface that follow one pass of the spot.

    An eighth of the ``depth`` (mm) in which the light turns to heat, and a fifth of √(a t), how far heat gets in the
    passage of ``duration`` (s): the interface's rise is then within 2 % of that on rows a quarter as high. Rows as high
    as √(a t) lose a third of it.
    """
    return min(depth / 8.0, 0.2 * float(np.sqrt(base.conductivity / base.heat * duration)))


def single_pass(model: Model, process: Process, duration: float) -> Pass:
    """Run one section through one pass of the spot.

    Parameters
    ----------
    process : ``power`` (W/mm) while the spot is over the section
    duration : s, the spot's length over its speed
    """
    run = _Run(model, process, fd.cold(model.grid(), process.melting))
    for _ in range(40):
        run.step(duration / 40.0)
    cooling, grid = run.cool(max(process.melting)), run.state.grid
    half = model.section.width / 2.0
    below = run.flowed & (grid.column < grid.columns)
    base, cover = (float(grid.area[below & side].sum()) / half for side in (grid.in_base, ~grid.in_base))
    return Pass(run.highest, run.peak, run.cover_top, (base, cover), cooling)


def steady_mean(grid: Grid, source: np.ndarray) -> float:
    """Rise (K) of the interface's mean that a constant ``source`` (n,) W/mm ends at; inf where nothing leaves."""
    end = fd.steady_rise(grid, source)
    if not np.isfinite(end).all():
        return float("inf")
    return fd.Field(grid, end, np.zeros(len(end)), np.full(len(end), np.inf)).interface_mean()


class _Run:
    """A section on its way through a weld."""

    def __init__(self, model: Model, process: Process, state: fd.Field) -> None:
        self.model, self.process, self.state = model, process, state
        self.source = process.power * fd.light_source(state.grid, process.depth)
        self.now, self.removed, self.peak, self.cover_top, self.highest = 0.0, 0, 0.0, 0.0, 0.0
        self.flowed = np.zeros(len(state.grid.area), dtype=bool)

    def step(self, duration: float, source: np.ndarray | None = None) -> None:
        """Advance by ``duration`` (s) with the laser on, or with another ``source`` (n,) W/mm."""
        self.state.step(duration, self.source if source is None else source)
        self.now += duration
        self.peak = max(self.peak, float(self.state.rise.max()))
        self.cover_top = max(self.cover_top, self.state.cover_top())
        self.highest = max(self.highest, self.state.interface_mean())
        self.flowed |= self._flows()

    def _flows(self) -> np.ndarray:
        """(n,) bool, cells that flow: half of their heat of fusion taken up, or hot enough where there is none."""
        state, grid = self.state, self.state.grid
        hot = state.rise >= np.where(grid.in_base, *self.process.melting)
        return np.where(grid.latent > 0.0, state.molten >= 0.5, hot)

    def layer(self) -> float:
        """Mean rise (K) of the rib within ``process.layer`` below its top."""
        grid = self.state.grid
        top = int(grid.rows[grid.interface[0][0]])
        heights = grid.row_height[top::-1]
        within = np.clip(self.process.layer - (np.cumsum(heights) - heights), 0.0, heights)
        within[0] = max(within[0], min(heights[0], 1e-9))
        share = np.zeros(len(grid.row_height))
        share[top::-1] = within / heights
        weight = np.where(grid.column < grid.columns, grid.area * share[grid.rows], 0.0)
        return float(np.sum(weight * self.state.rise) / weight.sum())

    def drop_row(self) -> None:
        grid = self.state.grid
        row = int(grid.rows[grid.interface[0][0]])
        self.removed += 1
        gone = (grid.rows == row) & grid.in_base
        self.state = self.state.moved_to(self.model.grid(self.removed), gone)
        self.flowed = self.flowed[~gone]
        self.source = self.process.power * fd.light_source(self.state.grid, self.process.depth)

    def cool(self, melts: float) -> float:
        """Time (s) with the laser off until the interface's mean is below ``melts`` and half of its melt solid."""
        began, step, dark = self.now, max(self.now, 0.01) / 100.0, np.zeros(len(self.state.grid.area))
        touching = np.concatenate(self.state.grid.interface)
        while self.now < began + self.process.longest:
            for _ in range(STEPS):
                self.step(step, dark)
                if self.state.interface_mean() < melts and float(self.state.molten[touching].mean()) < 0.5:
                    return self.now - began
            step *= GROWTH
        return float("nan")
