"""The document's texts in the language of a report, and the list of all texts that a language must have."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

import msgspec
from msgspec.structs import replace

from seamcheck.catalogue.kind_words import base_of, word_of, worded
from seamcheck.catalogue.known import STANDINGS
from seamcheck.catalogue.message import Amount, Message, Sentence
from seamcheck.catalogue.messages import WORDINGS, is_known
from seamcheck.catalogue.messages import wording as wording_of
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import TEXTS, WORDS, bare, between, places_of
from seamcheck.catalogue.voice import Voice, tr, translated, voice
from seamcheck.catalogue.words import fill

if TYPE_CHECKING:
    from seamcheck.report.ci.reviews import Reviewed

IN_GLOSSARY = (
    "rib_width", "rib_height", "melt_area", "trap_area_inner", "lip_gap_inner", "clamp_land", "cover_thickness", "gap",
    "free_travel", "beam_clear", "slenderness", "wall_width", "corner_radius",
)  # fmt: skip
"""Quantities whose definition a report shows."""


def catalogue_texts() -> dict[str, str]:
    """Key -> English wording of all texts of the catalogue that a report shows."""
    texts: dict[str, str] = {f"say/{key}": text for key, text in TEXTS.items()}
    for key, wording in WORDINGS.items():
        texts[f"say/{key}"] = wording.says
        texts[f"remedy/{key}"] = wording.remedy
        texts[f"harm/{key}"] = wording.harm
    for quantity in QUANTITIES.values():
        texts[f"quantity/{quantity.key}"] = quantity.title
        if quantity.key in IN_GLOSSARY:
            texts[f"definition/{quantity.key}"] = quantity.definition
            texts[f"detail/{quantity.key}"] = quantity.detail
    for rule in RULES.values():
        texts[f"rule/{rule.key}"] = rule.title
        texts[f"what/{rule.key}"] = rule.what
        texts[f"standing/{rule.key}"] = rule.standing_text
    texts |= {f"reason/{code}": text for code, text in REASONS.items()}
    texts |= {f"word/{key}": text for key, text in WORDS.items()}
    texts |= {f"known/{key}": key for key in STANDINGS}
    return {key: text for key, text in texts.items() if text}


def voice_of(document: Mapping[str, Any], wanted: Voice) -> Voice:
    """The voice for a document: where all joints are plain walls, or laps, it speaks of wall or band, not of a rib."""
    words = {word_of(joint["kind"]) for joint in document.get("joints") or ()}
    return replace(wanted, melts=words.pop()) if len(words) == 1 else wanted


def spoken(document: Mapping[str, Any]) -> Mapping[str, Any]:
    """A review document whose sentences and titles are in the language and units of the report, for renderers.

    Keys, values and their units stay as they are: a renderer writes them (voice.py).
    """
    if voice() == Voice():
        return document
    reasons = {code: translated(f"reason/{code}", text) for code, text in (document.get("reasons") or {}).items()}
    result = {
        **document,
        "findings": [spoken_finding(finding) for finding in document["findings"]],
        "limits": [_limit(entry) for entry in document["limits"]],
        "reasons": reasons,
        "model": {
            **document["model"],
            "notes": _all(document["model"]["notes"]),
            "parts": [{**part, "notes": _all(part["notes"])} for part in document["model"]["parts"]],
        },
        "joints": [_joint(joint) for joint in document["joints"]],
        **{key: _all(document[key]) for key in ("assumptions", "not_checked", "cautions")},
    }
    if document["reason"] is not None:
        result["reason"] = {
            **document["reason"],
            "message": said({**document["reason"], "text": document["reason"]["message"]}),
        }
    return result


def spoken_reviews(reviews: Iterable[Reviewed]) -> list[Reviewed]:
    """Several reviews with their documents in the language and units of the report."""
    return [replace(review, document=spoken(review.document)) for review in reviews]


def _all(messages: Iterable[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    return [{**message, "text": said(message)} for message in messages]


def spoken_finding(finding: Mapping[str, Any]) -> dict[str, Any]:
    """A finding with its sentences in the language and units of the report."""
    messages = _all(finding["messages"])
    return {
        **finding,
        "messages": messages,
        "message": " ".join(message["text"] for message in messages),
        **{what: _wording(finding, what) for what in ("remedy", "harm")},
    }


def _wording(finding: Mapping[str, Any], what: str) -> str:
    """'remedy' or 'harm' of a finding."""
    key = finding["key"]
    if not is_known(key):  # of another version
        return str(finding[what])
    args = msgspec.convert(finding["args"], dict[str, Amount | str])
    wording = wording_of(key)
    english = wording.remedy if what == "remedy" else wording.harm
    return _filled(_in_kind(what, key, english), args, {}, english) if english else ""


def _in_kind(what: str, key: str, english: str) -> str:
    """The template of a finding's text ('say', 'remedy' or 'harm') in the language of the report."""
    if key in WORDINGS:
        return translated(f"{what}/{key}", english)
    base, word = base_of(key)
    own = WORDINGS[base]
    of_rib = {"say": own.says, "remedy": own.remedy, "harm": own.harm}[what]
    return worded(translated(f"{what}/{base}", of_rib), word, voice().language)


def _limit(entry: Mapping[str, Any]) -> dict[str, Any]:
    standing = translated(f"standing/{entry['rule']}", entry["standing_text"])
    what = translated(f"what/{entry['rule']}", entry["what"]) if entry["name"] is None else entry["what"]
    return {**entry, "title": rule_title(entry["rule"]), "standing_text": standing, "what": what}


def _joint(joint: Mapping[str, Any]) -> dict[str, Any]:
    interface = {key: _value(value) for key, value in joint["interface"].items()}
    result = {**joint, "why": _all(joint["why"]), "interface": interface}
    if "material" in joint:
        messages = joint["material"].get("messages") or ()
        result["material"] = _exchanged(joint["material"], {message["text"]: said(message) for message in messages})
    return result


def _exchanged(value: Any, texts: Mapping[str, str]) -> Any:
    """Plain values with some of their texts exchanged."""
    if isinstance(value, str):
        return texts.get(value, value)
    if isinstance(value, Mapping):
        return {key: item if key == "messages" else _exchanged(item, texts) for key, item in value.items()}
    return [_exchanged(item, texts) for item in value] if isinstance(value, list | tuple) else value


def _value(value: Mapping[str, Any]) -> dict[str, Any]:
    """A value of the whole interface, with what was seen at its places."""
    entry = dict(value)
    if entry.get("said"):
        entry["why"] = said(entry["said"])
    if entry.get("places"):
        entry["places"] = [_value(place) for place in entry["places"]]
    return entry


def said(message: Mapping[str, Any]) -> str:
    """A message of a document in the language and unit of the report."""
    record = {key: message[key] for key in ("key", "args", "text", "parts") if key in message}
    return _spoken(msgspec.convert(record, Message))


def spoken_sentence(sentence: Sentence) -> str:
    """A sentence in the language and unit of the report."""
    return _spoken(sentence.message)


def _spoken(message: Message) -> str:
    if is_known(message.key):
        english = wording_of(message.key).says
        said = _in_kind("say", message.key, english)
        return _filled(said, message.args, message.parts or {}, english, base_of(message.key)[1])
    base, word = (message.key, "") if message.key in TEXTS else base_of(message.key)
    english = TEXTS.get(base, "")
    if not english:  # of another version: its text is all there is
        return message.text
    own = worded(translated(f"say/{base}", english), word, voice().language)
    return _filled(own, message.args, message.parts or {}, english, word)


def _filled(
    template: str,
    args: Mapping[str, Amount | str],
    parts: Mapping[str, list[Message]],
    english: str = "",
    word: str = "",
) -> str:
    """A template of the report's language with its places filled in; the English one tells their types.

    ``word`` is what the texts call a rib, as in ``worded``.
    """
    kinds = places_of(english or template)
    in_words = {name: _in_words(value, kinds.get(name, "")) for name, value in args.items() if isinstance(value, str)}
    named = ("quantity", "title", "rules", "reasons")
    values: dict[str, object] = {**args, **in_words}
    values |= {n: worded(text, word, voice().language) for n, text in in_words.items() if kinds.get(n) in named}
    values |= {name: between(kinds.get(name, "")).join(_spoken(m) for m in some) for name, some in parts.items()}
    return fill(bare(template), values)


def _in_words(value: str, kind: str) -> str:
    """The word of a key, for a place that holds one."""
    if kind == "word":
        return translated(f"word/{value}", WORDS.get(value, value))
    if kind == "known":
        return known_word(value)
    if kind in ("quantity", "title"):
        title = quantity_title(value)
        return title[:1].upper() + title[1:] if kind == "title" else title
    if kind == "rules":
        return ", ".join(rule_title(key) for key in value.split(","))
    if kind == "reasons":
        return "; ".join(_within(reason(code)) for code in value.split(","))
    return value


def _within(sentence: str) -> str:
    """A sentence within another one: no full stop; in English, where no noun has a capital, no capital."""
    bare_text = sentence.rstrip(".")
    return bare_text.lower() if voice().language == "en" else bare_text


def quantity_title(key: str) -> str:
    """Title of a quantity, also of one by another version."""
    return translated(f"quantity/{key}", QUANTITIES[key].title) if key in QUANTITIES else key.replace("_", " ")


def rule_title(key: str) -> str:
    """Title of a rule, also of one by another version."""
    return (
        translated(f"rule/{key}", RULES[key].title)
        if key in RULES
        else key.replace("-", " ").replace("_", " ").capitalize()
    )


def reason(code: str, english: str = "") -> str:
    """Why something was not measured, as a sentence."""
    return translated(f"reason/{code}", english or REASONS.get(code, "No reason given."))


def definition(key: str) -> str:
    """Definition of a quantity."""
    return translated(f"definition/{key}", QUANTITIES[key].definition)


def detail(key: str) -> str:
    """What else decides the value of a quantity; '' where nothing does."""
    return translated(f"detail/{key}", QUANTITIES[key].detail) if QUANTITIES[key].detail else ""


def known_word(standing: str) -> str:
    """Where a number comes from: 'common practice'."""
    return translated(f"known/{standing}", standing)


def term(family: str, key: str) -> str:
    """What a key of the part "material" is called: of a family of catalogue/material_results.py, such as 'input'."""
    english = WORDS.get(f"{family}-{key}", key)
    return translated(f"word/{family}-{key}", english)


def kind_title(kind: str) -> str:
    """A kind of joint by its name."""
    names = {
        "weld-rib": tr("weld rib"), "plain-wall": tr("plain wall"), "flat-lap": tr("flat lap"),
        "stepped-lap": tr("stepped lap"), "tongue-groove": tr("tongue groove"), "ledge": tr("ledge"),
    }  # fmt: skip
    return names.get(kind, kind.replace("-", " "))
