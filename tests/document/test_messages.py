"""Every sentence of a document has a key of the catalogue, and is what the key's template makes of its values."""

import json
import pickle
import string
from functools import cache

import msgspec
import pytest

import seamcheck
from seamcheck.cache.plain import plain, restored
from seamcheck.catalogue.kind_words import base_of
from seamcheck.catalogue.known import STANDINGS
from seamcheck.catalogue.material_results import TERMS
from seamcheck.catalogue.message import NOTE, Amount, Message, Sentence
from seamcheck.catalogue.messages import WORDINGS
from seamcheck.catalogue.say import TEXTS, english, places_of, refused, say, together
from seamcheck.errors import REASONS
from seamcheck.samples import samples

QUICK = {"rib-missing", "transmission"}
SAMPLES = [pytest.param(s, id=s.name, marks=[] if s.name in QUICK else [pytest.mark.thorough]) for s in samples()]


@cache
def reviewed(file, settings):
    return seamcheck.review(file, settings=settings).document


def messages_in(value):
    if isinstance(value, dict):
        if {"key", "args", "text"} <= set(value):
            yield msgspec.convert(value, Message)
        for inner in value.values():
            yield from messages_in(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from messages_in(inner)


def strings_in(value):
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list):
        for inner in value.values() if isinstance(value, dict) else value:
            yield from strings_in(inner)


def template_of(key):
    return WORDINGS[key].says if key in WORDINGS else TEXTS[key]


@pytest.mark.parametrize("sample", SAMPLES)
def test_every_sentence_of_a_sample_is_made_from_its_key(sample):
    document = reviewed(sample.file, sample.settings)
    said = list(messages_in(document))
    assert len(said) > 20
    for message in said:
        assert message.key != NOTE, message.text
        assert message.text == english(
            template_of(message.key), message.args, message.parts or {}, base_of(message.key)[1]
        )
    texts = {message.text for message in said}
    named = {term.partition("-")[2] for term in TERMS} | set(STANDINGS) | {"repeated passes", "single pass"}
    for joint in document["joints"]:
        for text in strings_in({k: v for k, v in joint.get("material", {}).items() if k != "messages"}):
            assert " " not in text or text in texts | named
    for joint in document["joints"]:
        for value in joint["interface"].values():
            assert " " not in (value["why"] or "") or value["why"] in texts


@pytest.mark.parametrize("key", TEXTS)
def test_a_template_has_places_of_known_types(key):
    for name, kind in places_of(TEXTS[key]).items():
        assert name.isidentifier()
        assert (
            kind in ("", "word", "list", "quantity", "title", "rules", "reasons", "known")
            or kind.lstrip(".")[:1].isdigit()
        )
    assert list(string.Formatter().parse(TEXTS[key]))  # no brace stands alone


def test_the_keys_of_refusals_begin_with_a_code():
    from seamcheck.catalogue.refusals import REFUSALS

    assert {key.partition(".")[0] for key in REFUSALS} <= {*REASONS, "any", "why"}


def test_numbers_are_kept_with_their_unit_and_shown_with_their_decimals():
    said = say("place.deep", depth=0.4321)
    assert said == "It is 0.43 mm deep."
    assert said.message.args == {"depth": Amount(0.4321, "mm", 2)}


def test_one_is_not_many():
    assert "1 missing record (#7)" in say("file.missing", file="'a'", count=1, records="#7")
    assert "2 missing records (#7, #8)" in say("file.missing", file="'a'", count=2, records="#7, #8")


def test_sentences_within_sentences_keep_their_keys():
    band = say("any.band", width=1, length=2, kind="ledge")
    error = refused("no-seam", "no-seam.dark", cover="a", base="b", band=band, thickness=3, most=4)
    assert "a band 1.00 mm wide and 2 mm long (a ledge inside a wall)" in error.message
    assert error.message.message.parts["band"][0].key == "any.band"
    both = together(error.message, say("evidence.room"))
    assert both == f"{error.message} It closes a cavity."
    assert [part.key for part in both.message.parts["sentences"]] == ["no-seam.dark", "evidence.room"]


def test_a_sentence_survives_a_pipe_and_the_cache():
    said = say("joint.for", evidence=say("place.deep", depth=0.6))
    for again in (pickle.loads(pickle.dumps(said)), restored(json.loads(json.dumps(plain(said, {}))), {})):
        assert isinstance(again, Sentence)
        assert (again, again.message) == (said, said.message)
