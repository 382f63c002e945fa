"""What is being moved of one joint, and for each finding what was moved or why nothing was."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct, field

from seamcheck.catalogue.say import TEXTS, say
from seamcheck.joint import Joint
from seamcheck.proposal.records import Change, Left
from seamcheck.settings.settings import Settings


class Mending(Struct, frozen=True, eq=False):
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
        """(3,) out of the cover, against the beam."""
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
    key, value, limit = f"propose.hand.{finding['rule']}", finding["value"], finding["limit"]
    known = value is not None and limit is not None
    said = say(key if key in TEXTS else "propose.hand", **({"by": abs(float(value) - float(limit))} if known else {}))
    start, end = finding.get("from_s"), finding.get("to_s")
    if start is None or end is None:
        return said
    if abs(float(end) - float(start)) < 0.1:
        return say("propose.at", what=said, s=float(start))
    return say("propose.over", what=said, start=float(start), end=float(end))
