"""Every quantity that seamcheck measures: declared once, with unit and written definition.

Help, documents and reports take their words from here. ``P`` is the station on the mid-line of the rib
top, ``u`` points across the seam (+u outer), ``v`` against the light; ``c`` is the planned collapse.
With the rib on the cover everything is mirrored: v then points from the cover into the base, and
"cover" and "base" change places in the definitions of rib, trap, floor and lip.
"""

from __future__ import annotations

from seamcheck.catalogue.interface_quantities import INTERFACE_QUANTITIES, INTERFACE_REASONS
from seamcheck.catalogue.material_quantities import MATERIAL_QUANTITIES, MATERIAL_REASONS
from seamcheck.catalogue.quantity import Quantity

__all__ = ["MEASURED", "QUANTITIES", "REASONS", "Quantity"]


MEASURED: dict[str, Quantity] = {
    q.key: q
    for q in (
        Quantity(
            "rib",
            "weld rib",
            "1",
            "Whether a weld rib stands between cover and base at all; the seam as a whole.",
            per="contour",
        ),
        Quantity(
            "rib_width",
            "rib width",
            "mm",
            "Width of the rib at the contact plane; equal to rib_width_top. This one is judged.",
        ),
        Quantity(
            "rib_width_top",
            "rib width at the top",
            "mm",
            "Distance along u between the two flanks at the contact plane, between the tangent points of "
            "the top fillets: the chord of the rib top's flat region through P.",
        ),
        Quantity(
            "rib_width_mid",
            "rib width at half height",
            "mm",
            "Distance along u between the two flanks at half the rib height below the contact plane.",
        ),
        Quantity(
            "rib_width_root",
            "rib width at the root",
            "mm",
            "Distance along u between the two flank lines, extended straight to the level one rib height "
            "below the contact plane; root fillets are left out.",
        ),
        Quantity("rib_height", "rib height", "mm", "The smaller of the inner and the outer rib height that exist."),
        Quantity(
            "rib_height_inner",
            "rib height, inner side",
            "mm",
            "Along v from the trap floor on the inner side up to P's contact plane. The floor is the "
            "nearest surface facing the light beside the flank, root fillet excluded.",
        ),
        Quantity(
            "rib_height_outer",
            "rib height, outer side",
            "mm",
            "Along v from the trap floor on the outer side up to P's contact plane. The floor is the "
            "nearest surface facing the light beside the flank, root fillet excluded.",
        ),
        Quantity("slenderness", "slenderness", "1", "Rib height divided by the rib width at half height."),
        Quantity(
            "draft_inner",
            "flank draft, inner side",
            "°",
            "Angle between the inner flank at half height and v; positive when the rib widens downward.",
            decimals=2,
        ),
        Quantity(
            "draft_outer",
            "flank draft, outer side",
            "°",
            "Angle between the outer flank at half height and v; positive when the rib widens downward.",
            decimals=2,
        ),
        Quantity(
            "melt_area",
            "melt area",
            "mm²",
            "Area of the rib's section above the level c below the contact plane, with draft and fillets.",
        ),
        Quantity(
            "trap_area_inner",
            "flash trap area, inner side",
            "mm²",
            "Area between base and cover beside the rib with the cover lowered by c from initial contact, from "
            "the flank out to the place where the wall or lip that closes the trap comes nearest (a lip "
            "rises at least 0.2 mm above the floor, or hangs down as much). Beside a wall the cover's "
            "underside is continued straight across the slit (up to 0.5 mm wide) between the cover's edge "
            "and the wall. Where nothing closes it: out to the edge of the floor or of the cover, whichever "
            "comes first. Where another rib of the same seam closes it, both share the room: half of it counts.",
        ),
        Quantity("trap_area_outer", "flash trap area, outer side", "mm²", "As trap_area_inner, on the outer side."),
        Quantity(
            "trap_room",
            "flash trap volume over melt",
            "1",
            "Both flash trap areas together divided by the melt area.",
            decimals=2,
        ),
        Quantity(
            "trap_room_inner",
            "flash trap volume over melt, inner side",
            "1",
            "Flash trap area of the inner side divided by half the melt area.",
            decimals=2,
        ),
        Quantity(
            "trap_room_outer",
            "flash trap volume over melt, outer side",
            "1",
            "Flash trap area of the outer side divided by half the melt area.",
            decimals=2,
        ),
        Quantity(
            "trap_turn_inner",
            "flash trap volume over melt in corners, inner side",
            "1",
            "trap_room_inner counted on the trap's own way round a turn: times 1 - d / R on the inside of the "
            "turn, 1 + d / R on its outside, with the distance d from P to the middle of the trap's area and the "
            "turn radius R; on a straight run equal to trap_room_inner.",
            decimals=2,
        ),
        Quantity(
            "trap_turn_outer",
            "flash trap volume over melt in corners, outer side",
            "1",
            "As trap_turn_inner, on the outer side.",
            decimals=2,
        ),
        Quantity(
            "trap_open_inner",
            "trap open, inner side",
            "1",
            "1 where no wall or lip closes the inner trap, 0 where one does.",
            decimals=0,
        ),
        Quantity(
            "trap_open_outer",
            "trap open, outer side",
            "1",
            "1 where no wall or lip closes the outer trap, 0 where one does.",
            decimals=0,
        ),
        Quantity(
            "lip_gap_inner",
            "lip gap, inner side",
            "mm",
            "Shortest distance between the two parts at the exit of the inner trap with the cover lowered "
            "by c from initial contact: along v over a lip, along u between the cover's edge and a wall. "
            "Negative: the parts would meet there first.",
        ),
        Quantity("lip_gap_outer", "lip gap, outer side", "mm", "As lip_gap_inner, on the outer side."),
        Quantity(
            "clamp_land",
            "clamp land",
            "mm",
            "Width along u of the cover's light-side face from the edge of the beam corridor (the spot as it enters "
            "the cover, with lean and cone, or the rib's top where no spot is given; plus the beam margin) toward the "
            "cover's free edge, as long as it goes on without edge, step or bend of more than 5° (a chamfer or fillet "
            "ends it at its start) and nothing lies above it.",
        ),
        Quantity(
            "clamp_tilt",
            "clamp land tilt",
            "°",
            "Largest angle between the clamp land and the plane normal to the beam, in the section.",
            decimals=2,
        ),
        Quantity(
            "cover_thickness",
            "cover thickness",
            "mm",
            "Plastic of the cover along v above P; with the rib on the cover, down to the contact plane.",
        ),
        Quantity(
            "cover_thickness_min",
            "cover thickness, least",
            "mm",
            "Smallest plastic of the cover along v over the strip of the rib top.",
        ),
        Quantity(
            "cover_thickness_max",
            "cover thickness, most",
            "mm",
            "Largest plastic of the cover along v over the strip of the rib top.",
        ),
        Quantity(
            "gap",
            "gap",
            "mm",
            "Along v from the rib top to the opposite part at P. Negative: they overlap as drawn.",
        ),
        Quantity(
            "gap_min",
            "gap, least",
            "mm",
            "Smallest gap over the strip of the rib top; at the mid-line where the top is rounded and has no flat.",
        ),
        Quantity(
            "gap_max",
            "gap, most",
            "mm",
            "Largest gap over the strip of the rib top; at the mid-line where the top is rounded and has no flat.",
        ),
        Quantity(
            "free_travel",
            "free travel",
            "mm",
            "How far the cover sinks from initial contact (the smallest gap of the whole seam) until, within "
            "this section and as far as the rib's wall reaches on both sides, it touches anything but a rib of "
            "the seam. 'free' where nothing is in the way. The one value of the whole interface looks everywhere "
            "and at every other part that does not hang on the cover alone, over all positions that the lateral play "
            "allows; features beyond the regular flank are not part of the rib, its own chamfered or lowered top is.",
        ),
        Quantity(
            "beam_clear",
            "light reaching the rib",
            "1",
            "Share of the light's width (the spot's, or the rib top's where no spot is given) that reaches the rib's "
            "level along the beam through exactly one stretch of cover and nothing else of the assembly. A hole "
            "through the cover over the rib counts as clear.",
            decimals=2,
        ),
        Quantity(
            "wall_width",
            "wall width",
            "mm",
            "Thickness along u of the wall that carries the rib, just below the trap floors (0.2 mm); where "
            "the rib stands on a broad floor it is not measured.",
        ),
        Quantity(
            "support_offset",
            "support offset",
            "mm",
            "Size along u from P to the middle of the material met one rib width below the trap floor, "
            "nearest to P; 0 when the material reaches beyond both flanks by more than one rib width. Not measured "
            "where nothing of the part is met at that level.",
        ),
        Quantity(
            "turn_radius",
            "turn radius",
            "mm",
            "Radius of the turn that the mid-line makes at the station, seen along the beam; infinite (not "
            "judged) on a straight run.",
            decimals=2,
        ),
    )
}

"""What every survey measures."""

QUANTITIES: dict[str, Quantity] = {**MEASURED, **INTERFACE_QUANTITIES, **MATERIAL_QUANTITIES}
"""All quantities: section by section, over the whole interface, and what materials in the settings add."""

REASONS: dict[str, str] = {
    "no-shoulder": "The flank runs down without a shoulder on this side.",
    "corner": "The seam turns sharply here; a section across it has no meaning.",
    "junction": "Within about a rib width of a junction the section cuts more than one rib.",
    "rib-hole": "A hole opens in the rib's top here.",
    "end": "Within half a rib width of an open end.",
    "free": "Nothing is in the way within this section.",
    "hole": "The cover has a hole over the rib here.",
    "no-cover": "No cover lies over the rib here.",
    "no-opposite": "Nothing of the opposite part faces the rib here.",
    "rounded-top": "The rib top has no flat.",
    "no-rib": "There is no rib here.",
    "no-edge": "No free edge of the cover was met within the section.",
    "no-land": "The light-side face of the cover has no flat beside the beam corridor.",
    "broad": "The rib stands on a floor that reaches beyond the section.",
    "no-lip": "Nothing closes the flash trap on this side.",
    "bare-sides": "The opposite part ends with the rib: nothing beside it holds the melt or stops it.",
    "other-rib": "Another rib of the same seam closes the flash trap on this side; it melts as well.",
    "no-flank": "No flank was met at this level.",
    "nothing-below": "Nothing of the part lies below the rib at this level.",
    "straight": "The mid-line is straight here.",
    "depends": "A value that this one is made from was not measured here.",
    "broken-geometry": "The faces here do not close to a section.",
    **INTERFACE_REASONS,
    **MATERIAL_REASONS,
}
