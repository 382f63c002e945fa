"""Find, trace and survey drawn parts without a file between: for tests of the measuring steps."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.contour import Contour, trace_contour
from seamcheck.joint import Joint, find_joints
from seamcheck.measure import Survey, survey_joint
from seamcheck.settings.settings import Settings

DEFAULTS = {"collapse": 0.4, "beam_margin": 0.0, "station_spacing": 0.5}


def settings(**changes: Any) -> Settings:
    """Settings for the measuring steps."""
    return Settings(**{**DEFAULTS, **changes})


def assembly(parts: Sequence[tuple]) -> Assembly:
    """An Assembly of (name, solid, ...) as it would come out of a file."""
    return Assembly(
        (), tuple(Part(f"p{i}", named[0], (named[0],), "solid", named[1], 1, 0) for i, named in enumerate(parts, 1))
    )


@dataclass(frozen=True)
class Measured:
    """Everything that the steps return for the first joint."""

    joint: Joint
    contour: Contour
    survey: Survey

    def column(self, key: str) -> np.ndarray:
        return np.concatenate([path.columns[key] for path in self.survey.paths])

    def reasons(self, key: str) -> set[str]:
        return set(np.concatenate([path.reasons[key] for path in self.survey.paths]).tolist()) - {""}

    @property
    def points(self) -> np.ndarray:
        return np.concatenate([path.points for path in self.survey.paths])


def measure(parts: Sequence[tuple], **changes: Any) -> Measured:
    """Measure the first joint of some drawn parts."""
    chosen = settings(**changes)
    joint = find_joints(assembly(parts), chosen)[0]
    contour = trace_contour(joint)
    return Measured(joint, contour, survey_joint(joint, contour, chosen))
