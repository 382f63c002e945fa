"""What the material side needs from one surveyed path: lengths, bending and columns, as arrays per station."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.known import rounded
from seamcheck.measure.additions import Column
from seamcheck.measure.table import PathSurvey


class Track(Struct, frozen=True, eq=False):
    """One path of the contour.

    Attributes
    ----------
    id : of the path
    s : (n,) mm
    points : (n, 3) mm
    length : (n,) mm of path that each station stands for; they add up to the path's length
    turning : (n,) rad, change of the path's direction at each station, positive toward +u (outer)
    survey : the surveyed path
    """

    id: str
    s: np.ndarray
    points: np.ndarray
    length: np.ndarray
    turning: np.ndarray
    survey: PathSurvey

    def column(self, key: str) -> np.ndarray:
        """(n,) surveyed column in the unit of its quantity; all NaN where the survey has none of that name."""
        values = self.survey.columns.get(key)
        return np.full(len(self.s), np.nan) if values is None else np.asarray(values, dtype=float)

    def width(self) -> np.ndarray:
        """(n,) mm, rib width; that at half height where the top has no flat."""
        width = self.column("rib_width")
        return np.where(np.isfinite(width), width, self.column("rib_width_mid"))

    def reason(self, values: np.ndarray, *sources: str) -> np.ndarray:
        """(n,) reasons for NaN among ``values`` of any unit: that of the first of the ``sources`` that has one."""
        why = np.full(len(values), "", dtype="U24")
        missing = ~np.isfinite(values)
        for source in sources:
            known = self.survey.reasons.get(source)
            if known is not None:
                why = np.where(missing & (why == ""), np.asarray(known, dtype="U24"), why)
        return np.where(missing & (why == ""), "depends", why)

    def because(self, values: np.ndarray, *sources: str) -> Column:
        """Values (n,) of any unit as a column; NaN for the reason of the first of ``sources`` that has one."""
        return Column(values, self.reason(values, *sources))

    def point(self, station: int) -> list[float | None]:
        """Return the place of a station as the review document writes it."""
        return [rounded(x, 9) for x in self.points[station]]

    def curvature(self) -> np.ndarray:
        """(n,) 1/mm, curvature at each station, positive where the centre lies on the outer side.

        Its size is that of the surveyed corner radius, found over a millimetre or so: between stations close
        together, as at joints of lines and arcs, the angle of two chords is mere noise. The side is that to which
        the path bends within a millimetre.
        """
        radius = self.column("corner_radius")
        with np.errstate(invalid="ignore", divide="ignore"):
            size = np.where(np.isfinite(radius) & (radius > 0.0), 1.0 / radius, 0.0)
        return np.asarray(size * np.sign(self._turned_within(1.0)))

    def _turned_within(self, reach: float) -> np.ndarray:
        """(n,) rad, change of the path's direction within ``reach`` mm of each station, positive toward +u."""
        s, turning = self.s, self.turning
        if self.survey.closed:
            whole = float(self.survey.length)
            s = np.concatenate([s - whole, s, s + whole])
            turning = np.tile(turning, 3)
        sums = np.concatenate([[0.0], np.cumsum(turning)])
        first = np.searchsorted(s, self.s - reach - 1e-9)
        last = np.searchsorted(s, self.s + reach + 1e-9, side="right")
        return np.asarray(sums[last] - sums[first])

    def volume(self, area: np.ndarray, offset: np.ndarray) -> float:
        """Volume (mm³) swept by a section of ``area`` (n,) mm², centroid ``offset`` (n,) mm along u; NaN without any.

        Second theorem of Pappus and Guldinus, station by station: dV = A (ds - u_c dφ). Stations without a
        value are left out and the rest is scaled to the path's whole length.
        """
        known = np.isfinite(area) & np.isfinite(offset)
        if not known.any() or not self.length[known].sum() > 0.0:
            return float("nan")
        straight = float(np.sum(area[known] * self.length[known]))
        bend = float(np.sum(area[known] * offset[known] * self.turning[known]))
        return straight * float(self.length.sum() / self.length[known].sum()) - bend


def track_of(path: PathSurvey) -> Track:
    """Return the track of a surveyed path."""
    points, s = np.asarray(path.points, dtype=float), np.asarray(path.s, dtype=float)
    n = len(s)
    if n < 2:
        return Track(path.id, s, points, np.full(n, float(path.length)), np.zeros(n), path)
    if path.closed:
        step = np.diff(s, append=s[0] + path.length)
        length = (step + np.roll(step, 1)) / 2.0
        ahead, back = np.roll(points, -1, axis=0) - points, points - np.roll(points, 1, axis=0)
    else:
        step = np.diff(s)
        length = np.concatenate([[step[0] / 2.0], (step[1:] + step[:-1]) / 2.0, [step[-1] / 2.0]])
        length[0] += s[0]
        length[-1] += max(0.0, path.length - s[-1])
        chords = np.diff(points, axis=0)
        ahead, back = np.vstack([chords, chords[-1:]]), np.vstack([chords[:1], chords])
    return Track(path.id, s, points, length, _turning(back, ahead, np.asarray(path.u, dtype=float)), path)


def _turning(back: np.ndarray, ahead: np.ndarray, u: np.ndarray) -> np.ndarray:
    """Angle (rad) from ``back`` to ``ahead`` in the plane of the path, positive toward u."""
    with np.errstate(invalid="ignore", divide="ignore"):
        back = back / np.linalg.norm(back, axis=1, keepdims=True)
        ahead = ahead / np.linalg.norm(ahead, axis=1, keepdims=True)
        tangent = back + ahead
        tangent = tangent / np.linalg.norm(tangent, axis=1, keepdims=True)
    light = np.cross(u, tangent)  # v = u x t
    sine = -np.einsum("ij,ij->i", light, np.cross(back, ahead))
    return np.asarray(np.nan_to_num(np.arctan2(sine, np.einsum("ij,ij->i", back, ahead))))
