"""From files to an Assembly: one Part per placed body."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np
from msgspec import Struct, field
from msgspec.structs import replace
from OCP.Bnd import Bnd_Box
from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
from OCP.gp import gp_Pnt, gp_Trsf
from OCP.TopAbs import TopAbs_FACE
from OCP.TopLoc import TopLoc_Location

from seamcheck.assembly.bodies import Body, NeedsRepairs, product_bodies, same_solid, sound_solids
from seamcheck.assembly.callouts import call_outs
from seamcheck.assembly.colours import Colour, Colours, damaged_colours
from seamcheck.assembly.contents import nothing_exact, outside_files
from seamcheck.assembly.declared import (
    UNDECLARED,
    LengthUnit,
    damaged_units,
    holds_plain_solids,
    length_units,
    misnamed_units,
    step_schema,
    uncertainty,
    unit_notes,
)
from seamcheck.assembly.entities import FaceEntities
from seamcheck.assembly.kernel_reader import Repairs, transfer
from seamcheck.assembly.losses import ListedSolids, damaged_records
from seamcheck.assembly.names import readable, short
from seamcheck.assembly.numbers import absurd_numbers
from seamcheck.assembly.operators import Operator, marked
from seamcheck.assembly.parts import Assembly, CallOut, Entity, ModelFile, Part
from seamcheck.assembly.placements import lost_owners, lost_placements
from seamcheck.assembly.plausible import check_scale
from seamcheck.assembly.products import Placing, Product, placed_products
from seamcheck.assembly.shapes import explore
from seamcheck.assembly.source import Given, Source, read_source
from seamcheck.assembly.text import StepText
from seamcheck.assembly.text_checks import check_text
from seamcheck.catalogue.message import message_of
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed

_KERNEL_WORDS = ("SOLID", "SHELL", "FACE", "COMPOUND", "COMPSOLID")  # how the kernel calls a shape without a product


class _Reading(Struct):
    """What has been read so far."""

    files: list[ModelFile] = field(default_factory=list)
    parts: list[Part] = field(default_factory=list)
    sizes: list[tuple[float, str]] = field(default_factory=list)  # of the solids: mm, name
    notes: list[str] = field(default_factory=list)
    doubts: list[str] = field(default_factory=list)
    damage: list[str] = field(default_factory=list)  # those of the doubts that are about whole files
    places: dict[tuple[float, ...], list[tuple[Part, Body]]] = field(default_factory=dict)  # solids by what they fill
    products: int = 0  # placed so far
    callouts: list[CallOut] = field(default_factory=list)


class _Known(Struct, frozen=True, eq=False):
    """A body of a product, prepared once for all instances."""

    body: Body
    colour: Colour | None
    entities: tuple[Entity | None, ...]


def read_files(paths: Sequence[Path | Given], progress: Callable[[str], None]) -> Assembly:
    """All placed bodies of the files, in mm, in one frame."""
    if not paths:
        raise refused("empty", "empty.none")
    reading = _Reading()
    for path in paths:
        _add_file(reading, read_source(path), progress)
    _check_bodies(reading)
    return Assembly(
        tuple(reading.files),
        tuple(_named_by_file(reading)),
        tuple(reading.notes),
        doubts=tuple(dict.fromkeys(reading.doubts)),
        callouts=tuple(reading.callouts),
    )


def _named_by_file(reading: _Reading) -> list[Part]:
    """The parts; of several files, the only solid of a file is called as the file: that name its owner chose."""
    solids = Counter(part.file for part in reading.parts if part.kind == "solid")
    stems = [short(Path(file.name).stem) for file in reading.files]
    if len(stems) < 2 or len(set(stems)) < len(stems):
        return reading.parts
    return [
        replace(part, name=stems[part.file]) if part.kind == "solid" and solids[part.file] == 1 else part
        for part in reading.parts
    ]


def _add_file(reading: _Reading, source: Source, progress: Callable[[str], None]) -> None:
    text = StepText(source.data)
    text, damage = check_text(source.name, text)
    colourless = damaged_colours(source.name, text)
    damage = [
        *source.doubts,
        *damage,
        *colourless,
        *damaged_units(source.name, text),
        *damaged_records(source.name, text),
    ]
    text = StepText(text.without_repeated())
    absurd = absurd_numbers(text)
    if absurd is not None:
        damage.insert(0, absurd.sentence(source.name))
        text = StepText(absurd.data)
    text, operators = marked(source.name, text)
    source = replace(source, data=text.data, colours=not colourless)
    units = length_units(text)
    unit = units[0] if units else UNDECLARED
    reading.notes += [*unit_notes(source.name, units), *misnamed_units(source.name, text)]
    listed = ListedSolids(source.name, text)
    for sentence in damage:
        _remark(progress, sentence)
    placing = partial(_placing, operators, unit.mm)
    precision = uncertainty(text, unit) if len(units) == 1 and not damage and holds_plain_solids(text) else None
    products, repaired = _products(source, text, unit, precision, listed, progress, placing)
    if repaired:
        sentence = say("file.repaired", file=repr(source.name))
        reading.notes.append(sentence)
        reading.doubts.append(sentence)
    index = len(reading.files)
    reading.files.append(ModelFile(source.name, source.sha256, step_schema(text), unit.name))
    before = len(reading.parts)
    made_up = {name for name in _KERNEL_WORDS if f"'{name}'".encode() not in source.data}
    for product, bodies in products:
        product = replace(product, path=tuple("" if name in made_up else name for name in product.path))
        reading.products += 1
        for known in bodies:
            if absurd is not None and not known.body.sound and {product.path[-1], ""} & {*absurd.owners}:
                known = _left_out(known, say("part.absurd", line=absurd.line))
            part = _placed(product, known, f"p{len(reading.parts) + 1}", index)
            part = replace(part, product=reading.products)
            part = _unless_twice(reading, part, product, known.body)
            reading.parts.append(part)
            if part.kind == "solid":
                reading.sizes.append((known.body.size * _scale(product), part.name or part.id))
            if not known.body.sound:
                doubts = [say("part.said", part=repr(part.name or part.id), notes=[note]) for note in known.body.notes]
                reading.doubts += doubts
                for sentence in doubts:
                    _remark(progress, sentence)
    if len(reading.parts) == before:
        raise nothing_exact(source.name, text)
    lost = [
        *_lost(products, listed),  # first: it names a body
        *lost_placements(source.name, text),
        *lost_owners(source.name, text),
        *damage,
    ]
    stated, ignored = call_outs(source.name, text, index)
    reading.callouts += stated
    reading.notes += [*lost, *outside_files(source.name, text), *ignored]
    reading.doubts += lost
    reading.damage += lost


def _products(
    source: Source,
    text: StepText,
    unit: LengthUnit,
    precision: float | None,
    listed: ListedSolids,
    progress: Callable[[str], None],
    placing: Placing,
) -> tuple[list[tuple[Product, list[_Known]]], bool]:
    """The placed products with their bodies; read with all repairs (true) where that leaves more sound bodies.

    precision : mm, the uncertainty of lengths; with it solids that are sound already are mended face by face
    """
    entities = FaceEntities(text, unit.mm)

    def is_listed(shell: Any) -> bool:
        return entities.belongs_to_one(shell, listed.faces)

    if precision is not None:
        to_bodies = partial(sound_solids, precision=precision)
        with suppress(NeedsRepairs):
            mended = _transferred(source, Repairs.NOT_SOLIDS, progress, to_bodies, placing)
            if not _unsound(mended, listed):
                return _known(mended, entities), False
    to_bodies = partial(product_bodies, is_listed=is_listed)
    first = _transferred(source, Repairs.USUAL, progress, to_bodies, placing)
    if not _unsound(first, listed):
        return _known(first, entities), False
    second = _transferred(source, Repairs.ALL, progress, to_bodies, placing)
    if _unsound(second, listed) >= _unsound(first, listed):
        return _known(first, entities), False
    return _known(second, entities), True


class _Transferred(Struct, frozen=True, eq=False):
    document: Any  # keeps the labels alive
    products: list[Product]
    bodies: dict[str, list[Body]]  # by the label's entry


def _transferred(
    source: Source,
    repairs: Repairs,
    progress: Callable[[str], None],
    to_bodies: Callable[[Any], list[Body]],
    placing: Placing,
) -> _Transferred:
    document = transfer(source.name, source.data, repairs, progress, source.colours)
    progress("checking")
    products = list(placed_products(document, placing))
    bodies: dict[str, list[Body]] = {}
    for product in products:
        if product.key not in bodies:
            bodies[product.key] = to_bodies(product.shape)
    return _Transferred(document, products, bodies)


def _unsound(transferred: _Transferred, listed: ListedSolids) -> int:
    """How many bodies are not sound or not there."""
    every = [body for bodies in transferred.bodies.values() for body in bodies]
    solids = [body for body in every if body.kind == "solid"]
    return sum(not body.sound for body in every) + listed.lost(len(solids), sum(b.faces for b in solids))


def _known(transferred: _Transferred, entities: FaceEntities) -> list[tuple[Product, list[_Known]]]:
    colours = Colours(transferred.document)
    known: dict[str, list[_Known]] = {}
    answer = []
    for product in transferred.products:
        if product.key not in known:
            known[product.key] = [
                _Known(body, _own_colour(product, body, colours), _entities(body, entities))
                for body in transferred.bodies[product.key]
            ]
        answer.append((product, known[product.key]))
    return answer


def _entities(body: Body, entities: FaceEntities) -> tuple[Entity | None, ...]:
    every = entities.of_body(body.listed)
    return tuple(entity for index, entity in enumerate(every) if index not in body.left_out)


def _left_out(known: _Known, note: str) -> _Known:
    return replace(known, body=replace(known.body, kind="other", notes=(*known.body.notes, note)))


def _remark(progress: Callable[[str], None], sentence: str) -> None:
    """Tell a parent process, if one listens, what will explain a crash."""
    remark = getattr(progress, "remark", None)
    if remark is not None:
        remark(sentence)


def _lost(products: list[tuple[Product, list[_Known]]], listed: ListedSolids) -> list[str]:
    different = {id(bodies): bodies for _, bodies in products}.values()  # all instances share one list
    solids = [known for bodies in different for known in bodies if known.body.kind == "solid"]
    entities = (entity for known in solids for entity in known.entities)
    return listed.doubts(len(solids), sum(known.body.faces for known in solids), entities)


def _own_colour(product: Product, body: Body, colours: Colours) -> Colour | None:
    """The body's colour: its own, that of most of its faces, or its product's."""
    listed = body.listed[0]
    return (
        colours.of_shape(body.original)
        or colours.of_shape(listed)
        or colours.of_most_faces(body.original)
        or colours.of_label(product.label)
    )


def _placing(
    operators: Mapping[str, Operator], unit: float, name: str, place: TopLoc_Location
) -> tuple[str, TopLoc_Location]:
    """An occurrence's name and placement with the mirror and the scale that the kernel leaves out."""
    operator = operators.get(name)
    if operator is None:
        return name, place
    move = place.Transformation()
    found = np.eye(4)
    found[:3] = [[move.Value(row, column) for column in range(1, 5)] for row in range(1, 4)]
    whole = gp_Trsf()
    whole.SetValues(*(float(value) for value in operator.completed(found, unit)[:3].ravel()))
    return operator.name, TopLoc_Location(whole)


def _scale(product: Product) -> float:
    return float(abs(product.location.Transformation().ScaleFactor()))


def _placed(product: Product, known: _Known, identity: str, file: int) -> Part:
    body, notes = known.body, list(known.body.notes)
    move = product.location.Transformation()
    mirrored, scale = move.IsNegative(), abs(move.ScaleFactor())
    if mirrored or abs(scale - 1.0) > 1e-9:  # the location of a shape can hold neither
        shape = BRepBuilderAPI_Transform(body.shape, move, True).Shape()
        if mirrored:
            notes.append(say("part.mirrored"))
        if abs(scale - 1.0) > 1e-9:
            notes.append(say("part.scaled", scale=f"{scale:.6g}"))
    else:
        shape = body.shape.Moved(product.location)
    if body.opening is not None:
        point = gp_Pnt(*body.opening).Transformed(move)
        notes.append(say("part.open-near", place=f"{point.X():.1f}, {point.Y():.1f}, {point.Z():.1f}"))
    colour = product.instance_colour or known.colour or product.inherited_colour
    faces = sum(1 for _ in explore(shape, TopAbs_FACE))
    return Part(
        id=identity,
        name=short(product.path[-1]),
        path=tuple(readable(name) for name in product.path),
        kind=body.kind,
        shape=shape,
        solids=int(body.kind == "solid"),
        faces=faces,
        colour=colour[0] if colour else None,
        transparency=colour[1] if colour else None,
        entities=known.entities if len(known.entities) == faces else (None,) * faces,
        file=file,
        notes=tuple(notes),
    )


def _unless_twice(reading: _Reading, part: Part, product: Product, body: Body) -> Part:
    """A solid; as 'other', with a doubt, where an equal one stands in the same place already."""
    if part.kind != "solid" or body.box is None:
        return part
    box = Bnd_Box(gp_Pnt(*body.box[:3]), gp_Pnt(*body.box[3:])).Transformed(product.location.Transformation())
    key = (part.faces, *(round(value, 2) for value in box.Get()))
    equal = [first for first, other in reading.places.get(key, []) if same_solid(body, other)]
    reading.places.setdefault(key, []).append((part, body))
    if not equal:
        return part
    first = f"{equal[0].name or equal[0].id!r} ({equal[0].id})"
    note = say("part.twice", first=first)
    doubt = say("part.twice.doubt", part=f"{part.name or part.id!r} ({part.id})", first=first)
    reading.doubts.append(doubt)
    return replace(part, kind="other", solids=0, notes=(*part.notes, note))


def _check_bodies(reading: _Reading) -> None:
    """Raise when too few solids are left to review, or when the sizes make no sense."""
    solids = [part for part in reading.parts if part.kind == "solid"]
    odd = [part for part in reading.parts if part.kind == "other" and message_of(part.notes[-1]).key != "part.twice"]
    if len(solids) < 2 and odd:
        last = odd[0].notes[-1]
        code = "unsupported" if message_of(last).key == "part.triangles" else "unreadable"
        raise refused(code, "any.body", part=repr(odd[0].name or odd[0].id), notes=[last])
    if len(solids) < 2 and reading.damage:
        raise NotReviewed("unreadable", reading.damage[0])
    if not solids:
        raise refused("no-solid", "no-solid.sheets")
    reading.notes += check_scale(reading.sizes, reading.files[0].length_unit)
