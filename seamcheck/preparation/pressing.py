"""Force along the seam, and how far the cover's strip between rib and land bends under it. Arrays in, arrays out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.measure.flattening import stiffness
from seamcheck.preparation.corridor import column
from seamcheck.settings.settings import Settings


class Pressing(Struct, frozen=True, eq=False):
    """What presses at every station (n,) of a contour; NaN where it is not known.

    Attributes
    ----------
    force : N/mm along the seam; arm : mm from the rib's edge to the middle of the pressed land
    bending : mm, of the cover's strip between both; land : mm, of the side that the review names
    """

    force: np.ndarray
    arm: np.ndarray
    bending: np.ndarray
    land: np.ndarray


def pressing(contour: Mapping[str, Any], settings: Settings, pressure: float | None) -> Pressing:
    """What a clamp beside the beam does along a contour; ``pressure`` in MPa over the rib."""
    stations, clamp, trial = contour["stations"], settings.clamp, settings.trial
    width, land = column(stations, "rib_width"), column(stations, "clamp_land")
    side = 1.0 if contour.get("clamp_side") != "inner" else -1.0
    edge = side * column(stations, "light_enters_outer" if side > 0 else "light_enters_inner")
    edge = np.where(np.isnan(edge), width / 2.0, edge)
    pressed = np.clip(land - trial.clearance, 0.0, trial.frame_width)
    arm = edge - width / 2.0 + settings.beam_margin + trial.clearance + pressed / 2.0
    force = np.full(len(width), np.nan) if pressure is None else pressure * width
    bends = np.full(len(width), np.nan)
    if clamp.modulus is not None:
        bends = bending(force, arm, column(stations, "cover_thickness"), clamp.modulus)
    return Pressing(force, arm, bends, land)


def bending(force: np.ndarray, arm: np.ndarray, thickness: np.ndarray, modulus: float) -> np.ndarray:
    """(n,) mm, how far a strip of the cover bends between rib and land.

    Parameters
    ----------
    force : (n,) N/mm along the seam; arm : (n,) mm from the rib's edge to the middle of the land
    thickness : (n,) mm of the cover; modulus : MPa

    Notes
    -----
    Cylindrical bending of a plate strip held at the land, loaded along its free edge: F a³ / (3 D),
    D = E t³ / (12 (1 - ν²)) (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, chapter 1; beam formula of
    any handbook). Where a core presses on the other side too, it bends less.
    """
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.asarray(force * arm**3 / (3.0 * stiffness(modulus, thickness)))
