"""``seamcheck prepare``: from a review that holds to clamp, nest and weld path as files."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from seamcheck.cli import review as one
from seamcheck.cli.compare import settings_options
from seamcheck.cli.shared import Amount, SectionedCommand, one_sentence, option

PATH, TOOLS, CYCLE = "Weld path", "Clamp and nest", "Cycle"


@click.command(cls=SectionedCommand, name="prepare", short_help="Clamp, nest and weld path of a model as files.")
@click.argument("models", nargs=-1, required=True, metavar="MODEL...", type=click.Path(path_type=Path))
@option("--into", "folder", required=True, metavar="FOLDER", type=click.Path(path_type=Path), section="Write to files",
        help="Folder for all files; it may not hold anything yet.")  # fmt: skip
@option("--speed", metavar="MM/S", type=float, default=1000.0, show_default=True, section=PATH, help="Most speed.")
@option("--acceleration", metavar="MM/S2", type=float, section=PATH,
        help="Most acceleration of spot or robot; corners are taken slower.")  # fmt: skip
@option("--laps", type=int, default=1, show_default=True, section=PATH, help="How often the path is passed.")
@option("--overlap", metavar="MM", type=float, default=5.0, show_default=True, section=PATH,
        help="Beyond the start, over which the power falls.")  # fmt: skip
@option("--clockwise", is_flag=True, section=PATH, help="Seen against the light.")
@option("--power", metavar="W", type=float, section=PATH, help="Of the laser; says how many laps it needs at least.")
@option("--plate", nargs=2, metavar="MM INDEX", type=float, section=TOOLS,
        help="Press through a transparent plate of this thickness and refractive index, not with a frame.")  # fmt: skip
@option("--frame-width", metavar="MM", type=float, default=8.0, show_default=True, section=TOOLS,
        help="Width of the clamp's frame beside the light.")  # fmt: skip
@option("--clearance", metavar="MM", type=float, default=0.2, show_default=True, section=TOOLS,
        help="Between clamp and light, and around what rises over the cover.")  # fmt: skip
@option("--modulus", metavar="MPA", type=float, section=TOOLS, help="Of the cover, for how far it bends.")
@option("--nest-grip", metavar="MM", type=float, default=6.0, show_default=True, section=TOOLS,
        help="Depth of the nest's pocket.")  # fmt: skip
@option("--nest-play", metavar="MM", type=float, default=0.1, show_default=True, section=TOOLS,
        help="Between base and pocket.")  # fmt: skip
@option("--nest-draft", metavar="DEGREES", type=float, default=3.0, show_default=True, section=TOOLS,
        help="By which the pocket opens for insertion.")  # fmt: skip
@option("--cooling", metavar="S", type=float, section=CYCLE, help="Time under pressure after welding.")
@option("--handling", metavar="S", type=float, section=CYCLE, help="Time to take out one part and put in the next.")
@option("--hours", metavar="H", type=float, section=CYCLE, help="Hours of work in a year.")
@option("--used", metavar="SHARE", type=float, default=1.0, show_default=True, section=CYCLE,
        help="Share of these hours in which parts are made.")  # fmt: skip
@option("--parts", type=float, section=CYCLE, help="Parts wanted in a year; says how many stations they take.")
@settings_options
@option("--time-limit", metavar="SECONDS", type=Amount(), section=one.RUN,
        help="Stop each step after so long. [default: 600]")  # fmt: skip
@option("--memory-limit", metavar="MB", type=Amount(), section=one.RUN,
        help="Stop each step beyond so much memory. [default: 4096]")  # fmt: skip
@option("--debug", is_flag=True, section=one.RUN, help="On an error show the traceback.")
@one_sentence
def command(
    models: tuple[Path, ...],
    folder: Path,
    settings_file: Path | None,
    no_settings_file: bool,
    plate: tuple[float, float] | None,
    time_limit: float | None,
    memory_limit: float | None,
    debug: bool,
    **options: Any,
) -> None:
    """Write what a toolmaker and a laser operator need for a trial weld of a model whose review holds.

    FOLDER gets: clamp.step, clamp.dxf (the frame beside the light and the core within it, walls leaning as the light
    does), nest.step, nest.dxf, path.csv, path.dxf, path.json (the middle line in the order of welding, with speed and
    shares of power, and what the scanner is told so that the light meets it under the cover), and sheet.md with what
    was assumed. The model is reviewed once more with the clamp on it: no shade, no collision. Nothing is a machine's
    recipe.

    \b
    seamcheck prepare housing.step --into trial
    seamcheck prepare housing.step --into trial --scanner distance=300 --laps 12 --acceleration 200000

    Exit code: 0 written, 2 nothing written, with the reason.
    """
    from seamcheck.pipeline import settings_for
    from seamcheck.preparation.blocks import Blocks
    from seamcheck.preparation.path import Drive
    from seamcheck.preparation.prepare import prepare
    from seamcheck.preparation.rows import Tooling

    settings = settings_for(models, settings_file, not no_settings_file).changed(one._changes(options))
    settings = one._on_day(settings, options["today"])
    drive = Drive(options["speed"], options["acceleration"], options["overlap"], options["laps"], options["clockwise"])
    blocks = Blocks(
        settings.clamp.height, options["frame_width"], options["clearance"], options["nest_grip"], options["nest_play"],
        options["nest_draft"],
    )  # fmt: skip
    asked = {name: options[name] for name in ("modulus", "power", "cooling", "handling", "hours", "used", "parts")}
    with one._progress(models) as progress:
        made = prepare(
            list(models), folder, settings, drive=drive, tooling=Tooling(blocks, plate or None, **asked),
            progress=progress, time_limit=time_limit, memory_limit=memory_limit,
        )  # fmt: skip
    for name in sorted(made.files):
        click.echo(f"Written: {folder / name}")
    click.echo("A pre-check, never an approval. Class 4 lasers, clamps and fumes injure; trials decide.")
