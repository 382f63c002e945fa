"""What several commands share: sections in the help, errors as one sentence, the console."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import wraps
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from seamcheck.errors import SeamcheckError, UsageError

if TYPE_CHECKING:
    from rich.console import Console, RenderableType

    from seamcheck.catalogue.voice import Voice


class SectionedCommand(click.Command):
    """A command whose options stand under headings; an option's heading is its ``section``."""

    def format_options(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        sections: dict[str, list[tuple[str, str]]] = {}
        for parameter in self.get_params(ctx):
            if isinstance(parameter, click.Argument):
                continue
            record = parameter.get_help_record(ctx)
            if record is not None:
                sections.setdefault(getattr(parameter, "section", "Other"), []).append(record)
        for heading, records in sorted(sections.items(), key=lambda item: item[0] == "Other"):
            with formatter.section(heading):
                formatter.write_dl(records)


class SectionedOption(click.Option):
    """An option with a heading."""

    def __init__(self, *args: Any, section: str = "Other", **more: Any) -> None:
        super().__init__(*args, **more)
        self.section = section


class Amount(click.ParamType[Any]):
    """A finite number above 0: of seconds, of megabytes."""

    name = "amount"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> float:
        from math import inf

        try:
            number = float(value)
        except ValueError:
            number = inf
        if not 0.0 < number < inf:
            self.fail(f"{value!r} is no finite number above 0", param, ctx)
        return number


def option(*names: str, section: str, **more: Any) -> Callable[[Callable[..., Any]], Callable[..., Any]]:
    """``click.option`` under a heading."""
    return click.option(*names, cls=SectionedOption, section=section, **more)


def file_options(outputs: Mapping[str, str], section: str, allow_dash: bool = False) -> Callable[[Any], Any]:
    """An option for each kind of file: its name -> what is written, for the help."""

    def decorate(command: Any) -> Any:
        kind = click.Path(path_type=Path, allow_dash=allow_dash)
        for name, what in reversed(list(outputs.items())):
            command = option(
                f"--{name}", f"output_{name}", metavar="FILE", type=kind, section=section, help=f"Write {what}."
            )(command)
        return command

    return decorate


def wanted_files(
    options: Mapping[str, Any], outputs: Iterable[str], given: Sequence[Path], what: str
) -> dict[str, Path]:
    """Kind -> file of those options, after checking that each can be written; ``given``, which are ``what``, stay."""
    wanted = {name: options[f"output_{name}"] for name in outputs if options[f"output_{name}"] is not None}
    check_one_stdout(wanted.values())
    for path in wanted.values():
        check_not_given(path, given, what)
        if str(path) != "-":
            check_can_write(path)
    return wanted


def check_one_stdout(paths: Iterable[Path]) -> None:
    """An error where several outputs are to go to standard output."""
    if sum(str(path) == "-" for path in paths) > 1:
        raise click.UsageError("Only one output can go to standard output ('-').")


def check_not_given(path: Path, given: Iterable[Path], what: str = "the model") -> None:
    """UsageError where an output would take the place of a file that was given."""
    if any(path.resolve() == file.resolve() for file in given):
        raise UsageError(f"{path} is {what} itself; name another file to write to.")


def run_limits(section: str, what: str = "each step") -> Callable[[Callable[..., Any]], Callable[..., Any]]:
    """The options --time-limit and --memory-limit; without them the pipeline's own limits hold."""
    from seamcheck.isolation.limits import MEMORY_LIMIT_MB, TIME_LIMIT_S

    def decorate(command: Callable[..., Any]) -> Callable[..., Any]:
        time = f"Stop {what} after this time. [default: {TIME_LIMIT_S:g}]"
        memory = f"Stop {what} at this much memory. [default: {MEMORY_LIMIT_MB:g}]"
        command = option("--memory-limit", metavar="MB", type=Amount(), section=section, help=memory)(command)
        return option("--time-limit", metavar="SECONDS", type=Amount(), section=section, help=time)(command)

    return decorate


def one_sentence(function: Callable[..., Any]) -> Callable[..., Any]:
    """Errors of seamcheck become one sentence on standard error and exit code 2; with --debug a traceback."""

    @wraps(function)
    def wrapped(*args: Any, **more: Any) -> Any:
        try:
            return function(*args, **more)
        except (SeamcheckError, RecursionError) as error:
            if more.get("debug"):
                _show_traceback(error)
            tell(f"seamcheck: {_TOO_DEEP if isinstance(error, RecursionError) else error}", err=True)
            raise SystemExit(2) from None

    return wrapped


_TOO_DEEP = "What was given is nested too deep."


def _show_traceback(error: BaseException) -> None:
    import traceback

    click.echo("".join(traceback.format_exception(error)), err=True, nl=False)


def tell(sentence: str, err: bool = False) -> None:
    """Print one line, whatever stands in the names of files in it."""
    from seamcheck.report.ci.escape import one_line

    click.echo(_no_command(one_line(sentence)), err=err)


def make_console(stderr: bool = False) -> Console:
    """A rich console; colours only on a terminal and never with NO_COLOR; in a pipe as wide as it needs."""
    from rich.console import Console

    console = Console(stderr=stderr, highlight=False, soft_wrap=False, emoji=False, markup=False)
    if not console.is_terminal:
        console = Console(stderr=stderr, highlight=False, width=110, emoji=False, markup=False)
    return console


def show(parts: Iterable[RenderableType]) -> None:
    """Print to standard output; in a pipe without colours and without blanks at the ends of lines."""
    console = make_console()
    if console.is_terminal:
        for part in parts:
            console.print(part, soft_wrap=_is_one_line(part))
        return
    with console.capture() as captured:
        for part in parts:
            console.print(part, soft_wrap=_is_one_line(part))
    click.echo("\n".join(_no_command(line.rstrip()) for line in captured.get().splitlines()))


def _no_command(line: str) -> str:
    """A line that a host of workflows does not take for a command: a long name that wraps could begin with one."""
    start = line.lstrip()
    return f"\N{MIDDLE DOT} {start}" if start.startswith(("::", "##[")) else line


def show_review(document: Mapping[str, Any], quiet: bool, verbose: bool, voice: Voice | None = None) -> None:
    """A review on the terminal: one line, one screen, or everything with its tables; in a language and a unit."""
    from seamcheck.catalogue.voice import Voice, speaking
    from seamcheck.report import screen, text
    from seamcheck.report.language import spoken, voice_of

    with speaking(voice_of(document, voice or Voice())):
        document = spoken(document)
        if quiet:
            show(text.one_line(document))
        elif verbose:
            show(text.full_report(document))
        else:
            show(screen.screen(document, make_console().width))


def _is_one_line(part: RenderableType) -> bool:
    return bool(getattr(part, "no_wrap", False))


def read_day(ctx: click.Context, param: click.Parameter, value: str | None) -> Any:
    """A day such as 2027-06-30."""
    from datetime import date

    try:
        return None if value is None else date.fromisoformat(value)
    except ValueError:
        raise click.BadParameter(f"a day is written like 2027-06-30; got {value!r}") from None


def read_pairs(values: tuple[str, ...], name: str, example: str) -> dict[str, str]:
    """'key=value' options as a dict."""
    pairs = {}
    for text in values:
        key, sign, value = text.partition("=")
        if not sign or not key.strip() or not value.strip():
            raise click.BadParameter(f"{text!r} should look like {example}", param_hint=f"'{name}'")
        pairs[key.strip()] = value.strip()
    return pairs


def tell_unused_cache() -> None:
    """Say on standard error why the cache folder is not used, where it is not."""
    from seamcheck.cache.folder import Folder, default_folder

    folder = default_folder()
    if folder is not None and (why := Folder(folder).why_unused()):
        click.echo(f"seamcheck: {why}", err=True)


def check_can_write(path: Path) -> None:
    """UsageError before the work begins, not after it, if a file can't be written there."""
    import os

    folder = path.absolute().parent
    if path.is_dir():
        raise UsageError(f"{path} is a folder; name a file to write to.")
    if not folder.is_dir():
        raise UsageError(f"{path} can't be written: there is no folder {folder}.")
    if not os.access(folder, os.W_OK) or (path.exists() and not os.access(path, os.W_OK)):
        raise UsageError(f"{path} can't be written: no permission.")


def make_folder(path: Path) -> None:
    """Make a folder if it is not there; UsageError if that can't be."""
    try:
        path.mkdir(parents=True, exist_ok=True)
    except OSError as why:
        raise UsageError(f"{path} can't be made: {why.strerror or why}.") from None


def write_file(path: Path, content: str | bytes) -> None:
    """Write a file whole or not at all: beside it first, then in its place. A link is replaced, never followed."""
    import os
    import tempfile

    data = content.encode("utf-8") if isinstance(content, str) else content
    try:
        is_planted = path.is_symlink() and not path.absolute().is_relative_to("/dev")  # /dev/stdout is a link as well
        if path.exists() and not path.is_file() and not is_planted:  # a pipe or a device
            path.write_bytes(data)
            return
        handle, unfinished = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
        try:
            with os.fdopen(handle, "wb") as file:
                file.write(data)
            umask = os.umask(0)
            os.umask(umask)
            os.chmod(unfinished, 0o666 & ~umask)
            os.replace(unfinished, path)
        except BaseException:
            Path(unfinished).unlink(missing_ok=True)
            raise
    except OSError as why:
        raise UsageError(f"{path} can't be written: {why.strerror or why}.") from None
