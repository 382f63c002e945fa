"""Which models of a git repository changed since a revision."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from seamcheck.errors import UsageError
from seamcheck.isolation.imports import program
from seamcheck.settings.file import NAME, find_settings_file, table_named_by

ENDINGS = (".step", ".stp", ".p21")
_SECONDS = 120
_MOST_LINKS = 40  # a circle of links ends there


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


def changed_since(
    models: Sequence[Path],
    revision: str,
    given: Sequence[Path] = (),
    tell: Callable[[str], None] = lambda sentence: None,
    *,
    settings: Path | None = None,
) -> list[Path]:
    """The models that differ from where their branch left ``revision``, committed or not, in their order.

    A model counts as changed as well where something else changed that decides about its verdict: a file that is
    given (settings, a table of tolerances, answers), without given settings any ``seamcheck.toml`` beside it or above
    it; the table that settings name; every link on the way to them; the commit of a submodule. What lies outside of the
    repository, or is ignored by git, can't be told, so it counts as changed; a model that git ignores is none.

    Parameters
    ----------
    given : files named on the command line, other than settings
    settings : settings file named there, in place of those beside the models
    tell : gets a sentence where more is reviewed than what changed

    Raises
    ------
    UsageError : no git, no repository, no such revision, no common history
    """
    tops = _Tops()
    decides = {model: list(_what_decides(model, tops.of(_real(model).parent), given, settings)) for model in models}
    changed: dict[Path, set[str] | None] = {}
    told: set[str] = set()
    result = []
    for model in models:
        top = tops.of(_real(model).parent)
        if top not in changed:
            beside = {path for paths in decides.values() for path in paths} - {_real(model) for model in models}
            changed[top] = _changed(top, revision, tell, beside)
        names = changed[top]
        outside = [path for path in decides[model] if not path.is_relative_to(top)]
        for path in outside:
            sentence = f"{path} lies outside of {top}: whether it changed can't be told, so all is reviewed."
            if sentence not in told:
                told.add(sentence)
                tell(sentence)
        if names is None or outside or any(_is_in(path, names, top) for path in decides[model]):
            result.append(model)
    return result


def _is_in(path: Path, names: set[str], top: Path) -> bool:
    """Whether a path changed, or a submodule that holds it."""
    return any(str(p) in names for p in (path, *path.parents) if p != top and p.is_relative_to(top))


def _real(path: Path) -> Path:
    """The path with its folders resolved, the file itself not: git knows a link by its own name."""
    return Path(os.path.realpath(path.parent)) / path.name


def _what_decides(model: Path, top: Path, given: Sequence[Path], settings: Path | None) -> Iterator[Path]:
    """The model, its settings and their tables, what else was named, and every link on the way to them."""
    real = _real(model)
    own = (
        [settings] if settings is not None else [folder / NAME for folder in real.parents if folder.is_relative_to(top)]
    )
    nearest = find_settings_file(model) if settings is None else None
    own += [] if nearest is None or nearest in own else [nearest]
    tables = [table for file in own if (table := table_named_by(file)) is not None]
    for file in (model, *given, *own, *tables):
        yield _real(file)
        yield from _links(file, top)


def _links(path: Path, top: Path) -> Iterator[Path]:
    """What a file that is a link leads to, step by step, and links among its folders within the repository."""
    for folder in Path(os.path.abspath(path)).parents:
        if folder.is_symlink() and _real(folder).is_relative_to(top):
            yield _real(folder)
    for _ in range(_MOST_LINKS):
        if not path.is_symlink():
            return
        path = _real(path.parent / os.readlink(path))
        yield path


class _Tops:
    """The repository that holds a folder; git is asked once for each folder."""

    def __init__(self) -> None:
        self._known: dict[Path, Path] = {}

    def of(self, folder: Path) -> Path:
        if folder not in self._known:
            self._known[folder] = _top_of(folder)
        return self._known[folder]


def _top_of(folder: Path) -> Path:
    """The repository that holds a folder; of a submodule, the one that it belongs to."""
    top = _repository_of(folder)
    while True:
        _, out, _ = _git(top, "rev-parse", "--show-superproject-working-tree")
        above = os.fsdecode(out.rstrip(b"\n"))
        if not above:
            return top
        top = Path(os.path.realpath(above))


def _repository_of(folder: Path) -> Path:
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


def _changed(top: Path, revision: str, tell: Callable[[str], None], decides: set[Path]) -> set[str] | None:
    """Absolute paths of all files that differ from the fork point, also deleted and untracked ones; None for all.

    decides : files beside the models that decide about them; of what git ignores these alone count
    """
    code, out, _ = _git(top, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{revision}^{{commit}}")
    if code:
        _, known, _ = _git(top, "for-each-ref", "--count=1", "refs/remotes")
        if not known.strip() and "/" in revision and not _is_shallow(top):
            tell(f"{revision} does not exist yet, as nothing was ever pushed or fetched in {top}: all is reviewed.")
            return None
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
        ("diff", "--name-only", "-z", "--no-renames", "--no-ext-diff", "--ignore-submodules=none", base, "--"),
        ("ls-files", "-z", "--others", "--exclude-standard", "--"),
        (
            "ls-files",
            "-z",
            "--others",
            "--ignored",
            "--exclude-standard",
            "--",
            *(_like(decides, top) or [f":(literal){NAME}"]),
        ),
    ):
        code, out, _ = _git(top, *arguments)
        if code:
            raise UsageError(f"git {arguments[0]} failed in {top}.")
        names |= {os.path.join(str(top), os.fsdecode(name)) for name in out.split(b"\0") if name}
    return names


def _like(files: set[Path], top: Path) -> list[str]:
    """Patterns of git that hold these files alone, and one at least."""
    inside = sorted(path.relative_to(top).as_posix() for path in {*files, top / NAME} if path.is_relative_to(top))
    return [f":(literal){path}" for path in inside]


def _is_shallow(top: Path) -> bool:
    """Whether the repository was cloned without its history, as jobs of CI do."""
    return _git(top, "rev-parse", "--is-shallow-repository")[1].strip() == b"true"


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
