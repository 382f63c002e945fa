"""``--changed-since`` never leaves out a model whose verdict may have changed; the first push is not blocked."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

import pytest

from seamcheck.cli.changed import changed_since, models_below
from seamcheck.cli.each import _models
from seamcheck.errors import UsageError

pytestmark = pytest.mark.skipif(shutil.which("git") is None, reason="git is not installed")


def git(place, *args):
    env = {k: v for k, v in os.environ.items() if not k.startswith("GIT_")}
    who = ("-c", "user.name=a", "-c", "user.email=a@b.c", "-c", "protocol.file.allow=always")
    subprocess.run(["git", *who, *args], cwd=place, env=env, check=True, capture_output=True)


def repository(place):
    place.mkdir(parents=True)
    git(place, "init", "-q", "-b", "main")
    (place / "a.step").write_text("a")
    (place / "b.step").write_text("b")
    git(place, "add", "-A")
    git(place, "commit", "-qm", "one")
    return place


def changed(place, revision="HEAD", given=(), settings=None):
    told = []
    found = changed_since(models_below([place]), revision, given, told.append, settings=settings)
    return sorted(path.name for path in found), told


def test_a_changed_table_that_the_settings_name_counts(tmp_path):
    top = repository(tmp_path / "r")
    (top / "tables").mkdir()
    (top / "tables/t.csv").write_text("gap, 0.02")
    (top / "seamcheck.toml").write_text('[tolerance]\nfile = "tables/t.csv"\n')
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top) == ([], [])
    (top / "tables/t.csv").write_text("gap, 0.5")
    assert changed(top)[0] == ["a.step", "b.step"]


def test_a_changed_table_of_the_command_line_counts(tmp_path):
    top = repository(tmp_path / "r")
    (top / "t.csv").write_text("gap, 0.02")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top, given=[top / "t.csv"])[0] == []
    (top / "seamcheck.toml").write_text("collapse = 0.3")  # a named table takes no settings file away
    assert changed(top, given=[top / "t.csv"])[0] == ["a.step", "b.step"]
    (top / "seamcheck.toml").unlink()
    (top / "t.csv").write_text("gap, 0.5")
    assert changed(top, given=[top / "t.csv"])[0] == ["a.step", "b.step"]


def test_changed_answers_count(tmp_path):
    top = repository(tmp_path / "r")
    (top / "answers.json").write_text("{}")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "accepted")
    (top / "answers.json").write_text("[]")  # what was accepted is accepted no more
    none = Path(os.devnull)
    for answers, models in ((top / "answers.json", 2), (None, 0)):
        options = {"changed_since": "HEAD", "tolerances": (), "answers_file": answers}
        assert len(_models([top], options, None, quiet=True)) == models, answers
    assert changed(top, settings=top / "answers.json")[0] == ["a.step", "b.step"]
    assert changed(top, given=[none])[1] == [
        f"{none} lies outside of {top}: whether it changed can't be told, so all is reviewed."
    ]


def test_settings_of_any_name_bring_their_table(tmp_path):
    top = repository(tmp_path / "r")
    (top / "limits.conf").write_text('[tolerance]\nfile = "t.csv"\n')
    (top / "t.csv").write_text("gap, 0.02")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top, settings=top / "limits.conf")[0] == []
    (top / "t.csv").write_text("gap, 0.5")
    assert changed(top, settings=top / "limits.conf")[0] == ["a.step", "b.step"]


def test_a_table_that_git_ignores_counts(tmp_path):
    top = repository(tmp_path / "r")
    (top / ".gitignore").write_text("*.csv\n")
    (top / "seamcheck.toml").write_text('[tolerance]\nfile = "t.csv"\n')
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top)[0] == []
    (top / "t.csv").write_text("gap, 0.5")
    assert changed(top)[0] == ["a.step", "b.step"]


def test_settings_above_the_repository_can_not_be_told_so_all_is_reviewed(tmp_path):
    top = repository(tmp_path / "r")
    assert changed(top)[0] == []
    (tmp_path / "seamcheck.toml").write_text("collapse = 0.3")
    found, told = changed(top)
    assert found == ["a.step", "b.step"]
    assert len(told) == 1
    assert "outside" in told[0]
    (top / "seamcheck.toml").write_text("collapse = 0.3")  # a nearer one decides
    git(top, "add", "-A")
    git(top, "commit", "-qm", "own")
    assert changed(top)[0] == []


def test_settings_that_git_ignores_count(tmp_path):
    top = repository(tmp_path / "r")
    (top / ".gitignore").write_text("seamcheck.toml\n")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top)[0] == []
    (top / "seamcheck.toml").write_text("collapse = 0.3")
    assert changed(top)[0] == ["a.step", "b.step"]


def test_the_target_of_a_link_counts(tmp_path):
    top = repository(tmp_path / "r")
    (top / "store").mkdir()
    (top / "store/real.txt").write_text("x")
    (top / "link.step").symlink_to("store/real.txt")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top)[0] == []
    (top / "store/real.txt").write_text("y")
    assert changed(top)[0] == ["link.step"]


def test_a_link_within_a_row_of_links_counts(tmp_path):
    top = repository(tmp_path / "r")
    for name in ("one", "two"):
        (top / name).mkdir()
        (top / name / "model.txt").write_text(name)
    (top / "last").symlink_to("one/model.txt")
    (top / "link.step").symlink_to("last")
    (top / "latest").symlink_to("one")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    assert changed(top)[0] == []
    (top / "last").unlink()
    (top / "last").symlink_to("two/model.txt")
    assert changed(top)[0] == ["link.step"]
    (top / "one/other.step").write_text("x")
    (top / "two/other.step").write_text("y")
    (top / "latest").unlink()
    git(top, "add", "-A")
    (top / "latest").symlink_to("one")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "three")
    assert changed_since([top / "latest/other.step"], "HEAD") == []
    (top / "latest").unlink()
    (top / "latest").symlink_to("two")
    assert changed_since([top / "latest/other.step"], "HEAD") == [top / "latest/other.step"]


def test_a_moved_pointer_of_a_submodule_counts(tmp_path):
    inner = repository(tmp_path / "inner")
    top = repository(tmp_path / "r")
    git(top, "submodule", "add", "-q", str(inner), "sub")
    git(top, "commit", "-qm", "with a submodule")
    assert changed(top)[0] == []
    (inner / "a.step").write_text("another")
    git(inner, "commit", "-qam", "two")
    git(top / "sub", "pull", "-q", "origin", "main")
    assert changed(top)[0] == ["a.step", "b.step"], "moved, not committed yet"
    git(top, "commit", "-qam", "moved")
    assert changed(top, "HEAD~1")[0] == ["a.step", "b.step"]
    assert changed(top)[0] == []
    (top / "sub/b.step").write_text("edited within")
    assert "b.step" in changed(top)[0]


def test_the_first_push_of_a_new_repository_reviews_all(tmp_path):
    top = repository(tmp_path / "r")
    found, told = changed(top, "origin/main")
    assert found == ["a.step", "b.step"]
    assert "does not exist yet" in told[0]
    with pytest.raises(UsageError, match="no revision"):
        changed(top, "nonsense")
    other = tmp_path / "clone"
    subprocess.run(["git", "clone", "-q", str(top), str(other)], check=True, capture_output=True)
    with pytest.raises(UsageError, match="no revision"):  # something was fetched, so it is only misspelled
        changed(other, "origin/mian")
