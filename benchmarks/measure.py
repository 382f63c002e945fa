"""Running measurements: CPU seconds of child processes, the best of several, in one run one after the other."""

from __future__ import annotations

import json
import os
import resource
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Any

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
    """What ``benchmarks.child`` found, of several times the one with the least CPU time."""
    command = [sys.executable, "-m", "benchmarks.child", name, str(model), str(number)]
    return min((_json(command) for _ in range(times)), key=lambda found: found["cpu"])


def shell(*arguments: str, times: int = 1) -> tuple[float, float]:
    """Least wall and CPU seconds of ``seamcheck ...``, children included."""
    walls, cpus = [], []
    for _ in range(times):
        before, start = _spent(), time.perf_counter()
        run([sys.executable, "-m", "seamcheck", *arguments])
        walls.append(time.perf_counter() - start)
        cpus.append(_spent() - before)
    return min(walls), min(cpus)


def loads_no_kernel(*arguments: str) -> bool:
    """Whether a command of seamcheck ends without the CAD kernel loaded."""
    code = (
        "import atexit, sys; atexit.register(lambda: print('KERNEL' if 'OCP' in sys.modules else 'NONE'));"
        f"from seamcheck.cli import main; sys.argv[1:] = {list(arguments)!r}; main()"
    )
    return run([sys.executable, "-c", code]).splitlines()[-1] == "NONE"


def run(command: list[str]) -> str:
    """Standard output of a command run in the project's folder; its exit code may be 0 or 1."""
    done = subprocess.run(
        command, cwd=ROOT, capture_output=True, text=True, check=False, env={**os.environ, "SEAMCHECK_CACHE": ""}
    )
    if done.returncode not in (0, 1):
        raise RuntimeError(f"{command} ended with {done.returncode}: {done.stderr[-2000:]}")
    return done.stdout


def _json(command: list[str]) -> dict[str, Any]:
    return json.loads(run(command).splitlines()[-1])


def _spent() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime
