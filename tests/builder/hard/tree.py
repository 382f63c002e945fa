"""Writing product trees: sub-assemblies, instances, several bodies in one product, any names (OCP)."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Any

import numpy as np
from OCP.gp import gp_Trsf
from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Message import Message
from OCP.Quantity import Quantity_Color, Quantity_ColorRGBA, Quantity_TOC_sRGB
from OCP.STEPCAFControl import STEPCAFControl_Controller, STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs
from OCP.TCollection import TCollection_ExtendedString
from OCP.TDataStd import TDataStd_Name
from OCP.TDocStd import TDocStd_Document
from OCP.TopAbs import TopAbs_FACE, TopAbs_SHELL, TopAbs_SOLID
from OCP.TopExp import TopExp_Explorer
from OCP.TopLoc import TopLoc_Location
from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_DocumentTool

from ..solid import moved
from ..step import _SCHEMAS, _UNITS
from .truth import HardModel, Node


def write_model(path: str | os.PathLike[str], model: HardModel) -> Path:
    """Write a hard model as its product tree, unit and schema say."""
    path = Path(path)
    Message.DefaultMessenger_s().ChangePrinters().Clear()
    STEPCAFControl_Controller.Init_s()
    for key, value in (("write.step.unit", _UNITS[model.unit]), ("write.step.schema", _SCHEMAS[model.schema])):
        if not Interface_Static.SetCVal_s(key, value):
            raise RuntimeError(f"the kernel does not take {key} = {value}")
    Interface_Static.SetIVal_s("write.surfacecurve.mode", 1)  # whatever was written before in this process
    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    XCAFDoc_DocumentTool.SetLengthUnit_s(document, 0.001)
    _Writer(document).add(model.root)
    writer = STEPCAFControl_Writer()
    writer.SetNameMode(True)
    writer.SetColorMode(True)
    if not writer.Transfer(document, STEPControl_AsIs) or writer.Write(str(path)) != IFSelect_RetDone:
        raise RuntimeError(f"the kernel did not write {path}")
    return path


class _Writer:
    def __init__(self, document: Any) -> None:
        self.shapes = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
        self.colours = XCAFDoc_DocumentTool.ColorTool_s(document.Main())
        self.labels: dict[int, Any] = {}

    def add(self, node: Node) -> Any:
        label = self._label(node)
        self.shapes.UpdateAssemblies()
        return label

    def _label(self, node: Node) -> Any:
        if id(node) in self.labels:
            return self.labels[id(node)]
        label = self.shapes.NewShape() if node.shape is None else self.shapes.AddShape(node.shape, False)
        self.labels[id(node)] = label
        _name(label, node.name)
        if node.colour is not None:
            rgb = Quantity_Color(*node.colour[:3], Quantity_TOC_sRGB)
            clear = node.colour[3] if len(node.colour) > 3 else 1.0
            self.colours.SetColor(label, Quantity_ColorRGBA(rgb, clear), XCAFDoc_ColorSurf)
        for child, place in node.children:
            motion = gp_Trsf()
            motion.SetValues(*(float(x) for x in place[:3].ravel()))
            _name(self.shapes.AddComponent(label, self._label(child), TopLoc_Location(motion)), child.name)
        return label


def _name(label: Any, name: str) -> None:
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(name, True))


def bodies(node: Node, place: np.ndarray | None = None) -> list[tuple[str, Any]]:
    """(name, placed body) of every solid, free shell and free face in file order: what a reader sees."""
    place = np.eye(4) if place is None else place
    found = []
    if node.shape is not None:
        whole = moved(node.shape, place)
        found += [(node.name, solid) for solid in _each(whole, TopAbs_SOLID, None)]
        found += [(node.name, shell) for shell in _each(whole, TopAbs_SHELL, TopAbs_SOLID)]
        if whole.ShapeType() == TopAbs_FACE:
            found.append((node.name, whole))
    for child, within in node.children:
        found += bodies(child, place @ within)
    return found


def _each(shape: Any, kind: Any, outside: Any) -> list[Any]:
    explorer = TopExp_Explorer(shape, kind) if outside is None else TopExp_Explorer(shape, kind, outside)
    found = []
    while explorer.More():
        found.append(explorer.Current())
        explorer.Next()
    return found
