"""Progress of a scan: a bar on a terminal, now and then a line elsewhere."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

import click

from seamcheck.cli.shared import make_console, tell

if TYPE_CHECKING:
    from seamcheck.scanning.run import Progress

LINE_EVERY_S = 10.0

_SHORT = {"fail": "broken", "attention": "attention", "pass": "within", "not-reviewed": "not reviewed"}


@contextmanager
def shown(quiet: bool) -> Iterator[Callable[[Progress], None]]:
    """Gives a function to call with the progress; writes to standard error."""
    console = make_console(stderr=True)
    if quiet:
        yield lambda progress: None
    elif console.is_terminal:
        with _bar(console) as show:
            yield show
    else:
        yield Lines()


class Lines:
    """A line every ten seconds, and where a stage ends."""

    def __init__(self, every_s: float = LINE_EVERY_S) -> None:
        self._every, self._next, self._stage = every_s, time.monotonic() + every_s, ""
        self._clock = Clock()

    def __call__(self, progress: Progress) -> None:
        if progress.note:
            tell(progress.note, err=True)
        now = time.monotonic()
        is_new = progress.stage != self._stage
        if is_new or now >= self._next:
            self._stage, self._next = progress.stage, now + self._every
            click.echo(said(progress, self._clock.at(progress)), err=True)


class Clock:
    """Rate and time left, from when the first review began."""

    def __init__(self) -> None:
        self._began = 0.0

    def at(self, progress: Progress) -> tuple[float, float] | None:
        """Reviews a minute, and seconds left; None as long as nothing can be said."""
        if progress.stage != "reviewing":
            return None
        self._began = self._began or time.monotonic()
        passed = time.monotonic() - self._began
        if progress.reviewed < 2 or passed < 1:
            return None
        left = (progress.to_review - progress.reviewed) * passed / progress.reviewed
        return 60 * progress.reviewed / passed, max(left, 0.0)


def said(progress: Progress, rate: tuple[float, float] | None) -> str:
    """One line."""
    if progress.stage == "looking":
        return f"looking: {progress.found} models found, {progress.looked} looked at"
    if progress.stage == "writing":
        return "writing the index"
    counts = ", ".join(f"{progress.verdicts[v]} {word}" for v, word in _SHORT.items() if progress.verdicts[v])
    line = f"reviewed {progress.reviewed} of {progress.to_review}"
    if rate is not None:
        line += f", {rate[0]:.0f} a minute, {time_text(rate[1])} left"
    return f"{line} ({counts})" if counts else line


def time_text(seconds: float) -> str:
    """'40 s', '12 min', '3 h 20 min'."""
    if seconds < 90:
        return f"{seconds:.0f} s"
    minutes = round(seconds / 60)
    return f"{minutes} min" if minutes < 90 else f"{minutes // 60} h {minutes % 60} min"


@contextmanager
def _bar(console: Any) -> Iterator[Callable[[Progress], None]]:
    from rich.progress import BarColumn, SpinnerColumn, TextColumn
    from rich.progress import Progress as Bar

    columns = (SpinnerColumn("line"), BarColumn(30), TextColumn("{task.description}"))
    clock = Clock()
    with Bar(*columns, console=console, transient=True, refresh_per_second=5) as bar:
        task = bar.add_task("looking", total=None)

        def show(progress: Progress) -> None:
            if progress.note:
                bar.console.print(progress.note, markup=False)
            is_counted = progress.stage == "reviewing" and progress.to_review > 0
            bar.update(
                task,
                description=said(progress, clock.at(progress)),
                total=progress.to_review if is_counted else None,
                completed=progress.reviewed,
            )

        yield show
