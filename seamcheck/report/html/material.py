"""The page's chapter on light, material and melt, from the joints' "material" sections."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib import resources
from typing import Any

from jinja2 import Undefined
from markupsafe import Markup

from seamcheck.catalogue.voice import localised, voice
from seamcheck.report import facts
from seamcheck.report.html.translated import environment
from seamcheck.report.material_picture import window_picture
from seamcheck.report.material_text import DRAWN


def material_chapter(document: Mapping[str, Any]) -> Markup:
    """The chapter as markup; empty where no joint has a "material" section."""
    joints = [joint for joint in document.get("joints") or () if "material" in joint]
    if not joints:
        return Markup("")
    pictures = {j["id"]: Markup(window_picture(j["material"].get("window") or {})) for j in joints}
    return Markup(
        _template(voice().language).render(
            joints=joints, pictures=pictures, figure=_figure, place=_place, drawn=DRAWN, facts=facts
        )
    )


def _figure(value: float | None) -> str:
    """Three digits, never in powers of ten."""
    if value is None:
        return "–"
    return localised(f"{value:.0f}" if abs(value) >= 100.0 else f"{value:.3g}")


def _place(bound: Mapping[str, Any]) -> str:
    at = bound.get("at")
    if not at:
        return "–"
    x, y, z = at
    s = f"{bound['contour']}, s = {bound['s_mm']:.1f} mm, " if bound.get("s_mm") is not None else ""
    return f"{s}x {facts.coordinate(x)}, y {facts.coordinate(y)}, z {facts.coordinate(z)} mm"


@cache
def _template(spoken: str) -> Any:
    """The chapter's template, compiled in a language: the one that holds."""
    text = resources.files("seamcheck.report.html").joinpath("material.html").read_text("utf-8")
    return environment(undefined=Undefined).from_string(text)  # a section carries only what was computed
