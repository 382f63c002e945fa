"""The parts of a shape of the CAD kernel, one after the other."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from OCP.TopExp import TopExp_Explorer


def explore(shape: Any, kind: Any, *outside: Any) -> Iterator[Any]:
    """All parts of a kind (a TopAbs) within a shape; ``outside`` of parts of another kind."""
    explorer = TopExp_Explorer(shape, kind, *outside)
    while explorer.More():
        yield explorer.Current()
        explorer.Next()
