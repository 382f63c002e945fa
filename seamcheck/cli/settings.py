"""``seamcheck settings``: the settings file with every limit explained, and what counts for a model."""

from __future__ import annotations

from pathlib import Path

import click

from seamcheck.cli.shared import check_can_write, one_sentence, tell, write_file


@click.command(name="settings", short_help="Print or write the settings file, every limit explained.")
@click.argument("model", required=False, type=click.Path(path_type=Path))
@click.option("--write", "target", metavar="FILE", type=click.Path(path_type=Path),
              help="Write to a file, such as seamcheck.toml, instead of the terminal.")  # fmt: skip
@click.option("--settings", "settings_file", metavar="FILE", type=click.Path(path_type=Path),
              help="Start from this settings file instead of the defaults.")  # fmt: skip
@click.option("--force", is_flag=True, help="Overwrite a file that exists.")
@one_sentence
def command(model: Path | None, target: Path | None, settings_file: Path | None, force: bool) -> None:
    """Print the settings file with every limit explained; with a MODEL, what counts for that model.

    \b
    seamcheck settings                          the defaults
    seamcheck settings --write seamcheck.toml   a file to edit
    seamcheck settings models/sound.step        what a review of that model would use
    """
    from seamcheck.errors import UsageError
    from seamcheck.pipeline import settings_for
    from seamcheck.settings.file import find_settings_file
    from seamcheck.settings.writing import as_toml

    found = settings_file or (find_settings_file(model) if model is not None else None)
    text = as_toml(settings_for([model] if model is not None else [], settings_file))
    if model is not None:
        tell(f"For {model}: {found if found else 'no settings file found, the defaults'}", err=True)
    if target is None:
        click.echo(text, nl=False)
        return
    check_can_write(target)
    if target.exists() and not force:
        raise UsageError(f"{target} exists. Name another file, or overwrite it with --force.")
    write_file(target, text)
    tell(f"Written: {target}")
