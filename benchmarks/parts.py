"""What is measured, part by part: ``python -m benchmarks --only shapes --only ladders``."""

from __future__ import annotations

import json
import math
import os
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from benchmarks.drawn import FACETED, LADDERS, SHAPES, Ladder, draw_shape
from benchmarks.measure import ROOT, Row, factor, in_pairs, job, shell, within

Tell = Callable[[str], None]

MEMORY_MB = 150
POWER = 1.1
SAMPLES = ROOT / "sample_models"


def shapes(folder: Path, tell: Tell, names: Sequence[str] = ()) -> Iterator[Row]:
    """Seams of every kind, up to 500 mm on parts below 200 faces; and facetted parts."""
    for name, kind in SHAPES.items():
        if names and name not in names:
            continue
        tell(f"{name} ({kind})")
        path = draw_shape(name, folder)
        floor, found = job("bare", path), job("review", path)
        yield within(f"{kind}: {name}", found["cpu"], 3.0, _behind(found))
        yield memory(name, floor, found)
    for name in FACETED:
        if names and name not in names:
            continue
        tell(name)
        path = draw_shape(name, folder)
        floor, found = job("bare", path), job("review", path)
        behind = f"{_behind(found)}; bare read {floor['cpu']:.2f} s"
        yield within(f"faceted: {name}, more than the bare read", found["cpu"] - floor["cpu"], 1.5, behind)
        yield memory(name, floor, found)


def memory(name: str, floor: dict, found: dict) -> Row:
    """What a review holds more than the bare read of the same model, each in a process of its own, at their peaks."""
    more = found["peak_mb"] - floor["peak_mb"]
    behind = f"{found['peak_mb']:.0f} MB, {floor['peak_mb']:.0f} MB"
    return Row(f"memory over the bare read, {name}", more, "MB", f"<= {MEMORY_MB}", more <= MEMORY_MB, behind)


def real(models: Path, tell: Tell) -> Iterator[Row]:
    """STEP files of a folder of yours: review and memory against the bare read. No bar of time: their seams differ."""
    for path in sorted(p for p in models.rglob("*") if p.suffix.lower() in (".step", ".stp")):
        tell(path.name)
        try:
            floor, found = job("bare", path), job("review", path)
        except RuntimeError as why:
            yield Row(path.name, math.nan, "s", "", False, str(why)[-200:])
            continue
        more = found["peak_mb"] - floor["peak_mb"]
        behind = f"{_behind(found)}; bare read {floor['cpu']:.2f} s; {more:.0f} MB more than it"
        yield Row(path.name, found["cpu"] / factor(), "s", f"memory <= {MEMORY_MB} MB", more <= MEMORY_MB, behind)


def _behind(found: dict) -> str:
    said = f"{found['verdict']} {found['reason']}".strip()
    return f"{found['faces']} faces, {found['stations']} stations, {said}, {found['peak_mb']:.0f} MB"


# -- growth -----------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Climbed:
    """What one ladder cost.

    Attributes
    ----------
    rungs : (size, CPU seconds) in growing order
    largest : what was found of the last model, and its file
    """

    rungs: tuple[tuple[float, float], ...]
    largest: tuple[dict, Path] = ({}, Path())

    @property
    def fitted(self) -> float:
        """Power of the growth, by least squares of the logarithms over all rungs."""
        logs = [(math.log(size), math.log(cost)) for size, cost in self.rungs]
        mx, my = (sum(values) / len(logs) for values in zip(*logs, strict=True))
        return sum((x - mx) * (y - my) for x, y in logs) / sum((x - mx) ** 2 for x, _ in logs)

    @property
    def last(self) -> float:
        """Power between the two largest: what is fixed counts for least there."""
        (few, cheap), (many, dear) = self.rungs[-2:]
        return math.log(dear / cheap) / math.log(many / few)


def climb(name: str, folder: Path, ladder: Ladder | None = None) -> Climbed:
    """Review a ladder's models one by one."""
    ladder = ladder or LADDERS[name]
    rungs, found, path = [], {}, Path()
    for size in ladder.sizes:
        path = folder / f"{name.replace(' ', '-')}-{size:g}.step"
        if not path.exists():
            ladder.draw(path, size)
        spacing = 0.0 if ladder.spacing is None else ladder.spacing(size)
        found = job("review", path, spacing)
        if found["verdict"] == "not-reviewed":
            raise RuntimeError(f"{path.name} is not reviewed ({found['reason']}): its cost says nothing")
        grown = found["stations"] if ladder.unit == "stations" else size
        rungs.append((grown, found["cpu"]))
    return Climbed(tuple(rungs), (found, path))


def ladders(folder: Path, tell: Tell, names: Sequence[str] = ()) -> Iterator[Row]:
    """Cost against faces, stations, contact area and bodies, with its powers."""
    for name, ladder in LADDERS.items():
        if names and name not in names:
            continue
        tell(f"growth with {name}")
        climbed = climb(name, folder)
        worse = max(climbed.fitted, climbed.last)
        steps = ", ".join(f"{size:g}: {cost:.2f} s" for size, cost in climbed.rungs)
        behind = f"{ladder.unit}: {steps}; fitted {climbed.fitted:.2f}, between the last two {climbed.last:.2f}"
        yield Row(f"growth with {name}", worse, "power", f"<= {POWER}", worse <= POWER, behind)
        found, path = climbed.largest
        yield memory(path.stem, job("bare", path), found)


# -- from the shell ---------------------------------------------------------------------------------------


def start(_: Path, tell: Tell) -> Iterator[Row]:
    """A sample from the shell: imports, child and all."""
    tell("a sample from the shell")
    sample = str(SAMPLES / "sound.step")
    with tempfile.TemporaryDirectory() as kept:
        shell("review", sample, cache=kept)
        for what, bar, more, cache in (("cold", 1.2, ["--no-cache"], ""), ("with a kept measurement", 0.3, [], kept)):
            cpu, behind = in_pairs(lambda more=more, cache=cache: shell("review", sample, *more, cache=cache))
            yield Row(f"sample from the shell, {what}", cpu, "s", f"<= {bar:g}", cpu <= bar, behind)


def scan(_: Path, tell: Tell) -> Iterator[Row]:
    """One more model in a scan, warm: of what holds one part only, and of the samples."""
    from benchmarks.drawn import box_file

    with tempfile.TemporaryDirectory() as name:
        place = Path(name)
        for what, bar in (("single-part boxes", 0.08), ("samples", 0.25)):
            tell(f"scan of {what}")
            files = [box_file(place / "box.step")] if what != "samples" else _middle_samples()
            costs = {}
            for times in (1, 4):
                folder = place / f"{what.split()[0]}-{times}"
                folder.mkdir()
                for k in range(times * 6):
                    data = files[k % len(files)].read_bytes()
                    (folder / f"{k}.step").write_bytes(data.replace(b"HEADER;", b"HEADER;\n/* copy %d */" % k, 1))
                costs[times] = shell("scan", str(folder), "--out", f"{folder}-out", "--jobs", "1")
            yield within(f"one more model in a scan, {what}", (costs[4] - costs[1]) / 18, bar)


def _middle_samples() -> list[Path]:
    """Six samples of about the middle size."""
    files = sorted(SAMPLES.glob("*.step"), key=lambda file: file.stat().st_size)
    return files[len(files) // 2 - 3 : len(files) // 2 + 3]


_FILL = """
import json, os, sys, time
from msgspec.structs import replace
from pathlib import Path
sys.path[:0] = [{root!r}, {root!r} + "/tests", {root!r} + "/tests/scanning"]
from scan_fakes import Fakes, canned
from seamcheck.scanning.job import Outcome
import seamcheck

KNOWN = {{kind: canned(kind, "m.step") for kind in ("fail", "pass")}}

class Counting(Fakes):
    given = 0

    def submit(self, job):
        self.jobs.clear()  # keep none
        Counting.given += 1
        return super().submit(job)

    def outcome(self, job):
        kind = Path(job.files[0].place).read_text().split()[2]
        return Outcome(replace(KNOWN[kind], files=tuple(file.sha256 for file in job.files)), None)

decided = []

def tell(progress):
    if progress.stage != "looking" and not decided:
        decided.append(time.process_time() - start)

start = time.process_time()
result = seamcheck.scan("in", "out", workers=Counting(), pages="none", on_progress=tell)
print(json.dumps([result.models, Counting.given, decided[0], time.process_time() - start]))
"""


def store(_: Path, tell: Tell, rows: int = 100_000) -> Iterator[Row]:
    """A store of many models: a scan of which nothing changed decides what to review, and the page of the index opens.

    Its reviews are made up, as those of tests/scanning are: what is measured is the store and not a review.
    """
    tell(f"a store of {rows} models")
    memory = Path("/dev/shm")  # it is not the disk that is looked at
    with tempfile.TemporaryDirectory(dir=memory if os.access(memory, os.W_OK) else None) as name:
        place = Path(name)
        for n in range(rows):
            folder = place / "in" / f"s{n % 97}"
            folder.mkdir(parents=True, exist_ok=True)
            text = f"ISO-10303-21;\n/* {('fail', 'pass')[n % 2]} {n} */\nEND-ISO-10303-21;\n"
            (folder / f"m{n}.step").write_text(text)
        code = _FILL.format(root=str(ROOT))
        _, given, _, first = _scanned(place, code)
        assert given == rows
        models, given, decided, cpu = _scanned(place, code)
        assert (models, given) == (rows, 0)
        behind = f"{cpu:.1f} s with its lists and the start; filling it {1e3 * first / rows:.1f} ms a model"
        yield within(f"an unchanged scan of {rows} models decides", decided, 5.0, behind)
        page = place / "out/index.html"
        seconds = _opened(page, place)
        behind = f"wall, in chromium; {page.stat().st_size / 1e6:.1f} MB"
        if seconds is not None:
            yield Row(f"index page of {rows} models opens", seconds, "s", "< 1", seconds < 1.0, behind)


def _scanned(place: Path, code: str) -> tuple[int, int, float, float]:
    """Models, jobs given out, CPU seconds until it is known what to review, and in all."""
    done = subprocess.run([sys.executable, "-c", code], cwd=place, capture_output=True, text=True, check=True)
    models, given, decided, cpu = json.loads(done.stdout.splitlines()[-1])
    return models, given, decided, cpu


def _opened(page: Path, folder: Path) -> float | None:
    """Seconds until a browser has loaded a page; None where there is no browser."""
    sys.path.insert(0, str(ROOT / "tests/report"))
    from report_browser import CHROMIUM, DRIVER, browser

    if CHROMIUM is None or DRIVER is None:
        return None
    with browser(folder / "profile") as opened:
        opened.driver.get("about:blank")
        opened.driver.get(page.as_uri())
        return float(opened.run("const [t] = performance.getEntriesByType('navigation'); return t.loadEventEnd")) / 1e3
