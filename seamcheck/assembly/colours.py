"""Colour and transparency of a body: its own, its product's, or what it inherits."""

from __future__ import annotations

from collections import Counter
from typing import Any

from OCP.Quantity import Quantity_ColorRGBA, Quantity_TypeOfColor
from OCP.TopAbs import TopAbs_FACE
from OCP.TopExp import TopExp_Explorer
from OCP.XCAFDoc import XCAFDoc_ColorTool, XCAFDoc_ColorType, XCAFDoc_DocumentTool

from seamcheck.assembly.text import StepText

Colour = tuple[tuple[float, float, float], float]
"""RGB 0..1 as a designer sees it (sRGB), and transparency 0 opaque .. 1 clear."""

_KINDS = (XCAFDoc_ColorType.XCAFDoc_ColorSurf, XCAFDoc_ColorType.XCAFDoc_ColorGen)


_STYLES = (  # ISO 10303-46: each refers only to those behind it
    b"PRESENTATION_STYLE_ASSIGNMENT", b"SURFACE_STYLE_USAGE", b"SURFACE_SIDE_STYLE", b"SURFACE_STYLE_FILL_AREA",
    b"FILL_AREA_STYLE", b"FILL_AREA_STYLE_COLOUR",
)  # fmt: skip


def styles_in_circle(name: str, text: StepText) -> list[str]:
    """A sentence on colours whose records lead back to themselves, on which the kernel crashes; if any."""
    for rank, keyword in enumerate(_STYLES):
        before = _STYLES[: rank + 1]
        for number, offset in text.records_of(keyword):
            for other in text.references(text.record_at(offset)):
                if text.record(other).split(b"(", 1)[0].strip() in before:
                    return [
                        f"{name!r} has colours whose records refer to each other in a circle (#{number} on line "
                        f"{text.line(offset)}): it is damaged, and read without colours. Export it again."
                    ]
    return []


class Colours:
    """Looks colours up in an XCAF document."""

    def __init__(self, document: Any) -> None:
        self._tool = XCAFDoc_DocumentTool.ColorTool_s(document.Main())

    def of_label(self, label: Any) -> Colour | None:
        for kind in _KINDS:
            value = Quantity_ColorRGBA()
            if XCAFDoc_ColorTool.GetColor_s(label, kind, value):
                return _plain(value)
        return None

    def of_shape(self, shape: Any) -> Colour | None:
        for kind in _KINDS:
            value = Quantity_ColorRGBA()
            if self._tool.GetColor(shape, kind, value):
                return _plain(value)
        return None

    def of_most_faces(self, shape: Any) -> Colour | None:
        """The colour that more than half of the faces carry, if there is one."""
        seen: Counter[Colour | None] = Counter()
        explorer = TopExp_Explorer(shape, TopAbs_FACE)
        while explorer.More():
            seen[self.of_shape(explorer.Current())] += 1
            explorer.Next()
        if not seen:
            return None
        colour, count = seen.most_common(1)[0]
        return colour if 2 * count > seen.total() else None


def _plain(value: Quantity_ColorRGBA) -> Colour:
    red, green, blue = value.GetRGB().Values(Quantity_TypeOfColor.Quantity_TOC_sRGB)
    return (round(red, 4), round(green, 4), round(blue, 4)), round(1.0 - value.Alpha(), 4)
