"""The result of a scan in numbers, and the exit code that follows."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec import Struct

from seamcheck.errors import REASONS, UsageError
from seamcheck.scanning.answers import NO_SEAM
from seamcheck.scanning.found import SKIPPED

if TYPE_CHECKING:
    from seamcheck.scanning.store import Store

ANY = "any"
"""Stands for every reason."""


class ScanResult(Struct, frozen=True):
    """Numbers of one scan.

    Attributes
    ----------
    out : its folder
    models : rows, whatever became of them
    reviewed : reviews done by this scan; all others were in the store
    verdicts : verdict -> models; 'not-reviewed' holds skipped ones, too
    reasons : code -> models, for those not reviewed
    rules : rule -> models with an unwaived must-fix finding of it
    ignored_settings : settings files in scanned folders, which are never used
    other_files : ending -> files that no pattern names
    settings_file : the one that was used
    """

    out: Path
    models: int
    reviewed: int
    verdicts: Counter[str]
    reasons: Counter[str]
    rules: Counter[str]
    ignored_settings: tuple[str, ...]
    other_files: Counter[str]
    settings_file: Path | None

    @classmethod
    def of(cls, store: Store, out: Path, reviewed: int, settings_file: Path | None) -> ScanResult:
        verdicts = Counter(store.verdicts())
        return cls(
            out=out,
            models=sum(verdicts.values()),
            reviewed=reviewed,
            verdicts=verdicts,
            reasons=_counted(
                store, "SELECT reason_code, count(*) FROM results WHERE verdict = 'not-reviewed' GROUP BY reason_code"
            ),
            rules=_counted(
                store,
                "SELECT rule, sum(models) FROM "
                "(SELECT DISTINCT review, rule FROM findings WHERE severity = 'must-fix' AND NOT waived) JOIN "
                "(SELECT review, count(*) AS models FROM models WHERE review IS NOT NULL GROUP BY review) "
                "USING (review) GROUP BY rule",
            ),
            ignored_settings=tuple(
                f"{row[0]}/{row[1]}" for row in store.rows("SELECT folder, path FROM ignored_settings ORDER BY 1, 2")
            ),
            other_files=_counted(store, "SELECT ending, files FROM other_files"),
            settings_file=settings_file,
        )

    def exit_code(self, strict: bool = False, accept: Iterable[str] = ()) -> int:
        """1 where a must-fix limit is broken (strict: also where something asks for attention); 2 where nothing
        was reviewed, or something was not for a reason that isn't accepted; else 0. That a table of joints says that
        there is no seam is accepted."""
        accepted = set(accept)
        if self.verdicts["fail"] or (strict and self.verdicts["attention"]):
            return 1
        if self.verdicts["not-reviewed"] + self.verdicts["waiting"] == self.models or self.verdicts["waiting"]:
            return 2
        refused = set() if ANY in accepted else set(self.reasons) - accepted - {NO_SEAM}
        return 2 if refused else 0


def known_reasons(codes: Iterable[str]) -> tuple[str, ...]:
    """The codes themselves; UsageError for one that does not exist."""
    valid = (*REASONS, *(code for code in SKIPPED if code not in REASONS), ANY)
    for code in codes:
        if code not in valid:
            from seamcheck.settings.reading import unknown

            raise UsageError(unknown(code, valid, "reason"))
    return tuple(codes)


def _counted(store: Store, question: str) -> Counter[str]:
    return Counter({row[0]: row[1] for row in store.rows(question)})
