"""How much of a bowed cover the clamp presses flat: bending of a plate."""

from __future__ import annotations

from typing import TypeVar

import numpy as np

from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, value_of
from seamcheck.measure.table import Survey, rib_width
from seamcheck.settings.settings import Settings

Length = TypeVar("Length", float, np.ndarray)

POISSON = 0.4
"""Of common plastics (from memory, 0.35 to 0.42): the plate is stiffer by 1 / (1 - 0.16) for it."""

_PLATE = 1.25  # times the thickness over the seam that a cover may be high along the beam and still be a plate


def stiffness(modulus: float, thickness: Length) -> Length:
    """Bending stiffness of a plate, N·mm: E t³ / (12 (1 - ν²)); modulus in MPa, thickness in mm, one or an array."""
    return modulus * thickness**3 / (12.0 * (1.0 - POISSON**2))


def load_to_flatten(bending: float, bow: float, span: float, width: float) -> float:
    """Line load (N/mm) along both sides of a strip that presses its bow flat.

    Parameters
    ----------
    bending : N·mm, stiffness of the plate; bow : mm, over ``span`` (mm); width : mm, of the strip

    Notes
    -----
    A beam on two supports bends by 5 q l⁴ / (384 E I) under an even load (S. Timoshenko, Strength of Materials): the
    load that bends the strip by its bow, half of it along each side.
    """
    return 384.0 / 5.0 * bending * bow / span**4 * width / 2.0


def pressed_flat(
    joint: Joint, survey: Survey, settings: Settings, length: float | None, width: float | None
) -> Additions:
    """What the clamp presses flat of the cover's flatness, mm; nothing where no flatness of the cover is given.

    Parameters
    ----------
    length, width : mm, of the rectangle round the seam

    Notes
    -----
    A bow over the shorter side is the stiffer one: it counts, as the worst that a flatness allows. In proportion where
    the clamp presses less than it takes.
    """
    bow = settings.tolerances.get("flatness_cover", 0.0)
    if bow <= 0.0 or "flattened" in settings.tolerances:  # given values take precedence
        return Additions({})
    clamp = settings.clamp
    thick = np.concatenate([path.columns["cover_thickness"] for path in survey.paths])
    wide = np.concatenate([rib_width(path) for path in survey.paths])
    known = np.isfinite(thick).any() and np.isfinite(wide).any()
    if clamp.pressure is None or clamp.modulus is None or not known or not length or not width:
        return Additions({"pressed_flat": value_of(None, why="no-stiffness")})
    thickness = float(np.nanmedian(thick))
    boxes = joint.view.boxes(np.array([joint.bodies[part].box for part in joint.cover]))
    if not float(boxes[:, 5].max() - boxes[:, 2].min()) <= _PLATE * thickness:
        return Additions({"pressed_flat": value_of(None, why="no-plate")})
    bending = stiffness(clamp.modulus, thickness)
    takes = max(load_to_flatten(bending, bow, span, other) for span, other in ((length, width), (width, length)))
    presses = clamp.pressure * float(np.nanmean(wide))
    return Additions(
        {
            "pressed_flat": value_of(
                bow * min(1.0, presses / takes), takes_newton_per_mm=takes, has_newton_per_mm=presses
            )
        }
    )
