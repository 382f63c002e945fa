"""Bodies that a file lists and the kernel did not read, or did not read as the solids they are.

The kernel reports success when it could not build a body; the text tells how many there should be.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from seamcheck.assembly.contents import SOLIDS
from seamcheck.assembly.owners import owner_name
from seamcheck.assembly.parts import Entity
from seamcheck.assembly.text import StepText
from seamcheck.catalogue.message import Sentence
from seamcheck.catalogue.say import say

_SHAPES = re.compile(
    rb"#(\d{1,9})\s*=\s*(?:ADVANCED_FACE|CLOSED_SHELL|OPEN_SHELL|MANIFOLD_SOLID_BREP|BREP_WITH_VOIDS"
    rb"|FACETED_BREP)\s*\("
)
_CURVES_OF_EDGES = [  # one for each keyword: what begins with plain letters is found several times as fast
    re.compile(keyword + rb"_CURVE\s*\(\s*(?:'(?:[^']|'')*'|\$)" + ends + rb"\s*,\s*#(\d{1,9})")
    for keyword, ends in (
        (b"EDGE", rb"\s*,\s*#\d+\s*,\s*#\d+"),
        (b"SURFACE", b""),
        (b"SEAM", b""),
        (b"INTERSECTION", b""),
    )
]
_NO_CURVE = re.compile(
    rb"#(\d{1,9})\s*=\s*(?:CARTESIAN_POINT|VERTEX_POINT|DIRECTION|VECTOR|AXIS2_PLACEMENT_3D|PLANE)\s*\("
)


def damaged_records(name: str, text: StepText) -> list[str]:
    """Sentences on records that are missing in the text, stand there twice, are broken, belong to nothing, or are not
    what refers to them needs, if any."""
    found: list[str] = []
    missing, repeated = text.missing(), text.repeated()
    if missing:
        found.append(_of_records("file.missing", name, missing))
    if repeated:
        found.append(_of_records("file.repeated", name, repeated))
    unfinished = text.unfinished()
    if unfinished:
        found.append(say("file.unfinished", file=repr(name), line=text.line(unfinished[0])))
    loose = text.unreferred([int(number[1]) for number in _SHAPES.finditer(text.data)])
    if loose:
        found.append(_of_records("file.loose", name, loose))
    curves = {int(found[1]) for pattern in _CURVES_OF_EDGES for found in pattern.finditer(text.data)}
    starts = (_NO_CURVE.match(text.data, offset) for offset in text.offsets(curves))
    bare = [int(start[1]) for start in starts if start is not None]
    if bare:  # the kernel makes a curve of its own and says nothing
        found.append(_of_records("file.no-curve", name, sorted(bare)))
    return found


def _of_records(key: str, name: str, numbers: list[int]) -> Sentence:
    """The sentence of a key about records, the first of which it names."""
    named = ", ".join(f"#{number}" for number in numbers[:3]) + ", ..." * (len(numbers) > 3)
    return say(key, file=repr(name), count=len(numbers), records=named)


class ListedSolids:
    """The solid bodies that the text of a file lists."""

    def __init__(self, name: str, text: StepText) -> None:
        self._name, self._text = name, text
        self._faces = dict(_faces_of_solids(text))

    def lost(self, read: int, faces: int) -> int:
        """How many solids are missing, or 1 if only faces are.

        Parameters
        ----------
        read : how many different solids were read, instances of one counted once
        faces : how many faces these have; the kernel may have split some, so more than listed is no loss
        """
        return max(0, len(self._faces) - read) or int(faces < self._listed_faces)

    @property
    def faces(self) -> list[set[int]]:
        """Numbers of the faces' records of each solid."""
        return list(self._faces.values())

    @property
    def _listed_faces(self) -> int:
        return sum(len(faces) for faces in self._faces.values())

    def doubts(self, read: int, faces: int, entities: Iterable[Entity | None]) -> list[str]:
        """A sentence on what is missing, if anything; ``entities``: records of the faces, where known."""
        if not self.lost(read, faces):
            return []
        missing = len(self._faces) - read
        if missing <= 0:
            lost = self._listed_faces - faces
            return [say("file.faces-lost", file=repr(self._name), faces=self._listed_faces, lost=lost)]
        known = {entity.number for entity in entities if entity is not None}
        unread = [number for number, faces in self._faces.items() if not known & faces]
        which = {}
        if len(unread) == missing:  # else it is not certain which ones they are
            which["which"] = ", ".join(self._in_words(number) for number in unread[:3]) + ", ..." * (missing > 3)
        return [say("file.solids-lost", file=repr(self._name), solids=len(self._faces), lost=missing, **which)]

    def _in_words(self, number: int) -> str:
        name = owner_name(self._text, number)
        called = f"{name!r}, " if name else ""
        return f"{called}#{number}, line {self._text.line(self._text.offset(number) or 0)}"


def _faces_of_solids(text: StepText) -> Iterable[tuple[int, set[int]]]:
    """Number of every solid's record and the numbers of its faces' records."""
    for keyword in SOLIDS:
        for number, offset in text.records_of(keyword):
            if text.offset(number) != offset:  # in a comment, or overridden
                continue
            faces: set[int] = set()
            for shell in text.references(text.record_at(offset)):
                record = text.record(shell)
                if record.startswith(b"ORIENTED_CLOSED_SHELL"):  # around a hollow: it refers to the shell
                    record = b"".join(text.record(inner) for inner in text.references(record))
                faces.update(text.references(record))
            yield number, faces
