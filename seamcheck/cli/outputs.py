"""Files that a review can be written to: one line for each, used by every command that has a review.

To add one, write a function that takes the document and returns text or bytes, and add its line here.
"""

from __future__ import annotations

import importlib
import sys
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click
from msgspec import Struct

from seamcheck.catalogue.voice import LANGUAGES, LENGTHS, Voice, speaking, tr
from seamcheck.cli.ci import shown
from seamcheck.cli.shared import (
    check_can_write,
    check_not_given,
    check_one_stdout,
    make_folder,
    option,
    read_pairs,
    write_file,
)
from seamcheck.errors import SeamcheckError, UsageError

if TYPE_CHECKING:
    from seamcheck.report.fields import Fields

_REPORT = "seamcheck.report"
_SHOW = "Show"
_SECTION = "Write to files ('-' is standard output)"


class Output(Struct, frozen=True):
    """One kind of file.

    Attributes
    ----------
    name : of the option, without dashes
    function : 'module:function', imported only when asked for; takes the document; returns text, bytes, or
        for a folder file name -> bytes
    what : for the help
    needs_view : whether the document must carry section outlines and display meshes
    needs_seam : whether there is nothing to write where the model was not reviewed
    is_folder : whether several files go into a folder
    needs_model : whether the function also takes the paths of the reviewed models, and reads them again
    for_many : whether the function also takes the paths of the reviewed models, to name them, and can hold
        several reviews in one file
    takes_paper : whether the function also takes the paper that it is printed on, and the fields of the report
    speaks : whether it is written in the language and the unit of length that were asked for; what programs read, and
        drawings, stay English and in mm
    """

    name: str
    function: str
    what: str
    needs_view: bool = False
    needs_seam: bool = False
    is_folder: bool = False
    needs_model: bool = False
    for_many: bool = False
    takes_paper: bool = False
    speaks: bool = False


PAPERS = ("A4", "letter")
"""What --paper takes."""

OUTPUTS: tuple[Output, ...] = (
    Output("json", "seamcheck.document.plain:to_json", "the review document, for CI, stores and other reports"),
    Output(
        "html", f"{_REPORT}.html.page:render_html", "a page to read and send",
        needs_view=True, takes_paper=True, speaks=True,
    ),
    Output(
        "pdf", f"{_REPORT}.pdf:render_pdf", "the page as printed; needs a browser on this machine",
        needs_view=True, takes_paper=True, speaks=True,
    ),
    Output("csv", f"{_REPORT}.csv:render_csv", "the table of all stations", needs_seam=True),
    Output(
        "dxf", f"{_REPORT}.dxf:render_dxf", "seam, land and findings as a drawing seen along the beam",
        needs_view=True, needs_seam=True,
    ),
    Output(
        "step", f"{_REPORT}.step:render_step", "the model with mid-line, seam faces and findings for any CAD",
        needs_seam=True, needs_model=True,
    ),
    Output(
        "glb", f"{_REPORT}.glb:render_glb", "model, seam and findings for 3-D viewers",
        needs_view=True, needs_seam=True,
    ),
    Output(
        "pictures", f"{_REPORT}.pictures:render_pictures", "a PNG picture of each finding",
        needs_view=True, needs_seam=True, is_folder=True, speaks=True,
    ),
    Output("sarif", f"{_REPORT}.ci.sarif:render_sarif", "findings as SARIF 2.1.0, for code hosts", for_many=True),
    Output("junit", f"{_REPORT}.ci.junit:render_junit", "rules as test cases in JUnit XML", for_many=True),
    Output(
        "questions", f"{_REPORT}.letter:render_letter", "the questions to moulder, material supplier and customer, "
        "as a letter in Markdown", speaks=True
    ),
    Output(
        "markdown", f"{_REPORT}.ci.markdown:render_markdown", "a summary for the page of a CI job",
        for_many=True, speaks=True,
    ),
)  # fmt: skip


def output_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """One option for each kind of file; '-' is standard output. And the paper."""
    command = voice_options("terminal, --html, --pdf, --pictures, --questions and --markdown")(command)
    command = option(
        "--paper",
        type=click.Choice(PAPERS, case_sensitive=False),
        section=_SECTION,
        help="Paper that --pdf and --html print on. [default: for --pdf the environment variable SEAMCHECK_PAPER, else "
        "A4; for --html what the reader's browser takes]",
    )(command)
    command = option(
        "--field",
        "fields",
        multiple=True,
        metavar="NAME=VALUE",
        section=_SECTION,
        help="A field of --html and --pdf: title, project, customer, part, revision, number, author, company, date "
        "(or date=today), logo=FILE (PNG or SVG). Repeat it for more.",
    )(command)
    for output in reversed(OUTPUTS):
        command = option(
            f"--{output.name}",
            f"output_{output.name.replace('-', '_')}",
            metavar="FOLDER" if output.is_folder else "FILE",
            type=click.Path(path_type=Path, allow_dash=not output.is_folder),
            section=_SECTION,
            help=f"Write {output.what}.",
        )(command)
    return command


class Writers:
    """The files that were asked for.

    ``models`` are the reviewed files: no output may take the place of one.
    """

    def __init__(self, options: Mapping[str, Any], models: Sequence[Path] = ()) -> None:
        self.models, self.paper = tuple(models), options.get("paper")
        self.fields = fields_of(options)
        self.voice = voice_of(options)
        self.wanted = [
            (output, options[key])
            for output in OUTPUTS
            if options.get(key := f"output_{output.name.replace('-', '_')}") is not None
        ]
        check_one_stdout(path for _, path in self.wanted)
        for output, path in self.wanted:
            check_not_given(path, self.models)
            if output.needs_model and not self.models:
                raise UsageError(f"--{output.name} reads the reviewed model again: name it with --model FILE.")
            if output.is_folder:
                make_folder(path)
            elif str(path) != "-":
                check_can_write(path)

    @property
    def needs_view(self) -> bool:
        return any(output.needs_view for output, _ in self.wanted)

    @property
    def takes_stdout(self) -> bool:
        return any(str(path) == "-" for _, path in self.wanted)

    def write(self, document: Mapping[str, Any], debug: bool = False) -> list[str]:
        """Write all of them, also if one fails; returns what to tell, raises what failed at the end."""
        told: list[str] = []
        failed: list[str] = []
        for output, path in self.wanted:
            if output.needs_seam and not document["joints"]:
                with speaking(self.voice):
                    told.append(tr("Not written: {file}, as the model was not reviewed.", file=path))
                continue
            try:
                told += _write(output, path, document, self.models, self.paper, self.fields, self.voice)
            except SeamcheckError as error:
                failed.append(str(error))
            except Exception as error:
                if debug:
                    raise
                failed.append(f"{path} could not be made: {type(error).__name__}: {error}.")
        if failed:
            raise UsageError(" ".join(failed))
        return told


def _write(
    output: Output,
    path: Path,
    document: Mapping[str, Any],
    models: Sequence[Path],
    paper: str | None,
    fields: Fields | None = None,
    voice: Voice | None = None,
) -> list[str]:
    content = make(output, document, models, paper, fields, voice)
    if str(path) == "-":
        sys.stdout.buffer.write(content.encode() if isinstance(content, str) else content)
        sys.stdout.buffer.flush()
        return []
    files = {path / file: data for file, data in content.items()} if output.is_folder else {path: content}
    for file, data in files.items():
        write_file(file, data)
    return [written(file, voice) for file in files]


def written(file: Path, voice: Voice | None = None) -> str:
    """That a file was written, in the language of the report."""
    with speaking(voice or Voice()):
        return tr("Written: {file}", file=file)


def fields_of(options: Mapping[str, Any]) -> Fields | None:
    """The fields of the report that were given; None for none."""
    pairs = read_pairs(tuple(options.get("fields") or ()), "--field", "project='Weather station'")
    answers_file = options.get("answers_file")
    if not pairs and answers_file is None:
        return None
    from seamcheck.report.fields import read_fields
    from seamcheck.settings.answers import read_answers

    return read_fields(pairs, answers=None if answers_file is None else read_answers(answers_file))


def voice_options(what: str) -> Callable[[Callable[..., Any]], Callable[..., Any]]:
    """--language and --length-unit of a command; ``what`` people read of it."""

    def decorated(command: Callable[..., Any]) -> Callable[..., Any]:
        command = option(
            "--length-unit",
            type=click.Choice(LENGTHS),
            default="mm",
            section=_SHOW,
            help=f"Unit of lengths, areas and volumes in what people read: {what}. [default: mm]",
        )(command)
        return language_option(command)

    return decorated


def language_option(command: Callable[..., Any]) -> Callable[..., Any]:
    """--language of a command."""
    return option(
        "--language",
        type=click.Choice(list(LANGUAGES)),
        default="en",
        section=_SHOW,
        help="Language of what people read: en (English) or de (German). Keys, documents and what programs read stay "
        "as they are. [default: en]",
    )(command)


def voice_of(options: Mapping[str, Any]) -> Voice:
    """The language and the unit of length that were asked for."""
    return Voice(options["language"], options["length_unit"])


def make(
    output: Output,
    content: Any,
    models: Sequence[Path],
    paper: str | None = None,
    fields: Fields | None = None,
    voice: Voice | None = None,
) -> Any:
    """The text, bytes or files of one output.

    Parameters
    ----------
    content : review document; for an output ``for_many`` also a list of reviews (report/ci/reviews.py)
    models : the reviewed files
    paper : that the page is printed on; None for the default
    fields : title, project ... of the page
    voice : language and unit of what people read; None for English and mm
    """
    if not output.speaks:
        return _made(output, content, models, paper, fields)
    from seamcheck.report.language import spoken, spoken_reviews, voice_of

    voice = voice or Voice()
    with speaking(voice_of(content, voice) if isinstance(content, Mapping) else voice):
        content = spoken(content) if isinstance(content, Mapping) else spoken_reviews(content)
        return _made(output, content, models, paper, fields)


def _made(output: Output, content: Any, models: Sequence[Path], paper: str | None, fields: Fields | None) -> Any:
    module, _, name = output.function.partition(":")
    function = getattr(importlib.import_module(module), name)
    if output.needs_model:
        return function(content, models)
    if output.for_many and isinstance(content, Mapping):
        return function(content, [shown(model) for model in models])
    if output.takes_paper:
        return function(content, paper=paper, fields=fields)
    return function(content)
