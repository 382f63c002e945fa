"""A model drawn and reviewed, and mended again from that review, until nothing more can be moved."""

from __future__ import annotations

import tempfile
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec
from msgspec import Struct

from seamcheck.catalogue.say import say
from seamcheck.isolation import run_isolated, written_by_child
from seamcheck.pipeline import review
from seamcheck.proposal.proving import open_findings
from seamcheck.proposal.records import JointProposal
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.report.review import Review

DRAWN = ("cut", "mended")
"""States of a joint of which a model is written."""

ROUNDS = 3
"""So many times a rib that stands is mended and reviewed before what remains is left."""


class Drawn(Struct, frozen=True, eq=False):
    """A model as it was drawn: per joint what was done, its review, the model and the bodies added or cut away."""

    joints: tuple[JointProposal, ...]
    after: Review
    step: bytes
    tools: bytes


def draw_in_rounds(
    paths: Sequence[Path], before: Review, settings: Settings, choices: Any, limits: dict[str, Any],
    run: dict[str, Any], with_view: bool,
) -> Drawn | tuple[JointProposal, ...]:  # fmt: skip
    """The model with joints cut or mended and its review; where nothing was drawn, what is said of each joint.

    A rib that stands is mended in rounds, each from the review of the one before, until nothing more can be moved.
    """
    best: Drawn | None = None
    model, review_of_model = list(paths), before
    with tempfile.TemporaryDirectory(prefix="seamcheck-") as name:
        for k in range(ROUNDS):
            folder = Path(name) / str(k) / "drawn"
            folder.mkdir(parents=True)
            joints = run_isolated(
                "seamcheck.proposal.plan:plan_joints",
                (tuple(model), settings, choices, folder, dict(review_of_model.document)),
                writable=[str(folder)],
                **limits,
            )
            if all(joint.state not in DRAWN for joint in joints):
                return best or joints
            step, tools = (written_by_child(folder / f"{kind}.step") for kind in ("proposed", "tools"))
            file = folder.parent / "proposed.step"  # where no child could write
            file.write_bytes(step)
            after = review([file], settings, cache=False, with_view=with_view, **run)
            if best is not None:
                joints = _added_up(best.joints, joints)
                if open_findings(after) >= open_findings(best.after):
                    return best
            best = Drawn(joints, after, step, tools)
            if after.verdict == "not-reviewed" or all(j.state not in ("mended", "sound") for j in joints):
                break
            if not open_findings(after)[0] and not open_findings(after)[1]:
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
