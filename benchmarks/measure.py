"""Running measurements: CPU seconds of child processes, the best of several, in one run one after the other."""

from __future__ import annotations

import json
import os
import resource
import subprocess
import sys
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path
from statistics import median
from types import MappingProxyType
from typing import Any

from seamcheck.isolation.limits import ONE_THREAD

ROOT = Path(__file__).resolve().parents[1]


@dataclass(frozen=True)
class Row:
    """One bar: what, the value measured, the bar, whether it holds, and the numbers behind it."""

    what: str
    value: float
    unit: str
    bar: str
    holds: bool
    behind: str = ""


def job(name: str, model: Path, number: float = 0.0, times: int = 1) -> dict[str, Any]:
    """What ``benchmarks.child`` found, of several times the one with the least CPU time.

    It runs with one thread of BLAS, as the child of a review does.
    """
    command = [sys.executable, "-m", "benchmarks.child", name, str(model), str(number)]
    return min((_json(command, ONE_THREAD) for _ in range(times)), key=lambda found: found["cpu"])


KERNEL_S = 0.65
"""CPU seconds of importing the CAD kernel on the machine that the bars in seconds mean."""


def factor(times: int = 2) -> float:
    """How many times as long this machine takes as the one that the bars mean: by the kernel's import, just now.

    Asked for every row anew: a machine that others use too is slower at one time than at another.
    """
    return float(job("kernel", Path(), times=times)["cpu"]) / KERNEL_S


PAIRS = 5
"""Measurements of a row that is told by their median, each between two imports of the kernel."""


def in_pairs(measure: Callable[[], float]) -> tuple[float, str]:
    """Median of several measurements in seconds of the machine that the bars mean, and what lies behind it.

    Each is divided by the factor of the imports right before and after it: on a machine that others use too, both are
    slowed by the same.
    """
    factors, found = [factor(1)], []
    for _ in range(PAIRS):
        found.append(measure())
        factors.append(factor(1))
    beside = [(before + after) / 2 for before, after in pairwise(factors)]
    values = sorted(value / times for value, times in zip(found, beside, strict=True))
    told = f"{values[0]:.3g} to {values[-1]:.3g} s in {PAIRS} pairs, factor {min(beside):.2f} to {max(beside):.2f}"
    return median(values), told


def within(what: str, value: float, bar: float, behind: str = "", unit: str = "s") -> Row:
    """A row whose bar is in seconds of the machine that the bars mean; ``value`` in seconds of this one."""
    times = factor()
    told = f"{value:.2f} s here, factor {times:.2f}" + (f"; {behind}" if behind else "")
    return Row(what, value / times, unit, f"<= {bar:g}", value / times <= bar, told)


def shell(*arguments: str, times: int = 1, cache: str = "") -> float:
    """Least CPU seconds of ``seamcheck ...``, children included."""
    cpus = []
    for _ in range(times):
        before = _spent()
        run([sys.executable, "-m", "seamcheck", *arguments], cache, (0, 1, 2) if arguments[0] == "scan" else (0, 1))
        cpus.append(_spent() - before)
    return min(cpus)


def loads_no_kernel(*arguments: str) -> bool:
    """Whether a command of seamcheck ends without the CAD kernel loaded."""
    code = (
        "import atexit, sys; atexit.register(lambda: print('KERNEL' if 'OCP' in sys.modules else 'NONE'));"
        f"from seamcheck.cli import main; sys.argv[1:] = {list(arguments)!r}; main()"
    )
    return run([sys.executable, "-c", code]).splitlines()[-1] == "NONE"


def run(
    command: list[str], cache: str = "", codes: tuple[int, ...] = (0, 1), more: Mapping[str, str] = MappingProxyType({})
) -> str:
    """Standard output of a command run in the project's folder, with a cache folder or none and more environment."""
    done = subprocess.run(
        command, cwd=ROOT, capture_output=True, text=True, check=False, env={**_environment(cache), **more}
    )
    if done.returncode not in codes:
        raise RuntimeError(f"{command} ended with {done.returncode}: {done.stderr[-2000:]}")
    return done.stdout


def _environment(cache: str) -> dict[str, str]:
    """With modules kept compiled, as they are wherever seamcheck is installed."""
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**kept, "SEAMCHECK_CACHE": cache}


def _json(command: list[str], more: Mapping[str, str]) -> dict[str, Any]:
    return json.loads(run(command, codes=(0,), more=more).splitlines()[-1])


def _spent() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime
