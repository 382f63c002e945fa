"""The command line within the process of the tests; what a process of its own proves goes through guard_runs.py."""

from __future__ import annotations

import contextlib
from pathlib import Path
from typing import Any

from click.testing import CliRunner, Result

from seamcheck.cli.group import cli


def shell(*words: object, cwd: Path | None = None, **more: Any) -> Result:
    """What ``seamcheck`` with these words prints and its exit code, run in a folder."""
    with contextlib.nullcontext() if cwd is None else contextlib.chdir(cwd):
        return CliRunner().invoke(cli, [str(word) for word in words], prog_name="seamcheck", **more)
