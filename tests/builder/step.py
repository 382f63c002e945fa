"""Writing STEP files of named, coloured parts: any length unit and schema, the same bytes every time."""

from __future__ import annotations

import os
import re
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Message import Message
from OCP.Quantity import Quantity_Color, Quantity_ColorRGBA, Quantity_TOC_sRGB
from OCP.STEPCAFControl import STEPCAFControl_Controller, STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs
from OCP.TCollection import TCollection_ExtendedString
from OCP.TDataStd import TDataStd_Name
from OCP.TDocStd import TDocStd_Document
from OCP.TopLoc import TopLoc_Location
from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_DocumentTool

Named = tuple[str, Any, "tuple[float, ...] | None"]

_UNITS = {"mm": "MM", "cm": "CM", "m": "M", "in": "INCH", "ft": "FT"}
_SCHEMAS = {"AP203": "AP203", "AP214": "AP214IS", "AP242": "AP242DIS"}


def write_step(
    path: str | os.PathLike[str],
    parts: Sequence[Named],
    unit: str = "mm",
    schema: str = "AP214",
    product: str = "weather station housing",
) -> Path:
    """Write an assembly of (name, shape in mm, colour RGB or RGBA or None), one product a part.

    The time stamp and the path in the header are replaced, so the same parts give the same bytes.
    """
    path = Path(path)
    Message.DefaultMessenger_s().ChangePrinters().Clear()  # the kernel would write to standard output
    STEPCAFControl_Controller.Init_s()
    for key, value in (("write.step.unit", _UNITS[unit]), ("write.step.schema", _SCHEMAS[schema])):
        if not Interface_Static.SetCVal_s(key, value):
            raise RuntimeError(f"the kernel does not take {key} = {value}")
    Interface_Static.SetIVal_s("write.surfacecurve.mode", 0)  # no curves in parameter space: smaller files
    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    # the shapes are in mm; the writer scales to the unit chosen above
    XCAFDoc_DocumentTool.SetLengthUnit_s(document, 0.001)
    shapes = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    colours = XCAFDoc_DocumentTool.ColorTool_s(document.Main())
    root = shapes.NewShape()
    TDataStd_Name.Set_s(root, TCollection_ExtendedString(product, True))
    for part, shape, colour in parts:
        label = shapes.AddShape(shape, False)
        TDataStd_Name.Set_s(label, TCollection_ExtendedString(part, True))
        instance = shapes.AddComponent(root, label, TopLoc_Location())
        TDataStd_Name.Set_s(instance, TCollection_ExtendedString(part, True))
        if colour is not None:
            rgb = Quantity_Color(*colour[:3], Quantity_TOC_sRGB)
            clear = colour[3] if len(colour) > 3 else 1.0
            colours.SetColor(label, Quantity_ColorRGBA(rgb, clear), XCAFDoc_ColorSurf)
    shapes.UpdateAssemblies()
    writer = STEPCAFControl_Writer()
    writer.SetNameMode(True)
    writer.SetColorMode(True)
    if not writer.Transfer(document, STEPControl_AsIs):
        raise RuntimeError("the kernel did not take the parts")
    if writer.Write(str(path)) != IFSelect_RetDone:
        raise RuntimeError(f"the kernel did not write {path}")
    _steady(path, product)
    return path


def _steady(path: Path, product: str) -> None:
    """Replace what differs from run to run in the header: name, time stamp, numbering of products."""
    text = path.read_text(encoding="latin-1")
    head, rest = text.split("ENDSEC;", 1)
    head = re.sub(r"FILE_NAME\('.*?','\d{4}-[^']*'", f"FILE_NAME('{product}','2026-01-01T00:00:00'", head, flags=re.S)
    numbers = iter(range(1, 1 + rest.count("NEXT_ASSEMBLY_USAGE_OCCURRENCE(")))

    def numbered(found: re.Match[str]) -> str:
        record = re.sub(r"\n\s*", "", found[0])  # the kernel breaks lines after the running number's width
        return re.sub(r"\('\d+'", f"('{next(numbers)}'", record, count=1)

    rest = re.sub(r"NEXT_ASSEMBLY_USAGE_OCCURRENCE\(.*?\);", numbered, rest, flags=re.S)
    rest = _colours_in_order(rest)
    path.write_text(head + "ENDSEC;" + rest, encoding="latin-1", newline="\n")


def _colours_in_order(data: str) -> str:
    """Sort the trailing blocks of presentation by the shape they colour; the kernel's order is by address."""
    mark = r"(?m)^(?=#\d+ = MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION)"
    first, *blocks = re.split(mark, data)
    if len(blocks) < 2:
        return data
    blocks[-1], end = blocks[-1].rsplit("ENDSEC;", 1)
    after = int(re.findall(r"(?m)^#(\d+) =", blocks[0])[0])

    def coloured(block: str) -> int:
        return min(int(n) for n in re.findall(r"#(\d+)", block) if int(n) < after)

    body = "".join(sorted(blocks, key=coloured))
    old = [int(n) for n in re.findall(r"(?m)^#(\d+) =", body)]
    new = {n: after + i for i, n in enumerate(old)}
    body = re.sub(r"#(\d+)", lambda found: f"#{new.get(int(found[1]), int(found[1]))}", body)
    return f"{first}{body}ENDSEC;{end}"
