"""The reviewed model as STEP with the seam drawn into it: mid-line, seam faces and a plate at every finding.

Parts keep names, places and colours (the cover becomes see-through); what the review adds are bodies of their
own, each with a name and a colour, so that any CAD shows and lists them. Runs in a child process.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import Any

import numpy as np
from OCP.APIHeaderSection import APIHeaderSection_MakeHeader
from OCP.BRep import BRep_Builder
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_Copy,
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakePolygon,
)
from OCP.GC import GC_MakeArcOfCircle
from OCP.gp import gp_Pnt
from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Message import Message
from OCP.Quantity import Quantity_Color, Quantity_ColorRGBA, Quantity_TOC_sRGB
from OCP.STEPCAFControl import STEPCAFControl_Controller, STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs
from OCP.TCollection import TCollection_ExtendedString, TCollection_HAsciiString
from OCP.TDataStd import TDataStd_Name
from OCP.TDF import TDF_Label
from OCP.TDocStd import TDocStd_Document
from OCP.TopAbs import TopAbs_FACE
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Compound
from OCP.XCAFApp import XCAFApp_Application
from OCP.XCAFDoc import XCAFDoc_ColorCurv, XCAFDoc_ColorSurf, XCAFDoc_DocumentTool

from seamcheck.assembly.shapes import explore
from seamcheck.errors import SeamcheckError
from seamcheck.kernel.step_order import order_colours

Colour = tuple[float, float, float, float]

PLATE = 8.0
"""mm, side of the plate that marks a finding in its section plane."""


class StepNotWritten(SeamcheckError):
    """The kernel did not write the marked STEP file."""

    def __init__(self, path: str, why: str) -> None:
        super().__init__(path, why)
        self.path, self.why = path, why

    def __str__(self) -> str:
        return f"The marked STEP file {self.path!r} was not written: {self.why}"


def write_marked_step(
    models: Sequence[Path], lines: Sequence[Mapping[str, Any]], plates: Sequence[Mapping[str, Any]],
    faces: Sequence[Mapping[str, Any]], roles: Mapping[str, str], notes: Sequence[str], target: Path,
) -> None:  # fmt: skip
    """Read the models again and write them with the marks of a review.

    Parameters
    ----------
    models : the files that were reviewed
    lines : mid-lines: {"name", "colour", "pieces": [(start, end) or (start, middle, end)]}, points (3,) mm
    plates : findings: {"name", "colour", "at", "u", "v"}
    faces : faces of the seam and of findings, each entry a body of its own: {"name", "colour", "part", "faces"}
    roles : part id -> role in the document
    notes : lines for the file's header
    target : file to write

    Raises
    ------
    NotReviewed
        If the models can't be read any more.
    StepNotWritten
    """
    from seamcheck.assembly import read_assembly

    assembly = read_assembly(list(models))
    _silence()
    document = _new_document()
    bodies: list[tuple[str, Any, Colour, bool]] = []
    for part in assembly.parts:
        bodies.append((part.name or part.id, part.shape, _part_colour(part, roles.get(part.id, "")), False))
    shapes = {part.id: part.shape for part in assembly.parts}
    for line in lines:
        bodies.append((line["name"], _wire(line["pieces"]), tuple(line["colour"]), True))
    for plate in plates:
        square = _plate(plate["at"], plate["u"], plate["v"])
        bodies.append((plate["name"], square, tuple(plate["colour"]), False))
    for named in faces:
        sheet = _faces(shapes[named["part"]], named["faces"]) if named["part"] in shapes else None
        if sheet is not None:
            bodies.append((named["name"], sheet, tuple(named["colour"]), False))
    _add(document, bodies)
    _write(document, notes, target)


def write_bodies(
    bodies: Sequence[tuple[str, Any, Colour]], target: Path, notes: Sequence[str] = (), title: str = "model"
) -> None:
    """Write placed, named, coloured shapes as STEP, in mm.

    Raises
    ------
    StepNotWritten
    """
    _silence()
    document = _new_document()
    _add(document, [(name, shape, colour, False) for name, shape, colour in bodies], title)
    _write(document, notes, target)


def _silence() -> None:
    Message.DefaultMessenger_s().ChangePrinters().Clear()


def _new_document() -> Any:
    application = XCAFApp_Application.GetApplication_s()
    document = TDocStd_Document(TCollection_ExtendedString("BinXCAF"))
    application.NewDocument(TCollection_ExtendedString("BinXCAF"), document)
    XCAFDoc_DocumentTool.SetLengthUnit_s(document, 1.0, _millimetre())
    return document


def _millimetre() -> Any:
    from OCP.UnitsMethods import UnitsMethods_LengthUnit_Millimeter

    return UnitsMethods_LengthUnit_Millimeter


def _part_colour(part: Any, role: str) -> Colour:
    usual = {"cover": (0.44, 0.66, 0.74), "base": (0.79, 0.72, 0.58)}.get(role, (0.72, 0.74, 0.72))
    red, green, blue = part.colour or usual
    opacity = 1.0 - float(part.transparency or 0.0)
    return red, green, blue, min(opacity, 0.4) if role == "cover" else opacity


def _faces(shape: Any, wanted: Iterable[int]) -> Any:
    """The faces with these indices as one compound; None where there is none of them."""
    chosen, builder, compound = set(wanted), BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(compound)
    found = False
    for index, face in enumerate(explore(shape, TopAbs_FACE)):
        if index in chosen:
            # A copy: the writer gives a face that two bodies share to one of them only.
            builder.Add(compound, BRepBuilderAPI_Copy(face).Shape())
            found = True
    return compound if found else None


def _wire(pieces: Iterable[Sequence[Sequence[float]]]) -> Any:
    """Straight edges from two points, arcs from three; one compound."""
    builder, compound = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(compound)
    for piece in pieces:
        points = [gp_Pnt(*(float(c) for c in p)) for p in piece]
        if points[0].Distance(points[-1]) < 1e-7:
            continue
        if len(points) == 3:
            edge = BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(*points).Value()).Edge()
        else:
            edge = BRepBuilderAPI_MakeEdge(*points).Edge()
        builder.Add(compound, edge)
    return compound


def _plate(at: Sequence[float], u: Sequence[float], v: Sequence[float]) -> Any:
    """A square face in the section plane, its middle at the finding."""
    middle, across, up = (np.asarray(x, dtype=float) for x in (at, u, v))
    polygon = BRepBuilderAPI_MakePolygon()
    for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1)):
        corner = middle + PLATE / 2 * (a * across + b * up)
        polygon.Add(gp_Pnt(*(float(c) for c in corner)))
    polygon.Close()
    return BRepBuilderAPI_MakeFace(polygon.Wire(), True).Face()


def _add(
    document: Any, bodies: Iterable[tuple[str, Any, Colour, bool]], title: str = "seam review: model with findings"
) -> None:
    tool = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    colours = XCAFDoc_DocumentTool.ColorTool_s(document.Main())
    root = tool.NewShape()
    _name(root, title)
    for name, shape, colour, is_line in bodies:
        label = tool.AddShape(shape.Located(TopLoc_Location()), False)
        _name(label, name)
        red, green, blue, opacity = colour
        paint = Quantity_ColorRGBA(Quantity_Color(red, green, blue, Quantity_TOC_sRGB), opacity)
        colours.SetColor(label, paint, XCAFDoc_ColorCurv if is_line else XCAFDoc_ColorSurf)
        _name(tool.AddComponent(root, label, shape.Location()), name)
    tool.UpdateAssemblies()


def _name(label: TDF_Label, name: str) -> None:
    plain = "".join(c if c.isprintable() else " " for c in name).strip() or "unnamed"
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(plain, True))


def _write(document: Any, notes: Sequence[str], target: Path) -> None:
    STEPCAFControl_Controller.Init_s()  # before it, the settings below are silently ignored
    for key, value in (("write.step.unit", "MM"), ("write.step.schema", "AP214IS")):
        if not Interface_Static.SetCVal_s(key, value):
            raise StepNotWritten(str(target), f"the kernel does not know the setting {key}.")
    writer = STEPCAFControl_Writer()
    writer.SetColorMode(True)
    writer.SetNameMode(True)
    if not writer.Transfer(document, STEPControl_AsIs):
        raise StepNotWritten(str(target), "the kernel could not translate a body.")
    header = APIHeaderSection_MakeHeader(writer.ChangeWriter().Model())
    ascii_notes = [note.encode("ascii", "replace").decode("ascii") for note in notes]
    if header.IsDone() and ascii_notes:
        header.SetDescriptionValue(1, TCollection_HAsciiString(" ".join(ascii_notes)[:900]))
        header.SetName(TCollection_HAsciiString("seam review"))
        header.SetTimeStamp(TCollection_HAsciiString("1970-01-01T00:00:00"))
        header.SetAuthorValue(1, TCollection_HAsciiString(""))
        header.SetOrganizationValue(1, TCollection_HAsciiString(""))
        header.SetOriginatingSystem(TCollection_HAsciiString("seamcheck"))
    if writer.Write(str(target)) != IFSelect_RetDone or not target.is_file():
        raise StepNotWritten(str(target), "the kernel reported a failure while writing. Is the disk full?")
    order_colours(target)
