"""Small models to be damaged: sound ones, and ones that break a must-fix rule all round or at one place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

from builder import Model, Spec, build, circle, rounded_rectangle, spoil

BOX = Spec(track=rounded_rectangle(18, 14, 5), wall_height=6.0, cover_name="window lid", base_name="sensor housing")
RING = Spec(track=circle(9), wall_height=6.0, cover_name="capsule lid", base_name="capsule")


@dataclass(frozen=True, eq=False)
class Target:
    """A model as it is before the damage.

    Attributes
    ----------
    data : bytes of its STEP file
    model : its parts and its truth
    broken : the must-fix rules that it breaks
    """

    name: str
    data: bytes
    model: Model
    broken: frozenset[str]


def _plain(spec: Spec) -> Callable[[], tuple[Model, frozenset[str]]]:
    return lambda: (build(spec), frozenset())


def _spoiled(kind: str, spec: Spec, rule: str, **how: float) -> Callable[[], tuple[Model, frozenset[str]]]:
    return lambda: (spoil(kind, spec, **how)[0], frozenset({rule}))


MODELS: dict[str, Callable[[], tuple[Model, frozenset[str]]]] = {
    "box": _plain(BOX),
    "ring in inches": _plain(replace(RING, unit="in", cover_first=True, shift=(40.0, -7.0, 12.0))),
    "narrow rib": lambda: (build(replace(RING, rib_width=0.5)), frozenset({"rib-width"})),
    "interrupted rib": _spoiled("no-rib", BOX, "seam-open", length=2.0),
    # a part that may get lost takes the fault with it
    "shaded rib": _spoiled("shade", replace(BOX, turn=(25.0, 10.0, 40.0)), "beam-path", length=2.0),
}


def target(name: str, folder: Path) -> Target:
    model, broken = MODELS[name]()
    return Target(name, model.write(folder / f"{name}.step").read_bytes(), model, broken)
