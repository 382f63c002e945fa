"""``python -m benchmarks.recognition``: what is recognised on the labelled set, as a table in Markdown."""

from __future__ import annotations

import math
import sys
import tempfile
import time
import tomllib
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor, ThreadPoolExecutor
from dataclasses import dataclass, replace
from multiprocessing import get_context
from pathlib import Path
from typing import Any

import click

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "tests"))

import itertools

from builder.hard.tree import write_model
from builder.joints import JOINTS, JointTruth, half
from builder.joints.compare import HONEST, RIGHT, Row, kind_of, row

from seamcheck.pipeline import review
from seamcheck.settings.settings import Settings

TABLE = Path(__file__).with_name("recognition.md")
SECONDS, MEGABYTES = 300.0, 1500.0
"""Limits of one review of a public file; drawn cases are sound and run without a child."""


@dataclass(frozen=True)
class Labelled:
    """A case that was reviewed: its name, the true kind, what came of it, and CPU seconds (NaN in a child)."""

    name: str
    kind: str
    row: Row
    seconds: float = math.nan

    @property
    def half(self) -> str:
        return half(self.name)


def drawn(names: Sequence[str], folder: Path, jobs: int = 2, find_only: bool = False) -> Iterator[Labelled]:
    """The drawn cases, each written as STEP into the folder and reviewed; several at a time."""
    with ProcessPoolExecutor(jobs, mp_context=get_context("spawn")) as pool:
        yield from pool.map(_reviewed, names, [folder] * len(names), [find_only] * len(names))


def _reviewed(name: str, folder: Path, find_only: bool) -> Labelled:
    from seamcheck.pipeline import review_model

    case = JOINTS[name]()
    path = write_model(folder / f"{name}.step", case)
    start = time.process_time()
    told = row(found([path]), _without_rules(case)) if find_only else row(review_model([path], Settings()), case)
    return Labelled(name, case.kind, told, time.process_time() - start)


def found(paths: list[Path]) -> dict[str, Any]:
    """What of a review document comes from finding and tracing; a joint found gets the verdict '-'."""
    from seamcheck.assembly import read_assembly
    from seamcheck.assembly.explain import explained
    from seamcheck.contour import trace_contour
    from seamcheck.errors import NotReviewed
    from seamcheck.joint import find_joints, join_pieces
    from seamcheck.joint.candidates import interruptions

    assembly = None
    try:
        assembly = join_pieces(read_assembly(paths), Settings())
        joints = []
        for joint in find_joints(assembly, Settings()):
            contour = trace_contour(joint)
            joints.append(
                {
                    "id": joint.id, "cover": list(joint.cover), "base": list(joint.base), "kind": joint.kind,
                    "confidence": joint.confidence, "rib_on": joint.rib_on, "beam": joint.beam.tolist(),
                    "contours": [{"closed": path.closed} for path in contour.paths],
                    "junctions": contour.junctions,
                    "interruptions": interruptions(joint.region, joint.region.length / 2),
                }
            )  # fmt: skip
    except NotReviewed as refusal:
        why = refusal if assembly is None else explained(refusal, assembly)
        reason = {"code": why.code, "message": why.message}
        return {"verdict": "not-reviewed", "joints": [], "findings": [], "reason": reason}
    return {"verdict": "-", "joints": joints, "findings": [], "reason": None}


def _without_rules(case: Any) -> FileLabel:
    """The right answer of a case without its findings."""
    joints = tuple(replace(joint, must=(), may=None) for joint in case.joints)
    return FileLabel(joints, case.reasons, case.says, case.volume, case.most)


def _documents(files: dict[str, list[Path]], jobs: int) -> Iterator[tuple[str, dict[str, Any]]]:
    def document(paths: list[Path]) -> dict[str, Any]:
        limits: dict[str, Any] = {"time_limit": SECONDS, "memory_limit": MEGABYTES, "cache": False}
        return review(list(paths), Settings(), **limits).document

    with ThreadPoolExecutor(jobs) as pool:
        yield from zip(files, pool.map(document, files.values()), strict=True)


# -- files of other people: never part of the project, the label table is the user's ---------------------


@dataclass(frozen=True)
class FileLabel:
    """The right answer for one model of a folder, as the table of labels gives it."""

    joints: tuple[JointTruth, ...]
    reasons: tuple[str, ...] = ()
    says: tuple[str, ...] = ()
    volume: float = 0.0
    most: int = 6

    @property
    def kind(self) -> str:
        return " + ".join(joint.kinds[0] for joint in self.joints) or f"not reviewed ({self.reasons[0]})"


def real(folder: Path, labels: Path, jobs: int = 2) -> Iterator[Labelled]:
    """Models of a folder against a table of labels (TOML).

    Each ``[[model]]`` has ``name``, ``files`` (relative to the folder) and the answer: ``reasons``, ``says``,
    ``volume``, ``most``, and for every joint a ``[[model.joint]]`` with ``kinds``, ``cover`` and ``base`` (ids
    such as 'p1'), ``beam``, ``closed``, ``either``, ``must``, ``may``. Without ``may`` any rule may be must-fix.
    """
    models = {entry["name"]: entry for entry in tomllib.loads(labels.read_text(encoding="utf-8"))["model"]}
    files = {name: [folder / file for file in entry["files"]] for name, entry in models.items()}
    answers = {name: _label(entry) for name, entry in models.items()}
    for name, document in _documents(files, jobs):
        yield Labelled(name, answers[name].kind, row(document, answers[name]))


def _label(entry: dict[str, Any]) -> FileLabel:
    joints = tuple(
        JointTruth(
            kinds=tuple(joint["kinds"]),
            cover=int(joint["cover"][1:]) - 1,
            base=int(joint["base"][1:]) - 1,
            beam=tuple(joint["beam"]),
            closed=joint.get("closed", True),
            either=joint.get("either", False),
            must=tuple(joint.get("must", ())),
            may=tuple(joint["may"]) if "may" in joint else None,
        )
        for joint in entry.get("joint", ())
    )
    texts = {key: tuple(entry.get(key, ())) for key in ("reasons", "says")}
    return FileLabel(joints, **texts, volume=entry.get("volume", 0.0), most=entry.get("most", 6))


# -- the table ------------------------------------------------------------------------------------------


def markdown(cases: Sequence[Labelled], others: Sequence[Labelled], find_only: bool = False) -> str:
    """The page: sums, confidence against right and wrong on both halves, every drawn case; real files in sums only."""
    lines = [
        "# Recognition on the labelled set",
        "",
        "Made by `python -m benchmarks.recognition`; the drawn cases stand in `tests/builder/joints/`, each with an "
        "answer that follows from its dimensions. Thresholds are chosen on the half 'choose' and proved on the half "
        "'prove' (the parity of the first byte of the SHA-256 of a case's name). *honest*: a refusal that is allowed "
        "where geometry leaves the answer open. What strangers' files showed stands in [blind.md](blind.md)."
        + (
            " This table: finding and tracing only (`--find-only`), without verdicts and findings." if find_only else ""
        ),
        "",
        *_sums("drawn cases", cases),
        *(_sums("public files", others) if others else []),
        "",
        "## Confidence against right and wrong",
        "",
        *_confidence(cases, "drawn"),
        *(_confidence(others, "public") if others else []),
        "",
        "## Drawn cases",
        "",
        "| case | half | truth | found | roles, light | closed | verdict | must, attention | confidence | CPU s | |",
        "|---|---|---|---|---|---|---|---|---|---|---|",
        *(_line(case) for case in cases),
    ]
    return "\n".join(lines) + "\n"


def _sums(what: str, cases: Sequence[Labelled]) -> list[str]:
    outcomes = [case.row.outcome for case in cases]
    wrong = sum(case.row.is_wrong_joint for case in cases)
    good = outcomes.count(RIGHT)
    others = sorted(set(outcomes) - {RIGHT, HONEST})
    rest = ", ".join(f"{outcomes.count(outcome)} {outcome}" for outcome in others) or "nothing else"
    return [
        f"- {len(cases)} {what}: {good} right, {outcomes.count(HONEST)} honest refusals, {wrong} wrong joints stated. "
        f"Not right: {rest}."
    ]


def _confidence(cases: Sequence[Labelled], what: str) -> list[str]:
    lines = [f"| {what}, joint stated with confidence | half | right joint | wrong joint |", "|---|---|---|---|"]
    edges = (0.0, 0.7, 0.8, 0.9, 0.95, 1.0)
    for which in ("choose", "prove"):
        known = [c.row for c in cases if c.half == which and not math.isnan(c.row.confidence)]
        for low, high in itertools.pairwise(edges):
            here = [r for r in known if low <= r.confidence < high or r.confidence == high == 1.0]
            if here:
                wrong = sum(r.is_wrong_joint for r in here)
                lines.append(f"| {low:.2f} to {high:.2f} | {which} | {len(here) - wrong} | {wrong} |")
    return [*lines, ""]


def _line(case: Labelled) -> str:
    r = case.row
    sign: Callable[[bool | None], str] = lambda yes: {True: "yes", False: "**no**", None: "-"}[yes]  # noqa: E731
    sure = "-" if math.isnan(r.confidence) else f"{r.confidence:.2f}"
    outcome = r.outcome if r.outcome in (RIGHT, HONEST) else f"**{r.outcome}**"
    counts = f"{r.findings[0]}, {r.findings[1]}"
    seen = (r.found, sign(r.roles), sign(r.closed), r.verdict, counts, sure)
    cells = (case.name, case.half, case.kind, *seen, f"{case.seconds:.1f}", outcome)
    return f"| {' | '.join(cells)} |"


@click.command()
@click.option("--real", "folder", type=click.Path(exists=True, file_okay=False, path_type=Path), help="Public files.")
@click.option("--labels", type=click.Path(exists=True, path_type=Path), help="Their answers, TOML.")
@click.option("--only", multiple=True, help="Drawn cases whose name begins so; nothing is written then.")
@click.option("--jobs", default=2, show_default=True)
@click.option("--find-only", is_flag=True, help="Find and trace only: no verdicts, no findings, a third of the time.")
def main(folder: Path | None, labels: Path | None, only: tuple[str, ...], jobs: int, find_only: bool) -> None:
    """Review the labelled set and write the table beside this module."""
    names = [name for name in JOINTS if not only or name.startswith(only)]
    with tempfile.TemporaryDirectory() as scratch:
        cases = [_told(case) for case in drawn(names, Path(scratch), jobs, find_only)]
    if not only:
        TABLE.write_text(markdown(cases, [], find_only), encoding="utf-8")
    others = [_told(case) for case in real(folder, labels, jobs)] if folder and labels else []
    text = markdown(cases, others, find_only)
    if others and not only:
        TABLE.write_text(text, encoding="utf-8")
    click.echo(text.split("## Drawn cases", 1)[0])


def _told(case: Labelled) -> Labelled:
    """The case, said in a line as soon as it is reviewed."""
    sure = "" if math.isnan(case.row.confidence) else f" ({case.row.confidence:.2f})"
    click.echo(f"{case.name}: {case.row.outcome}; {case.row.found}{sure} for {case.kind}; {'; '.join(case.row.why)}")
    return case


__all__ = ["drawn", "kind_of", "markdown", "real"]

if __name__ == "__main__":
    main()
