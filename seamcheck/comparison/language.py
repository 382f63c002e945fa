"""A comparison in the language of a report; its document itself stays English and in mm."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from seamcheck.catalogue.message import Sentence
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.voice import Voice, voice
from seamcheck.report.language import quantity_title, spoken_finding, spoken_sentence


def spoken_comparison(document: Mapping[str, Any]) -> Mapping[str, Any]:
    """The document as it was made here, its sentences and titles in the language and units of the report.

    One that was read from a file has lost the keys of its own sentences: these stay English.
    """
    return document if voice() == Voice() else _spoken(document)


def _spoken(value: Any) -> Any:
    if isinstance(value, Sentence):
        return spoken_sentence(value)
    if isinstance(value, list | tuple):
        return [_spoken(item) for item in value]
    if not isinstance(value, Mapping):
        return value
    if "messages" in value and "rule" in value:
        return spoken_finding(value)
    told = {key: _spoken(item) for key, item in value.items()}
    if "title" in told and told.get("quantity") in QUANTITIES:
        told["title"] = quantity_title(told["quantity"])
    return told
