"""``seamcheck scan``: many models, reviewed side by side and kept in a store."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from seamcheck.cli import review as one
from seamcheck.cli.shared import Amount, SectionedCommand, SectionedOption, one_sentence, option, run_limits, tell

if TYPE_CHECKING:
    from seamcheck.scanning.result import ScanResult

WHICH = "Which models"
WRITE = "What is written"
RUN = "Run"

SHARED_OPTIONS = [
    parameter
    for parameter in one.command.params
    if isinstance(parameter, SectionedOption)
    and parameter.section in (one.ROLES, one.LIMITS, one.MACHINE)
    and parameter.name not in ("settings_file", "no_settings_file", "answers_file")  # answers are those of one model
]
"""All that changes settings: the options of ``seamcheck review`` itself."""


@click.command(cls=SectionedCommand, name="scan", short_help="Review every model in some folders.")
@click.argument("folders", nargs=-1, required=True, metavar="FOLDER...", type=click.Path(path_type=Path))
@option(
    "--out", required=True, metavar="DIR", type=click.Path(path_type=Path), section=WRITE,
    help="Folder for the store, the index and the report pages. The same DIR again: only what changed is reviewed.",
)  # fmt: skip
@option(
    "--pages", type=click.Choice(["findings", "all", "none"]), default="findings", show_default=True, section=WRITE,
    help="Models that get a report page of their own: those with a must-fix or attention finding, all, or none. "
    "A page takes about 1.2 MB.",
)  # fmt: skip
@option(
    "--pattern", "patterns", multiple=True, metavar="GLOB", section=WHICH,
    help="Names of files to review, such as '*.stp'. Repeat it for more. [default: STEP files, and gzip and zip "
    "archives of them]",
)  # fmt: skip
@option(
    "--pair", "pairs", multiple=True, metavar="COVER=BASE", section=WHICH,
    help="Words by which the names of two files of one model differ: lid=case makes one model of ws-7-lid.step and "
    "ws-7-case.step. Repeat it for more.",
)  # fmt: skip
@option(
    "--pair-list", metavar="FILE", type=click.Path(path_type=Path), section=WHICH,
    help="List of models that come as separate files: one model per line, its files separated by commas, with paths "
        "from the list's folder.",
)  # fmt: skip
@option(
    "--joints", metavar="FILE", type=click.Path(path_type=Path), section=WHICH,
    help="Table (CSV) that settles refusals once and for all: columns path, cover, base, beam (such as '0 0 -1'), "
        "and seam, 'no' where a model has none. DIR/unanswered.csv is such a table, with a row for each refusal.",
)  # fmt: skip
@option("--follow-links", is_flag=True, section=WHICH, help="Follow links to files and folders.")
@option(
    "--settings", "settings_file", metavar="FILE", type=click.Path(path_type=Path), section=one.LIMITS,
    help="Settings file; without it seamcheck.toml in DIR or in the working folder. Settings files in the scanned "
    "folders are never used, only named.",
)  # fmt: skip
@option("--no-settings-file", is_flag=True, section=one.LIMITS, help="Use no settings file at all.")
@option(
    "--jobs", "-j", metavar="N", type=click.IntRange(min=1), section=RUN,
    help="Number of reviews at a time. [default: one for each processor]",
)  # fmt: skip
@run_limits(RUN, "each review")
@option(
    "--unpack-limit", metavar="MB", type=Amount(), section=RUN,
    help="Largest unpacked size of one model in an archive. [default: 1000]",
)  # fmt: skip
@option("--again", is_flag=True, section=RUN, help="Review everything again, even what has not changed.")
@option(
    "--no-cache", "keep_measured", is_flag=True, flag_value=False, default=True, section=RUN,
    help="Measure again and keep nothing. Otherwise measurements are kept in DIR/measured (up to 2000 MB), and a "
        "scan with other limits or materials is many times faster on unchanged models.",
)  # fmt: skip
@option(
    "--cluster", metavar="ADDRESS", section=RUN,
    help="Review on the workers of a Dask scheduler, such as tcp://10.0.0.5:8786, instead of on this machine.",
)  # fmt: skip
@option(
    "--shared", is_flag=True, section=RUN,
    help="The cluster's workers see the same folders under the same paths: no file is sent.",
)  # fmt: skip
@option("--strict", is_flag=True, section="Exit code", help="Exit with 1 also where something asks for attention.")
@option(
    "--accept", multiple=True, metavar="REASON", section="Exit code",
    help="A reason for not being reviewed that leaves the exit code at 0, such as single-part; 'any' for all. Repeat "
    "it for more.",
)  # fmt: skip
@option("--quiet", "-q", is_flag=True, section="Show", help="Only the summary.")
@option("--debug", is_flag=True, section=RUN, help="On an error show the traceback.")
@one_sentence
def command(
    folders: tuple[Path, ...], out: Path, settings_file: Path | None, no_settings_file: bool, strict: bool,
    accept: tuple[str, ...], quiet: bool, debug: bool, **options: Any,
) -> None:  # fmt: skip
    """Review every model in some folders, each in a limited process of its own.

    \b
    seamcheck scan supplier-models --out review
    seamcheck scan models --out review --pair lid=case --collapse 0.35
    seamcheck scan models --out review --jobs 4 --pages all

    DIR then holds index.html (all models, worst first), index.csv, a report page for each model with findings, and
    store.sqlite with everything that was measured. The same command again reviews only what is new or changed, also
    after it was stopped.

    Exit code: 0 all within limits, 1 some model breaks a must-fix limit, 2 none does, but some were not reviewed (see
    --accept), or wrong use.
    """
    from seamcheck.scanning.result import known_reasons
    from seamcheck.scanning.run import scan

    known_reasons(accept)
    settings = _settings(settings_file, no_settings_file, out, folders, options)
    for name in [parameter.name for parameter in SHARED_OPTIONS]:
        options.pop(name)
    with _told(out, quiet) as on_progress:
        result = scan(folders, out, settings, on_progress=on_progress, **options)
    for line in summary(result):
        tell(line)
    raise SystemExit(result.exit_code(strict, accept))


command.params.extend(SHARED_OPTIONS)


def _settings(file: Path | None, no_file: bool, out: Path, folders: tuple[Path, ...], options: dict[str, Any]) -> Any:
    """The reviewer's settings with the options over them; says which file is used, and which are not."""
    from seamcheck.scanning.review_settings import reviewers_settings

    settings, used, passed = reviewers_settings(file, out, folders, look=not no_file)
    for ignored in passed:
        tell(f"Not used: {ignored}, because it lies in a scanned folder. Name it with --settings to use it.", err=True)
    if used is not None:
        tell(f"Settings: {used}", err=True)
    return one.with_options(settings, options)


@contextmanager
def _told(out: Path, quiet: bool) -> Iterator[Any]:
    """Progress on a terminal or in lines; a stopped scan says how to go on."""
    from seamcheck.cli.scan_progress import shown

    with _stoppable():
        try:
            with shown(quiet) as on_progress:
                yield on_progress
        except KeyboardInterrupt:
            click.echo(err=True)
            tell(f"Stopped. What was reviewed is kept in {out}; the same command resumes there.", err=True)
            raise SystemExit(130) from None


@contextmanager
def _stoppable() -> Iterator[None]:
    """The first Ctrl-C, end or hang-up stops the scan; those that follow must not cut off what it writes at its end."""
    import signal
    import threading

    if threading.current_thread() is not threading.main_thread():
        yield
        return
    stopped = False

    def stop(number: int, frame: Any) -> None:
        nonlocal stopped
        if not stopped:
            stopped = True
            raise KeyboardInterrupt

    numbers = [getattr(signal, name) for name in ("SIGINT", "SIGTERM", "SIGHUP") if hasattr(signal, name)]
    before = {number: signal.signal(number, stop) for number in numbers if signal.getsignal(number) != signal.SIG_IGN}
    try:
        yield
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


def summary(result: ScanResult) -> list[str]:
    """What a scan found, in lines."""
    from seamcheck.catalogue.cautions import SHORT_CAUTION

    verdicts = result.verdicts
    if not result.models:
        return ["No model was found: a scan looks for STEP files and archives of them (see --pattern)."]
    many = "1 model" if result.models == 1 else f"{result.models} models"
    lines = [f"{many}; {result.reviewed} {'review' if result.reviewed == 1 else 'reviews'} made now."]
    for verdict, words in (
        ("fail", "break a must-fix limit"),
        ("not-reviewed", "not reviewed"),
        ("attention", "ask for attention"),
        ("pass", "within the limits"),
    ):
        more = ""
        if verdict == "fail" and result.rules:
            more = ": " + ", ".join(f"{rule} {n}" for rule, n in result.rules.most_common(6))
        if verdict == "not-reviewed" and result.reasons:
            more = ": " + ", ".join(f"{code} {n}" for code, n in result.reasons.most_common(8))
        lines.append(f"  {verdicts[verdict]:6}  {words}{more}")
    if result.ignored_settings:
        names = ", ".join(result.ignored_settings[:5]) + (" ..." if len(result.ignored_settings) > 5 else "")
        lines.append(f"Settings files beside models, not used: {names}")
    if result.other_files:
        kinds = ", ".join(f"{n} {ending or 'without ending'}" for ending, n in result.other_files.most_common(6))
        lines.append(f"Other files, not looked at: {kinds}")
    lines += [f"Open {result.out / 'index.html'}", SHORT_CAUTION]
    return lines
