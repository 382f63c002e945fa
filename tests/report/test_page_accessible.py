"""The page by the rules of axe-core, in light and dark. See axe/README.md."""

from pathlib import Path

import pytest
from report_browser import browser, needs_browser
from report_documents import housing, not_reviewed, two_joints

from seamcheck.report.html import render_html
from seamcheck.samples import FOLDER

pytestmark = needs_browser

AXE = Path(__file__).parent / "axe" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]  # WCAG 2.2, levels A and AA


@pytest.fixture(scope="module", params=[False, True], ids=["light", "dark"])
def window(request, tmp_path_factory):
    with browser(tmp_path_factory.mktemp("profile"), dark=request.param) as opened:
        opened.driver.set_script_timeout(30)
        yield opened


def with_material():
    from seamcheck.pipeline import review

    return review(FOLDER / "transmission.step", with_view=True).document


@pytest.fixture(scope="module")
def pages(tmp_path_factory):
    folder = tmp_path_factory.mktemp("pages")
    made = {"housing": housing(), "two": two_joints(), "refused": not_reviewed(), "material": with_material()}
    for name, document in made.items():
        folder.joinpath(f"{name}.html").write_text(render_html(document), encoding="utf-8")
    return folder


def complaints(window) -> list[str]:
    window.run(AXE.read_text("utf-8"))
    # What happens to lie under the bar that stays in sight would count as too small: the bar is put at its end.
    window.run("document.querySelector('.walkbar')?.style.setProperty('position', 'static')")
    found = window.driver.execute_async_script(
        "const [rules, done] = arguments; axe.run(document, {runOnly: {type: 'tag', values: rules},"
        "resultTypes: ['violations', 'incomplete']})"
        ".then((r) => done({violations: r.violations, rules: r.passes.length}),"
        "(e) => done({violations: [{id: String(e), nodes: []}], rules: 0}))",
        RULES,
    )
    assert found["rules"] > 20  # it did look
    return [f"{v['id']}: {[n['target'] for n in v['nodes']][:4]} {v.get('help')}" for v in found["violations"]]


@pytest.mark.parametrize("name", ["housing", "two", "refused", "material"])
def test_axe_finds_nothing_to_complain_of(window, pages, name):
    window.open(pages / f"{name}.html")
    window.run("document.querySelectorAll('details').forEach((d) => d.open = true)")
    if name == "housing":
        window.run("document.querySelector('#charts').scrollIntoView({behavior: 'instant'})")
        window.wait("return document.querySelectorAll('.chart .uplot').length >= 3")
        assert complaints(window) == []
        window.click("#tab-space")
        window.wait("return Number(document.querySelector('#space-figure').dataset.drawn ?? 0) > 0")
    assert complaints(window) == []


def test_the_check_does_find_what_is_wrong(window, pages):
    window.open(pages / "refused.html")
    window.run(
        "const p = document.createElement('p'); p.textContent = 'pale'; p.className = 'pale';"
        "document.querySelector('.verdict').append(p); p.style.color = 'rgb(150, 150, 150)';"
        "p.style.backgroundColor = 'rgb(140, 140, 140)';"
        "document.querySelector('.verdict').append(document.createElement('button'))"
    )
    found = " ".join(complaints(window))
    assert "color-contrast" in found
    assert "button-name" in found
