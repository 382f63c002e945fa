"""The files of a trial, and writing all of them or none."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Mapping
from pathlib import Path

import numpy as np

from seamcheck.catalogue.voice import Voice, speaking
from seamcheck.errors import UsageError
from seamcheck.isolation import written_by_child
from seamcheck.preparation.blocks import CLAMP, NEST, PLATE
from seamcheck.preparation.files import clamp_csv, drawing, path_csv, path_json
from seamcheck.preparation.path import WeldPath
from seamcheck.preparation.rows import Trial, sheet_of


def files_of(trial: Trial, work: Path, voice: Voice) -> dict[str, bytes]:
    """Name -> content of every file of one joint."""
    joint, frame, program, drawn = trial.joint, trial.frame, trial.program, trial.drawn
    kind = CLAMP if trial.settings.trial.plate is None else PLATE
    about, notes = f"{trial.model} {joint['id']}", program.notes
    files = {f"{name}.step": written_by_child(work / f"{name}.step") for name in (kind, NEST)}
    files["path.csv"] = path_csv(program).encode()
    files["path.json"] = path_json(program).encode()
    laps = [path.s < path.length - 1e-9 if path.closed else path.s <= path.length for path in program.paths]
    seam = [_line(path.points[lap], path) for path, lap in zip(program.paths, laps, strict=True)]
    told = [
        _line(frame.world(np.column_stack([rows, np.zeros(len(rows))]))[lap], path)
        for rows, path, lap in zip(program.told, program.paths, laps, strict=True)
    ]
    lines = ("SEAM_MID_LINE", "SCANNER_COORDINATES")
    files["path.dxf"] = drawing(
        {lines[0]: seam, lines[1]: told, "START": [_mark(path) for path in program.paths]},
        frame, f"{about}: weld path seen against the beam, mm", notes, lines[:1], lines,
    ).encode()  # fmt: skip
    feet = [np.asarray(ring) for rings in drawn.feet.values() for ring in rings]
    land = [np.asarray(ring) for ring in drawn.land]
    files[f"{kind}.dxf"] = drawing(
        {f"{kind.upper()}_FOOT": feet, "CLAMP_LAND": land}, frame, f"{about}: foot of the {kind} on the cover, mm",
        notes, (f"{kind.upper()}_FOOT",),
    ).encode()  # fmt: skip
    if kind == CLAMP:
        files["clamp.csv"] = clamp_csv(joint["contours"], trial.pressed, notes).encode()
    files["nest.dxf"] = drawing(
        {
            "NEST_POCKET": [np.asarray(ring) for ring in drawn.pocket],
            "SUPPORT": [np.asarray(ring) for ring in drawn.support],
        },
        frame, f"{about}: pocket of the nest and where it carries the base, mm", notes, ("NEST_POCKET",),
    ).encode()  # fmt: skip
    with speaking(voice):
        files["sheet.md"] = sheet_of(trial).encode()
    return files


def _line(points: np.ndarray, path: WeldPath) -> np.ndarray:
    """(n, 3) mm, a closed path with its first point repeated."""
    return np.vstack([points, points[:1]]) if path.closed else points


def _mark(path: WeldPath, size: float = 1.5) -> np.ndarray:
    """A triangle at the start of a path that points along it."""
    across = np.cross(path.normal[0], path.tangent[0])
    start, ahead = path.points[0], path.tangent[0]
    return np.array([start + 2.0 * size * ahead, start + size * across, start - size * across])


def write_all(folder: Path, files: Mapping[str, bytes]) -> None:
    """All files into the folder at once: made beside it under another name, then put in its place."""
    beside = folder.resolve().parent
    made = Path(tempfile.mkdtemp(prefix=f".{folder.name}-", dir=beside))
    try:
        for name, content in files.items():
            (made / name).write_bytes(content)
        made.chmod(0o755)
        if folder.exists():
            folder.rmdir()
        os.replace(made, folder)
    except OSError as why:
        raise UsageError(f"{folder} can't be written: {why.strerror or why}.") from None
    finally:
        shutil.rmtree(made, ignore_errors=True)
