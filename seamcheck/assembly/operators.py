"""Placements that mirror or scale: the kernel leaves both out, so they are taken from the text.

ISO 10303-42: a CARTESIAN_TRANSFORMATION_OPERATOR_3D has three axes, which may be left-handed, an origin and a scale.
The kernel makes a rotation and a shift of axis 1, axis 3 and the origin. What it leaves out comes before that
in the frame of these axes: axis 2 turned round where the axes are left-handed, and the scale. The occurrence
is found again by its name, for which a mark stands in the text while the kernel reads it.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

import numpy as np
from msgspec import Struct

from seamcheck.assembly.owners import decoded
from seamcheck.assembly.text import StepText, without_strings
from seamcheck.catalogue.say import refused
from seamcheck.errors import NotReviewed

_MARK = "placed by operator {}"
_NAMED = re.compile(rb"(NEXT_ASSEMBLY_USAGE_OCCURRENCE\s*\(\s*(?:'(?:[^']|'')*'|\$)\s*,\s*)('(?:[^']|'')*'|\$)")
_REAL = re.compile(rb"[-+]?\d+\.?\d*(?:[Ee][-+]?\d+)?")
_TRIPLE = re.compile(rb"(?:DIRECTION|CARTESIAN_POINT)\s*\(\s*'[^']*'\s*,\s*\(([^)]*)\)")
_SCALE = re.compile(rb"#\d+\s*,\s*([-+]?\d+\.?\d*(?:[Ee][-+]?\d+)?)\s*[,)]")
_OPERATORS = (b"CARTESIAN_TRANSFORMATION_OPERATOR", b"CARTESIAN_TRANSFORMATION_OPERATOR_3D")


class Operator(Struct, frozen=True, eq=False):
    """One placement that mirrors or scales.

    Attributes
    ----------
    name : of the occurrence, as the file gives it
    rigid : (4, 4) what the kernel makes of it, in the file's length unit
    left_out : (4, 4) what comes before that
    file, line : where it stands, for messages
    """

    name: str
    rigid: np.ndarray
    left_out: np.ndarray
    file: str
    line: int

    def completed(self, found: np.ndarray, unit: float) -> np.ndarray:
        """The whole placement (4, 4) in mm from that which the kernel has found (4, 4).

        Parameters
        ----------
        unit : mm, the file's length unit

        Raises
        ------
        NotReviewed : unsupported, where the kernel has found neither the rigid placement nor its inverse
        """
        rigid = self.rigid.copy()
        rigid[:3, 3] *= unit
        near = 1e-6 * max(1.0, float(np.abs(rigid[:3, 3]).max()))
        if np.abs(found - rigid).max() < near:
            return np.asarray(found @ self.left_out)
        if np.abs(found - np.linalg.inv(rigid)).max() < near:  # the relation names the assembly first
            return np.asarray(np.linalg.inv(self.left_out) @ found)
        raise odd_placement(self.file, self.line)


def odd_placement(name: str, line: int) -> NotReviewed:
    """The refusal of a part that is mirrored or scaled in a way that is not followed."""
    return refused("unsupported", "unsupported.placement", file=repr(name), line=line)


def marked(name: str, text: StepText) -> tuple[StepText, dict[str, Operator]]:
    """The text with a mark for the name of each occurrence that is mirrored or scaled, and the operators by mark.

    Raises
    ------
    NotReviewed : unsupported, for operators that don't place an occurrence, or whose axes are not all given
    """
    defined = next(text.records_of(b"FUNCTIONALLY_DEFINED_TRANSFORMATION"), None)
    if defined is not None:
        raise odd_placement(name, text.line(defined[1]))
    odd = {
        number: offset
        for keyword in _OPERATORS
        for number, offset in text.records_of(keyword)
        if _mirrors_or_scales(text, text.record_at(offset))
    }
    if not odd:
        return text, {}
    places = _occurrences(text, odd)
    if set(places.values()) != set(odd):  # some place a representation within another, without an occurrence
        raise odd_placement(name, text.line(min(odd[n] for n in set(odd) - set(places.values()))))
    data, found = text.data, {}
    for usage in sorted(places, key=lambda number: -(text.offset(number) or 0)):  # from the end: offsets stay
        begin = text.offset(usage) or 0
        line = text.line(odd[places[usage]])
        record = text.record_at(begin)
        named = _NAMED.search(record)
        frame = _frame(text, text.record_at(odd[places[usage]]))
        if named is None or frame is None:
            raise odd_placement(name, line)
        mark = _MARK.format(usage)
        found[mark] = Operator(decoded(named[2][1:-1]) if named[2] != b"$" else "", *frame, name, line)
        lines = b"\n" * named[2].count(b"\n")
        fresh = record[: named.start(2)] + b"'" + mark.encode() + b"'" + lines + record[named.end(2) :]
        data = data[:begin] + data[begin:].replace(record, fresh, 1)
    return StepText(data), found


def _occurrences(text: StepText, operators: Mapping[int, int]) -> dict[int, int]:
    """NEXT_ASSEMBLY_USAGE_OCCURRENCE -> the operator that places it."""
    found = {}
    for _, offset in text.records_of(b"CONTEXT_DEPENDENT_SHAPE_REPRESENTATION"):
        references = text.references(text.record_at(offset))
        if len(references) != 2:
            continue
        relation, shape = (text.record(number) for number in references)
        placed = [number for number in text.references(relation) if number in operators]
        usages = [n for n in text.references(shape) if text.record(n).startswith(b"NEXT_ASSEMBLY_USAGE_OCCURRENCE")]
        if len(placed) == 1 and len(usages) == 1:
            found[usages[0]] = placed[0]
    return found


def _mirrors_or_scales(text: StepText, record: bytes) -> bool:
    """Whether an operator is more than a rotation and a shift."""
    scale = _SCALE.search(without_strings(record))
    if scale is not None and abs(float(scale[1]) - 1.0) > 1e-9:
        return True
    directions = [_triple(text.record(number), b"DIRECTION") for number in text.references(record)]
    axes = [axis for axis in directions if axis is not None]  # axis1, axis2, axis3; the origin is a point
    return len(axes) == 3 and float(np.linalg.det(np.array(axes))) < 0.0


def _frame(text: StepText, record: bytes) -> tuple[np.ndarray, np.ndarray] | None:
    """The rigid part of an operator and what the kernel leaves out; None where not all its axes are given."""
    plain = without_strings(record)
    last = [value.strip() for value in plain[plain.rfind(b"(") + 1 : plain.rfind(b")")].split(b",")][-5:]
    if len(last) != 5 or not all(last[k].startswith(b"#") for k in (0, 1, 2, 4)):
        return None
    axis1, axis2, axis3 = (_triple(text.record(int(last[k][1:])), b"DIRECTION") for k in (0, 1, 4))
    origin = _triple(text.record(int(last[2][1:])), b"CARTESIAN_POINT")
    if axis1 is None or axis2 is None or axis3 is None or origin is None:
        return None
    scale = 1.0 if last[3] == b"$" else float(last[3])
    with np.errstate(invalid="ignore", divide="ignore"):
        z = np.array(axis3) / np.linalg.norm(axis3)
        x = np.array(axis1) - np.dot(axis1, z) * z
        x /= np.linalg.norm(x)
    y = np.cross(z, x)
    if not np.isfinite(y).all() or not scale > 0.0:
        return None
    rigid, left_out = np.eye(4), np.eye(4)
    rigid[:3, :3], rigid[:3, 3] = np.column_stack([x, y, z]), origin
    left_out[:3, :3] = scale * np.diag([1.0, np.sign(np.dot(axis2, y)), 1.0])
    return (rigid, left_out) if left_out[1, 1] else None


def _triple(record: bytes, keyword: bytes) -> tuple[float, ...] | None:
    found = _TRIPLE.match(record) if record.startswith(keyword) else None
    values = [float(value) for value in _REAL.findall(found[1])] if found else []
    return tuple(values) if len(values) == 3 else None
