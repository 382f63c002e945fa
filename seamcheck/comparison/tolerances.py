"""How much a quantity must differ to count as changed: less could be the measuring's own noise."""

from __future__ import annotations

import numpy as np

from seamcheck.catalogue.quantities import QUANTITIES

LENGTH = 0.01
"""mm: the measuring error that seamcheck holds against closed form."""

SHARE = 0.01
"""Of the value: the same for areas and volumes, and for what is made from them."""

ABSOLUTE = {"mm": LENGTH, "mm²": 0.005, "°": 0.25, "%": 0.1, "1": 0.01, "K": 1.0, "s": 0.1, "W": 0.5}
"""Unit -> smallest change; a share of the value besides, except for lengths and angles. Angles of flanks in bends
were seen to differ by 0.18° with nothing but the spacing of the stations."""

CURVATURE, CURVATURE_SHARE = 0.004, 0.03
"""1/mm, and of the value: turn radii are compared by their inverse. It is made from places up to 1.5 mm away; at
2.2 mm radius 2.4 % were seen with nothing but the spacing of the stations."""

BY_STATIONS = ("flash_open_inner", "flash_open_outer", "support_open")
"""Lengths along the seam that are counted in stations ..."""

STATION = 1.0
"""mm: ... and so can't be told more closely."""

PAD = 0.05
"""mm: how far along the seam a step may seem to lie elsewhere because both seams have their own stations."""

FROM_CORNERS = (
    "corner_radius", "trap_corner_inner", "trap_corner_outer", "trap_fill", "trap_fill_inner", "trap_fill_outer",
    "trap_holds_up_to",
)  # fmt: skip
"""Quantities made from the curvature of the mid-line, which comes from stations on both sides of a place ..."""

TURN_PAD = 1.0
"""mm: ... so that these may seem to begin and end so much elsewhere."""

_WITHOUT_SHARE = ("°", "mm")


def tolerance(key: str, values: np.ndarray | float) -> np.ndarray:
    """(n,) or a single number: smallest change of a quantity at these values that counts, in its unit."""
    size = np.abs(np.asarray(values, dtype=float))
    if key == "corner_radius":
        return np.asarray(np.fmax(CURVATURE * size**2, CURVATURE_SHARE * size))
    if key in BY_STATIONS:
        return np.full(size.shape, STATION)
    unit = QUANTITIES[key].unit if key in QUANTITIES else "1"
    if unit in _WITHOUT_SHARE:
        return np.full(size.shape, ABSOLUTE[unit])
    return np.asarray(np.fmax(SHARE * size, ABSOLUTE.get(unit, 0.0)))


def comparable_tolerance(key: str, values: np.ndarray) -> np.ndarray:
    """(n,) the same for values as ``comparable`` gives them."""
    if key == "corner_radius":
        return np.asarray(np.fmax(CURVATURE, CURVATURE_SHARE * np.abs(values)))
    return tolerance(key, values)


def pad(key: str) -> float:
    """mm along the seam within which a step of a quantity may lie."""
    return TURN_PAD if key in FROM_CORNERS else PAD


def comparable(key: str, values: np.ndarray, straight: np.ndarray) -> np.ndarray:
    """(n,) values that can be subtracted: the turn radius as its inverse, 0 where the seam runs straight."""
    if key != "corner_radius":
        return values
    with np.errstate(divide="ignore"):
        return np.where(straight, 0.0, 1.0 / values)
