"""Fills the page's template with a comparison document.

One small script walks through both sections where the reviews carry their outlines. The page asks nothing of a network:
style and fonts stand in it, and its security policy allows nothing else. Names from the models reach it through the
template, which escapes them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.voice import tr, unit_in_voice, voice
from seamcheck.comparison import words
from seamcheck.comparison.html import figures
from seamcheck.comparison.html.sections import walks
from seamcheck.comparison.overlay import Overlay
from seamcheck.report import facts
from seamcheck.report.facts import mm
from seamcheck.report.html.compiled import template
from seamcheck.report.html.fonts import font_style
from seamcheck.report.html.page import pack
from seamcheck.report.html.skeleton import asset, policy

Document = Mapping[str, Any]


def render_html(document: Document, overlays: Sequence[Overlay] = ()) -> str:
    """The whole page as text; ``overlays`` are the sections of both reviews, where they carry outlines."""
    walked = walks(document, overlays)
    script = asset("seamcheck.comparison.html", "compare.js") if walked else ""
    style = (
        font_style() + asset("seamcheck.report.html", "page.css") + asset("seamcheck.comparison.html", "compare.css")
    )
    told = list(words.told_findings(document))
    headings = {
        "new": tr("New"), "worse": tr("Worse"), "same": tr("As before"), "better": tr("Better"), "fixed": tr("Fixed"),
        "dropped": tr("No longer reported, for a reason outside the model"),
    }  # fmt: skip
    groups = [(state, heading, [entry for s, *entry in told if s == state]) for state, heading in headings.items()]
    joints = [_joint(document, joint) for joint in document["joints"]]
    text: str = _template(voice().language).render(
        d=document,
        facts=facts,
        words=words,
        outcome=words.outcome_words(document),
        headline=words.headline(document),
        groups=[group for group in groups if group[2]],
        joints=joints,
        background=list(words.background_lines(document)),
        short_caution=tr(SHORT_CAUTION),
        language=voice().language,
        scale=_scale(),
        unit=unit_in_voice("mm"),
        wide=figures.WIDE,
        left=figures.LEFT,
        right=figures.WIDE - figures.RIGHT,
        row=figures.ROW,
        style=style,
        walks=walked,
        data=pack({"walks": walked, "same": tr("No quantity differs here by more than the measuring error.")})
        if walked
        else "",
        script=script,
        policy=policy(style, script),
    )
    return text.encode("utf-8", "replace").decode("utf-8")  # lone surrogates from damaged names


def _joint(document: Document, joint: Mapping[str, Any]) -> dict[str, Any]:
    drawn = [q for q in joint["quantities"] if figures.is_drawn(q["quantity"])]
    judged = {bound["column"] for track in joint["tracks"] for bound in track["bounds"]}
    return {
        "joint": joint,
        "lines": list(words.seam_lines(joint)),
        "known_by_one": list(words.known_by_one(joint)),
        "places": words.by_place(joint),
        "plan": figures.plan(document, joint),
        "strips": [
            strip for strip in (figures.strip(document, joint, track) for track in joint["tracks"]) if strip.rows
        ],
        "charts": _charts(joint, [q for q in drawn if q["quantity"] in judged]),
        "further": _charts(joint, [q for q in drawn if q["quantity"] not in judged]),
    }


def _charts(joint: Mapping[str, Any], quantities: list[Mapping[str, Any]]) -> list[figures.Chart]:
    return [
        figures.chart(track, quantity)
        for quantity in quantities
        for track in joint["tracks"]
        if any(change["contour"] == track["contour"] for change in quantity["changes"])
    ]


def _scale() -> tuple[float, str]:
    """The bar beside the sections: how many mm, and what stands there."""
    return (1.0, mm(1.0, 0)) if voice().length == "mm" else (1.27, mm(1.27, 0))


@cache
def _template(spoken: str) -> Any:
    """The page's template, compiled in a language: the one that holds."""
    return template("seamcheck.comparison.html", "page.html")
