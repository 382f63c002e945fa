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

from OCP.BRep import BRep_Builder
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.BRepTools import BRepTools
from OCP.TopoDS import TopoDS_Compound

from seamcheck.isolation.child import end_with_parent

CPU_SECONDS = 1.5  # for a face, or some together; sound ones take milliseconds
WAIT_SECONDS = 60.0  # for as much on a busy machine
FINEST_MM, FINEST_RAD = 0.001, 0.3  # no finer mesh is asked for in a review
MOST_HANGS = 4  # then the rest counts as bad, too

_CAN_FORK = sys.platform == "linux"


def faces_without_end(faces: Sequence[Any], beside: Sequence[Any] = ()) -> list[int]:
    """Indices of the faces on which the mesher hangs or crashes, ascending.

    Parameters
    ----------
    faces : TopoDS_Face, those in doubt
    beside : their neighbours; the mesher may hang on some faces together that it takes one by one
    """
    if not _CAN_FORK or not faces or _meshed([_compound([*faces, *beside])]):
        return []
    bad = _faulty_faces(faces)
    others = [face for index, face in enumerate(faces) if index not in bad]
    if not others or _meshed([_compound([*others, *beside])]):
        return bad
    return list(range(len(faces)))


def _faulty_faces(faces: Sequence[Any]) -> list[int]:
    bad: list[int] = []
    begin = 0
    while begin < len(faces):
        if len(bad) >= MOST_HANGS:
            return [*bad, *range(begin, len(faces))]
        begin += _meshed(faces[begin:])
        if begin < len(faces):
            bad.append(begin)
            begin += 1
    return bad


def _compound(faces: Sequence[Any]) -> TopoDS_Compound:
    builder, compound = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(compound)
    for face in faces:
        builder.Add(compound, face)
    return compound


def _meshed(shapes: Sequence[Any]) -> int:
    """How many of some shapes, from the first on, the mesher gets done one after the other."""
    told, tell = os.pipe()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)  # forking beside a waiting thread: it holds no lock here
        parent, child = os.getpid(), os.fork()
    if child == 0:
        try:
            end_with_parent(parent)
            _mesh_each(shapes, tell)
        finally:
            os._exit(0)
    os.close(tell)
    done = 0
    try:
        while done < len(shapes):
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


def _mesh_each(shapes: Sequence[Any], tell: int) -> None:
    faulthandler.disable()  # a crash here is an answer, no report
    signal.signal(signal.SIGVTALRM, signal.SIG_DFL)  # it ends the process, in the middle of the kernel's work
    for shape in shapes:
        signal.setitimer(signal.ITIMER_VIRTUAL, CPU_SECONDS)
        BRepTools.Clean_s(shape)
        with suppress(Exception):
            BRepMesh_IncrementalMesh(shape, FINEST_MM, False, FINEST_RAD, False)
        os.write(tell, b".")
