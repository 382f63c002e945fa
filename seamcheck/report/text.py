"""A review document for a terminal, as renderables; computes nothing and prints nothing.

Names from the model are shown as plain text: no markup of theirs is obeyed, control characters are replaced.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import decimal_sign, in_voice, localised, tr, unit_in_voice
from seamcheck.report import facts, language
from seamcheck.report.facts import texts
from seamcheck.report.inputs import input_rows
from seamcheck.report.interface import interface_rows
from seamcheck.report.loosened import loosened
from seamcheck.report.terminal import bullets, clean, heading, indented, line, table
from seamcheck.settings.waivers import place_in_words

Document = Mapping[str, Any]

VERDICTS = {
    "pass": ("PASS", "bold green"),
    "attention": ("ATTENTION", "bold yellow"),
    "fail": ("FAIL", "bold red"),
    "not-reviewed": ("NOT REVIEWED", "bold magenta"),
}
STYLES = {"must-fix": "red", "attention": "yellow", "note": "cyan"}
IN_FULL = 20
"""So many findings are shown in full; the others in one line each."""


def full_report(document: Document) -> Iterator[RenderableType]:
    """Everything, the verdict first."""
    yield from _head(document)
    for joint in document["joints"]:
        yield from _joint(joint, document)
    yield from _findings(document)
    yield from _waivers(document)
    if document["joints"]:
        yield from _lists(document)
    yield Text()
    yield Text(tr(SHORT_CAUTION), style="dim")


def one_line(document: Document) -> Iterator[RenderableType]:
    """The verdict with the file's name."""
    word, style = verdict(document)
    yield line((word, style), "  ", clean(document["model"]["file"]), "  ", headline(document))


def verdict(document: Document) -> tuple[str, str]:
    """The verdict as it is shown, and its style."""
    return facts.verdict_word(document["verdict"]).upper().replace("-", " "), VERDICTS[document["verdict"]][1]


def headline(document: Document) -> str:
    """What the verdict rests on, in one sentence."""
    if document["verdict"] == "not-reviewed":
        return clean(document["reason"]["message"])
    counts = dict.fromkeys(STYLES, 0)
    waived = 0
    for finding in document["findings"]:
        if finding["waived"]:
            waived += 1
        else:
            for place in facts.each_place(finding):
                counts[place["severity"]] += 1
    must, look = counts["must-fix"], counts["attention"]
    said = []
    if must:
        one, many = tr("1 place breaks a must-fix limit"), tr("{count} places break a must-fix limit", count=must)
        said.append(one if must == 1 else many)
    if look:
        one, many = tr("1 place asks for attention"), tr("{count} places ask for attention", count=look)
        said.append(one if look == 1 else many)
    if not said:
        said.append(tr("no limit is broken"))
    if waived:
        said.append(tr("{count} waived", count=waived))
    text = ", ".join(said)
    milder = clean(loosened(document))
    return text[0].upper() + text[1:] + "." + (f" {milder}" if milder else "")


def _head(document: Document) -> Iterator[RenderableType]:
    word, style = verdict(document)
    yield Text.assemble((word, style), "  ", headline(document))
    model = document["model"]
    for file in model["files"]:
        known = [clean(file["step_schema"]), clean(facts.length_unit_word(file["length_unit"]))]
        if file["sha256"]:
            known.append(f"SHA-256 {file['sha256'][:12]}")
        yield Text(f"{tr('Model:')} {clean(file['file'])} ({', '.join(f for f in known if f)})")
    inputs = table((tr("input"), tr("value"), tr("from")), fold=True)
    for title, value, origin in input_rows(document):
        inputs.add_row(clean(title), clean(value), origin)
    yield Padding(inputs, (1, 0))
    for note in texts(model["notes"]):
        yield Text(f"{tr('Note:')} {clean(note)}", style="yellow")
    names = _names(document)
    for part in model["parts"]:
        for note in texts(part["notes"]):
            yield Text(f"{tr('Note on {part}:', part=names[part['id']])} {clean(note)}", style="yellow")


def _joint(joint: Mapping[str, Any], document: Document) -> Iterator[RenderableType]:
    names = _names(document)
    cover, base = (" + ".join(names[i] for i in joint[role]) for role in ("cover", "base"))
    rib = {"base": tr("rib on the base"), "cover": tr("rib on the cover"), "none": tr("no weld rib")}[joint["rib_on"]]
    x, y, z = joint["beam"]
    yield Text()
    told = tr(": cover {cover}, base {base}, {rib}, {drawn}", cover=cover, base=base, rib=rib, drawn=drawn_word(joint))
    yield Text.assemble((tr("Seam {joint}", joint=joint["id"]), "bold"), told)
    yield Text(tr("Beam along {direction}, from cover into base", direction=_direction((x, y, z))))
    yield from bullets(map(clean, texts(joint["why"])), "dim")
    for contour in joint["contours"]:
        ends = dict(zip(("start", "end"), (_end(e) for e in contour["ends"]), strict=False))
        shape = tr("closed") if contour["closed"] else tr("from {start} to {end}", **{"start": "-", "end": "-", **ends})
        count = len(contour["stations"]["s"])
        path = {"path": contour["id"], "length": facts.mm(contour["length_mm"]), "shape": shape, "count": count}
        yield Text(tr("Contour {path}: {length}, {shape}, {count} stations", **path))
    for name, place in joint["junctions"].items():
        yield Text(tr("Junction {name} at {place}", name=name, place=_place(place)))
    yield _table(joint, document)
    yield from _whole(joint, document)
    if "material" in joint:
        from seamcheck.report.material_text import material_lines

        for told in material_lines(joint["material"]):  # lines too long for the window go on below their beginning
            yield indented(clean(told.lstrip()), len(told) - len(told.lstrip()))


def drawn_word(joint: Mapping[str, Any]) -> str:
    """How cover and base are drawn to each other."""
    words = {
        "touching": tr("drawn touching"), "gap": tr("drawn with a gap"), "overlap": tr("drawn overlapping"),
        "mixed": tr("drawn partly touching"),
    }  # fmt: skip
    return words.get(joint["modelled_state"], str(joint["modelled_state"]))


def _direction(vector: Sequence[float]) -> str:
    """A unit vector to four digits: '(0, 0, -1)'."""
    between = ", " if decimal_sign() == "." else "; "
    return f"({between.join(localised(f'{round(c, 4) + 0.0:g}') for c in vector)})"


def _whole(joint: Mapping[str, Any], document: Document) -> Iterator[RenderableType]:
    """What was measured over the whole interface."""
    rows = interface_rows(joint, document.get("reasons", {}))
    if not rows:
        return
    values = table((tr("whole interface"), tr("value"), tr("place"), tr("remark")), right=(1,), fold=True)
    for row in rows:
        values.add_row(*map(clean, row))
    yield values


def _end(end: str) -> str:
    return tr("an open end") if end == "open" else tr("junction {name}", name=end.partition(":")[2])


def _table(joint: Mapping[str, Any], document: Document) -> RenderableType:
    """Least, median and largest of every judged quantity against its limit."""
    judged = table([tr("quantity")])
    for head in (tr("least"), "p05", tr("median"), "p95", tr("most"), tr("outside")):
        judged.add_column(head, justify="right", no_wrap=True)
    judged.add_column(tr("limit"))
    judged.add_column(tr("state"), no_wrap=True)
    for column, limits in _judged_columns(joint).items():
        q = QUANTITIES[column]
        title = language.quantity_title(column)
        title = title if q.unit == "1" else f"{title}, {unit_in_voice(q.unit)}"
        summary = joint["summary"].get(column)
        numbers = ["-"] * 6
        if summary is not None:
            keys = ("min", "p05", "median", "p95", "max")
            numbers = ["-" if summary.get(k) is None else _bare(summary[k], column) for k in keys]
            share = summary.get("outside")
            numbers.append("-" if share is None else f"{100 * share:.0f} %")
        if column.startswith("trap_open"):
            numbers = [{"0": tr("closed"), "1": tr("open")}.get(text, text) for text in numbers]
        state, style = _state(joint, document, column, summary is not None)
        judged.add_row(title, *numbers, "; ".join(limits), Text(state, style=style))
    return Padding(judged, (1, 0))


def _bare(value: float, column: str) -> str:
    """A value of a column in the unit of the report, without that unit."""
    q = QUANTITIES[column]
    value, _, decimals = in_voice(value, q.unit, q.decimals)
    return shown(value, "", decimals)


def _judged_columns(joint: Mapping[str, Any]) -> dict[str, list[str]]:
    """Column -> its limits in words."""
    spans: dict[tuple[str, str, str], list[list[float | None]]] = {}
    for contour in joint["contours"]:
        for bound in contour["bounds"]:
            sides = [bound["low"], bound["high"]]
            spans.setdefault((bound["column"], bound["rule"], bound["severity"]), []).append(sides)
    result: dict[str, list[str]] = {}
    order = list(QUANTITIES)
    seen: set[tuple[str, str]] = set()
    for (column, rule, _), sides in sorted(spans.items(), key=lambda item: order.index(item[0][0])):
        words = _limit_words(column, [s[0] for s in sides], [s[1] for s in sides])
        if (column, rule) in seen:  # the bound from which on the rule asks for attention
            words = tr("better {limit}", limit=words)
        seen.add((column, rule))
        if rule in RULES and RULES[rule].fails.startswith("uniformity"):
            words = tr("even: {limit}", limit=words)
        told = result.setdefault(column, [])
        if words not in told:
            told.append(words)
    return result


def _limit_words(column: str, lows: Sequence[Any], highs: Sequence[Any]) -> str:
    low, high = _range(lows, column), _range(highs, column)
    if column.startswith("trap_open"):
        return tr("closed")
    if low and high:
        return facts.span(low, high)
    return facts.at_least(low) if low else facts.at_most(high) if high else ""


def _range(bounds: Sequence[Any], column: str) -> str:
    """'0.60', or '3.00 ... 3.60' where the bound changes along the seam."""
    flat = [v for b in bounds for v in (b if isinstance(b, list) else [b]) if v is not None]
    if not flat:
        return ""
    least, most = _bare(min(flat), column), _bare(max(flat), column)
    return least if least == most else f"{least} ... {most}"


def _state(joint: Mapping[str, Any], document: Document, column: str, is_measured: bool) -> tuple[str, str]:
    found = [f for f in document["findings"] if f["joint"] == joint["id"] and f["column"] == column]
    open_ones = [f["severity"] for f in found if not f["waived"]]
    for severity in STYLES:
        if severity in open_ones:
            return facts.severity_word(severity), STYLES[severity]
    if found:
        return tr("waived"), "dim"
    rules = {b["rule"] for contour in joint["contours"] for b in contour["bounds"] if b["column"] == column}
    for numbered in facts.numbered_findings(document):  # a consequence is told with its cause
        same_joint = numbered.finding["joint"] == joint["id"] and not numbered.is_waived
        if same_joint and rules.intersection(numbered.finding["also"]):
            return tr("see finding {number}", number=numbered.number), STYLES[numbered.finding["severity"]]
    return (tr("within"), "green") if is_measured else (tr("not measured"), "dim")


def _findings(document: Document) -> Iterator[RenderableType]:
    numbered = facts.numbered_findings(document)
    waived = [n.finding for n in numbered if n.is_waived]
    live = [n.finding for n in numbered if not n.is_waived]
    if live:
        yield from heading(tr("Findings ({count})", count=len(live)))
    said: set[str] = set()  # harm that was told already
    for number, finding in enumerate(live, 1):
        if number <= IN_FULL:
            yield _finding(number, finding, document, finding["harm"] not in said)
            said.add(finding["harm"])
        else:
            where = f", {_where(finding, document)}: {finding['message']}"
            yield _numbered(number, Text.assemble((_mark(finding), STYLES[finding["severity"]]), where))
    if waived:
        yield from heading(tr("Waived ({count})", count=len(waived)))
    for finding in waived:
        waiver = finding["waived"]
        until = tr(", until {day}", day=waiver["until"]) if waiver["until"] else ""
        origin = f" ({clean(waiver['origin'])})" if waiver["origin"] else ""
        yield Text(f"  {_mark(finding)} {_where(finding, document)}: {finding['message']}")
        yield indented(f"{tr('Waived')}{until}: {clean(waiver['reason'])}{origin}", 4, "dim")


def _finding(number: int, finding: Mapping[str, Any], document: Document, with_harm: bool) -> RenderableType:
    style = STYLES[finding["severity"]]
    lines: list[RenderableType] = [
        Text.assemble(
            (f"{facts.severity_word(finding['severity']).upper()}  {finding['rule']}", f"bold {style}"),
            f"  {finding['message']}",
        ),
        Text(f"{tr('Where:')} {_where(finding, document)}{_faces(finding, document)}"),
        *([Text(f"{tr('Harm:')} {finding['harm']}", style="dim")] if with_harm else []),
        Text(f"{tr('Change:')} {finding['remedy']}"),
    ]
    if finding["also"]:
        lines.append(Text(f"{tr('Same cause:')} {', '.join(finding['also'])}", style="dim"))
    lines.append(Text(f"{tr('Id:')} {finding['id']}", style="dim"))
    return _numbered(number, Group(*lines))


def _numbered(number: int, content: RenderableType) -> RenderableType:
    grid = Table.grid(padding=(0, 1, 0, 0))
    grid.add_column(justify="right", width=3)
    grid.add_column()
    grid.add_row(f"{number}", content)
    return grid


def _mark(finding: Mapping[str, Any]) -> str:
    return f"{facts.severity_word(finding['severity'])} {finding['rule']}"


def _where(finding: Mapping[str, Any], document: Document) -> str:
    place = tr("along the seam") if finding["at"] is None else _place(finding["at"])
    if finding["contour"] is None:
        return f"{finding['joint']}, {place}"
    on = tr("{place} on {path}", place=place, path=f"{finding['joint']} {finding['contour']}")
    start, end, length = finding["from_s"], finding["to_s"], finding["length_mm"]
    if start is None or end is None:
        return on
    if length and length >= _contour_length(finding, document) - 0.01:
        return tr("{place}, the worst place; along the whole contour", place=on)
    stretch = facts.mm(start) if start == end else facts.span(facts.coordinate(start, 1), facts.mm(end))
    return f"{on}, s = {stretch}" + (tr(" ({length} long)", length=facts.mm(length)) if length else "")


def _contour_length(finding: Mapping[str, Any], document: Document) -> float:
    return next(
        float(contour["length_mm"])
        for joint in document["joints"]
        if joint["id"] == finding["joint"]
        for contour in joint["contours"]
        if contour["id"] == finding["contour"]
    )


def _faces(finding: Mapping[str, Any], document: Document) -> str:
    names = _names(document)
    known = [f for f in finding["faces"] if f["step_entity"]]
    if not known:
        return ""
    return "; " + ", ".join(
        f"{names[f['part']]} {f['step_entity']} ({tr('line {number}', number=f['line'])})" for f in known
    )


def _place(at: Sequence[float]) -> str:
    return facts.point(at)


def _waivers(document: Document) -> Iterator[RenderableType]:
    yield from (Text(told, style="yellow") for told in idle_waivers(document))


def idle_waivers(document: Document) -> Iterator[str]:
    """A sentence for every waiver that has ended or covers nothing."""
    for waiver in document["waivers"]:
        what = tr("The waiver of {rule} {place}", rule=waiver["rule"], place=place_in_words(waiver))
        origin = f" ({clean(waiver['origin'])})" if waiver["origin"] else ""
        if waiver["state"] == "expired":
            yield tr(
                "{waiver} ended on {day} and counts no more{origin}.", waiver=what, day=waiver["until"], origin=origin
            )
        elif waiver["state"] == "unused":
            hint = ""
            if waiver["partly"]:
                hint = tr("; {findings} reaches beyond its place", findings=", ".join(waiver["partly"]))
            told = {"waiver": what, "hint": hint, "origin": origin}
            yield tr("{waiver} covers no finding any more{hint}: remove or correct it{origin}.", **told)


def _lists(document: Document) -> Iterator[RenderableType]:
    runs = reasons_not_measured(document)
    if runs:
        yield from heading(tr("Not measured"))
        yield from bullets(runs)
    yield from heading(tr("Not checked"))
    yield from bullets(map(clean, texts(document["not_checked"])))


def reasons_not_measured(document: Document) -> list[str]:
    """What was not measured: quantity, how much of the seam, why."""
    total: dict[tuple[str, str, str], float] = {}
    for joint in document["joints"]:
        for contour in joint["contours"]:
            s = contour["stations"]["s"]
            step = contour["length_mm"] / len(s) if s else 0.0
            limited = {bound["column"] for bound in contour["bounds"]}
            for run in contour["unmeasured"]:
                if joint["rib_on"] == "none" and run["column"] not in limited:
                    continue  # a lap has one fault: what a rib would have is not missed besides
                key = (joint["id"], run["column"], run["why"])
                length = min(run["to_s"] - run["from_s"] + step, contour["length_mm"])
                total[key] = total.get(key, 0.0) + length
    by_reason: dict[tuple[str, str], list[str]] = {}
    for (joint_id, column, why), length in total.items():
        title = language.quantity_title(column)
        by_reason.setdefault((joint_id, why), []).append(f"{title} ({facts.mm(length)})")
    several = len(document["joints"]) > 1
    return [
        f"{f'{joint_id}: ' if several else ''}{_reason(document, why)}: {_listed(columns)}"
        for (joint_id, why), columns in by_reason.items()
    ]


def _listed(columns: Sequence[str]) -> str:
    """The columns by name; the rest by number where there are many."""
    if len(columns) <= 8:
        return ", ".join(columns)
    return tr("{first} and {count} more quantities", first=", ".join(columns[:4]), count=len(columns) - 4)


def _reason(document: Document, why: str) -> str:
    """Why something was not measured, without the full stop at its end."""
    return str(document["reasons"].get(why, tr("No reason given.")).rstrip("."))


def _names(document: Document) -> dict[str, str]:
    return {
        part["id"]: f"'{clean(part['name'])}' ({part['id']})" if part["name"] else part["id"]
        for part in document["model"]["parts"]
    }
