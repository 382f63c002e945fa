"""A review as the content of a file, for the outputs that need no more than the document itself."""

from __future__ import annotations

from seamcheck.report.review import Review


def as_json(review: Review) -> str:
    """The review document as JSON text."""
    return review.to_json()
