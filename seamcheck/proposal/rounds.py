"""A model drawn and reviewed, and mended again from that review, until nothing more can be moved."""

from __future__ import annotations

import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec

from seamcheck.catalogue.say import say
from seamcheck.isolation import run_isolated
from seamcheck.pipeline import review
from seamcheck.proposal.proving import burden
from seamcheck.proposal.records import JointProposal
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.report.review import Review

ROUNDS = 3
"""So many times a rib that stands is mended and reviewed before what remains is left."""


@dataclass(frozen=True, slots=True, eq=False)
class Drawn:
    """A model as it was drawn: per joint what was done, its review, the model and the bodies added or cut away."""

    joints: tuple[JointProposal, ...]
    after: Review
    step: bytes
    tools: bytes


def draw_in_rounds(
    paths: Sequence[Path], before: Review, settings: Settings, wishes: Any, limits: dict[str, Any],
    run: dict[str, Any], with_view: bool,
) -> Drawn | tuple[JointProposal, ...]:  # fmt: skip
    """The model with joints cut or mended and its review; where nothing was drawn, what is said of each joint.

    A rib that stands is mended in rounds, each from the review of the one before, until nothing more can be moved.
    """
    best: Drawn | None = None
    model, review_of_model = list(paths), before
    with tempfile.TemporaryDirectory(prefix="seamcheck-") as name:
        for k in range(ROUNDS):
            folder = Path(name) / str(k)
            folder.mkdir()
            joints = run_isolated(
                "seamcheck.proposal.plan:plan_joints",
                (tuple(model), settings, wishes, folder, dict(review_of_model.document)),
                writable=[str(folder)],
                **limits,
            )
            file = folder / "proposed.step"
            if not file.exists():
                return best or joints
            after = review([file], settings, cache=False, with_view=with_view, **run)
            if best is not None:
                joints = _added_up(best.joints, joints)
                if burden(after) >= burden(best.after):
                    return best
            best = Drawn(joints, after, file.read_bytes(), (folder / "tools.step").read_bytes())
            if after.verdict == "not-reviewed" or all(j.state not in ("mended", "sound") for j in joints):
                break
            if not burden(after)[0] and not burden(after)[1]:
                break
            model, review_of_model = [file], after
    assert best is not None
    return best


def _added_up(first: Sequence[JointProposal], then: Sequence[JointProposal]) -> tuple[JointProposal, ...]:
    """What two rounds did to the same joints."""
    later = {joint.joint: joint for joint in then}
    found = []
    for joint in first:
        more = later.get(joint.joint)
        if more is None or not more.changes:
            found.append(joint)
            continue
        message = say("propose.then", first=joint.message, then=more.message)
        left = (*joint.left, *more.left)
        changes = (*joint.changes, *more.changes)
        found.append(msgspec.structs.replace(more, changes=changes, left=left, message=message))
    return tuple(found)
