"""``seamcheck.propose``: from two parts without a weld rib to a joint that fits, proved by a review of it."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec

from seamcheck.catalogue.cautions import CAUTIONS
from seamcheck.comparison.compare import compare
from seamcheck.document.plain import to_json
from seamcheck.errors import NotReviewed, UsageError
from seamcheck.isolation import run_isolated
from seamcheck.pipeline import MEMORY_LIMIT, TIME_LIMIT, review, settings_for
from seamcheck.proposal.records import JointProposal, ProposalDocument
from seamcheck.settings.settings import Settings
from seamcheck.version import __version__

if TYPE_CHECKING:
    from seamcheck.pipeline import Progress
    from seamcheck.report.review import Review

KIND, SCHEMA_VERSION = "seamcheck-proposal", 1
ATTEMPTS = 2
"""A proposal whose review lacks only room for the clamp is drawn once more, further from the border."""

FIXED = ("rib_width", "rib_height", "trap_inner", "trap_outer", "lowering")
SIDES = ("inner", "outer")
CARRIERS = ("base", "cover")
OWN_RULES = frozenset(
    {
        "rib-missing", "rib-width", "rib-evenness", "rib-height", "slenderness", "turn-radius", "trap-room",
        "trap-side", "trap-corner", "trap-open-inner", "lip-gap", "sink-travel", "seam-open", "parts-overlap",
    }
)  # fmt: skip
"""Rules on what a proposal itself draws: an attention of one of these keeps it from being a proposal."""


@dataclass(frozen=True, slots=True, eq=False)
class Proposal:
    """A proposal for one model.

    Attributes
    ----------
    document : what reports are made from
    step : the proposed model as STEP, b'' without one; tools : the bodies that were cut away
    review : of the proposed model, None without one; before : of the model as drawn
    """

    document: ProposalDocument
    step: bytes = field(default=b"", repr=False)
    tools: bytes = field(default=b"", repr=False)
    review: Review | None = field(default=None, repr=False)
    before: Review | None = field(default=None, repr=False)

    @property
    def outcome(self) -> str:
        """'proposed', 'not-held', 'no-proposal' or 'not-reviewed'."""
        return self.document.outcome

    @property
    def exit_code(self) -> int:
        """0 proposed, 1 none that holds, 2 not reviewed."""
        return {"proposed": 0, "not-reviewed": 2}.get(self.outcome, 1)

    def to_json(self) -> str:
        """The document as JSON text; the same model, settings and version give the same bytes."""
        plain: dict[str, Any] = msgspec.to_builtins(self.document)
        return to_json(plain)


def propose(
    model: str | PathLike[str] | Sequence[str | PathLike[str]],
    settings: Settings | str | PathLike[str] | None = None,
    *,
    fixed: Mapping[str, float] | None = None,
    draft: float = 0.5,
    lip: float | None = None,
    open_sides: Sequence[str] = (),
    rib_on: str = "base",
    with_view: bool = False,
    progress: Progress | None = None,
    time_limit: float | None = None,
    memory_limit: float | None = None,
    **overrides: Any,
) -> Proposal:
    """Propose a weld rib with flash traps for parts that lie flat on each other, cut it, and review it.

    Parameters
    ----------
    model : STEP file, or several that share a frame
    settings : as for ``seamcheck.review``; their limits bound the proposal
    fixed : dimension -> mm that may not be chosen: rib_width, rib_height, trap_inner, trap_outer, lowering
    draft : degrees, of flanks and trap walls
    lip : mm, least width of the lip between a trap and the border of the contact; None for the default
    open_sides : 'inner', 'outer': sides without a lip
    rib_on : part that is to carry the rib, 'base' or 'cover'
    with_view : whether the review of the proposed model carries outlines and meshes for its page
    progress, time_limit, memory_limit, overrides : as for ``seamcheck.review``

    Returns
    -------
    Proposal
        Its outcome is 'proposed' only where the proposed model, reviewed as any other, breaks no must-fix limit and
        shows no attention that the proposal itself caused.

    Raises
    ------
    UsageError : settings or options that can't be taken
    """
    paths = [Path(model)] if isinstance(model, str | PathLike) else [Path(part) for part in model]
    if not isinstance(settings, Settings):
        settings = settings_for(paths, None if settings is None else Path(settings))
    limits = overrides.pop("limits", {})
    settings = settings.changed({**overrides, **limits})
    wishes = replace(_wishes(fixed or {}, draft, lip, open_sides), rib_on=rib_on)
    if rib_on not in CARRIERS:
        raise UsageError(f"The rib stands on 'base' or 'cover'; got {rib_on!r}.")
    run: dict[str, Any] = {"progress": progress, "time_limit": time_limit, "memory_limit": memory_limit}
    before = review(paths, settings, **run)
    if before.verdict == "not-reviewed":
        message = str(before.document["reason"]["message"])
        return Proposal(_document(paths, "not-reviewed", message, ()), before=before)
    drawn: tuple[tuple[JointProposal, ...], Review, bytes, bytes] | None = None
    for _ in range(ATTEMPTS):
        with tempfile.TemporaryDirectory(prefix="seamcheck-") as folder:
            try:
                joints = run_isolated(
                    "seamcheck.proposal.plan:plan_joints",
                    (tuple(paths), settings, wishes, Path(folder)),
                    progress=progress,
                    time_limit_s=time_limit or TIME_LIMIT,
                    memory_limit_mb=memory_limit or MEMORY_LIMIT,
                    writable=[folder],
                )
            except NotReviewed as reason:
                return Proposal(_document(paths, "not-reviewed", reason.message, ()), before=before)
            file = Path(folder) / "proposed.step"
            if not file.exists() and drawn is not None:
                break  # with room for the clamp it does not fit: the first drawing stands, with what its review says
            if not file.exists():
                message = joints[0].message if joints else "No joint was found."
                return Proposal(_document(paths, "no-proposal", message, joints), before=before)
            after = review([file], settings, cache=False, with_view=with_view, **run)
            drawn = (joints, after, file.read_bytes(), (Path(folder) / "tools.step").read_bytes())
        short = _short_of_land(after)
        if short == 0.0:
            break
        wishes = replace(wishes, outer_at_least=max(joint.room_outer or 0.0 for joint in joints) + short + 0.02)
    assert drawn is not None
    joints, after, step, tools = drawn
    kept, named = _held(joints, after)
    outcome = "not-held" if kept else "proposed"
    message = (
        "The joint was cut, but its review finds what keeps it from being a proposal: " + kept[0]
        if kept
        else "The proposed joint was cut and reviewed: no must-fix limit is broken."
    )
    comparison = compare(before, after, settings).document
    document = _document(paths, outcome, message, joints, kept, named, after.document, dict(comparison))
    return Proposal(document, step, tools, after, before)


def _wishes(fixed: Mapping[str, float], draft: float, lip: float | None, open_sides: Sequence[str]) -> Any:
    from seamcheck.proposal.design import LEAST_LIP, Wishes

    for name, value in fixed.items():
        if name not in FIXED:
            raise UsageError(f"{name!r} can't be fixed; one of {', '.join(FIXED)} can.")
        if not 0.05 <= value <= 20.0:
            raise UsageError(f"{name} must lie between 0.05 and 20 mm; got {value:g}.")
    if not 0.0 <= draft <= 5.0:
        raise UsageError(f"draft must lie between 0 and 5°; got {draft:g}.")
    if lip is not None and not 0.0 < lip <= 20.0:
        raise UsageError(f"The lip must be between 0 and 20 mm wide; got {lip:g}.")
    wrong = [side for side in open_sides if side not in SIDES]
    if wrong:
        raise UsageError(f"A side is 'inner' or 'outer'; got {wrong[0]!r}.")
    return Wishes(dict(fixed), draft, "inner" in open_sides, "outer" in open_sides, LEAST_LIP if lip is None else lip)


def _short_of_land(after: Review) -> float:
    """mm by which the clamp's land is too narrow, where that is all that is broken; else 0."""
    broken = [f for f in after.document.get("findings", []) if f["severity"] == "must-fix" and not f["waived"]]
    if any(f["rule"] != "clamp-land" or f["value"] is None for f in broken):
        return 0.0
    return max((float(f["limit"]) - float(f["value"]) for f in broken), default=0.0)


def _held(joints: Sequence[JointProposal], after: Review) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """What keeps a cut joint from being a proposal, and attentions that are named only."""
    if after.verdict == "not-reviewed":
        return (str(after.document["reason"]["message"]),), ()
    kept = [joint.message for joint in joints if joint.state != "cut"]
    named: list[str] = []
    for finding in after.document["findings"]:
        if finding["waived"] or finding["severity"] == "note":
            continue
        sentence = f"{finding['rule']}: {finding['message']}"
        is_own = finding["rule"] in OWN_RULES
        (kept if finding["severity"] == "must-fix" or is_own else named).append(sentence)
    return tuple(kept), tuple(named)


def _document(
    paths: Sequence[Path], outcome: str, message: str, joints: tuple[JointProposal, ...], kept: tuple[str, ...] = (),
    named: tuple[str, ...] = (), review: Mapping[str, Any] | None = None, comparison: Mapping[str, Any] | None = None,
) -> ProposalDocument:  # fmt: skip
    return ProposalDocument(
        document=KIND, schema_version=SCHEMA_VERSION, seamcheck=__version__, model=tuple(path.name for path in paths),
        outcome=outcome, message=message, joints=joints, kept_from=kept, named=named,
        review=None if review is None else dict(review), comparison=None if comparison is None else dict(comparison),
        cautions=tuple(CAUTIONS),
    )  # fmt: skip
