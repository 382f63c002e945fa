"""Quantities and reasons of the whole interface, declared as data; catalogue/quantities.py includes them."""

from __future__ import annotations

from seamcheck.catalogue.quantity import Quantity

INTERFACE_QUANTITIES: dict[str, Quantity] = {
    q.key: q
    for q in (
        Quantity(
            "field_circle",
            "scan field, diameter of the circle",
            "mm",
            "Diameter of the smallest circle around the mid-line, seen along the light: the round field "
            "that a "
            "scanner needs. Its place is the circle's centre.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "field_length",
            "scan field, long side",
            "mm",
            "Long side of the smallest rectangle, turned as it fits best, around the mid-line, seen along the light.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "field_width",
            "scan field, short side",
            "mm",
            "Short side of the rectangle of field_length.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "seam_rise",
            "rise of the seam",
            "mm",
            "Difference of the highest and the lowest place of the mid-line, along the light.",
            per="interface",
        ),
        Quantity(
            "seam_slope",
            "steepest slope of the seam",
            "°",
            "Largest angle between the mid-line and the plane normal to the light.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "seam_step",
            "step of the seam",
            "mm",
            "Largest difference in height, along the light, of two places of the mid-line that are one rib width "
            "apart along the seam.",
            per="interface",
        ),
        Quantity(
            "path_distance",
            "distance of neighbouring stretches",
            "mm",
            "Smallest distance, mid-line to mid-line, of two stretches of the seam of which the way from "
            "one to "
            "the other along the seam is more than three times their distance; looked for up to 30 mm.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "stop_difference",
            "travel beyond the intended stop",
            "mm",
            "Free travel over the whole interface less the travel at which a stop is meant to end the "
            "collapse; "
            "negative where something stops the cover before.",
            per="interface",
        ),
        Quantity(
            "stop_collapse",
            "intended stop beyond the planned collapse",
            "mm",
            "Travel at which a stop is meant to end the collapse, less the planned collapse.",
            per="interface",
        ),
        Quantity(
            "rib_hole",
            "hole in the rib's top",
            "mm",
            "Width of a hole that opens in the rib's top: diameter of the largest circle that fits into it. An opening "
            "wider than the rib, or longer than five rib widths, is no hole but a room that the rib runs round.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "overlap",
            "parts drawn into each other",
            "mm",
            "Depth of the room that the cover and another part both claim, elsewhere than at the rib: at places along "
            "its border the shortest way through both, square to one of the faces that cross along it; the longest of "
            "these. Of a part that lies in the cover's plastic as a whole, its smallest size. What the cover is drawn "
            "into along the light stands under free_travel, as a negative value.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "beam_angle",
            "angle of the light",
            "°",
            "Angle in air between the ray to P from the scanner and the normal of the cover's top where the ray "
            "enters, with the ray refracted there.",
            decimals=2,
        ),
        Quantity(
            "spot_offset",
            "shift of the light by the cover",
            "mm",
            "How far the cover moves the ray at the level of P against a straight one: t (tan a - tan b), with the "
            "depth t below the top, the angle a in air and b in the plastic; towards the optical axis.",
        ),
        Quantity(
            "spot_stretch",
            "stretch of the light spot",
            "1",
            "Length of the spot along its tilt over its diameter: 1 / cos of the angle in air.",
        ),
        Quantity(
            "path_in_cover",
            "way of the ray in the cover",
            "mm",
            "Way of the refracted ray through the plastic, from the cover's top to P.",
        ),
        Quantity(
            "light_lean",
            "lean of the light in the section",
            "°",
            "Angle in the section between the ray to P, in air, and the beam; positive where it comes from the outer "
            "side.",
            decimals=2,
        ),
        Quantity(
            "light_enters_inner",
            "light on the cover's top, inner edge",
            "mm",
            "Where the light's inner edge enters the cover, with its cone, bent there: distance from P along u, "
            "negative on the inner side. The light is as wide as the spot, or as the rib's top where no spot is given.",
        ),
        Quantity(
            "light_enters_outer",
            "light on the cover's top, outer edge",
            "mm",
            "As light_enters_inner, for the outer edge.",
        ),
        Quantity(
            "light_width",
            "width of the light at the rib",
            "mm",
            "Width of the light in the section at the level of the rib's top: the spot's over the cosine of the "
            "light's lean in the section; the rib's where no spot is given.",
        ),
        Quantity(
            "light_clear",
            "light reaching the rib from the scanner",
            "1",
            "Share of rays from the scanner to the middle and both edges of the light at the level of the rib's top "
            "(as wide as the spot, or as the rib where none is given), and round the rim of its cone, that enter "
            "through the cover's light-side face and meet no part before.",
            decimals=2,
        ),
        Quantity(
            "pressed_flat",
            "flatness of the cover that the clamp presses flat",
            "mm",
            "Flatness given for the cover, times the line load of the clamp (its pressure times the rib's mean width) "
            "over that which bends the cover by its flatness, at most 1: a plate as thick as over the seam, bowed over "
            "the shorter side of the seam's rectangle, 384/5 D f / l^4 times half of the longer side. Not for covers "
            "with ribs or skirts, which are stiffer.",
            per="interface",
        ),
        Quantity(
            "local_collapse_left",
            "collapse left by flatness",
            "mm",
            "Planned collapse less the flatness of cover and rib as given, plus what the clamp is given, or else "
            "computed (pressed_flat), to press flat: what melts at the lowest place in the worst case.",
            per="interface",
        ),
        Quantity(
            "clamp_area",
            "area for the clamp",
            "mm²",
            "Area, seen along the light, of light-side faces of the cover that are level all over (within 5°, at any "
            "height, tops of bosses as well) from the edge of what the light takes (the spot, or the rib's top where "
            "none is given, and the beam margin; from a scanner refracted at the cover's top, with its cone) out to "
            "the clamp's reach, with nothing of any part standing on or over them up to the clamp's height.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "clamp_area_inner",
            "area for the clamp, inner side",
            "mm²",
            "The part of clamp_area inside the seam.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "clamp_area_outer",
            "area for the clamp, outer side",
            "mm²",
            "The part of clamp_area outside the seam.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "clamp_share",
            "seam with clamp land near",
            "1",
            "Share of the seam's length that has, square to the seam, on one side at least and within the clamp's "
            "reach, area for the clamp (see clamp_area) as wide as the clamp's setting 'width'.",
            per="interface",
            decimals=3,
        ),
        Quantity(
            "tool_setback_inner",
            "clearance of a tall clamp, inner side",
            "mm",
            "How far an upright side of the clamp on the inner side must stand back from what the light takes of the "
            "cover's top so as not to shade it: height of the clamp times the tangent of the beam's half-angle and the "
            "light's largest lean from that side together; 0 where the light leans away from it everywhere.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "tool_setback_outer",
            "clearance of a tall clamp, outer side",
            "mm",
            "As tool_setback_inner, for a clamp on the outer side.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "enclosed_area",
            "area inside the seam",
            "mm²",
            "Area that the mid-line encloses, seen along the light: on it a pressure inside pushes the cover off.",
            per="interface",
            decimals=0,
        ),
        Quantity(
            "load_force",
            "force on the cover",
            "N",
            "Force given in the settings, or pressure given there times enclosed_area.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "line_load_mean",
            "mean load along the seam",
            "N/mm",
            "load_force over the length of the seam.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "line_load",
            "load along the seam",
            "N/mm",
            "Load that the cover, as a plate of even thickness over the area inside the seam, hands on to each "
            "millimetre of seam: the larger one of a plate hinged on the seam and one clamped by it.",
            decimals=2,
        ),
        Quantity(
            "peel_moment",
            "peel moment along the seam",
            "N",
            "Moment (N·mm for each mm of seam) at the edge of that plate where the seam clamps it; 0 where it is "
            "hinged: the truth lies between, as stiff as the wall is.",
            decimals=1,
        ),
        Quantity(
            "weld_stress_least",
            "tension in the weld, at least",
            "MPa",
            "Load along the seam of the plate hinged on it, over the rib's width. Of the whole interface the largest.",
            decimals=2,
        ),
        Quantity(
            "weld_stress_most",
            "tension in the weld, at most",
            "MPa",
            "line_load over the rib's width w, and 6 peel_moment / w² where the weld is peeled. Of the whole interface "
            "the largest.",
            decimals=1,
        ),
        Quantity(
            "weld_use_least",
            "tension over what the weld bears, at least",
            "1",
            "weld_stress_least over the strength times the weld factor that the settings give.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "weld_use_most",
            "tension over what the weld bears, at most",
            "1",
            "weld_stress_most over the strength times the weld factor that the settings give.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "neighbour_distance",
            "distance of other parts",
            "mm",
            "Shortest distance from the rib's seam faces to a part that is neither cover nor base; looked "
            "for up to 10 mm.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "support_depth",
            "material below the rib",
            "mm",
            "Way along the light from P through the base's material down to where it first ends. The one value of "
            "the whole interface is the smallest.",
            decimals=2,
        ),
        Quantity(
            "overhang",
            "overhang below the rib",
            "mm",
            "Where the material straight below P ends: the way square to the seam to where material that hangs "
            "together with it goes on down, looked for up to four rib widths to both sides, one rib width below the "
            "end (in a slit halfway down); 0 where nothing beside goes on. The one value of the whole interface is "
            "the largest.",
            decimals=2,
        ),
        Quantity(
            "support_open",
            "seam over openings",
            "mm",
            "Length of the seam below which, at any depth, the base's material ends, nothing that hangs together "
            "with it carries on beside (see overhang), and more of the base begins below the air.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "nest_area",
            "area for the nest",
            "mm²",
            "Area straight below the rib's top of level faces (within 5°) on which the base's material "
            "below it ends: there a nest carries it.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "parts_outside",
            "parts outside",
            "%",
            "Share of parts in which a limit breaks that the drawing holds, or no collapse suits, with the "
            "tolerances of the settings: one deviation moves a quantity along the whole seam, different quantities "
            "are independent.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "wall_to_rib",
            "wall to rib",
            "1",
            "Smallest ratio of the width of the wall that carries the rib to the rib's width at half height.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "root_to_plate",
            "rib root over plate",
            "1",
            "Width of the rib at its root over the thickness of its plate; not where a wall goes on below it.",
            decimals=2,
        ),
        Quantity(
            "flash_open_inner",
            "open flash trap, inner side",
            "mm",
            "Length of the seam on which nothing closes the inner flash trap; with what flash would reach there.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "trap_volume_inner",
            "flash trap volume, inner side",
            "mm³",
            "trap_area_inner along the trap's own way: the sum over the seam of area times length of mid-line, times "
            "1 - d / R on the inside of a turn and 1 + d / R on its outside (see trap_turn_inner). Places without a "
            "section count as the average of the others.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "corner_loss_inner",
            "trap volume lost in corners, inner side",
            "1",
            "Largest share of the inner flash trap's section that a turn takes away: d / R where the line turns "
            "toward this side (see trap_turn_inner); 0 where it never does.",
            per="interface",
            decimals=3,
        ),
        Quantity(
            "flash_open_outer",
            "open flash trap, outer side",
            "mm",
            "Length of the seam on which nothing closes the outer flash trap; with what flash would reach there.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "trap_volume_outer",
            "flash trap volume, outer side",
            "mm³",
            "trap_area_outer along the trap's own way: the sum over the seam of area times length of mid-line, times "
            "1 - d / R on the inside of a turn and 1 + d / R on its outside (see trap_turn_outer). Places without a "
            "section count as the average of the others.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "corner_loss_outer",
            "trap volume lost in corners, outer side",
            "1",
            "Largest share of the outer flash trap's section that a turn takes away: d / R where the line turns "
            "toward this side (see trap_turn_outer); 0 where it never does.",
            per="interface",
            decimals=3,
        ),
        Quantity(
            "melt_volume",
            "volume of the melt",
            "mm³",
            "melt_area along the mid-line. Places without a section count as the average of the others.",
            per="interface",
            decimals=1,
        ),
        Quantity(
            "lip_tightest",
            "tightest lip",
            "mm",
            "Smallest lip gap after the collapse, on both sides of the whole seam.",
            per="interface",
        ),
        Quantity(
            "lip_widest",
            "widest lip",
            "mm",
            "Largest lip gap after the collapse, on both sides of the whole seam.",
            per="interface",
        ),
        Quantity(
            "guide_play",
            "play of guiding flanks",
            "mm",
            "Smallest sideways distance, after the collapse, of flanks of cover and base within 0.3 mm of each other; "
            "negative: they collide.",
            per="interface",
        ),
        Quantity(
            "guide_depth",
            "depth of guiding flanks at first touch",
            "mm",
            "Height that such flanks have in common when the cover first touches the rib; negative: they meet later.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "guide_draft",
            "draft of guiding flanks",
            "°",
            "Smallest angle between the light and such a flank, of those at least 3 mm high.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "lead_in",
            "lead-in of guiding flanks",
            "mm",
            "How far chamfers or roundings at the ends of two such flanks that meet first stand back sideways, "
            "together.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "travel_left",
            "travel left for a second melting",
            "mm",
            "Free travel over the whole interface less the planned collapse.",
            per="interface",
        ),
        Quantity(
            "trap_filled",
            "flash traps filled",
            "1",
            "Volume of the melt over the volume of both flash traps, after the planned collapse.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "collapse_left",
            "collapse left in the section",
            "mm",
            "Further collapse, beyond the planned one, until the melt of both fills the two flash traps or the rib is "
            "melted down to their floor.",
        ),
        Quantity(
            "second_collapse",
            "second collapse that fits",
            "mm",
            "The smaller of travel_left and the smallest collapse_left: what a second melting may melt down.",
            per="interface",
        ),
    )
}

INTERFACE_REASONS: dict[str, str] = {
    "no-scanner": "No scanner is given in the settings: the angle of the light is not evaluated. The seam "
    "needs "
    "the scan field given as field_circle, field_length and field_width.",
    "no-stiffness": "Modulus of the cover and pressure of the clamp are not both given: nothing counts as pressed "
    "flat.",
    "no-plate": "The cover is no plate (it has ribs or a skirt): what the clamp presses flat is not evaluated.",
    "no-strength": "Strength and weld factor are not both given in the settings: not evaluated.",
    "no-single-loop": "Load and moment are evaluated for a seam of one closed path only.",
    "no-plate-edge": "The area inside the seam could not be divided into elements.",
    "no-neighbour": "No other stretch of the seam comes near.",
    "no-neighbour-part": "No part but cover and base comes within 10 mm of the seam.",
    "no-guide": "No flanks of cover and base stand within 0.3 mm of each other: nothing guides the cover.",
    "low-guides": "All guiding flanks are lower than 3 mm: their draft makes no difference.",
    "wall-below": "The rib ends a wall: no face lies straight opposite, where a sink mark could show.",
    "no-inside": "The seam encloses nothing.",
}
