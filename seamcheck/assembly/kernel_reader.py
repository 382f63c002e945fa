"""The kernel's STEP reader: bytes in, an XCAF document in millimetres out."""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum
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
SKIPPED_REPAIRS = (
    "FixShape.FixSelfIntersectionMode",
    "FixShape.FixIntersectingWiresMode",
    "FixShape.FixLoopWiresMode",
    "FixShape.FixSplitFaceMode",
    "FixShape.FixOrientationMode",
)
_REPAIRS_OF_SOLIDS = ("FixShape.FixSolidMode", "FixShape.FixSameParameterMode")
LARGEST_TOLERANCE = 1.0  # mm, up to which the reader bridges what does not meet, unless a file states more


class Repairs(Enum):
    """What the reader mends: nothing of solids (see mending.py), what sound models need, or all that it can."""

    NOT_SOLIDS = (*SKIPPED_REPAIRS, *_REPAIRS_OF_SOLIDS)
    USUAL = SKIPPED_REPAIRS
    ALL = ()


def silence() -> None:
    """Keep the kernel from writing to standard output."""
    Message.DefaultMessenger_s().ChangePrinters().Clear()


def transfer(
    name: str, data: bytes, repairs: Repairs, progress: Callable[[str], None], colours: bool = True
) -> TDocStd_Document:
    """The XCAF document of a STEP file; without bodies where the kernel found none.

    Parameters
    ----------
    name : for messages
    data : the bytes of the file
    repairs : those of the kernel to run
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
    if repairs is not Repairs.ALL:
        reader.SetShapeFixParameters(_switched_off(repairs.value))
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


def _switched_off(names: tuple[str, ...]) -> Resource_DataMapOfAsciiStringAsciiString:
    """Repairs that are switched off; the reader takes this after reading only."""
    repairs = Resource_DataMapOfAsciiStringAsciiString()
    for name in names:
        repairs.Bind(TCollection_AsciiString(name), TCollection_AsciiString("0"))
    return repairs
