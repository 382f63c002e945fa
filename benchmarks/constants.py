"""``python -m benchmarks.constants``: how many labelled cases each constant of recognition decides, as a table.

Constants that only weigh readings are tried on every case. For those that count before (which faces are bands at all)
a case must be looked at anew, which takes long: they are tried on the cases that their text in
``joint/constants.py`` names and on every fifth of the others; the table says on how many.
"""

from __future__ import annotations

import ast
import inspect
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
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
from seamcheck.joint.find import Enumerated, look
from seamcheck.joint.names import Names
from seamcheck.settings.settings import Settings

OF_FINDING = {
    "LARGEST_GAP", "LARGEST_OVERLAP", "NEAR", "LEAST_SHARE", "BAND_SHARE", "NARROWEST", "WIDEST", "WIDEST_LAP",
    "SAME_LEVEL", "SAME_LEVEL_WIDTHS", "LONGEST_DROP", "FALLS", "FREE_ENOUGH", "THIN", "OPAQUE", "CLEARLY_THINNER",
    "ON_NORMAL", "SMALL", "BRIDGED",
}  # fmt: skip
"""Constants that count before readings are weighed: for these a case is looked at anew."""
TABLE = Path(__file__).with_name("constants.md")
OF_THE_OTHERS = 5


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


@dataclass(frozen=True)
class Case:
    """A drawn case on disk, and the ways to read it; None where there is nothing to read."""

    name: str
    path: Path
    looked: Enumerated | None = None

    def seen(self) -> Case:
        """The case, looked at with the constants of now."""
        try:
            return replace(self, looked=look(join_pieces(read_assembly([self.path]), Settings()), Settings()))
        except NotReviewed:
            return replace(self, looked=None)

    def answer(self) -> str:
        """The joints as cover, base and kind; or why there is none."""
        if self.looked is None:
            return "nothing to read"
        looked = self.looked
        weighed = [replace(r, evidence=weigh(r, looked.bodies, looked.meetings, looked.named)) for r in looked.readings]
        chosen = choose(weighed, looked.bodies, looked.parts, _Ids())
        if chosen.doubt is not None:
            return "ambiguous"
        return " + ".join(sorted(f"{r.cover} on {r.base}: {r.candidate.kind}" for r in chosen.readings)) or "none"


class _Ids(Names):
    """Parts by their ids: no sentence is looked at here."""

    def __init__(self) -> None:
        pass

    def __call__(self, ident: str) -> str:
        return ident


def texts() -> dict[str, str]:
    """What is said of each constant in their module: the text right below it."""
    found: dict[str, str] = {}
    waiting: list[str] = []
    for node in ast.parse(inspect.getsource(constants)).body:
        if isinstance(node, ast.Assign):
            targets = node.targets[0]
            waiting += [t.id for t in getattr(targets, "elts", [targets]) if isinstance(t, ast.Name)]
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            found |= dict.fromkeys(waiting, str(node.value.value))
            waiting = []
    return found


def tried_on(name: str, cases: Sequence[Case]) -> list[Case]:
    """The cases on which a constant is tried."""
    if name not in OF_FINDING:
        return list(cases)
    said = texts().get(name, "")
    told = [case for case in cases if case.name in said]
    return [*told, *[case for case in cases if case not in told][::OF_THE_OTHERS]]


def decided(name: str, step: float, cases: Sequence[Case], usual: dict[str, str]) -> list[str]:
    """Cases whose answer changes where a constant is made smaller or larger by a share."""
    found = set()
    for factor in (1 - step, 1 + step):
        with changed(name, factor):
            for case in cases:
                if case.name not in found:
                    told = case.seen().answer() if name in OF_FINDING else case.answer()
                    if told != usual[case.name]:
                        found.add(case.name)
    return sorted(found)


@click.command()
@click.option("--only", multiple=True, help="Drawn cases whose name begins so; nothing is written then.")
@click.option("--constant", "chosen", multiple=True, help="Constants; default: all. Nothing is written then.")
@click.option("--step", default=0.5, show_default=True, help="Share by which a constant is made smaller and larger.")
def main(only: Sequence[str], chosen: Sequence[str], step: float) -> None:
    """Say for each constant which labelled cases it decides, and write the table beside this module."""
    start = time.process_time()
    with tempfile.TemporaryDirectory() as scratch:
        cases = [
            Case(name, write_model(Path(scratch) / f"{name}.step", draw())).seen()
            for name, draw in JOINTS.items()
            if not only or name.startswith(tuple(only))
        ]
        usual = {case.name: case.answer() for case in cases}
        lines = [_HEAD.format(step=100 * step), "| constant | value | decides | of | cases |", "|---|---|---|---|---|"]
        for name in chosen or names():
            tried = tried_on(name, cases)
            found = decided(name, step, tried, usual)
            told = ", ".join(found[:6]) + (", ..." if len(found) > 6 else "")
            lines.append(f"| `{name}` | {getattr(constants, name)} | {len(found)} | {len(tried)} | {told} |")
            click.echo(lines[-1])
    click.echo(f"{time.process_time() - start:.0f} s of CPU")
    if not only and not chosen:
        TABLE.write_text("\n".join(lines) + "\n", encoding="utf-8")


_HEAD = """# What decides recognition

Made by `python -m benchmarks.constants`: each number of `joint/constants.py` (where it stands with its reason) is
made {step:.0f} % smaller and larger; a case is decided by it where the joints or their kinds become others. Numbers
that count before readings are weighed are tried on the cases that their text names and on every fifth of the others.
"""

if __name__ == "__main__":
    main()
