"""``seamcheck compare``: two revisions of a model."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from seamcheck.catalogue.voice import Voice, speaking
from seamcheck.cli import review as one
from seamcheck.cli.ci import CI
from seamcheck.cli.outputs import voice_of, voice_options, written
from seamcheck.cli.shared import (
    SectionedCommand,
    SectionedOption,
    file_options,
    one_sentence,
    option,
    run_limits,
    show,
    tell,
    wanted_files,
    write_file,
)

if TYPE_CHECKING:
    from seamcheck.comparison.compare import Comparison

WRITE = "Write to files ('-' is standard output)"

OUTPUTS = {
    "json": ("seamcheck.document.plain:to_json", "the comparison document, for other programs"),
    "html": ("seamcheck.comparison.html.page:render_html", "a page to read and send, old beside new"),
    "markdown": ("seamcheck.comparison.markdown:render_markdown", "a summary for a job's page or a review"),
}
"""Kind of file -> what makes it of the comparison document, and its help."""


def settings_options(command: Any) -> Any:
    """Roles, limits and all other settings of a review: the options of ``seamcheck review`` itself."""
    own = (one.SHOW, one.RUN, WRITE, CI)
    for parameter in reversed(one.command.params):
        if isinstance(parameter, SectionedOption) and parameter.section not in own:
            command.__click_params__ = [*getattr(command, "__click_params__", []), parameter]
    return command


@click.command(cls=SectionedCommand, name="compare", short_help="Compare two revisions of a model.")
@click.argument("old", type=click.Path(path_type=Path))
@click.argument("new", type=click.Path(path_type=Path))
@file_options({name: what for name, (_, what) in OUTPUTS.items()}, WRITE, allow_dash=True)
@settings_options
@voice_options("terminal, --html and --markdown")
@option("--quiet", "-q", is_flag=True, section=one.SHOW, help="Only the result, in one line.")
@option(
    "--strict",
    is_flag=True,
    section=one.SHOW,
    help="Exit with 1 also for new or worse findings that ask for attention.",
)
@run_limits(one.RUN, "each review")
@option("--debug", is_flag=True, section=one.RUN, help="On an error show the traceback.")
@one_sentence
def command(
    old: Path,
    new: Path,
    settings_file: Path | None,
    no_settings_file: bool,
    quiet: bool,
    strict: bool,
    time_limit: float | None,
    memory_limit: float | None,
    debug: bool,
    **options: Any,
) -> None:
    """Compare two revisions: findings fixed, new and remaining, what changed along the seam, what moved.

    OLD and NEW are models (STEP) or review documents (JSON), in any combination. Models are reviewed first, both with
    the same settings: the nearest seamcheck.toml beside or above NEW, unless options say otherwise. Places are
    compared by position, whatever the order of parts, faces and stations; a model that was moved or turned as a
    whole is aligned first.

    \b
    seamcheck compare housing-r1.step housing-r2.step
    seamcheck compare review-r1.json housing-r2.step --html changes.html

    For a model in separate files write its review first: seamcheck review lid.step case.step --json r1.json

    Exit code: 0 nothing worse, 1 a must-fix finding is new or worse, 2 not compared or wrong use.
    """
    from seamcheck.isolation.loading import load_little

    load_little()
    from seamcheck.comparison import text
    from seamcheck.comparison.compare import compare, read_if_document
    from seamcheck.comparison.document import worse
    from seamcheck.comparison.language import spoken_comparison
    from seamcheck.errors import UsageError
    from seamcheck.pipeline import settings_for

    wanted = wanted_files(options, OUTPUTS, (old, new), "what is compared")
    models = [path for path in (new, old) if read_if_document(path) is None]
    if not models and (settings_file is not None or options["answers_file"] or one.changes_of(options)):
        raise UsageError(
            "Both are review documents: nothing is reviewed here, so settings and limits can't be changed. Review the "
            "models again, or compare the models themselves."
        )
    settings = one.with_options(settings_for(models, settings_file, not no_settings_file), options)
    with one._progress((old, new)) as progress:
        result = compare(
            old, new, settings, progress=progress, time_limit=time_limit, memory_limit=memory_limit,
            with_view="html" in wanted,
        )  # fmt: skip
    takes_stdout = any(str(path) == "-" for path in wanted.values())
    voice = voice_of(options)
    if not takes_stdout:
        with speaking(voice):
            told = spoken_comparison(result.document)
            show(text.one_line(told) if quiet else text.full_report(told))
    for name, path in wanted.items():
        content = _make(name, result, voice)
        if str(path) == "-":
            click.echo(content, nl=False)
        else:
            write_file(path, content)
            if not quiet:
                tell(written(path, voice), err=takes_stdout)
    counted = ("must-fix", "attention") if strict else ("must-fix",)
    is_worse = result.exit_code == 0 and bool(worse(result.document["findings"], counted))
    raise SystemExit(1 if is_worse else result.exit_code)


def _make(name: str, result: Comparison, voice: Voice) -> str:
    import importlib

    from seamcheck.comparison.language import spoken_comparison

    module, _, function = OUTPUTS[name][0].partition(":")
    make = getattr(importlib.import_module(module), function)
    with speaking(voice if name != "json" else Voice()):
        told = spoken_comparison(result.document)
        content: str = make(told, result.overlays) if name == "html" else make(told)
    return content
