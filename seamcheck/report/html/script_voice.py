"""What the page's script needs to speak as the page does: its texts, the decimal sign and the unit of length."""

from __future__ import annotations

from typing import Any

from seamcheck.catalogue.voice import decimal_sign, tr, voice
from seamcheck.report.texts import texts_of_script


def script_voice() -> dict[str, Any] | None:
    """None for English in mm, which the script speaks by itself."""
    if voice().language == "en" and voice().length == "mm":
        return None
    texts = {text: tr(text) for text in texts_of_script()} if voice().language != "en" else {}
    return {"decimal": decimal_sign(), "inch": voice().length == "in", "texts": texts}
