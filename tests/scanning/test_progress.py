"""What a scan says while it runs."""

from collections import Counter

import pytest

from seamcheck.cli.scan_progress import Clock, Lines, said, time_text
from seamcheck.scanning.run import Progress


def test_a_line_tells_rate_and_time_left_first():
    progress = Progress("reviewing", 20, 20, 10, 4, Counter({"fail": 3, "not-reviewed": 1}))
    assert said(progress, (30.0, 12.0)) == "reviewed 4 of 10, 30 a minute, 12 s left (3 broken, 1 not reviewed)"
    assert said(Progress("looking", 7, 5), None) == "looking: 7 models found, 5 looked at"


def test_rate_and_time_left_follow_the_clock(monkeypatch):
    now = [100.0]
    monkeypatch.setattr("seamcheck.cli.scan_progress.time.monotonic", lambda: now[0])
    clock, progress = Clock(), Progress("reviewing", to_review=10)
    assert clock.at(progress) is None
    now[0], progress.reviewed = 120.0, 5
    assert clock.at(progress) == (15.0, 20.0)  # 5 in 20 s: 15 a minute, 5 more take 20 s


def test_without_a_terminal_there_is_a_line_now_and_then(capsys):
    lines, progress = Lines(every_s=3600), Progress(found=3)
    for stage in ("looking", "looking", "reviewing", "reviewing", "writing"):
        progress.stage = stage
        lines(progress)
    progress.note = "Another program holds the store."
    lines(progress)
    told = capsys.readouterr()
    assert told.out == ""
    assert [line.split()[0].rstrip(":") for line in told.err.splitlines()] == [
        "looking",
        "reviewed",
        "writing",
        "Another",
    ]


@pytest.mark.parametrize(("seconds", "text"), [(4, "4 s"), (89, "89 s"), (120, "2 min"), (7200, "2 h 0 min")])
def test_time_in_words(seconds, text):
    assert time_text(seconds) == text
