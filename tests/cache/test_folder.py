"""The folder of kept entries: damage, other users, full disks, room, several processes at once."""

import errno
import os
import pickle
import subprocess
import sys
import time
import zlib
from pathlib import Path

import numpy as np
import pytest
from hypothesis import HealthCheck, given
from hypothesis import settings as run
from hypothesis import strategies as st
from hypothesis.extra import numpy as hnp

from seamcheck.cache import folder as folder_module
from seamcheck.cache.folder import Folder, default_folder
from seamcheck.cache.measured import from_bytes
from seamcheck.cache.plain import plain, restored

KEY = "ab" * 32
DATA = bytes(range(256)) * 20


@pytest.fixture
def folder(tmp_path):
    return Folder(tmp_path / "kept")


def test_what_is_saved_is_loaded(folder):
    assert folder.load(KEY) is None
    assert folder.save(KEY, DATA)
    assert folder.load(KEY) == DATA
    assert folder.load("cd" * 32) is None
    folder.drop(KEY)
    assert folder.load(KEY) is None


@run(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(data=st.data())
def test_a_damaged_entry_is_none(folder, data):
    assert folder.save(KEY, DATA)
    (file,) = folder.path.iterdir()
    content = bytearray(file.read_bytes())
    place = data.draw(st.integers(0, len(content) - 1))
    if data.draw(st.booleans()):
        content[place] ^= data.draw(st.integers(1, 255))
    else:
        del content[place:]
    file.write_bytes(content)
    assert folder.load(KEY) is None
    assert not file.exists()


def test_an_entry_under_another_name_is_none(folder):
    folder.save(KEY, DATA)
    (file,) = folder.path.iterdir()
    file.rename(file.with_name(("cd" * 32) + file.suffix))
    assert folder.load("cd" * 32) is None


def test_nothing_that_can_run_code_is_read():
    class Bomb:
        def __reduce__(self):
            return os.abort, ()

    with pytest.raises(ValueError):  # noqa: PT011
        from_bytes(zlib.compress(pickle.dumps(Bomb())))
    with pytest.raises(KeyError):
        restored({"!": "Popen", "args": "true"}, {})


@pytest.mark.skipif(not hasattr(os, "getuid"), reason="rights of this kind exist on POSIX systems only")
def test_a_folder_that_others_can_write_is_not_used(folder):
    folder.save(KEY, DATA)
    assert folder.path.stat().st_mode & 0o777 == 0o700
    os.chmod(folder.path, 0o777)
    assert folder.load(KEY) is None
    assert not folder.save(KEY, DATA)


def test_a_full_disk_leaves_nothing_behind(folder, monkeypatch):
    folder.save(KEY, DATA)

    def full(*args):
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(folder_module.os, "replace", full)
    assert not folder.save("cd" * 32, DATA)
    assert folder.load(KEY) == DATA
    assert len(list(folder.path.iterdir())) == 1


def test_entries_not_used_for_longest_go_first(tmp_path):
    folder = Folder(tmp_path / "kept", most_mb=3.5 * len(DATA) / 1e6)
    keys = [f"{n:064x}" for n in range(4)]
    for n, key in enumerate(keys[:3]):
        folder.save(key, DATA)
        os.utime(folder.path / f"{key}.measured", (n, n))
    assert folder.load(keys[0]) == DATA  # used now
    (folder.path / "left.unfinished").write_bytes(b"")
    os.utime(folder.path / "left.unfinished", (0, 0))
    folder.save(keys[3], DATA)
    assert [folder.load(key) is not None for key in keys] == [True, False, True, True]
    assert not (folder.path / "left.unfinished").exists()
    assert not folder.save(keys[1], DATA * 4)  # more than half of the room


WRITER = """
import sys
from pathlib import Path
from seamcheck.cache.folder import Folder
folder, key = Folder(Path(sys.argv[1])), "ab" * 32
for n in range(150):
    folder.save(key, bytes([n]) * 50000)
    found = folder.load(key)
    assert found is None or (len(found) == 50000 and len(set(found)) == 1), "half an entry"
"""


def test_several_processes_at_once_see_whole_entries_only(tmp_path):
    root = Path(folder_module.__file__).parents[2]
    workers = [subprocess.Popen([sys.executable, "-c", WRITER, str(tmp_path / "kept")], cwd=root) for _ in range(3)]
    assert [worker.wait(60) for worker in workers] == [0, 0, 0]
    assert len(list((tmp_path / "kept").iterdir())) == 1


def test_the_environment_names_the_folder(monkeypatch, tmp_path):
    monkeypatch.setenv("SEAMCHECK_CACHE", str(tmp_path))
    assert default_folder() == tmp_path
    monkeypatch.setenv("SEAMCHECK_CACHE", "")
    assert default_folder() is None
    monkeypatch.delenv("SEAMCHECK_CACHE")
    assert default_folder().name == "seamcheck"


values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inner: st.lists(inner) | st.lists(inner).map(tuple) | st.dictionaries(st.text(min_size=2), inner),
    max_leaves=12,
)


@given(values)
def test_plain_values_come_back_as_they_were(value):
    assert repr(restored(plain(value, {}), {})) == repr(value)


@given(hnp.arrays(st.sampled_from(["f8", "i8", "i4", "?", "U5"]), hnp.array_shapes(min_dims=1, max_dims=3)))
def test_arrays_come_back_bit_by_bit(value):
    back = restored(plain(value, {}), {})
    assert (back.dtype, back.shape, back.tobytes()) == (value.dtype, value.shape, value.tobytes())


def test_what_is_no_plain_value_is_refused():
    for value in (object(), {1: 2}, {"!": 1}, np.array([object()]), b"bytes", time):
        with pytest.raises(TypeError):
            plain(value, {})
