"""A summary in Markdown (CommonMark with tables) for the page of a job or a review."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import PurePath

from seamcheck.catalogue.voice import tr, unit_in_voice
from seamcheck.report import facts
from seamcheck.report.ci.escape import code, markdown
from seamcheck.report.ci.reviews import (
    Document,
    Finding,
    Reviewed,
    as_reviewed,
    caution,
    known_words,
    verdict_words,
    where,
)

MARKS = {"pass": "✅", "attention": "⚠️", "fail": "❌", "not-reviewed": "❔"}
MOST = 100
"""So many findings of one model are listed; hosts cut long summaries off."""


def render_markdown(documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> str:
    """The summary as text: for several models a table of them first, then each with its findings."""
    reviews = as_reviewed(documents, paths)
    return "\n".join(_lines(reviews)) + "\n"


def _lines(reviews: Sequence[Reviewed]) -> Iterator[str]:
    yield f"# {tr('Seam review')}"
    yield ""
    if not reviews:
        yield tr("No model to review.")
        yield ""
    if len(reviews) > 1:
        heads = [tr("model"), tr("verdict"), *map(facts.severity_word, facts.SEVERITIES)]
        yield f"| {' | '.join(heads)} | {tr('seam, {unit}', unit=unit_in_voice('mm'))} |"
        yield "|---|---|--:|--:|--:|--:|"
        for review in reviews:
            yield _row(review)
        yield ""
    for review in reviews:
        yield from _model(review)
    yield f"> {markdown(caution())}"


def _row(review: Reviewed) -> str:
    document = review.document
    counts = ["–"] * 3
    if document["verdict"] != "not-reviewed":
        live = [f["severity"] for f in document["findings"] if not f["waived"]]
        counts = [str(live.count(severity)) for severity in facts.SEVERITIES]
    length = sum(joint["length_mm"] or 0.0 for joint in document["joints"])
    cells = [code(review.title), f"{MARKS[document['verdict']]} {facts.verdict_word(document['verdict'])}"]
    cells += [*counts, facts.coordinate(length, 1)]
    return f"| {' | '.join(cells)} |"


def _model(review: Reviewed) -> Iterator[str]:
    document = review.document
    verdict = document["verdict"]
    yield f"## {MARKS[verdict]} {code(review.title, in_table=False)}: {facts.verdict_word(verdict)}"
    yield ""
    yield markdown(verdict_words(review))
    yield ""
    for joint in document["joints"]:
        names = facts.part_names(document)
        cover, base = (" + ".join(code(names.get(p, p)) for p in joint[role]) for role in ("cover", "base"))
        seam = {"joint": markdown(joint["id"]), "length": facts.mm(joint["length_mm"] or 0.0)}
        yield f"- {tr('Seam {joint}: {length}, cover {cover}, base {base}', **seam, cover=cover, base=base)}"
    for note in facts.texts(document["model"]["notes"]):
        yield f"- {tr('Note:')} {markdown(note)}"
    if document["joints"] or document["model"]["notes"]:
        yield ""
    live = [n.finding for n in facts.numbered_findings(document)]
    if live:
        heads = ["", tr("finding"), tr("value"), tr("limit"), tr("where"), tr("what to change")]
        if review.baseline is not None:
            heads.insert(2, tr("baseline"))
        yield f"| {' | '.join(heads)} |"
        yield f"|{'---|' * len(heads)}"
        for finding in live[:MOST]:
            yield _finding(review, finding)
        yield ""
        if len(live) > MOST:
            yield tr("{count} more findings are in the review document.", count=len(live) - MOST)
            yield ""
    if review.baseline is not None and review.baseline["fixed"]:
        fixed = ", ".join(code(name, in_table=False) for name in review.baseline["fixed"])
        yield tr("Fixed since the baseline: {names}", names=fixed)
        yield ""


def _finding(review: Reviewed, finding: Finding) -> str:
    document = review.document
    mark = {"must-fix": "❌", "attention": "⚠️", "note": "ℹ️"}[finding["severity"]]
    if finding["waived"] or review.is_known(finding):
        mark = "➖"
    lines = [f"{code(path)} {tr('line {number}', number=line)}" for path, line, _ in review.lines_of(finding)[:1]]
    waived = f" ({tr('waived')}: {markdown(finding['waived']['reason'])})" if finding["waived"] else ""
    cells = [
        f"{mark} {facts.severity_word(finding['severity'])}",
        f"**{markdown(facts.finding_title(finding))}**: {markdown(finding['message'])}{waived}",
        markdown(facts.value_text(finding)),
        markdown(facts.limit_words(document, finding)),
        "<br>".join([markdown(where(finding)), *lines, code(finding["id"])]),
        markdown(finding["remedy"]),
    ]
    if review.baseline is not None:
        cells.insert(2, markdown(known_words(review, finding)))
    return f"| {' | '.join(cells)} |"
