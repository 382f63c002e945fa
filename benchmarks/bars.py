"""The bars of speed and memory, each measured on models drawn for it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

from benchmarks.measure import Row, factor, in_pairs, job, loads_no_kernel, shell, within
from benchmarks.models import FREE_FORM, Kind, housing
from benchmarks.parts import memory

Tell = Callable[[str], None]

SMALL, MIDDLE, LARGE = 100, 3000, 18000
_COMMANDS = (("--help",), ("--version",), ("explain",), ("settings",))


def read(folder: Path, tell: Tell, quick: bool = False) -> Iterator[Row]:
    """A review against the kernel's own reading."""
    models = _models(folder, quick, tell)
    for size, bars in ((MIDDLE, (1.0, 1.0)), (LARGE, (0.9, 0.1))):
        for spread, bar in zip(("many", "one"), bars, strict=True):
            if (size, spread) in models:
                tell(f"review against bare read, {size} faces, features on {spread}")
                yield from _review(models[size, spread], size, spread, bar)


def growth(folder: Path, tell: Tell, quick: bool = False) -> Iterator[Row]:
    """What far faces cost beside reading."""
    yield from _growth(_models(folder, quick, tell), tell)


def stations(folder: Path, tell: Tell, quick: bool = False) -> Iterator[Row]:
    """What stations cost."""
    yield from _stations(_models(folder, True, tell), tell)


def sections(folder: Path, tell: Tell, quick: bool = False) -> Iterator[Row]:
    """Sections against those of general-purpose libraries."""
    yield from _sections(_models(folder, True, tell), tell)


def commands(_: Path, tell: Tell) -> Iterator[Row]:
    """Commands from the shell that load no kernel."""
    yield from _commands(tell)


def propose(folder: Path, tell: Tell) -> Iterator[Row]:
    """A joint proposed for a flat contact, from the shell: review, cut, review, compare."""
    tell("a joint proposed for a seam of 201 mm")
    shell("samples", str(folder))
    cpu = shell("propose", str(folder / "rib-missing.step"), "--step", str(folder / "proposed.step"), times=2)
    yield within("propose a joint, seam of 201 mm", cpu, 20.0)


def page(folder: Path, tell: Tell, quick: bool = False) -> Iterator[Row]:
    """The page of the largest model."""
    models = _models(folder, quick, tell)
    size = MIDDLE if quick else LARGE
    yield from _page(models[size, "many"], size, folder, tell)


def _models(folder: Path, quick: bool, tell: Tell) -> dict[tuple[int, str], Path]:
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
    yield memory(name, floor, ours)


def _growth(models: dict[tuple[int, str], Path], tell: Tell) -> Iterator[Row]:
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


def _stations(models: dict[tuple[int, str], Path], tell: Tell) -> Iterator[Row]:
    """At the usual spacing of 0.5 mm and at a quarter of it: the difference is what a station costs."""
    tell("growth with stations")
    for kind, name in (("many", "prismatic"), ("free", "free-form")):
        few, many = (job("survey", models[SMALL, kind], spacing, times=2) for spacing in (0.5, 0.125))
        more = many["stations"] - few["stations"]
        each = 1e3 * (many["cpu"] + many["interface"] - few["cpu"] - few["interface"]) / more
        behind = f"{few['stations']} to {many['stations']} stations, with the interface"
        each /= factor()
        yield Row(f"another station, {name}", each, "ms", "<= 0.4", each <= 0.4, behind)
        seconds, behind = in_pairs(lambda kind=kind: float(job("survey", models[SMALL, kind], 0.125)["cpu"]))
        rate, bar = many["stations"] / seconds, 10_000 if name == "prismatic" else 4_000
        behind = f"{many['stations']} stations in {behind}, meshing included"
        yield Row(f"sections surveyed, {name}", rate, "1/s", f">= {bar}", rate >= bar, behind)


def _sections(models: dict[tuple[int, str], Path], tell: Tell) -> Iterator[Row]:
    """One station with general-purpose libraries against one of ours, all columns, as many as in ``_stations``."""
    tell("sections by the kernel and by trimesh")
    compared = (
        ("brep", "kernel's section", (MIDDLE, "many"), "prismatic", 6, 50),
        ("mesh", "trimesh's section", (MIDDLE, "many"), "prismatic", 20, 40),
        ("mesh", "trimesh's section", (SMALL, "free"), "free-form", 20, 16),
    )
    spent = {}
    for name, title, which, kind, count, bar in compared:
        if which not in spent:
            spent[which] = job("survey", models[which], 0.125, times=2)
        own = spent[which]["cpu"] / spent[which]["stations"]
        theirs = job(name, models[which], count)
        each = theirs["cpu"] / theirs["stations"]
        behind = f"{1e3 * each:.2f} ms / {1e3 * own:.3f} ms a station of {spent[which]['stations']}"
        yield Row(
            f"{title} / all columns of a station, {kind}", each / own, "x", f">= {bar}", each / own >= bar, behind
        )


def _commands(tell: Tell) -> Iterator[Row]:
    tell("commands from the shell")
    for arguments in _COMMANDS:
        cpu, behind = in_pairs(lambda arguments=arguments: shell(*arguments, times=2))
        free = loads_no_kernel(*arguments)
        behind += "; no kernel loaded" if free else "; THE KERNEL IS LOADED"
        yield Row(f"seamcheck {' '.join(arguments)}", cpu, "s", "< 0.15", cpu < 0.15 and free, behind)


def _page(model: Path, faces: int, folder: Path, tell: Tell) -> Iterator[Row]:
    """Outlines and meshes are drawn with the review; the rest, with a kept measurement, is the difference of commands.

    Two whole reviews of so many faces differ by more than the page costs.
    """
    tell("the review page of the largest model")
    page, kept = folder / "page.html", str(folder / "kept-for-the-page")
    drawn = job("drawing", model)["cpu"]
    shell("review", str(model), "--html", str(page), cache=kept)
    without = shell("review", str(model), times=3, cache=kept)
    with_page = shell("review", str(model), "--html", str(page), times=3, cache=kept)
    size = page.stat().st_size / 1e6
    behind = f"drawing {drawn:.2f} s, the page {with_page - without:.2f} s"
    yield within(f"more for the page, {faces} faces", drawn + with_page - without, 0.5, behind)
    yield Row(f"size of the page, {faces} faces", size, "MB", "<= 1.5", size <= 1.5)
