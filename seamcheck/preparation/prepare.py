"""``seamcheck.prepare``: from a review within its limits to a folder with clamp, nest and weld path for the trial."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping, Sequence
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.voice import Voice
from seamcheck.isolation import run_isolated, written_by_child
from seamcheck.pipeline import MEMORY_LIMIT, TIME_LIMIT, review, settings_for
from seamcheck.preparation.blocks import Drawn, draw_blocks
from seamcheck.preparation.checks import accepted, check_drawn, check_folder, check_land, check_review, check_shadow
from seamcheck.preparation.folder import files_of, write_all
from seamcheck.preparation.given import drive_of, pressure_of
from seamcheck.preparation.path import WeldPath
from seamcheck.preparation.pressing import pressing
from seamcheck.preparation.program import program_of, site_of
from seamcheck.preparation.rows import Trial
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.pipeline import Progress
    from seamcheck.report.review import Review


class Preparation(Struct, frozen=True, eq=False):
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
    clockwise : the way round, seen against the beam
    language : of the sheet, a key of ``seamcheck.catalogue.voice.LANGUAGES``; what programs read stays English

    Raises
    ------
    NotPrepared : the model was not reviewed, breaks a must-fix limit, has no rib, or its land is too narrow
    UsageError : settings, a folder or numbers that can't be taken
    """
    paths = [Path(model)] if isinstance(model, str | PathLike) else [Path(part) for part in model]
    if not isinstance(settings, Settings):
        settings = settings_for(paths, None if settings is None else Path(settings))
    target = check_folder(Path(folder))
    run: dict[str, Any] = {"progress": progress, "time_limit": time_limit, "memory_limit": memory_limit}
    before = review(paths, settings, **run)
    joints = check_review(before, has_plate=settings.trial.plate is not None)
    with tempfile.TemporaryDirectory(prefix="seamcheck-") as name:
        made = [
            _of_joint(paths, before, joint, settings, clockwise, language, Path(name) / str(joint["id"]), run)
            for joint in joints
        ]
    ahead = [f"{joint['id']}-" if len(joints) > 1 else "" for joint in joints]
    files = {start + key: value for start, one in zip(ahead, made, strict=True) for key, value in one.files.items()}
    write_all(target, files)
    return Preparation(
        files, tuple(path for one in made for path in one.paths), before,
        tuple(review for one in made for review in one.with_clamp),
    )  # fmt: skip


def _of_joint(
    paths: Sequence[Path], before: Review, joint: Mapping[str, Any], settings: Settings, clockwise: bool, language: str,
    work: Path, run: Mapping[str, Any],
) -> Preparation:  # fmt: skip
    """Files, paths and the review with the clamp of one joint; ``work`` is a folder that is made for it."""
    work.mkdir()
    model, site = str(before.document["model"]["file"]), site_of(joint, settings)
    check_land(joint, site, settings)
    program = program_of(joint, site, settings, clockwise, model)
    drawn: Drawn = run_isolated(
        f"{draw_blocks.__module__}:draw_blocks",
        (
            tuple(paths), settings, dict(joint), site.lamp, site.field,
            np.vstack([path.points for path in program.paths]),
            np.concatenate([path.thickness for path in program.paths]), work,
        ),
        progress=run["progress"],
        time_limit_s=run["time_limit"] or TIME_LIMIT,
        memory_limit_mb=run["memory_limit"] or MEMORY_LIMIT,
        writable=[str(work)],
    )  # fmt: skip
    check_drawn(drawn, joint)
    ends = np.cumsum([len(path.s) for path in program.paths])[:-1]
    program = replace(program, told=np.split(drawn.told, ends))
    clamped = []
    if settings.trial.plate is None:
        model_with_clamp = work.parent / f"{work.name}-with-clamp.step"  # where no child could write
        model_with_clamp.write_bytes(written_by_child(work / "with-clamp.step"))
        clamped = [review([model_with_clamp], _named(settings, joint, before), cache=False, **run)]
        check_shadow(before, clamped[0], settings)
    pressed = [pressing(contour, settings, pressure_of(settings, joint)) for contour in joint["contours"]]
    drive, without_land = drive_of(settings, joint, clockwise), accepted(before, settings)
    trial = Trial(model, joint, site.frame, settings, drive, drawn, pressed, program, without_land)
    return Preparation(files_of(trial, work, Voice(language)), tuple(program.paths), before, tuple(clamped))


def _named(settings: Settings, joint: Mapping[str, Any], before: Review) -> Settings:
    """Settings that name cover and base, so that the clamp's bodies are neither."""
    names = {part["id"]: part["name"] for part in before.document["model"]["parts"]}
    if len(joint["cover"]) == len(joint["base"]) == 1:
        return settings.changed({"cover": names[joint["cover"][0]], "base": names[joint["base"][0]]})
    return settings
