"""``seamcheck samples``: the sample models, written into a folder."""

from __future__ import annotations

from importlib import resources
from pathlib import Path

import click

from seamcheck.cli.shared import make_folder, one_sentence, write_file


@click.command(name="samples", short_help="Write the sample models into a folder.")
@click.argument("folder", type=click.Path(path_type=Path))
@click.option("--force", is_flag=True, help="Overwrite files that exist.")
@one_sentence
def command(folder: Path, force: bool) -> None:
    """Write the sample models into FOLDER: housings of a weather station, sound and spoiled ones.

    \b
    seamcheck samples models
    seamcheck review models/sound.step
    """
    from seamcheck.errors import UsageError

    found = [
        f
        for f in resources.files("seamcheck.samples").iterdir()
        if f.name.lower().endswith((".step", ".stp"))
    ]
    if not found:
        raise UsageError("This installation holds no sample models.")
    if folder.exists() and not folder.is_dir():
        raise UsageError(f"{folder} is a file; name a folder.")
    taken = [f.name for f in found if (folder / f.name).exists()]
    if taken and not force:
        more = f" and {len(taken) - 1} more" if len(taken) > 1 else ""
        raise UsageError(
            f"{folder / taken[0]}{more} would be overwritten. Name another folder, or use --force."
        )
    make_folder(folder)
    for file in sorted(found, key=lambda f: f.name):
        write_file(folder / file.name, file.read_bytes())
    click.echo(f"{len(found)} sample models written into {folder}.")
