"""Archives: what is in them, within bounds, and nothing of theirs ever becomes a path."""

import gzip
import hashlib
import io
import os
import struct
import zipfile
from pathlib import Path

import pytest

from seamcheck.assembly.source import Given
from seamcheck.document.make import not_reviewed_document
from seamcheck.errors import NotReviewed
from seamcheck.scanning.archives import MOST_RATIO, Refused, look_into, read
from seamcheck.scanning.job import Job, JobFile, review_job
from seamcheck.scanning.patterns import Patterns
from seamcheck.settings.settings import Settings

MB = 10**6


def zipped(file: Path, members: dict[str, bytes], how=zipfile.ZIP_DEFLATED) -> Path:
    with zipfile.ZipFile(file, "w", how) as archive:
        for name, data in members.items():
            archive.writestr(name, data)
    return file


def noise(size: int) -> bytes:
    return os.urandom(size)


def looked(file: Path, most: int = 10 * MB):
    return look_into(file, Patterns(), most)


def test_members_are_listed_with_hash_and_size(tmp_path):
    data = {"a/lid.step": b"one", "b\\case.STP": b"second", "readme.txt": b"x", "deep/": b""}
    members = looked(zipped(tmp_path / "x.zip", data))
    assert [(m.path, m.bytes, m.sha256, m.code) for m in members] == [
        (name, len(data[name]), hashlib.sha256(data[name]).hexdigest(), "") for name in ("a/lid.step", "b\\case.STP")
    ]
    for member in members:
        assert read(tmp_path / "x.zip", member.number, MB) == data[member.path]


@pytest.mark.parametrize("ending", ["step.gz", "stpz"])
def test_gzip_holds_one_model(tmp_path, ending):
    file = tmp_path / f"lid.{ending}"
    file.write_bytes(gzip.compress(b"ISO-10303-21;"))
    (member,) = looked(file)
    assert (member.bytes, member.sha256) == (13, hashlib.sha256(b"ISO-10303-21;").hexdigest())


def test_a_stpz_may_be_zip_or_plain_as_well(tmp_path):
    assert looked(zipped(tmp_path / "a.stpz", {"a.stp": b"x"}))[0].bytes == 1
    (tmp_path / "b.stpz").write_bytes(b"ISO-10303-21;")
    assert read(tmp_path / "b.stpz", looked(tmp_path / "b.stpz")[0].number, MB) == b"ISO-10303-21;"


def test_what_unpacks_to_too_much_is_refused_while_it_unpacks(tmp_path):
    bomb = zipped(tmp_path / "bomb.zip", {"bomb.step": b"\0" * 30 * MB, "small.step": b"x"})
    assert bomb.stat().st_size < 40_000
    members = looked(bomb, 100 * MB)
    assert [m.code for m in members] == ["archive-too-big", ""]
    assert f"{MOST_RATIO} times" in members[0].reason
    large = zipped(tmp_path / "large.zip", {"large.step": noise(3 * MB)})
    assert [m.code for m in looked(large, 2 * MB)] == ["archive-too-big"]
    (tmp_path / "bomb.stpz").write_bytes(gzip.compress(b"\0" * 30 * MB))
    assert looked(tmp_path / "bomb.stpz", 100 * MB)[0].code == "archive-too-big"
    with pytest.raises(Refused):
        read(bomb, 0, 100 * MB)


def test_a_size_that_the_archive_lies_about_does_not_help_it(tmp_path):
    """The sizes in both heads are changed (PKWARE APPNOTE 4.3.7 and 4.3.12, from memory: offsets 22 and 24)."""
    file = zipped(tmp_path / "liar.zip", {"liar.step": b"\0" * 30 * MB})
    raw = bytearray(file.read_bytes())
    struct.pack_into("<I", raw, 22, 1000)
    struct.pack_into("<I", raw, raw.index(b"PK\x01\x02") + 24, 1000)
    file.write_bytes(raw)
    (member,) = looked(file, 100 * MB)
    assert member.code in ("archive-damaged", "archive-too-big")


def test_all_members_together_are_bounded(tmp_path):
    file = zipped(tmp_path / "many.zip", {f"{n}.step": noise(MB) for n in range(8)}, zipfile.ZIP_STORED)
    assert [m.code for m in looked(file, MB)].count("archive-too-big") == 3


def test_archives_in_archives_stay_closed(tmp_path):
    inner = io.BytesIO()
    with zipfile.ZipFile(inner, "w") as archive:
        archive.writestr("a.step", b"x")
    file = zipped(tmp_path / "outer.zip", {"inner.zip": inner.getvalue(), "b.stpz": gzip.compress(b"x")})
    assert [m.code for m in looked(file)] == ["archive-in-archive"] * 2


def test_locked_members_are_told(tmp_path):
    file = zipped(tmp_path / "locked.zip", {"a.step": b"x"})
    raw = bytearray(file.read_bytes())
    for mark, offset in ((b"PK\x03\x04", 6), (b"PK\x01\x02", 8)):  # bit 0 of the flags: encrypted (APPNOTE 4.4.4)
        raw[raw.index(mark) + offset] |= 1
    file.write_bytes(raw)
    assert [m.code for m in looked(file)] == ["locked"]


@pytest.mark.parametrize("name", ["x.zip", "x.step.gz"])
@pytest.mark.parametrize("keep", [0, 3, 30, 60])
def test_damaged_archives_are_refused(tmp_path, name, keep):
    file = tmp_path / name
    if name.endswith("zip"):
        zipped(file, {"a.step": noise(200)})
    else:
        file.write_bytes(gzip.compress(noise(200)))
    file.write_bytes(file.read_bytes()[:keep])
    answer = looked(file)
    codes = [answer.code] if isinstance(answer, Refused) else [m.code for m in answer]
    assert codes == ["archive-damaged"]


def test_damage_within_a_member_is_found_by_its_check_sum(tmp_path):
    file = zipped(tmp_path / "x.zip", {"a.step": noise(5000)}, zipfile.ZIP_STORED)
    raw = bytearray(file.read_bytes())
    raw[1000] ^= 1
    file.write_bytes(raw)
    assert [m.code for m in looked(file)] == ["archive-damaged"]


def test_a_zip_without_models_is_no_model(tmp_path):
    assert looked(zipped(tmp_path / "x.zip", {"readme.txt": b"x"})) == []


@pytest.mark.parametrize("name", ["../../../../out.step", "/absolute/out.step", "..\\..\\out.step", "C:\\out.step"])
def test_no_member_is_written_anywhere(tmp_path, name, monkeypatch):
    seen = []

    def review_model(files, settings, *more):
        seen.append(files[0])
        return not_reviewed_document([], NotReviewed("empty", "x"), settings)

    monkeypatch.setattr("seamcheck.pipeline.review_model", review_model)
    file = zipped(tmp_path / "slip.zip", {name: b"x"})
    (member,) = looked(file)
    inner = member.path.replace("\\", "/").rpartition("/")[2]
    job = Job("k", "v", (JobFile(inner, str(file), member.number, ""),), Settings(), "none", 10, 500, MB)
    before = set(tmp_path.rglob("*"))
    review_job(job, lambda *stage: None)
    assert seen == [Given(inner, b"x")]
    assert set(tmp_path.rglob("*")) == before
