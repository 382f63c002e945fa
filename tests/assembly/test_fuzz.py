"""Damaged files by the hundred: every one ends in an assembly or in a sentence, within its limits."""

from __future__ import annotations

import re
import sys
from collections import Counter
from pathlib import Path

import cadquery as cq
import pytest
from reading_models import box, write

from seamcheck.errors import NotReviewed
from seamcheck.isolation import WarmWorkers

sys.path.insert(0, str(Path(__file__).parents[1]))
import damage

VARIANTS = 340  # ten of every way and some more
TIME_LIMIT_S = 20.0
EXPECTED = {"unreadable", "empty", "not-step", "no-solid", "unsupported", "scale-suspect", "crashed"}


@pytest.fixture(scope="module")
def sound(tmp_path_factory) -> bytes:
    case = box(40, 30, 10).faces(">Z").shell(-2).faces("<Z").workplane(centerOption="CenterOfMass").hole(4)
    lid = box(40, 30, 2).edges("|Z").fillet(3)
    path = tmp_path_factory.mktemp("fuzz") / "sound.step"
    write(path, [("case", case, None), ("lid", lid, cq.Location((0, 0, 10)))])
    return path.read_bytes()


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


def check_variants(workers, folder: Path, variants) -> Counter:
    ends: Counter = Counter()
    variants = list(variants)
    for variant, (facts, error) in zip(
        variants, read_all(workers, folder, (v.data for v in variants)), strict=True
    ):
        where = f"{variant.way}, seed {variant.seed}"
        if error is None:
            assert any(part["kind"] == "solid" for part in facts["parts"]), where
            ends["read"] += 1
            continue
        assert isinstance(error, NotReviewed), (where, error)
        assert error.code in EXPECTED, (where, error.code, error.message)
        assert error.message.endswith("."), where
        assert "unexpected" not in error.message, (where, error.message, error.traceback)
        if error.code == "crashed":
            assert re.search(r"while (reading|transferring|checking)", error.message), (where, error.message)
        ends[error.code] += 1
    return ends


def test_every_damaged_file_ends_in_an_assembly_or_a_sentence(workers, sound, tmp_path):
    ends = check_variants(workers, tmp_path, damage.variants(sound, VARIANTS))
    assert ends.total() == VARIANTS
    # most damage is small: a reader that refuses everything would pass the rest of this test
    assert ends["read"] > 0.3 * VARIANTS


@pytest.mark.thorough
def test_thousands_of_damaged_files(workers, sound, tmp_path):
    assert check_variants(workers, tmp_path, damage.variants(sound, 4000, first=1000)).total() == 4000


def test_another_dress_changes_nothing_that_is_read(workers, sound, tmp_path):
    names = sorted(damage.DRESSES)
    texts = [variant.data for variant in damage.variants(sound, 3 * len(names), damage.DRESSES)]
    original, *dressed = [facts for facts, _ in read_all(workers, tmp_path, [sound, *texts])]
    for number, (text, facts) in enumerate(zip(texts, dressed, strict=True)):
        name = names[number % len(names)]
        assert facts is not None, name
        for part, same in zip(facts["parts"], original["parts"], strict=True):
            for key in ("name", "path", "kind", "faces", "colour", "notes"):
                assert part[key] == same[key], (name, key)
            assert part["volume"] == pytest.approx(same["volume"]), name
            lines = text.removeprefix(b"\xef\xbb\xbf").split(b"\n")
            for entity in part["entities"]:
                assert entity is not None, name
                assert re.search(rb"#%d\s*=\s*ADVANCED_FACE" % entity[0], lines[entity[1] - 1]), name
