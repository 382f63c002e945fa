"""``seamcheck.propose``: from two parts without a weld rib to a joint that fits, proved by a review of it."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping, Sequence
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

from msgspec import Struct
from msgspec.structs import replace

from seamcheck.assembly.names import readable
from seamcheck.catalogue.cautions import CAUTIONS
from seamcheck.catalogue.say import say
from seamcheck.comparison.compare import compare
from seamcheck.document.plain import plain, to_json
from seamcheck.errors import NotReviewed, UsageError
from seamcheck.isolation import run_isolated
from seamcheck.pipeline import MEMORY_LIMIT, TIME_LIMIT, review, settings_for
from seamcheck.proposal.proving import held, remedies_of, short_of_land
from seamcheck.proposal.records import JointProposal, ProposalDocument, Remedy
from seamcheck.proposal.rounds import Drawn, draw_in_rounds
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


class Proposal(Struct, frozen=True, eq=False):
    """A proposal for one model.

    Attributes
    ----------
    document : what reports are made from
    step : the proposed model as STEP, b'' without one; tools : the bodies that were cut away
    review : of the proposed model, None without one; before : of the model as drawn
    as_drawn : sections of the model as drawn, in the planes of the proposed one; None where no page was asked for
    """

    document: ProposalDocument
    step: bytes = b""
    tools: bytes = b""
    review: Review | None = None
    before: Review | None = None
    as_drawn: Mapping[str, Any] | None = None

    def __repr__(self) -> str:
        return f"Proposal({self.outcome!r})"

    @property
    def outcome(self) -> str:
        """'proposed', 'not-held', 'nothing-to-do', 'no-proposal' or 'not-reviewed'."""
        return self.document.outcome

    @property
    def exit_code(self) -> int:
        """0 proposed or nothing to do, 1 none that holds, 2 not reviewed."""
        return {"proposed": 0, "nothing-to-do": 0, "not-reviewed": 2}.get(self.outcome, 1)

    def to_json(self) -> str:
        """The document as JSON text; the same model, settings and version give the same bytes."""
        return to_json(plain(self.document))


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
    choices = replace(_choices(fixed or {}, draft, lip, open_sides), rib_on=rib_on)
    if rib_on not in CARRIERS:
        raise UsageError(f"The rib stands on 'base' or 'cover'; got {rib_on!r}.")
    run: dict[str, Any] = {"progress": progress, "time_limit": time_limit, "memory_limit": memory_limit}
    before = review(paths, settings, **run)
    if before.verdict == "not-reviewed":
        message = str(before.document["reason"]["message"])
        return Proposal(_document(paths, "not-reviewed", message, ()), before=before)
    limits_of_run: dict[str, Any] = {"progress": progress, "time_limit_s": time_limit or TIME_LIMIT,
                     "memory_limit_mb": memory_limit or MEMORY_LIMIT}  # fmt: skip
    drawn: Drawn | None = None
    try:
        for _ in range(ATTEMPTS):
            found = draw_in_rounds(paths, before, settings, choices, limits_of_run, run, with_view)
            if isinstance(found, tuple) and drawn is not None:
                break  # with room for the clamp it does not fit: the first drawing stands, with what its review says
            if isinstance(found, tuple):
                return Proposal(_without_drawing(paths, found, before), before=before)
            drawn = found
            short = short_of_land(found.after)
            if short == 0.0 or all(joint.state != "cut" for joint in found.joints):
                break
            choices = replace(
                choices, outer_at_least=max(joint.room_outer or 0.0 for joint in found.joints) + short + 0.02
            )
    except NotReviewed as reason:
        return Proposal(_document(paths, "not-reviewed", reason.message, ()), before=before)
    assert drawn is not None
    joints, after, step, tools = drawn.joints, drawn.after, drawn.step, drawn.tools
    remedies = remedies_of(joints, before, after)
    kept, named = held(joints, before, after, remedies)
    outcome = "not-held" if kept else "proposed"
    message = say("propose.kept", why=kept[0]) if kept else say("propose.held")
    comparison = compare(before, after, settings).document
    document = _document(paths, outcome, message, joints, kept, named, remedies, after.document, dict(comparison))
    as_drawn = None
    if with_view and after.verdict != "not-reviewed":
        with tempfile.TemporaryDirectory(prefix="seamcheck-") as folder:
            file = Path(folder) / "proposed.step"
            file.write_bytes(step)
            as_drawn = run_isolated(
                "seamcheck.proposal.as_drawn:sections_as_drawn",
                (tuple(paths), file, dict(after.document), settings),
                writable=(),
                **limits_of_run,
            )
    return Proposal(document, step, tools, after, before, as_drawn)


def _without_drawing(paths: Sequence[Path], joints: tuple[JointProposal, ...], before: Review) -> ProposalDocument:
    if joints and all(joint.state == "sound" for joint in joints):
        return _document(paths, "nothing-to-do", joints[0].message, joints)
    first = next((joint for joint in joints if joint.state != "sound"), None)
    message = first.message if first else say("propose.none")
    return _document(paths, "no-proposal", message, joints, remedies=remedies_of(joints, before, None))


def _choices(fixed: Mapping[str, float], draft: float, lip: float | None, open_sides: Sequence[str]) -> Any:
    from seamcheck.proposal.design import LEAST_LIP, Choices

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
    return Choices(dict(fixed), draft, "inner" in open_sides, "outer" in open_sides, LEAST_LIP if lip is None else lip)


def _document(
    paths: Sequence[Path], outcome: str, message: str, joints: tuple[JointProposal, ...], kept: tuple[str, ...] = (),
    named: tuple[str, ...] = (), remedies: tuple[Remedy, ...] = (),
    review: Mapping[str, Any] | None = None, comparison: Mapping[str, Any] | None = None,
) -> ProposalDocument:  # fmt: skip
    return ProposalDocument(
        document=KIND, schema_version=SCHEMA_VERSION, seamcheck=__version__,
        model=tuple(readable(path.name) for path in paths),
        outcome=outcome, message=message, joints=joints, kept_from=kept, named=named, remedies=remedies,
        review=None if review is None else dict(review), comparison=None if comparison is None else dict(comparison),
        cautions=tuple(CAUTIONS),
    )  # fmt: skip
