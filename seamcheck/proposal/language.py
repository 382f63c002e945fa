"""A proposal in the language of a report; its document itself stays English and in mm."""

from __future__ import annotations

from typing import Any

import msgspec

from seamcheck.catalogue.message import Sentence
from seamcheck.catalogue.voice import Voice, voice
from seamcheck.proposal.records import ProposalDocument
from seamcheck.report.language import spoken_sentence


def spoken_proposal(document: ProposalDocument) -> ProposalDocument:
    """The document as it was made here, its sentences in the language and units of the report; its reviews stay."""
    if voice() == Voice():
        return document
    told: ProposalDocument = _spoken(msgspec.structs.replace(document, review=None, comparison=None))
    return msgspec.structs.replace(told, review=document.review, comparison=document.comparison)


def _spoken(value: Any) -> Any:
    if isinstance(value, Sentence):
        return spoken_sentence(value)
    if isinstance(value, tuple):
        return tuple(_spoken(item) for item in value)
    if isinstance(value, msgspec.Struct):
        return msgspec.structs.replace(value, **{key: _spoken(getattr(value, key)) for key in value.__struct_fields__})
    return value
