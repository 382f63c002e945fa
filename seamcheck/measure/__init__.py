"""Stations, sections and one family of quantities in each module."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from seamcheck.measure.table import Interruption, PathSurvey, Survey

if TYPE_CHECKING:
    from seamcheck.measure.seam import survey_joint

__all__ = ["Interruption", "PathSurvey", "Survey", "survey_joint"]


def __getattr__(name: str) -> Any:
    """Import the measuring only when asked for: judging and reports need the values, not the CAD kernel."""
    if name == "survey_joint":
        from seamcheck.measure.seam import survey_joint

        return survey_joint
    raise AttributeError(name)
