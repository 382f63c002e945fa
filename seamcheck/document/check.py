"""Whether a document that came from elsewhere holds the schema."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from seamcheck.document.make import schema
from seamcheck.errors import UsageError
from seamcheck.judge.findings import NOT_REVIEWED


def check_document(document: Mapping[str, Any], name: str) -> None:
    """Raise UsageError with the first place where a review document breaks the schema.

    Parameters
    ----------
    document : as read from JSON
    name : how to call it in the sentence
    """
    from jsonschema import Draft202012Validator
    from jsonschema.exceptions import best_match

    error = best_match(Draft202012Validator(schema()).iter_errors(document))
    if error is not None:
        place = "/".join(str(step) for step in error.absolute_path) or "its top level"
        message = error.message if len(error.message) <= 200 else error.message[:200] + " ..."
        raise UsageError(f"{name} does not hold the schema of review documents, at {place}: {message}.")
    if document["verdict"] != NOT_REVIEWED and not any(
        contour["stations"]["s"] for joint in document["joints"] for contour in joint["contours"]
    ):
        raise UsageError(
            f"{name} gives the verdict {document['verdict']!r}, at joints, without a station of any seam. Review the "
            "model again."
        )
