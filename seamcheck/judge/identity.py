"""Names of findings that stay the same over runs and small edits of the model."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence

import numpy as np

CELL = 10.0
"""mm: edge of the cells into which places are sorted."""

_SHIFT = 3.7  # mm: borders of cells lie beside the round coordinates at which people draw


def finding_name(rule: str, side: str, parts: Sequence[str], place: np.ndarray | None) -> str:
    """'rib-width-3f9a2c51' from what is broken and roughly where.

    Parameters
    ----------
    rule, side : key of the rule; which column and which side of the limit
    parts : names of cover and base, never their ids: those follow the order in the file
    place : (3,) mm, middle of the stretch (not its worst station, which noise moves about); None for the
        whole seam
    """
    cell = "whole" if place is None else ",".join(str(int(c)) for c in np.floor((place - _SHIFT) / CELL))
    text = "|".join((rule, side, *parts, cell))
    return f"{rule}-{hashlib.sha256(text.encode()).hexdigest()[:8]}"


def numbered(names: Sequence[str], places: Sequence[tuple[float, ...]]) -> list[str]:
    """The names, told apart where two are alike: the second in the order of its place ends in '-2' ..."""
    result = list(names)
    order = sorted(range(len(names)), key=lambda i: (names[i], places[i]))
    count: dict[str, int] = {}
    for i in order:
        count[names[i]] = count.get(names[i], 0) + 1
        if count[names[i]] > 1:
            result[i] = f"{names[i]}-{count[names[i]]}"
    return result
