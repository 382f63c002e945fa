"""Whole reviews of damaged files: each ends in a verdict in time, none in a false pass, none is refused for nothing.

The quick suite damages two models, each in other ways; the thorough one spreads all ways over five and damages each in
each way. The long run, with as many as you like::

    pytest -m thorough tests/fuzz --variants 5000 --first 20000
"""

from __future__ import annotations

import json
import shutil
import time
from collections import Counter
from pathlib import Path

import damage
import fuzz_run
import pytest
from fuzz_models import MODELS, target
from fuzz_options import OPTIONS
from telling import telling

from seamcheck.version import __version__

EACH = len(damage.DAMAGES)  # of every model, in the thorough suite: one of each way
FEW = -(-EACH // len(MODELS))  # of every model at least: together one of each way
SEEDS_APART = 61  # from one model's first seed to the next one's
ROUND = EACH  # variants of a model before the next one's turn in the long run
LEAST_REVIEWED = 0.35  # a reader that refuses everything would pass the rest of these tests

# The seed of one variant and what is wrong with it; empty: nothing known. A new fault fails the tests.
KNOWN: dict[tuple[str, str, int], str] = {}


def option(request, name):
    """An option of conftest.py, which pytest takes only where this folder is named on its command line."""
    return request.config.getoption(f"--{name}", default=OPTIONS[name][0])


@pytest.fixture(scope="module")
def pool(request):
    with fuzz_run.workers(option(request, "workers"), option(request, "seconds") or fuzz_run.TIME_LIMIT_S) as running:
        yield running


def ends_of(pool, folder, name, count, first):
    """The ends of one model's variants; every faulty one must be known."""
    ends = list(fuzz_run.run(pool, target(name, folder), count, folder, first))
    faulty = [str(end) for end in ends if end.faults and (end.target, end.way, end.seed) not in KNOWN]
    assert faulty == []
    return ends


def test_there_are_enough_ways_and_variants():
    assert len(damage.DAMAGES) >= 10
    assert FEW * len(MODELS) >= EACH >= 30


@pytest.mark.parametrize("names", telling([tuple(MODELS), tuple(MODELS)[:2]], [tuple(MODELS)[:2]]))
def test_ways_of_damage_end_in_a_review_or_a_refusal_and_no_false_pass(pool, tmp_path, names):
    ends = []
    for number, name in enumerate(names):
        (tmp_path / str(number)).mkdir()
        ends += ends_of(pool, tmp_path / str(number), name, FEW, first=FEW * number)
    assert len({end.way for end in ends}) == min(FEW * len(names), len(damage.DAMAGES))
    reviewed = [end for end in ends if end.verdict != "not-reviewed"]
    assert len(reviewed) > LEAST_REVIEWED * len(ends)


@pytest.mark.thorough
@pytest.mark.parametrize("name", MODELS)
def test_damaged_models_are_reviewed_or_refused_and_never_passed_falsely(pool, tmp_path, name):
    ends = ends_of(pool, tmp_path, name, EACH, first=SEEDS_APART * list(MODELS).index(name))
    assert len(ends) == EACH
    reviewed = [end for end in ends if end.verdict != "not-reviewed"]
    assert len(reviewed) > LEAST_REVIEWED * EACH


def test_the_checks_see_what_is_wrong(tmp_path):
    """A false pass, another seam and a refusal without cause are seen as such."""
    spoiled = target("narrow rib", tmp_path)
    truth = spoiled.model.truth
    points = [tuple(p) for p in truth.stations(50)[0]]
    facts = {
        "verdict": "pass",
        "broken": [],
        "doubts": [],
        "joints": [
            {
                "cover": ["capsule lid"],
                "base": ["capsule"],
                "rib_on": "base",
                "paths": [{"closed": True, "length": truth.length, "points": points}],
            }
        ],
    }
    undamaged = {"broken": ["rib-width"]}
    assert fuzz_run.is_true_seam(spoiled, facts)
    assert any("false pass" in fault for fault in fuzz_run.faults_of_review(spoiled, facts, undamaged, "no-radius"))
    failed = facts | {"verdict": "fail", "broken": ["rib-width"]}
    assert fuzz_run.faults_of_review(spoiled, failed, undamaged, "no-radius") == []
    moved = failed | {
        "joints": [facts["joints"][0] | {"paths": [{"length": truth.length, "points": [(0.0, 0.0, 0.0)]}]}]
    }
    assert not fuzz_run.is_true_seam(spoiled, moved)
    assert fuzz_run.faults_of_review(spoiled, moved, undamaged, "no-radius") == ["another seam without a doubt"]
    assert fuzz_run.faults_of_refusal("timeout", "Not finished.") == ["hang"]
    assert fuzz_run.faults_of_refusal("crashed", "The CAD kernel crashed while measuring the seam.") != []


def test_a_file_that_leaves_open_what_it_means_is_told_from_one_that_is_only_damaged():
    record = b"#7=DIRECTION('',(0.,0.,1.));"
    whole = b"DATA;\n#6=AXIS('(((',#7);\n" + record + b"\n"
    assert not fuzz_run.leaves_open(whole)
    assert not fuzz_run.leaves_open(whole + record)
    assert fuzz_run.leaves_open(whole + record.replace(b"0.,1.", b"1.,0."))
    assert fuzz_run.leaves_open(whole.replace(b"#7)", b"(" * 1000 + b")"))
    assert not fuzz_run.leaves_open(whole.replace(b"#7)", b"(#7)"))
    assert fuzz_run.leaves_open(whole.replace(b"0.,1.", b"nan,1."))
    assert not fuzz_run.leaves_open(whole.replace(b"0.,1.", b"1.E300,1."))


def test_a_run_that_was_broken_off_goes_on_where_it_ended(tmp_path, request):
    end = fuzz_run.End("box", "truncate", 10_000, "not-reviewed", "unreadable", "Cut.", ("no plain sentence",))
    nothing, first = summary([], request, 0), summary([end], request, 3)
    assert kept_before(tmp_path / "kept.json", nothing) == nothing
    assert together(nothing, first) == first
    (tmp_path / "kept.json").write_text(json.dumps(together(first, first)))
    kept = kept_before(tmp_path / "kept.json", nothing)
    assert (kept["variants"], kept["by model"]["box"], kept["seconds"], kept["other faults"]) == (2, 2, 6, 2)
    assert kept["verdicts"] == {"not-reviewed unreadable": 2}
    (tmp_path / "kept.json").write_text(json.dumps(kept | {"first seed": 7}))
    with pytest.raises(AssertionError, match="holds another run"):
        kept_before(tmp_path / "kept.json", nothing)


@pytest.mark.thorough
def test_thousands_of_damaged_models(pool, tmp_path, request):
    count, first = option(request, "variants"), option(request, "first")
    each, ends, began = -(-count // len(MODELS)), [], time.monotonic()
    keep = Path(option(request, "keep") or tmp_path / "kept.json")
    before = kept_before(keep, summary([], request, 0))
    kept = before
    for done in range(0, each, ROUND):  # round by round, so that a run that is broken off has looked at every model
        for number, name in enumerate(MODELS):
            if done < before["by model"][name]:
                continue
            folder = tmp_path / f"{number}-{done}"
            folder.mkdir()
            some = min(ROUND, each - done)
            for end in fuzz_run.run(pool, target(name, folder), some, folder, first + number * count + done):
                ends.append(end)
                if end.faults:
                    print(f"\n{end}", flush=True)
            shutil.rmtree(folder)
            kept = together(before, summary(ends, request, time.monotonic() - began))
            keep.write_text(json.dumps(kept, indent=1) + "\n", encoding="utf-8")
    print(f"\n{json.dumps(kept, indent=1)}")
    assert sum(kept["by model"].values()) >= count
    assert [str(end) for end in ends if end.faults and (end.target, end.way, end.seed) not in KNOWN] == []


def kept_before(file, nothing):
    """What an earlier, broken-off run of the same variants kept; a new run goes on behind it."""
    if not file.exists():
        return nothing
    kept = json.loads(file.read_text(encoding="utf-8"))
    for same in ("seamcheck", "asked for", "first seed"):
        assert kept[same] == nothing[same], f"{file} holds another run ({same}); name another file"
    return kept


def together(one, two):
    """Two summaries of parts of one run."""
    added = {"variants", "seconds", "kernel crashes", "time limit reached", "false passes", "other faults", "faults"}
    counted = {key: dict(Counter(one[key]) + Counter(two[key])) for key in ("verdicts", "by way of damage")}
    by_model = {name: one["by model"][name] + two["by model"][name] for name in MODELS}
    return two | {key: one[key] + two[key] for key in added} | counted | {"by model": by_model}


def summary(ends, request, seconds):
    """What a long run found, to be kept."""
    return {
        "seamcheck": __version__,
        "asked for": option(request, "variants"),
        "variants": len(ends),
        "first seed": option(request, "first"),
        "seconds for each": option(request, "seconds"),
        "seconds": round(seconds),
        "verdicts": dict(Counter(f"{end.verdict} {end.reason}".strip() for end in ends).most_common()),
        "kernel crashes": sum(end.reason == "crashed" for end in ends),
        "time limit reached": sum(end.reason == "timeout" for end in ends),
        "false passes": sum(any("false pass" in fault for fault in end.faults) for end in ends),
        "other faults": sum(bool(end.faults) and not any("false pass" in f for f in end.faults) for end in ends),
        "faults": [str(end)[:400] for end in ends if end.faults],
        "by model": {name: sum(end.target == name for end in ends) for name in MODELS},
        "by way of damage": dict(sorted(Counter(end.way for end in ends).items())),
    }
