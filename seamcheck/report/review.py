"""The Review: the review document with names for what people ask of it."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import TYPE_CHECKING, Any, Self

from msgspec import Struct

if TYPE_CHECKING:
    import numpy as np
    import pandas

    from seamcheck.document.records import Document
    from seamcheck.judge.findings import Finding

EXIT_CODES = {"pass": 0, "attention": 0, "fail": 1, "not-reviewed": 2}


class ContourReview(Struct, frozen=True, eq=False):
    """One path of a seam as measured.

    Attributes
    ----------
    joint, id : ids in the document
    closed : whether the path returns to its start
    length : mm
    s : (n,) mm; points : (n, 3) mm; u : (n, 3) unit vectors, outward
    columns : key of a quantity -> (n,) float, NaN where not measured
    unmeasured : runs without a value: {"column", "from_s", "to_s", "why"}
    """

    joint: str
    id: str
    closed: bool
    length: float
    s: np.ndarray
    points: np.ndarray
    u: np.ndarray
    columns: Mapping[str, np.ndarray]
    unmeasured: tuple[Mapping[str, Any], ...]

    @classmethod
    def of(cls, joint: str, contour: Mapping[str, Any]) -> Self:
        """The path of a joint as a document holds it."""
        import numpy as np

        from seamcheck.report.facts import column_of, points_of

        stations = contour["stations"]
        return cls(
            joint=joint, id=contour["id"], closed=bool(contour["closed"]), length=float(contour["length_mm"]),
            s=np.array(stations["s"], dtype=float), points=points_of(contour),
            u=np.array(stations["u"], dtype=float).reshape(-1, 3),
            columns={key: column_of(contour, key) for key in stations if key not in ("s", "x", "y", "z", "u")},
            unmeasured=tuple(contour["unmeasured"]),
        )  # fmt: skip

    def __getitem__(self, quantity: str) -> np.ndarray:
        """The column of a quantity, (n,) float, NaN where not measured."""
        return self.columns[quantity]


class Review:
    """One review of one model.

    Everything comes from ``document``, a dict of plain values that holds the schema shipped with the package.
    ``traceback`` is text for those who look for a fault in seamcheck; it is no part of the document.
    """

    def __init__(self, document: Mapping[str, Any], traceback: str = "") -> None:
        """Take a document as it was made here; ``from_document`` and ``from_json`` check one from elsewhere."""
        self.document = dict(document)
        self.traceback = traceback

    @classmethod
    def from_document(cls, document: Mapping[str, Any], name: str = "This document") -> Review:
        """A review from a document as plain values; UsageError with the place in it where it is not whole and sound."""
        from seamcheck.document.read import check_document

        return cls(check_document(document, name))

    @classmethod
    def from_json(cls, text: str | bytes, name: str = "This text") -> Review:
        """A review from the text that ``to_json`` gave; UsageError with the place in it where it is something else."""
        from seamcheck.document.read import read_text

        return cls(read_text(text, name))

    @cached_property
    def records(self) -> Document:
        """The whole document as typed records."""
        import msgspec

        from seamcheck.document.records import Document

        return msgspec.convert(self.document, Document)

    def to_json(self) -> str:
        """The document as JSON text, the same bytes for the same review."""
        from seamcheck.document.plain import to_json

        return to_json(self.document)

    @property
    def verdict(self) -> str:
        """'pass', 'attention', 'fail' or 'not-reviewed'."""
        return str(self.document["verdict"])

    @property
    def exit_code(self) -> int:
        """0 within limits, 1 a limit is broken, 2 not reviewed."""
        return EXIT_CODES[self.verdict]

    @property
    def reason(self) -> Mapping[str, str] | None:
        """{"code", "message"} where the model was not reviewed."""
        reason: Mapping[str, str] | None = self.document["reason"]
        return reason

    @cached_property
    def findings(self) -> tuple[Finding, ...]:
        """All findings, waived ones as well."""
        import msgspec

        from seamcheck.judge.findings import Finding

        return tuple(msgspec.convert(self.document["findings"], list[Finding]))

    @cached_property
    def contours(self) -> tuple[ContourReview, ...]:
        """All paths of all joints, with numpy arrays."""
        return tuple(
            ContourReview.of(joint["id"], contour) for joint in self.document["joints"] for contour in joint["contours"]
        )

    @property
    def length(self) -> float:
        """Length of all seams together, mm."""
        return float(sum(joint["length_mm"] or 0.0 for joint in self.document["joints"]))

    def stations(self) -> pandas.DataFrame:
        """All stations as a data frame (needs pandas): joint, path, station, s, x, y, z, quantities."""
        from seamcheck.report.notebook import stations_frame

        return stations_frame(self.document)

    def _repr_html_(self) -> str:
        """What a notebook shows."""
        from seamcheck.report.notebook import render_fragment

        return render_fragment(self.document)

    def __repr__(self) -> str:
        name = self.document["model"]["file"]
        count = len(self.document["findings"])
        return f"<Review of {name!r}: {self.verdict}, {count} finding{'' if count == 1 else 's'}>"
