"""Draws a housing with five faults, reviews it, and takes the pictures of the tour. Run by ``make tour``.

Needs chromium with its driver, and the development extras. The model and its faults come from the tests' own
drawings (tests/builder), so that every number in the pictures can be worked out by hand.
"""

from __future__ import annotations

import sys
import tempfile
import time
from io import BytesIO
from pathlib import Path

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "tests" / "report")]

from builder import Spec, assemble, draw, l_shape  # noqa: E402
from builder.defects import DEFECTS  # noqa: E402
from PIL import Image  # noqa: E402
from report_browser import Browser, browser  # noqa: E402

from seamcheck import propose  # noqa: E402
from seamcheck.pipeline import review  # noqa: E402
from seamcheck.report.html import render_html  # noqa: E402
from seamcheck.report.pdf import render_pdf  # noqa: E402
from seamcheck.report.pictures import render_pictures  # noqa: E402
from seamcheck.samples import samples  # noqa: E402

FAULTS = (  # kind, middle on the mid-line, extent, by how much; mm
    ("thin-rib", 40.0, 9.0, 0.66),
    ("narrow-traps", 98.0, 6.0, 1.1),
    ("short-land", 128.0, 12.0, 1.9),
    ("thin-cover", 178.0, 10.0, 0.5),
    ("post", 255.0, 5.0, 0.25),
)


def draw_model(path: Path) -> None:
    """An L-shaped housing with the faults, as STEP."""
    spec = Spec(track=l_shape(), cover_name="data logger lid", base_name="data logger case")
    cover, base = draw(spec)
    for kind, s, length, by in FAULTS:
        (cover, base, _), *_ = DEFECTS[kind][0](spec, cover, base, s, length, by)
    assemble(spec, cover, base).write(path)


def save(png: bytes, name: str, width: int = 1200) -> None:
    """A picture with few colours, small enough for a README."""
    image = Image.open(BytesIO(png)).convert("RGB")
    if image.width > width:
        image = image.resize((width, round(image.height * width / image.width)), Image.LANCZOS)
    image.quantize(256, method=Image.Quantize.MEDIANCUT, dither=Image.Dither.NONE).save(
        HERE / f"{name}.png", optimize=True
    )
    print(f"docs/report/{name}.png")


def take(window: Browser, name: str, selector: str | None = None) -> None:
    time.sleep(0.6)
    if selector is None:
        save(window.driver.get_screenshot_as_png(), name)
    else:
        save(picture_of(window, selector), name)


def picture_of(window: Browser, selector: str) -> bytes:
    """One element of the page as PNG."""
    from selenium.webdriver.common.by import By

    png: bytes = window.driver.find_element(By.CSS_SELECTOR, selector).screenshot_as_png
    return png


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        model, page = Path(folder, "data-logger.step"), Path(folder, "page.html")
        draw_model(model)
        document = review(model, with_view=True).document
        page.write_text(render_html(document), encoding="utf-8")
        with browser(Path(folder, "light"), 1440, 900) as window:
            window.open(page)
            take(window, "first-screen")
            window.click("#tab-space")
            window.wait("return Number(document.querySelector('#space-figure').dataset.drawn ?? 0) > 0")
            window.click("#space-larger")
            window.run("document.querySelector('#space-tools input').click()")
            take(window, "cut-open", ".plan-pane")
            window.run("document.querySelector('#findings').scrollIntoView({behavior: 'instant'})")
            take(window, "findings")
            window.run("document.querySelector('#charts').scrollIntoView({behavior: 'instant'})")
            window.wait("return document.querySelectorAll('.chart .uplot').length >= 3")
            take(window, "charts")
        with browser(Path(folder, "dark"), 1440, 900, dark=True) as window:
            window.open(page)
            take(window, "dark")
        name, picture = next(iter(render_pictures(document, dpi=110).items()))
        print(f"from {name}:")
        save(picture, "picture", 1000)
        print_pages(render_pdf(document))
    proposed_joint()


def proposed_joint() -> None:
    """The section of a proposed joint beside that of the parts as drawn."""
    sample = next(sample for sample in samples() if sample.name == "rib-missing")
    proposal = propose(sample.file, with_view=True)
    assert proposal.review is not None
    with tempfile.TemporaryDirectory() as folder:
        page = Path(folder, "proposed.html")
        page.write_text(render_html(proposal.review.document, as_drawn=proposal.as_drawn), encoding="utf-8")
        with browser(Path(folder, "window"), 1440, 900) as window:
            window.open(page)
            panes = []
            for button in ("last", "first"):
                window.click(f"#proposed-switch button:{button}-child")
                time.sleep(0.6)
                panes.append(Image.open(BytesIO(picture_of(window, ".section-pane"))).convert("RGB"))
    out = BytesIO()
    beside(panes).save(out, format="png")
    save(out.getvalue(), "proposed", 1400)


def beside(pictures: list[Image.Image]) -> Image.Image:
    """Pictures in a row on grey."""
    wide = Image.new(
        "RGB", (sum(p.width + 10 for p in pictures) + 10, max(p.height for p in pictures) + 20), (190, 188, 182)
    )
    x = 10
    for picture in pictures:
        wide.paste(picture, (x, 10))
        x += picture.width + 10
    return wide


def print_pages(pdf: bytes) -> None:
    """The first three printed pages beside each other, where a renderer for PDF is installed."""
    try:
        import pypdfium2
    except ImportError:
        print("docs/report/print.png left as it is: pypdfium2 is not installed.")
        return
    pages = pypdfium2.PdfDocument(pdf)
    sheets = [pages[i].render(scale=1.1).to_pil().convert("RGB") for i in range(3)]
    out = BytesIO()
    beside(sheets).save(out, format="png")
    save(out.getvalue(), "print", 1500)


if __name__ == "__main__":
    main()
