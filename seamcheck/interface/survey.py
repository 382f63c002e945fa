"""All whole-interface values of one joint, added to its survey."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from seamcheck.contour import Contour
from seamcheck.interface.sinking import sinking
from seamcheck.joint import Joint
from seamcheck.survey.table import Survey


def survey_interface(joint: Joint, contour: Contour, survey: Survey, settings: Any) -> Survey:
    """The survey with everything that is measured over the whole interface.

    Parameters
    ----------
    settings : uses collapse and lateral_play (mm)

    Returns
    -------
    Survey : a new one; ``interface`` holds key -> {"value", "at", "why", ...}
    """
    found = {**survey.interface, **sinking(joint, contour, survey, settings)}
    return replace(survey, interface=found)
