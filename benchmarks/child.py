"""One measurement in a process of its own: ``python -m benchmarks.child JOB MODEL [NUMBER]`` prints JSON.

CPU seconds exclude the imports; the peak of memory includes them. Python's collector of cycles is set for all jobs as
in the child process in which ``seamcheck review`` runs.
"""

from __future__ import annotations

import gc
import json
import resource
import sys
import time
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np


def bare(model: str, _: float) -> dict[str, Any]:
    """The kernel's reader with its default settings: parse and transfer."""
    from OCP.Message import Message
    from OCP.STEPControl import STEPControl_Reader

    Message.DefaultMessenger_s().ChangePrinters().Clear()
    start = time.process_time()
    reader = STEPControl_Reader()
    reader.ReadFile(model)
    reader.TransferRoots()
    return {"cpu": time.process_time() - start}


def kernel(_: str, __: float) -> dict[str, Any]:
    """What importing the CAD kernel costs: seconds here are told in multiples of it.

    As plain Python does it, but for the collector of cycles: the 0.65 s were measured so. The child of a review looks
    up fewer addresses (``isolation/loading.py``) and takes a tenth less.
    """
    gc.set_threshold(200_000, 20, 100)
    start = time.process_time()
    from OCP.STEPCAFControl import STEPCAFControl_Reader

    assert STEPCAFControl_Reader
    return {"cpu": time.process_time() - start}


def review(model: str, spacing: float) -> dict[str, Any]:
    """A whole review, by stages; at another spacing than the usual one where that is not 0 (mm)."""
    return _review(model, spacing, with_view=False)


def drawing(model: str, _: float) -> dict[str, Any]:
    """What a review adds for its page: section outlines and display meshes."""
    return {"cpu": _review(model, 0.0, with_view=True)["stages"]["drawing"]}


def _review(model: str, spacing: float, with_view: bool) -> dict[str, Any]:
    _import()
    from seamcheck.pipeline import review_model
    from seamcheck.settings.settings import Settings

    settings = Settings() if spacing == 0.0 else Settings().changed({"station_spacing": spacing})
    marks = [("start", time.process_time())]
    document = review_model((Path(model),), settings, with_view, lambda s, *_: marks.append((s, time.process_time())))
    marks.append(("", time.process_time()))
    stages: dict[str, float] = {}
    for (stage, begin), (_, end) in pairwise(marks):
        stages[stage] = stages.get(stage, 0.0) + end - begin
    stations = sum(len(c["stations"]["s"]) for j in document["joints"] for c in j["contours"])
    cpu = marks[-1][1] - marks[0][1]
    faces = sum(part["faces"] for part in document["model"]["parts"])
    reason = (document["reason"] or {}).get("code", "")
    found = {"stations": stations, "faces": faces, "verdict": document["verdict"], "reason": reason}
    return {"cpu": cpu, "stages": stages, **found}


def survey(model: str, spacing: float) -> dict[str, Any]:
    """All columns of the sections at one station spacing (mm), without the interface; then with it."""
    from msgspec.structs import replace

    joint, contour, settings = _traced(model)
    from seamcheck.measure import survey_joint
    from seamcheck.measure.interface import survey_interface

    settings = replace(settings, station_spacing=spacing)
    start = time.process_time()
    found = survey_joint(joint, contour, settings)
    middle = time.process_time()
    survey_interface(joint, contour, found, settings)
    stations = sum(len(path.s) for path in found.paths)
    return {"cpu": middle - start, "interface": time.process_time() - middle, "stations": stations}


def brep(model: str, count: float) -> dict[str, Any]:
    """The kernel's section of cover and base with a plane, at some stations."""
    from OCP.BRepAlgoAPI import BRepAlgoAPI_Section
    from OCP.gp import gp_Dir, gp_Pln, gp_Pnt

    joint, contour, _ = _traced(model)
    spent, edges = 0.0, 0
    for point, normal in _planes(joint, contour, int(count)):
        plane = gp_Pln(gp_Pnt(*point), gp_Dir(*normal))
        start = time.process_time()
        for body in (joint.rib, joint.counter):
            section = BRepAlgoAPI_Section(body.shape, plane, False)
            section.Build()
            edges += section.SectionEdges().Size()
        spent += time.process_time() - start
    return {"cpu": spent, "stations": int(count), "edges": edges}


def mesh(model: str, count: float) -> dict[str, Any]:
    """trimesh's section of meshes of the same chord error with a plane, at some stations; meshing not counted."""
    import trimesh

    joint, contour, _ = _traced(model)
    from seamcheck.sections.band import DEFLECTION

    solids = []
    for body in (joint.rib, joint.counter):
        corners = body.facets(range(len(body.faces)), DEFLECTION).corners
        solids.append(trimesh.Trimesh(**trimesh.triangles.to_kwargs(corners)))
    spent, points = 0.0, 0
    for point, normal in _planes(joint, contour, int(count)):
        start = time.process_time()
        for solid in solids:
            points += len(solid.section(plane_origin=point, plane_normal=normal).vertices)
        spent += time.process_time() - start
    return {"cpu": spent, "stations": int(count), "points": points}


def _traced(model: str) -> tuple[Any, Any, Any]:
    _import()
    from seamcheck.assembly import read_assembly
    from seamcheck.contour import trace_contour
    from seamcheck.joint import find_joints
    from seamcheck.settings.settings import Settings

    settings = Settings()
    (joint,) = find_joints(read_assembly([Path(model)]), settings)
    return joint, trace_contour(joint), settings


def _planes(joint: Any, contour: Any, count: int) -> list[tuple[np.ndarray, np.ndarray]]:
    path = contour.paths[0]
    some = np.linspace(0, len(path.s) - 1, count, endpoint=False).astype(int)
    along = np.column_stack([-path.u[some, 1], path.u[some, 0], np.zeros(count)])
    return list(zip(joint.frame.world(path.points[some]), joint.frame.world_vectors(along), strict=True))


def _import() -> None:
    import importlib

    from seamcheck.isolation.loading import REVIEW_MODULES, begin_review_process

    begin_review_process()  # as the child of a review does

    for module in (*REVIEW_MODULES, "seamcheck.measure.interface", "seamcheck.measure.material.assessment"):
        importlib.import_module(module)


def peak_mb() -> float:
    """The most memory that this process held, in MB; not by getrusage on Linux, which counts its parent's with it."""
    status = Path("/proc/self/status")
    if status.exists():
        (line,) = (line for line in status.read_text("ascii").splitlines() if line.startswith("VmHWM:"))
        return float(line.split()[1]) * 1024 / 1e6
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (1e6 if sys.platform == "darwin" else 1e3)


JOBS = {job.__name__: job for job in (kernel, bare, review, drawing, survey, brep, mesh)}

if __name__ == "__main__":
    from seamcheck.isolation.loading import collect_garbage_rarely

    collect_garbage_rarely()
    job, model, *number = sys.argv[1:]
    found = JOBS[job](model, float(number[0]) if number else 0.0)
    found["peak_mb"] = peak_mb()
    print("\n" + json.dumps(found))
