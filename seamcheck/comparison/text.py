"""A comparison for a terminal, as renderables; computes nothing and prints nothing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.voice import tr
from seamcheck.comparison import words
from seamcheck.report import facts
from seamcheck.report.terminal import bullets, clean, heading, indented, line, table

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
    lines = [clean(told) for told in words.background_lines(document)]
    if lines:
        yield from heading(tr("Settings, limits and parts"))
        yield from bullets(lines)
    yield Text()
    yield Text(tr(SHORT_CAUTION), style="dim")


def one_line(document: Document) -> Iterator[RenderableType]:
    """The outcome in one line."""
    told = {"not-worse": tr("NOT WORSE"), "worse": tr("WORSE"), "not-compared": tr("NOT COMPARED")}
    word = tr("IDENTICAL") if document["identical"] else told[document["outcome"]]
    style = OUTCOMES["not-worse" if document["identical"] else document["outcome"]]
    yield line((word, style), "  ", clean(words.headline(document)))


def _sides(document: Document) -> Iterator[RenderableType]:
    severities = ("must-fix", "attention", "note")
    counted = [facts.severity_word(severity) for severity in severities]
    sides = table(("", tr("model"), tr("verdict"), *counted, tr("seam"), "SHA-256"), right=range(3, 7))
    for role in ("old", "new"):
        side = document[role]
        counts = [str(side["findings"][severity]) for severity in severities]
        if side["verdict"] == "not-reviewed":
            counts = ["-"] * 3
        length = facts.mm(side["length_mm"], 2) if side["length_mm"] else "-"
        names = ", ".join(clean(name) for name in side["files"]) or "-"
        sides.add_row(
            words.side_word(role), names, facts.verdict_word(side["verdict"]), *counts, length, side["sha256"][:12]
        )
    yield Padding(sides, (1, 0))


def _findings(document: Document) -> Iterator[RenderableType]:
    told = list(words.told_findings(document))
    for head, states in (
        (tr("New"), ("new",)), (tr("Remaining"), ("worse", "same", "better")), (tr("Fixed"), ("fixed",)),
        (tr("No longer reported, for a reason outside the model"), ("dropped",)),
    ):  # fmt: skip
        entries = [(new or old or {}, said) for state, old, new, said in told if state in states]
        if entries:
            yield from heading(f"{head} ({len(entries)})")
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
    return indented(Group(*lines))


def _joint(joint: Record) -> Iterator[RenderableType]:
    name = " / ".join(str(joint[role]) for role in ("old", "new") if joint[role] is not None)
    parts = [" + ".join(joint[role]["new"] or joint[role]["old"]) for role in ("cover", "base")]
    yield Text()
    roles = tr("cover {cover}, base {base}", cover=clean(parts[0]), base=clean(parts[1]))
    yield Text.assemble((tr("Seam {seam}", seam=clean(name)), "bold"), f": {roles}")
    yield from bullets(map(clean, words.seam_lines(joint)))
    if joint["quantities"]:
        yield Text(tr("What changed along it:"))
        groups = words.by_place(joint)
        for first, changes in groups[:MANY]:
            about = tr("{stretch}, about {place}", stretch=words.stretch(first), place=words.place(first["at"]))
            yield indented(f"- {about}")
            yield indented(_table(changes), 4)
        if len(groups) > MANY:
            yield from bullets(
                [tr("and {count} more stretches; the document and the page hold all", count=len(groups) - MANY)]
            )
    elif joint["old"] is not None and joint["new"] is not None:
        yield from bullets([tr("No quantity along it changed.")])
    changed = [f"{entry['title']} {words.interface_words(entry)}" for entry in joint["interface"]]
    yield from bullets(tr("Whole interface: {value}", value=told) for told in changed)
    yield from bullets(words.known_by_one(joint))
    if joint["material"]:
        yield Text(tr("Light, material and melt:"))
        yield from bullets(clean(words.material_words(entry)) for entry in joint["material"])


def _table(changes: Sequence[tuple[Record, Record]]) -> RenderableType:
    changed = table()
    changed.show_header = False
    for quantity, change in changes:
        changed.add_row(quantity["title"], words.change_words(change, quantity["quantity"]))
    return changed
