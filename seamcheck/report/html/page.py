"""Fills the page's template with a review document. Texts are written here, figures by the page's script.

The page asks nothing of a network: script, style and fonts stand in it, and its security policy allows
nothing else. Names from the model reach it by two ways only: through the template, which escapes them, and
inside the compressed data, which is never read as markup.
"""

from __future__ import annotations

import base64
import gzip
import json
from collections import Counter
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

import numpy as np
from markupsafe import Markup

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.voice import Voice, localised, tr, translated, unit_in_voice, voice
from seamcheck.document.view import SectionSet, unpack_view
from seamcheck.report import bands, facts, language, summary, where
from seamcheck.report.facts import Document
from seamcheck.report.fields import Fields, page_footer
from seamcheck.report.html.compiled import template
from seamcheck.report.html.fonts import font_style
from seamcheck.report.html.glossary import glossary
from seamcheck.report.html.material import material_chapter
from seamcheck.report.html.packing import page_view
from seamcheck.report.html.script_voice import script_voice
from seamcheck.report.html.skeleton import asset, policy
from seamcheck.report.html.static import charts_svg, plan_svg, strip_svg
from seamcheck.report.inputs import in_one_line, input_rows, origin_word
from seamcheck.report.interface import interface_rows
from seamcheck.report.joint_drawing import joint_drawing
from seamcheck.report.plan import sections_of
from seamcheck.report.reading_svg import reading_svg
from seamcheck.report.section import section_shapes
from seamcheck.report.section_svg import section_svg
from seamcheck.report.text import drawn_word

_HERE = "seamcheck.report.html"


def render_html(
    document: Document, paper: str | None = None, fields: Fields | None = None,
    as_drawn: Mapping[str, Any] | None = None, remedies: Sequence[tuple[str, str, str]] = (),
) -> str:  # fmt: skip
    """The whole page as text.

    Parameters
    ----------
    document : review document (document/make.py), with or without the part "view"
    paper : 'A4' or 'letter' fixes the paper for printing; None leaves it to whoever prints
    fields : title, project ... of the report
    as_drawn : of a proposal, sections of the parts as drawn at the same stations; the page then switches between both
    remedies : of a proposal, for every finding of the model as drawn its rule, 'yes' or 'no' for whether the proposal
        mends it, and what was moved or why nothing was
    """
    fields = fields or Fields()
    sections, meshes = unpack_view(document.get("view"))
    style = font_style() + asset(_HERE, "chart.css") + asset(_HERE, "page.css")
    if paper is not None:
        style += f"@page {{ size: {_PAPERS[paper]}; }}\n"
    style += page_footer(fields, str(document["model"]["file"]), str(document["model"].get("sha256") or ""))
    script = asset(_HERE, "page.js")
    text: str = _template(voice()).render(
        d=document,
        facts=facts,
        interface_rows=interface_rows,
        short_caution=tr(SHORT_CAUTION),
        language=voice().language,
        unit=unit_in_voice("mm"),
        localised=localised,
        drawn_word=drawn_word,
        known_word=language.known_word,
        verdict=document["verdict"],
        headline=facts.headline(document),
        sentences=summary.sentences(document),
        open_traps=summary.open_traps(document),
        where=where,
        findings=facts.numbered_findings(document),
        names=facts.part_names(document),
        joints=facts.joints(document),
        tightest=bands.tightest(document),
        fields=fields,
        joint_drawing=joint_drawing(with_style=False),
        decided=_decided(fields),
        questions=facts.questions(document),
        inputs=input_rows(document),
        static=lambda numbered: _static_section(document, numbered, sections),
        reading_picture=reading_svg,
        static_plan=cache(lambda index: plan_svg(document, facts.joints(document)[index], meshes)),
        static_strip=lambda joint: strip_svg(document, joint),
        static_charts=lambda joint: charts_svg(document, joint),
        counts=_counts(document),
        gravest=[n for n in facts.numbered_findings(document) if not n.is_waived][:3],
        next_steps=_next_steps(document),
        given=in_one_line(document),
        severities={f["severity"] for f in document["findings"]},
        rules_found=sorted({f["rule"]: facts.rule_title(f["rule"]) for f in document["findings"]}.items()),
        limit_rows=_limit_rows(document),
        glossary=glossary(),
        material=material_chapter(document),
        quantities=QUANTITIES,
        data=pack({**page_data(document), "as_drawn": page_view(as_drawn)}),
        script=script,
        style=style,
        policy=policy(style, script, pictures=True),
        has_view=bool(document.get("view")),
        remedies=Counter(remedies).items(),
    )
    return text.encode("utf-8", "replace").decode("utf-8")  # lone surrogates from damaged names


def prepare() -> None:
    """Read and compile what every page is made with, once for a process that forks others."""
    _template(voice())
    font_style()
    for name in ("chart.css", "page.css", "page.js"):
        asset(_HERE, name)


def page_data(document: Document) -> dict[str, Any]:
    """What the page's script draws from; see frontend/src/types.ts."""
    model = document["model"]
    shown = [q for q in QUANTITIES.values() if q.per == "station"]
    return {
        "joints": [
            {key: joint.get(key) for key in ("id", "cover", "base", "rib_on", "beam", "contours", "summary")}
            for joint in facts.joints(document)
        ],
        "parts": [{"id": p["id"], "name": p.get("name"), "role": p.get("role")} for p in model.get("parts") or ()],
        "quantities": {
            q.key: {"title": language.quantity_title(q.key), "unit": q.unit, "decimals": q.decimals, "scale": q.scale}
            for q in shown
        },
        "voice": script_voice(),
        "reasons": document.get("reasons") or REASONS,
        "findings": [
            {
                "n": n.number,
                "id": n.finding["id"],
                "title": facts.finding_title(n.finding),
                "severity": n.finding["severity"],
                "waived": n.is_waived,
                "rule": n.finding["rule"],
                "quantity": n.finding.get("quantity"),
                "column": n.finding.get("column"),
                "value": facts.value_text(n.finding),
                "limit": facts.limit_words(document, n.finding),
                "limit_short": facts.limit_short(document, n.finding),
                "goal": facts.goal(document, n.finding),
                "number": n.finding.get("value"),
                "also": list(n.finding.get("also") or ()),
                "change": facts.change_of(n.finding),
                "target": facts.goal_text(document, n.finding),
                "way": (n.finding.get("args") or {}).get("way") or None,
                "leaves": facts.lip_leaves(n.finding),
                "wide": facts.length_of(n.finding, "width"),
                "everywhere": facts.is_everywhere(n.finding),
                "place": facts.place_of_waiver(document, n.finding),
                "joint": n.finding.get("joint"),
                "contour": n.contour,
                "station": n.station,
                "from_s": n.finding.get("from_s"),
                "to_s": n.finding.get("to_s"),
                "at": n.finding.get("at"),
                "met": facts.met_at(document, n.finding),
                "places": [
                    {key: place.get(key) for key in ("contour", "station", "from_s", "to_s")}
                    for place in n.finding.get("places") or ()
                    if place.get("station") is not None
                ],
            }
            for n in facts.numbered_findings(document)
        ],
        "model": {"file": str(model["file"]), "sha256": str(model.get("sha256") or "")},
        "facts": [_joint_facts(document, joint) for joint in facts.joints(document)],
        "view": page_view(document.get("view")),
    }


def _counts(document: Document) -> list[tuple[str, int]]:
    """(severity, findings of it that are not waived), then the waived ones where there are any."""
    live = [f["severity"] for f in document["findings"] if not f.get("waived")]
    waived = len(document["findings"]) - len(live)
    return [*((name, live.count(name)) for name in facts.SEVERITIES), *([("waived", waived)] if waived else [])]


def _next_steps(document: Document) -> list[str]:
    """What is to be done after this review, in a few sentences."""
    counts = dict(_counts(document))
    said = []
    if broken := counts["must-fix"]:
        one = tr("Change the model at the place that breaks a limit, and review it again.")
        many = tr("Change the model at the {count} places that break a limit, and review it again.", count=broken)
        said.append(one if broken == 1 else many)
    if looked := counts["attention"]:
        one = tr("Decide on the point for attention: change, or accept with a reason.")
        many = tr("Decide on the {count} points for attention: change, or accept with a reason.", count=looked)
        said.append(one if looked == 1 else many)
    if asked := len(facts.questions(document)):
        said.append(tr("Send the {count} open questions to moulder, material supplier and customer.", count=asked))
    return [*said, tr("Weld trial parts: this review replaces no trial.")]


def _decided(fields: Fields) -> dict[str, Any]:
    """What was answered before: findings by id, questions by key, sign-off by role."""
    answers = fields.answers
    if answers is None:
        return {"findings": {}, "approval": {}}
    return {"findings": {d.id: d for d in answers.findings}, "approval": {a.role: a for a in answers.approval}}


def _static_section(document: Document, numbered: facts.Numbered, sections: tuple[SectionSet, ...]) -> Markup:
    """The section of a finding without a script: until one runs, and where none does."""
    key = (numbered.finding.get("joint"), numbered.contour)
    found = next(((j, c) for j, c in facts.paths(document) if (j["id"], c["id"]) == key), None)
    if found is None or numbered.station is None or numbered.number > MOST_STATIC:
        return Markup("")
    joint, contour = found
    own = sections_of(sections, joint["id"], contour["id"])
    return section_svg(section_shapes(document, joint, contour, numbered.station, own))


MOST_STATIC = 12
"""So many findings, the gravest, have a drawing that needs no script."""


def _joint_facts(document: Document, joint: Any) -> dict[str, Any]:
    rows = bands.bands(document, joint)
    tracks, worst = {}, {}
    for contour in joint["contours"]:
        states = [bands.track(document, joint, contour, band) for band in rows]
        tracks[contour["id"]] = [bands.runs(state) for state in states]
        worst[contour["id"]] = bands.runs(bands.worst_state(states, len(contour["stations"]["s"])))
    collapse = facts.collapse_of(document)
    return {
        "id": joint["id"],
        "bands": [
            {
                "rule": b.rule,
                "title": b.title,
                "severity": b.severity,
                "columns": b.columns,
                "words": b.words,
                "edges": [
                    {"column": e.column, "judged": e.judged, "low": _side(e.low), "high": _side(e.high)}
                    for e in b.edges
                ],
            }
            for b in rows
        ],
        "tracks": tracks,
        "worst": worst,
        "tolerances": {t["quantity"]: t["tolerance"] for t in joint.get("tolerances") or ()},
        "collapse": collapse,
        "drop": None if collapse is None else collapse + facts.initial_contact(joint),
        "margin": facts.beam_margin(document),
        "cone": facts.half_angle(document),
    }


def _side(side: Mapping[str, np.ndarray]) -> float | dict[str, list[float | None]] | None:
    """One number where the bound is the same everywhere, else a list for every path."""
    if not side:
        return None
    values = np.concatenate(list(side.values()))
    finite = values[np.isfinite(values)]
    if len(finite) == len(values) and len(values) and np.ptp(values) < 1e-9:
        return float(values[0])
    return {key: [_number(v) for v in row] for key, row in side.items()}


def _number(value: float) -> float | None:
    return round(float(value), 4) if np.isfinite(value) else None


def _limit_rows(document: Document) -> list[dict[str, Any]]:
    """One row for each rule in force: its limit in words, and the standing of the number."""
    words: dict[str, set[str]] = {}
    for joint in facts.joints(document):
        for band in bands.bands(document, joint):
            words.setdefault(band.rule, set()).add(band.words)
    entries: dict[str, list[Mapping[str, Any]]] = {}
    for entry in document.get("limits") or ():
        if entry["severity"] != "off":
            entries.setdefault(entry["rule"], []).append(entry)
    numbered = facts.numbered_findings(document)
    rows = []
    for rule, own in entries.items():
        said = sorted(words.get(rule, set()) - {""})
        origins = dict.fromkeys(origin_word(e["from"]) for e in own)
        rows.append(
            {
                "title": own[0]["title"],
                "what": translated(f"what/{rule}", RULES[rule].what) if rule in RULES else "",
                "severity": own[0]["severity"],
                "quantity": facts.quantity_title(own[0]),
                "words": "; ".join(said),
                "settings": [facts.entry_text(e) for e in own if e["value"] is not None],
                "standing": own[0]["standing"],
                "more": own[0]["standing_text"],
                "from": ", ".join(origins),
                "broken": [n.number for n in numbered if rule in (n.finding["rule"], *(n.finding.get("also") or ()))],
            }
        )
    return rows


_PAPERS = {"A4": "210mm 297mm", "letter": "8.5in 11in"}


def pack(data: Any) -> str:
    """JSON, gzip, base64: letters, digits, + / = only, the same bytes for the same data."""
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"), allow_nan=False, default=_plain)
    return base64.b64encode(gzip.compress(text.encode("utf-8", "surrogatepass"), 6, mtime=0)).decode("ascii")


def _plain(value: Any) -> Any:
    if isinstance(value, np.generic):
        return value.item()
    raise TypeError(f"{type(value).__name__} does not belong into a document")


@cache
def _template(spoken: Voice) -> Any:
    """The page's template, compiled in a language: the one that holds."""
    return template(_HERE, "page.html")
