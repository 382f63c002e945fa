"""Files that a command line names beside the model: a pipe, a device, an endless stream is one sentence at once."""

from __future__ import annotations

import io
import json
import os

import pytest
from report.report_documents import housing

from seamcheck.document import read
from seamcheck.errors import UsageError
from seamcheck.report.fields import LARGEST, read_fields
from seamcheck.scanning.pairs import read_list
from seamcheck.settings.answers import read_answers

READERS = {
    "document": read.read_file,
    "answers": read_answers,
    "logo": lambda path: read_fields({"logo": str(path)}),
    "pairs": read_list,
}


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
@pytest.mark.parametrize("place", ["pipe", "/dev/zero", "/dev/stdin", "folder", "circle", "gone", "zero\0byte"])
@pytest.mark.parametrize("reader", READERS)
def test_what_is_no_plain_file_is_refused_at_once(tmp_path, reader, place):
    os.mkfifo(tmp_path / "pipe")
    (tmp_path / "folder").mkdir()
    (tmp_path / "circle").symlink_to(tmp_path / "circle")
    with pytest.raises(UsageError) as caught:
        READERS[reader](tmp_path / place)
    assert str(caught.value).count("\n") == 0


@pytest.mark.parametrize("reader", READERS)
def test_a_huge_file_is_refused_unread(tmp_path, reader):
    with (tmp_path / "huge").open("wb") as file:
        file.truncate(1 << 33)  # 8 GB that take no room
    with pytest.raises(UsageError, match="larger than"):
        READERS[reader](tmp_path / "huge")


@pytest.mark.parametrize("reader", READERS)
def test_what_a_file_holds_is_not_told(tmp_path, reader):
    """Whoever names a file for a job of CI must not read it in the job's log."""
    secret = "t0p-secret-of-the-machine"
    (tmp_path / "x").write_text(f"{secret}\n{{{secret}: 1}}\n")
    with pytest.raises(UsageError) as caught:
        READERS[reader](tmp_path / "x")
    assert secret not in str(caught.value)


class Endless(io.RawIOBase):
    """A stream that never ends; counts what was taken from it."""

    taken = 0

    def read(self, size=-1):
        assert 0 < size < 10_000
        self.taken += size
        return b" " * size


def test_a_document_that_never_ends_is_not_read_for_ever(monkeypatch):
    monkeypatch.setattr(read, "LARGEST_FILE", 5000)
    stream = Endless()
    with pytest.raises(UsageError, match="The text is larger than"):
        read.read_stream(stream, "The text")
    assert stream.taken == 5001


def test_a_document_through_a_pipe_is_reported(monkeypatch):
    text = json.dumps(housing(step=4.0, view=False)).encode()
    assert read.read_stream(io.BytesIO(text), "The text")["verdict"] == "fail"


def test_a_logo_of_the_right_size_is_taken(tmp_path):
    (tmp_path / "logo.svg").write_text("<svg xmlns='http://www.w3.org/2000/svg'/>")
    assert read_fields({"logo": str(tmp_path / "logo.svg")}).logo.startswith("data:image/svg+xml")
    (tmp_path / "logo.svg").write_bytes(b"<svg>" + b" " * LARGEST)
    with pytest.raises(UsageError, match="larger than"):
        read_fields({"logo": str(tmp_path / "logo.svg")})
