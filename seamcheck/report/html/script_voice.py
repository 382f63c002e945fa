"""What the page's script needs to speak as the page does: its texts, the decimal sign and the unit of length."""

from __future__ import annotations

import json
import re
from functools import cache
from importlib import resources
from typing import Any

from seamcheck.catalogue.voice import decimal_sign, tr, voice

_TEXT = re.compile(r"""\btr\(\s*("(?:[^"\\]|\\.)*")""")


def script_voice() -> dict[str, Any] | None:
    """None for English in mm, which the script speaks by itself."""
    if voice().language == "en" and voice().length == "mm":
        return None
    texts = {text: tr(text) for text in texts_of_script()} if voice().language != "en" else {}
    return {"decimal": decimal_sign(), "inch": voice().length == "in", "texts": texts}


@cache
def texts_of_script() -> tuple[str, ...]:
    """First arguments of ``tr`` in the page's script, as it was bundled."""
    source = resources.files("seamcheck.report.html").joinpath("page.js").read_text("utf-8")
    return tuple(dict.fromkeys(json.loads(found) for found in _TEXT.findall(source)))
