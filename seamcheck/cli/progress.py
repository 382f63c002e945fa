"""Progress of one review on a terminal."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from rich.console import Console
from rich.markup import escape
from rich.progress import Progress, SpinnerColumn, TextColumn, TimeElapsedColumn

from seamcheck.catalogue.notes import STAGES


@contextmanager
def shown_progress(console: Console, name: str) -> Iterator[Callable[..., None]]:
    """Show what is being done and for how long; the line goes away at the end."""
    columns = (SpinnerColumn("line"), TextColumn("{task.description}"), TimeElapsedColumn())
    with Progress(*columns, console=console, transient=True, refresh_per_second=5) as line:
        task = line.add_task(f"{escape(name)}: starting", total=None)

        def show(stage: str, *_: object) -> None:
            line.update(task, description=f"{escape(name)}: {STAGES.get(stage, stage)}")

        yield show
