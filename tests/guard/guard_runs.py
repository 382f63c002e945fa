"""Runs the command line as a user does, in a folder of his, and looks at what came of it."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]

AS_SCRIPT = "import sys; from seamcheck.cli import main; sys.argv[0] = 'seamcheck'; main()"
"""What the command ``seamcheck`` runs. It is started with -P: the first folder on a script's path is its own."""


def seamcheck(*args: object, cwd: Path, timeout: float = 900, **environment: str) -> subprocess.CompletedProcess:
    """The command ``seamcheck`` in a folder, with what it wrote."""
    command = [sys.executable, "-P", "-c", AS_SCRIPT, *map(str, args)]
    return run(command, cwd, timeout, {"PYTHONPATH": str(ROOT), **environment})


def run(command: list[str], cwd: Path, timeout: float, environment: dict[str, str]) -> subprocess.CompletedProcess:
    return subprocess.run(
        command, cwd=cwd, env=os.environ | environment, stdin=subprocess.DEVNULL, capture_output=True,
        timeout=timeout, check=False,
    )  # fmt: skip
