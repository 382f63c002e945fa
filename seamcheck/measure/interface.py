"""All whole-interface values of one joint, added to its survey."""

from __future__ import annotations

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.measure.clamp import clamp_values
from seamcheck.measure.corridor import light_corridor, tool_setbacks
from seamcheck.measure.fit import guide_values
from seamcheck.measure.flash import flash_values
from seamcheck.measure.flattening import pressed_flat
from seamcheck.measure.junctions import junction_values
from seamcheck.measure.light import light
from seamcheck.measure.load import load_values
from seamcheck.measure.moving import Moving
from seamcheck.measure.neighbours import neighbours
from seamcheck.measure.overlap import find_overlaps, overlap_value
from seamcheck.measure.path import path_values
from seamcheck.measure.rework import rework_values
from seamcheck.measure.rib_holes import rib_holes
from seamcheck.measure.shade import shades
from seamcheck.measure.sink import sink_values
from seamcheck.measure.stack import flatness_stack, intended_stop
from seamcheck.measure.support import support_values
from seamcheck.measure.table import Survey
from seamcheck.measure.travel import free_travel
from seamcheck.settings.settings import Settings


def survey_interface(joint: Joint, contour: Contour, survey: Survey, settings: Settings) -> Survey:
    """The survey with everything that is measured over the whole interface.

    Parameters
    ----------
    settings : uses collapse and lateral_play (mm), the light onto the joint and the clamp

    Returns
    -------
    Survey : a new one
    """
    moving = Moving.of(joint)
    overlaps = find_overlaps(joint, moving.with_cover)
    found = overlap_value(overlaps, joint) | path_values(joint, contour)
    found |= free_travel(joint, survey, settings, moving, overlaps)
    if joint.rib_on != "none":
        found |= guide_values(joint, survey.initial_contact, settings.collapse, overlaps)
    found |= shades(joint, survey, settings.beam_margin) | rib_holes(joint, survey)
    if joint.rib_on != "none":
        found |= junction_values(joint, contour, survey, settings.collapse)
    given = settings.light(joint.id)
    found |= light(joint, contour, survey, given)
    found |= intended_stop(found.values["free_travel"], settings)
    field = (found.values[key]["value"] for key in ("field_length", "field_width"))
    found |= pressed_flat(joint, survey, settings, *field)
    found |= flatness_stack(settings, found.values.get("pressed_flat"))
    corridor = light_corridor(joint, contour, survey, joint.view, given)
    found |= clamp_values(joint, contour, survey, settings.clamp, corridor, given.margin)
    half_angle = 0.0 if given.scanner is None else given.scanner.half_angle
    found |= tool_setbacks(found.onto(survey), half_angle, settings.clamp.height)
    found |= neighbours(joint, contour, given)
    if joint.rib_on != "none":
        found |= flash_values(joint, contour, survey, found.values["neighbour_distance"].get("places", ()))
        found |= rework_values(joint, survey, settings.collapse, found.values)
    found |= support_values(joint, contour, survey) | load_values(joint, contour, survey, settings.load)
    found |= sink_values(joint, found.onto(survey))
    return found.onto(survey)
