"""The page in a real browser: it loads in silence, everything moves in step, numbers are the document's."""

import random
from io import BytesIO

import numpy as np
import pytest
from report_browser import browser, needs_browser
from report_documents import HOSTILE, hostile, housing, not_reviewed, two_joints, with_junction

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.report import facts
from seamcheck.report.html import render_html

pytestmark = needs_browser


@pytest.fixture(scope="module")
def window(tmp_path_factory):
    with browser(tmp_path_factory.mktemp("profile")) as opened:
        yield opened


@pytest.fixture(scope="module")
def pages(tmp_path_factory):
    """Writes a document's page once; name -> path."""
    folder, written = tmp_path_factory.mktemp("pages"), {}

    def page(name, document):
        if name not in written:
            written[name] = folder / f"{name}.html"
            written[name].write_text(render_html(document), encoding="utf-8")
        return written[name]

    return page


@pytest.fixture(scope="module")
def document():
    return housing()


def station_of(window) -> int:
    return int(window.run("return document.querySelector('#walk-where b').dataset.station"))


def open_space(window) -> None:
    window.click("#tab-space")
    window.wait("return Number(document.querySelector('#space-figure').dataset.drawn ?? 0) > 0")


def test_it_loads_without_errors_and_asks_for_nothing(window, pages, document):
    window.requests()
    window.open(pages("housing", document))
    open_space(window)
    window.run("document.querySelector('#charts').scrollIntoView()")
    window.wait("return document.querySelectorAll('.chart .uplot').length >= 3")
    assert window.complaints() == []
    assert window.requests() == []


def test_its_policy_forbids_what_the_page_does_not_bring_along(window, pages, document):
    window.open(pages("housing", document))
    window.run("const s = document.createElement('img'); s.src = 'http://localhost:9/x.png';document.body.append(s);")
    refused = window.run(
        "const tried = {markup: () => { document.body.innerHTML = '<b>x</b>'; },"
        "handler: () => document.body.setAttribute('onclick', 'window.hit = 1')};"
        "const fails = (f) => { try { f(); return false; } catch { return true; } };"
        "return Object.keys(tried).filter((name) => fails(tried[name]))"
    )
    assert refused == ["markup", "handler"]
    window.wait("return document.images[0].complete")
    assert any("Content Security Policy" in line for line in window.complaints())
    window.requests()  # what was tried and refused is not the page's doing


def test_a_click_on_a_finding_moves_section_chart_plan_and_marker_to_its_station(window, pages, document):
    window.open(pages("housing", document))
    open_space(window)
    window.run("document.querySelector('#charts').scrollIntoView({behavior: 'instant'})")
    window.wait("return document.querySelector('.chart-cursor')?.dataset.s !== undefined")
    contour = document["joints"][0]["contours"][0]
    for n in facts.numbered_findings(document)[:5]:
        window.run("scrollTo(0, 0)")
        window.click(f'#finding-list a[data-go="{n.number}"]')
        s = contour["stations"]["s"][n.station]
        assert station_of(window) == n.station
        assert float(window.run("return document.querySelector('#section-caption b').dataset.s")) == s
        cursor = float(window.run("return document.querySelector('.chart-cursor').dataset.s"))
        assert cursor == pytest.approx(s, abs=1e-3)
        share = float(window.run("return document.querySelector('.strip-cursor').dataset.share"))
        assert share == pytest.approx(s / contour["length_mm"], abs=1e-4)
        marker = window.run("return document.querySelector('#space-figure').dataset.marker").split()
        np.testing.assert_allclose(np.array(marker, dtype=float), n.finding["at"], atol=2e-3)
        rows = window.run(
            "return [...document.querySelectorAll('#finding-list [aria-current]')].map((r) => r.dataset.row)"
        )
        assert str(n.number) in rows
    assert window.complaints() == []


def test_keys_walk_along_the_seam_and_round_its_start(window, pages, document):
    from selenium.webdriver.common.keys import Keys

    window.open(pages("housing", document))
    count = len(document["joints"][0]["contours"][0]["stations"]["s"])
    for selector in ("#section-figure", "#strip", "#walk-slider"):
        window.key(selector, Keys.HOME)
        assert station_of(window) == 0
        window.key(selector, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT)
        assert station_of(window) == 2
        window.key(selector, Keys.SHIFT, Keys.ARROW_RIGHT, Keys.NULL)
        assert station_of(window) == 12
        window.key(selector, Keys.HOME, Keys.ARROW_LEFT)
        assert station_of(window) == count - 1
    placed = sorted(n.station for n in facts.numbered_findings(document) if n.station is not None)
    window.key("#strip", Keys.HOME, Keys.PAGE_DOWN)
    assert station_of(window) == next(p for p in placed if p > 0)


def test_the_slider_and_a_press_on_the_strip_and_on_the_plan_move_the_reader(window, pages, document):
    window.open(pages("housing", document))
    window.run("const r = document.querySelector('#walk-slider'); r.value = 200; r.dispatchEvent(new Event('input'))")
    s = document["joints"][0]["contours"][0]["stations"]["s"]
    assert s[station_of(window)] == pytest.approx(200, abs=0.26)
    window.run(
        "const t = document.querySelector('.track').getBoundingClientRect();"
        "document.querySelector('.track').dispatchEvent(new PointerEvent('pointerdown',"
        "{bubbles: true, pointerId: 1, clientX: t.left + t.width / 4, clientY: t.top + 3}))"
    )
    assert s[station_of(window)] == pytest.approx(382.831853 / 4, abs=1.0)
    at = window.run("return {...document.querySelector('.plan-cursor').dataset}")
    window.run(
        "const o = document.querySelector('#plan-figure svg'), b = o.getBoundingClientRect();"
        "o.dispatchEvent(new PointerEvent('pointerdown',"
        "{pointerId: 1, clientX: b.left + 3, clientY: b.top + b.height / 2}))"
    )
    moved = window.run("return {...document.querySelector('.plan-cursor').dataset}")
    assert moved != at
    x = document["joints"][0]["contours"][0]["stations"]["x"][station_of(window)]
    assert x == pytest.approx(-60, abs=0.01)


def test_numbers_shown_are_the_documents_at_random_stations(window, pages, document):
    window.open(pages("housing", document))
    window.run("document.querySelectorAll('details').forEach((d) => d.open = true)")
    contour = document["joints"][0]["contours"][0]
    stations = contour["stations"]
    for station in random.Random(20).sample(range(len(stations["s"])), 12):
        window.run(
            "const r = document.querySelector('#walk-slider'); r.value = arguments[0];"
            "r.dispatchEvent(new Event('input'))",
            stations["s"][station],
        )
        assert station_of(window) == station
        table = window.run(
            "return Object.fromEntries([...document.querySelectorAll('#all-values [data-column]')]"
            ".map((c) => [c.dataset.column, c.textContent]))"
        )
        assert set(table) == {k for k in stations if k in QUANTITIES}
        strip = window.run(
            "return [...document.querySelectorAll('.strip-value [data-column]')]"
            ".map((c) => [c.dataset.column, c.textContent])"
        )
        drawn = window.run(
            "return [...document.querySelectorAll('#section-figure [data-column]')]"
            ".map((g) => [g.dataset.column, g.textContent])"
        )
        assert len(strip) >= 10
        assert len(drawn) >= 8
        for column, shown in [*table.items(), *strip]:
            check_number(shown, stations[column][station], column)
        for column, shown in drawn:
            value = stations[column][station]
            assert (facts.number_text(value, column) if value is not None else "not measured") in shown


def check_number(shown, value, column):
    """What is shown is the value, rounded to the quantity's decimals."""
    if value is None:
        assert shown in ("–", "not measured")
        return
    if column.startswith("trap_open"):
        assert shown == ("open" if value else "closed")
        return
    unit = facts.unit_of(column)
    number = float(shown.removesuffix(unit).strip())
    assert number == pytest.approx(value, abs=0.5001 * 10 ** -QUANTITIES[column].decimals)


def test_hostile_names_do_nothing_and_are_shown_as_they_are(window, pages):
    window.open(pages("hostile", hostile()))
    open_space(window)
    window.run("document.querySelectorAll('details').forEach((d) => d.open = true)")
    assert window.run("return document.images.length + document.querySelectorAll('svg[onload], [onerror]').length") == 0
    assert window.run("return document.scripts.length") == 2
    assert HOSTILE in window.text(".title-block")
    assert HOSTILE in window.text("#space-tools")
    assert "{{7*7}}" in window.text("#file")
    assert window.complaints() == []


def test_without_a_view_the_page_says_so_and_still_walks(window, pages):
    from selenium.webdriver.common.keys import Keys

    window.open(pages("plain", housing(step=2.0, view=False)))
    assert "no section outlines" in window.text("#section-figure")
    assert "no section outlines" in window.text(".no-view")
    open_space(window)
    window.key("#strip", Keys.HOME, Keys.ARROW_RIGHT)
    assert station_of(window) == 1
    assert window.complaints() == []


def test_a_model_that_was_not_reviewed_has_a_page_that_says_why(window, pages):
    window.open(pages("refused", not_reviewed()))
    assert "needs a cover and a base" in window.text(".verdict")
    assert "Class 4" in window.text(".cautions")
    assert window.complaints() == []


def test_two_joints_and_junctions_can_be_walked(window, pages):
    from selenium.webdriver.common.keys import Keys

    window.open(pages("two", two_joints()))
    window.run("const c = document.querySelector('#joint-choice'); c.value = '1';c.dispatchEvent(new Event('change'))")
    assert station_of(window) == 0
    assert "s = 0.00 mm" in window.text("#section-caption")
    window.open(pages("junction", with_junction()))
    window.run("const r = document.querySelector('#walk-slider'); r.value = 0; r.dispatchEvent(new Event('input'))")
    window.key("#strip", Keys.END, Keys.ARROW_RIGHT)
    assert "c1" in window.text("#walk-where")
    window.run("const r = document.querySelector('#walk-slider'); r.value = r.max;r.dispatchEvent(new Event('input'))")
    assert "c2" in window.text("#walk-where")
    assert window.complaints() == []


def test_cutting_open_and_hiding_change_the_picture(window, pages, document):
    from PIL import Image
    from selenium.webdriver.common.by import By

    window.open(pages("housing", document))
    open_space(window)

    def picture():
        window.run("document.querySelector('#space-figure').dataset.drawn = '0'")
        window.wait("return true")
        element = window.driver.find_element(By.CSS_SELECTOR, "#space-figure")
        return np.asarray(Image.open(BytesIO(element.screenshot_as_png)).convert("RGB")).astype(int)

    def step(act):
        before = int(window.run("return document.querySelector('#space-figure').dataset.drawn ?? 0"))
        act()
        window.wait(f"return Number(document.querySelector('#space-figure').dataset.drawn) > {before}")

    whole = picture()
    assert len(np.unique(whole.reshape(-1, 3), axis=0)) > 40  # not a blank pane
    boxes = window.driver.find_elements(By.CSS_SELECTOR, "#space-tools input")
    names = [b.find_element(By.XPATH, "..").text for b in boxes]
    assert names == ["cut open here", "station housing", "station lid", "sensor board"]
    step(boxes[2].click)
    without_lid = picture()
    assert np.abs(without_lid - whole).max() > 40
    step(boxes[2].click)
    step(boxes[0].click)
    assert np.abs(picture() - whole).max() > 40
    window.click("#space-tools button:nth-of-type(3)")
    assert window.complaints() == []


@pytest.mark.parametrize("width", [390, 820, 1100, 1920])
def test_nothing_runs_out_of_the_window(window, pages, document, width):
    size = {"width": width, "height": 900, "deviceScaleFactor": 1, "mobile": False}
    window.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", size)
    try:
        window.open(pages("housing", document))
        assert window.run("return document.documentElement.scrollWidth") <= width
    finally:
        size["width"] = 1440
        window.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", size)


def test_dark_and_light_can_be_switched(window, pages, document):
    window.open(pages("housing", document))
    paper = "return getComputedStyle(document.body).backgroundColor"
    light = window.run(paper)
    window.click("#theme-switch")
    dark = window.run(paper)
    assert sum(map(int, light[4:-1].split(","))) > 600 > 200 > sum(map(int, dark[4:-1].split(",")))
    assert window.complaints() == []


@pytest.mark.parametrize("sample", ["clamp-land"])
def test_a_reviewed_sample_has_closed_outlines_and_its_own_numbers(window, pages, sample):
    from seamcheck.pipeline import review
    from seamcheck.samples import FOLDER

    document = review(FOLDER / f"{sample}.step", with_view=True).document
    window.open(pages(sample, document))
    contour = document["joints"][0]["contours"][0]
    for station in (3, len(contour["stations"]["s"]) // 2):
        window.run(
            "const r = document.querySelector('#walk-slider'); r.value = arguments[0];"
            "r.dispatchEvent(new Event('input'))",
            contour["stations"]["s"][station],
        )
        outlines = window.run(
            "return [...document.querySelectorAll('#section-figure .outline')].map((p) => p.getAttribute('d'))"
        )
        assert len(outlines) == 2
        assert all(d.count("M") == d.count("Z") >= 1 for d in outlines)
        traps = window.run("return document.querySelectorAll('#section-figure .trap').length")
        assert traps == 2
        land = window.text("#section-figure [data-column=clamp_land]")
        assert facts.number_text(contour["stations"]["clamp_land"][station], "clamp_land") in land
    open_space(window)
    assert window.complaints() == []


def area(d: str) -> float:
    """Area of a closed path of straight lines, by the shoelace formula."""
    points = np.array([pair.split() for pair in d.strip("MZ").split("L")], dtype=float)
    x, y = points.T
    return abs(float(x @ np.roll(y, -1) - y @ np.roll(x, -1))) / 2


def test_traps_are_drawn_with_the_area_that_is_stated(window, pages, document):
    # The drawing is to scale: its own scale bar gives the pixels of a millimetre.
    window.open(pages("housing", document))
    contour = document["joints"][0]["contours"][0]
    for n in facts.numbered_findings(document)[:5]:
        window.click(f'#finding-list a[data-go="{n.number}"]')
        paths = window.run(
            "return [...document.querySelectorAll('#section-figure .trap')].map((p) => p.getAttribute('d'))"
        )
        bar = window.run(
            "const b = [...document.querySelectorAll('#section-figure :is(.scale-dark, .scale-light)')];"
            "return [b.reduce((sum, r) => sum + Number(r.getAttribute('width')), 0),"
            " parseFloat(b.at(-1).nextElementSibling.textContent)]"
        )
        scale = bar[0] / bar[1]
        stated = [contour["stations"][f"trap_area_{side}"][n.station] for side in ("inner", "outer")]
        drawn = [area(d) / scale**2 for d in paths]
        np.testing.assert_allclose(drawn, stated, rtol=0.03)  # columns 0.01 mm wide, two decimals of a pixel
