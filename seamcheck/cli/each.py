"""``seamcheck review --each``: every model on its own, one after the other."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

import click

from seamcheck.cli import ci
from seamcheck.cli.changed import changed_since, models_below
from seamcheck.cli.outputs import OUTPUTS, Output, fields_of, make, voice_of
from seamcheck.cli.shared import check_can_write, check_one_stdout, make_folder, show, tell, write_file
from seamcheck.errors import SeamcheckError, UsageError


def review_each(
    places: Sequence[Path],
    review_one: Callable[[Path, bool], Any],
    options: Mapping[str, Any],
    settings_file: Path | None,
    quiet: bool,
    strict: bool,
) -> int:
    """Review every model, or every one that changed, and write what was asked for; returns the exit code.

    Parameters
    ----------
    places : files and folders
    review_one : takes a file and whether pictures are wanted, returns a Review
    options : of the command
    settings_file : as given, None where each model's own counts
    quiet, strict : as for one model
    """
    from seamcheck.comparison.baseline import exit_code
    from seamcheck.report.ci.escape import one_line

    together, apart = _outputs(options)
    if options["baseline"] is not None and not options["baseline"].is_dir():
        raise UsageError(
            f"With --each, --baseline names a folder of review documents (--json); {options['baseline']} is none."
        )
    models = _models(places, options, settings_file, quiet)
    says_nothing = any(str(path) == "-" for path in together.values())
    reviews, codes, failed = [], [], []
    accepted = set(options["accept"])
    for model in models:
        result = review_one(model, any(output.needs_view for output in apart))
        try:
            result = ci.held_against(result, _baseline_of(model, options["baseline"]))
        except SeamcheckError as why:  # one baseline that can't be used: the other models are looked at all the same
            failed.append(str(why))
        reviews.append(ci.reviewed(result, [model]))
        code = exit_code(result.document, strict)
        reason = (result.document["reason"] or {}).get("code")
        codes.append(0 if code == 2 and ("any" in accepted or reason in accepted) else code)
        if not says_nothing:
            show(_line(model, result.document))
            if not quiet:
                _tell(result.document)
        for output, folder in apart.items():
            try:
                _write(output, folder, model, result.document, options)
            except SeamcheckError as error:
                failed.append(str(error))
    for output, path in together.items():
        content = make(output, reviews, (), voice=voice_of(options))
        if str(path) == "-":
            click.echo(content, nl=False)
        else:
            write_file(path, content)
    ci.annotate(options["annotations"], reviews, err=says_nothing)
    for sentence in failed:
        click.echo(f"seamcheck: {one_line(sentence)}", err=True)
    if failed and 1 not in codes:
        return 2
    return max(codes, default=0)


def _outputs(options: Mapping[str, Any]) -> tuple[dict[Output, Path], dict[Output, Path]]:
    """Outputs that hold all models, and outputs of which each model gets its own, with file or folder."""
    together: dict[Output, Path] = {}
    apart: dict[Output, Path] = {}
    for output in OUTPUTS:
        path = options.get(f"output_{output.name.replace('-', '_')}")
        if path is None:
            continue
        if output.for_many:
            together[output] = path
            if str(path) != "-":
                check_can_write(path)
        elif str(path) == "-":
            raise click.UsageError(f"--{output.name} - can't hold several models; name a folder.")
        else:
            make_folder(path)
            apart[output] = path
    check_one_stdout(together.values())
    return together, apart


def _models(places: Sequence[Path], options: Mapping[str, Any], settings_file: Path | None, quiet: bool) -> list[Path]:
    models, revision = models_below(places), options["changed_since"]
    if not models:
        raise UsageError(f"There is no STEP file below {', '.join(map(str, places))}.")
    if revision is None:
        return models
    pairs = [text.partition("=") for text in options["tolerances"]]
    given = [Path(value.strip()) for key, _, value in pairs if key.strip() == "file"]
    given += [] if options["answers_file"] is None else [options["answers_file"]]
    changed = changed_since(models, revision, given, lambda sentence: tell(sentence, err=True), settings=settings_file)
    if not quiet:
        tell(f"Changed since {revision}: {len(changed)} of {len(models)} models.", err=True)
    return changed


def place_in(folder: Path, model: Path, ending: str) -> Path:
    """Where the file of a model lies in a folder of outputs: the model's own path below it, never outside of it."""
    steps = [step for step in ci.shown(model).parts if step not in (model.anchor, "/", "\\", ".")]
    return folder.joinpath(*("_up" if step == ".." else step for step in steps)).with_name(f"{model.name}{ending}")


def _baseline_of(model: Path, baseline: Path | None) -> Path | None:
    """The model's document in the folder of baselines; None, told, where it has none yet: all is new then."""
    if baseline is None:
        return None
    found = place_in(baseline, model, ".json")
    if found.exists():
        from seamcheck.document.read import read_file

        if read_file(found)["verdict"] != "not-reviewed":
            return found
        tell(f"{ci.shown(model)} was not reviewed for the baseline: all its findings are new.", err=True)
        return None
    tell(f"No baseline for {ci.shown(model)}: all its findings are new.", err=True)
    return None


def _write(output: Output, folder: Path, model: Path, document: Mapping[str, Any], options: Mapping[str, Any]) -> None:
    if output.needs_seam and not document["joints"]:
        return
    content = make(output, document, [model], options["paper"], fields_of(options), voice_of(options))
    if output.is_folder:
        target = place_in(folder, model, "")
        make_folder(target)
        _check_within(folder, target)
        for name, data in content.items():
            write_file(target / name, data)
        return
    target = place_in(folder, model, f".{output.name}")
    make_folder(target.parent)
    _check_within(folder, target.parent)
    write_file(target, content)


def _check_within(folder: Path, place: Path) -> None:
    """UsageError where a link leads out of the folder of outputs: what is written must stay below it."""
    if not place.resolve().is_relative_to(folder.resolve()):
        raise UsageError(f"{place} leads out of {folder} by a link; nothing is written there.")


def _line(model: Path, document: Mapping[str, Any]) -> Iterator[Any]:
    """The verdict with the model's path: names alone may be alike in several folders."""
    from seamcheck.report.ci.escape import one_line
    from seamcheck.report.terminal import line
    from seamcheck.report.text import VERDICTS, headline

    yield line(VERDICTS[document["verdict"]], f"  {one_line(str(ci.shown(model)))}  {one_line(headline(document))}")


def _tell(document: Mapping[str, Any]) -> None:
    """The findings that count, a line each."""
    from seamcheck.report.ci.escape import one_line
    from seamcheck.report.ci.reviews import Reviewed, known_words, where

    review = Reviewed(document)
    for finding in document["findings"]:
        if finding["waived"] or finding["severity"] == "note":
            continue
        known = known_words(review, finding)
        said = f"  {finding['severity']} {finding['rule']}: {finding['message']} At {where(finding)}"
        click.echo(one_line(said + (f" ({known})" if known else "")).rstrip())
