"""Draws two revisions of a housing, compares them, and takes the picture of docs/compare.md.

Needs chromium with its driver, and the development extras. Run it from the project's folder:
``.venv/bin/python docs/draw_compare.py``.
"""

from __future__ import annotations

import sys
import tempfile
from io import BytesIO
from pathlib import Path

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE.parent / "tests"), str(HERE.parent / "tests" / "report")]

from builder import Spec, assemble, draw, l_shape  # noqa: E402
from builder.defects import DEFECTS  # noqa: E402
from PIL import Image  # noqa: E402
from report_browser import browser  # noqa: E402

from seamcheck import compare  # noqa: E402
from seamcheck.comparison.html.page import render_html  # noqa: E402

OLD = (("thin-rib", 40.0, 9.0, 0.66), ("short-land", 128.0, 12.0, 1.9), ("thin-cover", 178.0, 10.0, 0.35))
NEW = (("narrow-traps", 98.0, 6.0, 1.1), ("short-land", 128.0, 16.0, 2.1), ("thin-cover", 178.0, 10.0, 0.35))
"""Faults: kind, middle on the mid-line, extent, by how much; mm."""


def draw_model(path: Path, faults: tuple) -> Path:
    """An L-shaped housing with faults, as STEP."""
    spec = Spec(track=l_shape(), cover_name="data logger lid", base_name="data logger case")
    cover, base = draw(spec)
    for kind, s, length, by in faults:
        (cover, base, _), *_ = DEFECTS[kind][0](spec, cover, base, s, length, by)
    return assemble(spec, cover, base).write(path)


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        models = [draw_model(Path(folder) / f"logger-r{k}.step", faults) for k, faults in enumerate((OLD, NEW), 1)]
        page = Path(folder) / "changes.html"
        result = compare(*models, with_view=True)
        page.write_text(render_html(result.document, result.overlays), "utf-8")
        with browser(Path(folder) / "profile", 1400, 1900) as window:
            window.open(page)
            png = window.driver.get_screenshot_as_png()
    image = Image.open(BytesIO(png)).convert("RGB").resize((1000, 1357), Image.LANCZOS)
    image.quantize(128, method=Image.Quantize.MEDIANCUT).save(HERE / "compare.png", optimize=True)


if __name__ == "__main__":
    main()
