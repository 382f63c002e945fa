"""Coordinates and sizes that are no numbers or that no model has: found, and taken out of the kernel's way.

The kernel reads NaN as some number, and a size of 1e300 can cost it all the memory there is.
"""

from __future__ import annotations

import re

from msgspec import Struct

from seamcheck.assembly.owners import owner_name
from seamcheck.assembly.text import StepText
from seamcheck.catalogue.say import say

_HUGE = re.compile(  # 1e15 mm are a million kilometres
    rb"(?<=[(,\s])[-+]?(?:\d+\.?\d*[Ee]\+?0*(?:1[5-9]|[2-9]\d|[1-9]\d\d+)|[1-9]\d{15,}\.?\d*)(?=\s*[,)])"
)
_NOT_A_NUMBER = re.compile(rb"(?<=[(,\s])[-+]?(?:\d\.#\w+|nan|inf(?:inity)?)(?=\s*[,)])", re.IGNORECASE)
_SIGNS = (b"nan", b"inf", b".#")
_PLAIN = bytes.maketrans(b"e123456789+", b"E0000000000")
_MAY_BE_HUGE = (b"0E0", b".E0", b"0" * 16)  # of the text so translated: found in a tenth of the time
_GEOMETRY = re.compile(
    rb"=\s*(?:CARTESIAN_POINT|DIRECTION|VECTOR|CIRCLE|ELLIPSE"
    rb"|(?:CYLINDRICAL|CONICAL|SPHERICAL|TOROIDAL)_SURFACE)\s*\("
)
_NUMBER = re.compile(rb"#(\d+)\s*$")
_SOLID = re.compile(rb"(?:MANIFOLD_SOLID_BREP|BREP_WITH_VOIDS|FACETED_BREP)\b")
_LEVELS = 12  # a point of a B-spline's knot lies nine records below its solid
_MOST = 20  # places that are traced to their body, each at the cost of some searches through the text


class AbsurdNumbers(Struct, frozen=True):
    """Where a file has numbers that can't be meant.

    Attributes
    ----------
    data : the text with a zero, as long as it was, in place of each
    owners : names of the products whose bodies they belong to, '' for a body without a name that is known
    line : of the first one (1-based)
    count : how many there are
    """

    data: bytes
    owners: tuple[str, ...]
    line: int
    count: int

    def sentence(self, name: str) -> str:
        """What a designer should know; ``name`` is the file's."""
        named = ", ".join([repr(owner) for owner in self.owners if owner][:3])
        products = {"products": named} if named else {}
        return say("file.absurd", file=repr(name), count=self.count, line=self.line, **products)


def absurd_numbers(text: StepText) -> AbsurdNumbers | None:
    """The absurd numbers in the geometry of a file; None where there are none."""
    places, plain, small = [], text.data.translate(_PLAIN), text.data.lower()
    if any(sign in plain for sign in _MAY_BE_HUGE):
        places += [found for found in _HUGE.finditer(text.data) if _in_geometry(text.data, found.start())]
    if any(sign in small for sign in _SIGNS):
        places += [found for found in _NOT_A_NUMBER.finditer(text.data) if _in_geometry(text.data, found.start())]
    if not places:
        return None
    data = bytearray(text.data)
    for found in places:
        size = found.end() - found.start()
        data[found.start() : found.end()] = b"0.".ljust(size)
    records = dict.fromkeys(_record_number(text.data, found.start()) for found in places)
    owners = dict.fromkeys(_owner(text, number) for number in list(records)[:_MOST])
    return AbsurdNumbers(bytes(data), tuple(owners), text.line(min(f.start() for f in places)), len(places))


def _in_geometry(data: bytes, offset: int) -> bool:
    """Whether a place lies among the arguments of a point, a direction or a size."""
    begin = data.rfind(b"=", 0, offset)
    return _GEOMETRY.match(data, begin) is not None and data.find(b";", begin, offset) < 0


def _record_number(data: bytes, offset: int) -> int:
    begin = data.rfind(b"=", 0, offset)
    found = _NUMBER.search(data, max(0, begin - 40), begin)
    return int(found[1]) if found else 0


def _owner(text: StepText, number: int) -> str:
    """Name of the product of the body that a record of geometry belongs to: from user to user up to the solid."""
    for _ in range(_LEVELS):
        if _SOLID.match(text.record(number)):
            return owner_name(text, number)
        number = _user(text, number)
    return ""


def _user(text: StepText, number: int) -> int:
    """The first record that refers to a record, 0 for none."""
    for found in re.finditer(rb"#%d(?!\d)(?!\s*=)" % number, text.data):
        begin = text.data.rfind(b"=", 0, found.start())
        user = _record_number(text.data, found.start())
        if user and text.data.find(b";", begin, found.start()) < 0:
            return user
    return 0
