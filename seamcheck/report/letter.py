"""The questions of a review as a letter in Markdown, one part for each addressee."""

from __future__ import annotations

from seamcheck.catalogue.cautions import ADDRESSEES, CAUTION_LINE
from seamcheck.catalogue.voice import tr
from seamcheck.report import facts
from seamcheck.report.facts import Document


def render_letter(document: Document) -> str:
    """Markdown with the open questions, by addressee, and the findings that they go with."""
    model = document["model"]
    parts = [f"# {tr('Questions on the weld seam of {file}', file=_plain(model['file']))}", ""]
    if model["sha256"]:
        made = {"hash": model["sha256"][:12], "version": document["seamcheck"]}
        parts += [tr("Model SHA-256 {hash}, reviewed with seamcheck {version}.", **made), ""]
    asked: dict[str, list[str]] = {}
    for key, text in facts.questions(document):
        asked.setdefault(_addressee(key), []).append(_question(text))
    for to, own in asked.items():
        parts += [f"## {to}", "", *(f"{n}. {_plain(question)}" for n, question in enumerate(own, 1)), ""]
    if not asked:
        parts += [tr("No question is open."), ""]
    live = [n for n in facts.numbered_findings(document) if not n.is_waived and n.finding["severity"] != "note"]
    if live:
        parts += [f"## {tr('Related findings')}", ""]
        parts += [
            f"- {n.number} ({facts.severity_word(n.finding['severity'])}): {_plain(n.finding['message'])} "
            f"{_plain(facts.place_text(document, n.finding))}."
            for n in live
        ]
        parts.append("")
    return "\n".join([*parts, f"_{tr(CAUTION_LINE)}_", ""])


def _addressee(key: str) -> str:
    """Whom a question is for, as a heading."""
    to = {"moulder": tr("To the moulder"), "supplier": tr("To the material's supplier")}
    return to.get(ADDRESSEES.get(key, ""), tr("To the customer"))


def _question(text: str) -> str:
    """'To ask the moulder: where ...' -> 'Where ...'; a text that names nobody as it is."""
    head, colon, question = text.partition(": ")
    return question[:1].upper() + question[1:] if colon and head.startswith(_ASKS) else text


_ASKS = ("To ask ", "Frage an ")
"""How a question that names somebody begins, in each language."""


def _plain(text: str) -> str:
    """Text in which no sign of the model is markup."""
    shown = "".join(c if c.isprintable() else " " for c in str(text))
    return "".join(f"\\{c}" if c in "\\`*_[]<>#|" else c for c in shown)
