"""A proposal for a terminal, as renderables; computes nothing and prints nothing."""

from __future__ import annotations

from collections.abc import Iterator

from rich.console import RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.proposal.records import JointProposal, ProposalDocument

OUTCOMES = {
    "proposed": ("PROPOSED", "bold green"),
    "not-held": ("NOT HELD", "bold red"),
    "nothing-to-do": ("NOTHING TO DO", "bold green"),
    "no-proposal": ("NO PROPOSAL", "bold yellow"),
    "not-reviewed": ("NOT REVIEWED", "bold magenta"),
}
MANY = 6
"""So many lines of one kind are shown; the document holds all."""


def full_report(document: ProposalDocument) -> Iterator[RenderableType]:
    """Everything, the outcome first."""
    yield from one_line(document)
    yield Text(f"Model: {', '.join(document.model)}")
    for joint in document.joints:
        yield Text()
        yield from _joint(joint)
    yield from _remedies(document)
    yield from _lines("What keeps it from being a proposal", document.kept_from)
    yield from _lines("Asks for attention, not caused by the proposal", document.named)
    yield Text()
    yield Text(
        "A proposed joint is geometry that holds the limits given, not a qualified design: check it in CAD, with the "
        "moulder, and by trial welds.",
        style="dim",
    )
    yield Text(SHORT_CAUTION, style="dim")


def one_line(document: ProposalDocument) -> Iterator[RenderableType]:
    """The outcome in one line."""
    word, style = OUTCOMES[document.outcome]
    yield Text.assemble((word, style), "  ", document.message)


def _joint(joint: JointProposal) -> Iterator[RenderableType]:
    yield Text(f"Seam {joint.joint}: cover {joint.cover!r}, base {joint.base!r}", style="bold")
    yield Padding(Text(joint.message), (0, 0, 0, 2))
    if joint.state == "cut":
        yield Padding(_dimensions(joint), (0, 0, 0, 2))
        facts = (
            f"Seam {joint.seam_length:.1f} mm long; {joint.removed_volume:.1f} mm³ are cut out of {joint.carrier!r}."
        )
        yield Padding(Text(facts), (0, 0, 0, 2))
    for stretch in joint.short[:MANY]:
        if stretch.side == "below":
            deep = (
                f"s = {stretch.from_s:.1f} to {stretch.to_s:.1f} mm of {stretch.contour}: the wall is "
                f"{stretch.room:.2f} mm deep, {stretch.need:.2f} mm needed."
            )
            yield Padding(Text(deep), (0, 0, 0, 2))
            continue
        yield Padding(
            Text(
                f"s = {stretch.from_s:.1f} to {stretch.to_s:.1f} mm of {stretch.contour}, {stretch.side} side: "
                f"{stretch.room:.2f} mm of contact, {stretch.need:.2f} mm needed, {stretch.missing:.2f} mm too narrow."
            ),
            (0, 0, 0, 2),
        )
    if len(joint.short) > MANY:
        yield Padding(Text(f"... {len(joint.short) - MANY} more stretches, see --json."), (0, 0, 0, 2))
    for way in joint.instead:
        yield Padding(Text(f"Or: {way}"), (0, 0, 0, 2))


def _remedies(document: ProposalDocument) -> Iterator[RenderableType]:
    """The findings of the model as drawn, each with whether what is proposed mends it."""
    if not document.remedies:
        return
    yield Text()
    yield Text("Findings of the model as drawn", style="bold")
    lines = [f"{one.rule}, fits: {one.fits}. {one.says[:1].upper()}{one.says[1:]}" for one in document.remedies]
    distinct = list(dict.fromkeys(lines))
    for line in distinct[:MANY]:
        count = lines.count(line)
        yield Padding(Text(f"- {line.rstrip('.')}." + (f" ({count} places)" if count > 1 else "")), (0, 0, 0, 2))
    if len(distinct) > MANY:
        yield Padding(Text(f"- {len(distinct) - MANY} more, see --json."), (0, 0, 0, 2))


def _dimensions(joint: JointProposal) -> Table:
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), show_edge=False, header_style="bold")
    for heading in ("dimension", "value", "+-"):
        table.add_column(heading, justify="left" if heading == "dimension" else "right")
    for one in joint.dimensions:
        table.add_row(one.title, f"{one.value:.2f} {one.unit}", "" if one.tolerance is None else f"{one.tolerance:.2f}")
    if joint.corner_radius is not None:
        table.add_row("least radius of the mid-line", f"{joint.corner_radius:.2f} mm", "")
    return table


def _lines(title: str, sentences: tuple[str, ...]) -> Iterator[RenderableType]:
    if not sentences:
        return
    yield Text()
    yield Text(title, style="bold")
    distinct = list(dict.fromkeys(sentences))
    for sentence in distinct[:MANY]:
        count = sentences.count(sentence)
        yield Padding(Text(f"- {sentence}" + (f" ({count} places)" if count > 1 else "")), (0, 0, 0, 2))
    if len(distinct) > MANY:
        yield Padding(Text(f"- {len(distinct) - MANY} more, see --json."), (0, 0, 0, 2))
