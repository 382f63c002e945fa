"""Many models at once, and only those that changed in a git repository."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from comparison.compare_models import file_of, renumbered, review_here, reviewed
from shell import shell

from seamcheck.cli.changed import changed_since, models_below
from seamcheck.cli.each import place_in
from seamcheck.document.plain import to_json
from seamcheck.errors import UsageError

needs_git = pytest.mark.skipif(shutil.which("git") is None, reason="git is not on this machine")

ODD = "-lid a,b:c%20\n'\"`$(touch x)\tÄ.step"
"""A name that a shell, an option parser or a list of names by lines would take for something else."""


def git(folder: Path, *arguments: str) -> str:
    own = ["-c", "user.name=t", "-c", "user.email=t@example.invalid", "-c", "init.defaultBranch=main"]
    environment = {key: value for key, value in os.environ.items() if not key.startswith("GIT_")}
    done = subprocess.run(
        ["git", *own, *arguments], cwd=folder, env=environment, capture_output=True, text=True, check=True
    )
    return done.stdout.strip()


@pytest.fixture
def repository(tmp_path):
    """Two commits and a branch that left after the first; models are text, as git reads only their names."""
    top = tmp_path / "repo"
    (top / "models" / "deep").mkdir(parents=True)
    git(top, "init", "-q")
    for name in ("a.step", "b.STP", "deep/c.step", "deep/notes.txt", ODD):
        (top / "models" / name).write_text(name)
    git(top, "add", "-A")
    git(top, "commit", "-qm", "one")
    git(top, "branch", "work")
    (top / "models" / "a.step").write_text("changed on main alone")
    git(top, "commit", "-qam", "two")
    git(top, "checkout", "-q", "work")
    return top


def names(paths):
    return [path.name for path in paths]


def changed(top, revision="main", **more):
    return names(changed_since(models_below([top]), revision, **more))


@needs_git
def test_nothing_has_changed_where_the_branch_just_left(repository):
    # main has gone on since: what changed there is none of the branch's business
    assert changed(repository) == []


@needs_git
def test_committed_staged_edited_and_untracked_models_have_changed(repository):
    models = repository / "models"
    (models / "a.step").write_text("committed")
    git(repository, "commit", "-qam", "three")
    (models / "b.STP").write_text("staged")
    git(repository, "add", "models/b.STP")
    (models / "deep" / "c.step").write_text("edited")
    (models / "new.step").write_text("untracked")
    assert sorted(changed(repository)) == ["a.step", "b.STP", "c.step", "new.step"]


@needs_git
def test_names_with_odd_characters_are_known(repository):
    (repository / "models" / ODD).write_text("edited")
    assert changed(repository) == [ODD]
    assert not (repository / "x").exists()


@needs_git
def test_deleted_and_ignored_models_are_none(repository):
    (repository / "models" / "a.step").unlink()
    (repository / ".gitignore").write_text("*.tmp.step\n")
    (repository / "models" / "z.tmp.step").write_text("ignored")
    assert changed(repository) == []


@needs_git
def test_a_renamed_model_has_changed(repository):
    git(repository, "mv", "models/a.step", "models/z.step")
    assert changed(repository) == ["z.step"]


@needs_git
@pytest.mark.parametrize("place", ["seamcheck.toml", "models/deep/seamcheck.toml"])
def test_models_below_a_settings_file_that_changed_have_changed(repository, place):
    (repository / place).write_text("collapse = 0.3\n")
    below = ["c.step"] if "deep" in place else sorted(["a.step", "b.STP", "c.step", ODD])
    assert sorted(changed(repository)) == below


@needs_git
def test_with_a_given_settings_file_that_one_decides(repository, tmp_path):
    (repository / "seamcheck.toml").write_text("collapse = 0.3\n")
    (repository / "own.toml").write_text("collapse = 0.3\n")
    git(repository, "add", "-A")
    git(repository, "commit", "-qm", "settings")
    assert changed(repository, "HEAD", given=[repository / "own.toml"]) == []
    (repository / "own.toml").write_text("collapse = 0.35\n")
    assert len(changed(repository, "HEAD", given=[repository / "own.toml"])) == 4


@needs_git
@pytest.mark.parametrize("revision", ["nowhere", "--output=x", "-h", "HEAD^{tree}", ""])
def test_a_revision_that_is_none_is_told_in_a_sentence(repository, revision):
    with pytest.raises(UsageError, match="no revision"):
        changed(repository, revision)
    assert not (repository / "x").exists()


@needs_git
def test_histories_that_have_nothing_in_common_are_told(repository):
    git(repository, "checkout", "-q", "--orphan", "other")
    git(repository, "commit", "-qm", "root")
    with pytest.raises(UsageError, match="no common history"):
        changed(repository, "main")


def test_a_folder_that_is_no_repository_is_told(tmp_path):
    (tmp_path / "a.step").write_text("")
    with pytest.raises(UsageError, match="git"):
        changed_since([tmp_path / "a.step"], "main")


@needs_git
@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="only root can give files away")
def test_a_repository_of_another_user_is_told_with_what_to_do(repository):
    for place in (repository, repository / ".git"):
        os.chown(place, 12345, 12345)
    with pytest.raises(UsageError, match=r"safe\.directory"):
        changed(repository)


@needs_git
def test_a_hooks_environment_names_no_other_repository(repository, monkeypatch, tmp_path):
    git(tmp_path, "init", "-q", "elsewhere")
    monkeypatch.setenv("GIT_DIR", str(tmp_path / "elsewhere" / ".git"))
    (repository / "models" / "a.step").write_text("edited")
    assert changed(repository) == ["a.step"]


def test_folders_stand_for_the_step_files_below_them(tmp_path):
    for name in ("b.step", "a.stp", ".hidden/c.step", "deep/d.P21", "deep/e.txt"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_text("")
    found = models_below([tmp_path / "deep" / "e.txt", tmp_path, tmp_path / "b.step"])
    assert names(found) == ["e.txt", "a.stp", "b.step", "d.P21"]


@pytest.mark.parametrize("model", ["a/b.step", "../up.step", "/srv/x.step", "./a/b.step", "a/../../b.step"])
def test_files_of_models_stay_within_their_folder(model, tmp_path):
    target = Path(os.path.normpath(place_in(tmp_path, Path(model), ".json")))
    assert tmp_path in target.parents
    assert target.name == f"{Path(model).name}.json"


@needs_git
def test_a_whole_job_reviews_what_changed_and_holds_it_against_the_main_branch(tmp_path, monkeypatch):
    top = tmp_path / "repo"
    (top / "models").mkdir(parents=True)
    git(top, "init", "-q")
    for name in ("plain", "wide"):
        shutil.copy(file_of(name), top / "models" / f"{name}.step")
    git(top, "add", "-A")
    git(top, "commit", "-qm", "one")
    monkeypatch.chdir(top)
    for name in ("plain", "wide"):  # what `review models --each --json reviews` writes on the main branch
        document = Path(f"reviews/models/{name}.step.json")
        document.parent.mkdir(parents=True, exist_ok=True)
        document.write_text(to_json(reviewed(name)), "utf-8")

    # a change that breaks nothing new: the file has other entity numbers, the defect is the same
    renumbered(file_of("wide"), top / "models" / "wide.step")
    pointer = "version https://git-lfs.github.com/spec/v1\noid sha256:" + "0" * 64 + "\nsize 12345\n"
    arguments = ("--changed-since", "HEAD", "--baseline", "reviews", "--sarif", "s.sarif", "--junit", "j.xml")
    second = shell("review", "models", *arguments, "--markdown", "s.md", "--annotations", "workflow")
    assert second.exit_code == 0, second.output
    assert "Changed since HEAD: 1 of 2 models" in second.output
    assert "known from the baseline" in second.output
    (sarif,) = json.loads(Path("s.sarif").read_text())["runs"]
    assert [r["baselineState"] for r in sarif["results"]] == ["unchanged"]
    assert sarif["artifacts"][0]["location"]["uri"] == "models/wide.step"
    assert [suite.get("name") for suite in ET.parse("j.xml").getroot()] == ["models/wide.step"]

    # a model that is only a pointer: said so, and no pass
    (top / "models" / "lfs.step").write_text(pointer)
    third = shell(
        "review", "models/lfs.step", "--changed-since", "HEAD", "--baseline", "reviews", "--annotations", "plain"
    )
    assert third.exit_code == 2
    assert "models/lfs.step: error: 'lfs.step' is a Git LFS pointer, not the model itself." in third.output
    assert "git lfs pull" in third.output
    assert "No baseline for models/lfs.step" in third.output

    git(top, "add", "-A")
    git(top, "commit", "-qm", "two")
    fourth = shell("review", "models", "--changed-since", "HEAD", "--junit", "-")
    assert fourth.exit_code == 0
    assert ET.fromstring(fourth.stdout).get("tests") == "0"


def test_outputs_that_hold_one_model_become_folders(tmp_path, monkeypatch):
    monkeypatch.setattr("seamcheck.pipeline.review", review_here)
    monkeypatch.chdir(tmp_path)
    (tmp_path / "models").mkdir()
    shutil.copy(file_of("wide"), tmp_path / "models" / "wide.step")
    assert "name a folder" in shell("review", "--each", "models", "--csv", "-").output
    done = shell("review", "--each", "models", "--json", "reviews", "--csv", "tables")
    assert done.exit_code == 1
    assert done.output.startswith("FAIL  models/wide.step  1 place breaks a must-fix limit.\n")
    assert "must-fix rib-uniformity: " in done.output
    assert json.loads(Path("reviews/models/wide.step.json").read_text())["verdict"] == "fail"
    assert "joint,path,station" in Path("tables/models/wide.step.csv").read_text()


def test_a_folder_without_models_is_told(tmp_path):
    done = shell("review", "--each", tmp_path)
    assert (done.exit_code, done.output.count("\n")) == (2, 1)
    assert "no STEP file" in done.output


def test_a_baseline_for_each_is_a_folder(tmp_path):
    shutil.copy(file_of("plain"), tmp_path / "plain.step")
    (tmp_path / "old.json").write_text("{}")
    done = shell("review", "--each", tmp_path / "plain.step", "--baseline", tmp_path / "old.json")
    assert done.exit_code == 2
    assert "folder of review documents" in done.output
