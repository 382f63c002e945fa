"""``seamcheck.prepare``: from a review that holds to a folder with clamp, nest and weld path for the trial."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from seamcheck.catalogue.voice import Voice, speaking
from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.isolation import run_isolated
from seamcheck.joint.frame import Frame
from seamcheck.pipeline import MEMORY_LIMIT, TIME_LIMIT, review, settings_for
from seamcheck.preparation.blocks import CLAMP, NEST, PLATE, Drawn, draw_blocks
from seamcheck.preparation.clamp import LEVEL
from seamcheck.preparation.corridor import Lamp, land_of, light_region, press_frame, tops_of
from seamcheck.preparation.files import Program, clamp_csv, drawing, path_csv, path_json
from seamcheck.preparation.given import drive_of, index_of, laps_of, pressure_of
from seamcheck.preparation.path import WeldPath, in_shares, needs_of, weld_path
from seamcheck.preparation.pressing import pressing
from seamcheck.preparation.rows import Trial, sheet_of
from seamcheck.preparation.scanner import Field
from seamcheck.preparation.strokes import strokes_of
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.pipeline import Progress
    from seamcheck.report.review import Review

IN_THE_WAY = frozenset({"scanner-shadow", "parts-overlap"})
"""What a clamp on the cover may not add to the review's findings: shadow, and bodies that run into each other. Where
the light is parallel, what stands over the rib shades it too (beam-path)."""

ON_LAND = frozenset({"clamp-land", "clamp-reach", "clamp-tilt"})
"""Limits of the land beside the light, which a plate over the seam does without."""


class NotPrepared(SeamcheckError):
    """A model from which no clamp, nest and weld path can be made, and why."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why

    def __str__(self) -> str:
        return self.why


@dataclass(frozen=True, slots=True, eq=False)
class Preparation:
    """What was written: file names -> bytes; the weld paths; reviews with the clamp on the cover, one for each seam."""

    files: Mapping[str, bytes]
    paths: tuple[WeldPath, ...]
    before: Review
    with_clamp: tuple[Review, ...]


def prepare(
    model: str | PathLike[str] | Sequence[str | PathLike[str]],
    folder: str | PathLike[str],
    settings: Settings | str | PathLike[str] | None = None,
    *,
    clockwise: bool = False,
    language: str = "en",
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
    language : of the sheet, a key of ``seamcheck.catalogue.voice.LANGUAGES``; what programs read stays English

    Raises
    ------
    NotPrepared : the model was not reviewed, breaks a must-fix limit, has no closed rib, or its land is too narrow
    UsageError : settings, a folder or numbers that can't be taken
    """
    paths = [Path(model)] if isinstance(model, str | PathLike) else [Path(part) for part in model]
    if not isinstance(settings, Settings):
        settings = settings_for(paths, None if settings is None else Path(settings))
    target = check_folder(Path(folder), paths)
    run: dict[str, Any] = {"progress": progress, "time_limit": time_limit, "memory_limit": memory_limit}
    before = review(paths, settings, **run)
    joints = check_review(before, has_plate=settings.trial.plate is not None)
    files: dict[str, bytes] = {}
    welded: list[WeldPath] = []
    clamped: list[Review] = []
    with tempfile.TemporaryDirectory(prefix="seamcheck-") as name:
        for joint in joints:
            work = Path(name) / str(joint["id"])
            work.mkdir()
            site = site_of(joint, settings)
            check_land(joint, site, settings)
            program = program_of(joint, site, settings, clockwise, str(before.document["model"]["file"]))
            drawn: Drawn = run_isolated(
                f"{draw_blocks.__module__}:draw_blocks",
                (
                    tuple(paths), settings, dict(joint), site.lamp, site.field,
                    np.vstack([path.points for path in program.paths]),
                    np.concatenate([path.thickness for path in program.paths]), work,
                ),
                progress=progress,
                time_limit_s=time_limit or TIME_LIMIT,
                memory_limit_mb=memory_limit or MEMORY_LIMIT,
                writable=[str(work)],
            )  # fmt: skip
            check_drawn(drawn, joint)
            ends = np.cumsum([len(path.s) for path in program.paths])[:-1]
            program = replace(program, told=np.split(drawn.told, ends))
            if settings.trial.plate is None:
                clamped.append(
                    review([work / "with-clamp.step"], _named(settings, joint, before), cache=False, **run)
                )  # fmt: skip
                check_shadow(before, clamped[-1], settings)
            ahead = f"{joint['id']}-" if len(joints) > 1 else ""
            pressed = [pressing(contour, settings, pressure_of(settings, joint)) for contour in joint["contours"]]
            trial = Trial(
                str(before.document["model"]["file"]), joint, site.frame, settings,
                drive_of(settings, joint, clockwise), drawn, pressed, program, _accepted(before, settings),
            )  # fmt: skip
            files |= {ahead + key: value for key, value in files_of(trial, work, Voice(language)).items()}
            welded += program.paths
    write_all(target, files)
    return Preparation(files, tuple(welded), before, tuple(clamped))


@dataclass(frozen=True, slots=True, eq=False)
class Site:
    """Frame of a joint, where its light comes from, and the scanner over it."""

    frame: Frame
    lamp: Lamp
    field: Field


def site_of(joint: Mapping[str, Any], settings: Settings) -> Site:
    """The site of one joint."""
    frame, scanner = press_frame(joint), settings.scanner
    level = float(np.nanmedian(np.concatenate(tops_of(joint, frame))))
    if scanner is None:
        lamp = Lamp(None, np.zeros(2), 0.0, level)
    else:
        given = scanner.axis if scanner.axis is not None else joint["interface"]["field_circle"]["at"]
        pivot = None if scanner.distance is None else level + scanner.distance
        axis = np.asarray(frame.local(np.asarray(given, dtype=float))[:2])
        lamp = Lamp(pivot, axis, scanner.half_angle, level)
    field = Field(frame, lamp.pivot, lamp.axis, index_of(settings, joint), settings.trial.plate, scanner is not None)
    return Site(frame, lamp, field)


def program_of(joint: Mapping[str, Any], site: Site, settings: Settings, clockwise: bool, model: str) -> Program:
    """The strokes of one joint with speed and power; what the scanner is told comes later."""
    contours, beam = joint["contours"], np.asarray(joint["beam"], dtype=float)
    drive, strokes = drive_of(settings, joint, clockwise), strokes_of(contours)
    needs = needs_of(strokes, contours)
    paths = in_shares(
        [weld_path(stroke, need, contours, beam, drive) for stroke, need in zip(strokes, needs, strict=True)]
    )
    laps, _ = laps_of(settings, joint, sum(path.lap_seconds for path in paths))
    ids = [str(contour["id"]) for contour in contours]
    return Program(paths, (), ids, laps, site.frame, _notes(model, joint, site, settings, laps))


# -- what can't be taken ----------------------------------------------------------------------------------


def check_folder(folder: Path, models: Sequence[Path]) -> Path:
    """The folder, if all files can be written into it; UsageError otherwise."""
    if folder.is_symlink():
        raise UsageError(f"{folder} is a link; name a folder that does not exist yet.")
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise UsageError(f"{folder} is there already and not an empty folder; name another one.")
    parent = folder.resolve().parent
    if not parent.is_dir():
        raise UsageError(f"{folder} can't be written: there is no folder {parent}.")
    if not os.access(parent, os.W_OK):
        raise UsageError(f"{folder} can't be written: no permission in {parent}.")
    return folder


def check_review(before: Review, has_plate: bool = False) -> list[Mapping[str, Any]]:
    """The joints of a review from which tools can be made; NotPrepared otherwise."""
    document = before.document
    if before.verdict == "not-reviewed":
        raise NotPrepared(f"The model was not reviewed: {document['reason']['message']}")
    broken = [f for f in _broken(before) if not (has_plate and f["rule"] in ON_LAND)]
    if broken:
        rules = sorted({f["rule"] for f in broken})
        several = len(broken) > 1
        plate = " A plate needs no land (--plate-thickness, --plate-index)." if set(rules) <= ON_LAND else ""
        raise NotPrepared(
            f"The model breaks {len(broken)} must-fix limit{'s' if several else ''} ({', '.join(rules[:3])}"
            f"{' and others' if len(rules) > 3 else ''}): change it, or waive {'them' if several else 'it'} with a "
            f"reason, before tools are made.{plate}"
        )
    joints: list[Mapping[str, Any]] = list(document["joints"])
    for joint in joints:
        if joint["rib_on"] == "none":
            raise NotPrepared(f"Seam {joint['id']} has no weld rib that a path could follow.")
        if not joint["contours"]:
            raise NotPrepared(f"The rib of seam {joint['id']} could not be traced, so there is no path to follow.")
    return joints


def _broken(before: Review) -> list[Mapping[str, Any]]:
    return [f for f in before.document["findings"] if f["severity"] == "must-fix" and not f["waived"]]


def _accepted(before: Review, settings: Settings) -> list[str]:
    """Broken limits that a plate does without."""
    return [] if settings.trial.plate is None else sorted({f["rule"] for f in _broken(before) if f["rule"] in ON_LAND})


def check_land(joint: Mapping[str, Any], site: Site, settings: Settings) -> None:
    """NotPrepared where the light leaves a clamp no land on either side, or the cover a plate no level top."""
    if settings.trial.plate is not None:
        tops = np.concatenate(tops_of(joint, site.frame))
        if float(np.nanmax(tops) - np.nanmin(tops)) > LEVEL:
            raise NotPrepared(
                f"The cover of seam {joint['id']} is not level: its top differs by "
                f"{np.nanmax(tops) - np.nanmin(tops):.2f} mm in height along the seam, so a plane plate does not press "
                "all of it."
            )
        return
    clear, least = settings.trial.clearance, settings.clamp.width
    light = light_region(joint, site.frame, site.lamp, settings.beam_margin + clear)
    if land_of(joint, site.frame, site.lamp, settings.beam_margin).difference(light).buffer(-least / 2.0).is_empty:
        raise NotPrepared(
            f"The light and {clear:g} mm beside it leave no land {least:g} mm wide on the cover of seam {joint['id']}: "
            "make the spot narrower or the cover wider, or press through a plate (--plate-thickness, --plate-index)."
        )


def check_drawn(drawn: Drawn, joint: Mapping[str, Any]) -> None:
    """NotPrepared where tools run into parts, press nothing, or the light finds no way to the seam."""
    if drawn.overlap > 1e-3:
        raise NotPrepared(f"Clamp or nest would run into a part by {drawn.overlap:.2f} mm³; nothing is written.")
    if not drawn.feet:
        raise NotPrepared(f"Beside the light there is no room for a clamp on the cover of seam {joint['id']}.")
    lost = int(np.isnan(drawn.told).any(axis=1).sum())
    if lost:
        raise NotPrepared(
            f"For {lost} of {len(drawn.told)} points of seam {joint['id']} no ray through the cover was found, so the "
            "scanner can't be told where to point."
        )


def check_shadow(before: Review, clamped: Review, settings: Settings) -> None:
    """NotPrepared where the clamp on the cover adds shadow or a collision to the review."""
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


def files_of(trial: Trial, work: Path, voice: Voice) -> dict[str, bytes]:
    """Name -> content of every file of one joint."""
    joint, frame, program, drawn = trial.joint, trial.frame, trial.program, trial.drawn
    kind = CLAMP if trial.settings.trial.plate is None else PLATE
    about, notes = f"{trial.model} {joint['id']}", program.notes
    files = {f"{name}.step": (work / f"{name}.step").read_bytes() for name in (kind, NEST)}
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
        frame, f"{about}: weld path seen against the light, mm", notes, lines[:1], lines,
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


def _notes(model: str, joint: Mapping[str, Any], site: Site, settings: Settings, laps: int) -> list[str]:
    origin = " ".join(f"{x + 0.0:.4f}" for x in site.frame.origin)
    axes = "; ".join(" ".join(f"{x + 0.0:.6f}" for x in axis) for axis in site.frame.axes)
    told = "scanner coordinates: x and y in that frame where the straight ray would meet z = 0 if there were no cover"
    if settings.scanner is None:
        told += "; no scanner is given, so they are those of the seam"
    elif site.lamp.pivot is None:
        told += f"; parallel light, refractive index of the cover {site.field.index:g}"
    else:
        foot = " ".join(f"{x + 0.0:.4f}" for x in site.lamp.axis)
        told += (
            f"; the mirrors' pivot stands at x and y {foot}, {settings.scanner.distance:g} mm over the cover's top; "
            f"refractive index of the cover {site.field.index:g}"
        )
    if site.field.plate is not None:
        told += f"; through a plate {site.field.plate[0]:g} mm thick of refractive index {site.field.plate[1]:g}"
    return [
        f"model {' '.join(model.split())}, seam {joint['id']}; lengths in mm, positions in the model's coordinates",
        f"frame of the seam: origin {origin}; axes x, y, z (z against the light) {axes}",
        told,
        f"laps {laps}; ramp_share counts in the first lap where it rises and after the last lap where it falls; "
        "not a machine's recipe",
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
