"""Bodies that a file lists and the kernel did not read, or did not read as the solids they are.

The kernel reports success when it could not build a body; the text tells how many there should be.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from seamcheck.assembly.parts import Entity
from seamcheck.assembly.text import StepText

_SOLIDS = (b"MANIFOLD_SOLID_BREP", b"BREP_WITH_VOIDS", b"FACETED_BREP")  # ISO 10303-42
_NAME = re.compile(rb"'((?:[^']|'')*)'")


def lost_solids(
    name: str, text: StepText, solids: int, faces_of_solids: Iterable[tuple[Entity | None, ...]]
) -> list[str]:
    """Sentences on solid bodies of the text that are missing among those read; empty when none is.

    Parameters
    ----------
    name : of the file
    text : its text
    solids : how many different solid bodies were read from it, instances of one counted once
    faces_of_solids : the records of their faces, as far as known
    """
    listed = _listed(text)
    missing = len(listed) - solids
    if missing <= 0:
        return []
    read = {entity.number for faces in faces_of_solids for entity in faces if entity is not None}
    unread = [
        number for number, shells in listed.items() if not any(read.intersection(faces) for faces in shells)
    ]
    where = ""
    if len(unread) == missing:  # else it is not certain which ones they are
        where = " (" + ", ".join(_in_words(text, number) for number in unread[:3])
        where += f" and {missing - 3} more)" if missing > 3 else ")"
    bodies = "body" if missing == 1 else "bodies"
    return [
        f"{name!r} lists {len(listed)} solid bodies; {missing} {bodies}{where} could not be read as solid, so "
        "the review goes without. Check it in CAD and export it again."
    ]


def _listed(text: StepText) -> dict[int, list[list[int]]]:
    """Number of every solid's record, with the face lists of its shells."""
    found: dict[int, list[list[int]]] = {}
    for keyword in _SOLIDS:
        for number, offset in text.records_of(keyword):
            shells = [text.record(shell) for shell in text.references(text.record_at(offset))]
            found[number] = [text.references(shell) for shell in shells]
    return found


def _in_words(text: StepText, number: int) -> str:
    offset = text.offset(number) or 0
    name = _NAME.search(text.record(number))
    called = name[1].decode("utf-8", "replace") if name and name[1] else ""
    return f"{called + ', ' if called else ''}record #{number} on line {text.line(offset)}"
