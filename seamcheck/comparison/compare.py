"""``seamcheck.compare``: two revisions, as models or review documents."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

from seamcheck.errors import UsageError

if TYPE_CHECKING:
    from seamcheck.comparison.overlay import Overlay
    from seamcheck.pipeline import Progress
    from seamcheck.settings.settings import Settings

EXIT_CODES = {"not-worse": 0, "worse": 1, "not-compared": 2}


class Comparison:
    """One comparison of two reviews.

    Everything comes from ``document``, a dict of plain values that holds the schema shipped with the package.
    """

    def __init__(self, document: Mapping[str, Any], overlays: Sequence[Overlay] = ()) -> None:
        if not isinstance(document, Mapping) or document.get("document") != "seamcheck-comparison":
            raise UsageError('This is not a comparison document: it lacks "document": "seamcheck-comparison".')
        self.document = dict(document)
        self.overlays = tuple(overlays)
        """Both sections at the same places, where the reviews carry outlines; pages draw them."""

    @property
    def outcome(self) -> str:
        """'not-worse', 'worse' (a must-fix finding is new or worse) or 'not-compared'."""
        return str(self.document["outcome"])

    @property
    def exit_code(self) -> int:
        """0 nothing worse, 1 a must-fix finding is new or worse, 2 not compared."""
        return EXIT_CODES[self.outcome]

    @property
    def new(self) -> list[Mapping[str, Any]]:
        """Findings that the old review did not have: {"new", "how", "before"}."""
        return list(self.document["findings"]["new"])

    @property
    def remaining(self) -> list[Mapping[str, Any]]:
        """Findings of both: {"old", "new", "state": 'worse', 'same' or 'better', "margin_by", "length_by_mm", ...}."""
        return list(self.document["findings"]["remaining"])

    @property
    def fixed(self) -> list[Mapping[str, Any]]:
        """Findings that the model no longer has: {"old", "how", "now"}."""
        return list(self.document["findings"]["fixed"])

    @property
    def dropped(self) -> list[Mapping[str, Any]]:
        """Findings no longer reported for a reason that lies outside the model: {"old", "how", "now"}."""
        return list(self.document["findings"]["dropped"])

    def to_json(self) -> str:
        """The document as JSON text, the same bytes for the same reviews."""
        from seamcheck.document.plain import to_json

        return to_json(self.document)

    def __repr__(self) -> str:
        names = (self.document[side]["file"] for side in ("old", "new"))
        return f"<Comparison of {' and '.join(map(repr, names))}: {self.outcome}>"


def compare(
    old: Any,
    new: Any,
    settings: Settings | str | PathLike[str] | None = None,
    *,
    progress: Progress | None = None,
    time_limit: float | None = None,
    memory_limit: float | None = None,
    with_view: bool = False,
    **overrides: Any,
) -> Comparison:
    """Compare two revisions of a model.

    Parameters
    ----------
    old, new : each a STEP file, a list of files that share a frame, a file with a review document, a Review, or a
        review document
    settings : for what is reviewed here; None for the nearest ``seamcheck.toml`` beside or above the new model
        (the old one where only that is reviewed), so that both models are reviewed alike
    progress, time_limit, memory_limit, overrides : as for ``seamcheck.review``
    with_view : whether what is reviewed here carries section outlines, for the sections of a page

    Raises
    ------
    UsageError : a file that is neither, or a settings file or an override that can't be taken
    """
    from seamcheck.comparison.document import compare_documents
    from seamcheck.comparison.overlay import overlays
    from seamcheck.pipeline import review, settings_for
    from seamcheck.settings.settings import Settings

    sides = [_as_document(side) for side in (old, new)]
    if any(document is None for document in sides):
        if not isinstance(settings, Settings):
            first = new if sides[1] is None else old
            paths = [Path(p) for p in (first if isinstance(first, list | tuple) else [first])]
            settings = settings_for(paths, None if settings is None else Path(settings))
        limits = overrides.pop("limits", {})
        settings = settings.changed({**overrides, **limits})
    before, after = (
        document
        if document is not None
        else review(
            side, settings, progress=progress, time_limit=time_limit, memory_limit=memory_limit, with_view=with_view
        ).document
        for side, document in zip((old, new), sides, strict=True)
    )
    document = compare_documents(before, after)
    return Comparison(document, overlays(before, after) if document["joints"] else ())


def _as_document(side: Any) -> Mapping[str, Any] | None:
    """The review document that is meant; None where a model must be reviewed first."""
    from seamcheck.document.read import check_document
    from seamcheck.report.review import Review

    if isinstance(side, Review):
        return side.document
    if isinstance(side, Mapping):
        return check_document(side, "A document to be compared")
    if isinstance(side, str | PathLike):
        return read_if_document(Path(side))
    if isinstance(side, list | tuple) and side and all(isinstance(part, str | PathLike) for part in side):
        return None
    raise UsageError(f"A model, a review document or a Review is compared; got {type(side).__name__}.")


def read_if_document(path: Path) -> Mapping[str, Any] | None:
    """The review document in a file; None where the file is no JSON, so that it is taken for a model."""
    from seamcheck.document.read import read_file

    try:
        if not path.is_file():
            return None
        with open(path, "rb") as file:
            if file.read(64).lstrip(b"\xef\xbb\xbf \t\r\n")[:1] != b"{":
                return None
        return read_file(path)
    except OSError:
        return None  # the review says what is wrong with it
