"""Why a review came to nothing, or to nonsense, as far as the model as it was read tells."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.assembly.plausible import check_cover, odd_size
from seamcheck.catalogue.say import refused, say, together
from seamcheck.errors import NotReviewed

_COUNTS = ("single-part", "no-contact", "no-seam", "ambiguous")
"""Codes of the finder that a wrong size or a damaged model can be the cause of."""


_MANY_FACES, _NAMED = 1000, 3  # from which a review takes long; bodies that are named then


def costs(assembly: Assembly) -> str | None:
    """Which bodies a review of a large model spends its time on, as a sentence; None of a small one."""
    solids = sorted((part for part in assembly.parts if part.kind == "solid"), key=lambda part: -part.faces)
    faces = sum(part.faces for part in solids)
    if faces < _MANY_FACES:
        return None
    most = ", ".join(f"'{part.name}' ({part.id})" if part.name else part.id for part in solids[:_NAMED])
    return say("any.costs", count=len(solids), faces=faces, parts=most)


def explained(reason: NotReviewed, assembly: Assembly) -> NotReviewed:
    """A refusal of the finder, with what damage or size of the model have to do with it, if anything."""
    if reason.code not in _COUNTS:
        return reason
    sheets = [part for part in assembly.parts if part.kind == "sheet"]
    if reason.code == "single-part" and sheets:
        reason = _one_solid(assembly.parts, sheets)
    damage = say("any.damage", doubt=[assembly.doubts[0]]) if assembly.doubts else ""
    size = odd_size(_sizes(assembly), assembly.files[0].length_unit)
    return NotReviewed(reason.code, together(reason.message, damage, size), reason.readings)


def _one_solid(parts: Sequence[Part], sheets: Sequence[Part]) -> NotReviewed:
    solid = next(part for part in parts if part.kind == "solid")
    named = [*dict.fromkeys(repr(part.name or part.id) for part in sheets)]
    which = ", ".join(named[:3]) + (", ..." if len(named) > 3 else "")
    solid_name = repr(solid.name or solid.id)
    key = "single-part.sheets.one" if len(named) == 1 else "single-part.sheets"
    return refused("single-part", key, solid=solid_name, sheets=which)


def check_size(assembly: Assembly, parts: Sequence[str], thickness: Sequence[np.ndarray]) -> None:
    """Raise NotReviewed('scale-suspect') for a cover so thin that the length unit must be wrong.

    Parameters
    ----------
    parts : ids of cover and base
    thickness : (n,) mm of every path, of the cover over the seam; NaN where not measured
    """
    every = np.concatenate([*thickness, np.empty(0)])
    median = float(np.nanmedian(every)) if np.isfinite(every).any() else math.nan
    check_cover(median, max(_sizes(assembly, set(parts))), assembly.files[0].length_unit)


def _sizes(assembly: Assembly, only: set[str] | None = None) -> list[tuple[float, str]]:
    """Longest side of the box (mm) and name of every solid, or of some parts."""
    from seamcheck.assembly.bodies import box_of

    found = []
    for part in assembly.parts:
        if part.kind == "solid" and (only is None or part.id in only):
            box = box_of(part.shape) or (0.0,) * 6
            found.append((max(box[axis + 3] - box[axis] for axis in range(3)), part.name or part.id))
    return found
