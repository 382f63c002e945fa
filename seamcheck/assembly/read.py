"""From files to an Assembly: one Part per placed body."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import Any

from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
from OCP.TopAbs import TopAbs_FACE, TopAbs_SHELL, TopAbs_SOLID
from OCP.TopExp import TopExp_Explorer

from seamcheck.assembly.colours import Colours
from seamcheck.assembly.kernel_reader import transfer
from seamcheck.assembly.parts import Assembly, ModelFile, Part
from seamcheck.assembly.products import Product, placed_products
from seamcheck.assembly.source import read_source
from seamcheck.errors import NotReviewed


def read_files(paths: Sequence[Path], progress: Callable[[str], None]) -> Assembly:
    """All placed bodies of the files, in mm, in one frame."""
    files: list[ModelFile] = []
    parts: list[Part] = []
    for index, path in enumerate(paths):
        source = read_source(path)
        document = transfer(source.name, source.data, False, progress)
        files.append(ModelFile(source.name, source.sha256, "", ""))
        colours = Colours(document)
        for product in placed_products(document):
            for kind, body in bodies(product.shape):
                parts.append(_part(product, kind, body, colours, len(parts) + 1, index))
    if not parts:
        raise NotReviewed("empty", "The file holds no bodies.")
    return Assembly(tuple(files), tuple(parts))


def bodies(shape: Any) -> Iterator[tuple[str, Any]]:
    """The solids of a shape, then its shells outside solids, then its loose faces, each with its kind."""
    for solid in _explore(shape, TopAbs_SOLID):
        yield "solid", solid
    for shell in _explore(shape, TopAbs_SHELL, TopAbs_SOLID):
        yield "sheet", shell
    for face in _explore(shape, TopAbs_FACE, TopAbs_SHELL):
        yield "sheet", face


def _explore(shape: Any, kind: Any, *outside: Any) -> Iterator[Any]:
    explorer = TopExp_Explorer(shape, kind, *outside)
    while explorer.More():
        yield explorer.Current()
        explorer.Next()


def _part(product: Product, kind: str, body: Any, colours: Colours, number: int, file: int) -> Part:
    notes: list[str] = []
    move = product.location.Transformation()
    if move.IsNegative() or abs(move.ScaleFactor() - 1.0) > 1e-9:  # a location can't hold these
        placed = BRepBuilderAPI_Transform(body, move, True).Shape()
        notes.append("Placed mirrored or scaled.")
    else:
        placed = body.Moved(product.location)
    colour = (
        product.instance_colour
        or colours.of_shape(body)
        or colours.of_most_faces(body)
        or colours.of_label(product.label)
    )
    return Part(
        id=f"p{number}",
        name=product.path[-1],
        path=product.path,
        kind=kind,
        shape=placed,
        solids=int(kind == "solid"),
        faces=sum(1 for _ in _explore(placed, TopAbs_FACE)),
        colour=colour[0] if colour else None,
        transparency=colour[1] if colour else None,
        file=file,
        notes=tuple(notes),
    )
