"""A review in a few sentences for a busy reader: the seam, the gravest finding, traps that nothing closes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from seamcheck.catalogue.voice import tr, unit_in_voice
from seamcheck.report import facts
from seamcheck.report.facts import Document
from seamcheck.report.loosened import loosened
from seamcheck.report.where import extent_text, part_text


def sentences(document: Document) -> list[str]:
    """Two or three sentences for a busy reader."""
    if document["verdict"] == "not-reviewed":
        reason = document.get("reason") or {}
        return [
            reason.get("message") or tr("The model could not be reviewed."),
            tr("Nothing was measured, nothing was judged."),
        ]
    waived = sum(1 for finding in document["findings"] if finding.get("waived"))
    said = [seam_sentence(document)]
    if milder := loosened(document):
        said.insert(0, milder)
    found = facts.numbered_findings(document)
    live = [n for n in found if not n.is_waived and n.finding["severity"] != "note"]
    if live:
        worst = live[0].finding
        lead = f"{tr('Most severe:')} " if len(found) > 1 else ""
        said.append(f"{lead}{worst['message']} {_where_sentence(document, worst)}".strip())
        if worst.get("remedy"):
            said.append(worst["remedy"])
    else:
        said.append(tr("No part of it breaks a limit that was checked."))
    if waived:
        said.append(tr("1 finding is waived.") if waived == 1 else tr("{count} findings are waived.", count=waived))
    return said


def open_traps(document: Document) -> list[str]:
    """What no limit speaks of and a reader has to know: flash traps that nothing closes, and what flash would reach."""
    told = {f["joint"] for f in document["findings"] if f["rule"] == "traps-missing"}
    inner = {f["joint"] for f in document["findings"] if f["rule"] == "trap-open-inner"}
    said = []
    for joint in facts.joints(document):
        for side, known in (("inner", told | inner), ("outer", told)):
            entry = joint["interface"].get(f"flash_open_{side}") or {}
            if joint["id"] in known or not entry.get("value"):
                continue
            length = {"length": facts.mm(entry["value"])}
            one = tr("Not a finding: the inner flash trap is open over {length}.", **length)
            other = tr("Not a finding: the outer flash trap is open over {length}.", **length)
            said.append(f"{one if side == 'inner' else other} {entry.get('why') or ''}".strip())
    return said


def _where_sentence(document: Document, finding: Mapping[str, Any]) -> str:
    """ "Base 'lid', inner side of the rib: from s = 12.0 to 30.5 mm, ..."; '' where a finding has no place."""
    on, said = part_text(document, finding), _stretch_sentence(document, finding)
    return f"{on[:1].upper()}{on[1:]}: {said[:1].lower()}{said[1:]}" if on and said else said


def _stretch_sentence(document: Document, finding: Mapping[str, Any]) -> str:
    """'From s = 12.0 to 30.5 mm, worst at x 1.0, y 2.0, z 3.0 mm.'; '' where a finding has no place."""
    at = finding.get("at")
    named = zip("xyz", at or (), strict=False)
    worst = ", ".join(f"{axis}\N{NO-BREAK SPACE}{facts.coordinate(c)}" for axis, c in named)
    if finding.get("from_s") is None:
        return tr("At {place}.", place=f"{worst} {unit_in_voice('mm')}") if worst else ""
    if facts.is_all_along(document, finding):
        return tr("Along the whole seam.")
    where = ", ".join(text for text in (facts.place_text(document, finding), extent_text(document, finding)) if text)
    worst = f"{worst} {unit_in_voice('mm')}" if worst else ""
    if finding["from_s"] != finding["to_s"]:
        stretch = tr("From {place}", place=where)
        if worst and "other" in (finding.get("args") or {}):  # the place of what is met, beside the rib
            return tr("{stretch}, met at {worst}.", stretch=stretch, worst=worst)
        return tr("{stretch}, worst at {worst}.", stretch=stretch, worst=worst) if worst else f"{stretch}."
    return tr("At {place}, {point}.", place=where, point=worst) if worst else tr("At {place}.", place=where)


def seam_sentence(document: Document) -> str:
    """'One seam of 382.8 mm, closed, looked at in 766 sections.'"""
    all_paths = list(facts.paths(document))
    length = sum(float(c["length_mm"]) for _, c in all_paths)
    count = sum(len(c["stations"]["s"]) for _, c in all_paths)
    many = len(facts.joints(document))
    shape = ""
    if len(all_paths) == 1:
        shape = tr(", closed") if all_paths[0][1]["closed"] else tr(", open")
    elif many == 1:
        shape = tr(" in {count} paths", count=len(all_paths))
    what = tr("One seam") if many == 1 else tr("{count} seams", count=many)
    return tr(
        "{what} of {length}{shape}, measured in {count} sections.",
        what=what, length=facts.mm(length), shape=shape, count=count,
    )  # fmt: skip
