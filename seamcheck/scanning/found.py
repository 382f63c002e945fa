"""Walk through folders and say which models lie there. Nothing is opened here but archives, and those in a child."""

from __future__ import annotations

import os
import stat
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from msgspec import Struct, field

from seamcheck.assembly.names import readable
from seamcheck.scanning.archives import Member, Refused
from seamcheck.scanning.files import stamp_of
from seamcheck.scanning.pairs import PairRule, paired
from seamcheck.scanning.patterns import Patterns, ending, is_archive, unpacked_name
from seamcheck.settings.file import NAME as SETTINGS_NAME

PASSED_FOLDERS = (".git", ".hg", ".svn")
"""Stores of revision control: they hold copies, not models."""

SKIPPED: dict[str, str] = {
    "link": "A link, which is followed only with --follow-links.",
    "unreadable": "A file or folder that can't be read.",
    "lfs-pointer": "A Git LFS pointer in place of the model.",
    "archive-damaged": "An archive that can't be unpacked.",
    "archive-too-big": "An archive whose unpacked files are too large.",
    "archive-in-archive": "An archive within an archive.",
    "locked": "A member of an archive that needs a password.",
    "said-no-seam": "The table of joints says that it has no seam.",
}
"""Why something is a row of its own but no review, beside the reasons of the review document."""

LookInto = Callable[[Path], "list[Member] | Refused"]


class FoundFile(Struct, frozen=True):
    """One file of a model.

    Attributes
    ----------
    name : as the review document names it
    place : the file itself, or the archive that holds it
    member : number within the archive, None for a plain file
    bytes : unpacked; 0 where not known yet
    sha256 : of the unpacked bytes; '' where not known yet
    stamp : of a plain file, see ``files.stamp_of``; '' where it has none
    """

    name: str
    place: Path
    member: int | None = None
    bytes: int = 0
    sha256: str = ""
    stamp: str = ""


class Found(Struct, frozen=True):
    """One model, or what stands in the place of one.

    Attributes
    ----------
    folder : the scanned folder, as it was named
    path : below it, for reading
    files : the cover's first where there are several
    code, reason : why it is skipped; '' where it isn't
    """

    folder: str
    path: str
    files: tuple[FoundFile, ...]
    code: str = ""
    reason: str = ""

    @property
    def supplier(self) -> str:
        """The first folder below the scanned one; '' where the model lies in the scanned folder itself."""
        first, slash, _ = self.path.partition("/")
        return first if slash and self.files and not _is_in_archive_at_top(self, first) else ""

    @property
    def name(self) -> str:
        return " + ".join([readable(file.name) for file in self.files])


def _is_in_archive_at_top(found: Found, first: str) -> bool:
    file = found.files[0]
    return file.member is not None and file.place.parent == Path(found.folder) and readable(file.place.name) == first


class OtherFiles(Struct):
    """What else lay in the folders."""

    settings: list[tuple[str, str]] = field(default_factory=list)
    others: Counter[str] = field(default_factory=Counter)


class Walk:
    """Goes through folders in the order of names; ``other_files`` is filled on the way."""

    def __init__(
        self,
        folders: Sequence[Path],
        look_into: LookInto,
        *,
        patterns: Patterns = Patterns(),  # noqa: B008  # frozen
        rules: Sequence[PairRule] = (),
        listed: Sequence[tuple[Path, ...]] = (),
        follow_links: bool = False,
        out: Path | None = None,
    ) -> None:
        self._folders, self._look_into, self._patterns = folders, look_into, patterns
        self._rules, self._listed, self._follow = tuple(rules), listed, follow_links
        self._out = None if out is None else out.resolve()
        self._in_list = {file.resolve() for group in listed for file in group}
        self.other_files = OtherFiles()

    def __iter__(self) -> Iterator[Found]:
        for folder in self._folders:
            yield from self._folder(folder)
        if self._listed:
            yield from self._of_list()

    def _folder(self, root: Path) -> Iterator[Found]:
        waiting, seen = [root], {_identity(root)}
        while waiting:
            folder = waiting.pop()
            inner = os.path.relpath(folder, root).replace(os.sep, "/")
            above = "" if inner == "." else f"{inner}/"
            try:
                with os.scandir(folder) as entries:
                    inside = sorted(entries, key=lambda entry: entry.name)
            except OSError as why:
                reason = f"The folder can't be read: {why.strerror or why}."
                yield Found(str(root), _below(folder, root) or ".", (), "unreadable", reason)
                continue
            files, deeper = [], []
            for entry in inside:
                place = Path(entry.path)
                if entry.is_symlink() and not self._follow:
                    if self._patterns.match(entry.name) or _is_folder(entry):
                        yield self._link(root, place)
                elif _is_folder(entry):
                    if self._is_ours(place) or entry.name in PASSED_FOLDERS:
                        continue
                    if self._follow and (identity := _identity(place)) is not None:
                        if identity in seen:  # a circle of links
                            continue
                        seen.add(identity)
                    deeper.append(place)
                elif entry.name == SETTINGS_NAME:
                    self.other_files.settings.append((str(root), _below(place, root)))
                elif self._patterns.match(entry.name):
                    if not self._in_list or place.resolve() not in self._in_list:
                        files.append(place)
                else:
                    self.other_files.others[ending(entry.name)] += 1
            yield from self._files(root, files, above)
            waiting += reversed(deeper)

    def _files(self, root: Path, files: list[Path], above: str) -> Iterator[Found]:
        single = [file for file in files if not is_archive(file.name) or file.name.lower().endswith((".gz", ".stpz"))]
        groups = paired([file.name for file in single], self._rules)
        by_name = {file.name: file for file in files}
        group_of = {group[0]: group for group in groups}
        seconds = {name for group in groups for name in group[1:]}
        for file in files:
            if file.name in group_of:
                yield self._model(root, readable(above + file.name), [by_name[n] for n in group_of[file.name]])
            elif file.name not in seconds:
                yield from self._archive(root, file)

    def _model(self, root: Path, first: str, files: list[Path]) -> Found:
        """One model of one file or several; ``first`` is the first one's path below the root, for reading."""
        path = " + ".join([first, *(readable(file.name) for file in files[1:])])
        found: list[FoundFile] = []
        code = reason = ""
        for file in files:
            if is_archive(file.name):
                one, why = self._packed(file)
                code, reason = (code, reason) if code else why
            else:
                one = _plain_file(file)
            found.append(one)
        return Found(str(root), path, tuple(found), code, reason)

    def _packed(self, file: Path) -> tuple[FoundFile, tuple[str, str]]:
        """The one model in a gzip archive, or in a .stpz."""
        name = unpacked_name(file.name)
        looked = self._look_into(file)
        if isinstance(looked, Refused):
            return FoundFile(name, file, 0), (looked.code, looked.reason)
        if len(looked) != 1:
            reason = f"It should hold one model, and holds {len(looked)}. Pack it again, or as .zip."
            return FoundFile(name, file, 0), ("archive-damaged", reason)
        member = looked[0]
        return FoundFile(name, file, member.number, member.bytes, member.sha256), (member.code, member.reason)

    def _archive(self, root: Path, file: Path) -> Iterator[Found]:
        """All models in a zip archive."""
        above = _below(file, root)
        looked = self._look_into(file)
        if isinstance(looked, Refused):
            yield Found(str(root), above, (FoundFile(file.name, file),), looked.code, looked.reason)
            return
        if not looked:
            self.other_files.others[".zip without a model"] += 1
            return
        paths: Counter[str] = Counter()
        by_folder: dict[str, list[Member]] = {}
        for member in looked:
            by_folder.setdefault(member.path.replace("\\", "/").rpartition("/")[0], []).append(member)
        for members in by_folder.values():
            plain = {m.path.replace("\\", "/").rpartition("/")[2]: m for m in members if not m.code}
            for group in paired(sorted(plain), self._rules):
                if len(group) > 1:
                    yield self._of_members(root, file, above, [plain[name] for name in group], paths)
                    members = [m for m in members if m not in [plain[name] for name in group]]
            for member in members:
                yield self._of_members(root, file, above, [member], paths)

    def _of_members(self, root: Path, file: Path, above: str, members: list[Member], paths: Counter[str]) -> Found:
        names = [member.path.replace("\\", "/").rpartition("/")[2] for member in members]
        path = " + ".join([f"{above}/{readable(members[0].path)}", *map(readable, names[1:])])
        paths[path] += 1
        if paths[path] > 1:
            path += f" (number {members[0].number})"
        files = tuple(
            FoundFile(name, file, member.number, member.bytes, member.sha256)
            for name, member in zip(names, members, strict=True)
        )
        return Found(str(root), path, files, members[0].code, members[0].reason)

    def _of_list(self) -> Iterator[Found]:
        told: Counter[tuple[str, str]] = Counter()
        for group in self._listed:
            root = next((r for r in self._folders if group[0].resolve().is_relative_to(r.resolve())), None)
            folder = group[0].parent if root is None else root
            first = _below(group[0].resolve(), folder.resolve())
            found = self._model(folder, first, list(group))
            path = " + ".join([first, *(readable(file.name) for file in group[1:])])
            told[str(folder), path] += 1
            if told[str(folder), path] == 1:
                yield Found(str(folder), path, found.files, found.code, found.reason)

    def _link(self, root: Path, place: Path) -> Found:
        reason = "It is a link, which a scan doesn't follow. Scan the folder that it leads to, or use --follow-links."
        return Found(str(root), _below(place, root), (FoundFile(place.name, place),), "link", reason)

    def _is_ours(self, place: Path) -> bool:
        return self._out is not None and place.resolve() == self._out


def _plain_file(file: Path) -> FoundFile:
    try:
        facts = file.stat()
        return FoundFile(file.name, file, None, facts.st_size, stamp=stamp_of(facts))
    except OSError:
        return FoundFile(file.name, file)


def _is_folder(entry: os.DirEntry[str]) -> bool:
    try:
        return entry.is_dir()
    except OSError:
        return False


def _identity(folder: Path) -> tuple[int, int] | None:
    try:
        facts = folder.stat()
    except OSError:
        return None
    return (facts.st_dev, facts.st_ino) if stat.S_ISDIR(facts.st_mode) else None


def _below(place: Path, root: Path) -> str:
    relative = os.path.relpath(place, root).replace(os.sep, "/")
    return "" if relative == "." else readable(relative)
