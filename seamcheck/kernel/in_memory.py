"""Models that a program holds in memory: shapes of the CAD kernel, or of a library that wraps them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import Any

from OCP.TopoDS import TopoDS_Shape

from seamcheck.errors import UsageError
from seamcheck.kernel.write_step import write_bodies

_GREY = (0.7, 0.7, 0.7, 1.0)


def write_model(model: Any, target: Path) -> None:
    """Write a model from memory as STEP, in mm, so that a child process can read it.

    Parameters
    ----------
    model : TopoDS_Shape; an object with a ``wrapped`` TopoDS_Shape; an object whose ``vals()`` are such; an
        assembly that yields (shape, name, location, colour); a mapping name -> any of these, or a sequence
    target : file to write

    Raises
    ------
    UsageError : something in it is no shape
    """
    bodies = list(_bodies(model, ""))
    if not bodies:
        raise UsageError("The model in memory holds no shape.")
    named = [(name or f"part {i}", shape, colour) for i, (name, shape, colour) in enumerate(bodies, 1)]
    write_bodies(named, target, ("model from memory",))


def _bodies(model: Any, name: str) -> Iterator[tuple[str, Any, tuple[float, float, float, float]]]:
    """Name, placed shape and colour of everything in the model."""
    if isinstance(model, TopoDS_Shape):
        yield name, model, _GREY
    elif isinstance(getattr(model, "wrapped", None), TopoDS_Shape):
        yield name or str(getattr(model, "label", "") or ""), model.wrapped, _GREY
    elif callable(getattr(model, "vals", None)):
        for value in model.vals():
            yield from _bodies(value, name)
    elif hasattr(model, "children") and hasattr(model, "loc") and hasattr(model, "__iter__"):
        for shape, leaf, place, colour in model:
            moved = shape.wrapped.Moved(place.wrapped)
            yield leaf.rpartition("/")[2], moved, _GREY if colour is None else colour.toTuple()
    elif isinstance(model, Mapping):
        for key, value in model.items():
            yield from _bodies(value, str(key))
    elif isinstance(model, Iterable) and not isinstance(model, str | bytes):
        for value in model:
            yield from _bodies(value, name)
    else:
        raise UsageError(f"A model is a file, several files, or shapes of the CAD kernel; got {type(model).__name__}.")
