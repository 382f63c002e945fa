"""Reviews every sample model and puts their sections on one sheet, docs/report/samples.png. Run by ``make tour``."""

from __future__ import annotations

import sys
import tempfile
from io import BytesIO
from pathlib import Path

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE.parents[1] / "tests" / "report")]

from PIL import Image, ImageDraw  # noqa: E402
from report_browser import browser  # noqa: E402

from seamcheck.pipeline import review  # noqa: E402
from seamcheck.report.html import render_html  # noqa: E402
from seamcheck.samples import samples  # noqa: E402

ACROSS, CELL = 5, (240, 172)


def main() -> None:
    """One cell for each sample: its section at the gravest finding."""
    cells = []
    with tempfile.TemporaryDirectory() as folder, browser(Path(folder, "profile")) as window:
        page = Path(folder, "page.html")
        for sample in samples():
            settings = {} if sample.settings is None else {"settings": str(sample.settings)}
            page.write_text(render_html(review(sample.file, with_view=True, **settings).document), "utf-8")
            window.open(page)
            if not window.run("return document.querySelector('#section-figure') !== null"):
                print(f"{sample.name} was not reviewed: {window.text('h1')}")
                continue
            figure = window.driver.find_element("css selector", "#section-figure")
            cells.append((sample.name, Image.open(BytesIO(figure.screenshot_as_png)).convert("RGB")))
    width, height = CELL
    rows = -(-len(cells) // ACROSS)
    sheet = Image.new("RGB", (ACROSS * width, rows * height), "#fdfcf8")
    for k, (name, picture) in enumerate(cells):
        picture.thumbnail((width - 8, height - 22), Image.Resampling.LANCZOS)
        x, y = k % ACROSS * width, k // ACROSS * height
        sheet.paste(picture, (x + 4, y + 18))
        ImageDraw.Draw(sheet).text((x + 6, y + 4), name, fill="#18222a")
    few = sheet.quantize(56, dither=Image.Dither.NONE)
    few.save(HERE / "samples.png", optimize=True)
    print("docs/report/samples.png")


if __name__ == "__main__":
    main()
