"""``seamcheck report``: reports from a review document that was written before."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import click

from seamcheck.cli import ci
from seamcheck.cli.outputs import Writers, output_options
from seamcheck.cli.shared import SectionedCommand, one_sentence, option, show_review, tell


@click.command(cls=SectionedCommand, name="report", short_help="Make reports from a review document.")
@click.argument("document", type=click.Path(path_type=Path, allow_dash=True))
@output_options
@option(
    "--model", "models", metavar="FILE", multiple=True, type=click.Path(path_type=Path),
    section="Write to files ('-' is standard output)",
    help="The reviewed model, which --step reads again and outputs for CI name. Repeat it for separate files, in "
    "their order.",
)  # fmt: skip
@ci.ci_options
@option("--quiet", "-q", is_flag=True, section="Show", help="Only the verdict, in one line.")
@option(
    "--verbose", "-v", is_flag=True, section="Show", help="All tables: quantities, limits, places, questions to ask."
)
@one_sentence
def command(document: Path, models: tuple[Path, ...], quiet: bool, verbose: bool, **options: Any) -> None:
    """Show a review document again, and make other reports from it; nothing is measured again.

    \b
    seamcheck report review.json
    seamcheck report review.json --html review.html

    Sections and 3-D pictures need a document written with --with-view.
    """
    from seamcheck.document.read import read_file, read_stream
    from seamcheck.report.review import Review

    writers = Writers(options, models)
    is_piped = str(document) == "-"
    review = Review(read_stream(sys.stdin.buffer, "The text") if is_piped else read_file(document))
    review = ci.held_against(review, options["baseline"])
    if not writers.takes_stdout:
        show_review(review.document, quiet, verbose, writers.voice)
        ci.tell_baseline(review, quiet)
    for line in writers.write(review.document):
        if not quiet:
            tell(line, err=writers.takes_stdout)
    ci.annotate(options["annotations"], [ci.reviewed(review, models)], err=writers.takes_stdout)
    raise SystemExit(ci.exit_code(review, strict=False))
