"""Review damaged variants of a model, and hold every answer against what the model was before the damage."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from concurrent.futures import Future
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from fuzz_models import Target

from seamcheck.errors import REASONS, NotReviewed
from seamcheck.isolation import WarmWorkers
from seamcheck.isolation.loading import REVIEW_MODULES

sys.path.insert(0, str(Path(__file__).parents[1]))
import damage

TIME_LIMIT_S = 300.0  # a sound model of this size takes half a second; other work on the machine must not count
OFF_LINE_MM = 0.02  # DESIGN.md section 7: the mid-line's bar
LONGER_SHARE = 0.002  # of the mid-line's length; 2 mm chords of arcs of 5 mm are measured to this

NESTING = 100  # brackets that never close; one or two are a slip of the pen

_NO_NUMBER = re.compile(rb"[(,]\s*[-+]?(?:nan|inf|1\.#IND)\s*[,)]", re.IGNORECASE)
_DEFINED = re.compile(rb"^[ \t]*#(\d+)[ \t]*=[ \t]*(.*)$", re.MULTILINE)

# what these do can be another well-formed model, which no reader could tell from the one that was meant
OTHER_MODELS = {"wrong-number", "wrong-reference", "swap-bodies", "flipped-bit"}


@dataclass(frozen=True)
class End:
    """How the review of one variant ended.

    Attributes
    ----------
    verdict : pass, attention, fail, not-reviewed
    reason : code where not reviewed, else ''
    message : of the reason, or of the doubts
    faults : what is wrong with this end, as words; empty for a right one
    """

    target: str
    way: str
    seed: int
    verdict: str
    reason: str
    message: str
    faults: tuple[str, ...]

    def __str__(self) -> str:
        what = f"{self.verdict} {self.reason}".strip()
        return f"{self.target}, {self.way}, seed {self.seed}: {what}: {', '.join(self.faults)}: {self.message}"


def workers(count: int | None = None, seconds: float = TIME_LIMIT_S) -> WarmWorkers:
    return WarmWorkers(count, preload=(*REVIEW_MODULES, "fuzz_jobs"), time_limit_s=seconds, memory_limit_mb=2000)


def run(pool: WarmWorkers, target: Target, count: int, folder: Path, first: int = 0) -> Iterator[End]:
    """Review ``count`` damaged variants of a model."""
    whole = folder / "whole.step"
    whole.write_bytes(target.data)
    undamaged = pool.submit("fuzz_jobs:review_facts", (str(whole),)).result()
    plain = pool.submit("fuzz_jobs:plain_facts", (str(whole),)).result()
    assert undamaged["loaded"] == [], f"REVIEW_MODULES lacks what every review loads: {undamaged['loaded']}"
    assert set(undamaged["broken"]) == target.broken, (target.name, undamaged["broken"])
    assert is_true_seam(target, undamaged)
    assert plain is not None
    variants = list(damage.variants(target.data, count, first=first))
    jobs: list[tuple[Path, Future[Any]]] = []
    for variant in variants:
        path = folder / f"{variant.way}-{variant.seed}.step"
        path.write_bytes(variant.data)
        jobs.append((path, pool.submit("fuzz_jobs:review_facts", (str(path),))))
    for variant, (path, job) in zip(variants, jobs, strict=True):
        error = job.exception()
        faults: list[str]
        if error is None:
            facts = job.result()
            verdict, reason = facts["verdict"], facts["reason"] or {}
            code, message = reason.get("code", ""), reason.get("message", "") or " ".join(facts["doubts"])
            faults = faults_of_review(target, facts, undamaged, variant.way)
        elif isinstance(error, NotReviewed):
            verdict, code, message = "not-reviewed", error.code, error.message
            faults = [f"traceback {getattr(error, 'traceback', '')}"] * ("unexpected" in message)
        else:
            verdict, code, message, faults = "none", "", repr(error), ["no verdict"]
        if verdict == "not-reviewed":
            faults += faults_of_refusal(code, message)
            if not leaves_open(variant.data) and reads_the_same(pool, path, plain):
                faults.append("refused, though it reads soundly")
        yield End(target.name, variant.way, variant.seed, verdict, code, message, tuple(faults))


def faults_of_review(target: Target, facts: dict[str, Any], undamaged: dict[str, Any], way: str) -> list[str]:
    """False passes, and verdicts that changed without a word about the damage."""
    if facts["verdict"] == "not-reviewed":
        return []
    faults = []
    if facts["verdict"] == "pass":
        if target.broken:
            faults.append("false pass: the undamaged model breaks " + ", ".join(sorted(target.broken)))
        if not is_true_seam(target, facts):
            faults.append("false pass: not the true seam")
    if way not in OTHER_MODELS and not facts["doubts"]:
        if not is_true_seam(target, facts):
            faults.append("another seam without a doubt")
        if facts["broken"] != undamaged["broken"]:
            faults.append(f"other must-fix rules without a doubt: {', '.join(facts['broken']) or 'none'}")
    return faults


def faults_of_refusal(code: str, message: str) -> list[str]:
    faults = []
    if code not in REASONS:
        faults.append("a reason that is none")
    if code == "timeout":
        faults.append("hang")
    if not message.endswith(".") or len(message) > 800:
        faults.append("no plain sentence")
    if code == "crashed" and not re.search(r"while (reading|transferring|checking)", message):
        faults.append("crash beyond the reader")
    return faults


def is_true_seam(target: Target, facts: dict[str, Any]) -> bool:
    """Whether cover, base, rib and mid-line of a review are those from which the model was drawn."""
    spec, truth = target.model.truth.spec, target.model.truth
    if len(facts["joints"]) != 1:
        return False
    joint = facts["joints"][0]
    named = zip(joint["cover"] + joint["base"], (spec.cover_name, spec.base_name), strict=True)
    if not all(name in (true, "") for name, true in named) or joint["rib_on"] != spec.rib_on:  # '': the name was lost
        return False
    points = np.array([point for path in joint["paths"] for point in path["points"]], dtype=float)
    if not len(points) or truth.distance(points).max() > OFF_LINE_MM:
        return False
    gap = 2.0 if "seam-open" in target.broken else 0.0  # where the rib is interrupted
    length = sum(path["length"] for path in joint["paths"])
    return abs(length + gap - truth.length) < LONGER_SHARE * truth.length + 0.1 * gap


def leaves_open(data: bytes) -> bool:
    """Whether a file does not say which model is meant: a number given to two records, brackets that never close, or
    a place that is no number.

    ISO 10303-21 (2016), 11.1: the name of an instance is unique within the file; every list ends; 6.4.2: a real is
    written in digits. One reader takes the first record, another the last one; one makes the edge anew from its ends,
    another leaves the body out; that one of them makes the meant bodies of it is chance, and a refusal is right.
    """
    defined = set(_DEFINED.findall(data))  # the same line twice says the same
    is_twice = len({name for name, _ in defined}) < len(defined)
    return is_twice or data.count(b"(") - data.count(b")") > NESTING or bool(_NO_NUMBER.search(data))


def reads_the_same(pool: WarmWorkers, path: Path, plain: list[tuple[Any, ...]]) -> bool:
    """Whether the kernel's plain reader makes of a file the same valid solids as of the undamaged one."""
    job = pool.submit("fuzz_jobs:plain_facts", (str(path),))
    return job.exception() is None and job.result() == plain
