"""The fonts of all pages as one style: the files stand in the page, so that it asks nothing of a network."""

from __future__ import annotations

import base64
from functools import cache
from importlib import resources

_FONTS = (("Barlow", 400), ("Barlow", 600), ("Barlow Semi Condensed", 500), ("Barlow Semi Condensed", 600))


@cache
def font_style() -> str:
    """CSS that declares the fonts, each with its file in it."""
    return "".join(_face(family, weight) for family, weight in _FONTS)


def _face(family: str, weight: int) -> str:
    name = f"fonts/{family.lower().replace(' ', '-')}-{weight}.woff2"
    data = base64.b64encode(resources.files("seamcheck.report.html").joinpath(name).read_bytes()).decode("ascii")
    return (
        f'@font-face{{font-family:"{family}";font-weight:{weight};font-style:normal;font-display:block;'
        f'src:url(data:font/woff2;base64,{data}) format("woff2")}}\n'
    )
