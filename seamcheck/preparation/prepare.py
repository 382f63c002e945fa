"""``seamcheck.prepare``: from a review that holds to a folder with clamp, nest and weld path for the trial."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.isolation import run_isolated
from seamcheck.joint.frame import Frame
from seamcheck.pipeline import MEMORY_LIMIT, TIME_LIMIT, review, settings_for
from seamcheck.preparation.blocks import Blocks, Drawn, axis_of, draw_blocks
from seamcheck.preparation.files import drawing, path_csv, path_json
from seamcheck.preparation.path import Drive, WeldPath, numbers, weld_path
from seamcheck.preparation.rows import Tooling, sheet_of
from seamcheck.preparation.scanner import Field, field_coordinates
from seamcheck.preparation.tools import corridor_of, land_of, path_points, press_frame
from seamcheck.settings.declared import USUAL_SPEED
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.pipeline import Progress
    from seamcheck.report.review import Review

IN_THE_WAY = frozenset({"scanner-shadow", "parts-overlap"})
"""What a clamp on the cover may not add to the review's findings: shade, and bodies that run into each other. Where the
light is parallel, what stands over the rib shades it too (beam-path)."""

USUAL_INDEX = 1.53
"""Refractive index where neither settings nor material name one (from memory)."""


class NotPrepared(SeamcheckError):
    """A model from which no clamp, nest and weld path can be made, and why."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why

    def __str__(self) -> str:
        return self.why


@dataclass(frozen=True, slots=True, eq=False)
class Preparation:
    """What was written: file names -> bytes; the weld paths; the review with the clamp on the cover, None without."""

    files: Mapping[str, bytes]
    paths: tuple[WeldPath, ...]
    before: Review
    with_clamp: Review | None


def prepare(
    model: str | PathLike[str] | Sequence[str | PathLike[str]],
    folder: str | PathLike[str],
    settings: Settings | str | PathLike[str] | None = None,
    *,
    clockwise: bool = False,
    progress: Progress | None = None,
    time_limit: float | None = None,
    memory_limit: float | None = None,
) -> Preparation:
    """Write clamp, nest and weld path of a model whose review holds into a folder.

    Parameters
    ----------
    model : STEP file, or several that share a frame
    folder : that does not exist yet, or is empty; all files come into it at once, or none
    settings : as for ``seamcheck.review``
    clockwise : the way round, seen against the light

    Raises
    ------
    NotPrepared : the model was not reviewed, breaks a must-fix limit, has no closed rib, or its land is too narrow
    UsageError : settings, a folder or numbers that can't be taken
    """
    paths = [Path(model)] if isinstance(model, str | PathLike) else [Path(part) for part in model]
    if not isinstance(settings, Settings):
        settings = settings_for(paths, None if settings is None else Path(settings))
    target = check_folder(Path(folder), paths)
    trial = settings.trial
    drive = Drive(trial.speed or USUAL_SPEED, trial.acceleration, trial.overlap, int(trial.laps or 1), clockwise)
    blocks = Blocks(
        settings.clamp.height, trial.frame_width, trial.clearance, trial.nest_grip, trial.nest_play, trial.nest_draft
    )
    tooling = Tooling(
        blocks, trial.plate, settings.clamp.modulus, trial.power, trial.cooling, trial.handling, trial.hours,
        trial.used, trial.parts,
    )  # fmt: skip
    run: dict[str, Any] = {"progress": progress, "time_limit": time_limit, "memory_limit": memory_limit}
    before = review(paths, settings, **run)
    joints = check_review(before)
    frames = [press_frame(joint) for joint in joints]
    if tooling.plate is None:
        for joint, frame in zip(joints, frames, strict=True):
            check_land(joint, frame, settings, tooling.blocks)
    files: dict[str, bytes] = {}
    welded: list[WeldPath] = []
    clamped: Review | None = None
    with tempfile.TemporaryDirectory(prefix="seamcheck-") as name:
        for joint, frame in zip(joints, frames, strict=True):
            work = Path(name) / str(joint["id"])
            work.mkdir()
            drawn: Drawn = run_isolated(
                f"{draw_blocks.__module__}:draw_blocks",
                (tuple(paths), settings, dict(joint), tooling.blocks, tooling.plate is None, work),
                progress=progress,
                time_limit_s=time_limit or TIME_LIMIT,
                memory_limit_mb=memory_limit or MEMORY_LIMIT,
                writable=[str(work)],
            )
            if drawn.overlap > 1e-3:
                raise NotPrepared(
                    f"Clamp or nest would run into a part by {drawn.overlap:.2f} mm³; nothing is written."
                )
            if drawn.has_clamp:
                clamped = review(
                    [work / "with-clamp.step"], _named(settings, joint, before), cache=False, **run
                )  # fmt: skip
                check_shade(before, clamped, settings)
            ahead = f"{joint['id']}-" if len(joints) > 1 else ""
            made, found = files_of(joint, frame, drawn, settings, drive, tooling, before, work)
            files |= {ahead + key: value for key, value in made.items()}
            welded += found
    write_all(target, files)
    return Preparation(files, tuple(welded), before, clamped)


# -- what can't be taken ----------------------------------------------------------------------------------


def check_folder(folder: Path, models: Sequence[Path]) -> Path:
    """The folder, if all files can be written into it; UsageError otherwise."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise UsageError(f"{folder} is there already and not an empty folder; name another one.")
    if not folder.resolve().parent.is_dir():
        raise UsageError(f"The folder {folder.resolve().parent} in which {folder.name} is to lie does not exist.")
    return folder


def check_review(before: Review) -> list[Mapping[str, Any]]:
    """The joints of a review from which tools can be made; NotPrepared otherwise."""
    document = before.document
    if before.verdict == "not-reviewed":
        raise NotPrepared(f"The model was not reviewed: {document['reason']['message']}")
    broken = [f for f in document["findings"] if f["severity"] == "must-fix" and not f["waived"]]
    if broken:
        raise NotPrepared(
            f"The model breaks {len(broken)} must-fix limit{'s' if len(broken) > 1 else ''} ({broken[0]['rule']}"
            f"{' and others' if len({f['rule'] for f in broken}) > 1 else ''}): change it, or waive them with a "
            "reason, before tools are made."
        )
    joints: list[Mapping[str, Any]] = list(document["joints"])
    for joint in joints:
        if joint["rib_on"] == "none":
            raise NotPrepared(f"Seam {joint['id']} has no weld rib that a path could follow.")
        if not all(contour["closed"] for contour in joint["contours"]):
            raise NotPrepared(
                f"Seam {joint['id']} branches or has open ends; clamp and path are made for closed seams only."
            )
    return joints


def check_land(joint: Mapping[str, Any], frame: Frame, settings: Settings, blocks: Blocks) -> None:
    """NotPrepared where the light leaves the clamp no land on either side."""
    land = land_of(joint, frame)
    for contour in joint["contours"]:
        corridor = corridor_of(contour, frame, settings.beam_margin + blocks.clear)
        left = land.difference(corridor.region)
        if left.buffer(-settings.clamp.width / 2.0).is_empty:
            raise NotPrepared(
                f"The light with {blocks.clear:g} mm beside it leaves no land {settings.clamp.width:g} mm wide on the "
                f"cover of seam {joint['id']}: make the spot narrower or the cover wider, or press through a plate "
                "(--plate-thickness, --plate-index)."
            )


def check_shade(before: Review, clamped: Review, settings: Settings) -> None:
    """NotPrepared where the clamp on the cover adds shade or a collision to the review."""
    if clamped.verdict == "not-reviewed":
        raise NotPrepared(f"The model with the clamp on it was not reviewed: {clamped.document['reason']['message']}")
    is_parallel = settings.scanner is None or settings.scanner.is_telecentric
    rules = IN_THE_WAY | ({"beam-path"} if is_parallel else set())
    was = [f["rule"] for f in before.document["findings"] if f["rule"] in rules]
    more = [f for f in clamped.document["findings"] if f["rule"] in rules]
    if len(more) > len(was):
        raise NotPrepared(f"The clamp would stand in the way: {more[-1]['message']}")


def _named(settings: Settings, joint: Mapping[str, Any], before: Review) -> Settings:
    """Settings that name cover and base, so that the clamp's bodies are neither."""
    names = {part["id"]: part["name"] for part in before.document["model"]["parts"]}
    if len(joint["cover"]) == len(joint["base"]) == 1:
        return settings.changed({"cover": names[joint["cover"][0]], "base": names[joint["base"][0]]})
    return settings


# -- files ------------------------------------------------------------------------------------------------


def files_of(
    joint: Mapping[str, Any], frame: Frame, drawn: Drawn, settings: Settings, drive: Drive, tooling: Tooling,
    before: Review, work: Path,
) -> tuple[dict[str, bytes], list[WeldPath]]:  # fmt: skip
    """Name -> content of every file of one joint, and its weld paths."""
    model = str(before.document["model"]["file"])
    beam = np.asarray(joint["beam"], dtype=float)
    index = _index(settings, before.document, joint)
    distance = None if settings.scanner is None else settings.scanner.distance
    field_of_scanner = Field(frame, distance, axis_of(settings, frame, joint), index, tooling.plate)
    files: dict[str, bytes] = {"nest.step": (work / "nest.step").read_bytes()}
    if drawn.has_clamp:
        files["clamp.step"] = (work / "clamp.step").read_bytes()
    notes = _notes(model, joint, frame, field_of_scanner, drive)
    paths, scanned = [], []
    for contour in joint["contours"]:
        path = weld_path(contour, beam, drive)
        thickness = numbers(contour["stations"].get("cover_thickness"), len(contour["stations"]["s"]), np.nan)
        cover = np.where(np.isnan(thickness), np.nanmedian(thickness), thickness)[path.station]
        told = field_coordinates(field_of_scanner, path.points, cover)
        name = "path" if len(joint["contours"]) == 1 else f"path-{contour['id']}"
        files[f"{name}.csv"] = path_csv(path, told, notes).encode()
        files[f"{name}.json"] = path_json(path, frame, notes).encode()
        scanned.append(frame.world(np.column_stack([told, np.zeros(len(told))])))
        paths.append(path)
    lines = [path_points(contour) for contour in joint["contours"]]
    loops = [rows[: len(contour["stations"]["s"])] for rows, contour in zip(scanned, joint["contours"], strict=True)]
    files["path.dxf"] = drawing(
        {"SEAM_MID_LINE": lines, "SCANNER_COORDINATES": loops, "START": [_mark(path, frame) for path in paths]},
        frame, f"{model} {joint['id']}: weld path seen against the light, mm", notes, ("SEAM_MID_LINE",),
    ).encode()  # fmt: skip
    land = [np.asarray(ring) for ring in joint["interface"]["clamp_area"].get("outlines") or []]
    clamp_layers = {"CLAMP_FOOT": [np.asarray(ring) for ring in drawn.clamp], "CLAMP_LAND": land}
    if drawn.has_clamp:
        files["clamp.dxf"] = drawing(
            clamp_layers, frame, f"{model} {joint['id']}: foot of the clamp on the cover, mm", notes, ("CLAMP_FOOT",)
        ).encode()
    files["nest.dxf"] = drawing(
        {
            "NEST_POCKET": [np.asarray(ring) for ring in drawn.nest],
            "SUPPORT": [np.asarray(ring) for ring in drawn.support_rings],
        },
        frame, f"{model} {joint['id']}: pocket of the nest and where it carries the base, mm", notes, ("NEST_POCKET",),
    ).encode()  # fmt: skip
    files["sheet.md"] = sheet_of(model, joint, frame, drawn, settings, drive, tooling, paths).encode()
    return files, paths


def _mark(path: WeldPath, frame: Frame, size: float = 1.5) -> np.ndarray:
    """A triangle at the start of a path that points along it."""
    across = np.cross(path.normal[0], path.tangent[0])
    start, ahead = path.points[0], path.tangent[0]
    return np.array([start + 2.0 * size * ahead, start + size * across, start - size * across])


def _index(settings: Settings, document: Mapping[str, Any], joint: Mapping[str, Any]) -> float:
    if settings.scanner is not None and settings.scanner.index is not None:
        return float(settings.scanner.index)
    known = ((joint.get("material") or {}).get("transmission") or {}).get("index") or {}
    return float(known.get("value") or USUAL_INDEX)


def _notes(model: str, joint: Mapping[str, Any], frame: Frame, scanner: Field, drive: Drive) -> list[str]:
    origin = " ".join(f"{x:.4f}" for x in frame.origin)
    axes = "; ".join(" ".join(f"{x:.6f}" for x in axis) for axis in frame.axes)
    told = "scanner coordinates: x and y where the straight ray would meet the plane of the rib's top without a cover"
    if scanner.distance is None:
        told += "; parallel light, so they are the seam's own"
    else:
        foot = " ".join(f"{x:.4f}" for x in scanner.axis)
        told += f"; pivot {scanner.distance:g} mm over the cover's top at {foot}, refractive index {scanner.index:g}"
    return [
        f"model {model}, seam {joint['id']}; lengths in mm, positions in the model's coordinates",
        f"frame of the seam: origin {origin}; x, y, z (against the light) {axes}",
        told,
        f"laps {drive.laps}; power rises over the first rows and falls over the overlap; no machine's recipe",
    ]


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
