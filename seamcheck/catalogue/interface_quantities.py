"""Quantities and reasons of the whole interface, declared as data; catalogue/quantities.py includes them."""

from __future__ import annotations

from seamcheck.catalogue.quantity import Quantity

INTERFACE_QUANTITIES: dict[str, Quantity] = {
    q.key: q
    for q in (
        Quantity(
            "field_circle", "scan field, diameter of the circle", "mm",
            "Diameter of the smallest circle round the mid-line, seen along the beam: the round field that a scanner "
            "needs, placed at its centre.",
            per="interface", decimals=2,
        ),
        Quantity(
            "field_length", "scan field, long side", "mm",
            "Long side of the smallest rectangle round the mid-line, in any orientation, seen along the beam.",
            per="interface", decimals=2,
        ),
        Quantity(
            "field_width", "scan field, short side", "mm", "Short side of the rectangle of field_length.",
            per="interface", decimals=2,
        ),
        Quantity(
            "seam_rise", "height range of the seam", "mm",
            "Height difference along the beam between the highest and the lowest point of the mid-line.",
            per="interface",
        ),
        Quantity(
            "seam_slope", "steepest slope of the seam", "°",
            "Largest angle between the mid-line and the plane normal to the beam.", per="interface", decimals=2,
        ),
        Quantity(
            "seam_step", "step in the seam", "mm",
            "Largest height difference along the beam between two points of the mid-line that are one rib width w "
            "apart along the seam.",
            per="interface",
        ),
        Quantity(
            "path_distance", "distance between stretches of the seam", "mm",
            "Smallest distance, mid-line to mid-line, of two stretches of the seam more than three times as far apart "
            "along the seam.",
            detail="Searched up to 30 mm.", per="interface", decimals=2,
        ),
        Quantity(
            "stop_difference", "travel beyond the intended stop", "mm",
            "Free travel of the whole interface less the travel at which the stop should end the collapse; negative "
            "where it ends earlier.",
            per="interface",
        ),
        Quantity(
            "stop_collapse", "intended stop beyond the planned collapse", "mm",
            "Travel at which the stop should end the collapse, less the planned collapse c.", per="interface",
        ),
        Quantity(
            "rib_hole", "hole in the rib top", "mm",
            "Width of a hole that opens in the rib top: diameter of the largest circle that fits into it.",
            detail="An opening wider than the rib, or longer than five rib widths, is no hole but an area that the rib "
            "runs round.",
            per="interface", decimals=2,
        ),
        Quantity(
            "junction_gap", "gap at a junction", "mm",
            "Largest gap between cover and rib top within 1.5 rib widths of a junction, at initial contact.",
            per="interface",
        ),
        Quantity(
            "junction_room", "flash trap volume over melt at a junction", "1",
            "Flash trap volume over melt volume at a junction, cover lowered by c from initial contact.",
            per="interface",
            detail="Within 2 rib widths of the junction: the volume between cover and base beside the rib.", decimals=2,
        ),
        Quantity(
            "overlap", "overlap of parts as drawn", "mm",
            "Depth to which the cover and another part interpenetrate as drawn, elsewhere than at the rib.",
            detail="At points along the border of the overlap, the shortest distance through both parts, normal to one "
            "of the faces that intersect there; the largest of these. For a part that lies wholly in the cover's "
            "plastic, its smallest dimension. What the cover penetrates along the beam stands under free_travel, as a "
            "negative value.",
            per="interface", decimals=2,
        ),
        Quantity(
            "beam_angle", "beam angle", "°",
            "Angle in air between the ray from the scanner to P and the normal of the cover's top where it enters.",
            detail="The ray is refracted at the cover's top.", decimals=2,
        ),
        Quantity(
            "spot_offset", "shift of the beam by the cover", "mm",
            "Sideways shift of the ray by refraction, at the level of P, towards the optical axis: z (tan α - tan β).",
            detail="z is the depth of P below the cover's top, α the angle in air and β the angle in the plastic.",
        ),
        Quantity(
            "spot_stretch", "elongation of the spot", "1",
            "Length of the spot along its tilt over its diameter: 1 / cos α, with the angle α in air.",
        ),
        Quantity(
            "path_in_cover", "beam path in the cover, refracted", "mm",
            "Length of the refracted ray in the plastic, from the cover's top to P.",
        ),
        Quantity(
            "light_lean", "lean of the beam in the section", "°",
            "Angle in the section between the beam and the ray to P, in air; positive where it comes from the outer "
            "side.",
            decimals=2,
        ),
        Quantity(
            "light_enters_inner", "beam on the cover's top, inner edge", "mm",
            "Where the inner edge of the beam enters the cover: distance from P along u, negative on the inner side.",
            detail="With its cone, refracted at the cover's top. The beam is as wide as the spot, or as the rib top "
            "where no spot is given.",
        ),
        Quantity(
            "light_enters_outer", "beam on the cover's top, outer edge", "mm",
            "As light_enters_inner, for the outer edge.",
        ),
        Quantity(
            "light_width", "width of the beam at the rib", "mm",
            "Width of the beam in the section at the level of the rib top.",
            detail="The spot's width over the cosine of the beam's lean in the section; the rib's width where no spot "
            "is given.",
        ),
        Quantity(
            "light_clear", "light reaching the rib from the scanner", "1",
            "Share of rays from the scanner to the rib top that enter through the cover's top and meet no part before.",
            detail="The rays go to the middle and both edges of the beam at the level of the rib top (as wide as the "
            "spot, or as the rib where none is given) and round the rim of its cone.",
            decimals=2,
        ),
        Quantity(
            "pressed_flat", "cover flatness that the clamp presses flat", "mm",
            "Part of the cover's given flatness that the clamp presses flat; the cover is taken as a plate as thick as "
            "over the seam.",
            detail="The flatness times the clamp's line load (its pressure times the rib's mean width) over the line "
            "load that bends the plate by its flatness, at most 1. That line load is 384/5 D δ / a⁴ times half the "
            "longer side of the seam's rectangle, for a plate of stiffness D bowed by the flatness δ over the shorter "
            "side a. Not for covers with ribs or skirts, which are stiffer.",
            per="interface",
        ),
        Quantity(
            "local_collapse_left", "collapse left after flatness", "mm",
            "Planned collapse c less the flatness of cover and rib, plus what the clamp presses flat: melt depth at "
            "the lowest place, worst case.",
            detail="What the clamp presses flat is given as flattened, or else computed (pressed_flat).",
            per="interface",
        ),
        Quantity(
            "clamp_area", "clamp area", "mm²",
            "Area, seen along the beam, of level faces of the cover's top from the beam corridor out to the clamp's "
            "reach.",
            detail="A face is level where it lies within 5° all over, at any height, tops of bosses included. The beam "
            "corridor is the spot (the rib top where none is given) plus the beam margin; from a scanner refracted at "
            "the cover's top, with its cone. Nothing of any part may stand on or over the area up to the clamp's "
            "height.",
            per="interface", decimals=1,
        ),
        Quantity(
            "clamp_area_inner", "clamp area, inner side", "mm²", "Part of clamp_area inside the seam.", per="interface",
            decimals=1,
        ),
        Quantity(
            "clamp_area_outer", "clamp area, outer side", "mm²", "Part of clamp_area outside the seam.",
            per="interface", decimals=1,
        ),
        Quantity(
            "clamp_share", "share of the seam with clamp area", "1",
            "Share of the seam's length with clamp area as wide as the clamp's 'width', square to the seam within its "
            "reach, on either side.",
            detail="Measured as clamp_area; one side is enough.", per="interface", decimals=3,
        ),
        Quantity(
            "tool_setback_inner", "clearance of a tall clamp, inner side", "mm",
            "Setback from the beam on the cover's top that an upright clamp wall on the inner side needs so as not to "
            "shade it.",
            detail="Height of the clamp times the tangent of the beam's half-angle and its largest lean from that side "
            "together; 0 where the beam leans away from it everywhere. Counted from the beam corridor (see "
            "clamp_area).",
            per="interface", decimals=2,
        ),
        Quantity(
            "tool_setback_outer", "clearance of a tall clamp, outer side", "mm",
            "As tool_setback_inner, for a clamp on the outer side.", per="interface", decimals=2,
        ),
        Quantity(
            "enclosed_area", "area inside the seam", "mm²",
            "Area enclosed by the mid-line, seen along the beam; an internal pressure on it pushes the cover off.",
            per="interface", decimals=0,
        ),
        Quantity(
            "load_force", "force on the cover", "N",
            "Force given in the settings, or the pressure given there times enclosed_area.", per="interface",
            decimals=1,
        ),
        Quantity(
            "line_load_mean", "mean line load", "N/mm", "load_force divided by the length of the seam.",
            per="interface", decimals=2,
        ),
        Quantity(
            "line_load", "line load along the seam", "N/mm",
            "Load per millimetre of seam from the cover as a plate of constant thickness: hinged on the seam or "
            "clamped by it, whichever is larger.",
            detail="The plate spans the area inside the seam.", decimals=2,
        ),
        Quantity(
            "peel_moment", "peel moment along the seam", "N",
            "Bending moment per millimetre of seam at the edge of the cover, taken as a plate clamped by the seam, in "
            "N·mm/mm.",
            detail="The plate is that of line_load. 0 where it is hinged: the truth lies between, as stiff as the wall "
            "is.",
            decimals=1,
        ),
        Quantity(
            "weld_stress_least", "weld stress, at least", "MPa",
            "Load of the plate hinged on the seam over the rib width w. Of the whole interface the largest.",
            decimals=2,
        ),
        Quantity(
            "weld_stress_most", "weld stress, at most", "MPa",
            "line_load over the rib width w, plus 6 peel_moment / w² where the weld is peeled. Of the whole interface "
            "the largest.",
            decimals=1,
        ),
        Quantity(
            "weld_use_least", "weld stress over strength, at least", "1",
            "weld_stress_least over the strength times the weld factor that the settings give.", per="interface",
            decimals=2,
        ),
        Quantity(
            "weld_use_most", "weld stress over strength, at most", "1",
            "weld_stress_most over the strength times the weld factor that the settings give.", per="interface",
            decimals=2,
        ),
        Quantity(
            "neighbour_distance", "distance to other parts", "mm",
            "Shortest distance from the spot on the rib to a part other than cover and base; searched up to 10 mm.",
            detail="Where no spot is given, from the rib top; with the beam margin.", per="interface", decimals=2,
        ),
        Quantity(
            "support_depth", "material below the rib", "mm",
            "Distance along the beam from P through the base's material down to where it first ends; for the whole "
            "interface the smallest.",
            decimals=2,
        ),
        Quantity(
            "overhang", "overhang below the rib", "mm",
            "Where the material below P ends: distance square to the seam to connected material that continues "
            "downward; 0 where none does.",
            detail="Searched up to four rib widths w to both sides, one rib width below the end (in a slit halfway "
            "down). The value of the whole interface is the largest.",
            decimals=2,
        ),
        Quantity(
            "support_open", "seam over openings", "mm",
            "Length of seam below which the base's material ends, with no connected material beside it, and begins "
            "again below the air.",
            detail="At any depth; what continues beside is found as for overhang.", per="interface", decimals=2,
        ),
        Quantity(
            "nest_area", "area for the nest", "mm²",
            "Area straight below the rib top of level faces (within 5°) on which the base's material ends: there a "
            "nest supports it.",
            per="interface", decimals=1,
        ),
        Quantity(
            "parts_outside", "share of parts outside limits", "%",
            "Share of parts in which a limit breaks that the drawing holds, or no collapse suits, with the tolerances "
            "of the settings.",
            detail="One deviation moves a quantity along the whole seam; different quantities are independent.",
            per="interface", decimals=2,
        ),
        Quantity(
            "wall_to_rib", "wall width over rib width", "1",
            "Smallest ratio of wall_width, the wall that carries the rib, to the rib's width at half height.",
            per="interface", decimals=2,
        ),
        Quantity(
            "root_to_plate", "rib root over plate", "1",
            "Width of the rib at its root over the thickness of its plate; not where a wall goes on below it.",
            decimals=2,
        ),
        Quantity(
            "flash_open_inner", "length of open flash trap, inner side", "mm",
            "Length of the seam on which nothing closes the inner flash trap; with what flash would reach there.",
            per="interface", decimals=2,
        ),
        Quantity(
            "trap_volume_inner", "flash trap volume, inner side", "mm³",
            "trap_area_inner times the trap's own length, shorter than the mid-line on the inside of a corner, longer "
            "on its outside.",
            detail="Sum over the seam of area times length of mid-line, times 1 - d / R on the inside of a corner and "
            "1 + d / R on its outside (see trap_corner_inner). Places without a section count as the average of the "
            "others.",
            per="interface", decimals=1,
        ),
        Quantity(
            "corner_loss_inner", "trap volume lost in corners, inner side", "1",
            "Largest share of the inner flash trap that a corner takes away: d / R where the seam bends towards this "
            "side, else 0.",
            detail="d and R as in trap_corner_inner.", per="interface", decimals=3,
        ),
        Quantity(
            "flash_open_outer", "length of open flash trap, outer side", "mm",
            "Length of the seam on which nothing closes the outer flash trap; with what flash would reach there.",
            per="interface", decimals=2,
        ),
        Quantity(
            "trap_volume_outer", "flash trap volume, outer side", "mm³", "As trap_volume_inner, on the outer side.",
            per="interface", decimals=1,
        ),
        Quantity(
            "corner_loss_outer", "trap volume lost in corners, outer side", "1",
            "As corner_loss_inner, on the outer side.", per="interface", decimals=3,
        ),
        Quantity(
            "melt_volume", "melt volume", "mm³",
            "melt_area times the length of the mid-line; places without a section count as the average of the others.",
            per="interface", decimals=1,
        ),
        Quantity(
            "lip_tightest", "smallest lip gap", "mm",
            "Smallest lip gap b after the collapse, on both sides of the whole seam.", per="interface",
        ),
        Quantity(
            "lip_widest", "largest lip gap", "mm",
            "Largest lip gap b after the collapse, on both sides of the whole seam.", per="interface",
        ),
        Quantity(
            "guide_play", "play of guiding flanks", "mm",
            "Smallest sideways distance, after the collapse, of flanks of cover and base within 0.3 mm of each other; "
            "negative: they collide.",
            per="interface",
        ),
        Quantity(
            "guide_depth", "depth of guiding flanks at first touch", "mm",
            "Height that such flanks have in common when the cover first touches the rib; negative: they meet later.",
            per="interface", decimals=2,
        ),
        Quantity(
            "guide_draft", "draft of guiding flanks", "°",
            "Smallest angle between the beam and such a flank, of those at least 3 mm high; negative: an undercut.",
            per="interface", decimals=2,
        ),
        Quantity(
            "lead_in", "lead-in of guiding flanks", "mm",
            "How far chamfers or roundings at the ends of two such flanks that meet first stand back sideways, "
            "together.",
            per="interface", decimals=2,
        ),
        Quantity(
            "travel_left", "travel left for a second melting", "mm",
            "Free travel over the whole interface less the planned collapse.", per="interface",
        ),
        Quantity(
            "trap_filled", "flash traps filled", "1",
            "Volume of the melt over the volume of both flash traps, after the planned collapse.", per="interface",
            decimals=2,
        ),
        Quantity(
            "collapse_left", "collapse left in the section", "mm",
            "Further collapse, beyond the planned one, until the melt of both fills the two flash traps or the rib is "
            "melted down to their floor.",
        ),
        Quantity(
            "second_collapse", "second collapse that fits", "mm",
            "The smaller of travel_left and the smallest collapse_left: what a second melting may melt down.",
            per="interface",
        ),
    )
}  # fmt: skip

INTERFACE_REASONS: dict[str, str] = {
    "no-scanner": "The settings give no scanner: the beam angle is not evaluated. field_circle, field_length and "
        "field_width are the scan field that the seam needs.",
    "no-stiffness": "Cover modulus and clamp pressure are not both given: the clamp is taken to press nothing flat.",
    "no-plate": "The cover is no plate (it has ribs or a skirt): what the clamp presses flat is not evaluated.",
    "no-strength": "Strength and weld factor are not both given in the settings: not evaluated.",
    "no-single-loop": "Load and moment are evaluated for a seam of one closed path only.",
    "no-plate-edge": "The area inside the seam could not be meshed.",
    "no-neighbour": "No other stretch of the seam is near.",
    "no-neighbour-part": "No part but cover and base comes within 10 mm of the seam.",
    "no-guide": "No flanks of cover and base are within 0.3 mm of each other: nothing guides the cover.",
    "low-guides": "All guiding flanks are lower than 3 mm: their draft makes no difference.",
    "wall-below": "The rib ends a wall: no face lies straight opposite, where a sink mark could show.",
    "no-inside": "The seam encloses nothing.",
}  # fmt: skip
