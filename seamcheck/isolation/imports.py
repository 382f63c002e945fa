"""From where a child imports: the folders in which seamcheck, its libraries and Python's own lie, and no other.

A model lies beside files of strangers, and the working folder is often that of the model: a ``numpy.py`` there must
never run. Python itself looks in its own folders and in those of installed libraries (also ``--user`` and editable
ones); it is told to leave out the working folder, and PYTHONPATH is not handed on. What else a child needs is named
here: seamcheck, from where this process has it, and folders of the path into which libraries were installed.
"""

from __future__ import annotations

import os
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

from seamcheck.isolation.limits import ONE_THREAD

HOME = Path(__file__).resolve().parents[2]
"""The folder in which the running seamcheck lies."""

ALSO: list[str] = []
"""Further folders that jobs come from; empty but in the tests."""

_START = Path(__file__).with_name("start.py")
_INSTALLED = (".dist-info", ".egg-info")


def child_command(main: str, *arguments: str) -> list[str]:
    """The command of a child that runs ``module:function`` of seamcheck, which finds the arguments in sys.argv[1:]."""
    folders = os.pathsep.join([*libraries(), *ALSO])
    return [sys.executable, *_flags(), str(_START), str(HOME), folders, main, *arguments]


def child_environment() -> dict[str, str]:
    """This process's environment without what would add folders to a child's path, and with one thread of BLAS."""
    return {key: value for key, value in os.environ.items() if key != "PYTHONPATH"} | ONE_THREAD


def libraries() -> list[str]:
    """Folders of this process's path into which libraries were installed; never the working folder."""
    here = os.path.realpath(os.curdir)
    return [folder for folder in sys.path if folder and _holds_libraries(folder) and os.path.realpath(folder) != here]


def children_path() -> list[str]:
    """This process's path as a forked child keeps it: Python's own folders and those of libraries, no other."""
    own = {os.path.realpath(prefix) + os.sep for prefix in (sys.prefix, sys.base_prefix, sys.exec_prefix)}
    here, kept = os.path.realpath(os.curdir), set(libraries())
    return [
        folder
        for folder in sys.path
        if folder in kept or (os.path.realpath(folder) != here and os.path.realpath(folder).startswith(tuple(own)))
    ] + ALSO


def program(name: str) -> str | None:
    """Path of an installed program, None where there is none; never one that lies in the working folder.

    On Windows, and where PATH holds '.', the system would look there first.
    """
    found = shutil.which(name)
    if found is None or os.path.dirname(name):  # None, or a place that somebody named
        return found
    here = os.path.realpath(os.curdir)
    if os.path.realpath(os.path.dirname(os.path.abspath(found))) != here:
        return found
    for folder in os.environ.get("PATH", "").split(os.pathsep):
        if not os.path.isabs(folder) or os.path.realpath(folder) == here:
            continue
        if (found := shutil.which(os.path.join(folder, name))) is not None:
            return found
    return None


def here() -> str:
    """The folder of seamcheck in the process that is asked."""
    return str(HOME)


def _holds_libraries(folder: str) -> bool:
    try:
        return os.path.isabs(folder) and any(name.endswith(_INSTALLED) for name in os.listdir(folder))
    except OSError:
        return False


def _flags() -> Iterator[str]:
    """What this process was told about its own path, and never to look in the working folder."""
    yield "-P"
    for name, flag in (("isolated", "-I"), ("ignore_environment", "-E"), ("no_user_site", "-s"), ("no_site", "-S")):
        if getattr(sys.flags, name):
            yield flag
