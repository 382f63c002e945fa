"""``python -m benchmarks``: draw the models, measure, print a table with every bar, keep the result as JSON."""

from __future__ import annotations

import json
import platform
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from contextlib import nullcontext
from dataclasses import asdict
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import click
from rich.console import Console
from rich.table import Table

from benchmarks import bars, parts
from benchmarks.measure import KERNEL_S, ROOT, Row, factor

RESULTS = Path(__file__).with_name("results")
WORSE = 1.3
"""So many times the kept value is a loss that is told; runs of one machine differ by a tenth to a fifth."""

PARTS: dict[str, Callable[..., Iterator[Row]]] = {
    "read": bars.read,
    "growth": bars.growth,
    "stations": bars.stations,
    "sections": bars.sections,
    "commands": bars.commands,
    "page": bars.page,
    "propose": bars.propose,
    "shapes": parts.shapes,
    "ladders": parts.ladders,
    "start": parts.start,
    "scan": parts.scan,
    "store": parts.store,
}


@click.command()
@click.option("--quick", is_flag=True, help="Without the models of 18 000 faces, and with a store of 10 000 models.")
@click.option("--only", multiple=True, type=click.Choice(list(PARTS)), help="These parts. Repeat it for more.")
@click.option("--shape", "names", multiple=True, help="Of shapes and ladders only these. Repeat it for more.")
@click.option("--real", type=click.Path(exists=True, file_okay=False, path_type=Path), help="Files of yours, too.")
@click.option("--json", "json_file", type=click.Path(path_type=Path), help="Write the rows there as JSON.")
@click.option("--keep", is_flag=True, help="Keep the rows as benchmarks/results/COMMIT.json.")
@click.option("--against", type=click.Path(exists=True, path_type=Path), help="Kept rows to tell losses from.")
@click.option("--models", type=click.Path(path_type=Path), help="Keep the models there; take those that are.")
def main(
    quick: bool, only: tuple[str, ...], names: tuple[str, ...], real: Path | None, json_file: Path | None, keep: bool,
    against: Path | None, models: Path | None,
) -> None:  # fmt: skip
    """Measure seamcheck against its bars. CPU seconds; on a busy machine only the ratios mean something.

    Seconds are those of a machine on which importing the CAD kernel takes 0.65 s; the import is measured in this run.
    """
    console = Console(width=150)
    tell = lambda what: console.print(f"[dim]{what} ...[/dim]")  # noqa: E731
    rows: list[Row] = []
    kept = json_file or (_kept_file() if keep else None)
    console.print(f"importing the kernel {factor() * KERNEL_S:.2f} s: factor {factor():.2f}")
    with nullcontext(str(models)) if models else tempfile.TemporaryDirectory() as folder:
        Path(folder).mkdir(parents=True, exist_ok=True)
        for row in _rows(Path(folder), quick, only or tuple(PARTS), names, real, tell):
            rows.append(row)
            console.print(f"  {_mark(row):6} {row.what}: {row.value:.3g} {row.unit} (bar {row.bar}) {row.behind}")
            if kept is not None:
                _keep(kept, rows)
    table = Table("what", "value", "bar", "", "behind it")
    for row in rows:
        table.add_row(row.what, f"{row.value:.3g} {row.unit}", row.bar, _mark(row), row.behind)
    console.print(table)
    for line in _losses(rows, against) if against else ():
        console.print(line)


def _rows(
    folder: Path, quick: bool, only: tuple[str, ...], names: tuple[str, ...], real: Path | None, tell: parts.Tell
) -> Iterator[Row]:
    for name in only:
        more: dict[str, Any] = {}
        if name in ("read", "growth", "stations", "sections", "page"):
            more["quick"] = quick
        if name in ("shapes", "ladders"):
            more["names"] = names
        if name == "store" and quick:
            more["rows"] = 10_000
        yield from PARTS[name](folder, tell, **more)
    if real is not None:
        yield from parts.real(real, tell)


def _mark(row: Row) -> str:
    return "holds" if row.holds else "MISSED"


def _kept_file() -> Path:
    words = ["git", "-C", str(ROOT), "rev-parse", "--short=10", "HEAD"]
    commit = subprocess.run(words, capture_output=True, text=True, check=True).stdout.strip()
    return RESULTS / f"{commit}.json"


def _keep(file: Path, rows: list[Row]) -> None:
    """Write the rows over those of the same names that a file holds."""
    file.parent.mkdir(parents=True, exist_ok=True)
    before = json.loads(file.read_text("utf-8"))["rows"] if file.exists() else []
    new = {row.what for row in rows}
    content = {
        "machine": f"{platform.machine()}, Python {platform.python_version()}",
        "day": datetime.now(UTC).date().isoformat(),
        "factor": round(factor(), 3),
        "rows": [entry for entry in before if entry["what"] not in new] + [asdict(row) for row in rows],
    }
    file.write_text(json.dumps(content, indent=1) + "\n", encoding="utf-8")


def _losses(rows: list[Row], against: Path) -> Iterator[str]:
    """Rows that are much worse than the kept ones of the same name."""
    kept = {entry["what"]: entry for entry in json.loads(against.read_text("utf-8"))["rows"]}
    for row in rows:
        before = kept.get(row.what)
        if before is None or not before["value"]:
            continue
        more_is_better = row.bar.startswith(">")
        times = before["value"] / row.value if more_is_better else row.value / before["value"]
        if times > WORSE:
            yield f"LOST: {row.what}: {row.value:.3g} {row.unit}, {against.stem} had {before['value']:.3g}"


if __name__ == "__main__":
    main()
