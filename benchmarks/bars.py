"""The bars of speed and memory, each measured on models drawn for it."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from pathlib import Path

from benchmarks.measure import Row, job, loads_no_kernel, run, shell
from benchmarks.models import FREE_FORM, Kind, housing

SMALL, MIDDLE, LARGE = 100, 3000, 18000
_SAMPLE = "sample_models/sound.step"
_COMMANDS = (("--help",), ("--version",), ("explain",), ("settings",))


def all_bars(folder: Path, quick: bool, tell: Callable[[str], None]) -> Iterator[Row]:
    """Measure everything; ``quick`` leaves out the largest models."""
    models = _models(folder, quick, tell)
    for size, bar in ((MIDDLE, 1.6), (LARGE, 1.25)):
        for spread in ("many", "one"):
            if (size, spread) in models:
                tell(f"review against bare read, {size} faces, features on {spread}")
                yield from _review(models[size, spread], size, spread, bar)
    yield from _growth(models, tell)
    yield from _stations(models, tell)
    yield from _sections(models, tell)
    yield from _commands(tell)
    if not quick:
        yield from _page(models[LARGE, "many"], folder, tell)


def _models(folder: Path, quick: bool, tell: Callable[[str], None]) -> dict[tuple[int, str], Path]:
    models = {}
    for size in (SMALL, MIDDLE) if quick else (SMALL, MIDDLE, LARGE):
        for spread in ("many",) if size == SMALL else ("many", "one"):
            path = folder / f"housing-{size}-{spread}.step"
            if not path.exists():
                tell(f"drawing {path.name}")
                housing(path, Kind(size, spread))
            models[size, spread] = path
    models[SMALL, "free"] = folder / "housing-free-form.step"
    housing(models[SMALL, "free"], Kind(SMALL), FREE_FORM)
    return models


def _review(model: Path, size: int, spread: str, bar: float) -> Iterator[Row]:
    times = 3 if size < LARGE else 1
    floor, ours = job("bare", model, times=times), job("review", model, times=times)
    ratio = ours["cpu"] / floor["cpu"]
    stages = ", ".join(f"{name} {value:.2f}" for name, value in ours["stages"].items() if value > 0.05)
    behind = f"{ours['cpu']:.2f} s / {floor['cpu']:.2f} s; {ours['stations']} stations; {stages}"
    name = f"{size} faces, features on {spread} face{'s' * (spread == 'many')}"
    yield Row(f"review / bare read, {name}", ratio, "x", f"<= {bar}", ratio <= bar, behind)
    if size == LARGE:
        more = ours["peak_mb"] - floor["peak_mb"]
        behind = f"{ours['peak_mb']:.0f} MB, {floor['peak_mb']:.0f} MB"
        yield Row(f"memory over the bare read, {name}", more, "MB", "<= 200", more <= 200, behind)


def _growth(models: dict[tuple[int, str], Path], tell: Callable[[str], None]) -> Iterator[Row]:
    """Everything after reading, on few and on many far faces: the exponent of its growth."""
    tell("growth with far faces")
    from math import log

    largest = LARGE if (LARGE, "many") in models else MIDDLE
    for spread in ("many", "one"):
        spent = {}
        for size in (MIDDLE, largest) if largest != MIDDLE else (SMALL, MIDDLE):
            found = job("review", models[size, "many" if size == SMALL else spread])
            stages = found["stages"]
            spent[size] = sum(stages.get(name, 0.0) for name in ("finding", "tracing", "measuring", "judging"))
        (small, few), (big, many) = spent.items()
        power = log(many / few) / log(big / small)
        behind = f"{few:.2f} s at {small}, {many:.2f} s at {big} faces"
        yield Row(f"growth beside reading, features on {spread}", power, "power", "< 1", power < 1, behind)


def _stations(models: dict[tuple[int, str], Path], tell: Callable[[str], None]) -> Iterator[Row]:
    """At the usual spacing of 0.5 mm and at a quarter of it: the difference is what a station costs."""
    tell("growth with stations")
    for kind, name in (("many", "prismatic"), ("free", "free-form")):
        few, many = (job("survey", models[SMALL, kind], spacing, times=2) for spacing in (0.5, 0.125))
        more = many["stations"] - few["stations"]
        each = 1e3 * (many["cpu"] + many["interface"] - few["cpu"] - few["interface"]) / more
        behind = f"{few['stations']} to {many['stations']} stations, with the interface"
        yield Row(f"another station, {name}", each, "ms", "<= 0.4", each <= 0.4, behind)
        rate = many["stations"] / many["cpu"]
        behind = f"{many['stations']} stations in {many['cpu']:.2f} s, meshing included"
        yield Row(f"sections surveyed, {name}", rate, "1/s", ">= 2000", rate >= 2000, behind)


def _sections(models: dict[tuple[int, str], Path], tell: Callable[[str], None]) -> Iterator[Row]:
    """One station with general-purpose libraries against one of ours, all columns."""
    tell("sections by the kernel and by trimesh")
    model = models[MIDDLE, "many"]
    ours = job("survey", model, 0.5, times=2)
    own = ours["cpu"] / ours["stations"]
    for name, title, count, bar in (("brep", "kernel's section", 6, 50), ("mesh", "trimesh's section", 20, 5)):
        theirs = job(name, model, count)
        each = theirs["cpu"] / theirs["stations"]
        behind = f"{1e3 * each:.2f} ms / {1e3 * own:.3f} ms a station, {MIDDLE} faces"
        yield Row(f"{title} / all columns of a station", each / own, "x", f">= {bar}", each / own >= bar, behind)


def _commands(tell: Callable[[str], None]) -> Iterator[Row]:
    tell("commands from the shell")
    for arguments in _COMMANDS:
        wall, cpu = shell(*arguments, times=7)
        free = loads_no_kernel(*arguments)
        behind = f"CPU; {wall:.2f} s wall; " + ("no kernel loaded" if free else "THE KERNEL IS LOADED")
        yield Row(f"seamcheck {' '.join(arguments)}", cpu, "s", "< 0.15", cpu < 0.15 and free, behind)
    wall, cpu = shell("review", _SAMPLE, "--no-cache", times=3)
    code = "import time; from benchmarks.child import _import as i; t = time.process_time(); i()"
    code += "; print(time.process_time() - t)"
    imports = min(float(run([sys.executable, "-c", code])) for _ in range(3))
    behind = f"{cpu:.2f} s CPU, of which {imports:.2f} s imports of kernel and libraries"
    yield Row("seamcheck review of a sample", wall, "s", "< 2", wall < 2.0, behind)


def _page(model: Path, folder: Path, tell: Callable[[str], None]) -> Iterator[Row]:
    tell("the review page of the largest model")
    page = folder / "page.html"
    _, without = shell("review", str(model), "--no-cache")
    _, with_page = shell("review", str(model), "--no-cache", "--html", str(page))
    more, size = with_page - without, page.stat().st_size / 1e6
    yield Row(f"more for the page, {LARGE} faces", more, "s", "<= 5", more <= 5.0)
    yield Row(f"size of the page, {LARGE} faces", size, "MB", "<= 6", size <= 6.0)
