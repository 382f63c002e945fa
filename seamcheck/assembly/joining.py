"""Solids of one product that touch over faces, joined into one body (the kernel's general fuse)."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from msgspec import Struct
from msgspec.structs import replace
from OCP.BRepAlgoAPI import BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps
from OCP.ShapeUpgrade import ShapeUpgrade_UnifySameDomain
from OCP.TopAbs import TopAbs_FACE, TopAbs_SOLID
from OCP.TopLoc import TopLoc_Location
from OCP.TopTools import TopTools_IndexedMapOfShape, TopTools_ListOfShape

from seamcheck.assembly.kernel_reader import is_kernel_failure
from seamcheck.assembly.parts import Entity, Part
from seamcheck.assembly.shapes import explore

_BRIDGED = (0.0, 5e-4)  # mm: how far faces that are meant to touch may miss each other, tried in turn
_SAME_VOLUME = 1e-3  # share of a volume that may get lost: BRepGProp integrates splines to about this


class Joined(Struct, frozen=True, eq=False):
    """A part made of pieces.

    Attributes
    ----------
    part : with the id and the name of the piece read first, and the look of the piece asked for; of a face that
        comes from several, the record of the first
    pieces : ids of the pieces, the first one's first
    """

    part: Part
    pieces: tuple[str, ...]


def join(pieces: Sequence[Part]) -> tuple[Joined | None, tuple[str, ...]]:
    """The first piece with those of the others that it touches over faces, directly or through others.

    Returns
    -------
    Joined or None
        None where the first is joined with no other
    tuple of str
        ids of pieces that touch it and that the kernel can't join soundly
    """
    pieces = [_in_place(piece) for piece in pieces]
    try:
        return _join(pieces), ()
    except _Unsound:
        pass
    joined: Joined | None = None
    left: list[str] = []
    whole, others = pieces[0], list(pieces[1:])
    grew = True
    while grew:  # one by one: what spoils the whole is found, and the rest is joined
        grew, left = False, []
        for other in list(others):
            try:
                found = _join([whole, other])
            except _Unsound:
                left.append(other.id)
                continue
            if found is not None:
                joined = Joined(found.part, (*(joined.pieces if joined else ()), *found.pieces))
                whole, grew = found.part, True
                others.remove(other)
    if joined is None:
        return None, tuple(left)
    return Joined(joined.part, tuple(dict.fromkeys(joined.pieces))), tuple(left)


class _Unsound(Exception):
    """The kernel joins pieces to something that is no sound solid."""


def _in_place(part: Part) -> Part:
    """The part with its geometry where it stands; a face that the fuse makes of two keeps no placement of its own."""
    move = part.shape.Location().Transformation()
    bare = part.shape.Located(TopLoc_Location())
    return replace(part, shape=BRepBuilderAPI_Transform(bare, move, True).Shape())


def _join(pieces: Sequence[Part]) -> Joined | None:
    for bridged in _BRIDGED:
        try:
            found = _fused(pieces, bridged)
        except Exception as error:
            if not is_kernel_failure(error):
                raise
            raise _Unsound from error
        if found is not None:
            return found
    return None


def _fused(pieces: Sequence[Part], bridged: float) -> Joined | None:
    fuse = BRepAlgoAPI_Fuse()
    fuse.SetArguments(_listed([pieces[0].shape]))
    fuse.SetTools(_listed(piece.shape for piece in pieces[1:]))
    fuse.SetNonDestructive(True)
    if bridged:
        fuse.SetFuzzyValue(bridged)
    fuse.Build()
    if not fuse.IsDone():
        raise _Unsound
    solids = list(explore(fuse.Shape(), TopAbs_SOLID))
    mine = next((solid for solid in solids if _is_part_of(pieces[0], solid, fuse)), None)
    if mine is None:
        raise _Unsound
    together = [piece for piece in pieces if _is_part_of(piece, mine, fuse)]
    if len(together) < 2:
        return None
    unified = ShapeUpgrade_UnifySameDomain(mine, True, True, False)
    unified.Build()
    shape = next(explore(unified.Shape(), TopAbs_SOLID), None)
    volumes = [_volume(piece.shape) for piece in together]
    if (
        shape is None
        or not BRepCheck_Analyzer(shape).IsValid()
        or not max(volumes) * (1 - _SAME_VOLUME) <= _volume(shape) <= sum(volumes) * (1 + _SAME_VOLUME)
    ):
        raise _Unsound
    entities = _entities(shape, together, fuse, unified)
    first = min(together, key=lambda piece: int(piece.id[1:]))
    part = replace(
        first,
        shape=shape,
        solids=len(together),
        faces=len(entities),
        entities=entities,
        colour=pieces[0].colour,
        transparency=pieces[0].transparency,
    )
    return Joined(part, tuple(piece.id for piece in together))


def _listed(shapes: Iterable[Any]) -> TopTools_ListOfShape:
    found = TopTools_ListOfShape()
    for shape in shapes:
        found.Append(shape)
    return found


def _is_part_of(piece: Part, solid: Any, fuse: BRepAlgoAPI_Fuse) -> bool:
    """Whether a solid of the result has a face that comes from a piece."""
    faces = TopTools_IndexedMapOfShape()
    for face in explore(solid, TopAbs_FACE):
        faces.Add(face)
    return any(faces.Contains(now) for face in explore(piece.shape, TopAbs_FACE) for now in _after(face, fuse))


def _after(face: Any, step: Any) -> Iterator[Any]:
    """What a step has made of a face: nothing, the face itself, or others."""
    if step.IsDeleted(face):
        return
    made = list(step.Modified(face))
    yield from made or [face]


def _entities(shape: Any, pieces: Sequence[Part], fuse: Any, unified: Any) -> tuple[Entity | None, ...]:
    """The record behind each face of the joined shape: that of the first face it was made of."""
    history = unified.History()
    known: list[tuple[Any, Entity | None]] = []
    for piece in pieces:
        for face, entity in zip(explore(piece.shape, TopAbs_FACE), piece.entities, strict=False):
            for fused in _after(face, fuse):
                gone = history.IsRemoved(fused)
                made = list(history.Modified(fused))
                known += [(last, entity) for last in (made or ([] if gone else [fused]))]
    places = TopTools_IndexedMapOfShape()
    faces = list(explore(shape, TopAbs_FACE))
    for face in faces:
        places.Add(face)
    records: list[Entity | None] = [None] * places.Extent()
    for face, entity in known:
        place = places.FindIndex(face)
        if place and records[place - 1] is None:
            records[place - 1] = entity
    return tuple(records[places.FindIndex(face) - 1] for face in faces)


def _volume(shape: Any) -> float:
    properties = GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, properties)
    return abs(float(properties.Mass()))
