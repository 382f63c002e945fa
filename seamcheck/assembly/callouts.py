"""Call-outs that a file carries as data (ISO 10303-242: geometric tolerances, dimensions), read from its text.

Flatness and profile of a surface are taken with the faces that they stand on; of all others only the kinds are told.
"""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Iterator

from seamcheck.assembly.declared import length_unit
from seamcheck.assembly.parts import CallOut
from seamcheck.assembly.text import StepText, without_strings_and_comments
from seamcheck.catalogue.say import say

TAKEN: dict[bytes, str] = {b"FLATNESS_TOLERANCE": "flatness", b"SURFACE_PROFILE_TOLERANCE": "profile"}
"""Keyword of a record -> kind of call-out, of those that are taken."""

IGNORED: dict[bytes, str] = {
    b"POSITION_TOLERANCE": "position",
    b"PARALLELISM_TOLERANCE": "parallelism",
    b"PERPENDICULARITY_TOLERANCE": "perpendicularity",
    b"ANGULARITY_TOLERANCE": "angularity",
    b"CYLINDRICITY_TOLERANCE": "cylindricity",
    b"ROUNDNESS_TOLERANCE": "roundness",
    b"STRAIGHTNESS_TOLERANCE": "straightness",
    b"LINE_PROFILE_TOLERANCE": "line-profile",
    b"COAXIALITY_TOLERANCE": "coaxiality",
    b"CONCENTRICITY_TOLERANCE": "coaxiality",
    b"SYMMETRY_TOLERANCE": "symmetry",
    b"CIRCULAR_RUNOUT_TOLERANCE": "run-out",
    b"TOTAL_RUNOUT_TOLERANCE": "run-out",
    b"DIMENSIONAL_SIZE": "dimension",
    b"DIMENSIONAL_LOCATION": "dimension",
    b"ANGULAR_SIZE": "dimension",
    b"ANGULAR_LOCATION": "dimension",
}
"""Keyword of a record -> kind of call-out, of those that are only told."""

_DRAWN = (b"ANNOTATION_CURVE_OCCURRENCE", b"TESSELLATED_ANNOTATION_OCCURRENCE", b"DRAUGHTING_CALLOUT")
_MOST_RECORDS, _MOST = 50_000, 2000  # of one keyword in a file; faces of one call-out
_DEEPEST = 4  # groups within groups of faces
_VALUE = re.compile(rb"LENGTH_MEASURE\s*\(\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:[Ee][-+]?\d+)?)\s*\)")
_OF_TOLERANCE = re.compile(rb"\b(\w*TOLERANCE)\s*\(\s*(?:''|\$)\s*,\s*(?:''|\$)\s*,\s*#(\d{1,15})\s*,\s*#(\d{1,15})\b")
_FACE = re.compile(rb"^\s*\(?\s*(?:ADVANCED_FACE|FACE_SURFACE)\b")


def call_outs(name: str, text: StepText, file: int) -> tuple[list[CallOut], list[str]]:
    """Flatness and profile call-outs on faces, and sentences on what is not taken.

    Parameters
    ----------
    file : index of the file; its call-outs carry it
    """
    if not any(text.has(word) for word in (b"_TOLERANCE", b"DIMENSIONAL_", b"ANGULAR_")):
        return [], [say("callout.drawn", file=repr(name))] if any(text.has(word) for word in _DRAWN) else []
    items, groups = _items(text), _groups(text)
    taken: list[CallOut] = []
    ignored: Counter[str] = Counter()
    for keyword, kind in TAKEN.items():
        for number in _records(text, keyword):
            if b"WITH_DEFINED_UNIT" in text.record(number):
                ignored[f"{kind}-unit"] += 1  # so much on each so many mm: it says nothing of the whole seam
                continue
            found = _call_out(text, number, kind, file, items, groups)
            if found is None:
                ignored[f"{kind}-{'part' if _of_a_part(text, number) else 'lost'}"] += 1
            else:
                taken.append(found)
    for keyword, kind in IGNORED.items():
        ignored[kind] += sum(1 for _ in _records(text, keyword))
    if not taken and not sum(ignored.values()) and any(text.has(word) for word in _DRAWN):
        return [], [say("callout.drawn", file=repr(name))]
    told = [say("callout.kind", count=count, kind=kind) for kind, count in sorted(ignored.items()) if count]
    return taken, [say("callout.ignored", file=repr(name), what=told)] if told else []


def _records(text: StepText, keyword: bytes) -> Iterator[int]:
    """Numbers of the records of one keyword, each once."""
    seen: set[int] = set()
    for number, _ in text.records_of(keyword):
        if number not in seen and len(seen) < _MOST_RECORDS:
            seen.add(number)
            yield number


def _call_out(
    text: StepText, number: int, kind: str, file: int, items: dict[int, list[int]], groups: dict[int, list[int]]
) -> CallOut | None:
    """One call-out; None where its value or its faces are not to be had."""
    found = _OF_TOLERANCE.search(without_strings_and_comments(text.record(number)))
    if found is None:
        return None
    value = _length(text, int(found[2]))
    faces = _faces(text, int(found[3]), items, groups)
    if value is None or not faces:
        return None
    return CallOut(kind, value, file, number, tuple(faces))


def _of_a_part(text: StepText, number: int) -> bool:
    """Whether a call-out stands on a part as a whole (a general tolerance), on no face."""
    found = _OF_TOLERANCE.search(without_strings_and_comments(text.record(number)))
    return found is not None and text.record(int(found[3])).lstrip().startswith(b"PRODUCT_DEFINITION_SHAPE")


def _length(text: StepText, number: int) -> float | None:
    """mm of a length with its unit; None where it is none, or not above 0."""
    record = without_strings_and_comments(text.record(number))
    stated = _VALUE.search(record)
    units = [length_unit(text, text.record(other)) for other in text.references(record)]
    unit = next((unit for unit in units if unit is not None), None)
    if stated is None or unit is None:
        return None
    value = float(stated[1]) * unit.mm
    return value if math.isfinite(value) and value > 0.0 else None


def _items(text: StepText) -> dict[int, list[int]]:
    """Number of an aspect of a shape -> numbers of the items of geometry that it stands for."""
    found: dict[int, list[int]] = {}
    for keyword in (b"GEOMETRIC_ITEM_SPECIFIC_USAGE", b"ITEM_IDENTIFIED_REPRESENTATION_USAGE"):
        for number in _records(text, keyword):
            aspect, *rest = text.references(text.record(number)) or [0]
            found.setdefault(aspect, []).extend(rest)
    return found


def _groups(text: StepText) -> dict[int, list[int]]:
    """Number of a group of aspects -> its members."""
    found: dict[int, list[int]] = {}
    for number in _records(text, b"SHAPE_ASPECT_RELATIONSHIP"):
        group, *members = text.references(text.record(number)) or [0]
        found.setdefault(group, []).extend(members)
    return found


def _faces(text: StepText, aspect: int, items: dict[int, list[int]], groups: dict[int, list[int]]) -> list[int]:
    """Numbers of the faces that an aspect stands for, or its members do."""
    level, seen, found = [aspect], {aspect}, dict[int, None]()
    for _ in range(_DEEPEST):
        for one in level:
            for item in items.get(one, [])[:_MOST]:
                if _FACE.match(text.record(item)):
                    found[item] = None
        level = [member for one in level for member in groups.get(one, [])[:_MOST] if member not in seen]
        seen.update(level)
    return list(found)[:_MOST]
