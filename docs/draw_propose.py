"""Proposes a joint for a sample without a rib and takes the picture of docs/propose.md: as drawn, and as proposed.

Needs chromium with its driver, and the development extras. Run it from the project's folder:
``.venv/bin/python docs/draw_propose.py``.
"""

from __future__ import annotations

import sys
import tempfile
from io import BytesIO
from pathlib import Path

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE.parent / "tests" / "report")]

from PIL import Image  # noqa: E402
from report_browser import browser  # noqa: E402
from selenium.webdriver.common.by import By  # noqa: E402

from seamcheck import propose  # noqa: E402
from seamcheck.report.html import render_html  # noqa: E402
from seamcheck.samples import FOLDER  # noqa: E402


def main() -> None:
    result = propose(FOLDER / "rib-missing.step", with_view=True)
    pictures = []
    with tempfile.TemporaryDirectory() as folder:
        page = Path(folder) / "proposed.html"
        page.write_text(render_html(result.review.document, as_drawn=result.as_drawn), "utf-8")
        with browser(Path(folder) / "profile", 1440, 900) as window:
            window.open(page)
            for button in ("last", "first"):
                window.click(f"#proposed-switch button:{button}-child")
                pane = window.driver.find_element(By.CSS_SELECTOR, ".section-pane")
                pictures.append(Image.open(BytesIO(pane.screenshot_as_png)).convert("RGB"))
    both = Image.new("RGB", (sum(p.width for p in pictures) + 16, pictures[0].height), "white")
    both.paste(pictures[0], (0, 0))
    both.paste(pictures[1], (pictures[0].width + 16, 0))
    both.quantize(128, method=Image.Quantize.MAXCOVERAGE).save(HERE / "propose.png", optimize=True)


if __name__ == "__main__":
    main()
