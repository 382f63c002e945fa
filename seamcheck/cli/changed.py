"""Which models of a git repository changed since a revision."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Iterator, Sequence
from pathlib import Path

from seamcheck.errors import UsageError
from seamcheck.isolation.imports import program
from seamcheck.settings.file import NAME

ENDINGS = (".step", ".stp", ".p21")
_SECONDS = 120


def models_below(places: Sequence[Path]) -> list[Path]:
    """Files as they are named, and all STEP files below folders in the order of their names.

    Folders that begin with '.' are left out, and links to folders are not followed.
    """
    found: list[Path] = []
    for place in places:
        if not place.is_dir():
            found.append(place)
            continue
        for folder, inside, files in os.walk(place):
            inside[:] = sorted(name for name in inside if not name.startswith("."))
            found += [Path(folder) / name for name in sorted(files) if name.lower().endswith(ENDINGS)]
    return list(dict.fromkeys(found))


def changed_since(models: Sequence[Path], revision: str, settings_file: Path | None = None) -> list[Path]:
    """The models that differ from where their branch left ``revision``, committed or not, in their order.

    A model counts as changed as well where its settings changed: the file that is given, or else any
    ``seamcheck.toml`` beside it or above it in the repository.

    Raises
    ------
    UsageError : no git, no repository, no such revision, no common history
    """
    changed: dict[Path, set[str]] = {}
    result = []
    for model in models:
        top = _top_of(_real(model).parent)
        if top not in changed:
            changed[top] = _changed(top, revision)
        if any(str(path) in changed[top] for path in _what_decides(_real(model), top, settings_file)):
            result.append(model)
    return result


def _real(path: Path) -> Path:
    """The path with its folders resolved, the file itself not: git knows a link by its own name."""
    return Path(os.path.realpath(path.parent)) / path.name


def _what_decides(model: Path, top: Path, settings_file: Path | None) -> Iterator[Path]:
    yield model
    if settings_file is not None:
        yield _real(settings_file)
        return
    for folder in model.parents:
        yield folder / NAME
        if folder == top:
            return


def _top_of(folder: Path) -> Path:
    if not folder.is_dir():
        raise UsageError(f"There is no folder {folder}.")
    code, out, complaint = _git(folder, "rev-parse", "--show-toplevel")
    if b"dubious ownership" in complaint:
        raise UsageError(
            f"git does not trust the repository of {folder}, as it belongs to another user. If you do: git config "
            f"--global --add safe.directory FOLDER"
        )
    if code:
        raise UsageError(f"{folder} is in no git repository, so --changed-since can't tell what changed there.")
    return Path(os.path.realpath(os.fsdecode(out.rstrip(b"\n"))))


def _changed(top: Path, revision: str) -> set[str]:
    """Absolute paths of all files that differ from the fork point, also deleted and untracked ones."""
    code, out, _ = _git(top, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{revision}^{{commit}}")
    if code:
        raise UsageError(
            f"There is no revision {revision!r} in the git repository {top}. A job of CI may have to fetch it first "
            f"(whole history, not the last commit alone)."
        )
    commit = os.fsdecode(out.strip())
    code, out, _ = _git(top, "merge-base", commit, "HEAD")
    if code:
        raise UsageError(
            f"{revision!r} and HEAD have no common history in {top}. A job of CI that fetches few commits has to fetch "
            "more (whole history)."
        )
    base = os.fsdecode(out.strip())
    names: set[str] = set()
    for arguments in (
        ("diff", "--name-only", "-z", "--no-renames", "--no-ext-diff", "--ignore-submodules", base, "--"),
        ("ls-files", "-z", "--others", "--exclude-standard", "--"),
    ):
        code, out, _ = _git(top, *arguments)
        if code:
            raise UsageError(f"git {arguments[0]} failed in {top}.")
        names |= {os.path.join(str(top), os.fsdecode(name)) for name in out.split(b"\0") if name}
    return names


def _git(folder: Path, *arguments: str) -> tuple[int, bytes, bytes]:
    """Exit code, standard output and standard error of git, run without a shell."""
    git = program("git")
    if git is None:
        raise UsageError("--changed-since needs git, which is not on this machine.")
    # a hook of git sets these; they could name another repository than the one that the models are in
    environment = {key: value for key, value in os.environ.items() if not key.startswith("GIT_")}
    try:
        done = subprocess.run(
            [git, "-c", "core.fsmonitor=false", "-c", "core.quotePath=false", *arguments],
            cwd=folder,
            env={**environment, "GIT_OPTIONAL_LOCKS": "0", "LC_ALL": "C"},
            stdin=subprocess.DEVNULL,
            capture_output=True,
            timeout=_SECONDS,
            check=False,
        )
    except subprocess.TimeoutExpired:
        raise UsageError(f"git took more than {_SECONDS} s in {folder}.") from None
    return done.returncode, done.stdout, done.stderr
