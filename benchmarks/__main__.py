"""``python -m benchmarks``: draw the models, measure, print a table with every bar, write JSON."""

from __future__ import annotations

import json
import platform
import tempfile
from contextlib import nullcontext
from dataclasses import asdict
from pathlib import Path

import click
from rich.console import Console
from rich.table import Table

from benchmarks.bars import all_bars


@click.command()
@click.option("--quick", is_flag=True, help="Without the models of 18 000 faces.")
@click.option("--json", "json_file", type=click.Path(path_type=Path), help="Write the rows there as JSON.")
@click.option("--models", type=click.Path(path_type=Path), help="Keep the models there, and take those that are there.")
def main(quick: bool, json_file: Path | None, models: Path | None) -> None:
    """Measure seamcheck against its bars. CPU seconds; on a busy machine only the ratios mean something."""
    console = Console(width=150)
    rows = []
    with nullcontext(str(models)) if models else tempfile.TemporaryDirectory() as folder:
        Path(folder).mkdir(parents=True, exist_ok=True)
        for row in all_bars(Path(folder), quick, lambda what: console.print(f"[dim]{what} ...[/dim]")):
            rows.append(row)
            mark = "holds" if row.holds else "MISSED"
            console.print(f"  {mark:6} {row.what}: {row.value:.3g} {row.unit} (bar {row.bar}) {row.behind}")
            if json_file:
                content = {"machine": f"{platform.machine()}, Python {platform.python_version()}"}
                json_file.write_text(json.dumps(content | {"rows": [asdict(r) for r in rows]}, indent=1) + "\n")
    table = Table("what", "value", "bar", "", "behind it")
    for row in rows:
        table.add_row(row.what, f"{row.value:.3g} {row.unit}", row.bar, "holds" if row.holds else "MISSED", row.behind)
    console.print(table)


if __name__ == "__main__":
    main()
