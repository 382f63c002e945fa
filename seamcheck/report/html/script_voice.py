"""What the page's script needs to speak as the page does: its texts, the decimal sign and the unit of length."""

from __future__ import annotations

import json
from functools import cache
from importlib import resources
from typing import Any

from seamcheck.catalogue.voice import decimal_sign, tr, voice


def script_voice() -> dict[str, Any] | None:
    """None for English in mm, which the script speaks by itself."""
    if voice().language == "en" and voice().length == "mm":
        return None
    texts = {text: tr(text) for text in texts_of_script()} if voice().language != "en" else {}
    return {"decimal": decimal_sign(), "inch": voice().length == "in", "texts": texts}


@cache
def texts_of_script() -> tuple[str, ...]:
    """Every text that the page's script asks for, as its build lists them."""
    return tuple(json.loads(resources.files("seamcheck.report.html").joinpath("page.texts.json").read_text("utf-8")))
