"""Where each face stands in the file: from the lists of faces in the text's shells.

The kernel gives the faces of a shell in the order in which the shell lists them, unless it had to turn some
of them. Which shell a body came from, and whether the order was kept, is told by the number of faces and by
the corner points of some of them. Where the order was not kept, faces are matched one by one by corners.
Where that leaves a doubt, the answer is None.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np
from OCP.BRep import BRep_Tool
from OCP.TopAbs import TopAbs_FACE, TopAbs_VERTEX
from OCP.TopoDS import TopoDS

from seamcheck.assembly.parts import Entity
from seamcheck.assembly.shapes import explore
from seamcheck.assembly.text import StepText

_PROBES = 16  # faces whose corners are compared to tell whether the order was kept
_MOST_CORNERS = 64  # of one face
_MOST_ONE_BY_ONE = 4000  # faces; matching so many one by one takes half a second
_SAME_POINT = 1e-4  # mm, plus a millionth of the coordinate


class FaceEntities:
    """Finds the records of a body's faces in the text of its file.

    Parameters
    ----------
    text : the file's text
    unit_mm : size of the file's length unit in mm
    """

    def __init__(self, text: StepText, unit_mm: float) -> None:
        self._text, self._unit = text, unit_mm
        self._shells: dict[int, list[list[int]]] = {}  # lists of faces, by their length
        for keyword in (b"CLOSED_SHELL", b"OPEN_SHELL"):
            for _, offset in text.records_of(keyword):
                faces = text.references(text.record_at(offset))
                self._shells.setdefault(len(faces), []).append(faces)
        self._known_corners: dict[int, np.ndarray] = {}  # of the faces probed, by their number
        self._boxes: dict[int, np.ndarray] = {}  # of the first probed face of every shell with so many faces

    def of_body(self, shells: Sequence[Any]) -> tuple[Entity | None, ...]:
        """One Entity per face of the body's shells (unplaced TopoDS_Shell, mm) in their order."""
        answer: list[Entity | None] = []
        for shell in shells:
            answer += self._of_shell(shell)
        return tuple(answer)

    def belongs_to_one(self, shell: Any, solids: Iterable[set[int]]) -> bool:
        """Whether most faces of a shell (unplaced TopoDS_Shell, mm) are those of one listed solid.

        solids : numbers of the faces' records of each solid
        """
        keys = {_key(_corners(face)) for face in explore(shell, TopAbs_FACE)}
        looked_at = 0
        for faces in solids:
            looked_at += len(faces)
            if looked_at > _MOST_ONE_BY_ONE:
                return False
            listed = {_key(self._text_corners(number) * self._unit) for number in faces}
            if 2 * len(keys & listed) > len(keys):
                return True
        return False

    def _of_shell(self, shell: Any) -> list[Entity | None]:
        faces = list(explore(shell, TopAbs_FACE))
        candidates = self._shells.get(len(faces), [])
        corners = {index: _corners(faces[index]) for index in _probes(len(faces))}
        if len(candidates) > 1:
            candidates = [candidates[i] for i in self._reaching_as_far(len(faces), corners[0])]
        same = [candidate for candidate in candidates if self._is_same(candidate, corners)]
        if len(same) == 1:
            return [self._entity(number) for number in same[0]]
        if not same and len(faces) <= _MOST_ONE_BY_ONE:
            return self._one_by_one(faces, [face for shell in self._shells.get(len(faces), []) for face in shell])
        return [None] * len(faces)  # equal bodies in the same place, or too many faces

    def _one_by_one(self, faces: list[Any], candidates: list[int]) -> list[Entity | None]:
        """The record with the same corners, for each face that has exactly one such record."""
        by_corners: dict[frozenset[tuple[float, ...]], list[int]] = {}
        for number in candidates[:_MOST_ONE_BY_ONE]:
            key = _key(self._text_corners(number) * self._unit)
            by_corners.setdefault(key, []).append(number)
        keys = [_key(_corners(face)) for face in faces]
        answer: list[Entity | None] = []
        for key in keys:
            found = by_corners.get(key, []) if key and keys.count(key) == 1 else []
            answer.append(self._entity(found[0]) if len(found) == 1 else None)
        return answer

    def _is_same(self, shell: list[int], corners: dict[int, np.ndarray]) -> bool:
        """Whether the corner points of the probed faces are those of the text's faces."""
        told = 0
        for index, points in corners.items():
            in_text = self._probed(shell[index])
            if not len(in_text) or not len(points):
                continue  # a face without corners tells nothing
            told += 1
            if not (_all_in(in_text, points) or (len(in_text) < _MOST_CORNERS and _all_in(points, in_text))):
                return False
        return told > 0

    def _reaching_as_far(self, count: int, points: np.ndarray) -> np.ndarray:
        """Places of the shells of so many faces whose first face may have these corners, told by their boxes."""
        if count not in self._boxes:
            corners = [self._probed(shell[0]) for shell in self._shells[count]]
            self._boxes[count] = np.array([_box(c) if len(c) < _MOST_CORNERS else _box(c[:0]) for c in corners])
        boxes, own = self._boxes[count], _box(points)
        room = _SAME_POINT + 2e-6 * float(np.abs(points).max(initial=0.0))
        low, high = boxes[:, :3] - own[:3], boxes[:, 3:] - own[3:]
        within = ((low >= -room) & (high <= room)).all(axis=1) | ((low <= room) & (high >= -room)).all(axis=1)
        return np.flatnonzero(within | np.isnan(low[:, 0]))

    def _probed(self, face: int) -> np.ndarray:
        """Some corner points (n, 3) mm of a face in the text."""
        if face not in self._known_corners:
            self._known_corners[face] = self._text_corners(face, _MOST_CORNERS) * self._unit
        return self._known_corners[face]

    def _text_corners(self, face: int, most: int | None = None) -> np.ndarray:
        """Corner points (n, 3) of a face in the text, the first ``most`` of them, in the file's unit."""
        points: list[list[float]] = []
        # a face with a thousand holes has thousands of corners: a few of them tell as much
        bounds = self._text.references(self._text.record(face))[:-1]  # the last one is the surface
        for bound in bounds:
            if most is not None and len(points) >= most:
                return np.array(points[:most], dtype=float)
            for loop in self._text.references(self._text.record(bound))[:1]:
                for vertex in self._loop_vertices(loop):
                    point = self._point(vertex)
                    if point is not None:
                        points.append(point)
        return np.array(points[:most], dtype=float).reshape(-1, 3)

    def _loop_vertices(self, loop: int) -> list[int]:
        record = self._text.record(loop)
        members = self._text.references(record)
        if not record.startswith(b"EDGE_LOOP"):
            return members  # VERTEX_LOOP: its vertex; POLY_LOOP: its points
        vertices: list[int] = []
        for oriented in members:
            for edge in self._text.references(self._text.record(oriented))[:1]:
                vertices += self._text.references(self._text.record(edge))[:2]
        return vertices

    def _point(self, number: int) -> list[float] | None:
        """Coordinates of a CARTESIAN_POINT, or of a VERTEX_POINT's."""
        record = self._text.record(number)
        if record.startswith(b"VERTEX_POINT"):
            references = self._text.references(record)
            record = self._text.record(references[0]) if references else b""
        if not record.startswith(b"CARTESIAN_POINT"):
            return None
        begin = record.rfind(b"(") + 1
        try:
            values = [float(value) for value in record[begin : record.find(b")", begin)].split(b",")]
        except ValueError:
            return None
        return values if len(values) == 3 else None

    def _entity(self, face: int) -> Entity | None:
        offset = self._text.offset(face)
        return None if offset is None else Entity(face, self._text.line(offset))


def _probes(count: int) -> list[int]:
    """Indices of the faces to compare: the ends and some between."""
    return sorted({round(index) for index in np.linspace(0, count - 1, min(count, _PROBES))})


def _corners(face: Any) -> np.ndarray:
    """Corner points (n, 3) mm of a face."""
    points = [BRep_Tool.Pnt_s(TopoDS.Vertex_s(vertex)) for vertex in explore(face, TopAbs_VERTEX)]
    return np.array([(point.X(), point.Y(), point.Z()) for point in points], dtype=float).reshape(-1, 3)


def _box(points: np.ndarray) -> np.ndarray:
    """(6,) mm, lowest and highest coordinates; NaN without points."""
    return np.concatenate([points.min(axis=0), points.max(axis=0)]) if len(points) else np.full(6, np.nan)


def _key(points: np.ndarray) -> frozenset[tuple[float, ...]]:
    """What two faces with the same corner points share; on the edge of rounding they may miss each other."""
    return frozenset(tuple(point) for point in (np.round(points, 3) + 0.0).tolist())


def _all_in(some: np.ndarray, others: np.ndarray) -> bool:
    """Whether each point coincides with one of the others."""
    distances = np.abs(some[:, None, :] - others[None, :, :]).max(axis=2).min(axis=1)
    return bool((distances <= _SAME_POINT + 1e-6 * np.abs(some).max()).all())
