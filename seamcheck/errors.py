"""All errors of seamcheck: one root, each picklable, each saying what was found and what to do."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any


class SeamcheckError(Exception):
    """Root of all errors that seamcheck raises on purpose."""


class NotReviewed(SeamcheckError):
    """The model could not be reviewed; becomes the verdict ``not-reviewed`` of the document.

    Attributes
    ----------
    code : str
        One of the reason codes of the review document (``REASONS``).
    message : str
        What was found and what to do, in one or two sentences.
        The catalogue's sentences (``catalogue.say.refused``) know their key and numbers.
    readings : tuple
        The best readings of the model, as plain values of a ``ReadingRecord`` of the document; () without any.
    """

    def __init__(self, code: str, message: str, readings: tuple[Mapping[str, Any], ...] = ()) -> None:
        super().__init__(code, message, readings)  # the same arguments: it survives pickling
        if code not in REASONS:
            raise ValueError(f"unknown reason code {code!r}")
        self.code, self.message, self.readings = code, message, readings

    def __str__(self) -> str:
        return self.message


class UsageError(SeamcheckError):
    """Wrong use: an option, a settings file or an argument that can't be taken."""


class MissingLibrary(SeamcheckError):
    """An output needs a library that is not installed."""

    def __init__(self, what: str, extra: str) -> None:
        super().__init__(what, extra)
        self.what, self.extra = what, extra

    def __str__(self) -> str:
        return f"{self.what} needs a library that is not installed: install weld-seamcheck with [{self.extra}]."


REASONS: dict[str, str] = {
    "unreadable": "The file can't be opened or read to its end.",
    "not-step": "The file is not an ISO 10303-21 (STEP) file.",
    "empty": "The file holds no geometry.",
    "no-solid": "The file holds geometry but no solid body.",
    "single-part": "The file holds one part; a seam needs a cover and a base.",
    "no-contact": "No two parts come close enough to be welded.",
    "no-seam": "Parts touch, but nothing between them has the shape of a weld seam.",
    "ambiguous": "Two readings of the model are about equally good.",
    "scale-suspect": "The size of the parts suggests that the length unit is declared wrongly.",
    "unsupported": "The model holds something that seamcheck understands but can't review.",
    "not-started": "The machine could not start the review; nothing is known of the model.",
    "timeout": "The time limit was reached.",
    "crashed": "The CAD kernel crashed on this file.",
    "out-of-memory": "The memory limit was reached.",
}
