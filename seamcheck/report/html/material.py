"""The page's chapter on light, material and melt, from the joints' "material" sections."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from jinja2 import Undefined
from markupsafe import Markup

from seamcheck.catalogue.voice import Voice, localised, unit_in_voice, voice
from seamcheck.report import facts
from seamcheck.report.html.compiled import template
from seamcheck.report.language import known_word, term
from seamcheck.report.material_picture import window_picture
from seamcheck.report.material_text import amount, corner_sentence, drawn, plain_length, plain_number, terms


def material_chapter(document: Mapping[str, Any]) -> Markup:
    """The chapter as markup; empty where no joint has a "material" section."""
    joints = [joint for joint in document.get("joints") or () if "material" in joint]
    if not joints:
        return Markup("")
    pictures = {j["id"]: Markup(window_picture(j["material"].get("window") or {})) for j in joints}
    return Markup(
        _template(voice()).render(
            joints=joints, pictures=pictures, place=_place, drawn=drawn(), facts=facts, unit=unit_in_voice("mm"),
            number=plain_number, bare=_bare, signed=_signed, amount=amount, terms=terms, term=term,
            known_word=known_word, corners=corner_sentence, capital=lambda text: text[:1].upper() + text[1:],
        )
    )  # fmt: skip


def _bare(value: float | None, decimals: int) -> str:
    return "–" if value is None else plain_length(value, decimals)


def _signed(value: float, decimals: int) -> str:
    return localised(f"{value:+.{decimals}f}")


def _place(bound: Mapping[str, Any]) -> str:
    at = bound.get("at")
    if not at:
        return "–"
    x, y, z = map(facts.coordinate, at)
    s = f"{bound['contour']}, s = {facts.mm(bound['s_mm'])}, " if bound.get("s_mm") is not None else ""
    return f"{s}x {x}, y {y}, z {z} {unit_in_voice('mm')}"


@cache
def _template(spoken: Voice) -> Any:
    """The chapter's template, compiled in a language: the one that holds."""
    # a section carries only what was computed
    return template("seamcheck.report.html", "material.html", undefined=Undefined)
