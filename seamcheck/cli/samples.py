"""``seamcheck samples``: the sample models, written into a folder."""

from __future__ import annotations

from pathlib import Path

import click

from seamcheck.cli.shared import one_sentence


@click.command(name="samples", short_help="Write the sample models into a folder.")
@click.argument("folder", type=click.Path(path_type=Path))
@one_sentence
def command(folder: Path) -> None:
    """Write the sample models into FOLDER: housings of a weather station, sound and spoiled ones.

    \b
    seamcheck samples models
    seamcheck review models/sound.step

    A settings file of the same name beside a model names its materials:

    \b
    seamcheck review models/transmission.step --settings models/transmission.toml
    """
    from seamcheck.samples import samples, write_samples

    write_samples(folder)
    width = max(len(sample.file.name) for sample in samples())
    for sample in samples():
        click.echo(f"{sample.file.name:{width}}  {sample.sentence}")
    click.echo(f"\nWritten into {folder}. Try: seamcheck review {folder / 'sound.step'}")
