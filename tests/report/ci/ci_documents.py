"""Review documents for the tests of the outputs for CI, one of them with names that try to become mark-up."""

from __future__ import annotations

import copy
from functools import cache

from report.report_documents import HOSTILE, housing, not_reviewed

WILD = (
    'ws-7 | a,b:c %0A "x" <img src=x onerror=alert(1)> `y` ]]> @team #12 [l](javascript:1)'
    "\x07\x1b[31m\n::error::\ud800.step"
)
"""A file name with whatever means something in XML, Markdown, annotations and terminals."""

CHANGED = {"message": WILD, "remedy": f"Do {WILD}", "harm": HOSTILE}


@cache
def _plain() -> dict:
    return housing(step=2.0, view=False)


def plain() -> dict:
    return copy.deepcopy(_plain())


def wild() -> dict:
    """The housing with hostile names wherever a model gives names."""
    document = plain()
    document["model"]["file"] = WILD
    document["model"]["files"] = [{**document["model"]["files"][0], "file": WILD}]
    document["model"]["notes"] = [{"key": "note", "args": {}, "text": WILD}]
    for part in document["model"]["parts"]:
        part["name"] = WILD
    for finding in document["findings"]:
        finding.update(CHANGED)
        if finding["waived"]:
            finding["waived"]["reason"] = WILD
    return document


def refused() -> dict:
    document = not_reviewed()
    document["reason"]["message"] = f"Not read: {WILD}"
    return document


def with_states(document: dict, **states: str) -> dict:
    """The document held against a baseline: finding number -> state, the others new."""
    ids = [finding["id"] for finding in document["findings"]]
    given = {ids[int(key.removeprefix("f"))]: state for key, state in states.items()}
    baseline = {
        "file": "old.json",
        "sha256": "00",
        "states": {name: given.get(name, "new") for name in ids},
        "fixed": ["rib-width-00000000"],
        "dropped": [],
        "warnings": [],
    }
    return {**document, "run": {"baseline": baseline}}
