"""Colour and transparency of a body: its own, its product's, or what it inherits."""

from __future__ import annotations

import re
from collections import Counter
from typing import Any

from OCP.Quantity import Quantity_ColorRGBA, Quantity_TypeOfColor
from OCP.TopAbs import TopAbs_FACE
from OCP.XCAFDoc import XCAFDoc_ColorTool, XCAFDoc_ColorType, XCAFDoc_DocumentTool

from seamcheck.assembly.shapes import explore
from seamcheck.assembly.text import StepText
from seamcheck.catalogue.say import Value, say

Colour = tuple[tuple[float, float, float], float]
"""RGB 0..1 as a designer sees it (sRGB), and transparency 0 opaque .. 1 clear."""

_KINDS = (XCAFDoc_ColorType.XCAFDoc_ColorSurf, XCAFDoc_ColorType.XCAFDoc_ColorGen)


_NAME, _ITEM, _SHARE = rb"(?:'(?:[^']|'')*'|\$)", rb"#\d+", rb"[-+]?\d+\.?\d*(?:[Ee][-+]?\d+)?"
_ITEMS = rb"\(\s*" + _ITEM + rb"(?:\s*,\s*" + _ITEM + rb")*\s*\)"
_STYLES = {  # ISO 10303-46: the arguments of each; each refers only to those behind it
    b"PRESENTATION_STYLE_ASSIGNMENT": (_ITEMS,),
    b"SURFACE_STYLE_USAGE": (rb"\.\w+\.", _ITEM),
    b"SURFACE_SIDE_STYLE": (_NAME, _ITEMS),
    b"SURFACE_STYLE_FILL_AREA": (_ITEM,),
    b"FILL_AREA_STYLE": (_NAME, _ITEMS),
    b"FILL_AREA_STYLE_COLOUR": (_NAME, _ITEM),
    b"COLOUR_RGB": (_NAME, _SHARE, _SHARE, _SHARE),
}
_WHOLE = {
    keyword: re.compile(keyword + rb"\s*\(\s*" + rb"\s*,\s*".join(arguments) + rb"\s*\)")
    for keyword, arguments in _STYLES.items()
}


def damaged_colours(name: str, text: StepText) -> list[str]:
    """A sentence on damaged records of colours, on which the kernel may crash; if any."""
    before: list[bytes] = []
    for keyword, whole in _WHOLE.items():
        before.append(keyword)
        for number, offset in text.records_of(keyword):
            record = text.record_at(offset)
            if not record.startswith(keyword):  # one of several in a complex record, or in a string
                continue
            named = [text.record(other).strip() for other in text.references(record)]
            kinds = [other.split(b"(", 1)[0].strip() for other in named]
            broken = any(not other.endswith(b")") for other in named)  # cut off, or not there at all
            if whole.fullmatch(record) is None or broken or any(kind in before for kind in kinds):
                where: dict[str, Value] = {"record": f"#{number}", "line": text.line(offset)}
                return [say("file.colours-damaged", file=repr(name), **where)]
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
        seen = Counter(self.of_shape(face) for face in explore(shape, TopAbs_FACE))
        if not seen:
            return None
        colour, count = seen.most_common(1)[0]
        return colour if 2 * count > seen.total() else None


def _plain(value: Quantity_ColorRGBA) -> Colour:
    red, green, blue = value.GetRGB().Values(Quantity_TypeOfColor.Quantity_TOC_sRGB)
    return (round(red, 4), round(green, 4), round(blue, 4)), round(1.0 - value.Alpha(), 4)
