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

    A settings file of the same name beside a model names its materials, scanner, stop or tolerances:

    \b
    seamcheck review models/transmission.step --settings models/transmission.toml
    """
    from seamcheck.samples import samples, write_samples

    write_samples(folder)
    width = max(len(sample.file.name) for sample in samples())
    with_settings = [sample for sample in samples() if sample.settings]
    for sample in samples():
        if not sample.settings:
            click.echo(f"{sample.file.name:{width}}  {sample.sentence}")
    click.echo("\nWithin the limits by themselves, not with the settings file beside them (--settings):")
    for sample in with_settings:
        click.echo(f"{sample.file.name:{width}}  {sample.sentence}")
    one = with_settings[-1]
    assert one.settings is not None
    click.echo(f"\nWritten into {folder}. Try:")
    click.echo(f"  seamcheck review {folder / 'rib-uniformity.step'}")
    click.echo(f"  seamcheck review {folder / one.file.name} --settings {folder / one.settings.name}")
