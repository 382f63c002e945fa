"""Names of the products that records of a file's text belong to, for messages."""

from __future__ import annotations

import re

from seamcheck.assembly.text import StepText

_PRODUCT = re.compile(rb"PRODUCT\s*\(\s*'((?:[^']|'')*)'\s*,\s*'((?:[^']|'')*)'")  # id, name
KERNEL_NAME = re.compile(r"(Open CASCADE STEP translator [\d. ]+|=>\[[\d:]+\])$")
"""Names that the CAD kernel makes up, on writing or on reading, where a product or an instance has none."""

_WIDE = re.compile(rb"\\X2\\((?:[0-9A-F]{4})+)\\X0\\")
_REPRESENTATIONS = (
    b"ADVANCED_BREP_SHAPE_REPRESENTATION",
    b"FACETED_BREP_SHAPE_REPRESENTATION",
    b"SHAPE_REPRESENTATION",
)


def product_name(text: StepText, definition: int) -> str:
    """The name of the product behind a PRODUCT_DEFINITION, or its number."""
    number = definition
    for _ in range(3):  # definition -> formation -> product
        record = text.record(number)
        found = _PRODUCT.match(record)
        if found:
            return decoded(found[2] or found[1])
        references = text.references(record)
        if not references:
            break
        number = references[0]
    return f"#{definition}"


def owner_name(text: StepText, item: int) -> str:
    """The name of the product whose shape holds an item (a solid, say), '' where the text doesn't tell.

    ISO 10303-41: the item stands in a representation, which a SHAPE_DEFINITION_REPRESENTATION ties to a
    product's shape, directly or through a SHAPE_REPRESENTATION_RELATIONSHIP.
    """
    holders = {
        number
        for keyword in _REPRESENTATIONS
        for number, offset in text.records_of(keyword)
        if item in text.references(text.record_at(offset))
    }
    for _, offset in text.records_of(b"SHAPE_REPRESENTATION_RELATIONSHIP"):
        record = text.record_at(offset)
        if b"WITH_TRANSFORMATION" in record:  # places one product in another
            continue
        pair = text.references(record)
        if holders.intersection(pair):
            holders.update(pair)
    for _, offset in text.records_of(b"SHAPE_DEFINITION_REPRESENTATION"):
        shape, *representations = text.references(text.record_at(offset)) or [0]
        if holders.intersection(representations):
            definition = text.references(text.record(shape))
            name = product_name(text, definition[0]) if definition else ""
            return "" if name.startswith("#") or KERNEL_NAME.match(name) else name
    return ""


def decoded(text: bytes) -> str:
    """A string of the file as it is meant: UTF-8, doubled marks and \\X2\\ escapes (ISO 10303-21, 6.4.3)."""

    def wide(found: re.Match[bytes]) -> bytes:
        return bytes.fromhex(found[1].decode()).decode("utf-16-be", "replace").encode("utf-8", "replace")

    plain = _WIDE.sub(wide, text).replace(b"''", b"'").replace(b"\\\\", b"\\")
    return plain.decode("utf-8", "replace")
