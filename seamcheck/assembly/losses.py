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

_SHAPES = re.compile(
    rb"#(\d{1,9})\s*=\s*(?:ADVANCED_FACE|CLOSED_SHELL|OPEN_SHELL|MANIFOLD_SOLID_BREP|BREP_WITH_VOIDS"
    rb"|FACETED_BREP)\s*\("
)


def damaged_records(name: str, text: StepText) -> list[str]:
    """Sentences on records that are missing in the text, stand there twice, are broken or belong to nothing, if any."""
    found = []
    missing, repeated = text.missing(), text.repeated()
    if missing:
        found.append(
            f"{name!r} refers to {_counted(missing)} that it does not hold: it is damaged. What is missing "
            "may matter; export it again."
        )
    if repeated:
        found.append(
            f"{name!r} holds {_counted(repeated)} more than once: it is damaged. The last one is taken; "
            "export it again."
        )
    unfinished = text.unfinished()
    if unfinished:
        found.append(
            f"{name!r} is damaged on line {text.line(unfinished[0])}: what stands there is no whole record. "
            "Export it again."
        )
    loose = text.unreferred([int(number[1]) for number in _SHAPES.finditer(text.data)])
    if loose:
        found.append(
            f"{name!r} holds {_counted(loose)} of faces, shells or solids that belong to nothing: it is "
            "damaged or cut. Export it again."
        )
    return found


def _counted(numbers: list[int]) -> str:
    shown = ", ".join(f"#{number}" for number in numbers[:3])
    return f"{len(numbers)} record{'s' * (len(numbers) > 1)} ({shown}{', ...' * (len(numbers) > 3)})"


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
            return [
                f"{self._name!r} lists {self._listed_faces} faces of solid bodies; "
                f"{self._listed_faces - faces} of them could not be read. Check the bodies in CAD and export "
                "the file again."
            ]
        known = {entity.number for entity in entities if entity is not None}
        unread = [number for number, faces in self._faces.items() if not known & faces]
        where = ""
        if len(unread) == missing:  # else it is not certain which ones they are
            where = " (" + ", ".join(self._in_words(number) for number in unread[:3])
            where += f" and {missing - 3} more)" if missing > 3 else ")"
        return [
            f"{self._name!r} lists {len(self._faces)} solid bodies; {missing} of them{where} could not be "
            "read as solid, so the review goes without. Check it in CAD and export the file again."
        ]

    def _in_words(self, number: int) -> str:
        name = owner_name(self._text, number)
        called = f"{name!r}, " if name else ""
        return f"{called}record #{number} on line {self._text.line(self._text.offset(number) or 0)}"


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
