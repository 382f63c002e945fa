"""The command ``seamcheck`` and the table of its subcommands."""

from __future__ import annotations

import importlib
import os
import sys
from collections.abc import Sequence
from typing import Any

import click

from seamcheck.version import __version__

COMMANDS: dict[str, tuple[str, str]] = {
    "review": ("seamcheck.cli.review", "Review the weld seam of one assembly."),
    "scan": ("seamcheck.cli.scan", "Review every model in some folders."),
    "report": ("seamcheck.cli.report", "Make reports from a review document."),
    "compare": ("seamcheck.cli.compare", "Compare two revisions of a model."),
    "propose": ("seamcheck.cli.propose", "Propose a weld rib, or mend one."),
    "prepare": ("seamcheck.cli.prepare", "Write clamp, nest and weld path for a trial weld."),
    "explain": ("seamcheck.cli.explain", "Explain a rule or a quantity."),
    "settings": ("seamcheck.cli.settings", "Print or write the settings file, every limit explained."),
    "samples": ("seamcheck.cli.samples", "Write the sample models into a folder."),
}
"""Name -> module that holds a click command called ``command``, and its one line in the list of commands."""


DEBUG = "SEAMCHECK_DEBUG"
"""Environment variable with which an unexpected error shows its traceback, as --debug does."""


class LazyGroup(click.Group):
    """A group that imports the module of a command only when that command is asked for."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in COMMANDS:
            return None
        module = importlib.import_module(COMMANDS[cmd_name][0])
        command: click.Command = module.command
        return command

    def resolve_command(self, ctx: click.Context, args: list[str]) -> Any:
        name = args[0] if args else ""
        if name and not name.startswith("-") and name not in COMMANDS:
            hint = "" if not (near := _nearest(name)) else f" Did you mean {near!r}?"
            if name.lower().endswith((".step", ".stp")):
                hint = f" To review a model, write: seamcheck review {name}"
            raise click.UsageError(f"There is no command {name!r}.{hint}", ctx)
        return super().resolve_command(ctx, args)

    def main(
        self,
        args: Sequence[str] | None = None,
        prog_name: str | None = None,
        complete_var: str | None = None,
        standalone_mode: bool = True,
        **extra: Any,
    ) -> Any:
        """Run; wrong use is one sentence on standard error and exit code 2."""
        if not standalone_mode:
            return super().main(args, prog_name, complete_var, False, **extra)
        try:
            code = super().main(args, prog_name, complete_var, False, **extra)
        except click.exceptions.NoArgsIsHelpError as wrong:
            click.echo(wrong.format_message(), err=True)
            code = 2
        except click.ClickException as wrong:
            where = wrong.ctx.command_path if isinstance(wrong, click.UsageError) and wrong.ctx else "seamcheck"
            sentence = wrong.format_message()
            end = "" if sentence.endswith((".", "?")) or "write:" in sentence else "."
            click.echo(f"seamcheck: {sentence}{end} Help: {where} --help", err=True)
            code = 2
        except click.Abort:
            click.echo("seamcheck: stopped.", err=True)
            code = 130
        except BrokenPipeError:  # the reader of a pipe, such as head, went away
            sys.stdout = open(os.devnull, "w")  # noqa: SIM115
            code = 2
        except Exception as fault:  # never 0 or 1: those say something about the model
            code = _unexpected(fault, sys.argv[1:] if args is None else args)
        sys.exit(code if isinstance(code, int) else 0)

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        with formatter.section("Commands"):
            formatter.write_dl([(name, line) for name, (_, line) in COMMANDS.items()])


def _unexpected(fault: Exception, args: Sequence[str]) -> int:
    """Say in one sentence that seamcheck itself failed, and where it helps show the traceback; returns exit code 2."""
    wants_all = "--debug" in args or bool(os.environ.get(DEBUG))
    if wants_all:
        import traceback

        traceback.print_exception(fault)
    what = " ".join(f"{type(fault).__name__}: {fault}".split())
    hint = "" if wants_all else f" With {DEBUG}=1 in the environment the traceback is shown."
    click.echo(f"seamcheck: a fault in seamcheck itself ({what[:300]}); nothing was decided.{hint}", err=True)
    return 2


def _nearest(name: str) -> str:
    import difflib

    return next(iter(difflib.get_close_matches(name, COMMANDS, n=1)), "")


def _show_version(ctx: click.Context, wanted: bool) -> None:
    if not wanted or ctx.resilient_parsing:
        return
    click.echo(f"seamcheck {__version__}")
    if "--verbose" in (ctx.obj or sys.argv):
        from seamcheck.isolation.confine import in_force

        click.echo(in_force())
    ctx.exit()


@click.command(cls=LazyGroup, context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100})
@click.option(
    "--version",
    is_flag=True,
    is_eager=True,
    expose_value=False,
    callback=lambda c, p, v: _show_version(c, v),
    help="Show the version and exit; with --verbose also how models are confined on this machine.",
)
@click.option("--verbose", is_flag=True, expose_value=False, hidden=True)
def cli() -> None:
    """Pre-check the CAD of plastic housings joined by through-transmission laser welding.

    seamcheck finds the seam between cover and base, measures it everywhere and says which limits it breaks,
    where, by how much, and what to change. A pass is a pre-check of CAD data, never an approval.

    \b
    Start with:  seamcheck samples models
                 seamcheck review models/sound.step
    """
