"""Walk the product tree of an XCAF document down to its placed bodies."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from msgspec import Struct
from OCP.TCollection import TCollection_AsciiString
from OCP.TDataStd import TDataStd_Name
from OCP.TDF import TDF_Label, TDF_LabelSequence, TDF_Tool
from OCP.TopLoc import TopLoc_Location
from OCP.XCAFDoc import XCAFDoc_DocumentTool, XCAFDoc_ShapeTool

from seamcheck.assembly.colours import Colour, Colours
from seamcheck.assembly.owners import KERNEL_NAME


class Product(Struct, frozen=True, eq=False):
    """A product placed once in the assembly.

    Attributes
    ----------
    path : names from the root down to this product
    shape : unplaced TopoDS_Shape in mm
    location : its placement in the assembly
    label : where the document keeps it; the same for every instance
    instance_colour : given to this instance, or to an instance of an assembly above it; overrides
    inherited_colour : of the nearest assembly product above that has one
    """

    path: tuple[str, ...]
    shape: Any
    location: TopLoc_Location
    label: TDF_Label
    instance_colour: Colour | None
    inherited_colour: Colour | None

    @property
    def key(self) -> str:
        """What all instances of a product share."""
        entry = TCollection_AsciiString()
        TDF_Tool.Entry_s(self.label, entry)
        return str(entry.ToCString())


Placing = Callable[[str, TopLoc_Location], tuple[str, TopLoc_Location]]
"""From an occurrence's name and placement, as the kernel gives them, to those that the file means."""


def placed_products(document: Any, placing: Placing = lambda name, place: (name, place)) -> Iterator[Product]:
    """Every product that holds a shape, once per instance, in the order of the file."""
    tool = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    colours = Colours(document)
    roots = TDF_LabelSequence()
    tool.GetFreeShapes(roots)
    # a stack, not calls within calls: files may place thousands of assemblies within one another
    waiting = [iter([_Place(root, (), TopLoc_Location(), None, None) for root in _labels(roots)])]
    while waiting:
        place = next(waiting[-1], None)
        if place is None:
            waiting.pop()
            continue
        product, inside = _placed(place, colours, placing)
        if product is not None:
            yield product
        waiting.append(inside)


class _Place(Struct, frozen=True, eq=False):
    """A label, with path and location of its parent and the colours above it: of an instance, of a product."""

    label: TDF_Label
    path: tuple[str, ...]
    location: TopLoc_Location
    given: Colour | None
    inherited: Colour | None


def _placed(at: _Place, colours: Colours, placing: Placing) -> tuple[Product | None, Iterator[_Place]]:
    """The product at a label, or None with the places below it where it is an assembly."""
    label, given = at.label, at.given
    name, place = placing(label_name(label), XCAFDoc_ShapeTool.GetLocation_s(label))
    location = at.location.Multiplied(place)
    instance = ""
    if XCAFDoc_ShapeTool.IsReference_s(label):
        instance = name
        given = given or colours.of_label(label)
        product = TDF_Label()
        XCAFDoc_ShapeTool.GetReferredShape_s(label, product)
        label = product
    path = (*at.path, label_name(label) or ("" if instance.isdigit() else instance))
    if not XCAFDoc_ShapeTool.IsAssembly_s(label):
        shape = XCAFDoc_ShapeTool.GetShape_s(label)
        # A free shape's own location is part of its shape; a product below an instance has none.
        return Product(path, shape.Located(TopLoc_Location()), location, label, given, at.inherited), iter(())
    inherited = colours.of_label(label) or at.inherited
    components = TDF_LabelSequence()
    XCAFDoc_ShapeTool.GetComponents_s(label, components)
    return None, (_Place(component, path, location, given, inherited) for component in _labels(components))


def label_name(label: TDF_Label) -> str:
    """The name that the file gives, '' without one or where the reader made one up."""
    if not label.IsAttribute(TDataStd_Name.GetID_s()):  # FindAttribute now and then crashes where there is none
        return ""
    name = TDataStd_Name()
    label.FindAttribute(TDataStd_Name.GetID_s(), name)
    text = name.Get().ToExtString()
    return "" if KERNEL_NAME.match(text) else text.strip()


def _labels(sequence: TDF_LabelSequence) -> Iterator[TDF_Label]:
    for number in range(1, sequence.Length() + 1):
        yield sequence.Value(number)
