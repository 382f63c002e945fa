"""A reading of a model that was not reviewed, seen along the beam: outlines of the parts, the band filled."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from markupsafe import Markup

_WIDE, _HIGH = 320.0, 220.0  # px
_MARGIN = 0.04  # of the picture


def reading_svg(reading: Mapping[str, Any]) -> Markup:
    """The picture of a ``ReadingRecord`` as SVG; numbers only go in."""
    lines = [*reading["outlines"], *reading["band"]]
    points = [point for line in lines for point in line]
    if not points:
        return Markup("")
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    low, high = min(y for _, y in points), max(y for _, y in points)
    margin = _MARGIN * max(right - left, high - low, 1e-3)
    box = (left - margin, -high - margin, right - left + 2 * margin, high - low + 2 * margin)
    stroke = max(box[2] / _WIDE, box[3] / _HIGH)
    return Markup(
        f'<svg viewBox="{" ".join(f"{value:.3f}" for value in box)}" width="{_WIDE:.0f}" height="{_HIGH:.0f}" '
        'role="img" aria-hidden="true">'
        f'<path d="{_path(reading["outlines"])}" fill="none" stroke="currentColor" stroke-width="{stroke:.4f}"/>'
        f'<path d="{_path(reading["band"])}" fill="currentColor" fill-opacity="0.45" fill-rule="evenodd" '
        f'stroke="currentColor" stroke-width="{stroke:.4f}"/></svg>'
    )


def _path(lines: Sequence[Sequence[Sequence[float]]]) -> str:
    return " ".join("M" + "L".join(f"{x:.2f} {-y:.2f}" for x, y in line) + "Z" for line in lines if line)
