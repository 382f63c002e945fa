"""The questions of a review as a letter in Markdown, one part for each addressee."""

from __future__ import annotations

from seamcheck.catalogue.cautions import CAUTION_LINE
from seamcheck.report import facts
from seamcheck.report.facts import Document


def render_letter(document: Document) -> str:
    """Markdown with the open questions, by addressee, and the findings that they go with."""
    model = document["model"]
    parts = [f"# Questions on the weld seam of {_plain(model['file'])}", ""]
    if model["sha256"]:
        parts += [f"Model SHA-256 {model['sha256'][:12]}, reviewed with seamcheck {document['seamcheck']}.", ""]
    asked: dict[str, list[str]] = {}
    for _, text in facts.questions(document):
        to, question = _addressee(text)
        asked.setdefault(to, []).append(question)
    for to, own in asked.items():
        parts += [f"## To {to}", "", *(f"{n}. {_plain(question)}" for n, question in enumerate(own, 1)), ""]
    if not asked:
        parts += ["No question is open.", ""]
    live = [n for n in facts.numbered_findings(document) if not n.is_waived and n.finding["severity"] != "note"]
    if live:
        parts += ["## Findings that they go with", ""]
        parts += [
            f"- {n.number} ({n.finding['severity']}): {_plain(n.finding['message'])} "
            f"{_plain(facts.place_text(document, n.finding))}."
            for n in live
        ]
        parts.append("")
    return "\n".join([*parts, f"_{CAUTION_LINE}_", ""])


def _addressee(text: str) -> tuple[str, str]:
    """'To ask the moulder: where ...' -> ('the moulder', 'Where ...'); whoever it is, where a text names nobody."""
    head, colon, question = text.partition(": ")
    if colon and head.startswith("To ask "):
        return head.removeprefix("To ask "), question[:1].upper() + question[1:]
    return "the customer", text


def _plain(text: str) -> str:
    """Text in which no sign of the model is markup."""
    shown = "".join(c if c.isprintable() else " " for c in str(text))
    return "".join(f"\\{c}" if c in "\\`*_[]<>#|" else c for c in shown)
