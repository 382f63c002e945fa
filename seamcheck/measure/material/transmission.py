"""Transmission of the cover from measured plaques: fit, value for a beam path, range, limit thickness."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from msgspec import Struct
from numpy.typing import ArrayLike
from scipy.optimize import brentq

from seamcheck.catalogue.say import say
from seamcheck.measure.material.optics import normal_reflectance, surface_limit
from seamcheck.settings.plaques import Plaque, check_plaques

COMFORTABLE = 0.28
"""Transmission from which the surface is in little danger of burning. Common practice, no published source."""

EXTRAPOLATION = 1.5
"""A beam path longer than this many times the thickest plaque is marked as extrapolated. Assumption."""

SURFACE_SCATTER = 0.03
"""Relative standard deviation of the surface term when it comes from the index alone. Assumption."""

NINETY = 1.6448536269514722  # standard deviations from the middle to the 5th and 95th percentile


class TransmissionFit(Struct, frozen=True, eq=False):
    """T(l) = T0 e^(-K l), fitted to plaques; beside it the diffuse form T(l) = D0 / (1 + S l).

    Attributes
    ----------
    plaques : sorted by thickness
    index : refractive index
    surface_term : T0, share 0..1
    extinction : K, 1/mm, >= 0
    covariance : (2, 2) of (ln T0, K)
    diffuse : (D0, S), the second form through the same plaques
    form : 'one plaque', 'two plaques' or 'least squares'
    notes : what is unusual about the plaques, as sentences
    is_between : whether the value lies in the (geometric) middle of both forms: of a cover that scatters one plaque
        tells neither of them
    """

    plaques: tuple[Plaque, ...]
    index: float
    surface_term: float
    extinction: float
    covariance: np.ndarray
    diffuse: tuple[float, float]
    form: str
    notes: tuple[str, ...]
    is_between: bool = False

    @property
    def cap(self) -> float:
        """Largest share (0..1) that the surfaces transmit."""
        return float(surface_limit(self.index))

    @property
    def reach(self) -> float:
        """Longest beam path (mm) that is not marked as extrapolated beyond the plaques."""
        return EXTRAPOLATION * self.plaques[-1].thickness

    def at(self, path: ArrayLike) -> np.ndarray:
        """Transmission (share 0 to 1) for beam paths in mm, of any shape; NaN stays NaN."""
        one = self.exponential_at(path)
        return np.sqrt(one * self.diffuse_at(path)) if self.is_between else one

    def exponential_at(self, path: ArrayLike) -> np.ndarray:
        """Transmission (share 0 to 1) by the exponential form, for beam paths in mm, any shape."""
        return np.minimum(self.surface_term * np.exp(-self.extinction * np.asarray(path, dtype=float)), self.cap)

    def falls_by(self, path: ArrayLike, to: float | None = None) -> np.ndarray:
        """How fast the transmission falls, -d ln T / dx, 1/mm, at beam paths in mm, any shape; NaN stays NaN.

        Where the curve is no exponential: the mean between the path and ``to`` (mm), where that is given.
        """
        path, scatter = np.asarray(path, dtype=float), self.diffuse[1]
        if not self.is_between:
            return np.where(np.isfinite(path), self.extinction, np.nan)
        here = np.asarray((self.extinction + scatter / (1.0 + scatter * path)) / 2.0)
        if to is None or not 0.0 < to < np.inf:
            return here
        with np.errstate(invalid="ignore", divide="ignore"):
            mean = np.log(self.at(to) / self.at(path)) / (path - to)
        return np.where(np.abs(path - to) > 1e-6, mean, here)

    def diffuse_at(self, path: ArrayLike) -> np.ndarray:
        """Transmission (share 0 to 1) by the diffuse form, any shape; shows how much the form matters."""
        start, scatter = self.diffuse
        return np.minimum(start / (1.0 + scatter * np.asarray(path, dtype=float)), self.cap)

    def interval(self, path: ArrayLike) -> tuple[np.ndarray, np.ndarray]:
        """Range of the transmission (5th to 95th percentile, share), any shape: plaque scatter and both forms."""
        path = np.asarray(path, dtype=float)
        c = self.covariance
        spread = NINETY * np.sqrt(np.maximum(c[0, 0] - 2.0 * path * c[0, 1] + path**2 * c[1, 1], 0.0))
        one, other = self.exponential_at(path), self.diffuse_at(path)
        low = np.minimum(one, other) * np.exp(-spread)
        return low, np.minimum(np.maximum(one, other) * np.exp(spread), self.cap)

    def limit_thickness(self, wanted: float) -> float:
        """Longest beam path (mm) that still transmits ``wanted``: ln(T0 / wanted) / K; 0: none, inf: any."""
        if self.surface_term <= wanted:
            return 0.0
        if self.is_between and self.extinction > 0.0:
            longest = float(np.log(self.surface_term / wanted) / self.extinction) * 1e3
            return float(brentq(lambda path: float(self.at(path)) - wanted, 0.0, longest))
        return float(np.log(self.surface_term / wanted) / self.extinction) if self.extinction > 0.0 else np.inf

    def is_beyond(self, path: ArrayLike) -> np.ndarray:
        """Mask of any shape: where the beam path (mm) is so long that the value is extrapolated beyond the plaques."""
        return np.asarray(path, dtype=float) > self.reach


def fit_transmission(
    plaques: Sequence[Plaque], index: float, scatter: float = 0.03, scatters: bool = False
) -> TransmissionFit:
    """Fit the transmission of a material to measured plaques.

    Parameters
    ----------
    plaques : one or more; of one thickness only: the surface term comes from the index, T0 = (1 - R)²
    index : refractive index, for the surfaces
    scatter : relative standard deviation of one measured transmission
    scatters : whether the material does, as semi-crystalline and filled ones do

    Notes
    -----
    Two thicknesses: through both points; more: least squares in ln T, K held at 0 or above. The range comes
    from the scatter, or from the residuals where these are larger. One thickness of a material that scatters: the
    middle of the exponential and the diffuse form. The exponential with the surface term of the index falls off too
    fast there: light that is scattered back is lost near the surface already.
    """
    plaques = check_plaques(plaques, index, scatter)
    t = np.array([p.thickness for p in plaques])
    y = np.log([p.transmission for p in plaques])
    surface = float((1.0 - normal_reflectance(index)) ** 2)
    notes: list[str] = []
    if len(set(t.tolist())) == 1:
        log_start = float(np.log(surface))
        mean = float(np.mean(y))
        rate = max(0.0, (log_start - mean) / t[0])
        var_start, var_y = SURFACE_SCATTER**2, scatter**2 / len(t)
        cov = np.array([[var_start, var_start / t[0]], [var_start / t[0], (var_start + var_y) / t[0] ** 2]])
        start_diffuse, per_t = surface, max(0.0, (surface / np.exp(mean) - 1.0) / t[0])
        notes.append(say("material.one-plaque"))
        if scatters:
            notes.append(say("material.scatters"))
        diffuse = (start_diffuse, per_t)
        return TransmissionFit(plaques, index, surface, rate, cov, diffuse, "one plaque", tuple(notes), scatters)

    table = np.column_stack([np.ones_like(t), -t])
    (log_start, rate), *_ = np.linalg.lstsq(table, y, rcond=None)
    if rate < 0.0:
        log_start, rate = float(np.mean(y)), 0.0
        notes.append(say("material.no-loss"))
    residuals = y - (log_start - rate * t)
    spare = len(t) - 2
    sigma = scatter if spare < 1 else max(scatter, float(np.sqrt(np.sum(residuals**2) / spare)))
    cov = sigma**2 * np.linalg.inv(table.T @ table)
    # 1/T = (1 + S l) / D0 is a straight line too; weights make it least squares in ln T to first order.
    inverse, weights = np.exp(-y), np.exp(y)
    (offset, slope), *_ = np.linalg.lstsq(np.column_stack([weights, t * weights]), inverse * weights, rcond=None)
    if slope < 0.0 or offset <= 0.0:
        offset, slope = (
            (float(np.mean(inverse)), 0.0)
            if slope < 0.0
            else (1.0 / surface, float(np.mean((inverse * surface - 1.0) / t) / surface))
        )
    start = float(np.exp(log_start))
    if start > surface * (1.0 + 2.0 * float(np.sqrt(cov[0, 0]))):
        notes.append(say("material.start", start=100 * start, surface=100 * surface))
    worst = int(np.argmax(np.abs(residuals)))
    if spare >= 1 and abs(residuals[worst]) > 2.0 * scatter:
        off = 100 * float(np.expm1(residuals[worst]))
        notes.append(say("material.plaque-off", plaque=float(t[worst]), off=off))
    form = "two plaques" if len(t) == 2 else "least squares"
    return TransmissionFit(
        plaques, index, start, float(rate), cov, (float(1.0 / offset), float(slope / offset)), form, tuple(notes)
    )
