"""Fills the page's template with a review document. Texts are written here, figures by the page's script.

The page asks nothing of a network: script, style and fonts stand in it, and its security policy allows nothing
else. Names from the model reach it by two ways only: through the template, which escapes them, and inside the
compressed data, which is never read as markup.
"""

from __future__ import annotations

import base64
import gzip
import hashlib
import json
from functools import cache
from importlib import resources
from typing import Any

import numpy as np
from jinja2 import Environment, StrictUndefined, select_autoescape

from seamcheck.limits.quantities import QUANTITIES, REASONS
from seamcheck.report import facts
from seamcheck.report.facts import Document
from seamcheck.report.html.glossary import GLOSSARY


def render_html(document: Document) -> str:
    """The whole page as text.

    Parameters
    ----------
    document : review document (DESIGN of the document: report/document.py), with or without the part "view"
    """
    style = _asset("fonts.css") + _asset("chart.css") + _asset("page.css")
    script = _asset("page.js")
    return _template().render(
        d=document,
        facts=facts,
        verdict=document["verdict"],
        headline=facts.headline(document),
        sentences=facts.sentences(document),
        findings=facts.numbered_findings(document),
        names=facts.part_names(document),
        joints=facts.joints(document),
        limit_rows=_limit_rows(document),
        glossary=GLOSSARY,
        quantities=QUANTITIES,
        data=pack(page_data(document)),
        script=script,
        style=style,
        policy=_policy(script, style),
        has_view=bool(document.get("view")),
    )


def page_data(document: Document) -> dict[str, Any]:
    """What the page's script draws from; see frontend/src/types.ts."""
    model = document["model"]
    shown = [q for q in QUANTITIES.values() if q.per == "station"]
    return {
        "joints": [
            {key: joint.get(key) for key in ("id", "cover", "base", "rib_on", "beam", "contours")}
            for joint in facts.joints(document)
        ],
        "parts": [{"id": p["id"], "name": p.get("name"), "role": p.get("role")} for p in model.get("parts") or ()],
        "quantities": {q.key: {"title": q.title, "unit": q.unit, "decimals": q.decimals} for q in shown},
        "reasons": REASONS,
        "findings": [
            {
                "n": n.number,
                "id": n.finding["id"],
                "title": facts.title_of(n.finding["rule"]),
                "severity": n.finding["severity"],
                "waived": n.is_waived,
                "rule": n.finding["rule"],
                "quantity": n.finding.get("quantity"),
                "joint": n.finding.get("joint"),
                "contour": n.contour,
                "station": n.station,
                "from_s": n.finding.get("from_s"),
                "to_s": n.finding.get("to_s"),
                "at": n.finding.get("at"),
            }
            for n in facts.numbered_findings(document)
        ],
        "facts": [_joint_facts(document, joint) for joint in facts.joints(document)],
        "view": document.get("view"),
    }


def _joint_facts(document: Document, joint: Any) -> dict[str, Any]:
    bands = facts.bands(document, joint)
    tracks, worst = {}, {}
    for contour in joint["contours"]:
        states = [facts.track(document, contour, joint, band) for band in bands]
        tracks[contour["id"]] = [facts.runs(state) for state in states]
        worst[contour["id"]] = facts.runs(facts.worst_state(states, len(contour["stations"]["s"])))
    collapse = facts.collapse_of(document)
    return {
        "id": joint["id"],
        "bands": [
            {
                "rule": b.rule,
                "title": b.title,
                "column": b.column,
                "low": b.low,
                "high": b.high,
                "words": b.words,
            }
            for b in bands
        ],
        "tracks": tracks,
        "worst": worst,
        "collapse": collapse,
        "drop": None if collapse is None else collapse + facts.first_rest(joint),
    }


def _limit_rows(document: Document) -> list[dict[str, Any]]:
    """One row for each limit, with its words for every joint."""
    rows: list[dict[str, Any]] = []
    all_bands = [(joint, facts.bands(document, joint)) for joint in facts.joints(document)]
    for k, entry in enumerate(document.get("limits") or ()):
        words = {bands[k].words for _, bands in all_bands} or {str(entry.get("value"))}
        broken = [n.number for n in facts.numbered_findings(document) if n.finding["rule"] == entry["rule"]]
        rows.append(
            {
                "title": entry.get("title") or facts.title_of(entry["rule"]),
                "rule": entry["rule"],
                "quantity": QUANTITIES[entry["quantity"]].title
                if entry.get("quantity") in QUANTITIES
                else entry.get("quantity"),
                "words": " / ".join(sorted(words)),
                "standing": entry.get("standing") or "",
                "from": {"default": "default", "file": "settings file", "option": "command line"}.get(
                    entry.get("from"), entry.get("from") or ""
                ),
                "broken": broken,
            }
        )
    return rows


def pack(data: dict[str, Any]) -> str:
    """JSON, gzip, base64: letters, digits, + / = only, the same bytes for the same data."""
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"), allow_nan=False, default=_plain)
    return base64.b64encode(gzip.compress(text.encode("utf-8", "surrogatepass"), 9, mtime=0)).decode("ascii")


def _plain(value: Any) -> Any:
    if isinstance(value, np.generic):
        return value.item()
    raise TypeError(f"{type(value).__name__} does not belong into a document")


def _policy(script: str, style: str) -> str:
    def digest(text: str) -> str:
        return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"

    return (
        f"default-src 'none'; script-src {digest(script)}; style-src {digest(style)}; font-src data:; "
        "img-src data: blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'"
    )


@cache
def _asset(name: str) -> str:
    return resources.files("seamcheck.report.html").joinpath(name).read_text("utf-8")


@cache
def _template() -> Any:
    environment = Environment(
        autoescape=select_autoescape(default=True, default_for_string=True),
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    return environment.from_string(_asset("page.html"))
