"""Placements whose records are damaged: the kernel leaves such a part at its own origin without a word."""

from __future__ import annotations

from seamcheck.assembly.text import StepText
from seamcheck.catalogue.say import Value, say

_BODIES = (b"ADVANCED_BREP_SHAPE_REPRESENTATION", b"FACETED_BREP_SHAPE_REPRESENTATION")
_USAGES = (b"NEXT_ASSEMBLY_USAGE_OCCURRENCE", b"SPECIFIED_HIGHER_USAGE_OCCURRENCE", b"PROMISSORY_USAGE_OCCURRENCE")
_FRAMES = (b"AXIS2_PLACEMENT_3D", b"AXIS1_PLACEMENT", b"CARTESIAN_TRANSFORMATION_OPERATOR", b"(")
_TRANSFORMATIONS = (b"ITEM_DEFINED_TRANSFORMATION", b"CARTESIAN_TRANSFORMATION_OPERATOR", b"(")


def lost_placements(name: str, text: StepText) -> list[str]:
    """A sentence on placements that can't be followed, if any (ISO 10303-44, ISO 10303-43)."""
    lost = [
        offset
        for _, offset in text.records_of(b"CONTEXT_DEPENDENT_SHAPE_REPRESENTATION")
        if not _can_be_followed(text, text.references(text.record_at(offset)))
    ]
    if not lost:
        return []
    return [say("file.placements-lost", file=repr(name), count=len(lost), line=text.line(lost[0]))]


def lost_owners(name: str, text: StepText) -> list[str]:
    """A sentence on bodies that belong to no product (their name and place are lost), if any.

    ISO 10303-41: a SHAPE_DEFINITION_REPRESENTATION ties a representation to a product's shape, directly or through
    a SHAPE_REPRESENTATION_RELATIONSHIP; a REPRESENTATION_MAP uses one within another.
    """
    tied: set[int] = set()
    for keyword in (b"SHAPE_DEFINITION_REPRESENTATION", b"REPRESENTATION_MAP"):
        for _, offset in text.records_of(keyword):
            tied.update(text.references(text.record_at(offset)))
    if not tied:
        return []  # a file without products
    pairs = [
        set(text.references(text.record_at(offset)))
        for _, offset in text.records_of(b"SHAPE_REPRESENTATION_RELATIONSHIP")
        if b"WITH_TRANSFORMATION" not in text.record_at(offset)  # places one product in another
    ]
    growing = True
    while growing:
        reached = [pair for pair in pairs if pair & tied and not pair <= tied]
        growing = bool(reached)
        tied.update(*reached)
    for keyword in _BODIES:
        for number, offset in text.records_of(keyword):
            if number not in tied:
                where: dict[str, Value] = {"record": f"#{number}", "line": text.line(offset)}
                return [say("file.owners-lost", file=repr(name), **where)]
    return []


def _can_be_followed(text: StepText, references: list[int]) -> bool:
    """Whether the shape of an occurrence leads to a usage of a product and to a transformation."""
    if len(references) != 2:
        return False
    relation, shape = (text.record(number) for number in references)
    usages = [text.record(number) for number in text.references(shape)]
    if not any(usage.startswith(_USAGES) for usage in usages):
        return False
    if b"REPRESENTATION_RELATIONSHIP" not in relation:
        return False
    at = relation.find(b"REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION")
    if at < 0:
        return True  # both stand in one frame
    operators = [text.record(number) for number in text.references(relation[at : relation.find(b")", at)])]
    if len(operators) != 1 or not operators[0].startswith(_TRANSFORMATIONS):
        return False
    if not operators[0].startswith(b"ITEM_DEFINED_TRANSFORMATION"):
        return True
    frames = [text.record(number) for number in text.references(operators[0])]
    return len(frames) == 2 and all(frame.startswith(_FRAMES) for frame in frames)
