"""Every quantity that seamcheck measures: declared once, with unit and written definition.

Help, documents and reports take their words from here. ``P`` is the station on the mid-line of the rib
top, ``u`` points across the seam (+u outer), ``v`` against the beam; ``c`` is the planned collapse.
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
            "rib", "weld rib", "1",
            "Whether there is a weld rib between cover and base at all; for the seam as a whole.", per="contour",
        ),
        Quantity(
            "rib_width", "rib width", "mm",
            "Rib width w at the contact plane; equal to rib_width_top. This is the one that is judged.",
        ),
        Quantity(
            "rib_width_top", "rib width at the top", "mm",
            "Rib width w: along u between the tangent points of the top fillets, at the contact plane; the flat of the "
            "rib top through P.",
        ),
        Quantity(
            "rib_width_mid", "rib width at half height", "mm",
            "Distance along u between the flanks at half the rib height h below the contact plane.",
        ),
        Quantity(
            "rib_width_root", "rib width at the root", "mm",
            "Distance along u between the flanks, extended straight to the depth h below the contact plane; root "
            "fillets are ignored.",
        ),
        Quantity(
            "rib_height", "rib height", "mm",
            "Rib height h: the smaller of the inner and the outer rib height, of those that exist.",
        ),
        Quantity(
            "rib_height_inner", "rib height, inner side", "mm",
            "Height along v from the floor of the inner trap to the contact plane at P.",
            detail="The floor is the nearest surface beside the flank that faces the beam; root fillets are left out.",
        ),
        Quantity(
            "rib_height_outer", "rib height, outer side", "mm",
            "Height along v from the floor of the outer trap to the contact plane at P.",
            detail="The floor is the nearest surface beside the flank that faces the beam; root fillets are left out.",
        ),
        Quantity("slenderness", "slenderness", "1", "Rib height h divided by the rib width at half height."),
        Quantity(
            "draft_inner", "flank draft, inner side", "°",
            "Angle between the inner flank at half height and v; positive where the rib widens towards its root.",
            decimals=2,
        ),
        Quantity(
            "draft_outer", "flank draft, outer side", "°",
            "Angle between the outer flank at half height and v; positive where the rib widens towards its root.",
            decimals=2,
        ),
        Quantity(
            "melt_area", "melt area", "mm²",
            "Area of the rib's section above the level c below the contact plane, draft and fillets included.",
        ),
        Quantity(
            "trap_area_inner", "flash trap area, inner side", "mm²",
            "Area A between base and cover, lowered by c from initial contact, from the inner flank to the lip or wall "
            "that closes the trap.",
            detail="The trap ends where lip or wall comes nearest to the opposite part; a lip rises at least 0.2 mm "
            "above the floor, or hangs down as much. At a wall the underside of the cover is extended straight across "
            "the slit (up to 0.5 mm wide) between the cover's edge and the wall. An open trap ends at the edge of the "
            "floor or of the cover, whichever comes first. A trap that another rib of the same seam closes counts "
            "half: both ribs share it.",
        ),
        Quantity("trap_area_outer", "flash trap area, outer side", "mm²", "As trap_area_inner, on the outer side."),
        Quantity(
            "trap_room", "flash trap volume over melt", "1",
            "Flash trap areas A of both sides together, divided by the melt area.", decimals=2,
        ),
        Quantity(
            "trap_room_inner", "flash trap volume over melt, inner side", "1",
            "Flash trap area A of the inner side divided by half the melt area.", decimals=2,
        ),
        Quantity(
            "trap_room_outer", "flash trap volume over melt, outer side", "1",
            "Flash trap area A of the outer side divided by half the melt area.", decimals=2,
        ),
        Quantity(
            "trap_corner_inner", "flash trap volume over melt in corners, inner side", "1",
            "trap_room_inner along the trap's own path round a corner: times 1 - d / R inside it, 1 + d / R outside.",
            detail="d is the distance from P to the middle of the trap's area, R the radius of the corner. On a "
            "straight run it equals trap_room_inner.",
            decimals=2,
        ),
        Quantity(
            "trap_corner_outer", "flash trap volume over melt in corners, outer side", "1",
            "As trap_corner_inner, on the outer side.", decimals=2,
        ),
        Quantity(
            "trap_open_inner", "open flash trap, inner side", "1",
            "1 where no lip or wall closes the inner trap, 0 where one does.", decimals=0,
        ),
        Quantity(
            "trap_open_outer", "open flash trap, outer side", "1",
            "1 where no lip or wall closes the outer trap, 0 where one does.", decimals=0,
        ),
        Quantity(
            "lip_gap_inner", "lip gap, inner side", "mm",
            "Lip gap b: shortest distance between the parts at the exit of the inner trap, cover lowered by c from "
            "initial contact.",
            detail="Along v over a lip, along u between the cover's edge and a wall. Negative: the parts would meet "
            "there first.",
        ),
        Quantity("lip_gap_outer", "lip gap, outer side", "mm", "As lip_gap_inner, on the outer side."),
        Quantity(
            "clamp_land", "clamp land", "mm",
            "Clamp land l: flat width along u of the cover's top, from the beam corridor towards the cover's free "
            "edge.",
            detail="The beam corridor is the spot as it enters the cover, with lean and cone (the rib top where no "
            "spot is given), plus the beam margin. The land ends at an edge, a step or a bend of more than 5° (a "
            "chamfer or fillet ends it where it begins) and under anything that lies above it.",
        ),
        Quantity(
            "clamp_tilt", "clamp land tilt", "°",
            "Largest angle in the section between the clamp land l and the plane normal to the beam.", decimals=2,
        ),
        Quantity(
            "cover_thickness", "cover thickness", "mm",
            "Cover thickness t: plastic along v above P; with the rib on the cover, down to the contact plane.",
        ),
        Quantity(
            "cover_thickness_min", "smallest cover thickness", "mm",
            "Smallest cover thickness t along v over the width of the rib top.",
        ),
        Quantity(
            "cover_thickness_max", "largest cover thickness", "mm",
            "Largest cover thickness t along v over the width of the rib top.",
        ),
        Quantity(
            "gap", "gap", "mm",
            "Gap g as drawn: along v from the rib top at P to the opposite part. Negative: the parts overlap as drawn.",
        ),
        Quantity(
            "gap_min", "smallest gap", "mm",
            "Smallest gap g over the width of the rib top; at the mid-line where the top is rounded and has no flat.",
        ),
        Quantity(
            "gap_max", "largest gap", "mm",
            "Largest gap g over the width of the rib top; at the mid-line where the top is rounded and has no flat.",
        ),
        Quantity(
            "free_travel", "free travel", "mm",
            "Free travel f: how far the cover sinks from initial contact until, within this section, it touches "
            "anything but a rib of the seam.",
            detail="Initial contact is the smallest gap g of the whole seam. The section counts as far as the rib's "
            "wall reaches on both sides; 'free' where nothing is in the way. The value of the whole interface is taken "
            "everywhere, against every other part that is not connected to the cover alone, over all positions that "
            "the lateral play allows. Features beyond the regular flank are not part of the rib; its own chamfered or "
            "lowered top is.",
        ),
        Quantity(
            "beam_clear", "light reaching the rib", "1",
            "Share of the beam's width that reaches the rib top along the beam through exactly one thickness of cover "
            "and nothing else.",
            detail="The beam is as wide as the spot, or as the rib top where no spot is given. Every part of the "
            "assembly counts as an obstacle. A hole through the cover over the rib counts as clear.",
            decimals=2,
        ),
        Quantity(
            "wall_width", "wall width", "mm",
            "Thickness along u of the wall that carries the rib, 0.2 mm below the trap floors.",
            detail="Not measured where the rib stands on a broad floor.",
        ),
        Quantity(
            "support_offset", "support offset", "mm",
            "Distance along u from P to the middle of the nearest material one rib width w below the trap floor.",
            detail="0 where the material reaches beyond both flanks by more than one rib width. Not measured where the "
            "part has no material at that level.",
        ),
        Quantity(
            "corner_radius", "corner radius", "mm",
            "Radius R of the mid-line at the station, seen along the beam; infinite on a straight run, which is not "
            "judged.",
            decimals=2,
        ),
    )
}  # fmt: skip

"""What every survey measures."""

QUANTITIES: dict[str, Quantity] = {**MEASURED, **INTERFACE_QUANTITIES, **MATERIAL_QUANTITIES}
"""All quantities: section by section, over the whole interface, and what materials in the settings add."""

REASONS: dict[str, str] = {
    "no-shoulder": "The flank runs down without a shoulder on this side.",
    "corner": "The seam has a sharp corner here; a section across it has no meaning.",
    "junction": "Within about a rib width of a junction the section cuts more than one rib.",
    "rib-hole": "A hole opens in the rib's top here.",
    "end": "Within half a rib width of an open end.",
    "free": "Nothing is in the way within this section.",
    "hole": "The cover has a hole over the rib here.",
    "no-cover": "No cover lies over the rib here.",
    "no-opposite": "No opposite part faces the rib here.",
    "rounded-top": "The rib top has no flat.",
    "no-rib": "There is no rib here.",
    "no-edge": "No free edge of the cover was met within the section.",
    "no-land": "The cover's top has no flat beside the beam corridor.",
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
}  # fmt: skip
