"""The wall below the rib in its sections: its width, and how far it stands aside."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from seamcheck.measure.additions import Column, Columns
from seamcheck.measure.floor import Floor
from seamcheck.sections.levels import Crossings, crossings, is_inside, nearest_end, support_offset
from seamcheck.sections.section import Section

_BELOW = 0.2  # mm below the lower floor at which the wall is met


def wall_columns(section: Section, floors: Mapping[str, Floor]) -> Columns:
    """Width of the wall right below the floors, and its offset one rib width further down."""
    n, width = len(section.s), section.width
    level = lower_floor(floors)
    level = np.where(np.isfinite(level), level, width)
    met = wall_at(section, level)
    deep = -(level + width)
    below = crossings(section.segments, section.rib_owner, deep)
    inside = is_inside(section.segments, section.rib_owner, deep)
    offset = support_offset(below, n, section.inner_edge, section.outer_edge, width, inside)
    return {
        "wall_width": Column.of(nearest_end(met, n, False) + nearest_end(met, n, True), "broad"),
        "support_offset": Column.of(np.abs(offset), np.where(inside, "no-flank", "nothing-below")),
    }


def lower_floor(floors: Mapping[str, Floor]) -> np.ndarray:
    """(n,) mm of the rib's top above the further of its two floors."""
    return np.asarray(np.fmax(floors["inner"].height, floors["outer"].height))


def wall_at(section: Section, level: np.ndarray) -> Crossings:
    """Outlines of the part with the rib just below a level (n,) mm under the rib's top."""
    return crossings(section.segments, section.rib_owner, -(level + _BELOW))
