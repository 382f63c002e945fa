"""A proposal for a terminal, as renderables; computes nothing and prints nothing."""

from __future__ import annotations

from collections.abc import Iterator

from rich.console import RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import tr
from seamcheck.proposal.records import JointProposal, ProposalDocument
from seamcheck.report.facts import coordinate, mm, span

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
    yield Padding(Text(joint.message), (0, 0, 0, 2))
    if joint.state == "cut":
        yield Padding(_dimensions(joint), (0, 0, 0, 2))
        told = tr(
            "Seam {length} long; {volume} are cut out of {part}.",
            length=mm(joint.seam_length or 0.0), volume=shown(joint.removed_volume or 0.0, "mm³", 1),
            part=repr(joint.carrier),
        )  # fmt: skip
        yield Padding(Text(told), (0, 0, 0, 2))
    for stretch in joint.short[:MANY]:
        span_of = span(coordinate(stretch.from_s, 1), mm(stretch.to_s))
        where = tr("s = {stretch} of {path}", stretch=span_of, path=stretch.contour)
        room, need, missing = (mm(value, 2) for value in (stretch.room, stretch.need, stretch.missing))
        if stretch.side == "below":
            deep = tr("{where}: the wall is {room} deep, {need} needed.", where=where, room=room, need=need)
            yield Padding(Text(deep), (0, 0, 0, 2))
            continue
        side = {"inner": tr("inner side"), "outer": tr("outer side")}[stretch.side]
        narrow = tr(
            "{where}, {side}: {room} of contact, {need} needed, {missing} too narrow.",
            where=where, side=side, room=room, need=need, missing=missing,
        )  # fmt: skip
        yield Padding(Text(narrow), (0, 0, 0, 2))
    if len(joint.short) > MANY:
        yield Padding(Text(tr("... {count} more stretches, see --json.", count=len(joint.short) - MANY)), (0, 0, 0, 2))
    for way in joint.instead:
        yield Padding(Text(tr("Or: {way}", way=way)), (0, 0, 0, 2))


def _remedies(document: ProposalDocument) -> Iterator[RenderableType]:
    """The findings of the model as drawn, each with whether what is proposed mends it."""
    if not document.remedies:
        return
    yield Text()
    yield Text(tr("Findings of the model as drawn"), style="bold")
    fits = {"yes": tr("fits: yes"), "no": tr("fits: no")}
    lines = [f"{one.rule}, {fits[one.fits]}. {one.says[:1].upper()}{one.says[1:]}" for one in document.remedies]
    distinct = list(dict.fromkeys(lines))
    for line in distinct[:MANY]:
        count = lines.count(line)
        yield Padding(
            Text(f"- {line.rstrip('.')}." + (tr(" ({count} places)", count=count) if count > 1 else "")), (0, 0, 0, 2)
        )
    if len(distinct) > MANY:
        yield Padding(Text(tr("- {count} more, see --json.", count=len(distinct) - MANY)), (0, 0, 0, 2))


def _places(count: int) -> str:
    return tr(" ({count} places)", count=count) if count > 1 else ""


def _dimensions(joint: JointProposal) -> Table:
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), show_edge=False, header_style="bold")
    for k, heading in enumerate((tr("dimension"), tr("value"), "+-")):
        table.add_column(heading, justify="right" if k else "left")
    for one in joint.dimensions:
        tolerance = "" if one.tolerance is None else shown(one.tolerance, one.unit, 2)
        table.add_row(one.title, shown(one.value, one.unit, 2), tolerance)
    if joint.corner_radius is not None:
        table.add_row(tr("least radius of the mid-line"), mm(joint.corner_radius, 2), "")
    return table


def _lines(title: str, sentences: tuple[str, ...]) -> Iterator[RenderableType]:
    if not sentences:
        return
    yield Text()
    yield Text(title, style="bold")
    distinct = list(dict.fromkeys(sentences))
    for sentence in distinct[:MANY]:
        count = sentences.count(sentence)
        yield Padding(Text(f"- {sentence}{_places(count)}"), (0, 0, 0, 2))
    if len(distinct) > MANY:
        yield Padding(Text(tr("- {count} more, see --json.", count=len(distinct) - MANY)), (0, 0, 0, 2))
