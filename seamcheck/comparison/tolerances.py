"""How much a quantity must differ to count as changed: less could be the measuring's own noise."""

from __future__ import annotations

import numpy as np

from seamcheck.limits.quantities import QUANTITIES

LENGTH = 0.01
"""mm: the measuring error that seamcheck holds against closed form."""

SHARE = 0.01
"""Of the value: the same for areas and volumes, and for what is made from them."""

ABSOLUTE = {"mm": LENGTH, "mm²": 0.005, "°": 0.1, "%": 0.1, "1": 0.01}
"""Unit -> smallest change; a share of the value besides, except for lengths and angles."""

CURVATURE = 0.004
"""1/mm: turn radii are compared by their inverse; it is made from neighbouring stations and changes with them."""

PAD = 0.05
"""mm: how far along the seam a step may seem to lie elsewhere because both seams have their own stations."""

FROM_TURNS = ("turn_radius", "trap_turn_inner", "trap_turn_outer", "trap_fill", "trap_fill_inner", "trap_fill_outer",
              "trap_holds_up_to")  # fmt: skip
"""Quantities made from the turn of the mid-line, which comes from stations on both sides of a place ..."""

TURN_PAD = 1.0
"""mm: ... so that these may seem to begin and end so much elsewhere."""

RELATIVE_TO = ("°", "mm")


def tolerance(key: str, values: np.ndarray | float) -> np.ndarray:
    """(n,) or a single number: smallest change of a quantity at these values that counts, in its unit."""
    if key == "turn_radius":
        return np.full(np.shape(values), CURVATURE)
    unit = QUANTITIES[key].unit if key in QUANTITIES else "1"
    size = np.abs(np.asarray(values, dtype=float))
    if unit in RELATIVE_TO:
        return np.full(size.shape, ABSOLUTE[unit])
    return np.fmax(SHARE * size, ABSOLUTE.get(unit, 0.0))


def pad(key: str) -> float:
    """mm along the seam within which a step of a quantity may lie."""
    return TURN_PAD if key in FROM_TURNS else PAD


def comparable(key: str, values: np.ndarray, straight: np.ndarray) -> np.ndarray:
    """(n,) values that can be subtracted: the turn radius as its inverse, 0 where the seam runs straight."""
    if key != "turn_radius":
        return values
    with np.errstate(divide="ignore"):
        return np.where(straight, 0.0, 1.0 / values)
