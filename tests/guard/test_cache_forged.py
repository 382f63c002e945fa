"""Whoever can write into the cache folder can neither forge a verdict nor fill the memory."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import zlib

import pytest
from guard_runs import ROOT, seamcheck
from telling import telling

from seamcheck.assembly.source import file_facts
from seamcheck.cache.folder import _MAGIC, SECRET_VARIABLE, Folder, _seal, machine_secret
from seamcheck.cache.key import key_of
from seamcheck.cache.measured import from_bytes, keep, recall, to_bytes
from seamcheck.cache.plain import restored
from seamcheck.errors import NotReviewed
from seamcheck.pipeline import _judged
from seamcheck.samples import samples
from seamcheck.settings.settings import Settings


@pytest.fixture(scope="module")
def kept(tmp_path_factory):
    """A folder with a model that breaks a limit, and a cache that holds its entry."""
    folder = tmp_path_factory.mktemp("kept")
    shutil.copy(next(sample.file for sample in samples() if sample.name == "rib-width"), folder / "m.step")
    done = seamcheck("review", "m.step", "-q", cwd=folder, SEAMCHECK_CACHE=str(folder / "cache"))
    assert done.returncode == 1, done.stderr.decode()
    (entry,) = (folder / "cache").glob("*.measured")
    return folder, entry


def content_of(entry) -> dict:
    return json.loads(zlib.decompress(entry.read_bytes()[len(_MAGIC) + 32 :]))


def write(entry, key, data, secret) -> None:
    entry.write_bytes(_MAGIC + _seal(secret, key, data) + data)


def packed(content) -> bytes:
    return zlib.compress(json.dumps(content).encode(), 1)


def test_an_entry_of_another_machine_is_measured_anew(kept, tmp_path):
    """A cache restored from elsewhere: the digest is right, the secret is not."""
    folder, entry = kept
    cache = tmp_path / "cache"
    cache.mkdir(mode=0o700)
    forged = content_of(entry) | {"joints": {"!": "tuple", "of": []}}
    write(cache / entry.name, entry.stem, packed(forged), b"guessed" * 4)
    done = seamcheck("review", "m.step", "-q", cwd=folder, SEAMCHECK_CACHE=str(cache))
    assert done.returncode == 1
    assert content_of(cache / entry.name)["joints"]["of"], "measured anew"


def test_an_entry_without_a_joint_is_no_pass_even_with_the_secret(kept, tmp_path):
    folder, entry = kept
    cache = tmp_path / "cache"
    cache.mkdir(mode=0o700)
    forged = content_of(entry) | {"joints": {"!": "tuple", "of": []}}
    write(cache / entry.name, entry.stem, packed(forged), machine_secret())
    assert seamcheck("review", "m.step", "-q", cwd=folder, SEAMCHECK_CACHE=str(cache)).returncode == 1


def test_nothing_is_judged_that_was_not_measured(kept):
    _, entry = kept
    measured = from_bytes(entry.read_bytes()[len(_MAGIC) + 32 :])
    from msgspec.structs import replace

    with pytest.raises(NotReviewed):
        _judged(replace(measured, joints=()), Settings(), False, lambda stage: None)


def test_an_entry_of_another_model_is_not_taken(kept, tmp_path):
    """The entry of a good model under the key of a bad one."""
    folder, entry = kept
    facts = [file_facts(folder / "m.step")]
    other = content_of(entry)
    other["assembly"]["files"]["of"][0]["sha256"] = "00" * 32
    cache = Folder(tmp_path / "cache")
    key = key_of(facts, Settings())
    assert cache.save(key, packed(other))
    assert recall(cache, facts, Settings(), False) is None
    assert cache.load(key) is None, "it is dropped"
    assert keep(cache, from_bytes(packed(content_of(entry))), Settings())
    assert recall(cache, facts, Settings(), False) is not None


BOMBS = {
    "zeros": lambda: zlib.compress(b"\0" * 600_000_000, 9),
    "much at a fair ratio": lambda: zlib.compress(os.urandom(3000) * 100_000, 1),
}  # fmt: skip


@pytest.mark.parametrize("name", telling(BOMBS, ["much at a fair ratio"]))
def test_an_entry_that_unpacks_to_gigabytes_is_none(kept, tmp_path, name):
    """In a process of its own, so that its memory can be told."""
    folder, _ = kept
    cache = tmp_path / "cache"
    facts = [file_facts(folder / "m.step")]
    assert Folder(cache).save(key_of(facts, Settings()), BOMBS[name]())
    script = (
        "import sys, resource\nfrom pathlib import Path\n"
        "from seamcheck.cache.folder import Folder\nfrom seamcheck.cache.measured import recall\n"
        "from seamcheck.assembly.source import file_facts\nfrom seamcheck.settings.settings import Settings\n"
        "before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss\n"
        "assert recall(Folder(Path(sys.argv[1])), [file_facts(Path(sys.argv[2]))], Settings(), False) is None\n"
        "print((resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before) // 1024)\n"
    )
    done = subprocess.run(
        [sys.executable, "-P", "-c", script, str(cache), str(folder / "m.step")], capture_output=True, check=False,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
    )  # fmt: skip
    assert done.returncode == 0, done.stderr.decode()
    assert int(done.stdout) < 700, f"{done.stdout.decode()} MB"


def test_an_array_of_words_has_a_size():
    codes = {"!": "array", "dtype": "<i4", "shape": [1000], "data": "A" * 5332 + "AA=="}
    with pytest.raises((ValueError, MemoryError)):
        restored({"!": "words", "dtype": "<U100000", "words": ["x"], "codes": codes}, {})


def test_a_large_or_odd_file_is_no_entry(tmp_path):
    folder = Folder(tmp_path / "cache", most_mb=1.0)
    assert folder.save("ab", b"x")
    file = tmp_path / "cache/ab.measured"
    file.write_bytes(b"x" * 600_000)
    assert folder.load("ab") is None
    file.unlink(missing_ok=True)
    if hasattr(os, "mkfifo"):
        os.mkfifo(file)
        assert folder.load("ab") is None  # and does not wait
        file.unlink()
    (tmp_path / "elsewhere").write_bytes(b"x")
    file.symlink_to(tmp_path / "elsewhere")
    assert folder.load("ab") is None


@pytest.mark.skipif(not hasattr(os, "getuid"), reason="rights as POSIX has them")
def test_a_folder_that_others_can_write_is_passed_over_with_a_word(kept, tmp_path):
    folder, _ = kept
    (tmp_path / "cache").mkdir()
    (tmp_path / "cache").chmod(0o775)
    done = seamcheck("review", "m.step", "-q", cwd=folder, SEAMCHECK_CACHE=str(tmp_path / "cache"))
    assert b"chmod go-w" in done.stderr
    assert not list((tmp_path / "cache").iterdir())


def test_the_secret_is_made_once_and_is_the_user_s_alone(tmp_path, monkeypatch):
    monkeypatch.delenv(SECRET_VARIABLE)
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    if sys.platform != "linux":
        pytest.skip("the place of the user's data is set by a variable on Linux")
    first = machine_secret()
    assert len(first) == 32
    assert machine_secret() == first
    assert ((tmp_path / "seamcheck/cache-secret").stat().st_mode & 0o777) == 0o600
    monkeypatch.setenv(SECRET_VARIABLE, "shared by the machines of one team")
    assert machine_secret() != first


def test_what_is_kept_stays_within_the_bound(kept):
    _, entry = kept
    measured = from_bytes(entry.read_bytes()[len(_MAGIC) + 32 :])
    assert from_bytes(to_bytes(measured, True)).joints
