"""Reports in German and in inches: every text has its translation, and no other language is left in a report."""

import json
import re
from functools import cache
from pathlib import Path

import pytest
from babel.numbers import get_decimal_symbol
from german_words import english_words, words_of_page
from report_documents import housing, two_joints

import seamcheck
from seamcheck.catalogue.say import places_of
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import Voice, read_catalogue, speaking, tr
from seamcheck.cli.outputs import OUTPUTS, make
from seamcheck.cli.shared import show_review
from seamcheck.report.html.script_voice import texts_of_script
from seamcheck.report.html.translated import texts_of_template
from seamcheck.report.language import said, spoken
from seamcheck.report.texts import all_texts, texts_of_code
from seamcheck.samples import samples

QUICK = {"collapse-window"}
SAMPLES = [pytest.param(s, id=s.name, marks=[] if s.name in QUICK else [pytest.mark.thorough]) for s in samples()]
GERMAN, INCH = Voice("de"), Voice("en", "in")
OUTPUT = {output.name: output for output in OUTPUTS}


@cache
def reviewed(file, settings):
    return seamcheck.review(file, settings=settings, with_view=True).document


def written(name, document, voice):
    content = make(OUTPUT[name], document, [Path("model.step")], voice=voice)
    return content if isinstance(content, str) else content.decode()


def names_in(document):
    parts = document["model"]["parts"]
    return {part["name"] for part in parts} | {name for part in parts for name in part["path"]}


def test_every_text_has_a_german_one_with_the_same_places():
    known = {(m.context or "", "" if m.context else m.id): m.string for m in read_catalogue("de") if m.id}
    for key, english in all_texts():
        german = known.get((key, "" if key else english))
        assert german, f"{key or english!r}: add it with python -m seamcheck.report.texts and translate it"
        assert set(places_of(german)) == set(places_of(english)), key or english
        assert german.startswith(" ") == english.startswith(" "), english


def test_the_catalogue_holds_nothing_that_no_report_says():
    wanted = {(key, "" if key else english) for key, english in all_texts()}
    extra = [m.id for m in read_catalogue("de") if m.id and (m.context or "", "" if m.context else m.id) not in wanted]
    assert extra == []


@pytest.mark.parametrize("sample", SAMPLES)
def test_a_german_report_of_a_sample_is_german(sample, capsys):
    document = reviewed(sample.file, sample.settings)
    names = names_in(document)
    for verbose in (False, True):
        show_review(document, False, verbose, GERMAN)
        assert english_words(capsys.readouterr().out, names) == set()
    for name in ("questions", "markdown"):
        assert english_words(written(name, document, GERMAN), names) == set()
    page = words_of_page(written("html", document, GERMAN))
    assert english_words(page, names) == set()


@pytest.mark.parametrize("made", [housing, two_joints])
def test_what_programs_read_stays_as_it_is(made):
    document = made()
    for output in ("json", "sarif", "junit", "csv"):
        if output in OUTPUT and not (OUTPUT[output].needs_seam and not document["joints"]):
            plain = make(OUTPUT[output], document, [Path("model.step")])
            assert make(OUTPUT[output], document, [Path("model.step")], voice=GERMAN) == plain
    before = json.dumps(document, sort_keys=True)
    with speaking(Voice("de", "in")):
        spoken(document)
    assert json.dumps(document, sort_keys=True) == before


def test_numbers_have_the_sign_of_the_language():
    with speaking(GERMAN):
        assert shown(1.25, "mm", 2) == f"1{get_decimal_symbol('de')}25 mm"  # Unicode CLDR, by Babel
    assert shown(1.25, "mm", 2) == "1.25 mm"


EXACT = [(25.4, "mm", 25.4), (12.7, "mm", 25.4), (645.16, "mm²", 25.4**2), (16387.064, "mm³", 25.4**3)]


@pytest.mark.parametrize(("value", "unit", "by"), EXACT)
def test_inches_are_millimetres_over_25_4(value, unit, by):
    """One inch is 25.4 mm exactly (ISO 31-1, international yard and pound agreement of 1959)."""
    with speaking(INCH):
        text, name = shown(value, unit, 3).split()
    assert float(text) == pytest.approx(value / by, abs=1e-9)
    assert name == unit.replace("mm", "in")


def lengths_in(message):
    for arg in message["args"].values():
        if isinstance(arg, dict) and arg["unit"] == "mm":
            yield arg["value"]
    for parts in message.get("parts", {}).values():
        for part in parts:
            yield from lengths_in(part)


@pytest.mark.parametrize("sample", [s for s in SAMPLES if s.id in QUICK])
def test_a_report_in_inches_says_the_numbers_of_the_one_in_millimetres(sample):
    document = reviewed(sample.file, sample.settings)
    count = 0
    for message in (message for joint in document["joints"] for message in joint["why"]):
        with speaking(INCH):
            inches = [float(n) for n in re.findall(r"(-?\d+\.?\d*) in\b", said(message))]
        lengths = list(lengths_in(message))
        assert sorted(inches) == pytest.approx(sorted(length / 25.4 for length in lengths), abs=0.006)
        count += len(inches)
    assert count > 5


def test_a_text_without_a_translation_is_shown_in_english():
    with speaking(GERMAN):
        assert tr("No text of seamcheck is this one.") == "No text of seamcheck is this one."


def test_texts_of_templates_and_code_are_found():
    source = '<p title="What it is">Look  here, <b>now</b> {{ tr("a word") }}{{ name }}</p><script>let x</script>'
    assert texts_of_template(source) == ["What it is", "Look here,", "now", "a word"]
    assert list(texts_of_code("x = tr('one {n}', n=1) + other('two')")) == ["one {n}"]


def test_the_script_asks_for_the_texts_that_its_build_lists():
    source = "".join(file.read_text("utf-8") for file in (Path(__file__).parents[2] / "frontend" / "src").rglob("*.ts"))
    asked = {json.loads(found) for found in re.findall(r'\btr\(\s*("(?:[^"\\]|\\.)*")', source)}
    assert set(texts_of_script()) == asked, "make page writes page.texts.json"
