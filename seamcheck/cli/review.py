"""``seamcheck review``: one model from file to verdict."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import click
from msgspec.structs import replace

from seamcheck.cli import ci
from seamcheck.cli.outputs import Writers, output_options
from seamcheck.cli.shared import (
    SectionedCommand,
    make_console,
    one_sentence,
    option,
    read_day,
    read_pairs,
    run_limits,
    show_review,
    tell,
    tell_unused_cache,
)
from seamcheck.errors import UsageError

if TYPE_CHECKING:
    from seamcheck.report.review import Review
    from seamcheck.settings.answers import Answers
    from seamcheck.settings.settings import Settings

ROLES = "Roles and beam (found in the model if not given)"
LIMITS = "Limits (these override seamcheck.toml and the defaults)"
MACHINE = "Scanner, clamp, load and tolerances (these override seamcheck.toml; what is given nowhere is not evaluated)"
SHOW = "Show"
RUN = "Run"


@click.command(cls=SectionedCommand, name="review", short_help="Review the weld seam of one assembly.")
@click.argument("models", nargs=-1, required=True, metavar="MODEL...", type=click.Path(path_type=Path))
@option("--cover", metavar="PART", section=ROLES, help="Name or id of the part that transmits the light.")
@option("--base", metavar="PART", section=ROLES, help="Name or id of the part below the seam.")
@option("--beam", metavar="X,Y,Z", section=ROLES, help="Beam direction, from cover into base; also '-z'.")
@option("--collapse", metavar="MM", section=LIMITS, help="Planned collapse of the rib. [default: 0.4]")
@option(
    "--limit", "limits", multiple=True, metavar="RULE.NAME=VALUE", section=LIMITS,
    help="A limit, such as rib-width.min=0.7 or cover-thickness.max='0.1 in'. Repeat it for more. `seamcheck "
    "explain` lists all of them.",
)  # fmt: skip
@option(
    "--severity", "severities", multiple=True, metavar="RULE=SEVERITY", section=LIMITS,
    help="must-fix, attention, note or off, such as corner-radius=note. Repeat it for more.",
)  # fmt: skip
@option(
    "--scanner", "scanners", multiple=True, metavar="NAME=VALUE", section=MACHINE,
    help="Where the beam comes from: distance=300 (mm, from the mirrors' pivot to the cover's top) or "
    "telecentric=true; also axis=X,Y,Z, half-angle=DEGREES, index=N. Repeat it for more.",
)  # fmt: skip
@option(
    "--clamp", "clamps", multiple=True, metavar="NAME=VALUE", section=MACHINE,
    help="The clamp tool: height=MM, reach=MM, width=MM, pressure=MPA, and modulus=MPA of the cover. Repeat it for "
        "more.",
)  # fmt: skip
@option(
    "--load", "loads", multiple=True, metavar="NAME=VALUE", section=MACHINE,
    help="Load on the weld: pressure=MPA inside or force=N on the cover; strength=MPA of the weaker polymer, "
         "weld-factor=SHARE. Repeat it for more.",
)  # fmt: skip
@option(
    "--tolerance", "tolerances", multiple=True, metavar="QUANTITY=VALUE", section=MACHINE,
    help="How far (+-) a quantity may differ from the drawing, such as rib_width=0.05; or file=TABLE with rows of "
    "quantity, tolerance. Repeat it for more.",
)  # fmt: skip
@option(
    "--set", "others", multiple=True, metavar="NAME=VALUE", section=LIMITS,
    help="Another setting, such as station-spacing=0.25. `seamcheck settings` lists all of them.",
)  # fmt: skip
@option(
    "--settings", "settings_file", metavar="FILE", section=LIMITS, type=click.Path(path_type=Path),
    help="Settings file; without it the nearest seamcheck.toml beside or above the model.",
)  # fmt: skip
@option("--no-settings-file", is_flag=True, section=LIMITS, help="Use no settings file at all.")
@option(
    "--answers", "answers_file", metavar="FILE", section=LIMITS, type=click.Path(path_type=Path),
    help="Decisions and answers saved from the review page: accepted findings count as waived, answered questions "
        "are no longer listed. Never read unless named here.",
)  # fmt: skip
@option(
    "--today",
    metavar="DAY",
    callback=read_day,
    section=LIMITS,
    help="Day for which it is checked whether waivers have ended. [default: today]",
)
@output_options
@option(
    "--with-view",
    is_flag=True,
    section="Write to files ('-' is standard output)",
    help="Put section outlines and display meshes into the document, for pictures made from it later.",
)
@ci.ci_options
@ci.each_options
@option("--quiet", "-q", is_flag=True, section=SHOW, help="Only the verdict, in one line.")
@option("--verbose", "-v", is_flag=True, section=SHOW, help="All tables: quantities, limits, places, questions to ask.")
@option("--strict", is_flag=True, section=SHOW, help="Exit with 1 also for findings that ask for attention.")
@run_limits(RUN, "each review")
@option(
    "--no-cache",
    is_flag=True,
    section=RUN,
    help="Measure again and keep nothing. Otherwise an unchanged model is measured only once, whatever limits and "
    "materials follow; measurements are kept in the folder SEAMCHECK_CACHE, else in the user's cache folder.",
)
@option("--debug", is_flag=True, section=RUN, help="On an error show the traceback.")
@one_sentence
def command(
    models: tuple[Path, ...],
    settings_file: Path | None,
    no_settings_file: bool,
    with_view: bool,
    quiet: bool,
    verbose: bool,
    strict: bool,
    time_limit: float | None,
    memory_limit: float | None,
    no_cache: bool,
    debug: bool,
    **options: Any,
) -> None:
    """Review the weld seam of one model: a STEP assembly, or separate files in one coordinate system.

    \b
    seamcheck review housing.step
    seamcheck review lid.step case.step --collapse 0.35
    seamcheck review housing.step --limit clamp-land.min=1.5 --json review.json
    seamcheck review models --each --changed-since origin/main --annotations workflow

    Exit code: 0 within limits, 1 a must-fix limit is broken, 2 not reviewed or wrong use.
    """
    from seamcheck.pipeline import review, settings_for

    answers = answers_of(options)

    def review_one(paths: tuple[Path, ...], views: bool) -> Review:
        settings = with_options(settings_for(paths, settings_file, not no_settings_file), options)
        with _progress(paths) as progress:
            result = review(
                paths, settings, progress=progress, time_limit=time_limit, memory_limit=memory_limit,
                with_view=with_view or views, cache=not no_cache,
            )  # fmt: skip
        if debug and result.traceback:
            click.echo(result.traceback, err=True)
        if answers is not None:
            from seamcheck.report.review import Review
            from seamcheck.settings.answers import with_answers

            return Review(with_answers(result.document, answers), result.traceback)
        return result

    if not no_cache:
        tell_unused_cache()
    if options["accept"]:
        from seamcheck.scanning.result import known_reasons

        known_reasons(options["accept"])
    if options["each"] or options["changed_since"] is not None:
        from seamcheck.cli.each import review_each

        code = review_each(
            models, lambda path, views: review_one((path,), views), options, settings_file, quiet, strict
        )  # fmt: skip
        raise SystemExit(code)
    writers = Writers(options, models)
    result = ci.held_against(review_one(models, writers.needs_view), options["baseline"])
    if not writers.takes_stdout:
        show_review(result.document, quiet, verbose, writers.voice)
        ci.tell_baseline(result, quiet)
    code = ci.exit_code(result, strict)
    try:
        for line in writers.write(result.document, debug):
            if not quiet:
                tell(line, err=writers.takes_stdout)
    except UsageError as why:  # a broken limit stays one, whatever could not be written
        if code != 1:
            raise
        tell(f"seamcheck: {why}", err=True)
    ci.annotate(options["annotations"], [ci.reviewed(result, models)], err=writers.takes_stdout)
    raise SystemExit(code)


def changes_of(options: dict[str, Any]) -> dict[str, Any]:
    """What the options change in the settings."""
    changes: dict[str, Any] = {
        key: options[key] for key in ("cover", "base", "beam", "collapse") if options[key] is not None
    }
    changes |= read_pairs(options["others"], "--set", "station-spacing=0.25")
    changes |= read_pairs(options["limits"], "--limit", "rib-width.min=0.7")
    for table, name, example in (
        ("scanner", "scanners", "distance=300"),
        ("clamp", "clamps", "height=20"),
        ("load", "loads", "pressure=0.1"),
        ("tolerance", "tolerances", "rib_width=0.05"),
    ):
        pairs = read_pairs(options[name], f"--{table}", example)
        changes |= {f"{table}.{key}": value for key, value in pairs.items()}
    severities = read_pairs(options["severities"], "--severity", "corner-radius=note")
    return changes | {f"{rule}.severity": value for rule, value in severities.items()}


def with_options(settings: Settings, options: dict[str, Any]) -> Settings:
    """The settings with what the options change, those that the other commands take as well, and the day of today."""
    from datetime import date

    settings, answers = settings.changed(changes_of(options)), answers_of(options)
    waivers = () if answers is None else answers.waivers(options["answers_file"].name)
    return replace(settings, today=options["today"] or date.today(), waivers=(*settings.waivers, *waivers))


def answers_of(options: dict[str, Any]) -> Answers | None:
    """The answers in the file that was named; None without one."""
    from seamcheck.settings.answers import read_answers

    return read_answers(options["answers_file"]) if options.get("answers_file") is not None else None


def _progress(models: tuple[Path, ...]) -> Any:
    """A context that gives a function (stage, share) to call; it shows something only on a terminal."""
    from contextlib import nullcontext

    console = make_console(stderr=True)
    if not console.is_terminal:
        return nullcontext()
    from seamcheck.cli.progress import shown_progress

    return shown_progress(console, ", ".join(path.name for path in models))
