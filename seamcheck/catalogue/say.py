"""Sentences from the catalogue: a key and values in, an English sentence out that knows both.

A place in a template is ``{name}`` for words, ``{name:.2 mm}`` for a number of that unit shown with two decimals and
``{count:0}`` for a count. Other types of a place hold keys, and the sentence their words: ``word`` a term of ``WORDS``,
``quantity`` and ``title`` a quantity (within and at the beginning of a sentence), ``rules`` rules, ``reasons``
reasons, several with commas between them, and ``known`` where a number comes from; ``list`` holds sentences with
semicolons between them. A [part] stays away where one of its values is missing. A key with ``.one`` behind it is what
is said where ``count`` is 1.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from functools import cache

from msgspec import UNSET

from seamcheck.catalogue.causes import CAUSES
from seamcheck.catalogue.cautions import REMARKS
from seamcheck.catalogue.compare_notes import COMPARE_NOTES
from seamcheck.catalogue.kind_words import base_of, worded
from seamcheck.catalogue.kinds import KIND_NAMES
from seamcheck.catalogue.material_notes import CLASS_WORDS, MATERIAL_NOTES
from seamcheck.catalogue.material_results import RESULT_TEXTS, TERMS
from seamcheck.catalogue.material_sources import SOURCES, WHY
from seamcheck.catalogue.message import Amount, Message, Sentence, message_of
from seamcheck.catalogue.notes import CALL_OUTS, NOTES, STAGES
from seamcheck.catalogue.propose_notes import PROPOSE_NOTES
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.refusals import MISTAKES, REFUSALS
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.words import fill
from seamcheck.errors import NotReviewed

Value = str | float | Amount | Iterable[str]
"""Words, a number, or the sentences that stand at a place."""

ALL = "all"
"""Key of sentences one after the other."""

TEXTS: dict[str, str] = {
    **REMARKS, **NOTES, **REFUSALS, **MATERIAL_NOTES, **SOURCES, **WHY, **RESULT_TEXTS, **COMPARE_NOTES,
    **PROPOSE_NOTES,
}  # fmt: skip
TEXTS[ALL] = "{sentences}"
"""Key -> English template, of everything but findings (catalogue/messages.py)."""

WORDS: dict[str, str] = {
    **KIND_NAMES,
    **STAGES,
    **MISTAKES,
    **CALL_OUTS,
    **CLASS_WORDS,
    **TERMS,
    **{key: phrase for key, (phrase, _) in CAUSES.items()},
    "inner": "inner",
    "outer": "outer",
    "inward": "inward",
    "outward": "outward",
    "cover-hole": "a hole",
    "cover-ends": "the rib runs on beyond the cover",
}
"""Key -> English term, for places of the type ``word``."""

_PLACE = re.compile(r"\{(\w+)(?::([^}]*))?\}")
_KEPT = 6  # decimals, as many as a document keeps: a text made again from it is the same
_NUMBER = re.compile(r"\.?(\d)(?: (\S+))?")


@cache
def places_of(template: str) -> Mapping[str, str]:
    """Name -> type of each place in a template, '' for words."""
    return dict(_PLACE.findall(template))


def bare(template: str) -> str:
    """The template without the types of its places."""
    return _PLACE.sub(r"{\1}", template)


def say(key: str, **values: Value) -> Sentence:
    """The sentence of a key.

    Parameters
    ----------
    values : by the names of its places
    """
    if values.get("count") == 1 and f"{key}.one" in TEXTS:
        key = f"{key}.one"
    return sentence(key, TEXTS[key], values)


def sentence(key: str, template: str, values: Mapping[str, Value]) -> Sentence:
    """A template with its places filled in, which knows its key and values."""
    kinds = places_of(template)
    args: dict[str, Amount | str] = {}
    parts: dict[str, list[Message]] = {}
    for name, value in values.items():
        if isinstance(value, Sentence):
            parts[name] = [value.message]
        elif isinstance(value, str | Amount):
            args[name] = value
        elif isinstance(value, Iterable):
            parts[name] = [message_of(text) for text in value]
        elif name in kinds:
            args[name] = _amount(float(value), kinds[name])
    return Sentence.of(Message(key, args, english(template, args, parts, base_of(key)[1]), parts or UNSET))


def english(template: str, args: Mapping[str, Amount | str], parts: Mapping[str, list[Message]], word: str = "") -> str:
    """A template with its places filled in; what is called a rib in the catalogue is called ``word``, if any."""
    kinds = places_of(template)
    values: dict[str, object] = {
        name: worded(_IN_WORDS[kinds[name]](value), word)
        if isinstance(value, str) and kinds.get(name) in _IN_WORDS
        else value
        for name, value in args.items()
    }
    values |= {name: between(kinds.get(name, "")).join(p.text for p in said) for name, said in parts.items()}
    return fill(bare(template), values)


def between(kind: str) -> str:
    """What stands between the sentences of a place."""
    return "; " if kind == "list" else " "


def _reasons(codes: str) -> str:
    return "; ".join(REASONS.get(code, "no reason given").rstrip(".").lower() for code in codes.split(","))


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


_IN_WORDS: dict[str, Callable[[str], str]] = {
    "word": lambda key: WORDS.get(key, key),
    "quantity": lambda key: QUANTITIES[key].title,
    "title": lambda key: _capital(QUANTITIES[key].title),
    "rules": lambda keys: ", ".join(RULES[key].title.lower() for key in keys.split(",")),
    "reasons": _reasons,
    "known": str,
}


def _amount(value: float, kind: str) -> Amount:
    found = _NUMBER.fullmatch(kind)
    if found is None:
        raise ValueError(f"a number stands where the catalogue has {kind or 'words'!r}")
    return Amount(round(value, _KEPT), found[2] or "", int(found[1]))


def together(*sentences: str) -> str:
    """Sentences one after the other as one; empty ones are left out."""
    said = [sentence for sentence in sentences if sentence]
    return said[0] if len(said) == 1 else say(ALL, sentences=said)


def refused(code: str, key: str, **values: Value) -> NotReviewed:
    """The refusal of a model, in the words of the catalogue."""
    return NotReviewed(code, say(key, **values))
