"""Turn radius of the centre line."""

from __future__ import annotations

import numpy as np

from seamcheck.measure.additions import Column, Columns

STRAIGHT = 2000.0  # mm: beyond this radius a run counts as straight


def turn_columns(radius: np.ndarray) -> Columns:
    """The corner radius as a column: radius (n,) mm as of corner_radius; NaN on a straight run and at an end."""
    straight = np.isinf(radius)
    return {"corner_radius": Column.of(np.where(straight, np.nan, radius), np.where(straight, "straight", "end"))}


def corner_radius(s: np.ndarray, points: np.ndarray, length: float, closed: bool, at: np.ndarray) -> np.ndarray:
    """Corner radius of a line, seen along the beam, at given arc lengths.

    Parameters
    ----------
    s : (n,) mm; points : (n, 2) mm, dense nodes of the line; length : mm; at : (m,) mm

    Returns
    -------
    (m,) float, mm; ``inf`` on a straight run, NaN too near an open end

    Notes
    -----
    Circle through a place and two places as far before and behind it, R = abc / 4A (Menger curvature,
    K. Menger, Math. Annalen 103, 1930). The distance is 1 mm at first, then a third of the radius found,
    0.2 to 1.5 mm, so that the three places lie on one arc.
    """
    found, step = _circle(*_continued(s, points, length, closed), at)
    found = np.where(found > STRAIGHT, np.inf, found)
    if not closed:
        found[(at < step) | (at > length - step)] = np.nan
    return found


def turns_to(
    s: np.ndarray, points: np.ndarray, length: float, closed: bool, at: np.ndarray, across: np.ndarray
) -> np.ndarray:
    """(m,) +1 where a line turns toward unit vectors across it (m, 2), -1 where away from them; see corner_radius."""
    s, points = _continued(s, points, length, closed)
    a, b, c = _three(s, points, at, _circle(s, points, at)[1])
    return np.asarray(np.sign(((a + c - 2 * b) * across).sum(axis=1)))


def _circle(s: np.ndarray, points: np.ndarray, at: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(m,) radius of the circle through three places, mm, and (m,) how far apart they were taken, mm."""

    def radius(step: np.ndarray) -> np.ndarray:
        a, b, c = _three(s, points, at, step)
        ab, bc, ca = (np.linalg.norm(p - q, axis=1) for p, q in ((b, a), (c, b), (a, c)))
        twice = np.abs((b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0])
        with np.errstate(divide="ignore", invalid="ignore"):
            return np.asarray(ab * bc * ca / (2.0 * twice))

    step = np.ones(len(at))
    found = radius(step)
    for _ in range(2):
        step = np.clip(np.where(np.isfinite(found), found / 3.0, 1.5), 0.2, 1.5)
        found = radius(step)
    return found, step


def _three(s: np.ndarray, points: np.ndarray, at: np.ndarray, step: np.ndarray) -> tuple[np.ndarray, ...]:
    """Places (m, 2) on a line before, at and behind given arc lengths."""
    return tuple(np.column_stack([np.interp(x, s, points[:, k]) for k in (0, 1)]) for x in (at - step, at, at + step))


def _continued(s: np.ndarray, points: np.ndarray, length: float, closed: bool) -> tuple[np.ndarray, np.ndarray]:
    """A closed line gone round three times."""
    if not closed:
        return s, points
    return np.concatenate([s - length, s, s + length]), np.vstack([points, points, points])
