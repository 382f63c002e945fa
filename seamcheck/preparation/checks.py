"""What a trial can't be prepared from, each in one sentence."""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.preparation.blocks import Drawn
from seamcheck.preparation.clamp import LEVEL
from seamcheck.preparation.corridor import land_of, light_region, tops_of
from seamcheck.preparation.program import Site
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.report.review import Review

IN_THE_WAY = frozenset({"scanner-shadow", "parts-overlap"})
"""What a clamp on the cover may not add to the review's findings: shadow, and bodies that run into each other. Where
the beam is parallel, what stands over the rib shades it too (beam-path)."""

ON_LAND = frozenset({"clamp-land", "clamp-reach", "clamp-tilt"})
"""Limits of the land beside the beam, which a plate over the seam does without."""


class NotPrepared(SeamcheckError):
    """A model from which no clamp, nest and weld path can be made, and why."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why

    def __str__(self) -> str:
        return self.why


def check_folder(folder: Path) -> Path:
    """The folder, if all files can be written into it; UsageError otherwise."""
    if folder.is_symlink():
        raise UsageError(f"{folder} is a link; name a folder that does not exist yet.")
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise UsageError(f"{folder} already exists and is not an empty folder; name another one.")
    parent = folder.resolve().parent
    if not parent.is_dir():
        raise UsageError(f"{folder} can't be written: there is no folder {parent}.")
    if not os.access(parent, os.W_OK):
        raise UsageError(f"{folder} can't be written: no permission in {parent}.")
    return folder


def check_review(before: Review, has_plate: bool = False) -> list[Mapping[str, Any]]:
    """The joints of a review from which tools can be made; NotPrepared otherwise."""
    document = before.document
    if before.verdict == "not-reviewed":
        raise NotPrepared(f"The model was not reviewed: {document['reason']['message']}")
    broken = [f for f in _broken(before) if not (has_plate and f["rule"] in ON_LAND)]
    if broken:
        rules = sorted({f["rule"] for f in broken})
        several = len(broken) > 1
        plate = " A plate needs no land (--plate-thickness, --plate-index)." if set(rules) <= ON_LAND else ""
        raise NotPrepared(
            f"The model breaks {len(broken)} must-fix limit{'s' if several else ''} ({', '.join(rules[:3])}"
            f"{' and others' if len(rules) > 3 else ''}): change it, or waive {'them' if several else 'it'} with a "
            f"reason, before tools are made.{plate}"
        )
    joints: list[Mapping[str, Any]] = list(document["joints"])
    for joint in joints:
        if joint["rib_on"] == "none":
            raise NotPrepared(f"Seam {joint['id']} has no weld rib that a path could follow.")
        if not joint["contours"]:
            raise NotPrepared(f"The rib of seam {joint['id']} could not be traced, so there is no path to follow.")
    return joints


def _broken(before: Review) -> list[Mapping[str, Any]]:
    return [f for f in before.document["findings"] if f["severity"] == "must-fix" and not f["waived"]]


def accepted(before: Review, settings: Settings) -> list[str]:
    """Broken limits that a plate does without."""
    return [] if settings.trial.plate is None else sorted({f["rule"] for f in _broken(before) if f["rule"] in ON_LAND})


def check_land(joint: Mapping[str, Any], site: Site, settings: Settings) -> None:
    """NotPrepared where the beam leaves a clamp no land on either side, or the cover a plate no level top."""
    if settings.trial.plate is not None:
        tops = np.concatenate(tops_of(joint, site.frame))
        if float(np.nanmax(tops) - np.nanmin(tops)) > LEVEL:
            raise NotPrepared(
                f"The cover of seam {joint['id']} is not level: its top differs by "
                f"{np.nanmax(tops) - np.nanmin(tops):.2f} mm in height along the seam, so a plane plate does not press "
                "all of it."
            )
        return
    clear, least = settings.trial.clearance, settings.clamp.width
    light = light_region(joint, site.frame, site.lamp, settings.beam_margin + clear)
    if land_of(joint, site.frame, site.lamp, settings.beam_margin).difference(light).buffer(-least / 2.0).is_empty:
        raise NotPrepared(
            f"The beam and {clear:g} mm beside it leave no land {least:g} mm wide on the cover of seam {joint['id']}: "
            "make the spot narrower or the cover wider, or press through a plate (--plate-thickness, --plate-index)."
        )


def check_drawn(drawn: Drawn, joint: Mapping[str, Any]) -> None:
    """NotPrepared where tools run into parts, press nothing, or no ray finds its way to the seam."""
    if drawn.overlap > 1e-3:
        raise NotPrepared(f"Clamp or nest would cut into a part by {drawn.overlap:.2f} mm³; nothing is written.")
    if not drawn.feet:
        raise NotPrepared(f"Beside the beam there is no room for a clamp on the cover of seam {joint['id']}.")
    lost = int(np.isnan(drawn.told).any(axis=1).sum())
    if lost:
        raise NotPrepared(
            f"For {lost} of {len(drawn.told)} points of seam {joint['id']} no ray through the cover was found, so the "
            "scanner can't be told where to point."
        )


def check_shadow(before: Review, clamped: Review, settings: Settings) -> None:
    """NotPrepared where the clamp on the cover adds shadow or a collision to the review."""
    if clamped.verdict == "not-reviewed":
        raise NotPrepared(f"The model with the clamp on it was not reviewed: {clamped.document['reason']['message']}")
    is_parallel = settings.scanner is None or settings.scanner.is_telecentric
    rules = IN_THE_WAY | ({"beam-path"} if is_parallel else set())
    was = [f["rule"] for f in before.document["findings"] if f["rule"] in rules]
    more = [f for f in clamped.document["findings"] if f["rule"] in rules]
    if len(more) > len(was):
        raise NotPrepared(f"The clamp would stand in the way: {more[-1]['message']}")
