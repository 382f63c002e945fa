"""A review document on one screen of a terminal: verdict, what was taken for what, the gravest findings, what is left.

The tables stand in report/text.py; this computes nothing and prints nothing.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping
from typing import Any

from msgspec import Struct
from rich.console import RenderableType
from rich.text import Text

from seamcheck.catalogue.cautions import ADDRESSEES, CAUTION_LINE
from seamcheck.catalogue.rule import ACCEPTED_EVERYWHERE
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.voice import decimal_sign, localised, tr, voice
from seamcheck.report import facts, language
from seamcheck.report.inputs import in_one_line
from seamcheck.report.loosened import loosened
from seamcheck.report.summary import open_traps
from seamcheck.report.terminal import clean
from seamcheck.report.text import STYLES, VERDICTS, drawn_word, headline, idle_waivers
from seamcheck.report.where import extent_text, part_text

Document = Mapping[str, Any]

LINES = 38
"""So many lines are one screen; findings beyond it are counted."""

FEW = 3
"""Up to so many findings are told with the harm that they do."""

_TONE = {"must-fix": "bold red", "attention": "bold yellow", "note": "cyan"}


class Line(Struct, frozen=True):
    """One paragraph: its text, style, indent of the first and of further lines; ``lead`` signs are bold in ``tone``."""

    text: str
    style: str = ""
    indent: int = 0
    hanging: int = 2
    lead: int = 0
    tone: str = ""

    def folded(self, width: int) -> list[str]:
        """The lines that it takes at a width."""
        if not self.text:
            return [""]
        first, further = " " * self.indent, " " * (self.indent + self.hanging)
        return textwrap.wrap(
            self.text, max(width, 24), initial_indent=first, subsequent_indent=further, break_on_hyphens=False
        )


def screen(document: Document, width: int) -> Iterator[RenderableType]:
    """One screen of lines, none longer than ``width``, the verdict first and the gravest finding after what was taken.

    Parameters
    ----------
    width : columns of the terminal
    """
    head, tail = [*_head(document), *_taken(document)], _tail(document)
    room = LINES - sum(len(line.folded(width)) for line in (*head, *tail))
    for line in (*head, *_findings(document, width, room), *tail):
        for number, row in enumerate(line.folded(width)):
            text = Text(row, style=line.style, no_wrap=True, overflow="ignore")
            if number == 0 and line.lead:
                text.stylize(line.tone, line.indent, line.indent + line.lead)
            yield text


def _head(document: Document) -> Iterator[Line]:
    tone = VERDICTS[document["verdict"]][1]
    word = facts.verdict_word(document["verdict"]).upper().replace("-", " ")
    yield Line(f"{word}  {headline(document)}", lead=len(word), tone=tone)
    if milder := clean(loosened(document)):
        yield Line(milder, style="bold yellow")
    yield from _accepted(document)
    model = document["model"]
    for file in model["files"]:
        if file["file"]:
            hash_ = f", SHA-256 {file['sha256'][:12]}" if file["sha256"] else ""
            unit = f", {clean(facts.length_unit_word(file['length_unit']))}" if file["length_unit"] else ""
            yield Line(f"{_head_word(tr('Model'))}{clean(file['file'])}{unit}{hash_}", hanging=10)
    for note in facts.texts(model["notes"])[:2]:
        yield Line(f"{_head_word(tr('Note'))}{clean(note)}", style="yellow", hanging=10)
    if len(model["notes"]) > 2:
        yield Line(tr("and {count} more notes", count=len(model["notes"]) - 2), style="yellow", indent=10)


def _accepted(document: Document) -> Iterator[Line]:
    """What waivers accept, by rule and reason, and waivers that do nothing any more."""
    said: dict[str, int] = {}
    for finding in document["findings"]:
        if finding["waived"]:
            origin = f" ({clean(finding['waived']['origin'])})" if finding["waived"]["origin"] else ""
            told = f"{finding['rule']}. {tr('Waived:')} {clean(finding['waived']['reason'])}{origin}"
            said[told] = said.get(told, 0) + 1
    idle = list(idle_waivers(document))
    for told, count in list(said.items())[:2]:
        yield Line(f"{_head_word(tr('Accepted'))}{count} x {told}", style="magenta", hanging=10)
    if len(said) > 2:
        yield Line(tr("and {count} more kinds of waived findings", count=len(said) - 2), style="magenta", indent=10)
    for line in idle[:2]:
        yield Line(clean(line), style="yellow")
    if len(idle) > 2:
        yield Line(tr("and {count} more waivers without effect", count=len(idle) - 2), style="yellow", indent=2)


def _taken(document: Document) -> Iterator[Line]:
    """What was taken for cover, base and beam, and the numbers that most results hang on."""
    joints = document["joints"]
    names = facts.part_names(document)
    for joint in joints[:2]:
        which = _head_word(f"{tr('Seam')} {joint['id']}" if len(joints) > 1 else tr("Seam"))
        cover, base = (" + ".join(clean(names[i]) for i in joint[role]) for role in ("cover", "base"))
        x, y, z = (localised(f"{round(c, 3) + 0.0:g}") for c in joint["beam"])
        between = "," if decimal_sign() == "." else ";"
        beam = f"({x}{between}{y}{between}{z})"
        roles = {"cover": repr(cover), "base": repr(base), "beam": beam}
        yield Line(f"{which}{tr('cover {cover}, base {base}, beam along {beam}', **roles)}", hanging=10)
        sure = joint.get("confidence")
        doubt = f" ({tr('confidence')} {localised(f'{sure:.2f}')})" if isinstance(sure, int | float) else ""
        lengths = " + ".join(
            f"{facts.mm(c['length_mm'])} {tr('closed') if c['closed'] else tr('open')}" for c in joint["contours"][:4]
        )
        paths = len(joint["contours"]) - 4
        more = tr(" and {count} more paths", count=paths) if paths > 0 else ""
        yield Line(f"{_kind(joint)}{doubt}, {lengths}{more}, {drawn_word(joint)}", indent=10, hanging=0)
    if len(joints) > 2:
        yield Line(tr("and {count} more seams", count=len(joints) - 2), indent=10)
    if joints:
        yield Line(f"{_head_word(tr('Given'))}{clean(in_one_line(document))}", hanging=10)


def _kind(joint: Mapping[str, Any]) -> str:
    """Kind of the joint, and which part carries the rib."""
    kind = language.kind_title(str(joint.get("kind") or "seam"))
    on = {"base": tr(" on the base"), "cover": tr(" on the cover")}
    return kind + on.get(joint["rib_on"], "")


def _head_word(word: str) -> str:
    """The word at the beginning of a line, ten columns wide."""
    return f"{word:<10}" if len(word) < 10 else f"{word} "


def _findings(document: Document, width: int, room: int) -> list[Line]:
    """The gravest findings in full as far as the room goes, then one line each, then how many more."""
    live = [n for n in facts.numbered_findings(document) if not n.is_waived]
    if not live:
        return []
    lines: list[Line] = [Line("")]
    used, shown_ = 1, 0
    for place, numbered in enumerate(live):
        left = len(live) - place
        told_before = any(n.finding["rule"] == numbered.finding["rule"] for n in live[:place])
        short = _in_short(document, numbered)
        full = [] if told_before else [_in_full(document, numbered)]
        if full and len(live) <= FEW:
            full.insert(0, _in_full(document, numbered, with_harm=True))
        for block in (*full, short):
            size = sum(len(line.folded(width)) for line in block)
            # what is left over needs a line each, or one line that counts it
            if used + size + (min(left - 1, 2) if len(block) > 1 else int(left > 1)) <= room:
                lines += block
                used += size
                shown_ += 1
                break
        else:
            break
    if shown_ < len(live):
        rest = [n.finding["severity"] for n in live[shown_:]]
        counts = ", ".join(f"{rest.count(s)} {facts.severity_word(s)}" for s in STYLES if s in rest)
        told = tr("... and {count} more findings ({counts}); --verbose lists all.", count=len(rest), counts=counts)
        lines.append(Line(told, hanging=4))
    return lines


def _in_full(document: Document, numbered: facts.Numbered, with_harm: bool = False) -> list[Line]:
    finding = numbered.finding
    lead = f"{numbered.number}  {facts.severity_word(finding['severity']).upper()}"
    also = f" {tr('Same cause:')} {', '.join(finding['also'])}." if finding["also"] else ""
    return [
        Line(f"{lead}  {finding['rule']}: {clean(finding['message'])}", hanging=3, lead=len(lead),
             tone=_TONE[finding["severity"]]),
        Line(f"{_where(document, finding)}.{also}", indent=3, hanging=0, style="dim"),
        *([Line(f"{tr('Harm:')} {clean(finding['harm'])}", indent=3, hanging=0, style="dim")] if with_harm else []),
        Line(f"{tr('Change:')} {clean(finding['remedy'])}", indent=3, hanging=0),
    ]  # fmt: skip


def _in_short(document: Document, numbered: facts.Numbered) -> list[Line]:
    finding = numbered.finding
    lead = f"{numbered.number}  {facts.severity_word(finding['severity']).upper()}"
    limit = facts.limit_words(document, finding)
    value = "" if finding["value"] is None else f": {facts.value_text(finding)}"
    text = f"{lead}  {finding['rule']}{value}{f' ({limit})' if limit else ''}, {_where(document, finding, False)}"
    text += facts.more_places(finding)
    return [Line(text, hanging=3, lead=len(lead), tone=_TONE[finding["severity"]])]


def _where(document: Document, finding: Mapping[str, Any], with_point: bool = True) -> str:
    several = len(document["joints"]) > 1
    on = f"{finding['joint']}, " if several and finding["joint"] else ""
    place = "; ".join(t for t in (clean(part_text(document, finding)), facts.place_text(document, finding)) if t)
    paths = sum(len(j["contours"]) for j in document["joints"])
    path = tr(" on {path}", path=finding["contour"]) if paths > 1 and finding["contour"] else ""
    point = ""
    if with_point and finding["at"] and finding["from_s"] is not None:
        met = "other" in (finding.get("args") or {})  # the place of what is met, beside the rib
        at = facts.point(finding["at"])
        point = tr(", met at {place}", place=at) if met else tr(", worst at {place}", place=at)
    extent = extent_text(document, finding).replace("\N{NO-BREAK SPACE}", " ") if with_point else ""
    text = f"{on}{place}{f', {extent}' if extent else ''}{path}{point}"
    return text if not with_point or text.startswith(("s =", "x ", "'")) else text[:1].upper() + text[1:]


def _tail(document: Document) -> list[Line]:
    lines = [Line(""), *(Line(clean(line), style="cyan") for line in open_traps(document))]
    missing = _missing(document)
    if missing:
        told = "; ".join(missing[:2])
        more = tr("; {count} more", count=len(missing) - 2) if len(missing) > 2 else ""
        lines.append(Line(tr("Not measured: {what}.", what=f"{told}{more}"), style="dim"))
    if told := _proposal(document):
        lines.append(Line(told))
    if document["joints"]:
        asks = [m for m in document["not_checked"] if m["key"] in ADDRESSEES]
        rest = [m for m in document["not_checked"] if not m["key"].endswith(".answered") and m not in asks]
        heads = [_subject(line) for line in facts.texts(rest)]
        named = [head for head in heads if head][:4]
        more = tr(" and {count} more", count=len(heads) - len(named)) if len(heads) > len(named) else ""
        told = tr("Not checked: {what}; {count} questions to ask.", what=f"{', '.join(named)}{more}", count=len(asks))
        lines.append(Line(told, style="dim"))
        told = tr("Tables, limits, questions: --verbose. Sections and pictures: --html FILE.")
        lines.append(Line(told, style="dim"))
    lines.append(Line(tr(CAUTION_LINE), style="dim"))
    return lines


def _proposal(document: Document) -> str:
    """The command that draws what findings ask for, where there is one."""
    numbers = [n.number for n in facts.numbered_findings(document) if facts.can_be_proposed(document, n)]
    command = clean(facts.propose_command(document))
    if len(numbers) == 1:
        return tr("Does the change for finding {number} fit? {command}", number=numbers[0], command=command)
    if numbers:
        first, more = ", ".join(str(n) for n in numbers[:FEW]), len(numbers) - FEW
        named = first + (tr(" and {count} more", count=more) if more > 0 else "")
        return tr("Do the changes for findings {numbers} fit? {command}", numbers=named, command=command)
    return ""


def _missing(document: Document) -> list[str]:
    """Quantities that a rule needed and did not get, with the length of seam; what a rule accepts is left out."""
    total: dict[str, float] = {}
    for joint, contour in facts.paths(document):
        judged: dict[str, set[str]] = {}
        for bound in contour["bounds"]:
            checks = RULES[bound["rule"]].checks if bound["rule"] in RULES else ()
            fine = {
                why for c in checks if c.column == bound["column"] for why in (*c.accepted_reasons, *c.failing_reasons)
            }
            judged.setdefault(bound["column"], set()).update(fine)
        s = contour["stations"]["s"]
        step = contour["length_mm"] / len(s) if s else 0.0
        for run in contour["unmeasured"]:
            if run["column"] not in judged or run["why"] in {
                *ACCEPTED_EVERYWHERE,
                *_NOTHING_THERE,
                *judged[run["column"]],
            }:
                continue
            title = language.quantity_title(run["column"])
            key = f"{joint['id']} {title}" if len(document["joints"]) > 1 else title
            total[key] = total.get(key, 0.0) + min(run["to_s"] - run["from_s"] + step, contour["length_mm"])
    return [f"{title} ({facts.mm(length)})" for title, length in sorted(total.items(), key=lambda item: -item[1])]


_NOTHING_THERE = ("straight", "free", "depends")
"""Reasons for which there is nothing to measure: no turn, nothing in the way, or a part of it is told already."""


def _subject(line: str) -> str:
    """The subject of a sentence about what was not checked, where it is short: 'Beam angle, refraction ...'."""
    subject = clean(line).replace(":", ",").replace(";", ",").replace(".", ",").partition(",")[0]
    words = subject.split()
    if len(words) > 5 or words[0] in ("Whether", "Which", "Ob", "Welchen"):
        return ""
    return subject[:1].lower() + subject[1:] if voice().language == "en" else subject
