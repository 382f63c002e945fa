"""Files that a review can be written to: one line for each, used by every command that has a review.

To add one, write a function that takes a Review and returns text or bytes, and add its line here.
"""

from __future__ import annotations

import importlib
import sys
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from seamcheck.cli.shared import check_can_write, option, write_file

if TYPE_CHECKING:
    from seamcheck.report.review import Review


@dataclass(frozen=True, slots=True)
class Output:
    """One kind of file.

    Attributes
    ----------
    name : of the option, without dashes
    function : 'module:function', imported only when asked for; takes a Review, returns text or bytes
    what : for the help
    needs_view : whether the document must carry section outlines and display meshes
    """

    name: str
    function: str
    what: str
    needs_view: bool = False


OUTPUTS: tuple[Output, ...] = (
    Output("json", "seamcheck.report.write:as_json", "the review document, for CI, stores and other reports"),
)


def output_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """One option for each kind of file; '-' is standard output."""
    for output in reversed(OUTPUTS):
        command = option(
            f"--{output.name}",
            f"output_{output.name.replace('-', '_')}",
            metavar="FILE",
            type=click.Path(path_type=Path, allow_dash=True),
            section="Write to files ('-' is standard output)",
            help=f"Write {output.what}.",
        )(command)
    return command


class Writers:
    """The files that were asked for."""

    def __init__(self, options: Mapping[str, Any]) -> None:
        self.wanted = [
            (output, options[key])
            for output in OUTPUTS
            if options.get(key := f"output_{output.name.replace('-', '_')}") is not None
        ]
        if sum(str(path) == "-" for _, path in self.wanted) > 1:
            raise click.UsageError("Only one output can go to standard output ('-').")
        for _, path in self.wanted:
            if str(path) != "-":
                check_can_write(path)

    @property
    def needs_view(self) -> bool:
        return any(output.needs_view for output, _ in self.wanted)

    @property
    def takes_stdout(self) -> bool:
        return any(str(path) == "-" for _, path in self.wanted)

    def write(self, review: Review) -> list[Path]:
        """Write all of them; returns the files written."""
        written = []
        for output, path in self.wanted:
            module, _, name = output.function.partition(":")
            make: Callable[[Review], str | bytes] = getattr(importlib.import_module(module), name)
            content = make(review)
            if str(path) == "-":
                sys.stdout.buffer.write(content.encode() if isinstance(content, str) else content)
                sys.stdout.buffer.flush()
            else:
                write_file(path, content)
                written.append(path)
        return written
