"""Annotations: one line for each finding, as compilers write them or as workflow commands of hosts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import PurePath

from seamcheck.report.ci.escape import command_data, command_property, one_line
from seamcheck.report.ci.reviews import (
    Document,
    Finding,
    Reviewed,
    as_reviewed,
    caution,
    known_words,
    verdict_words,
    where,
)
from seamcheck.report.loosened import loosened

STYLES = ("plain", "workflow")

_PLAIN = {"must-fix": "error", "attention": "warning", "note": "note"}
_WORKFLOW = {"must-fix": "error", "attention": "warning", "note": "notice"}


def render_plain(documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> str:
    """'FILE:LINE: error: message [rule]', one line for each finding that is not waived.

    Where no line of the file is known, only the file is named. Known findings of a baseline are notes.
    """
    return "".join(f"{line}\n" for line in _plain(as_reviewed(documents, paths)))


def render_workflow(documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> str:
    """'::error file=...,line=...,title=...::message', one line for each finding that is not waived."""
    return "".join(f"{line}\n" for line in _workflow(as_reviewed(documents, paths)))


def render(style: str, documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> str:
    """One of STYLES."""
    return {"plain": render_plain, "workflow": render_workflow}[style](documents, paths)


def _plain(reviews: Sequence[Reviewed]) -> Iterator[str]:
    for review in reviews:
        if milder := loosened(review.document):
            yield f"{_name(review.files[0])}: note: {one_line(milder)}"
        if review.document["verdict"] == "not-reviewed":
            yield f"{_name(review.files[0])}: error: {one_line(verdict_words(review))} [not-reviewed]"
        for finding in _told(review):
            path, line = _place(review, finding)
            spot = _name(path) if line is None else f"{_name(path)}:{line}"
            yield f"{spot}: {_PLAIN[_weight(review, finding)]}: {_message(review, finding)} [{finding['rule']}]"
    if reviews:
        yield f"seamcheck: note: {caution()}"


def _workflow(reviews: Sequence[Reviewed]) -> Iterator[str]:
    for review in reviews:
        if milder := loosened(review.document):
            yield _command("notice", review.files[0], None, "seamcheck settings", milder)
        if review.document["verdict"] == "not-reviewed":
            yield _command("error", review.files[0], None, "not reviewed", verdict_words(review))
        for finding in _told(review):
            path, line = _place(review, finding)
            kind = _WORKFLOW[_weight(review, finding)]
            yield _command(kind, path, line, f"seamcheck {finding['rule']}", _message(review, finding))
    if reviews:
        yield f"::notice title=seamcheck::{command_data(caution())}"


def _command(kind: str, path: str, line: int | None, title: str, message: str) -> str:
    properties = {"file": path, "line": line, "title": title}
    said = ",".join(f"{k}={command_property(one_line(str(v)))}" for k, v in properties.items() if v is not None)
    return f"::{kind} {said}::{command_data(one_line(message))}"


def _told(review: Reviewed) -> list[Finding]:
    return [finding for finding in review.document["findings"] if not finding["waived"]]


def _weight(review: Reviewed, finding: Finding) -> str:
    return "note" if review.is_known(finding) else str(finding["severity"])


def _place(review: Reviewed, finding: Finding) -> tuple[str, int | None]:
    known = review.lines_of(finding)
    return (known[0][0], known[0][1]) if known else (review.files[0], None)


def _message(review: Reviewed, finding: Finding) -> str:
    known = known_words(review, finding)
    told = f"{finding['message']} At {where(finding)}. {finding['remedy']}"
    return one_line(f"{told} ({known}; id {finding['id']})" if known else f"{told} (id {finding['id']})")


def _name(path: str) -> str:
    """A path at the start of a line: on one line, and no command of a host."""
    name = one_line(path)
    return f"./{name}" if name.startswith((":", "#", "[")) else name
