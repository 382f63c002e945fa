"""For the sample of every rule: section, strip, table and finding name the same state, value and limit."""

import json

import numpy as np
import pytest
from report_browser import browser, needs_browser

import seamcheck
from seamcheck.document.view import unpack_view
from seamcheck.report import facts
from seamcheck.report.html.page import render_html
from seamcheck.report.plan import sections_of
from seamcheck.report.section import section_shapes
from seamcheck.report.section_svg import section_svg
from seamcheck.samples import samples

QUICK = {"rib-missing", "near-parts"}
SAMPLES = [pytest.param(s, id=s.name, marks=[] if s.name in QUICK else [pytest.mark.thorough]) for s in samples()]


@pytest.fixture(scope="module")
def window(tmp_path_factory):
    with browser(tmp_path_factory.mktemp("profile")) as opened:
        yield opened


@needs_browser
@pytest.mark.parametrize("sample", SAMPLES)
def test_section_strip_table_and_finding_agree(sample, window, tmp_path):
    document = reviewed(sample)
    window.open(written(document, tmp_path))
    for numbered in facts.numbered_findings(document):
        if numbered.station is None:
            continue
        finding, n = numbered.finding, numbered.number
        row = f"#finding-list [data-row='{n}']"
        window.run("document.querySelector(arguments[0]).querySelector('a').click()", row)
        value, limit = facts.value_text(finding), facts.limit_words(document, finding)
        table = window.text(row)
        mark = window.run(
            "const m = [...document.querySelectorAll(`#section-figure [data-mark='${arguments[0]}']`)];"
            "return m.length ? [m.map((line) => line.textContent).join(' '), m[0].getAttribute('class')] : null", n,
        )  # fmt: skip
        here = window.run("return document.querySelectorAll('#section-figure .mark-line').length")
        assert mark or here > 3, "every finding of a place is named in its section, up to three of them"
        strip = window.run(
            "const v = document.querySelector(`.strip-value[data-rule='${arguments[0]}']`);"
            "return v && [v.dataset.state, v.textContent]", finding["rule"],
        )  # fmt: skip
        assert strip is not None, "the rule of every finding has its row in the strip"
        tone = "waived" if numbered.is_waived else finding["severity"]
        assert tone in strip[0]
        assert finding["severity"] in table
        pinned = window.run(
            "return document.querySelectorAll(`#section-figure [data-finding='${arguments[0]}']`).length", n
        )
        gravest_here = facts.numbered_findings(document)[0].number == n
        assert pinned or not gravest_here, "the gravest has a dimension or a pin in the drawing"
        for text in (value, limit):
            if text and text != "–":
                assert text in table
                assert mark is None or text in mark[0]
        if mark:
            assert tone in mark[1].split()
        assert_state_of_the_strip(window, document, numbered)
        assert_value_of_the_strip(window, numbered)
        assert_consequences_are_told(window, document, numbered)


def assert_value_of_the_strip(window, numbered):
    """Where the strip's row has the column that the finding is about, it says the finding's value."""
    finding = numbered.finding
    cells = window.run(
        "return Object.fromEntries([...document.querySelectorAll("
        "`.strip-value[data-rule='${arguments[0]}'] b[data-column]`)].map((b) => [b.dataset.column, b.textContent]))",
        finding["rule"],
    )
    told = [cells[key] for key in (finding["column"], finding["quantity"]) if key in cells]
    if told and finding["value"] is not None:
        assert told[0].split()[0] in facts.value_text(finding)


def assert_consequences_are_told(window, document, numbered):
    """A rule whose breach is told with another finding points to it, where it has no finding of its own."""
    here = set(
        window.run("return [...document.querySelectorAll('#finding-list [aria-current]')].map((r) => r.dataset.row)")
    )
    found = [n for n in facts.numbered_findings(document) if str(n.number) in here]
    own = {n.finding["rule"] for n in found}
    for rule in set(numbered.finding["also"] or ()) - own:
        told = window.run(
            "return document.querySelector(`.strip-value[data-rule='${arguments[0]}'] .limit`)?.textContent", rule
        )
        first = next(n for n in found if rule in (n.finding["also"] or ()))
        assert told is None or told == f"see finding {first.number}"


def assert_state_of_the_strip(window, document, numbered):
    """The strip's row has a cell of the finding's state where the finding is."""
    cells = window.run(
        "const row = document.querySelector(`.strip-value[data-rule='${arguments[0]}']`).previousElementSibling;"
        "return [...row.querySelectorAll('.cell')].map((c) => c.getAttribute('class').replace('cell ', ''))",
        numbered.finding["rule"],
    )
    states = {"must-fix": "broken", "attention": "look", "note": "noted"}
    assert ("waived" if numbered.is_waived else states[numbered.finding["severity"]]) in cells


@pytest.mark.parametrize("sample", SAMPLES)
def test_the_shade_drawn_is_the_shade_measured(sample):
    # The strips in the shade and the share of light are two results of the same rays: they have to add up.
    document = reviewed(sample)
    shades = 0
    for section in document["view"]["sections"]:
        joint = next(j for j in document["joints"] if j["id"] == section["joint"])
        stations = next(c for c in joint["contours"] if c["id"] == section["contour"])["stations"]
        for leans, key in ((False, "beam_clear"), (True, "light_clear")):
            for i in {row[0] for row in section["shade"] if row[8] == leans}:
                width = stations["rib_width_top"][i]
                lost = sum(
                    (row[2] - row[1]) * (1 - row[3]) for row in section["shade"] if row[0] == i and row[8] == leans
                )
                np.testing.assert_allclose(1 - lost / width, stations[key][i], atol=2e-3)
                shades += 1
        dim = [
            v for key in ("beam_clear", "light_clear") for v in stations.get(key, []) if v is not None and v < 1 - 1e-6
        ]
        assert shades >= len(dim)


@needs_browser
@pytest.mark.parametrize(
    ("name", "part"),
    [pytest.param("beam-path", "cable clip", id="along the beam"),
     pytest.param("scanner-shadow", "wind vane mast", id="from the scanner", marks=pytest.mark.thorough)],
)  # fmt: skip
def test_what_casts_a_shadow_is_drawn_and_named(name, part, window, tmp_path):
    sample = next(s for s in samples() if s.name == name)
    window.open(written(reviewed(sample), tmp_path))
    assert part in window.text("#section-figure .caster")
    assert window.run("return document.querySelectorAll('#section-figure .shade').length")
    assert window.run("return document.querySelectorAll('#section-figure .stop').length")
    if name == "beam-path":  # it stands in the plane of the section, so its own outline is drawn
        assert window.run("return document.querySelector('#section-figure .casts') !== null")


_documents: dict = {}


def reviewed(sample):
    if sample.name not in _documents:
        settings = seamcheck.Settings() if sample.settings is None else str(sample.settings)
        review = seamcheck.review(str(sample.file), settings=settings, with_view=True)
        _documents[sample.name] = json.loads(review.to_json())
    return _documents[sample.name]


def written(document, folder):
    path = folder / "page.html"
    path.write_text(render_html(document), "utf-8")
    return path


@pytest.mark.parametrize("sample", SAMPLES)
def test_sections_without_a_script_show_the_finding(sample):
    document = reviewed(sample)
    sections, _ = unpack_view(document["view"])
    for numbered in facts.numbered_findings(document):
        if numbered.station is None:
            continue
        joint, contour = next(
            (j, c) for j, c in facts.paths(document)
            if (j["id"], c["id"]) == (numbered.finding["joint"], numbered.contour)
        )  # fmt: skip
        own = sections_of(sections, joint["id"], contour["id"])
        shapes = section_shapes(document, joint, contour, numbered.station, own)
        assert numbered.number in [n.number for n in shapes.findings]
        dimensioned = [d for d in shapes.dimensions if d.tone and facts.value_text(numbered.finding) in d.text]
        assert dimensioned or numbered.number in [pin.number for pin in shapes.pins]
        assert section_svg(shapes).count("<path") > 5
        for name, trap in shapes.traps.items():  # the room drawn is the room measured, inside neither part
            area = contour["stations"][f"trap_area_{name}"][numbered.station]
            assert trap.area == pytest.approx(area, rel=0.02)
            assert trap.intersection(shapes.bodies[0]).area < 0.01 * area
