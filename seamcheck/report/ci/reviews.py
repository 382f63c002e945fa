"""What all outputs for continuous integration ask of a review document."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import PurePath
from typing import Any

from msgspec import Struct, field

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import tr, unit_in_voice
from seamcheck.report.place import coordinate, point

Document = Mapping[str, Any]
Finding = Mapping[str, Any]

BASELINE = "baseline"
"""Key under "run" of what a review is held against: {"file", "sha256", "states": {id: state}, "fixed": [...]}."""

NEW, WORSE, SAME, BETTER = "new", "worse", "same", "better"


class Reviewed(Struct, frozen=True, dict=True):
    """One review document with the paths of its files as they were named.

    Attributes
    ----------
    document : review document
    paths : of the reviewed files, in the order of ``model.files``; fewer or none where they aren't known: then
        the file's name stands for it
    """

    document: Document
    paths: Sequence[PurePath] = field(default=())

    @property
    def files(self) -> list[str]:
        """Paths of the model's files with '/', relative where they were named so."""
        names = [str(entry["file"]) for entry in self.document["model"]["files"]]
        shown = [path.as_posix() for path in self.paths]
        return [shown[k] if k < len(shown) else name for k, name in enumerate(names)] or shown or [""]

    @property
    def title(self) -> str:
        return " + ".join(self.files)

    def parts(self) -> dict[str, Mapping[str, Any]]:
        return {part["id"]: part for part in self.document["model"]["parts"]}

    def file_of(self, part: str) -> str:
        """Path of the file that holds a part."""
        place = self.parts().get(part, {}).get("file", 0)
        return self.files[place] if place < len(self.files) else self.files[0]

    def lines_of(self, finding: Finding) -> list[tuple[str, int, Mapping[str, Any]]]:
        """(path, line, face) of the faces of a finding whose STEP entity is known, the one to look at first."""
        cover_first = finding["rule"].startswith(("cover-", "clamp-", "transmission", "beam-"))
        roles = {part: entry["role"] for part, entry in self.parts().items()}
        known = [face for face in finding["faces"] if face["line"] is not None]
        if cover_first:
            known.sort(key=lambda face: "cover" not in roles.get(face["part"], "").split(" and "))
        return [(self.file_of(face["part"]), int(face["line"]), face) for face in known]

    @property
    def baseline(self) -> Mapping[str, Any] | None:
        found: Mapping[str, Any] | None = (self.document.get("run") or {}).get(BASELINE)
        return found

    def state(self, finding: Finding) -> str | None:
        """'new', 'worse', 'same' or 'better' against the baseline; None without one."""
        return None if self.baseline is None else str(self.baseline["states"].get(finding["id"], NEW))

    def is_known(self, finding: Finding) -> bool:
        """Whether the baseline has the finding already, and it is no worse."""
        return self.state(finding) in (SAME, BETTER)

    def counts(self, finding: Finding) -> bool:
        """Whether it can break a build: must-fix, not waived, not known."""
        return finding["severity"] == "must-fix" and not finding["waived"] and not self.is_known(finding)


def as_reviewed(documents: Document | Sequence[Reviewed], paths: Sequence[PurePath] = ()) -> list[Reviewed]:
    """One document with the paths of its files, or several reviews, as a list of reviews."""
    return [Reviewed(documents, tuple(paths))] if isinstance(documents, Mapping) else list(documents)


def rules_in_force(reviews: Sequence[Reviewed]) -> list[str]:
    """Keys of all rules that any of the reviews judges or could, in the order of their declaration."""
    present = {entry["rule"] for review in reviews for entry in review.document["limits"]}
    present |= {finding["rule"] for review in reviews for finding in review.document["findings"]}
    return [key for key in RULES if key in present] + sorted(present - set(RULES))


def severity_of(document: Document, rule: str) -> str:
    """Severity of a rule under the review's settings; 'off' where it was not judged."""
    return next((str(e["severity"]) for e in document["limits"] if e["rule"] == rule), "off")


def where(finding: Finding) -> str:
    """'(1.00, 2.00, 3.00) mm, c1 from s = 10.0 to 14.0 mm'."""
    if finding["at"] is None:
        return tr("along the seam")
    place = f"{point(finding['at'])} {unit_in_voice('mm')}"
    if finding["contour"] is None or finding["from_s"] is None:
        return place
    told = {"low": coordinate(finding["from_s"], 1), "high": shown(finding["to_s"], "mm", 1)}
    return tr("{place}, {path} from s = {low} to {high}", place=place, path=finding["contour"], **told)


def known_words(review: Reviewed, finding: Finding) -> str:
    """What the baseline says about a finding: 'known', 'known, better than it was', 'worse than it was'; '' without."""
    return {
        None: "",
        NEW: tr("new"),
        WORSE: tr("worse than in the baseline"),
        SAME: tr("known from the baseline"),
        BETTER: tr("known from the baseline, better now"),
    }[review.state(finding)]


def verdict_words(review: Reviewed) -> str:
    """The verdict in one sentence, with what the baseline changes about it."""
    from seamcheck.report.text import headline

    said = headline(review.document)
    if review.baseline is None or review.document["verdict"] == "not-reviewed":
        return said
    live = [f for f in review.document["findings"] if not f["waived"]]
    counting = sum(review.counts(f) for f in live)
    known = sum(review.is_known(f) for f in live)
    counts = {"counting": counting, "known": known, "fixed": len(review.baseline["fixed"])}
    one = tr("Against the baseline: 1 must-fix is new or worse, {known} known, {fixed} fixed.", **counts)
    many = tr("Against the baseline: {counting} must-fix are new or worse, {known} known, {fixed} fixed.", **counts)
    return f"{said} {one if counting == 1 else many}"


def caution() -> str:
    """The caution that every output for CI carries."""
    return tr(SHORT_CAUTION)
