"""STEP files that the tests of the reader make, and small looks at shapes."""

from __future__ import annotations

import re
from pathlib import Path

import cadquery as cq
from OCP.Bnd import Bnd_Box
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps
from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Message import Message
from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
from OCP.STEPCAFControl import STEPCAFControl_Controller, STEPCAFControl_Writer
from OCP.TCollection import TCollection_ExtendedString
from OCP.TDataStd import TDataStd_Name
from OCP.TDocStd import TDocStd_Document
from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_DocumentTool


def box(length, width, height):
    """A box with one corner in the origin."""
    return cq.Workplane().box(length, width, height, centered=False)


def write(path: Path, parts, unit="MM", schema="AP214IS"):
    """Write (name, cadquery object, cadquery Location or None) as the products of one assembly."""
    Message.DefaultMessenger_s().ChangePrinters().Clear()
    STEPCAFControl_Controller.Init_s()
    assert Interface_Static.SetCVal_s("write.step.unit", unit)
    assert Interface_Static.SetCVal_s("write.step.schema", schema)
    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    XCAFDoc_DocumentTool.SetLengthUnit_s(document, 0.001)
    tool = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    root = tool.NewShape()
    TDataStd_Name.Set_s(root, TCollection_ExtendedString("station", True))
    for name, model, location in parts:
        shape = model if isinstance(model, cq.Shape) else model.val()
        label = tool.AddShape(shape.wrapped, False)
        TDataStd_Name.Set_s(label, TCollection_ExtendedString(name, True))
        instance = tool.AddComponent(root, label, (location or cq.Location()).wrapped)
        TDataStd_Name.Set_s(instance, TCollection_ExtendedString(name, True))
    tool.UpdateAssemblies()
    writer = STEPCAFControl_Writer()
    writer.SetNameMode(True)
    assert writer.Transfer(document)
    assert writer.Write(str(path)) == IFSelect_RetDone
    assert Interface_Static.SetCVal_s("write.step.unit", "MM")
    assert Interface_Static.SetCVal_s("write.step.schema", "AP214IS")
    return path


def write_tree(path: Path, assembly: cq.Assembly):
    """Write a cadquery assembly with its colours and placements."""
    assembly.export(str(path))
    return path


def extent(shape):
    """(xmin, ymin, zmin, xmax, ymax, zmax) mm."""
    bounds = Bnd_Box()
    bounds.SetGap(0.0)
    BRepBndLib.AddOptimal_s(shape, bounds, False, False)
    return bounds.Get()


def volume(shape):
    """Signed volume in mm³: negative when the faces point inward."""
    properties = GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, properties)
    return properties.Mass()


def replace(path: Path, pattern: str, new: str, count: int = 0):
    """Rewrite a text file in place; the pattern has to occur."""
    text, done = re.subn(pattern, new, path.read_text(encoding="latin-1"), count=count)
    assert done, f"{pattern} does not occur"
    path.write_text(text, encoding="latin-1")
    return path


def write_painted(path: Path, painted: str, rgb):
    """One part in one sub-assembly, which stands in the station twice; one of the instances has a colour."""
    Message.DefaultMessenger_s().ChangePrinters().Clear()
    STEPCAFControl_Controller.Init_s()
    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    XCAFDoc_DocumentTool.SetLengthUnit_s(document, 0.001)
    tool = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    station, inner = tool.NewShape(), tool.NewShape()
    part = tool.AddShape(box(4, 5, 6).val().wrapped, False)
    instances = {
        "inside": tool.AddComponent(inner, part, cq.Location().wrapped),
        "first": tool.AddComponent(station, inner, cq.Location().wrapped),
        "second": tool.AddComponent(station, inner, cq.Location((20, 0, 0)).wrapped),
    }
    colours = XCAFDoc_DocumentTool.ColorTool_s(document.Main())
    colours.SetColor(instances[painted], Quantity_Color(*rgb, Quantity_TOC_sRGB), XCAFDoc_ColorSurf)
    tool.UpdateAssemblies()
    writer = STEPCAFControl_Writer()
    writer.SetColorMode(True)
    assert writer.Transfer(document)
    assert writer.Write(str(path)) == IFSelect_RetDone
    return path
