"""Where flash can come out: the stretches on which nothing closes a flash trap, and what it would reach."""

from __future__ import annotations

from typing import Any

import numpy as np

from seamcheck.limits.stretches import cell_lengths
from seamcheck.survey.table import Survey

_REACHES = {
    "inner": "Flash would reach the inside of the housing.",
    "outer": "Flash would reach the visible outside.",
}


def flash_values(survey: Survey) -> dict[str, dict[str, Any]]:
    """Length of the seam, per side, on which nothing closes the trap; its place and what flash would reach.

    Notes
    -----
    On a seam that encloses nothing, the sides are those of the path's direction only; both then say so.
    """
    encloses = all(path.closed or "open" not in path.ends for path in survey.paths)
    found = {}
    for side, reaches in _REACHES.items():
        length, at, known = 0.0, None, False
        for path in survey.paths:
            values = path.columns.get(f"trap_open_{side}")
            if values is None:
                continue
            is_open = np.asarray(values, dtype=float) == 1.0
            known |= bool(np.isfinite(values).any())
            length += float(cell_lengths(path.s, path.length, path.closed)[is_open].sum())
            if at is None and is_open.any():
                where = np.flatnonzero(is_open)
                at = [float(c) for c in path.points[where[len(where) // 2]]]
        why = reaches if length > 0 and encloses else ""
        found[f"flash_open_{side}"] = {
            "value": length if known else None,
            "at": at,
            "why": why if known else "no-shoulder",
        }
    return found
