"""Try the kernel's mesher on faces with a damaged outline: on some it never comes to an end, or it crashes.

Nothing can stop it within a process, so the trial runs in a fork of this one (Linux; elsewhere every face
counts as good, and the time limit of the review is what is left).
"""

from __future__ import annotations

import faulthandler
import os
import select
import signal
import sys
import warnings
from collections.abc import Sequence
from contextlib import suppress
from typing import Any

from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.BRepTools import BRepTools

from seamcheck.isolation.child import end_with_parent

CPU_SECONDS = 3.0  # for one face; a sound one takes milliseconds
WAIT_SECONDS = 60.0  # for as much on a busy machine
FINEST_MM, FINEST_RAD = 0.001, 0.3  # no finer mesh is asked for in a review
MOST_HANGS = 4  # then the rest counts as bad, too

_CAN_FORK = sys.platform == "linux"


def faces_without_end(faces: Sequence[Any]) -> list[int]:
    """Indices of the faces (TopoDS_Face) on which the mesher hangs or crashes, ascending."""
    bad: list[int] = []
    begin = 0
    while _CAN_FORK and begin < len(faces):
        if len(bad) >= MOST_HANGS:
            return [*bad, *range(begin, len(faces))]
        done = _meshed(faces[begin:])
        begin += done
        if begin < len(faces):
            bad.append(begin)
            begin += 1
    return bad


def _meshed(faces: Sequence[Any]) -> int:
    """How many of the faces, from the first on, the mesher gets done one after the other."""
    told, tell = os.pipe()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)  # forking beside a waiting thread: it holds no lock here
        parent, child = os.getpid(), os.fork()
    if child == 0:
        try:
            end_with_parent(parent)
            _mesh_each(faces, tell)
        finally:
            os._exit(0)
    os.close(tell)
    done = 0
    try:
        while done < len(faces):
            ready, _, _ = select.select([told], [], [], WAIT_SECONDS)
            if not ready or not os.read(told, 1):  # it hangs, or it ended before its time
                break
            done += 1
    finally:
        os.close(told)
        with suppress(ProcessLookupError):
            os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
    return done


def _mesh_each(faces: Sequence[Any], tell: int) -> None:
    faulthandler.disable()  # a crash here is an answer, no report
    signal.signal(signal.SIGVTALRM, signal.SIG_DFL)  # it ends the process, in the middle of the kernel's work
    for face in faces:
        signal.setitimer(signal.ITIMER_VIRTUAL, CPU_SECONDS)
        BRepTools.Clean_s(face)
        with suppress(Exception):
            BRepMesh_IncrementalMesh(face, FINEST_MM, False, FINEST_RAD, False)
        os.write(tell, b".")
