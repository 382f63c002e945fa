"""What is being moved of one joint, and for each finding what was moved or why nothing was."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from seamcheck.joint import Joint
from seamcheck.proposal.records import Change, Left
from seamcheck.settings.settings import Settings

BY_HAND = {
    "cover-hole": "the hole has a purpose that the model does not tell; move it[ {by} mm] out of the light by hand",
    "beam-path": "what shades the seam has a purpose that the model does not tell; move it by hand",
    "light-clear": "what shades the seam has a purpose that the model does not tell; move it[ {by} mm] by hand",
    "scanner-shadow": "it is decided by the scanner's place and by what stands beside the seam, not by the joint",
    "beam-angle": "it is decided by the scanner's place and field[, {by}° too far], not by the joint",
    "clamp-reach": "what stands on the land has a purpose that the model does not tell; move it[ {by} mm] by hand",
    "wall-opening": "the opening has a purpose that the model does not tell; move it by hand",
    "flatness-stack": "it is decided by the tolerances of the parts[, {by} mm too wide], not by their drawn shape",
    "support-offset": "the wall below the seam would have to move[ by {by} mm], and with it the housing's inside",
    "wall-to-rib": "the wall below the seam would have to grow, and with it the housing's inside or outside",
    "overhang": "the wall below the seam would have to move[ by {by} mm], and with it the housing's inside",
    "near-parts": "the other part has its place for a reason that the model does not tell[; {by} mm are missing]",
    "path-distance": "the two seams would have to move[ {by} mm] apart, and with them the walls below",
    "seam-step": "the whole seam would have to be laid level",
    "corner-radius": "the wall below the corner would have to turn in a larger radius[, by {by} mm]",
    "guide-play": "which of the two flanks may give way is not told by the model; set one back by hand",
    "guide-depth": "which of the two flanks may grow is not told by the model; lengthen one by hand",
    "guide-draft": "the draft hangs on how both parts are moulded, which the model does not tell",
    "sink-mark": "the plate below the rib would have to grow, and with it the part's other side",
    "second-collapse": "it is decided by the collapses that are planned, not by a fault of the joint",
    "rib-missing": "the rib is missing over a stretch that is not closed by its neighbours",
}
"""Rule -> why no move of the joint's own faces mends it; in brackets what is said where the finding has a number."""


@dataclass(frozen=True, slots=True, eq=False)
class Mending:
    """What is being moved of one joint; ``shapes`` changes as moves succeed."""

    joint: Joint
    record: Mapping[str, Any]
    settings: Settings
    lip: float
    shapes: dict[str, Any]
    changes: list[Change] = field(default_factory=list)
    left: list[Left] = field(default_factory=list)
    handled: set[str] = field(default_factory=set)

    @property
    def up(self) -> np.ndarray:
        """(3,) out of the part that carries the rib."""
        axis: np.ndarray = self.joint.frame.axes[2]
        return axis

    @property
    def light_side(self) -> np.ndarray:
        """(3,) out of the cover towards the light's source."""
        return -np.asarray(self.joint.beam, dtype=float)


def leave(work: Mending, finding: Mapping[str, Any], why: str) -> None:
    """Note that nothing is moved for a finding, and why."""
    work.handled.add(str(finding["id"]))
    work.left.append(Left(finding=finding["id"], rule=finding["rule"], why=why))


def moved(
    work: Mending, part: str, shape: Any, what: str, by: float | None, findings: Sequence[Mapping[str, Any]]
) -> None:
    """Note the new shape of a part (id), what was moved by how many mm, and the findings that asked for it."""
    work.shapes[part] = shape
    ids = tuple(str(f["id"]) for f in findings)
    work.handled.update(ids)
    name = next((p.name for p in work.joint.parts.values() if p.id == part), None) or part
    work.changes.append(Change(part=name, what=what, by=by, findings=ids))


def by_hand(finding: Mapping[str, Any]) -> str:
    """Why no move of the joint's own faces mends a finding, with what was measured there."""
    said = BY_HAND.get(str(finding["rule"]), "no move of the joint's own faces is known to mend it")
    value, limit, unit = finding["value"], finding["limit"], finding.get("unit")
    known = value is not None and limit is not None and (unit in ("mm", "°") or "{by}" in said)
    said = re.sub(r"\[(.*?)\]", r"\1" if known else "", said)
    said = said.format(by=f"{abs(float(value) - float(limit)):.2f}") if known else said
    return said + _place(finding)


def _place(finding: Mapping[str, Any]) -> str:
    """Where along the seam a finding lies, as the end of a sentence."""
    start, end = finding.get("from_s"), finding.get("to_s")
    if start is None or end is None:
        return ""
    if abs(float(end) - float(start)) < 0.1:
        return f" (at s = {float(start):.1f} mm)"
    return f" (over s = {float(start):.1f} to {float(end):.1f} mm)"
