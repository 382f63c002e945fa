"""A comparison for a terminal, as renderables; computes nothing and prints nothing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.voice import tr
from seamcheck.comparison import words
from seamcheck.report import facts

Document = Mapping[str, Any]
Record = Mapping[str, Any]

OUTCOMES = {"not-worse": "bold green", "worse": "bold red", "not-compared": "bold magenta"}
STYLES = {"must-fix": "red", "attention": "yellow", "note": "cyan"}
MANY = 12
"""So many stretches are shown; the document holds all."""


def full_report(document: Document) -> Iterator[RenderableType]:
    """Everything, the outcome first."""
    yield from one_line(document)
    yield from _sides(document)
    for warning in document["warnings"]:
        yield Text(f"{tr('Note:')} {clean(warning)}", style="yellow")
    if document["motion"] and document["motion"]["says"]:
        yield Text(document["motion"]["says"], style="yellow")
    yield from _findings(document)
    for joint in document["joints"]:
        yield from _joint(joint)
    lines = [clean(line) for line in words.background_lines(document)]
    if lines:
        yield Text()
        yield Text(tr("Settings, limits and parts"), style="bold")
        yield from _listed(lines)
    yield Text()
    yield Text(tr(SHORT_CAUTION), style="dim")


def one_line(document: Document) -> Iterator[RenderableType]:
    """The outcome in one line."""
    told = {"not-worse": tr("NOT WORSE"), "worse": tr("WORSE"), "not-compared": tr("NOT COMPARED")}
    word = tr("IDENTICAL") if document["identical"] else told[document["outcome"]]
    style = OUTCOMES["not-worse" if document["identical"] else document["outcome"]]
    line = Text.assemble((word, style), "  ", clean(words.headline(document)))
    line.no_wrap = True
    line.overflow = "ignore"
    yield line


def _sides(document: Document) -> Iterator[RenderableType]:
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), show_edge=False, header_style="bold")
    severities = ("must-fix", "attention", "note")
    counted = [facts.severity_word(severity) for severity in severities]
    for k, heading in enumerate(("", tr("model"), tr("verdict"), *counted, tr("seam"), "SHA-256")):
        table.add_column(heading, justify="right" if 3 <= k <= 6 else "left")
    for role in ("old", "new"):
        side = document[role]
        counts = [str(side["findings"][severity]) for severity in severities]
        if side["verdict"] == "not-reviewed":
            counts = ["-"] * 3
        length = facts.mm(side["length_mm"], 2) if side["length_mm"] else "-"
        names = ", ".join(clean(name) for name in side["files"]) or "-"
        table.add_row(
            words.side_word(role), names, facts.verdict_word(side["verdict"]), *counts, length, side["sha256"][:12]
        )
    yield Padding(table, (1, 0))


def _findings(document: Document) -> Iterator[RenderableType]:
    found = document["findings"]
    heads = (
        (tr("New"), [(e["new"], words.how_words(e)) for e in found["new"]]),
        (tr("Remaining"), [(e["new"], words.remaining_words(e)) for e in found["remaining"]]),
        (tr("Fixed"), [(e["old"], words.how_words(e)) for e in found["fixed"]]),
        (
            tr("No longer reported, for a reason outside the model"),
            [(e["old"], words.how_words(e)) for e in found["dropped"]],
        ),
    )
    for heading, entries in heads:
        if entries:
            yield Text()
            yield Text(f"{heading} ({len(entries)})", style="bold")
            for finding, said in entries:
                yield _finding(finding, said)


def _finding(finding: Record, said: str) -> RenderableType:
    style = STYLES[finding["severity"]]
    waived = f"  {tr('waived')}" if finding["waived"] else ""
    severity = facts.severity_word(finding["severity"]).upper()
    lines = [
        Text.assemble((f"{severity}  {finding['rule']}", f"bold {style}"), f"{waived}  {said}"),
        Text(clean(finding["message"])),
        Text(f"{tr('Where:')} {clean(words.finding_place(finding))}; id {finding['id']}", style="dim"),
    ]
    return Padding(Group(*lines), (0, 0, 0, 2))


def _joint(joint: Record) -> Iterator[RenderableType]:
    name = " / ".join(str(joint[role]) for role in ("old", "new") if joint[role] is not None)
    parts = [" + ".join(joint[role]["new"] or joint[role]["old"]) for role in ("cover", "base")]
    yield Text()
    roles = tr("cover {cover}, base {base}", cover=clean(parts[0]), base=clean(parts[1]))
    yield Text.assemble((tr("Seam {seam}", seam=clean(name)), "bold"), f": {roles}")
    yield from _listed([clean(line) for line in words.seam_lines(joint)])
    if joint["quantities"]:
        yield Text(tr("What changed along it:"))
        groups = words.by_place(joint)
        for first, changes in groups[:MANY]:
            about = tr("{stretch}, about {place}", stretch=words.stretch(first), place=words.place(first["at"]))
            yield Padding(Text(f"- {about}"), (0, 0, 0, 2))
            yield Padding(_table(changes), (0, 0, 0, 4))
        if len(groups) > MANY:
            yield from _listed(
                [tr("and {count} more stretches; the document and the page hold all", count=len(groups) - MANY)]
            )
    elif joint["old"] is not None and joint["new"] is not None:
        yield from _listed([tr("No quantity along it changed.")])
    for entry in joint["interface"]:
        key = entry["quantity"]
        by = words.difference(entry["by"], key)
        values = f"{words.amount(entry['old'], key)} → {words.amount(entry['new'], key)}"
        told = f"{entry['title']} {values}{', ' if by else ''}{by}"
        yield from _listed([tr("Whole interface: {value}", value=told)])
    yield from _listed(list(words.known_by_one(joint)))
    if joint["material"]:
        yield Text(tr("Light, material and melt:"))
        yield from _listed([clean(words.material_words(entry)) for entry in joint["material"]])


def _table(changes: Sequence[tuple[Record, Record]]) -> RenderableType:
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), show_edge=False, show_header=False)
    for quantity, change in changes:
        table.add_row(quantity["title"], words.change_words(change, quantity["quantity"]))
    return table


def _listed(lines: Sequence[str]) -> Iterator[RenderableType]:
    for line in lines:
        yield Padding(Text(f"- {line}"), (0, 0, 0, 2))


def clean(text: str) -> str:
    """Text from a model without control characters, which a terminal would obey."""
    return "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in str(text))
