"""Review documents from elsewhere: read whole, checked whole, before anything is computed from them or printed.

A document may be edited, cut, damaged or invented. What is wrong with it becomes one sentence that names the place in
it; nothing else of it is used.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from json import JSONDecodeError
from pathlib import Path
from typing import IO, Any

import msgspec

from seamcheck.catalogue.field_types import LARGEST
from seamcheck.catalogue.kinds import KINDS
from seamcheck.catalogue.known import OF_DEFAULTS
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.document.records import KIND, ContourRecord, Document, JointRecord
from seamcheck.document.upgrade import upgraded
from seamcheck.document.view import ViewDamaged, unpack_view
from seamcheck.errors import REASONS, UsageError
from seamcheck.judge.findings import NOT_REVIEWED, verdict_of
from seamcheck.settings.guard import bytes_of
from seamcheck.version import __version__

LARGEST_FILE = 1 << 30
"""Bytes; a document with pictures of a large model has a few per cent of that."""

MOST_FINDINGS, MOST_PLACES = 2_000, 20_000
"""A review makes tens, and a page draws each."""

_PLACES = ("s", "x", "y", "z", "u")
_AGAIN = "Review the model again."


def read_file(path: Path, name: str = "") -> dict[str, Any]:
    """The review document in a file, checked whole.

    Parameters
    ----------
    name : how to call it in a sentence; the path where it is empty

    Raises
    ------
    UsageError : a file that can't be read, or whose content is no sound review document
    """
    return read_text(bytes_of(path, "the review document", LARGEST_FILE), name or str(path))


def read_stream(stream: IO[bytes], name: str) -> dict[str, Any]:
    """The review document that comes through a pipe, checked whole.

    UsageError as in ``read_text``, and for one that is too large.
    """
    data = stream.read(LARGEST_FILE + 1)
    if len(data) > LARGEST_FILE:
        raise UsageError(f"{name} is larger than {LARGEST_FILE >> 20} MB, which no review document is.")
    return read_text(data, name)


def read_text(text: str | bytes, name: str) -> dict[str, Any]:
    """The review document in JSON text (UTF-8), checked whole; UsageError where it is none or not sound."""
    data = text.encode("utf-8", "replace") if isinstance(text, str) else text
    data = data.removeprefix(b"\xef\xbb\xbf")
    try:
        document = msgspec.json.decode(data)
    except RecursionError:
        raise UsageError(f"{name} is not a review document: it is nested too deep.") from None
    except (msgspec.MsgspecError, UnicodeDecodeError, ValueError) as why:
        raise UsageError(f"{name} is not JSON: {_json_fault(data, why)}.") from None
    return check_document(document, name)


def check_document(document: object, name: str) -> dict[str, Any]:
    """A document of plain values, brought to this version and checked whole.

    Raises
    ------
    UsageError : one sentence with the first place that is wrong
    """
    if not isinstance(document, Mapping) or document.get("document") != KIND:
        raise UsageError(f'{name} is not a review document: it lacks "document": "{KIND}".')
    try:
        result = upgraded(dict(document), name)
        record = msgspec.convert(result, Document)
    except msgspec.ValidationError as why:
        raise UsageError(f"{name} is not a sound review document: {_in_words(str(why))}. {_AGAIN}") from None
    except RecursionError:
        raise UsageError(f"{name} is not a review document: it is nested too deep.") from None
    for place, wrong in _faults(record):
        raise UsageError(f"{name} is not a sound review document, at {place}: {wrong}. {_AGAIN}")
    return result


_LONG_NUMBER = re.compile(rb"[:,\[\s]-?\d{20,}(?=[\s,\]}])")


def _json_fault(data: bytes, why: Exception) -> str:
    """What is wrong with text that is no JSON, with its line."""
    import json

    try:
        json.loads(data)
    except JSONDecodeError as known:
        return f"line {known.lineno}: {_short(known.msg)}"
    except UnicodeDecodeError:
        return "it is not text"
    except (ValueError, RecursionError):
        pass
    if number := _LONG_NUMBER.search(data):
        line = data.count(b"\n", 0, number.start()) + 1
        return f"line {line}: a number of too many digits"
    return _short(str(why))


def _in_words(said: str) -> str:
    """'at joints[0].beam: Expected ...' of what msgspec says: 'Expected ... - at `$.joints[0].beam`'."""
    match = re.fullmatch(r"(.*?)(?: - at `(?:key in )?\$\.?(.*)`)?", said, re.DOTALL)
    what, place = (match[1], match[2]) if match else (said, None)
    what = re.sub(r"`([^`]*)`", r"\1", what)
    return f"at {_short(place) if place else 'its top level'}: {_short(what[:1].lower() + what[1:])}"


def _short(text: str) -> str:
    text = " ".join(text.split())
    return text if len(text) <= 200 else text[:200] + " ..."


def _faults(document: Document) -> Iterator[tuple[str, str]]:
    """(place, what is wrong with it) of everything that types can't say."""
    yield from _unknown_keys(document)
    parts = {part.id for part in document.model.parts}
    yield from _twice("model.parts", [part.id for part in document.model.parts])
    for i, part in enumerate(document.model.parts):
        if part.file >= len(document.model.files):
            yield f"model.parts[{i}].file", f"there are {len(document.model.files)} files"
    yield from _twice("joints", [joint.id for joint in document.joints])
    for i, joint in enumerate(document.joints):
        yield from _joint_faults(f"joints[{i}]", joint, parts)
    yield from _finding_faults(document, parts)
    yield from _waiver_faults(document)
    yield from _verdict_faults(document)
    yield from _view_faults(document)


def _unknown_keys(document: Document) -> Iterator[tuple[str, str]]:
    known = (("rule", RULES), ("quantity", QUANTITIES), ("severity", SEVERITIES), ("standing", OF_DEFAULTS))
    lists: list[tuple[str, list[Any]]] = [("findings", document.findings), ("limits", document.limits)]
    for i, joint in enumerate(document.joints):
        if joint.kind not in KINDS:
            yield f"joints[{i}].kind", f"{joint.kind!r} is no kind of joint that this version knows"
        lists.append((f"joints[{i}].tolerances", joint.tolerances))
        lists += [(f"joints[{i}].contours[{k}].bounds", contour.bounds) for k, contour in enumerate(joint.contours)]
    for place, records in lists:
        for i, record in enumerate(records):
            for name, keys in known:
                value = getattr(record, name, None)
                if name in ("rule", "quantity") and document.seamcheck != __version__:
                    continue  # rules come and go with the version
                if value is not None and value not in keys:
                    yield f"{place}[{i}].{name}", f"{_short(repr(value))} is no {name} that this version knows"
    if document.reason is not None and document.reason.code not in REASONS:
        yield "reason.code", f"{_short(repr(document.reason.code))} is no reason that this version knows"


def _twice(place: str, ids: list[str]) -> Iterator[tuple[str, str]]:
    seen: set[str] = set()
    for i, ident in enumerate(ids):
        if ident in seen:
            yield f"{place}[{i}].id", f"{_short(repr(ident))} stands there twice"
        seen.add(ident)


def _joint_faults(place: str, joint: JointRecord, parts: set[str]) -> Iterator[tuple[str, str]]:
    for name, ids in (("cover", joint.cover), ("base", joint.base)):
        if not ids:
            yield f"{place}.{name}", "a joint has a cover and a base"
        for k, ident in enumerate(ids):
            if ident not in parts:
                yield f"{place}.{name}[{k}]", f"the model has no part {_short(repr(ident))}"
    for name, faces in (("rib", joint.seam_faces.rib), ("opposite", joint.seam_faces.opposite)):
        for k, face in enumerate(faces):
            if face.part not in parts:
                yield f"{place}.seam_faces.{name}[{k}].part", f"the model has no part {_short(repr(face.part))}"
    yield from _twice(f"{place}.contours", [contour.id for contour in joint.contours])
    known = {contour.id for contour in joint.contours}
    for k, missing in enumerate(joint.interruptions):
        for name in missing.contours:
            if name not in known:
                yield f"{place}.interruptions[{k}]", f"the joint has no contour {_short(repr(name))}"
    for k, contour in enumerate(joint.contours):
        yield from _contour_faults(f"{place}.contours[{k}]", contour)


def _contour_faults(place: str, contour: ContourRecord) -> Iterator[tuple[str, str]]:
    stations = contour.stations
    for name in _PLACES:
        if name not in stations:
            yield f"{place}.stations", f"there is no {name}"
            return
    count = len(stations["s"])
    for name, column in stations.items():
        if len(column) != count:
            yield f"{place}.stations.{_short(name)}", f"it has {len(column)} values for {count} stations"
        is_sound, what = (_is_direction, "a direction") if name == "u" else (_is_number, "a number in mm, mm² or °")
        for i, value in enumerate(column):
            if not is_sound(value) and not (value is None and name not in _PLACES):
                yield f"{place}.stations.{_short(name)}[{i}]", f"it is not {what}"
    arc: list[Any] = stations["s"]
    for i in range(1, count):
        if not arc[i] >= arc[i - 1]:
            yield f"{place}.stations.s[{i}]", "arc lengths must ascend"
    for k, bounds in enumerate(contour.bounds):
        for side in ("low", "high"):
            values = getattr(bounds, side)
            if isinstance(values, list) and len(values) != count:
                yield f"{place}.bounds[{k}].{side}", f"it has {len(values)} values for {count} stations"


def _is_number(value: object) -> bool:
    return type(value) in (float, int) and -LARGEST <= value <= LARGEST  # type: ignore[operator]


def _is_direction(value: object) -> bool:
    return isinstance(value, list | tuple) and len(value) == 3 and all(_is_number(item) for item in value)


def _finding_faults(document: Document, parts: set[str]) -> Iterator[tuple[str, str]]:
    if len(document.findings) > MOST_FINDINGS or sum(len(one.places) for one in document.findings) > MOST_PLACES:
        yield "findings", f"there are more than {MOST_FINDINGS}, or {MOST_PLACES} places of them, as no review makes"
        return
    joints = {joint.id: {contour.id: contour for contour in joint.contours} for joint in document.joints}
    yield from _twice("findings", [finding.id for finding in document.findings])
    covered = {name for waiver in document.waivers if waiver.state == "used" for name in waiver.findings}
    for i, finding in enumerate(document.findings):
        place = f"findings[{i}]"
        if finding.joint not in joints:
            yield f"{place}.joint", f"there is no joint {_short(repr(finding.joint))}"
            continue
        if finding.contour is not None:
            contour = joints[finding.joint].get(finding.contour)
            if contour is None:
                yield f"{place}.contour", f"the joint has no contour {_short(repr(finding.contour))}"
                continue
            if finding.station is not None and finding.station >= len(contour.stations["s"]):
                yield f"{place}.station", f"the contour has {len(contour.stations['s'])} stations"
        ends = [(place, finding.from_s, finding.to_s, finding.length_mm)]
        ends += [(f"{place}.places[{k}]", p.from_s, p.to_s, p.length_mm) for k, p in enumerate(finding.places)]
        for where, start, end, length in ends:
            if (start is None) != (end is None) or (start is not None and length is None):
                yield f"{where}.from_s", "a stretch has a start, an end and a length"
        for k, face in enumerate(finding.faces):
            if face.part not in parts:
                yield f"{place}.faces[{k}].part", f"the model has no part {_short(repr(face.part))}"
        if " ".join(said.text for said in finding.messages) != finding.message:
            yield f"{place}.messages", "together they are not the finding's message"
        if finding.waived is not None and finding.id not in covered:
            yield f"{place}.waived", "no waiver of the document covers it"


def _waiver_faults(document: Document) -> Iterator[tuple[str, str]]:
    known = {finding.id for finding in document.findings}
    for i, waiver in enumerate(document.waivers):
        for name in ("findings", "partly"):
            for k, ident in enumerate(getattr(waiver, name)):
                if ident not in known:
                    yield f"waivers[{i}].{name}[{k}]", f"there is no finding {_short(repr(ident))}"


def _verdict_faults(document: Document) -> Iterator[tuple[str, str]]:
    if document.verdict == NOT_REVIEWED:
        if document.reason is None:
            yield "reason", "a model that was not reviewed has a reason"
        if document.findings:
            yield "findings", "a model that was not reviewed has no findings"
        return
    if document.reason is not None:
        yield "reason", "only a model that was not reviewed has a reason"
    if not document.joints:
        yield "joints", f"the verdict is {document.verdict!r}, but no joint was reviewed"
    for i, joint in enumerate(document.joints):
        if not any(len(contour.stations["s"]) > 1 for contour in joint.contours):
            yield f"joints[{i}].contours", f"the verdict is {document.verdict!r}, but this joint has no traced contour"
    expected = verdict_of(document.findings)
    if document.verdict != expected:
        yield "verdict", f"it is {document.verdict!r}, but the findings make it {expected!r}"


def _view_faults(document: Document) -> Iterator[tuple[str, str]]:
    if not isinstance(document.view, msgspec.Struct):
        return
    joints = {joint.id: {contour.id: contour for contour in joint.contours} for joint in document.joints}
    parts = {part.id for part in document.model.parts}
    try:
        unpack_view(msgspec.to_builtins(document.view))
    except ViewDamaged as why:
        yield "view", str(why).rstrip(".")
        return
    for i, section in enumerate(document.view.sections):
        contour = joints.get(section.joint, {}).get(section.contour)
        if contour is None:
            yield f"view.sections[{i}]", f"there is no contour {_short(section.joint)} {_short(section.contour)}"
        elif any(station >= len(contour.stations["s"]) for station in section.stations):
            yield f"view.sections[{i}].stations", f"the contour has {len(contour.stations['s'])} stations"
    for i, mesh in enumerate(document.view.meshes):
        if mesh.part not in parts:
            yield f"view.meshes[{i}].part", f"the model has no part {_short(repr(mesh.part))}"
