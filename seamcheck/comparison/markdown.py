"""A comparison as Markdown (CommonMark with tables), for the page of a job or a review."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.voice import tr
from seamcheck.comparison import words
from seamcheck.report import facts
from seamcheck.report.ci.escape import code, markdown
from seamcheck.report.facts import finding_title, value_text

Document = Mapping[str, Any]
Record = Mapping[str, Any]

MARKS = {"not-worse": "✅", "worse": "❌", "not-compared": "❔"}
MOST = 60
"""So many rows of one table; the document and the page hold all."""


def render_markdown(document: Document) -> str:
    """The summary as text."""
    return "\n".join(_lines(document)) + "\n"


def _lines(document: Document) -> Iterator[str]:
    mark = MARKS[document["outcome"]]
    names = [code(" + ".join(document[side]["files"]), in_table=False) for side in ("old", "new")]
    yield f"# {mark} {words.outcome_words(document)}: {names[0]} → {names[1]}"
    yield ""
    yield markdown(words.headline(document))
    yield ""
    yield from _sides(document)
    if document["motion"] and document["motion"]["says"]:
        yield markdown(document["motion"]["says"])
        yield ""
    for warning in document["warnings"]:
        yield f"> **{tr('Note:')}** {markdown(warning)}"
        yield ""
    yield from _findings(document)
    for joint in document["joints"]:
        yield from _joint(joint)
    background = list(words.background_lines(document))
    if background:
        yield f"## {tr('Settings, limits and parts')}"
        yield ""
        yield from (f"- {markdown(line)}" for line in background)
        yield ""
    yield f"> {markdown(tr(SHORT_CAUTION))}"


def _sides(document: Document) -> Iterator[str]:
    yield f"|  | {tr('old')} | {tr('new')} |"
    yield "|---|--:|--:|"
    old, new = document["old"], document["new"]
    yield f"| {tr('verdict')} | {facts.verdict_word(old['verdict'])} | {facts.verdict_word(new['verdict'])} |"
    for severity in ("must-fix", "attention", "note"):
        counts = (str(s["findings"][severity]) if s["verdict"] != "not-reviewed" else "–" for s in (old, new))
        yield f"| {facts.severity_word(severity)} | {' | '.join(counts)} |"
    yield f"| {tr('seam')} | {facts.mm(old['length_mm'], 2)} | {facts.mm(new['length_mm'], 2)} |"
    yield ""


def _findings(document: Document) -> Iterator[str]:
    states = {"new": tr("new"), "fixed": tr("fixed"), "dropped": tr("no longer reported")}
    rows = [
        (states.get(state) or words.state_word(state), new or old or {}, said)
        for state, old, new, said in words.told_findings(document)
    ]
    if not rows:
        return
    yield f"## {tr('Findings')}"
    yield ""
    yield f"|  | {tr('finding')} | {tr('value')} | {tr('where')} | {tr('what changed')} |"
    yield "|---|---|---|---|---|"
    for state, finding, said in rows[:MOST]:
        title, severity = markdown(finding_title(finding)), facts.severity_word(finding["severity"])
        what = f"**{title}** ({severity}): {markdown(finding['message'])}"
        where = f"{markdown(words.finding_place(finding))}<br>{code(finding['id'])}"
        yield f"| {state} | {what} | {markdown(value_text(finding))} | {where} | {markdown(said)} |"
    yield ""
    if len(rows) > MOST:
        yield tr("{count} more are in the comparison document.", count=len(rows) - MOST)
        yield ""


def _joint(joint: Record) -> Iterator[str]:
    parts = [code(" + ".join(joint[role]["new"] or joint[role]["old"]), in_table=False) for role in ("cover", "base")]
    seam = markdown(str(joint["new"] or joint["old"]))
    yield "## " + tr("Seam {seam}: {cover} on {base}", seam=seam, cover=parts[0], base=parts[1])
    yield ""
    yield from (f"- {markdown(line)}" for line in words.seam_lines(joint))
    yield ""
    rows = [
        f"| {markdown(words.stretch(change))} | {markdown(quantity['title'])} | "
        f"{markdown(words.change_words(change, quantity['quantity']))} |"
        for _, changes in words.by_place(joint)
        for quantity, change in changes
    ]
    rows += [
        f"| {tr('whole interface')} | {markdown(entry['title'])} | {markdown(words.interface_words(entry))} |"
        for entry in joint["interface"]
    ]
    rows += [
        f"| {words.kind_word(entry['kind'])} | {markdown(entry['title'])} | "
        f"{markdown(words.material_words(entry).partition(': ')[2])} |"
        for entry in joint["material"]
    ]
    if not rows:
        return
    yield f"| {tr('where')} | {tr('quantity')} | {tr('old → new')} |"
    yield "|---|---|---|"
    yield from rows[:MOST]
    yield ""
    if len(rows) > MOST:
        yield tr("{count} more are in the comparison document.", count=len(rows) - MOST)
        yield ""
