"""All whole-interface values of one joint, added to its survey."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.measure.clamp import clamp_values
from seamcheck.measure.corridor import light_corridor, tool_setbacks
from seamcheck.measure.flash import flash_values
from seamcheck.measure.light import light
from seamcheck.measure.moving import Moving
from seamcheck.measure.neighbours import neighbours
from seamcheck.measure.overlap import find_overlaps, overlap_value
from seamcheck.measure.path import path_values
from seamcheck.measure.rib_holes import rib_holes
from seamcheck.measure.shade import shades
from seamcheck.measure.stack import flatness_stack, intended_stop
from seamcheck.measure.support import support_values
from seamcheck.measure.table import PathSurvey, Shade, Survey
from seamcheck.measure.travel import free_travel
from seamcheck.sections.facing import View
from seamcheck.settings.settings import Settings


def survey_interface(joint: Joint, contour: Contour, survey: Survey, settings: Settings) -> Survey:
    """The survey with everything that is measured over the whole interface.

    Parameters
    ----------
    settings : uses collapse and lateral_play (mm), scanner and clamp

    Returns
    -------
    Survey : a new one; ``interface`` holds key -> {"value", "at", "why", ...}
    """
    moving = Moving.of(joint)
    overlaps = find_overlaps(joint, moving.with_cover)
    values = {**survey.interface, "overlap": overlap_value(overlaps, joint), **path_values(joint, contour)}
    values["free_travel"] = free_travel(joint, survey, settings, moving, overlaps)
    values |= shades(joint, survey) | rib_holes(joint, survey)
    given = settings.light(joint.id)
    lit, columns, reasons, dark = light(joint, contour, survey, given)
    values |= lit
    values |= intended_stop(values["free_travel"], settings)
    values |= flatness_stack(settings)
    corridor = light_corridor(joint, contour, survey, View.of(joint), given)
    values |= clamp_values(joint, contour, survey, settings.clamp, corridor, given.margin)
    values |= neighbours(joint)
    if joint.rib_on != "none":
        values |= flash_values(joint, contour, survey, values["neighbour_distance"].get("places", ()))
    carried, more, why = support_values(joint, contour, survey)
    values |= carried
    paths = tuple(
        _with(
            path,
            {**columns.get(path.id, {}), **more[path.id]},
            {**reasons.get(path.id, {}), **why[path.id]},
            dark.get(path.id),
        )
        for path in survey.paths
    )
    found = replace(survey, paths=paths, interface=values)
    half_angle = 0.0 if given.scanner is None else given.scanner.half_angle
    values |= tool_setbacks(found, half_angle, settings.clamp.height)
    return found


def _with(path: PathSurvey, columns: dict[str, Any], reasons: dict[str, Any], dark: Shade | None) -> PathSurvey:
    shade = dark if path.shade is None or dark is None else path.shade.joined(dark)
    return replace(
        path,
        columns={**path.columns, **columns},
        reasons={**path.reasons, **reasons},
        shade=path.shade if dark is None else shade,
    )
