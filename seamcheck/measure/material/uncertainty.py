"""Ranges: many random combinations of tolerances, plaque scatter and material ranges, from a fixed seed.

A number of which only the ends are known is drawn uniformly between them (JCGM 101:2008, 6.4.2, rectangular
distribution), a tolerance with a given capability normally; one draw holds for the whole seam. Plaque scatter is
normal; which of the two forms carries the transmission between and beyond the plaques is a coin toss, since neither is
proven.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.known import Known, rounded
from seamcheck.measure.material.energy import EnergyInputs, estimate
from seamcheck.measure.material.melt import AreaGrid
from seamcheck.measure.material.transmission import COMFORTABLE, TransmissionFit
from seamcheck.measure.material.window import AS_GOOD

PERCENTILES = (5.0, 50.0, 95.0)
_AT_ONCE = 200_000  # stations of combinations computed together: as many as fit into a processor's cache
CRITICAL = 48  # stations with the smallest reserve, tried in every combination


class Chances(Struct, frozen=True, eq=False):
    """What the combinations gave.

    ranges : name -> (5th, 50th, 95th percentile)
    shares : name of a condition -> share 0..1 of the combinations in which it holds
    drawn : names of the inputs that were varied
    count, seed : of the combinations
    outside : share of the combinations in which the collapse does not close the gap or is too large; None where no
        tolerance is given
    """

    ranges: Mapping[str, tuple[float, float, float]]
    shares: Mapping[str, float]
    drawn: tuple[str, ...]
    count: int
    seed: int
    outside: float | None = None

    def as_dict(self) -> dict[str, Any]:
        """Return the entry of the review document."""
        return {
            "combinations": self.count,
            "seed": self.seed,
            "varied": list(self.drawn),
            "ranges": {
                key: {"p05": rounded(a), "p50": rounded(b), "p95": rounded(c)} for key, (a, b, c) in self.ranges.items()
            },
            "shares": {key: rounded(share, 4) for key, share in self.shares.items()},
        }


class Joint(Struct, frozen=True, eq=False):
    """What is drawn for one joint; all arrays over the stations of all its paths.

    path : (n,) mm light path, or None; fit : of the cover, or None
    grid : areas at a row of collapses, or None; trap_limit : share of the traps that may be filled
    late_worst : mm, largest gap less the smallest
    travel : mm free from initial contact, inf when free, NaN when unknown
    height : (n,) mm of rib height and lateness together
    """

    path: np.ndarray | None
    fit: TransmissionFit | None
    grid: AreaGrid | None
    expansion: Known | None
    trap_limit: float
    collapse: float
    late_worst: float
    travel: float
    height: np.ndarray
    width: np.ndarray
    reserves: Mapping[str, float]  # least_local_collapse, travel_reserve, height_reserve: mm
    tolerance: Mapping[str, float]  # as in the settings; missing ones are 0
    energy: EnergyInputs | None
    ranges: Mapping[str, Known]  # numbers of the energy estimate


def deviations(random: np.random.Generator, tolerance: float, cpk: float | None, count: int) -> np.ndarray:
    """(m,) deviations of m = ``count`` parts from the drawing within ± ``tolerance``, in its unit.

    cpk : capability of a centred process: normal, with tolerance / (3 cpk) as standard deviation; None: uniform between
        the ends, as only these are known
    """
    if not tolerance > 0.0:
        return np.zeros(count)
    if cpk is None:
        return random.uniform(-tolerance, tolerance, count)
    return random.normal(0.0, tolerance / (3.0 * cpk), count)


def draw(joint: Joint, count: int, seed: int) -> Chances:
    """Try ``count`` combinations; the same seed gives the same numbers."""
    random = np.random.default_rng(seed)
    drawn: list[str] = []

    def plus_minus(key: str) -> np.ndarray:
        half = joint.tolerance.get(key, 0.0)
        if half > 0.0:
            drawn.append(f"tolerance.{key}")
        return deviations(random, half, joint.tolerance.get("cpk"), count)

    def between(name: str, known: Known) -> np.ndarray:
        if known.high > known.low:
            drawn.append(name)
            return random.uniform(known.low, known.high, count)
        return np.full(count, known.value)

    collapse = np.maximum(joint.collapse + plus_minus("collapse"), 0.0)
    ranges: dict[str, np.ndarray] = {}
    held: dict[str, np.ndarray] = {}

    through = None
    if joint.fit is not None and joint.path is not None and np.isfinite(joint.path).any():
        through = _transmission(joint, plus_minus("thickness"), random, count, drawn)
        worst = np.nanmin(through, axis=1)
        ranges["transmission_least_percent"] = 100.0 * worst
        held["transmission at or above 28 %"] = worst >= COMFORTABLE

    width = plus_minus("width")
    flat = sum(
        (random.uniform(0.0, joint.tolerance[key], count) if joint.tolerance.get(key, 0.0) > 0.0 else np.zeros(count))
        for key in ("flatness_cover", "flatness_rib")
    )
    drawn += [f"tolerance.{key}" for key in ("flatness_cover", "flatness_rib") if joint.tolerance.get(key, 0.0) > 0.0]
    low = np.maximum(joint.late_worst + plus_minus("gap"), 0.0) + flat + joint.reserves["least_local_collapse"]
    ranges["collapse_lowest_mm"] = low
    held["gap closed by the collapse"] = collapse >= low - AS_GOOD
    highs = []
    travel = joint.travel + plus_minus("travel") - joint.reserves["travel_reserve"]
    if np.isfinite(joint.travel):
        highs.append(travel)
        held["travel left after the collapse"] = collapse <= travel + AS_GOOD
    if np.isfinite(joint.height).any():
        highs.append(np.full(count, float(np.nanmin(joint.height)) - joint.reserves["height_reserve"]))
    if joint.grid is not None and joint.expansion is not None:
        holds = _traps_hold(
            joint, between("melt expansion", joint.expansion), width, 1.0 + plus_minus("trap") / 100.0, count
        )
        if holds is not None:
            highs.append(holds)
            held["traps hold the melt"] = collapse <= holds + AS_GOOD
    if highs:
        high = np.minimum.reduce(highs)
        if np.isfinite(high).all():
            ranges["collapse_highest_mm"] = high
            ranges["collapse_window_mm"] = high - low
        held["a collapse exists that suits"] = high >= low - AS_GOOD

    if joint.energy is not None:
        _energies(joint, collapse, width, through, between, ranges, count)

    shares = {name: float(np.mean(good)) for name, good in held.items()}
    must = [
        good
        for name, good in held.items()
        if name not in ("transmission at or above 28 %", "a collapse exists that suits")
    ]
    within = np.logical_and.reduce(must) if must else None
    if must:
        shares["all of them but the transmission" if through is not None else "all of them"] = float(
            np.mean(np.logical_and.reduce(must))
        )
    quantiles = {key: tuple(float(q) for q in np.percentile(values, PERCENTILES)) for key, values in ranges.items()}
    varied = tuple(dict.fromkeys(drawn))
    outside = None
    if within is not None and any(name.startswith("tolerance.") for name in varied):
        outside = 1.0 - float(np.mean(within))
    return Chances(quantiles, shares, varied, count, seed, outside)  # type: ignore[arg-type]


def _transmission(
    joint: Joint, shift: np.ndarray, random: np.random.Generator, count: int, drawn: list[str]
) -> np.ndarray:
    """Transmission (count, k) of the stations with the longest beam paths."""
    assert joint.fit is not None
    assert joint.path is not None
    fit = joint.fit
    drawn += ["plaque scatter", "form of the transmission curve"]
    root = np.linalg.cholesky(fit.covariance + np.eye(2) * 1e-15)
    start, rate = root @ random.standard_normal((2, count))
    diffuse = random.random(count) < 0.5
    path = _longest(joint.path)
    path = np.maximum(path[None, :] + shift[:, None], 0.0)
    base = np.where(diffuse[:, None], fit.diffuse_at(path), fit.exponential_at(path))
    return np.asarray(np.minimum(base * np.exp(start[:, None] - rate[:, None] * path), fit.cap))


def _longest(path: np.ndarray) -> np.ndarray:
    known = path[np.isfinite(path)]
    return np.sort(known)[-CRITICAL:]


def _traps_hold(
    joint: Joint, expansion: np.ndarray, width: np.ndarray, area: np.ndarray, count: int
) -> np.ndarray | None:
    """Largest collapse (count,) mm at which both traps together hold the melt at every critical station."""
    assert joint.grid is not None
    grid = joint.grid
    traps = grid.traps
    known = np.flatnonzero(np.isfinite(grid.melt).all(axis=0) & np.isfinite(traps).all(axis=0))
    if not len(known):
        return None
    nominal = joint.trap_limit * traps[:, known] - grid.melt[:, known] * float(np.median(expansion))
    holds = np.argmax(nominal < 0.0, axis=0) + np.where((nominal >= 0.0).all(axis=0), len(grid.collapses), 0)
    chosen = known[np.argsort(holds, kind="stable")[:CRITICAL]]
    melt, traps = grid.melt[:, chosen], traps[:, chosen]
    relative = 1.0 + width[:, None] / joint.width[chosen]  # a wider rib gives proportionally more melt
    best = np.full(count, np.inf)
    for i in range(len(chosen)):
        surplus = (expansion * relative[:, i])[:, None] * melt[:, i] - joint.trap_limit * area[:, None] * traps[:, i]
        over = surplus > 0.0
        first = np.argmax(over, axis=1)
        rows = np.arange(count)
        before = np.maximum(first - 1, 0)
        below, above = surplus[rows, before], surplus[rows, first]
        with np.errstate(invalid="ignore", divide="ignore"):
            share = np.where(first > 0, -below / (above - below), 0.0)
        value = grid.collapses[before] + share * (grid.collapses[first] - grid.collapses[before])
        best = np.minimum(best, np.where(over.any(axis=1), value, np.inf))
    return best


def _energies(
    joint: Joint, collapse: np.ndarray, width: np.ndarray, through: np.ndarray | None,
    between: Callable[[str, Known], np.ndarray], ranges: dict[str, np.ndarray], count: int,
) -> None:  # fmt: skip
    """Put the ranges of the energy estimate into ``ranges``."""
    inputs = joint.energy
    assert inputs is not None
    columns = {name: between(name, known) for name, known in joint.ranges.items()}
    mean_width = float(np.nanmean(joint.width)) if np.isfinite(joint.width).any() else 1.0
    factor = np.ones(count)
    if through is not None and np.isfinite(inputs.transmission).any():
        assert joint.fit is not None
        assert joint.path is not None
        factor = np.median(through, axis=1) / float(np.median(joint.fit.at(_longest(joint.path))))
    found: dict[str, list[np.ndarray]] = {}
    for some in np.array_split(np.arange(count), 1 + count * len(inputs.length) // _AT_ONCE):
        sample = replace(
            inputs,
            collapse=collapse[some],
            numbers={key: values[some] for key, values in columns.items()},
            transmission_factor=factor[some],
            width_factor=1.0 + width[some] / mean_width,
        )
        for key, values in estimate(sample).items():
            found.setdefault(key, []).append(np.broadcast_to(values, some.shape))
    ranges |= {key: np.concatenate(values) for key, values in found.items()}
