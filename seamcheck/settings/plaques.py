"""Measured plaques: what the settings say of the cover's transmission, checked for what can't be true."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from seamcheck.errors import UsageError


@dataclass(frozen=True, slots=True)
class Plaque:
    """One measured plaque: thickness in mm, total transmission at the weld wavelength as a share 0..1."""

    thickness: float
    transmission: float


def check_plaques(plaques: Sequence[Plaque], index: float, scatter: float) -> tuple[Plaque, ...]:
    """Return the plaques sorted by thickness; UsageError with a sentence when they can't be true.

    Parameters
    ----------
    plaques : one or more
    index : refractive index of the cover
    scatter : relative standard deviation of one measured transmission
    """
    limit = 2.0 * index / (index**2 + 1.0)  # a plate that absorbs nothing: its two surfaces alone
    ordered = tuple(sorted(plaques, key=lambda p: (p.thickness, p.transmission)))
    for plaque in ordered:
        if plaque.transmission > limit * (1.0 + scatter):
            raise UsageError(
                f"The {plaque.thickness:g} mm plaque passes {100 * plaque.transmission:g} %, but the two "
                "surfaces of "
                f"a plastic with index {index:g} alone leave {100 * limit:.1f} %. Was the empty beam taken "
                "as 100 %, and "
                "is it the transmission of the plaque and not of the bulk alone?"
            )
    for thin, thick in pairwise(ordered):
        if thick.thickness > thin.thickness and thick.transmission > thin.transmission * (1.0 + 3.0 * scatter):
            raise UsageError(
                f"The {thin.thickness:g} mm plaque passes {100 * thin.transmission:g} %, the thicker one of "
                f"{thick.thickness:g} mm {100 * thick.transmission:g} %. A thicker plaque of the same "
                "material can't "
                "pass more: were two values swapped, or are the plaques of different grades?"
            )
    return ordered
