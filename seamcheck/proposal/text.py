"""A proposal for a terminal, as renderables; computes nothing and prints nothing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rich.console import RenderableType
from rich.table import Table
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import tr
from seamcheck.proposal.records import JointProposal, ProposalDocument
from seamcheck.report.facts import coordinate, mm, span
from seamcheck.report.terminal import heading, indented, table

STYLES = {
    "proposed": "bold green", "not-held": "bold red", "nothing-to-do": "bold green", "no-proposal": "bold yellow",
    "not-reviewed": "bold magenta",
}  # fmt: skip
MANY = 6
"""So many lines of one kind are shown; the document holds all."""


def full_report(document: ProposalDocument) -> Iterator[RenderableType]:
    """Everything, the outcome first."""
    yield from one_line(document)
    yield Text(f"{tr('Model:')} {', '.join(document.model)}")
    for joint in document.joints:
        yield Text()
        yield from _joint(joint)
    yield from _remedies(document)
    yield from _lines(tr("What keeps it from being a proposal"), document.kept_from)
    yield from _lines(tr("Asks for attention, not caused by the proposal"), document.named)
    yield Text()
    yield Text(
        tr(
            "A proposed joint is geometry that holds the limits given, not a qualified design: check it in CAD, with "
            "the moulder, and by trial welds."
        ),
        style="dim",
    )
    yield Text(tr(SHORT_CAUTION), style="dim")


def one_line(document: ProposalDocument) -> Iterator[RenderableType]:
    """The outcome in one line."""
    words = {
        "proposed": tr("PROPOSED"), "not-held": tr("NOT HELD"), "nothing-to-do": tr("NOTHING TO DO"),
        "no-proposal": tr("NO PROPOSAL"), "not-reviewed": tr("NOT REVIEWED"),
    }  # fmt: skip
    yield Text.assemble((words[document.outcome], STYLES[document.outcome]), "  ", document.message)


def _joint(joint: JointProposal) -> Iterator[RenderableType]:
    roles = tr("cover {cover}, base {base}", cover=repr(joint.cover), base=repr(joint.base))
    yield Text(f"{tr('Seam {seam}', seam=joint.joint)}: {roles}", style="bold")
    yield indented(joint.message)
    if joint.state == "cut":
        yield indented(_dimensions(joint))
        told = tr(
            "Seam {length} long; {volume} are cut out of {part}.",
            length=mm(joint.seam_length or 0.0), volume=shown(joint.removed_volume or 0.0, "mm³", 1),
            part=repr(joint.carrier),
        )  # fmt: skip
        yield indented(told)
    for stretch in joint.short[:MANY]:
        span_of = span(coordinate(stretch.from_s, 1), mm(stretch.to_s))
        where = tr("s = {stretch} of {path}", stretch=span_of, path=stretch.contour)
        room, need, missing = (mm(value, 2) for value in (stretch.room, stretch.need, stretch.missing))
        if stretch.side == "below":
            deep = tr("{where}: the wall is {room} deep, {need} needed.", where=where, room=room, need=need)
            yield indented(deep)
            continue
        side = {"inner": tr("inner side"), "outer": tr("outer side")}[stretch.side]
        narrow = tr(
            "{where}, {side}: {room} of contact, {need} needed, {missing} too narrow.",
            where=where, side=side, room=room, need=need, missing=missing,
        )  # fmt: skip
        yield indented(narrow)
    if len(joint.short) > MANY:
        yield indented(tr("... {count} more stretches, see --json.", count=len(joint.short) - MANY))
    for way in joint.instead:
        yield indented(tr("Or: {way}", way=way))


def _remedies(document: ProposalDocument) -> Iterator[RenderableType]:
    """The findings of the model as drawn, each with whether what is proposed mends it."""
    fits = {"yes": tr("fits: yes"), "no": tr("fits: no")}
    says = [
        f"{one.rule}, {fits[one.fits]}. {one.says[:1].upper()}{one.says[1:].rstrip('.')}." for one in document.remedies
    ]
    yield from _lines(tr("Findings of the model as drawn"), says)


def _dimensions(joint: JointProposal) -> Table:
    found = table((tr("dimension"), tr("value"), "+-"), right=(1, 2))
    for one in joint.dimensions:
        tolerance = "" if one.tolerance is None else shown(one.tolerance, one.unit, 2)
        found.add_row(one.title, shown(one.value, one.unit, 2), tolerance)
    if joint.corner_radius is not None:
        found.add_row(tr("least radius of the mid-line"), mm(joint.corner_radius, 2), "")
    return found


def _lines(title: str, sentences: Sequence[str]) -> Iterator[RenderableType]:
    """Sentences under a heading, each once with how many places say it; nothing where there is none."""
    if not sentences:
        return
    yield from heading(title)
    distinct = list(dict.fromkeys(sentences))
    for sentence in distinct[:MANY]:
        count = sentences.count(sentence)
        yield indented(f"- {sentence}" + (tr(" ({count} places)", count=count) if count > 1 else ""))
    if len(distinct) > MANY:
        yield indented(tr("- {count} more, see --json.", count=len(distinct) - MANY))
