"""The whole way of one review, top to bottom: read, find, trace, survey, judge, document."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from importlib import import_module
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

from msgspec.structs import replace

from seamcheck.assembly.source import Given, file_facts
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed
from seamcheck.isolation.limits import MEMORY_LIMIT_MB, TIME_LIMIT_S
from seamcheck.isolation.loading import REVIEW_MODULES, give_back_memory
from seamcheck.settings.file import find_settings_file, read_found, read_settings
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.assembly.parts import Assembly
    from seamcheck.cache.folder import Folder
    from seamcheck.cache.measured import Measured
    from seamcheck.contour import Contour
    from seamcheck.joint import Looked
    from seamcheck.judge.findings import JointResult
    from seamcheck.report.review import Review

Progress = Callable[..., None]
"""Called with a stage as it begins: reading, transferring, finding, tracing, measuring, judging, drawing."""

IN_MEMORY = "in memory"
"""Stands for the file's name where the model was no file."""

TIME_LIMIT, MEMORY_LIMIT = TIME_LIMIT_S, MEMORY_LIMIT_MB
"""Seconds and MB that one review may take unless other limits are given."""


def review(
    model: Any,
    settings: Settings | str | PathLike[str] | None = None,
    *,
    progress: Progress | None = None,
    time_limit: float | None = None,
    memory_limit: float | None = None,
    with_view: bool = False,
    cache: bool | str | PathLike[str] = True,
    **overrides: Any,
) -> Review:
    """Review the weld seam of one model.

    Parameters
    ----------
    model : STEP file, or several that share a frame; or shapes in memory: of the CAD kernel, of a library
        that wraps them, an assembly of such a library, or a mapping name -> shape
    settings : Settings, a settings file, or None for the nearest ``seamcheck.toml`` beside or above the model
    progress : called now and then with the stage
    time_limit, memory_limit : s and MB for the child process that reads the model; None for 600 and 4096
    with_view : whether the document carries section outlines and display meshes for pictures
    cache : keep what is measured, and measure a model with the same bytes only once: in the folder that the
        environment variable SEAMCHECK_CACHE names (empty: nowhere), else in the user's cache folder; or a folder;
        or False. The result is the same.
    overrides : single settings: ``collapse=0.35``, ``cover="lid"``, ``beam=(0, 0, -1)``, and
        ``limits={"rib-width.min": 0.7, "corner-radius.severity": "note"}``

    Returns
    -------
    Review
        Also where the model could not be reviewed: its verdict then is 'not-reviewed', with a reason.

    Raises
    ------
    UsageError : a settings file or an override that can't be taken
    """
    paths = _paths(model)
    if paths is None:
        return _review_from_memory(
            model, settings, overrides, progress=progress, time_limit=time_limit, memory_limit=memory_limit,
            with_view=with_view,
        )  # fmt: skip
    if not isinstance(settings, Settings):
        settings = settings_for(paths, None if settings is None else Path(settings))
    limits = overrides.pop("limits", {})
    settings = settings.changed({**overrides, **limits})
    return _review_in_child(paths, settings, progress, time_limit, memory_limit, with_view, _cache_folder(cache))


def _cache_folder(cache: bool | str | PathLike[str]) -> Path | None:
    from seamcheck.cache.folder import default_folder

    return (default_folder() if cache else None) if isinstance(cache, bool) else Path(cache)


def settings_for(paths: Sequence[Path], file: Path | None = None, look: bool = True) -> Settings:
    """Settings of a given file, of the nearest one beside or above the model, or the defaults."""
    if file:
        return read_settings(file)
    found = find_settings_file(paths[0]) if look and paths else None
    return read_found(found) if found else Settings()


def review_model(
    paths: Sequence[Path | Given],
    settings: Settings,
    with_view: bool = False,
    progress: Progress = lambda stage: None,
    cache: Folder | Path | None = None,
) -> dict[str, Any]:
    """The review document of one model; loads the CAD kernel into this process, so a child should run it.

    Parameters
    ----------
    cache : folder in which what is measured is kept
    """
    from seamcheck.assembly import read_assembly
    from seamcheck.assembly.explain import costs, explained
    from seamcheck.cache.folder import Folder
    from seamcheck.cache.key import measuring
    from seamcheck.cache.measured import Measured, keep
    from seamcheck.document.make import not_reviewed_document
    from seamcheck.joint import Looked, join_pieces

    for module in REVIEW_MODULES:  # before the model is opened: what fails here is not the model's fault
        import_module(module)
    assembly = None
    try:
        progress("reading")
        assembly = read_assembly(paths, progress)
        if (told := costs(assembly)) and hasattr(progress, "costs"):  # a child tells it to its parent
            progress.costs(told)
        progress("finding")
        seen = Looked()
        assembly = join_pieces(assembly, settings, seen)
        joints, surveyed, stated = _surveyed(assembly, measuring(settings), progress, seen)
    except NotReviewed as reason:
        if assembly is None:
            return not_reviewed_document([file_facts(path) for path in paths], reason, settings)
        notes = (*assembly.notes, *assembly.doubts)
        return not_reviewed_document(assembly.files, explained(reason, assembly), settings, notes)
    view, notes = _view(surveyed, progress) if with_view else (None, ())
    del surveyed
    give_back_memory()
    if assembly.callouts:
        assembly = replace(assembly, notes=(*assembly.notes, *stated[1]))
    measured = Measured(assembly, joints, view, notes, stated[0])
    if cache is not None:
        keep(cache if isinstance(cache, Folder) else Folder(cache), measured, settings)
    return _judged(measured, settings, with_view, progress)


def review_and_keep(
    paths: Sequence[Path], settings: Settings, with_view: bool, cache: Path | None, progress: Progress
) -> dict[str, Any]:
    """``review_model`` as the child process runs it."""
    return review_model(paths, settings, with_view, progress, cache)


def _surveyed(
    assembly: Assembly, settings: Settings, progress: Progress, seen: Looked
) -> tuple[tuple[JointResult, ...], list[Any], tuple[dict[str, float], list[str]]]:
    """All joints; joint, contour and survey of each; tolerances that the model states, and sentences on them."""

    from seamcheck.assembly.explain import check_size
    from seamcheck.cache.key import RIB_MISSING
    from seamcheck.catalogue.rule import OFF
    from seamcheck.contour import trace_contour
    from seamcheck.joint import find_joints
    from seamcheck.judge.findings import JointResult
    from seamcheck.measure import survey_joint
    from seamcheck.measure.called_out import called_out
    from seamcheck.measure.interface import survey_interface

    sections = []
    for joint in find_joints(assembly, settings, seen):
        progress("tracing")
        contour = trace_contour(joint)
        progress("measuring")
        survey = survey_joint(joint, contour, settings)
        if not (settings.cover or settings.base):  # who names the parts has looked at them
            thickness = [path.columns["cover_thickness"] for path in survey.paths]
            check_size(assembly, (*joint.cover, *joint.base), thickness)
        sections.append((joint, contour, survey))
    stated = called_out(assembly, [(joint, survey) for joint, _, survey in sections], settings.tolerances)
    settings = settings.with_called_out(stated[0])
    results, surveyed = [], []
    for joint, contour, survey in sections:
        # a lap has one fault, and nothing that follows from it is measured, unless the settings want no rib
        if joint.rib_on != "none" or settings.severity(RIB_MISSING) == OFF:
            survey = survey_interface(joint, contour, survey, settings)
        surveyed.append((joint, contour, survey))
        left_out = joint.left_out if joint.rib_on == "none" else (*joint.left_out, *_untraced(contour))
        results.append(JointResult(**{**joint.facts(), "left_out": left_out}, survey=survey))
    return tuple(results), surveyed, stated


def _untraced(contour: Contour) -> tuple[str, ...]:
    """A sentence where a tenth of a band or more could not be followed."""
    whole = contour.length + contour.untraced
    if contour.untraced <= 0.1 * whole:
        return ()
    share = contour.untraced / whole
    return (f"{contour.untraced:.0f} mm of the band ({share:.0%}) have no centre line and were not reviewed",)


def _judged(measured: Measured, settings: Settings, with_view: bool, progress: Progress) -> dict[str, Any]:
    """The document of what was measured, now or earlier; needs no kernel."""

    from seamcheck.document.make import make_document
    from seamcheck.judge.judge import judge

    progress("judging")
    if not measured.joints:
        raise refused("no-seam", "no-seam.nothing-kept")
    settings = settings.with_called_out(measured.called_out)
    results, materials = list(measured.joints), settings.materials()
    if materials is not None:
        from seamcheck.measure.material import add_to

        for index, joint in enumerate(measured.joints):
            survey, extra = add_to(joint.survey, materials, joint.id, settings.collapse, joint.rib_on)
            results[index] = replace(joint, survey=survey, extra=extra)
    assembly = measured.assembly
    names = {part.id: part.name for part in assembly.parts}
    judgement = judge(results, settings, names, assembly.doubts)
    view, notes = (measured.view, measured.notes) if with_view else (None, ())
    return make_document(assembly, results, judgement, settings, notes, view)


def _view(surveyed: Sequence[Any], progress: Progress) -> tuple[dict[str, Any] | None, tuple[str, ...]]:
    """Sections and meshes for pictures; where that fails the review stands without them, with a note."""
    from seamcheck.document.take_view import take_view

    progress("drawing")
    try:
        return take_view(surveyed), ()
    except Exception as why:
        return None, (say("file.no-view", error=f"{type(why).__name__}: {why}"),)


def _review_in_child(
    paths: Sequence[Path],
    settings: Settings,
    progress: Progress | None,
    time_limit: float | None,
    memory_limit: float | None,
    with_view: bool,
    cache: Path | None,
) -> Review:
    from seamcheck.cache.folder import Folder
    from seamcheck.isolation import run_isolated
    from seamcheck.report.review import Review

    try:
        _look_before(paths)
        document = None if cache is None else remembered(paths, settings, progress, with_view, cache)
        return Review(
            document
            or run_isolated(
                "seamcheck.pipeline:review_and_keep",
                (tuple(paths), settings, with_view, cache),
                progress=progress,
                time_limit_s=time_limit or TIME_LIMIT,
                memory_limit_mb=memory_limit or MEMORY_LIMIT,
                writable=() if cache is None else Folder(cache).prepare(),
            )
        )
    except NotReviewed as reason:
        from seamcheck.document.make import not_reviewed_document

        document = not_reviewed_document([file_facts(path) for path in paths], reason, settings)
        return Review(document, traceback=getattr(reason, "traceback", ""))


def remembered(
    paths: Sequence[Path | Given], settings: Settings, progress: Progress | None, with_view: bool, cache: Folder | Path
) -> dict[str, Any] | None:
    """The document from what an earlier review of the same bytes has measured; None where nothing is kept."""
    from seamcheck.cache.folder import Folder
    from seamcheck.cache.measured import recall

    folder = cache if isinstance(cache, Folder) else Folder(cache)
    measured = recall(folder, [file_facts(path) for path in paths], settings, with_view)
    return None if measured is None else _judged(measured, settings, with_view, progress or (lambda stage: None))


def _look_before(paths: Sequence[Path]) -> None:
    """Say what can be said about the files without starting a child."""
    for path in paths:
        if path.is_dir():
            raise refused("unreadable", "unreadable.folder", file=repr(str(path)))
        if not path.exists():
            raise refused("unreadable", "unreadable.absent", file=repr(str(path)))


def _paths(model: Any) -> list[Path] | None:
    """The files that are meant; None where the model is in memory."""
    if isinstance(model, str | PathLike):
        return [Path(model)]
    if isinstance(model, list | tuple) and model and all(isinstance(part, str | PathLike) for part in model):
        return [Path(part) for part in model]
    return None


def _review_from_memory(
    model: Any, settings: Settings | str | PathLike[str] | None, overrides: dict[str, Any], **run: Any
) -> Review:
    """Review shapes in memory by way of a file that is gone afterwards; no settings file is looked for."""
    from tempfile import TemporaryDirectory

    from seamcheck.kernel.in_memory import write_model

    with TemporaryDirectory(prefix="seamcheck-") as folder:
        file = Path(folder) / IN_MEMORY
        write_model(model, file)
        result = review(file, Settings() if settings is None else settings, cache=False, **run, **overrides)
    nothing = {"file": IN_MEMORY, "sha256": "", "step_schema": "", "length_unit": "mm"}
    result.document["model"] |= {**nothing, "files": [nothing]}
    return result
