"""The weld rib in its sections: width, height, drafts, slenderness."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from msgspec import Struct

from seamcheck.contour import Path
from seamcheck.measure.additions import Column, Columns
from seamcheck.measure.floor import Floor, find_floor
from seamcheck.measure.ridge import LOWERED, missing_width
from seamcheck.sections.levels import crossings, nearest_end
from seamcheck.sections.section import Section, Sections
from seamcheck.sections.stretches import cell_lengths, weighted_median

_SHARES = (0.4, 0.5, 0.6)  # of the rib's height, at which its flanks are met


class Usual(Struct, frozen=True):
    """Medians of the whole seam, mm: width of the rib's top, and height above its floors."""

    width: float
    height: float

    @staticmethod
    def of(measured: Sequence[tuple[Path, Sections]]) -> Usual:
        """The medians over the stations of all paths."""
        weights = np.concatenate([cell_lengths(along.s, path.length, path.closed) for path, along in measured])
        width = np.concatenate([along.each.width[along.of] for _, along in measured])
        height = np.concatenate([lower_height(floors_beside(along.each, None))[along.of] for _, along in measured])
        return Usual(weighted_median(width, weights), weighted_median(height, weights))


def floors_beside(section: Section, usual: Usual | None) -> dict[str, Floor]:
    """The trap floors on both sides; what lies higher, where the rib's top was chamfered or lowered, is none."""
    off = np.zeros(len(section.width)) if usual is None else missing_width(section.width, usual.width)
    own = 0.0 if usual is None or not np.isfinite(usual.height) else LOWERED * usual.height
    deepest = deepest_floor(section.width)
    return {name: find_floor(side, section.edges[name], deepest, off, own) for name, side in section.sides.items()}


def deepest_floor(width: np.ndarray) -> np.ndarray:
    """(n,) mm below the rib's top beyond which a floor is that of the housing, not of a flash trap."""
    return np.maximum(4.0 * width, 3.0)


def lower_height(floors: Mapping[str, Floor]) -> np.ndarray:
    """(n,) mm of the rib's top above the nearer of its two floors."""
    return np.asarray(np.fmin(floors["inner"].height, floors["outer"].height))


def rib_columns(section: Section, floors: Mapping[str, Floor], rounded: bool) -> Columns:
    """Width at the top, at half height and at the root, heights, drafts and slenderness.

    Parameters
    ----------
    rounded : whether the rib's top has no flat: then it has no width
    """
    top = Column.of(np.full(len(section.s), np.nan), "rounded-top") if rounded else Column.of(section.width, "no-rib")
    heights = {f"rib_height_{name}": Column.of(floor.height, "no-shoulder") for name, floor in floors.items()}
    height = lower_height(floors)
    flanks = _flanks(section, height)
    slenderness = Column.of(height / flanks["rib_width_mid"].values, "depends")
    rib_height = Column.of(height, "no-shoulder")
    return {
        "rib_width_top": top, **heights, "rib_height": rib_height, **flanks, "slenderness": slenderness,
    }  # fmt: skip


def _flanks(section: Section, height: np.ndarray) -> Columns:
    """Widths at half height and at the root, drafts: from the flanks met at three heights."""
    n = len(height)
    reach: dict[str, list[np.ndarray]] = {"inner": [], "outer": []}
    for share in _SHARES:
        found = crossings(section.segments, section.rib_owner, -share * height)
        for name in reach:
            reach[name].append(nearest_end(found, n, name == "outer"))
    missing = np.where(np.isnan(height), "no-shoulder", "no-flank")
    columns = {"rib_width_mid": Column.of(reach["inner"][1] + reach["outer"][1], missing)}
    root = np.zeros(n)
    for name, (upper, middle, lower) in reach.items():
        with np.errstate(invalid="ignore", divide="ignore"):
            slope = (lower - upper) / ((_SHARES[2] - _SHARES[0]) * height)
        root = root + middle + slope * 0.5 * height
        columns[f"draft_{name}"] = Column.of(np.degrees(np.arctan(slope)), missing)
    return {**columns, "rib_width_root": Column.of(root, missing)}
