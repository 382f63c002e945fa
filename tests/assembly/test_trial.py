"""Faces that the mesher can't take: found without waiting for ever, and left out of their body with a word."""

from __future__ import annotations

import os
import signal
import sys

import pytest
from OCP.TopAbs import TopAbs_FACE
from reading_models import box, write

from seamcheck.assembly import bodies, read_assembly, soundness, trial

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="the trial needs fork")


def faces_of(shape):
    return list(bodies.explore(shape, TopAbs_FACE))


def test_faces_that_hang_or_crash_the_mesher_are_found(monkeypatch):
    faces = faces_of(box(1, 2, 3).val().wrapped)
    assert trial.faces_without_end(faces) == []
    real = trial.BRepMesh_IncrementalMesh

    def mesh(shape, *how):
        while any(face.IsSame(faces[1]) for face in faces_of(shape)):
            pass
        if any(face.IsSame(faces[3]) for face in faces_of(shape)):
            os.kill(os.getpid(), signal.SIGSEGV)
        real(shape, *how)

    monkeypatch.setattr(trial, "BRepMesh_IncrementalMesh", mesh)
    monkeypatch.setattr(trial, "CPU_SECONDS", 0.1)
    assert trial.faces_without_end(faces) == [1, 3]
    assert trial.faces_without_end(faces[4:], faces[:1]) == []


def test_faces_that_only_hang_together_are_all_left_out(monkeypatch):
    faces = faces_of(box(1, 2, 3).val().wrapped)
    monkeypatch.setattr(
        trial, "BRepMesh_IncrementalMesh", lambda shape, *how: os._exit(1) if len(faces_of(shape)) > 1 else None
    )
    assert trial.faces_without_end(faces[:1]) == []
    assert trial.faces_without_end(faces[:2]) == [0, 1]
    assert trial.faces_without_end(faces[:1], faces[1:]) == [0]


def test_after_some_faces_the_rest_is_not_tried(monkeypatch):
    faces = faces_of(box(1, 2, 3).val().wrapped)
    monkeypatch.setattr(trial, "BRepMesh_IncrementalMesh", lambda *how: os._exit(1))
    assert trial.faces_without_end(faces) == [0, 1, 2, 3, 4, 5]


def test_such_a_face_is_left_out_with_a_doubt_and_the_others_keep_their_records(tmp_path, monkeypatch):
    path = write(tmp_path / "model.step", [("case", box(40, 30, 10), None), ("lid", box(40, 30, 2), None)])
    whole = read_assembly(path).parts[0]
    real = soundness.Faces.flaws

    def broken_second_face(faces, shape):
        flaws = real(faces, shape)
        return soundness.Flaws(flaws.loose, (faces_of(shape)[1],), flaws.faces)

    monkeypatch.setattr(soundness.Faces, "flaws", broken_second_face)
    monkeypatch.setattr(bodies, "faces_without_end", lambda faces, beside: [0])
    assembly = read_assembly(path)
    part = assembly.parts[0]
    assert (part.kind, part.faces) == ("solid", 5)
    assert part.entities == (whole.entities[0], *whole.entities[2:])
    assert any("left out near" in doubt and doubt.startswith("'case'") for doubt in assembly.doubts)
