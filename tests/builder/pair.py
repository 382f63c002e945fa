"""From a Spec to placed solids and truth."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from .solid import moved, swept_solid
from .spec import Spec, Truth
from .step import Named, write_step

CLEAR = (0.80, 0.90, 0.95, 0.4)
DARK = (0.12, 0.12, 0.13)


@dataclass(frozen=True, eq=False)
class Model:
    """Parts as (name, placed shape in mm, colour) in file order, with their truth."""

    parts: tuple[Named, ...]
    truth: Truth
    unit: str = "mm"

    def shape(self, name: str) -> Any:
        return next(shape for part, shape, _ in self.parts if part == name)

    def write(self, path: str | os.PathLike[str], schema: str = "AP214") -> Path:
        return write_step(path, self.parts, unit=self.unit, schema=schema)


def draw(spec: Spec) -> tuple[Any, Any]:
    """Cover and base in the drawing's own frame (rib top at z = 0, light along -z)."""
    return swept_solid(spec.track, spec.cover_chain()), swept_solid(spec.track, spec.base_chain())


def assemble(spec: Spec, cover: Any, base: Any, *others: Named, collapse: float = 0.4) -> Model:
    """Place drawn solids as the Spec says; ``others`` follow in the file."""
    named: list[Named] = [(spec.base_name, base, DARK), (spec.cover_name, cover, CLEAR)]
    if spec.cover_first:
        named.reverse()
    named += others
    placed = tuple((name, moved(shape, spec.matrix), colour) for name, shape, colour in named)
    return Model(placed, spec.truth(collapse), spec.unit)


def build(spec: Spec | None = None, collapse: float = 0.4) -> Model:
    """Cover and base of a Spec, placed, with truth."""
    spec = spec or Spec()
    return assemble(spec, *draw(spec), collapse=collapse)
