"""``seamcheck prepare``: from a review that holds to clamp, nest and weld path as files."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from seamcheck.catalogue.voice import Voice, speaking, tr
from seamcheck.cli import review as one
from seamcheck.cli.compare import settings_options
from seamcheck.cli.outputs import language_option, written
from seamcheck.cli.shared import SectionedCommand, one_sentence, option, run_limits, tell
from seamcheck.settings.declared import TRIAL

PATH, TOOLS, CYCLE = "Weld path", "Clamp and nest", "Cycle"
SECTIONS = {
    **dict.fromkeys(("speed", "acceleration", "laps", "overlap", "power"), PATH),
    **dict.fromkeys(("cooling", "handling", "hours", "used", "parts"), CYCLE),
}
"""Heading of each setting of ``[trial]``; the others are of clamp and nest."""


def _trial_options(command: Any) -> Any:
    """An option for each setting of ``[trial]``: its help is what the setting is."""
    for setting in reversed(TRIAL.values()):
        default = "" if setting.default is None else f" [default: {setting.default:g}]"
        unit = "NUMBER" if setting.unit == "1" else setting.unit.upper().replace("°", "DEGREES").replace("²", "2")
        command = option(
            f"--{setting.name}", f"trial_{setting.attribute}", metavar=unit, section=SECTIONS.get(setting.name, TOOLS),
            help=f"{setting.what[0].upper()}{setting.what[1:]}.{default}",
        )(command)  # fmt: skip
    return command


@click.command(cls=SectionedCommand, name="prepare", short_help="Write clamp, nest and weld path for a trial weld.")
@click.argument("models", nargs=-1, required=True, metavar="MODEL...", type=click.Path(path_type=Path))
@option("--into", "folder", required=True, metavar="FOLDER", type=click.Path(path_type=Path), section="Write to files",
        help="New or empty folder for all files.")  # fmt: skip
@option("--clockwise", is_flag=True, section=PATH, help="Weld clockwise, seen against the beam.")
@_trial_options
@settings_options
@language_option
@run_limits(one.RUN)
@option("--debug", is_flag=True, section=one.RUN, help="On an error show the traceback.")
@one_sentence
def command(
    models: tuple[Path, ...],
    folder: Path,
    settings_file: Path | None,
    no_settings_file: bool,
    clockwise: bool,
    time_limit: float | None,
    memory_limit: float | None,
    debug: bool,
    **options: Any,
) -> None:
    """Write what a toolmaker and a laser operator need for a trial weld of a model that is within its limits.

    FOLDER gets clamp.step, clamp.dxf and clamp.csv (a frame beside the beam with cores inside it, walls inclined like
    the beam, and the force along the seam), or plate.step and plate.dxf; nest.step and nest.dxf; path.csv, path.dxf and
    path.json (the mid-line in welding order, with energy, speed, power share and scanner coordinates corrected for
    refraction in the cover); and sheet.md with all assumptions. The model is then reviewed once more with the clamp in
    place: no shadow, no collision. None of this is a recipe for a machine.

    \b
    seamcheck prepare housing.step --into trial
    seamcheck prepare housing.step --into trial --scanner distance=300 --laps 12 --acceleration 4000000

    Exit code: 0 written, 2 nothing written, with the reason.
    """
    from seamcheck.isolation.loading import load_little

    load_little()
    from seamcheck.pipeline import settings_for
    from seamcheck.preparation.prepare import prepare

    given = {f"trial.{s.name}": options[f"trial_{s.attribute}"] for s in TRIAL.values()}
    settings = one.with_options(settings_for(models, settings_file, not no_settings_file), options)
    settings = settings.changed({key: value for key, value in given.items() if value is not None})
    voice = Voice(options["language"])
    with one._progress(models) as progress:
        made = prepare(
            list(models), folder, settings, clockwise=clockwise, language=options["language"],
            progress=progress, time_limit=time_limit, memory_limit=memory_limit,
        )  # fmt: skip
    for name in sorted(made.files):
        tell(written(folder / name, voice))
    with speaking(voice):
        click.echo(tr("A pre-check, never an approval. Class 4 lasers, clamps and fumes injure; trials decide."))
