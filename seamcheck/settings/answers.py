"""Answers of people to a review: what they decided about its findings, and answers to its questions.

The review page writes such a file; a review reads it only where somebody names it, never because it lies beside
a model.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from pathlib import Path
from typing import Annotated, Any, Literal

import msgspec
from msgspec import Meta

from seamcheck.errors import UsageError
from seamcheck.settings.guard import bytes_of
from seamcheck.settings.reading import text
from seamcheck.settings.waivers import Waiver

KIND, VERSION = "seamcheck-answers", 1
LARGEST = 2_000_000
"""Bytes of a file."""

Short = Annotated[str, Meta(max_length=500)]
Number = Annotated[float, Meta(ge=-1e7, le=1e7)]


class Place(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """Where a decision counts: a stretch of a path, a whole path, or a point with a radius; lengths in mm."""

    joint: Short = ""
    contour: Short = ""
    from_s: Number | None = None
    to_s: Number | None = None
    at: tuple[Number, Number, Number] | None = None
    radius: Number = 2.0


class Decision(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """What was decided about one finding. ``accept`` needs a reason, a name and a day; it counts as a waiver."""

    id: Short
    rule: Short
    place: Place
    decision: Literal["accept", "change", "question", ""] = ""
    text: Short = ""
    by: Short = ""
    date: Short = ""


class Answer(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """The answer to one question, by its key in the document."""

    key: Short
    answer: Short = ""
    by: Short = ""
    date: Short = ""


class Approval(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """One block of the sign-off."""

    role: Short
    name: Short = ""
    date: Short = ""
    decision: Short = ""


class Answers(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """The file."""

    document: Literal["seamcheck-answers"]
    schema_version: Literal[1]
    model: dict[Short, Short] = {}
    findings: list[Decision] = []
    questions: list[Answer] = []
    approval: list[Approval] = []

    def waivers(self, origin: str) -> tuple[Waiver, ...]:
        """What the accepted findings waive; ``origin`` names the file."""
        return tuple(_waiver(d, origin) for d in self.findings if d.decision == "accept")

    def answered(self) -> dict[str, Answer]:
        """The questions that have an answer, by key."""
        return {a.key: a for a in self.questions if a.answer.strip()}


def read_answers(path: Path) -> Answers:
    """The answers of a file; UsageError with one sentence where it holds anything else."""
    try:
        answers = msgspec.json.decode(bytes_of(path, "the file of answers", LARGEST), type=Answers)
    except (msgspec.DecodeError, UnicodeDecodeError) as why:
        raise UsageError(f"{path} is not a file of answers to a seam review: {why}.") from None
    for decision in answers.findings:
        if decision.decision == "accept":
            _check(decision, path)
    return answers


def _check(decision: Decision, path: Path) -> None:
    missing = [name for name, value in (("reason", decision.text), ("name", decision.by)) if not value.strip()]
    if missing:
        raise UsageError(f"{path} accepts {decision.id} without a {missing[0]}; that does not count.")
    try:
        date.fromisoformat(decision.date)
    except ValueError:
        raise UsageError(
            f"{path} accepts {decision.id} on {decision.date!r}; a day is written like 2027-06-30."
        ) from None
    if not decision.place.contour and decision.place.at is None:
        raise UsageError(f"{path} accepts {decision.id} without a place; change the limit or its severity instead.")


def _waiver(decision: Decision, origin: str) -> Waiver:
    place = decision.place
    reason = text("text", f"{decision.text.strip()} ({decision.by.strip()}, {decision.date})")
    return Waiver(
        decision.rule, reason, at=place.at, radius=place.radius, contour="" if place.at else place.contour,
        from_s=place.from_s, to_s=place.to_s, joint=place.joint, origin=f"{origin}, {decision.id}",
    )  # fmt: skip


def with_answers(document: Mapping[str, Any], answers: Answers) -> dict[str, Any]:
    """The document with answered questions told as answered, so that they leave the list of questions."""
    known = answers.answered()
    told = []
    for item in document["not_checked"]:
        answer = known.get(item["key"])
        if answer is not None:
            by = ", ".join(part for part in (answer.by.strip(), answer.date) if part)
            said = text("answer", f"Answered{f' by {by}' if by else ''}: {item['text']} {answer.answer.strip()}")
            item = {"key": f"{item['key']}.answered", "args": {}, "text": said}
        told.append(item)
    return {**document, "not_checked": told}
