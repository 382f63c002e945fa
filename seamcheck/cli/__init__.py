"""The command line: commands over library calls, each in a module of its own, loaded when it is asked for."""

from __future__ import annotations

import os
import sys

from seamcheck.cli.group import cli
from seamcheck.isolation.forked import allow_forks
from seamcheck.isolation.limits import ONE_THREAD

__all__ = ["cli", "main"]


def main() -> None:
    """Run the command line; exit with 0 within limits, 1 a limit is broken, 2 not reviewed or wrong use."""
    os.environ.update(ONE_THREAD)  # before anything loads numpy
    allow_forks()
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal that lacks a character shows '?', no traceback
    cli(prog_name="seamcheck")
