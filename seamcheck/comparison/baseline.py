"""Hold a review against an earlier one: which findings are new, which are known."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.errors import UsageError
from seamcheck.report.ci.reviews import BASELINE, Reviewed, known_words

Document = Mapping[str, Any]


def with_baseline(document: Document, baseline: Document, name: str) -> dict[str, Any]:
    """The review document with what the baseline says about its findings, under "run".

    Parameters
    ----------
    document : the review
    baseline : an earlier review of the model
    name : how to call the baseline, such as its file's name

    Raises
    ------
    UsageError : a baseline of a model that was not reviewed: it would make everything new
    """
    # not before there is a baseline: these load scipy, and every review asks for its exit code here
    from seamcheck.comparison.background import limit_differences, setting_differences, warnings
    from seamcheck.comparison.document import compare_documents

    if baseline["verdict"] == "not-reviewed":
        raise UsageError(
            f"{name} can't be a baseline: its model was not reviewed ({baseline['reason']['message']}) Review it anew."
        )
    states: dict[str, str] = {}
    fixed: list[str] = []
    dropped: list[str] = []
    if document["verdict"] != "not-reviewed":
        found = compare_documents(baseline, document)["findings"]
        states = {entry["new"]["id"]: "new" for entry in found["new"]}
        states |= {entry["new"]["id"]: entry["state"] for entry in found["remaining"]}
        fixed = [entry["old"]["id"] for entry in found["fixed"]]
        dropped = [entry["old"]["id"] for entry in found["dropped"]]
    limits, settings = limit_differences(baseline, document), setting_differences(baseline, document)
    said = {
        "file": name,
        "sha256": baseline["model"]["sha256"],
        "states": {f["id"]: states[f["id"]] for f in document["findings"]},
        "fixed": fixed,
        "dropped": dropped,
        "warnings": warnings(baseline, document, limits, settings),
    }
    return {**document, "run": {**(document.get("run") or {}), BASELINE: said}}


def exit_code(document: Document, strict: bool = False) -> int:
    """0 within limits or all known, 1 a must-fix finding is new or worse than in the baseline, 2 not reviewed.

    Without a baseline every finding counts; ``strict`` counts attention as well.
    """
    if document["verdict"] == "not-reviewed":
        return 2
    review = Reviewed(document)
    severities = ("must-fix", "attention") if strict else ("must-fix",)
    live = [f for f in document["findings"] if not f["waived"] and f["severity"] in severities]
    return 1 if any(not review.is_known(f) for f in live) else 0


def baseline_lines(document: Document) -> Iterator[str]:
    """What the baseline says, as lines for a terminal."""
    review = Reviewed(document)
    if review.baseline is None:
        return
    live = [f for f in document["findings"] if not f["waived"]]
    new = sum(not review.is_known(f) for f in live)
    known, gone = len(live) - new, review.baseline["fixed"]
    yield f"Against the baseline {review.baseline['file']}: {new} new or worse, {known} known, {len(gone)} fixed"
    for warning in review.baseline["warnings"]:
        yield f"  Note: {warning}"
    for finding in live:
        yield f"  {finding['severity']} {finding['id']}: {known_words(review, finding)}"
    for name in gone:
        yield f"  fixed: {name}"
    for name in review.baseline["dropped"]:
        yield f"  no longer reported, for a reason outside the model: {name}"
