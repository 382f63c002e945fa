"""Progress of one review on a terminal."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from rich.console import Console
from rich.progress import BarColumn, Progress, SpinnerColumn, TextColumn, TimeElapsedColumn


@contextmanager
def shown_progress(console: Console, name: str) -> Iterator[Callable[[str, float | None], None]]:
    """Show stage and share of a review; the line goes away at the end."""
    columns = (
        SpinnerColumn(),
        TextColumn("{task.description}"),
        BarColumn(bar_width=24),
        TimeElapsedColumn(),
    )
    with Progress(*columns, console=console, transient=True) as bar:
        task = bar.add_task(f"{name}: starting", total=None)

        def show(stage: str, share: float | None = None) -> None:
            bar.update(
                task, description=f"{name}: {stage}", total=None if share is None else 1.0, completed=share
            )

        yield show
