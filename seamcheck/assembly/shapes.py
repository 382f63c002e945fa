"""The parts of a shape of the CAD kernel, one after the other."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from OCP.TopExp import TopExp, TopExp_Explorer
from OCP.TopTools import TopTools_IndexedMapOfShape


def explore(shape: Any, kind: Any, *outside: Any) -> Iterator[Any]:
    """All parts of a kind (a TopAbs) within a shape; ``outside`` of parts of another kind."""
    explorer = TopExp_Explorer(shape, kind, *outside)
    while explorer.More():
        yield explorer.Current()
        explorer.Next()


def different(shape: Any, kind: Any) -> tuple[Any, list[Any]]:
    """A map of the different parts of one kind (a TopAbs), and all of them in its order."""
    found = TopTools_IndexedMapOfShape()
    TopExp.MapShapes_s(shape, kind, found)
    return found, [found.FindKey(number) for number in range(1, found.Extent() + 1)]
