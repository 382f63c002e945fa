"""One joint on the judge's judging: its columns, and findings in the making."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from seamcheck.catalogue.rule import Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.words import fill
from seamcheck.judge.bounds import JudgedPath, JudgedSeam
from seamcheck.judge.findings import Finding, JointResult
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import Stretch
from seamcheck.settings.settings import Settings


@dataclass(frozen=True, slots=True, eq=False)
class DraftFinding:
    """A finding with what its name is made from.

    Attributes
    ----------
    finding : still without a name
    side : which column on which side of its limit
    place : (3,) mm, middle of the stretch; None for the whole seam
    stations : indices of its stations; None where it lies on none
    """

    finding: Finding
    side: str
    place: np.ndarray | None
    stations: np.ndarray | None = None


class JointJudge:
    """Makes the findings of one joint under one set of settings."""

    def __init__(self, joint: JointResult, settings: Settings) -> None:
        self.joint, self.settings = joint, settings
        self.seam = JudgedSeam(joint, settings)
        self.is_flat = self.seam.is_flat

    def applies(self, rule: Rule) -> bool:
        """An optional rule applies where the joint has one of its quantities at all."""
        if not rule.optional:
            return True
        survey = self.joint.survey
        return any(
            check.column in survey.interface or any(check.column in path.columns for path in survey.paths)
            for check in rule.checks
        )

    def finding(self, rule: Rule, says: str, remedy: str) -> Finding:
        """A finding about the joint, not yet placed."""
        return Finding(
            id="", rule=rule.key, severity=self.settings.severity(rule.key), quantity=rule.quantities[0],
            column="", value=None, limit=None, unit=rule.unit, margin=None, joint=self.joint.id, contour=None,
            at=None, station=None, from_s=None, to_s=None, length_mm=None, faces=(), message=says,
            harm=rule.harm, remedy=remedy,
        )  # fmt: skip

    def on_stretch(
        self, rule: Rule, view: JudgedPath, stretch: Stretch, station: int, says: str, remedy: str, side: str
    ) -> DraftFinding:
        """A finding on one stretch of a path, located at a station."""
        path = view.path
        finding = self.finding(rule, says, remedy or rule.remedy)
        finding = replace(
            finding,
            contour=path.id,
            at=point(path.points[station]),
            station=station,
            from_s=stretch.from_s,
            to_s=stretch.to_s,
            length_mm=stretch.length,
            faces=self.faces(path, station),
        )
        place = None if stretch.is_whole else view.place(stretch.middle)
        return DraftFinding(finding, f"{side}.{path.id if stretch.is_whole else ''}", place, stretch.stations)

    def whole(self, key: str, words: Mapping[str, str], also: tuple[str, ...] = ()) -> DraftFinding:
        """A finding about the whole seam of the joint."""
        rule = RULES[key]
        finding = self.finding(rule, fill(rule.says, words), fill(rule.remedy, words))
        length = sum(view.path.length for view in self.seam.paths)
        first = self.seam.paths[0].path if self.seam.paths else None
        finding = replace(
            finding,
            length_mm=float(length),
            at=None if first is None or not len(first.points) else point(first.points[len(first.points) // 2]),
            contour=first.id if first is not None and len(self.seam.paths) == 1 else None,
            also=also,
        )
        return DraftFinding(finding, "whole", None)

    def faces(self, path: PathSurvey, station: int) -> tuple[tuple[str, int], ...]:
        """(part id, face index) of the faces at a station."""
        survey = self.joint.survey
        pairs = (
            (survey.rib_part, int(path.rib_face[station])),
            (survey.counter_part, int(path.cover_face[station])),
        )
        return tuple((part, face) for part, face in pairs if part and face >= 0)


def point(place: np.ndarray) -> tuple[float, float, float]:
    """(3,) as three plain numbers."""
    x, y, z = (float(c) for c in place)
    return x, y, z
