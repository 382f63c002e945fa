"""What keys do in the page, and that the focus shows where they go."""

import numpy as np
import pytest
from report_browser import browser, needs_browser
from report_documents import housing

from seamcheck.report.html import render_html

pytestmark = needs_browser


@pytest.fixture(scope="module")
def window(tmp_path_factory):
    with browser(tmp_path_factory.mktemp("profile")) as opened:
        yield opened


@pytest.fixture(scope="module")
def page(tmp_path_factory):
    path = tmp_path_factory.mktemp("page") / "housing.html"
    path.write_text(render_html(housing()), encoding="utf-8")
    return path


def place(window, name: str) -> np.ndarray:
    drawn = int(window.run("return document.querySelector('#space-figure').dataset.drawn"))
    window.wait(f"return Number(document.querySelector('#space-figure').dataset.drawn) >= {drawn}")
    return np.array(window.run(f"return document.querySelector('#space-figure').dataset.{name}").split(), dtype=float)


def test_keys_turn_move_and_zoom_the_3_d_view_and_the_focus_shows(window, page):
    from selenium.webdriver.common.keys import Keys

    window.open(page)
    window.click("#tab-space")
    window.wait("return Number(document.querySelector('#space-figure').dataset.drawn ?? 0) > 0")

    def press(*keys):
        drawn = int(window.run("return document.querySelector('#space-figure').dataset.drawn"))
        window.key("#space-figure", *keys)
        window.wait(f"return Number(document.querySelector('#space-figure').dataset.drawn) > {drawn}")
        return place(window, "eye"), place(window, "target")

    eye, target = press(Keys.HOME)
    far = np.linalg.norm(eye - target)
    # Seen along the beam, which comes down in this document: the eye stands straight above.
    np.testing.assert_allclose((eye - target)[:2], 0, atol=1e-2)
    turned, kept = press(Keys.ARROW_RIGHT)
    np.testing.assert_allclose(kept, target, atol=1e-3)
    assert np.linalg.norm(turned - kept) == pytest.approx(far, rel=1e-4)
    cosine = (turned - kept) @ (eye - target) / far**2
    assert np.degrees(np.arccos(cosine)) == pytest.approx(5.0, abs=0.05)
    back, _ = press(Keys.ARROW_LEFT)
    np.testing.assert_allclose(back, eye, atol=1e-2)
    tilted, _ = press(Keys.ARROW_DOWN)
    assert np.degrees(np.arccos((tilted - target) @ (eye - target) / far**2)) == pytest.approx(5.0, abs=0.05)
    press(Keys.HOME)
    moved, aim = press(Keys.SHIFT, Keys.ARROW_UP)
    window.key("#space-figure", Keys.NULL)
    assert np.linalg.norm(aim - target) == pytest.approx(0.06 * far, rel=1e-3)
    np.testing.assert_allclose(moved - aim, eye - target, atol=1e-2)
    near, aim = press("+")
    assert np.linalg.norm(near - aim) == pytest.approx(far / 1.15, rel=1e-3)
    assert window.run("return document.activeElement.id") == "space-figure"
    outline = window.run(
        "const s = getComputedStyle(document.activeElement); return [s.outlineStyle, parseFloat(s.outlineWidth)]"
    )
    assert outline[0] == "solid"
    assert outline[1] >= 2
    help_line = window.text(".keys")
    for word in ("arrows turn", "Shift", "zoom", "Home"):
        assert word in help_line
    assert window.complaints() == []


def test_every_control_is_reached_by_the_tab_key_and_shows_its_focus(window, page):
    from selenium.webdriver.common.by import By
    from selenium.webdriver.common.keys import Keys

    window.open(page)
    window.click("#tab-space")
    window.wait("return Number(document.querySelector('#space-figure').dataset.drawn ?? 0) > 0")
    window.run("document.querySelector('.skip').focus()")
    seen = []
    for _ in range(40):
        window.driver.switch_to.active_element.send_keys(Keys.TAB)
        name, shown = window.run(
            "const e = document.activeElement, s = getComputedStyle(e);"
            "return [e.id || e.dataset.go || e.textContent.trim().slice(0, 30), s.outlineStyle !== 'none']"
        )
        assert shown, name
        seen.append(name)
    wanted = {"section-figure", "tab-space", "space-figure", "strip", "theme-switch", "1"}
    assert wanted <= set(seen)
    assert window.driver.find_element(By.CSS_SELECTOR, ".skip").get_attribute("href").endswith("#desk")
