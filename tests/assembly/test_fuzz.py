"""Damaged files by the hundred: every one is read or refused with a sentence, and none is silently wrong."""

from __future__ import annotations

import math
import re
import sys
from collections import Counter
from pathlib import Path

import cadquery as cq
import pytest
from reading_models import box, write
from telling import telling

from seamcheck.errors import NotReviewed
from seamcheck.isolation import WarmWorkers

sys.path.insert(0, str(Path(__file__).parents[1]))
import damage

EACH = 2  # variants of every way, in the quick suite
TIME_LIMIT_S = 300.0  # a sound model of this size takes 0.1 s; other work on the machine must not count
EXPECTED = {"unreadable", "empty", "not-step", "no-solid", "unsupported", "scale-suspect", "crashed"}

# what these do can be another well-formed model, which no reader could tell from the meant one
OTHER_MODELS = {"wrong-number", "wrong-reference", "swap-bodies", "flipped-bit", "truncate-and-close"}


def case_and_lid():
    case = box(40, 30, 10).edges("|Z").fillet(4).faces(">Z").shell(-2)
    lid = box(40, 30, 2).edges("|Z").fillet(3).faces(">Z").workplane(centerOption="CenterOfMass").hole(4)
    return [("case", case, None), ("lid Ü", lid, cq.Location((0, 0, 10)))]


def dome_ring_and_wave():
    """Spheres, a torus and B-splines beside planes."""
    dome = cq.Workplane().sphere(15).cut(box(60, 60, 30).translate((-30, -30, -30))).faces("<Z").shell(-1.2)
    ring = cq.Workplane("XZ").moveTo(18, 0).circle(2).revolve(360, (0, 0), (0, 1))
    line = cq.Workplane().moveTo(-20, 0).spline([(-5, 9), (8, -4), (20, 2)], includeCurrent=True)
    wave = line.lineTo(20, -15).lineTo(-20, -15).close().extrude(3)
    return [("dome", dome, None), ("ring", ring, None), ("wave", wave, cq.Location((0, 0, -10)))]


@pytest.fixture(scope="module")
def workers():
    limits = {"time_limit_s": TIME_LIMIT_S, "memory_limit_mb": 2000}
    with WarmWorkers(2, preload=("seamcheck.assembly.read", "reading_jobs"), **limits) as running:
        yield running


def read_all(workers, folder: Path, texts):
    """(facts, None) or (None, error) of every text, in order."""
    futures = []
    for number, data in enumerate(texts):
        path = folder / f"{number}.step"
        path.write_bytes(data)
        futures.append(workers.submit("reading_jobs:read_facts", (str(path),)))
    for future in futures:
        error = future.exception()
        yield (None, error) if error is not None else (future.result(), None)


def bodies(facts):
    """What has to be the same however the text is written."""
    return [
        (p["kind"], p["faces"], round(p["volume"], 3), p["box"] and tuple(round(x, 3) for x in p["box"]))
        for p in facts["parts"]
    ]


def is_silent(facts) -> bool:
    return not facts["notes"] and not any(part["notes"] for part in facts["parts"])


def check_refusal(error: BaseException, where: str) -> str:
    assert isinstance(error, NotReviewed), (where, error)
    assert error.code in EXPECTED, (where, error.code, error.message)
    assert error.message.endswith("."), where
    assert "unexpected" not in error.message, (where, error.message, error.traceback)
    if error.code == "crashed":
        assert re.search(r"while (reading|transferring|checking)", error.message), (where, error.message)
    return error.code


def check_variants(workers, folder: Path, sound: bytes, each: int, first: int = 0) -> Counter:
    """Read damaged variants of a file; how many ended how."""
    count = each * len(damage.DAMAGES)
    variants = list(damage.variants(sound, count, first=first))
    (true, _), *ends = read_all(workers, folder, [sound, *(variant.data for variant in variants)])
    assert is_silent(true)
    found: Counter = Counter()
    for variant, (facts, error) in zip(variants, ends, strict=True):
        where = f"{variant.way}, seed {variant.seed}"
        if error is not None:
            found[check_refusal(error, where)] += 1
            continue
        assert any(part["kind"] == "solid" for part in facts["parts"]), where
        for part in facts["parts"]:
            if part["kind"] != "other":
                assert all(math.isfinite(value) for value in (part["volume"], *part["box"])), where
        if is_silent(facts) and variant.way not in OTHER_MODELS:
            assert bodies(facts) == bodies(true), f"{where}: read without a word, but not what the file means"
        found["read" if is_silent(facts) else "read with notes"] += 1
    assert found.total() == count
    return found


def test_damaged_files_are_read_or_refused_and_never_silently_wrong(workers, tmp_path):
    assert len(damage.DAMAGES) >= 30
    sound = write(tmp_path / "sound.step", case_and_lid()).read_bytes()
    ends = check_variants(workers, tmp_path, sound, EACH)
    # most damage is small: a reader that refuses everything would pass the rest of this test
    assert ends["read"] + ends["read with notes"] > 0.3 * ends.total()


@pytest.mark.thorough
@pytest.mark.parametrize("unit", ["MM", "INCH"])
@pytest.mark.parametrize("parts", [case_and_lid, dome_ring_and_wave])
def test_thousands_of_damaged_files(workers, tmp_path, parts, unit):
    sound = write(tmp_path / "sound.step", parts(), unit=unit).read_bytes()
    print(check_variants(workers, tmp_path, sound, 40, first=10_000))


@pytest.mark.parametrize("parts", telling([case_and_lid, dome_ring_and_wave], []))
def test_another_dress_changes_nothing_that_is_read(workers, tmp_path, parts):
    sound = write(tmp_path / "sound.step", parts()).read_bytes()
    variants = list(damage.variants(sound, len(damage.DRESSES), damage.DRESSES))
    texts = [sound, *(variant.data for variant in variants)]
    (original, _), *dressed = read_all(workers, tmp_path, texts)
    for variant, (facts, error) in zip(variants, dressed, strict=True):
        assert error is None, (variant.way, error)
        assert bodies(facts) == bodies(original), variant.way
        assert facts["notes"] == original["notes"] == ()
        lines = variant.data.removeprefix(b"\xef\xbb\xbf").split(b"\n")
        for part, same in zip(facts["parts"], original["parts"], strict=True):
            for key in ("name", "path", "colour", "transparency", "notes"):
                assert part[key] == same[key], (variant.way, key)
            for entity in part["entities"]:
                assert entity is not None, variant.way
                record = rb"#%d\s*=\s*ADVANCED_FACE" % entity[0]
                assert re.search(record, lines[entity[1] - 1]), (variant.way, entity)
