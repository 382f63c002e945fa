"""All that judging and the document need of a model, to bytes and back."""

from __future__ import annotations

import json
import zlib
from collections.abc import Mapping, Sequence
from typing import Any

from msgspec import Struct, field
from msgspec.structs import replace

from seamcheck.assembly.parts import Assembly, CallOut, Entity, ModelFile, Part
from seamcheck.cache.folder import Folder
from seamcheck.cache.key import key_of
from seamcheck.cache.plain import plain, restored
from seamcheck.judge.findings import JointResult
from seamcheck.measure.areas import Areas, RibSide, SideAreas, TrapRoom
from seamcheck.measure.table import Interruption, PathSurvey, Shade, Survey
from seamcheck.sections.integrals import Strips
from seamcheck.settings.settings import Settings

_THINGS = {
    thing.__name__: thing
    for thing in (
        Assembly, CallOut, ModelFile, Part, JointResult, Survey, PathSurvey, Interruption, Areas, SideAreas, RibSide,
        TrapRoom, Strips, Shade,
    )
}  # fmt: skip


MOST_UNPACKED_BYTES = 200_000_000
"""Of one entry; those of the largest models have a tenth of it."""

_MOST_RATIO = 100  # unpacked bytes for a packed one
_ANY_RATIO_BYTES = 20_000_000  # below so many unpacked bytes the ratio does no harm


class Measured(Struct, frozen=True, eq=False):
    """A model as read, found and surveyed, before any limit and any material.

    Attributes
    ----------
    assembly : as read; its parts may be without shapes
    joints : with ``extra`` empty
    view : the document's part "view", None where it was not asked for
    notes : what was odd while the view was made
    called_out : entries for the tolerance table that the files state, mm, where the settings have none
    """

    assembly: Assembly
    joints: tuple[JointResult, ...]
    view: Mapping[str, Any] | None = None
    notes: tuple[str, ...] = ()
    called_out: Mapping[str, float] = field(default_factory=dict)


def to_bytes(measured: Measured, with_areas: bool) -> bytes:
    """Compressed JSON, without shapes; TypeError for what is no plain value.

    Parameters
    ----------
    with_areas : whether the sections that materials ask for areas at other collapses are kept: most of the bytes
    """
    joints = measured.joints if with_areas else tuple(_without_areas(joint) for joint in measured.joints)
    parts = [replace(part, shape=None, entities=()) for part in measured.assembly.parts]
    entities = [[None if e is None else [e.number, e.line] for e in p.entities] for p in measured.assembly.parts]
    content = {
        "assembly": plain(replace(measured.assembly, parts=tuple(parts)), _THINGS),
        "entities": entities,
        "joints": plain(joints, _THINGS),
        "view": plain(measured.view, _THINGS),
        "notes": plain(measured.notes, _THINGS),
        "called_out": plain(measured.called_out, _THINGS),
    }
    text = json.dumps(content, separators=(",", ":")).encode()
    if len(text) > MOST_UNPACKED_BYTES:
        raise ValueError("too large to be kept")
    return zlib.compress(text, 1)


def _without_areas(joint: JointResult) -> JointResult:
    """A joint without what only the materials ask for."""
    paths = tuple(replace(path, areas_at=None) for path in joint.survey.paths)
    return replace(joint, survey=replace(joint.survey, paths=paths))


def from_bytes(data: bytes) -> Measured:
    """What ``to_bytes`` wrote; some exception for anything else."""
    content = json.loads(_unpacked(data))
    assembly = restored(content["assembly"], _THINGS)
    parts = tuple(
        replace(part, entities=tuple(None if e is None else Entity(*e) for e in entities))
        for part, entities in zip(assembly.parts, content["entities"], strict=True)
    )
    return Measured(
        replace(assembly, parts=parts),
        restored(content["joints"], _THINGS),
        restored(content["view"], _THINGS),
        restored(content["notes"], _THINGS),
        restored(content["called_out"], _THINGS),
    )


def _unpacked(data: bytes) -> bytes:
    """The unpacked bytes; ValueError where they are more than any entry has."""
    most = min(MOST_UNPACKED_BYTES, max(_ANY_RATIO_BYTES, _MOST_RATIO * len(data)))
    stream = zlib.decompressobj()
    text = stream.decompress(data, most)
    if stream.unconsumed_tail or not stream.eof:
        raise ValueError("unpacks to too much, or is cut off")
    return text


def keep(folder: Folder, measured: Measured, settings: Settings) -> bool:
    """Keep what was measured under these settings; false where that is not possible."""
    try:
        data = to_bytes(measured, bool(settings.material))
    except (TypeError, ValueError, MemoryError):
        return False
    return folder.save(key_of(measured.assembly.files, settings), data)


def _is_of(measured: Measured, files: Sequence[ModelFile]) -> bool:
    """Whether an entry is of these files."""
    return [(f.name, f.sha256) for f in measured.assembly.files] == [(f.name, f.sha256) for f in files]


def recall(folder: Folder, files: Sequence[ModelFile], settings: Settings, with_view: bool) -> Measured | None:
    """What was measured on files of the same names and contents under the same settings, if it is kept.

    Parameters
    ----------
    with_view : whether it must have a view

    Notes
    -----
    Materials ask the sections for areas at other collapses; what was kept without a material is measured again for
    one, and then kept with them.
    """
    if not all(file.sha256 for file in files):
        return None
    key = key_of(files, settings)
    data = folder.load(key)
    if data is None:
        return None
    try:
        measured = from_bytes(data)
    except Exception:  # whatever is wrong with it, it is no entry of ours
        folder.drop(key)
        return None
    if not measured.joints or not _is_of(measured, files):  # a forged one: nothing without a joint is ever kept
        folder.drop(key)
        return None
    paths = [path for joint in measured.joints for path in joint.survey.paths]
    if not any(len(path.s) for path in paths):  # nothing was reviewed: no verdict may come of it
        folder.drop(key)
        return None
    lacks_areas = bool(settings.material) and any(path.areas_at is None for path in paths)
    lacks_view = with_view and measured.view is None
    return None if lacks_areas or lacks_view else measured
