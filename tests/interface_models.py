"""Drawn parts through finding, tracing, surveying and the whole-interface survey."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from measuring import Measured, measure, settings

from seamcheck.measure.interface import survey_interface

NUMBERS = {"lateral_play": 0.0}


def interface(parts: Sequence[tuple], **changes) -> tuple[Measured, Mapping[str, dict]]:
    """What is measured over the whole interface of some drawn parts."""
    chosen = settings(**{**NUMBERS, **changes})
    found = measure(parts, **changes)
    return found, survey_interface(found.joint, found.contour, found.survey, chosen).interface
