"""``python -m benchmarks.constants``: how many labelled cases each constant of recognition decides, as a table.

Every constant is tried on every drawn case. The costly steps of finding keep what they found: only those that a
constant touches are done again.
"""

from __future__ import annotations

import ast
import inspect
import re
import sys
import tempfile
import time
from collections.abc import Callable, Hashable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from contextlib import contextmanager
from functools import partial, wraps
from multiprocessing import get_context
from pathlib import Path
from types import ModuleType
from typing import Any

import click
import numpy as np
from msgspec import Struct
from msgspec.structs import asdict, replace
from shapely.geometry.base import BaseGeometry

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "tests"))

from builder.hard.tree import write_model
from builder.joints import JOINTS

from seamcheck.assembly import read_assembly
from seamcheck.assembly.parts import Assembly
from seamcheck.catalogue.message import Sentence
from seamcheck.errors import NotReviewed
from seamcheck.joint import candidates, constants, find_joints, join_pieces
from seamcheck.joint.contact import coverage, directions, near_surface
from seamcheck.joint.joint import Joint
from seamcheck.joint.light import column, inside, light_side
from seamcheck.joint.meeting import covered
from seamcheck.joint.outline import outline, shadow
from seamcheck.joint.patches import find_patches
from seamcheck.joint.profile import border_profile
from seamcheck.joint.regions import union_region
from seamcheck.kernel import Body
from seamcheck.kernel.common import common_volume
from seamcheck.kernel.distance import shape_distance
from seamcheck.settings.settings import Settings

STEPS: tuple[Callable[..., Any], ...] = (
    Body, near_surface, coverage, directions, find_patches, union_region, border_profile, light_side, column, inside,
    covered, candidates._bridged, outline, shadow, shape_distance, common_volume,
)  # fmt: skip
"""What takes long and hangs on its arguments and its module's constants alone."""
TABLE = Path(__file__).with_name("constants.md")
NOTHING, ENDLESS = 1e-9, 1000.0
NAMED = {"plug-010": ("p2", "p1"), "lid-between-two-walls": ("p1", "p2")}
"""Cases that are also asked with their cover and base named."""
SAME_LENGTH, SAME_LIGHT = 0.02, 0.05  # share, degrees: between two answers that are one
Answer = tuple[tuple[str, float, tuple[float, ...]], ...]
"""For each joint, or for the refusal: what is told, length of the seam in mm, direction of the light."""


def names() -> list[str]:
    """Every constant of recognition."""
    return [name for name in vars(constants) if name.isupper()]


def reasons() -> dict[str, set[str]]:
    """The cases that the reason of each constant names: the text right below it."""
    found: dict[str, set[str]] = {}
    waiting: list[str] = []
    for node in ast.parse(inspect.getsource(constants)).body:
        if isinstance(node, ast.Assign):
            targets = node.targets[0]
            waiting += [one.id for one in getattr(targets, "elts", [targets]) if isinstance(one, ast.Name)]
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            text = str(node.value.value)
            named = {case for case in JOINTS if re.search(rf"(?<![\w-]){case}(?![\w-])", text)}
            found |= dict.fromkeys(waiting, named)
            waiting = []
    return found


def changes(value: Any, step: float) -> tuple[list[Any], list[Any]]:
    """A constant smaller and larger by a share, of weights the values at which they stand; and without its rule.

    Without its rule a bound is nothing or endless, and a weight is always 1.
    """
    near = (1 - step, 1 + step)
    if not isinstance(value, tuple):
        return [f * value for f in near], [NOTHING * value, ENDLESS * value]
    *at, weights = value
    if isinstance(weights, tuple):
        (places,) = at
        return [(tuple(f * v for v in places), weights) for f in near], [(places, (1.0,) * len(weights))]
    return [(*(f * v for v in at), weights) for f in near], [(*at, 1.0)]


def users(name: str) -> list[ModuleType]:
    """The modules of recognition that use a constant."""
    return [m for key, m in sys.modules.items() if key.startswith("seamcheck.joint") and hasattr(m, name)]


@contextmanager
def changed(name: str, value: Any) -> Iterator[None]:
    """Another value of a constant in every module that uses it, for as long as the block runs."""
    modules, before = users(name), getattr(constants, name)
    try:
        for module in modules:
            setattr(module, name, value)
        yield
    finally:
        for module in modules:
            setattr(module, name, before)


def _remembered(function: Callable[..., Any], store: dict[Any, Any]) -> Callable[..., Any]:
    """A pure function that keeps its results for equal arguments and equal constants in its module."""
    module = sys.modules[function.__module__]
    used = [name for name in names() if hasattr(module, name)]
    if module is candidates:
        used = [name for name in used if name in function.__code__.co_names]

    @wraps(function)
    def told(*args: Any, **more: Any) -> Any:
        key = (function, _key((args, tuple(more.items()))), *(getattr(module, name) for name in used))
        if key not in store:
            store[key] = args, function(*args, **more)  # arguments are kept, so that no other takes their identity
        return store[key][1]

    return told


def _key(value: Any) -> Hashable:
    """What an argument is told by: arrays, shapes and records by what they hold, all else by equality or identity."""
    if isinstance(value, np.ndarray):
        return value.shape, value.tobytes()
    if isinstance(value, BaseGeometry):
        return value.wkb
    if isinstance(value, list | tuple):
        return tuple(map(_key, value))
    if isinstance(value, Struct):
        return tuple(map(_key, asdict(value).values()))
    return value if isinstance(value, str | int | float | None) else id(value)


@contextmanager
def remembering() -> Iterator[None]:
    """The costly steps of finding keep what they found, for as long as the block runs."""
    store: dict[Any, Any] = {}
    before = []
    for function in STEPS:
        kept = _remembered(function, store)
        for key, module in list(sys.modules.items()):
            if key.startswith("seamcheck.joint") and getattr(module, function.__name__, None) is function:
                before.append((module, function))
                setattr(module, function.__name__, kept)
    try:
        yield
    finally:
        for module, function in before:
            setattr(module, function.__name__, function)


def answer(assembly: Assembly, named: tuple[str, str] | None = None) -> Answer:
    """What is told of a model, and what with cover and base named besides."""
    settings = Settings() if named is None else replace(Settings(), cover=named[0], base=named[1])
    try:
        return tuple(_told(joint) for joint in find_joints(assembly, settings))
    except NotReviewed as refusal:
        text = refusal.message
        return ((text.message.key if isinstance(text, Sentence) else refusal.code, 0.0, (0.0, 0.0, 0.0)),)


def _told(joint: Joint) -> tuple[str, float, tuple[float, ...]]:
    left = f", {len(joint.left_out)} named" if joint.left_out else ""
    told = f"{joint.cover} on {joint.base}: {joint.kind}, {joint.modelled_state}{left}"
    return told, joint.region.length / 2, tuple(joint.beam.tolist())


def differ(one: Answer, other: Answer) -> bool:
    """Whether two answers are two: other joints or kinds, another light, a seam of another length, another reason."""
    if [told for told, *_ in one] != [told for told, *_ in other]:
        return True
    for (_, long, light), (_, length, beam) in zip(one, other, strict=True):
        turned = np.linalg.norm(np.subtract(light, beam))
        if abs(long - length) > SAME_LENGTH * long or turned > np.radians(SAME_LIGHT):
            return True
    return False


def deciding(name: str, chosen: Sequence[str], step: float, folder: Path) -> tuple[dict[str, int], float]:
    """The constants that decide one drawn case (0 where they are changed by a share, 1 where their rule goes), and
    the CPU seconds that this took."""
    start = time.process_time()
    assembly = join_pieces(read_assembly([write_model(folder / f"{name}.step", JOINTS[name]())]), Settings())
    asked = [None, NAMED[name]] if name in NAMED else [None]
    found: dict[str, int] = {}
    with remembering():
        usual = [answer(assembly, named) for named in asked]

        def decides(constant: str, value: Any) -> bool:
            with changed(constant, value):
                return any(differ(one, answer(assembly, named)) for one, named in zip(usual, asked, strict=True))

        for constant in chosen:
            for far, values in enumerate(changes(getattr(constants, constant), step)):
                if constant not in found and any(decides(constant, value) for value in values):
                    found[constant] = far
    return found, time.process_time() - start


@click.command()
@click.option("--only", multiple=True, help="Drawn cases whose name begins so; nothing is written then.")
@click.option("--constant", "chosen", multiple=True, help="Constants; default: all. Nothing is written then.")
@click.option("--step", default=0.5, show_default=True, help="Share by which a constant is made smaller and larger.")
@click.option("--every", default=0, help="Every so manieth case is tried on all constants besides; 1: all cases.")
@click.option("--jobs", default=2, show_default=True)
def main(only: Sequence[str], chosen: Sequence[str], step: float, every: int, jobs: int) -> None:
    """Say for each constant which labelled cases it decides, and write the table beside this module."""
    tried = list(chosen) or names()
    said = reasons()
    others = set() if not every else set(list(JOINTS)[::every])
    asked = {
        case: [name for name in tried if case in others or only or case in said[name]]
        for case in JOINTS
        if not only or case.startswith(tuple(only))
    }
    cases = [case for case, some in asked.items() if some]
    decided: dict[str, tuple[list[str], list[str]]] = {name: ([], []) for name in tried}
    seconds = 0.0
    with tempfile.TemporaryDirectory() as scratch, ProcessPoolExecutor(jobs, mp_context=get_context("spawn")) as pool:
        try_one = partial(deciding, step=step, folder=Path(scratch))
        for case, (found, spent) in zip(cases, pool.map(try_one, cases, map(asked.get, cases)), strict=True):
            seconds += spent
            click.echo(f"{case}: {', '.join(found)} ({spent:.1f} s)")
            for name, far in found.items():
                decided[name][far].append(case)
    lines = [
        _HEAD.format(
            step=100 * step,
            option=f" --every {every}" if every else "",
            more=f" and on {len(others)} others" if every else "",
        ),
        f"| constant | value | {100 * step:.0f} % | its rule | cases |",
        "|---|---|---|---|---|",
    ]
    for name, (near, far) in decided.items():
        named = near + far
        told = ", ".join(named[:_TOLD]) + (", ..." if len(named) > _TOLD else "")
        lines.append(f"| `{name}` | {getattr(constants, name)} | {len(near)} | {len(far)} | {told} |")
    click.echo("\n".join([*lines, f"{seconds:.0f} s of CPU"]))
    if not only and not chosen:
        TABLE.write_text("\n".join(lines) + "\n", encoding="utf-8")


_TOLD = 6
_HEAD = """# What decides recognition

Made by `python -m benchmarks.constants{option}`: each number of `joint/constants.py` is changed on the drawn cases that
its reason there names{more}. A case is decided by it where this changes the joints, a kind, the light, the state in
which the model is drawn, the seam's length by more than 2 %, or the reason of a refusal. `--every 1` tries all cases.

- {step:.0f} %: cases that it decides where it is {step:.0f} % smaller or larger (of a weight the values where it is);
- its rule: further cases that change where the rule goes: the bound nothing or endless, the weight always 1.
"""

if __name__ == "__main__":
    main()
