"""What ``review`` and ``report`` share for continuous integration: a baseline, and annotations."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from seamcheck.cli.shared import option

if TYPE_CHECKING:
    from seamcheck.report.ci.reviews import Reviewed
    from seamcheck.report.review import Review

CI = "Continuous integration"


def ci_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """--baseline and --annotations."""
    command = option(
        "--annotations", type=click.Choice(["plain", "workflow"]), section=CI,
        help="Print a line for each finding: plain as compilers do (FILE:LINE: error: ...), or workflow, as commands "
            "to the CI host (::error file=...::...).",
    )(command)  # fmt: skip
    return option(
        "--baseline", metavar="REVIEW", type=click.Path(path_type=Path), section=CI,
        help="Earlier review document: findings that are already in it and have not become worse are known; only new "
            "or worse ones set the exit code to 1.",
    )(command)  # fmt: skip


def each_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """--each and --changed-since."""
    command = option(
        "--accept", multiple=True, metavar="REASON", section=CI,
        help="With --each: a reason for not being reviewed that leaves the exit code at 0, such as single-part; 'any' "
        "for all. Repeat it for more.",
    )(command)  # fmt: skip
    command = option(
        "--changed-since", metavar="REV", section=CI,
        help="As --each, but review only models that changed since the git revision REV, themselves or their "
        "seamcheck.toml.",
    )(command)  # fmt: skip
    return option(
        "--each", is_flag=True, section=CI,
        help="Review every MODEL on its own, and every STEP file below a folder. --sarif, --junit, --markdown and "
        "--annotations hold all of them; every other output becomes a folder with a file for each model, and so "
        "does --baseline.",
    )(command)  # fmt: skip


def held_against(review: Review, baseline: Path | None) -> Review:
    """The review with what a baseline says about its findings."""
    if baseline is None:
        return review
    from seamcheck.comparison.baseline import with_baseline
    from seamcheck.document.read import read_file
    from seamcheck.report.review import Review

    return Review(with_baseline(review.document, read_file(baseline), baseline.name), review.traceback)


def tell_baseline(review: Review, quiet: bool) -> None:
    """Print what the baseline says, where there is one; with ``quiet`` its sums alone."""
    from seamcheck.comparison.baseline import baseline_lines
    from seamcheck.report.ci.escape import one_line

    lines = list(baseline_lines(review.document))
    if quiet:
        lines = lines[:1]
    elif lines:
        lines = ["", *lines]
    for line in lines:
        click.echo(one_line(line))


def exit_code(review: Review, strict: bool) -> int:
    """0 within limits or known from the baseline, 1 a limit is broken, 2 not reviewed."""
    from seamcheck.comparison.baseline import exit_code

    return exit_code(review.document, strict)


def annotate(style: str | None, reviews: Sequence[Reviewed], err: bool) -> None:
    """Print annotations where they were asked for; ``err``: to standard error."""
    if style is None:
        return
    from seamcheck.report.ci.annotations import render

    click.echo(render(style, reviews), nl=False, err=err)


def reviewed(review: Review, models: Sequence[Path]) -> Reviewed:
    """A review with the paths of its files as outputs for CI name them."""
    from seamcheck.report.ci.reviews import Reviewed

    return Reviewed(review.document, tuple(shown(path) for path in models))


def shown(path: Path) -> Path:
    """A path from the current folder on where it lies below that, else as it was given."""
    try:
        return path.absolute().relative_to(Path.cwd())
    except ValueError:
        return path
