"""Runs the commands that a page of the docs prints and puts what they say below each, or checks that it stands there.

``.venv/bin/python docs/walk.py docs/prepare.md`` writes the page anew. A block of commands begins with ``$``; what
follows up to the next one is what was printed, and ``[exit code N]`` where that is not 0.
"""

from __future__ import annotations

import re
import shlex
import sys
import tempfile
from contextlib import chdir
from pathlib import Path

from click.testing import CliRunner

from seamcheck.cli.group import cli

HASH = re.compile(r"\b[0-9a-f]{12}\b")
"""The start of a file's SHA-256, which knows the second at which the file was written."""

BLOCK = re.compile(r"^```console\n(.*?)^```$", re.MULTILINE | re.DOTALL)


def walked(page: str) -> str:
    """The page with what its commands print now, run one after the other in an empty folder."""
    with tempfile.TemporaryDirectory(prefix="walk-") as folder, chdir(folder):
        return BLOCK.sub(lambda block: f"```console\n{_run(block[1])}```", page)


def _run(block: str) -> str:
    lines = []
    for line in block.splitlines():
        if line.startswith("$ "):
            lines += [line, *_printed(line[2:])]
    return "\n".join(lines) + "\n"


def _printed(command: str) -> list[str]:
    """What one command prints, to both streams as on a terminal.

    Nothing where it ends with ``> /dev/null``; its first lines where it ends with ``| head -n COUNT``.
    Hashes are left out.
    """
    said, _, target = command.partition(" > ")
    said, _, count = said.partition(" | head -n ")
    done = CliRunner().invoke(cli, shlex.split(said)[1:])
    if target:
        return []
    lines = [HASH.sub("...", line).rstrip() for line in done.output.splitlines()]
    code = [f"[exit code {done.exit_code}]"] if done.exit_code and not count else []
    return lines[: int(count)] if count else lines + code


def main() -> None:
    for name in sys.argv[1:]:
        page = Path(name)
        page.write_text(walked(page.read_text("utf-8")), "utf-8")


if __name__ == "__main__":
    main()
