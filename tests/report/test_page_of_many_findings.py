"""A page of many findings, and of findings with several places: list, groups, numbers that keep apart, folds."""

import pytest
from report_browser import browser, needs_browser
from report_documents import housing, many

from seamcheck.report import facts
from seamcheck.report.html import render_html

pytestmark = needs_browser


@pytest.fixture(scope="module")
def window(tmp_path_factory):
    with browser(tmp_path_factory.mktemp("profile")) as opened:
        yield opened


@pytest.fixture(scope="module")
def document():
    return many()


@pytest.fixture
def page(window, document, tmp_path):
    path = tmp_path / "many.html"
    path.write_text(render_html(document), "utf-8")
    window.open(path)
    return path


def test_the_list_counts_filters_and_groups(window, page, document):
    total = len(document["findings"])
    assert window.text("#list-count") == f"({total})"
    window.run(
        "const s = document.querySelector('#list-filter'); s.value = 'must-fix'; s.dispatchEvent(new Event('change'))"
    )
    must = sum(f["severity"] == "must-fix" for f in document["findings"])
    assert window.text("#list-count") == f"({must} of {total})"
    window.run(
        "const s = document.querySelector('#list-order'); s.value = 'rule'; s.dispatchEvent(new Event('change'))"
    )
    heads = window.run("return [...document.querySelectorAll('.group-head')].map((r) => r.textContent)")
    rules = {f["rule"] for f in document["findings"] if f["severity"] == "must-fix"}
    assert len(heads) == len(rules)
    assert {h.rsplit(" (", 1)[0] for h in heads} == {facts.rule_title(rule) for rule in rules}


def test_numbers_in_the_strip_and_in_the_plan_do_not_print_over_each_other(window, page):
    for selector in (".strip-mark", ".section-mark text"):
        boxes = window.run(
            "return [...document.querySelectorAll(arguments[0])].map((e) => { const b = e.getBoundingClientRect();"
            "return [b.left, b.top, b.right, b.bottom]; })", selector,
        )  # fmt: skip
        assert len(boxes) > 3
        for i, a in enumerate(boxes):
            for b in boxes[:i]:
                over = min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1])
                assert min(over) <= 1.0, f"{selector} prints over its neighbour"


def test_every_place_of_a_finding_is_reached_and_marked(window, page, document):
    """The marks of the strip go to all places; there the section names the finding."""
    finding = next(n for n in facts.numbered_findings(document) if n.finding["places"])
    spot = finding.finding["places"][0]
    middle = (spot["from_s"] + spot["to_s"]) / 2
    window.run(f"location.hash = '#s={middle}'")
    window.wait(f"return document.querySelector('#section-figure [data-mark=\"{finding.number}\"]') !== null "
                "|| document.querySelectorAll('#section-figure .mark-line').length > 3")  # fmt: skip
    here = window.run("return [...document.querySelectorAll('#finding-list [aria-current]')].map((r) => r.dataset.row)")
    assert str(finding.number) in here


def test_sheets_are_folded_and_a_link_opens_its_own(window, page, document):
    open_ = "return [...document.querySelectorAll('.sheet-fold')].map((d) => d.open)"
    states = window.run(open_)
    assert states == [True] * 3 + [False] * (len(states) - 3)
    window.run(f"location.hash = '#finding-{len(states)}'")
    window.wait(f"return document.querySelector('#finding-{len(states)} .sheet-fold').open")


@pytest.mark.parametrize("width", [1440, 720, 390])
def test_nothing_runs_out_of_the_window(window, document, tmp_path, width):
    path = tmp_path / "many.html"
    path.write_text(render_html(document), "utf-8")
    size = {"width": width, "height": 900, "deviceScaleFactor": 1, "mobile": False}
    window.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", size)
    window.open(path)
    wide = window.run("return [document.documentElement.scrollWidth, innerWidth]")
    window.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", {**size, "width": 1440})
    assert wide[0] <= wide[1]


def test_the_page_stays_small(document):
    for made in (document, housing()):
        assert len(render_html(made).encode()) <= 1_500_000


def test_without_scripts_plan_strip_charts_and_sections_are_drawn(window, document, tmp_path):
    path = tmp_path / "still.html"
    path.write_text(render_html(document), "utf-8")
    window.driver.execute_cdp_cmd("Emulation.setScriptExecutionDisabled", {"value": True})
    try:
        window.driver.get(path.as_uri())
        source = window.driver.page_source
    finally:
        window.driver.execute_cdp_cmd("Emulation.setScriptExecutionDisabled", {"value": False})
    for name in ("static-plan", "static-strip", "chart static", "section-drawing"):
        assert f'class="{name}"' in source
