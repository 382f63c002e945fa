"""``seamcheck explain``: what a rule or quantity is, what harm it does, what to change."""

from __future__ import annotations

from pathlib import Path

import click

from seamcheck.cli.shared import one_sentence, show


@click.command(name="explain", short_help="Explain a rule or a quantity.")
@click.argument("word", required=False, metavar="[RULE|QUANTITY]")
@click.option("--settings", "settings_file", metavar="FILE", type=click.Path(path_type=Path),
              help="Show the limits of this settings file instead of the defaults.")  # fmt: skip
@one_sentence
def command(word: str | None, settings_file: Path | None) -> None:
    """Explain a rule, a quantity, a setting or a reason; without a word, list all rules and quantities.

    \b
    seamcheck explain
    seamcheck explain clamp-land
    seamcheck explain free_travel
    """
    from seamcheck.report import explain
    from seamcheck.settings.settings import Settings

    settings = Settings()
    if settings_file is not None:
        from seamcheck.settings.file import read_settings

        settings = read_settings(settings_file)
    show(explain.page(word, settings) if word else explain.overview(settings))
