"""The kernel's STEP reader: bytes in, an XCAF document in millimetres out."""

from __future__ import annotations

from collections.abc import Callable
from io import BytesIO

from OCP.IFSelect import IFSelect_RetDone
from OCP.Message import Message
from OCP.Resource import Resource_DataMapOfAsciiStringAsciiString
from OCP.STEPCAFControl import STEPCAFControl_Controller, STEPCAFControl_Reader
from OCP.TCollection import TCollection_AsciiString, TCollection_ExtendedString
from OCP.TDocStd import TDocStd_Document
from OCP.UnitsMethods import UnitsMethods_LengthUnit
from OCP.XCAFDoc import XCAFDoc_DocumentTool

from seamcheck.catalogue.say import refused

# Repairs that cost most of the transfer (quadratic in the inner wires of a face) and change nothing in a
# sound model. A model that is not valid afterwards is read again with all repairs.
_SKIPPED_REPAIRS = (
    "FixShape.FixSelfIntersectionMode",
    "FixShape.FixIntersectingWiresMode",
    "FixShape.FixLoopWiresMode",
    "FixShape.FixSplitFaceMode",
    "FixShape.FixOrientationMode",
)


def silence() -> None:
    """Keep the kernel from writing to standard output."""
    Message.DefaultMessenger_s().ChangePrinters().Clear()


def transfer(
    name: str, data: bytes, all_repairs: bool, progress: Callable[[str], None], colours: bool = True
) -> TDocStd_Document:
    """The XCAF document of a STEP file; without bodies where the kernel found none.

    Parameters
    ----------
    name : for messages
    data : the bytes of the file
    all_repairs : run every repair of the kernel, instead of those that sound models need
    progress : called with 'reading' and 'transferring'
    colours : whether to read colours
    """
    silence()
    STEPCAFControl_Controller.Init_s()
    document = TDocStd_Document(TCollection_ExtendedString("BinXCAF"))
    XCAFDoc_DocumentTool.SetLengthUnit_s(document, 1.0, UnitsMethods_LengthUnit.UnitsMethods_LengthUnit_Millimeter)
    reader = STEPCAFControl_Reader()
    reader.SetNameMode(True)
    reader.SetColorMode(colours)
    for switch in (
        reader.SetLayerMode, reader.SetGDTMode, reader.SetMatMode, reader.SetPropsMode,
        reader.SetViewMode, reader.SetMetaMode,
    ):  # fmt: skip
        switch(False)
    progress("reading")
    if reader.ReadStream(name, BytesIO(data)) != IFSelect_RetDone:
        raise refused("unreadable", "unreadable.text", file=repr(name))
    if not all_repairs:
        reader.SetShapeFixParameters(_repairs())
    progress("transferring")
    try:
        reader.Transfer(document)  # false also for a file without bodies: what came is counted afterwards
    except Exception as error:
        if not is_kernel_failure(error):
            raise
        raise refused("unreadable", "unreadable.bodies", file=repr(name)) from error
    return document


def is_kernel_failure(error: Exception) -> bool:
    """Whether an exception was raised by the kernel (its exceptions share no base class in Python)."""
    return type(error).__module__.startswith("OCP")


def _repairs() -> Resource_DataMapOfAsciiStringAsciiString:
    """The repairs that are switched off; the reader takes this after reading only."""
    repairs = Resource_DataMapOfAsciiStringAsciiString()
    for name in _SKIPPED_REPAIRS:
        repairs.Bind(TCollection_AsciiString(name), TCollection_AsciiString("0"))
    return repairs
