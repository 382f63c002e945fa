"""``python -m benchmarks.constants``: how many labelled cases each constant of recognition decides, as a table."""

from __future__ import annotations

import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from types import ModuleType
from typing import Any

import click

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "tests"))

from builder.hard.tree import write_model
from builder.joints import JOINTS

from seamcheck.assembly import read_assembly
from seamcheck.errors import NotReviewed
from seamcheck.joint import constants, join_pieces
from seamcheck.joint.choose import choose
from seamcheck.joint.evidence import weigh
from seamcheck.joint.find import Looked, look
from seamcheck.joint.names import Names
from seamcheck.settings.settings import Settings

OF_FINDING = {
    "LARGEST_GAP", "LARGEST_OVERLAP", "NEAR", "LEAST_SHARE", "BAND_SHARE", "NARROWEST", "WIDEST", "WIDEST_LAP",
    "SAME_LEVEL", "SAME_LEVEL_WIDTHS", "LONGEST_DROP", "FALLS", "FREE_ENOUGH", "THIN", "OPAQUE", "CLEARLY_THINNER",
    "ON_NORMAL", "SMALL", "BRIDGED",
}  # fmt: skip
"""Constants that count before readings are weighed: for these every case is looked at anew, which takes long."""


def names() -> list[str]:
    """Every constant of recognition."""
    return [name for name in vars(constants) if name.isupper()]


def scaled(value: Any, factor: float) -> Any:
    """A constant times a factor; of weights the values at which they stand, not the weights themselves."""
    if isinstance(value, tuple) and isinstance(value[0], tuple):
        return (tuple(factor * v for v in value[0]), *value[1:])
    if isinstance(value, tuple):
        return (*(factor * v for v in value[:-1]), value[-1])
    return factor * value


@contextmanager
def changed(name: str, factor: float) -> Iterator[None]:
    """A constant scaled in every module that uses it, for as long as the block runs."""
    users: list[ModuleType] = [
        module for key, module in sys.modules.items() if key.startswith("seamcheck.joint") and hasattr(module, name)
    ]
    before = getattr(constants, name)
    try:
        for module in users:
            setattr(module, name, scaled(before, factor))
        yield
    finally:
        for module in users:
            setattr(module, name, before)


def looked_at(path: Path) -> Looked | None:
    try:
        return look(join_pieces(read_assembly([path]), Settings()), Settings())
    except NotReviewed:
        return None


def answer(looked: Looked | None, path: Path) -> str:
    """The joints as cover, base and kind; or why there is none."""
    if looked is None:
        return "nothing near"
    shown = Names(read_assembly([path]), looked.bodies)
    readings = [replace(r, evidence=weigh(r, looked.bodies, looked.meetings, looked.named)) for r in looked.readings]
    chosen = choose(readings, looked.bodies, looked.parts, shown)
    if chosen.doubt is not None:
        return "ambiguous"
    return " + ".join(sorted(f"{r.cover} on {r.base}: {r.candidate.kind}" for r in chosen.readings)) or "none"


def decided(
    name: str, step: float, paths: dict[str, Path], seen: dict[str, Looked | None], usual: dict[str, str],
    again: Callable[[Path], Looked | None],
) -> list[str]:  # fmt: skip
    """Cases whose answer changes where a constant is made smaller or larger by a share."""
    found = set()
    for factor in (1 - step, 1 + step):
        with changed(name, factor):
            for case, path in paths.items():
                looked = again(path) if name in OF_FINDING else seen[case]
                if answer(looked, path) != usual[case]:
                    found.add(case)
    return sorted(found)


@click.command()
@click.option("--only", multiple=True, help="Drawn cases whose name begins so.")
@click.option("--constant", "chosen", multiple=True, help="Constants; default: all that weigh readings.")
@click.option("--step", default=0.5, show_default=True, help="Share by which a constant is made smaller and larger.")
def main(only: Sequence[str], chosen: Sequence[str], step: float) -> None:
    """Say for each constant which labelled cases it decides."""
    with tempfile.TemporaryDirectory() as scratch:
        paths = {
            name: write_model(Path(scratch) / f"{name}.step", case())
            for name, case in JOINTS.items()
            if not only or name.startswith(tuple(only))
        }
        seen = {name: looked_at(path) for name, path in paths.items()}
        usual = {name: answer(seen[name], path) for name, path in paths.items()}
        click.echo(f"| constant | value | decides of {len(paths)} | cases |\n|---|---|---|---|")
        for name in chosen or [name for name in names() if name not in OF_FINDING]:
            cases = decided(name, step, paths, seen, usual, looked_at)
            told = ", ".join(cases[:6]) + (", ..." if len(cases) > 6 else "")
            click.echo(f"| `{name}` | {getattr(constants, name)} | {len(cases)} | {told} |")


if __name__ == "__main__":
    main()
